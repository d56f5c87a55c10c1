package plumeline.render;

import java.io.IOException;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.stage.Frame;
import plumeline.stage.Stage;
import plumeline.trace.Plate;

/// Shots of odd sensors, lenses, poses, lamps and moves, by which pictures are measured against the other rooms.
final class TruthShots {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 25 fps}
        things:
          can: {diameter: 53 mm, height: 135 mm, body: opaque, finish: gloss, colour: "#204060"}
          card: {width: 70 mm, height: 110 mm, depth: 24 mm, body: opaque, finish: matte, reflects: 90 %}
          tray: {width: 260 mm, height: 12 mm, depth: 160 mm, body: opaque, finish: matte}
          vase: {profile: [[0 mm, 18 mm], [14 mm, 31 mm], [60 mm, 34 mm], [95 mm, 12 mm], [130 mm, 9 mm],
            [141 mm, 15 mm]],
            body: opaque, finish: satin}
          jar: {profile: [[0 mm, 30 mm], [70 mm, 30 mm], [82 mm, 22 mm]], body: clear, closed: yes,
            wall: {thickness: 3 mm, index: 1.52}, contents: {volume: 100 ml, index: 1.4}}
          cone: {profile: [[0 mm, 40 mm], [90 mm, 2 mm]], body: opaque, finish: matte}
        kit:
          cameras:
            wide: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 800}}
            full: {sensor: {width: 36 mm, height: 24 mm, across: 6000 px}, iso: {base: 400}}
            small: {sensor: {width: 13.2 mm, height: 8.8 mm, across: 5472 px}, iso: {base: 100}}
            four: {sensor: {width: 17.3 mm, height: 13 mm, across: 5184 px}, iso: {base: 200}, pivot: [0 mm, -70 mm]}
          lenses:
            short: {focal_length: 17 mm}
            mid: {focal_length: 35 mm}
            fifty: {focal_length: 50 mm, barrel: {diameter: 70 mm, length: 90 mm}}
            long: {focal_length: 135 mm}
            deep: {focal_length: 90 mm, pupil_ratio: 0.6}
          lights:
            strip: {panel: [250 mm, 900 mm], gives: 3000 lx at 1 m}
            soft: {disc: 400 mm, gives: 1500 lx at 1 m}
            rod: {tube: [900 mm, 38 mm], gives: 600 lx at 1 m}
            spot: {point: yes, gives: 900 lx at 1 m}
            sq: {panel: [150 mm, 150 mm], gives: 300 lx at 1 m}
            disc2: {disc: 150 mm, gives: 300 lx at 1 m}
            hot: {panel: [500 mm, 400 mm], hot_centre: 1.5 stops, gives: 2000 lx at 1 m}
            hotdisc: {disc: 300 mm, hot_centre: 2 stops, gives: 2000 lx at 1 m}
            slit: {panel: [600 mm, 500 mm], window: [100 mm, 400 mm], field: dark, gives: 2000 lx at 1 m}
            ring: {panel: [600 mm, 500 mm], window: [300 mm, 200 mm], field: bright, gives: 2000 lx at 1 m}
            bounce: {card: [500 mm, 300 mm], reflects: 70 %}
            black: {flag: [200 mm, 300 mm]}
          machines: {slider: {travel: 900 mm}, head: {speed: 60 deg/s}, plate: {speed: 60 rpm}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 10 mm}, low: {inside: [700 mm, 260 mm,
            200 mm], pane: 6 mm}}
        shots:
          one:
            SHOT
        """;

    private TruthShots() {}

    static ShotSet of(String shot) {
        Plan plan = plan(shot);
        return set(plan, Stage.of(plan, plan.shots().getFirst()));
    }

    static ShotSet of(String shot, String pass) {
        Plan plan = plan(shot);
        return set(plan, Stage.of(plan, plan.shots().getFirst(), pass));
    }

    static Plan plan(String shot) {
        return SetShots.plan(text(shot));
    }

    static String text(String shot) {
        return HEAD.replace("SHOT", shot.strip().replace("\n", "\n    "));
    }

    static ShotSet set(Plan plan, Stage stage) {
        return ShotSet.of(plan, stage, stage.startValues(), Props.NONE);
    }

    /// What a camera's picture is as large as, by about so many pixels in all.
    static Window window(ShotSet set, int pixels) {
        var picture = set.sceneAt(0).picture();
        double ratio = picture.widthTangent() / picture.heightTangent();
        int width = (int) Math.round(Math.sqrt(pixels * ratio));
        return new Window(Frame.WHOLE, width, (int) Math.round(width / ratio));
    }

    static Plate exposed(ShotSet set, double seconds, double openSeconds, Render.Quality quality, int threads)
            throws IOException {
        return Render.expose(set, seconds, openSeconds, quality, Jobs.Threads.each(threads), _ -> {}, new Stop())
                        instanceof Result.Whole<Plate> whole
                ? whole.values().getFirst()
                : new Plate(1, 1);
    }
}
