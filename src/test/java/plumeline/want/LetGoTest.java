package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.fall.Medium;
import plumeline.fall.Rise;

/// Wants on what falls and rises; the plan is [Inked].
final class LetGoTest {
    private static final String DRY = "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}";
    private static final String HUNG = "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}}";
    private static final String CAMERA =
            "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 198 mm], aim: ahead, focus: hero}";

    /// A can that fills 70 % of the frame's height: 174 mm are seen there.
    private static Inked dropped(String release, String want, String more) {
        String text = CAMERA + "\n    " + DRY + "\n    " + HUNG;
        String set = """
            camera: {body: main, lens: macro, at: [0 mm, -962.1 mm, 161 mm], aim: ahead, rate: 240 fps, focus: hero}
                place: {hero: {thing: flacon, at: [0 mm, 0 mm, 100 mm]}}
            """;
        return Inked.changed(release, want, text, set.strip() + "\n    " + more);
    }

    /// Common practice: from 100 mm over a frame 174 mm high a piece is in view for 94 ms, 22 frames at 240 fps; played
    /// at a tenth of its speed each of them is a frame of the screen.
    @Test
    void fallsThrough_isTheTimeFromTopToBottomOfThePicture() {
        String release = "piece: berry, at: [0 mm, 0 mm, 348.3 mm]";
        Inked slow = dropped(release, "{falls_through: berry, frames: 20 frames}", "speed: 10 %");
        assertThat(slow.margin() + 20).isCloseTo(22.5, within(0.5));
        assertThat(slow.standing())
                .startsWith("berry is seen for 22 frames of the screen, from 0.14 s to 0.24 s after its release");
        Inked fast = dropped(release, "{falls_through: berry, frames: 3 frames}", "speed: 100 %");
        assertThat(fast.margin() + 3).isCloseTo(2.25, within(0.05));
        assertThat(fast.standing()).contains("3 are wanted. Play slower");
        Inked late = dropped(
                release.replace("348.3 mm]", "348.3 mm], start: 0.3 s"),
                "{falls_through: berry, frames: 20 frames}",
                "speed: 10 %");
        assertThat(late.standing())
                .contains("The shot ends 0.1 s after the release, before it comes in: make it longer");
        Inked after = dropped(
                release.replace("348.3 mm]", "348.3 mm], start: 0.5 s"),
                "{falls_through: berry, frames: 20 frames}",
                "speed: 10 %");
        assertThat(after.unknown())
                .isEqualTo("The release is after the shot's end. It starts at 0.5 s on the table, where the shot is"
                        + " over after 0.4 s: let it go earlier, or give the shot more frames.");
    }

    @Test
    void fallsThrough_endsWithTheShot_andCountsWhatIsInThePicture() {
        Inked late = dropped(
                "piece: berry, at: [0 mm, 0 mm, 348.3 mm], start: 0.3 s",
                "{falls_through: berry, frames: 20 frames}",
                "speed: 10 %");
        assertThat(late.margin() + 20).isBetween(0.0, 0.01);
        Inked beside = dropped(
                "piece: berry, at: [400 mm, 0 mm, 348.3 mm]",
                "{falls_through: berry, frames: 2 frames}",
                "speed: 10 %");
        assertThat(beside.lack()).contains(" mm beside the picture");
        Inked inches = Inked.changed(
                "piece: berry, at: [400 mm, 0 mm, 348.3 mm]",
                "{falls_through: berry, frames: 2 frames}",
                "rate: 24 fps}",
                "rate: 24 fps, papers: in}");
        assertThat(inches.lack()).contains(" in beside the picture");
        assertThat(dropped("thing: hero", "{falls_through: berry, frames: 2 frames}", "speed: 10 %")
                        .unknown())
                .startsWith("Nothing lets berry go");
    }

    /// Under water a berry of 16 mm and 2.6 g comes to 0.39 m/s (drag of balls 0.45, buoyancy: a physics text's sum):
    /// from rest in 20 degC water it is in view far longer than in air, and what floats doesn't sink.
    @Test
    void fallsThrough_underWater_isSlower() {
        Inked sinking = Inked.of("piece: berry, at: [0 mm, 0 mm, 200 mm]", "{falls_through: berry, frames: 2 frames}");
        assertThat(sinking.unknown()).isEqualTo("known");
        double volume = Math.PI / 6 * Math.pow(0.016, 3);
        double terminal =
                Math.sqrt(2 * 9.80665 * (0.0026 - 998.2 * volume) / (998.2 * 0.45 * Math.PI / 4 * 0.016 * 0.016));
        double seen = (sinking.margin() + 2) / 24;
        assertThat(seen).isGreaterThan(0.08 / terminal).isLessThan(0.35 / terminal + 0.3);
        Inked floating = Inked.changed(
                "piece: berry, at: [0 mm, 0 mm, 200 mm]",
                "{falls_through: berry, frames: 2 frames}",
                "mass: 2.6 g",
                "mass: 1.6 g");
        assertThat(floating.lack()).startsWith("berry doesn't sink in the water.");
        assertThat(floating.margin()).isNegative();
    }

    @Test
    void fallsThrough_ofAHandful_mindsThoseNearerToTheLens() {
        String wide = "piece: berry, at: [0 mm, 0 mm, 348.3 mm], count: 100, spread: 300 mm";
        assertThat(dropped(wide, "{falls_through: berry, frames: 22 frames}", "speed: 10 %")
                        .tight())
                .hasValueSatisfying(why -> assertThat(why).startsWith("Of the handful "));
        String narrow = wide.replace("300 mm}", "1 mm}").replace("spread: 300 mm", "spread: 1 mm");
        assertThat(dropped(narrow, "{falls_through: berry, frames: 20 frames}", "speed: 10 %")
                        .tight())
                .isEmpty();
    }

    private static Inked rising(String want) {
        return Inked.changed(
                "thing: hero, start: 0.2 s",
                want,
                "{thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}",
                "{thing: cork, at: [0 mm, 0 mm, 80 mm]}");
    }

    /// 133.5 ml of water at 20 degC weigh 133.3 g: it floats by 33 g.
    @Test
    void rises_isByItsLift() {
        Inked cork = rising("{rises: hero, by: 60 mm, within: 0.6 s}");
        Rise rise = new Rise(0.1, 133.5e-6, Math.PI * 0.021 * 0.021, Medium.ofWater(293.15), 1);
        assertThat(cork.margin()).isCloseTo(0.6 - rise.seconds(0.06), within(1e-9));
        assertThat(cork.standing()).startsWith("hero floats by 33 g and is 60 mm up after 0.2");
        assertThat(cork.tight()).isEmpty();
        String just = String.format(Locale.ROOT, "%.3f s", rise.seconds(0.06) + 0.005);
        assertThat(rising("{rises: hero, by: 60 mm, within: " + just + "}").tight())
                .isPresent();
        assertThat(rising("{rises: hero, by: 60 mm, within: 0.1 s}").standing()).endsWith("late. Make it lighter.");
    }

    private static final double FACE = Math.PI * 0.021 * 0.021;

    /// When a bottle of 133.5 ml, 42 mm wide, is 60 mm up: Newton's law in steps of ten microseconds, with the drag of
    /// a blunt cylinder end on (0.85, Hoerner 1965) and the water that a disc drags along (8/3 of its radius cubed,
    /// Lamb).
    private static double risesSeconds(double kilograms, double water) {
        double moved = kilograms + water * 8 / 3 * Math.pow(0.021, 3);
        double lift = 9.80665 * (water * 133.5e-6 - kilograms);
        double step = 1e-5;
        double speed = 0;
        double way = 0;
        double seconds = 0;
        while (way < 0.06) {
            double half = speed + step / 2 * (lift - 0.85 * water * FACE * speed * speed / 2) / moved;
            speed += step * (lift - 0.85 * water * FACE * half * half / 2) / moved;
            way += step * half;
            seconds += step;
        }
        return seconds;
    }

    private static Inked risingIn(String thing, String tank) {
        return Inked.changed(
                "thing: hero",
                "{rises: hero, by: 60 mm, within: 0.6 s}",
                "{thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}",
                "{thing: cork, at: [0 mm, 0 mm, 80 mm]}",
                "mass: 100 g",
                "mass: " + thing,
                "pane: 8 mm}",
                "pane: 8 mm" + tank + "}");
    }

    /// Brine of 10 % weighs 1.0707 g/ml at 20 degC (CRC Handbook), the sea 1.0248 with 3.5 % (UNESCO 1981).
    @Test
    void rises_inSaltWater_isByItsLiftThere() {
        assertThat(risingIn("100 g", "").margin()).isCloseTo(0.6 - risesSeconds(0.1, 998.2), within(5e-4));
        Inked brine = risingIn("100 g", ", salt: 10 %");
        assertThat(brine.standing()).startsWith("hero floats by 43 g and is 60 mm up");
        assertThat(brine.margin()).isCloseTo(0.6 - risesSeconds(0.1, 1070.7), within(5e-4));
        Inked sea = risingIn("100 g", ", sea_salt: 3.5 %");
        assertThat(sea.standing()).startsWith("hero floats by 37 g and is 60 mm up");
        assertThat(sea.margin()).isCloseTo(0.6 - risesSeconds(0.1, 1024.8), within(5e-4));
        // What sinks in fresh water may rise in brine: 133.5 ml of 1.0707 g/ml weigh 142.9 g.
        assertThat(risingIn("140 g", "").lack()).startsWith("hero sinks by 6.7 g");
        assertThat(risingIn("140 g", ", salt: 10 %").standing()).startsWith("hero floats by 2.9 g");
    }

    /// Of what weighs next to nothing the water that it drags along holds the speed back, and a doubtful weighing
    /// leaves no less than nothing.
    @Test
    void rises_ofALightThing_isHeldBackByTheWaterItMoves() {
        for (double grams : new double[] {1, 5, 20}) {
            Inked light = risingIn(Math.round(grams) + " g", "");
            assertThat(light.margin()).isCloseTo(0.6 - risesSeconds(grams / 1000, 998.2), within(5e-4));
        }
        // Without that water it would go its steady 1.49 m/s from the start: 0.04 s.
        assertThat(risingIn("1 g", "").margin()).isLessThan(0.55);
        Inked doubtful = risingIn("5 g ± 10 g", "");
        assertThat(doubtful.unknown()).isEqualTo("known");
        assertThat(doubtful.standing()).matches(".*four takes in five: 0\\.0\\d+ s to 0\\.\\d+ s.*");
        assertThat(doubtful.tight()).isEmpty();
    }

    @Test
    void rises_saysWhatStopsIt() {
        assertThat(rising("{rises: hero, by: 90 mm, within: 1 s}").unknown())
                .isEqualTo("Not computed: hero breaks the surface after 70 mm. Ask for less, let it go deeper, or fill"
                        + " higher.");
        assertThat(Inked.changed(
                                "thing: hero, start: 0.2 s",
                                "{rises: hero, by: 90 mm, within: 1 s}",
                                "{thing: flacon, at: [0 mm, 0 mm, 80 mm], lines: 2}",
                                "{thing: cork, at: [0 mm, 0 mm, 80 mm]}",
                                "rate: 24 fps}",
                                "rate: 24 fps, papers: in}")
                        .unknown())
                .contains("after 2 3/4 in.");
        assertThat(Inked.of("thing: hero", "{rises: hero, by: 60 mm, within: 1 s}")
                        .lack())
                .isEqualTo("hero sinks by 64 g: it won't rise. Take weight out, or leave air in.");
        Inked sinks = Inked.of("thing: hero", "{rises: hero, by: 60 mm, within: 1 s}");
        assertThat(sinks.want((_, _, _) -> Optional.empty()).isMeasured(sinks.moments()))
                .isFalse();
        Inked floats = risingIn("100 g", "");
        assertThat(floats.want((_, _, _) -> Optional.empty()).isMeasured(floats.moments()))
                .isTrue();
        assertThat(Inked.of("ink: read, at: [0 mm, -70 mm, 298 mm]", "{rises: hero, by: 60 mm, within: 1 s}")
                        .unknown())
                .startsWith("Nothing lets hero go");
    }
}
