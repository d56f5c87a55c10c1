package plumeline.ask.water;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.answer.Answer;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.ask.Asking;
import plumeline.quantity.Print;

/// The question `hang`: intervals of what tips.
final class HangTest {
    private static final String BODY = """
        whole_mass: 410 g ± 6 g
        outside: 393 ml ± 8 ml
        centre_of_mass: %s ± %s
        centre_of_volume: 57.5 mm
        points: [20 mm, 90 mm]
        attitude: level
        """;

    /// By the lever rule the balance point is near the base, beyond the lines: it hangs upright on the lower one, or
    /// level should the balance point be between them.
    @Test
    void tilt_mayTipWithinTheSpread_soItsEndsAreBothRests() {
        Answer answer = Asking.answer("hang", BODY.formatted("55 mm", "2 mm"));
        assertThat(answer.verdict()).isEqualTo(Verdict.FAILS);
        Value.Spread tilt = Asking.spread(answer, "tilt");
        assertThat(tilt.value()).isCloseTo(0, within(0.1));
        assertThat(tilt.low()).isCloseTo(0, within(0.1));
        assertThat(tilt.high()).isCloseTo(90, within(1e-9));
        assertThat(answer.notes().because()).anyMatch(line -> line.startsWith("tilt's low and high are"));
    }

    @Test
    void tilt_thatCannotTipWithinTheSpread_hasNoInterval() {
        Answer answer = Asking.answer("hang", BODY.formatted("57.5 mm", "0.5 mm"));
        assertThat(answer.getValue("tilt")).isEqualTo(new Value.Number(90, "deg"));
        assertThat(Asking.spread(answer, "load_1").low()).isPositive();
    }

    /// Neither input tips it by itself: only both at once, as far as they are together likely to be off.
    @Test
    void tilt_tipsByAllInputsTogether() {
        String text = "whole_mass: 500 g\noutside: 420 ml\ncentre_of_mass: %s\ncentre_of_volume: %s\n"
                + "points: [25 mm, 95 mm]\nattitude: level\n";
        // Balance point (500·60 − 419.2·66.4)/80.8 = 26.8 mm, 1.8 mm above the lower line. It goes 1.6 mm down by the
        // one input, 1.7 mm by the other, √(1.6² + 1.7²) = 2.3 mm by both.
        Value level = new Value.Number(90, "deg");
        Answer one = Asking.answer("hang", text.formatted("60 mm ± 0.4 mm", "66.4 mm"));
        assertThat(one.getValue("tilt")).isEqualTo(level);
        Answer other = Asking.answer("hang", text.formatted("60 mm", "66.4 mm ± 0.5 mm"));
        assertThat(other.getValue("tilt")).isEqualTo(level);
        Answer both = Asking.answer("hang", text.formatted("60 mm ± 0.4 mm", "66.4 mm ± 0.5 mm"));
        assertThat(Asking.spread(both, "tilt").low()).isCloseTo(0, within(1e-6));
        assertThat(both.verdict()).isEqualTo(Verdict.TIGHT);
    }

    private static final String DISHED = """
        profile: [[0 mm, 24 mm], [10 mm, 33 mm], [95 mm, 33 mm], [109 mm, 26.5 mm], [115 mm, 26.5 mm]]
        base: {diameter: 47 mm, depth: 10 mm, air: %s}
        empty_mass: 13 g
        contents: {volume: 354.8 ml, density: 0.99821 g/ml}
        closed: no
        points: [115 mm]
        """;

    /// What it displaces is its outline less the hollow, and what it weighs in water that much less with each
    /// millilitre of air. Tilted by θ the rim of radius 23.5 mm stands 47 mm · sin θ across, so that at 11 deg only
    /// what is over its highest point stays.
    @Test
    void airUnderTheBase_thatSpills_isNotInTheLoads_andLettingItOutIsTried() {
        Answer caught = Asking.answer("hang", DISHED.formatted("7 ml"));
        Answer cleared = Asking.answer("hang", DISHED.formatted("0 ml"));
        double tilt = Asking.number(caught, "tilt");
        assertThat(tilt).isBetween(5.0, 20.0);
        double none = Asking.number(cleared, "load");
        double load = Asking.number(caught, "load");
        assertThat(Asking.number(caught, "load_1")).isCloseTo(load, within(1e-12));
        double left = (none - load) / (998.207 * 9.80665) * 1e6;
        assertThat(left).isBetween(2.0, 6.0);
        assertThat(caught.notes().because())
                .anyMatch(line -> line.startsWith("Under its hollow base 7 ml of air are trapped")
                        && line.contains(String.format(
                                java.util.Locale.ROOT, "at %.0f deg %.1f ml of it are left", tilt, left)));
        assertThat(caught.notes().attempts())
                .containsExactly(String.format(
                        java.util.Locale.ROOT,
                        "Tilt it under water until no air is left under its base: it then hangs at 0 deg on the same"
                                + " ties, %s N in all.",
                        Print.number(none, 3)));
        assertThat(Asking.number(cleared, "tilt")).isZero();
        assertThat(cleared.notes().because()).noneMatch(line -> line.contains("trapped"));
    }

    /// Laid level nothing of it stays under the rim.
    @Test
    void airUnderTheBase_isGoneWhereItHangsLevel() {
        String level = "attitude: level\n";
        String two = DISHED.replace("[115 mm]", "[20 mm, 100 mm]") + level;
        Answer caught = Asking.answer("hang", two.formatted("7 ml"));
        Answer cleared = Asking.answer("hang", two.formatted("0 ml"));
        for (String each : new String[] {"tilt", "load", "load_1", "load_2", "single_point"}) {
            assertThat(Asking.number(caught, each)).isCloseTo(Asking.number(cleared, each), within(1e-9));
        }
    }
}
