package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

/// Mirror images in a cylinder against the law of reflection and worked cases.
@Outside(
        source = "Alhazen's problem by its quartic (Fujimura and others 2019); the law of reflection; a crew's sheet",
        kind = "worked example")
final class RoundMirrorOutsideTest {
    private static Vec at(double millimetres, double degrees) {
        double radians = Math.toRadians(degrees);
        return new Vec(1e-3 * millimetres * Math.cos(radians), 1e-3 * millimetres * Math.sin(radians), 0);
    }

    /// Alhazen's problem, roots of its quartic (Fujimura and others 2019, from a table of cases checked to 1e-9):
    /// radius 33 mm, camera at 0 deg.
    @ParameterizedTest
    @CsvSource({
        "500, 500, 80, 40, , , ",
        "600, 500, 60, 30.1663, 31.8284, 571.710, 471.659",
        "600, 500, 90, 45.2328, 47.5590, 577.236, 477.137",
        "1000, 300, 120, 61.9816, 63.6766, 984.929, 283.905",
        "400, 150, 30, 16.1941, 17.6255, 368.424, 118.216",
        "300, 2000, 140, 67.4264, 73.4800, 288.944, 1990.366"
    })
    void alhazen(
            double camera,
            double light,
            double round,
            double azimuth,
            Double incidence,
            Double toCamera,
            Double toLight) {
        RoundMirror.Spot spot =
                new RoundMirror(0.033).find(at(camera, 0), at(light, round)).orElseThrow();
        assertThat(Math.toDegrees(spot.azimuthRadians())).isCloseTo(azimuth, within(5e-5));
        if (incidence != null) {
            assertThat(Math.toDegrees(spot.incidenceRadians())).isCloseTo(incidence, within(5e-5));
            assertThat(1e3 * spot.toCameraMetres()).isCloseTo(toCamera, within(5e-4));
            assertThat(1e3 * spot.toLightMetres()).isCloseTo(toLight, within(5e-4));
        }
    }

    /// The edges of a panel of 300 mm, 500 mm off at 60 deg, facing the axis; its stripe is 8.586 mm wide in the axis'
    /// plane of 66 mm (own perspective).
    @Test
    void panelsEdges() {
        RoundMirror can = new RoundMirror(0.033);
        Vec camera = at(600, 0);
        Vec along = at(150, 150);
        RoundMirror.Stripe stripe = can.stripes(
                        camera, at(500, 60).plus(along), at(500, 60).minus(along))
                .getFirst();
        double half = 33 * 600 / Math.sqrt(600 * 600 - 33 * 33);
        assertThat(half * (stripe.right() - stripe.left())).isCloseTo(8.58588, within(2e-3));
    }

    /// Heights go evenly along the way: camera 300 mm, light 800 mm up.
    @Test
    void height() {
        Vec camera = at(600, 0).plus(new Vec(0, 0, 0.3));
        Vec light = at(500, 60).plus(new Vec(0, 0, 0.8));
        assertThat(new RoundMirror(0.033)
                        .find(camera, light)
                        .orElseThrow()
                        .place()
                        .z())
                .isCloseTo(0.573973, within(1e-6));
    }

    /// From far away a light at right angles is seen at 45 deg, sin 45 deg of the half-width across.
    @Test
    void farAway_halfTheAngle() {
        RoundMirror can = new RoundMirror(0.033);
        Vec camera = at(1e9, 0);
        RoundMirror.Spot spot = can.find(camera, at(1e9, 90)).orElseThrow();
        assertThat(Math.toDegrees(spot.azimuthRadians())).isCloseTo(45, within(1e-5));
        assertThat(33 * can.across(camera, spot.azimuthRadians())).isCloseTo(23.3345, within(1e-3));
    }

    /// Stripes at 50, 75 and 90 % of the half-width need the light 60, 97 and 128 deg round from far (twice the arc
    /// sine), 59, 96 and 127 from 961 mm with a far light, 57, 93 and 123 with the light 500 mm off.
    @ParameterizedTest
    @CsvSource({"0.5, 60, 59, 57", "0.75, 97, 96, 93", "0.9, 128, 127, 123"})
    void bearings(double across, double far, double near, double nearLight) {
        RoundMirror can = new RoundMirror(0.033);
        assertThat(Math.toDegrees(can.bearing(at(1e9, 0), across, 1e5))).isCloseTo(far, within(0.6));
        assertThat(Math.toDegrees(can.bearing(at(961, 0), across, 1e5))).isCloseTo(near, within(0.6));
        assertThat(Math.toDegrees(can.bearing(at(961, 0), across, 0.5))).isCloseTo(nearLight, within(0.6));
    }

    /// At every spot light comes in as steep as it goes out, and the bearing's way leads back to the light.
    @Test
    void everySpot_keepsTheLaw_andTheInverseClosesOnIt() {
        Random random = new Random(4);
        int mirrored = 0;
        for (int i = 0; i < 2000; i++) {
            RoundMirror can = new RoundMirror(0.005 + 0.1 * random.nextDouble());
            Vec camera = at(1e3 * can.radiusMetres() * (1.01 + 20 * random.nextDouble()), 360 * random.nextDouble());
            Vec light = at(1e3 * can.radiusMetres() * (1.01 + 20 * random.nextDouble()), 360 * random.nextDouble());
            var found = can.find(camera, light);
            if (found.isEmpty()) {
                continue;
            }
            mirrored++;
            RoundMirror.Spot spot = found.get();
            Vec out = new Vec(spot.place().x(), spot.place().y(), 0).unit();
            Vec toCamera = camera.minus(spot.place()).unit();
            Vec toLight = light.minus(spot.place()).unit();
            assertThat(out.dot(toCamera)).isCloseTo(out.dot(toLight), within(1e-9));
            assertThat(out.dot(toCamera)).isGreaterThan(-1e-9);
            assertThat(toCamera.plus(toLight).cross(out).lengthMetres()).isCloseTo(0, within(1e-9));
            double bearing =
                    can.bearing(camera, can.across(camera, spot.azimuthRadians()), Math.hypot(light.x(), light.y()));
            double round = Math.atan2(light.y(), light.x()) - Math.atan2(camera.y(), camera.x());
            assertThat(Math.IEEEremainder(bearing - round, 2 * Math.PI)).isCloseTo(0, within(1e-6));
        }
        assertThat(mirrored).isBetween(1000, 1990);
    }

    @Test
    void hiddenPlaces_areMirroredNowhere_andInsideIsRefused() {
        RoundMirror can = new RoundMirror(0.033);
        assertThat(can.find(at(600, 0), at(500, 180))).isEmpty();
        assertThat(can.find(at(600, 0), at(500, 0)).orElseThrow().azimuthRadians())
                .isZero();
        assertThatThrownBy(() -> can.find(at(600, 0), at(20, 0))).isInstanceOf(IllegalArgumentException.class);
    }
}
