package plumeline.text;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;

/// Finds which of several shapes a node is meant to have, so that its problems are told of that one only.
final class Alternatives {
    private final Checker checker;

    Alternatives(Checker checker) {
        this.checker = checker;
    }

    void check(Shape.AnyOf any, Checker.At at) {
        List<Shape> shapes = new ArrayList<>();
        flatten(any, shapes);
        if (at.node() instanceof Node.Scalar scalar && meansAmount(scalar, shapes, at)) {
            return;
        }
        List<Shape> fitting = new ArrayList<>();
        for (Shape shape : shapes) {
            if (fits(shape, at.node())) {
                fitting.add(shape);
            }
        }
        if (fitting.isEmpty()) {
            checker.addForm(any, at);
            return;
        }
        List<Problem> fewest = List.of();
        for (int i = 0; i < fitting.size(); i++) {
            Checker trial = checker.another();
            trial.check(fitting.get(i), at);
            if (trial.unsorted().isEmpty()) {
                return;
            }
            if (i == 0 || trial.unsorted().size() < fewest.size()) {
                fewest = trial.unsorted();
            }
        }
        if (fitting.size() > 1 && at.node() instanceof Node.Scalar) {
            addNoneFits(any, fitting, at);
        } else {
            checker.addAll(fewest);
        }
    }

    /// Says that a single value is none of several, with the nearest word where there is one.
    private void addNoneFits(Shape.AnyOf any, List<Shape> fitting, Checker.At at) {
        String text = at.node() instanceof Node.Scalar scalar ? scalar.text() : "";
        List<String> words = new ArrayList<>();
        for (Shape shape : fitting) {
            if (shape instanceof Shape.Choice choice) {
                words.addAll(choice.words());
            }
        }
        String attempt = Nearest.find(text, words).orElse(checker.attempt(any, at));
        checker.add(at, "P-FORM-01", Checker.shown(text), Phrases.of(any), "Try " + attempt + ".");
    }

    private static void flatten(Shape.AnyOf any, List<Shape> into) {
        for (Shape shape : any.shapes()) {
            if (shape instanceof Shape.AnyOf inner) {
                flatten(inner, into);
            } else {
                into.add(shape);
            }
        }
    }

    /// Takes a text that begins with a number for a quantity where one of the shapes is a quantity: the unit decides
    /// which. A whole number is left to [Shape.Whole] where that is allowed, and a word to the others.
    private boolean meansAmount(Node.Scalar scalar, List<Shape> shapes, Checker.At at) {
        List<Kind> kinds = new ArrayList<>();
        List<Shape> amounts = new ArrayList<>();
        for (Shape shape : shapes) {
            if (shape instanceof Shape.Amount amount) {
                kinds.add(amount.kind());
                amounts.add(amount);
            } else if (shape instanceof Shape.Whole
                            && Checker.findWhole(scalar.text()).isPresent()
                    || shape instanceof Shape.Choice choice && choice.allows(scalar.text())) {
                return false;
            }
        }
        String text = scalar.text();
        boolean number = Quantities.read(text) instanceof Reading.Read;
        if (kinds.isEmpty() || !number && !beginsLikeNumber(text, shapes)) {
            return false;
        }
        switch (Quantities.read(text, kinds)) {
            case Reading.Read(Quantity quantity) -> {
                for (Shape shape : shapes) {
                    if (shape instanceof Shape.Amount amount && amount.kind() == quantity.kind()) {
                        checker.check(amount, at);
                        return true;
                    }
                }
            }
            case Reading.Refused refused ->
                checker.addUnit(refused.given(), refused.allowed(), refused.attempt(), new Shape.AnyOf(amounts), at);
        }
        return true;
    }

    /// Tells whether a text that is no quantity was meant as one: it begins with a digit and is no name where names may
    /// stand.
    private static boolean beginsLikeNumber(String text, List<Shape> shapes) {
        String stripped = text.strip();
        int at = stripped.startsWith("-") || stripped.startsWith(".") || stripped.startsWith("\u2212") ? 1 : 0;
        if (at >= stripped.length() || stripped.charAt(at) < '0' || stripped.charAt(at) > '9') {
            return false;
        }
        for (Shape shape : shapes) {
            if (shape instanceof Shape.Reference && Check.isName(stripped)
                    || shape instanceof Shape.Free
                    || shape instanceof Shape.RatioText
                    || shape instanceof Shape.Written) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(Shape shape, Node node) {
        return switch (shape) {
            case Shape.Amount amount -> node instanceof Node.Scalar;
            case Shape.Whole whole -> node instanceof Node.Scalar;
            case Shape.Choice choice -> node instanceof Node.Scalar;
            case Shape.YesNo yesNo -> node instanceof Node.Scalar;
            case Shape.RatioText ratio -> node instanceof Node.Scalar;
            case Shape.Reference reference -> node instanceof Node.Scalar;
            case Shape.Free free -> node instanceof Node.Scalar;
            case Shape.Written written -> node instanceof Node.Scalar;
            case Shape.Items items -> node instanceof Node.Sequence;
            case Shape.Tuple tuple -> node instanceof Node.Sequence;
            case Shape.Curve curve -> node instanceof Node.Sequence;
            case Shape.Keys keys -> node instanceof Node.Mapping;
            case Shape.Named named -> node instanceof Node.Mapping;
            case Shape.Overrides overrides -> node instanceof Node.Mapping;
            case Shape.OneWord oneWord -> node instanceof Node.Mapping;
            case Shape.AnyOf any -> true;
        };
    }
}
