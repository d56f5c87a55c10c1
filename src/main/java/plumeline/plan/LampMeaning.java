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

    /// No emitter has less y of CIE 1931.
    private static final double LEAST_Y = 1e-5;

    private static final double LEAST_LUMENS = 0.01;
    private static final double MOST_LUMENS = 1e7;

    /// Says in the place of a hue that it is the opposite of the thing's.
    static final String COMPLEMENT = "complement";

    private static final List<String> FORMS = List.of("panel", "tube", "disc", "card", "flag");
    private static final Set<String> LAMPS = Set.of("panel", "tube", "disc", "point");
    private static final String ON_LAMPS = "on a lamp: a card and a flag have no light of their own";

    private static final List<Only> ONLY = List.of(
            new Only("gives", LAMPS, ON_LAMPS),
            new Only("file", LAMPS, ON_LAMPS),
            new Only("white", LAMPS, ON_LAMPS),
            new Only("primaries", LAMPS, ON_LAMPS),
            new Only("gives_with", LAMPS, ON_LAMPS),
            new Only("changes_in", LAMPS, ON_LAMPS),
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
        lamp.checkPrimaries();
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

    private void checkPrimaries() {
        int index = 0;
        for (Node item : Tree.items(entry.value(), "primaries")) {
            int at = ++index;
            Optional<Quantity> x = Tree.find(item, "x").flatMap(Written::quantityOf);
            Optional<Quantity> y = Tree.find(item, "y").flatMap(Written::quantityOf);
            boolean isNone = x.isPresent()
                    && y.isPresent()
                    && (x.get().si() + y.get().si() > 1 || y.get().si() < LEAST_Y);
            if (isNone) {
                issues.add(
                        item,
                        path + ".primaries[" + at + "]",
                        "P-LIGHT-05",
                        "x " + x.get().valueText() + " and y " + y.get().valueText(),
                        "x and y of the CIE 1931 diagram, whose sum is 1 at most, y at least 0.00001",
                        "Take both from the same line of a data sheet, or off a colour meter set to x, y.");
            }
            Tree.find(item, "lumens")
                    .filter(lumens -> Written.quantityOf(lumens)
                            .filter(given -> given.si() < LEAST_LUMENS || given.si() > MOST_LUMENS)
                            .isPresent())
                    .ifPresent(lumens -> issues.add(
                            lumens,
                            path + ".primaries[" + at + "].lumens",
                            "P-LIGHT-05",
                            Written.quantityOf(lumens).orElseThrow().valueText(),
                            "0.01 lm to 10000000 lm",
                            "Take it from the lamp's data sheet; only its share of all emitters' counts."));
        }
    }

    /// Checks a hue that is opposite to a thing's.
    static void checkComplement(Node shot, Node.Entry light, String path, Names names, Issues issues) {
        Optional<Node> hue = Tree.find(light.value(), "hue").filter(LampMeaning::isComplement);
        if (hue.isEmpty()) {
            return;
        }
        Optional<String> thing = findComplemented(shot, light.value());
        if (thing.filter(names.hues()::containsKey).isEmpty()) {
            issues.add(
                    hue.get(),
                    path + ".hue",
                    "P-LIGHT-06",
                    thing.map(one -> "the complement of " + Issues.shown(one) + ", which has no hue")
                            .orElse("a complement of nothing: neither the light nor the camera is aimed at a thing"),
                    "the complement of a thing with a hue, to which the light or the camera is aimed",
                    thing.isPresent() ? "Write the thing's hue: 265 deg." : "Try aim: THING beside it.");
        }
    }

    static boolean isComplement(Node hue) {
        return hue instanceof Node.Scalar scalar && scalar.text().equals(COMPLEMENT);
    }

    /// Finds of which thing a light's hue is the complement: what it is aimed at, else what the camera is, else the
    /// only one that is placed.
    ///
    /// @return how the shot refers to it, such as `flacon.rose`
    static Optional<String> findComplemented(Node shot, Node light) {
        List<Node.Entry> placed = Tree.entries(shot, "place");
        Optional<String> aim = Tree.scalar(light, "aim")
                .or(() -> Tree.find(shot, "camera").flatMap(camera -> Tree.scalar(camera, "aim")))
                .map(Node.Scalar::text);
        return placed.stream()
                .filter(entry ->
                        placed.size() == 1 || aim.filter(entry.key()::equals).isPresent())
                .findFirst()
                .flatMap(entry -> Tree.scalar(entry.value(), "thing"))
                .map(Node.Scalar::text);
    }

    private Optional<Quantity> quantity(String key) {
        return Tree.find(entry.value(), key).flatMap(Written::quantityOf);
    }
}
