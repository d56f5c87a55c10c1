package plumeline.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.MetricPrefix;
import org.junit.jupiter.api.Test;
import plumeline.tidy.Outside;
import tech.units.indriya.AbstractUnit;
import tech.units.indriya.unit.Units;

/// Our table of units against a library of units, and against printed figures.
final class UnitOutsideTest {
    private static final double SAME = 1e-13;

    /// Kinds that no library of physical units has: what one of them is, is a matter of the trade.
    private static final List<Kind> OF_THE_TRADE = List.of(
            Kind.STOPS,
            Kind.PIXELS,
            Kind.FRAMES,
            Kind.LOUDNESS,
            Kind.TRUE_PEAK,
            Kind.LOUDNESS_RANGE,
            Kind.GAIN,
            Kind.BIT_RATE,
            Kind.DATA);

    private static Map<String, javax.measure.Unit<?>> library() {
        var all = new LinkedHashMap<String, javax.measure.Unit<?>>();
        addSpace(all);
        addMotion(all);
        addMatter(all);
        addLightAndPower(all);
        return all;
    }

    private static void addSpace(Map<String, javax.measure.Unit<?>> all) {
        var second = Units.SECOND;
        var inch = inch();
        all.put("mm", MetricPrefix.MILLI(Units.METRE));
        all.put("cm", MetricPrefix.CENTI(Units.METRE));
        all.put("m", Units.METRE);
        all.put("in", inch);
        all.put("ft", inch.multiply(12));
        all.put("µm", MetricPrefix.MICRO(Units.METRE));
        all.put("nm", MetricPrefix.NANO(Units.METRE));
        all.put("deg", degree());
        all.put("rad", Units.RADIAN);
        all.put("s", second);
        all.put("ms", MetricPrefix.MILLI(second));
        all.put("µs", MetricPrefix.MICRO(second));
        all.put("min", Units.MINUTE);
        all.put("h", Units.HOUR);
        all.put("%", Units.PERCENT);
    }

    private static javax.measure.Unit<javax.measure.quantity.Length> inch() {
        return Units.METRE.multiply(254).divide(10_000);
    }

    private static javax.measure.Unit<javax.measure.quantity.Angle> degree() {
        return Units.RADIAN.multiply(Math.PI).divide(180);
    }

    private static void addMotion(Map<String, javax.measure.Unit<?>> all) {
        var second = Units.SECOND;
        var mm = MetricPrefix.MILLI(Units.METRE);
        var turn = degree().multiply(360);
        all.put("fps", AbstractUnit.ONE.divide(second));
        all.put("bpm", AbstractUnit.ONE.divide(Units.MINUTE));
        all.put("Hz", Units.HERTZ);
        all.put("kHz", MetricPrefix.KILO(Units.HERTZ));
        all.put("mm/s", mm.divide(second));
        all.put("cm/s", MetricPrefix.CENTI(Units.METRE).divide(second));
        all.put("m/s", Units.METRE_PER_SECOND);
        all.put("in/s", inch().divide(second));
        all.put("ft/s", inch().multiply(12).divide(second));
        all.put("mm/s2", mm.divide(second.pow(2)));
        all.put("m/s2", Units.METRE_PER_SQUARE_SECOND);
        all.put("in/s2", inch().divide(second.pow(2)));
        all.put("mm/s3", mm.divide(second.pow(3)));
        all.put("m/s3", Units.METRE.divide(second.pow(3)));
        all.put("in/s3", inch().divide(second.pow(3)));
        all.put("rpm", turn.divide(Units.MINUTE));
        all.put("deg/s", degree().divide(second));
        all.put("rad/s", Units.RADIAN.divide(second));
        all.put("deg/s2", degree().divide(second.pow(2)));
        all.put("rad/s2", Units.RADIAN.divide(second.pow(2)));
        all.put("deg/s3", degree().divide(second.pow(3)));
        all.put("rad/s3", Units.RADIAN.divide(second.pow(3)));
    }

    private static void addMatter(Map<String, javax.measure.Unit<?>> all) {
        var pound = Units.KILOGRAM.multiply(45_359_237).divide(100_000_000);
        var ml = MetricPrefix.MILLI(Units.LITRE);
        var cubicCentimetre = MetricPrefix.CENTI(Units.METRE).pow(3);
        all.put("g", Units.GRAM);
        all.put("kg", Units.KILOGRAM);
        all.put("mg", Units.GRAM.divide(1000));
        all.put("lb", pound);
        all.put("oz", pound.divide(16));
        all.put("ml", ml);
        all.put("l", Units.LITRE);
        all.put("cl", MetricPrefix.CENTI(Units.LITRE));
        all.put("cm3", cubicCentimetre);
        all.put("m3", Units.CUBIC_METRE);
        // A gallon of the United States is 231 cubic inches and holds 128 fluid ounces.
        all.put("floz", inch().pow(3).multiply(231).divide(128));
        all.put("g/ml", Units.GRAM.divide(ml));
        all.put("kg/l", Units.KILOGRAM.divide(Units.LITRE));
        all.put("kg/m3", Units.KILOGRAM.divide(Units.CUBIC_METRE));
        all.put("g/cm3", Units.GRAM.divide(cubicCentimetre));
        all.put("l/min", Units.LITRE.divide(Units.MINUTE));
        all.put("ml/s", ml.divide(Units.SECOND));
        all.put("N", Units.NEWTON);
        all.put("mN", MetricPrefix.MILLI(Units.NEWTON));
        all.put("kN", MetricPrefix.KILO(Units.NEWTON));
        all.put("Pa", Units.PASCAL);
        all.put("kPa", MetricPrefix.KILO(Units.PASCAL));
        all.put("MPa", MetricPrefix.MEGA(Units.PASCAL));
        all.put("/cm", AbstractUnit.ONE.divide(MetricPrefix.CENTI(Units.METRE)));
        all.put("/m", AbstractUnit.ONE.divide(Units.METRE));
    }

    private static void addLightAndPower(Map<String, javax.measure.Unit<?>> all) {
        all.put("degC", Units.CELSIUS);
        all.put("degF", Units.KELVIN.multiply(5).divide(9).shift(459.67));
        all.put("K", Units.KELVIN);
        all.put("lx", Units.LUX);
        all.put("cd", Units.CANDELA);
        all.put("lm", Units.LUMEN);
        all.put("W", Units.WATT);
        all.put("kW", MetricPrefix.KILO(Units.WATT));
        all.put("V", Units.VOLT);
        all.put("A", Units.AMPERE);
    }

    @Test
    @Outside(
            source = "library indriya 2.2.4; inch, pound and gallon built there from their" + " definitions",
            kind = "program")
    void everyPhysicalUnit_convertsAsALibraryDoes() throws javax.measure.IncommensurableException {
        int compared = 0;
        for (var each : library().entrySet()) {
            Unit ours = Unit.getUnit(each.getKey());
            javax.measure.Unit<?> theirs = each.getValue();
            var converter = theirs.getConverterToAny(theirs.getSystemUnit());
            for (double value : new double[] {1, 0, -40, 37.5}) {
                double expected = converter.convert(value);
                assertThat(ours.toSi(value))
                        .as(value + " " + ours.symbol())
                        .isCloseTo(expected, within(Math.abs(expected) * SAME + 1e-300));
                assertThat(ours.ofSi(ours.toSi(value))).as(ours.symbol()).isCloseTo(value, within(1e-11));
            }
            compared++;
        }
        assertThat(compared).isEqualTo(72);
    }

    @Test
    @Outside(source = "library indriya 2.2.4", kind = "program")
    void everyUnitOfOurs_isComparedOrOfTheTrade() {
        var left = new ArrayList<String>();
        for (Kind kind : Kind.values()) {
            for (Unit unit : Unit.listUnits(kind)) {
                if (!library().containsKey(unit.symbol()) && !OF_THE_TRADE.contains(kind)) {
                    left.add(unit.symbol());
                }
            }
        }
        assertThat(left).isEmpty();
    }

    @Test
    @Outside(source = "library indriya 2.2.4", kind = "program")
    void unitsOfOneKind_haveOneDimensionThere() {
        var dimensions = new LinkedHashMap<Kind, javax.measure.Dimension>();
        for (var each : library().entrySet()) {
            Kind kind = Unit.getUnit(each.getKey()).kind();
            var dimension = each.getValue().getDimension();
            assertThat(dimension).as(each.getKey()).isEqualTo(dimensions.getOrDefault(kind, dimension));
            dimensions.put(kind, dimension);
        }
        assertThat(dimensions).hasSizeGreaterThan(20);
    }

    @Test
    @Outside(
            source = "from memory of NIST Special Publication 811, Guide for the Use of the International"
                    + " System of Units",
            place = "appendix B, factors for units listed alphabetically",
            kind = "standard",
            printedDigits = 7)
    void printedFactors_agreeToTheirLastDigit() {
        checkFactor("in", 2.54e-2);
        checkFactor("ft", 3.048e-1);
        checkFactor("ft/s", 3.048e-1);
        checkFactor("in/s", 2.54e-2);
        checkFactor("deg", 1.745329e-2);
        checkFactor("rpm", 1.047198e-1);
        checkFactor("oz", 2.834952e-2);
        checkFactor("lb", 4.535924e-1);
        checkFactor("floz", 2.957353e-5);
        checkFactor("l", 1e-3);
        checkFactor("g/cm3", 1e3);
        checkFactor("h", 3.6e3);
        checkFactor("degF", 5.555556e-1);
    }

    private static void checkFactor(String symbol, double printed) {
        double halfLastDigit = 0.5e-6 * Math.pow(10, Math.floor(Math.log10(printed)));
        assertThat(Unit.getUnit(symbol).factor()).as(symbol).isCloseTo(printed, within(halfLastDigit * 1.0001));
    }

    @Test
    @Outside(
            source = "common practice: fixed points and sizes that everybody knows",
            kind = "worked" + " example",
            printedDigits = 4)
    void everydayFigures_agree() {
        checkSi("212 degF", 373.15, 1e-9);
        checkSi("68 degF", 293.15, 1e-9);
        checkSi("-40 degF", Quantities.get("-40 degC").si(), 1e-9);
        checkSi("16 floz", 473.2e-6, 0.05e-6);
        checkSi("1 ft", Quantities.get("12 in").si(), 1e-15);
        checkSi("1 lb", Quantities.get("16 oz").si(), 1e-15);
        checkSi("33 1/3 rpm", Quantities.get("200 deg/s").si(), 1e-12);
        checkSi("120 bpm", 2, 1e-15);
        checkSi("180 deg", Math.PI, 1e-15);
        checkSi("1 g/ml", Quantities.get("1000 kg/m3").si(), 1e-12);
    }

    private static void checkSi(String text, double expected, double tolerance) {
        assertThat(Quantities.get(text).si()).as(text).isCloseTo(expected, within(tolerance));
    }

    @Test
    @Outside(source = "common practice: prefixes of data rates and sizes are powers of ten", kind = "standard")
    void dataUnits_arePowersOfTen() {
        checkSi("1 Mb/s", 1e6, 0);
        checkSi("1 Gb/s", 1e9, 0);
        checkSi("1 kb/s", 1e3, 0);
        checkSi("1 MB", 1e6, 0);
        checkSi("1 GB", 1e9, 0);
        checkSi("1 TB", 1e12, 0);
    }
}
