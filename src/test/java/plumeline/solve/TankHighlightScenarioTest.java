package plumeline.solve;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plans;

/// A free lamp outside is put where a tin under water shall mirror it.
final class TankHighlightScenarioTest {
    private static final String PLAN = """
            plumeline: 1
            film: {rate: 24 fps}
            things: {tin: {diameter: 70 mm, height: 120 mm, body: opaque, finish: gloss}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              lights: {strip: {panel: [200 mm, 900 mm], gives: 4000 lx at 1 m}}
              tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
            shots:
              one:
                frames: 1
                camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 120 mm], aim: ahead, f_number: 11}
                tank: {tank: glass, at: [0 mm, 0 mm], water: 260 mm}
                place: {a: {thing: tin, at: [0 mm, 20 mm, 60 mm]}}
                lights: {key: {light: strip, at: free, aim: a}}
                wants: [{highlight: key, upon: a, from_left: 25 %}]
            """;

    @Test
    void freeLamp_isPutWhereTheTinUnderWaterMirrorsIt() {
        var plan = Plans.read(PLAN.getBytes(StandardCharsets.UTF_8), "p.yaml").plan();
        var want = Solve.film(plan.orElseThrow()).shots().getFirst().wants().getFirst();
        assertThat(want.verdict()).isIn(Verdict.HOLDS, Verdict.TIGHT);
        assertThat(want.because().getFirst()).contains("key shows in a at 2");
    }
}
