package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.Node;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.draw.SvgReader;
import plumeline.sheet.RandomPapers;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/// What the program wrote for a plan: the page, the print and, from another run, the findings as JSON. Each plan is run
/// once for all tests; its papers stay in `target/papers-it` to be looked at.
///
/// @param name of the plan
/// @param html the page's file
/// @param pdf the print's file
/// @param json what `solve --json` answers
record PapersRun(String name, Path html, Path pdf, JsonNode json) {
    /// Seeds of [RandomPapers] that are printed.
    static final List<Long> SEEDS = List.of(0L, 1L, 2L, 3L, 5L);

    /// Stands for the example in place of a seed.
    static final long EXAMPLE = -1;

    private static final Path FOLDER =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("target/papers-it");

    private static final Map<String, PapersRun> DONE = new ConcurrentHashMap<>();

    /// A mark of `solve --json`.
    ///
    /// @param shot its shot
    /// @param path its name
    /// @param figures what papers may print as its value: one text, two where the value lies on a rounding's edge
    record MarkLine(String shot, String path, List<String> figures) {}

    @Override
    public String toString() {
        return name;
    }

    static PapersRun of(long seed) {
        return seed == EXAMPLE
                ? of("example", read(FOLDER.resolve("../../examples/fernhollow.yaml")))
                : of("seed" + seed, RandomPapers.of(seed));
    }

    /// Plans nobody has seen, and the example.
    static Stream<PapersRun> all() {
        return Stream.concat(Stream.of(EXAMPLE), SEEDS.stream()).parallel().map(PapersRun::of).toList().stream();
    }

    private static PapersRun of(String name, String text) {
        return DONE.computeIfAbsent(name, _ -> print(name, text));
    }

    private static PapersRun print(String name, String text) {
        Path folder = FOLDER.resolve(name);
        Path plan = folder.resolve("plan.yaml");
        try {
            Files.createDirectories(folder);
            Files.writeString(plan, text);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
        run(name, text, "papers", plan.toString(), "--to", folder.toString());
        String answer = run(name, text, "solve", plan.toString(), "--json");
        return new PapersRun(
                name,
                folder.resolve("papers.html"),
                folder.resolve("papers.pdf"),
                JsonMapper.shared().readTree(answer));
    }

    private static String run(String name, String text, String... words) {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        ByteArrayOutputStream err = new ByteArrayOutputStream();
        Outcome outcome = Main.run(List.of(words), new Console(new ByteArrayInputStream(new byte[0]), out, err));
        if (outcome != Outcome.ANSWERED) {
            throw new AssertionError(name + ": " + outcome + "\n" + err.toString(UTF_8) + "\n" + text);
        }
        return out.toString(UTF_8);
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /// The page as a tree.
    Document page() {
        return SvgReader.parse(read(html));
    }

    String title() {
        return json.get("film").asString();
    }

    /// The plan's revision as papers print it: twelve figures of its SHA-256.
    String revision() {
        return json.get("plan_sha256").asString().substring(0, 12);
    }

    List<String> shots() {
        List<String> shots = new ArrayList<>();
        json.get("shots").forEach(shot -> shots.add(shot.get("shot").asString()));
        return shots;
    }

    List<String> wants(String shot) {
        List<String> ids = new ArrayList<>();
        json.get("shots").forEach(each -> {
            if (each.get("shot").asString().equals(shot)) {
                each.get("wants").forEach(want -> ids.add(want.get("id").asString()));
            }
        });
        return ids;
    }

    List<MarkLine> marks(String shot) {
        List<MarkLine> marks = new ArrayList<>();
        Figures figures = Figures.of(papersInInches());
        json.get("shots").forEach(each -> {
            if (each.get("shot").asString().equals(shot)) {
                each.get("marks").forEach(mark -> {
                    String path = mark.get("mark").asString();
                    marks.add(new MarkLine(shot, path, figures.of(path, mark.get("value"))));
                });
            }
        });
        return marks;
    }

    private boolean papersInInches() {
        return read(html.resolveSibling("plan.yaml")).contains("papers: in");
    }

    /// The element of the page with an id.
    static Element byId(Document page, String id) {
        List<Element> found = new ArrayList<>();
        collect(page.getDocumentElement(), id, found);
        if (found.size() != 1) {
            throw new AssertionError(found.size() + " elements have the id " + id);
        }
        return found.getFirst();
    }

    private static void collect(Element element, String id, List<Element> found) {
        if (element.getAttribute("id").equals(id)) {
            found.add(element);
        }
        for (Node child = element.getFirstChild(); child != null; child = child.getNextSibling()) {
            if (child instanceof Element inner) {
                collect(inner, id, found);
            }
        }
    }
}
