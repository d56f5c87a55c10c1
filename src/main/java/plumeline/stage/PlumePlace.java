package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.ink.Estimate;
import plumeline.ink.Plume;
import plumeline.optics.TankView;
import plumeline.roots.Roots;
import plumeline.sight.Extent;
import plumeline.sight.Sight;

/// A plume under its nozzle in a tank: a cone from the initial front down to the front, upright under the mouth.
///
/// @param plume what is known of it
/// @param walls the tank
/// @param mouth the nozzle's mouth, table frame, m
public record PlumePlace(Plume plume, TankWalls walls, Vec mouth) {
    /// What a front has come down at least so that there is anything of it, m.
    private static final double LEAST_METRES = 1e-4;

    private static final List<Double> TOLD_SECONDS = List.of(0.25, 0.5, 1.0, 2.0);
    private static final double NEAR_METRES = 1e-7;

    /// Gives the depth of a height.
    ///
    /// @param heightMetres over the table, m
    /// @return below the still surface, m
    public double depthMetres(double heightMetres) {
        return walls.waterLineMetres() - heightMetres;
    }

    /// Gives the floor's depth.
    ///
    /// @return below the still surface, m
    public double floorMetres() {
        return depthMetres(walls.inside().low().z());
    }

    /// Gives how far the nozzle is from the nearest wall, seen from above.
    ///
    /// @return m, below 0 outside
    public double insideMetres() {
        Vec low = mouth.minus(walls.inside().low());
        Vec high = walls.inside().high().minus(mouth);
        return Math.min(Math.min(low.x(), high.x()), Math.min(low.y(), high.y()));
    }

    /// Gives the half-width at a depth.
    ///
    /// @param depthMetres below the still surface, m; above the start it is the start's
    /// @return m
    public double radiusMetres(double depthMetres) {
        return plume.radiusMetres(Math.max(depthMetres, plume.startMetres() + LEAST_METRES / 2))
                .value();
    }

    /// A front at a time.
    ///
    /// @param seconds from the release, s
    /// @param depthMetres below the still surface, m, the floor's at most
    /// @param isOnFloor whether it is on the floor
    public record Front(double seconds, Estimate depthMetres, boolean isOnFloor) {}

    /// Gives where the front is a quarter, half, one and two seconds after its release, as papers tell it; as long as
    /// it comes down: the first that is on the floor is the last.
    ///
    /// @return the fronts; none where it isn't known, or hasn't come down at all
    public List<Front> fronts() {
        List<Front> fronts = new ArrayList<>();
        for (double time : TOLD_SECONDS) {
            Estimate depth = plume.frontMetres(time, floorMetres());
            boolean isDown = depth.value() > plume.startMetres() + LEAST_METRES;
            boolean isOnFloor = depth.value() > floorMetres() - LEAST_METRES;
            if (isDown) {
                fronts.add(new Front(time, depth, isOnFloor));
            }
            if (isOnFloor) {
                break;
            }
        }
        return fronts;
    }

    /// Gives the cone down to a front.
    ///
    /// @param depthMetres the front's depth, m, > the start's
    /// @param wider how many times its half-width it is, > 0
    /// @return the cone
    public Body cone(double depthMetres, double wider) {
        double start = plume.startMetres();
        double height = Math.max(depthMetres - start, LEAST_METRES);
        double below = plume.radiusMetres(start + height).value() * wider;
        double above =
                Math.min(below, plume.radiusMetres(start + LEAST_METRES / 2).value() * wider);
        Vec base = new Vec(mouth.x(), mouth.y(), walls.waterLineMetres() - start - height);
        Solid solid = new Solid.Revolved(List.of(new Station(0, below), new Station(height, above)));
        return new Body(solid, new Pose(base, 0, 0));
    }

    /// Gives how deep the front is when its cone first touches a body.
    ///
    /// @param body a thing in the tank
    /// @param wider how many times its half-width the cone is, > 0
    /// @return below the still surface, m; the floor's depth where it doesn't touch it before
    public double touchMetres(Body body, double wider) {
        return first(depth -> Clearance.betweenMetres(cone(depth, wider), body));
    }

    /// Gives how deep the front is when its rim first comes before some of a body's picture, outlines taken as their
    /// upright rectangles.
    ///
    /// @param view how both are seen
    /// @param body a thing in the tank
    /// @param wider how many times its half-width the cone is, > 0
    /// @return below the still surface, m; the floor's depth where it doesn't before, or goes down behind the body
    ///     or beside the lens
    public double coverMetres(Projection view, Body body, double wider) {
        double widest = plume.radiusMetres(floorMetres()).value() * wider;
        if (aheadMetres(view, body) <= 0 || leastDepthMetres(view) - widest <= 0) {
            return floorMetres();
        }
        Extent seen = Sight.extent(view, body);
        return first(depth -> {
            Extent front = front(view, depth, wider);
            double across = Math.max(front.left() - seen.right(), seen.left() - front.right());
            return Math.max(across, front.bottom() - seen.top()) * view.depth(mouth);
        });
    }

    /// The edges of the front's rim in the picture.
    private Extent front(Projection view, double depth, double wider) {
        double radius = plume.radiusMetres(depth).value() * wider;
        Vec middle = new Vec(mouth.x(), mouth.y(), walls.waterLineMetres() - depth);
        Vec aside = view.aim().right().times(radius);
        Vec ahead = new Vec(-aside.y(), aside.x(), 0);
        double far = view.project(middle.plus(ahead)).y();
        double near = view.project(middle.minus(ahead)).y();
        return new Extent(
                view.project(middle.minus(aside)).x(),
                view.project(middle.plus(aside)).x(),
                Math.min(far, near),
                Math.max(far, near));
    }

    /// Gives how far nearer to the lens the nozzle stands than a body's middle, level, however the lens is tipped.
    ///
    /// @param view how both are seen
    /// @param body a thing
    /// @return m, below 0 behind it
    public double aheadMetres(Projection view, Body body) {
        return level(view).dot(body.middle().minus(mouth));
    }

    /// Gives how far beside a body the plume goes down.
    ///
    /// @param body a thing
    /// @param heightMetres where its front is then, over the table, m
    /// @param radiusMetres how wide it is taken to be there to each side, m
    /// @return m, below 0 where it meets the body or comes down on it
    public double besideMetres(Body body, double heightMetres, double radiusMetres) {
        return Clearance.toMetres(body, new Vec(mouth.x(), mouth.y(), heightMetres)) - radiusMetres;
    }

    /// Away from the lens, level.
    private static Vec level(Projection view) {
        Vec right = view.aim().right();
        return new Vec(-right.y(), right.x(), 0).unit();
    }

    /// Gives how far before the lens the plume's axis is, at the surface or at the floor, whichever is nearer.
    ///
    /// @param view how it is seen
    /// @return m, not above 0 where the lens point stands beside it or past it
    public double leastDepthMetres(Projection view) {
        Vec down = new Vec(mouth.x(), mouth.y(), walls.inside().low().z());
        return Math.min(view.depth(mouth), view.depth(down));
    }

    /// Where the sight line to a place goes by the plume's axis.
    ///
    /// @param depthMetres how deep it is there, m below the still surface
    /// @param asideMetres how far from the axis, to camera right, m
    public record Crossing(double depthMetres, double asideMetres) {}

    /// Gives where the sight line to a place in the water crosses the upright plane through the plume's axis that faces
    /// the lens.
    ///
    /// @param view how it is seen
    /// @param place the place, table frame, m, behind that plane
    /// @return where
    public Crossing crossing(Projection view, Vec place) {
        Vec right = view.aim().right();
        Vec normal = level(view);
        Vec from = view instanceof TankView tank
                ? lastButOne(tank.path(place))
                : view.aim().eye();
        double whole = normal.dot(place.minus(from));
        double share = whole == 0 ? 1 : normal.dot(mouth.minus(from)) / whole;
        Vec there = from.plus(place.minus(from).times(share));
        return new Crossing(depthMetres(there.z()), right.dot(there.minus(mouth)));
    }

    private static Vec lastButOne(List<Vec> path) {
        return path.get(path.size() - 2);
    }

    /// The depth at which something that falls with it first is nothing.
    private double first(DoubleUnaryOperator apart) {
        double low = plume.startMetres() + LEAST_METRES;
        double high = floorMetres();
        if (low >= high || apart.applyAsDouble(low) <= 0) {
            return Math.min(low, high);
        }
        double above = apart.applyAsDouble(low);
        double below = apart.applyAsDouble(high);
        if (below > 0) {
            return high;
        }
        return Roots.falsePosition(apart, low, above, high, below, NEAR_METRES).orElse(high);
    }
}
