package plumeline.rim;

import plumeline.geom.Vec;
import plumeline.optics.Bent;
import plumeline.optics.Boundary;
import plumeline.optics.Polarised;

/// One ray on its way through round glass; made for one use.
final class Followed {
    /// So far from its cone a profile may be, share of its radius.
    private static final double OFF_SHARE = 0.02;

    /// More faces than this nobody looks through.
    private static final int MOST_FACES = 12;

    private static final double AIR = 1;

    private final ClearRound glass;
    private final Cone outer;
    private final Cone bore;
    private Vec place = Vec.ZERO;
    private Vec way = Vec.ZERO;
    private double passesS = 1;
    private double passesP = 1;
    private Passage.Way through = Passage.Way.WALL;

    Followed(ClearRound glass, Cone outer) {
        this.glass = glass;
        this.outer = outer;
        bore = outer.inward(glass.wallMetres());
    }

    /// Where a ray is.
    private enum In {
        /// In the wall, coming from the outer face.
        WALL_FROM_OUTSIDE,
        /// In the wall, coming from the bore.
        WALL_FROM_BORE,
        BORE,
        OUTSIDE,
        LOST
    }

    Passage follow(Vec at, Vec direction) {
        place = at;
        way = direction;
        In in = cross(outer, glass.indices().outside(), glass.indices().glass()) ? In.WALL_FROM_OUTSIDE : In.OUTSIDE;
        for (int faces = 1; faces < MOST_FACES; faces++) {
            in = switch (in) {
                case WALL_FROM_OUTSIDE -> acrossWall();
                case WALL_FROM_BORE -> toOutside(outer.outMetres(place, way));
                case BORE -> acrossBore();
                case OUTSIDE, LOST -> in;
            };
            if (in == In.OUTSIDE) {
                return new Passage.Out(place, way, (passesS + passesP) / 2, through, faces);
            }
            if (in == In.LOST) {
                return new Passage.Lost();
            }
        }
        return new Passage.Lost();
    }

    private In acrossWall() {
        double again = outer.againMetres(place, way);
        double toBore = bore.radiusMetres(place.z()) > 0 ? bore.inMetres(place, way) : 0;
        return toBore > 0 && toBore < again ? intoBore(toBore) : toOutside(again);
    }

    private In intoBore(double metres) {
        if (!goes(metres) || bore.radiusMetres(place.z()) <= 0) {
            return In.LOST;
        }
        boolean passes = cross(bore, glass.indices().glass(), inside());
        through = passes ? Passage.Way.BORE : through;
        return passes ? In.BORE : In.WALL_FROM_BORE;
    }

    private In acrossBore() {
        double before = inside();
        if (!goes(bore.againMetres(place, way)) || inside() != before) {
            return In.LOST;
        }
        return cross(bore, before, glass.indices().glass()) ? In.WALL_FROM_BORE : In.BORE;
    }

    private In toOutside(double metres) {
        if (!goes(metres)) {
            return In.LOST;
        }
        return cross(outer, glass.indices().glass(), glass.indices().outside()) ? In.OUTSIDE : In.WALL_FROM_OUTSIDE;
    }

    private double inside() {
        return place.z() < glass.levelMetres() ? glass.indices().liquid() : AIR;
    }

    /// Goes on by a length; false where that leads nowhere or out of where the cone is the body's.
    private boolean goes(double metres) {
        place = place.plus(way.times(Math.max(0, metres)));
        double taken = outer.radiusMetres(place.z());
        double is = glass.outer().radiusAtMetres(place.z());
        return metres >= 0 && Math.abs(taken - is) <= OFF_SHARE * is && is > 0;
    }

    /// Crosses a face, or is totally reflected at it.
    ///
    /// @return whether it crosses
    private boolean cross(Cone face, double from, double to) {
        Vec facing = face.facing(place);
        Boundary boundary = new Boundary(from, to);
        Bent bent = boundary.bend(way, facing);
        if (bent instanceof Bent.Reflected(Vec back)) {
            way = back;
            return false;
        }
        Polarised mirrored = boundary.reflectance(Math.acos(Math.min(1, Math.abs(way.dot(facing)))));
        passesS *= 1 - mirrored.s();
        passesP *= 1 - mirrored.p();
        way = ((Bent.Passed) bent).direction();
        return true;
    }
}
