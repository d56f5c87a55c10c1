package plumeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

final class QuantityTest {
    private static final String LENGTHS = "a length in mm, cm, m, in, ft, µm or nm";

    private static void check(String text, Kind kind, double si) {
        Quantity quantity = Quantities.get(text);
        assertThat(quantity.kind()).as(text).isEqualTo(kind);
        assertThat(quantity.si()).as(text).isCloseTo(si, within(Math.abs(si) * 1e-14 + 1e-300));
        assertThat(Quantities.read(text, kind)).as(text).isInstanceOf(Reading.Read.class);
    }

    private static void checkRefused(String text, Kind kind, String given, String allowed, String attempt) {
        assertThat(Quantities.read(text, kind)).as(text).isEqualTo(new Reading.Refused(given, allowed, attempt));
    }

    @Test
    void everyUnitOfThePlan_isRead() {
        check("66 mm", Kind.LENGTH, 0.066);
        check("2.6 cm", Kind.LENGTH, 0.026);
        check("1 m", Kind.LENGTH, 1);
        check("2 5/8 in", Kind.LENGTH, 0.066675);
        check("10 ft", Kind.LENGTH, 3.048);
        check("550 nm", Kind.LENGTH, 550e-9);
        check("5 µm", Kind.LENGTH, 5e-6);
        check("-30 deg", Kind.ANGLE, -Math.PI / 6);
        check("0.4 s", Kind.TIME, 0.4);
        check("6 ms", Kind.TIME, 0.006);
        check("2 min", Kind.TIME, 120);
        check("24 fps", Kind.RATE, 24);
        check("12 rpm", Kind.TURN_RATE, 0.4 * Math.PI);
        check("20 deg/s", Kind.TURN_RATE, Math.PI / 9);
        check("90 deg/s2", Kind.TURN_ACCELERATION, Math.PI / 2);
        check("80 mm/s", Kind.SPEED, 0.08);
        check("3 in/s", Kind.SPEED, 0.0762);
        check("200 mm/s2", Kind.ACCELERATION, 0.2);
        check("900 mm/s3", Kind.JERK, 0.9);
        check("197 g", Kind.MASS, 0.197);
        check("1 kg", Kind.MASS, 1);
        check("1 lb", Kind.MASS, 0.45359237);
        check("1 oz", Kind.MASS, 0.028349523125);
        check("133.5 ml", Kind.VOLUME, 133.5e-6);
        check("16 floz", Kind.VOLUME, 16 * 29.5735295625e-6);
        check("1.03 g/ml", Kind.DENSITY, 1030);
        check("998 kg/m3", Kind.DENSITY, 998);
        check("20 degC", Kind.TEMPERATURE, 293.15);
        check("120 bpm", Kind.TEMPO, 2);
    }

    @Test
    void oneLengthHoweverSpelt_isOneNumber() {
        for (String spelt : List.of("59 mm", "5.9 cm", "0.059 m")) {
            assertThat(Quantities.get(spelt).si()).as(spelt).isEqualTo(0.059);
        }
        assertThat(Quantities.get("2.6 in").si())
                .isEqualTo(Quantities.get("66.04 mm").si());
    }

    @Test
    void everyUnitOfTheQuestions_isRead() {
        check("5600 K", Kind.COLOUR_TEMPERATURE, 5600);
        check("4000 lx", Kind.ILLUMINANCE, 4000);
        check("900 cd", Kind.INTENSITY, 900);
        check("1200 lm", Kind.FLUX, 1200);
        check("30 %", Kind.SHARE, 0.3);
        check("1.5 stops", Kind.STOPS, 1.5);
        check("1 stop", Kind.STOPS, 1);
        check("3840 px", Kind.PIXELS, 3840);
        check("6 frames", Kind.FRAMES, 6);
        check("-14 LUFS", Kind.LOUDNESS, -14);
        check("-1 dBTP", Kind.TRUE_PEAK, -1);
        check("6 LU", Kind.LOUDNESS_RANGE, 6);
        check("-3 dB", Kind.GAIN, -3);
        check("100 Hz", Kind.FREQUENCY, 100);
        check("300 W", Kind.POWER, 300);
        check("230 V", Kind.VOLTAGE, 230);
        check("16 A", Kind.CURRENT, 16);
        check("2 N", Kind.FORCE, 2);
        check("3 kPa", Kind.PRESSURE, 3000);
        check("19.2 MPa", Kind.PRESSURE, 19.2e6);
        check("400 Mb/s", Kind.BIT_RATE, 4e8);
        check("256 GB", Kind.DATA, 256e9);
        check("0.8 /cm", Kind.ABSORBANCE, 80);
        check("1/48 s", Kind.TIME, 1 / 48.0);
        check("8", Kind.NUMBER, 8);
    }

    @Test
    void examplesOfAllKinds_readAsThatKind() {
        for (Kind kind : Kind.values()) {
            assertThat(Quantities.get(kind.example()).kind()).isEqualTo(kind);
        }
    }

    @Test
    void numbers_mayBeFractionsSignedAndCloseToTheirUnit() {
        check("1/3 m", Kind.LENGTH, 1 / 3.0);
        check("-2 5/8in", Kind.LENGTH, -0.066675);
        check("66mm", Kind.LENGTH, 0.066);
        check("  66  mm ", Kind.LENGTH, 0.066);
        check("+.5 m", Kind.LENGTH, 0.5);
        check("5. m", Kind.LENGTH, 5);
        check("\u22125 m", Kind.LENGTH, -5);
        check("5\u00a0m", Kind.LENGTH, 5);
        check("2e-3 m", Kind.LENGTH, 0.002);
        check("-0 m", Kind.LENGTH, 0);
        check("20°C", Kind.TEMPERATURE, 293.15);
        check("30°", Kind.ANGLE, Math.PI / 6);
        check("1/2 /cm", Kind.ABSORBANCE, 50);
    }

    @Test
    void origins_areTheLastWord() {
        assertThat(Quantities.get("1 m").origin()).isEqualTo(Origin.GIVEN);
        assertThat(Quantities.get("1 m given").origin()).isEqualTo(Origin.GIVEN);
        assertThat(Quantities.get("1 m measured").origin()).isEqualTo(Origin.MEASURED);
        assertThat(Quantities.get("0.02 deg typical").origin()).isEqualTo(Origin.TYPICAL);
        assertThat(Quantities.get("12 mm solved").origin()).isEqualTo(Origin.SOLVED);
        assertThat(Quantities.get("0.20 measured").origin()).isEqualTo(Origin.MEASURED);
        assertThat(Quantities.get("0.20 measured").digits()).isEqualTo("0.20");
    }

    private static void checkSpread(String text, double halfWidthSi) {
        Quantity quantity = Quantities.get(text);
        assertThat(quantity.hasSpread()).as(text).isTrue();
        assertThat(quantity.halfWidthSi()).as(text).isCloseTo(halfWidthSi, within(halfWidthSi * 1e-14));
    }

    @Test
    void spreads_areInTheirUnitOrInPerCentOfTheValue() {
        checkSpread("139 mm ± 1 mm", 0.001);
        checkSpread("139 mm ± 1/16 in measured", 0.0254 / 16);
        checkSpread("139 mm +- 0.1 cm", 0.001);
        checkSpread("139 mm+/-1mm", 0.001);
        checkSpread("-200 mm ± 10 %", 0.02);
        checkSpread("20 degC ± 1 degC", 1);
        checkSpread("68 degF ± 9 degF", 5);
        checkSpread("-14 LUFS ± 1 LU", 1);
        checkSpread("-1 dBTP ± 0.5 dB", 0.5);
        checkSpread("30 % ± 2 %", 0.02);
        checkSpread("8 ± 1", 1);
        checkSpread("0.2 ± 10 % measured", 0.02);
        assertThat(Quantities.get("1 m").hasSpread()).isFalse();
        assertThat(Quantities.get("1 m").halfWidthSi()).isZero();
    }

    @Test
    void illuminance_takesADistance() {
        Quantity light = Quantities.get("4000 lx at 1 m ± 15 % typical");
        assertThat(light.si()).isEqualTo(4000);
        assertThat(light.findAt()).map(Quantity::si).contains(1.0);
        assertThat(light.halfWidthSi()).isCloseTo(600, within(1e-9));
        assertThat(light.origin()).isEqualTo(Origin.TYPICAL);
        assertThat(light.toText()).isEqualTo("4000 lx at 1 m ± 15 % typical");
        assertThat(Quantities.get("4000 lx").findAt()).isEmpty();
        checkRefused(
                "3 mm at 1 m",
                Kind.LENGTH,
                "3 mm at 1 m",
                "without \"at\", which follows an illuminance" + " only",
                "Try 3 mm.");
        checkRefused(
                "4000 lx at 1 s",
                Kind.ILLUMINANCE,
                "4000 lx at 1 s",
                "at a length greater than 0" + " mm",
                "Try 4000 lx at 1 m.");
        checkRefused(
                "4000 lx at 0 m",
                Kind.ILLUMINANCE,
                "4000 lx at 0 m",
                "at a length greater than 0" + " mm",
                "Try 4000 lx at 1 m.");
    }

    @Test
    void bareNumbers_areToldTheirUnit() {
        checkRefused("66", Kind.LENGTH, "a bare number (66)", LENGTHS, "Add the unit: try 66 mm.");
        checkRefused("24", Kind.RATE, "a bare number (24)", "a frame rate in fps", "Add the unit: try 24 fps.");
        checkRefused(
                "-30 measured",
                Kind.ANGLE,
                "a bare number (-30 measured)",
                "an angle in deg or rad",
                "Add" + " the unit: try -30 deg.");
        checkRefused("0.3", Kind.SHARE, "a bare number (0.3)", "a share in %", "Add the unit: try 0.3 %.");
        checkRefused("8 mm", Kind.NUMBER, "8 mm", "a bare number", "Leave out the unit: try 8.");
        checkRefused("eight", Kind.NUMBER, "eight", "a bare number", "Try 8.");
    }

    @Test
    void otherUnits_areRefusedWithTheNearest() {
        checkRefused("66 kg", Kind.LENGTH, "66 kg", LENGTHS, "Try 66 mm.");
        checkRefused("66 MM", Kind.LENGTH, "66 MM", LENGTHS, "\"MM\" is no unit we know: try 66 mm.");
        checkRefused("5 inches", Kind.LENGTH, "5 inches", LENGTHS, "\"inches\" is no unit we know: try 5 in.");
        checkRefused("5 zolls", Kind.LENGTH, "5 zolls", LENGTHS, "\"zolls\" is no unit we know: try 5 mm.");
        checkRefused("mm", Kind.LENGTH, "mm", LENGTHS, "Begin with a number: try 66 mm.");
        checkRefused("", Kind.LENGTH, "empty", LENGTHS, "Try 66 mm.");
        checkRefused(
                "1,5 m",
                Kind.LENGTH,
                "1,5 m",
                "a number without commas",
                "Write a decimal point, and nothing between thousands: try 1.5 m.");
        checkRefused(
                "1,500 mm",
                Kind.LENGTH,
                "1,500 mm",
                "a number without commas",
                "Write a decimal point, and nothing between thousands: try 1500 mm.");
        assertThat(Quantities.read("5 kg", Kind.LENGTH, Kind.TIME))
                .isEqualTo(new Reading.Refused("5 kg", LENGTHS + ", or a time in s, ms, min, h or µs", "Try 5 mm."));
    }

    /// A crew that gives no unit, or the wrong one, means the figure all the same; water's millilitre is a gram.
    @Test
    void figures_areKept_whereOnlyTheUnitIsWrong() {
        checkKept("343", "Add the unit: try 343 g.", Kind.FORCE, Kind.MASS);
        checkKept("355 ml", "Try 355 g.", Kind.MASS);
        checkKept("0.4 l", "Try 0.4 kg.", Kind.MASS);
        checkKept("355 g", "Try 355 ml.", Kind.VOLUME);
        checkKept("1.2 kg ± 5 g", "Try 1.2 l.", Kind.VOLUME);
        checkKept("50 deg", "Try 50 mm.", Kind.LENGTH);
    }

    private static void checkKept(String text, String attempt, Kind... accepted) {
        assertThat(Quantities.read(text, accepted))
                .isInstanceOfSatisfying(
                        Reading.Refused.class,
                        refused -> assertThat(refused.attempt()).isEqualTo(attempt));
    }

    @Test
    void spreadsThatMakeNoSense_areRefused() {
        checkRefused(
                "66 mm ± 1 s",
                Kind.LENGTH,
                "66 mm ± 1 s",
                "a value whose ± is 0 or more, in mm, cm, m, in, ft, µm or nm or in % of the value",
                "Try 66 mm" + " ± 1 mm.");
        checkRefused(
                "66 mm ± 1",
                Kind.LENGTH,
                "66 mm ± 1",
                "a value whose ± is 0 or more, in mm, cm, m, in, ft, µm or nm or in % of the value",
                "Try 66 mm" + " ± 1 mm.");
        checkRefused(
                "66 mm ± -1 mm",
                Kind.LENGTH,
                "66 mm ± -1 mm",
                "a value whose ± is 0 or more, in mm, cm, m, in, ft, µm or nm or in % of the value",
                "Try 66 mm" + " ± 1 mm.");
        checkRefused(
                "20 degC ± 5 %",
                Kind.TEMPERATURE,
                "20 degC ± 5 %",
                "a value whose ± is 0 or more, in degC" + " or degF",
                "Try 20 degC ± 5 degC.");
        checkRefused(
                "-14 LUFS ± 5 %",
                Kind.LOUDNESS,
                "-14 LUFS ± 5 %",
                "a value whose ± is 0 or more, in LUFS or LU",
                "Try -14 LUFS ± 5 LUFS.");
        checkRefused(
                "66 mm guessed",
                Kind.LENGTH,
                "66 mm guessed",
                "value unit [at D] [± spread] [given, measured, typical or solved]",
                "Leave out \"guessed\", or try 66 mm ± 1 % measured.");
    }

    @Test
    void numbersThatNobodyMeans_areRefused() {
        for (String text : List.of(
                "NaN mm",
                "Infinity mm",
                "1e16 mm",
                "1e400 mm",
                "1/0 mm",
                "0/0 mm",
                "0x10" + " mm",
                "--1 mm",
                "1..2 mm",
                "1".repeat(41) + " mm",
                ". mm",
                "- mm",
                "1 2 mm",
                "1/2/3 mm",
                "½ mm",
                "١ mm")) {
            assertThat(Quantities.read(text, Kind.LENGTH)).as(text).isInstanceOf(Reading.Refused.class);
        }
        assertThat(Quantities.get("1e15 m").si()).isEqualTo(1e15);
        assertThat(Quantities.read("2 1/0 mm"))
                .isEqualTo(new Reading.Refused("2 1/0 mm", "a number, not a division by 0", "Try 66 mm."));
    }

    @Test
    void text_readsBackAsAnEqualQuantity() {
        for (String text : List.of(
                "66 mm",
                "-2 5/8 in",
                "4000 lx at 1 m ± 15 % typical",
                "1/48 s",
                "0.20" + " measured",
                "8 ± 1",
                "133.5 ml ± 0.5 ml measured",
                "1.50 stops",
                "-14 LUFS ± 1 LU solved")) {
            assertThat(Quantities.get(text).toText()).isEqualTo(text);
            assertThat(Quantities.get(Quantities.get(text).toText())).isEqualTo(Quantities.get(text));
        }
    }

    @Test
    void ofSi_isWrittenShortAndReadsBack() {
        assertThat(Quantity.of(0.066, Unit.MILLIMETRE).toText()).isEqualTo("66 mm");
        assertThat(Quantity.of(293.15, Unit.CELSIUS).toText()).isEqualTo("20 degC");
        assertThat(Quantity.of(0.3, Unit.PERCENT).toText()).isEqualTo("30 %");
        assertThat(Quantity.of(1 / 3.0, Unit.METRE).toText()).isEqualTo("0.333333333333 m");
        long seed = 12;
        var random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double si = (random.nextDouble() - 0.5) * Math.pow(10, random.nextInt(-6, 7));
            double read = Quantities.get(Quantity.of(si, Unit.INCH).toText()).si();
            assertThat(read).as("seed " + seed + " round " + i).isCloseTo(si, within(Math.abs(si) * 1e-11));
        }
    }

    @Test
    void withSi_keepsTheSpreadsWidth() {
        Quantity moved = Quantities.get("200 mm ± 10 % measured").withSi(0.1);
        assertThat(moved.toText()).isEqualTo("100 mm ± 20 mm measured");
        assertThat(moved.halfWidthSi()).isCloseTo(0.02, within(1e-15));
        assertThat(moved.withOrigin(Origin.SOLVED).toText()).isEqualTo("100 mm ± 20 mm solved");
    }

    @Test
    void quantitiesThatAreNone_areABug() {
        assertThatThrownBy(() -> Quantities.get("red"))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessage("red is red; must be a number and its unit");
        assertThatThrownBy(() -> Quantity.of(Double.NaN, Unit.METRE)).isInstanceOf(RuntimeException.class);
        assertThatThrownBy(() -> Unit.getUnit("furlong")).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void randomText_neverThrows() {
        long seed = 77;
        var random = new Random(seed);
        String alphabet = "0123456789 ./-+±%mscindegeE,at\u2212²°";
        for (int i = 0; i < 50_000; i++) {
            var text = new StringBuilder();
            for (int n = random.nextInt(16); n > 0; n--) {
                text.append(alphabet.charAt(random.nextInt(alphabet.length())));
            }
            Reading reading = Quantities.read(text.toString(), Kind.values()[random.nextInt(Kind.values().length)]);
            if (reading instanceof Reading.Read(Quantity quantity)) {
                assertThat(Quantities.get(quantity.toText()))
                        .as("seed " + seed + " round " + i + "" + " " + text)
                        .isEqualTo(quantity);
            }
        }
    }
}
