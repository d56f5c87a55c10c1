package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/// A random shot with everything fixed but what is asked to be free, written as a plan; it can be written turned and
/// shifted as a whole.
///
/// @param seed what it was made from
/// @param camera x, y, z of the lens point, millimetres
/// @param things their forms
/// @param places x, y of each, millimetres
/// @param turns the turn of each, degrees
/// @param slide the slide's way along x, millimetres; 0 where the camera stands
/// @param wants the wants' lines
record RandomSet(
        long seed,
        List<Double> camera,
        List<String> things,
        List<List<Double>> places,
        List<Double> turns,
        double slide,
        List<String> wants) {
    private static final List<String> FORMS = List.of("tall", "flacon", "box", "can");

    /// Turned clockwise seen from above about the zero mark, then shifted.
    record Moved(double degrees, double x, double y) {
        static final Moved NONE = new Moved(0, 0, 0);

        String at(double px, double py) {
            return way(px, py, x, y);
        }

        String by(double px, double py) {
            return way(px, py, 0, 0);
        }

        private String way(double px, double py, double dx, double dy) {
            double c = Math.cos(Math.toRadians(degrees));
            double s = Math.sin(Math.toRadians(degrees));
            return String.format(Locale.ROOT, "%.9f mm, %.9f mm", c * px + s * py + dx, c * py - s * px + dy);
        }
    }

    static RandomSet of(long seed) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(3);
        List<String> things = new ArrayList<>();
        List<List<Double>> places = new ArrayList<>();
        List<Double> turns = new ArrayList<>();
        double y = 0;
        for (int i = 0; i < count; i++) {
            // The first is as large as any, so that it can hide the others.
            things.add(i == 0 ? (random.nextBoolean() ? "can" : "tall") : FORMS.get(random.nextInt(2)));
            if (i > 0 && things.getFirst().equals("can") && random.nextInt(3) == 0) {
                things.set(i, FORMS.get(2));
            }
            places.add(List.of(i == 0 ? 0.0 : whole(random, -2, 2), y));
            turns.add(whole(random, -5, 5));
            y += whole(random, 85, 140);
        }
        double distance = whole(random, 560, 900);
        double slide = random.nextInt(3) == 0 ? 0 : (random.nextBoolean() ? 1 : -1) * whole(random, 350, 600);
        List<Double> camera = List.of(whole(random, -2, 2), -distance, whole(random, 45, 75));
        return new RandomSet(seed, camera, things, places, turns, slide, wants(random, things, distance, slide != 0));
    }

    private static List<String> wants(Random random, List<String> things, double distance, boolean slides) {
        List<String> wants = new ArrayList<>();
        int count = things.size();
        wants.add("{hidden: " + names(1, count) + ", behind: t0, when: start}");
        if (slides) {
            wants.add("{shown: " + names(0, count) + ", gap: " + random.nextInt(2) + " %, when: end}");
        }
        double height = things.getFirst().equals("can") ? 122 : 118;
        double share = 100 * height / distance / 20.25 / (1 / 50.0 - 1 / distance);
        double off = 1 + 0.03 * random.nextGaussian();
        wants.add(String.format(
                Locale.ROOT,
                "{fills: t0, height: %.3f %%, within: %d %%, when: start}",
                share * off,
                6 + random.nextInt(6)));
        if (random.nextBoolean()) {
            wants.add("{inside: wide, when: " + (random.nextBoolean() ? "start" : "whole") + "}");
        }
        if (random.nextBoolean()) {
            wants.add("{sharp: t0, sharp_to: " + (6 + random.nextInt(4)) + " px, when: start}");
        }
        return wants;
    }

    private static double whole(Random random, int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    private static String names(int from, int to) {
        List<String> names = new ArrayList<>();
        for (int i = from; i < to; i++) {
            names.add("t" + i);
        }
        return "[" + String.join(", ", names) + "]";
    }

    String fixed() {
        return written(Moved.NONE, false);
    }

    String movedAs(Moved moved) {
        return written(moved, false);
    }

    /// The same with every thing but the first, and the lens's height, to be found.
    String freed() {
        return written(Moved.NONE, true);
    }

    private String written(Moved moved, boolean freed) {
        String aside = moved.at(camera.get(0), camera.get(1));
        String height = freed ? "free between 40 mm and 90 mm" : String.format(Locale.ROOT, "%.1f mm", camera.get(2));
        List<String> lines = new ArrayList<>();
        lines.add("camera: {body: main, lens: fifty, at: [" + aside + ", " + height + "], aim: t0, f_number: 16}");
        lines.add("place:");
        for (int i = 0; i < things.size(); i++) {
            String at = freed && i > 0
                    ? "free, free"
                    : moved.at(places.get(i).get(0), places.get(i).get(1));
            lines.add(String.format(
                    Locale.ROOT,
                    "  t%d: {thing: %s, at: [%s], turn: %.9f deg}",
                    i,
                    things.get(i),
                    at,
                    turns.get(i) + moved.degrees()));
        }
        if (slide != 0) {
            lines.add("moves:");
            lines.add("  slide: {machine: slider, by: [" + moved.by(slide, 0) + "], in: 8 s, profile: trapezoid}");
            lines.add("  pan: {machine: head, keeps: " + names(0, things.size()) + "}");
            lines.add("speed: 200 %");
            lines.add("frames: 97");
        }
        lines.add("wants: [" + String.join(", ", wants) + "]");
        return Solved.text(lines.toArray(String[]::new));
    }
}
