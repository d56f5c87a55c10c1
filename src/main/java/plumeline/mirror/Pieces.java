package plumeline.mirror;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// The pieces of a solid, in its own frame, each a mirror of its own.
final class Pieces {
    private static final Vec X = new Vec(1, 0, 0);
    private static final Vec Y = new Vec(0, 1, 0);

    private Pieces() {}

    /// A piece: where it mirrors one place to another.
    @FunctionalInterface
    interface Piece {
        Optional<Spot> findSpot(Vec camera, Vec place);
    }

    static List<Piece> of(Solid solid) {
        return switch (solid) {
            case Solid.Box box -> {
                List<Piece> pieces = new ArrayList<>();
                List<FlatMirror> faces = new ArrayList<>(sides(box));
                Vec top = new Vec(0, 0, box.heightMetres());
                faces.add(new FlatMirror(Vec.ZERO, Vec.UP.times(-1), X, box.widthMetres(), box.depthMetres()));
                faces.add(new FlatMirror(top, Vec.UP, X, box.widthMetres(), box.depthMetres()));
                for (int i = 0; i < faces.size(); i++) {
                    int index = i;
                    pieces.add((camera, place) -> faces.get(index).findSpot(camera, place, index));
                }
                yield pieces;
            }
            case Solid.Revolved revolved -> {
                List<Station> stations = revolved.stations();
                List<Piece> pieces = new ArrayList<>();
                pieces.add(flat(new Station(0, 0), stations.getFirst(), 0, -1));
                for (int i = 1; i < stations.size(); i++) {
                    Station low = stations.get(i - 1);
                    Station high = stations.get(i);
                    pieces.add(
                            high.heightMetres() > low.heightMetres()
                                    ? new ConeMirror(low, high, i)::findSpot
                                    : flat(low, high, i, Math.signum(low.radiusMetres() - high.radiusMetres())));
                }
                Station last = stations.getLast();
                pieces.add(flat(last, new Station(last.heightMetres(), 0), stations.size(), 1));
                yield pieces;
            }
        };
    }

    /// The sides of a box: left, right, front, behind.
    static List<FlatMirror> sides(Solid.Box box) {
        double width = box.widthMetres();
        double depth = box.depthMetres();
        double height = box.heightMetres();
        Vec middle = new Vec(0, 0, height / 2);
        return List.of(
                new FlatMirror(middle.minus(X.times(width / 2)), X.times(-1), Y.times(-1), depth, height),
                new FlatMirror(middle.plus(X.times(width / 2)), X, Y, depth, height),
                new FlatMirror(middle.minus(Y.times(depth / 2)), Y.times(-1), X, width, height),
                new FlatMirror(middle.plus(Y.times(depth / 2)), Y, X.times(-1), width, height));
    }

    /// A flat ring about the axis, facing up (+1) or down (−1).
    private static Piece flat(Station one, Station other, int index, double up) {
        double inner = Math.min(one.radiusMetres(), other.radiusMetres());
        double outer = Math.max(one.radiusMetres(), other.radiusMetres());
        Vec facing = new Vec(0, 0, up);
        Vec through = new Vec(0, 0, other.heightMetres());
        return (camera, place) -> up == 0
                ? Optional.empty()
                : FlatMirror.meet(camera, place, through, facing)
                        .filter(at -> Math.hypot(at.x(), at.y()) >= inner && Math.hypot(at.x(), at.y()) <= outer)
                        .map(at -> Spot.of(at, facing, camera, index));
    }

    /// Where a body's pieces mirror a place to the camera, in the table frame.
    static List<Spot> spots(Body body, Vec camera, Vec place) {
        Vec eye = body.own(camera);
        Vec seen = body.own(place);
        List<Spot> spots = new ArrayList<>();
        for (Piece piece : of(body.solid())) {
            piece.findSpot(eye, seen).map(spot -> placed(body, spot)).ifPresent(spots::add);
        }
        return spots;
    }

    private static Spot placed(Body body, Spot own) {
        Vec place = body.place(own.place());
        Vec facing = body.place(own.place().plus(own.facing())).minus(place);
        return new Spot(place, facing.unit(), own.incidenceRadians(), own.piece());
    }
}
