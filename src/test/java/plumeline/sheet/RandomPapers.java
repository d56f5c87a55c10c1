package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/// Plans that nobody has seen before, to print papers of: what a seed gives is always the same.
public final class RandomPapers {
    /// Titles in scripts that a film's name may be written in, with what a careless printer would break.
    private static final List<String> TITLES = List.of(
            "שמני אמבט 24",
            "زيوت الحمام",
            "Λουτρικά έλαια & άρωμα",
            "入浴剤のかおり",
            "A <title> & \\\"more\\\": 10 % off",
            "Badeöle für Ærø, číslo 3");

    private static final String HEAD = """
        deliver:
          wide: {ratio: "16:9", size: [3840 px, 2160 px]}
          phone: {ratio: "9:16", size: [1080 px, 1920 px], keep_out: {top: 14 %, bottom: 20 %, right: 12 %}}
        things:
          can: {diameter: 66 mm, height: 122 mm, body: opaque}
          box: {width: 60 mm, height: 110 mm, depth: 30 mm, body: opaque, mass: 200 g typical}
          flacon:
            profile: [[0 mm, 21 mm], [90 mm, 21 mm], [118 mm, 10 mm]]
            body: opaque
            variants: {red: {hue: 20 deg}}
        kit:
          cameras:
            main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, modes: [{rate: 24 fps}, {rate: 120 fps}]}
          lenses:
            fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22]}
            macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}
          lights: {strip: {panel: [300 mm, 1200 mm], gives: 4000 lx at 1 m typical, white: 5600 K, power: 300 W}}
          machines:
            slider: {travel: 600 mm, speed: 80 mm/s, repeats: 0.1 mm}
            plate: {speed: 12 rpm, repeats: 0.1 deg typical}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
        """;

    private final Random random;
    private final StringBuilder text = new StringBuilder();
    private final boolean hasLongNames;

    private RandomPapers(long seed) {
        random = new Random(seed * 7919 + 17);
        hasLongNames = seed % 2 == 1;
        String title = TITLES.get((int) (seed % TITLES.size()));
        String unit = seed % 3 == 1 ? "in" : "mm";
        line(0, "plumeline: 1");
        line(0, "film: {title: \"%s\", rate: 24 fps, frames: 96, papers: %s}", title, unit);
        text.append(HEAD);
        List<Integer> things = List.of(1, 4, 12);
        shot(things.get((int) (seed % 3)), seed % 2 == 0 ? Kind.LAMPS : Kind.MOVES);
        shot(1, seed % 2 == 0 ? Kind.TANK : Kind.PASSES);
        if (seed % 3 == 0) {
            line(0, "wants: [{inside: [wide, phone]}]");
        }
    }

    /// What a shot has besides camera and things.
    private enum Kind {
        LAMPS,
        MOVES,
        TANK,
        PASSES
    }

    /// Makes a plan's text.
    ///
    /// @param seed which; 0 to 5 together have 1, 4 and 12 things, both units, every title, tank, moves, lamps,
    /// passes
    /// @return a plan that is read without problems
    public static String of(long seed) {
        return new RandomPapers(seed).text.toString();
    }

    private void shot(int count, Kind kind) {
        String place = IntStream.range(0, count).mapToObj(this::name).collect(Collectors.joining(" "));
        List<String> names = List.of(place.split(" "));
        double distance = whole(900, 1400);
        double height = kind == Kind.TANK ? 139 : whole(40, 90);
        line(1, "%s:", name(100 + kind.ordinal()));
        line(
                2,
                "camera: {body: main, lens: macro, at: [%.1f mm, -%.1f mm, %s], aim: %s, f_number: %d, rate: %s,"
                        + " shutter: 180 deg, iso: 800}",
                whole(-40, 40) / 4,
                distance,
                kind == Kind.LAMPS ? "free between 40 mm and 110 mm" : height + " mm ± 1 mm measured",
                names.getFirst(),
                8 + random.nextInt(4),
                kind == Kind.TANK ? "120 fps" : "24 fps");
        line(2, "place:");
        place(names, kind);
        line(2, "frames: %d", 24 + random.nextInt(96));
        switch (kind) {
            case LAMPS -> lamps();
            case MOVES -> moves();
            case TANK -> line(2, "tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}");
            case PASSES -> passes(names.getFirst());
        }
        wants(names, kind, distance);
    }

    private void place(List<String> names, Kind kind) {
        for (int i = 0; i < names.size(); i++) {
            String form = List.of("can", "flacon.red", "box").get(kind == Kind.TANK ? 1 : i % 3);
            double x = i == 0 ? 0 : (i % 2 == 0 ? -1 : 1) * (70 + 18.25 * i);
            String at = String.format(Locale.ROOT, "%.2f mm, %.1f mm", x, 40.0 * i);
            if (kind == Kind.TANK) {
                line(3, "%s: {thing: %s, at: [0 mm, %d mm, 80 mm], lines: 2}", names.get(i), form, random.nextInt(9));
            } else {
                line(3, "%s: {thing: %s, at: [%s], turn: %.1f deg}", names.get(i), form, at, whole(-90, 90) / 2);
            }
        }
    }

    private void lamps() {
        String lamp = name(200);
        line(2, "lights:");
        line(3, "%s: {light: strip, at: [%.0f mm, -300 mm, 400 mm typical], level: 60 %%}", lamp, whole(300, 600));
        line(3, "%s: {light: strip, at: free}", name(201));
    }

    private void moves() {
        line(2, "moves:");
        line(3, "%s: {machine: slider, by: [%.1f mm, 0 mm], in: 5 s, profile: even}", name(300), whole(-300, -100));
        line(2, "speed: 200 %%");
    }

    private void passes(String thing) {
        line(2, "lights:");
        line(3, "key: {light: strip, at: [500 mm, -300 mm, 400 mm]}");
        line(2, "moves:");
        line(3, "%s: {machine: plate, carries: %s, by: 60 deg, in: 1 s, profile: even}", name(301), thing);
        line(2, "passes: {%s: {}, %s: {lights.key.level: 0 %%}}", name(400), name(401));
    }

    /// Most hold, so that the findings are soon there; how large the first thing is seen is worked out by the thin
    /// lens.
    private void wants(List<String> names, Kind kind, double distance) {
        String first = names.getFirst();
        double share = 100 * (kind == Kind.TANK ? 118 : 122) * 100 / (distance - 100) / 20.25;
        List<String> wants = new ArrayList<>();
        wants.add(String.format(Locale.ROOT, "{fills: %s, height: %.1f %%, within: 20 %%}", first, share));
        wants.add("{sharp: " + first + ", sharp_to: 6 px}");
        if (kind != Kind.TANK) {
            wants.add("{inside: wide, of: " + first + "}");
            wants.add("{reaches: camera}");
        }
        if (names.size() == 4) {
            wants.add("{clear: all, by: 3 mm}");
        }
        wants.add(
                kind == Kind.TANK
                        ? "{stays_under: " + first + "}"
                        : "{readable: " + first + ", within: 40 deg, for: 9 frames}");
        line(2, "wants:");
        wants.forEach(want -> line(3, "- %s", want));
    }

    /// A name of its own: short, or the 40 letters that still must not break a sheet.
    private String name(int number) {
        if (!hasLongNames) {
            return "n" + number;
        }
        String letters = "abcdefghijklmnopqrstuvwxyz0123456789_-";
        StringBuilder name = new StringBuilder("w" + number + (number % 2 == 0 ? "_" : "-"));
        while (name.length() < 40) {
            name.append(letters.charAt(random.nextInt(number % 3 == 0 ? 26 : letters.length())));
        }
        return name.toString();
    }

    private double whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private void line(int depth, String form, Object... values) {
        text.append("  ".repeat(depth))
                .append(values.length == 0 ? form.replace("%%", "%") : String.format(Locale.ROOT, form, values))
                .append('\n');
    }
}
