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
        assertThat(Jobs.run(squares(40), threads, _ -> {}, new Stop())).isEqualTo(new Result.Whole<>(expected));
    }

    @Test
    void progress_oneThread_risesToAllOfIt() throws IOException {
        var heard = new ArrayList<Double>();
        Jobs.run(squares(4), 1, heard::add, new Stop());
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
        assertThat(Jobs.run(List.of(endless, endless, endless), 1, _ -> {}, stop))
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
        assertThatThrownBy(() -> Jobs.run(List.of(endless, failing), 2, _ -> {}, new Stop()))
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
        assertThat(Jobs.run(List.of(job), 2, _ -> {}, new Stop())).isEqualTo(new Result.Whole<>(List.of(true)));
    }

    @Test
    void spare_noThreadFree_dropsThePiece() throws IOException {
        var done = new AtomicInteger();
        Job<Integer> job = work -> {
            work.spare().execute(done::incrementAndGet);
            return 1;
        };
        Jobs.run(List.of(job), 1, _ -> {}, new Stop());
        assertThat(done).hasValue(0);
    }

    @Test
    void noTasks_areDone() throws IOException {
        assertThat(Jobs.run(List.<Job<Integer>>of(), 3, _ -> {}, new Stop())).isEqualTo(new Result.Whole<>(List.of()));
    }
}
