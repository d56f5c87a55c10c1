package plumeline.sound;

import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.util.List;

/// The sound of a WAV file, decoded from its bytes as it is read.
final class WavSound implements Sound {
    private final ByteBuffer bytes;
    private final int samplesPerSecond;
    private final List<Speaker> speakers;
    private final Form form;

    /// How a sample is written.
    enum Form {
        /// Whole, 8 bits, 128 being nothing.
        WHOLE_8(1),
        /// Whole, 16 bits.
        WHOLE_16(2),
        /// Whole, 24 bits.
        WHOLE_24(3),
        /// Whole, 32 bits.
        WHOLE_32(4),
        /// Floating-point, 32 bits.
        FLOATING_32(4),
        /// Floating-point, 64 bits.
        FLOATING_64(8);

        private final int bytesEach;

        Form(int bytesEach) {
            this.bytesEach = bytesEach;
        }

        static Form ofWhole(int bytesEach) {
            return of(List.of(WHOLE_8, WHOLE_16, WHOLE_24, WHOLE_32), bytesEach);
        }

        static Form ofFloating(int bytesEach) {
            return of(List.of(FLOATING_32, FLOATING_64), bytesEach);
        }

        private static Form of(List<Form> forms, int bytesEach) {
            return forms.stream()
                    .filter(form -> form.bytesEach == bytesEach)
                    .findFirst()
                    .orElseThrow(() -> new IllegalArgumentException("no samples of " + bytesEach + " bytes"));
        }

        double sample(ByteBuffer bytes, int at) {
            return switch (this) {
                case WHOLE_8 -> ((bytes.get(at) & 0xFF) - 128) * 0x1p-7;
                case WHOLE_16 -> bytes.getShort(at) * 0x1p-15;
                case WHOLE_24 ->
                    ((bytes.get(at) & 0xFF) | (bytes.get(at + 1) & 0xFF) << 8 | bytes.get(at + 2) << 16) * 0x1p-23;
                case WHOLE_32 -> bytes.getInt(at) * 0x1p-31;
                case FLOATING_32 -> bytes.getFloat(at);
                case FLOATING_64 -> bytes.getDouble(at);
            };
        }
    }

    WavSound(ByteBuffer bytes, int samplesPerSecond, List<Speaker> speakers, Form form) {
        this.bytes = bytes.order(ByteOrder.LITTLE_ENDIAN);
        this.samplesPerSecond = samplesPerSecond;
        this.speakers = speakers;
        this.form = form;
    }

    /// The first sample that is infinite, none at all, or so large that its square is; −1 where there is none.
    long findNoNumber() {
        if (form == Form.FLOATING_32 || form == Form.FLOATING_64) {
            int count = bytes.limit() / form.bytesEach;
            for (int i = 0; i < count; i++) {
                double sample = form.sample(bytes, i * form.bytesEach);
                if (!(Math.abs(sample) < 1e9)) {
                    return i / speakers.size();
                }
            }
        }
        return -1;
    }

    @Override
    public int samplesPerSecond() {
        return samplesPerSecond;
    }

    @Override
    public long samples() {
        return bytes.limit() / (form.bytesEach * speakers.size());
    }

    @Override
    public List<Speaker> speakers() {
        return speakers;
    }

    @Override
    public void read(long first, int count, double[][] into) {
        int block = form.bytesEach * speakers.size();
        int from = Math.toIntExact(first * block);
        for (int channel = 0; channel < speakers.size(); channel++) {
            double[] row = into[channel];
            int at = from + channel * form.bytesEach;
            for (int i = 0; i < count; i++) {
                row[i] = form.sample(bytes, at);
                at += block;
            }
        }
    }
}
