package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.quantity.Ratio;
import plumeline.text.Check;
import plumeline.text.Node;
import plumeline.text.Problem;

/// Checks what the form of things, kit and deliveries can't say. What isn't there, or isn't well-formed, is passed
/// over: the form's own check has said so.
final class KitMeaning {
    /// From here on water with table salt is known by temperature.
    private static final double COLDEST_BRINE_KELVIN = 278.15 - 1e-9;

    private final Node root;
    private final Issues issues;

    KitMeaning(Node root, Issues issues) {
        this.root = root;
        this.issues = issues;
    }

    void check() {
        for (var thing : Tree.entries(root, "things")) {
            checkProfile(thing.value(), "things." + thing.key());
            checkArt(thing.value(), "things." + thing.key());
            checkVariants(thing);
        }
        for (var entry : Tree.entries(root, "kit", "cameras")) checkBody(entry);
        for (var entry : Tree.entries(root, "kit", "lenses")) checkLens(entry);
        for (var entry : Tree.entries(root, "kit", "lights")) LampMeaning.check(entry, issues);
        for (var entry : Tree.entries(root, "kit", "machines")) checkMachine(entry);
        for (var entry : Tree.entries(root, "kit", "tanks")) checkTank(entry);
        for (var entry : Tree.entries(root, "deliver")) checkDelivery(entry);
    }

    private void checkProfile(Node thing, String path) {
        var profile = Tree.find(thing, "profile");
        if (profile.isEmpty()
                || !(profile.get() instanceof Node.Sequence list)
                || list.items().isEmpty()) return;
        double highest = 0;
        double widest = 0;
        for (Node item : list.items()) {
            var pair = Written.itemsOf(item);
            var height = pair.size() == 2 ? Written.quantityOf(pair.get(0)) : Optional.<Quantity>empty();
            var radius = pair.size() == 2 ? Written.quantityOf(pair.get(1)) : Optional.<Quantity>empty();
            if (height.isEmpty() || radius.isEmpty()) return;
            highest = Math.max(highest, height.get().si());
            widest = Math.max(widest, radius.get().si());
        }
        var first = Written.quantityOf(Written.itemsOf(list.items().getFirst()).getFirst())
                .orElseThrow();
        if (first.si() != 0) {
            issues.add(
                    list.items().getFirst(),
                    path + ".profile[1]",
                    "P-THING-01",
                    "at " + first.valueText(),
                    "at 0 mm: a profile begins at the base",
                    "Count heights from the thing's base.");
        }
        if (highest <= 0 || widest <= 0) {
            issues.add(
                    list,
                    path + ".profile",
                    "P-THING-02",
                    "without " + (highest <= 0 ? "height" : "width"),
                    "a body with height and width",
                    "Try [[0 mm, 21 mm], [90 mm, 21 mm]].");
        }
    }

    private void checkArt(Node thing, String path) {
        Tree.find(thing, "label", "art")
                .ifPresent(file ->
                        issues.beside(file, path + ".label.art", "Try art/rose.png, or ../labels/rose.svg."));
    }

    private void checkVariants(Node.Entry thing) {
        if (!(thing.value() instanceof Node.Mapping own)) return;
        var path = "things." + thing.key();
        var merged = KitGrammar.variantMerged();
        var known = Check.against(merged, Overlay.variant(own, Optional.empty()), path, thing.keyPlace());
        for (var variant : Tree.entries(own, "variants")) {
            if (!(variant.value() instanceof Node.Mapping over)) continue;
            checkProfile(over, path + ".variants." + variant.key());
            checkArt(over, path + ".variants." + variant.key());
            var whole = new Node.Mapping(Overlay.variant(own, Optional.of(over)).entries(), over.place());
            for (var problem : Check.against(merged, whole, path, variant.keyPlace())) {
                boolean elsewhere =
                        problem.place().start() < variant.value().place().start()
                                && problem.place().start() != variant.keyPlace().start();
                if (elsewhere || known.stream().anyMatch(k -> isSame(k, problem))) continue;
                issues.add(
                        problem.place(),
                        path + ".variants." + variant.key() + problem.field().substring(path.length()),
                        problem.code(),
                        problem.given(),
                        problem.allowed(),
                        problem.attempt());
            }
        }
    }

    /// Tells whether a variant's problem is the thing's own.
    private static boolean isSame(Problem own, Problem ofVariant) {
        return own.field().equals(ofVariant.field())
                && own.code().equals(ofVariant.code())
                && own.given().equals(ofVariant.given());
    }

    private void checkBody(Node.Entry entry) {
        var path = "kit.cameras." + entry.key();
        var base = quantity(entry.value(), "iso", "base");
        var highest = quantity(entry.value(), "iso", "highest");
        if (base.isPresent()
                && highest.isPresent()
                && highest.get().si() < base.get().si()) {
            issues.add(
                    Tree.find(entry.value(), "iso", "highest").orElseThrow(),
                    path + ".iso.highest",
                    "P-CAMERA-01",
                    highest.get().valueText(),
                    base.get().valueText() + " or more, as the base is",
                    "Try " + base.get().valueText() + ".");
        }
        int index = 0;
        for (Node mode : Tree.items(entry.value(), "modes")) {
            checkRate(mode, path + ".modes[" + ++index + "].rate", "rate");
        }
    }

    /// Checks that a rate is one that can be counted exactly.
    void checkRate(Node node, String field, String... keys) {
        var rate = Tree.find(node, keys);
        var quantity = rate.flatMap(Written::quantityOf).filter(q -> q.kind() == Kind.RATE);
        if (quantity.isEmpty() || quantity.get().digits().length() <= 12) return;
        issues.add(
                rate.orElseThrow(),
                field,
                "P-RATE-01",
                quantity.get().valueText(),
                "a rate of at most 12 characters, or a fraction",
                "Try 24000/1001 fps.");
    }

    private void checkLens(Node.Entry entry) {
        var stops = Tree.items(entry.value(), "f_numbers");
        if (stops.size() != 2) return;
        var least = Written.quantityOf(stops.get(0));
        var greatest = Written.quantityOf(stops.get(1));
        if (least.isPresent()
                && greatest.isPresent()
                && greatest.get().si() < least.get().si()) {
            issues.add(
                    stops.get(1),
                    "kit.lenses." + entry.key() + ".f_numbers[2]",
                    "P-LENS-02",
                    greatest.get().valueText(),
                    least.get().valueText() + " or more: the least comes first",
                    "Try [" + greatest.get().valueText() + ", " + least.get().valueText() + "].");
        }
    }

    private void checkMachine(Node.Entry entry) {
        var way = KitBuilder.way(entry.value());
        for (var key : Tree.entries(entry.value())) {
            var single = key.key().equals("sways")
                    ? KitBuilder.way(key.value())
                    : KitBuilder.way(new Node.Mapping(List.of(key), key.value().place()));
            if (single == Kit.Way.UNTOLD || single == way) continue;
            var along = way == Kit.Way.ALONG;
            issues.add(
                    key.value(),
                    "kit.machines." + entry.key() + "." + key.key(),
                    "P-MACHINE-01",
                    Written.quantityOf(Tree.find(key.value(), "by").orElse(key.value()))
                                    .map(Quantity::valueText)
                                    .orElse("")
                            + ", on a machine that goes "
                            + (along ? "along a line" : "round"),
                    along ? "in units of length" : "in units of angle",
                    "Make two machines where one goes along and another round.");
        }
    }

    private void checkTank(Node.Entry entry) {
        var water = quantity(entry.value(), "temperature");
        if (!Tree.has(entry.value(), "salt") || water.isEmpty() || water.get().si() >= COLDEST_BRINE_KELVIN) return;
        issues.add(
                Tree.find(entry.value(), "temperature").orElseThrow(),
                "kit.tanks." + entry.key() + ".temperature",
                "P-TANK-01",
                water.get().valueText() + ", with table salt in the water",
                "5 degC or more: colder brine isn't known here",
                "Weigh a litre of the water, and write its density.");
    }

    private void checkDelivery(Node.Entry entry) {
        var path = "deliver." + entry.key();
        checkSize(entry.value(), path);
        checkKeepOut(entry.value(), path, "top", "bottom");
        checkKeepOut(entry.value(), path, "left", "right");
    }

    private void checkSize(Node delivery, String path) {
        var ratio = Tree.scalar(delivery, "ratio").flatMap(s -> Ratio.read(s.text()));
        var size = Tree.items(delivery, "size").stream()
                .flatMap(n -> Written.quantityOf(n).stream())
                .toList();
        if (ratio.isEmpty() || size.size() != 2) return;
        double across = size.get(0).si();
        double down = size.get(1).si();
        double wanted = ratio.get().value();
        if (Math.abs(across - down * wanted) <= 1 || Math.abs(down - across / wanted) <= 1) return;
        issues.add(
                Tree.find(delivery, "size").orElseThrow(),
                path + ".size",
                "P-DELIVER-01",
                size.get(0).valueText() + " by " + size.get(1).valueText(),
                "of the ratio " + ratio.get().toText() + ", as written beside it",
                "Try [" + Math.round(down * wanted) + " px, " + size.get(1).valueText() + "], or another ratio.");
    }

    private void checkKeepOut(Node delivery, String path, String one, String other) {
        var first = quantity(delivery, "keep_out", one);
        var second = quantity(delivery, "keep_out", other);
        if (first.isEmpty()
                || second.isEmpty()
                || first.get().si() + second.get().si() < 1) return;
        issues.add(
                Tree.find(delivery, "keep_out", other).orElseThrow(),
                path + ".keep_out." + other,
                "P-DELIVER-02",
                second.get().valueText() + " beside " + first.get().valueText() + " at the " + one,
                "less than 100 % with it",
                "Leave some of the picture free.");
    }

    private static Optional<Quantity> quantity(Node node, String... path) {
        return Tree.find(node, path).flatMap(Written::quantityOf);
    }
}
