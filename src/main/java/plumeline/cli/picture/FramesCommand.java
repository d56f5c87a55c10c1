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
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
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
        String name = given.plain().getFirst();
        PictureOptions options = PictureOptions.read(given);
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Shot shot = shot(plan, given);
        Optional<String> pass = pass(shot, given);
        String called = shot.name() + pass.map(each -> "." + each).orElse("");
        Path out = given.findValue("--out").isPresent()
                ? PlainFile.toPath(given.findValue("--out").get())
                : PictureFolder.ofPlan(name).resolveSibling(called + ".frames");
        PlainFile.makeFolder(out);
        FilmAnswer film = PlanFile.solve(plan, List.of(shot.name()), name, console);
        return draw(film, new Asked(shot, pass, called, out, name), options, console);
    }

    /// What was asked for.
    private record Asked(Shot shot, Optional<String> pass, String called, Path out, String plan) {}

    private static Outcome draw(FilmAnswer film, Asked asked, PictureOptions options, Console console)
            throws Refusal, IOException {
        Plan plan = film.plan();
        Stage stage = asked.pass().isPresent()
                ? Stage.of(plan, asked.shot(), asked.pass().get())
                : Stage.of(plan, asked.shot());
        double[] values = film.shots().getFirst().posed().values();
        View view = view(stage.scene(values, 0).picture(), options.size());
        Played played = Played.of(plan, stage.shot(), stage.frames());
        List<Wanted> frames = new ArrayList<>();
        for (long frame = 0; frame < stage.frames(); frame++) {
            frames.add(Wanted.of(asked.shot().name(), stage, played, frame, view));
        }
        List<Wanted> wanted = List.copyOf(new LinkedHashSet<>(frames));
        Path folder = PictureFolder.ofPlan(asked.plan());
        PlainFile.makeFolder(folder);
        ShotPictures shots = ShotPictures.of(film, wanted, asked.plan(), options, console);
        try (Interruption interruption = new Interruption()) {
            var kept = new PictureFolder(folder, options.name());
            var work = new PictureWork(shots.painter(), kept, options.threads(), console, interruption.stop());
            boolean isDone = work.draw(wanted);
            for (int i = 0; isDone && i < frames.size(); i++) {
                isDone = !interruption.stop().isAsked();
                if (isDone) {
                    PlainFile.lay(
                            asked.out().resolve(String.format(Locale.ROOT, "%s.%06d.png", asked.called(), i)),
                            Files.readAllBytes(kept.file(frames.get(i))));
                }
            }
            if (!isDone) {
                console.say("plumeline: stopped; the same command goes on from here");
                return Outcome.STOPPED;
            }
        }
        console.answer(asked.out() + "\n");
        return Outcome.ANSWERED;
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
