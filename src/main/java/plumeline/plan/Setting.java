package plumeline.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;
import plumeline.text.Node;
import plumeline.text.Place;

/// What may be written where a hand sets something: a quantity, `free`, or `free between A and B`.
sealed interface Setting {
    /// A value.
    record Value(Quantity quantity) implements Setting {}

    /// `free`.
    record Free() implements Setting {}

    /// `free between A and B`.
    record Between(Quantity low, Quantity high) implements Setting {}

    /// Nothing of these.
    record Other() implements Setting {}

    static Setting of(Node node) {
        return node instanceof Node.Scalar s ? of(s.text()) : new Other();
    }

    static Setting of(String written) {
        var text = written.strip();
        if (text.equals("free")) return new Free();
        if (text.startsWith("free ")) {
            var rest = text.substring(5).strip();
            int and = rest.indexOf(" and ");
            if (!rest.startsWith("between ") || and < 8) return new Other();
            return Quantities.read(rest.substring(8, and)) instanceof Reading.Read low
                            && Quantities.read(rest.substring(and + 5)) instanceof Reading.Read high
                    ? new Between(low.quantity(), high.quantity())
                    : new Other();
        }
        return Quantities.read(text) instanceof Reading.Read read ? new Value(read.quantity()) : new Other();
    }

    /// Makes the mark of a setting.
    ///
    /// @param usual the placing error where the setting has no ± of its own
    static Mark mark(String path, Mark.Kind kind, Mark.PlacingError usual, Setting setting, Place place) {
        return switch (setting) {
            case Value v -> new Mark.Fixed(path, kind, v.quantity(), errorOf(v.quantity(), usual), place);
            case Free _ -> new Mark.Free(path, kind, usual, place);
            case Between b -> new Mark.Between(path, kind, b.low(), b.high(), usual, place);
            case Other _ -> throw new IllegalArgumentException("mark " + path + " has no setting");
        };
    }

    static Mark mark(String path, Mark.Kind kind, Node node) {
        return mark(path, kind, kind.usualError(), of(node), node.place());
    }

    static Mark.PlacingError errorOf(Quantity quantity, Mark.PlacingError usual) {
        return quantity.hasSpread() ? new Mark.PlacingError(quantity.halfWidthSi(), 0) : usual;
    }

    /// Reads `at` as two or three marks `NAME.x`, `NAME.y`, `NAME.z`.
    ///
    /// @param across the kind of x and y
    /// @param up the kind of z
    /// @param freed how many coordinates a bare `free` frees
    static Mark.Spot spot(String name, Node node, Mark.Kind across, Mark.Kind up, int freed) {
        var marks = new ArrayList<Mark>();
        List<Node> items = node instanceof Node.Sequence s ? s.items() : List.of();
        int count = items.isEmpty() ? freed : items.size();
        for (int i = 0; i < count; i++) {
            var from = items.isEmpty() ? node : items.get(i);
            marks.add(mark(name + "." + "xyz".charAt(i), i == 2 ? up : across, from));
        }
        var z = marks.size() > 2 ? Optional.of(marks.get(2)) : Optional.<Mark>empty();
        return new Mark.Spot(marks.get(0), marks.get(1), z, node.place());
    }
}
