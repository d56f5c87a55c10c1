package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/// How much fits into memory.
final class InkMemoryTest {
    private static final long GIGABYTE = 1L << 30;

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
}
