package plumeline.desk;

import static java.nio.charset.StandardCharsets.ISO_8859_1;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.answer.Beside;
import plumeline.light.LampFile;
import plumeline.light.Photometry;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Node;
import plumeline.text.Problem;

/// The photometric files that a plan's lamps name, from the plan's folder.
final class LampFiles {
    private static final String ALLOWED = "an LM-63 or EULUMDAT file that can be read";
    private static final String ANEW =
            "Get the file anew and whole from the lamp's maker; or leave it out and write gives, as a meter reads it.";

    private final Beside folder;
    private final Map<String, String> texts = new LinkedHashMap<>();
    private final List<Problem> problems = new ArrayList<>();

    private LampFiles(Beside folder) {
        this.folder = folder;
    }

    /// Puts what the files hold into a plan, or tells what is wrong with them.
    static Plans.Reading applyTo(Plan plan, String name) throws Refusal {
        LampFiles files = new LampFiles(FilesBeside.of(name));
        plan.kit().lights().forEach(files::read);
        return files.problems.isEmpty()
                ? new Plans.Reading(Optional.of(Plans.withFiles(plan, files.texts)), List.of())
                : new Plans.Reading(Optional.empty(), files.problems);
    }

    private void read(Kit.Light lamp) {
        Optional<String> file = lamp.written().findNode("file").map(LampFiles::text);
        if (file.isEmpty()) {
            return;
        }
        switch (folder.find(file.get(), LampFile.MOST_BYTES + 1)) {
            case Beside.File.Absent(String given, String attempt) -> add(lamp, "P-FILE-01", given, ALLOWED, attempt);
            case Beside.File.There there -> {
                byte[] bytes = there.toArray();
                switch (LampFile.read(bytes)) {
                    case LampFile.Refused(int line, String found, String accepted) ->
                        add(
                                lamp,
                                "P-FILE-02",
                                file.get() + ", in whose line " + line + " is: " + found,
                                "an LM-63 or EULUMDAT file; in its place would be: " + accepted,
                                ANEW);
                    case LampFile.Read(Photometry photometry) -> {
                        if (photometry.tilt() instanceof Photometry.Tilt.Measured(double radians)) {
                            add(
                                    lamp,
                                    "P-FILE-03",
                                    file.get() + ", of a lamp that was measured tilted by " + Print.degrees(radians),
                                    "of one measured along its own axis: this one's light is told from the vertical",
                                    "Leave it out and write gives and beam, as a meter reads them.");
                        } else if (isUnscalable(lamp, photometry)) {
                            add(
                                    lamp,
                                    "P-FILE-04",
                                    file.get()
                                            + ", of a lamp that gives nothing along its axis, while gives is along it",
                                    "of one with light there, or gives in lm",
                                    "Write gives in lm, or leave it out: the file then tells all.");
                        } else {
                            texts.put(lamp.name(), new String(bytes, ISO_8859_1));
                        }
                    }
                }
            }
        }
    }

    /// Whether what it gives along its axis can't set how much the file's light is.
    private static boolean isUnscalable(Kit.Light lamp, Photometry photometry) {
        return photometry.intensity().candelas(0, 0) == 0
                && lamp.written()
                        .findQuantity("gives")
                        .filter(gives -> gives.kind() != Kind.FLUX)
                        .isPresent();
    }

    private static String text(Node node) {
        return node instanceof Node.Scalar scalar ? scalar.text() : "";
    }

    private void add(Kit.Light lamp, String code, String given, String allowed, String attempt) {
        Node node = lamp.written().findNode("file").orElseThrow();
        problems.add(new Problem(node.place(), "kit.lights." + lamp.name() + ".file", code, given, allowed, attempt));
    }
}
