package plumeline.optics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import plumeline.geom.Plane;
import plumeline.geom.Vec;

/// The way of light from a place across flat faces, each taken as endless, whatever their turn to each other.
///
/// It is the way of least optical length, which is a convex function of where the faces are crossed: there is one such
/// way and Newton's steps, halved where they would lengthen it, come to it from anywhere. Snell's law holds at each
/// face. Across parallel faces, and across panes in air, it is found faster. Whether each crossing is on the real face,
/// and the faces come in this order, the caller sees from the crossings.
///
/// **Source:** Fermat's principle (any optics text).
///
public final class FlatPath {
    private static final int MOST_STEPS = 100;
    private static final int MOST_HALVINGS = 40;

    /// After a step that is a smaller share of the way the next would be its square.
    private static final double STILL = 1e-8;

    /// A crossing is held by so little that a way along its face leaves it in place.
    private static final double HELD = 1e-9;

    /// Two crossings are taken to be at least so far apart, share of the way: where two faces meet they may be one.
    private static final double APART = 1e-7;

    /// A flat face.
    ///
    /// @param plane where it is
    /// @param behindIndex index of what is behind, dimensionless, ≥ 1
    public record Face(Plane plane, double behindIndex) {
        /// Checks the index.
        ///
        /// @throws IllegalArgumentException where it is below 1
        public Face {
            new Layer(0, behindIndex);
        }
    }

    private final double hereIndex;
    private final List<Face> faces;
    private final BiFunction<Vec, Vec, Optional<List<Vec>>> direct;

    /// Makes the way from air across some faces.
    ///
    /// @param faces in the order they are crossed, one at least
    /// @throws IllegalArgumentException where there is no face
    public FlatPath(List<Face> faces) {
        this(1, faces);
    }

    /// Makes the way across some faces.
    ///
    /// @param hereIndex index of where it begins, dimensionless, ≥ 1
    /// @param faces in the order they are crossed, one at least
    /// @throws IllegalArgumentException where there is no face, or the index is below 1
    public FlatPath(double hereIndex, List<Face> faces) {
        new Layer(0, hereIndex);
        this.hereIndex = hereIndex;
        this.faces = List.copyOf(faces);
        if (faces.isEmpty()) {
            throw new IllegalArgumentException("a way across faces needs one");
        }
        direct = hereIndex == 1 ? direct(this.faces) : (from, to) -> Optional.empty();
    }

    /// Gives the faces.
    ///
    /// @return in the order they are crossed
    public List<Face> faces() {
        return faces;
    }

    /// Gives where the way between two places crosses the faces.
    ///
    /// @param from where it begins, m
    /// @param to where it ends, behind the last face, m, elsewhere
    /// @return a place on each face, m, true to some 1e-10 of the way
    public List<Vec> crossings(Vec from, Vec to) {
        return crossings(from, List.of(to)).getFirst();
    }

    /// Gives it for ways from one place to several that follow each other, as the corners of an outline do.
    ///
    /// @param from where they begin, m
    /// @param to where they end, behind the last face, m, elsewhere
    /// @return a place on each face a way, m
    public List<List<Vec>> crossings(Vec from, List<Vec> to) {
        List<List<Vec>> all = new ArrayList<>();
        for (Vec end : to) {
            all.add(direct.apply(from, end)
                    .orElseGet(
                            () -> new Search(from, end, all.isEmpty() ? Optional.empty() : Optional.of(all.getLast()))
                                    .run()));
        }
        return all;
    }

    private static BiFunction<Vec, Vec, Optional<List<Vec>>> direct(List<Face> faces) {
        if (AirPanes.is(faces)) {
            return new AirPanes(faces)::find;
        }
        return Slabs.is(faces) ? new Slabs(faces)::find : (from, to) -> Optional.empty();
    }

    private double index(int leg) {
        return leg == 0 ? hereIndex : faces.get(leg - 1).behindIndex();
    }

    private final class Search {
        private final int count = faces.size();
        private final Vec[] corners = new Vec[count + 2];
        private final Vec[] rights = new Vec[count];
        private final Vec[] ups = new Vec[count];
        private final double length;

        Search(Vec from, Vec to, Optional<List<Vec>> beside) {
            length = from.distanceMetres(to);
            corners[0] = from;
            corners[count + 1] = to;
            for (int i = 0; i < count; i++) {
                Plane plane = faces.get(i).plane();
                Vec normal = plane.normal();
                rights[i] = normal.cross(Math.abs(normal.z()) < 0.5 ? Vec.UP : new Vec(1, 0, 0))
                        .unit();
                ups[i] = rights[i].cross(normal);
                corners[i + 1] = beside.isPresent() ? beside.get().get(i) : start(from, to, plane);
            }
        }

        /// Where the straight way crosses the plane, or what on the plane is nearest to its middle.
        private static Vec start(Vec from, Vec to, Plane plane) {
            double here = plane.through().minus(from).dot(plane.normal());
            double there = plane.through().minus(to).dot(plane.normal());
            if (here * there < 0) {
                return from.plus(to.minus(from).times(here / (here - there)));
            }
            Vec middle = from.plus(to).times(0.5);
            return middle.plus(
                    plane.normal().times(plane.through().minus(middle).dot(plane.normal())));
        }

        List<Vec> run() {
            double least = optical(corners);
            for (int step = 0; step < MOST_STEPS; step++) {
                Vec[] moves = moves();
                double share = 1;
                Vec[] next = moved(moves, share);
                double now = optical(next);
                for (int halving = 0; now > least * (1 + 4e-16) && halving < MOST_HALVINGS; halving++) {
                    share /= 2;
                    next = moved(moves, share);
                    now = optical(next);
                }
                double most = 0;
                for (int i = 0; i < count; i++) {
                    most = Math.max(most, moves[i].lengthMetres());
                    corners[i + 1] = next[i + 1];
                }
                least = now;
                if (most <= STILL * length && share == 1) {
                    break;
                }
            }
            return List.copyOf(List.of(corners).subList(1, count + 1));
        }

        private Vec[] moved(Vec[] moves, double share) {
            Vec[] next = corners.clone();
            for (int i = 0; i < count; i++) {
                next[i + 1] = corners[i + 1].plus(moves[i].times(share));
            }
            return next;
        }

        private double far(Vec way) {
            double apart = APART * length;
            return Math.sqrt(way.dot(way) + apart * apart);
        }

        private double optical(Vec[] at) {
            double sum = 0;
            for (int leg = 0; leg <= count; leg++) {
                sum += index(leg) * far(at[leg + 1].minus(at[leg]));
            }
            return sum;
        }

        /// Newton's step: second derivatives are blocks along a diagonal and beside it, swept forth and back.
        private Vec[] moves() {
            Block[] inverses = new Block[count];
            Block[] besides = new Block[count];
            double[][] wanted = new double[count][];
            for (int i = 0; i < count; i++) {
                Vec pull = pull(i + 1).minus(pull(i));
                double[] own = {pull.dot(rights[i]), pull.dot(ups[i])};
                double held = HELD / length;
                Block block = block(i, i, i).plus(block(i + 1, i, i)).plus(new Block(held, 0, 0, held));
                if (i > 0) {
                    Block back = besides[i - 1].turned().times(inverses[i - 1]);
                    block = block.plus(back.times(besides[i - 1]).times(-1));
                    double[] before = back.of(wanted[i - 1]);
                    own[0] += before[0];
                    own[1] += before[1];
                }
                inverses[i] = block.inverse();
                besides[i] = i + 1 < count ? block(i + 1, i, i + 1) : new Block(0, 0, 0, 0);
                wanted[i] = own;
            }
            Vec[] moves = new Vec[count];
            double[] next = {0, 0};
            for (int i = count - 1; i >= 0; i--) {
                double[] beside = besides[i].of(next);
                next = inverses[i].of(new double[] {wanted[i][0] + beside[0], wanted[i][1] + beside[1]});
                moves[i] = rights[i].times(next[0]).plus(ups[i].times(next[1]));
            }
            return moves;
        }

        /// A leg's direction by its index.
        private Vec pull(int leg) {
            Vec way = corners[leg + 1].minus(corners[leg]);
            return way.times(index(leg) / far(way));
        }

        /// How a leg's pull at one face changes with the crossing of another, or of the same.
        private Block block(int leg, int one, int other) {
            Vec way = corners[leg + 1].minus(corners[leg]);
            double far = far(way);
            Vec unit = way.times(1 / far);
            double stiff = index(leg) / far;
            return new Block(
                    stiff * (rights[one].dot(rights[other]) - unit.dot(rights[one]) * unit.dot(rights[other])),
                    stiff * (rights[one].dot(ups[other]) - unit.dot(rights[one]) * unit.dot(ups[other])),
                    stiff * (ups[one].dot(rights[other]) - unit.dot(ups[one]) * unit.dot(rights[other])),
                    stiff * (ups[one].dot(ups[other]) - unit.dot(ups[one]) * unit.dot(ups[other])));
        }
    }

    /// Two by two numbers, row by row.
    private record Block(double a, double b, double c, double d) {
        Block plus(Block other) {
            return new Block(a + other.a, b + other.b, c + other.c, d + other.d);
        }

        Block times(double factor) {
            return new Block(a * factor, b * factor, c * factor, d * factor);
        }

        Block times(Block other) {
            return new Block(
                    a * other.a + b * other.c,
                    a * other.b + b * other.d,
                    c * other.a + d * other.c,
                    c * other.b + d * other.d);
        }

        Block turned() {
            return new Block(a, c, b, d);
        }

        Block inverse() {
            double all = a * d - b * c;
            return new Block(d / all, -b / all, -c / all, a / all);
        }

        double[] of(double[] pair) {
            return new double[] {a * pair[0] + b * pair[1], c * pair[0] + d * pair[1]};
        }
    }
}
