package plumeline.sound;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.zip.CRC32;
import org.junit.jupiter.api.Test;
import plumeline.quantity.FrameRate;

/// The bytes of a guide track have not moved, on this machine or another.
final class GuidePinnedTest {
    @Test
    void bytes_areTheSame() {
        SampleGrid grid = Guide.grid(new FrameRate(24, 1));
        Guide guide = Guide.of(
                grid,
                48,
                List.of(
                        new Guide.Heard(0, new Voice.Click(Voice.Beat.FIRST), Pan.MIDDLE, 0),
                        new Guide.Heard(2000, new Voice.Whoosh(List.of(0.2, 0.5, 1.0, 0.5, -0.2)), Pan.MIDDLE, -3),
                        new Guide.Heard(20_000, new Voice.Pour(20_000), new Pan(-1, 0, 1, 0.5), 0),
                        new Guide.Heard(50_000, new Voice.Fizz(20_000), new Pan(1, 0, -1, 0.5), 0),
                        new Guide.Heard(60_000, new Voice.Tone(20_000), Pan.MIDDLE, 0),
                        new Guide.Heard(90_000, new Voice.Tick(), Pan.MIDDLE, 0)));
        CRC32 sum = new CRC32();
        sum.update(Wav.write24(guide.sound()));
        assertThat(Long.toHexString(sum.getValue())).isEqualTo("7ee75690");
    }
}
