package plumeline.lit;

import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.stage.Stage;

/// Small plans and their light, for the tests of this room.
final class LitPlan {
    private static final String TEXT = """
        plumeline: 1
        film: {rate: 24 fps}
        things:
          can: {diameter: %s, height: %s, body: opaque}
          post: {diameter: 30 mm, height: 600 mm, body: opaque}
          glass: {diameter: 60 mm, height: 300 mm, body: clear}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          lights: {lamp: {%s}}
          tanks: {glass: {inside: [600 mm, 400 mm, 400 mm], pane: 8 mm}}
        shots:
          one:
            camera: {body: main, lens: fifty, at: [0 mm, -2000 mm, 100 mm], aim: ahead}
            %s
        """;

    private LitPlan() {}

    /// The light of a shot of these lines, with a lamp of these keys and a can of this diameter and height.
    static Lighting lighting(String diameter, String height, String lamp, String... shot) {
        String text = TEXT.formatted(diameter, height, lamp, String.join("\n    ", shot));
        Plan plan = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        return new Lighting(stage.shot(), stage.scene(stage.startValues(), 0), stage.findTank());
    }

    /// Of all lamps together, lx.
    static double lux(Lighting lighting, Vec place, Vec facing) {
        return Arrays.stream(lighting.lux(new Patch(place, facing))).sum();
    }
}
