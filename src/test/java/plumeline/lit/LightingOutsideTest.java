package plumeline.lit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// The light of a plan's lamps, against sums by hand and against a quadrature of its own.
@Outside(
        source = "inverse square and cosine law, Lambert's law (any text on photometry); midpoint quadrature with rays,"
                + " written here",
        kind = "worked example")
final class LightingOutsideTest {
    private static Lighting lighting(String lamp, String thing, String at, String more) {
        return LitPlan.lighting(
                "60 mm",
                "300 mm",
                lamp,
                "place: {can: {thing: " + thing + ", at: [0 mm, 200 mm]}}",
                "lights: {key: {light: lamp, at: [" + at + "], " + more + "}}");
    }

    private static double lux(Lighting lighting, Vec place, Vec facing) {
        return LitPlan.lux(lighting, place, facing);
    }

    /// A lamp of 800 lx at 1 m is 800 cd; at 2 m it gives 200 lx, on a surface turned by 60 degrees 100 lx; at a tenth
    /// of its level a tenth.
    @ParameterizedTest
    @CsvSource({
        "gives: 800 lx at 1 m, turn: 0 deg, 1",
        "gives: 800 cd, turn: 0 deg, 1",
        "gives: 800 cd, level: 10 %, 0.1",
        "'point: yes, gives: 800 cd, beam: 60 deg', turn: 0 deg, 1"
    })
    void point_byInverseSquareAndCosine(String lamp, String more, double share) {
        Lighting lighting = lighting(
                lamp, "can", "1000 mm, -2000 mm, 500 mm", more.equals("level: 10 %") ? more + ", turn: 0 deg" : more);
        Vec place = new Vec(1, 0, 0.5);
        assertThat(lux(lighting, place, new Vec(0, -1, 0))).isCloseTo(200 * share, within(1e-5));
        double slant = Math.toRadians(60);
        assertThat(lux(lighting, place, new Vec(Math.sin(slant), -Math.cos(slant), 0)))
                .isCloseTo(100 * share, within(1e-3));
    }

    /// Lumens: 1257 lm all round are 100 cd; 336.7 lm in an even cone of 60 degrees are 400 cd (a unit converter's
    /// page). At half the beam angle half is left.
    @Test
    void beams_haveTheirLumensAndAngles() {
        Vec ahead = new Vec(1, -1, 0.5);
        Vec back = new Vec(0, -1, 0);
        String at = "1000 mm, -2000 mm, 500 mm";
        assertThat(lux(lighting("gives: 1256.637 lm", "can", at, "turn: 0 deg"), ahead, back))
                .isCloseTo(100, within(1e-3));
        assertThat(lux(lighting("gives: 336.7 lm, beam: 60 deg", "can", at, "turn: 0 deg"), ahead, back))
                .isCloseTo(400, within(0.1));
        assertThat(lux(lighting("gives: 100 cd, beam: 60 deg", "can", at, "turn: 30 deg"), ahead, back))
                .isCloseTo(50, within(1e-5));
        assertThat(lux(lighting("gives: 100 cd, beam: 60 deg", "can", at, "tilt: 30 deg"), ahead, back))
                .isCloseTo(50, within(1e-5));
    }

    /// An even panel's 4000 lx at 1 m come of `L = E/(π F)`; as lumens they are `π L A`, as candelas `L A`.
    @Test
    void panel_isAsBrightHoweverItIsGiven() {
        String at = "1000 mm, -1000 mm, 500 mm";
        Vec place = new Vec(1, 0, 0.5);
        Vec back = new Vec(0, -1, 0);
        double given =
                lux(lighting("panel: [300 mm, 1200 mm], gives: 4000 lx at 1 m", "can", at, "turn: 0 deg"), place, back);
        assertThat(given).isCloseTo(4000, within(1e-3));
        // Four corners: factor of a rectangle over its corner, Howell B-3, a = 0.15, b = 0.6, c = 1.
        double x = 0.15;
        double y = 0.6;
        double corner = (x / Math.sqrt(1 + x * x) * Math.atan(y / Math.sqrt(1 + x * x))
                        + y / Math.sqrt(1 + y * y) * Math.atan(x / Math.sqrt(1 + y * y)))
                / (2 * Math.PI);
        double luminance = 4000 / (Math.PI * 4 * corner);
        double candela = luminance * 0.36;
        assertThat(lux(
                        lighting("panel: [300 mm, 1200 mm], gives: " + candela + " cd", "can", at, "turn: 0 deg"),
                        place,
                        back))
                .isCloseTo(4000, within(0.01));
        assertThat(lux(
                        lighting(
                                "panel: [300 mm, 1200 mm], gives: " + Math.PI * candela + " lm",
                                "can",
                                at,
                                "turn: 0 deg"),
                        place,
                        back))
                .isCloseTo(4000, within(0.01));
    }

    /// A can before a panel: the panel in 600 by 200 parts, each counted by its cosines over its distance's square
    /// where the way to it passes the can.
    @ParameterizedTest
    @CsvSource({"0, 0.4, 0.15", "0.1, 0.5, 0.3", "-0.02, 0.3, 0.05", "0.05, 0.4, 0.2"})
    void behindACan_isWhatRaysPass(double x, double y, double z) {
        Lighting lighting = lighting(
                "panel: [600 mm, 400 mm], gives: 1000 lx at 1 m", "can", "0 mm, -600 mm, 250 mm", "turn: 0 deg");
        Vec place = new Vec(x, y, z);
        double found = lux(lighting, place, new Vec(0, -1, 0));
        double all = 0;
        double passing = 0;
        int across = 600;
        int up = 200;
        for (int i = 0; i < across; i++) {
            for (int j = 0; j < up; j++) {
                Vec part = new Vec(-0.3 + 0.6 * (i + 0.5) / across, -0.6, 0.05 + 0.4 * (j + 0.5) / up);
                Vec way = part.minus(place);
                double square = way.dot(way);
                double weight = way.y() * way.y() / (square * square);
                all += weight;
                passing += meets(place, way) ? 0 : weight;
            }
        }
        double open = lux(
                lighting(
                        "panel: [600 mm, 400 mm], gives: 1000 lx at 1 m",
                        "glass",
                        "0 mm, -600 mm, 250 mm",
                        "turn: 0 deg"),
                place,
                new Vec(0, -1, 0));
        assertThat(found / open).isCloseTo(passing / all, within(0.003));
        assertThat(passing / all).isBetween(0.0, 0.999);
    }

    /// Whether a way meets the can: radius 30 mm about (0, 0.2), to 0.3 m high.
    private static boolean meets(Vec from, Vec way) {
        double a = way.x() * way.x() + way.y() * way.y();
        double b = way.x() * from.x() + way.y() * (from.y() - 0.2);
        double c = from.x() * from.x() + (from.y() - 0.2) * (from.y() - 0.2) - 0.0009;
        double root = b * b - a * c;
        if (root <= 0) {
            return false;
        }
        double enter = Math.max(0, (-b - Math.sqrt(root)) / a);
        double leave = Math.min(1, (-b + Math.sqrt(root)) / a);
        double one = from.z() + enter * way.z();
        double other = from.z() + leave * way.z();
        return enter < leave && Math.min(one, other) < 0.3 && Math.max(one, other) > 0;
    }

    /// Doubling every length with the candelas as they are quarters the light.
    @Test
    void twiceAsLarge_isAQuarter() {
        Vec back = new Vec(0, -1, 0);
        double one = lux(
                lighting("panel: [300 mm, 600 mm], gives: 900 cd", "can", "1000 mm, -500 mm, 300 mm", "turn: 0 deg"),
                new Vec(1.1, 0.05, 0.2),
                back);
        double two = lux(
                lighting("panel: [600 mm, 1200 mm], gives: 900 cd", "can", "2000 mm, -1000 mm, 600 mm", "turn: 0 deg"),
                new Vec(2.2, 0.1, 0.4),
                back);
        assertThat(one / two).isCloseTo(4, within(1e-5));
    }
}
