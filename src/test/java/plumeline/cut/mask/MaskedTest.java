package plumeline.cut.mask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Point;
import plumeline.plan.Plan;
import plumeline.solve.ShotAnswer;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Strand;

/// How wide masks are, by similar triangles and the pendulum's law; sizes; what is said.
final class MaskedTest {
    private static final String CAMERA =
            "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: 1100 mm, f_number: 8";
    private static final String AIR = "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 40 mm], lines: 1";
    private static final String LINE = ", line: {diameter: 0.25 mm, to: 1158 mm}}}";

    /// 100 mm from 1100 mm: m = 0.1; 3840 px on 36 mm.
    private static final double PIXELS_PER_MILLIMETRE = 0.1 * 3840 / 36;

    private static MaskFrame.Part first(Masked masked, long captured) {
        return masked.frame(captured).parts().getFirst();
    }

    private static String joined(Masked masked) {
        return String.join(" ", masked.notes());
    }

    /// Its foot is 5 mm off at most; its upper end, a metre over it, not at all.
    @Test
    void aStillLine_isItsWidthAndTheEdge_andIsToldHowFarItHangsOff() {
        Masked masked = Held.masked(CAMERA + "}", AIR + LINE);
        Margins foot = first(masked, 0).from().margins();
        assertThat(foot.widthPixels()).isEqualTo(0.125 * PIXELS_PER_MILLIMETRE, within(1e-4));
        assertThat(foot.edgePixels()).isEqualTo(2);
        assertThat(foot.swingPixels()).isEqualTo(0);
        assertThat(foot.placingPixels()).isEqualTo(5 * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(foot.sumPixels()).isEqualTo(0.125 * PIXELS_PER_MILLIMETRE + 2, within(1e-4));
        assertThat(foot.swayPixels()).isEqualTo(0);
        MaskFrame.End upper = first(masked, 0).to();
        double share = upper.place().z() - 0.158;
        assertThat(upper.margins().placingPixels()).isEqualTo(5 * (1 - share) * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(masked.size()).isEqualTo(new ClipSize(3840, 2160));
        assertThat(masked.isStill()).isTrue();
        assertThat(joined(masked))
                .contains("They don't hold the placing error: lay the first one over the take, and shift all of them by"
                        + " as much as the line lies beside it, up to ± 54 px (placing columns).")
                .contains("What stands before a line, an edge of its own thing too, isn't cut out of its mask.")
                .doesNotContain("swing");
    }

    /// A line of 2.7 px has a mask of 6.7 px, and some tenths for corners; at its foot it ends flat, 2 px past it.
    @Test
    void aStillMask_isNarrow_andEndsFlatAtTheThing() {
        Masked masked = Held.masked(CAMERA + "}", AIR + LINE);
        MaskFrame frame = masked.frame(0);
        double foot = frame.parts().getFirst().from().opens().y();
        double half = 0.125 * PIXELS_PER_MILLIMETRE + 2;
        List<Point> corners = frame.patches().getFirst().corners().stream()
                .flatMap(List::stream)
                .toList();
        assertThat(corners.stream().mapToDouble(Point::y).max().orElseThrow()).isEqualTo(foot + 2, within(1e-3));
        assertThat(corners.stream().mapToDouble(Point::x).max().orElseThrow())
                .isBetween(1920 + half, 1920 + half + 0.2);
        assertThat(corners.stream().filter(corner -> corner.y() > foot + 1.999)).hasSize(2);
    }

    /// Wide by its swing, it still doesn't reach over the thing that it carries; and the line's end is in the mask at
    /// every instant of the exposure.
    @Test
    void aSwingingMask_endsFlatAtTheThing_andHoldsTheLinesEnd() {
        Masked masked = Held.masked(
                CAMERA + ", shutter: 360 deg}",
                AIR + LINE,
                "moves: {carry: {machine: slider, carries: hero, by: [100 mm, 0 mm], in: 2 s, profile: even},"
                        + " up: {machine: slider, carries: hero, by: [0 mm, 0 mm, 60 mm], in: 2 s, profile: even}}");
        long captured = 24;
        Shutter shutter = masked.shutter();
        List<List<Point>> patches = masked.frame(captured).patches().getFirst().corners();
        double lowest = 0;
        for (int i = 0; i <= 8; i++) {
            double at = shutter.opensSeconds(captured) + shutter.exposureSeconds() * i / 8;
            Scene scene = masked.sceneAt(at);
            Strand.Ends ends = masked.ends(masked.strands().getFirst(), scene);
            if (!(PlaceSight.of(scene, ends.foot()) instanceof PlaceSight.Seen(PlaceSight.Way _, Point tangents))) {
                throw new AssertionError("the foot isn't seen");
            }
            Point foot = masked.size().pixel(scene, tangents);
            lowest = Math.max(lowest, foot.y());
            for (double aside : new double[] {-1.33, 0, 1.33}) {
                assertThat(patches).as("instant " + i).anyMatch(one -> isIn(one, foot.x() + aside, foot.y()));
            }
        }
        double bottom = patches.stream()
                .flatMap(List::stream)
                .mapToDouble(Point::y)
                .max()
                .orElseThrow();
        assertThat(bottom).isEqualTo(lowest + 2, within(1e-2));
    }

    private static boolean isIn(List<Point> corners, double x, double y) {
        boolean isAllLeft = true;
        for (int i = 0; i < corners.size(); i++) {
            Point one = corners.get(i);
            Point other = corners.get((i + 1) % corners.size());
            isAllLeft &= (other.x() - one.x()) * (y - one.y()) - (other.y() - one.y()) * (x - one.x()) >= -1e-9;
        }
        return isAllLeft;
    }

    @Test
    void aLineOfUnknownThickness_isTakenAsThick() {
        Masked masked = Held.masked(CAMERA + "}", AIR.replace("lines: 1", "lines: 2") + "}}");
        assertThat(masked.strands()).hasSize(1);
        assertThat(first(masked, 0).from().margins().widthPixels())
                .isEqualTo(0.25 * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(joined(masked))
                .contains("Assumed: a line of 0.5 mm, as its diameter isn't written.")
                .contains("Assumed: all lines from the middle of its top, as tied isn't written.");
    }

    /// Half the sensor at 1920 px keeps the pitch of... twice the body's: 18 mm of 1920 px are as 36 mm of 3840 px.
    @Test
    void aCroppedMode_hasItsOwnPixels_andAnUprightCameraItsOwnSides() {
        Masked cropped = Held.masked(CAMERA + ", rate: 240 fps}", AIR + LINE);
        assertThat(cropped.size()).isEqualTo(new ClipSize(1920, 1080));
        assertThat(first(cropped, 0).from().opens().x()).isEqualTo(960, within(1e-6));
        Masked upright = Held.masked(CAMERA + ", held: upright}", AIR + LINE);
        assertThat(upright.size()).isEqualTo(new ClipSize(2160, 3840));
    }

    /// 300 mm in a second at 120 fps, open for half of a frame: 1.25 mm. Not triggered, half a frame is 1.25 mm more.
    @Test
    void aSlide_smears_andSlipsWhereItIsFree() {
        String slide = "moves: {slide: {machine: slider, by: [300 mm, 0 mm], in: 1 s, profile: even}}";
        Masked triggered = Held.masked(CAMERA + ", rate: 120 fps, shutter: 180 deg}", AIR + LINE, slide);
        MaskFrame.End end = first(triggered, 30).from();
        assertThat(end.smearPixels().orElseThrow()).isEqualTo(1.25 * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(end.slipPixels()).isEqualTo(0);
        assertThat(end.opens().x()).isEqualTo(1920 - 75 * PIXELS_PER_MILLIMETRE, within(1e-6));
        Masked free = Held.masked(
                CAMERA + ", rate: 120 fps, shutter: 180 deg}", AIR + LINE, slide.replace("slider", "loose"));
        assertThat(first(free, 30).from().slipPixels()).isEqualTo(1.25 * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(joined(free)).contains("half a captured frame's travel");
        double wider = width(free.frame(30)) - width(triggered.frame(30));
        assertThat(wider).isEqualTo(2.5 * PIXELS_PER_MILLIMETRE, within(0.01));
    }

    private static double width(MaskFrame frame) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (var corners : frame.patches().getFirst().corners()) {
            for (var corner : corners) {
                least = Math.min(least, corner.x());
                most = Math.max(most, corner.x());
            }
        }
        return most - least;
    }

    /// A readout of 4 ms at 300 mm/s: 1.2 mm more.
    @Test
    void aSlowReadout_isCovered() {
        String mode = "rate: 240 fps, across: 1920 px, width: 18 mm";
        String slide = "moves: {slide: {machine: slider, by: [300 mm, 0 mm], in: 1 s, profile: even}}";
        Plan plan = Held.planWith(mode, mode + ", readout: 4 ms", CAMERA + ", rate: 240 fps}", AIR + LINE, slide);
        Masked masked = Held.masked(plan);
        double open = 300.0 / 480 + 1.2;
        assertThat(first(masked, 30).from().smearPixels().orElseThrow())
                .isEqualTo(open * PIXELS_PER_MILLIMETRE, within(1e-3));
        assertThat(joined(masked)).contains("The sensor reads its rows within 4 ms");
    }

    /// Carried by 200 mm/s² on a line of 1059 mm to its middle: twice 200 · 1059 / 9807 = 43.2 mm; its placing is told.
    @Test
    void whatIsCarried_swingsAsAPendulum() {
        Masked masked = Held.masked(
                CAMERA + "}",
                AIR + LINE,
                "moves: {carry: {machine: slider, carries: hero, by: [100 mm, 0 mm], in: 2 s, profile: even}}");
        assertThat(first(masked, 0).from().margins().swingPixels() / PIXELS_PER_MILLIMETRE)
                .isEqualTo(2 * 200 * 1059 / 9806.65, within(0.02));
        assertThat(joined(masked)).contains("hero may swing up to 43.2 mm to each side as it is carried along");
    }

    /// A rod doesn't swing; a machine that sways by 0.1 mm does, less so the longer ago its ramp was.
    @Test
    void aRig_doesNotSwing_butSways() {
        String rig = "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 40 mm],"
                + " rig: {diameter: 6 mm, to: [0 mm, 0 mm, 600 mm]}}}";
        Plan plan = Held.planWith(
                "slider: {",
                "slider: {sways: {rate: 8 Hz, damping: 5 %, by: 0.1 mm}, ",
                CAMERA + ", rate: 24 fps}",
                rig,
                "moves: {slide: {machine: slider, by: [24 mm, 0 mm], in: 1 s, profile: even}}");
        Masked masked = Held.masked(plan);
        Margins margins = first(masked, 0).from().margins();
        assertThat(margins.swingPixels()).isEqualTo(0);
        assertThat(margins.widthPixels()).isEqualTo(3 * PIXELS_PER_MILLIMETRE, within(0.01));
        assertThat(margins.swayPixels()).isEqualTo(0.1 * PIXELS_PER_MILLIMETRE, within(1e-3));
        double decayed = 0.1 * Math.exp(-2 * Math.PI * 8 * 0.05 * 0.5);
        assertThat(first(masked, 12).from().margins().swayPixels())
                .isEqualTo(decayed * PIXELS_PER_MILLIMETRE, within(1e-3));
    }

    /// From above, the sight goes through the water's surface: said, and nothing painted there.
    @Test
    void throughTheSurface_isSaid() {
        Masked masked = Held.masked(
                "camera: {body: main, lens: fifty, at: [0 mm, -700 mm, 900 mm], tilt: -45 deg, focus: 1000 mm}",
                "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}",
                "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 1, line: {diameter: 0.3 mm}}}");
        assertThat(masked.frame(0).parts())
                .allSatisfy(part -> assertThat(part.from().place().z()).isGreaterThan(0.268));
        assertThat(masked.frame(0).gaps()).isNotEmpty();
        assertThat(joined(masked)).contains("A stretch of hero-line isn't masked");
    }

    /// A line that comes towards the lens and past it ends before it.
    @Test
    void whatIsBehindTheLens_isLeftOut() {
        Masked masked = Held.masked(
                CAMERA + "}",
                "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 40 mm], rig: {diameter: 6 mm,"
                        + " to: [5 mm, -2000 mm, 150 mm]}}}");
        assertThat(masked.frame(0).parts()).isNotEmpty();
        assertThat(masked.frame(0).parts().getLast().to().place().y()).isGreaterThan(-1.1);
        assertThat(MattePng.of(masked.size(), masked.frame(0).patches())).isNotEmpty();
    }

    /// The whole set turned by a quarter, seen through the side wall, gives the same picture.
    @Test
    void throughASideWall_isAsThroughTheFront() {
        String kit = "[450 mm, 300 mm, 300 mm]";
        String square = "[300 mm, 300 mm, 300 mm]";
        String tank = "tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}";
        String front = "camera: {body: main, lens: fifty, at: [20 mm, -900 mm, 139 mm], turn: 2 deg, focus: 900 mm}";
        String side = "camera: {body: main, lens: fifty, at: [-900 mm, -20 mm, 139 mm], turn: 92 deg, focus: 900 mm}";
        String one = "place: {hero: {thing: flacon, at: [10 mm, 15 mm, 80 mm], tilt: 20 deg, tied: [30 mm],"
                + " line: {diameter: 0.3 mm}}}";
        String other = "place: {hero: {thing: flacon, at: [15 mm, -10 mm, 80 mm], turn: 90 deg, tilt: 20 deg,"
                + " tied: [30 mm], line: {diameter: 0.3 mm}}}";
        MaskFrame before =
                Held.masked(Held.planWith(kit, square, front, tank, one)).frame(0);
        MaskFrame beside =
                Held.masked(Held.planWith(kit, square, side, tank, other)).frame(0);
        assertThat(before.parts()).hasSameSizeAs(beside.parts()).hasSizeGreaterThan(3);
        for (int i = 0; i < before.parts().size(); i++) {
            MaskFrame.Part a = before.parts().get(i);
            MaskFrame.Part b = beside.parts().get(i);
            assertThat(a.way()).isEqualTo(b.way());
            assertThat(a.to().opens().x()).isEqualTo(b.to().opens().x(), within(1e-3));
            assertThat(a.to().opens().y()).isEqualTo(b.to().opens().y(), within(1e-3));
            assertThat(a.to().margins().sumPixels()).isEqualTo(b.to().margins().sumPixels(), within(1e-2));
        }
    }

    @Test
    void passesWithoutLineOrRig_haveNoMask() {
        Plan plan = Held.plan(CAMERA + "}", "place: {hero: {thing: flacon, at: [0 mm, 0 mm]}}");
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        assertThat(new Masked(
                                "one",
                                new ShotAnswer.Run("", stage),
                                stage.startValues(),
                                plan.film().rate())
                        .strands())
                .isEmpty();
    }
}
