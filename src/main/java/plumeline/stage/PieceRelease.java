package plumeline.stage;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.fall.Fall;
import plumeline.fall.Handful;
import plumeline.fall.Medium;
import plumeline.fall.Piece;
import plumeline.geom.Vec;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
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

    /// What is said of a handful is counted of so many, and line art draws no more.
    public static final int COUNTED = 500;

    /// The most that a plan may let go.
    private static final int MOST = 1_000_000;

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
                (int) Math.clamp(count, 1, MOST),
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

    /// Gives how one falls, by its usual drag.
    ///
    /// @param medium what it falls through
    /// @return its fall
    public Fall fall(Medium medium) {
        return new Fall(piece, medium, 1);
    }

    /// Gives them, at most [#COUNTED]: more give no other share.
    ///
    /// @param medium what they fall through
    /// @return the cloud, always the same
    public Handful handful(Medium medium) {
        return handful(medium, COUNTED);
    }

    /// Gives them.
    ///
    /// @param medium what they fall through
    /// @param most no more than so many
    /// @return the cloud, always the same
    public Handful handful(Medium medium, int most) {
        return new Handful(SEED, Math.min(count, most), overSeconds, spreadMetres, fall(medium));
    }

    /// Tells whether a hand is under the water of a shot's tank.
    ///
    /// @param stage the shot
    /// @param hand where pieces are let go, m
    /// @return true under the surface, within the tank's glass
    public static boolean isUnder(Stage stage, Vec hand) {
        return stage.findTank()
                .filter(walls -> walls.isOver(hand) && hand.z() < walls.waterLineMetres())
                .isPresent();
    }

    /// Finds what is round a hand: air, or the tank's water.
    ///
    /// @param stage the shot
    /// @param hand where pieces are let go, m
    /// @return the medium; empty for water warmer or colder than is known
    public static Optional<Medium> findMedium(Stage stage, Vec hand) {
        if (!isUnder(stage, hand)) {
            return Optional.of(Medium.AIR);
        }
        TankPlace tank = stage.shot().findTank().orElseThrow();
        OptionalDouble density = TankFill.density(tank).find();
        OptionalDouble viscosity = TankFill.viscosity(tank).find();
        return density.isPresent() && viscosity.isPresent()
                ? Optional.of(new Medium(density.getAsDouble(), viscosity.getAsDouble()))
                : Optional.empty();
    }

    /// Gives how far they fall from a hand: to the table's top, to the water in a tank below it, to the tank's floor
    /// from under the water.
    ///
    /// @param stage the shot
    /// @param hand where they are let go, m
    /// @return the way, m, > 0; 0 where the hand is not over it
    public static double wayMetres(Stage stage, Vec hand) {
        double ground = stage.findTank()
                .filter(walls -> walls.isOver(hand))
                .map(walls -> isUnder(stage, hand) ? walls.inside().low().z() : walls.waterLineMetres())
                .orElse(0.0);
        return Math.max(0, hand.z() - ground);
    }
}
