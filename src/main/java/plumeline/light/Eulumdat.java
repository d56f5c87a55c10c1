package plumeline.light;

/// Reads EULUMDAT files: one value a line, each line with its meaning.
final class Eulumdat {
    private static final int MOST_SETS = 20;
    private static final int LONGEST_LAMP = 200;
    private static final double METRES_PER_MILLIMETRE = 1e-3;
    private static final double MOST_MILLIMETRES = 1e6;
    private static final double MOST_FACTOR = 1e9;
    private static final double LUMENS_PER_KILOLUMEN = 1000;

    private Eulumdat() {}

    /// The counts of the first lines, and how many planes are stored, from which on.
    private record Counts(Planes.Symmetry symmetry, int planes, int gammas, int stored, int first) {}

    /// The first set of lamps.
    private record Lamps(boolean absolute, String type, double lumens, double watts) {}

    static Photometry read(FileText text) throws UnusableFile {
        Counts counts = readCounts(text);
        skip(text, 8, 15);
        Opening opening = readOpening(text);
        skip(text, 22, 22);
        double percent = text.within(text.readLineNumberOrNone("light output ratio"), "light output ratio", 0, 1000);
        double conversion = readPositive(text, "conversion factor");
        double tiltDegrees = text.within(text.readLineNumberOrNone("tilt"), "tilt in degrees", -180, 180);
        Lamps lamps = readLamps(text);
        for (int i = 1; i <= 10; i++) {
            text.readLine("direct ratio " + i);
        }
        double factor = conversion * lamps.lumens / LUMENS_PER_KILOLUMEN;
        IntensityTable table = readTable(text, counts, factor);
        if (!text.isAtEnd()) {
            throw text.refuse("more after the last intensity", "as many lines as the counts announce");
        }
        Photometry.Tilt tilt = tiltDegrees == 0
                ? new Photometry.Tilt.None()
                : new Photometry.Tilt.Measured(Math.toRadians(tiltDegrees));
        return new Photometry(table, opening, lamps.watts, lamps.type, stated(lamps, percent), tilt);
    }

    private static void skip(FileText text, int from, int to) throws UnusableFile {
        for (int line = from; line <= to; line++) {
            text.readLine("line " + line + " of EULUMDAT");
        }
    }

    private static Counts readCounts(FileText text) throws UnusableFile {
        skip(text, 1, 2);
        int symmetry = readWhole(text, "Isym", 0, 4);
        int planes = readWhole(text, "number of C planes", 1, LampFile.MOST_ANGLES);
        int quarters = symmetry == 0 || symmetry == 1 ? 1 : symmetry == 2 ? 2 : 4;
        if (planes % quarters != 0) {
            throw text.refuse(
                    "number of C planes is " + planes, "a multiple of " + quarters + " where Isym is " + symmetry);
        }
        skip(text, 5, 5);
        int gammas = readWhole(text, "number of gamma angles", 2, LampFile.MOST_ANGLES);
        skip(text, 7, 7);
        Counts counts = switch (symmetry) {
            case 0 -> new Counts(Planes.Symmetry.NONE, planes, gammas, planes, 0);
            case 1 -> new Counts(Planes.Symmetry.AXIAL, planes, gammas, 1, 0);
            case 2 -> new Counts(Planes.Symmetry.ABOUT_C0, planes, gammas, planes / 2 + 1, 0);
            // These are stored from C270 through C0 to C90.
            case 3 -> new Counts(Planes.Symmetry.ABOUT_C90, planes, gammas, planes / 2 + 1, planes / 4 * 3);
            default -> new Counts(Planes.Symmetry.ABOUT_BOTH, planes, gammas, planes / 4 + 1, 0);
        };
        if ((long) counts.stored * gammas > LampFile.MOST_VALUES) {
            throw text.refuse(
                    (long) counts.stored * gammas + " intensities announced", "at most " + LampFile.MOST_VALUES);
        }
        text.checkRoom((long) counts.stored * gammas + planes + gammas, "numbers");
        return counts;
    }

    /// Lines 16 to 21. The length lies along C90, the width along C0; a width of 0 means a disc.
    private static Opening readOpening(FileText text) throws UnusableFile {
        double length = readMetres(text, "length of the luminous area");
        double width = readMetres(text, "width of the luminous area");
        double height = 0;
        for (int plane = 0; plane < 360; plane += 90) {
            height = Math.max(height, readMetres(text, "height of the luminous area at C" + plane));
        }
        if (length == 0) {
            return new Opening(Opening.Shape.POINT, 0, 0, 0);
        }
        return width == 0
                ? new Opening(Opening.Shape.ROUND, length, length, height)
                : new Opening(Opening.Shape.RECTANGLE, width, length, height);
    }

    private static double readMetres(FileText text, String what) throws UnusableFile {
        double millimetres = text.within(text.readLineNumberOrNone(what), what + " in mm", 0, MOST_MILLIMETRES);
        return millimetres * METRES_PER_MILLIMETRE;
    }

    /// Lines 26 to 26f: each field for all sets before the next field. The first set counts.
    private static Lamps readLamps(FileText text) throws UnusableFile {
        int sets = readWhole(text, "number of lamp sets", 1, MOST_SETS);
        int lamps = readWhole(text, "number of lamps", -LampFile.MOST_ANGLES, LampFile.MOST_ANGLES);
        if (lamps == 0) {
            throw text.refuse("number of lamps is 0", "1 or more, or below 0 (absolute)");
        }
        skipSets(text, sets, "number of lamps");
        String type = text.readLine("type of lamps");
        skipSets(text, sets, "type of lamps");
        double lumens = readPositive(text, "flux of the lamps");
        skipSets(text, sets, "flux of the lamps");
        skipSets(text, sets + 1, "colour of the lamps");
        skipSets(text, sets + 1, "colour rendering of the lamps");
        double watts = text.within(text.readLineNumberOrNone("watts"), "watts", 0, MOST_FACTOR);
        skipSets(text, sets, "watts");
        String lamp = type.length() > LONGEST_LAMP ? type.substring(0, LONGEST_LAMP) : type;
        return new Lamps(lamps < 0, lamp, lumens, watts);
    }

    private static void skipSets(FileText text, int sets, String what) throws UnusableFile {
        for (int set = 2; set <= sets; set++) {
            text.readLine(what);
        }
    }

    private static Photometry.StatedFlux stated(Lamps lamps, double percent) {
        if (!lamps.absolute && percent == 0) {
            return new Photometry.StatedFlux.OfLamps(lamps.lumens);
        }
        return new Photometry.StatedFlux.Leaving(lamps.absolute ? lamps.lumens : lamps.lumens * percent / 100);
    }

    private static IntensityTable readTable(FileText text, Counts counts, double factor) throws UnusableFile {
        double[] planes = readAngles(text, counts.planes, "C plane", FileText.AngleRange.PLANES);
        checkPlanes(text, counts, planes);
        double[] gammas = readAngles(text, counts.gammas, "gamma", FileText.AngleRange.GAMMAS);
        double[] stored = new double[counts.stored];
        double[][] rows = new double[counts.stored][gammas.length];
        for (int i = 0; i < rows.length; i++) {
            stored[i] = planes[(counts.first + i) % planes.length];
            for (int j = 0; j < gammas.length; j++) {
                double candelas = factor * text.readLineNumber("intensity");
                rows[i][j] = text.within(candelas, "intensity in cd", 0, LampFile.MOST_CANDELAS);
            }
        }
        return Planes.unfold(text, counts.symmetry, stored, gammas, rows);
    }

    /// The planes by which symmetry goes must be where the counts put them.
    private static void checkPlanes(FileText text, Counts counts, double[] planes) throws UnusableFile {
        checkPlane(text, planes, 0, 0);
        switch (counts.symmetry) {
            case NONE -> Planes.checkCloses(text, planes);
            case AXIAL -> {}
            case ABOUT_C0 -> checkPlane(text, planes, planes.length / 2, 180);
            case ABOUT_C90 -> {
                checkPlane(text, planes, planes.length / 4, 90);
                checkPlane(text, planes, planes.length / 4 * 3, 270);
            }
            case ABOUT_BOTH -> checkPlane(text, planes, planes.length / 4, 90);
        }
    }

    private static void checkPlane(FileText text, double[] planes, int place, double wanted) throws UnusableFile {
        if (!Planes.isNear(planes[place], wanted)) {
            throw text.refuse(
                    "C plane " + (place + 1) + " is " + FileText.show(planes[place]) + " deg",
                    FileText.show(wanted) + " deg, by its count and Isym");
        }
    }

    private static double[] readAngles(FileText text, int count, String what, FileText.AngleRange range)
            throws UnusableFile {
        double[] degrees = new double[count];
        for (int i = 0; i < count; i++) {
            degrees[i] = text.readLineNumber(what);
            text.checkGrows(degrees, i, what, range);
        }
        return degrees;
    }

    private static int readWhole(FileText text, String what, int least, int most) throws UnusableFile {
        return text.whole(text.readLineNumber(what), what, least, most);
    }

    private static double readPositive(FileText text, String what) throws UnusableFile {
        return text.within(text.readLineNumber(what), what, 1 / MOST_FACTOR, MOST_FACTOR);
    }
}
