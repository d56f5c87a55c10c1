package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// What `hangs` says, and where it can't be told. Its balance point, by the lever: 31.27 mm (see [PoiseTest]).
final class HangsTest {
    private static final String LINE = "line: {strength: 75 N, diameter: 0.4 mm, knot: 50 %}";

    private static Wet hung(String placed, String want) {
        return Wet.of(Wet.MEASURED, placed, want);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tied: [110 mm] | {hangs: hero}"
                        + " | hero hangs at 0 deg; 0 deg ± 3 deg is wanted. In water its line pulls 0.63 N.",
                "tied: [10 mm, 95 mm], tilt: 90 deg | {hangs: hero}"
                        + " | hero hangs at 90 deg; 90 deg ± 3 deg is wanted. In water its lines pull 0.47 N"
                        + " and 0.16 N.",
                "tied: [10 mm] | {hangs: hero}"
                        + " | hero comes to rest at 180 deg; 0 deg ± 3 deg is wanted. It balances 31 mm from its base:"
                        + " tie it above that.",
                "tied: [110 mm] | {hangs: hero, tilt: 180 deg}"
                        + " | hero comes to rest at 0 deg; 180 deg ± 3 deg is wanted. It balances 31 mm from its base:"
                        + " tie it below that.",
                "tied: [40 mm] | {hangs: hero, tilt: 90 deg, within: 5 deg}"
                        + " | hero comes to rest at 0 deg; 90 deg ± 5 deg is wanted. It balances 31 mm from its base:"
                        + " tie it on both sides of that.",
                "tied: [40 mm, 95 mm], tilt: 90 deg | {hangs: hero}"
                        + " | hero tips to 0 deg: a line would have to push. It balances 31 mm from its base: tie it on"
                        + " both sides of that.",
                "tied: [10 mm, 95 mm], tilt: 20 deg | {hangs: hero, tilt: 0 deg}"
                        + " | hero hangs at 20 deg; 0 deg ± 3 deg is wanted.",
                "tied: [110 mm] | {upright: hero}"
                        + " | hero hangs at 0 deg; 0 deg ± 3 deg is wanted. In water its line pulls 0.63 N."
            })
    void standing_saysWhereItComesToRest(String placed, String want, String sentence) {
        assertThat(hung(placed, want).standing()).isEqualTo(sentence);
    }

    @Test
    void whatFloats_needsALineThatPushes() {
        Wet light = Wet.of(Wet.MEASURED.replace("197 g", "120 g"), "tied: [110 mm]", "{hangs: hero}");
        assertThat(light.margin()).isEqualTo(-177);
        assertThat(light.want().restsOnMarks()).isTrue();
        assertThat(light.standing())
                .isEqualTo("hero floats by 13 g: a line from above would have to push. Make it sink first: ask float.");
    }

    /// In air it hangs by its centre of mass, 48 mm, but for the air it displaces: 0.16 g.
    @Test
    void inAir_itHangsByItsCentreOfMass() {
        String tank = "            tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}\n";
        String tied = "tied: [10 mm, 90 mm], tilt: 90 deg";
        Wet dry = Wet.changed(
                Wet.MEASURED,
                tied,
                "{hangs: hero}",
                tank.strip(),
                "tank: {tank: glass, at: [900 mm, 30 mm]," + " water: 260 mm}");
        double share = (48 - 10) / 80.0;
        assertThat(dry.standing())
                .isEqualTo("hero hangs at 90 deg; 90 deg ± 3 deg is wanted. In air its lines pull "
                        + String.format(Locale.ROOT, "%.1f N and %.2f N.", (1 - share) * 1.93, share * 1.93)
                                .replace("1.0 N", "1 N"));
    }

    @Test
    void aWaterLineThatCutsIt_leavesItUnknown() {
        Wet cut = Wet.changed(Wet.MEASURED, "tied: [110 mm]", "{hangs: hero}", "0 mm, 80 mm]", "0 mm, 200 mm]");
        assertThat(cut.unknown())
                .isEqualTo(
                        "Not computed: the water line cuts hero, or it reaches through the tank's wall. Hang it wholly"
                                + " under the water or wholly out of it.");
        assertThat(hung("tied: [110 mm]", "{hangs: hero}").unknown()).isEqualTo("known");
    }

    @Test
    void ties_areAskedFor() {
        assertThat(hung("", "{hangs: hero}").unknown())
                .isEqualTo("hero hangs on no line: write where its lines leave it, tied: [free].");
    }

    /// Common practice: a line is tied to the top where nobody says otherwise; then it hangs upright.
    @Test
    void lines_leaveAtTheTop_whereTheirHeightsArentWritten_andThatIsSaid() {
        Wet untold = hung("lines: 2", "{hangs: hero}");
        assertThat(untold.margin())
                .isEqualTo(hung("tied: [118 mm, 118 mm]", "{hangs: hero}").margin(), within(1e-9));
        assertThat(untold.caution())
                .contains("Assumed: its lines leave it at its top; measure, and write them as tied.");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "diameter: 42 mm, height: 118 mm | Weigh hero, whole and filled: write its mass.",
                "diameter: 42 mm, height: 118 mm, mass: 40 g, contents: {volume: 60 ml}"
                        + " | hero weighs no more than its contents. Weigh it again, full.",
                "diameter: 42 mm, height: 118 mm, empty_mass: 40 g, contents: {volume: 160 ml}, displaces: 150 ml"
                        + " | Wall, contents and air have no room in hero. Push it under in a jug on a kitchen"
                        + " scale: the grams"
                        + " gained are the millilitres it displaces; measure what is in it.",
                "diameter: 66 mm, height: 115 mm, empty_mass: 13 g, contents: {volume: 420 ml}"
                        + " | Wall, contents and air have no room in hero. Push it under in a jug on a kitchen"
                        + " scale: the grams"
                        + " gained are the millilitres it displaces; measure what is in it.",
                "profile: [[0 mm, 20 mm], [30 mm, 0 mm], [40 mm, 0 mm], [118 mm, 20 mm]], mass: 100 g"
                        + " | hero's profile has a hole. Measure its radius at each height where the outline bends.",
                "diameter: 42 mm, height: 118 mm, mass: 600 g, displaces: 533.5 ml"
                        + " | hero can't displace so much: its form holds far less. Measure its form again, and push it"
                        + " under in a jug on a kitchen scale again: the grams gained are the millilitres it"
                        + " displaces.",
                "diameter: 66 mm, height: 118 mm, mass: 400 g, base: {diameter: 48 mm, depth: 10 mm, air: 12 ml}"
                        + " | The hollow under hero's base has no room in its form, or less room than air. Measure its"
                        + " diameter at the rim and its depth in the middle; fill it with water, upside down on a"
                        + " scale: 1 g is 1 ml."
            })
    void whatIsMissing_isNamed(String thing, String why) {
        assertThat(Wet.of(thing, "tied: [110 mm]", "{hangs: hero}").unknown()).isEqualTo(why);
        assertThat(Wet.of(thing, "lines: 1", "{stays_under: hero}").unknown()).isIn(why, "known");
    }

    /// 75 N, half of it at the knot, over 0.197 kg · 9.80665 = 1.93 N: 19.4.
    @Test
    void caution_saysWhatTheLineBears_inAir() {
        String under =
                "Nobody's hand or head under it, a soft mat on glass; lift it out of the water with a hand beneath.";
        assertThat(hung("tied: [110 mm], " + LINE, "{hangs: hero}").caution())
                .isEqualTo("One line alone bears 19.4 times its weight in air at the knot; five times is asked for. "
                        + under);
        Wet weak = hung("tied: [110 mm], line: {strength: 10 N}", "{hangs: hero}");
        assertThat(weak.lack())
                .isEqualTo("Its line is too weak: one alone bears 2.5 times its weight in air at the knot; five times"
                        + " is asked for.");
        assertThat(weak.caution()).startsWith(under);
        assertThat(hung("tied: [110 mm], " + LINE, "{hangs: hero}").lack()).isEmpty();
        assertThat(hung("tied: [110 mm]", "{hangs: hero}").caution())
                .isEqualTo("Its line isn't given: see that one alone bears 9.7 N at the knot, five times its"
                        + " weight in air. "
                        + under);
    }

    @Test
    void margin_isWhatIsLeftOfTheTiltAllowed() {
        String lines = "tied: [10 mm, 95 mm], tilt: 20 deg";
        assertThat(hung(lines, "{hangs: hero, tilt: 18 deg}").margin()).isEqualTo(1, within(1e-9));
        assertThat(hung(lines, "{hangs: hero, tilt: 24 deg, within: 1 deg}").margin())
                .isEqualTo(-3, within(1e-9));
    }
}
