package plumeline.cli.ink;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import plumeline.desk.Console;
import plumeline.desk.InkFolder;
import plumeline.desk.PlainFile;
import plumeline.flow.Workers;
import plumeline.jobs.Job;
import plumeline.jobs.Work;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkRun;

/// One run of a shot's ink, into its film; goes on from where it was put down, and puts it down every half minute.
final class InkJob implements Job<Integer> {
    private static final long BETWEEN_STOPS_NANOS = 30_000_000_000L;

    private final InkRun.Task task;
    private final InkFolder folder;
    private final int threads;
    private final Console console;

    InkJob(InkRun.Task task, InkFolder folder, int threads, Console console) {
        this.task = task;
        this.folder = folder;
        this.threads = threads;
        this.console = console;
    }

    /// Gives how many frames the film has.
    @Override
    public Integer run(Work work) throws IOException {
        Workers workers = Workers.of(work.spare(), threads);
        InkRun run;
        try (FileChannel film = FileChannel.open(
                folder.part(task.number()),
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE)) {
            run = begin(film, workers);
            if (!follow(run, film, work)) {
                putDown(run, film);
                return run.frames();
            }
            write(film, DyeFilm.end(run.frames()));
            film.force(true);
        }
        folder.finish(task.number());
        return run.frames();
    }

    private InkRun begin(FileChannel film, Workers workers) throws IOException {
        if (folder.isPutDown(task.number())) {
            Optional<InkRun.Resumed> resumed = resume(workers);
            if (resumed.isPresent() && fits(resumed.get(), film)) {
                film.truncate(resumed.get().filmBytes());
                film.position(resumed.get().filmBytes());
                return resumed.get().run();
            }
            console.say("plumeline: what was kept of try " + task.number() + " is damaged; it begins anew");
        }
        film.truncate(0);
        write(film, task.head().toBytes());
        return InkRun.start(task, workers);
    }

    private Optional<InkRun.Resumed> resume(Workers workers) throws IOException {
        try (InputStream kept = Files.newInputStream(folder.stop(task.number()))) {
            return InkRun.resume(task, workers, kept);
        }
    }

    /// Whether the film so far is what the run had made of it.
    private boolean fits(InkRun.Resumed resumed, FileChannel film) throws IOException {
        return DyeFilm.readBegun(new InkFolder.FileBytes(film), resumed.filmBytes())
                .filter(so -> so.head().equals(task.head())
                        && so.frames() == resumed.run().frames())
                .isPresent();
    }

    /// Follows it to its end; false where it was asked to stop before.
    private boolean follow(InkRun run, FileChannel film, Work work) throws IOException {
        long putDown = System.nanoTime();
        while (!run.isOver()) {
            if (!work.goesOn()) {
                return false;
            }
            write(film, run.next().toBytes());
            work.report(run.share());
            if (System.nanoTime() - putDown > BETWEEN_STOPS_NANOS) {
                putDown(run, film);
                putDown = System.nanoTime();
            }
        }
        return true;
    }

    private void putDown(InkRun run, FileChannel film) throws IOException {
        film.force(true);
        long bytes = film.position();
        PlainFile.write(folder.stop(task.number()), out -> run.checkpoint(bytes, out));
    }

    private static void write(FileChannel film, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            film.write(buffer);
        }
    }
}
