package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// A flat mirror, level or upright along one of the table's axes: where the image of a body stands.
///
/// The image is behind the mirror as far as the body is before it. A body of ours is its own mirror image once turned
/// or stood on its head, so the image is a body too.
///
/// @param across the axis along which the mirror turns things round
/// @param atMetres where the mirror stands on that axis, metres
public record Mirror(Axis across, double atMetres) {
    /// An axis of the table.
    public enum Axis {
        /// To camera right.
        X,
        /// Away from the camera.
        Y,
        /// Up.
        Z
    }

    /// Gives the image of a place.
    ///
    /// @param place a place, table frame, metres
    /// @return its image, metres
    public Vec image(Vec place) {
        return switch (across) {
            case X -> new Vec(2 * atMetres - place.x(), place.y(), place.z());
            case Y -> new Vec(place.x(), 2 * atMetres - place.y(), place.z());
            case Z -> new Vec(place.x(), place.y(), 2 * atMetres - place.z());
        };
    }

    /// Gives the image of a body.
    ///
    /// @param body a body
    /// @return its image
    public Body image(Body body) {
        Pose pose = body.pose();
        return switch (across) {
            case X -> body.at(new Pose(image(pose.base()), -pose.turnRadians(), -pose.leanRadians()));
            case Y -> body.at(new Pose(image(pose.base()), -pose.turnRadians(), pose.leanRadians()));
            case Z -> {
                Vec top = pose.base().plus(new Vec(0, 0, body.solid().heightMetres()));
                yield new Body(onItsHead(body.solid()), new Pose(image(top), pose.turnRadians(), -pose.leanRadians()));
            }
        };
    }

    private static Solid onItsHead(Solid solid) {
        return switch (solid) {
            case Solid.Box box -> box;
            case Solid.Revolved revolved -> {
                List<Station> stations = new ArrayList<>();
                for (Station station : revolved.stations().reversed()) {
                    stations.add(new Station(revolved.heightMetres() - station.heightMetres(), station.radiusMetres()));
                }
                yield new Solid.Revolved(stations);
            }
        };
    }
}
