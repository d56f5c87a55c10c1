package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/// Damaged files are refused, or read as finite values; nothing is thrown.
final class LampFileFuzzTest {
    private static final long SEED = 20_261_130;
    private static final int CASES = 12_000;
    private static final int HEAVY_BYTES = 1 << 20;
    private static final int LONGEST_SENTENCE = 400;
    private static final List<String> WORDS = List.of(
            "NaN",
            "Infinity",
            "-1",
            "0",
            "1e400",
            "1e300",
            "1e-320",
            "10000000",
            "-0",
            "2147483648",
            "1e9",
            "TILT=",
            "\n",
            "\r",
            ",",
            "0x10",
            "1d",
            " ",
            "\u0000",
            "\u00ff",
            "[LAMP]",
            "360",
            "90",
            "1 2 3 4 5 6 7 8 9 ",
            "9".repeat(5000));

    @Test
    void damagedFiles_areRefusedOrFinite() {
        var random = new SplittableRandom(SEED);
        List<byte[]> valid = validFiles();
        int read = 0;
        for (int i = 0; i < CASES; i++) {
            byte[] bytes = damaged(valid.get(i % valid.size()), random);
            read += checkAll(bytes, "seed " + SEED + " case " + i);
        }
        assertThat(read).as("files that were still read").isBetween(CASES / 20, CASES * 19 / 20);
    }

    @Test
    void noise_isRefused() {
        var random = new SplittableRandom(SEED);
        for (int i = 0; i < 200; i++) {
            byte[] bytes = new byte[random.nextInt(2000)];
            random.nextBytes(bytes);
            assertThat(checkAll(bytes, "seed " + SEED + " noise " + i)).isZero();
        }
    }

    @Test
    void heavyFiles_areRefused() {
        String head = "IESNA91\nTILT=NONE\n";
        for (String unit :
                List.of(" ", "\n", ",", "\r", "1", "1\n", "[", "[LAMP] x\n", "TILT\n", "x", "\t ,", "1 1 2 2 1 1 1 ")) {
            String filler = unit.repeat(HEAVY_BYTES / unit.length());
            assertThat(checkAll(WrittenLamp.bytes(filler + "x"), "much of " + unit))
                    .isZero();
            assertThat(checkAll(WrittenLamp.bytes(head + filler + "x"), "much of " + unit))
                    .isZero();
            assertThat(checkAll(WrittenLamp.bytes("IESNA91\n" + filler + "x"), "much of " + unit))
                    .isZero();
        }
    }

    @Test
    void undamagedFiles_areRead() {
        for (byte[] bytes : validFiles()) {
            assertThat(LampFile.read(bytes)).isInstanceOf(LampFile.Read.class);
        }
    }

    private static List<byte[]> validFiles() {
        List<Double> whole = WrittenLamp.steps(0, 315, 45);
        WrittenLamp uneven = WrittenLamp.uneven();
        WrittenLamp both = WrittenLamp.twiceMirrored();
        return List.of(
                WrittenLamp.bytes(uneven.lm63(WrittenLamp.steps(0, 360, 45))),
                WrittenLamp.bytes(uneven.eulumdat(0, whole, whole)),
                WrittenLamp.bytes(both.lm63(WrittenLamp.steps(0, 90, 45))),
                WrittenLamp.bytes(both.eulumdat(4, whole, WrittenLamp.steps(0, 90, 45))),
                WrittenLamp.bytes(both.lm63(List.of(0.0)).replace("NONE", "INCLUDE\r\n1 2\r\n0 90\r\n1 0.9")),
                WrittenLamp.bytes(both.eulumdat(3, whole, List.of(270.0, 315.0, 0.0, 45.0, 90.0))));
    }

    /// Reads bytes in each way; 1 where the form that is seen from the text was read.
    private static int checkAll(byte[] bytes, String which) {
        check(LampFile.readLm63(bytes), bytes, which);
        check(LampFile.readEulumdat(bytes), bytes, which);
        LampFile file = LampFile.read(bytes);
        check(file, bytes, which);
        return file instanceof LampFile.Read ? 1 : 0;
    }

    private static void check(LampFile file, byte[] bytes, String which) {
        switch (file) {
            case LampFile.Refused(int line, String found, String accepted) -> {
                assertThat(line).as(which).isBetween(1, lines(bytes));
                assertThat(found).as(which).isNotBlank().hasSizeLessThan(LONGEST_SENTENCE);
                assertThat(accepted).as(which).isNotBlank().hasSizeLessThan(LONGEST_SENTENCE);
            }
            case LampFile.Read(Photometry photometry) -> checkFinite(photometry, which);
        }
    }

    private static void checkFinite(Photometry photometry, String which) {
        IntensityTable intensity = photometry.intensity();
        assertThat(intensity.fluxLumens()).as(which).isFinite().isNotNegative();
        assertThat(intensity.peakCandelas()).as(which).isFinite().isPositive();
        for (int i = 0; i <= 24; i++) {
            double candelas = intensity.candelas(i * 0.7 - 4, i * Math.PI / 24);
            assertThat(candelas).as(which).isBetween(0.0, intensity.peakCandelas() * (1 + 1e-12));
        }
        intensity
                .findBeamRadians(1)
                .ifPresent(width -> assertThat(width).as(which).isBetween(0.0, 2 * Math.PI));
        intensity
                .findFieldRadians(0)
                .ifPresent(width -> assertThat(width).as(which).isBetween(0.0, 2 * Math.PI));
        assertThat(photometry.watts()).as(which).isFinite();
        assertThat(photometry.opening().c0Metres() + photometry.opening().c90Metres())
                .as(which)
                .isFinite();
    }

    private static int lines(byte[] bytes) {
        return 1
                + (int) IntStream.range(0, bytes.length)
                        .filter(i -> bytes[i] == '\n' || bytes[i] == '\r')
                        .count();
    }

    private static byte[] damaged(byte[] valid, SplittableRandom random) {
        byte[] bytes = valid.clone();
        for (int times = 1 + random.nextInt(3); times > 0; times--) {
            bytes = damagedOnce(bytes, random);
        }
        return bytes;
    }

    private static byte[] damagedOnce(byte[] bytes, SplittableRandom random) {
        if (bytes.length == 0) {
            return bytes;
        }
        int at = random.nextInt(bytes.length);
        return switch (random.nextInt(6)) {
            case 0 -> flipped(bytes, at, 1 << random.nextInt(8));
            case 1 -> java.util.Arrays.copyOf(bytes, at);
            case 2 -> inserted(bytes, at, WORDS.get(random.nextInt(WORDS.size())));
            case 3 -> withDigit(bytes, at, random.nextInt(10));
            case 4 -> inserted(bytes, at, Integer.toString(random.nextInt(1000)));
            default -> withLines(bytes, random);
        };
    }

    private static byte[] flipped(byte[] bytes, int at, int bit) {
        byte[] flipped = bytes.clone();
        flipped[at] ^= (byte) bit;
        return flipped;
    }

    /// Another digit where there is one, from there on.
    private static byte[] withDigit(byte[] bytes, int at, int digit) {
        byte[] changed = bytes.clone();
        int place = at;
        while (place < bytes.length - 1 && !Character.isDigit(bytes[place])) {
            place++;
        }
        changed[place] = (byte) ('0' + digit);
        return changed;
    }

    private static byte[] inserted(byte[] bytes, int at, String word) {
        var out = new ByteArrayOutputStream();
        out.write(bytes, 0, at);
        out.writeBytes(word.getBytes(StandardCharsets.ISO_8859_1));
        out.write(bytes, at, bytes.length - at);
        return out.toByteArray();
    }

    /// A line repeated, left out, or two of them swapped.
    private static byte[] withLines(byte[] bytes, SplittableRandom random) {
        var lines = new ArrayList<>(List.of(new String(bytes, StandardCharsets.ISO_8859_1).split("\n", -1)));
        int at = random.nextInt(lines.size());
        switch (random.nextInt(3)) {
            case 0 -> lines.addAll(at, Collections.nCopies(1 + random.nextInt(50), lines.get(at)));
            case 1 -> lines.remove(at);
            default -> Collections.swap(lines, at, random.nextInt(lines.size()));
        }
        return String.join("\n", lines).getBytes(StandardCharsets.ISO_8859_1);
    }
}
