package plumeline.ask.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.answer.Sensor;
import plumeline.optics.FarLimit;
import plumeline.optics.LensModel;
import plumeline.tidy.Outside;

/// Framing against the reference case and the briefs of the job, and against rays traced by matrices.
final class FramingOutsideTest {
    private static final Sensor UHD = new Sensor(0.036, 0.02025, 3840);
    private static final Sensor UPRIGHT = new Sensor(0.02025, 0.036, 2160);
    private static final LensModel MACRO = LensModel.ofFocalLength(0.1);

    @Test
    @Outside(
            source = "the contract's own worked example of framing",
            place = "questions, Two questions in full",
            kind = "worked example",
            printedDigits = 4)
    void contractExample_givesItsNumbers() {
        Framing.Found found = Framing.answer(can(8, 2 * 0.036 / 3840, new Framing.Wall.None()));
        assertThat(found.distanceMetres() * 1e3).isCloseTo(962.1, within(0.05));
        assertThat(found.fromSensorMetres() * 1e3).isCloseTo(1073.7, within(0.05));
        assertThat(found.magnification()).isCloseTo(0.1160, within(0.00005));
        assertThat(found.workingFNumber()).isCloseTo(8.93, within(0.005));
        assertThat(found.lightLossStops()).isCloseTo(0.32, within(0.005));
        assertThat(found.zone().nearMetres() * 1e3).isCloseTo(949.8, within(0.05));
        assertThat(farMetres(found) * 1e3).isCloseTo(974.7, within(0.05));
    }

    @Test
    @Outside(
            source = "table of the job's questions with typical answers, reference case (thin-lens arithmetic)",
            place = "rows Distance, Sharp depth, Light",
            kind = "worked example",
            printedDigits = 2)
    void referenceCase_distanceAndSharpDepth() {
        checkCan(8, 26);
        checkCan(11, 36);
        checkCan(16, 53);
        Framing.Thing can = new Framing.Thing(0.066, 0.122, 0.066);
        Framing.Found found = Framing.answer(inputs(UHD, can, 8, 2e-5, new Framing.Fill.Height(0.7)));
        assertThat(found.distanceMetres() * 1e3).isCloseTo(961, within(0.5));
        assertThat(found.fromSensorMetres() * 1e3).isCloseTo(1072, within(0.5));
        assertThat(found.lightLossStops()).isCloseTo(0.32, within(0.005));
        Sensor fullHeight = new Sensor(0.036, 0.024, 3840);
        Framing.Found other = Framing.answer(inputs(fullHeight, can, 8, 2e-5, new Framing.Fill.Height(0.7)));
        assertThat(other.distanceMetres() * 1e3).isCloseTo(826, within(0.5));
    }

    private static void checkCan(double fNumber, double depthMillimetres) {
        Framing.Thing can = new Framing.Thing(0.066, 0.122, 0.066);
        Framing.Found found = Framing.answer(inputs(UHD, can, fNumber, 2e-5, new Framing.Fill.Height(0.7)));
        double depth = found.zone().findDepthMetres().orElseThrow() * 1e3;
        assertThat(depth).isCloseTo(depthMillimetres, within(0.5));
    }

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shots A2 and A3",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 3)
    void briefA_tankAndLabel() {
        Framing.Thing flacon = new Framing.Thing(0.042, 0.118, 0.042);
        Framing.Fill sixty = new Framing.Fill.Height(0.6);
        Framing.Found dry = Framing.answer(inputs(UHD, flacon, 8, 2e-5, sixty));
        assertThat(dry.distanceMetres() * 1e3).isCloseTo(1071, within(0.5));
        Framing.Inputs wet = new Framing.Inputs(
                UHD,
                MACRO,
                new Framing.Stop(8, 2e-5),
                flacon,
                sixty,
                new Framing.Front.Unknown(),
                new Framing.Wall.Tank(0, 0.008, 0.120));
        assertThat(Framing.answer(wet).distanceMetres() * 1e3).isCloseTo(1104, within(0.5));
        Framing.Thing label = new Framing.Thing(0.06, 0.05, 0);
        Framing.Found close = Framing.answer(inputs(UHD, label, 11, 2e-5, new Framing.Fill.Width(1)));
        assertThat(close.zone().findDepthMetres().orElseThrow() * 1e3).isCloseTo(2.0, within(0.05));
        assertThat(close.lightLossStops()).isCloseTo(1.36, within(0.005));
    }

    @Test
    @Outside(
            source = "brief B as a crew would hand it over, shot B2 (camera upright)",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 3)
    void briefB_tinUpright() {
        Framing.Thing tin = new Framing.Thing(0.076, 0.096, 0.076);
        Framing.Found found = Framing.answer(inputs(UPRIGHT, tin, 8, 2e-5, new Framing.Fill.Height(0.3)));
        assertThat(found.distanceMetres() * 1e3).isCloseTo(989, within(0.5));
        assertThat(UPRIGHT.widthMetres() / found.magnification() * 1e3).isCloseTo(180, within(0.5));
        assertThat(UPRIGHT.heightMetres() / found.magnification() * 1e3).isCloseTo(320, within(0.5));
        assertThat(0.076 * found.magnification() / UPRIGHT.widthMetres()).isCloseTo(0.42, within(0.005));
    }

    @Test
    @Outside(
            source = "ray matrices (translation, thin lens, flat boundary): any text on paraxial optics",
            place = "this test",
            kind = "closed form by another way",
            printedDigits = 9)
    void tank_tracedRays_fillTheFrameAndBlurAsPromised() {
        Framing.Inputs inputs = can(8, 2e-5, new Framing.Wall.Tank(0.02, 0.010, 0.150));
        Framing.Found found = Framing.answer(inputs);
        double sensorMetres = found.fromSensorMetres() - found.distanceMetres();
        double edge = heightOnSensor(found.distanceMetres(), found.distanceMetres(), 0.1222 / 2, 0.003, sensorMetres);
        assertThat(2 * Math.abs(edge)).isCloseTo(0.7 * 0.02025, within(1e-12));
        for (double place : new double[] {found.zone().nearMetres(), farMetres(found)}) {
            double radius = 0.1 / 8 / 2;
            double slope = slopeToHit(place, found.distanceMetres(), radius);
            double blur = 2 * Math.abs(heightOnSensor(place, found.distanceMetres(), 0, slope, sensorMetres));
            assertThat(blur).isCloseTo(2e-5, within(1e-12));
        }
    }

    /// A paraxial ray from a place in the water (height, slope there) through wall, air and lens to the sensor.
    private static double heightOnSensor(
            double placeMetres, double middleMetres, double height, double slope, double sensorMetres) {
        double[] ray = atLens(placeMetres, middleMetres, height, slope);
        double bent = ray[1] - ray[0] / 0.1;
        return ray[0] + bent * sensorMetres;
    }

    private static double[] atLens(double placeMetres, double middleMetres, double height, double slope) {
        double wetFace = middleMetres - 0.150;
        double h = height + slope * (placeMetres - wetFace);
        double inGlass = slope * 1.333 / 1.52;
        h += inGlass * 0.010;
        double inAir = inGlass * 1.52;
        return new double[] {h + inAir * (wetFace - 0.010), inAir};
    }

    /// Linear in the slope, so two trial rays are enough.
    private static double slopeToHit(double placeMetres, double middleMetres, double radius) {
        return radius / atLens(placeMetres, middleMetres, 0, 1)[0];
    }

    private static Framing.Inputs can(double fNumber, double blurMetres, Framing.Wall wall) {
        return new Framing.Inputs(
                UHD,
                MACRO,
                new Framing.Stop(fNumber, blurMetres),
                new Framing.Thing(0.0662, 0.1222, 0.0662),
                new Framing.Fill.Height(0.7),
                new Framing.Front.Unknown(),
                wall);
    }

    private static Framing.Inputs inputs(
            Sensor sensor, Framing.Thing thing, double fNumber, double blurMetres, Framing.Fill fill) {
        return new Framing.Inputs(
                sensor,
                MACRO,
                new Framing.Stop(fNumber, blurMetres),
                thing,
                fill,
                new Framing.Front.Unknown(),
                new Framing.Wall.None());
    }

    private static double farMetres(Framing.Found found) {
        return switch (found.zone().far()) {
            case FarLimit.At(double metres) -> metres;
            case FarLimit.Endless() -> throw new AssertionError("endless");
        };
    }
}
