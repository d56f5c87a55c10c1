package plumeline.jobs;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;

/// Does many independent tasks, so many at a time.
public final class Jobs {
    private static final int MOST_THREADS = 256;

    private Jobs() {}

    /// How many threads work, and on how many tasks.
    ///
    /// @param all how many work at a time, 1 to 256
    /// @param tasks how many tasks are under way at a time, 1 to `all`; the other threads are there to help
    public record Threads(int all, int tasks) {
        /// Checks the ranges.
        public Threads {
            if (all < 1 || all > MOST_THREADS) {
                throw new IllegalArgumentException("threads must be 1 to " + MOST_THREADS + ", given " + all);
            }
            if (tasks < 1 || tasks > all) {
                throw new IllegalArgumentException("tasks at a time must be 1 to " + all + ", given " + tasks);
            }
        }

        /// As many tasks as threads.
        ///
        /// @param all how many, 1 to 256
        /// @return the threads
        public static Threads each(int all) {
            return new Threads(all, all);
        }
    }

    /// Does all tasks and waits for them. They begin in their order.
    ///
    /// @param jobs the tasks
    /// @param threads how many threads work
    /// @param progress who hears how far they are, each task counted alike
    /// @param stop what ends them before
    /// @return what they gave; stopped where stopping was asked for before all were done
    /// @param <T> what a task gives
    /// @throws IOException what the first failing task threw; an unchecked exception likewise
    public static <T> Result<T> run(List<Job<T>> jobs, Threads threads, Progress progress, Stop stop)
            throws IOException {
        try (ExecutorService pool = Executors.newCachedThreadPool(Jobs::daemon)) {
            return new Round<T>(pool, threads, new Shares(jobs.size(), progress), stop).run(jobs);
        }
    }

    private static Thread daemon(Runnable task) {
        Thread thread = new Thread(task, "plumeline-job");
        thread.setDaemon(true);
        return thread;
    }

    /// One list of tasks under way.
    private static final class Round<T> {
        private final ExecutorService pool;
        private final Semaphore places;
        private final Semaphore free;
        private final Shares shares;
        private final Stop stop;
        private final Stop broken = new Stop();

        Round(ExecutorService pool, Threads threads, Shares shares, Stop stop) {
            this.pool = pool;
            this.places = new Semaphore(threads.tasks());
            this.free = new Semaphore(threads.all(), true);
            this.shares = shares;
            this.stop = stop;
        }

        Result<T> run(List<Job<T>> jobs) throws IOException {
            List<Future<T>> begun = new ArrayList<>();
            for (int i = 0; i < jobs.size() && await() && goesOn(); i++) {
                int index = i;
                begun.add(pool.submit(() -> one(jobs.get(index), index)));
            }
            List<T> values = new ArrayList<>();
            for (Future<T> each : begun) {
                values.add(value(each));
            }
            return goesOn() && values.size() == jobs.size() ? new Result.Whole<>(values) : new Result.Stopped<>();
        }

        /// Waits for a place and a free thread; whoever interrupts the waiting one asks to stop.
        private boolean await() {
            try {
                places.acquire();
                free.acquire();
                return true;
            } catch (InterruptedException e) {
                stop.ask();
                Thread.currentThread().interrupt();
                return false;
            }
        }

        private boolean goesOn() {
            return !stop.isAsked() && !broken.isAsked();
        }

        private T one(Job<T> job, int index) throws IOException {
            boolean done = false;
            try {
                T value = job.run(new Own(index));
                done = true;
                shares.set(index, 1);
                return value;
            } finally {
                if (!done) {
                    broken.ask();
                }
                free.release();
                places.release();
            }
        }

        private T value(Future<T> job) throws IOException {
            boolean interrupted = false;
            while (true) {
                try {
                    T value = job.get();
                    if (interrupted) {
                        Thread.currentThread().interrupt();
                    }
                    return value;
                } catch (InterruptedException e) {
                    interrupted = true;
                    stop.ask();
                } catch (ExecutionException e) {
                    switch (e.getCause()) {
                        case IOException world -> throw world;
                        case Error error -> throw error;
                        case RuntimeException ours -> throw ours;
                        case null, default -> throw new IllegalStateException("a task broke off", e);
                    }
                }
            }
        }

        /// What one task tells and asks.
        private final class Own implements Work {
            private final int index;

            Own(int index) {
                this.index = index;
            }

            @Override
            public boolean goesOn() {
                return Round.this.goesOn();
            }

            @Override
            public void report(double share) {
                shares.set(index, share);
            }

            @Override
            public Executor spare() {
                return Round.this::help;
            }
        }

        /// Hands a piece of work to a free thread, if there is one. Whoever waits for a thread for a task comes first.
        private void help(Runnable piece) {
            try {
                if (!free.tryAcquire(0, TimeUnit.SECONDS)) {
                    return;
                }
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
                return;
            }
            pool.execute(() -> {
                try {
                    piece.run();
                } finally {
                    free.release();
                }
            });
        }
    }

    /// How far each task is.
    private static final class Shares {
        private final double[] shares;
        private final Progress progress;

        Shares(int jobs, Progress progress) {
            this.shares = new double[jobs];
            this.progress = progress;
        }

        synchronized void set(int index, double share) {
            shares[index] = Math.clamp(share, 0, 1);
            double sum = 0;
            for (double each : shares) {
                sum += each;
            }
            progress.hear(sum / shares.length);
        }
    }
}
