package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.geom.Pinhole;
import plumeline.geom.Plane;
import plumeline.geom.Point;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sight.Extent;
import plumeline.sight.Sight;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// Things or lamps stay out of the picture.
///
/// Margin in % of the picture's width or height: how far the outline is beyond the side that it clears best; one part a
/// thing. A lamp, that may stand aslant past a corner, may clear that better than any side. What is wholly behind the
/// lens is out of the picture by far; of what reaches from before it to behind, what is before it counts.
///
/// @param line as written
/// @param things indices of things
/// @param lamps indices of lamps
record OffPicture(WantLine line, List<Integer> things, List<Integer> lamps) implements Want {
    /// More than this beyond a side, or behind the lens, reads as this.
    private static final double FAR_PERCENT = 1000;

    /// Tangents beyond this are no longer told apart.
    private static final double STEEPEST = 100;

    private static final int STEPS = 70;

    OffPicture {
        things = List.copyOf(things);
        lamps = List.copyOf(lamps);
    }

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), this::partsIn);
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        double[] parts = parts(moments);
        int worst = Parts.worstOf(parts);
        String name = worst < things.size()
                ? Parts.name(moments, things.get(worst))
                : moments.stage()
                        .shot()
                        .lights()
                        .get(lamps.get(worst - things.size()))
                        .name();
        return Optional.of(
                parts[worst] >= FAR_PERCENT
                        ? name + " is far out of the picture."
                        : name + (parts[worst] >= 0 ? " is out of the picture by " : " reaches into the picture by ")
                                + Parts.points(parts[worst]) + ".");
    }

    private double[] partsIn(Scene scene) {
        double[] parts = new double[things.size() + lamps.size()];
        for (int i = 0; i < things.size(); i++) {
            parts[i] = part(scene, scene.things().get(things.get(i)));
        }
        for (int i = 0; i < lamps.size(); i++) {
            Body lamp = scene.lamps().get(lamps.get(i));
            parts[things.size() + i] = Math.max(part(scene, lamp), slantPart(scene, lamp));
        }
        return parts;
    }

    private static double part(Scene scene, Body body) {
        Picture picture = scene.picture();
        Extent extent = Parts.inFrontMetres(scene, body) > 0
                ? Sight.extent(scene.view(body), body)
                : partlyBehind(scene.aim(), body);
        double aside = Math.max(extent.left(), -extent.right()) / picture.widthTangent() - 0.5;
        double up = Math.max(extent.bottom(), -extent.top()) / picture.heightTangent() - 0.5;
        return Math.clamp(Parts.PERCENT * Math.max(aside, up), -FAR_PERCENT, FAR_PERCENT);
    }

    /// How far a lamp that is turned and tilted passes the picture's corner, as straight lines part them that aren't
    /// along its sides; widths and heights of the picture count as equal.
    private static double slantPart(Scene scene, Body body) {
        if (!(body.solid() instanceof Solid.Box box)
                || !(scene.view(body) instanceof Pinhole pinhole)
                || Parts.inFrontMetres(scene, body) <= 0) {
            return -FAR_PERCENT;
        }
        List<Point> corners = box.corners().stream()
                .map(corner -> pinhole.project(body.place(corner)))
                .map(seen -> new Point(
                        seen.x() / scene.picture().widthTangent(),
                        seen.y() / scene.picture().heightTangent()))
                .toList();
        double best = -FAR_PERCENT;
        for (Point one : corners) {
            for (Point other : corners) {
                double x = one.y() - other.y();
                double y = other.x() - one.x();
                double length = Math.hypot(x, y);
                if (length > 0) {
                    best = Math.max(best, Parts.PERCENT * beyond(corners, x / length, y / length));
                }
            }
        }
        return Math.min(best, FAR_PERCENT);
    }

    /// How far all corners are beyond the picture, a square about the middle, in a direction.
    private static double beyond(List<Point> corners, double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (Point corner : corners) {
            least = Math.min(least, x * corner.x() + y * corner.y());
        }
        return least - (Math.abs(x) + Math.abs(y)) / 2;
    }

    /// The edges of what is seen of a body that reaches behind the lens point: only what is before it counts.
    private static Extent partlyBehind(Aim aim, Body body) {
        Vec back = aim.forward().times(-1);
        if (Clearance.aboveMetres(body, new Plane(aim.eye(), back)) >= 0) {
            return new Extent(STEEPEST, STEEPEST, STEEPEST, STEEPEST);
        }
        return new Extent(
                leastSlope(aim, aim.right(), body),
                -leastSlope(aim, aim.right().times(-1), body),
                leastSlope(aim, aim.up(), body),
                -leastSlope(aim, aim.up().times(-1), body));
    }

    /// The least slope to a side of any point before the lens point: that of the steepest plane through the lens point
    /// that has the whole body on its outer side. How far the body is beyond a plane, un-normalised, is concave in
    /// the slope; where no plane has the body beyond it, the body goes round the lens point.
    private static double leastSlope(Aim aim, Vec outward, Body body) {
        if (body.solid() instanceof Solid.Box box) {
            return leastSlope(
                    aim, outward, box.corners().stream().map(body::place).toList());
        }
        double low = -STEEPEST;
        double high = STEEPEST;
        for (int i = 0; i < STEPS; i++) {
            double third = (high - low) / 3;
            if (beyond(aim, outward, low + third, body) < beyond(aim, outward, high - third, body)) {
                low += third;
            } else {
                high -= third;
            }
        }
        double inside = (low + high) / 2;
        if (beyond(aim, outward, inside, body) < 0) {
            return -STEEPEST;
        }
        double outside = STEEPEST;
        for (int i = 0; i < STEPS; i++) {
            double middle = (inside + outside) / 2;
            if (beyond(aim, outward, middle, body) >= 0) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    /// Of a box's corners: the least of those before the lens point, and without end where an edge goes on to behind it
    /// on the inner side.
    private static double leastSlope(Aim aim, Vec outward, List<Vec> corners) {
        double least = STEEPEST;
        for (int i = 0; i < corners.size(); i++) {
            Vec way = corners.get(i).minus(aim.eye());
            double depth = way.dot(aim.forward());
            double aside = way.dot(outward);
            if (depth > 0) {
                least = Math.min(least, aside / depth);
                for (Vec other : corners) {
                    double behind = other.minus(aim.eye()).dot(aim.forward());
                    if (behind <= 0) {
                        double share = depth / (depth - behind);
                        double there = aside + share * (other.minus(aim.eye()).dot(outward) - aside);
                        least = there < 0 ? -STEEPEST : least;
                    }
                }
            }
        }
        return Math.max(least, -STEEPEST);
    }

    private static double beyond(Aim aim, Vec outward, double slope, Body body) {
        Vec normal = outward.minus(aim.forward().times(slope));
        double length = normal.lengthMetres();
        return length * Clearance.aboveMetres(body, new Plane(aim.eye(), normal.times(1 / length)));
    }
}
