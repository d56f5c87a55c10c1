package plumeline.sheet;

import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.plan.Pass;
import plumeline.quantity.Quantities;
import plumeline.quantity.Reading;
import plumeline.text.Node;

/// What each pass of a shot changes, in words: `key off; wash level 100 %`.
final class PassRows {
    private static final Set<String> GROUPS = Set.of("place", "lights", "moves");

    private final Told told;

    private PassRows(Told told) {
        this.told = told;
    }

    static List<Rows.Pair> of(Subject subject) {
        PassRows rows = new PassRows(new Told(subject.print()));
        return subject.passes().stream()
                .map(pass -> new Rows.Pair(pass.name(), rows.words(pass)))
                .toList();
    }

    private String words(Pass pass) {
        return pass.overrides().isEmpty()
                ? "As the shot itself."
                : pass.overrides().entrySet().stream().map(this::changed).collect(Collectors.joining("; ")) + ".";
    }

    private String changed(Map.Entry<String, Node> one) {
        List<String> path = List.of(one.getKey().split("\\.", -1));
        List<String> own = GROUPS.contains(path.getFirst()) && path.size() > 1 ? path.subList(1, path.size()) : path;
        String value = written(one.getValue());
        String owner = String.join(" ", own.subList(0, own.size() - 1));
        return switch (own.getLast()) {
            case "level" -> owner + (value.equals("0 %") ? " off" : " level " + value);
            case "thing" -> owner + " is " + value;
            case "f_number" -> owner + " f/" + value;
            default -> String.join(" ", own).replace('_', ' ') + " " + value;
        };
    }

    private String written(Node node) {
        return switch (node) {
            case Node.Scalar scalar ->
                Quantities.read(scalar.text()) instanceof Reading.Read read
                        ? told.quantity(read.quantity())
                        : scalar.text();
            case Node.Sequence sequence ->
                sequence.items().stream().map(this::written).collect(Collectors.joining(", ", "[", "]"));
            case Node.Mapping mapping ->
                mapping.entries().stream()
                        .map(entry -> entry.key() + " " + written(entry.value()))
                        .collect(Collectors.joining(", ", "{", "}"));
        };
    }
}
