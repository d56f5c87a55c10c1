package plumeline.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// What the kit's lamps, cards and flags may say beyond the grammar.
final class LampMeaning {
    /// A key that only some of them take.
    private record Only(String key, Set<String> forms, String allowed) {}

    private static final List<String> FORMS = List.of("panel", "tube", "disc", "card", "flag");
    private static final Set<String> LAMPS = Set.of("panel", "tube", "disc", "point");
    private static final String ON_LAMPS = "on a lamp: a card and a flag have no light of their own";

    private static final List<Only> ONLY = List.of(
            new Only("gives", LAMPS, ON_LAMPS),
            new Only("file", LAMPS, ON_LAMPS),
            new Only("white", LAMPS, ON_LAMPS),
            new Only("primaries", LAMPS, ON_LAMPS),
            new Only("power", LAMPS, ON_LAMPS),
            new Only("power_factor", LAMPS, ON_LAMPS),
            new Only("loss", LAMPS, ON_LAMPS),
            new Only("pulse_rate", LAMPS, ON_LAMPS),
            new Only("depth", LAMPS, ON_LAMPS),
            new Only("dims", LAMPS, ON_LAMPS),
            new Only("beam", LAMPS, ON_LAMPS),
            new Only("reflects", Set.of("card"), "on a card"),
            new Only("window", Set.of("panel"), "on a panel"),
            new Only("field", Set.of("panel"), "on a panel with a window"),
            new Only("hot_centre", Set.of("panel", "disc"), "on a panel or a disc"),
            new Only("grid", Set.of("panel", "disc", "point"), "on a panel, a disc or a point"));

    /// What a shot says of a lamp that a card and a flag don't take.
    private static final List<String> SHINING = List.of("level", "loss", "hue", "white", "grid");

    private final Node.Entry entry;
    private final String path;
    private final Issues issues;

    private LampMeaning(Node.Entry entry, Issues issues) {
        this.entry = entry;
        this.path = "kit.lights." + entry.key();
        this.issues = issues;
    }

    static void check(Node.Entry entry, Issues issues) {
        LampMeaning lamp = new LampMeaning(entry, issues);
        lamp.checkForm();
        lamp.checkGives();
        lamp.checkWhite();
        lamp.checkWindow();
        lamp.checkDims();
    }

    /// Checks what a shot says of one that it places.
    static void checkPlaced(Node placed, String form, String path, Issues issues) {
        for (String key : SHINING) {
            boolean isGridOnTube = key.equals("grid") && form.equals("tube");
            if (Tree.has(placed, key) && (!LAMPS.contains(form) || isGridOnTube)) {
                Node value = Tree.find(placed, key).orElseThrow();
                addOnly(
                        issues,
                        value,
                        path + "." + key,
                        form,
                        isGridOnTube ? "on a panel, a disc or a point" : ON_LAMPS);
            }
        }
    }

    /// A point where nothing is written of its form.
    static String form(Node lamp) {
        return FORMS.stream().filter(form -> Tree.has(lamp, form)).findFirst().orElse("point");
    }

    private void checkForm() {
        String form = form(entry.value());
        for (Only only : ONLY) {
            Optional<Node> value = Tree.find(entry.value(), only.key());
            if (value.isPresent() && !only.forms().contains(form)) {
                addOnly(issues, value.get(), path + "." + only.key(), form, only.allowed());
            }
        }
    }

    private static void addOnly(Issues issues, Node value, String field, String form, String allowed) {
        String given = Written.quantityOf(value).map(Quantity::valueText).orElse("what is written");
        issues.add(value, field, "P-LIGHT-03", given + " on a " + form, allowed, "Leave it out here.");
    }

    private void checkGives() {
        Optional<Quantity> gives = quantity("gives");
        if (gives.isPresent()
                && gives.get().kind() == Kind.ILLUMINANCE
                && gives.get().findAt().isEmpty()) {
            issues.add(
                    Tree.find(entry.value(), "gives").orElseThrow(),
                    path + ".gives",
                    "P-LIGHT-01",
                    gives.get().toText() + " without a distance",
                    "an illuminance at a distance",
                    "Try " + gives.get().valueText() + " at 1 m.");
        }
    }

    private void checkWhite() {
        List<Node> white = Tree.items(entry.value(), "white");
        if (white.size() == 2) {
            checkOrder(white.get(0), white.get(1), path + ".white[2]");
        }
    }

    private void checkOrder(Node one, Node other, String field) {
        Optional<Quantity> low = Written.quantityOf(one);
        Optional<Quantity> high = Written.quantityOf(other);
        if (low.isPresent() && high.isPresent() && high.get().si() < low.get().si()) {
            issues.add(
                    other,
                    field,
                    "P-LIGHT-02",
                    high.get().valueText(),
                    low.get().valueText() + " or more: the lower comes first",
                    "Try [" + high.get().valueText() + ", " + low.get().valueText() + "].");
        }
    }

    private void checkWindow() {
        List<Node> window = Tree.items(entry.value(), "window");
        List<Node> panel = Tree.items(entry.value(), "panel");
        for (int i = 0; i < Math.min(window.size(), panel.size()); i++) {
            Optional<Quantity> inner = Written.quantityOf(window.get(i));
            Optional<Quantity> outer = Written.quantityOf(panel.get(i));
            if (inner.isPresent()
                    && outer.isPresent()
                    && inner.get().si() > outer.get().si()) {
                issues.add(
                        window.get(i),
                        path + ".window[" + (i + 1) + "]",
                        "P-LIGHT-04",
                        inner.get().valueText(),
                        "at most " + outer.get().valueText() + ", the panel's",
                        "Write the panel with all that is round its window.");
            }
        }
        Optional<Node> field = Tree.find(entry.value(), "field");
        if (field.isPresent() && window.isEmpty() && !panel.isEmpty()) {
            issues.add(
                    field.get(),
                    path + ".field",
                    "P-LIGHT-04",
                    "a field without a window",
                    "a field round a window",
                    "Write its window: [width, height] too.");
        }
    }

    private void checkDims() {
        List<Node> dims = Tree.items(entry.value(), "dims");
        for (int i = 1; i < dims.size(); i++) {
            List<Node> below = Written.itemsOf(dims.get(i - 1));
            List<Node> above = Written.itemsOf(dims.get(i));
            if (below.size() == 2 && above.size() == 2) {
                checkOrder(below.getLast(), above.getLast(), path + ".dims[" + (i + 1) + "]");
            }
        }
    }

    private Optional<Quantity> quantity(String key) {
        return Tree.find(entry.value(), key).flatMap(Written::quantityOf);
    }
}
