package plumeline.render;

/// How an exposure is cut into instants: even parts, each seen as it is in its middle. A sensor that reads row by row
/// exposes its last row later than its first by its readout, each row for as long as the shutter is open.
///
/// @param instants how many there are in all, > 0
/// @param open how many a row sees, > 0
/// @param eachSeconds how long each part is, s
/// @param laterAtFoot how many parts later the last row begins than the first, ≥ 0
record Shutter(int instants, int open, double eachSeconds, double laterAtFoot) {
    /// A row sees so many: what moves is short by a 64th of its smear at the ends, and right in the mean.
    private static final int OPEN = 64;

    /// A short exposure of a slow sensor is cut into so many in all.
    private static final int MOST = 512;

    /// Cuts an exposure.
    ///
    /// @param openSeconds how long a row is exposed, s, > 0
    /// @param readoutSeconds how much later the last row begins, s, ≥ 0
    /// @param most how many instants a row may see, > 0
    static Shutter of(double openSeconds, double readoutSeconds, int most) {
        int wanted = Math.min(OPEN, most);
        double all = wanted * (1 + readoutSeconds / openSeconds);
        double held = wanted == OPEN ? MOST : wanted;
        int open = all <= held ? wanted : Math.max(1, (int) (wanted * held / all));
        double each = openSeconds / open;
        double foot = readoutSeconds / each;
        return new Shutter(open + (int) Math.ceil(foot), open, each, foot);
    }
}
