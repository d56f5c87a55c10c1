package plumeline.render;

import java.nio.charset.StandardCharsets;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A small plan's one shot as staged, for the tests of this room.
record Shown(Plan plan, Stage stage) {
    private static final String TEXT = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        deliver:
          wide: {ratio: "16:9"}
          phone: {ratio: "9:16", keep_out: {top: 14 %%, bottom: 20 %%, right: 12 %%}}
        things:
          can: {diameter: 66 mm, height: 122 mm, body: opaque, finish: gloss}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              iso: {base: 800}
              %s
          lenses: {fifty: {focal_length: 50 mm%s}}
          lights: {strip: {panel: [200 mm, 900 mm], gives: 1000 lx at 1 m}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -800 mm, 61 mm], aim: ahead, f_number: 4, focus: 767 mm%s}
            place: {can: {thing: can, at: [0 mm, 0 mm]}}
            lights: {key: {light: strip, at: [-600 mm, -500 mm, 300 mm], aim: can}}
            frames: 48
            %s
        """;

    /// @param body further lines of the body
    /// @param lens more keys of the lens, with a comma before them
    /// @param camera more keys of the camera
    /// @param shot a further line of the shot
    static Shown of(String body, String lens, String camera, String shot) {
        return of(text(body, lens, camera, shot));
    }

    static String text(String body, String lens, String camera, String shot) {
        return TEXT.formatted(body, lens, camera, shot);
    }

    static Shown of(String text) {
        Plans.Reading reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        Plan plan = reading.plan().orElseThrow(() -> new IllegalArgumentException(reading.problems() + "\n" + text));
        return new Shown(plan, Stage.of(plan, plan.shots().getFirst()));
    }

    static Shown plain() {
        return of("", "", "", "");
    }

    Scene scene() {
        return stage.scene(stage.startValues(), 0);
    }

    Quantity film() {
        return plan.film().rate();
    }

    Developing developing() {
        return Developing.of(stage.shot().camera(), scene().picture(), film());
    }
}
