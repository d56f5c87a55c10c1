package plumeline.text;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.snakeyaml.engine.v2.api.LoadSettings;
import org.snakeyaml.engine.v2.events.AliasEvent;
import org.snakeyaml.engine.v2.events.CollectionStartEvent;
import org.snakeyaml.engine.v2.events.Event;
import org.snakeyaml.engine.v2.events.MappingStartEvent;
import org.snakeyaml.engine.v2.events.NodeEvent;
import org.snakeyaml.engine.v2.events.ScalarEvent;
import org.snakeyaml.engine.v2.events.SequenceStartEvent;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.exceptions.MarkedYamlEngineException;
import org.snakeyaml.engine.v2.exceptions.YamlEngineException;
import org.snakeyaml.engine.v2.parser.ParserImpl;
import org.snakeyaml.engine.v2.scanner.StreamReader;

/// Builds a tree from the parser's events; made for one use. Nothing is ever expanded, so a text's tree is never larger
/// than the text.
final class DocumentReader {
    private static final int MOST_LEVELS = 40;
    private static final int MOST_NODES = 50_000;
    private static final int MOST_PROBLEMS = 1000;
    private static final int LONGEST_SHOWN = 40;

    private final byte[] bytes;
    private final String file;
    private final Document.Mode mode;
    private final List<Problem> problems = new ArrayList<>();
    private Source source;
    /// The keys that lead to the node being read, each as it stands in a path; joined only where a problem needs it.
    private final List<String> trail = new ArrayList<>();

    private int nodes;
    private boolean stopped;

    DocumentReader(byte[] bytes, String file, Document.Mode mode) {
        this.bytes = bytes;
        this.file = file;
        this.mode = mode;
        this.source = new Source(file, "");
    }

    Document read() {
        if (bytes.length > Source.MOST_BYTES) {
            problems.add(new Problem(
                    Place.ofFile(file),
                    "",
                    "P-TEXT-01",
                    bytes.length + " bytes long",
                    "at most " + Source.MOST_BYTES + " bytes (1 MiB)",
                    "Leave out what does not belong in it."));
            return result(List.of());
        }
        source = Source.decode(bytes, file, problems);
        if (!problems.isEmpty() || !source.checkCharacters(problems)) {
            return result(List.of());
        }
        return result(parse());
    }

    private Document result(List<Node> root) {
        problems.sort((a, b) -> Integer.compare(a.place().start(), b.place().start()));
        return new Document(file, source.text, root, problems);
    }

    static LoadSettings settings() {
        return LoadSettings.builder()
                .setUseMarks(true)
                .setParseComments(false)
                .setCodePointLimit(Source.MOST_BYTES + 1)
                .build();
    }

    private List<Node> parse() {
        try {
            LoadSettings settings = settings();
            ParserImpl parser = new ParserImpl(settings, new StreamReader(settings, source.forParser()));
            List<Node> root = new ArrayList<>();
            while (parser.hasNext() && !stopped) {
                Event event = parser.next();
                if (event.getEventId() == Event.ID.DocumentStart) {
                    readDocument(parser, event, root);
                }
            }
            if (root.isEmpty() && !stopped) {
                add(Place.ofFile(file), "", "P-TEXT-15", "empty", "`key: value` lines", "Begin with an example.");
            }
            return stopped ? List.of() : root;
        } catch (MarkedYamlEngineException unreadable) {
            refuseSyntax(unreadable.getProblem(), unreadable.getProblemMark());
        } catch (YamlEngineException | IndexOutOfBoundsException | IllegalArgumentException unreadable) {
            // The parser's own limits, and code points beyond Unicode in escapes, come without a place.
            refuseSyntax(unreadable.getMessage() == null ? "" : unreadable.getMessage(), Optional.empty());
        }
        return List.of();
    }

    private void readDocument(ParserImpl parser, Event start, List<Node> root) {
        if (!root.isEmpty()) {
            add(
                    place(start),
                    "",
                    "P-TEXT-12",
                    "more than one document: a second one begins here",
                    "one document",
                    "Put the second into a file of its own.");
            stopped = true;
            return;
        }
        Event event = parser.next();
        if (isEmptyScalar(event)) {
            add(Place.ofFile(file), "", "P-TEXT-15", "empty", "`key: value` lines", "Begin with an example.");
            stopped = true;
            return;
        }
        root.add(readNode(parser, event, place(event), 1));
    }

    private static boolean isEmptyScalar(Event event) {
        return event instanceof ScalarEvent scalar
                && scalar.isPlain()
                && scalar.getValue().isEmpty();
    }

    /// Reads the node that begins with this event. The key's place stands in where the node has no characters.
    private Node readNode(ParserImpl parser, Event event, Place keyPlace, int level) {
        nodes++;
        if (level > MOST_LEVELS) {
            return stop(
                    place(event),
                    path(),
                    "P-TEXT-13",
                    "nested more than " + MOST_LEVELS + " deep",
                    "at most " + MOST_LEVELS + " levels deep",
                    "Check the brackets and the indentation before this place.");
        }
        if (nodes > MOST_NODES) {
            return stop(
                    place(event),
                    "",
                    "P-TEXT-14",
                    "made of more than " + MOST_NODES + " values",
                    "at most " + MOST_NODES + " values",
                    "Leave out what does not belong in it.");
        }
        checkProperties(event);
        return switch (event) {
            case ScalarEvent scalar -> readScalar(scalar, keyPlace);
            case SequenceStartEvent start -> readSequence(parser, start, level);
            case MappingStartEvent start -> readMapping(parser, start, level);
            case AliasEvent alias -> {
                String name = shorten(alias.getAlias().toString());
                add(
                        place(event),
                        path(),
                        "P-TEXT-06",
                        "an alias (*" + name + ")",
                        "written out",
                        "Write the value itself here: a plan has no aliases.");
                yield new Node.Scalar("*" + name, true, place(event));
            }
            default ->
                stop(place(event), path(), "P-TEXT-05", "not readable", "`key: value` lines", "Check this line.");
        };
    }

    private Node stop(Place place, String path, String code, String given, String allowed, String attempt) {
        // Told whatever was told before: it is why there is no tree.
        problems.add(new Problem(place, path, code, given, allowed, attempt));
        stopped = true;
        return new Node.Scalar("", true, place);
    }

    private void checkProperties(Event event) {
        if (event instanceof AliasEvent || !(event instanceof NodeEvent node)) {
            return;
        }
        node.getAnchor()
                .ifPresent(anchor -> add(
                        place(event),
                        path(),
                        "P-TEXT-06",
                        "marked with an anchor (&" + shorten(anchor.getValue()) + ")",
                        "written without one",
                        "Leave out &" + shorten(anchor.getValue()) + "."));
        Optional<String> tag = switch (node) {
            case ScalarEvent scalar -> scalar.getTag();
            case CollectionStartEvent collection -> collection.getTag();
            default -> Optional.empty();
        };
        tag.ifPresent(name -> add(
                place(event),
                path(),
                "P-TEXT-07",
                "marked with a tag (" + shorten(name) + ")",
                "written without one",
                "Leave out the tag: the key decides what its value is."));
    }

    private Node readScalar(ScalarEvent event, Place keyPlace) {
        String text = event.getValue();
        boolean quoted = !event.isPlain();
        Place place = text.isEmpty() && !quoted ? keyPlace : place(event);
        if (!quoted && mode == Document.Mode.REFUSE_TRUE_AND_NULL) {
            checkWord(text, place);
        }
        return new Node.Scalar(text, quoted, place);
    }

    private void checkWord(String text, Place place) {
        switch (text) {
            case "" ->
                add(
                        place,
                        path(),
                        "P-TEXT-08",
                        "empty",
                        "a value",
                        "Write a value (in quotes where it begins with #), or leave the key out.");
            case "~", "null", "Null", "NULL" ->
                add(place, path(), "P-TEXT-08", text, "a value", "Leave the key out where there is nothing to say.");
            case "true", "True", "TRUE" ->
                add(
                        place,
                        path(),
                        "P-TEXT-09",
                        text,
                        "yes or no where that is meant",
                        "Write yes, or put a text in quotes.");
            case "false", "False", "FALSE" ->
                add(
                        place,
                        path(),
                        "P-TEXT-09",
                        text,
                        "yes or no where that is meant",
                        "Write no, or put a text in quotes.");
            default -> {}
        }
    }

    private Node readSequence(ParserImpl parser, SequenceStartEvent start, int level) {
        List<Node> items = new ArrayList<>();
        Event event = parser.next();
        while (event.getEventId() != Event.ID.SequenceEnd) {
            trail.add("[" + (items.size() + 1) + "]");
            items.add(readNode(parser, event, place(event), level + 1));
            trail.removeLast();
            if (stopped) {
                break;
            }
            event = parser.next();
        }
        int last = items.isEmpty()
                ? offset(start.getEndMark())
                : items.getLast().place().end();
        return new Node.Sequence(items, span(start, event, last));
    }

    private Node readMapping(ParserImpl parser, MappingStartEvent start, int level) {
        List<Node.Entry> entries = new ArrayList<>();
        Map<String, Place> seen = new HashMap<>();
        Event event = parser.next();
        int last = offset(start.getEndMark());
        while (event.getEventId() != Event.ID.MappingEnd) {
            Node key = readKey(parser, event, level);
            if (stopped) {
                break;
            }
            String name = key instanceof Node.Scalar scalar ? scalar.text() : "";
            trail.add(name);
            Node value = readNode(parser, parser.next(), key.place(), level + 1);
            last = Math.max(key.place().end(), value.place().end());
            keep(entries, seen, new Node.Entry(name, key.place(), value));
            trail.removeLast();
            if (stopped) {
                break;
            }
            event = parser.next();
        }
        return new Node.Mapping(entries, span(start, event, last));
    }

    private Node readKey(ParserImpl parser, Event event, int level) {
        if (event instanceof ScalarEvent scalar) {
            nodes++;
            checkProperties(event);
            return new Node.Scalar(scalar.getValue(), !scalar.isPlain(), place(event));
        }
        int before = problems.size();
        Node key = readNode(parser, event, place(event), level + 1);
        if (!stopped && problems.size() == before) {
            add(
                    place(event),
                    path(),
                    "P-TEXT-11",
                    "keyed by a list or a map here",
                    "keyed by words",
                    "Write `key: value`, the key a single word.");
        }
        return key instanceof Node.Scalar ? key : new Node.Sequence(List.of(), key.place());
    }

    /// Keeps an entry whose key is a new word.
    private void keep(List<Node.Entry> entries, Map<String, Place> seen, Node.Entry entry) {
        if (entry.key().isEmpty()) {
            if (problems.isEmpty()
                    || problems.getLast().place().start() < entry.keyPlace().start()) {
                add(
                        entry.keyPlace(),
                        path(),
                        "P-TEXT-11",
                        "keyed by nothing here",
                        "keyed by words",
                        "Write a key before the colon.");
            }
            return;
        }
        Place first = seen.putIfAbsent(entry.key(), entry.keyPlace());
        if (first == null) {
            entries.add(entry);
        } else {
            add(
                    entry.value().place(),
                    path(),
                    "P-TEXT-10",
                    "given twice",
                    "given once",
                    "Keep one of them; the first is on line " + first.line() + ".");
        }
    }

    /// Gives the span of a collection: to its closing bracket, or to the end of its last value where it has no
    /// brackets.
    private Place span(CollectionStartEvent start, Event end, int last) {
        int from = offset(start.getStartMark());
        return source.place(from, start.isFlow() && !stopped ? offset(end.getEndMark()) : last);
    }

    private Place place(Event event) {
        return source.place(offset(event.getStartMark()), offset(event.getEndMark()));
    }

    private int offset(Optional<Mark> mark) {
        return mark.isPresent() ? source.offset(mark.get().getIndex()) : source.first;
    }

    private void refuseSyntax(String reason, Optional<Mark> mark) {
        int at = offset(mark);
        String why = shorten(reason.replace('\n', ' ')).strip();
        String attempt = reason.contains("mapping values are not allowed")
                ? "Put each key on a line of its own; quote a text that holds a colon and a space."
                : "Check this line and the one before: brackets, quotes, colons, and the spaces that indent.";
        problems.add(new Problem(
                source.place(at, at),
                "",
                "P-TEXT-05",
                "not readable here" + (why.isEmpty() ? "" : " (" + why + ")"),
                "`key: value` lines in YAML, or JSON",
                attempt));
    }

    private void add(Place place, String path, String code, String given, String allowed, String attempt) {
        if (problems.size() < MOST_PROBLEMS) {
            problems.add(new Problem(place, path, code, given, allowed, attempt));
        }
    }

    private static String shorten(String text) {
        return text.length() <= LONGEST_SHOWN * 2 ? text : text.substring(0, LONGEST_SHOWN * 2) + "…";
    }

    private String path() {
        StringBuilder path = new StringBuilder();
        for (String step : trail) {
            path.append(path.isEmpty() || step.startsWith("[") ? "" : ".").append(step);
        }
        return path.toString();
    }
}
