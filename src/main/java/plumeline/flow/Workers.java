package plumeline.flow;

import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntConsumer;
import java.util.function.IntToDoubleFunction;
import org.jspecify.annotations.Nullable;
import plumeline.ranges.Ranges;

/// Who works on a flow's layers. Parts are the same for any number of threads and sums are added part by part, so
/// results are too.
///
/// The thread that steps the flow works along and waits only for parts that others have begun: an executor that is busy
/// or shared makes it slower and never stops it.
public final class Workers {
    private final Executor executor;
    private final int threads;

    private Workers(Executor executor, int threads) {
        this.executor = executor;
        this.threads = threads;
    }

    /// The calling thread alone.
    ///
    /// @return the workers
    public static Workers alone() {
        return new Workers(Runnable::run, 1);
    }

    /// The calling thread and helpers.
    ///
    /// @param executor where helpers run
    /// @param threads how many work at a time, the calling one counted, 1 to 256
    /// @return the workers
    public static Workers of(Executor executor, int threads) {
        Ranges.check(threads >= 1 && threads <= 256, "threads", threads, "1 to 256");
        return new Workers(executor, threads);
    }

    /// Does all parts, 0 to `parts` − 1, in any order, and returns when all are done.
    void each(int parts, IntConsumer part) {
        if (threads == 1 || parts == 1) {
            for (int i = 0; i < parts; i++) {
                part.accept(i);
            }
            return;
        }
        var round = new Round(parts, part);
        for (int i = 1; i < Math.min(threads, parts); i++) {
            executor.execute(round);
        }
        round.run();
        round.await();
    }

    /// The sum of all parts, in the order of their numbers.
    double sum(int parts, IntToDoubleFunction part) {
        double[] each = values(parts, part);
        double sum = 0;
        for (double value : each) {
            sum += value;
        }
        return sum;
    }

    /// The greatest of all parts, at least 0.
    double greatest(int parts, IntToDoubleFunction part) {
        double greatest = 0;
        for (double value : values(parts, part)) {
            greatest = Math.max(greatest, value);
        }
        return greatest;
    }

    private double[] values(int parts, IntToDoubleFunction part) {
        double[] values = new double[parts];
        each(parts, i -> values[i] = part.applyAsDouble(i));
        return values;
    }

    /// One round of parts: whoever is free takes the next.
    private static final class Round implements Runnable {
        private final int parts;
        private final IntConsumer part;
        private final AtomicInteger next = new AtomicInteger();
        private final CountDownLatch open;
        private final AtomicReference<@Nullable Throwable> broken = new AtomicReference<>();

        Round(int parts, IntConsumer part) {
            this.parts = parts;
            this.part = part;
            this.open = new CountDownLatch(parts);
        }

        @Override
        public void run() {
            for (int i = next.getAndIncrement(); i < parts; i = next.getAndIncrement()) {
                try {
                    part.accept(i);
                } catch (RuntimeException | Error e) {
                    broken.compareAndSet(null, e);
                } finally {
                    open.countDown();
                }
            }
        }

        void await() {
            boolean interrupted = false;
            while (open.getCount() > 0) {
                try {
                    open.await();
                } catch (InterruptedException e) {
                    interrupted = true;
                }
            }
            if (interrupted) {
                Thread.currentThread().interrupt();
            }
            Throwable cause = broken.get();
            if (cause != null) {
                throw new IllegalStateException("a part of the flow's work broke off", cause);
            }
        }
    }
}
