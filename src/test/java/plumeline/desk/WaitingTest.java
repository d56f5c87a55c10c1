package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.util.List;
import org.junit.jupiter.api.Test;

/// What is said while shots are solved.
final class WaitingTest {
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private final Console console =
            new Console(new ByteArrayInputStream(new byte[0]), new ByteArrayOutputStream(), err);

    private String told(Waiting waiting) {
        err.reset();
        waiting.tell();
        return err.toString(UTF_8);
    }

    @Test
    void shotsStillUnderWay_areNamed() {
        try (Waiting waiting = Waiting.of(console, List.of("reveal", "plume", "spin"))) {
            assertThat(told(waiting)).isEqualTo("plumeline: solving reveal, plume, spin; 0 of 3 shots done\n");
            waiting.done("plume");
            assertThat(told(waiting)).isEqualTo("plumeline: solving reveal, spin; 1 of 3 shots done\n");
            waiting.done("reveal");
            waiting.done("spin");
            assertThat(told(waiting)).isEmpty();
        }
    }

    @Test
    void oneShot_isNotCounted() {
        try (Waiting waiting = Waiting.of(console, List.of("plume"))) {
            assertThat(told(waiting)).isEqualTo("plumeline: solving plume\n");
        }
    }
}
