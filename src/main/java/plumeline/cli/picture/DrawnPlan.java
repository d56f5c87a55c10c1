package plumeline.cli.picture;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import plumeline.assemble.Wanted;
import plumeline.desk.Arguments;
import plumeline.desk.Console;
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;

/// A plan whose shots' pictures are drawn and kept beside it, frame by frame.
///
/// @param name the plan's file
/// @param plan the plan
/// @param options how finely they are drawn
record DrawnPlan(String name, Plan plan, PictureOptions options) {
    /// What is done with a plan.
    interface Use {
        /// Does it.
        Outcome of(DrawnPlan plan) throws Refusal, IOException;
    }

    /// What is made of pictures, once all are drawn.
    interface Rest {
        /// Makes it; false where it was stopped.
        boolean of(PictureWork work, Stop stop) throws IOException;
    }

    /// Reads plan and options, and tells what is wrong with them.
    static Outcome read(Arguments given, Console console, Use use) throws Refusal, IOException {
        String name = given.plain().getFirst();
        PictureOptions options = PictureOptions.read(given);
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        return reading.plan().isEmpty()
                ? PlanFile.tellProblems(reading, console)
                : use.of(new DrawnPlan(name, reading.plan().get(), options));
    }

    /// Draws what isn't drawn yet, then makes the rest of it; answers where that is.
    Outcome draw(FilmAnswer film, List<Wanted> wanted, Path out, Console console, Rest rest)
            throws Refusal, IOException {
        Path folder = PictureFolder.ofPlan(name);
        PlainFile.makeFolder(folder);
        ShotPictures shots = ShotPictures.of(film, wanted, name, options, console);
        try (Interruption interruption = new Interruption()) {
            Stop stop = interruption.stop();
            var kept = new PictureFolder(folder, options.name());
            var work = new PictureWork(shots.painter(), kept, options.threads(), console, stop);
            if (!work.draw(wanted) || !rest.of(work, stop)) {
                console.say("plumeline: stopped; the same command goes on from here");
                return Outcome.STOPPED;
            }
        }
        console.answer(out + "\n");
        return Outcome.ANSWERED;
    }
}
