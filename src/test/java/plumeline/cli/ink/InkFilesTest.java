package plumeline.cli.ink;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.desk.InkFolder;
import plumeline.desk.Outcome;
import plumeline.desk.Refusal;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plume.InkCourse;
import plumeline.plume.InkRun;
import plumeline.plume.InkTries;

/// What `ink` keeps: foreign and damaged files, tries put down and taken up again, a folder in use.
final class InkFilesTest extends InkTyped {
    /// What a file manager leaves, or a record that was damaged, is passed over.
    @Test
    void foreignAndDamagedFiles_stopNoCommand() throws IOException {
        run();
        Path ofPlan = folder.resolve("film.ink");
        Files.writeString(ofPlan.resolve("note.txt"), "mind the seal");
        Path record;
        try (var files = Files.walk(ofPlan)) {
            record = files.filter(file -> file.endsWith("record.ink"))
                    .findFirst()
                    .orElseThrow();
        }
        byte[] whole = Files.readAllBytes(record);
        for (int at = 0; at < whole.length; at += Math.max(1, whole.length / 60)) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 0x55;
            assertThat(plumeline.plume.RecordBytes.read(damaged)).isEmpty();
        }
        whole[whole.length / 2] ^= 0x55;
        Files.write(record, whole);
        assertThat(all(List.of("solve", plan.toString()))).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).doesNotContain("In the simulation");
    }

    private static void damage(Path file, double atShare) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[(int) (atShare * (bytes.length - 1))] ^= 0x20;
        Files.write(file, bytes);
    }

    /// Damaged in its head, its frames or its end, cut short or emptied: that try is run again, the other one isn't,
    /// and what is said in the end is the same.
    @Test
    void damagedFilm_isNoticedAndThatTryRunAgain() throws IOException {
        run();
        String first = out.toString(UTF_8);
        Path film = inks().resolve("run-2.dye");
        byte[] whole = Files.readAllBytes(film);
        for (double at : new double[] {0.003, 0.4, 0.7, 1}) {
            damage(film, at);
            checkRunAgain(film, first);
            assertThat(Files.readAllBytes(film)).isEqualTo(whole);
        }
        for (int length : new int[] {0, 20, whole.length / 2, whole.length - 1}) {
            Files.write(film, java.util.Arrays.copyOf(whole, length));
            checkRunAgain(film, first);
        }
        Files.writeString(film, "mind the seal");
        checkRunAgain(film, first);
    }

    private void checkRunAgain(Path film, String answer) {
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .startsWith("plumeline: " + film + " is damaged; try 2 is run again\nplumeline: 1 try into ")
                .contains("; 1 more computed before");
        assertThat(out.toString(UTF_8)).isEqualTo(answer);
    }

    @Test
    void damagedRecord_isMadeAgainOfTheFilms() throws IOException {
        run();
        String first = out.toString(UTF_8);
        Path record = inks().resolve("record.ink");
        damage(record, 0.5);
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .startsWith("plumeline: " + record + " is damaged; the films are looked at again\n")
                .doesNotContain("into");
        assertThat(out.toString(UTF_8)).isEqualTo(first);
    }

    /// A try that was put down and is damaged since, in its film or in its state, begins anew.
    @Test
    void damagedBeginning_beginsAnew() throws IOException, Refusal {
        InkRun.Task task = task();
        try (InkFolder parts = InkFolder.open(folder.resolve("parts"), "one", "", task.key());
                InkFolder whole = InkFolder.open(folder.resolve("whole"), "one", "", task.key())) {
            Jobs.run(List.of(new InkJob(task, whole, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
            for (String name : List.of("run-1.stop", "run-1.dye.part")) {
                var stop = new Stop();
                Progress stopping = share -> {
                    if (share > 0.4) {
                        stop.ask();
                    }
                };
                Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), stopping, stop);
                damage(parts.path().resolve(name), 0.5);
                err.reset();
                Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
                assertThat(err.toString(UTF_8))
                        .as(name)
                        .isEqualTo("plumeline: what was kept of try 1 is damaged; it begins anew\n");
                assertThat(Files.readAllBytes(parts.film(1))).isEqualTo(Files.readAllBytes(whole.film(1)));
                Files.delete(parts.film(1));
            }
        }
    }

    private static InkRun.Task task() throws Refusal {
        Plan read = Plans.read(PLAN.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        InkChoice choice = InkChoice.of(read, read.shots().getFirst(), Optional.empty());
        var course = new InkCourse(0.015, 1, new InkCourse.Until.Time(0.6));
        return new InkTries(choice.stage(), choice.valuesSi(), choice.ink(), course).task(1);
    }

    @Test
    void stopped_goesOnToTheSameBytes() throws IOException, Refusal {
        InkRun.Task task = task();
        try (InkFolder whole = InkFolder.open(folder.resolve("whole"), "one", "", task.key());
                InkFolder parts = InkFolder.open(folder.resolve("parts"), "one", "", task.key())) {
            var unstopped =
                    Jobs.run(List.of(new InkJob(task, whole, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
            assertThat(unstopped).isEqualTo(new Result.Whole<>(List.of(31)));
            int rounds = 0;
            boolean done = false;
            while (!done) {
                var stop = new Stop();
                double from = rounds * 0.3;
                Progress stopping = share -> {
                    if (share > from + 0.3 && share < 1) {
                        stop.ask();
                    }
                };
                done = Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), stopping, stop)
                        instanceof Result.Whole<?>;
                assertThat(parts.part(1).toFile().exists()).isEqualTo(!done);
                assertThat(parts.film(1).toFile().exists()).isEqualTo(done);
                rounds++;
            }
            assertThat(rounds).isGreaterThan(2);
            assertThat(Files.readAllBytes(parts.film(1))).isEqualTo(Files.readAllBytes(whole.film(1)));
        }
    }

    @Test
    void folderInUse_isRefused() throws IOException, Refusal {
        run();
        String name = inks().getFileName().toString();
        Path lock = inks().resolve(".lock");
        try (var channel = java.nio.channels.FileChannel.open(lock, java.nio.file.StandardOpenOption.WRITE);
                var held = channel.lock()) {
            assertThat(held.isValid()).as(name).isTrue();
            assertThat(run()).isEqualTo(Outcome.REFUSED);
            assertThat(err.toString(UTF_8)).contains("this ink is being run already");
        }
    }
}
