package plumeline.quantity;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/// A unit that a quantity can be written in: `SI value = value · factor + offset`.
///
/// **Source:** the factors are exact by definition; inch, foot, pound and US fluid ounce from the international yard
/// and pound (0.0254 m, 0.45359237 kg) and the US gallon of 231 cubic inches (NIST Special Publication 811, appendix B,
/// from memory), checked in `UnitOutsideTest`.
///
/// @param symbol how it is written: `mm`
/// @param kind what it measures
/// @param factor SI units in one of this unit
/// @param offset SI value of zero in this unit; not zero for degC and degF only
public record Unit(String symbol, Kind kind, double factor, double offset) {
    /// The unit of a bare number.
    public static final Unit NONE = new Unit("", Kind.NUMBER, 1, 0);
    /// Metres.
    public static final Unit METRE = new Unit("m", Kind.LENGTH, 1, 0);
    /// Millimetres.
    public static final Unit MILLIMETRE = new Unit("mm", Kind.LENGTH, 1e-3, 0);
    /// Inches of exactly 25.4 mm.
    public static final Unit INCH = new Unit("in", Kind.LENGTH, 0.0254, 0);
    /// Degrees of angle.
    public static final Unit DEGREE = new Unit("deg", Kind.ANGLE, Math.PI / 180, 0);
    /// Per cent.
    public static final Unit PERCENT = new Unit("%", Kind.SHARE, 0.01, 0);
    /// Seconds.
    public static final Unit SECOND = new Unit("s", Kind.TIME, 1, 0);
    /// Frames a second.
    public static final Unit FPS = new Unit("fps", Kind.RATE, 1, 0);
    /// Frames of screen time.
    public static final Unit FRAME = new Unit("frames", Kind.FRAMES, 1, 0);
    /// Stops of exposure.
    public static final Unit STOP = new Unit("stops", Kind.STOPS, 1, 0);
    /// Pixels.
    public static final Unit PIXEL = new Unit("px", Kind.PIXELS, 1, 0);
    /// Degrees Celsius.
    public static final Unit CELSIUS = new Unit("degC", Kind.TEMPERATURE, 1, 273.15);

    /// Every unit in the order in which messages name them.
    private static final List<Unit> ALL = new ArrayList<>(96);

    private static final Map<String, Unit> BY_SYMBOL = new HashMap<>(256);

    static {
        addSpace();
        addMotion();
        addMatter();
        addLightAndPicture();
        addSoundAndPower();
    }

    private static void addSpace() {
        add(MILLIMETRE);
        add("cm", Kind.LENGTH, 1e-2);
        add(METRE);
        add(INCH);
        add("ft", Kind.LENGTH, 0.3048);
        add("µm", Kind.LENGTH, 1e-6);
        add("nm", Kind.LENGTH, 1e-9);
        add(DEGREE);
        add("rad", Kind.ANGLE, 1);
        add(SECOND);
        add("ms", Kind.TIME, 1e-3);
        add("min", Kind.TIME, 60);
        add("h", Kind.TIME, 3600);
        add("µs", Kind.TIME, 1e-6);
        alias("um", "µm");
        alias("\u03bcm", "µm");
        alias("us", "µs");
        alias("\u03bcs", "µs");
        alias("°", "deg");
    }

    private static void addMotion() {
        add(FPS);
        add("mm/s", Kind.SPEED, 1e-3);
        add("cm/s", Kind.SPEED, 1e-2);
        add("m/s", Kind.SPEED, 1);
        add("in/s", Kind.SPEED, 0.0254);
        add("ft/s", Kind.SPEED, 0.3048);
        add("mm/s2", Kind.ACCELERATION, 1e-3);
        add("m/s2", Kind.ACCELERATION, 1);
        add("in/s2", Kind.ACCELERATION, 0.0254);
        add("mm/s3", Kind.JERK, 1e-3);
        add("m/s3", Kind.JERK, 1);
        add("in/s3", Kind.JERK, 0.0254);
        add("deg/s", Kind.TURN_RATE, Math.PI / 180);
        add("rpm", Kind.TURN_RATE, Math.PI / 30);
        add("rad/s", Kind.TURN_RATE, 1);
        add("deg/s2", Kind.TURN_ACCELERATION, Math.PI / 180);
        add("rad/s2", Kind.TURN_ACCELERATION, 1);
        add("deg/s3", Kind.TURN_JERK, Math.PI / 180);
        add("rad/s3", Kind.TURN_JERK, 1);
    }

    private static void addMatter() {
        add("g", Kind.MASS, 1e-3);
        add("kg", Kind.MASS, 1);
        add("mg", Kind.MASS, 1e-6);
        add("oz", Kind.MASS, 0.45359237 / 16);
        add("lb", Kind.MASS, 0.45359237);
        add("ml", Kind.VOLUME, 1e-6);
        add("l", Kind.VOLUME, 1e-3);
        add("cl", Kind.VOLUME, 1e-5);
        add("cm3", Kind.VOLUME, 1e-6);
        add("m3", Kind.VOLUME, 1);
        add("floz", Kind.VOLUME, 2.95735295625e-5);
        add("g/ml", Kind.DENSITY, 1000);
        add("kg/l", Kind.DENSITY, 1000);
        add("kg/m3", Kind.DENSITY, 1);
        add("g/cm3", Kind.DENSITY, 1000);
        add("l/min", Kind.FLOW, 1e-3 / 60);
        add("ml/s", Kind.FLOW, 1e-6);
        add("N", Kind.FORCE, 1);
        add("mN", Kind.FORCE, 1e-3);
        add("kN", Kind.FORCE, 1e3);
        add("Pa", Kind.PRESSURE, 1);
        add("kPa", Kind.PRESSURE, 1e3);
        add("MPa", Kind.PRESSURE, 1e6);
        add(CELSIUS);
        add("degF", Kind.TEMPERATURE, 5.0 / 9, 459.67 * 5 / 9);
        add("/cm", Kind.ABSORBANCE, 100);
        add("/m", Kind.ABSORBANCE, 1);
        alias("mL", "ml");
        alias("L", "l");
        alias("°C", "degC");
        alias("°F", "degF");
    }

    private static void addLightAndPicture() {
        add("K", Kind.COLOUR_TEMPERATURE, 1);
        add("lx", Kind.ILLUMINANCE, 1);
        add("cd", Kind.INTENSITY, 1);
        add("lm", Kind.FLUX, 1);
        add(PERCENT);
        add(STOP);
        add(PIXEL);
        add(FRAME);
        alias("stop", "stops");
        alias("frame", "frames");
    }

    private static void addSoundAndPower() {
        add("bpm", Kind.TEMPO, 1.0 / 60);
        add("LUFS", Kind.LOUDNESS, 1);
        add("dBTP", Kind.TRUE_PEAK, 1);
        add("LU", Kind.LOUDNESS_RANGE, 1);
        add("dB", Kind.GAIN, 1);
        add("Hz", Kind.FREQUENCY, 1);
        add("kHz", Kind.FREQUENCY, 1e3);
        add("W", Kind.POWER, 1);
        add("kW", Kind.POWER, 1e3);
        add("V", Kind.VOLTAGE, 1);
        add("A", Kind.CURRENT, 1);
        add("Mb/s", Kind.BIT_RATE, 1e6);
        add("Gb/s", Kind.BIT_RATE, 1e9);
        add("kb/s", Kind.BIT_RATE, 1e3);
        add("GB", Kind.DATA, 1e9);
        add("MB", Kind.DATA, 1e6);
        add("TB", Kind.DATA, 1e12);
    }

    private static void add(String symbol, Kind kind, double factor) {
        add(new Unit(symbol, kind, factor, 0));
    }

    private static void add(String symbol, Kind kind, double factor, double offset) {
        add(new Unit(symbol, kind, factor, offset));
    }

    private static void add(Unit unit) {
        ALL.add(unit);
        BY_SYMBOL.put(unit.symbol, unit);
    }

    private static void alias(String other, String symbol) {
        BY_SYMBOL.put(other, BY_SYMBOL.get(symbol));
    }

    /// Checks the factor.
    public Unit {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("factor of unit " + symbol + " must be > 0, is " + factor);
        }
    }

    /// Finds the unit with this symbol, or one of its other spellings.
    ///
    /// @param symbol as written, without spaces around it
    /// @return the unit, or nothing where we know none of that name
    public static Optional<Unit> findUnit(String symbol) {
        return Optional.ofNullable(BY_SYMBOL.get(symbol));
    }

    /// Gets the unit with this symbol.
    ///
    /// @param symbol as written, without spaces around it
    /// @return the unit
    /// @throws IllegalArgumentException where there is none
    public static Unit getUnit(String symbol) {
        Unit unit = BY_SYMBOL.get(symbol);
        if (unit == null) {
            throw new IllegalArgumentException("no unit " + symbol);
        }
        return unit;
    }

    /// Lists the units of a kind in the order in which messages name them.
    ///
    /// @param kind what they measure
    /// @return the units; none for a bare number
    public static List<Unit> listUnits(Kind kind) {
        List<Unit> found = new ArrayList<>();
        for (Unit unit : ALL) {
            if (unit.kind == kind) {
                found.add(unit);
            }
        }
        return found;
    }

    /// Lists every spelling that reads as a unit of this kind, other spellings included.
    ///
    /// @param kind what they measure
    /// @return the spellings, sorted
    public static List<String> listSpellings(Kind kind) {
        List<String> found = new ArrayList<>();
        for (Map.Entry<String, Unit> entry : BY_SYMBOL.entrySet()) {
            if (entry.getValue().kind == kind) {
                found.add(entry.getKey());
            }
        }
        found.sort(null);
        return found;
    }

    /// Lists every spelling of every unit, for the nearest one to a misspelt unit.
    static List<String> listSpellings() {
        List<String> found = new ArrayList<>(BY_SYMBOL.keySet());
        found.sort(null);
        return found;
    }

    /// Gives the units of a kind as messages list them: `mm, cm, m, in or ft`.
    static String listed(Kind kind) {
        List<Unit> units = listUnits(kind);
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < units.size(); i++) {
            text.append(i == 0 ? "" : i == units.size() - 1 ? " or " : ", ").append(units.get(i).symbol);
        }
        return text.toString();
    }

    /// Turns a value in this unit into SI. Worked out in decimals and rounded once, so that one length is one number
    /// however it is spelt: 59 mm, 5.9 cm and 0.059 m.
    ///
    /// @param value in this unit
    /// @return the SI value
    public double toSi(double value) {
        if (factor == 1 || !Double.isFinite(value)) {
            return value * factor + offset;
        }
        return BigDecimal.valueOf(value)
                .multiply(BigDecimal.valueOf(factor))
                .add(BigDecimal.valueOf(offset))
                .doubleValue();
    }

    /// Turns an SI value into this unit.
    ///
    /// @param si the SI value
    /// @return the value in this unit
    public double ofSi(double si) {
        return (si - offset) / factor;
    }
}
