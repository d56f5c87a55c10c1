package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/// How much fits into memory.
final class InkMemoryTest {
    private static final long GIGABYTE = 1L << 30;

    private static final Console CONSOLE = new Console(
            new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream(), new ByteArrayOutputStream());

    @TempDir
    private Path folder = Path.of("");

    /// Heaps in which so many cells were seen to go through a try, as megabytes: those are enough.
    @Test
    void cellsThatWereSeenToFit_areNoFewerThanAllowed() {
        assertThat(new InkMemory(50L << 20).mostCells()).isBetween(50_000L, 170_000L);
        assertThat(new InkMemory(140L << 20).mostCells()).isBetween(300_000L, 577_600L);
        assertThat(new InkMemory(300L << 20).mostCells()).isBetween(1_000_000L, 1_320_000L);
    }

    @Test
    void tries_runSoManyAtATimeAsFit() {
        InkMemory memory = new InkMemory(GIGABYTE);
        assertThat(memory.runsAtOnce(100_000, 4)).isEqualTo(4);
        assertThat(memory.runsAtOnce(2_000_000, 4)).isEqualTo(2);
        assertThat(memory.runsAtOnce(memory.mostCells(), 4)).isEqualTo(1);
        assertThat(memory.looksAtOnce(memory.mostCells(), 64)).isBetween(10, 20);
    }

    @Test
    void littleMemory_holdsNothing() {
        assertThat(new InkMemory(16L << 20).mostCells()).isZero();
        assertThat(new InkMemory(16L << 20).runsAtOnce(1000, 4)).isEqualTo(1);
    }

    private void checkTooMany(long megabytes, String cells, String message) {
        List<String> words = List.of(folder.resolve("film.yaml").toString(), "one", "--cells", cells);
        var command = new InkCommand(new InkMemory(megabytes << 20));
        assertThatThrownBy(() -> command.run(Arguments.read(command.usage(), words), CONSOLE))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.getMessage() + "\n  " + refusal.attempt())
                                .contains(message));
        assertThat(folder.resolve("film.ink")).doesNotExist();
    }

    /// Water of 120 x 100 x 160 mm: 1.92 million cells of 1 mm.
    @Test
    void moreCellsThanFit_areRefusedWithWhatWouldBeTaken() throws IOException {
        Files.writeString(folder.resolve("film.yaml"), InkTyped.PLAN);
        checkTooMany(
                256,
                "1 mm",
                "the water would be cut into 1.92 million cells; at most 0.97 million fit into the 0.3 GB of memory"
                        + " that may be used\n  Give --cells 1.3 mm or larger ones, or more memory");
        checkTooMany(20, "1 mm", "at most 0.00 million fit");
        Files.writeString(
                folder.resolve("film.yaml"),
                InkTyped.PLAN
                        .replace("[120 mm, 100 mm, 200 mm]", "[3 m, 3 m, 2 m]")
                        .replace("160 mm}", "1.5 m}"));
        checkTooMany(1024, "1 mm", "cut into more than 100 million cells");
    }
}
