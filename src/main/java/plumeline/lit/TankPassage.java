package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import plumeline.geom.Hull;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.SkyMean;
import plumeline.light.Tube;
import plumeline.optics.ClearPane;
import plumeline.optics.FlatPath;
import plumeline.optics.Polarised;
import plumeline.optics.Layer;
import plumeline.sight.Slices;
import plumeline.sight.Uncovered;
import plumeline.stage.TankWalls;

/// A way through a tank and out again, by which light comes to what is behind or beside it: two panes, a pane and the
/// water's surface, the open top and a pane over the water. A lamp seems moved through panes across from each other,
/// turned through others, and as bright as in air but for what the faces throw back, by Fresnel's formulas for each
/// polarisation.
///
/// What is mirrored inside is left out; edges of panes and seams let nothing through. Of light that comes over the
/// water's surface, what glass above it throws back is counted, by how much it moves it isn't.
///
/// **Source:** Snell's law, Fresnel's formulas (any optics text); own derivation.
///
/// @param near the face on the place's side
/// @param far the face on the lamp's side
/// @param walls the tank
record TankPassage(TankWindow near, TankWindow far, TankWalls walls) {
    /// What passes a piece is even where it differs by a smaller share.
    private static final double EVEN_SHARE = 0.1;

    private static final int MOST_CUTS = 6;

    /// An edge on a face is cut in parts as long as this share of the face's width and height together.
    private static final double FINE_SHARE = 1.0 / 24;

    /// All ways through a tank.
    static List<TankPassage> of(TankWalls walls) {
        List<TankPassage> all = new ArrayList<>(of(walls, TankWindow.ofWater(walls)));
        all.addAll(of(walls, TankWindow.ofAir(walls)));
        return all;
    }

    /// Those from one of some faces to another.
    static List<TankPassage> of(TankWalls walls, List<TankWindow> windows) {
        List<TankPassage> all = new ArrayList<>();
        for (TankWindow near : windows) {
            for (TankWindow far : windows) {
                if (!near.equals(far) && near.isWide() && far.isWide()) {
                    all.add(new TankPassage(near, far, walls));
                }
            }
        }
        return all;
    }

    /// Whether this way leads from a place outside toward another, were the faces endless.
    boolean leads(Patch patch, Vec middle, double reachMetres) {
        return near.aheadMetres(patch.place()) > TankWindow.AHEAD_METRES
                && far.aheadMetres(middle) + reachMetres > TankWindow.AHEAD_METRES
                && near.isOver(patch);
    }

    private FlatPath whole() {
        List<FlatPath.Face> faces = new ArrayList<>(inward());
        if (far.isPane()) {
            faces.add(new FlatPath.Face(far.inner(), far.wall().glassIndex()));
        }
        faces.add(new FlatPath.Face(far.outer(), 1));
        return new FlatPath(faces);
    }

    private List<FlatPath.Face> inward() {
        FlatPath.Face last = new FlatPath.Face(near.inner(), near.wall().behindIndex());
        return near.isPane()
                ? List.of(new FlatPath.Face(near.outer(), near.wall().glassIndex()), last)
                : List.of(last);
    }

    /// Where on the near face's outside a place beyond the far one is seen; empty where it isn't beyond.
    Optional<Vec> findBeyond(Vec place, Patch patch) {
        return far.aheadMetres(place) < TankWindow.AHEAD_METRES
                ? Optional.empty()
                : Optional.of(whole().crossings(patch.place(), place).getFirst());
    }

    /// Where on the near face's outside a place in the tank is seen.
    Optional<Vec> findInside(Vec place, Patch patch) {
        return near.aheadMetres(place) > -TankWindow.AHEAD_METRES
                ? Optional.empty()
                : Optional.of(
                        new FlatPath(inward()).crossings(patch.place(), place).getFirst());
    }

    /// Whether anything of a body in the tank or beyond it may be before what is seen of a face. Aside on the near face
    /// it is seen no farther than it is wide, and by what lies nearer or farther as much as its way outside slopes; twice
    /// that, as the slope grows outward. Of faces that turn light it isn't told.
    boolean mayHide(Hider.Part part, TankWindow.Sight sight, Patch patch) {
        Vec normal = near.outer().normal();
        Optional<Vec> middle =
                findBeyond(part.middle(), patch).or(() -> findInside(part.middle(), patch));
        if (middle.isEmpty() || normal.dot(far.outer().normal()) > -0.5) {
            return true;
        }
        Vec way = middle.get().minus(patch.place());
        double slope = way.cross(normal).lengthMetres() / Math.abs(way.dot(normal));
        return sight.mayMeet(middle.get(), part.reachMetres() * (1 + 2 * slope));
    }

    /// The way of a point's light to the far face.
    Optional<Vec> findWay(Vec lamp, Patch patch) {
        return far.aheadMetres(lamp) < TankWindow.AHEAD_METRES
                ? Optional.empty()
                : Optional.of(
                        whole().crossings(patch.place(), lamp).getLast().minus(lamp));
    }

    /// Finds what of a face is seen by this way from a place outside, were nothing before it: its corners on the near
    /// face's outside.
    Optional<TankWindow.Sight> findSight(Emitter emitter, Patch patch) {
        Plane outside = far.outer();
        List<Vec> outline = TankWindow.cut(
                TankWindow.ring(emitter, outline(emitter, patch)),
                outside.normal(),
                outside.normal().dot(outside.through()) + TankWindow.AHEAD_METRES);
        FlatPath whole = whole();
        int index = inward().size();
        List<Vec> onFar =
                far.clipped(map(outline, corner -> whole.crossings(patch.place(), corner).get(index)));
        if (!(emitter instanceof Tube)) {
            // Of a flat face only the front is seen.
            onFar = TankWindow.cut(onFar, emitter.facing(), emitter.facing().dot(emitter.middle()));
        }
        FlatPath inward = new FlatPath(inward());
        List<Vec> onNear = near.clipped(map(
                finer(onFar, far), corner -> inward.crossings(patch.place(), corner).getLast()));
        FlatPath glass = new FlatPath(inward().subList(0, 1));
        return TankWindow.Sight.of(
                patch.place(),
                near.isPane()
                        ? map(finer(onNear, near), corner -> glass.crossings(patch.place(), corner)
                                .getFirst())
                        : onNear);
    }

    private List<Vec> outline(Emitter emitter, Patch patch) {
        Vec front = emitter.middle().plus(emitter.facing());
        if (!(emitter instanceof Tube)) {
            return emitter.outline(front);
        }
        Vec from = far.aheadMetres(emitter.middle()) > TankWindow.AHEAD_METRES
                ? whole().crossings(patch.place(), emitter.middle()).getLast()
                : far.low().plus(far.high()).times(0.5);
        return emitter.outline(from);
    }

    private static List<Vec> map(List<Vec> outline, UnaryOperator<Vec> to) {
        return outline.stream().map(to).toList();
    }

    /// Cuts long edges, as straight ones seem bent.
    private static List<Vec> finer(List<Vec> outline, TankWindow window) {
        double longest = window.high().distanceMetres(window.low()) * FINE_SHARE;
        List<Vec> finer = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Vec from = outline.get(i);
            Vec way = outline.get((i + 1) % outline.size()).minus(from);
            int parts = Math.max(1, (int) Math.ceil(way.lengthMetres() / longest));
            for (int part = 0; part < parts; part++) {
                finer.add(from.plus(way.times((double) part / parts)));
            }
        }
        return finer;
    }

    /// What may stand before a face: before the near face, between both, beyond the far one.
    record Before(List<Hider.Part> near, List<Hider.Part> between, List<Hider.Part> beyond) {}

    /// Gives the light of a face on a place outside, by this way alone.
    ///
    /// @param face the face
    /// @param patch the place
    /// @param sight what is seen of it
    /// @param before what stands before it
    /// @return lx
    double lux(Shine.Face face, Patch patch, TankWindow.Sight sight, Before before) {
        List<Hull> hiders = new ArrayList<>();
        before.near().forEach(part -> hiders.add(part.hull()));
        Slices inside = new Slices(patch.place(), place -> findInside(place, patch));
        before.between().forEach(part -> hiders.addAll(sight.met(inside.of(part.hull()))));
        Slices beyond = new Slices(patch.place(), place -> findBeyond(place, patch));
        before.beyond().forEach(part -> hiders.addAll(sight.met(beyond.of(part.hull()))));
        face.hole().ifPresent(hole -> hiders.addAll(sight.met(beyond.of(hole))));
        List<Vec> seen = sight.outline();
        double sum = 0;
        for (List<Vec> piece : hiders.isEmpty() ? List.of(seen) : Uncovered.pieces(patch.place(), seen, hiders)) {
            sum += bright(piece, patch, face, MOST_CUTS);
        }
        return Math.PI * face.emitter().luminance() * sum;
    }

    /// A piece's factor by how bright the face is through it, cut in two where that differs too much.
    private double bright(List<Vec> piece, Patch patch, Shine.Face face, int cuts) {
        Vec dim = piece.getFirst();
        Vec clear = dim;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        for (Vec corner : piece) {
            double passing = passing(patch.place(), corner.minus(patch.place()));
            dim = passing < least ? corner : dim;
            clear = passing > most ? corner : clear;
            least = Math.min(least, passing);
            most = Math.max(most, passing);
        }
        if (cuts == 0 || most - least <= EVEN_SHARE * most) {
            return Seen.factor(piece, patch) * SkyMean.of(piece, patch, way -> bright(patch.place(), way, face));
        }
        Vec along = clear.minus(dim).unit();
        double level = clear.plus(dim).times(0.5).dot(along);
        List<Vec> one = TankWindow.cut(piece, along, level);
        List<Vec> other = TankWindow.cut(piece, along.times(-1), -level);
        return (one.size() > 2 ? bright(one, patch, face, cuts - 1) : 0)
                + (other.size() > 2 ? bright(other, patch, face, cuts - 1) : 0);
    }

    private double passing(Vec from, Vec way) {
        return follow(from, way).map(Through::passing).orElse(0.0);
    }

    private double bright(Vec from, Vec way, Shine.Face face) {
        return follow(from, way)
                .map(through -> through.passing()
                        * (face.glow().isEven() ? 1 : face.share(through.at(), through.way())))
                .orElse(0.0);
    }

    /// A way that has come out.
    ///
    /// @param at where on the far face's outside, m
    /// @param way how it goes on
    /// @param passing share of the light that passes along it
    private record Through(Vec at, Vec way, double passing) {}

    /// Follows sight from a place, by Snell's law; empty where all is thrown back.
    private Optional<Through> follow(Vec from, Vec toward) {
        Vec in = near.outer().normal().times(-1);
        Vec out = far.outer().normal();
        Vec air = toward.unit();
        Vec aside = air.minus(in.times(air.dot(in)));
        double sine = aside.lengthMetres();
        Vec outer = from.plus(air.times(near.aheadMetres(from) / air.dot(in)));
        double index = near.wall().behindIndex();
        Vec inside = aside.plus(in.times(Math.sqrt(index * index - sine * sine)));
        Vec inner = outer.plus(near.shift(aside, in));
        Vec farAside = inside.minus(out.times(inside.dot(out)));
        double farSine = farAside.lengthMetres();
        if (!(farSine < 1 && inside.dot(out) > 0)) {
            return Optional.empty();
        }
        Plane last = far.inner();
        Vec onFar = inner.plus(
                inside.times(last.through().minus(inner).dot(out) / inside.dot(out)));
        Vec on = farAside.plus(out.times(Math.sqrt(1 - farSine * farSine)));
        Polarised one = near.passing(Math.min(1, sine));
        Polarised other = far.passing(farSine);
        double same = same(in.cross(inside), out.cross(inside));
        double both = (one.s() * same + one.p() * (1 - same)) * other.s()
                + (one.s() * (1 - same) + one.p() * same) * other.p();
        double glass = overWater(near, inner, air.times(-1)) * overWater(far, onFar, on);
        return Optional.of(new Through(onFar.plus(far.shift(farAside, out)), on, both / 2 * glass));
    }

    /// How much of what swings square to one plane of incidence does so to the other: the cosine's square between them.
    private static double same(Vec one, Vec other) {
        double both = one.dot(one) * other.dot(other);
        double cosine = one.dot(other);
        return both > 0 ? Math.min(1, cosine * cosine / both) : 1;
    }

    /// What glass over the water lets pass of light that goes out from its surface.
    private double overWater(TankWindow window, Vec at, Vec out) {
        if (window.outer().normal().z() == 0 || walls.paneMetres() == 0) {
            return 1;
        }
        double x = until(at.x(), out.x(), walls.inside().low().x(), walls.inside().high().x());
        double y = until(at.y(), out.y(), walls.inside().low().y(), walls.inside().high().y());
        double up = (walls.inside().high().z() - at.z()) / out.z();
        if (up <= Math.min(x, y)) {
            return 1;
        }
        double along = x < y ? out.x() : out.y();
        return new ClearPane(1, Layer.GLASS_INDEX, 1)
                .transmittanceAtSine(Math.sqrt(Math.max(0, 1 - along * along)))
                .mean();
    }

    private static double until(double from, double toward, double low, double high) {
        return toward == 0 ? Double.POSITIVE_INFINITY : ((toward > 0 ? high : low) - from) / toward;
    }
}
