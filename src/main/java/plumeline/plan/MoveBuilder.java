package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.quantity.Quantity;
import plumeline.quantity.Unit;
import plumeline.text.Node;

/// Makes the records of moves from a checked tree.
final class MoveBuilder {
    private MoveBuilder() {}

    static Function<Node.Entry, Move> with(Kit kit) {
        return entry -> move(kit, entry);
    }

    private static Move move(Kit kit, Node.Entry entry) {
        var w = KitBuilder.written(entry);
        var machine = w.has("machine")
                ? Optional.of(ShotBuilder.pick(kit.machines(), Kit.Machine::name, w, "machine"))
                : Optional.<Kit.Machine>empty();
        return new Move(
                entry.key(),
                machine,
                w.findNode("by").map(by -> travel(entry.key(), by, machine)),
                w.findQuantity("in"),
                w.findQuantity("start"),
                w.findWord("profile").map(MoveBuilder::profile),
                w.listNames("keeps"),
                w);
    }

    private static Move.Profile profile(String word) {
        return switch (word) {
            case "even" -> Move.Profile.EVEN;
            case "trapezoid" -> Move.Profile.TRAPEZOID;
            case "s-curve" -> Move.Profile.S_CURVE;
            default -> Move.Profile.SMOOTH;
        };
    }

    private static Move.Travel travel(String name, Node by, Optional<Kit.Machine> machine) {
        var repeats = machine.flatMap(m -> m.written().findQuantity("repeats"));
        if (by instanceof Node.Scalar) {
            return new Move.Travel.Round(mark(name + ".by", Mark.Kind.MOTOR_TURN, repeats, by));
        }
        var items = Written.itemsOf(by);
        var moving = new ArrayList<Integer>();
        boolean free = false;
        for (int i = 0; i < items.size(); i++) {
            var setting = Setting.of(items.get(i));
            free |= !(setting instanceof Setting.Value);
            if (!(setting instanceof Setting.Value v && v.quantity().si() == 0)) moving.add(i);
        }
        if (moving.size() < 2) {
            int one = moving.isEmpty() ? 0 : moving.getFirst();
            var direction = List.of(one == 0 ? 1.0 : 0.0, one == 1 ? 1.0 : 0.0, one == 2 ? 1.0 : 0.0);
            var mark = mark(name + ".by", Mark.Kind.MOTOR, repeats, items.get(one));
            return new Move.Travel.Along(mark, direction);
        }
        return free ? components(name, items, repeats) : slanted(name, by, items, repeats);
    }

    private static Move.Travel components(String name, List<Node> items, Optional<Quantity> repeats) {
        var marks = new ArrayList<Mark>();
        for (int i = 0; i < items.size(); i++) {
            marks.add(mark(name + ".by_" + "xyz".charAt(i), Mark.Kind.MOTOR, repeats, items.get(i)));
        }
        return new Move.Travel.Components(marks);
    }

    /// A slanted way: one mark, the length along it, in the first component's unit. Its ± is the components' together.
    private static Move.Travel slanted(String name, Node by, List<Node> items, Optional<Quantity> repeats) {
        var parts = items.stream()
                .map(n -> Written.quantityOf(n).orElseThrow())
                .toList();
        double square = 0;
        double spread = 0;
        for (var part : parts) {
            square += part.si() * part.si();
            spread += part.halfWidthSi() * part.halfWidthSi();
        }
        double length = Math.sqrt(square);
        Unit unit = parts.getFirst().unit();
        var usual = usual(Mark.Kind.MOTOR, repeats);
        var error = spread > 0 ? new Mark.Error(Math.sqrt(spread), 0) : usual;
        var value = Quantity.of(length, unit).withOrigin(parts.getFirst().origin());
        var direction = new ArrayList<Double>();
        for (int i = 0; i < 3; i++) direction.add(i < parts.size() ? parts.get(i).si() / length : 0.0);
        return new Move.Travel.Along(
                new Mark.Fixed(name + ".by", Mark.Kind.MOTOR, value, error, by.place()), direction);
    }

    private static Mark mark(String path, Mark.Kind kind, Optional<Quantity> repeats, Node node) {
        return Setting.mark(path, kind, usual(kind, repeats), Setting.of(node), node.place());
    }

    private static Mark.Error usual(Mark.Kind kind, Optional<Quantity> repeats) {
        return repeats.map(r -> new Mark.Error(r.si(), 0)).orElseGet(kind::usualError);
    }
}
