package plumeline.trace;

import java.util.List;
import plumeline.trace.sums.Draws;

/// What is seen over the time in which a picture is exposed: looks at instants evenly apart, each in the middle of its
/// part of the time.
///
/// A pixel sees so many of them, one after another, from one on that may be later from row to row, as a sensor reads
/// its rows one by one. The looks that a pixel sees are shared out among its rays evenly, from one of its own on: its
/// first four rays see each another quarter of the time, and pixels side by side together see all of it.
///
/// @param looks all of them, in order
/// @param open how many of them a pixel sees, 1 to as many as there are
/// @param top how many looks later than the first the plate's upper edge begins
/// @param bottom likewise its lower edge; rows before the first look begin with it, those past the last end with that
public record Instants(List<Look> looks, int open, double top, double bottom) {
    private static final double WHOLE = 0x1p-32;

    /// From pixel to pixel the look that is seen first goes on by such a share of them: steps by the powers of the
    /// root of `x³ = x + 1` fill a square evenly, so that few pixels of a smear's edge see all of its time.
    ///
    /// **Source:** after Roberts, "The unreasonable effectiveness of quasirandom sequences" (2018), from memory.
    private static final double ACROSS = 0.7548776662466927;

    private static final double DOWN = 0.5698402909980532;

    /// Copies the list and checks the range.
    public Instants {
        looks = List.copyOf(looks);
        if (open < 1 || open > looks.size()) {
            throw new IllegalArgumentException(open + " of " + looks.size() + " looks");
        }
    }

    /// Gives a picture of one instant.
    ///
    /// @param look how it looks then
    /// @return it alone
    public static Instants of(Look look) {
        return new Instants(List.of(look), 1, 0, 0);
    }

    /// Gives looks that all rows see alike.
    ///
    /// @param looks all of them, in order, at least one
    /// @return them
    public static Instants of(List<Look> looks) {
        return new Instants(looks, looks.size(), 0, 0);
    }

    /// Tells whether all is seen at one instant.
    ///
    /// @return true for one look
    public boolean isOne() {
        return looks.size() == 1;
    }

    /// Which look a ray sees.
    ///
    /// @param seed draws where a pixel begins
    /// @param row the pixel's, from the top
    /// @param ray which of its rays
    int index(long seed, int column, int row, Plate plate, int ray) {
        if (looks.size() == 1) {
            return 0;
        }
        long bits = Draws.mixed(seed * 0xD1B54A32D192ED03L + row);
        double turn = (Draws.mixed(seed) >>> 32) * WHOLE + column * ACROSS + row * DOWN;
        turn -= Math.floor(turn);
        int own = (int) (open * halved(ray));
        double later = top + (bottom - top) * (row + 0.5) / plate.height() + (bits >>> 32) * WHOLE;
        return Math.clamp((int) later, 0, looks.size() - open) + (own + (int) (open * turn)) % open;
    }

    /// Gives the digits of a ray's number, taken by two, in the other order behind the point.
    private static double halved(int ray) {
        return Integer.toUnsignedLong(Integer.reverse(ray)) * WHOLE;
    }
}
