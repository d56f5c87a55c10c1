package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.TimeLeft;
import plumeline.desk.Usage;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plan.Plans;
import plumeline.render.Coarse;
import plumeline.render.Develop;
import plumeline.render.Developing;
import plumeline.render.PartsView;
import plumeline.render.Pixels;
import plumeline.render.PngFile;
import plumeline.render.Render;
import plumeline.render.Window;
import plumeline.trace.Exposing;
import plumeline.trace.Plate;

/// `draft PLAN`: a shot as its camera sees it, by one ray a pixel; or its parts in flat colours.
public final class DraftCommand implements Command {
    private static final int ACROSS = 480;

    /// Where somebody watches, every eighth pixel comes first.
    private static final List<Integer> COARSE_TO_FINE = List.of(8, 4, 2, 1);

    /// A new one, which has done nothing yet.
    public DraftCommand() {}

    @Override
    public Usage usage() {
        return new Usage(
                "draft",
                "Draws a shot as its camera sees it, quickly: one ray a pixel.",
                "PLAN",
                1,
                1,
                List.of(
                        PictureChoice.shot(),
                        PictureChoice.pass(),
                        PictureChoice.at(),
                        PictureChoice.delivery(),
                        Usage.valued("--size", "WxH", "Draws so many pixels across and down; else 480 across."),
                        Usage.valued(
                                "--view",
                                "VIEW",
                                "picture; levels: where it clips, and numbers; or parts: flat colours, a list of"
                                        + " them beside it as JSON."),
                        Usage.flag("--mirrored", "With --view parts: what is seen mirrored instead."),
                        OverPicture.onTop(),
                        PictureChoice.threads(),
                        Usage.valued("--out", "FILE", "Writes into this PNG file; else into SHOT.draft.png.")),
                List.of("draft film.yaml --shot reveal --at end", "draft film.yaml --view parts --out parts.png"));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        boolean isParts = isParts(given);
        OverPicture over = OverPicture.read(given);
        int threads = PictureChoice.threads(given);
        String name = given.plain().getFirst();
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        var delivery = PictureChoice.delivery(reading.plan().get(), given);
        PictureChoice choice = PictureChoice.of(reading.plan().get(), given, console);
        Window window = choice.window(delivery, given, ACROSS, ACROSS);
        Path file = PlainFile.toWrite(given.findValue("--out").orElse(choice.file(isParts ? "parts" : "draft")));
        over.check(window);
        if (isParts) {
            return parts(choice, window, file, given.has("--mirrored"), console);
        }
        long began = System.nanoTime();
        try (Interruption interruption = new Interruption()) {
            if (!new Drawing(choice, window, file, threads, console, interruption).draw()) {
                console.say("plumeline: stopped; what was drawn is in " + file);
                return Outcome.STOPPED;
            }
        }
        String notes = over.isAny() ? over.lay(choice, window, plate(choice, window, threads), file) : "";
        console.answer(String.format(
                Locale.ROOT,
                "%s: %s at %s, %d x %d px, one ray a pixel, in %.1f s%n%s",
                file,
                choice.title(),
                choice.when(),
                window.width(),
                window.height(),
                (System.nanoTime() - began) / 1e9,
                notes + choice.assumed()));
        return Outcome.ANSWERED;
    }

    /// The draft once more, to draw upon it: it takes a moment.
    private static Plate plate(PictureChoice choice, Window window, int threads) throws IOException {
        Plate plate = new Plate(window.plateWidth(), window.plateHeight());
        var instants = Render.instants(choice.set(), choice.realSeconds(), 0, 1, window);
        Render.expose(instants, plate, new Exposing.Rays(0, 1, 1, 0), Jobs.Threads.each(threads), _ -> {}, new Stop());
        return plate;
    }

    private static boolean isParts(Arguments given) throws Refusal {
        String view = given.findValue("--view").orElse("picture");
        if (!List.of("picture", "levels", "parts").contains(view)) {
            throw new Refusal(
                    "--view is " + view + "; must be picture, levels or parts", "Leave it out for the picture.");
        }
        if (given.findValue("--on-top").isPresent() && view.equals("parts")) {
            throw new Refusal("--on-top goes with a picture, not with its parts", "Leave one of both out.");
        }
        if (given.has("--mirrored") && !view.equals("parts")) {
            throw new Refusal("--mirrored goes with --view parts", "Add --view parts, or leave it out.");
        }
        return view.equals("parts");
    }

    private static Outcome parts(PictureChoice choice, Window window, Path file, boolean mirrored, Console console)
            throws IOException {
        PartsView view = PartsView.of(choice.set(), choice.realSeconds(), window);
        Path list = PartsJson.beside(file);
        PlainFile.lay(file, PngFile.of(mirrored ? view.mirroredPicture() : view.picture()));
        PlainFile.lay(list, PartsJson.of(choice, view));
        StringBuilder text = new StringBuilder();
        text.append(String.format(
                Locale.ROOT,
                "%s and %s: parts of %s at %s, %d x %d px%n",
                file,
                list,
                choice.title(),
                choice.when(),
                window.width(),
                window.height()));
        for (PartsView.Named part : view.parts()) {
            int pixels = mirrored ? part.mirroredPixels() : part.pixels();
            text.append("  ")
                    .append(part.hex())
                    .append("  ")
                    .append(Usage.column(part.name(), 20))
                    .append(pixels)
                    .append(" px\n");
        }
        console.answer(text + choice.assumed());
        return Outcome.ANSWERED;
    }

    /// A draft as it is drawn.
    private record Drawing(
            PictureChoice choice, Window window, Path file, int threads, Console console, Interruption interruption) {
        /// Draws it, coarse to fine where somebody watches; false where it was stopped.
        boolean draw() throws IOException {
            Developing developing = choice.set().developing(choice.realSeconds());
            Optional<Pixels> before = Optional.empty();
            List<Integer> steps = console.isWatched() ? COARSE_TO_FINE : List.of(1);
            for (int step : steps) {
                Window coarse = Coarse.window(window, step);
                Plate plate = new Plate(coarse.plateWidth(), coarse.plateHeight());
                var instants = Render.instants(choice.set(), choice.realSeconds(), 0, 1, coarse);
                var done = Render.expose(
                        instants,
                        plate,
                        new Exposing.Rays(0, 1, 1, 0),
                        Jobs.Threads.each(threads),
                        new TimeLeft("drawing", console),
                        interruption.stop());
                Pixels picture = coarse.cut(Develop.of(plate, developing));
                Pixels whole = Coarse.enlarged(picture, window);
                boolean isWhole = done instanceof Result.Whole<Plate>;
                // What wasn't drawn any more stays as coarse as it was.
                Pixels shown = isWhole || before.isEmpty()
                        ? whole
                        : Coarse.over(before.get(), whole, Coarse.enlarged(coarse.cut(Coarse.drawn(plate)), window));
                PlainFile.lay(file, PngFile.of(shown));
                if (!isWhole) {
                    return false;
                }
                before = Optional.of(shown);
            }
            return true;
        }
    }

    @Override
    public List<Rehearsal> rehearsals() {
        String file = Rehearsal.FOLDER + "/draft.png";
        return List.of(
                new Rehearsal(
                        List.of(Rehearsal.FILE, "--shot", "spin", "--size", "96x54", "--out", file),
                        PlanFile.example()),
                new Rehearsal(
                        List.of(Rehearsal.FILE, "--shot", "spin", "--view", "parts", "--size", "48x27", "--out", file),
                        PlanFile.example()));
    }
}
