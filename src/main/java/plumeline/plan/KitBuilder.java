package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.BiFunction;
import plumeline.quantity.Quantity;
import plumeline.text.Node;

/// Makes the records of kit and things from a checked tree.
final class KitBuilder {
    private KitBuilder() {}

    /// @param files what photometric files hold, by the lamp that names them
    static Kit kit(Node root, Map<String, String> files) {
        return new Kit(
                all(root, "cameras", KitBuilder::body),
                all(root, "lenses", KitBuilder::lens),
                all(
                        root,
                        "lights",
                        (name, w) -> new Kit.Light(name, emitter(w), w, Optional.ofNullable(files.get(name)))),
                all(root, "machines", (name, w) -> new Kit.Machine(name, way(w.node()), w)),
                all(root, "tanks", KitBuilder::tank),
                all(root, "inks", Kit.Ink::new),
                all(root, "pieces", Kit.Piece::new),
                Tree.find(root, "kit", "table").flatMap(KitBuilder::table));
    }

    private static <T> List<T> all(Node root, String section, BiFunction<String, Written, T> maker) {
        var out = new ArrayList<T>();
        for (var entry : Tree.entries(root, "kit", section)) out.add(maker.apply(entry.key(), written(entry)));
        return out;
    }

    static Written written(Node.Entry entry) {
        return new Written((Node.Mapping) entry.value(), entry.keyPlace());
    }

    private static Optional<Kit.Table> table(Node node) {
        return node instanceof Node.Mapping m
                ? Optional.of(new Kit.Table(new Written(m, m.place())))
                : Optional.empty();
    }

    private static Kit.CameraBody body(String name, Written w) {
        var modes = new ArrayList<Kit.Mode>();
        for (Node item : Tree.items(w.node(), "modes")) {
            var mode = new Written((Node.Mapping) item, item.place());
            modes.add(new Kit.Mode(
                    get(mode, "rate"),
                    whole(mode, "across"),
                    mode.findQuantity("width"),
                    mode.findQuantity("readout"),
                    mode.findQuantity("bit_rate")));
        }
        int across = (int) get(w, "sensor.across").si();
        return new Kit.CameraBody(name, get(w, "sensor.width"), get(w, "sensor.height"), across, modes, w);
    }

    private static Kit.Lens lens(String name, Written w) {
        var stops = w.listQuantities("f_numbers");
        var range = stops.isEmpty()
                ? Optional.<Kit.FNumbers>empty()
                : Optional.of(
                        new Kit.FNumbers(stops.getFirst().si(), stops.getLast().si()));
        var barrel = w.has("barrel")
                ? Optional.of(new Kit.Barrel(get(w, "barrel.diameter"), get(w, "barrel.length")))
                : Optional.<Kit.Barrel>empty();
        return new Kit.Lens(
                name, get(w, "focal_length"), w.findQuantity("nearest"), range, w.findNumber("pupil_ratio"), barrel, w);
    }

    private static Kit.Emitter emitter(Written w) {
        var panel = w.listQuantities("panel");
        if (!panel.isEmpty()) return new Kit.Emitter.Panel(panel.get(0), panel.get(1));
        var tube = w.listQuantities("tube");
        if (!tube.isEmpty()) return new Kit.Emitter.Tube(tube.get(0), tube.get(1));
        var card = w.listQuantities("card");
        if (!card.isEmpty()) return new Kit.Emitter.Card(card.get(0), card.get(1));
        var flag = w.listQuantities("flag");
        if (!flag.isEmpty()) return new Kit.Emitter.Flag(flag.get(0), flag.get(1));
        return w.findQuantity("disc").<Kit.Emitter>map(Kit.Emitter.Disc::new).orElseGet(Kit.Emitter.Point::new);
    }

    /// Tells by its first quantity that tells whether a machine goes along or round.
    static Kit.Way way(Node machine) {
        for (var entry : Tree.entries(machine)) {
            var kind = Written.quantityOf(entry.value()).map(Quantity::kind);
            if (kind.isEmpty()) continue;
            switch (kind.get()) {
                case LENGTH, SPEED, ACCELERATION, JERK -> {
                    return Kit.Way.ALONG;
                }
                case ANGLE, TURN_RATE, TURN_ACCELERATION, TURN_JERK -> {
                    return Kit.Way.ROUND;
                }
                default -> {}
            }
        }
        return Kit.Way.UNTOLD;
    }

    private static Kit.Tank tank(String name, Written w) {
        var inside = w.listQuantities("inside");
        return new Kit.Tank(name, new Kit.Inside(inside.get(0), inside.get(1), inside.get(2)), get(w, "pane"), w);
    }

    static Thing thing(Node root, String reference) {
        int dot = reference.indexOf('.');
        var name = dot < 0 ? reference : reference.substring(0, dot);
        var entry = Tree.entry(Tree.find(root, "things").orElseThrow(), name).orElseThrow();
        var own = (Node.Mapping) entry.value();
        var variant = dot < 0 ? Optional.<String>empty() : Optional.of(reference.substring(dot + 1));
        var over = variant.flatMap(v -> Tree.find(own, "variants", v)).map(n -> (Node.Mapping) n);
        var w = new Written(Overlay.variant(own, over), entry.keyPlace());
        var variants =
                Tree.entries(own, "variants").stream().map(Node.Entry::key).toList();
        return new Thing(name, variant, variants, form(w), body(w), label(w), w);
    }

    private static Optional<Thing.Body> body(Written w) {
        return w.findWord("body").map(b -> b.equals("clear") ? Thing.Body.CLEAR : Thing.Body.OPAQUE);
    }

    private static Thing.Form form(Written w) {
        if (w.has("diameter")) return new Thing.Form.Cylinder(get(w, "diameter"), get(w, "height"));
        if (w.has("width")) return new Thing.Form.Box(get(w, "width"), get(w, "depth"), get(w, "height"));
        var stations = new ArrayList<Thing.Station>();
        for (Node item : Tree.items(w.node(), "profile")) {
            var pair = Written.itemsOf(item).stream()
                    .flatMap(n -> Written.quantityOf(n).stream())
                    .toList();
            stations.add(new Thing.Station(pair.get(0), pair.get(1)));
        }
        return new Thing.Form.Profile(stations);
    }

    private static Optional<Thing.Label> label(Written w) {
        return w.has("label")
                ? Optional.of(
                        new Thing.Label(get(w, "label.width"), get(w, "label.height"), w.findQuantity("label.bottom")))
                : Optional.empty();
    }

    static Quantity get(Written w, String path) {
        return w.findQuantity(path).orElseThrow();
    }

    static OptionalLong whole(Written w, String path) {
        return w.findQuantity(path).stream().mapToLong(q -> Math.round(q.si())).findFirst();
    }
}
