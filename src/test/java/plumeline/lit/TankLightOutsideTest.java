package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Light that comes into a tank, against what Fresnel and Snell leave of it, and against rays followed outward.
@Outside(
        source = "Fresnel's and Snell's laws, flux through a surface (any optics text); rays by midpoint quadrature,"
                + " written here",
        kind = "worked example")
final class TankLightOutsideTest {
    /// Water from z = 8 to 308 mm, x −300 to 300 mm, y −200 to 200 mm; glass 8 mm.
    private record Set(String lamp, int water, int can, int post, int before, String at) {
        Set(String lamp, int water, int can, int post, String at) {
            this(lamp, water, can, post, -400, at);
        }

        double lux(Vec place, Vec facing) {
            Lighting lighting = LitPlan.lighting(
                    "40 mm",
                    "100 mm",
                    lamp,
                    "tank: {tank: glass, at: [0 mm, 0 mm], water: " + water + " mm}",
                    "place: {can: {thing: can, at: [" + can + " mm, 150 mm, 8 mm]}, post: {thing: post, at: [" + post
                            + " mm, " + before + " mm]}}",
                    "lights: {key: {light: lamp, at: [" + at + "]}}");
            return LitPlan.lux(lighting, place, facing);
        }
    }

    private static Set far(double degrees) {
        double angle = Math.toRadians(degrees);
        return new Set(
                "gives: 1000000 cd",
                300,
                250,
                2000,
                -100_000 * Math.sin(angle) + " mm, " + -100_000 * Math.cos(angle) + " mm, 150 mm");
    }

    /// Unpolarised, from outside to inside: by hand from Fresnel's formulas for air, glass 1.52 and water 1.333, to and
    /// fro in the pane counted.
    private static double passing(double radians) {
        double glass = Math.asin(Math.sin(radians) / 1.52);
        double water = Math.asin(Math.sin(radians) / 1.333);
        double s = both(
                square((Math.cos(radians) - 1.52 * Math.cos(glass)) / (Math.cos(radians) + 1.52 * Math.cos(glass))),
                square((1.52 * Math.cos(glass) - 1.333 * Math.cos(water))
                        / (1.52 * Math.cos(glass) + 1.333 * Math.cos(water))));
        double p = both(
                square((1.52 * Math.cos(radians) - Math.cos(glass)) / (1.52 * Math.cos(radians) + Math.cos(glass))),
                square((1.333 * Math.cos(glass) - 1.52 * Math.cos(water))
                        / (1.333 * Math.cos(glass) + 1.52 * Math.cos(water))));
        return (s + p) / 2;
    }

    private static double square(double value) {
        return value * value;
    }

    private static double both(double one, double other) {
        return (1 - one) * (1 - other) / (1 - one * other);
    }

    /// A lamp of 100 lx at 100 m: what passes the front wall lights a surface along it by cos of the angle outside, and
    /// one turned to the light in the water by that over cos of the angle inside.
    @ParameterizedTest
    @CsvSource({"0", "20", "40", "60"})
    void farLamp_isDimmedAndBent(double degrees) {
        double air = Math.toRadians(degrees);
        double water = Math.asin(Math.sin(air) / 1.333);
        Vec place = new Vec(0, -100e-3, 0.15);
        double along = 100 * Math.cos(air) * passing(air);
        assertThat(passing(0)).isCloseTo(0.9535, within(0.0001));
        Set far = far(degrees);
        assertThat(far.lux(place, new Vec(0, -1, 0)) / along).isCloseTo(1, within(0.005));
        Vec turned = new Vec(-Math.sin(water), -Math.cos(water), 0);
        assertThat(far.lux(place, turned) / (along / Math.cos(water))).isCloseTo(1, within(0.005));
    }

    /// A round lamp and a square one of the same face and candelas, 1.5 m before the front glass, give the same to a
    /// tenth of a per cent.
    @Test
    void roundLamp_isAsASquareOne() {
        Set square = new Set("panel: [100 mm, 100 mm], gives: 1000 cd", 300, 250, 2000, "0 mm, -1700 mm, 150 mm");
        Set round = new Set("disc: 112.838 mm, gives: 1000 cd", 300, 250, 2000, "0 mm, -1700 mm, 150 mm");
        Vec place = new Vec(0, -0.1, 0.15);
        Vec facing = new Vec(0, -1, 0);
        assertThat(round.lux(place, facing) / square.lux(place, facing)).isCloseTo(1, within(0.001));
    }

    /// From straight above through the surface 1 − 0.0204 passes (Fresnel, 1.333); into a dry tank all of it does.
    @Test
    void fromAbove_theSurfaceIsTheWindow() {
        Set above = new Set("gives: 1000000 cd", 300, 250, 2000, "0 mm, 0 mm, 100 m");
        assertThat(above.lux(new Vec(0, 0, 0.1), Vec.UP)).isCloseTo(97.96 * square(100 / 99.75), within(0.3));
        Set dry = new Set("gives: 1000000 cd", 1, 250, 2000, "0 mm, 0 mm, 100 m");
        assertThat(dry.lux(new Vec(0, 0, 0.1), Vec.UP)).isCloseTo(100 * square(100 / 99.9), within(0.02));
    }

    /// A panel before the front glass: ways from the place out through the front wall, bent by Snell at both faces,
    /// that meet the panel. A can in the water, a post before the glass or one along which light grazes it keep
    /// some off.
    @ParameterizedTest
    @CsvSource({
        "250, 2000, -400, -150, -600, ''",
        "0, 2000, -400, -150, -600, ''",
        "250, -60, -400, -150, -600, ''",
        "250, -330, -262, -900, -420, ''",
        "250, -330, -240, -900, -420, ''",
        "250, 2000, -400, -150, -600, hot_centre: 1.5 stops",
        "250, 2000, -400, -150, -600, 'window: [200 mm, 100 mm], field: bright'",
        "250, 2000, -400, -150, -600, grid: 40 deg"
    })
    void nearPanel_isWhatWaysFollowedOutwardMeet(int can, int post, int before, int x, int y, String keys) {
        Uneven uneven = Uneven.of(keys);
        Set near = new Set(
                "panel: [400 mm, 200 mm], gives: 1000 cd" + (keys.isEmpty() ? "" : ", " + keys),
                300,
                can,
                post,
                before,
                x + " mm, " + y + " mm, 150 mm");
        // It faces what is nearest to the lens: the can's middle or the post's.
        Vec middle = new Vec(x / 1000.0, y / 1000.0, 0.15);
        Vec facing = nearest(can, post, before).minus(middle).unit();
        Vec right = facing.cross(Vec.UP).unit();
        Vec up = right.cross(facing);
        Vec place = can == 0 ? new Vec(0.03, 0.19, 0.1) : new Vec(0.05, 0.05, 0.12);
        // Of a lamp far aside the surface is turned from what comes in by the side wall.
        Vec out = x == -900 ? new Vec(0.6, -0.8, 0) : new Vec(0, -1, 0);
        double luminance = 1000 / (0.08 * uneven.mean());
        double sum = 0;
        double open = 0;
        int each = 1200;
        for (int i = 0; i < each; i++) {
            for (int j = 0; j < each; j++) {
                Vec face = new Vec(-0.3 + 0.6 * (i + 0.5) / each, -0.2, 0.008 + 0.292 * (j + 0.5) / each);
                Vec way = face.minus(place);
                double length = way.lengthMetres();
                Vec unit = way.times(1 / length);
                double depth = -unit.y();
                double solid = depth * (0.6 / each) * (0.292 / each) / (length * length);
                Vec glass = scaled(unit, 1.333 / 1.52);
                Vec air = scaled(unit, 1.333);
                if (glass == null || air == null) {
                    continue;
                }
                Vec outer = face.plus(glass.times(0.008 / -glass.y()));
                double on = middle.minus(outer).dot(facing) / air.dot(facing);
                Vec hit = outer.plus(air.times(on)).minus(middle);
                if (on > 0 && Math.abs(hit.dot(right)) < 0.2 && Math.abs(hit.dot(up)) < 0.1) {
                    double light = luminance
                            * 1.333
                            * 1.333
                            * passing(Math.acos(-air.y()))
                            * uneven.share(hit.dot(right) / 0.2, hit.dot(up) / 0.1, tangent(air, facing))
                            * solid
                            * Math.max(0, unit.dot(out));
                    open += light;
                    boolean isHidden = can == 0 && meets(place, unit, 0, 0.15, 0.02, 0.008, 0.108, length)
                            || meets(outer, air, post / 1000.0, before / 1000.0, 0.015, 0, 0.6, on);
                    sum += isHidden ? 0 : light;
                }
            }
        }
        assertThat(sum / open).isBetween(0.1, can == 250 && post == 2000 ? 1 : 0.99);
        assertThat(near.lux(place, out) / sum).isCloseTo(1, within(0.005));
    }

    /// A strip that stands over the water line's plane and under it: its lower part comes through the front wall, its
    /// upper one through the surface, to which it comes by the rim's opening and through the pane over the water. 1
    /// mm, 50 mm and 150 mm under the rim. Directions over the place, midpoint by midpoint.
    @ParameterizedTest
    @CsvSource({
        "399, -400, 305, 900",
        "399, -260, 380, 900",
        "399, -300, 330, 300",
        "350, -500, 900, 900",
        "350, -400, 600, 400",
        "250, -400, 600, 900"
    })
    void tallLamp_comesThroughGlassAndSurface(int water, int y, int z, int high) {
        Lighting tall = LitPlan.lighting(
                "40 mm",
                "100 mm",
                "panel: [300 mm, " + high + " mm], gives: 1000 cd",
                "tank: {tank: glass, at: [0 mm, 0 mm], water: " + water + " mm}",
                "lights: {key: {light: lamp, at: [0 mm, " + y + " mm, " + z + " mm], turn: 0 deg}}");
        Vec place = new Vec(0.03, 0.05, 0.2);
        Vec out = new Vec(0, -0.6, 0.8);
        Vec right = new Vec(1, 0, 0);
        Vec up = right.cross(out);
        Vec lamp = new Vec(0, y / 1000.0, z / 1000.0);
        int each = 1500;
        double sum = 0;
        for (int i = 0; i < each; i++) {
            for (int j = 0; j < each; j++) {
                double radius = Math.sqrt((i + 0.5) / each);
                double round = 2 * Math.PI * (j + 0.5) / each;
                Vec way = out.times(Math.sqrt(1 - radius * radius))
                        .plus(right.times(radius * Math.cos(round)))
                        .plus(up.times(radius * Math.sin(round)));
                sum += met(place, way, 0.008 + water / 1000.0, lamp, high / 2000.0);
            }
        }
        double luminance = 1000 / (0.3 * high / 1000);
        double expected = Math.PI * luminance * 1.333 * 1.333 * sum / each / each;
        assertThat(LitPlan.lux(tall, place, out) / expected).isCloseTo(1, within(0.005));
    }

    /// What passes of a way from the water that meets an upright strip which faces the back.
    private static double met(Vec place, Vec way, double level, Vec lamp, double halfHigh) {
        double front = way.y() < 0 ? (-0.2 - place.y()) / way.y() : Double.POSITIVE_INFINITY;
        double top = way.z() > 0 ? (level - place.z()) / way.z() : Double.POSITIVE_INFINITY;
        double side = (Math.signum(way.x()) * 0.3 - place.x()) / way.x();
        double on = Math.min(front, top);
        if (side < on || !(on < 10)) {
            return 0;
        }
        Vec normal = front < top ? new Vec(0, -1, 0) : Vec.UP;
        Vec aside = way.minus(normal.times(way.dot(normal))).times(1.333);
        double sine = aside.lengthMetres();
        Vec at = place.plus(way.times(on));
        if (sine >= 1 || at.z() < 0.008) {
            return 0;
        }
        Vec start = front < top
                ? at.plus(normal.times(0.008)).plus(aside.times(0.008 / Math.sqrt(1.52 * 1.52 - sine * sine)))
                : at;
        Vec air = aside.plus(normal.times(Math.sqrt(1 - sine * sine)));
        Vec from = front < top ? start : overTheWater(start, air);
        double far = (lamp.y() - from.y()) / air.y();
        Vec hit = from.plus(air.times(far)).minus(lamp);
        if (air.y() >= 0 || far <= 0 || Math.abs(hit.x()) > 0.15 || Math.abs(hit.z()) > halfHigh) {
            return 0;
        }
        return front < top ? passing(Math.asin(sine)) : surface(Math.asin(sine)) * passed(start, from, air);
    }

    /// Where a way on from the surface goes on outside: through the opening, 400 mm over the floor, as it came; else
    /// from the outer face of the pane that it meets, shifted in its 8 mm. High over all where the rim or a seam is
    /// in its way.
    private static Vec overTheWater(Vec start, Vec air) {
        Vec rim = start.plus(air.times((0.408 - start.z()) / air.z()));
        if (Math.abs(rim.x()) < 0.3 && Math.abs(rim.y()) < 0.2) {
            return start;
        }
        double side = (Math.signum(air.x()) * 0.3 - start.x()) / air.x();
        double end = (Math.signum(air.y()) * 0.2 - start.y()) / air.y();
        Vec normal = side < end ? new Vec(Math.signum(air.x()), 0, 0) : new Vec(0, Math.signum(air.y()), 0);
        Vec aside = air.minus(normal.times(air.dot(normal)));
        Vec out = start.plus(air.times(Math.min(side, end)))
                .plus(normal.times(0.008))
                .plus(aside.times(0.008 / Math.sqrt(1.52 * 1.52 - aside.dot(aside))));
        boolean isLost = out.z() > 0.408 || Math.abs(side < end ? out.y() : out.x()) > (side < end ? 0.208 : 0.308);
        return isLost ? new Vec(0, 0, 1000) : out;
    }

    /// What passes: all by the opening, through a wall what a pane in air lets through.
    private static double passed(Vec start, Vec from, Vec air) {
        if (from.equals(start)) {
            return 1;
        }
        double cosine = Math.abs(Math.abs(from.x()) > 0.3079 ? air.x() : air.y());
        double glass = Math.sqrt(1 - (1 - cosine * cosine) / (1.52 * 1.52));
        double s = square((cosine - 1.52 * glass) / (cosine + 1.52 * glass));
        double p = square((1.52 * cosine - glass) / (1.52 * cosine + glass));
        return ((1 - s) / (1 + s) + (1 - p) / (1 + p)) / 2;
    }

    private static double surface(double radians) {
        double water = Math.asin(Math.sin(radians) / 1.333);
        double s =
                square((Math.cos(radians) - 1.333 * Math.cos(water)) / (Math.cos(radians) + 1.333 * Math.cos(water)));
        double p =
                square((1.333 * Math.cos(radians) - Math.cos(water)) / (1.333 * Math.cos(radians) + Math.cos(water)));
        return 1 - (s + p) / 2;
    }

    private static double tangent(Vec way, Vec normal) {
        return way.cross(normal).lengthMetres() / Math.abs(way.dot(normal));
    }

    private static Vec nearest(int can, int post, int before) {
        Vec lens = new Vec(0, -2, 0.1);
        Vec one = new Vec(can / 1000.0, 0.15, 0.058);
        Vec other = new Vec(post / 1000.0, before / 1000.0, 0.3);
        return one.distanceMetres(lens) < other.distanceMetres(lens) ? one : other;
    }

    /// Snell across a wall whose normal is y: what runs along it is so many times as much.
    private static Vec scaled(Vec unit, double ratio) {
        double x = unit.x() * ratio;
        double z = unit.z() * ratio;
        double rest = 1 - x * x - z * z;
        return rest > 0 ? new Vec(x, -Math.sqrt(rest), z) : null;
    }

    private static boolean meets(
            Vec from, Vec unit, double x, double y, double radius, double low, double high, double length) {
        double a = unit.x() * unit.x() + unit.y() * unit.y();
        double b = unit.x() * (from.x() - x) + unit.y() * (from.y() - y);
        double c = square(from.x() - x) + square(from.y() - y) - radius * radius;
        double root = b * b - a * c;
        if (root <= 0) {
            return false;
        }
        double enter = Math.max(0, (-b - Math.sqrt(root)) / a);
        double leave = Math.min(length, (-b + Math.sqrt(root)) / a);
        double one = from.z() + enter * unit.z();
        double other = from.z() + leave * unit.z();
        return enter < leave && Math.min(one, other) < high && Math.max(one, other) > low;
    }
}
