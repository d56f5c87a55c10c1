package plumeline.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.take.Measured;
import plumeline.text.Node;

/// What readings on things of shots say of the lamps that were on.
///
/// A reading over what was computed there is a lamp's true output over what it was taken to give. In its own shot a
/// lamp gives what the readings there say, each place what was read at it. In other shots distance and angle are
/// others, so the lamp's form counts: there all readings count together, by weights, with a wider spread. Of readings
/// that are more than a stop from the latest none counts.
final class LampReadings {
    /// A lux meter and the hand that holds it, 95 %, share of one: common practice.
    private static final double METER_SHARE = 0.05;

    /// What a lamp's form may do at another distance and angle, 95 %, share of one: common practice.
    private static final double ELSEWHERE_SHARE = 0.1;

    private static final double WILD_RATIO = 2;

    /// One lamp in one reading.
    private record Of(Measured.LuxAt.Spot at, Measured.LuxAt.Gave lamp, double logGives, double half, Node.Entry from) {
        Quantity gives() {
            return lamp.gives();
        }

        boolean isNear(Of latest) {
            return Math.abs(logGives - latest.logGives) <= Math.log(WILD_RATIO);
        }
    }

    /// Several together: the mean of their logarithms by weights, and its 95 % half-width as a share.
    private record Together(double log, double half) {}

    private final Plan plan;
    private final Map<String, Quantity> direct = new LinkedHashMap<>();
    private final Map<String, List<Of>> byLamp = new LinkedHashMap<>();
    private final List<Node.Entry> entries = new ArrayList<>();
    private final List<String> looks = new ArrayList<>();

    private LampReadings(Plan plan) {
        this.plan = plan;
    }

    static LampReadings of(Lessons lessons, Plan plan) {
        LampReadings readings = new LampReadings(plan);
        lessons.written().forEach(readings::read);
        readings.byLamp.forEach(readings::combine);
        return readings;
    }

    /// What comes in the place of the plan's values, by dotted path.
    List<Node.Entry> entries() {
        return List.copyOf(entries);
    }

    /// What to look at, in sentences.
    List<String> looks() {
        return List.copyOf(looks);
    }

    private void read(Lessons.Written written) {
        switch (written.lesson().measured()) {
            case Measured.Lux lux -> direct.put(lux.light(), lux.gives());
            case Measured.LuxAt at -> readAt(at, written.node().findEntry("lux").orElseThrow());
            case Measured.OfTake _,
                    Measured.FocalLength _,
                    Measured.Speed _,
                    Measured.Reset _,
                    Measured.Strength _ -> {}
        }
    }

    /// Where several were on at once, the reading doesn't tell which of them is off: each by as much. What others gave
    /// that were read alone is taken off first, and is as unsure.
    private void readAt(Measured.LuxAt at, Node.Entry from) {
        double own =
                at.reads().hasSpread() ? at.reads().halfWidthSi() / at.reads().si() : METER_SHARE;
        double rest = at.reads().si() - at.othersLux();
        double left = Math.hypot(own * at.reads().si(), METER_SHARE * at.othersLux()) / rest;
        double half = at.lamps().size() > 1 ? Math.hypot(left, ELSEWHERE_SHARE) : left;
        for (Measured.LuxAt.Gave gave : at.lamps()) {
            List<Of> all = byLamp.computeIfAbsent(gave.lamp(), _ -> new ArrayList<>());
            all.removeIf(
                    before -> before.at.equals(at.at()) && before.lamp.light().equals(gave.light()));
            all.add(new Of(at.at(), gave, log(gave.gives()) + Math.log(at.ratio()), half, from));
        }
    }

    /// Lux at a distance count by its square.
    private static double log(Quantity gives) {
        return Math.log(gives.findAt().map(at -> gives.si() * at.si() * at.si()).orElse(gives.si()));
    }

    private void combine(String kit, List<Of> all) {
        Of latest = all.getLast();
        List<Of> alike = all.stream()
                .filter(each -> each.gives().kind() == latest.gives().kind() && each.isNear(latest))
                .toList();
        all.stream().filter(each -> !alike.contains(each)).forEach(each -> look(each, latest));
        Optional<Quantity> measured = Optional.ofNullable(direct.get(kit))
                .filter(lux -> lux.kind() == latest.gives().kind()
                        || (isPoint(kit) && latest.gives().kind() == Kind.INTENSITY));
        double reference;
        if (measured.isPresent()) {
            reference = log(measured.get());
        } else {
            Together together = together(alike, ELSEWHERE_SHARE);
            Quantity said = rounded(latest.gives(), together.log);
            reference = log(said);
            put("kit.lights." + kit + ".gives", latest.from, text(said) + share(together.half));
        }
        Map<String, List<Of>> byShot = new LinkedHashMap<>();
        alike.stream()
                .filter(this::isThere)
                .forEach(each -> byShot.computeIfAbsent(
                                each.at.shot() + ".lights." + each.lamp.light(), _ -> new ArrayList<>())
                        .add(each));
        byShot.forEach((path, here) -> putShot("shots." + path, here, reference));
    }

    private boolean isPoint(String kit) {
        return plan.kit().lights().stream()
                .filter(light -> light.name().equals(kit))
                .anyMatch(light -> light.emitter() instanceof Kit.Emitter.Point);
    }

    /// Whether the shot's light is still that lamp: of another in its place a reading says nothing.
    private boolean isThere(Of reading) {
        return plan.findShot(reading.at.shot())
                .flatMap(shot -> shot.findLight(reading.lamp.light()))
                .filter(light -> light.light().name().equals(reading.lamp.lamp()))
                .isPresent();
    }

    private void look(Of other, Of latest) {
        double stops = (latest.logGives - other.logGives) / Math.log(2);
        looks.add("Look: by the reading on " + latest.at.thing() + " in " + latest.at.shot() + " "
                + latest.lamp.lamp() + " gives " + Print.number(Math.abs(stops), 1) + " stops "
                + (stops > 0 ? "more" : "less") + " than by that on " + other.at.thing() + " in " + other.at.shot()
                + "; the latest counts. Was one of them at another level, or not alone?");
    }

    private void putShot(String path, List<Of> here, double reference) {
        Together together = together(here, 0);
        Node.Entry from = here.getLast().from;
        put(path + ".output", from, output(together.log - reference, together.half));
        List<Node> readings = here.stream()
                .<Node>map(each -> new Node.Mapping(
                        List.of(
                                entry("thing", each.at.thing(), each.from),
                                entry("part", each.at.part(), each.from),
                                entry("output", output(each.logGives - reference, each.half), each.from)),
                        each.from.value().place()))
                .toList();
        entries.add(new Node.Entry(
                path + ".readings",
                from.keyPlace(),
                new Node.Sequence(readings, from.value().place())));
    }

    private static Together together(List<Of> readings, double more) {
        double weights = 0;
        double sum = 0;
        for (Of each : readings) {
            double weight = 1 / (Math.pow(each.half, 2) + more * more);
            weights += weight;
            sum += weight * each.logGives;
        }
        double mean = sum / weights;
        double scatter = 0;
        for (Of each : readings) {
            scatter += Math.pow(each.logGives - mean, 2);
        }
        int count = readings.size();
        double apart = count > 1 ? 2 * Math.sqrt(scatter / (count - 1) / count) : 0;
        return new Together(mean, Math.max(Math.sqrt(1 / weights), apart));
    }

    private static String output(double log, double half) {
        double percent = 100 * Math.exp(log);
        return String.format(Locale.ROOT, "%.1f %% ± %.1f %% measured", percent, Math.max(0.1, half * percent))
                .replace(".0 %", " %");
    }

    private static String share(double half) {
        return " ± " + Math.max(1, Math.round(100 * half)) + " % measured";
    }

    /// What a lamp gives in the words in which it was written, to four digits that count.
    private static Quantity rounded(Quantity as, double log) {
        double value = Math.exp(log);
        double si = as.findAt().map(at -> value / (at.si() * at.si())).orElse(value);
        double step = Math.pow(10, Math.floor(Math.log10(si)) - 3);
        return as.withSi(Double.parseDouble(String.format(Locale.ROOT, "%.4g", Math.rint(si / step) * step)));
    }

    private static String text(Quantity gives) {
        return gives.valueText()
                + gives.findAt().map(at -> " at " + at.valueText()).orElse("");
    }

    private void put(String path, Node.Entry from, String text) {
        entries.add(new Node.Entry(
                path, from.keyPlace(), new Node.Scalar(text, false, from.value().place())));
    }

    private static Node.Entry entry(String key, String text, Node.Entry from) {
        return new Node.Entry(
                key, from.keyPlace(), new Node.Scalar(text, false, from.value().place()));
    }
}
