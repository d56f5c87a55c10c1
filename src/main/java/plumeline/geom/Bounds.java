package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// An upright box along the table's axes: a body's bounds, or the inside of a tank.
///
/// @param low least x, y, z, metres
/// @param high greatest x, y, z, metres
public record Bounds(Vec low, Vec high) {
    /// Checks the order.
    public Bounds {
        if (!(low.x() <= high.x() && low.y() <= high.y() && low.z() <= high.z())) {
            throw new IllegalArgumentException("bounds need low at or under high, given " + low + " and " + high);
        }
    }

    /// Gives the least box round places.
    ///
    /// @param places one at least, m
    /// @return the box
    /// @throws IllegalArgumentException where there is none
    public static Bounds of(List<Vec> places) {
        if (places.isEmpty()) {
            throw new IllegalArgumentException("a box is round one place at least");
        }
        Vec low = places.getFirst();
        Vec high = low;
        for (Vec place : places) {
            low = new Vec(Math.min(low.x(), place.x()), Math.min(low.y(), place.y()), Math.min(low.z(), place.z()));
            high = new Vec(Math.max(high.x(), place.x()), Math.max(high.y(), place.y()), Math.max(high.z(), place.z()));
        }
        return new Bounds(low, high);
    }

    /// Gives its corners.
    ///
    /// @return eight, m
    public List<Vec> corners() {
        List<Vec> corners = new ArrayList<>();
        for (double x : new double[] {low.x(), high.x()}) {
            for (double y : new double[] {low.y(), high.y()}) {
                for (double z : new double[] {low.z(), high.z()}) {
                    corners.add(new Vec(x, y, z));
                }
            }
        }
        return List.copyOf(corners);
    }
}
