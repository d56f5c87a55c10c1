package plumeline.cut.mask;

/// Figures as files have them: rounded half away from nothing, without zeros at the end.
final class Figures {
    private static final long[] POWERS = {1, 10, 100, 1000, 10_000, 100_000, 1_000_000, 10_000_000, 100_000_000};

    private Figures() {}

    /// Adds a figure to so many places, at most 8, of which 0 is never negative.
    static void add(StringBuilder out, double value, int places) {
        long scaled = Math.round(Math.abs(value) * POWERS[places]);
        if (value < 0 && scaled != 0) {
            out.append('-');
        }
        out.append(scaled / POWERS[places]);
        long rest = scaled % POWERS[places];
        if (rest != 0) {
            out.append('.');
            for (int i = places - 1; rest != 0; i--) {
                out.append((char) ('0' + rest / POWERS[i]));
                rest %= POWERS[i];
            }
        }
    }
}
