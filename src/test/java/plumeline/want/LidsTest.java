package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;

/// Wants on light where the camera looks down, and where lamps, cards and flags stand about.
final class LidsTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 80 mm, height: 50 mm, body: opaque, finish: gloss}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights:
            spot: {gives: 2000 cd measured}
            soft: {panel: [300 mm, 300 mm], gives: 900 cd measured}
            paper: {card: [4 m, 3 m], reflects: 80 %%}
            black: {flag: [500 mm, 500 mm]}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [%s], aim: %s, f_number: 8, rate: 64 fps, shutter: 360 deg}
            place: {tin: {thing: tin, at: [0 mm, 0 mm]}}
            lights: {%s}
            wants: [{%s}]
        """;

    private record Shown(Plan plan) implements FirstWant {}

    private static Shown want(String camera, String lights, String want) {
        return new Shown(Wanted.read(PLAN.formatted(camera, "tin", lights, want)));
    }

    private static final String ABOVE = "0 mm, -200 mm, 1000 mm";
    private static final String BESIDE = "0 mm, -1000 mm, 100 mm";
    private static final String OVER = "top: {light: spot, at: [0 mm, 0 mm, 1050 mm], tilt: -90 deg}";

    /// 2000 cd from 1 m are 2000 lx; f/8 at 1/64 s needs 10,240 lx at ISO 100: 2.36 stops too little.
    @Outside(source = "an encyclopedia's table of EV and illuminance, C = 250", kind = "worked example")
    @Test
    void looked_downOn_aThingIsLitOnItsTop() {
        double over = Math.log(2000.0 / 10_240) / Math.log(2);
        Shown lid = want(ABOVE, OVER, "lit: tin, within: 3 stops");
        assertThat(lid.margin()).isCloseTo(3 + over, within(0.3));
        assertThat(lid.standing()).startsWith("tin's lid gets 2000 lx");
        // From before it the side counts, on which the lamp overhead gives nothing; its top by name.
        assertThat(want(BESIDE, OVER, "lit: tin, within: 3 stops").standing()).startsWith("tin's middle gets 0 lx");
        assertThat(want(BESIDE, OVER, "lit: tin, part: lid, within: 3 stops").standing())
                .startsWith("tin's lid gets 2000 lx");
    }

    /// A level top mirrors what hangs as far behind it as the camera is before it, and as high (law of reflection).
    @Outside(source = "law of reflection", kind = "worked example")
    @Test
    void top_mirrorsWhatHangsOppositeTheCamera() {
        String camera = "0 mm, -600 mm, 650 mm";
        String opposite = "soft: {light: soft, at: [0 mm, %s mm, 650 mm], aim: tin}";
        Shown seen = want(camera, opposite.formatted("600"), "no_highlight: soft, upon: tin");
        assertThat(seen.margin()).isNegative();
        assertThat(seen.standing()).isEqualTo("soft is seen in tin's top.");
        assertThat(want(camera, opposite.formatted("1200"), "no_highlight: soft, upon: tin")
                        .margin())
                .isPositive();
        assertThat(want("0 mm, -1 mm, 900 mm", opposite.formatted("1200"), "no_highlight: camera, upon: tin")
                        .margin())
                .isNegative();
        assertThat(want(BESIDE, opposite.formatted("600"), "no_highlight: soft, upon: tin")
                        .margin())
                .isPositive();
    }

    /// Level with the camera the side mirrors it; from a hand over the top it doesn't: in between the margin runs on,
    /// by the angle by which sight passes the lens, in % of half a turn.
    @Test
    void noHighlight_wherePassed_isByTheAngle() {
        double last = want("0 mm, -1000 mm, 40 mm", "", "no_highlight: camera, upon: tin")
                .margin();
        assertThat(last).isNegative();
        for (int z = 41; z <= 300; z++) {
            double next = want("0 mm, -1000 mm, " + z + " mm", "", "no_highlight: camera, upon: tin")
                    .margin();
            assertThat(next - last).as("%d mm", z).isBetween(-0.1, 1.2);
            last = next;
        }
        // From 300 mm up on the highest height that is judged, some 50 mm, sight is mirrored down by atan(250/960),
        // twice
        // that from the lens.
        assertThat(last).isCloseTo(100 * 2 * Math.atan(250.0 / 960) / Math.PI, within(2.0));
    }

    @Test
    void flag_standsInTheWayOfAHighlight() {
        String soft = "soft: {light: soft, at: [700 mm, -700 mm, 25 mm], aim: tin}";
        String flag = ", cut: {light: black, at: [%s mm, -350 mm, 25 mm], aim: tin}";
        String want = "highlight: soft, upon: tin, from_left: 70 %, within: 10 %";
        double free = want(BESIDE, soft, want).margin();
        assertThat(free).isPositive();
        assertThat(want(BESIDE, soft + flag.formatted("-350"), want).margin()).isCloseTo(free, within(1e-9));
        Shown hidden = want(BESIDE, soft + flag.formatted("350"), want);
        assertThat(hidden.margin()).isLessThan(-50);
        assertThat(hidden.standing()).contains("In the way: cut.");
    }

    /// What isn't in the picture needn't be even: a point 1 m before a wall gives `cos³` of what it gives straight on.
    @Outside(source = "inverse square and cosine law (any text on photometry)", kind = "worked example")
    @Test
    void backdrop_isJudgedWhereItIsInThePicture() {
        String lights = "key: {light: spot, at: [0 mm, 0 mm, 1500 mm], turn: 0 deg},"
                + " paper: {light: paper, at: [0 mm, 1000 mm, 1500 mm], turn: 180 deg}";
        // The lens stands at the lamp's height, 2 m before the wall, focused there: 1.44 by 0.81 m less the focus's
        // own.
        Shown even = new Shown(Wanted.read(PLAN.formatted("0 mm, -1000 mm, 1500 mm", "ahead", lights, "even: paper")));
        double imageMetres = 0.05 * (1 + 0.05 / (2.0 - 0.05));
        double across = 0.8 * 0.036 / imageMetres;
        double up = 0.8 * 0.02025 / imageMetres;
        double corner = Math.pow(1 + across * across + up * up, -1.5);
        assertThat(even.margin()).isCloseTo(0.5 + Math.log(corner) / Math.log(2), within(0.06));
    }
}
