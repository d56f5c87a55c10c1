package plumeline.cut.scene;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.Random;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// Plans whose shots move, and their findings.
final class MovedPlans {
    static final String HEAD = """
        plumeline: 1
        film: {title: Two jars, rate: 23.976 fps, papers: mm}
        things:
          can: {diameter: 60 mm, height: 100 mm}
          tin: {width: 80 mm, depth: 50 mm, height: 30 mm}
          flacon: {profile: [[0 mm, 0 mm], [0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 0 mm]]}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {macro: {focal_length: 100 mm}}
          lights: {soft: {panel: [300 mm, 600 mm], gives: 4000 lx at 1 m}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
        """;

    static final String ALL_AXES = """
          one:
            camera: {body: main, lens: macro, at: [-40 mm, -1200 mm, 150 mm], turn: 2 deg, tilt: -4 deg}
            place:
              hero: {thing: can, at: [0 mm, 0 mm], turn: -30 deg}
              side: {thing: tin, at: [90 mm, 60 mm], turn: 20 deg, tilt: 12 deg}
              back: {thing: flacon, at: [-80 mm, 120 mm]}
            lights: {key: {light: soft, at: [500 mm, -300 mm, 400 mm]}}
            moves:
              slide: {by: [80 mm, 60 mm], in: 2 s}
              lift: {axis: lift, by: [0 mm, 0 mm, 40 mm], in: 2 s}
              pan: {axis: pan, by: -5 deg, in: 1.5 s}
              tilt: {axis: tilt, by: 3 deg, in: 1 s, start: 0.5 s}
              roll: {axis: roll, by: 25 deg, in: 2 s}
              turn: {carries: side, by: 700 deg, in: 2 s}
            speed: [[0 frames, 100 %], [24 frames, 100 %], [36 frames, 30 %]]
            frames: 80
        """;

    private MovedPlans() {}

    static FilmAnswer solved(String shots) {
        String plan = HEAD + shots;
        return Solve.film(Plans.read(plan.getBytes(UTF_8), "plan.yaml")
                .plan()
                .orElseThrow(() -> new AssertionError(
                        Plans.read(plan.getBytes(UTF_8), "plan.yaml").problems().toString())));
    }

    /// A shot with all axes by chance.
    static String byChance(Random chance) {
        return String.join(
                "\n",
                List.of(
                        "  one:",
                        "    camera: {body: main, lens: macro, held: " + (chance.nextBoolean() ? "upright" : "level")
                                + ", at: [" + between(chance, -200, 200) + " mm, " + between(chance, -1500, -900)
                                + " mm, " + between(chance, 80, 400) + " mm], turn: " + between(chance, -4, 4)
                                + " deg, tilt: " + between(chance, -12, 2) + " deg}",
                        "    place:",
                        "      hero: {thing: can, at: [" + between(chance, -50, 50) + " mm, 0 mm], turn: "
                                + between(chance, -180, 180) + " deg, tilt: " + between(chance, -40, 40) + " deg}",
                        "      side: {thing: tin, at: [" + between(chance, 80, 150) + " mm, 60 mm, "
                                + between(chance, 0, 50) + " mm], turn: " + between(chance, -180, 180) + " deg}",
                        "      back: {thing: flacon, at: [-80 mm, 120 mm]}",
                        "    moves:",
                        "      slide: {by: [" + between(chance, -80, 80) + " mm, " + between(chance, -80, 80) + " mm, "
                                + between(chance, -80, 80) + " mm], in: 2 s}",
                        "      pan: {axis: pan, by: " + between(chance, -8, 8) + " deg, in: 1.5 s}",
                        "      tilt: {axis: tilt, by: " + between(chance, -6, 6) + " deg, in: 1 s}",
                        "      roll: {axis: roll, by: " + between(chance, -200, 200) + " deg, in: 2 s}",
                        "      turn: {carries: hero, by: " + between(chance, -900, 900) + " deg, in: 2 s}",
                        "    speed: " + between(chance, 40, 160) + " %",
                        "    frames: " + between(chance, 20, 60),
                        ""));
    }

    /// Never 0, so that what is drawn moves.
    private static int between(Random chance, int low, int high) {
        int drawn = low + chance.nextInt(high - low + 1);
        return drawn == 0 ? 1 : drawn;
    }
}
