package plumeline.stage;

import java.util.Optional;
import plumeline.fall.Fall;
import plumeline.fall.Handful;
import plumeline.fall.Medium;
import plumeline.fall.Piece;
import plumeline.geom.Vec;
import plumeline.plan.Release;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;

/// The pieces that a shot lets go, as numbers.
///
/// @param piece one of them
/// @param count how many
/// @param overSeconds the time over which they are let go, s
/// @param spreadMetres how far from the middle of the hand, m
public record PieceRelease(Piece piece, int count, double overSeconds, double spreadMetres) {
    /// A flat piece is taken as thick as this share of its size, where its `thickness` isn't written.
    private static final double USUAL_THICKNESS = 0.2;

    /// The cloud that is drawn and counted.
    private static final long SEED = 1;

    /// Reads a release of pieces.
    ///
    /// @param release the release
    /// @return the pieces
    public static PieceRelease of(Release.OfPieces release) {
        Written written = release.written();
        double count = written.findNumber("count").orElse(1);
        return new PieceRelease(
                piece(release.piece().written()),
                (int) Math.clamp(count, 1, Handful.MOST),
                si(written, "over", 0),
                si(written, "spread", 0));
    }

    private static Piece piece(Written written) {
        Piece.Shape shape = switch (written.findWord("shape").orElse("ball")) {
            case "cube" -> Piece.Shape.CUBE;
            case "disc" -> Piece.Shape.DISC;
            default -> Piece.Shape.BALL;
        };
        double size = si(written, "size", 0);
        double thickness = shape == Piece.Shape.DISC ? si(written, "thickness", USUAL_THICKNESS * size) : size;
        Optional<Quantity> mass = written.findQuantity("mass");
        double kilograms = mass.map(Quantity::si)
                .orElseGet(() -> si(written, "density", 0) * new Piece(shape, size, thickness, 1).volumeMetres3());
        return new Piece(shape, size, thickness, kilograms);
    }

    private static double si(Written written, String key, double otherwise) {
        return written.findQuantity(key).map(Quantity::si).orElse(otherwise);
    }

    /// Gives how one falls through air, by its usual drag.
    ///
    /// @return its fall
    public Fall fall() {
        return new Fall(piece, Medium.AIR, 1);
    }

    /// Gives them all.
    ///
    /// @return the cloud, always the same
    public Handful handful() {
        return new Handful(SEED, count, overSeconds, spreadMetres, fall());
    }

    /// Gives how far they fall from a hand: to the table's top, or to the water in a tank below it.
    ///
    /// @param stage the shot
    /// @param hand where they are let go, m
    /// @return the way, m, > 0; 0 where the hand is not over it
    public static double wayMetres(Stage stage, Vec hand) {
        double ground = stage.findTank()
                .filter(walls -> walls.isOver(hand))
                .map(TankWalls::waterLineMetres)
                .orElse(0.0);
        return Math.max(0, hand.z() - ground);
    }
}
