package plumeline.fall;

import plumeline.ranges.Ranges;

/// One piece.
///
/// @param shape its shape
/// @param sizeMetres diameter of a ball or disc, edge of a cube, m, > 0
/// @param thicknessMetres a disc's thickness, m, > 0; as the size for others
/// @param massKilograms mass, kg, > 0
public record Piece(Shape shape, double sizeMetres, double thicknessMetres, double massKilograms) {
    /// Shapes that are known.
    public enum Shape {
        /// A ball.
        BALL,
        /// A cube.
        CUBE,
        /// A flat disc.
        DISC
    }

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Piece {
        Ranges.checkPositive(sizeMetres, "size");
        Ranges.checkPositive(thicknessMetres, "thickness");
        Ranges.checkPositive(massKilograms, "mass");
    }

    /// Gives its volume.
    ///
    /// @return m³
    public double volumeMetres3() {
        double square = sizeMetres * sizeMetres;
        return switch (shape) {
            case BALL -> Math.PI / 6 * square * sizeMetres;
            case CUBE -> square * sizeMetres;
            case DISC -> Math.PI / 4 * square * thicknessMetres;
        };
    }

    /// Gives the face that it turns to the flow.
    ///
    /// @return m²
    public double faceMetres2() {
        return shape == Shape.CUBE ? sizeMetres * sizeMetres : Math.PI / 4 * sizeMetres * sizeMetres;
    }

    /// Gives its drag.
    ///
    /// @return the law
    public Drag drag() {
        return switch (shape) {
            case BALL -> Drag.BALL;
            case CUBE -> Drag.CUBE;
            case DISC -> Drag.DISC;
        };
    }

    /// Gives the medium's mass that it drags along as it speeds up.
    ///
    /// **Source:** ball ½ of its volume, disc broadside 8/3 of its radius cubed (potential flow); cube 0.67 of its
    /// volume, from memory.
    ///
    /// @param densityKilogramsPerMetre3 the medium's density, kg/m³
    /// @return kg
    public double addedKilograms(double densityKilogramsPerMetre3) {
        double volume = switch (shape) {
            case BALL -> volumeMetres3() / 2;
            case CUBE -> 0.67 * volumeMetres3();
            case DISC -> sizeMetres * sizeMetres * sizeMetres / 3;
        };
        return densityKilogramsPerMetre3 * volume;
    }
}
