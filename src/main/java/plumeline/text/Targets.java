package plumeline.text;

import java.util.ArrayList;
import java.util.List;

/// Where a dotted path leads in a shape.
sealed interface Targets {
    /// It leads to a value of this key's shape.
    record Found(Shape.Key key) implements Targets {}

    /// It leads nowhere: behind `before` one of `known` must follow.
    record Lost(String before, List<String> known) implements Targets {}

    /// Follows a path; names of the crew's own things match any name.
    static Targets resolve(Shape target, String path) {
        return follow(target, path, 0);
    }

    private static Targets follow(Shape shape, String path, int from) {
        int dot = path.indexOf('.', from);
        String step = dot < 0 ? path.substring(from) : path.substring(from, dot);
        Lost lost = new Lost(path.substring(0, from), steps(shape));
        return switch (shape) {
            case Shape.Keys keys -> {
                for (Shape.Key key : keys.keys()) {
                    if (key.name().equals(step)) {
                        yield dot < 0 ? new Found(key) : follow(key.shape(), path, dot + 1);
                    }
                }
                yield lost;
            }
            case Shape.Named named -> {
                if (!Check.isName(step)) {
                    yield lost;
                }
                yield dot < 0
                        ? new Found(Shape.Key.optional(step, named.what(), named.value()))
                        : follow(named.value(), path, dot + 1);
            }
            case Shape.AnyOf any -> {
                Targets nearest = lost;
                for (Shape inner : any.shapes()) {
                    Targets found = follow(inner, path, from);
                    if (found instanceof Found) {
                        yield found;
                    }
                    if (found instanceof Lost further && further.before.length() > from) {
                        nearest = further;
                    }
                }
                yield nearest;
            }
            case Shape.Tuple tuple -> {
                for (Shape.Part part : tuple.parts()) {
                    if (part.name().equals(step) && dot < 0) {
                        yield new Found(Shape.Key.optional(step, step, part.shape()));
                    }
                }
                yield lost;
            }
            case Shape.Amount amount -> lost;
            case Shape.Whole whole -> lost;
            case Shape.Choice choice -> lost;
            case Shape.YesNo yesNo -> lost;
            case Shape.RatioText ratio -> lost;
            case Shape.Reference reference -> lost;
            case Shape.Free free -> lost;
            case Shape.Written written -> lost;
            case Shape.Items items -> lost;
            case Shape.Curve curve -> lost;
            case Shape.Overrides overrides -> lost;
            case Shape.OneWord oneWord -> lost;
        };
    }

    private static List<String> steps(Shape shape) {
        List<String> steps = new ArrayList<>();
        if (shape instanceof Shape.Keys keys) {
            for (Shape.Key key : keys.keys()) {
                steps.add(key.name());
            }
        } else if (shape instanceof Shape.Tuple tuple) {
            for (Shape.Part part : tuple.parts()) {
                steps.add(part.name());
            }
        } else if (shape instanceof Shape.AnyOf any) {
            for (Shape inner : any.shapes()) {
                steps.addAll(steps(inner));
            }
        }
        return steps;
    }
}
