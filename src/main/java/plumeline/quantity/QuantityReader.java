package plumeline.quantity;

import java.util.List;
import java.util.Optional;

/// Reads one text; made for one use.
final class QuantityReader {
    private static final Basis PLAIN = new Basis.Plain();
    private static final Spread NO_SPREAD = new Spread.None();
    private static final int LONGEST_SHOWN = 60;

    private final String written;
    private final String text;
    private final List<Kind> accepted;
    private int at;

    QuantityReader(String written, List<Kind> accepted) {
        this.written = written;
        this.text = clean(written);
        this.accepted = accepted;
    }

    /// Makes every kind of space a space and every kind of minus a minus.
    private static String clean(String written) {
        return written.strip()
                .replace('\u2212', '-')
                .replace('\u00a0', ' ')
                .replace('\u202f', ' ')
                .replace('\t', ' ');
    }

    Reading read() {
        int end = Digits.end(text, 0);
        if (end == 0) {
            return refuseNumber();
        }
        String digits = tidyDigits(text.substring(0, end));
        double value = Digits.value(digits);
        if (Double.isNaN(value)) {
            String number = isDividedByZero(digits)
                    ? "a number, not a division by 0"
                    : "a number of at most 15 digits before the point";
            return refuse(shown(), number, "Try " + example() + ".");
        }
        at = end;
        String symbol = unitWord();
        Optional<Unit> unit = Unit.findUnit(symbol);
        if (symbol.isEmpty()) {
            unit = Optional.of(Unit.NONE);
        }
        if (unit.isEmpty()) {
            return refuseUnit(digits, symbol);
        }
        if (!accepted.isEmpty() && !accepted.contains(unit.get().kind())) {
            return refuseKind(digits, unit.get());
        }
        if (unit.get().kind() == Kind.RATE && !FrameRate.isExact(digits)) {
            return refuse(shown(), "a frame rate of at most 18 digits", "Try " + Kind.RATE.example() + ".");
        }
        return readTail(new Quantity(digits, value, unit.get(), PLAIN, NO_SPREAD, Origin.GIVEN));
    }

    /// Tells whether the number behind a slash is all zeros.
    private static boolean isDividedByZero(String digits) {
        int at = digits.indexOf('/') + 1;
        if (at == 0 || digits.length() > Digits.LONGEST) {
            return false;
        }
        while (at < digits.length() && digits.charAt(at) == '0') {
            at++;
        }
        return at == digits.length();
    }

    /// Reads what follows value and unit: `at D`, `± spread`, origin, in this order.
    private Reading readTail(Quantity start) {
        Quantity quantity = start;
        skipSpaces();
        if (word("at")) {
            Reading distance = readAt(quantity);
            if (!(distance instanceof Reading.Read(Quantity withAt))) {
                return distance;
            }
            quantity = withAt;
        }
        skipSpaces();
        if (plusMinus()) {
            Reading spread = readSpread(quantity);
            if (!(spread instanceof Reading.Read(Quantity withSpread))) {
                return spread;
            }
            quantity = withSpread;
        }
        skipSpaces();
        if (at == text.length()) {
            return new Reading.Read(quantity);
        }
        Optional<Origin> origin = Origin.findOrigin(text.substring(at));
        if (origin.isPresent()) {
            return new Reading.Read(quantity.withOrigin(origin.get()));
        }
        return refuse(
                shown(),
                "value unit [at D] [± spread] [given, measured, typical or solved]",
                "Leave out \"" + text.substring(at) + "\", or try " + quantity.valueText() + " ± 1 % measured.");
    }

    private Reading readAt(Quantity quantity) {
        int start = at;
        if (quantity.kind() != Kind.ILLUMINANCE) {
            return refuse(
                    shown(), "without \"at\", which follows an illuminance only", "Try " + quantity.valueText() + ".");
        }
        skipSpaces();
        int end = Digits.end(text, at);
        String digits = tidyDigits(text.substring(at, end));
        double value = end > at ? Digits.value(digits) : Double.NaN;
        at = end;
        Optional<Unit> unit = Unit.findUnit(unitWord());
        if (Double.isNaN(value) || !(value > 0) || unit.isEmpty() || unit.get().kind() != Kind.LENGTH) {
            at = start;
            return refuse(shown(), "at a length greater than 0 mm", "Try " + quantity.valueText() + " at 1 m.");
        }
        Quantity distance = new Quantity(digits, value, unit.get(), PLAIN, NO_SPREAD, Origin.GIVEN);
        return new Reading.Read(new Quantity(
                quantity.digits(), quantity.value(), quantity.unit(), new Basis.At(distance), NO_SPREAD, Origin.GIVEN));
    }

    private Reading readSpread(Quantity quantity) {
        skipSpaces();
        int end = Digits.end(text, at);
        String digits = tidyDigits(text.substring(at, end));
        double value = end > at ? Digits.value(digits) : Double.NaN;
        at = end;
        String symbol = unitWord();
        Optional<Unit> found = symbol.isEmpty() ? Optional.of(Unit.NONE) : Unit.findUnit(symbol);
        Unit unit = found.orElse(Unit.NONE);
        boolean known = found.isPresent();
        Kind kind = quantity.kind();
        if (value >= 0 && known) {
            if (unit.kind() == kind || unit.kind() == kind.spreadKind()) {
                return withSpread(quantity, new Spread.Absolute(digits, value, unit));
            }
            if (unit.kind() == Kind.SHARE && kind.takesShareOfValue()) {
                return withSpread(quantity, new Spread.OfValue(digits, value));
            }
        }
        String units = kind == Kind.NUMBER ? "a bare number" : "in " + spreadUnits(kind);
        String share = kind.takesShareOfValue() && kind != Kind.SHARE ? " or in % of the value" : "";
        String own = kind == Kind.NUMBER ? "" : " " + quantity.unit().symbol();
        String shownDigits = value >= 0 ? digits : "1";
        return refuse(
                shown(),
                "a value whose ± is 0 or more, " + units + share,
                "Try " + quantity.valueText() + " ± " + shownDigits + own + ".");
    }

    private static String spreadUnits(Kind kind) {
        String own = Unit.listed(kind);
        return kind.spreadKind() == kind ? own : own + " or " + Unit.listed(kind.spreadKind());
    }

    private static Reading withSpread(Quantity quantity, Spread spread) {
        return new Reading.Read(new Quantity(
                quantity.digits(), quantity.value(), quantity.unit(), quantity.basis(), spread, Origin.GIVEN));
    }

    /// Takes the word that stands where a unit may stand; empty where an origin, `at` or `±` follows instead.
    private String unitWord() {
        int before = at;
        skipSpaces();
        int start = at;
        while (at < text.length() && text.charAt(at) != ' ' && text.charAt(at) != '±' && !plusMinusAt(at)) {
            at++;
        }
        String symbol = text.substring(start, at);
        if (symbol.equals("at") || Origin.findOrigin(symbol).isPresent()) {
            at = before;
            return "";
        }
        return symbol;
    }

    private boolean plusMinusAt(int index) {
        return text.startsWith("+-", index) || text.startsWith("+/-", index);
    }

    private boolean plusMinus() {
        if (at < text.length() && text.charAt(at) == '±') {
            at++;
            return true;
        }
        if (plusMinusAt(at)) {
            at += text.charAt(at + 1) == '/' ? 3 : 2;
            return true;
        }
        return false;
    }

    private boolean word(String wanted) {
        int end = at + wanted.length();
        if (text.startsWith(wanted, at) && end < text.length() && text.charAt(end) == ' ') {
            at = end;
            return true;
        }
        return false;
    }

    private void skipSpaces() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }

    /// Leaves out a plus sign and doubled spaces.
    private static String tidyDigits(String digits) {
        String tidy = digits.startsWith("+") ? digits.substring(1) : digits;
        int space = tidy.indexOf(' ');
        return space < 0 ? tidy : tidy.substring(0, space) + " " + tidy.substring(tidy.lastIndexOf(' ') + 1);
    }

    private Reading refuseNumber() {
        if (text.isEmpty()) {
            return refuse("empty", allowed(), "Try " + example() + ".");
        }
        if (accepted.size() == 1 && accepted.getFirst() == Kind.NUMBER) {
            return refuse(shown(), allowed(), "Try " + example() + ".");
        }
        return refuse(shown(), allowed(), "Begin with a number: try " + example() + ".");
    }

    private Reading refuseUnit(String digits, String symbol) {
        if (symbol.startsWith(",")) {
            String joined = digits + symbol.substring(1);
            String reads = symbol.length() == 4 && !joined.contains(".") ? joined : digits + "." + symbol.substring(1);
            return refuse(
                    shown(),
                    "a number without commas",
                    "Write a decimal point, and nothing between thousands: try " + reads + text.substring(at) + ".");
        }
        String nearest = nearestUnit(symbol);
        String hint = nearest.isEmpty() ? kept(digits, Unit.NONE) : digits + " " + nearest;
        return refuse(shown(), allowed(), "\"" + cut(symbol) + "\" is no unit we know: try " + hint + ".");
    }

    private String nearestUnit(String symbol) {
        List<String> spellings = Unit.listSpellings();
        for (String spelling : spellings) {
            boolean fits = accepted.isEmpty()
                    || accepted.contains(Unit.getUnit(spelling).kind());
            if (fits && spelling.equalsIgnoreCase(symbol)) {
                return Unit.getUnit(spelling).symbol();
            }
        }
        String unit = usual(symbol);
        boolean fits = !unit.isEmpty()
                && (accepted.isEmpty() || accepted.contains(Unit.getUnit(unit).kind()));
        return fits ? unit : "";
    }

    /// Gives our spelling of a unit that people often write otherwise.
    private static String usual(String symbol) {
        return switch (symbol.toLowerCase(java.util.Locale.ROOT)) {
            case "inch", "inches", "\"", "″" -> "in";
            case "foot", "feet", "'", "′" -> "ft";
            case "millimetre", "millimetres", "millimeter", "millimeters" -> "mm";
            case "metre", "metres", "meter", "meters" -> "m";
            case "degree", "degrees", "º" -> "deg";
            case "sec", "secs", "second", "seconds" -> "s";
            case "mins", "minute", "minutes" -> "min";
            case "hour", "hours", "hr", "hrs" -> "h";
            case "percent", "pct" -> "%";
            case "lux" -> "lx";
            case "pixel", "pixels" -> "px";
            case "gram", "grams", "gr" -> "g";
            case "kelvin" -> "K";
            case "c", "celsius", "ºc" -> "degC";
            case "f", "fahrenheit", "ºf" -> "degF";
            case "litre", "litres", "liter", "liters" -> "l";
            case "lbs", "pound", "pounds" -> "lb";
            case "ounce", "ounces" -> "oz";
            case "fl_oz", "fl.oz", "fl-oz" -> "floz";
            case "watt", "watts" -> "W";
            case "volt", "volts" -> "V";
            case "amp", "amps" -> "A";
            case "lumen", "lumens" -> "lm";
            case "candela" -> "cd";
            case "newton", "newtons" -> "N";
            case "mm/s²", "mm/s^2" -> "mm/s2";
            case "deg/s²", "deg/s^2", "°/s²" -> "deg/s2";
            case "°/s" -> "deg/s";
            case "kg/m³", "kg/m^3" -> "kg/m3";
            default -> "";
        };
    }

    private Reading refuseKind(String digits, Unit unit) {
        Kind first = accepted.getFirst();
        if (unit.kind() == Kind.NUMBER) {
            String number = "a bare number (" + cut(written.strip()) + ")";
            return refuse(number, allowed(), "Add the unit: try " + kept(digits, unit) + ".");
        }
        if (first == Kind.NUMBER && accepted.size() == 1) {
            if (unit.kind() == Kind.SHARE) {
                String part = Digits.shortest(unit.toSi(Digits.value(digits)));
                return refuse(shown(), allowed(), "Write it as a part of one: try " + part + ".");
            }
            return refuse(shown(), allowed(), "Leave out the unit: try " + digits + ".");
        }
        return refuse(shown(), allowed(), "Try " + kept(digits, unit) + ".");
    }

    /// Gives the figure as it was given, in the unit that it is likeliest meant in: what weighs is told in grams, and a
    /// millilitre of water is a gram.
    private String kept(String digits, Unit given) {
        boolean isMass = accepted.contains(Kind.MASS);
        if (isMass && given.kind() == Kind.VOLUME || accepted.contains(Kind.VOLUME) && given.kind() == Kind.MASS) {
            boolean isLarge = given.symbol().equals("l") || given.symbol().equals("kg");
            return digits + (isMass ? isLarge ? " kg" : " g" : isLarge ? " l" : " ml");
        }
        Kind kind = isMass ? Kind.MASS : accepted.isEmpty() ? Kind.LENGTH : accepted.getFirst();
        List<Unit> units = Unit.listUnits(kind);
        return units.isEmpty() ? example() : digits + " " + units.getFirst().symbol();
    }

    private String allowed() {
        if (accepted.isEmpty()) {
            return "a number and its unit";
        }
        StringBuilder all = new StringBuilder();
        for (int i = 0; i < accepted.size(); i++) {
            all.append(i == 0 ? "" : i == accepted.size() - 1 ? ", or " : ", ")
                    .append(accepted.get(i).allowed());
        }
        return all.toString();
    }

    private String example() {
        return accepted.isEmpty() ? "66 mm" : accepted.getFirst().example();
    }

    private String shown() {
        return cut(written.strip());
    }

    private static String cut(String text) {
        return text.length() <= LONGEST_SHOWN ? text : text.substring(0, LONGEST_SHOWN) + "…";
    }

    private static Reading refuse(String given, String allowed, String attempt) {
        return new Reading.Refused(given, allowed, attempt);
    }
}
