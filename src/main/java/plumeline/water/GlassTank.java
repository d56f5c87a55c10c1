package plumeline.water;

import plumeline.ranges.Ranges;

/// A box of glass panes of one thickness, open above.
///
/// @param lengthMetres inside, metres, > 0
/// @param widthMetres inside, metres, > 0
/// @param wallsHeightMetres walls' height above the inside floor, metres, > 0
/// @param glassMetres thickness of every pane, metres, > 0
/// @param rim whether the walls' upper edges are held
/// @param support what bears the floor pane
public record GlassTank(
        double lengthMetres,
        double widthMetres,
        double wallsHeightMetres,
        double glassMetres,
        Rim rim,
        Support support) {
    /// Density of float glass, kilograms a cubic metre.
    ///
    /// **Source:** EN 572-1, from memory.
    public static final double GLASS_KILOGRAMS_PER_METRE3 = 2500;

    /// Whether the walls' upper edges are held.
    public enum Rim {
        /// Nothing holds them.
        NONE,
        /// A rim or braces all round that keep them straight.
        ALL_ROUND
    }

    /// What bears the floor pane.
    public enum Support {
        /// A level bed under all of it: the floor doesn't bend.
        FULL,
        /// Its four edges only: the floor bears the water as a plate.
        EDGES
    }

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException where a measure isn't > 0
    public GlassTank {
        Ranges.checkPositive(lengthMetres, "tank's length");
        Ranges.checkPositive(widthMetres, "tank's width");
        Ranges.checkPositive(wallsHeightMetres, "walls' height");
        Ranges.checkPositive(glassMetres, "glass");
    }

    /// Gives the area the tank stands on, its panes' edges included.
    ///
    /// @return area, square metres
    public double footprintMetres2() {
        return (lengthMetres + 2 * glassMetres) * (widthMetres + 2 * glassMetres);
    }

    /// Gives the water's surface.
    ///
    /// @return area, square metres
    public double insideMetres2() {
        return lengthMetres * widthMetres;
    }

    /// Gives the mass of the floor and four walls as glass alone: no rim, no braces, no seams.
    ///
    /// @return mass, kilograms
    public double glassKilograms() {
        double walls = (footprintMetres2() - insideMetres2()) * wallsHeightMetres;
        return GLASS_KILOGRAMS_PER_METRE3 * (footprintMetres2() * glassMetres + walls);
    }

    /// Gives the same tank with other glass.
    ///
    /// @param metres thickness, metres, > 0
    /// @return the tank, as large inside
    public GlassTank withGlass(double metres) {
        return new GlassTank(lengthMetres, widthMetres, wallsHeightMetres, metres, rim, support);
    }

    /// Gives the same tank with another rim.
    ///
    /// @param other the rim
    /// @return the tank
    public GlassTank withRim(Rim other) {
        return new GlassTank(lengthMetres, widthMetres, wallsHeightMetres, glassMetres, other, support);
    }

    /// Gives the same tank with its floor borne otherwise.
    ///
    /// @param other the support
    /// @return the tank
    public GlassTank withSupport(Support other) {
        return new GlassTank(lengthMetres, widthMetres, wallsHeightMetres, glassMetres, rim, other);
    }
}
