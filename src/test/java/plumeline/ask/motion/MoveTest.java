package plumeline.ask.motion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static plumeline.ask.Asking.answer;
import static plumeline.ask.Asking.number;
import static plumeline.ask.Asking.problems;
import static plumeline.ask.Asking.spread;

import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;

/// The question `move`.
final class MoveTest {
    private static final Pattern RUN =
            Pattern.compile("Run it in ([0-9.]+) s( as a trapezoid| as an s-curve)?, play at ([0-9]+) %.*");

    private static final String VIEW = "view: {distance: 877 mm, focal_length: 100 mm,"
            + " sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}\n";

    @Test
    void withoutView_blurIsUnknown_andWithoutLimitsEverythingHolds() {
        Answer answer = answer("move", "by: 600 mm\nin: 1 s\n");
        for (String name : List.of("blur_peak", "pass_error", "shortest_time")) {
            assertThat(answer.getValue(name)).isEqualTo(new Value.Word("unknown"));
        }
        assertThat(answer.verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer.assumed().stream().map(Answer.Assumed::name))
                .containsExactly("profile", "repeats", "triggered");
    }

    /// What is said to try is tried: it holds as it stands, and it takes its time's share of the screen.
    @Test
    void whatItSaysToRun_holds() {
        Random random = new Random(8);
        int tried = 0;
        for (int i = 0; i < 300; i++) {
            String by = "by: " + (1 + random.nextInt(900)) + " mm\n";
            double seconds = (5 + random.nextInt(60)) / 10.0;
            String profile = List.of("even", "trapezoid", "s-curve", "smooth").get(random.nextInt(4));
            String limits = "limits: {speed: " + (20 + random.nextInt(200)) + " mm/s, acceleration: "
                    + (50 + random.nextInt(500)) + " mm/s2"
                    + (random.nextBoolean() ? ", jerk: " + (100 + random.nextInt(3000)) + " mm/s3" : "")
                    + (random.nextBoolean() ? ", travel: 900 mm" : "") + "}\n";
            Answer asked = answer("move", by + "in: " + seconds + " s\nprofile: " + profile + "\n" + limits);
            for (String attempt : asked.notes().attempts()) {
                Matcher matcher = RUN.matcher(attempt);
                assertThat(matcher.matches()).as(attempt).isTrue();
                String how =
                        matcher.group(2) == null ? profile : matcher.group(2).replaceFirst(" as an? ", "");
                String slower = by + "in: " + matcher.group(1) + " s\nprofile: " + how + "\n" + limits;
                assertThat(answer("move", slower).verdict()).as(slower).isEqualTo(Verdict.HOLDS);
                double playback = Double.parseDouble(matcher.group(3)) / 100;
                assertThat(Double.parseDouble(matcher.group(1))).isEqualTo(seconds * playback, within(1e-9));
                assertThat(Double.parseDouble(matcher.group(3)) % 10).isZero();
                tried++;
            }
        }
        assertThat(tried).isGreaterThan(100);
    }

    @Test
    void passesThatShallRegister_getATimeARateOrATrigger() {
        String move = "by: 120 mm\nrepeats: 0.1 mm\nwithin: 2 px\nprofile: trapezoid\n"
                + "limits: {acceleration: 30 mm/s2}\n";
        Answer free = answer("move", move + "in: 5 s\n" + VIEW);
        assertThat(free.verdict()).isEqualTo(Verdict.FAILS);
        Matcher slower = Pattern.compile("Passes register to 2 px in ([0-9.]+) s of real time; or as fast as now at"
                        + " ([0-9]+) fps, .*")
                .matcher(free.notes().attempts().getFirst());
        assertThat(slower.matches()).as("%s", free.notes().attempts()).isTrue();
        assertThat(answer("move", move + "in: " + slower.group(1) + " s\n" + VIEW)
                        .verdict())
                .isEqualTo(Verdict.HOLDS);
        String faster = VIEW.replace("}}", "}, rate: " + slower.group(2) + " fps}");
        assertThat(answer("move", move + "in: 5 s\n" + faster).verdict()).isEqualTo(Verdict.HOLDS);
        assertThat(answer("move", move + "in: 5 s\ntriggered: yes\n" + VIEW).verdict())
                .isEqualTo(Verdict.HOLDS);
        assertThat(answer("move", move.replace("2 px", "1 px") + "in: 5 s\n" + VIEW)
                        .notes()
                        .attempts())
                .hasSize(1)
                .first()
                .asString()
                .startsWith("What the device repeats to is more");
    }

    @Test
    void aMoveLongerThanItsRail_isToBeShortened() {
        Answer answer = answer("move", "by: 700 mm\nin: 20 s\nlimits: {travel: 600 mm}\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        assertThat(answer.notes().attempts().getFirst()).startsWith("Shorten the move to 600 mm");
    }

    @Test
    void aTurn_isInDegrees_andAPanUnlessARadiusIsGiven() {
        String turn = "by: 60 deg\nin: 1 s\n" + VIEW;
        Answer pan = answer("move", turn);
        assertThat(number(pan, "peak_speed")).isEqualTo(60, within(1e-9));
        assertThat(pan.getValue("peak_speed")).isEqualTo(new Value.Number(number(pan, "peak_speed"), "deg/s"));
        assertThat(pan.assumed().stream().map(Answer.Assumed::name)).contains("radius");
        Answer plate = answer("move", turn + "radius: 21 mm\n");
        assertThat(number(plate, "blur_peak")).isEqualTo(number(pan, "blur_peak") * 21 / 877, within(1e-9));
    }

    @Test
    void spreads_makeItTight() {
        Answer answer = answer(
                "move",
                "by: 600 mm\nin: 8 s\nprofile: trapezoid\n"
                        + "limits: {speed: 80 mm/s ± 8 mm/s, acceleration: 200 mm/s2}\n");
        assertThat(answer.verdict()).isEqualTo(Verdict.TIGHT);
        assertThat(spread(answer, "shortest_time").high()).isGreaterThan(8);
    }

    @Test
    void wrongInputs_areRefused() {
        assertThat(problems("move", "by: 30 deg\nin: 2 s\nlimits: {speed: 20 mm/s}\nrepeats: 1 mm\n"))
                .hasSize(2)
                .anySatisfy(said -> assertThat(said)
                        .contains("limits.speed is 20 mm/s; must be a turning speed in deg/s")
                        .contains("P-ASK-41"))
                .anySatisfy(said -> assertThat(said).contains("repeats is 1 mm").contains("P-ASK-41"));
        assertThat(problems("move", "by: 30 mm\nin: 2 s\n" + VIEW.replace("877 mm", "90 mm")))
                .hasSize(1)
                .first()
                .asString()
                .contains("view.distance is 90 mm; must be more than 100 mm with this lens")
                .contains("P-ASK-40");
        assertThat(problems("move", "by: 30 mm\nin: 2 s\nradius: 20 mm\n" + VIEW))
                .hasSize(1)
                .first()
                .asString()
                .contains("P-ASK-44");
        assertThat(problems("move", "by: 30 mm\nin: 2 s\nwithin: 2 px\n")).hasSize(1);
        assertThat(problems("move", "by: -30 mm\nin: 2 s\n")).hasSize(1);
        assertThat(problems("move", "by: 30 mm\nin: 2 s\nprofile: trapez\n")).hasSize(1);
    }
}
