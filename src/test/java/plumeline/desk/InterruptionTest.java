package plumeline.desk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/// Ctrl-C while something is run, as the hook sees it.
final class InterruptionTest {
    @Test
    void nothingHappened_workGoesOn() {
        try (var interruption = new Interruption()) {
            assertThat(interruption.stop().isAsked()).isFalse();
        }
    }

    @Test
    void interrupted_asksToStopAndWaitsUntilThingsArePutDown() throws InterruptedException {
        Thread hook;
        try (var interruption = new Interruption()) {
            hook = new Thread(interruption::askAndWait);
            hook.start();
            while (!interruption.stop().isAsked()) {
                Thread.onSpinWait();
            }
            // It can't be over: nobody has said yet that things are put down.
            assertThat(hook.isAlive()).isTrue();
        }
        hook.join();
        assertThat(hook.isAlive()).isFalse();
    }

    @Test
    void putDownBefore_waitsForNobody() throws InterruptedException {
        var interruption = new Interruption();
        interruption.close();
        Thread hook = new Thread(interruption::askAndWait);
        hook.start();
        hook.join();
        assertThat(interruption.stop().isAsked()).isTrue();
    }
}
