package plumeline.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.ranges.Ranges;

/// A straight tube that shines all round its side, not out of its ends.
///
/// @param middle its middle, m
/// @param axis along it, of length 1
/// @param facing square to the axis: along this its lux at a distance are measured, of length 1
/// @param lengthMetres m, > 0
/// @param radiusMetres m, > 0
/// @param luminance cd/m², ≥ 0
public record Tube(Vec middle, Vec axis, Vec facing, double lengthMetres, double radiusMetres, double luminance)
        implements Emitter {
    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Tube {
        Ranges.checkPositive(lengthMetres, "length");
        Ranges.checkPositive(radiusMetres, "radius");
        Ranges.checkNotNegative(luminance, "luminance");
        Directions.check(axis, facing);
    }

    @Override
    public Tube withLuminance(double candelaPerMetre2) {
        return new Tube(middle, axis, facing, lengthMetres, radiusMetres, candelaPerMetre2);
    }

    /// What of its side is turned to the place: between the two lines where sight grazes it, and its ends' arcs there.
    @Override
    public List<Vec> outline(Vec from) {
        Vec to = from.minus(middle);
        Vec out = to.minus(axis.times(to.dot(axis)));
        double away = out.lengthMetres();
        if (away <= radiusMetres) {
            return List.of();
        }
        Vec toward = out.times(1 / away);
        Vec aside = axis.cross(toward);
        double half = Math.acos(radiusMetres / away);
        Vec end = axis.times(lengthMetres / 2);
        int pieces = CIRCLE_PIECES / 4;
        List<Vec> outline =
                new ArrayList<>(new Circle(middle.plus(end), toward, aside, radiusMetres).corners(-half, half, pieces));
        outline.addAll(new Circle(middle.minus(end), toward, aside, radiusMetres).corners(half, -half, pieces));
        return outline;
    }
}
