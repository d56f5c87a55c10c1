package plumeline.mirror;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// Which straight ways between two places are free.
@FunctionalInterface
public interface Ways {
    /// Tells whether nothing stands in a way. What it only touches, to a thousand-millionth of its size, doesn't.
    ///
    /// @param from one end, m
    /// @param to the other, m
    /// @return whether the way is free
    boolean isFree(Vec from, Vec to);

    /// Gives the ways that bodies leave.
    ///
    /// @param bodies what stands about
    /// @return the ways that pass them all
    static Ways past(List<Body> bodies) {
        List<Standing> all = bodies.stream()
                .map(body -> new Standing(body, body.middle(), body.ballMetres()))
                .toList();
        return (from, to) -> {
            for (Standing standing : all) {
                if (standing.isNear(from, to) && !passes(standing.body, from, to)) {
                    return false;
                }
            }
            return true;
        };
    }

    /// A body within a ball.
    ///
    /// @param body the body
    /// @param middle the ball's middle, m
    /// @param ballMetres its radius, m
    record Standing(Body body, Vec middle, double ballMetres) {
        /// Whether a way comes into the ball.
        boolean isNear(Vec from, Vec to) {
            double x = to.x() - from.x();
            double y = to.y() - from.y();
            double z = to.z() - from.z();
            double right = middle.x() - from.x();
            double back = middle.y() - from.y();
            double up = middle.z() - from.z();
            double square = x * x + y * y + z * z;
            double on = square > 0 ? Math.clamp((right * x + back * y + up * z) / square, 0, 1) : 0;
            double besideX = right - on * x;
            double besideY = back - on * y;
            double besideZ = up - on * z;
            return besideX * besideX + besideY * besideY + besideZ * besideZ <= ballMetres * ballMetres;
        }
    }

    private static boolean passes(Body body, Vec from, Vec to) {
        Vec start = body.own(from);
        Vec way = body.own(to).minus(start);
        return switch (body.solid()) {
            case Solid.Box box -> Crossings.passesBox(box, start, way);
            case Solid.Revolved revolved -> {
                List<Station> stations = revolved.stations();
                boolean passes = true;
                for (int i = 1; passes && i < stations.size(); i++) {
                    passes = Crossings.passesFrustum(stations.get(i - 1), stations.get(i), start, way);
                }
                yield passes;
            }
        };
    }
}
