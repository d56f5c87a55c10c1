package plumeline.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.ranges.Ranges;

/// The hollow under a base by what a ruler and a kitchen scale say of it: a dome with `r² = a²(1 − (z/h)^q)`, which
/// holds the share q/(q + 1) of its cylinder.
///
/// **Source:** own derivation; a cap of a ball of height h on a base of radius a holds 1/2 + h²/(6a²) of its cylinder.
///
/// @param radiusMetres its radius at the rim, metres, > 0
/// @param depthMetres how deep it is in the middle, metres, > 0
public record Recess(double radiusMetres, double depthMetres) {
    private static final int RINGS = 4;
    private static final double LEAST_SHARE = 0.05;
    private static final double MOST_SHARE = 0.99;

    /// A ball's cap holds no more of its cylinder that a base could have.
    private static final double MOST_CAP = 0.9;

    /// Checks the ranges.
    public Recess {
        Ranges.checkPositive(radiusMetres, "radiusMetres");
        Ranges.checkPositive(depthMetres, "depthMetres");
    }

    /// Gives the volume of its cylinder.
    ///
    /// @return volume, cubic metres
    public double cylinderMetres3() {
        return Math.PI * radiusMetres * radiusMetres * depthMetres;
    }

    /// Gives the volume of a ball's cap, what a hollow is taken to hold that wasn't filled and weighed.
    ///
    /// @return volume, cubic metres
    public double capMetres3() {
        double slope = depthMetres / radiusMetres;
        return Math.min(MOST_CAP, 0.5 + slope * slope / 6) * cylinderMetres3();
    }

    /// Finds the dome that holds a volume.
    ///
    /// @param holdsMetres3 what it holds, cubic metres
    /// @return its form; empty where that is no dome: all of its cylinder, or a spike
    public Optional<Turned> findDome(double holdsMetres3) {
        double share = holdsMetres3 / cylinderMetres3();
        if (!(share > LEAST_SHARE && share < MOST_SHARE)) {
            return Optional.empty();
        }
        double q = share / (1 - share);
        List<Turned.Ring> rings = new ArrayList<>();
        for (int i = 0; i <= RINGS; i++) {
            double gone = 1 - (double) i / RINGS;
            rings.add(new Turned.Ring(depthMetres * Math.pow(1 - gone * gone, 1 / q), radiusMetres * gone));
        }
        Turned dome = new Turned(rings);
        double wider = Math.sqrt(holdsMetres3 / dome.whole().volumeMetres3());
        return Optional.of(dome.widened(wider));
    }

    /// Tells whether a dome lies within an outline.
    ///
    /// @param outline the outline, without a dome of its own
    /// @param dome the dome
    /// @return true where it does, with something of the outline all round it
    public static boolean fits(Form outline, Turned dome) {
        for (Turned.Ring ring : dome.rings()) {
            double widest = switch (outline) {
                case Turned turned -> turned.radiusMetres(ring.heightMetres());
                case Block(double width, double depth, double height, double base) ->
                    ring.heightMetres() < base + height ? Math.min(width, depth) / 2 : 0;
                case Dished _ -> 0;
            };
            if (ring.radiusMetres() >= widest) {
                return false;
            }
        }
        return true;
    }
}
