package plumeline.light;

import static org.assertj.core.api.Assertions.assertThat;
import static plumeline.light.WrittenLamp.at;
import static plumeline.light.WrittenLamp.near;
import static plumeline.light.WrittenLamp.read;
import static plumeline.light.WrittenLamp.refuse;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/// How LM-63 files are read, and what is refused of them.
final class Lm63Test {
    private static final String SMALL = """
            IESNA:LM-63-1995
            [TEST] ours
            TILT=NONE
            2 500 1 3 1 1 2 0.1 0.2 0
            1 1 30
            0 45 90
            0
            100 60 0
            """;

    private static String with(String from, String to) {
        assertThat(SMALL).contains(from);
        return SMALL.replace(from, to);
    }

    private static void checkRefused(String text, int line, String found, String accepted) {
        assertThat(refuse(text)).isEqualTo(new LampFile.Refused(line, found, accepted));
    }

    @Test
    void aSmallFile_isRead() {
        Photometry lamp = read(SMALL);
        assertThat(at(lamp.intensity(), 200, 45)).isEqualTo(60);
        assertThat(at(lamp.intensity(), 200, 67.5)).isCloseTo(30, near(1e-12));
        assertThat(lamp.opening()).isEqualTo(new Opening(Opening.Shape.RECTANGLE, 0.2, 0.1, 0));
        assertThat(lamp.watts()).isEqualTo(30);
        assertThat(lamp.lamp()).isEmpty();
        assertThat(lamp.statedFlux()).isEqualTo(new Photometry.StatedFlux.OfLamps(1000));
        assertThat(lamp.tilt()).isEqualTo(new Photometry.Tilt.None());
    }

    @ParameterizedTest
    @ValueSource(strings = {"IESNA91", "IESNA:LM-63-2002", "IES:LM-63-2019", "iesna:lm-63-1995 "})
    void allEditions_areRead(String edition) {
        assertThat(read(with("IESNA:LM-63-1995", edition)).intensity().peakCandelas())
                .isEqualTo(100);
    }

    @Test
    void numbers_mayBreakAnywhere() {
        String flowing = with("0 45 90\n0\n100 60 0\n", "0,45\n\n 9.0E1 0 +1e2\t60. \r .0");
        assertThat(at(read(flowing).intensity(), 0, 45)).isEqualTo(60);
        assertThat(at(read(SMALL.replace('\n', '\r')).intensity(), 0, 45)).isEqualTo(60);
    }

    @Test
    void factors_countOnce() {
        String scaled = with("2 500 1 3", "2 500 1.5 3").replace("1 1 30", "0.9 0.8 30");
        assertThat(read(scaled).intensity().peakCandelas()).isCloseTo(100 * 1.5 * 0.9 * 0.8, near(1e-9));
    }

    @Test
    void ofTheLatestEdition_theCodeOfItsMaking_isNoFactor() {
        String scaled = with("IESNA:LM-63-1995", "IES:LM-63-2019").replace("1 1 30", "0.9 1.10000 30");
        assertThat(read(scaled).intensity().peakCandelas()).isCloseTo(90, near(1e-9));
    }

    @Test
    void absolutePhotometry_isNotScaled() {
        Photometry lamp = read(with("2 500 1 3", "1 -1 1 3"));
        assertThat(lamp.intensity().peakCandelas()).isEqualTo(100);
        assertThat(lamp.statedFlux()).isEqualTo(new Photometry.StatedFlux.None());
    }

    @Test
    void lampText_goesOnInMore() {
        String text = with("[TEST] ours", "[LAMP] one\n[MORE] two\n[OTHER] x\n[MORE] not this");
        assertThat(read(text).lamp()).isEqualTo("one two");
    }

    @ParameterizedTest
    @CsvSource({
        "0 0 0, POINT, 0, 0, 0",
        "2 3 0, RECTANGLE, 3, 2, 0",
        "2 3 1, RECTANGLE, 3, 2, 1",
        "-2 0 0, ROUND, 2, 2, 0",
        "-2 -2 0, ROUND, 2, 2, 0",
        "-2 -3 0, ROUND, 3, 2, 0",
        "-2 -2 1, ROUND, 2, 2, 1",
        "-2 -2 -2, BALL, 2, 2, 2",
        "-2 3 -2, TUBE_ALONG_C0, 3, 2, 2",
        "2 -3 -3, TUBE_ALONG_C90, 3, 2, 3",
        "-2 0 -2, OTHER, 0, 2, 2",
        "0 -3 0, OTHER, 3, 0, 0"
    })
    void openings_areTheirSigns(String sizes, Opening.Shape shape, double c0, double c90, double height) {
        assertThat(read(with("0.1 0.2 0", sizes)).opening()).isEqualTo(new Opening(shape, c0, c90, height));
    }

    @Test
    void sizes_mayBeInFeet() {
        Opening opening = read(with("1 2 0.1 0.2 0", "1 1 1 2 0")).opening();
        assertThat(opening.c90Metres()).isCloseTo(0.3048, near(1e-12));
        assertThat(opening.c0Metres()).isCloseTo(0.6096, near(1e-12));
    }

    @Test
    void includedTilt_isKept() {
        Photometry lamp = read(with("TILT=NONE", "TILT=INCLUDE\n1\n3\n0 10 90\n1.0 0.8 0.6"));
        assertThat(lamp.tilt()).isInstanceOf(Photometry.Tilt.Factors.class);
        var tilt = (Photometry.Tilt.Factors) lamp.tilt();
        assertThat(tilt.lampPosition()).isEqualTo(1);
        assertThat(tilt.findFactor(0)).hasValue(1);
        assertThat(tilt.findFactor(Math.toRadians(5)).orElseThrow()).isCloseTo(0.9, near(1e-12));
        assertThat(tilt.findFactor(Math.toRadians(50)).orElseThrow()).isCloseTo(0.7, near(1e-12));
        assertThat(tilt.findFactor(Math.toRadians(90))).hasValue(0.6);
        assertThat(tilt.findFactor(Math.toRadians(91))).isEmpty();
        assertThat(tilt.findFactor(Math.toRadians(-1))).isEmpty();
        assertThat(at(lamp.intensity(), 0, 45)).isEqualTo(60);
    }

    @Test
    void aTiltFile_isRefused() {
        checkRefused(
                with("TILT=NONE", "TILT=mh400.tlt"),
                3,
                "TILT=\"mh400.tlt\", a file of its own, which can't be read",
                "TILT=NONE, or TILT=INCLUDE with that file's numbers after it");
    }

    @Test
    void otherTypes_areRefused() {
        checkRefused(with("3 1 1 2", "3 1 2 2"), 4, "photometric type 2 (type B)", "1 (type C)");
        checkRefused(with("3 1 1 2", "3 1 3 2"), 4, "photometric type 3 (type A)", "1 (type C)");
        checkRefused(with("3 1 1 2", "3 1 4 2"), 4, "photometric type is 4", "a whole number from 1 to 3");
    }

    @Test
    void whatIsOut_isRefusedWithItsLine() {
        String number = "a number of at most 40 characters";
        checkRefused(with("100 60 0", "100 NaN 0"), 8, "intensity is \"NaN\"", number);
        checkRefused(with("100 60 0", "100 0x1p3 0"), 8, "intensity is \"0x1p3\"", number);
        checkRefused(with("100 60 0", "100 1e999 0"), 8, "intensity is \"1e999\"", "a number that isn't endless");
        checkRefused(with("100 60 0", "100 -1 0"), 8, "intensity in cd is -1", "0 to 1.0E12");
        checkRefused(with("100 60 0", "0 0 0"), 8, "no intensity over 0", "at least one");
        checkRefused(
                with("0 45 90", "0 45 45"),
                6,
                "vertical angle 3 is 45 deg after 45",
                "angles that grow, by at least 1.0E-6 deg");
        checkRefused(with("0 45 90", "10 45 90"), 6, "vertical angles from 10 deg", "a first one of 0 or of 90 deg");
        checkRefused(with("0 45 90", "0 45 190"), 6, "vertical angle 3 in degrees is 190", "0 to 180");
        checkRefused(
                with("90\n0\n", "90\n5\n"),
                7,
                "horizontal angles from 5 to 5 deg",
                "0 alone, 0 to 90, 0 to 180, " + "0 to 360, or 90 to 270 deg");
        checkRefused(with("1 1 30", "0 1 30"), 5, "ballast factor is 0", "1.0E-9 to 1.0E9");
        checkRefused(with("2 500", "2.5 500"), 4, "number of lamps is 2.5", "a whole number from 1 to 10000");
        checkRefused(with("2 500", "2 0"), 4, "lumens per lamp is 0", "more than 0, or -1 (absolute)");
    }

    @Test
    void planesWithAHole_areRefused() {
        String holed = with("3 1 1 2", "3 4 1 2").replace("\n0\n100 60 0\n", "\n0 90 180 200\n" + "1 1 1\n".repeat(4));
        checkRefused(
                holed,
                7,
                "the last plane is at 200 deg",
                "planes all round, with no wider gap at the end than between them");
    }

    @Test
    void planesOfZeroAnd360_mustBeOne() {
        String twice =
                with("3 1 1 2", "3 3 1 2").replace("\n0\n100 60 0\n", "\n0 180 360\n100 60 0\n9 9 9\n100 60 2\n");
        checkRefused(twice, 10, "planes 0 and 360 deg differ by 2.0 cd", "one plane, the same within 1 %");
        assertThat(at(read(twice.replace("60 2", "60 1")).intensity(), 360, 90)).isZero();
    }

    @Test
    void wrongCounts_areRefused() {
        checkRefused(with("100 60 0\n", "100 60\n"), 8, "the file's end", "intensity");
        checkRefused(
                with("100 60 0\n", "100 60 0\n7\n"),
                9,
                "more after the last intensity",
                "as many numbers as the " + "counts announce");
        checkRefused(
                with("500 1 3 1", "500 1 1 1"),
                4,
                "number of vertical angles is 1",
                "a whole number from 2 to " + "10000");
        checkRefused(
                with("500 1 3 1", "500 1 10000000 1"),
                4,
                "number of vertical angles is 10000000",
                "a whole number from 2 to 10000");
        checkRefused(with("500 1 3 1", "500 1 10000 10000"), 5, "100000000 intensities announced", "at most 1000000");
        checkRefused(
                with("500 1 3 1", "500 1 1000 1000"),
                5,
                "1002000 numbers announced, where 19 bytes are left",
                "a file that holds them");
    }

    @Test
    void otherFiles_areRefused() {
        String editions = "IESNA91, IESNA:LM-63-1995, IESNA:LM-63-2002, IES:LM-63-2019";
        checkRefused(with("IESNA:LM-63-1995", "my lamp"), 1, "first line is \"MY LAMP\"", editions);
        checkRefused("", 1, "nothing", "an LM-63 or EULUMDAT file");
        checkRefused("\n \n", 1, "nothing", "an LM-63 or EULUMDAT file");
        checkRefused(with("ours", "o\u0000rs"), 2, "a byte of value 0, which is no text", "text");
        checkRefused("IESNA91\nno more", 2, "the file's end", "a line TILT=NONE or TILT=INCLUDE");
    }

    @Test
    void longWords_areRefusedAtOnce() {
        String digits = "7".repeat(1 << 20);
        checkRefused(
                with("100 60", digits + " 60"),
                8,
                "intensity is \"" + "7".repeat(40) + "…\"",
                "a number of at most 40 characters");
        checkRefused(
                with("[TEST] ours", digits),
                2,
                "a line of 1048576 characters",
                "a line TILT=NONE or TILT=INCLUDE of at most 4096");
        checkRefused("7".repeat(5 << 20), 1, "5242880 bytes", "a file of at most 4194304 bytes");
    }

    @Test
    void aVeryLargeTable_isRead() {
        var lamp = new WrittenLamp((c, g) -> 1, WrittenLamp.steps(0, 180, 0.25));
        String text = lamp.lm63(WrittenLamp.steps(0, 359.8, 0.28125));
        assertThat(text).hasSizeGreaterThan(3_500_000).hasSizeLessThan(LampFile.MOST_BYTES);
        assertThat(read(text).intensity().fluxLumens()).isCloseTo(4 * Math.PI, near(1e-4));
    }
}
