package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.stage.Stage;

/// What is written with a ± differs from try to try, and nothing else does.
final class InkTriesTest {
    private static final InkCourse COURSE = new InkCourse(0.01, 1, new InkCourse.Until.Time(0.6));
    private static final int MANY = 400;

    private static InkTries tries(String release, InkCourse course) {
        return Poured.tries(Poured.stage(Poured.CAMERA, Poured.TANK, Poured.PLACE, release), course);
    }

    private static String loose() {
        return Poured.RELEASE
                .replace("ink: rose", "ink: loose")
                .replace("volume: 3 ml", "volume: 3 ml ± 10 %")
                .replace("[0 mm, -5 mm, 150 mm]", "[0 mm ± 3 mm, -5 mm, 150 mm ± 1 mm]");
    }

    private static double[] values(InkTries tries, String name) {
        double[] values = new double[MANY];
        for (int n = 0; n < MANY; n++) {
            values[n] = tries.task(n + 1).shot().spreads().stream()
                    .filter(each -> each.name().equals(name))
                    .findFirst()
                    .orElseThrow()
                    .value()
                    .si();
        }
        return values;
    }

    /// A normal of which the 5 % beyond 1.96 are drawn again has a standard deviation of 0.871 (tables of the normal,
    /// from memory: 1 − 2 · 1.96 · 0.0584 / 0.95 = 0.759, its square).
    private static void checkDrawn(double[] values, double middle, double halfWidth) {
        double sum = 0;
        double squares = 0;
        for (double value : values) {
            assertThat(value).isBetween(middle - halfWidth, middle + halfWidth);
            sum += value;
            squares += (value - middle) * (value - middle);
        }
        double sigma = 0.871 * halfWidth / 1.96;
        // Four standard errors.
        assertThat(sum / values.length).isEqualTo(middle, within(4 * sigma / Math.sqrt(values.length)));
        assertThat(Math.sqrt(squares / values.length)).isEqualTo(sigma, within(4 * sigma / Math.sqrt(2 * MANY)));
    }

    @Test
    void nothingLoose_eachTryIsAsWritten() {
        InkTries tries = tries(Poured.RELEASE, COURSE);
        assertThat(tries.planned().spreads()).isEmpty();
        assertThat(tries.task(7).shot()).isEqualTo(tries.planned());
        assertThat(tries.task(7).head().seed())
                .isNotEqualTo(tries.task(6).head().seed());
    }

    @Test
    void loose_isDrawnWithinItsSpread() {
        InkTries tries = tries(loose(), COURSE);
        assertThat(tries.planned().spreads().stream().map(InkShot.Spread::name))
                .containsExactlyInAnyOrder(
                        "kit.inks.loose.density",
                        "shots.one.release.volume",
                        "shots.one.release.x",
                        "shots.one.release.z");
        checkDrawn(values(tries, "kit.inks.loose.density"), 1060, 8);
        checkDrawn(values(tries, "shots.one.release.volume"), 3e-6, 3e-7);
        checkDrawn(values(tries, "shots.one.release.x"), 0, 0.003);
        checkDrawn(values(tries, "shots.one.release.z"), 0.150, 0.001);
    }

    @Test
    void draws_areWhatTheFlowIsSetUpWith() {
        InkTries tries = tries(loose(), COURSE);
        InkShot one = tries.task(1).shot();
        InkShot planned = tries.planned();
        List<Double> drawn =
                one.spreads().stream().map(each -> each.value().si()).toList();
        int density = indexOf(one, "kit.inks.loose.density");
        double water = planned.spreads().get(density).value().si()
                / (1 + planned.waters().sinkingMetresPerSecond2() / 9.80665);
        assertThat(one.waters().sinkingMetresPerSecond2())
                .isEqualTo(9.80665 * (drawn.get(density) / water - 1), within(1e-9));
        double share = drawn.get(indexOf(one, "shots.one.release.volume")) / 3e-6;
        assertThat(one.pour().metres3PerSecond())
                .isEqualTo(share * planned.pour().metres3PerSecond(), within(1e-15));
        assertThat(one.pour().endSeconds()).isEqualTo(planned.pour().endSeconds(), within(1e-12));
        assertThat(one.pour().mouth().x()).isEqualTo(drawn.get(indexOf(one, "shots.one.release.x")), within(1e-12));
        assertThat(one.pour().mouth().y()).isEqualTo(-0.005);
        assertThat(one.pour().mouth()).isNotEqualTo(planned.pour().mouth());
    }

    private static int indexOf(InkShot shot, String name) {
        return shot.spreads().stream().map(InkShot.Spread::name).toList().indexOf(name);
    }

    @Test
    void sameSeed_drawsTheSame_anotherOthers() {
        InkShot one = tries(loose(), COURSE).task(3).shot();
        assertThat(tries(loose(), COURSE).task(3).shot()).isEqualTo(one);
        assertThat(tries(loose(), COURSE).task(4).shot().spreads()).isNotEqualTo(one.spreads());
        assertThat(tries(loose(), new InkCourse(0.01, 2, COURSE.until()))
                        .task(3)
                        .shot()
                        .spreads())
                .isNotEqualTo(one.spreads());
    }

    /// Looser in one way, a try stays what it was in all others.
    @Test
    void eachValue_hasDrawsOfItsOwn() {
        double[] before = values(tries(loose(), COURSE), "shots.one.release.volume");
        double[] after = values(
                tries(loose().replace("squeeze_time: 0.2 s", "squeeze_time: 0.2 s ± 0.05 s"), COURSE),
                "shots.one.release.volume");
        assertThat(after).containsExactly(before);
    }

    @Test
    void key_isOneForAllTriesAndChangesWithASpread() {
        InkTries tries = tries(loose(), COURSE);
        assertThat(tries.task(1).key())
                .isEqualTo(tries.key())
                .isEqualTo(tries.task(2).key());
        assertThat(tries(loose().replace("± 10 %", "± 12 %"), COURSE).key()).isNotEqualTo(tries.key());
        assertThat(tries(Poured.RELEASE, COURSE).key()).isNotEqualTo(tries.key());
    }

    /// The tin's top is 68 mm over the table, the mouth 6 mm above it: more than a quarter of all draws lie inside.
    @Test
    void drawInsideAThing_isDrawnAgain() {
        Stage stage = Poured.stage(
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                Poured.RELEASE.replace("[0 mm, -5 mm, 150 mm]", "[0 mm, 20 mm, 74 mm ± 20 mm]"));
        InkTries tries = Poured.tries(stage, COURSE);
        for (int n = 1; n <= 100; n++) {
            InkShot shot = tries.task(n).shot();
            assertThat(shot.isSolid(shot.pour().mouth())).isFalse();
            assertThat(shot.isOpenAtMouth(tries.grid())).isTrue();
        }
    }
}
