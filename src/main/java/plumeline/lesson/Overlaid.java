package plumeline.lesson;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.ink.Learnt;
import plumeline.plan.Plan;
import plumeline.plan.Written;
import plumeline.quantity.Origin;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Measured;
import plumeline.take.Take;
import plumeline.text.Node;

/// The plan's values that lessons take the place of, by dotted path. Of two lessons about one value the later counts;
/// takes of an ink count together.
final class Overlaid {
    private static final List<String> OF_THE_LESSON = List.of("take", "shot", "ink", "noted", "how");

    private final Map<String, Node.Entry> values = new LinkedHashMap<>();
    private final Map<String, List<Lessons.Written>> takes = new LinkedHashMap<>();

    private Overlaid() {}

    static List<Node.Entry> values(Lessons lessons, Plan plan) {
        Overlaid overlaid = new Overlaid();
        lessons.written().forEach(overlaid::add);
        LampReadings.of(lessons, plan).entries().forEach(entry -> overlaid.values.put(entry.key(), entry));
        overlaid.takes.forEach((ink, written) -> overlaid.addTakes(ink, written));
        return List.copyOf(overlaid.values.values());
    }

    private void add(Lessons.Written written) {
        switch (written.lesson().measured()) {
            case Measured.OfTake take ->
                takes.computeIfAbsent(take.ink(), _ -> new ArrayList<>()).add(written);
            case Measured.LuxAt _ -> {}
            case Measured.Lux lux -> put("kit.lights." + lux.light() + ".gives", written, "gives", lux.gives());
            case Measured.FocalLength lens ->
                put("kit.lenses." + lens.lens() + ".focal_length", written, "focal_length", lens.length());
            case Measured.Speed speed ->
                put("kit.machines." + speed.machine() + ".speed", written, "speed", speed.speed());
            case Measured.Reset reset -> put("shots." + reset.shot() + ".reset", written, "reset", reset.time());
            case Measured.Strength strength ->
                put("kit.inks." + strength.ink() + ".strength", written, "strength", strength.absorbance());
        }
    }

    private void put(String path, Lessons.Written written, String key, Quantity quantity) {
        Node.Entry entry = written.node().findEntry(key).orElseThrow();
        put(path, entry, scalar(quantity, entry.value()));
    }

    private void put(String path, Node.Entry from, Node value) {
        values.put(path, new Node.Entry(path, from.keyPlace(), value));
    }

    private static Node scalar(Quantity quantity, Node where) {
        return new Node.Scalar(quantity.withOrigin(Origin.MEASURED).toText(), false, where.place());
    }

    /// All takes of an ink; its `front` by those that were made like the last one, its `spread` where widths were read.
    private void addTakes(String ink, List<Lessons.Written> written) {
        String path = "kit.inks." + ink;
        Node.Entry from = written.getLast().node().findEntry("take").orElseThrow();
        List<Node> all = new ArrayList<>();
        written.forEach(each -> all.add(ofTheTake(each.node())));
        put(path + ".takes", from, new Node.Sequence(all, from.value().place()));
        List<Node> fronts = fronts(written);
        if (!fronts.isEmpty()) {
            put(path + ".front", from, new Node.Sequence(fronts, from.value().place()));
        }
        List<Take> read = written.stream().map(Overlaid::take).toList();
        findSpread(read).ifPresent(spread -> put(path + ".spread", from, scalar(spread, from.value())));
    }

    private static Take take(Lessons.Written written) {
        return TakeReader.read(new Written(written.node(), written.node().place()));
    }

    private static Node ofTheTake(Node.Mapping lesson) {
        return new Node.Mapping(
                lesson.entries().stream()
                        .filter(entry -> !OF_THE_LESSON.contains(entry.key()))
                        .toList(),
                lesson.place());
    }

    private static List<Node> fronts(List<Lessons.Written> written) {
        Conditions last = take(written.getLast()).conditions();
        record Read(double seconds, Node node) {}
        List<Read> reads = new ArrayList<>();
        for (Lessons.Written each : written) {
            if (!take(each).conditions().equals(last)
                    || !(each.node().find("front").orElse(each.node()) instanceof Node.Sequence list)) {
                continue;
            }
            List<Take.Front> fronts = take(each).fronts();
            for (int i = 0; i < fronts.size(); i++) {
                Node where = list.items().get(i);
                List<Node> pair = List.of(
                        scalar(fronts.get(i).time(), where),
                        scalar(fronts.get(i).depth(), where));
                reads.add(new Read(fronts.get(i).time().si(), new Node.Sequence(pair, where.place())));
            }
        }
        return reads.stream()
                .sorted(Comparator.comparingDouble(Read::seconds))
                .map(Read::node)
                .toList();
    }

    /// Half-width over depth in hundredths: the mean of all widths, billows counted.
    private static Optional<Quantity> findSpread(List<Take> takes) {
        double[] ratios = takes.stream()
                .flatMap(take -> take.widths().stream())
                .mapToDouble(width -> width.width().si() / 2 / width.depth().si())
                .toArray();
        if (ratios.length == 0) {
            return Optional.empty();
        }
        double mean = Arrays.stream(ratios).sum() / ratios.length;
        double half = 2 * Learnt.BILLOWS * mean / Math.sqrt(ratios.length);
        return Optional.of(Quantities.get(Print.number(mean, 2) + " ± " + Print.number(Math.max(0.01, half), 2)));
    }
}
