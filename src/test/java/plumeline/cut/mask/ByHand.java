package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;

/// A hung and held flacon in or before a tank, drawn by chance: as a plan's text, and by hand, in mm, from the same
/// numbers. It shares no code with the program: own moves, own pinhole, and the way of light through pane and water by
/// making its optical path least (Fermat), without Snell's law.
final class ByHand {
    private static final double RADIUS = 21;
    private static final double HEIGHT = 118;
    private static final double WATER = 268;
    private static final double RIM = 308;
    private static final double FLOOR = 8;
    private static final double OUTER = -128;
    private static final double INNER = -120;

    private static final double GLASS_INDEX = 1.52;
    private static final double WATER_INDEX = 1.333;

    final double rate;
    final double acrossPixels;
    final double downPixels;
    final double exposure;
    final boolean hasTank;
    private final double focal;
    private final double focus;
    private final double sensor;
    private final double[] eye;
    private final double turn;
    private final double tilt;
    private final double[] base;
    private final double lean;
    private final double faces;
    private final List<Double> ties = new ArrayList<>();
    private final double[] lineTo;
    private final double[] rigTo;
    private final List<Run> runs = new ArrayList<>();

    /// A move: its axis, how far, in which time, by which profile.
    private record Run(String axis, double x, double y, double seconds, String profile) {
        double share(double at) {
            double u = Math.clamp(at / seconds, 0, 1);
            return switch (profile) {
                case "even" -> u;
                case "smooth" -> 6 * Math.pow(u, 5) - 15 * Math.pow(u, 4) + 10 * Math.pow(u, 3);
                default -> {
                    // A third of the time to speed up: areas under the speed.
                    double top = 1.5;
                    yield u < 1.0 / 3
                            ? top * u * u * 3 / 2
                            : u < 2.0 / 3 ? top / 6 + top * (u - 1.0 / 3) : 1 - top * (1 - u) * (1 - u) * 3 / 2;
                }
            };
        }
    }

    ByHand(Random random, boolean hasTank) {
        this.hasTank = hasTank;
        int mode = random.nextInt(3);
        rate = new double[] {24, 120, 240}[mode];
        acrossPixels = mode == 2 ? 1920 : 3840;
        downPixels = acrossPixels * 9 / 16;
        sensor = mode == 2 ? 18 : 36;
        exposure = 0.5 / rate;
        focal = random.nextBoolean() ? 50 : 100;
        focus = round(800 + 400 * random.nextDouble());
        eye = new double[] {
            round(-60 + 120 * random.nextDouble()),
            round(-1200 + 400 * random.nextDouble()),
            round(60 + 300 * random.nextDouble())
        };
        turn = round(-3 + 6 * random.nextDouble());
        tilt = round(-4 + 8 * random.nextDouble());
        base = new double[] {
            round(-40 + 80 * random.nextDouble()),
            round(-20 + 80 * random.nextDouble()),
            round(20 + 100 * random.nextDouble())
        };
        lean = random.nextInt(3) == 0 ? 0 : round(-60 + 120 * random.nextDouble());
        faces = round(-50 + 100 * random.nextDouble());
        ties.add(round(20 + 40 * random.nextDouble()));
        if (random.nextBoolean()) {
            ties.add(round(80 + 30 * random.nextDouble()));
        }
        lineTo = switch (random.nextInt(3)) {
            case 0 -> new double[0];
            case 1 -> new double[] {round(500 + 400 * random.nextDouble())};
            default ->
                new double[] {
                    round(-80 + 160 * random.nextDouble()),
                    round(60 * random.nextDouble()),
                    round(600 + 300 * random.nextDouble())
                };
        };
        rigTo = new double[] {
            round(-300 + 600 * random.nextDouble()),
            round(-60 + 160 * random.nextDouble()),
            round(400 + 300 * random.nextDouble())
        };
        String[] profiles = {"even", "smooth", "trapezoid"};
        for (String axis : List.of("slide", "pan", "tilt", "turntable", "carry")) {
            if (random.nextInt(2) == 0) {
                double far = "slide carry".contains(axis) ? 120 : axis.equals("turntable") ? 120 : 6;
                runs.add(new Run(
                        axis,
                        round(far * (random.nextDouble() - 0.5)),
                        axis.equals("slide") ? round(60 * (random.nextDouble() - 0.5)) : 0,
                        round(0.4 + random.nextDouble()),
                        profiles[random.nextInt(3)]));
            }
        }
    }

    private static double round(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    String[] lines() {
        List<String> lines = new ArrayList<>();
        lines.add(text(
                "camera: {body: main, lens: %s, at: [%s mm, %s mm, %s mm], turn: %s deg, tilt: %s deg, focus: %s mm,"
                        + " f_number: 8, rate: %s fps, shutter: 180 deg}",
                focal == 50 ? "fifty" : "macro", eye[0], eye[1], eye[2], turn, tilt, focus, rate));
        if (hasTank) {
            lines.add("tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}");
        }
        lines.add(text(
                "place: {hero: {thing: flacon, at: [%s mm, %s mm, %s mm], turn: %s deg, tilt: %s deg, tied: [%s],"
                        + " line: {diameter: 0.3 mm%s}, rig: {diameter: 5 mm, to: [%s]}}}",
                base[0],
                base[1],
                base[2],
                faces,
                lean,
                lengths(ties),
                lineTo.length == 0
                        ? ""
                        : lineTo.length == 1 ? ", to: " + lineTo[0] + " mm" : ", to: [" + lengths(list(lineTo)) + "]",
                lengths(list(rigTo))));
        if (!runs.isEmpty()) {
            lines.add("moves:");
        }
        for (Run run : runs) {
            lines.add(
                    switch (run.axis()) {
                        case "slide" ->
                            text(
                                    "  slide: {machine: free, by: [%s mm, %s mm], in: %s s, profile: %s}",
                                    run.x(), run.y(), run.seconds(), run.profile());
                        case "carry" ->
                            text(
                                    "  carry: {machine: free, carries: hero, by: [%s mm, 0 mm], in: %s s, profile: %s}",
                                    run.x(), run.seconds(), run.profile());
                        case "turntable" ->
                            text(
                                    "  spin: {machine: round, carries: hero, by: %s deg, in: %s s, profile: %s}",
                                    run.x(), run.seconds(), run.profile());
                        default ->
                            text(
                                    "  %s_: {machine: round, axis: %s, by: %s deg, in: %s s, profile: %s}",
                                    run.axis(), run.axis(), run.x(), run.seconds(), run.profile());
                    });
        }
        return lines.toArray(String[]::new);
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }

    private static List<Double> list(double[] values) {
        List<Double> all = new ArrayList<>();
        for (double value : values) {
            all.add(value);
        }
        return all;
    }

    private static String lengths(List<Double> values) {
        return String.join(", ", values.stream().map(value -> value + " mm").toList());
    }

    private double moved(String axis, double at) {
        return runs.stream()
                .filter(run -> run.axis().equals(axis))
                .mapToDouble(run -> run.x() * run.share(at))
                .sum();
    }

    /// A strand at an instant.
    record Strand(String name, double[] foot, double[] far, double diameter) {
        double[] at(double share) {
            return plus(foot, times(minus(far, foot), share));
        }
    }

    List<Strand> strands(double at) {
        double[] stands = {base[0] + moved("carry", at), base[1], base[2]};
        double clockwise = Math.toRadians(faces + moved("turntable", at));
        List<Strand> all = new ArrayList<>();
        for (int i = 0; i < ties.size(); i++) {
            double[] held = onAxis(stands, clockwise, ties.get(i));
            double[] end = switch (lineTo.length) {
                case 0 -> plus(held, new double[] {0, 0, 5000});
                case 1 -> new double[] {held[0], held[1], lineTo[0]};
                default -> orbited(lineTo, stands, at);
            };
            double[] foot = foot(stands, clockwise, held, end);
            all.add(new Strand(
                    "hero-line" + (i == 0 ? "" : "-2"),
                    foot,
                    lineTo.length == 0 ? plus(foot, new double[] {0, 0, 2000}) : end,
                    0.3));
        }
        double[] held = onAxis(stands, clockwise, HEIGHT / 2);
        double[] end = orbited(rigTo, stands, at);
        all.add(new Strand("hero-rig", foot(stands, clockwise, held, end), end, 5));
        return all;
    }

    private double[] onAxis(double[] stands, double clockwise, double height) {
        double l = Math.toRadians(lean);
        double[] axis = {Math.sin(l) * Math.cos(clockwise), -Math.sin(l) * Math.sin(clockwise), Math.cos(l)};
        return plus(plus(stands, new double[] {0, 0, HEIGHT / 2}), times(axis, height - HEIGHT / 2));
    }

    /// Where what stands on the same machine has gone.
    private double[] orbited(double[] place, double[] stands, double at) {
        double angle = Math.toRadians(moved("turntable", at));
        double x = place[0] - base[0];
        double y = place[1] - base[1];
        return new double[] {
            stands[0] + x * Math.cos(angle) + y * Math.sin(angle),
            stands[1] + y * Math.cos(angle) - x * Math.sin(angle),
            place[2]
        };
    }

    /// Halves the way out of the cylinder.
    private double[] foot(double[] stands, double clockwise, double[] held, double[] end) {
        double[] middle = plus(stands, new double[] {0, 0, HEIGHT / 2});
        double[] axis = minus(onAxis(stands, clockwise, HEIGHT), middle);
        axis = times(axis, 1 / length(axis));
        double[] way = minus(end, held);
        way = times(way, 1 / length(way));
        double in = 0;
        double out = 500;
        for (int i = 0; i < 80; i++) {
            double[] place = minus(plus(held, times(way, (in + out) / 2)), middle);
            double along = dot(place, axis);
            double aside = length(minus(place, times(axis, along)));
            if (Math.abs(along) <= HEIGHT / 2 && aside <= RADIUS) {
                in = (in + out) / 2;
            } else {
                out = (in + out) / 2;
            }
        }
        return plus(held, times(way, in));
    }

    double[] eyeAt(double at) {
        double y = runs.stream()
                .filter(run -> run.axis().equals("slide"))
                .mapToDouble(run -> run.y() * run.share(at))
                .sum();
        return new double[] {eye[0] + moved("slide", at), eye[1] + y, eye[2]};
    }

    /// Where a place shows: `seen`, px x and y.
    record Shown(String seen, double x, double y, double depth) {}

    /// How a place is seen, by the ways that the program says it computes; `unknown` for all others.
    Optional<Shown> shown(double[] place, double at) {
        double[] from = eyeAt(at);
        if (!hasTank || isClear(from, place)) {
            return pixel("air", place, at);
        }
        double index = place[2] <= WATER ? WATER_INDEX : 1;
        double[][] way = least(from, place, index);
        boolean isIn = Math.abs(way[0][0]) <= 233
                && Math.abs(way[1][0]) <= 225
                && way[0][1] <= RIM
                && way[1][1] <= RIM
                && way[0][1] >= 0
                && way[1][1] >= FLOOR;
        double[] inner = {way[1][0], INNER, way[1][1]};
        double[] leaves = place[2] <= RIM
                ? place
                : plus(inner, times(minus(place, inner), (RIM - inner[2]) / (place[2] - inner[2])));
        isIn &= Math.abs(leaves[0]) < 225 && leaves[1] > INNER && leaves[1] < 180 && leaves[2] > FLOOR;
        boolean isWet = place[2] <= WATER;
        return isIn && isWet == (inner[2] <= WATER)
                ? pixel(isWet ? "water" : "pane", new double[] {way[0][0], OUTER, way[0][1]}, at)
                : Optional.of(new Shown("unknown", 0, 0, 1));
    }

    /// Where a place under water shows mirrored by the surface: the way by a third point, on it.
    Optional<Shown> mirrored(double[] place, double at) {
        double[] from = eyeAt(at);
        double[] one = {from[0], from[2]};
        double[] two = {place[0], place[2]};
        double[] three = {place[0], place[1]};
        double step = 0;
        for (int i = 0; i < 20_000; i++) {
            double[] p1 = {one[0], OUTER, one[1]};
            double[] p2 = {two[0], INNER, two[1]};
            double[] p3 = {three[0], three[1], WATER};
            double a = length(minus(from, p1));
            double b = length(minus(p1, p2)) / GLASS_INDEX;
            double c = length(minus(p2, p3)) / WATER_INDEX;
            double d = length(minus(p3, place)) / WATER_INDEX;
            // Given these ways, each coordinate is that of springs in a row.
            double x = (place[0] - from[0]) / (a + b + c + d);
            double z = (WATER - from[2]) / (a + b + c);
            step = Math.abs(from[2] + a * z - one[1]);
            one = new double[] {from[0] + a * x, from[2] + a * z};
            two = new double[] {from[0] + (a + b) * x, from[2] + (a + b) * z};
            three = new double[] {place[0] - d * x, INNER + (place[1] - INNER) * c / (c + d)};
        }
        // Where the surface is struck right at the pane, two corners near one another, and the mean is slow.
        if (step > 1e-9) {
            return Optional.empty();
        }
        return pixel("mirrored", new double[] {one[0], OUTER, one[1]}, at);
    }

    /// Both crossing points x, z of the least optical path: each the mean of its neighbours, weighed by index over way.
    private static double[][] least(double[] from, double[] place, double index) {
        double[] one = {(from[0] + place[0]) / 2, (from[2] + place[2]) / 2};
        double[] two = one.clone();
        for (int i = 0; i < 20_000; i++) {
            double[] p1 = {one[0], OUTER, one[1]};
            double[] p2 = {two[0], INNER, two[1]};
            double a = 1 / length(minus(from, p1));
            double b = GLASS_INDEX / length(minus(p1, p2));
            double c = index / length(minus(p2, place));
            // Given the second, the first is a mean; and the other way round; both at once go faster.
            double sum = a * b + a * c + b * c;
            double x1 = ((a * b + a * c) * from[0] + b * c * place[0]) / sum;
            double z1 = ((a * b + a * c) * from[2] + b * c * place[2]) / sum;
            double x2 = (a * b * from[0] + (a * c + b * c) * place[0]) / sum;
            double z2 = (a * b * from[2] + (a * c + b * c) * place[2]) / sum;
            double step = Math.abs(x1 - one[0]) + Math.abs(z1 - one[1]) + Math.abs(x2 - two[0]) + Math.abs(z2 - two[1]);
            one = new double[] {x1, z1};
            two = new double[] {x2, z2};
            if (step < 1e-12) {
                break;
            }
        }
        return new double[][] {one, two};
    }

    /// Whether the straight way misses the tank's outer block, step by step.
    private static boolean isClear(double[] from, double[] place) {
        for (int i = 0; i <= 4000; i++) {
            double[] at = plus(from, times(minus(place, from), i / 4000.0));
            if (Math.abs(at[0]) < 233 && at[1] > OUTER && at[1] < 188 && at[2] > 0 && at[2] < RIM) {
                return false;
            }
        }
        return true;
    }

    private Optional<Shown> pixel(String seen, double[] place, double at) {
        double t = Math.toRadians(turn + moved("pan", at));
        double p = Math.toRadians(tilt + moved("tilt", at));
        double[] ahead = {Math.sin(t) * Math.cos(p), Math.cos(t) * Math.cos(p), Math.sin(p)};
        double[] right = {Math.cos(t), -Math.sin(t), 0};
        double[] up = {
            right[1] * ahead[2] - right[2] * ahead[1],
            right[2] * ahead[0] - right[0] * ahead[2],
            right[0] * ahead[1] - right[1] * ahead[0]
        };
        double[] way = minus(place, eyeAt(at));
        double depth = dot(way, ahead);
        double image = focal * focus / (focus - focal);
        double perMillimetre = acrossPixels / sensor;
        return depth > 0
                ? Optional.of(new Shown(
                        seen,
                        acrossPixels / 2 + image * perMillimetre * dot(way, right) / depth,
                        downPixels / 2 - image * perMillimetre * dot(way, up) / depth,
                        depth))
                : Optional.empty();
    }

    boolean isInPicture(Shown shown) {
        return shown.x() > 0 && shown.x() < acrossPixels && shown.y() > 0 && shown.y() < downPixels;
    }

    static double[] plus(double[] a, double[] b) {
        return new double[] {a[0] + b[0], a[1] + b[1], a[2] + b[2]};
    }

    static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    static double[] times(double[] a, double factor) {
        return new double[] {a[0] * factor, a[1] * factor, a[2] * factor};
    }

    static double dot(double[] a, double[] b) {
        return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
    }

    static double length(double[] a) {
        return Math.sqrt(dot(a, a));
    }
}
