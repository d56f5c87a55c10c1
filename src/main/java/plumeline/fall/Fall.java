package plumeline.fall;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.ranges.Ranges;
import plumeline.water.Water;

/// A piece on its way from rest, with drag and the medium's mass that it drags along. What is lighter than the medium
/// rises, by the same law.
///
/// Followed in steps of the way that grow from the start; in each the coefficient is that of its middle and the rest is
/// exact, so that a piece that has its steady speed keeps it.
///
/// **Source:** Newton; own derivation of the steps (docs/derivations/fall.md); coefficients as in [Drag], added mass as
/// in [Piece].
///
/// @param piece the piece
/// @param medium what it is in
/// @param dragShare drag over the usual, dimensionless, > 0; 1 for the usual
public record Fall(Piece piece, Medium medium, double dragShare) {
    private static final int STEPS = 400;
    private static final double GRAVITY = Water.GRAVITY_METRES_PER_SECOND2;

    /// A piece that is nearer than this share to the medium's density goes neither way for sure.
    private static final double EVEN_SHARE = 1e-6;

    /// Checks the range.
    ///
    /// @throws IllegalArgumentException outside it
    public Fall {
        Ranges.checkPositive(dragShare, "share of the drag");
    }

    /// Gives its weight less its lift.
    ///
    /// @return N, + down
    public double netNewtons() {
        return GRAVITY * (piece.massKilograms() - medium.densityKilogramsPerMetre3() * piece.volumeMetres3());
    }

    /// Tells whether it goes anywhere: neither up nor down where it is as dense as the medium.
    ///
    /// @return true where it does
    public boolean moves() {
        return Math.abs(netNewtons()) > EVEN_SHARE * GRAVITY * piece.massKilograms();
    }

    private double reynolds(double speed) {
        return medium.densityKilogramsPerMetre3() * speed * piece.sizeMetres() / medium.viscosityPascalSeconds();
    }

    private double dragNewtons(double speed) {
        return coefficient(Math.clamp(reynolds(speed), 1e-9, Drag.MOST_REYNOLDS))
                * dragShare
                * piece.faceMetres2()
                * medium.densityKilogramsPerMetre3()
                * speed
                * speed
                / 2;
    }

    private double coefficient(double reynolds) {
        double usual = piece.drag().coefficient(reynolds);
        return zigzags(reynolds) ? Math.max(usual, Drag.ZIGZAG) : usual;
    }

    private boolean zigzags(double reynolds) {
        double lifted = medium.densityKilogramsPerMetre3() * piece.volumeMetres3();
        return piece.shape() == Piece.Shape.BALL && Drag.zigzags(reynolds, piece.massKilograms() / lifted);
    }

    /// Tells whether it rises in a zigzag once it is at its steady speed.
    ///
    /// @return true for a light ball
    public boolean zigzags() {
        OptionalDouble steady = findTerminalMetresPerSecond();
        return steady.isPresent() && zigzags(reynolds(steady.getAsDouble()));
    }

    /// Finds the speed at which drag bears the net weight.
    ///
    /// @return m/s; empty above the drag's range
    public OptionalDouble findTerminalMetresPerSecond() {
        double most = Drag.MOST_REYNOLDS
                * medium.viscosityPascalSeconds()
                / (medium.densityKilogramsPerMetre3() * piece.sizeMetres());
        double net = Math.abs(netNewtons());
        if (dragNewtons(most) < net) {
            return OptionalDouble.empty();
        }
        double low = 0;
        double high = most;
        for (int i = 0; i < 80; i++) {
            double middle = (low + high) / 2;
            if (dragNewtons(middle) < net) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return OptionalDouble.of((low + high) / 2);
    }

    /// Gives where it is.
    ///
    /// @param metres the way from rest, m
    /// @param seconds the time for it, s
    /// @param metresPerSecond the speed there, m/s
    public record At(double metres, double seconds, double metresPerSecond) {}

    /// Follows it from rest.
    ///
    /// @param metres the way, m, ≥ 0
    /// @return when it is there, and how fast
    /// @throws IllegalArgumentException where it doesn't move
    public At at(double metres) {
        return course(metres).getLast();
    }

    /// Follows it from rest, step by step; between two steps its acceleration is even.
    ///
    /// @param metres the way, m, ≥ 0
    /// @return where it is after each step, from rest on
    /// @throws IllegalArgumentException where it doesn't move
    public List<At> course(double metres) {
        Ranges.checkNotNegative(metres, "way");
        if (!moves()) {
            throw new IllegalArgumentException("a piece as dense as what it is in");
        }
        double most = findTerminalMetresPerSecond().orElse(Double.POSITIVE_INFINITY);
        double square = 0;
        double seconds = 0;
        List<At> course = new ArrayList<>(STEPS + 1);
        course.add(new At(0, 0, 0));
        for (int i = 0; i < STEPS && metres > 0; i++) {
            double step = metres * (2 * i + 1) / ((double) STEPS * STEPS);
            double next = advance(square, step, most * most);
            // The mean of 1/v over a step of even force is 2/(v₀ + v₁).
            seconds += 2 * step / (Math.sqrt(square) + Math.sqrt(next));
            square = next;
            double share = (i + 1.0) / STEPS;
            course.add(new At(i + 1 == STEPS ? metres : metres * share * share, seconds, Math.sqrt(square)));
        }
        return course;
    }

    /// The speed's square after a step, with the coefficient of its middle.
    private double advance(double square, double step, double mostSquare) {
        double moved = piece.massKilograms() + piece.addedKilograms(medium.densityKilogramsPerMetre3());
        double net = Math.abs(netNewtons());
        double free = (net - dragNewtons(Math.sqrt(square))) / moved;
        double middle = Math.min(mostSquare, Math.max(square + free * step, 0));
        double drag = dragNewtons(Math.sqrt(middle)) / middle;
        return square + (net / drag - square) * -Math.expm1(-2 * drag * step / moved);
    }

    /// Tells whether its Reynolds number stays in the drag's range at a speed.
    ///
    /// @param metresPerSecond the speed, m/s
    /// @return true where it does
    public boolean isKnownAt(double metresPerSecond) {
        return reynolds(metresPerSecond) <= Drag.MOST_REYNOLDS;
    }
}
