package plumeline.text;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plumeline.quantity.Kind;

/// What messages and documents call a shape, and an example of it.
final class Phrases {
    private Phrases() {}

    /// Joins words as prose does: `a, b or c`.
    static String join(List<String> words, String last) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < words.size(); i++) {
            text.append(i == 0 ? "" : i == words.size() - 1 ? " " + last + " " : ", ")
                    .append(words.get(i));
        }
        return text.toString();
    }

    /// Says what a value of this shape is, as it follows "must be".
    static String of(Shape shape) {
        return switch (shape) {
            case Shape.Amount amount -> amount(amount);
            case Shape.Whole whole -> whole(whole);
            case Shape.Choice choice -> join(choice.words(), "or");
            case Shape.YesNo() -> "yes or no";
            case Shape.RatioText() -> "a ratio in quotes";
            case Shape.Reference reference -> "the name of " + reference.what();
            case Shape.Free free -> "text of at most " + free.longest() + " characters";
            case Shape.Written written -> written.described();
            case Shape.Items items -> "a list, each item " + of(items.item());
            case Shape.Tuple tuple -> "a list of " + parts(tuple);
            case Shape.Curve curve -> "a list of pairs [where, value]";
            case Shape.Keys keys -> "a map of keys";
            case Shape.Named named -> "a map of names, each of " + named.what();
            case Shape.Overrides overrides -> "a map of dotted paths";
            case Shape.OneWord oneWord -> "a map with " + oneWord.what();
            case Shape.AnyOf any -> anyOf(any);
        };
    }

    private static String amount(Shape.Amount amount) {
        return amount.kind().allowed() + (amount.mark() == Shape.Mark.FREE ? ", or free" : "");
    }

    private static String whole(Shape.Whole whole) {
        if (whole.least() == whole.most()) {
            return Long.toString(whole.least());
        }
        if (whole.most() == Long.MAX_VALUE) {
            return "a whole number, " + whole.least() + " or more";
        }
        return "a whole number from " + whole.least() + " to " + whole.most();
    }

    static String parts(Shape.Tuple tuple) {
        List<String> names = new ArrayList<>();
        for (Shape.Part part : tuple.parts().subList(0, tuple.least())) {
            names.add(part.name());
        }
        String must = join(names, "and");
        for (Shape.Part part :
                tuple.parts().subList(tuple.least(), tuple.parts().size())) {
            must += ", and perhaps " + part.name();
        }
        return must;
    }

    private static String anyOf(Shape.AnyOf any) {
        List<String> all = new ArrayList<>();
        for (Shape shape : any.shapes()) {
            all.add(of(shape));
        }
        return String.join(", or ", all);
    }

    /// Gives a text of this shape, as one would write it.
    static String example(Shape shape) {
        return switch (shape) {
            case Shape.Amount amount -> example(amount.kind(), amount.range());
            case Shape.Whole whole -> Long.toString(Math.max(whole.least(), Math.min(whole.most(), 1)));
            case Shape.Choice choice -> choice.words().getFirst();
            case Shape.YesNo() -> "yes";
            case Shape.RatioText() -> "\"16:9\"";
            case Shape.Reference reference -> "name";
            case Shape.Free free -> "some words";
            case Shape.Written written -> written.example();
            case Shape.Items items -> listExample(example(items.item()), items.least());
            case Shape.Tuple tuple -> tupleExample(tuple);
            case Shape.Curve curve ->
                listExample("[" + example(curve.where()) + ", " + example(curve.value()) + "]", curve.least());
            case Shape.Keys keys -> keysExample(keys);
            case Shape.Named named -> "{name: " + example(named.value()) + "}";
            case Shape.Overrides overrides -> "{}";
            case Shape.OneWord oneWord -> {
                Shape.Key first = oneWord.words().getFirst().subject();
                yield "{" + first.name() + ": " + example(first.shape()) + "}";
            }
            case Shape.AnyOf any -> example(any.shapes().getFirst());
        };
    }

    private static String example(Kind kind, Range range) {
        return range.allows(plumeline.quantity.Quantities.get(kind.example()).si())
                ? kind.example()
                : plumeline.quantity.Quantity.of(
                                Double.isInfinite(range.highSi()) ? range.lowSi() : range.highSi(),
                                plumeline.quantity.Quantities.get(kind.example())
                                        .unit())
                        .valueText();
    }

    private static String listExample(String item, int least) {
        return "[" + String.join(", ", Collections.nCopies(Math.max(1, least), item)) + "]";
    }

    private static String tupleExample(Shape.Tuple tuple) {
        List<String> all = new ArrayList<>();
        for (Shape.Part part : tuple.parts().subList(0, tuple.least())) {
            all.add(example(part.shape()));
        }
        return "[" + String.join(", ", all) + "]";
    }

    /// Gives the keys that must be there, and of those that a rule wants the first.
    private static String keysExample(Shape.Keys keys) {
        List<String> wanted = new ArrayList<>();
        for (Shape.Rule rule : keys.rules()) {
            if (rule instanceof Shape.Rule.ExactlyOne(List<List<String>> groups)) {
                wanted.addAll(groups.getFirst());
            } else if (rule instanceof Shape.Rule.AtLeastOne(List<String> some)) {
                wanted.add(some.getFirst());
            }
        }
        for (Shape.Rule rule : keys.rules()) {
            if (rule instanceof Shape.Rule.Needs(String key, String other) && wanted.contains(key)) {
                wanted.add(other);
            }
        }
        List<String> all = new ArrayList<>();
        for (Shape.Key key : keys.keys()) {
            if (key.need() == Shape.Need.REQUIRED || wanted.contains(key.name())) {
                all.add(key.name() + ": " + Attempts.example(key.shape(), key.name()));
            }
        }
        return "{" + String.join(", ", all) + "}";
    }
}
