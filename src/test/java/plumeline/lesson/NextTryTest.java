package plumeline.lesson;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.ink.Estimate;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.plan.Plan;
import plumeline.plan.Shot;

/// The next take: what is foretold and what is advised.
final class NextTryTest {
    private static NextTry next(Plan plan) {
        Shot shot = plan.findShot("plume").orElseThrow();
        assertThat(NextTry.of(shot)).isInstanceOf(NextTry.Outcome.Known.class);
        return ((NextTry.Outcome.Known) NextTry.of(shot)).next();
    }

    private static String takes(String... seconds) {
        StringBuilder text = new StringBuilder("lessons: 1\nmeasured:\n");
        for (int i = 0; i < seconds.length; i++) {
            text.append("  - {take: ").append(i + 1).append(", shot: plume, ink: rose, volume: 6 ml, ");
            text.append("density: 1.03 g/ml, bore: 6 mm, squeeze_time: 0.3 s, height: -10 mm, rate: 50 fps, ");
            text.append("front: [[").append(seconds[i]).append(" s, 80 mm]]}\n");
        }
        return text.toString();
    }

    /// Surface at 260 mm, the tin's top at 180 mm.
    @Test
    void target_isWhatTheWantSays() {
        NextTry next = next(Noted.plan(Noted.PLAN));
        assertThat(next.target().place()).isEqualTo("hero's top");
        assertThat(next.target().depthMetres()).isCloseTo(0.080, within(1e-9));
        assertThat(next.target().time()).isEqualTo(new Target.Time.At(1, 0.2));
    }

    @Test
    void withoutTakes_theLawsSpeak_aboutAsTheQuestionDoes() {
        NextTry next = next(Noted.plan(Noted.PLAN));
        NextTry.Basis.Laws laws = (NextTry.Basis.Laws) next.basis();
        Prediction.Reached law = (Prediction.Reached) Ink.predict(laws.descent(), 0.080);
        assertThat(next.seconds().value())
                .isBetween(law.seconds().low(), law.seconds().high());
        assertThat(laws.lesson().takes()).isEmpty();
    }

    @Test
    void everyTake_drawsThePredictionToIt_andNarrowsIt() {
        Estimate before = next(Noted.plan(Noted.PLAN)).seconds();
        double read = 1.8 * before.value();
        double off = 1;
        double wide = before.high() / before.low();
        for (int takes = 1; takes <= 3; takes++) {
            String[] all = new String[takes];
            java.util.Arrays.fill(all, String.valueOf(read));
            Estimate after = next(Noted.measured(Noted.PLAN, takes(all))).seconds();
            assertThat(Math.abs(Math.log(after.value() / read))).isLessThan(off);
            assertThat(after.high() / after.low()).isLessThan(wide);
            off = Math.abs(Math.log(after.value() / read));
            wide = after.high() / after.low();
        }
        assertThat(off).isLessThan(0.1);
    }

    /// Late takes ask for a faster front, early ones for a slower; in each the advised change alone raises the odds.
    @Test
    void advice_changesOneThing_andRaisesTheOdds() {
        for (String seconds : new String[] {"0.6", "1.6"}) {
            NextTry next = next(Noted.measured(Noted.PLAN, takes(seconds, seconds)));
            assertThat(next.advice()).isInstanceOf(NextTry.Advice.Do.class);
            NextTry.Advice.Do advice = (NextTry.Advice.Do) next.advice();
            assertThat(advice.change().odds()).isGreaterThan(advice.odds() + 0.05);
            NextTry.Basis.Laws laws = (NextTry.Basis.Laws) next.basis();
            Estimate then =
                    laws.lesson().findSeconds(advice.change().descent(), 0.080).orElseThrow();
            assertThat(then.value() < next.seconds().value())
                    .as("faster after %s s", seconds)
                    .isEqualTo(seconds.equals("1.6"));
            assertThat(Math.abs(Math.log(then.value())))
                    .isLessThan(Math.abs(Math.log(next.seconds().value())));
            assertThat(then.odds(0.8, 1.2)).isCloseTo(advice.change().odds(), within(1e-12));
        }
    }

    @Test
    void goodTakes_areLeftAsTheyAre() {
        NextTry next = next(Noted.measured(Noted.PLAN, takes("1.0", "1.0", "0.98")));
        assertThat(next.advice()).isInstanceOf(NextTry.Advice.Keep.class);
    }

    @Test
    void lettingGoLater_movesTheOdds() {
        NextTry next = next(Noted.measured(Noted.PLAN, takes("0.5", "0.5")));
        Target.Time.At at = (Target.Time.At) next.target().time();
        double later = 1 - next.seconds().value();
        assertThat(next.oddsLater(later, at)).isGreaterThan(next.oddsLater(0, at));
    }

    /// z = 125 mm · t^0.63: at 120 mm after 0.94 s.
    /// **Source:** common practice, two readings of a crew.
    @Test
    void readingsAlone_areALineThroughThem() {
        String plan = Noted.PLAN
                .replace("rose: {density: 1.03 g/ml}", "rose: {front: [[0.40 s, 70 mm], [1.90 s, 188 mm]]}")
                .replace("at: [0 mm, 0 mm, 60 mm]", "at: [0 mm, 0 mm, 20 mm]");
        NextTry next = next(Noted.plan(plan));
        assertThat(next.basis()).isInstanceOf(NextTry.Basis.Readings.class);
        assertThat(next.target().depthMetres()).isCloseTo(0.120, within(1e-9));
        assertThat(next.seconds().value()).isCloseTo(0.94, within(0.005));
        assertThat(next.seconds().high() / next.seconds().value()).isGreaterThan(1.2);
        assertThat(next.advice()).isInstanceOf(NextTry.Advice.Untold.class);
    }

    /// The surface at the very start is no reading, and a reading's own ± counts.
    @Test
    void readingsAlone_leaveOutTheStart_andCountTheirErrors() {
        String plan = Noted.PLAN.replace("density: 1.03 g/ml", "front: [%s]");
        NextTry two = next(Noted.plan(plan.formatted("[0.40 s, 70 mm], [1.90 s, 188 mm]")));
        NextTry three = next(Noted.plan(plan.formatted("[0 s, 0 mm], [0.40 s, 70 mm], [1.90 s, 188 mm]")));
        assertThat(three.seconds()).isEqualTo(two.seconds());
        NextTry coarse = next(Noted.plan(plan.formatted("[0.40 s ± 0.2 s, 70 mm ± 20 mm], [1.90 s, 188 mm]")));
        assertThat(coarse.seconds().value()).isCloseTo(two.seconds().value(), within(1e-12));
        assertThat(coarse.seconds().high()).isGreaterThan(1.05 * two.seconds().high());
    }

    /// Five millimetres in forty seconds are no front's, nor 90 mm in 0.05 s.
    @Test
    void readingsOfNoFront_predictNothing() {
        String plan = Noted.PLAN.replace("density: 1.03 g/ml", "front: [%s]");
        for (String front : List.of("[0.4 s, 60 mm], [40 s, 65 mm]", "[0.40 s, 60 mm], [0.45 s, 150 mm]")) {
            assertThat(NextTry.of(
                            Noted.plan(plan.formatted(front)).findShot("plume").orElseThrow()))
                    .isInstanceOfSatisfying(
                            NextTry.Outcome.Missing.class,
                            missing -> assertThat(missing.what().getFirst()).startsWith("readings that go as a front"));
        }
    }

    /// Laws of takes are corrected in fresh water only, so a shot in salted water is told that.
    @Test
    void saltedWater_isMissing_notTakenForFresh() {
        Plan salted = Noted.plan(Noted.PLAN.replace("pane: 8 mm", "pane: 8 mm, salt: 3 %"));
        assertThat(NextTry.of(salted.findShot("plume").orElseThrow()))
                .isInstanceOfSatisfying(
                        NextTry.Outcome.Missing.class,
                        missing -> assertThat(missing.what())
                                .singleElement()
                                .satisfies(what -> assertThat(what).startsWith("fresh water")));
    }

    /// A front alone predicts; what to change isn't known, and why is said.
    @Test
    void readingsAlone_inSaltedWater_sayWhyNoChangeIsKnown() {
        String front = "lessons: 1\nmeasured:\n  - {take: 1, shot: plume, ink: rose, rate: 50 fps,"
                + " front: [[0.4 s, 70 mm], [1.9 s, 160 mm]]}\n";
        Plan salted = Noted.measured(Noted.PLAN.replace("pane: 8 mm", "pane: 8 mm, salt: 3 %"), front);
        assertThat(next(salted).advice())
                .isInstanceOfSatisfying(
                        NextTry.Advice.Untold.class,
                        untold -> assertThat(untold.missing())
                                .singleElement()
                                .satisfies(what -> assertThat(what).startsWith("fresh water")));
    }

    @Test
    void whatIsMissing_isNamed() {
        Plan noVolume = Noted.plan(Noted.PLAN.replace("volume: 6 ml, ", ""));
        assertThat(NextTry.of(noVolume.findShot("plume").orElseThrow()))
                .isInstanceOfSatisfying(
                        NextTry.Outcome.Missing.class,
                        missing -> assertThat(missing.what()).containsExactly("the ink's volume (release.volume)"));
        Plan free = Noted.plan(Noted.PLAN.replace("-50 mm, 250 mm]", "-50 mm, free]"));
        assertThat(NextTry.of(free.findShot("plume").orElseThrow()))
                .isInstanceOfSatisfying(
                        NextTry.Outcome.Missing.class,
                        missing -> assertThat(missing.what().getFirst()).contains("nozzle's height"));
    }
}
