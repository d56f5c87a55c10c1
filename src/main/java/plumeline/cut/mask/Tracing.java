package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.Function;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Strand;
import plumeline.stage.TankWalls;

/// Where one strand shows at one instant: stretches seen in one way, each as straight parts, and what isn't computed.
final class Tracing {
    /// A straight part misses what it stands for by no more than this, px.
    static final double STRAIGHT_PIXELS = 0.02;

    /// A strand is followed beyond each side of the picture by this share of its width.
    static final double OVERSCAN = 0.1;

    private static final double NEAR_METRES = 1e-7;
    private static final int PIECES = 12;
    private static final int MOST_HALVINGS = 60;
    private static final int DEEPEST = 14;
    private static final double FINE = 1e-12;

    private final Scene scene;
    private final ClipSize size;
    private final Strand.Ends ends;
    private final Function<Vec, PlaceSight> sighting;

    /// A place of a strand.
    ///
    /// @param share of the strand's length, from the thing
    /// @param at where it shows, px
    record Vertex(double share, Point at) {}

    /// A stretch that is in the picture or just beyond its sides.
    record Stretch(PlaceSight.Way way, List<Vertex> vertices) {
        Stretch {
            vertices = List.copyOf(vertices);
        }

        double from() {
            return vertices.getFirst().share();
        }

        double to() {
            return vertices.getLast().share();
        }
    }

    /// A stretch that isn't computed.
    record Gap(double from, double to, Sightlines.Trouble trouble) {}

    /// All of a strand at an instant.
    record Trace(List<Stretch> stretches, List<Gap> gaps) {
        Trace {
            stretches = List.copyOf(stretches);
            gaps = List.copyOf(gaps);
        }
    }

    /// Finds where a place shows, px; nothing where it isn't seen in the way that is asked about.
    interface Sighted {
        Optional<Point> find(Vec place);
    }

    private record Range(double from, double to, PlaceSight sight) {}

    Tracing(Scene scene, ClipSize size, Strand.Ends ends, Function<Vec, PlaceSight> sighting) {
        this.scene = scene;
        this.size = size;
        this.ends = ends;
        this.sighting = sighting;
    }

    /// Where a place of the strand shows, px; nothing where it isn't seen in this way.
    Optional<Point> find(double share, PlaceSight.Way way) {
        return find(ends.at(share), way);
    }

    /// Where any place shows, px; nothing where it isn't seen in this way.
    Optional<Point> find(Vec place, PlaceSight.Way way) {
        return sighting.apply(place) instanceof PlaceSight.Seen(PlaceSight.Way own, Point point) && own == way
                ? Optional.of(size.pixel(scene, point))
                : Optional.empty();
    }

    Trace trace(Optional<TankWalls> tank) {
        List<Stretch> stretches = new ArrayList<>();
        List<Gap> gaps = new ArrayList<>();
        for (Range range : ranges(tank)) {
            switch (range.sight()) {
                case PlaceSight.Seen(PlaceSight.Way way, Point _) -> {
                    List<Vertex> run = new ArrayList<>();
                    Optional<Point> one = find(range.from(), way);
                    Optional<Point> other = find(range.to(), way);
                    if (one.isPresent() && other.isPresent()) {
                        bend(way, new Vertex(range.from(), one.get()), new Vertex(range.to(), other.get()), 0, run);
                    }
                    stretches.addAll(joined(way, run));
                }
                case PlaceSight.Unknown(Sightlines.Trouble trouble) ->
                    gaps.add(new Gap(range.from(), range.to(), trouble));
                case PlaceSight.Behind() -> {}
            }
        }
        return new Trace(stretches, gaps);
    }

    /// Pairs of vertices, joined where one ends as the next begins.
    private static List<Stretch> joined(PlaceSight.Way way, List<Vertex> pairs) {
        List<Stretch> all = new ArrayList<>();
        List<Vertex> run = new ArrayList<>();
        for (int i = 0; i < pairs.size(); i += 2) {
            if (!run.isEmpty() && run.getLast().share() != pairs.get(i).share()) {
                all.add(new Stretch(way, run));
                run = new ArrayList<>();
            }
            if (run.isEmpty()) {
                run.add(pairs.get(i));
            }
            run.add(pairs.get(i + 1));
        }
        if (!run.isEmpty()) {
            all.add(new Stretch(way, run));
        }
        return all;
    }

    /// Stretches that are seen in one way, from the thing to the end.
    private List<Range> ranges(Optional<TankWalls> tank) {
        List<Double> breaks = breaks(tank);
        List<Range> all = new ArrayList<>();
        double from = breaks.getFirst();
        PlaceSight sight = sighting.apply(ends.at(from));
        for (int i = 1; i < breaks.size(); i++) {
            PlaceSight next = sighting.apply(ends.at(breaks.get(i)));
            if (!isAlike(sight, next)) {
                double stops = boundary(breaks.get(i - 1), breaks.get(i), sight);
                double begins = boundary(breaks.get(i), breaks.get(i - 1), next);
                all.add(new Range(from, stops, sight));
                double between = begins - stops;
                if (between * ends.lengthMetres() > 4 * NEAR_METRES) {
                    all.add(new Range(stops, begins, sighting.apply(ends.at(stops + between / 2))));
                }
                from = begins;
                sight = next;
            }
        }
        all.add(new Range(from, breaks.getLast(), sight));
        return all;
    }

    private static boolean isAlike(PlaceSight one, PlaceSight other) {
        return switch (one) {
            case PlaceSight.Seen(PlaceSight.Way way, Point _) ->
                other instanceof PlaceSight.Seen(PlaceSight.Way then, Point _) && way == then;
            case PlaceSight.Behind() -> other instanceof PlaceSight.Behind;
            case PlaceSight.Unknown unknown -> unknown.equals(other);
        };
    }

    /// The last place, coming from one where it is seen so, where it still is.
    private double boundary(double in, double out, PlaceSight sight) {
        double inside = in;
        double outside = out;
        for (int i = 0; i < MOST_HALVINGS && Math.abs(outside - inside) * ends.lengthMetres() > NEAR_METRES; i++) {
            double middle = (inside + outside) / 2;
            if (isAlike(sight, sighting.apply(ends.at(middle)))) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return inside;
    }

    /// Where to look for a change of way: at the planes of tank and water, and between.
    private List<Double> breaks(Optional<TankWalls> tank) {
        TreeSet<Double> shares = new TreeSet<>();
        for (int i = 0; i <= PIECES; i++) {
            shares.add((double) i / PIECES);
        }
        tank.ifPresent(walls -> {
            Vec low = walls.outside().low();
            Vec high = walls.outside().high();
            List<double[]> planes = List.of(
                    new double[] {
                        low.x(),
                        high.x(),
                        walls.inside().low().x(),
                        walls.inside().high().x()
                    },
                    new double[] {
                        low.y(),
                        high.y(),
                        walls.inside().low().y(),
                        walls.inside().high().y()
                    },
                    new double[] {
                        walls.waterLineMetres(), high.z(), walls.inside().low().z()
                    });
            double[] from = {ends.foot().x(), ends.foot().y(), ends.foot().z()};
            double[] to = {ends.far().x(), ends.far().y(), ends.far().z()};
            double near = NEAR_METRES / Math.max(ends.lengthMetres(), NEAR_METRES);
            for (int axis = 0; axis < from.length; axis++) {
                for (double plane : planes.get(axis)) {
                    double share = (plane - from[axis]) / (to[axis] - from[axis]);
                    if (share > near && share < 1 - near) {
                        shares.add(share - near);
                        shares.add(share + near);
                    }
                }
            }
        });
        return List.copyOf(shares);
    }

    /// Halves a stretch until each part is straight, and keeps of it what is in the picture or near it, by pairs.
    private void bend(PlaceSight.Way way, Vertex from, Vertex to, int depth, List<Vertex> pairs) {
        List<Point> between = new ArrayList<>();
        for (int i = 1; i < 4; i++) {
            Optional<Point> at = find(from.share() + (to.share() - from.share()) * i / 4, way);
            if (at.isEmpty()) {
                return;
            }
            between.add(at.get());
        }
        List<Point> all = new ArrayList<>(between);
        all.add(from.at());
        all.add(to.at());
        if (isBeside(all)) {
            return;
        }
        double off = between.stream()
                .mapToDouble(point -> offPixels(from.at(), to.at(), point))
                .max()
                .orElseThrow();
        if (off > STRAIGHT_PIXELS && depth < DEEPEST) {
            Vertex middle = new Vertex((from.share() + to.share()) / 2, between.get(1));
            bend(way, from, middle, depth + 1, pairs);
            bend(way, middle, to, depth + 1, pairs);
        } else {
            clip(way, from, to, pairs);
        }
    }

    private double leastX() {
        return -OVERSCAN * size.acrossPixels();
    }

    private double leastY() {
        return -OVERSCAN * size.acrossPixels();
    }

    private double mostX() {
        return size.acrossPixels() - leastX();
    }

    private double mostY() {
        return size.downPixels() - leastY();
    }

    private boolean isBeside(List<Point> points) {
        return points.stream().allMatch(point -> point.x() < leastX())
                || points.stream().allMatch(point -> point.x() > mostX())
                || points.stream().allMatch(point -> point.y() < leastY())
                || points.stream().allMatch(point -> point.y() > mostY());
    }

    /// How far a point is beside the straight way between two others.
    static double offPixels(Point from, Point to, Point point) {
        double x = to.x() - from.x();
        double y = to.y() - from.y();
        double length = Math.hypot(x, y);
        return length > FINE
                ? Math.abs((point.x() - from.x()) * y - (point.y() - from.y()) * x) / length
                : Math.hypot(point.x() - from.x(), point.y() - from.y());
    }

    private void clip(PlaceSight.Way way, Vertex from, Vertex to, List<Vertex> pairs) {
        double x = to.at().x() - from.at().x();
        double y = to.at().y() - from.at().y();
        double[] kept = {0, 1};
        boolean isIn = cut(kept, -x, from.at().x() - leastX())
                && cut(kept, x, mostX() - from.at().x())
                && cut(kept, -y, from.at().y() - leastY())
                && cut(kept, y, mostY() - from.at().y());
        if (isIn && kept[0] < kept[1]) {
            pairs.add(kept[0] == 0 ? from : along(way, from, to, kept[0]));
            pairs.add(kept[1] == 1 ? to : along(way, from, to, kept[1]));
        }
    }

    private static boolean cut(double[] kept, double way, double room) {
        if (way < 0) {
            kept[0] = Math.max(kept[0], room / way);
        } else if (way > 0) {
            kept[1] = Math.min(kept[1], room / way);
        }
        return way != 0 || room >= 0;
    }

    /// The place whose picture is so far on the way between two others.
    private Vertex along(PlaceSight.Way way, Vertex from, Vertex to, double far) {
        double x = to.at().x() - from.at().x();
        double y = to.at().y() - from.at().y();
        double low = from.share();
        double high = to.share();
        Vertex best = from;
        for (int i = 0; i < MOST_HALVINGS && high - low > FINE; i++) {
            double middle = (low + high) / 2;
            Optional<Point> at = find(middle, way);
            if (at.isEmpty()) {
                return best;
            }
            best = new Vertex(middle, at.get());
            double done = ((at.get().x() - from.at().x()) * x
                            + (at.get().y() - from.at().y()) * y)
                    / (x * x + y * y);
            if (done < far) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return best;
    }
}
