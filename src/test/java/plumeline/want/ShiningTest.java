package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;
import plumeline.tidy.Outside;

/// Wants on light, by plans whose light can be summed by hand.
final class ShiningTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 60 mm, height: 120 mm, body: opaque, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}
          post: {diameter: 20 mm, height: 300 mm, body: opaque}
          card: {width: 800 mm, depth: 2 mm, height: 600 mm}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100, highest: 400}}}
          lenses:
            fifty: {focal_length: 50 mm}
            thick: {focal_length: 50 mm, barrel: {diameter: 80 mm, length: 120 mm}}
          lights:
            spot: {point: yes, gives: 2000 cd measured}
            guess: {point: yes, gives: 2000 cd typical}
            silent: {point: yes}
            filed: {point: yes, file: "spot.ies"}
            wall: {panel: [2 m, 2 m], gives: 5000 cd measured}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
            camera: {body: main, lens: %s, at: [0 mm, -50 m, 60 mm], aim: ahead, f_number: %s, rate: 64 fps, shutter: 360 deg}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}%s}
            lights: {%s}
            wants: [{%s}]
        """;

    private static final String KEY = "key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}";

    private record Shown(Plan plan) implements FirstWant {}

    private record Case(String lens, String stop, String place, String lights) {
        Shown wants(String want) {
            return new Shown(Wanted.read(PLAN.formatted(lens, stop, place, lights, want)));
        }
    }

    private static Shown want(String lights, String want) {
        return new Case("fifty", "2.8", "", lights).wants(want);
    }

    /// 2000 cd from 2 m are 500 lx on the label's middle.
    private static final double LUX = 500;

    /// EV 12 is f/8 at 1/64 s (2^12 = 64·64) and 10,240 lx at ISO 100 (table of a general encyclopedia's page on
    /// exposure value, C = 250); each stop wider halves it, each half of the light is a stop.
    @Outside(
            source = "an encyclopedia's table of EV and illuminance, C = 250",
            kind = "worked example",
            printedDigits = 5)
    @ParameterizedTest
    @CsvSource({"8, -4.356", "4, -2.356", "2, -0.356", "1.4142136, 0.644"})
    void lit_countsStopsFromTheSetting(String stop, double over) {
        double expected = Math.log(LUX / (10_240 * Math.pow(Double.parseDouble(stop) / 8, 2))) / Math.log(2);
        assertThat(expected).isCloseTo(over, within(0.001));
        Shown lit = new Case("fifty", stop, "", KEY).wants("lit: tin, within: 0.5 stops");
        // Focus at 50 m: a thousandth is lost to its magnification.
        assertThat(lit.margin()).isCloseTo(0.5 - Math.abs(over), within(0.005));
        assertThat(lit.unknown()).isEqualTo("known");
    }

    @Test
    void lit_saysHowMuchAndWhatHelps() {
        Shown lit = new Case("fifty", "4", "", KEY).wants("lit: tin");
        assertThat(lit.standing())
                .isEqualTo(
                        "tin's label gets 500 lx; the setting needs 2600 lx: 2.4 stops too little, 0.5 stops either way"
                                + " allowed.");
        assertThat(lit.want().listAttempts(lit.moments()))
                .containsExactly("Lamps 2.4 stops brighter together: nearer by a factor of 0.44, or more of them.");
        Shown near = new Case("fifty", "2.8", "", KEY).wants("lit: tin");
        assertThat(near.want().listAttempts(near.moments()).getFirst())
                .isEqualTo("camera.iso at 250 instead of 100. More noise comes with it.");
        assertThat(lit.want().listRelaxed(1.86, lit.moments()))
                .singleElement()
                .satisfies(easier -> assertThat(easier.sentence()).isEqualTo("within 2.4 stops instead of 0.5 stops."));
    }

    /// What lamps give by their makers may be 15 % off; what is measured isn't.
    @Test
    void lit_byTypicalLamps_isTightNearItsLimit() {
        String stop = "2.0";
        String guess = KEY.replace("spot", "guess");
        Shown sure = new Case("fifty", stop, "", KEY).wants("lit: tin, within: 0.4 stops");
        Shown unsure = new Case("fifty", stop, "", guess).wants("lit: tin, within: 0.4 stops");
        assertThat(sure.margin()).isPositive();
        assertThat(sure.want().findTight(sure.moments())).isEmpty();
        assertThat(unsure.want().findTight(unsure.moments()).orElseThrow()).contains("meter them there");
    }

    @Test
    void light_isUnknown_whereAFactIsMissing() {
        assertThat(want(KEY.replace("spot", "silent"), "lit: tin").unknown())
                .startsWith("Not known: what key gives. Meter each at full level");
        assertThat(want(KEY.replace("spot", "filed"), "lit: tin").unknown())
                .contains("its file isn't read in a plan yet");
        assertThat(want("", "lit: tin").unknown()).startsWith("Not known: the shot has no light.");
        assertThat(want(KEY.replace("60 mm]", "60 mm], hue: 120 deg"), "lit: tin")
                        .unknown())
                .startsWith("Not computed: how much less key gives at its hue.");
        // Where the coloured lamp is far weaker, it doesn't matter.
        assertThat(want(KEY + ", wash: {light: spot, at: [0 mm, -20 m, 60 mm], hue: 120 deg}", "lit: tin")
                        .unknown())
                .isEqualTo("known");
        assertThat(new Case("fifty", "2.8", "}\n    tank: {tank: glass, at: [0 mm, 0 mm], water: 200 mm", KEY)
                        .wants("lit: tin")
                        .unknown())
                .startsWith("Not computed: light that comes through the tank's glass and water.");
    }

    /// Two lamps of the same candela, one twice as far: 4 : 1, two stops.
    @Test
    void ratio_isKeyToFill() {
        String both = KEY + ", fill: {light: spot, at: [0 mm, -4030 mm, 60 mm]}";
        assertThat(want(both, "ratio: tin, by: 2 stops").margin()).isCloseTo(0.5, within(1e-6));
        assertThat(want(both, "ratio: tin, key: fill, fill: key, by: -2 stops").margin())
                .isCloseTo(0.5, within(1e-6));
        assertThat(want(both, "ratio: tin, fill: key, by: -2 stops").margin()).isCloseTo(0.5, within(1e-6));
        assertThat(want(both, "ratio: tin, by: 3 stops, within: 0.3 stops").margin())
                .isCloseTo(-0.7, within(1e-6));
        assertThat(want(both, "ratio: tin, by: 3 stops").standing())
                .isEqualTo(
                        "On tin key gives 500 lx and fill 130 lx: 2 stops more, 3 stops more wanted, within 0.5 stops.");
        assertThat(want(both, "ratio: tin").unknown()).startsWith("Say how much brighter the key is");
        assertThat(want(KEY, "ratio: tin, by: 1 stops").unknown()).startsWith("Say which lights");
        String behind = KEY + ", fill: {light: spot, at: [0 mm, 4030 mm, 60 mm]}";
        assertThat(want(behind, "ratio: tin, by: 2 stops").lack()).isEqualTo("No light of fill comes to tin there.");
    }

    /// A card is even to what cosines and distances leave: of a point 2 m before its middle a place aside by an angle
    /// gets cos³ of it; outermost are places a tenth in from its corners.
    @Test
    void even_isTheMostThatTwoPlacesDiffer() {
        String back = ", back: {thing: card, at: [3000 mm, 500 mm]}";
        Shown even = new Case("fifty", "2.8", back, "key: {light: spot, at: [3000 mm, -1501 mm, 300 mm], turn: 0 deg}")
                .wants("even: back, within: 1 stops");
        double corner = Math.pow(Math.cos(Math.atan(Math.hypot(0.32, 0.24) / 2)), 3);
        assertThat(even.margin()).isCloseTo(1 + Math.log(corner) / Math.log(2), within(1e-6));
        assertThat(even.standing())
                .contains("back's side gets 470 lx at the ", " and 500 lx at the middle, middle: 0.1 stops");
        Shown strict = new Case("fifty", "2.8", back, "key: {light: spot, at: [3300 mm, 0 mm, 300 mm], turn: 0 deg}")
                .wants("even: back");
        assertThat(strict.margin()).isNegative();
        assertThat(strict.want().listRelaxed(-strict.margin(), strict.moments()))
                .hasSize(1);
    }

    @Test
    void dark_isFarUnderTheSetting() {
        String behind = "key: {light: spot, at: [0 mm, 2000 mm, 60 mm]}";
        assertThat(want(behind, "dark: tin").margin()).isCloseTo(17, within(1e-9));
        Shown lit = new Case("fifty", "4", "", KEY).wants("dark: tin");
        assertThat(lit.margin()).isCloseTo(2.356 - 3, within(0.005));
        assertThat(lit.standing()).endsWith("2.4 stops too little, at least 3 stops too little wanted.");
    }

    @Test
    void noShadow_isWhatStandsBetween() {
        String post = ", post: {thing: post, at: [%s mm, -500 mm]}";
        Case between = new Case("fifty", "2.8", post.formatted("0"), KEY);
        Shown shadow = between.wants("no_shadow: post, upon: tin");
        assertThat(shadow.margin()).isCloseTo(3 - 100, within(1e-9));
        assertThat(shadow.standing())
                .isEqualTo("It takes up to 100 % of the light off tin, most of key's; that is seen.");
        Shown beside = new Case("fifty", "2.8", post.formatted("100"), KEY).wants("no_shadow: post, upon: tin");
        assertThat(beside.margin()).isEqualTo(3);
        assertThat(beside.standing()).isEqualTo("No shadow of it falls on tin.");
        assertThat(between.wants("no_shadow: all").margin()).isCloseTo(-97, within(1e-9));
        assertThat(between.wants("no_shadow: camera").unknown()).startsWith("Not known: how large the lens is.");
        Case lens = new Case("thick", "2.8", "", "key: {light: spot, at: [0 mm, -51 m, 60 mm]}");
        assertThat(lens.wants("no_shadow: camera, upon: tin").margin()).isCloseTo(-97, within(1e-9));
        assertThat(lens.wants("no_shadow: camera, upon: tin")
                        .want()
                        .listRelaxed(1, lens.wants("lit: tin").moments()))
                .isEqualTo(List.of());
    }

    @Test
    void papers_areTheWantsOwnWords() {
        Shown lit = new Case("fifty", "4", "", KEY).wants("lit: tin, part: top");
        assertThat(lit.want().findStanding(lit.moments(), PaperUnit.INCHES).orElseThrow())
                .startsWith("tin's top gets ");
    }
}
