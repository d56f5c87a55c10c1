package plumeline.ink;

import java.util.OptionalDouble;
import java.util.function.Predicate;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;

/// Ink that is pushed aside: its way is bent by its weight, and along that way it goes by the law of a puff or stream.
///
/// Its push keeps its sideways part, its weight adds to the downward part, and it goes where both together point. A
/// puff mixes along its bent way as along a straight one, `d(Z⁴)/dt = A √(Iₓ² + (I_z + B t)²)`; a stream of half-width
/// `β s` gains `dM_z/ds = F β s √π M^(−½)` and its front goes at the same pace along the way as straight down. Holds as
/// the laws do; for a stream the bend is that of the steady stream behind the front.
///
/// **Source:** conservation of momentum; own composition, docs/derivations/ink.md.
final class Slanted implements Course {
    /// Steps along the way: this, and a share of the way so far.
    private static final double LEAST_STEP_METRES = 2e-4;

    private static final double STEP_SHARE = 0.03;

    /// Where nothing turns it down the way is given up, m.
    private static final double FARTHEST_METRES = 20;

    /// Under this share of the push downward it points level.
    private static final double LEVEL = 1e-9;

    private final Course straight;
    private final Drive drive;
    private final double aside;
    private final double down;

    /// What moves it along its way.
    private interface Drive {
        /// Time per way along it, s/m.
        double pace(double way, double push);

        /// Downward push gained per way along it.
        double gain(double way, double push);
    }

    /// A point of the way.
    private record Point(double way, double seconds, double aside, double depth, double down) {}

    private Slanted(Course straight, Drive drive, double push, double tiltRadians) {
        this.straight = straight;
        this.drive = drive;
        this.aside = push * Math.sin(tiltRadians);
        this.down = push * Math.cos(tiltRadians);
    }

    /// Bends the way of a puff.
    ///
    /// @param puff straight down, with push
    /// @param tiltRadians where the nozzle points, from straight down, rad, 0 to π/2
    /// @return the course
    static Slanted of(Puff puff, double tiltRadians) {
        Ranges.checkPositive(puff.impulseMetres4PerSecond(), "push");
        double origin = puff.radiusMetres() / puff.entrainment();
        Drive drive = new Drive() {
            @Override
            public double pace(double way, double push) {
                double z = way + origin;
                return 4 * z * z * z / (puff.factor() * push);
            }

            @Override
            public double gain(double way, double push) {
                return puff.buoyancyMetres4PerSecond2() * pace(way, push);
            }
        };
        return new Slanted(puff, drive, puff.impulseMetres4PerSecond(), tiltRadians);
    }

    /// Bends the way of a stream.
    ///
    /// @param stream straight down, with push
    /// @param tiltRadians where the nozzle points, from straight down, rad, 0 to π/2
    /// @return the course
    static Slanted of(Stream stream, double tiltRadians) {
        Ranges.checkPositive(stream.pushMetres4PerSecond2(), "push");
        double weight = stream.buoyancyFluxMetres4PerSecond3() * Math.sqrt(Math.PI);
        Drive drive = new Drive() {
            @Override
            public double pace(double way, double push) {
                return 1 / stream.frontMetresPerSecond(way);
            }

            @Override
            public double gain(double way, double push) {
                return weight * (stream.radiusMetres(way) - stream.radiusMetres(0)) / Math.sqrt(push);
            }
        };
        return new Slanted(stream, drive, stream.pushMetres4PerSecond2(), tiltRadians);
    }

    /// One Runge–Kutta step of fourth order along the way.
    private Point step(Point from, double length) {
        Point a = slope(from);
        Point b = slope(ahead(from, a, length / 2));
        Point c = slope(ahead(from, b, length / 2));
        Point d = slope(ahead(from, c, length));
        return new Point(
                from.way + length,
                from.seconds + length * (a.seconds + 2 * b.seconds + 2 * c.seconds + d.seconds) / 6,
                from.aside + length * (a.aside + 2 * b.aside + 2 * c.aside + d.aside) / 6,
                from.depth + length * (a.depth + 2 * b.depth + 2 * c.depth + d.depth) / 6,
                from.down + length * (a.down + 2 * b.down + 2 * c.down + d.down) / 6);
    }

    private static Point ahead(Point from, Point slope, double length) {
        return new Point(
                from.way + length,
                from.seconds + length * slope.seconds,
                from.aside + length * slope.aside,
                from.depth + length * slope.depth,
                from.down + length * slope.down);
    }

    private Point slope(Point at) {
        double push = Math.hypot(aside, at.down);
        return new Point(1, drive.pace(at.way, push), aside / push, at.down / push, drive.gain(at.way, push));
    }

    /// Follows the way until something holds; then the point where it begins to, else where the ink turns up or the
    /// way is given up.
    private Point follow(Predicate<Point> until) {
        Predicate<Point> ends = p -> until.test(p) || turns(p) || p.way > FARTHEST_METRES;
        Point at = new Point(0, 0, 0, 0, down);
        while (!ends.test(at)) {
            double length = LEAST_STEP_METRES + STEP_SHARE * at.way;
            Point next = step(at, length);
            if (ends.test(next)) {
                return last(at, length, ends);
            }
            at = next;
        }
        return at;
    }

    private Point last(Point from, double length, Predicate<Point> ends) {
        return step(from, Roots.end(part -> !ends.test(step(from, part)), 0, length));
    }

    private static boolean turns(Point at) {
        return at.down < 0;
    }

    private Point at(double metres) {
        return follow(p -> p.depth >= metres);
    }

    @Override
    public OptionalDouble findSeconds(double metres) {
        if (metres > straight.deepestMetres()) {
            return OptionalDouble.empty();
        }
        Point there = at(metres);
        return there.depth >= metres ? OptionalDouble.of(there.seconds) : OptionalDouble.empty();
    }

    @Override
    public double frontMetres(double seconds) {
        return follow(p -> p.seconds >= seconds).depth;
    }

    @Override
    public double radiusMetres(double metres) {
        return straight.radiusMetres(at(metres).way);
    }

    @Override
    public double dilution(double metres) {
        return straight.dilution(at(metres).way);
    }

    @Override
    public double deepestMetres() {
        if (straight.deepestMetres() < Double.POSITIVE_INFINITY) {
            return Math.min(straight.deepestMetres(), follow(_ -> false).depth);
        }
        return down > LEVEL * aside || drive.gain(1, 1) > 0 ? Double.POSITIVE_INFINITY : 0;
    }

    @Override
    public double asideMetres(double metres) {
        return at(metres).aside;
    }
}
