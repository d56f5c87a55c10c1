package plumeline.want;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.tidy.Outside;

/// What a camera that looks into a tank makes of the light there.
@Outside(source = "étendue and Fresnel's formulas (any text on radiometry)", kind = "worked example")
final class LitInTankTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          tin: {diameter: 60 mm, height: 120 mm, body: opaque, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {far: {gives: 8000000 cd measured}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -50 m, 68 mm], aim: ahead, f_number: 8,
              rate: 64 fps, shutter: 360 deg}
            %s
            place: {tin: {thing: tin, at: [0 mm, 0 mm, 8 mm]}}
            lights: {key: {light: far, at: [0 mm, -40 m, 68 mm], turn: 0 deg}}
            wants: [{lit: tin, within: 8 stops}]
        """;

    private record Shown(Plan plan) implements FirstWant {}

    private static Shown with(String tank) {
        return new Shown(Wanted.read(PLAN.formatted(tank)));
    }

    /// 5000 lx in air, where f/8 at 1/64 s needs 10,240: 1.03 stops too little. Into the tank 0.95348 of it comes; from
    /// the label back to the camera 0.95348 over 1.333² is left, 0.898 stops less. Both together 0.97 stops.
    @Test
    void underWater_whatTheCameraSeesIsDarker() {
        double air = with("").margin();
        assertThat(air).isCloseTo(8 + Math.log(5000.0 / 10_240) / Math.log(2), within(0.01));
        Shown wet = with("tank: {tank: glass, at: [0 mm, 0 mm], water: 250 mm}");
        double less = Math.log(0.95348 * 0.95348 / (1.333 * 1.333)) / Math.log(2);
        assertThat(wet.margin() - air).isCloseTo(less, within(0.02));
        assertThat(wet.standing())
                .contains(", as water and glass make it 0.9 stops darker to the camera: 2 stops too little");
    }

    /// Behind a dry pane 0.91832 comes in and as much out again: 0.246 stops.
    @Test
    void behindADryPane_itIsALittle() {
        Shown dry = with("tank: {tank: glass, at: [0 mm, 0 mm]}");
        double less = 2 * Math.log(0.91832) / Math.log(2);
        assertThat(dry.margin() - with("").margin()).isCloseTo(less, within(0.02));
        assertThat(dry.standing()).contains(", as glass makes it 0.1 stops darker to the camera");
    }
}
