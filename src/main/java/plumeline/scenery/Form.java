package plumeline.scenery;

import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// The form of a part in the table's frame; each is met exactly, none is made of facets.
public sealed interface Form {
    /// A solid of revolution or a box.
    ///
    /// @param body the body
    record Posed(Body body) implements Form {}

    /// A ball.
    ///
    /// @param middle its middle, m
    /// @param radiusMetres m, > 0
    record Ball(Vec middle, double radiusMetres) implements Form {
        /// Checks the range.
        public Ball {
            Ranges.checkPositive(radiusMetres, "radius");
        }
    }

    /// A frustum between two round ends, both closed: a line, a rod, a nozzle.
    ///
    /// @param barrel the frustum
    record Rod(Barrel barrel) implements Form {}

    /// A flat rectangle, seen from both sides: a table's top, a wall. `right × up` is its front's normal.
    ///
    /// @param middle its middle, m
    /// @param right along its width, of length 1
    /// @param up along its height, of length 1, square to `right`
    /// @param widthMetres m, > 0
    /// @param heightMetres m, > 0
    record Sheet(Vec middle, Vec right, Vec up, double widthMetres, double heightMetres) implements Form {
        /// Checks the ranges.
        public Sheet {
            Ranges.checkPositive(widthMetres, "width");
            Ranges.checkPositive(heightMetres, "height");
        }
    }

    /// A quarter of a cylinder's wall, seen from both sides: the bend of a sweep. Its axis runs along `along`; the wall
    /// goes from `middle + from · radius` by a right angle to `middle + to · radius`.
    ///
    /// @param middle the middle of its axis, m
    /// @param along its axis, of length 1
    /// @param from where the wall begins, of length 1, square to the axis
    /// @param to where it ends, of length 1, square to both
    /// @param lengthMetres along the axis, m, > 0
    /// @param radiusMetres m, > 0
    record Bend(Vec middle, Vec along, Vec from, Vec to, double lengthMetres, double radiusMetres) implements Form {
        /// Checks the ranges.
        public Bend {
            Ranges.checkPositive(lengthMetres, "length");
            Ranges.checkPositive(radiusMetres, "radius");
        }
    }
}
