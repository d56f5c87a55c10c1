package plumeline.fall;

/// The share of a vessel that pieces fill, poured in: their own volume over the room they take. No wall counts: in a
/// vessel under ten pieces wide there are fewer.
///
/// @param looseShare poured gently
/// @param usualShare in between
/// @param closeShare shaken
public record Packing(double looseShare, double usualShare, double closeShare) {
    /// Gives a shape's packing.
    ///
    /// **Source:** balls 0.56 (Onoda and Liniger 1990) to 0.64 (Berryman 1983); cubes 0.54 to 0.67 (Baker and
    /// Kudrolli 2010); discs 0.50 to 0.65, our guess from coins and lentils. In between: their middle.
    ///
    /// @param shape the shape
    /// @return its packing
    public static Packing of(Piece.Shape shape) {
        return switch (shape) {
            case BALL -> new Packing(0.56, 0.60, 0.64);
            case CUBE -> new Packing(0.54, 0.605, 0.67);
            case DISC -> new Packing(0.50, 0.575, 0.65);
        };
    }

    /// Gives how many pieces fill a vessel.
    ///
    /// @param vesselMetres3 the vessel, m³
    /// @param pieceMetres3 a piece, m³
    /// @param share the share that they fill
    /// @return how many, not rounded
    public static double pieces(double vesselMetres3, double pieceMetres3, double share) {
        return share * vesselMetres3 / pieceMetres3;
    }
}
