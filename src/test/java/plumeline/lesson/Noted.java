package plumeline.lesson;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// A small film with ink, and lessons for it.
final class Noted {
    static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things: {tin: {diameter: 60 mm, height: 120 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {strip: {panel: [300 mm, 1200 mm], gives: 4000 lx at 1 m typical}}
          machines: {slider: {travel: 600 mm, speed: 80 mm/s}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm, temperature: 20 degC}}
          inks: {rose: {density: 1.03 g/ml}}
        shots:
          plume:
            camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 100 mm], aim: hero, rate: 50 fps}
            tank: {tank: glass, at: [0 mm, 0 mm], water: 252 mm}
            place: {hero: {thing: tin, at: [0 mm, 0 mm, 60 mm], lines: 2}}
            lights: {key: {light: strip, at: [0 mm, 0 mm, 900 mm]}}
            release: {ink: rose, volume: 6 ml, bore: 6 mm, squeeze_time: 0.3 s, at: [0 mm, -50 mm, 250 mm]}
            wants: [{ink_reaches: hero, part: top, after: 1 s, within: 0.2 s}]
        """;

    /// Written by hand: comments, an empty line, three sorts.
    static final String LESSONS = """
        # by hand
        lessons: 1
        measured:
          - take: 1      # the first
            shot: plume
            ink: rose
            volume: 6 ml
            density: 1.03 g/ml
            bore: 6 mm
            squeeze_time: 0.3 s
            height: -10 mm
            rate: 50 fps
            front: [[0.9 s ± 0.04 s, 70 mm ± 4 mm], [2.1 s, 130 mm]]
            width: [[100 mm, 60 mm]]

          - lens: fifty
            focal_length: 48.6 mm ± 0.2 mm
            how: "a ruler, \\"twice\\""   # at infinity
          - {light: strip, gives: 1450 lx at 1 m}
        """;

    private Noted() {}

    static Plan plan(String text) {
        var reading = Plans.read(text.getBytes(UTF_8), "film.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    static Lessons lessons(String text) {
        LessonsReading reading = read(text);
        assertThat(reading.problems()).isEmpty();
        return reading.lessons().orElseThrow();
    }

    static LessonsReading read(String text) {
        return Lessons.read(text.getBytes(UTF_8), "film.lessons.yaml");
    }

    /// The plan with lessons in it.
    static Plan measured(String plan, String lessons) {
        var reading = lessons(lessons).applyTo(plan(plan));
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }
}
