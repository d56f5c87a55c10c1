package plumeline.assemble;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import plumeline.geom.Point;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.stage.Frame;
import plumeline.stage.Picture;
import plumeline.stage.Stage;
import plumeline.stage.Window;
import plumeline.timeline.Framing;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// Every frame of a film shows the recorded frame and the part of it that its cut says.
final class AnimaticTest {
    private static int blue(int[] packed) {
        return packed[packed.length / 2] & 255;
    }

    @Test
    void everyFrame_showsItsRecordedFrame_ofItsPass() throws IOException {
        Plan plan = FilmPlan.plan("24 fps");
        Animatic animatic = FilmPlan.animatic(plan, "plain", 64, 36, FilmPlan.none());
        Timeline timeline = Timeline.of(plan);
        int compared = 0;
        for (long frame = 0; frame < animatic.frames(); frame++) {
            Span span = timeline.findSpan(frame).orElseThrow();
            long recorded = span.shot().equals("still") ? 0 : span.sourceFrame(frame);
            int[] packed = animatic.picture(frame, FilmPlan::picture);
            assertThat(blue(packed))
                    .as("frame %d", frame)
                    .isEqualTo((int) recorded + (span.pass().equals("b") ? 128 : 0));
            compared++;
        }
        assertThat(compared).isEqualTo(50);
        List<Integer> held = new ArrayList<>();
        for (long frame = 0; frame < 26; frame++) {
            held.add(blue(animatic.picture(frame, FilmPlan::picture)));
        }
        assertThat(held.subList(0, 6)).isSorted().doesNotHaveDuplicates();
        assertThat(new HashSet<>(held.subList(10, 16))).hasSize(1);
        assertThat(held.get(25)).isLessThan(held.get(16));
    }

    /// Held frames, those seen again on the way back, and a shot in which nothing moves are drawn once.
    @Test
    void whatIsSeenAgain_isWantedOnce() {
        Plan plan = FilmPlan.plan("24 fps");
        Animatic animatic = FilmPlan.animatic(plan, "plain", 64, 36, FilmPlan.none());
        List<Wanted> wanted = animatic.listWanted();
        assertThat(new HashSet<>(wanted)).hasSameSizeAs(wanted);
        Timeline timeline = Timeline.of(plan);
        Set<String> seen = new HashSet<>();
        for (long frame = 0; frame < 40; frame++) {
            Span span = timeline.findSpan(frame).orElseThrow();
            seen.add(span.name() + " " + span.sourceFrame(frame));
        }
        assertThat(wanted).hasSize(seen.size() + 1);
        assertThat(seen.size()).isLessThan(34);
        assertThat(wanted.getFirst().realSeconds() * 48)
                .isCloseTo(wanted.getFirst().recorded(), within(1e-9));
    }

    /// Where a place of the camera's picture lies in the finished one, against what tells wants so.
    private static void checkPlaces(Plan plan, String name, int width, int height, long frame, double near)
            throws IOException {
        Delivery delivery = plan.findDelivery(name).orElseThrow();
        Animatic animatic = FilmPlan.animatic(plan, name, width, height, FilmPlan.none());
        int[] packed = animatic.picture(frame, FilmPlan::picture);
        Span span = Timeline.of(plan).findSpan(frame).orElseThrow();
        Shot shot = plan.findShot(span.shot()).orElseThrow();
        Stage stage = Stage.of(plan, shot);
        Picture picture = stage.scene(stage.startValues(), 0).picture();
        Timeline.Entry entry = Timeline.of(plan).entries().get(span.entry());
        Framing framing = Framing.at(entry.cut().listReframes(name), (double) (frame - entry.first()));
        Window window = new Window(picture, Frame.of(picture, delivery, shot.cropOrDefault(name)), framing);
        int compared = 0;
        for (int y = 0; y < 20; y++) {
            for (int x = 0; x < 20; x++) {
                double across = (x + 0.5) / 20;
                double down = (y + 0.5) / 20;
                Point finished = window.finished(
                        new Point((across - 0.5) * picture.widthTangent(), (0.5 - down) * picture.heightTangent()));
                double u = (finished.x() + 0.5) * width;
                double v = (0.5 - finished.y()) * height;
                if (u > 1 && v > 1 && u < width - 1 && v < height - 1) {
                    int pixel = packed[(int) v * width + (int) u];
                    assertThat(pixel >> 16 & 255).isCloseTo((int) Math.round(across * 255), within((int) near));
                    assertThat(pixel >> 8 & 255).isCloseTo((int) Math.round(down * 255), within((int) near));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(60);
    }

    @Test
    void cropsAndReframing_lieAsWantsHaveThem() throws IOException {
        Plan plan = FilmPlan.plan("24 fps");
        checkPlaces(plan, "wide", 480, 270, 45, 2);
        checkPlaces(plan, "wide", 480, 270, 49, 2);
        checkPlaces(plan, "wide", 480, 270, 10, 1);
        checkPlaces(plan, "phone", 270, 480, 45, 2);
        checkPlaces(plan, "phone", 270, 480, 3, 2);
    }

    /// A picture that is laid as it was drawn is copied, no pixel mixed.
    @Test
    void plainPicture_isExact() throws IOException {
        Animatic animatic = FilmPlan.animatic(FilmPlan.plan("24 fps"), "plain", 160, 90, FilmPlan.none());
        Wanted wanted = animatic.listWanted().getFirst();
        assertThat(wanted.view()).isEqualTo(View.whole(160, 90));
        assertThat(animatic.picture(0, FilmPlan::picture))
                .isEqualTo(FilmPlan.picture(wanted).packed());
    }

    /// Only what a delivery ever shows is drawn, and as finely as it is shown largest.
    @Test
    void views_areAsLargeAsNeeded() {
        Plan plan = FilmPlan.plan("24 fps");
        List<Wanted> phone =
                FilmPlan.animatic(plan, "phone", 90, 160, FilmPlan.none()).listWanted();
        assertThat(phone.getFirst().view().name()).isEqualTo("284x160+96+0+92x160");
        List<Wanted> wide =
                FilmPlan.animatic(plan, "wide", 160, 90, FilmPlan.none()).listWanted();
        assertThat(wide.getFirst().view()).isEqualTo(View.whole(160, 90));
        assertThat(wide.getLast().view().width()).isEqualTo(240);
    }

    @Test
    void otherRatio_hasBlackBars() throws IOException {
        Plan plan = FilmPlan.plan("24 fps");
        Animatic animatic = FilmPlan.animatic(plan, "phone", 160, 90, FilmPlan.none());
        int[] packed = animatic.picture(45, FilmPlan::picture);
        assertThat(packed[45 * 160 + 10]).isZero();
        assertThat(packed[45 * 160 + 150]).isZero();
        assertThat(packed[45 * 160 + 80]).isNotZero();
        assertThat(animatic.notes()).anyMatch(note -> note.contains("black bars"));
    }

    @Test
    void titles_lieOutsideKeepOuts_whereTheirShotIs() throws IOException {
        Plan plan = FilmPlan.plan("24 fps");
        var titled = new Animatic.Additions(Map.of(), Optional.of("de"), FilmPlan::block, Animatic.Counters.NONE);
        Animatic animatic = FilmPlan.animatic(plan, "phone", 180, 320, titled);
        Animatic bare = FilmPlan.animatic(plan, "phone", 180, 320, FilmPlan.none());
        assertThat(animatic.picture(39, FilmPlan::picture)).isEqualTo(bare.picture(39, FilmPlan::picture));
        int[] with = animatic.picture(45, FilmPlan::picture);
        int[] without = bare.picture(45, FilmPlan::picture);
        int top = 320;
        int low = 0;
        for (int i = 0; i < with.length; i++) {
            if (with[i] != without[i]) {
                top = Math.min(top, i / 180);
                low = Math.max(low, i / 180);
            }
        }
        assertThat(low).isLessThan((int) (320 * 0.76));
        assertThat(top).isGreaterThan((int) (320 * 0.65));
        assertThat(with[(low - 4) * 180 + 90]).isEqualTo(0xFFFFFF);
    }

    /// However often its shot is cut in.
    @Test
    void titleThatFindsNoRoom_isSaidOnce() {
        Plan plan = FilmPlan.read(FilmPlan.text().replace("cut:\n", "cut:\n  - {shot: still, frames: 5}\n"));
        var titled = new Animatic.Additions(Map.of(), Optional.of("en"), FilmPlan::block, Animatic.Counters.NONE);
        assertThat(FilmPlan.animatic(plan, "phone", 18, 32, titled).notes())
                .containsExactly("The title “Held and turned” isn't shown: there is no room for it clear of the"
                        + " keep-outs.");
    }

    @Test
    void counters_areReadBack_squareBySquare() throws IOException {
        var counted = new Animatic.Additions(Map.of(), Optional.empty(), FilmPlan::block, Animatic.Counters.BURNT_IN);
        Animatic animatic = FilmPlan.animatic(FilmPlan.plan("29.97 fps"), "plain", 320, 180, counted);
        for (long frame = 0; frame < animatic.frames(); frame++) {
            int[] packed = animatic.picture(frame, FilmPlan::picture);
            assertThat(ReadCounter.lines((x, y) -> packed[y * 320 + x] & 255, 320, 180))
                    .containsExactly(
                            "%06d".formatted(frame), animatic.findLabel(frame).orElseThrow());
        }
    }

    /// As large as there is room for; broken, then smaller where it is narrow; said where there is none.
    @Test
    void counters_areReadBack_atEverySize() throws IOException {
        var counted = new Animatic.Additions(Map.of(), Optional.empty(), FilmPlan::block, Animatic.Counters.BURNT_IN);
        int compared = 0;
        for (int longer : new int[] {64, 90, 180, 640, 1920}) {
            for (int shorter : new int[] {Math.max(40, longer * 9 / 16 / 2 * 2), longer * 3 / 4 / 2 * 2, longer}) {
                for (int turned = 0; turned < 2; turned++) {
                    int width = turned == 0 ? longer : shorter;
                    int height = turned == 0 ? shorter : longer;
                    Animatic animatic = FilmPlan.animatic(FilmPlan.plan("29.97 fps"), "plain", width, height, counted);
                    int[] packed = animatic.picture(39, FilmPlan::picture);
                    assertThat(ReadCounter.lines((x, y) -> packed[y * width + x] & 255, width, height))
                            .as("%d x %d", width, height)
                            .containsExactly("000039", "01:00:01:09");
                    assertThat(animatic.notes()).noneMatch(note -> note.contains("burnt in"));
                    compared++;
                }
            }
        }
        assertThat(compared).isEqualTo(30);
        Animatic tiny = FilmPlan.animatic(FilmPlan.plan("29.97 fps"), "plain", 38, 22, counted);
        Animatic bare = FilmPlan.animatic(FilmPlan.plan("29.97 fps"), "plain", 38, 22, FilmPlan.none());
        assertThat(tiny.notes())
                .contains("Frame number and timecode aren't burnt in: 38x22 is too small for them; 40x32 is the"
                        + " least.");
        assertThat(tiny.picture(3, FilmPlan::picture)).isEqualTo(bare.picture(3, FilmPlan::picture));
    }

    @Test
    void sound_isAsLongAsThePictures() {
        for (String rate : List.of("24 fps", "23.976 fps", "29.97 fps", "25 fps")) {
            Animatic animatic = FilmPlan.animatic(FilmPlan.plan(rate), "plain", 64, 36, FilmPlan.none());
            double seconds = FilmPlan.plan(rate).film().exactRate().secondsOf((double) animatic.frames());
            assertThat(animatic.sound().seconds()).isCloseTo(seconds, within(0.5 / 48_000 + 1e-9));
            assertThat(animatic.sound().speakers()).hasSize(2);
        }
    }
}
