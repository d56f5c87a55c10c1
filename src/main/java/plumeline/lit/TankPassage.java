package plumeline.lit;

import java.util.ArrayList;
import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import plumeline.geom.Bounds;
import plumeline.geom.Hull;
import plumeline.geom.Outlines;
import plumeline.geom.Plane;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.light.Seen;
import plumeline.light.SkyMean;
import plumeline.light.Tube;
import plumeline.optics.FlatPath;
import plumeline.optics.Polarised;
import plumeline.sight.Slices;
import plumeline.sight.Uncovered;
import plumeline.stage.TankWalls;

/// A way across faces of a tank, one after another. Through it and out again light comes to what is behind or beside
/// it: by two panes, the open top and a pane over the water, or one of these, the water's surface and a pane. To what
/// is in its water it comes by a pane over the water and the surface. A lamp seems moved through panes across from each
/// other, turned through others, and as bright as in the same medium but for what the faces throw back, by Fresnel's
/// formulas for each polarisation.
///
/// What is mirrored inside is left out; edges of panes and seams let nothing through.
///
/// **Source:** Snell's law, Fresnel's formulas (any optics text); own derivation.
///
final class TankPassage {
    /// What passes a piece is even where it differs by a smaller share.
    private static final double EVEN_SHARE = 0.1;

    private static final int MOST_CUTS = 6;

    /// So many corners of a lamp tell whether it may be seen at all, and how bright a piece is that is near to even.
    private static final int FEW = 8;

    /// Square of the sine of an angle under which a plane of incidence isn't told.
    private static final double STRAIGHT = 1e-20;

    /// An edge on a face is cut in parts as long as this share of the face's width and height together.
    private static final double FINE_SHARE = 1.0 / 12;

    /// Where there is no water on the way an edge is bent by the panes alone, by less than they are thick.
    private static final double DRY_SHARE = 1.0 / 4;

    private static final int DRY_PARTS = 2;

    /// Aslant a pane moves light aside by less than so many times its thickness.
    private static final int MOST_PANES = 2;

    /// A face that is crossed.
    ///
    /// @param window the face
    /// @param isOut whether from its inside to its outside
    record Crossing(TankWindow window, boolean isOut) {
        /// The way that it is crossed.
        Vec across() {
            return window.outer().normal().times(isOut ? 1 : -1);
        }

        double behindIndex() {
            return isOut ? 1 : window.wall().behindIndex();
        }

        /// How far beyond it a place is, m; negative before or within.
        double beyondMetres(Vec place) {
            return place.minus(last().through()).dot(across());
        }

        /// How far before it a place is, m; negative within or beyond.
        double beforeMetres(Vec place) {
            return first().through().minus(place).dot(across());
        }

        Plane first() {
            return isOut ? window.inner() : window.outer();
        }

        Plane last() {
            return isOut ? window.outer() : window.inner();
        }

        List<FlatPath.Face> faces() {
            FlatPath.Face last = new FlatPath.Face(last(), behindIndex());
            return window.isPane()
                    ? List.of(new FlatPath.Face(first(), window.wall().glassIndex()), last)
                    : List.of(last);
        }
    }

    /// Index of where it is looked from.
    private final double hereIndex;

    /// In the order that sight from the place crosses them.
    private final List<Crossing> crossings;

    private final Bounds outside;

    /// Ways across so many crossings, one first.
    private final List<FlatPath> paths = new ArrayList<>();

    /// Makes a way.
    ///
    /// @param hereIndex index of where it is looked from
    /// @param crossings the faces in the order that sight from the place crosses them
    /// @param outside the tank's outside
    private TankPassage(double hereIndex, List<Crossing> crossings, Bounds outside) {
        this.hereIndex = hereIndex;
        this.crossings = List.copyOf(crossings);
        this.outside = outside;
        List<FlatPath.Face> faces = new ArrayList<>();
        for (Crossing crossing : crossings) {
            faces.addAll(crossing.faces());
            paths.add(new FlatPath(hereIndex, faces));
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TankPassage passage
                && hereIndex == passage.hereIndex
                && crossings.equals(passage.crossings)
                && outside.equals(passage.outside);
    }

    @Override
    public int hashCode() {
        return 31 * crossings.hashCode() + outside.hashCode();
    }

    /// How many faces are crossed.
    int count() {
        return crossings.size();
    }

    /// All ways through a tank.
    static List<TankPassage> of(TankWalls walls) {
        return of(TankWindow.ofWater(walls), TankWindow.ofAir(walls), walls.outside());
    }

    /// All ways through a tank with these faces round its water, the surface last, and round its air, the open top
    /// last.
    static List<TankPassage> of(List<TankWindow> water, List<TankWindow> air, Bounds outside) {
        List<TankWindow> wet = water.stream().filter(TankWindow::isWide).toList();
        List<TankWindow> dry = air.stream().filter(TankWindow::isWide).toList();
        List<List<Crossing>> all = new ArrayList<>();
        // A full tank has no panes over its water, an empty one none under it.
        pairs(dry.size() > 1 && wet.size() > 1 ? wet.subList(0, wet.size() - 1) : wet, all);
        if (dry.size() > 1) {
            pairs(dry, all);
        }
        if (dry.size() > 1 && wet.size() > 1) {
            TankWindow surface = wet.getLast();
            for (TankWindow pane : wet.subList(0, wet.size() - 1)) {
                for (TankWindow over : dry) {
                    all.add(List.of(new Crossing(pane, false), new Crossing(surface, true), new Crossing(over, true)));
                    all.add(List.of(new Crossing(over, false), new Crossing(surface, false), new Crossing(pane, true)));
                }
            }
        }
        return all.stream()
                .map(crossings -> new TankPassage(1, crossings, outside))
                .toList();
    }

    /// All ways into a tank's water by panes over it.
    static List<TankPassage> overWater(TankWalls walls) {
        List<TankWindow> dry =
                TankWindow.ofAir(walls).stream().filter(TankWindow::isWide).toList();
        TankWindow surface = TankWindow.ofWater(walls).getLast();
        return dry.stream()
                .filter(TankWindow::isPane)
                .map(pane -> new TankPassage(
                        surface.wall().behindIndex(),
                        List.of(new Crossing(surface, true), new Crossing(pane, true)),
                        walls.outside()))
                .toList();
    }

    private static void pairs(List<TankWindow> windows, List<List<Crossing>> all) {
        for (TankWindow near : windows) {
            for (TankWindow far : windows) {
                if (!near.equals(far)) {
                    all.add(List.of(new Crossing(near, false), new Crossing(far, true)));
                }
            }
        }
    }

    TankWindow near() {
        return crossings.getFirst().window();
    }

    TankWindow far() {
        return crossings.getLast().window();
    }

    /// Whether this way may lead from a place outside toward another: light never turns back along any axis.
    ///
    /// @param lamp what lies round the lamp
    boolean leads(Patch patch, Bounds lamp) {
        for (Crossing crossing : crossings) {
            if (crossing.beyondMetres(farthest(lamp, crossing.across())) < TankWindow.AHEAD_METRES
                    || crossing.beforeMetres(patch.place()) < TankWindow.AHEAD_METRES) {
                return false;
            }
        }
        return near().isOver(patch) && (hereIndex > 1 || isStraight() || turns(patch.place(), lamp));
    }

    private static Vec farthest(Bounds box, Vec way) {
        return new Vec(
                way.x() > 0 ? box.high().x() : box.low().x(),
                way.y() > 0 ? box.high().y() : box.low().y(),
                way.z() > 0 ? box.high().z() : box.low().z());
    }

    /// Whether light can meet the tank aslant enough on both sides. It keeps what its direction, as long as the index,
    /// has along a face; where it enters water by one face and leaves it by another square to it, that has along
    /// the other's normal more than the root of n² − 1 in the air: else it is thrown back there.
    private boolean turns(Vec place, Bounds lamp) {
        List<Crossing> ofWater = crossings.stream()
                .filter(crossing -> crossing.window().wall().behindIndex() > 1)
                .toList();
        if (ofWater.isEmpty()) {
            return true;
        }
        double index = ofWater.getFirst().window().wall().behindIndex();
        double least = Math.sqrt(index * index - 1);
        return near().mostAlong(ofWater.getLast().across(), new Bounds(place, place)) >= least
                && far().mostAlong(ofWater.getFirst().across().times(-1), lamp) >= least;
    }

    /// The way from the place across so many crossings.
    private FlatPath path(int count) {
        return paths.get(count - 1);
    }

    /// Where on the near face's outside those places are seen that lie behind so many crossings and before the next
    /// one.
    private List<Vec> find(List<Vec> places, Patch patch, int count) {
        List<Vec> there = places.stream().filter(place -> isThere(place, count)).toList();
        return path(count).crossings(patch.place(), there).stream()
                .map(List::getFirst)
                .toList();
    }

    private boolean isThere(Vec place, int count) {
        return ahead(count).stream()
                .allMatch(plane -> place.minus(plane.through()).dot(plane.normal()) > -TankWindow.AHEAD_METRES);
    }

    /// Ahead of which all is that lies behind so many crossings and before the next one.
    private List<Plane> ahead(int count) {
        List<Plane> ahead = new ArrayList<>();
        for (Crossing crossing : crossings.subList(0, count)) {
            Vec across = crossing.across();
            ahead.add(new Plane(crossing.last().through().plus(across.times(2 * TankWindow.AHEAD_METRES)), across));
        }
        if (count < crossings.size()) {
            Crossing next = crossings.get(count);
            ahead.add(new Plane(next.first().through(), next.across().times(-1)));
        }
        return ahead;
    }

    /// The way of a point's light to the far face.
    Optional<Vec> findWay(Vec lamp, Patch patch) {
        return far().aheadMetres(lamp) < TankWindow.AHEAD_METRES
                ? Optional.empty()
                : Optional.of(path(crossings.size())
                        .crossings(patch.place(), lamp)
                        .getLast()
                        .minus(lamp));
    }

    /// Finds what of a face is seen by this way from a place outside, were nothing before it: its corners on the near
    /// face's outside.
    Optional<TankWindow.Sight> findSight(Emitter emitter, Patch patch) {
        List<Vec> lamp = outline(emitter, patch);
        List<Vec> ahead = ahead(TankWindow.ring(emitter, lamp));
        if (ahead.size() < 3 || isAside(ahead, patch)) {
            return Optional.empty();
        }
        List<Vec> outline = TankWindow.finer(ahead, isWet() ? TankWindow.PARTS : DRY_PARTS);
        for (int count = crossings.size(); count > 0; count--) {
            Crossing crossing = crossings.get(count - 1);
            TankWindow window = crossing.window();
            List<FlatPath.Face> faces = path(count).faces();
            if (window.isPane() && crossing.isOut()) {
                outline = window.clipped(seen(outline, faces, patch), outside.low(), outside.high());
                faces = faces.subList(0, faces.size() - 1);
            }
            outline = window.clipped(seen(finer(outline, window), faces, patch));
            if (count == crossings.size() && !(emitter instanceof Tube)) {
                // Of a flat face only the front is seen.
                outline = Outlines.ahead(
                        outline, emitter.facing(), emitter.facing().dot(emitter.middle()));
            }
            if (window.isPane() && !crossing.isOut()) {
                List<Vec> outer = seen(finer(outline, window), faces.subList(0, faces.size() - 1), patch);
                outline = window.clipped(outer, outside.low(), outside.high());
            }
            outline = finer(outline, window);
        }
        return TankWindow.Sight.of(patch, outline);
    }

    /// What of an outline lies beyond all its faces.
    private List<Vec> ahead(List<Vec> outline) {
        List<Vec> ahead = outline;
        for (Crossing crossing : crossings) {
            Vec across = crossing.across();
            ahead = Outlines.ahead(ahead, across, across.dot(crossing.last().through()) + TankWindow.AHEAD_METRES);
        }
        return ahead;
    }

    /// Whether a lamp is seen far aside of an opening, by some of its corners.
    private boolean isAside(List<Vec> outline, Patch patch) {
        FlatPath path = path(crossings.size());
        List<List<Vec>> ways = path.crossings(patch.place(), some(outline));
        int face = 0;
        for (Crossing crossing : crossings) {
            int at = face;
            if (isAside(crossing.window(), ways.stream().map(way -> way.get(at)).toList())) {
                return true;
            }
            face += crossing.faces().size();
        }
        return false;
    }

    private static List<Vec> some(List<Vec> outline) {
        int step = (outline.size() + FEW - 1) / FEW;
        List<Vec> some = new ArrayList<>();
        for (int i = 0; i < outline.size(); i += step) {
            some.add(outline.get(i));
        }
        return some;
    }

    private static boolean isAside(TankWindow window, List<Vec> seen) {
        double pane = window.wall().glassMetres();
        return isAside(
                        window.low().x() - pane,
                        window.high().x() + pane,
                        seen.stream().mapToDouble(Vec::x))
                || isAside(
                        window.low().y() - pane,
                        window.high().y() + pane,
                        seen.stream().mapToDouble(Vec::y))
                || isAside(
                        window.low().z() - pane,
                        window.high().z() + pane,
                        seen.stream().mapToDouble(Vec::z));
    }

    private static boolean isAside(double low, double high, DoubleStream seen) {
        DoubleSummaryStatistics all = seen.summaryStatistics();
        double slack = (all.getMax() - all.getMin()) / 2 + TankWindow.AHEAD_METRES;
        return all.getMin() - slack > high || all.getMax() + slack < low;
    }

    /// Where places are seen on the last of some faces.
    private List<Vec> seen(List<Vec> outline, List<FlatPath.Face> faces, Patch patch) {
        return new FlatPath(hereIndex, faces)
                .crossings(patch.place(), outline).stream().map(List::getLast).toList();
    }

    private List<Vec> outline(Emitter emitter, Patch patch) {
        return emitter instanceof Tube tube
                ? BentTube.outline(tube, place -> findWay(place, patch))
                : emitter.outline(emitter.middle().plus(emitter.facing()));
    }

    private List<Vec> finer(List<Vec> outline, TankWindow window) {
        double share = isWet() ? FINE_SHARE : DRY_SHARE;
        return Outlines.finer(outline, window.high().distanceMetres(window.low()) * share);
    }

    private boolean isWet() {
        return crossings.stream().anyMatch(crossing -> crossing.window().wall().behindIndex() > 1);
    }

    /// Whether light leaves it as it came.
    private boolean isStraight() {
        return crossings.size() == 2
                && near().outer().normal().dot(far().outer().normal()) < -0.5;
    }

    /// Whether a body may be between the far face and a lamp: in the box round both.
    boolean mayCross(Hider.Part part, Vec lamp, double reachMetres) {
        Vec low = far().low();
        Vec high = far().high();
        double wide = part.reachMetres() + far().wall().glassMetres();
        return isBetween(part.middle().x(), wide, low.x(), high.x(), lamp.x(), reachMetres)
                && isBetween(part.middle().y(), wide, low.y(), high.y(), lamp.y(), reachMetres)
                && isBetween(part.middle().z(), wide, low.z(), high.z(), lamp.z(), reachMetres);
    }

    private static boolean isBetween(double at, double wide, double low, double high, double lamp, double reach) {
        return at + wide > Math.min(low, lamp - reach) && at - wide < Math.max(high, lamp + reach);
    }

    /// Whether anything of a body behind so many crossings may be before what is seen of a face. Aside on the near face
    /// it is seen no farther than it is wide, and by what lies nearer or farther as much as its way outside slopes;
    /// twice that, as the slope grows outward. Where there is no water on the way light goes straight, moved aside
    /// by no more than some panes' thickness. Of faces that turn light it isn't told.
    boolean mayHide(Hider.Part part, int count, TankWindow.Sight sight, Patch patch) {
        if (!isWet()) {
            double moved = MOST_PANES * near().wall().glassMetres()
                    + MOST_PANES * far().wall().glassMetres();
            return sight.mayMeet(part.middle(), part.reachMetres() + moved);
        }
        Vec normal = near().outer().normal();
        List<Vec> middle = find(List.of(part.middle()), patch, count);
        if (middle.isEmpty() || count > 1 && !isStraight()) {
            return true;
        }
        Vec way = middle.getFirst().minus(patch.place());
        double slope = way.cross(normal).lengthMetres() / Math.abs(way.dot(normal));
        return sight.mayMeet(middle.getFirst(), part.reachMetres() * (1 + 2 * slope));
    }

    /// Gives the light of a face on a place outside, by this way alone.
    ///
    /// @param face the face, without a hole
    /// @param patch the place
    /// @param sight what is seen of it
    /// @param before what may stand before it: before the near face first, then behind each crossing
    /// @return lx
    double lux(Shine.Face face, Patch patch, TankWindow.Sight sight, List<List<Hider.Part>> before) {
        List<Hull> hiders = new ArrayList<>();
        before.getFirst().stream()
                .flatMap(part -> beforeNear(part.hull()).stream())
                .forEach(hiders::add);
        for (int i = 1; i < before.size(); i++) {
            int count = i;
            Slices slices = new Slices(patch.place(), ahead(count), places -> find(places, patch, count));
            before.get(i).forEach(part -> hiders.addAll(sight.met(slices.of(part.hull()))));
        }
        List<Vec> seen = sight.outline();
        double sum = 0;
        for (List<Vec> piece : hiders.isEmpty() ? List.of(seen) : Uncovered.pieces(patch.place(), seen, hiders)) {
            sum += bright(piece, patch, face, MOST_CUTS);
        }
        return Math.PI * face.emitter().luminance() * hereIndex * hereIndex * sum;
    }

    /// What of a part is before the near face.
    private Optional<Hull> beforeNear(Hull hull) {
        Crossing near = crossings.getFirst();
        Plane here = new Plane(near.first().through(), near.across().times(-1));
        if (hull.isAhead(here)) {
            return Optional.of(hull);
        }
        List<Vec> ahead = hull.ahead(here);
        return ahead.isEmpty() ? Optional.empty() : Optional.of(new Hull(ahead, ahead));
    }

    /// A piece's factor by how bright the face is through it, cut in two where that differs too much.
    private double bright(List<Vec> piece, Patch patch, Shine.Face face, int cuts) {
        Vec dim = piece.getFirst();
        Vec clear = dim;
        double least = Double.POSITIVE_INFINITY;
        double most = 0;
        List<Vec> asked = face.glow().isEven() ? some(piece) : piece;
        for (Vec corner : asked) {
            double bright = bright(patch.place(), corner.minus(patch.place()), face);
            dim = bright < least ? corner : dim;
            clear = bright > most ? corner : clear;
            least = Math.min(least, bright);
            most = Math.max(most, bright);
        }
        if (cuts == 0 || most - least <= EVEN_SHARE * most) {
            return Seen.factor(piece, patch) * SkyMean.of(asked, patch, way -> bright(patch.place(), way, face));
        }
        Vec along = clear.minus(dim).unit();
        double level = clear.plus(dim).times(0.5).dot(along);
        List<Vec> one = Outlines.ahead(piece, along, level);
        List<Vec> other = Outlines.ahead(piece, along.times(-1), -level);
        return (one.size() > 2 ? bright(one, patch, face, cuts - 1) : 0)
                + (other.size() > 2 ? bright(other, patch, face, cuts - 1) : 0);
    }

    private double bright(Vec from, Vec way, Shine.Face face) {
        return follow(from, way)
                .map(through ->
                        through.passing() * (face.glow().isEven() ? 1 : face.share(through.at(), through.way())))
                .orElse(0.0);
    }

    /// A way that has come out.
    ///
    /// @param at where on the far face's outside, m
    /// @param way how it goes on
    /// @param passing share of the light that passes along it
    private record Through(Vec at, Vec way, double passing) {}

    /// Follows sight from a place, by Snell's law; empty where all is thrown back. Light that swings along and across
    /// is followed apart: each face weakens it along and across its own plane of incidence.
    private Optional<Through> follow(Vec from, Vec toward) {
        Vec at = from;
        // Of the length of the index.
        Vec way = toward.unit().times(hereIndex);
        Vec one = way.cross(Math.abs(toward.unit().z()) < 0.5 ? Vec.UP : new Vec(1, 0, 0))
                .unit();
        Vec other = way.cross(one).unit();
        for (Crossing crossing : crossings) {
            Vec across = crossing.across();
            double along = way.dot(across);
            // What runs along a face stays.
            Vec aside = way.minus(across.times(along));
            double square = aside.dot(aside);
            if (!(along > 0 && square < 1)) {
                return Optional.empty();
            }
            TankWindow window = crossing.window();
            at = at.plus(way.times(crossing.first().through().minus(at).dot(across) / along))
                    .plus(window.shift(aside, across));
            double index = crossing.behindIndex();
            Vec on = aside.plus(across.times(Math.sqrt(index * index - square)));
            Polarised passing = window.passing(Math.sqrt(square));
            Vec level = square > STRAIGHT ? across.cross(way).unit() : one.unit();
            one = weakened(one, level, way, on, passing);
            other = weakened(other, level, way, on, passing);
            way = on;
        }
        return Optional.of(new Through(at, way, (one.dot(one) + other.dot(other)) / 2));
    }

    private static Vec weakened(Vec swing, Vec level, Vec way, Vec on, Polarised passing) {
        double s = swing.dot(level) * Math.sqrt(passing.s());
        double p = swing.dot(level.cross(way).unit()) * Math.sqrt(passing.p());
        return level.times(s).plus(level.cross(on).unit().times(p));
    }
}
