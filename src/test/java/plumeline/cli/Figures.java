package plumeline.cli;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.stream.Stream;
import org.jspecify.annotations.Nullable;
import tools.jackson.databind.JsonNode;

/// What papers must print for a value of `solve --json`, worked out anew from what the manual says of rounding: whole
/// millimetres, or inches and sixteenths in lowest terms; tenths of a millimetre or hundredths of an inch on a motor;
/// whole degrees, tenths on a motor; one decimal of an f-number; whole per cent. Halves go away from zero.
///
/// @param inInches whether papers are in inches
record Figures(boolean inInches) {
    private static final BigDecimal INCH_MM = new BigDecimal("25.4");

    /// JSON gives a millionth of its unit; nearer than that to a rounding's edge either side may be printed.
    private static final BigDecimal EDGE = new BigDecimal("0.00001");

    static Figures of(boolean inInches) {
        return new Figures(inInches);
    }

    /// @param value the JSON value with its unit; null for a mark that is free
    List<String> of(String path, @Nullable JsonNode value) {
        if (value == null) {
            return List.of("free");
        }
        BigDecimal figure = new BigDecimal(value.get("value").asString());
        boolean isMotor = path.substring(path.lastIndexOf('.') + 1).matches("by(_[xyz])?");
        String unit = value.get("unit").asString();
        return switch (unit) {
            case "mm" -> length(figure, isMotor);
            case "deg" -> decimals(figure, isMotor ? 1 : 0, " deg", false);
            case "%" -> decimals(figure, 0, " %", true);
            case "1" ->
                decimals(figure, 1, "", true).stream().map(text -> "f/" + text).toList();
            default -> throw new AssertionError("a unit that papers don't know: " + unit);
        };
    }

    private List<String> length(BigDecimal mm, boolean isMotor) {
        if (!inInches) {
            return decimals(mm, isMotor ? 1 : 0, " mm", false);
        }
        if (isMotor) {
            return decimals(mm.divide(INCH_MM, 12, RoundingMode.HALF_UP), 2, " in", false);
        }
        return steps(mm.multiply(BigDecimal.valueOf(16)).divide(INCH_MM, 12, RoundingMode.HALF_UP))
                .map(steps -> sixteenths(steps.longValueExact()) + " in")
                .toList();
    }

    private static List<String> decimals(BigDecimal value, int places, String unit, boolean isShort) {
        return steps(value.movePointRight(places))
                .map(steps -> {
                    BigDecimal rounded = steps.movePointLeft(places).setScale(places, RoundingMode.UNNECESSARY);
                    BigDecimal shown = isShort && rounded.signum() != 0 ? rounded.stripTrailingZeros() : rounded;
                    return minus((isShort && rounded.signum() == 0 ? "0" : shown.toPlainString()) + unit);
                })
                .toList();
    }

    private static Stream<BigDecimal> steps(BigDecimal value) {
        return Stream.of(value.subtract(EDGE), value, value.add(EDGE))
                .map(each -> each.setScale(0, RoundingMode.HALF_UP))
                .distinct();
    }

    private static String sixteenths(long steps) {
        long size = Math.abs(steps);
        long part = size % 16;
        long whole = size / 16;
        long below = 16;
        while (part != 0 && part % 2 == 0) {
            part /= 2;
            below /= 2;
        }
        String fraction = part == 0 ? "" : part + "/" + below;
        String text = part == 0 ? Long.toString(whole) : whole == 0 ? fraction : whole + " " + fraction;
        return steps < 0 ? minus("-" + text) : text;
    }

    /// A printer's minus.
    private static String minus(String text) {
        return text.startsWith("-") ? "\u2212" + text.substring(1) : text;
    }
}
