package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.quantity.PaperUnit;

/// Net weight in water, by hand: fresh water at 20 °C has 0.998207 g/ml (CIPM table, Tanaka et al. 2001).
final class StaysUnderTest {
    private static final String CAMERA = "camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], aim: hero}";
    private static final String HUNG = "place: {hero: {thing: %s, at: [0 mm, 0 mm, 100 mm], lines: 1}}";
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";

    private static String[] lines(String thing, String want) {
        return new String[] {CAMERA, HUNG.formatted(thing), TANK, "wants: [" + want + "]"};
    }

    @Test
    void margin_isMassLessWaterDisplaced() {
        assertThat(Wanted.said(lines("weighed", "{stays_under: hero}")))
                .isEqualTo(197 - 0.998207 * 133.5, within(1e-3));
        assertThat(Wanted.said(lines("weighed", "{stays_under: hero, by: 60 g}")))
                .isEqualTo(197 - 0.998207 * 133.5 - 60, within(1e-3));
        assertThat(Wanted.said(lines("floater", "{stays_under: hero}")))
                .isEqualTo(120 - 0.998207 * 133.5, within(1e-3));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "weighed | {stays_under: hero} | hero sinks by 64 g.",
                "weighed | {stays_under: hero, by: 80 g} | hero sinks by 64 g; 80 g are wanted.",
                "floater | {stays_under: hero} | hero floats: it lacks 13 g of weight."
            })
    void standing_saysByHowMuch(String thing, String want, String sentence) {
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, lines(thing, want))).contains(sentence);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "tall | Weigh hero, whole and filled: write its mass.",
                "opened | hero is open: write how much air stays in it, 0 ml once it is flooded and no bubble is left."
            })
    void whatIsMissing_isNamed(String thing, String why) {
        assertThat(Wanted.never(lines(thing, "{stays_under: hero}"))).contains(why);
    }

    /// 1.7 g ± √(1.5² + 0.5²) g and more: passes as measured, and needn't. A question's `tight` is the same.
    @Test
    void whatMayBeOffByMoreThanItPassesBy_isTight() {
        String near = "diameter: 42 mm, height: 118 mm, mass: 135 g ± 1.5 g, displaces: 133.5 ml ± 1.5 ml";
        assertThat(Wet.of(near, "", "{stays_under: hero}").tight())
                .contains("hero sinks by 1.7 g, but that may be off by 2.1 g: weigh it more closely.");
        assertThat(Wet.of(near, "", "{stays_under: hero}").margin()).isEqualTo(1.7, within(0.05));
        assertThat(Wet.of(Wet.MEASURED, "", "{stays_under: hero}").tight()).isEmpty();
    }

    /// π · 21² · 118 = 163.5 ml as a cylinder; ± 5 % of that is 8.2 g of water.
    @Test
    void withoutDisplaces_theFormsVolumeCounts_andIsSaidToBeTypical() {
        String[] lines = lines("unpushed", "{stays_under: hero}");
        assertThat(Wanted.margin(lines)).isEqualTo(197 - 0.998207 * Math.PI * 2.1 * 2.1 * 11.8, within(1e-3));
        assertThat(Wanted.standing(PaperUnit.MILLIMETRES, lines)).contains("hero sinks by 34 g ± 8.2 g.");
        assertThat(Wanted.caution(lines)).contains("Assumed: its volume by its form, ± 5 %.");
    }

    /// The tank is 450 mm wide, its water reaches from 8 to 268 mm; the thing is 118 mm tall.
    @ParameterizedTest
    @CsvSource({
        "0, 0, 149, true",
        "0, 0, 151, false",
        "0, 0, 400, false",
        "223, 0, 80, true",
        "226, 0, 80, false",
        "0, 0, 0, true",
        "0, 0, -20, false"
    })
    void outOfTheWater_nothingIsSaid(int x, int y, int z, boolean isUnder) {
        Wet wet = Wet.changed(
                Wet.MEASURED,
                "",
                "{stays_under: hero}",
                "at: [0 mm, 0 mm, 80 mm]",
                "at: [" + x + " mm, " + y + " mm, " + z + " mm]");
        assertThat(wet.margin()).isCloseTo(63.7, within(0.1));
        assertThat(wet.unknown())
                .isEqualTo(
                        isUnder
                                ? "known"
                                : "hero isn't wholly under the water where it is placed. Place it within the tank's"
                                        + " walls, its top under the surface.");
        assertThat(wet.want().parts(wet.moments())[1] >= 0).isEqualTo(isUnder);
    }

    /// Ballast under its base adds its mass and displaces its own volume, of steel at 7.85 g/ml; written back, it does
    /// what was wanted, the spread of what was measured included.
    @Test
    void ballastThatIsTold_bringsItDownAsFarAsWanted() {
        String light =
                "diameter: 42 mm, height: 118 mm, mass: %s g ± 1 g, displaces: %s ml ± 2 ml, centre_of_mass: 48 mm";
        String want = "{stays_under: hero, by: 25 g}";
        Wet floats = Wet.of(light.formatted("120", "133.5"), "", want);
        String tried = floats.want().listAttempts(floats.moments()).stream()
                .filter(text -> text.contains("under its base"))
                .findFirst()
                .orElseThrow();
        double grams = Double.parseDouble(tried.replaceAll(" g of steel.*", ""));
        String body = light.formatted("120", "133.5") + ", ballast: {mass: %s g, place: under}";
        Wet after = Wet.of(body.formatted(grams), "", want);
        // Steel of 7.85 g/ml in water of 0.998207 g/ml.
        assertThat(after.margin()).isEqualTo(120 - 0.998207 * 133.5 + grams * (1 - 0.998207 / 7.85) - 25, within(1e-3));
        assertThat(after.tight()).isEmpty();
        assertThat(Wet.of(body.formatted(grams - 2), "", want).tight()).isPresent();
        Wet lead = Wet.of(
                light.formatted("120", "133.5") + ", ballast: {mass: 46 g, material: lead, place: inside}", "", want);
        assertThat(lead.margin()).isEqualTo(120 + 46 - 0.998207 * 133.5 - 25, within(1e-3));
    }

    /// A thing has one ballast: what is told to be written counts what is there.
    @Test
    void ballastThatIsThere_countsInWhatIsTold() {
        String body = "diameter: 42 mm, height: 118 mm, mass: 120 g, displaces: 133.5 ml, centre_of_mass: 48 mm,"
                + " ballast: {mass: %s g, place: under}";
        String want = "{stays_under: hero, by: 25 g}";
        Wet light = Wet.of(body.formatted("9"), "", want);
        String tried = light.want().listAttempts(light.moments()).stream()
                .filter(text -> text.contains("under its base"))
                .findFirst()
                .orElseThrow();
        String all = tried.replaceAll(".*in all ballast: \\{mass: (\\d+) g, place: under}.*", "$1");
        assertThat(Wet.of(body.formatted(all), "", want).margin()).isBetween(0.0, 1.0);
    }

    @Test
    void whatCantBe_isUnknown() {
        for (String wrong : java.util.List.of(
                Wet.MEASURED.replace("centre_of_mass: 48 mm", "centre_of_mass: 300 mm"),
                Wet.MEASURED.replace("centre_of_volume: 56 mm", "centre_of_volume: 300 mm"))) {
            assertThat(Wet.of(wrong, "", "{stays_under: hero}").unknown())
                    .startsWith("A centre of hero lies outside it.");
        }
        assertThat(Wet.of(Wet.MEASURED + ", empty_mass: 220 g", "", "{stays_under: hero}")
                        .unknown())
                .isEqualTo("hero weighs no more than its contents. Weigh it again, full.");
        String can = "diameter: 66 mm, height: 115 mm, empty_mass: 13 g, contents: {volume: 350 ml, density: 1 g/ml},"
                + " displaces: 358 ml, ballast: {mass: 500 g, place: inside}";
        assertThat(Wet.of(can, "", "{stays_under: hero}").unknown()).contains("no room");
        // Open and flooded, steel takes the place of water.
        String open =
                "diameter: 66 mm, height: 115 mm, empty_mass: 60 g, material: glass, displaces: 380 ml, closed: no,"
                        + " air: 0 ml, ballast: {mass: 100 g, place: inside}";
        Wet flooded = Wet.of(open, "", "{stays_under: hero}");
        assertThat(flooded.margin()).isEqualTo(60 * (1 - 0.998207 / 2.5) + 100 * (1 - 0.998207 / 7.85), within(0.01));
        assertThat(Wet.of(open, "", "{upright: hero}").unknown()).isEqualTo("known");
    }

    @Test
    void aShotWithoutATank_isUnknown() {
        assertThat(Wanted.never(CAMERA, HUNG.formatted("weighed"), "wants: [{stays_under: hero}]"))
                .contains("The shot has no tank.");
    }

    /// 135 − 0.998207 · 133.5 g.
    @Test
    void aSinkerThatBubblesCanLift_isWarnedOf() {
        assertThat(Wanted.caution(lines("light", "{stays_under: hero}")))
                .contains("Bubbles of 1.7 ml together float hero: wet it, wipe it, tilt air out from under its base.");
        assertThat(Wanted.caution(lines("weighed", "{stays_under: hero}"))).isEmpty();
    }
}
