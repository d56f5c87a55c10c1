package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import plumeline.lit.Instant;
import plumeline.lit.LightMemory;
import plumeline.lit.Lighting;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.stage.Gauge;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Small plans and what wants on their looks measure, for the tests of this room.
final class LookPlan {
    private static final String KIT = """
        plumeline: 1
        film: {rate: 24 fps}
        things: {can: {diameter: 66 mm, height: 122 mm, body: opaque, label: {width: 60 mm, height: 60 mm}MORE}}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 25 fps}, {rate: 48 fps, readout: 8 ms}, {rate: 50 fps, readout: 5 ms}]
              iso: {base: 800, highest: 3200}
          lenses: {fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22]}}
        """;

    static final String STEADY = KIT.replace("MORE", "") + """
          lights: {bulb: {point: yes, gives: 900 cd, PULSE}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 60 mm], aim: hero, f_number: 4,
              rate: RATE, shutter: SHUTTER}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            lights: {key: {light: bulb, at: [0 mm, -1033 mm, 61 mm]}}
            wants: [{steady_light: key}]
        """;

    /// Two lamps a metre before the label, each alone in its look.
    static final String LOOKS = KIT.replace("MORE", ", colour: \"#9d94c8\"") + """
          lights:
            bulb: {point: yes, gives: 800 cd measured, white: 5600 K}
            tube: {point: yes, gives: 1000 cd measured, primaries: [{name: red, x: 0.64, y: 0.33, lumens: 212.6 lm},
              {name: green, x: 0.30, y: 0.60, lumens: 715.2 lm}, {name: blue, x: 0.15, y: 0.06, lumens: 72.2 lm}]}
            typical: {point: yes, gives: 1000 cd measured, primaries: typical}
            plain: {point: yes, gives: 1000 cd measured}
            white: {card: [500 mm, 500 mm]}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 60 mm], aim: hero, f_number: 4, white: 5600 K}
            place: {hero: {thing: can, at: [0 mm, 0 mm]}}
            lights:
              key: {light: bulb, at: [0 mm, -1033 mm, 61 mm]}
              wash: {light: tube, at: [0 mm, -1033 mm, 61 mm], hue: 136.016 deg}
            passes: {green: {lights.key.level: 0 %}, white: {lights.wash.level: 0 %}}
            frames: 24
            wants: [{WANT}]
        cut:
          - {shot: one, frames: 72, alternate: [green, white], each: 6 frames}
        """;

    private LookPlan() {}

    static Plan plan(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    static Gauge.Reading<Looks> reading(String text) {
        return reading(text, "green");
    }

    private static Stage stage(Plan plan, String pass) {
        Shot shot = plan.shots().getFirst();
        return shot.findPass(pass).isPresent() ? Stage.of(plan, shot, pass) : Stage.of(plan, shot);
    }

    static Gauge.Reading<Looks> reading(String text, String pass) {
        Plan plan = plan(text);
        return LookMeasures.of(plan.shots().getFirst().wants().getFirst(), plan, stage(plan, pass));
    }

    static String missing(String text) {
        return ((Gauge.Reading.Missing<Looks>) reading(text)).reason();
    }

    static Gauge<Looks> measure(String text, String pass) {
        return ((Gauge.Reading.Of<Looks>) reading(text, pass)).gauge();
    }

    static Looks looks(String text, String pass) {
        Stage stage = stage(plan(text), pass);
        return new Looks(stage, instant(stage), LookPlan::instant);
    }

    private static Instant instant(Stage stage) {
        Scene scene = stage.scene(stage.startValues(), 0);
        return new Instant(scene, () -> new Lighting(stage.shot(), scene, stage.findTank()), new LightMemory());
    }

    static double margin(String text) {
        return margin(text, "green");
    }

    static double margin(String text, String pass) {
        return Arrays.stream(measure(text, pass).parts(looks(text, pass))).min().orElseThrow();
    }
}
