package plumeline.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Reads LM-63 files: lines up to `TILT=`, then numbers whatever the line breaks.
final class Lm63 {
    /// The line that parts words from numbers.
    static final Pattern TILT_LINE =
            Pattern.compile("^[ \\t]*TILT[ \\t]*=", Pattern.MULTILINE | Pattern.CASE_INSENSITIVE);

    private static final List<String> EDITIONS =
            List.of("IESNA91", "IESNA:LM-63-1995", "IESNA:LM-63-2002", "IES:LM-63-2019");
    private static final String LATEST = "IES:LM-63-2019";
    private static final Pattern LABEL = Pattern.compile("\\[([^]]{0,80})](.*)");
    private static final int LONGEST_LAMP = 200;
    private static final double METRES_PER_FOOT = 0.3048;
    private static final double MOST_FACTOR = 1e9;
    private static final double MOST_SIZE = 1000;
    private static final int MOST_TILTS = 1000;

    private Lm63() {}

    /// The counts and sizes before the angles, as written.
    private record Head(double lampLumens, double factor, int gammas, int planes, Opening opening, double watts) {}

    static Photometry read(FileText text) throws UnusableFile {
        String edition = text.readLine("a first line").toUpperCase(Locale.ROOT);
        if (!EDITIONS.contains(edition)) {
            throw text.refuse("first line is " + FileText.quote(edition), String.join(", ", EDITIONS));
        }
        var lamp = new StringBuilder();
        String tiltWord = readLabels(text, lamp);
        Photometry.Tilt tilt = readTilt(text, tiltWord);
        Head head = readHead(text, edition.equals(LATEST));
        IntensityTable table = readTable(text, head);
        if (!text.isAtEnd()) {
            throw text.refuse("more after the last intensity", "as many numbers as the counts announce");
        }
        Photometry.StatedFlux stated = head.lampLumens > 0
                ? new Photometry.StatedFlux.OfLamps(head.lampLumens)
                : new Photometry.StatedFlux.None();
        return new Photometry(table, head.opening, head.watts, lamp.toString(), stated, tilt);
    }

    /// Reads lines up to `TILT=` and gives what stands behind it; adds the lamp's text.
    private static String readLabels(FileText text, StringBuilder lamp) throws UnusableFile {
        boolean ofLamp = false;
        while (true) {
            String line = text.readLine("a line TILT=NONE or TILT=INCLUDE");
            if (TILT_LINE.matcher(line).lookingAt()) {
                return line.substring(line.indexOf('=') + 1).strip();
            }
            Matcher label = LABEL.matcher(line);
            if (label.matches()) {
                String word = label.group(1).toUpperCase(Locale.ROOT);
                ofLamp = word.equals("LAMP") || (ofLamp && word.equals("MORE"));
                if (ofLamp) {
                    addShort(lamp, label.group(2).strip());
                }
            }
        }
    }

    private static void addShort(StringBuilder lamp, String words) {
        lamp.append(lamp.isEmpty() ? "" : " ").append(words);
        lamp.setLength(Math.min(lamp.length(), LONGEST_LAMP));
    }

    private static Photometry.Tilt readTilt(FileText text, String word) throws UnusableFile {
        if (word.equalsIgnoreCase("NONE")) {
            return new Photometry.Tilt.None();
        }
        if (!word.equalsIgnoreCase("INCLUDE")) {
            throw text.refuse(
                    "TILT=" + FileText.quote(word) + ", a file of its own, which can't be read",
                    "TILT=NONE, or TILT=INCLUDE with that file's numbers after it");
        }
        int position = text.whole(text.readNumber("lamp's position"), "lamp's position", 1, 3);
        int count = text.whole(text.readNumber("number of tilts"), "number of tilts", 1, MOST_TILTS);
        double[] degrees = readAngles(text, count, "tilt", FileText.AngleRange.TILTS);
        var radians = new ArrayList<Double>();
        var factors = new ArrayList<Double>();
        for (double each : degrees) {
            radians.add(Math.toRadians(each));
            factors.add(text.within(text.readNumber("tilt factor"), "tilt factor", 0, MOST_FACTOR));
        }
        return new Photometry.Tilt.Factors(position, radians, factors);
    }

    private static Head readHead(FileText text, boolean isLatest) throws UnusableFile {
        int lamps = text.whole(text.readNumber("number of lamps"), "number of lamps", 1, LampFile.MOST_ANGLES);
        double lumens = text.readNumber("lumens per lamp");
        boolean absolute = lumens == -1;
        if (!absolute && !(lumens > 0 && lumens <= LampFile.MOST_CANDELAS)) {
            throw text.refuse("lumens per lamp is " + FileText.show(lumens), "more than 0, or -1 (absolute)");
        }
        double multiplier = readFactor(text, "candela multiplier");
        int gammas = readCount(text, "number of vertical angles", 2);
        int planes = readCount(text, "number of horizontal angles", 1);
        int type = text.whole(text.readNumber("photometric type"), "photometric type", 1, 3);
        if (type != 1) {
            throw text.refuse("photometric type " + type + " (type " + (type == 2 ? "B)" : "A)"), "1 (type C)");
        }
        int units = text.whole(text.readNumber("units"), "units", 1, 2);
        Opening opening = readOpening(text, units == 1 ? METRES_PER_FOOT : 1);
        double ballast = readFactor(text, "ballast factor");
        double future = readFutureUse(text, isLatest);
        double watts = text.within(text.readNumber("watts"), "watts", 0, MOST_FACTOR);
        double factor = multiplier * ballast * future;
        return new Head(absolute ? 0 : lamps * lumens, factor, gammas, planes, opening, watts);
    }

    private static int readCount(FileText text, String what, int least) throws UnusableFile {
        return text.whole(text.readNumber(what), what, least, LampFile.MOST_ANGLES);
    }

    private static double readFactor(FileText text, String what) throws UnusableFile {
        return text.within(text.readNumber(what), what, 1 / MOST_FACTOR, MOST_FACTOR);
    }

    /// Since 2019 a code of how the file was made stands where a factor stood.
    private static double readFutureUse(FileText text, boolean isLatest) throws UnusableFile {
        if (isLatest) {
            text.readNumber("file generation type");
            return 1;
        }
        return readFactor(text, "future-use factor");
    }

    /// Sizes below 0 are round ones.
    private static Opening readOpening(FileText text, double metresPerUnit) throws UnusableFile {
        double width = readSize(text, "width");
        double length = readSize(text, "length");
        double height = readSize(text, "height");
        boolean across = width < 0 && height >= 0;
        double c90 = Math.abs(width) * metresPerUnit;
        double c0 = across && length == 0 ? c90 : Math.abs(length) * metresPerUnit;
        return new Opening(shape(width, length, height), c0, c90, Math.abs(height) * metresPerUnit);
    }

    private static double readSize(FileText text, String what) throws UnusableFile {
        return text.within(text.readNumber(what), what, -MOST_SIZE, MOST_SIZE);
    }

    private static Opening.Shape shape(double width, double length, double height) {
        if (width == 0 && length == 0 && height == 0) {
            return Opening.Shape.POINT;
        }
        if (width >= 0 && length >= 0 && height >= 0) {
            return Opening.Shape.RECTANGLE;
        }
        if (height >= 0) {
            return width < 0 ? Opening.Shape.ROUND : Opening.Shape.OTHER;
        }
        if (width < 0 && length != 0) {
            return length < 0 ? Opening.Shape.BALL : Opening.Shape.TUBE_ALONG_C0;
        }
        return width > 0 && length < 0 ? Opening.Shape.TUBE_ALONG_C90 : Opening.Shape.OTHER;
    }

    private static IntensityTable readTable(FileText text, Head head) throws UnusableFile {
        long values = (long) head.gammas * head.planes;
        if (values > LampFile.MOST_VALUES) {
            throw text.refuse(values + " intensities announced", "at most " + LampFile.MOST_VALUES);
        }
        text.checkRoom(values + head.gammas + head.planes, "numbers");
        double[] gammas = readAngles(text, head.gammas, "vertical angle", FileText.AngleRange.GAMMAS);
        if (!Planes.isNear(gammas[0], 0) && !Planes.isNear(gammas[0], 90)) {
            throw text.refuse(
                    "vertical angles from " + FileText.show(gammas[0]) + " deg", "a first one of 0 or of 90 deg");
        }
        double[] planes = readAngles(text, head.planes, "horizontal angle", FileText.AngleRange.PLANES);
        Planes.Symmetry symmetry = symmetry(text, planes);
        double[][] rows = new double[planes.length][gammas.length];
        for (double[] row : rows) {
            for (int i = 0; i < row.length; i++) {
                row[i] = readCandelas(text, head.factor);
            }
        }
        return Planes.unfold(text, symmetry, planes, gammas, rows);
    }

    private static double readCandelas(FileText text, double factor) throws UnusableFile {
        return text.within(factor * text.readNumber("intensity"), "intensity in cd", 0, LampFile.MOST_CANDELAS);
    }

    private static double[] readAngles(FileText text, int count, String what, FileText.AngleRange range)
            throws UnusableFile {
        double[] degrees = new double[count];
        for (int i = 0; i < count; i++) {
            degrees[i] = text.readNumber(what);
            text.checkGrows(degrees, i, what, range);
        }
        return degrees;
    }

    private static Planes.Symmetry symmetry(FileText text, double[] planes) throws UnusableFile {
        double first = planes[0];
        double last = planes[planes.length - 1];
        if (planes.length == 1 && Planes.isNear(first, 0)) {
            return Planes.Symmetry.AXIAL;
        }
        if (Planes.isNear(first, 90) && Planes.isNear(last, 270)) {
            return Planes.Symmetry.ABOUT_C90;
        }
        if (Planes.isNear(first, 0) && Planes.isNear(last, 90)) {
            return Planes.Symmetry.ABOUT_BOTH;
        }
        if (Planes.isNear(first, 0) && Planes.isNear(last, 180)) {
            return Planes.Symmetry.ABOUT_C0;
        }
        if (!Planes.isNear(first, 0) || last < 180) {
            throw text.refuse(
                    "horizontal angles from " + FileText.show(first) + " to " + FileText.show(last) + " deg",
                    "0 alone, 0 to 90, 0 to 180, 0 to 360, or 90 to 270 deg");
        }
        Planes.checkCloses(text, planes);
        return Planes.Symmetry.NONE;
    }
}
