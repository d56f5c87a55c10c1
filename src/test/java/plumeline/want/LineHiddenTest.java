package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/// How wide a line shows, by similar triangles; what hides it; where it can't be told.
final class LineHiddenTest {
    private static final String BODY = "diameter: 42 mm, height: 118 mm";
    private static final String AWAY = "tank: {tank: glass, at: [900 mm, 30 mm], water: 260 mm}";
    private static final String TANK = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";

    private static Wet dry(String placed, String want, String at) {
        return Wet.changed(
                BODY,
                placed + ", line: {diameter: 0.25 mm}",
                want,
                TANK + "\n" + PLACE,
                AWAY + "\n" + PLACE.replace("0 mm, 80 mm]", at));
    }

    private static final String PLACE = "    place: {hero: {thing: product, at: [0 mm, 0 mm, 80 mm]";

    /// From 1100 mm a 100 mm lens has m = 100/1000; 36 mm of 3840 px make 106.7 px a millimetre: 0.25 mm are 2.67 px.
    @Test
    void width_isTheLinesTimesTheScale() {
        Wet seen = dry("lines: 1", "{line_hidden: hero}", "0 mm, 40 mm]");
        assertThat(seen.margin()).isEqualTo(1 - 0.25 * 0.1 * 3840 / 36, within(1e-6));
        assertThat(seen.standing())
                .isEqualTo(
                        "hero's line shows 2.7 px wide; under 1 px is wanted. Paint it out with a mask of 7 px, hide it"
                                + " behind something opaque, or take thinner line where that still bears five"
                                + " times the load.");
        Wet asked = dry("lines: 1", "{line_hidden: hero, under: 3 px}", "0 mm, 40 mm]");
        assertThat(asked.margin()).isEqualTo(3 - 0.25 * 0.1 * 3840 / 36, within(1e-6));
        assertThat(asked.standing()).isEqualTo("hero's line shows 2.7 px wide; under 3 px is wanted.");
        assertThat(asked.caution()).isEqualTo("Assumed: the strength usual of nylon; a knot that leaves 50 %.");
    }

    /// The picture's upper edge is 101.25 mm over the lens point's height at the thing: 240.25 mm; its top is at 258
    /// mm.
    @Test
    void aLineThatBeginsOverThePicture_isOutOfIt() {
        Wet over = dry("lines: 1", "{line_hidden: hero}", "0 mm, 140 mm]");
        assertThat(over.margin()).isEqualTo((258 - 139 - 101.25) * 0.1 * 3840 / 36, within(1e-6));
        assertThat(over.standing()).isEqualTo("hero's line is out of the picture by 189 px.");
    }

    /// The screen, 60 mm wide 100 mm nearer, has its near face 995 mm from the lens point: 30/995 to each side, less
    /// half the line.
    @Test
    void aLineBehindSomethingOpaque_isHidden() {
        String behind = "lines: 1, line: {diameter: 0.25 mm}}, screen: {thing: screen, at: [0 mm, -100 mm]";
        Wet hidden = Wet.changed(
                BODY,
                behind,
                "{line_hidden: hero}",
                TANK + "\n" + PLACE,
                AWAY + "\n" + PLACE.replace("0 mm, 80 mm]", "0 mm, 40 mm]"));
        double pixels = 0.1 * 3840 / 36 * 1100;
        assertThat(hidden.margin()).isEqualTo((30.0 / 995 - 0.125 / 1100) * pixels, within(0.2));
        assertThat(hidden.standing()).isEqualTo("hero's line is hidden; 352 px to spare.");
        Wet beside = Wet.changed(
                BODY,
                behind.replace("[0 mm, -100 mm]", "[40 mm, -100 mm]"),
                "{line_hidden: hero}",
                TANK + "\n" + PLACE,
                AWAY + "\n" + PLACE.replace("0 mm, 80 mm]", "0 mm, 40 mm]"));
        assertThat(beside.margin()).isEqualTo(1 - 0.25 * 0.1 * 3840 / 36, within(1e-6));
    }

    /// Under water it seems 1.333 times as near behind the wall: 908 mm of air, 8 mm of glass, 180 mm of water.
    @Test
    void throughTheTank_itShowsWider() {
        Wet wet = Wet.of(BODY, "lines: 1, line: {diameter: 0.25 mm}", "{line_hidden: hero}");
        Wet low = Wet.changed(
                BODY,
                "lines: 1, line: {diameter: 0.25 mm}",
                "{line_hidden: hero}",
                "at: [0 mm, 0 mm, 80 mm]",
                "at: [0 mm, 0 mm, 40 mm]");
        double apparent = 1100 - 128 + 8 / 1.52 + 120 / 1.333;
        double pixels = 100 / (apparent - 100) * 3840 / 36;
        assertThat(low.margin()).isEqualTo(1 - 0.25 * pixels, within(0.01));
        assertThat(wet.unknown()).isEqualTo("known");
    }

    /// Its upper end at 250 mm is under the picture's edge: as wide there as anywhere; a line that is held down to the
    /// floor runs through the picture as one that goes up does.
    @Test
    void aLineThatEnds_isSeenToItsEnd() {
        double wide = 0.25 * 0.1 * 3840 / 36;
        String up = "lines: 1, line: {diameter: 0.25 mm, to: 230 mm}";
        assertThat(ended(up, "0 mm, 40 mm]").margin()).isEqualTo(1 - wide, within(1e-6));
        String aslant = "lines: 1, line: {diameter: 0.25 mm, to: [400 mm, 0 mm, 400 mm]}";
        assertThat(ended(aslant, "0 mm, 40 mm]").margin()).isEqualTo(1 - wide, within(1e-6));
        String down = "lines: 1, line: {diameter: 0.25 mm, to: 0 mm}";
        assertThat(ended(down, "0 mm, 140 mm]").margin()).isEqualTo(1 - wide, within(1e-6));
        assertThat(ended(down, "0 mm, 400 mm]").margin()).isEqualTo(1 - wide, within(1e-6));
    }

    private static Wet ended(String placed, String at) {
        return Wet.changed(
                BODY,
                placed,
                "{line_hidden: hero}",
                TANK + "\n" + PLACE,
                AWAY + "\n" + PLACE.replace("0 mm, 80 mm]", at));
    }

    @Test
    void whatIsMissing_isNamed() {
        assertThat(Wet.of(BODY, "", "{line_hidden: hero}").unknown())
                .isEqualTo("hero hangs on no line: write lines or tied.");
        assertThat(Wet.of(BODY, "lines: 1", "{line_hidden: hero}").unknown())
                .isEqualTo("Measure the line that hero hangs on: write its line: {diameter: 0.2 mm}.");
        Wet above = Wet.changed(
                BODY,
                "lines: 1, line: {diameter: 0.25 mm}",
                "{line_hidden: hero}",
                "at: [0 mm, -1100 mm, 139 mm], aim: ahead",
                "at: [0 mm, -1100 mm, 700 mm], tilt: -26 deg");
        assertThat(above.unknown()).startsWith("Not computed: the camera ");
    }
}
