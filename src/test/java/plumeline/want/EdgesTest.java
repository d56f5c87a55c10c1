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
        "2, 1, 100", "2, 1, 200", "2, 1, 400", "2, 1, 560", "2, 1, 900", "2, 1, 4000", "2, 1.333, 200", "2, 1.333, 400",
        "2, 1.333, 900", "2, 1.333, 4000", "5, 1, 300", "5, 1, 600", "0.5, 1, 300", "0.5, 1.333, 300", "40, 1, 900"
    })
    @Outside(source = "own second trace: angles by n r sin, Fresnel by sines and tangents", kind = "closed form")
    void margin_isAsTracedByHand(double wall, double inside, double wide) {
        String thing = ROUND + ", wall: {thickness: " + wall + " mm}" + (inside > 1 ? ", contents: {index: 1.333}" : "");
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
        Shown shown = dark(EMPTY, 400);
        assertThat(shown.margin()).isPositive();
        assertThat(shown.unknown()).isEqualTo("known");
        assertThat(shown.standing())
                .isEqualTo("");
    }

    @Test
    void look() {
        String wideBack = BACK;
        String card = ", card: {thing: card, at: [0 mm, 300 mm, -200 mm]}";
        for (String thing : new String[] {EMPTY, FULL}) {
            for (double c : new double[] {300}) {
                Case one = new Case(thing, "1600", "80", "ahead", "", card);
                Shown s = one.wants(BACK, BRIGHT);
                System.out.println(s.margin() + " " + s.standing() + s.want().listAttempts(s.moments()));
            }
        }
        Shown tilted = new Case(EMPTY, "400", "300", "bottle", "", "").wants(BACK, DARK);
        System.out.println(tilted.margin() + tilted.unknown() + tilted.standing());
        Shown tilted2 = new Case(EMPTY, "400", "600", "bottle", "", "").wants(BACK, DARK);
        System.out.println(tilted2.margin() + tilted2.unknown() + tilted2.standing());
        Shown base = new Case(EMPTY, "400", "600", "bottle", "", "").wants(BACK, DARK + ", part: base");
        System.out.println(base.margin() + base.unknown() + base.standing());
        Shown part = new Case(EMPTY + ", contents: {volume: 200 ml}", "400", "600", "bottle", "", "").wants(BACK, DARK + ", at: 80 mm");
        System.out.println(part.margin() + part.unknown() + part.standing());
        String sides = "left: {light: back, at: [-300 mm, 300 mm, 80 mm], aim: bottle}, right: {light: back, at: [300 mm, 300 mm, 80 mm], aim: bottle}";
        Shown two = of(EMPTY, "200").wants(sides, BRIGHT);
        System.out.println(two.margin() + two.unknown() + two.standing());
        Shown twoF = of(FULL, "200").wants(sides, BRIGHT);
        System.out.println(twoF.margin() + twoF.unknown() + twoF.standing());
        Shown tank = new Case(EMPTY, "200", "80", "ahead", "tank: {tank: glass, at: [0 mm, -150 mm], water: 250 mm}", "").wants(BACK, DARK);
        System.out.println(tank.margin() + tank.unknown() + tank.standing());
    }
}
