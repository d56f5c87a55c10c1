package plumeline.cli;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.StandardOpenOption;
import java.util.Optional;
import plumeline.flow.Workers;
import plumeline.jobs.Job;
import plumeline.jobs.Work;
import plumeline.plume.DyeFilm;
import plumeline.plume.InkRun;

/// One run of a shot's ink, into its film; goes on from where it was put down, and puts it down every half minute.
final class InkJob implements Job<InkJob.Done> {
    private static final long BETWEEN_STOPS_NANOS = 30_000_000_000L;

    private final InkRun.Task task;
    private final InkFolder folder;
    private final int threads;

    InkJob(InkRun.Task task, InkFolder folder, int threads) {
        this.task = task;
        this.folder = folder;
        this.threads = threads;
    }

    /// How it went.
    enum Done {
        /// Its film is whole.
        WHOLE,
        /// It was put down.
        PUT_DOWN
    }

    @Override
    public Done run(Work work) throws IOException {
        if (folder.isWhole(task.head())) {
            return Done.WHOLE;
        }
        Workers workers = Workers.of(work.spare(), threads);
        try (FileChannel film = FileChannel.open(
                folder.part(task.number()),
                StandardOpenOption.CREATE,
                StandardOpenOption.READ,
                StandardOpenOption.WRITE)) {
            InkRun run = begin(film, workers);
            if (!follow(run, film, work)) {
                putDown(run, film);
                return Done.PUT_DOWN;
            }
            write(film, DyeFilm.end(run.frames()));
            film.force(true);
        }
        folder.finish(task.number());
        return Done.WHOLE;
    }

    private InkRun begin(FileChannel film, Workers workers) throws IOException {
        Optional<byte[]> kept = folder.findStop(task.number());
        Optional<InkRun.Resumed> resumed = kept.flatMap(bytes -> InkRun.resume(task, workers, bytes));
        if (resumed.isPresent() && resumed.get().filmBytes() <= film.size()) {
            film.truncate(resumed.get().filmBytes());
            film.position(resumed.get().filmBytes());
            return resumed.get().run();
        }
        film.truncate(0);
        write(film, task.head().toBytes());
        return InkRun.start(task, workers);
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
        PlainFile.write(folder.stop(task.number()), run.checkpoint(film.position()));
    }

    private static void write(FileChannel film, byte[] bytes) throws IOException {
        ByteBuffer buffer = ByteBuffer.wrap(bytes);
        while (buffer.hasRemaining()) {
            film.write(buffer);
        }
    }
}
