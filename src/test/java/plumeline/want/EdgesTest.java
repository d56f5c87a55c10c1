package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;

/// Rims of clear glass, by plans whose sight is traced a second time by hand.
final class EdgesTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          bottle: {%s}
          card: {width: 300 mm, depth: 2 mm, height: 700 mm, body: opaque}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          lights:
            back: {panel: [%s mm, 800 mm], gives: 1000 lx at 1 m}
            silent: {panel: [300 mm, 800 mm]}
            spot: {point: yes, gives: 900 cd}
            black: {flag: [300 mm, 700 mm]}
            field: {panel: [900 mm, 800 mm], window: [300 mm, 700 mm], field: bright, gives: 1000 lx at 1 m}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
            camera: {body: main, lens: macro, at: [0 mm, -800 mm, %s mm], aim: %s}
            %s
            place: {bottle: {thing: bottle, at: [0 mm, 0 mm]}%s}
            lights: {%s}
            wants: [{edges: bottle, %s}]
        """;

    private static final String ROUND = "diameter: 60 mm, height: 160 mm, body: clear";
    private static final String EMPTY = ROUND + ", wall: {thickness: 2 mm}";
    private static final String FULL = EMPTY + ", contents: {density: 1 g/ml}";
    private static final String BACK = "back: {light: back, at: [0 mm, 500 mm, 80 mm], turn: 180 deg}";
    private static final String DARK = "rims: dark, wide: 3 %";
    private static final String BRIGHT = "rims: bright, wide: 3 %";

    private record Shown(Plan plan) implements FirstWant {}

    private record Case(String thing, String wide, String camera, String aim, String more, String place) {
        Shown wants(String lights, String want) {
            return new Shown(Wanted.read(PLAN.formatted(thing, wide, camera, aim, more, place, lights, want)));
        }
    }

    private static Case of(String thing, String wide) {
        return new Case(thing, wide, "80", "ahead", "", "");
    }

    private static Shown dark(String thing, double wide) {
        return of(thing, Double.toString(wide)).wants(BACK, DARK);
    }

    /// The left rim's dark width less 3 %, in %, by 20,000 ways of sight.
    private static double traced(double wall, double inside, double wide) {
        RimTrace trace = new RimTrace(30, wall, 1.52, inside);
        trace.follow(800, 0.5);
        double middle = trace.passes();
        int count = 20_000;
        int won = 0;
        int most = 0;
        for (int i = 0; i < count; i++) {
            double share = (i + 0.5) / count / 2;
            trace.follow(800, share);
            boolean isBright = trace.meets(500, -wide / 2, wide / 2) && trace.passes() > middle / 4;
            won += isBright ? share < 0.02 ? 0 : -1 : 1;
            most = Math.max(most, won);
        }
        return 50.0 * most / count - 3;
    }

    @ParameterizedTest
    @CsvSource({
        "2, 1, 100",
        "2, 1, 200",
        "2, 1, 400",
        "2, 1, 560",
        "2, 1, 900",
        "2, 1, 4000",
        "2, 1.333, 200",
        "2, 1.333, 400",
        "2, 1.333, 900",
        "2, 1.333, 4000",
        "5, 1, 300",
        "5, 1, 600",
        "0.5, 1, 300",
        "0.5, 1.333, 300",
        "40, 1, 900"
    })
    @Outside(source = "own second trace: angles by n r sin, Fresnel by sines and tangents", kind = "closed form")
    void margin_isAsTracedByHand(double wall, double inside, double wide) {
        String thing =
                ROUND + ", wall: {thickness: " + wall + " mm}" + (inside > 1 ? ", contents: {index: 1.333}" : "");
        assertThat(dark(thing, wide).margin()).isCloseTo(traced(wall, inside, wide), within(0.02));
    }

    /// From a narrow panel to a wide one the margin goes down without a jump, and through 0 where the trace does.
    @ParameterizedTest
    @ValueSource(doubles = {1, 1.333})
    @Outside(source = "own second trace", kind = "closed form")
    void margin_isContinuous_andTurnsWhereTheTraceDoes(double inside) {
        String thing = inside > 1 ? FULL : EMPTY;
        double last = dark(thing, 380).margin();
        int turns = 0;
        for (double wide = 384; wide <= 1200; wide += 4) {
            double margin = dark(thing, wide).margin();
            assertThat(Math.abs(margin - last)).isLessThan(0.25);
            double traced = traced(2, inside, wide);
            if (Math.abs(traced) > 0.02) {
                assertThat(margin > 0).isEqualTo(traced > 0);
            }
            turns += margin > 0 == last > 0 ? 0 : 1;
            last = margin;
        }
        assertThat(turns).isEqualTo(1);
    }

    @Test
    void darkField_holds_andSaysWhatIsSeenWhere() {
        Shown shown = dark(EMPTY, 450);
        assertThat(shown.margin()).isPositive();
        assertThat(shown.unknown()).isEqualTo("known");
        assertThat(shown.standing())
                .isEqualTo(
                        "bottle's left rim is dark over 3.1 % of its width, the right one over 3.1 %; 3 % wanted. From"
                                + " the left: dark to 0.3 %, back to 1.3 %, dark to 4.1 %, back to 95.9 %, dark to"
                                + " 98.7 %, back to 99.7 %, dark to 100 %."
                                + " Sight 2.5 % in from the left edge goes on 32 deg to the left, from the right edge"
                                + " 32 deg to the right. Taken: its index 1.52, nothing in it but air.");
    }

    @Test
    void tooWideAPanel_fails_andANarrowerOneIsTold() {
        Shown shown = dark(EMPTY, 900);
        assertThat(shown.margin()).isNegative();
        assertThat(shown.want().listAttempts(shown.moments()))
                .containsExactly("back 460 mm wide instead of 900 mm: mask it.");
        assertThat(dark(EMPTY, 460).margin()).isPositive();
        assertThat(shown.want().listRelaxed(-shown.margin(), shown.moments()))
                .singleElement()
                .satisfies(easier -> {
                    assertThat(easier.sentence()).endsWith(" instead of 3 %.");
                    assertThat(easier.want().margin(easier.want().parts(shown.moments())))
                            .isNotNegative();
                });
    }

    /// Water bends sight on toward and past the axis: the same panel leaves much wider rims dark.
    @Test
    void fullBottle_hasWiderRims_thanAnEmptyOne() {
        assertThat(dark(FULL, 450).margin()).isGreaterThan(dark(EMPTY, 450).margin() + 5);
        // Partly full it is the one over the level, the other under it.
        String half = EMPTY + ", contents: {volume: 200 ml}";
        Case one = of(half, "450");
        assertThat(one.wants(BACK, DARK + ", at: 60 mm").margin())
                .isCloseTo(dark(FULL, 450).margin(), within(0.2));
        assertThat(one.wants(BACK, DARK + ", at: 120 mm").margin())
                .isCloseTo(dark(EMPTY, 450).margin(), within(0.2));
    }

    /// 200 ml over a floor of 2 mm in a bore of 56 mm stand 83.2 mm high.
    @Test
    @Outside(source = "volume of a cylinder", kind = "closed form")
    void level_isWhereTheContentsReach() {
        double level = 2 + 200e3 / (Math.PI * 28 * 28);
        Case one = of(EMPTY + ", contents: {volume: 200 ml}", "450");
        String under = one.wants(BACK, DARK + ", at: " + (level - 0.5) + " mm").standing();
        String over = one.wants(BACK, DARK + ", at: " + (level + 0.5) + " mm").standing();
        assertThat(under).contains("left rim is dark over 12");
        assertThat(over).contains("left rim is dark over 3");
    }

    private static final String SIDES = "one: {light: back, at: [-300 mm, 300 mm, 80 mm], aim: bottle},"
            + " two: {light: back, at: [300 mm, 300 mm, 80 mm], aim: bottle}";

    @Test
    void brightRims_holdByLampsAtTheSides_orAFlagBeforeAWideOne() {
        Shown sides = of(FULL, "200").wants(SIDES, BRIGHT);
        assertThat(sides.margin()).isPositive();
        // A full bottle sees crosswise: its left rim sees the lamp at the right.
        assertThat(sides.standing()).contains("From the left: dark to 0.6 %, two to 7 %, dark to 93 %, one to 99.4 %,");
        assertThat(sides.standing()).doesNotContain("Its middle");
        assertThat(of(EMPTY, "900").wants(BACK, BRIGHT).standing())
                .contains("Its middle sees a light too, and bright rims are two stops over that: mask what is behind");
        Shown flagged = new Case(FULL, "1600", "80", "ahead", "", ", card: {thing: card, at: [0 mm, 300 mm, -200 mm]}")
                .wants(BACK, BRIGHT);
        assertThat(flagged.margin()).isPositive();
        // A flag does as a thing does, and so does a black window in the panel itself.
        String flag = ", dark: {light: black, at: [0 mm, 300 mm, 150 mm], turn: 180 deg}";
        Shown byFlag = of(FULL, "1600").wants(BACK + flag, BRIGHT);
        assertThat(byFlag.margin()).isCloseTo(flagged.margin(), within(0.3));
        String field = "field: {light: field, at: [0 mm, 300 mm, 150 mm], turn: 180 deg}";
        Shown byField = of(FULL, "1600").wants(field, BRIGHT);
        assertThat(byField.margin()).isPositive();
        assertThat(byField.standing()).contains("From the left: dark to ");
        Shown bare = of(FULL, "1600").wants(BACK, BRIGHT);
        assertThat(bare.margin()).isNegative();
        // Beside the axis alone nothing bright is at the rim.
        assertThat(of(FULL, "60").wants(BACK, BRIGHT).margin()).isNegative();
    }

    @Test
    void darkRims_needABrightMiddle() {
        Shown aside = of(EMPTY, "200").wants(SIDES, DARK);
        assertThat(aside.margin()).isLessThan(-50);
        assertThat(aside.standing()).contains("Its middle sees nothing bright.");
        assertThat(of(EMPTY, "450")
                        .wants(BACK.replace("turn: 180 deg", "turn: 0 deg"), DARK)
                        .margin())
                .isLessThanOrEqualTo(-100);
    }

    @Test
    void withinATolerance_tooWideFailsToo() {
        assertThat(of(FULL, "450").wants(BACK, DARK + ", within: 2 %").margin()).isNegative();
        assertThat(of(FULL, "450")
                        .wants(BACK, "rims: dark, wide: 12 %, within: 2 %")
                        .margin())
                .isPositive();
    }

    @Test
    void opaqueOrMatte_fails() {
        Shown opaque = dark("diameter: 60 mm, height: 160 mm, body: opaque", 450);
        assertThat(opaque.lack()).startsWith("bottle is opaque: no rim of it sees past anything.");
        Shown matte = dark(ROUND + ", finish: matte", 450);
        assertThat(matte.lack()).startsWith("bottle is matte:");
    }

    @Test
    void edges_areUnknown_whereTheLawEnds() {
        assertThat(dark("diameter: 60 mm, height: 160 mm", 450).unknown())
                .isEqualTo("Not known: whether bottle is clear. Write its body: clear.");
        assertThat(dark("width: 60 mm, depth: 60 mm, height: 160 mm, body: clear", 450)
                        .unknown())
                .startsWith("Not computed: the rims of what isn't round.");
        assertThat(dark(ROUND + ", finish: satin", 450).unknown())
                .startsWith("Not computed: what is seen through frosted");
        assertThat(dark(ROUND + ", label: {width: 60 mm, height: 60 mm, bottom: 20 mm}", 450)
                        .unknown())
                .isEqualTo("known");
        Case one = of(EMPTY + ", label: {width: 60 mm, height: 60 mm, bottom: 20 mm}", "450");
        assertThat(one.wants(BACK, DARK + ", at: 70 mm").unknown())
                .isEqualTo(
                        "Not computed: the rims beside a label. Write a height over or under it, such as at: 120 mm.");
        assertThat(one.wants(BACK, DARK + ", at: 160 mm").unknown()).startsWith("Not known: which height is meant.");
        assertThat(one.wants(BACK, DARK + ", at: 120 mm, part: top").unknown())
                .isEqualTo("Two heights are given: write at or part.");
        assertThat(one.wants(BACK, "wide: 3 %").unknown()).startsWith("Say which rims are wanted:");
        assertThat(of(EMPTY, "450").wants("", DARK).unknown()).startsWith("Not known: the shot has no light.");
        String tank = "tank: {tank: glass, at: [0 mm, -150 mm], water: 250 mm}";
        assertThat(new Case(EMPTY, "450", "80", "ahead", tank, "")
                        .wants(BACK, DARK)
                        .unknown())
                .startsWith("Not computed: what is seen through bottle and a tank.");
        assertThat(new Case(EMPTY, "450", "600", "bottle", "", "")
                        .wants(BACK, DARK + ", part: base")
                        .unknown())
                .startsWith("Not computed: sight that goes through bottle's floor, mouth or surface");
    }

    /// The luminance of one lamp cancels out; of several each must be known.
    @Test
    void whatLampsGive_countsWhereThereAreSeveral() {
        String silent = "dim: {light: silent, at: [0 mm, 500 mm, 80 mm], turn: 180 deg}";
        assertThat(of(EMPTY, "450").wants(silent, DARK).unknown()).isEqualTo("known");
        assertThat(of(EMPTY, "450").wants(silent, DARK).margin()).isPositive();
        String two = silent + ", back: {light: back, at: [900 mm, 0 mm, 80 mm], aim: bottle}";
        assertThat(of(EMPTY, "450").wants(two, DARK).unknown()).startsWith("Not known: what dim gives.");
        // A point is too small to be seen as bright.
        String point = BACK + ", point: {light: spot, at: [300 mm, 300 mm, 80 mm], aim: bottle}";
        assertThat(of(EMPTY, "450").wants(point, DARK).margin())
                .isCloseTo(dark(EMPTY, 450).margin(), within(1e-9));
    }

    @Test
    void wallThatNobodyMeasured_isSaid_andTightWhereItCounts() {
        Shown guessed = dark(ROUND, 450);
        assertThat(guessed.standing()).contains("Taken: a wall of 2 mm, its index 1.52, nothing in it but air.");
        assertThat(guessed.tight().orElseThrow()).startsWith("Its wall may be 1 to 4 mm: with some of that it fails.");
        assertThat(dark(EMPTY, 450).tight()).isEmpty();
        assertThat(dark(ROUND + ", wall: {thickness: 2 mm ± 0.6 mm}", 450)
                        .tight()
                        .orElseThrow())
                .startsWith("Its wall may be 1.4 to 2.6 mm:");
        assertThat(dark(ROUND + ", material: acrylic", 450).standing()).contains("its index 1.49");
        assertThat(dark(EMPTY.replace("2 mm", "2 mm, index: 1.6"), 450).standing())
                .doesNotContain("its index");
    }

    /// From above, sight rises and falls within the glass; a level camera's figures stay nearly so.
    @Test
    void tiltedCamera_andATaperedGlass_areFollowedInSpace() {
        Shown above = new Case(EMPTY, "450", "300", "bottle", "", "").wants(BACK, DARK);
        assertThat(above.unknown()).isEqualTo("known");
        assertThat(above.margin()).isCloseTo(dark(EMPTY, 450).margin(), within(1.0));
        String tapered = "profile: [[0 mm, 29.9 mm], [160 mm, 30.1 mm]], body: clear, wall: {thickness: 2 mm}";
        assertThat(dark(tapered, 450).margin()).isCloseTo(dark(EMPTY, 450).margin(), within(0.1));
    }

    /// A small turn of the lens moves the outline in the picture, not what is seen of it: shares stay.
    @Test
    void bottleAside_isJudgedByItsOwnOutline() {
        Shown straight = dark(EMPTY, 450);
        Shown aimed = new Case(EMPTY, "450", "80", "bottle", "", "").wants(BACK, DARK);
        assertThat(aimed.margin()).isCloseTo(straight.margin(), within(1e-6));
    }
}
