package plumeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.quantity.Print.Hand;
import plumeline.quantity.Print.Rounding;

final class PrintTest {
    private static final Print MM = new Print(PaperUnit.MILLIMETRES);
    private static final Print IN = new Print(PaperUnit.INCHES);
    private static final double INCH = 0.0254;

    @Test
    void millimetres_areWholeOnATapeAndTenthsOnAMotor() {
        assertThat(MM.length(0.0124)).isEqualTo("12 mm");
        assertThat(MM.length(0.0125)).isEqualTo("13 mm");
        assertThat(MM.length(-0.0125)).isEqualTo("-13 mm");
        assertThat(MM.length(-0.0001)).isEqualTo("0 mm");
        assertThat(MM.length(0.01234, Hand.MOTOR)).isEqualTo("12.3 mm");
        assertThat(MM.length(0.012, Hand.MOTOR)).isEqualTo("12.0 mm");
        assertThat(MM.length(-0.00004, Hand.MOTOR)).isEqualTo("0.0 mm");
        assertThat(MM.lengthNumber(1.2, Hand.TAPE)).isEqualTo("1200");
    }

    @Test
    void inches_areSixteenthsInLowestTerms() {
        assertThat(IN.length(2.625 * INCH)).isEqualTo("2 5/8 in");
        assertThat(IN.length(INCH / 16)).isEqualTo("1/16 in");
        assertThat(IN.length(INCH / 2)).isEqualTo("1/2 in");
        assertThat(IN.length(-1.25 * INCH)).isEqualTo("-1 1/4 in");
        assertThat(IN.length(-0.75 * INCH)).isEqualTo("-3/4 in");
        assertThat(IN.length(0.03 * INCH)).isEqualTo("0 in");
        assertThat(IN.length(INCH / 32)).isEqualTo("1/16 in");
        assertThat(IN.length(36 * INCH)).isEqualTo("36 in");
        assertThat(IN.length(0.99 * INCH)).isEqualTo("1 in");
        assertThat(IN.length(1.234 * INCH, Hand.MOTOR)).isEqualTo("1.23 in");
    }

    @Test
    void printedLengths_readBackAsTheRoundedLength() {
        long seed = 16;
        var random = new Random(seed);
        for (int i = 0; i < 2000; i++) {
            double metres = (random.nextDouble() - 0.5) * 4;
            for (Print print : new Print[] {MM, IN}) {
                for (Hand hand : Hand.values()) {
                    String what = "seed " + seed + " round " + i + " " + print + " " + hand;
                    double rounded = print.roundMetres(metres, hand);
                    assertThat(Quantities.get(print.length(metres, hand)).si())
                            .as(what)
                            .isCloseTo(rounded, within(1e-12));
                    assertThat(Math.abs(rounded - metres)).as(what).isLessThan(print.stepMetres(hand) * 0.5001);
                    assertThat(print.length(rounded, hand)).as(what).isEqualTo(print.length(metres, hand));
                }
            }
        }
    }

    @Test
    void everySixteenth_printsExactly() {
        for (int sixteenths = -64; sixteenths <= 64; sixteenths++) {
            double metres = sixteenths * INCH / 16;
            assertThat(Quantities.get(IN.length(metres)).value()).isEqualTo(sixteenths / 16.0);
            assertThat(IN.roundMetres(metres, Hand.TAPE)).isCloseTo(metres, within(1e-15));
        }
    }

    @Test
    void differences_areFinerInMillimetresAndSixteenthsInInches() {
        checkDifferences(MM, Hand.TAPE, 0.0074, "7 mm", "7");
        checkDifferences(MM, Hand.TAPE, 0.0076, "8 mm", "7");
        checkDifferences(MM, Hand.TAPE, 0.002, "2 mm", "2");
        checkDifferences(MM, Hand.TAPE, 0.00188, "1.9 mm", "1.8");
        checkDifferences(MM, Hand.MOTOR, 0.00004, "under 0.1 mm", "0.0");
        checkDifferences(MM, Hand.TAPE, 0, "under 0.1 mm", "0.0");
        checkDifferences(IN, Hand.TAPE, 2.7 * INCH, "2 11/16 in", "2 11/16");
        checkDifferences(IN, Hand.TAPE, 0.99 * INCH / 8, "1/8 in", "1/16");
        checkDifferences(IN, Hand.TAPE, INCH / 8, "1/8 in", "1/8");
        // A placing error of 2 mm is 1.26 sixteenths.
        checkDifferences(IN, Hand.TAPE, 0.002, "1/16 in", "1/16");
        checkDifferences(IN, Hand.TAPE, 0.00178, "1/16 in", "1/16");
        checkDifferences(IN, Hand.TAPE, INCH / 32, "1/16 in", "0");
        checkDifferences(IN, Hand.TAPE, 0.0005, "under 1/16 in", "0");
        checkDifferences(IN, Hand.TAPE, 0.0001, "under 1/16 in", "0");
        checkDifferences(IN, Hand.MOTOR, 0.0123, "0.48 in", "0.48");
        checkDifferences(IN, Hand.MOTOR, 0.00178, "0.07 in", "0.07");
    }

    private static void checkDifferences(Print print, Hand hand, double metres, String nearest, String down) {
        assertThat(print.difference(metres, hand)).isEqualTo(nearest);
        assertThat(print.differenceNumber(metres, hand, Rounding.DOWN)).isEqualTo(down);
    }

    @Test
    void differencesRoundedDown_neverGrowAndReadBack() {
        long seed = 32;
        var random = new Random(seed);
        for (int i = 0; i < 5000; i++) {
            double metres = Math.pow(10, -6 + 6 * random.nextDouble());
            for (Print print : new Print[] {MM, IN}) {
                for (Hand hand : Hand.values()) {
                    String what = "seed " + seed + " round " + i + " " + print + " " + hand + " " + metres;
                    double down = print.roundDifferenceMetres(metres, hand, Rounding.DOWN);
                    assertThat(down).as(what).isBetween(metres - 0.0254 / 16, metres + 1e-9);
                    String text = print.differenceNumber(metres, hand, Rounding.DOWN) + " " + print.lengthUnit();
                    assertThat(Quantities.get(text).si()).as(what).isCloseTo(down, within(1e-12));
                }
            }
        }
    }

    @Test
    void angles_areWholeOrTenths() {
        assertThat(Print.degrees(Math.toRadians(39.4))).isEqualTo("39 deg");
        assertThat(Print.degrees(Math.toRadians(-0.4))).isEqualTo("0 deg");
        assertThat(Print.degrees(Math.toRadians(-30))).isEqualTo("-30 deg");
        assertThat(Print.fineDegrees(Math.toRadians(39.46))).isEqualTo("39.5 deg");
        assertThat(Print.fineDegrees(Math.toRadians(39))).isEqualTo("39.0 deg");
    }

    @Test
    void stops_areInThirds() {
        assertThat(Print.stops(0)).isEqualTo("0 stops");
        assertThat(Print.stops(0.32)).isEqualTo("1/3 stops");
        assertThat(Print.stops(2 / 3.0)).isEqualTo("2/3 stops");
        assertThat(Print.stops(1)).isEqualTo("1 stop");
        assertThat(Print.stops(-1)).isEqualTo("-1 stop");
        assertThat(Print.stops(1.7)).isEqualTo("1 2/3 stops");
        assertThat(Print.stops(-2.32)).isEqualTo("-2 1/3 stops");
        assertThat(Print.stops(-0.1)).isEqualTo("0 stops");
    }

    @Test
    void otherNumbers_haveNoTrailingZerosAndNoNegativeZero() {
        assertThat(Print.share(0.125, 1)).isEqualTo("12.5 %");
        assertThat(Print.share(0.3, 0)).isEqualTo("30 %");
        assertThat(Print.seconds(1.25, 2)).isEqualTo("1.25 s");
        assertThat(Print.seconds(1.2, 2)).isEqualTo("1.2 s");
        assertThat(Print.number(-0.001, 2)).isEqualTo("0");
        assertThat(Print.number(1200, 0)).isEqualTo("1200");
        assertThat(Print.number(2.675, 2)).isEqualTo("2.68");
    }

    @Test
    void theMachinesLocale_changesNothing() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.forLanguageTag("ar-EG-u-nu-arab"));
            assertThat(MM.length(0.01234, Hand.MOTOR)).isEqualTo("12.3 mm");
            assertThat(Print.number(1234.5, 1)).isEqualTo("1234.5");
            assertThat(Quantity.of(0.0665, Unit.MILLIMETRE).toText()).isEqualTo("66.5 mm");
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void takesInTen_areWholeTakes_andNeverNoneOrAll() {
        assertThat(Print.takesInTen(0)).isEqualTo("fewer than 1 take in 10");
        assertThat(Print.takesInTen(0.049)).isEqualTo("fewer than 1 take in 10");
        assertThat(Print.takesInTen(0.05)).isEqualTo("about 1 take in 10");
        assertThat(Print.takesInTen(0.74)).isEqualTo("about 7 takes in 10");
        assertThat(Print.takesInTen(0.949)).isEqualTo("about 9 takes in 10");
        assertThat(Print.takesInTen(0.95)).isEqualTo("more than 9 takes in 10");
        assertThat(Print.takesInTen(1)).isEqualTo("more than 9 takes in 10");
    }
}
