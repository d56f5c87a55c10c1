package plumeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.jobs.Job;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkRecord;
import plumeline.plume.InkRun;
import plumeline.plume.InkShot;
import plumeline.plume.RecordBytes;
import plumeline.plume.Viewing;

/// Makes the record of a shot's ink: films that are missing first, then the look at all of them.
///
/// @param ink the shot's ink and water
/// @param options what was asked for
/// @param viewing the look from its camera
/// @param folder where films and record are kept
/// @param console who hears of it
/// @param stop what ends it before
record InkWork(InkShot ink, InkOptions options, Viewing viewing, InkFolder folder, Console console, Stop stop) {
    private InkRun.Task task(int run) {
        return new InkRun.Task(ink, options.course(), run);
    }

    /// The record of so many runs: as kept where all is as it was, else of films that are kept or made.
    Optional<InkRecord> record() throws IOException {
        int runs = options.runs();
        Optional<InkRecord> kept = folder.findRecord();
        if (kept.isPresent() && kept.get().runs().size() >= runs && kept.get().isSeenBy(viewing) && filmsAreWhole()) {
            console.say("plumeline: computed before, with the same inputs");
            return kept.map(
                    all -> new InkRecord(all.head(), all.subjects(), all.runs().subList(0, runs)));
        }
        if (!film()) {
            return Optional.empty();
        }
        List<Job<InkRecord.Run>> looks = new ArrayList<>();
        for (int run = 1; run <= runs; run++) {
            int number = run;
            looks.add(_ -> look(number));
        }
        Result<InkRecord.Run> looked = Jobs.run(looks, options.threads(), new TimeLeft("looking at it", console), stop);
        if (!(looked instanceof Result.Whole<InkRecord.Run>(List<InkRecord.Run> seen))) {
            return Optional.empty();
        }
        InkRecord record = new InkRecord(InkRecord.Head.of(ink, options.course(), viewing), viewing.subjects(), seen);
        PlainFile.write(folder.record(), RecordBytes.write(record));
        return Optional.of(record);
    }

    private boolean filmsAreWhole() throws IOException {
        for (int run = 1; run <= options.runs(); run++) {
            if (!folder.isWhole(task(run).head())) {
                return false;
            }
        }
        return true;
    }

    private InkRecord.Run look(int run) throws IOException {
        DyeFilm film = folder.findFilm(run).orElseThrow(() -> new IOException(folder.film(run) + " is gone"));
        return viewing.look(film);
    }

    /// Makes the films that aren't there; false where it was stopped.
    private boolean film() throws IOException {
        List<Job<InkJob.Done>> jobs = new ArrayList<>();
        int begun = 0;
        for (int run = 1; run <= options.runs(); run++) {
            if (!folder.isWhole(task(run).head())) {
                jobs.add(new InkJob(task(run), folder, options.threads()));
                begun += Files.isRegularFile(folder.stop(run)) ? 1 : 0;
            }
        }
        if (jobs.isEmpty()) {
            return true;
        }
        int kept = options.runs() - jobs.size();
        console.say("plumeline: " + jobs.size() + (jobs.size() == 1 ? " try" : " tries") + " into "
                + folder.path()
                + (kept > 0 ? "; " + kept + " more computed before" : "")
                + (begun > 0 ? "; going on with " + begun + " that stopped" : ""));
        var progress = new TimeLeft("ink", console);
        return Jobs.run(jobs, options.threads(), progress, stop) instanceof Result.Whole<InkJob.Done>;
    }
}
