package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/// Dew, drops and things that stand or float: margins by hand, sentences word for word.
final class DryWantsTest {
    private static final String BODY = "diameter: 42 mm, height: 118 mm";

    private static Wet sweat(String thing, String want) {
        return Wet.of(BODY + thing, "", want);
    }

    /// The dew point of 20 degC and 50 % is 9.27 degC (WMO-No. 8, annex 4.B: 9.26).
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "4 | sweats | 5.27 | hero sweats: at 4 degC it is 5.3 degC under the dew point of 9.3 degC.",
                "15 | sweats | -5.73 | hero stays dry: at 15 degC it is 5.7 degC over the dew point of 9.3"
                        + " degC. Chill it"
                        + " to 8 degC or colder.",
                "15 | stays_dry | 5.73 | hero stays dry: at 15 degC it is 5.7 degC over the dew point of 9.3 degC.",
                "4 | stays_dry | -5.27 | hero sweats: at 4 degC it is 5.3 degC under the dew point of 9.3 degC. Let it"
                        + " warm to 10 degC, or dry the air."
            })
    void dew_isCountedFromTheDewPoint(double celsius, String word, double margin, String sentence) {
        Wet wet = sweat(", temperature: " + celsius + " degC", "{" + word + ": hero}");
        assertThat(wet.margin()).isEqualTo(margin, within(0.02));
        assertThat(wet.standing()).isEqualTo(sentence);
        assertThat(wet.want().restsOnMarks()).isFalse();
    }

    @Test
    void dew_nearTheDewPoint_isTight_andWithinItsSpreadUnknown() {
        Wet near = sweat(", temperature: 8.8 degC", "{sweats: hero}");
        assertThat(near.tight())
                .contains(
                        "A hygrometer that is 3 % off moves the dew point by 0.9 degC: measure both closely, and write"
                                + " ±.");
        assertThat(sweat(", temperature: 4 degC", "{sweats: hero}").tight()).isEmpty();
        assertThat(sweat(", temperature: 8.8 degC ± 1 degC", "{sweats: hero}").unknown())
                .isEqualTo(
                        "hero is 0.5 degC under the dew point, but that may be off by 1 degC: measure more closely.");
    }

    @Test
    void dew_asksForProbeAndHygrometer() {
        assertThat(sweat("", "{sweats: hero}").unknown()).isEqualTo("Tape a probe to hero: write its temperature.");
        String air = ", air: {temperature: 20 degC, humidity: 50 %}";
        assertThat(Wet.changed(BODY + ", temperature: 4 degC", "", "{stays_dry: hero}", air, "")
                        .unknown())
                .isEqualTo("Measure the air beside hero, lamps on, within -20 to 60 degC: write the film's air:"
                        + " {temperature: 20 degC, humidity: 50 %}.");
    }

    @Test
    void dew_drips() {
        assertThat(sweat(", temperature: 4 degC", "{sweats: hero}").caution())
                .isEqualTo("Dew drips: no mains plug or lead underneath, and a footing that holds when wet.");
        assertThat(sweat(", temperature: 15 degC", "{stays_dry: hero}").caution())
                .isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "lacquer | {beads_stay: hero} | Drops of up to 4.4 mm stay on hero; 2 mm is wanted.",
                "wax | {beads_stay: hero, size: 3 mm} | Drops of up to 2 mm stay on hero; 3 mm is wanted: such"
                        + " drops run."
                        + " Spray finer, or take a surface that holds them.",
                "'{advancing: 80 deg, receding: 50 deg}' | {beads_stay: hero} | Drops of up to 4.4 mm stay on"
                        + " hero; 2 mm is"
                        + " wanted."
            })
    void beads_sayHowLargeADropStays(String surface, String want, String sentence) {
        Wet wet = sweat(", surface: " + surface, want);
        assertThat(wet.standing()).isEqualTo(sentence);
        assertThat(wet.want().restsOnMarks()).isFalse();
    }

    /// Of glycerine and water 1 to 1 a drop is heavier and less tense: σ/ρ is about 0.81 of water's, its root 0.90.
    @Test
    void beads_ofGlycerine_areSmaller() {
        double water = 2 + sweat(", surface: lacquer", "{beads_stay: hero}").margin();
        double mix = 2
                + sweat(", surface: lacquer", "{beads_stay: hero, liquid: {glycerine: 50 %}}")
                        .margin();
        assertThat(mix / water).isEqualTo(0.90, within(0.03));
    }

    @Test
    void beads_onAWideRangeOfSamples_areTight() {
        assertThat(sweat(", surface: lacquer", "{beads_stay: hero, size: 4.3 mm}")
                        .tight())
                .hasValueSatisfying(why -> assertThat(why)
                        .matches("On some samples only drops of up to [34](\\.[0-9])? mm stay\\. Try on"
                                + " a spare first\\."));
        assertThat(sweat(", surface: lacquer", "{beads_stay: hero, size: 1 mm}").tight())
                .isEmpty();
    }

    @Test
    void beads_nameWhatIsNotKnown() {
        assertThat(sweat(", surface: marzipan", "{beads_stay: hero}").unknown())
                .isEqualTo("Not known: how drops stand on marzipan. Name hero's surface lacquer, paint, glass,"
                        + " metal, wax or"
                        + " pet, or photograph a growing and a shrinking drop from the side: write"
                        + " surface: {advancing: 80"
                        + " deg, receding: 50 deg}.");
        assertThat(sweat(", surface: {advancing: 50 deg, receding: 80 deg}", "{beads_stay: hero}")
                        .unknown())
                .isEqualTo("Measure the angles inside a drop on hero again: it is larger while the drop grows than"
                        + " while it"
                        + " shrinks.");
        assertThat(sweat(", surface: clean_glass", "{beads_stay: hero}").unknown())
                .isEqualTo("Not computed: at such contact angles water spreads to a film, or rolls off, on hero.");
        assertThat(sweat("", "{beads_stay: hero}").caution())
                .isEqualTo(
                        "Keep the mist off hot lamps, mains plugs and lenses; wipe the floor. Assumed: its surface is a"
                                + " can's lacquer.");
        assertThat(Wet.changed(BODY, "", "{beads_stay: hero}", "temperature: 20 degC", "temperature: 50 degC")
                        .unknown())
                .isEqualTo("Drops are known from 0 to 40 degC, with glycerine from 15 to 30 degC. Measure the air.");
    }

    /// Of a full cylinder the weight's line goes through the edge at atan(r / half its height).
    @Test
    void standing_fallsOverItsEdge() {
        String placed = "            tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}\n".strip();
        String away = "tank: {tank: glass, at: [900 mm, 30 mm], water: 260 mm}";
        String thing = BODY + ", mass: 200 g, centre_of_mass: 59 mm";
        Wet stands = Wet.changed(thing, "", "{upright: hero}", placed, away);
        double tip = Math.toDegrees(Math.atan(21.0 / 59));
        assertThat(stands.margin()).isEqualTo(tip, within(0.02));
        assertThat(stands.standing()).isEqualTo("hero stands; leaned 20 deg it falls.");
        assertThat(stands.want().restsOnMarks()).isTrue();
        Wet leans = Wet.changed(thing, "tilt: 25 deg", "{upright: hero}", placed, away);
        assertThat(leans.margin()).isEqualTo(tip - 25, within(0.02));
        assertThat(leans.standing()).isEqualTo("hero falls: it is placed at 25 deg, and from 20 deg on it falls.");
    }

    /// In water the centre of its net weight counts, 31.27 mm high: see [PoiseTest].
    @Test
    void standing_onTheTanksFloor_countsItsNetWeight() {
        Wet stands = Wet.changed(Wet.MEASURED, "", "{upright: hero}", "0 mm, 80 mm]", "0 mm, 8 mm]");
        double balance = (197 * 48 - 0.998207 * 133.5 * 56) / (197 - 0.998207 * 133.5);
        assertThat(stands.margin()).isEqualTo(Math.toDegrees(Math.atan(21 / balance)), within(0.02));
    }

    @Test
    void loose_inTheWater_saysHowItTurns() {
        Wet floats = Wet.of(Wet.MEASURED.replace("197 g", "60 g"), "", "{upright: hero}");
        assertThat(floats.standing()).startsWith("hero floats, and comes to rest at ");
        assertThat(floats.standing()).endsWith("; 3 deg at most is wanted.");
        assertThat(floats.want().restsOnMarks()).isFalse();
        // Slack lines hold nothing: it floats as it would without them.
        Wet slack = Wet.of(Wet.MEASURED.replace("197 g", "60 g"), "tied: [110 mm]", "{upright: hero}");
        assertThat(slack.standing()).isEqualTo(floats.standing());
        String low = Wet.MEASURED.replace("centre_of_mass: 48 mm", "centre_of_mass: 20 mm");
        assertThat(Wet.of(low, "", "{upright: hero}").standing())
                .isEqualTo("hero sinks, and comes to rest at 0 deg; 3 deg at most is wanted.");
    }

    /// A ball of steel that touches its base from below, written back as the thing's ballast.
    @Test
    void weightThatIsTold_turnsAFloatingThingUpright() {
        Wet floats = Wet.of(Wet.MEASURED.replace("197 g", "60 g"), "", "{upright: hero}");
        String tried = floats.want().listAttempts(floats.moments()).getFirst();
        String ballast =
                tried.replaceAll("Fix (\\d+) g of steel under its base \\((.*)\\): it then floats upright\\.", "$2");
        assertThat(ballast).matches("ballast: \\{mass: \\d+ g, place: under}");
        Wet weighted = Wet.of(Wet.MEASURED.replace("197 g", "60 g") + ", " + ballast, "", "{upright: hero}");
        assertThat(weighted.standing())
                .matches("hero floats, and comes to rest at [0-3](\\.\\d)? deg; 3 deg at most is wanted\\.");
    }

    /// Its weight under its lift it sinks upright, over it it turns over: half a millimetre lies between.
    @Test
    void whatMayBeOffSoFarThatItTurnsOver_isTight() {
        String body = "diameter: 42 mm, height: 118 mm, mass: 197 g, displaces: 133.5 ml, centre_of_mass: 59.5 mm%s,"
                + " centre_of_volume: 60 mm";
        assertThat(Wet.of(body.formatted(""), "", "{upright: hero}").tight()).isEmpty();
        Wet loose = Wet.of(body.formatted(" ± 3 mm"), "", "{upright: hero}");
        assertThat(loose.margin()).isPositive();
        assertThat(loose.tight())
                .hasValueSatisfying(why -> assertThat(why)
                        .startsWith("hero rests as wanted by what was measured")
                        .endsWith("its centre of mass: balance it on a ruler more closely."));
        Wet stands = Wet.changed(
                Wet.MEASURED.replace("48 mm", "48 mm ± 1 mm"), "", "{upright: hero}", "0 mm, 80 mm]", "0 mm, 8 mm]");
        assertThat(stands.tight()).isEmpty();
    }
}
