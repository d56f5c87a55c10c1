package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Bounds;
import plumeline.geom.Hull;
import plumeline.geom.Outlines;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.SkyMean;
import plumeline.light.Tube;
import plumeline.optics.ClearPane;
import plumeline.optics.FlatWall;
import plumeline.optics.Polarised;
import plumeline.optics.TankView;
import plumeline.sight.Cone;
import plumeline.sight.Slices;
import plumeline.sight.Uncovered;
import plumeline.stage.TankWalls;

/// A flat way into a tank, by which light comes to what is in it: a pane, the water's surface from above, the open top.
///
/// Light is bent there by Snell's law, so that a lamp seems elsewhere and larger or smaller; its luminance in water is
/// `n² T` times that in air, T by Fresnel's formulas. To the surface it comes this way through the opening of the rim;
/// by the panes over the water it comes by a way of two faces ([TankPassage]). What is mirrored inside is left out.
///
/// **Source:** conservation of étendue, `L/n²` along a ray (any text on radiometry); own derivation.
///
/// @param outer its outer face, the normal outward
/// @param wall pane and what is behind it
/// @param low lower corner of the opening on the inner face, m
/// @param high upper corner of it, m
/// @param rim what stands over it
record TankWindow(Plane outer, FlatWall wall, Vec low, Vec high, Optional<Rim> rim) {
    /// Into so many parts an edge of a lamp is cut.
    static final int PARTS = 8;

    /// What passes a piece is even where it differs by less.
    private static final double EVEN = 0.02;

    private static final int MOST_CUTS = 6;

    /// What fills less of a place's sky is rounding where an outline folds at an edge between two faces.
    private static final double LEAST_FACTOR = 1e-9;

    static final double AHEAD_METRES = 1e-6;

    /// The ways into a tank for a place in its water.
    static List<TankWindow> ofWater(TankWalls walls) {
        Bounds in = walls.inside();
        return of(
                walls,
                in.low().z(),
                Math.min(walls.waterLineMetres(), in.high().z()),
                FlatWall.ofWater(walls.paneMetres()));
    }

    /// The ways into a tank for a place in it over its water.
    static List<TankWindow> ofAir(TankWalls walls) {
        Bounds in = walls.inside();
        return of(
                walls,
                Math.max(walls.waterLineMetres(), in.low().z()),
                in.high().z(),
                FlatWall.ofAir(walls.paneMetres()));
    }

    /// The ways into a part of a tank, between two heights.
    static List<TankWindow> of(TankWalls walls, double from, double to, FlatWall wall) {
        Bounds in = walls.inside();
        double pane = walls.paneMetres();
        FlatWall top = new FlatWall(0, 1, wall.behindIndex());
        List<TankWindow> windows = new ArrayList<>();
        for (int sign : new int[] {-1, 1}) {
            double x = sign < 0 ? in.low().x() : in.high().x();
            double y = sign < 0 ? in.low().y() : in.high().y();
            windows.add(new TankWindow(
                    new Plane(new Vec(x + sign * pane, 0, 0), new Vec(sign, 0, 0)),
                    wall,
                    new Vec(x, in.low().y(), from),
                    new Vec(x, in.high().y(), to),
                    Optional.empty()));
            windows.add(new TankWindow(
                    new Plane(new Vec(0, y + sign * pane, 0), new Vec(0, sign, 0)),
                    wall,
                    new Vec(in.low().x(), y, from),
                    new Vec(in.high().x(), y, to),
                    Optional.empty()));
        }
        windows.add(new TankWindow(
                new Plane(new Vec(0, 0, to), Vec.UP),
                top,
                new Vec(in.low().x(), in.low().y(), to),
                new Vec(in.high().x(), in.high().y(), to),
                in.high().z() - to > AHEAD_METRES && pane > 0 ? Optional.of(Rim.of(in)) : Optional.empty()));
        return windows;
    }

    /// What of a face is seen by this way from a place in the tank, were nothing before it.
    ///
    /// @param outline its corners on the inner face, m
    /// @param cone round them
    record Sight(List<Vec> outline, Cone cone) {
        /// Empty where nothing of it lights the surface.
        static Optional<Sight> of(Patch patch, List<Vec> outline) {
            return outline.size() > 2 && Seen.factor(outline, patch) > LEAST_FACTOR
                    ? Optional.of(new Sight(outline, Cone.of(patch.place(), outline)))
                    : Optional.empty();
        }

        /// Whether anything of a ball in the tank may be before it.
        boolean mayMeet(Vec middle, double ballMetres) {
            return cone.mayMeet(middle, ballMetres);
        }

        /// Those that may be before it.
        List<Hull> met(List<Hull> hulls) {
            return hulls.stream()
                    .filter(hull -> mayMeet(hull.middle(), hull.reachMetres()))
                    .toList();
        }
    }

    /// Finds what of a face is seen by this way from a place in the tank, were nothing before it.
    Optional<Sight> findSight(Emitter emitter, Patch patch) {
        List<Vec> outline = !isOver(patch)
                ? List.of()
                : emitter instanceof Tube tube
                        ? BentTube.outline(tube, place -> findWay(place, patch))
                        : emitter.outline(patch.place());
        if (outline.isEmpty()) {
            return Optional.empty();
        }
        Plane ahead = ahead();
        List<Vec> before = Outlines.ahead(
                ring(emitter, outline), ahead.normal(), ahead.normal().dot(ahead.through()));
        List<Vec> seen = clipped(find(finer(before, PARTS), patch));
        return Sight.of(patch, seen);
    }

    /// Before which all is that is seen by it.
    private Plane ahead() {
        return new Plane(outer.through().plus(outer.normal().times(2 * AHEAD_METRES)), outer.normal());
    }

    /// Whether anything of a body outside may be before what is seen of a face.
    boolean mayHide(Hider.Part part, Sight sight, Patch patch) {
        Optional<Vec> middle = find(part.middle(), patch);
        return middle.isEmpty() || sight.mayMeet(middle.get(), spreadMetres(part, middle.get(), patch));
    }

    /// Gives the light of a face on a place in the tank, by this way alone.
    ///
    /// @param face the face, without a hole
    /// @param patch the place
    /// @param sight what is seen of it
    /// @param inside what stands before it in the tank
    /// @param outside what stands before it outside
    /// @return lx
    double lux(Shine.Face face, Patch patch, Sight sight, List<Hider.Part> inside, List<Hider.Part> outside) {
        List<Hull> hiders = new ArrayList<>();
        inside.forEach(part -> hiders.add(part.hull()));
        Slices slices = new Slices(patch.place(), List.of(ahead()), places -> find(places, patch));
        outside.forEach(part -> hiders.addAll(sight.met(slices.of(part.hull()))));
        List<Vec> seen = sight.outline();
        double passing = passing(face, patch, seen, hiders);
        if (rim.isPresent()) {
            // What passes past the opening of the rim doesn't come this way.
            passing -= passing(face, patch, seen, with(hiders, rim.get().opening(this, patch)));
        }
        double index = wall.behindIndex();
        return Math.PI * face.emitter().luminance() * index * index * passing;
    }

    private static List<Hull> with(List<Hull> hiders, Hull other) {
        List<Hull> all = new ArrayList<>(hiders);
        all.add(other);
        return all;
    }

    private double passing(Shine.Face face, Patch patch, List<Vec> seen, List<Hull> hiders) {
        double passing = 0;
        for (List<Vec> piece : hiders.isEmpty() ? List.of(seen) : Uncovered.pieces(patch.place(), seen, hiders)) {
            passing += passing(piece, patch, MOST_CUTS) * glow(piece, patch, face);
        }
        return passing;
    }

    /// What stands over a water's surface: the walls' upper parts, up to their rim.
    ///
    /// @param inside the rim's inner edge, at its height
    record Rim(Bounds inside) {
        static Rim of(Bounds room) {
            Vec low = new Vec(room.low().x(), room.low().y(), room.high().z());
            return new Rim(new Bounds(low, room.high()));
        }

        /// The opening as it is seen on the surface from a place in the water.
        Hull opening(TankWindow surface, Patch patch) {
            Vec low = inside.low();
            Vec high = inside.high();
            List<Vec> edge =
                    List.of(low, new Vec(high.x(), low.y(), low.z()), high, new Vec(low.x(), high.y(), low.z()));
            List<Vec> seen = surface.find(finer(edge, PARTS), patch);
            return new Hull(seen, seen);
        }
    }

    /// How bright a piece is against the face's luminance.
    private double glow(List<Vec> piece, Patch patch, Shine.Face face) {
        return face.glow().isEven()
                ? 1
                : SkyMean.of(
                        piece,
                        patch,
                        way -> findOut(patch.place(), way.unit())
                                .map(out -> face.share(out.from(), out.way()))
                                .orElse(0.0));
    }

    /// A way in the air before it.
    record Out(Vec from, Vec way) {}

    /// How sight goes on outside, by Snell's law; empty where all is thrown back.
    private Optional<Out> findOut(Vec inTank, Vec way) {
        Vec normal = outer.normal();
        double along = way.dot(normal);
        Vec aside = way.minus(normal.times(along)).times(wall.behindIndex());
        double square = aside.dot(aside);
        if (!(along > 0 && square < 1)) {
            return Optional.empty();
        }
        double water = outer.through().minus(inTank).dot(normal) - wall.glassMetres();
        Vec from = inTank.plus(way.times(water / along)).plus(shift(aside, normal));
        return Optional.of(new Out(from, aside.plus(normal.times(Math.sqrt(1 - square)))));
    }

    /// What of a piece's light passes: its factor by what passes on the way to it, cut in two where that differs too
    /// much from one end to the other.
    private double passing(List<Vec> piece, Patch patch, int cuts) {
        Vec near = piece.getFirst();
        Vec far = near;
        double nearSine = airSine(near.minus(patch.place()));
        double farSine = nearSine;
        for (Vec corner : piece) {
            double sine = airSine(corner.minus(patch.place()));
            near = sine < nearSine ? corner : near;
            far = sine > farSine ? corner : far;
            nearSine = Math.min(sine, nearSine);
            farSine = Math.max(sine, farSine);
        }
        double most = transmittance(near.minus(patch.place()));
        double least = transmittance(far.minus(patch.place()));
        Vec middle = near.plus(far).times(0.5);
        if (cuts == 0 || Math.abs(most - least) < EVEN) {
            double between = transmittance(middle.minus(patch.place()));
            return Seen.factor(piece, patch) * (most + 4 * between + least) / 6;
        }
        Vec along = far.minus(near).unit();
        List<Vec> nearer = Outlines.ahead(piece, along.times(-1), -middle.dot(along));
        List<Vec> farther = Outlines.ahead(piece, along, middle.dot(along));
        return (nearer.size() > 2 ? passing(nearer, patch, cuts - 1) : 0)
                + (farther.size() > 2 ? passing(farther, patch, cuts - 1) : 0);
    }

    /// How far from its middle on the inner face a body outside is seen at most: aside no farther than it is wide, and
    /// by what lies nearer or farther as much as its way outside slopes; twice that, as the slope grows outward.
    private double spreadMetres(Hider.Part part, Vec middle, Patch patch) {
        double sine = airSine(middle.minus(patch.place()));
        double slope = sine < 1 ? sine / Math.sqrt(1 - sine * sine) : Double.POSITIVE_INFINITY;
        return part.reachMetres() * (1 + 2 * slope);
    }

    private double airSine(Vec inTank) {
        double along = inTank.dot(outer.normal());
        return wall.behindIndex() * Math.sqrt(Math.max(0, 1 - along * along / inTank.dot(inTank)));
    }

    /// Where on the inner face a place outside is seen from one in the tank; empty where it isn't before the outer
    /// face.
    Optional<Vec> find(Vec corner, Patch patch) {
        if (outer.normal().dot(corner.minus(outer.through())) < AHEAD_METRES) {
            return Optional.empty();
        }
        List<Vec> path = new TankView(new Aim(corner, 0, 0), outer, wall, Double.POSITIVE_INFINITY).path(patch.place());
        return Optional.of(path.get(path.size() - 2));
    }

    private List<Vec> find(List<Vec> corners, Patch patch) {
        return corners.stream().flatMap(corner -> find(corner, patch).stream()).toList();
    }

    /// How much of a way from a box through it and its pane goes along an axis at most, share of one; negative where
    /// all go against it.
    double mostAlong(Vec axis, Bounds from) {
        double pane = wall.glassMetres();
        Vec round = new Vec(pane, pane, pane);
        Vec least = low.minus(round).minus(from.high());
        Vec most = high.plus(round).minus(from.low());
        double along = Math.max(least.dot(axis), most.dot(axis));
        Vec aside = new Vec(
                aside(least.x(), most.x()) * (1 - Math.abs(axis.x())),
                aside(least.y(), most.y()) * (1 - Math.abs(axis.y())),
                aside(least.z(), most.z()) * (1 - Math.abs(axis.z())));
        return along / Math.sqrt(along * along + aside.dot(aside));
    }

    /// The least of what lies between two numbers, either way.
    private static double aside(double least, double most) {
        return Math.max(0, Math.max(least, -most));
    }

    /// Whether any of the opening is over the surface.
    boolean isOver(Patch patch) {
        double level = patch.facing().dot(patch.place());
        return new Bounds(low, high)
                .corners().stream().anyMatch(corner -> patch.facing().dot(corner) > level);
    }

    /// Whether any of it is before what shines.
    boolean isBefore(Shine shine) {
        return new Bounds(low, high).corners().stream().anyMatch(shine::isBefore);
    }

    /// A round has a quarter of its corners, as much farther out as keeps its area.
    static List<Vec> ring(Emitter emitter, List<Vec> outline) {
        if (!(emitter instanceof Disc)) {
            return outline;
        }
        double angle = 2 * Math.PI / outline.size();
        double out = Math.sqrt(4 * Math.sin(angle) / Math.sin(4 * angle));
        List<Vec> round = new ArrayList<>();
        for (int i = 0; i < outline.size(); i += 4) {
            round.add(
                    emitter.middle().plus(outline.get(i).minus(emitter.middle()).times(out)));
        }
        return round;
    }

    /// Cuts a lamp's edges, so many parts each if they were four and alike: straight ones seem bent.
    static List<Vec> finer(List<Vec> outline, int parts) {
        return Outlines.finer(outline, Outlines.roundMetres(outline) / (4 * parts));
    }

    /// What of an outline on the inner face is within the opening.
    List<Vec> clipped(List<Vec> outline) {
        return clipped(outline, low, high);
    }

    /// What of an outline on it is within two corners.
    List<Vec> clipped(List<Vec> outline, Vec low, Vec high) {
        Vec u = outer.normal().x() == 0 ? new Vec(1, 0, 0) : new Vec(0, 1, 0);
        Vec v = outer.normal().z() == 0 ? Vec.UP : new Vec(0, 1, 0);
        List<Vec> left = outline;
        left = Outlines.ahead(left, u, low.dot(u));
        left = Outlines.ahead(left, u.times(-1), -high.dot(u));
        left = Outlines.ahead(left, v, low.dot(v));
        return Outlines.ahead(left, v.times(-1), -high.dot(v));
    }

    private double transmittance(Vec inTank) {
        return passing(Math.min(1, airSine(inTank))).mean();
    }

    /// What passes, either way, by the sine of the angle outside.
    Polarised passing(double airSine) {
        // An open surface is a pane of air on water.
        return new ClearPane(1, isPane() ? wall.glassIndex() : 1, wall.behindIndex()).transmittanceAtSine(airSine);
    }

    boolean isPane() {
        return wall.glassMetres() > 0;
    }

    /// Whether it is more than a line.
    boolean isWide() {
        Vec size = high.minus(low);
        return Math.max(size.x() * size.y(), Math.max(size.y() * size.z(), size.z() * size.x())) > 0;
    }

    /// How far outside its outer face a place is, m; negative within.
    double aheadMetres(Vec place) {
        return outer.normal().dot(place.minus(outer.through()));
    }

    Plane inner() {
        return new Plane(outer.through().minus(outer.normal().times(wall.glassMetres())), outer.normal());
    }

    /// How far light goes on in the pane from one face to the other.
    ///
    /// @param aside along the face, as long as the sine of the angle outside
    /// @param across the normal, the way that it goes
    Vec shift(Vec aside, Vec across) {
        double slow = wall.glassIndex() * wall.glassIndex() - aside.dot(aside);
        return across.plus(aside.times(1 / Math.sqrt(slow))).times(wall.glassMetres());
    }

    /// Where a place in the tank is looked at from, for a lamp that is a point: the way of its light to the outer face.
    Optional<Vec> findWay(Vec lamp, Patch patch) {
        if (outer.normal().dot(lamp.minus(outer.through())) < AHEAD_METRES) {
            return Optional.empty();
        }
        List<Vec> path = new TankView(new Aim(lamp, 0, 0), outer, wall, Double.POSITIVE_INFINITY).path(patch.place());
        return Optional.of(path.get(1).minus(lamp));
    }
}
