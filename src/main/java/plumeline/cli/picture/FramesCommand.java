package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.assemble.View;
import plumeline.assemble.Wanted;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.solve.FilmAnswer;
import plumeline.stage.Picture;
import plumeline.stage.Stage;
import plumeline.timeline.Played;

/// `frames PLAN --shot NAME`: a shot as its camera records it, a picture a screen frame.
public final class FramesCommand implements Command {
    private static final int LONGER = 640;

    /// A new one, which has done nothing yet.
    public FramesCommand() {}

    @Override
    public Usage usage() {
        var options = new ArrayList<Usage.Option>();
        options.add(PictureChoice.shot());
        options.add(PictureChoice.pass());
        options.addAll(PictureOptions.options("Makes them so large; else 640 pixels along the longer side."));
        options.add(Usage.valued("--out", "DIR", "Writes into this folder; else SHOT.frames, beside the plan."));
        return new Usage(
                "frames",
                "Draws each frame of a shot that the screen shows, as numbered PNG files.",
                "PLAN",
                1,
                1,
                options,
                List.of("frames examples/fernhollow.yaml --shot spin --pass rose --out spin"));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        return DrawnPlan.read(given, console, drawn -> make(drawn, given, console));
    }

    private static Outcome make(DrawnPlan drawn, Arguments given, Console console) throws Refusal, IOException {
        Plan plan = drawn.plan();
        Shot shot = shot(plan, given);
        Optional<String> pass = pass(shot, given);
        String called = shot.name() + pass.map(each -> "." + each).orElse("");
        Path out = given.findValue("--out").isPresent()
                ? PlainFile.toPath(given.findValue("--out").get())
                : PictureFolder.ofPlan(drawn.name()).resolveSibling(called + ".frames");
        PlainFile.makeFolder(out);
        FilmAnswer film = PlanFile.solve(plan, List.of(shot.name()), drawn.name(), console);
        Stage stage = pass.isPresent() ? Stage.of(plan, shot, pass.get()) : Stage.of(plan, shot);
        double[] values = film.shots().getFirst().posed().values();
        View view = view(stage.scene(values, 0).picture(), drawn.options().size());
        Played played = Played.of(plan, stage.shot(), stage.frames());
        List<Wanted> frames = new ArrayList<>();
        for (long frame = 0; frame < stage.frames(); frame++) {
            frames.add(Wanted.of(shot.name(), stage, played, frame, view));
        }
        return drawn.draw(film, List.copyOf(new LinkedHashSet<>(frames)), out, console, (work, stop) -> {
            for (int i = 0; i < frames.size(); i++) {
                if (stop.isAsked()) {
                    return false;
                }
                PlainFile.lay(
                        out.resolve(String.format(Locale.ROOT, "%s.%06d.png", called, i)),
                        Files.readAllBytes(work.folder().file(frames.get(i))));
            }
            return true;
        });
    }

    /// The whole picture of the camera, in the size asked for.
    private static View view(Picture picture, Optional<PictureOptions.Size> size) throws Refusal {
        double aspect = picture.widthMetres() / picture.heightMetres();
        if (size.isEmpty()) {
            return aspect >= 1
                    ? View.whole(LONGER, (int) Math.max(1, Math.round(LONGER / aspect)))
                    : View.whole((int) Math.max(1, Math.round(LONGER * aspect)), LONGER);
        }
        int width = size.get().width();
        int height = size.get().height();
        if (Math.abs(height * aspect - width) > Math.max(1, aspect)) {
            throw new Refusal(
                    "--size is " + width + "x" + height + ", which isn't the ratio of what the camera sees",
                    "Give --size " + width + "x" + Math.max(1, Math.round(width / aspect)) + ".");
        }
        return View.whole(width, height);
    }

    private static Shot shot(Plan plan, Arguments given) throws Refusal {
        Optional<String> named = given.findValue("--shot");
        return named.isEmpty() ? plan.shots().getFirst() : PlanFile.shot(plan, named.get());
    }

    private static Optional<String> pass(Shot shot, Arguments given) throws Refusal {
        Optional<String> named = given.findValue("--pass");
        return named.isEmpty() ? named : Optional.of(PlanFile.pass(shot, named.get()));
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(
                List.of(
                        Rehearsal.FILE,
                        "--shot",
                        "spin",
                        "--size",
                        "64x36",
                        "--samples",
                        "1",
                        "--out",
                        Rehearsal.FOLDER),
                PlanFile.example()));
    }
}
