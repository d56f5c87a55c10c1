package plumeline.resect;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import plumeline.geom.Point;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.stage.Frame;
import plumeline.stage.Stage;
import plumeline.text.Problem;

/// Small plans, and stills of them with everything off by known amounts.
final class Sets {
    private static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps}
        deliver:
          wide: {ratio: "16:9"}
          tall: {ratio: "9:16"}
        things:
          can: {diameter: 66 mm, height: 122 mm, label: {width: 60 mm, height: 80 mm, bottom: 20 mm}}
          flacon: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]]}
          box: {width: 60 mm, depth: 40 mm, height: 100 mm, label: {width: 40 mm, height: 60 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          machines: {slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2, repeats: 0.1 mm}}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
        """;

    /// Three things at different depths, seen from a little above.
    static final String[] THREE = {
        "camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 160 mm], aim: first}",
        "place:",
        "  first: {thing: can, at: [0 mm, 0 mm], turn: 0 deg}",
        "  second: {thing: box, at: [-130 mm, 160 mm], turn: 20 deg}",
        "  third: {thing: flacon, at: [120 mm, -140 mm]}"
    };

    /// Two boxes side by side, the camera square before them.
    static final String[] ROW = {
        "camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 60 mm], aim: ahead, focus: 900 mm}",
        "place:",
        "  left: {thing: box, at: [-130 mm, 0 mm], turn: 0 deg}",
        "  right: {thing: box, at: [120 mm, 0 mm], turn: 0 deg}"
    };

    /// The same marks, but for a thing hung in a tank.
    static final String[] TANK = {
        "camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 180 mm], aim: first}",
        "tank: {tank: glass, at: [0 mm, 0 mm], water: 280 mm}",
        "place:",
        "  first: {thing: can, at: [-60 mm, 20 mm, 60 mm], lines: 2, turn: 10 deg}",
        "  second: {thing: flacon, at: [90 mm, -60 mm, 80 mm], lines: 2}",
        "  third: {thing: box, at: [-150 mm, -300 mm]}"
    };

    static final Still WHOLE = new Still(3840, 2160, "", Frame.WHOLE);

    private Sets() {}

    static Plan plan(String... lines) {
        String text = HEAD + "    " + String.join("\n    ", lines) + "\n";
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n"))));
    }

    static StillView view(String... lines) {
        Plan plan = plan(lines);
        Stage stage = Stage.of(plan, plan.shots().getFirst());
        return StillView.of(stage, stage.startValues(), 0, WHOLE);
    }

    static List<Landmark> seen(StillView view) {
        return view.landmarks().stream()
                .filter(landmark -> view.spot(landmark) instanceof Spotted.Seen)
                .toList();
    }

    static int index(List<Sought> sought, String name) {
        return sought.stream().map(Sought::name).toList().indexOf(name);
    }

    /// Clicks on places of a set that is off by so much, each off the place by a normal error.
    static List<Resection.Click> clicks(
            StillView view, List<Landmark> places, double[] off, double sigmaPixels, Random random) {
        List<Sighting.By> ways =
                places.stream().map(place -> view.way(place).orElseThrow()).toList();
        double[] pixels =
                Unset.of(view, Allowance.USUAL).pixels(places, ways, off).orElseThrow();
        List<Resection.Click> clicks = new ArrayList<>();
        for (int i = 0; i < places.size(); i++) {
            Point at = new Point(
                    pixels[2 * i] + sigmaPixels * random.nextGaussian(),
                    pixels[2 * i + 1] + sigmaPixels * random.nextGaussian());
            clicks.add(new Resection.Click(places.get(i).name(), at.x(), at.y()));
        }
        return clicks;
    }

    static Findings find(StillView view, List<Resection.Click> clicks, Allowance allowance) {
        return switch (Resection.of(view, clicks, allowance)) {
            case Resection.Outcome.Found(Findings findings) -> findings;
            case Resection.Outcome.Refused(String why, String attempt) -> throw new AssertionError(why + " " + attempt);
        };
    }
}
