package plumeline.want;

import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.roots.Roots;
import plumeline.stage.PlumePlace;
import plumeline.stage.Scene;

/// How a plume stands to the sight lines to a height of a thing.
///
/// @param sightMetres how deep the front is when it passes them, m below the surface
/// @param wideMetres how deep it is once it is wide enough
/// @param coveredShare how much of the width it covers where it passes them
/// @param aheadMetres how far before the thing its axis goes down
/// @param clearMetres the same less its half-width: below 0 where it meets the thing
record Veiling(double sightMetres, double wideMetres, double coveredShare, double aheadMetres, double clearMetres) {
    /// How much of its width veils it.
    static final double SHARE = 0.5;

    /// So far under the initial front there is something of a plume, m.
    static final double LEAST_METRES = 1e-4;

    /// How the plume goes down by the thing, as far as the law knows.
    enum Side {
        BEFORE,
        MEETING,
        BEHIND
    }

    /// @param wider how many times its half-width the plume is
    static Veiling of(PlumePlace plume, Scene scene, Body body, InkWants.ThingPart part, double wider) {
        if (isOutOfSight(plume, scene, body)) {
            return new Veiling(plume.floorMetres(), plume.floorMetres(), 0, -1, -1);
        }
        Projection view = scene.view(body);
        Vec right = view.aim().right();
        Vec middle = body.middle();
        Vec there = new Vec(middle.x(), middle.y(), part.heightMetres(body));
        double half = halfWidthMetres(body, part);
        double ahead = plume.aheadMetres(view, body);
        PlumePlace.Crossing left = plume.crossing(view, there.minus(right.times(half)));
        PlumePlace.Crossing rightmost = plume.crossing(view, there.plus(right.times(half)));
        double sight = (left.depthMetres() + rightmost.depthMetres()) / 2;
        double radius = wider * radius(plume, sight);
        double from = Math.min(left.asideMetres(), rightmost.asideMetres());
        double to = Math.max(left.asideMetres(), rightmost.asideMetres());
        double covered = (Math.min(to, radius) - Math.max(from, -radius)) / (to - from);
        return new Veiling(
                Math.min(sight, plume.floorMetres()),
                wideMetres(plume, from, to, wider),
                covered,
                Math.min(ahead, plume.besideMetres(body, there.z(), 0)),
                Math.min(ahead, plume.besideMetres(body, there.z(), wider * radiusMetres(plume, there.z()))));
    }

    private static boolean isOutOfSight(PlumePlace plume, Scene scene, Body body) {
        return Parts.inFrontMetres(scene, body) <= 0 || plume.leastDepthMetres(scene.view(body)) <= 0;
    }

    /// What meets the thing, or comes down on it, may come before it; wider, as takes differ, it must stay behind.
    static Side side(PlumePlace plume, Scene scene, Body body, InkWants.ThingPart part) {
        if (isOutOfSight(plume, scene, body)) {
            return Side.BEHIND;
        }
        if (of(plume, scene, body, part, 1).clearMetres() > 0) {
            return Side.BEFORE;
        }
        double height = part.heightMetres(body);
        double depth = Math.max(plume.depthMetres(height), plume.plume().startMetres() + LEAST_METRES);
        double widest = plume.plume().radiusMetres(depth).high();
        double ahead = plume.aheadMetres(scene.view(body), body);
        boolean isBeside = ahead <= 0 && plume.besideMetres(body, height, widest) >= 0;
        return isBeside || ahead + widest <= 0 ? Side.BEHIND : Side.MEETING;
    }

    /// How wide it is to each side at a height over the table, m.
    static double radiusMetres(PlumePlace plume, double heightMetres) {
        return radius(plume, plume.depthMetres(heightMetres));
    }

    private static double radius(PlumePlace plume, double depth) {
        return plume.plume()
                .radiusMetres(Math.max(depth, plume.plume().startMetres()))
                .value();
    }

    private static double halfWidthMetres(Body body, InkWants.ThingPart part) {
        return switch (body.solid()) {
            case Solid.Box box -> box.widthMetres() / 2;
            case Solid.Revolved round ->
                round.radiusAtMetres(
                        switch (part) {
                            case TOP -> round.heightMetres();
                            case MIDDLE -> round.heightMetres() / 2;
                            case BASE -> 0;
                        });
        };
    }

    /// The depth at which the plume covers the share of a span beside its axis; the floor's where it never does.
    private static double wideMetres(PlumePlace plume, double from, double to, double wider) {
        return Roots.end(
                depth -> {
                    double radius = wider * radius(plume, depth);
                    return Math.min(to, radius) - Math.max(from, -radius) < SHARE * (to - from);
                },
                plume.plume().startMetres(),
                plume.floorMetres());
    }
}
