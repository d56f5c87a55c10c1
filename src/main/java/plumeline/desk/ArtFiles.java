package plumeline.desk;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.answer.Beside;
import plumeline.art.ArtFile;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.scenery.Art;
import plumeline.text.Node;
import plumeline.text.Problem;

/// The prints that things' labels name, from the plan's folder. One that isn't there keeps no picture from being drawn:
/// the label stays blank, and it is said.
public final class ArtFiles {
    private static final String FIELD = "label.art";

    private final Beside folder;
    private final Map<String, Optional<Art>> byFile = new LinkedHashMap<>();
    private final Map<String, Art> byThing = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private ArtFiles(Beside folder) {
        this.folder = folder;
    }

    /// Reads the prints of what a shot places, and tells what is wrong with them.
    ///
    /// @param shot the shot, or a pass's effective one
    /// @param plan the plan's file
    /// @param console who hears of it
    /// @return prints by the thing as the plan refers to it
    /// @throws Refusal where the plan's file can't be called that
    public static Map<String, Art> read(Shot shot, String plan, Console console) throws Refusal {
        ArtFiles files = new ArtFiles(FilesBeside.of(plan));
        shot.placed().stream().map(Placed::thing).forEach(files::read);
        files.problems.forEach(problem -> console.say(problem.toText()));
        return files.byThing;
    }

    private void read(Thing thing) {
        Optional<Node> node = thing.written().findNode(FIELD);
        Optional<String> file = thing.written().findWord(FIELD);
        if (node.isEmpty() || file.isEmpty()) {
            return;
        }
        byFile.computeIfAbsent(file.get(), name -> find(thing, node.get(), name))
                .ifPresent(art -> byThing.put(thing.reference(), art));
    }

    private Optional<Art> find(Thing thing, Node node, String file) {
        return switch (folder.find(file, ArtFile.MOST_BYTES + 1)) {
            case Beside.File.Absent(String given, String attempt) -> {
                add(thing, node, "P-ART-01", given, attempt);
                yield Optional.empty();
            }
            case Beside.File.There there ->
                switch (ArtFile.read(there.toArray())) {
                    case ArtFile.Read(Art art) -> Optional.of(art);
                    case ArtFile.Refused(String found, String attempt) -> {
                        add(thing, node, "P-ART-02", file + ", " + found, attempt);
                        yield Optional.empty();
                    }
                };
        };
    }

    private void add(Thing thing, Node node, String code, String given, String attempt) {
        problems.add(new Problem(
                node.place(),
                "things." + thing.reference() + "." + FIELD,
                code,
                given,
                "a PNG, JPEG or SVG file that can be read; the label is drawn blank",
                attempt));
    }
}
