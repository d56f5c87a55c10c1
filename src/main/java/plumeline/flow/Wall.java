package plumeline.flow;

import plumeline.ranges.Ranges;

/// One side of the box: how it holds the water that touches it, and what it does to the dye.
///
/// @param grip how it holds the water
/// @param keeps what it does to the dye, or to the warmth that stands for it
public record Wall(Grip grip, Keeps keeps) {
    /// How a side holds the water that touches it.
    public sealed interface Grip {
        /// The water at it stands still.
        record NoSlip() implements Grip {}

        /// The water slides along it freely, as under an open surface or at a plane of symmetry.
        record Slip() implements Grip {}

        /// The water goes with it.
        ///
        /// @param xMetresPerSecond its speed to the right, metres a second
        /// @param yMetresPerSecond its speed away, metres a second
        /// @param zMetresPerSecond its speed up, metres a second; the part across the wall counts nothing
        record Moving(double xMetresPerSecond, double yMetresPerSecond, double zMetresPerSecond) implements Grip {
            /// Checks the ranges.
            public Moving {
                Ranges.checkFinite(xMetresPerSecond, "xMetresPerSecond");
                Ranges.checkFinite(yMetresPerSecond, "yMetresPerSecond");
                Ranges.checkFinite(zMetresPerSecond, "zMetresPerSecond");
            }
        }
    }

    /// What a side does to the dye.
    public sealed interface Keeps {
        /// Nothing goes through.
        record Sealed() implements Keeps {}

        /// The share at the wall is held, as warmth is by a thermostat; it goes through by diffusion.
        ///
        /// @param share what is held, 0 to 1
        record Held(double share) implements Keeps {
            /// Checks the range.
            public Held {
                Ranges.check(share >= 0 && share <= 1, "share", share, "0 to 1");
            }
        }
    }

    /// A pane of glass: water stands still at it.
    ///
    /// @return the wall
    public static Wall glass() {
        return new Wall(new Grip.NoSlip(), new Keeps.Sealed());
    }

    /// An open surface, flat and at its height: water slides freely.
    ///
    /// @return the wall
    public static Wall surface() {
        return new Wall(new Grip.Slip(), new Keeps.Sealed());
    }

    /// A lid that is drawn along.
    ///
    /// @param xMetresPerSecond its speed to the right, metres a second
    /// @return the wall
    public static Wall lid(double xMetresPerSecond) {
        return new Wall(new Grip.Moving(xMetresPerSecond, 0, 0), new Keeps.Sealed());
    }

    /// The same wall with a held share.
    ///
    /// @param share what is held, 0 to 1
    /// @return the wall
    public Wall holding(double share) {
        return new Wall(grip, new Keeps.Held(share));
    }

    /// The wall's speed along an axis.
    double speed(int axis) {
        return switch (grip) {
            case Grip.NoSlip() -> 0;
            case Grip.Slip() -> 0;
            case Grip.Moving(double x, double y, double z) -> axis == 0 ? x : axis == 1 ? y : z;
        };
    }
}
