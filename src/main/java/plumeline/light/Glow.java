package plumeline.light;

import plumeline.geom.Vec;

/// How bright a flat face is from place to place on it and from direction to direction, as a share of its luminance.
public interface Glow {
    /// As bright everywhere and from everywhere.
    ///
    /// @return how it glows
    static Glow even() {
        return new Dimmed(1);
    }

    /// Gives how bright it is.
    ///
    /// @param place a place on the face, m
    /// @param toward where its light goes from there, of any length over 0
    /// @return share of the face's luminance, ≥ 0
    double share(Vec place, Vec toward);

    /// Gives this with another before or behind it, each as if the other were even.
    ///
    /// @param other the other
    /// @return both together
    default Glow times(Glow other) {
        if (isEven()) {
            return other;
        }
        return other.isEven() ? this : new Both(this, other);
    }

    /// Tells whether it is as bright as its luminance everywhere and from everywhere.
    ///
    /// @return false where that isn't known
    default boolean isEven() {
        return equals(even());
    }

    /// One with another before or behind it.
    ///
    /// @param one the one
    /// @param other the other
    record Both(Glow one, Glow other) implements Glow {
        @Override
        public double share(Vec place, Vec toward) {
            return one.share(place, toward) * other.share(place, toward);
        }
    }

    /// As much everywhere and from everywhere.
    ///
    /// @param share of the face's luminance, ≥ 0
    record Dimmed(double share) implements Glow {
        @Override
        public double share(Vec place, Vec toward) {
            return share;
        }
    }
}
