package plumeline.ask.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.algorithm.ConvexHull;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import plumeline.answer.Sensor;
import plumeline.search.Search;
import plumeline.tidy.Outside;

/// Reveal's promises, checked with outlines drawn point by point and compared as polygons, and the brief's findings.
final class RevealOutsideTest {
    private static final Sensor UHD = new Sensor(0.036, 0.02025, 3840);
    private static final long SEED = 90_2026;
    private static final int RIM = 720;

    @Test
    @Outside(
            source = "brief A as a crew would hand it over, shot A1 (four flacons in file, 100 mm apart)",
            place = "Expected findings",
            kind = "worked example",
            printedDigits = 2)
    void briefA_file() {
        Reveal.Inputs inputs = flacons(0.600, 0.059, -0.600, 0);
        double[] file = {0, 100, 0, 200, 0, 300};
        Reveal.Found found = Reveal.found(inputs, file);
        assertThat(found.holds()).isEqualTo(Reveal.Holds.ALL);
        assertThat(found.places().get(1).aside().least() * 1e3).isCloseTo(3.5, within(0.05));
        assertThat(found.places().get(2).aside().least() * 1e3).isCloseTo(7.0, within(0.05));
        assertThat(found.places().get(3).aside().least() * 1e3).isCloseTo(10.5, within(0.05));
        assertThat(found.camera().aside().least() * 1e3).isCloseTo(21, within(0.5));
        RevealSet set = new RevealSet(inputs);
        double[] values = RevealSet.values(inputs, file);
        RevealView end = set.end(values);
        // From left to right the fourth comes first. The brief's 25 / 20 / 15 are mm at the nearer neighbour's depth.
        double[] gaps = set.gaps(end);
        assertThat(gaps).hasSize(3);
        for (int i = 0; i < 3; i++) {
            double way = Math.hypot(600, 600 + 100 * i);
            double depth = way * Math.cos(Math.atan2(600, 600 + 100 * i) - end.turnRadians());
            double frame = 36 / (50 * 600 / 550.0);
            assertThat(gaps[2 - i] / 100 * frame * depth).isCloseTo(25 - 5 * i, within(0.5));
        }
        assertThat(Math.toDegrees(end.turnRadians())).isCloseTo(39.5, within(0.5));
        // The brief's heights (36 ... 29 %) are at the middle plane with the focus pulled to 946 mm for the end
        // frame: that
        // picture is 52.79/54.55 as large as ours, which keeps the focus of the start; and ours are of the outline.
        double smaller = (50 * 946 / 896.0) / (50 * 600 / 550.0);
        double depth = Math.hypot(600, 600) * Math.cos(Math.PI / 4 - end.turnRadians());
        assertThat(118 / depth * (50 * 600 / 550.0) / 20.25 * smaller).isCloseTo(0.36, within(0.02 * 0.36));
        assertThat(set.heightShare(end, 0)).isBetween(0.36 / smaller, 0.36 / smaller * 1.06);
        assertThat(travelNeeded(found) * 1e3).isCloseTo(393, within(0.5));
    }

    @Test
    @Outside(
            source = "table of the job's questions: four cans in file, 200 mm apart, the first at 960 mm",
            place = "row Reveal",
            kind = "worked example",
            printedDigits = 2)
    void referenceCase_leewayAndTravel() {
        List<Reveal.Thing> cans = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            cans.add(new Reveal.Thing("can" + i, 0.066, 0.122));
        }
        Reveal.Inputs inputs = new Reveal.Inputs(
                UHD,
                0.05,
                new Reveal.Camera(0.96, 0.061),
                cans,
                new Reveal.Slide(-0.6, Reveal.Keeps.ALL),
                new Reveal.Wanted(0, 0));
        double[] file = {0, 200, 0, 400, 0, 600};
        Reveal.Found found = Reveal.found(inputs, file);
        RevealSet set = new RevealSet(inputs);
        double[] values = RevealSet.values(inputs, file);
        for (int i = 1; i < 4; i++) {
            // The table asks how far aside a can stays hidden; the gaps at the end are looked at by travel.
            int[] hidden = {5 * (i - 1), 5 * (i - 1) + 1, 5 * (i - 1) + 2, 5 * (i - 1) + 3};
            int mark = RevealSet.FIRST_X + 2 * i;
            double leeway = Search.leeway(RevealSolver.axes(inputs, values), set.only(hidden), values, mark)
                    .least();
            assertThat(leeway).isCloseTo(7.0 * i, within(0.5));
        }
        assertThat(found.camera().aside().least() * 1e3).isCloseTo(33, within(0.5));
        // The source's figures hold to about 2 %; exact tangents to the cans give 510.4.
        assertThat(travelNeeded(found) * 1e3).isCloseTo(511, within(0.02 * 511));
        assertThat(travelNeeded(found) * 1e3).isCloseTo(510.4, within(0.05));
    }

    @Test
    @Outside(
            source = "own facts of the geometry, checked with polygons of the Java Topology Suite",
            place = "outlines of 1440 rim points each",
            kind = "other program",
            printedDigits = 4)
    void randomSets_promisesHold_leewayIsExactlyAtTheEdge() {
        Random random = new Random(SEED);
        int solved = 0;
        for (int i = 0; i < 12; i++) {
            Reveal.Inputs inputs = randomInputs(random);
            Reveal.Found found = Reveal.answer(inputs);
            double[] places = places(found);
            if (found.holds() == Reveal.Holds.NOT_ALL) {
                continue;
            }
            solved++;
            Drawn drawn = new Drawn(inputs);
            checkTogether(drawn, found, places, random);
            assertThat(drawn.holds(places, 0, 0))
                    .as("seed %d, case %d", SEED, i)
                    .isTrue();
            for (int mark = 0; mark < places.length; mark++) {
                Reveal.Place place = found.places().get(mark / 2);
                double leeway =
                        mark % 2 == 0 ? place.aside().least() : place.along().least();
                checkEdge(drawn, places, mark, leeway, "seed " + SEED + ", case " + i + ", mark " + mark);
            }
            double aside = found.camera().aside().least();
            double within = Math.max(0.01 * aside, 5e-5);
            assertThat(drawn.holds(places, aside - within, 0) && drawn.holds(places, within - aside, 0))
                    .isTrue();
            assertThat(drawn.holds(places, aside + within, 0) && drawn.holds(places, -aside - within, 0))
                    .isFalse();
            double up = found.camera().height().plus().distance();
            assertThat(drawn.holds(places, 0, up - 5e-5)).isTrue();
            assertThat(drawn.holds(places, 0, up + 5e-5)).isFalse();
        }
        assertThat(solved).isGreaterThanOrEqualTo(6);
    }

    /// Everything off at once by a little less than `together` placing errors of 2 mm: it still holds at random
    /// corners.
    private static void checkTogether(Drawn drawn, Reveal.Found found, double[] places, Random random) {
        double size = 0.99 * found.together() * 0.002 - 1e-6;
        for (int corner = 0; corner < 20; corner++) {
            double[] moved = places.clone();
            for (int mark = 0; mark < moved.length; mark++) {
                moved[mark] += random.nextBoolean() ? size : -size;
            }
            double aside = random.nextBoolean() ? size : -size;
            double up = random.nextBoolean() ? size : -size;
            assertThat(drawn.holds(moved, aside, up))
                    .as("seed %d, corner %d", SEED, corner)
                    .isTrue();
        }
    }

    /// Leeway is a promise: true to 1 % of itself or 1/40 of the placing error.
    private static void checkEdge(Drawn drawn, double[] places, int mark, double leeway, String which) {
        if (Double.isInfinite(leeway)) {
            return;
        }
        double slack = Math.max(0.01 * leeway, 5e-5);
        boolean inside = true;
        boolean outside = true;
        for (int way : new int[] {-1, 1}) {
            double[] moved = places.clone();
            moved[mark] = places[mark] + way * Math.max(0, leeway - slack);
            inside &= drawn.holds(moved, 0, 0);
            moved[mark] = places[mark] + way * (leeway + slack);
            outside &= drawn.holds(moved, 0, 0);
        }
        assertThat(inside).as("inside its leeway: " + which).isTrue();
        assertThat(outside).as("just outside its leeway: " + which).isFalse();
    }

    private static double travelNeeded(Reveal.Found found) {
        return switch (found.travelNeeded()) {
            case Reveal.Travel.Least(double metres) -> metres;
            case Reveal.Travel.None() -> throw new AssertionError("none");
        };
    }

    static double[] places(Reveal.Found found) {
        double[] places = new double[2 * found.places().size()];
        for (int i = 0; i < found.places().size(); i++) {
            places[2 * i] = found.places().get(i).xMetres();
            places[2 * i + 1] = found.places().get(i).yMetres();
        }
        return places;
    }

    private static Reveal.Inputs flacons(double distance, double height, double travel, double gap) {
        List<Reveal.Thing> things = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            things.add(new Reveal.Thing("flacon" + i, 0.042, 0.118));
        }
        return new Reveal.Inputs(
                UHD,
                0.05,
                new Reveal.Camera(distance, height),
                things,
                new Reveal.Slide(travel, Reveal.Keeps.ALL),
                new Reveal.Wanted(gap, 0));
    }

    static Reveal.Inputs randomInputs(Random random) {
        List<Reveal.Thing> things = new ArrayList<>();
        int count = 2 + random.nextInt(4);
        double diameter = 0.04 + 0.04 * random.nextDouble();
        for (int i = 0; i < count; i++) {
            double share = i == 0 ? 1 : 0.7 + 0.35 * random.nextDouble();
            things.add(new Reveal.Thing("t" + i, diameter * share, 0.11 * share));
        }
        double travel = (0.4 + 0.4 * random.nextDouble()) * (random.nextBoolean() ? 1 : -1);
        Reveal.Keeps keeps = random.nextInt(3) == 0 ? Reveal.Keeps.FRONT : Reveal.Keeps.ALL;
        return new Reveal.Inputs(
                UHD,
                0.035 + 0.015 * random.nextDouble(),
                new Reveal.Camera(0.5 + 0.4 * random.nextDouble(), 0.04 + 0.04 * random.nextDouble()),
                things,
                new Reveal.Slide(travel, keeps),
                new Reveal.Wanted(0.02, random.nextInt(2) * 0.001));
    }

    /// The wants judged on outlines drawn from rim points; nothing of the room's geometry is used.
    private record Drawn(Reveal.Inputs inputs) {
        private static final GeometryFactory FACTORY = new GeometryFactory();

        boolean holds(double[] places, double cameraAside, double cameraUp) {
            double imageMetres =
                    1 / (1 / inputs.focalLengthMetres() - 1 / inputs.camera().distanceMetres());
            double halfWidth = inputs.sensor().widthMetres() / 2 / imageMetres;
            double halfHeight = inputs.sensor().heightMetres() / 2 / imageMetres;
            Eye start = new Eye(cameraAside, inputs.camera().heightMetres() + cameraUp, 0);
            Geometry first = outline(start, places, 0);
            if (!isInside(first, halfWidth, halfHeight)) {
                return false;
            }
            for (int i = 1; i < inputs.things().size(); i++) {
                double depth = places[2 * i + 1] + inputs.camera().distanceMetres();
                Geometry spared =
                        outline(start, places, i).buffer(inputs.wanted().hideByMetres() / depth, 64);
                double slip = inputs.wanted().hideByMetres() > 0 ? 1e-5 : 1e-7;
                if (!first.buffer(slip).contains(spared)) {
                    return false;
                }
            }
            return endHolds(places, cameraAside, cameraUp, halfWidth, halfHeight);
        }

        private boolean endHolds(
                double[] places, double cameraAside, double cameraUp, double halfWidth, double halfHeight) {
            double eyeX = cameraAside + inputs.slide().travelMetres();
            Eye end = new Eye(eyeX, inputs.camera().heightMetres() + cameraUp, pan(places, eyeX));
            List<double[]> spans = new ArrayList<>();
            for (int i = 0; i < inputs.things().size(); i++) {
                Geometry outline = outline(end, places, i);
                if (!isInside(outline, halfWidth, halfHeight)) {
                    return false;
                }
                spans.add(new double[] {
                    outline.getEnvelopeInternal().getMinX(),
                    outline.getEnvelopeInternal().getMaxX()
                });
            }
            spans.sort((a, b) -> Double.compare(a[0] + a[1], b[0] + b[1]));
            for (int i = 1; i < spans.size(); i++) {
                if (spans.get(i)[0] - spans.get(i - 1)[1] < inputs.wanted().gapShare() * 2 * halfWidth - 1e-6) {
                    return false;
                }
            }
            return true;
        }

        private double pan(double[] places, double eyeX) {
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < inputs.things().size(); i++) {
                for (int k = 0; k < RIM; k++) {
                    double[] point = rim(places, i, k);
                    double bearing = Math.atan2(
                            point[0] - eyeX, point[1] + inputs.camera().distanceMetres());
                    least = Math.min(least, bearing);
                    most = Math.max(most, bearing);
                }
            }
            return switch (inputs.slide().keeps()) {
                case HEADING -> 0;
                case FRONT ->
                    Math.atan2(places[0] - eyeX, places[1] + inputs.camera().distanceMetres());
                case ALL -> (least + most) / 2;
            };
        }

        private double[] rim(double[] places, int thing, int step) {
            double angle = 2 * Math.PI * step / RIM;
            double radius = inputs.things().get(thing).diameterMetres() / 2;
            return new double[] {
                places[2 * thing] + radius * Math.cos(angle), places[2 * thing + 1] + radius * Math.sin(angle)
            };
        }

        private Geometry outline(Eye eye, double[] places, int thing) {
            Coordinate[] points = new Coordinate[2 * RIM];
            for (int k = 0; k < RIM; k++) {
                double[] point = rim(places, thing, k);
                double dx = point[0] - eye.x();
                double dy = point[1] + inputs.camera().distanceMetres();
                double depth = dx * Math.sin(eye.turn()) + dy * Math.cos(eye.turn());
                double across = dx * Math.cos(eye.turn()) - dy * Math.sin(eye.turn());
                double top = inputs.things().get(thing).heightMetres() - eye.height();
                points[2 * k] = new Coordinate(across / depth, top / depth);
                points[2 * k + 1] = new Coordinate(across / depth, -eye.height() / depth);
            }
            return new ConvexHull(points, FACTORY).getConvexHull();
        }

        private static boolean isInside(Geometry outline, double halfWidth, double halfHeight) {
            var box = outline.getEnvelopeInternal();
            double slip = 1e-7;
            return box.getMinX() >= -halfWidth - slip
                    && box.getMaxX() <= halfWidth + slip
                    && box.getMinY() >= -halfHeight - slip
                    && box.getMaxY() <= halfHeight + slip;
        }
    }

    private record Eye(double x, double height, double turn) {}
}
