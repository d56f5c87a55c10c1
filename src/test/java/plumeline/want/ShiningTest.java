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
            clothed: {point: yes, gives: 2000 cd measured, loss: 1 stops}
            silent: {point: yes}
            filed: {point: yes, file: "spot.ies"}
            wall: {panel: [2 m, 2 m], gives: 5000 cd measured}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
          inks: {dye: {density: 1.03 g/ml}}
        shots:
          one:
            camera:
              {body: main, lens: %s, at: [0 mm, -50 m, 60 mm], aim: ahead, f_number: %s, rate: 64 fps, shutter: 360 deg}
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
        assertThat(lit.want().findChange(lit.moments()).orElseThrow().aimStops())
                .isCloseTo(2.356, within(0.005));
        assertThat(lit.want().listRelaxed(1.86, lit.moments()))
                .singleElement()
                .satisfies(easier -> assertThat(easier.sentence()).isEqualTo("within 2.4 stops instead of 0.5 stops."));
    }

    /// A stop of gel before the lamp, of cloth on it, of a filter before the lens: each halves the light.
    @Test
    void losses_areStopsLess() {
        double open = new Case("fifty", "4", "", KEY).wants("lit: tin").margin();
        Case gel = new Case("fifty", "4", "", KEY.replace("60 mm]", "60 mm], loss: 1 stops"));
        assertThat(gel.wants("lit: tin").margin()).isCloseTo(open - 1, within(1e-9));
        Case filter = new Case("fifty", "4, loss: 0.5 stops", "", KEY);
        assertThat(filter.wants("lit: tin").margin()).isCloseTo(open - 0.5, within(1e-9));
        Case cloth = new Case("fifty", "4", "", KEY.replace("spot", "clothed"));
        assertThat(cloth.wants("lit: tin").margin()).isCloseTo(open - 1, within(1e-9));
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
        assertThat(want(KEY.replace("spot", "filed"), "lit: tin").unknown()).contains("its file isn't beside the plan");
        assertThat(want("", "lit: tin").unknown()).startsWith("Not known: the shot has no light.");
        assertThat(want(KEY.replace("60 mm]", "60 mm], hue: 120 deg"), "lit: tin")
                        .unknown())
                .startsWith("Not computed: how much less key gives at its hue.");
        // Where the coloured lamp is far weaker, it doesn't matter.
        assertThat(want(KEY + ", wash: {light: spot, at: [0 mm, -20 m, 60 mm], hue: 120 deg}", "lit: tin")
                        .unknown())
                .isEqualTo("known");
        String tank = "}\n    tank: {tank: glass, at: [0 mm, %s mm], water: 200 mm";
        // No lamp goes into a tank.
        String in = KEY.replace("-2030 mm", "-400 mm");
        assertThat(new Case("fifty", "2.8", tank.formatted("-400"), in)
                        .wants("lit: tin")
                        .unknown())
                .startsWith("Not computed: key stands in the tank. No lamp goes there");
        // In the water it is followed: a twentieth is lost at the front glass.
        Shown under = new Case("fifty", "2.8", tank.formatted("0"), KEY).wants("lit: tin");
        assertThat(under.unknown()).isEqualTo("known");
        assertThat(under.standing()).startsWith("tin's label gets 490 lx; ");
    }

    /// Straight through both panes 0.909 of the light goes (Fresnel, by hand), and a lamp 2 m off seems 80.4 mm nearer:
    /// 300 mm of water by 1 − 1/1.333, 16 mm of glass by 1 − 1/1.52: 500 lx · 0.909 · (2/1.9196)² = 493 lx. Seen a
    /// little aside the light is less even than without the tank by no more than its rim and seams keep off.
    @Test
    void light_throughATank_isKnown() {
        String tank = "}\n    tank: {tank: glass, at: [0 mm, -400 mm], water: 200 mm";
        Shown lit = new Case("fifty", "2.8", tank, KEY).wants("lit: tin");
        assertThat(lit.unknown()).isEqualTo("known");
        assertThat(lit.standing()).startsWith("tin's label gets 490 lx; ");
        double open = new Case("fifty", "2.8", "", KEY).wants("dark: tin").margin();
        assertThat(new Case("fifty", "2.8", tank, KEY).wants("dark: tin").margin())
                .isCloseTo(open - Math.log(493.0 / 500) / Math.log(2), within(0.003));
        String back = ", back: {thing: card, at: [0 mm, 700 mm]}" + tank.replace("-400", "300");
        Shown even = new Case("fifty", "2.8", back, KEY.replace("60 mm]", "300 mm], turn: 0 deg"))
                .wants("even: back, within: 1 stops");
        assertThat(even.unknown()).isEqualTo("known");
    }

    @Test
    void light_onWhatIsNot_saysWhatToWrite() {
        Case post = new Case("fifty", "2.8", ", post: {thing: post, at: [300 mm, 0 mm]}", KEY);
        assertThat(post.wants("lit: post, part: label").unknown())
                .isEqualTo("post has no label: write it with the thing, or part: middle.");
        assertThat(post.wants("lit: post").standing()).startsWith("post's middle gets ");
        assertThat(post.wants("no_shadow: tank, upon: tin").unknown())
                .isEqualTo("Not computed: the shadow of a tank's edges and panes.");
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
                .isEqualTo("On tin key gives 500 lx and fill 130 lx: 2 stops more, 3 stops more wanted, within"
                        + " 0.5 stops.");
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
                .contains("back's side gets 470 lx in the ", " and 500 lx in the middle row, middle: 0.1 stops");
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
                .isEqualTo("It takes up to 100 % of the light off tin, mostly key's; that is seen.");
        Shown beside = new Case("fifty", "2.8", post.formatted("100"), KEY).wants("no_shadow: post, upon: tin");
        assertThat(beside.margin()).isEqualTo(3);
        assertThat(beside.standing()).isEqualTo("No shadow of it falls on tin.");
        assertThat(between.wants("no_shadow: all").margin()).isCloseTo(-97, within(1e-9));
        // A nozzle of 4 mm in a pipe of 6 keeps the point's light off where it stands before the label's middle.
        String nozzle = "}\n    release: {ink: dye, volume: 1 ml, bore: 4 mm, at: [%s mm, -1000 mm, 50 mm]";
        Shown under = want(KEY + nozzle.formatted("0"), "no_shadow: release, upon: tin");
        assertThat(under.margin()).isCloseTo(-97, within(1e-9));
        assertThat(want(KEY + nozzle.formatted("40"), "no_shadow: release, upon: tin")
                        .margin())
                .isCloseTo(3, within(1e-9));
        assertThat(want(KEY, "no_shadow: release").unknown()).startsWith("The shot has no nozzle");
        assertThat(between.wants("no_shadow: camera").unknown()).startsWith("Not known: how large the lens is.");
        // A lamp's housing keeps another's light off as well.
        String two = KEY.replace("60 mm]", "60 mm], turn: 0 deg")
                + ", soft: {light: wall, at: [0 mm, -1500 mm, 60 mm], turn: 180 deg}";
        assertThat(want(two, "no_shadow: soft, upon: tin").margin()).isCloseTo(-97, within(1e-9));
        Case lens = new Case("thick", "2.8", "", "key: {light: spot, at: [0 mm, -51 m, 60 mm]}");
        assertThat(lens.wants("no_shadow: camera, upon: tin").margin()).isCloseTo(-97, within(1e-9));
        assertThat(lens.wants("no_shadow: camera, upon: tin")
                        .want()
                        .listRelaxed(1, lens.wants("lit: tin").moments()))
                .isEqualTo(List.of());
    }

    private static final String CAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          can: {diameter: 66 mm, height: 200 mm, body: opaque, finish: %s%s}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm]}, bulb: {point: yes}}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -600 mm, 100 mm], aim: can, f_number: 11}
            place: {can: {thing: can, at: [0 mm, 0 mm]}}
            lights: {key: {light: strip, at: [%s]}}
            wants: [{%s}]
        """;

    private static Shown can(String finish, String label, String at, String want) {
        return new Shown(Wanted.read(CAN.formatted(finish, label, at, want)));
    }

    /// Alhazen's problem, R 33 mm, camera 600 mm off, a panel 300 mm wide 500 mm off at 60 degrees: its edges are
    /// mirrored at azimuths 21.7423 and 38.5028 degrees (the quartic solved to 1e-9).
    @Outside(source = "Alhazen's quartic, Fujimura and others 2019", kind = "closed form", printedDigits = 6)
    @Test
    void highlight_isWhereAlhazenHasIt() {
        double limb = Math.tan(Math.asin(33.0 / 600));
        double left = (1 + tangent(21.7423) / limb) / 2;
        double right = (1 + tangent(38.5028) / limb) / 2;
        String at = 500 * Math.sin(Math.toRadians(60)) + " mm, " + -500 * Math.cos(Math.toRadians(60)) + " mm, 100 mm";
        Shown there = can(
                "gloss",
                "",
                at,
                "highlight: key, upon: can, from_left: " + 50 * (left + right) + " %, wide: " + 100 * (right - left)
                        + " %");
        assertThat(there.margin()).isCloseTo(2, within(0.001));
        assertThat(there.standing()).startsWith("key shows in can at 76 % of its width from the left, 13 % wide; ");
        Shown off = can("gloss", "", at, "highlight: key, upon: can, from_left: 70 %, within: 3 %");
        assertThat(off.margin()).isCloseTo(3 - 100 * ((left + right) / 2 - 0.7), within(0.001));
        assertThat(off.want().listRelaxed(-off.margin(), off.moments()))
                .singleElement()
                .satisfies(easier -> assertThat(easier.sentence()).isEqualTo("within 6 % instead of 3 %."));
    }

    private static double tangent(double degrees) {
        double azimuth = Math.toRadians(degrees);
        return 33 * Math.sin(azimuth) / (600 - 33 * Math.cos(azimuth));
    }

    @Test
    void highlight_isAsBrightAsItsSurfaceMirrors() {
        // 5000 cd from 4 m2 are 1250 cd/m2, of which varnish mirrors 4.04 % (Fresnel at 21.8 deg): 50.5. The setting
        // needs 10,240 lx, of which a surface of 15.7 % makes 512 cd/m2: log2(50.5/512) is -3.34.
        String wall = "wall: {light: wall, at: [1200 mm, -1200 mm, 60 mm]}";
        Shown mirrored = new Case("fifty", "8", "", wall).wants("highlight: wall, upon: tin, from_left: 60 %");
        assertThat(mirrored.standing())
                .contains(" It mirrors 4 % of its brightness: 3.3 stops under mid grey as the camera is set.");
    }

    @Test
    void highlight_thatIsNone_saysSo() {
        Shown behind = new Shown(Wanted.read(CAN.replace("light: strip", "light: bulb")
                .formatted("gloss", "", "0 mm, 900 mm, 100 mm", "highlight: key, upon: can, from_left: 30 %")));
        assertThat(behind.margin()).isLessThan(-100);
        assertThat(behind.standing())
                .isEqualTo(
                        "key isn't mirrored in can where the camera sees it; 30 % from the left wanted, within 2 %.");
        assertThat(can("matte", "", "400 mm, -300 mm, 100 mm", "highlight: key, upon: can, from_left: 30 %")
                        .lack())
                .isEqualTo("can is matte: nothing is mirrored in it. Light it by angle.");
        assertThat(can(
                                "satin",
                                "",
                                "433 mm, -250 mm, 100 mm",
                                "highlight: key, upon: can, from_left: 75 %, within: 5 %")
                        .standing())
                .contains("Satin blurs it");
    }

    /// A camera sees itself in the middle of a round can at its own height: within a label there, not in one far under.
    @Test
    void noHighlight_ofCameraAndLamp() {
        String label = ", label: {width: 40 mm, height: 40 mm, bottom: 80 mm}";
        String at = "433 mm, -250 mm, 100 mm";
        Shown camera = can("gloss", label, at, "no_highlight: camera");
        assertThat(camera.margin()).isNegative();
        assertThat(camera.standing()).startsWith("the camera is seen in can's label, ");
        assertThat(can(
                                "gloss",
                                label.replace("80 mm", "10 mm").replace("height: 40 mm", "height: 20 mm"),
                                at,
                                "no_highlight: camera")
                        .margin())
                .isPositive();
        assertThat(can("gloss", label, at, "no_highlight: crew, upon: can").margin())
                .isNegative();
        // The lamp's stripe is 22 to 39 degrees round; a label of 20 mm goes to 17, one of 40 mm to 35.
        Shown clear = can("gloss", label.replace("width: 40", "width: 20"), at, "no_highlight: key");
        assertThat(clear.margin()).isCloseTo(100 * (21.74 - Math.toDegrees(10.0 / 33)) / 180, within(0.05));
        assertThat(clear.standing()).isEqualTo("key isn't seen in can's label.");
        assertThat(can("gloss", label, at, "no_highlight: key").margin()).isNegative();
        assertThat(can("matte", label, at, "no_highlight: key").margin()).isEqualTo(100);
    }

    /// A free lamp goes where sight goes on from the place that is wanted, off the picture; written back it is there.
    @Test
    void freeLamp_isPutWhereItsHighlightIsWanted() {
        Plan plan = Wanted.read(CAN.formatted(
                "gloss", "", "free, free, 100 mm", "highlight: key, upon: can, from_left: 30 %, wide: 10 %"));
        plumeline.stage.Stage stage = Wanted.stage(plan);
        plumeline.geom.Vec place = plumeline.lit.Placing.find(
                        plan.shots().getFirst().wants().getFirst(),
                        stage,
                        at -> stage.scene(new double[] {0, -0.6, 0.1, 11, 0, 0, at.x(), at.y(), 0.1}, 0))
                .orElseThrow();
        String at = 1000 * place.x() + " mm, " + 1000 * place.y() + " mm, 100 mm";
        Shown there = can("gloss", "", at, "highlight: key, upon: can, from_left: 30 %, wide: 10 %");
        assertThat(there.margin()).isGreaterThan(1.5);
    }

    /// A free lamp that stands in the can where its highlight would be right fails for that, in the papers' unit.
    @Test
    void freeLamp_inAnotherThing_fails_inThePapersUnit() {
        Plan plan = Wanted.read(CAN.replace("rate: 24 fps", "rate: 24 fps, papers: in")
                .formatted(
                        "gloss",
                        "",
                        "free between 10 mm and 12 mm, -30 mm, 100 mm",
                        "highlight: key, upon: can, from_left: 50 %"));
        assertThat(new Shown(plan).lack()).startsWith("key runs ").contains(" in into can.");
    }

    @Test
    void papers_areTheWantsOwnWords() {
        Shown lit = new Case("fifty", "4", "", KEY).wants("lit: tin, part: top");
        assertThat(lit.want().findStanding(lit.moments(), PaperUnit.INCHES).orElseThrow())
                .startsWith("tin's top gets ");
    }
}
