package plumeline.mirror;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// What the camera faces of one piece of a body's surface at one height, run through by one number from left to right.
sealed interface Track {
    double from();

    double to();

    int piece();

    Vec place(double at);

    Vec facing(double at);

    /// Where it may lie farthest left or right in the picture: its ends, and where sight grazes it from the side.
    List<Double> extremes();

    /// A part of a circle about the axis, run through by azimuth.
    ///
    /// @param from where it begins, rad
    /// @param to where it ends, rad
    /// @param piece which piece it lies on
    /// @param centre of the circle, m
    /// @param x where azimuth 0 is, of length 1
    /// @param y where a quarter turn is
    /// @param radiusMetres m
    /// @param outward how far straight out of the surface goes outward, and how far along the axis, of length 1
    /// @param extremes azimuths
    record Arc(
            double from,
            double to,
            int piece,
            Vec centre,
            Vec x,
            Vec y,
            double radiusMetres,
            Outward outward,
            List<Double> extremes)
            implements Track {
        @Override
        public Vec place(double at) {
            return centre.plus(round(at).times(radiusMetres));
        }

        @Override
        public Vec facing(double at) {
            return round(at).times(outward.share).plus(outward.along);
        }

        private Vec round(double at) {
            return x.times(Math.cos(at)).plus(y.times(Math.sin(at)));
        }
    }

    /// How a surface leans.
    ///
    /// @param share how far straight out of it goes away from the axis
    /// @param along how far along it, as a vector
    record Outward(double share, Vec along) {}

    /// A straight line along a flat face, run through by length.
    ///
    /// @param to its length, m
    /// @param piece which face
    /// @param start its left end, m
    /// @param along where it goes, of length 1
    /// @param facing where the face faces, of length 1
    record Line(double to, int piece, Vec start, Vec along, Vec facing) implements Track {
        @Override
        public double from() {
            return 0;
        }

        @Override
        public Vec place(double at) {
            return start.plus(along.times(at));
        }

        @Override
        public Vec facing(double at) {
            return facing;
        }

        @Override
        public List<Double> extremes() {
            return List.of(0.0, to);
        }
    }

    /// What the camera faces at a height. A height where two pieces meet counts to the upper one.
    static List<Track> at(Body body, double height, Vec camera) {
        return switch (body.solid()) {
            case Solid.Box box -> lines(body, box, height, camera);
            case Solid.Revolved revolved ->
                coneAt(revolved, height)
                        .map(cone -> arcs(body, cone, height, camera))
                        .orElse(List.of());
        };
    }

    /// The piece of a profile at a height.
    static Optional<ConeMirror> coneAt(Solid.Revolved revolved, double height) {
        List<ConeMirror> cones = cones(revolved);
        boolean isTop = height == revolved.heightMetres();
        return cones.stream()
                .filter(cone -> height >= cone.low().heightMetres()
                        && height < cone.high().heightMetres())
                .findFirst()
                .or(() -> isTop ? Optional.of(cones.getLast()) : Optional.empty());
    }

    /// The pieces of a profile that aren't level.
    static List<ConeMirror> cones(Solid.Revolved revolved) {
        List<Station> stations = revolved.stations();
        List<ConeMirror> cones = new ArrayList<>();
        for (int i = 1; i < stations.size(); i++) {
            if (stations.get(i).heightMetres() > stations.get(i - 1).heightMetres()) {
                cones.add(new ConeMirror(stations.get(i - 1), stations.get(i), i));
            }
        }
        return cones;
    }

    /// What the camera faces of a piece at a height within it: one part of a circle, or none.
    static List<Track> arcs(Body body, ConeMirror cone, double height, Vec camera) {
        Vec eye = body.own(camera);
        double faces = cone.facesRadians(eye);
        double radius = cone.radiusMetres(height);
        if (!(faces > 0 && radius > 0)) {
            return List.of();
        }
        double toEye = Math.atan2(eye.y(), eye.x());
        List<Double> extremes = new ArrayList<>(List.of(toEye - faces, toEye + faces));
        double grazes = Math.acos(Math.min(1, radius / Math.hypot(eye.x(), eye.y())));
        if (grazes < faces) {
            extremes.addAll(List.of(toEye - grazes, toEye + grazes));
        }
        return List.of(arc(body, cone, height, extremes));
    }

    /// A part of a circle from the first of its extremes to the second.
    static Arc arc(Body body, ConeMirror cone, double height, List<Double> extremes) {
        Vec base = body.place(Vec.ZERO);
        Vec axis = body.axis();
        Vec facing = cone.facing(0);
        return new Arc(
                extremes.get(0),
                extremes.get(1),
                cone.index(),
                base.plus(axis.times(height)),
                body.place(new Vec(1, 0, 0)).minus(base),
                body.place(new Vec(0, 1, 0)).minus(base),
                cone.radiusMetres(height),
                new Outward(facing.x(), axis.times(facing.z())),
                List.copyOf(extremes));
    }

    /// What the camera faces of a box at a height.
    private static List<Track> lines(Body body, Solid.Box box, double height, Vec camera) {
        if (height < 0 || height > box.heightMetres()) {
            return List.of();
        }
        List<FlatMirror> sides = Pieces.sides(box);
        Vec eye = body.own(camera);
        List<Track> lines = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            FlatMirror side = sides.get(i);
            if (eye.minus(side.middle()).dot(side.facing()) > 0) {
                lines.add(line(body, side, i, height));
            }
        }
        return lines;
    }

    /// A side of a box at a height.
    static Line line(Body body, FlatMirror side, int index, double height) {
        Vec base = body.place(Vec.ZERO);
        Vec foot = side.middle().minus(side.right().times(side.widthMetres() / 2));
        Vec start = new Vec(foot.x(), foot.y(), height);
        Vec along = body.place(side.right()).minus(base);
        Vec facing = body.place(side.facing()).minus(base);
        return new Line(side.widthMetres(), index, body.place(start), along, facing);
    }
}
