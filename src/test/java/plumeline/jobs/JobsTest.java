package plumeline.jobs;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class JobsTest {
    private static List<Job<Integer>> squares(int count) {
        List<Job<Integer>> jobs = new ArrayList<>();
        for (int n = 0; n < count; n++) {
            int number = n;
            jobs.add(work -> {
                work.report(0.5);
                return number * number;
            });
        }
        return jobs;
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7})
    void run_anyThreads_givesResultsInTheOrderOfTasks(int threads) throws IOException {
        var expected = new ArrayList<Integer>();
        for (int n = 0; n < 40; n++) {
            expected.add(n * n);
        }
        assertThat(Jobs.run(squares(40), Jobs.Threads.each(threads), _ -> {}, new Stop()))
                .isEqualTo(new Result.Whole<>(expected));
    }

    @Test
    void progress_oneThread_risesToAllOfIt() throws IOException {
        var heard = new ArrayList<Double>();
        Jobs.run(squares(4), Jobs.Threads.each(1), heard::add, new Stop());
        assertThat(heard).containsExactly(0.125, 0.25, 0.375, 0.5, 0.625, 0.75, 0.875, 1.0);
    }

    @Test
    void stop_asked_endsTasksAndBeginsNoMore() throws IOException {
        var stop = new Stop();
        var begun = new AtomicInteger();
        Job<Integer> endless = work -> {
            begun.incrementAndGet();
            stop.ask();
            int rounds = 0;
            while (work.goesOn()) {
                rounds++;
            }
            return rounds;
        };
        assertThat(Jobs.run(List.of(endless, endless, endless), Jobs.Threads.each(1), _ -> {}, stop))
                .isEqualTo(new Result.Stopped<>());
        assertThat(begun).hasValue(1);
    }

    @Test
    void failingTask_stopsTheOthersAndIsThrown() {
        Job<Integer> failing = _ -> {
            throw new IOException("no room on the disk");
        };
        Job<Integer> endless = work -> {
            int rounds = 0;
            while (work.goesOn()) {
                rounds++;
            }
            return rounds;
        };
        assertThatThrownBy(() -> Jobs.run(List.of(endless, failing), Jobs.Threads.each(2), _ -> {}, new Stop()))
                .isInstanceOf(IOException.class)
                .hasMessage("no room on the disk");
    }

    @Test
    void spare_freeThread_takesAPiece() throws IOException {
        var taken = new CountDownLatch(1);
        Job<Boolean> job = work -> {
            while (taken.getCount() > 0) {
                work.spare().execute(taken::countDown);
            }
            return true;
        };
        assertThat(Jobs.run(List.of(job), Jobs.Threads.each(2), _ -> {}, new Stop()))
                .isEqualTo(new Result.Whole<>(List.of(true)));
    }

    /// With two threads for one task at a time the second one helps, and no second task begins.
    @Test
    void fewTasksAtATime_leaveThreadsToHelp() throws IOException {
        var underWay = new AtomicInteger();
        var most = new AtomicInteger();
        List<Job<Integer>> jobs = new ArrayList<>();
        for (int n = 0; n < 6; n++) {
            int number = n;
            jobs.add(work -> {
                most.accumulateAndGet(underWay.incrementAndGet(), Math::max);
                var taken = new CountDownLatch(1);
                while (taken.getCount() > 0) {
                    work.spare().execute(taken::countDown);
                }
                underWay.decrementAndGet();
                return number;
            });
        }
        assertThat(Jobs.run(jobs, new Jobs.Threads(2, 1), _ -> {}, new Stop()))
                .isEqualTo(new Result.Whole<>(List.of(0, 1, 2, 3, 4, 5)));
        assertThat(most).hasValue(1);
    }

    @Test
    void threads_outOfRange_areRefused() {
        assertThatThrownBy(() -> Jobs.Threads.each(0)).hasMessage("threads must be 1 to 256, given 0");
        assertThatThrownBy(() -> Jobs.Threads.each(257)).hasMessage("threads must be 1 to 256, given 257");
        assertThatThrownBy(() -> new Jobs.Threads(2, 3)).hasMessage("tasks at a time must be 1 to 2, given 3");
        assertThatThrownBy(() -> new Jobs.Threads(2, 0)).hasMessage("tasks at a time must be 1 to 2, given 0");
    }

    @Test
    void spare_noThreadFree_dropsThePiece() throws IOException {
        var done = new AtomicInteger();
        Job<Integer> job = work -> {
            work.spare().execute(done::incrementAndGet);
            return 1;
        };
        Jobs.run(List.of(job), Jobs.Threads.each(1), _ -> {}, new Stop());
        assertThat(done).hasValue(0);
    }

    @Test
    void noTasks_areDone() throws IOException {
        assertThat(Jobs.run(List.<Job<Integer>>of(), Jobs.Threads.each(3), _ -> {}, new Stop()))
                .isEqualTo(new Result.Whole<>(List.of()));
    }
}
