package plumeline.cli.ink;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.desk.Console;
import plumeline.desk.InkFolder;
import plumeline.desk.PlainFile;
import plumeline.desk.TimeLeft;
import plumeline.jobs.Job;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plume.InkMemory;
import plumeline.plume.InkRecord;
import plumeline.plume.InkTries;
import plumeline.plume.RecordBytes;
import plumeline.plume.Viewing;

/// Makes the record of a shot's ink: films that are missing first, then the look at all of them.
///
/// @param tries the shot's tries
/// @param options what was asked for
/// @param memory what fits into it
/// @param viewing the look from its camera
/// @param folder where films and record are kept
/// @param console who hears of it
/// @param stop what ends it before
record InkWork(
        InkTries tries,
        InkCommand.Options options,
        InkMemory memory,
        Viewing viewing,
        InkFolder folder,
        Console console,
        Stop stop) {
    /// So often films are made again that are damaged as soon as they are made.
    private static final int ROUNDS = 3;

    /// The record of so many runs: as kept where all is as it was, else of films that are kept or made. A film that
    /// turns out damaged is made again.
    Optional<InkRecord> record() throws IOException {
        List<Integer> missing = missing();
        Optional<InkRecord> kept = missing.isEmpty() ? findKept() : Optional.empty();
        if (kept.isPresent()) {
            console.say("plumeline: computed before, with the same inputs");
            return kept;
        }
        for (int round = 0; round < ROUNDS; round++) {
            if (!film(missing) || !(look() instanceof Result.Whole<Optional<InkRecord.Run>>(var looks))) {
                return Optional.empty();
            }
            List<InkRecord.Run> seen = looks.stream().flatMap(Optional::stream).toList();
            if (seen.size() == looks.size()) {
                var record = new InkRecord(head(), viewing.subjects(), seen);
                PlainFile.write(folder.record(), RecordBytes.write(record));
                return Optional.of(record);
            }
            missing = missing();
        }
        throw new IOException("what is written into " + folder.path() + " doesn't stay as it was written");
    }

    private InkRecord.Head head() {
        return InkRecord.Head.of(tries.planned(), tries.course(), viewing);
    }

    /// The record that is there, where it is of all that was asked for.
    private Optional<InkRecord> findKept() throws IOException {
        int runs = options.runs();
        Optional<InkRecord> kept = folder.findRecord();
        if (kept.isEmpty() && Files.exists(folder.record())) {
            console.say("plumeline: " + folder.record() + " is damaged; the films are looked at again");
        }
        return kept.filter(all -> all.head().equals(head()) && all.runs().size() >= runs)
                .map(all -> new InkRecord(all.head(), all.subjects(), all.runs().subList(0, runs)));
    }

    /// The tries whose films aren't there; says which are damaged.
    private List<Integer> missing() throws IOException {
        List<Integer> missing = new ArrayList<>();
        for (int run = 1; run <= options.runs(); run++) {
            if (!folder.isWhole(tries.task(run).head())) {
                missing.add(run);
                if (Files.exists(folder.film(run))) {
                    console.say("plumeline: " + folder.film(run) + " is damaged; try " + run + " is run again");
                }
            }
        }
        return missing;
    }

    private Result<Optional<InkRecord.Run>> look() throws IOException {
        List<Job<Optional<InkRecord.Run>>> looks = new ArrayList<>();
        for (int run = 1; run <= options.runs(); run++) {
            int number = run;
            looks.add(_ -> folder.use(number, viewing::look));
        }
        var threads = new Jobs.Threads(options.threads(), memory.looksAtOnce(cells(), options.threads()));
        return Jobs.run(looks, threads, new TimeLeft("looking at it", console), stop);
    }

    /// Makes films; false where it was stopped.
    private boolean film(List<Integer> missing) throws IOException {
        if (missing.isEmpty()) {
            return true;
        }
        List<Job<Integer>> jobs = new ArrayList<>();
        int begun = 0;
        for (int run : missing) {
            jobs.add(new InkJob(tries.task(run), folder, options.threads(), console));
            begun += folder.isPutDown(run) ? 1 : 0;
        }
        int kept = options.runs() - jobs.size();
        console.say("plumeline: " + jobs.size() + (jobs.size() == 1 ? " try" : " tries") + " into "
                + folder.path()
                + (kept > 0 ? "; " + kept + " more computed before" : "")
                + (begun > 0 ? "; going on with " + begun + " that stopped" : ""));
        var threads = new Jobs.Threads(options.threads(), memory.runsAtOnce(cells(), options.threads()));
        var progress = new TimeLeft("ink", console, System::nanoTime, () -> filmsSoFar(missing));
        return Jobs.run(jobs, threads, progress, stop) instanceof Result.Whole<Integer>;
    }

    private long cells() {
        return tries.planned().cells(tries.course().cellMetres());
    }

    private String filmsSoFar(List<Integer> runs) {
        long bytes = runs.stream().mapToLong(folder::filmBytes).sum();
        return String.format(Locale.ROOT, "; films %.1f MB so far", bytes / 1e6);
    }
}
