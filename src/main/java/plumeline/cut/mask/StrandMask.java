package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Strand;
import plumeline.stage.TankWalls;

/// The mask of one strand in one captured frame: straight parts as the exposure begins, and patches that hold them at
/// all its instants, with room for margins.
final class StrandMask {
    /// Instants of an exposure by their places in the course.
    private static final int OPENS = 0;

    private static final int MIDDLE = 1;
    private static final int CLOSES = 2;
    private static final int SLIPS = 3;

    /// A place of the strand near its foot, by which its way there is seen.
    private static final double NEXT_SHARE = 1e-3;

    private static final double LEAST_PIXELS = 1e-3;

    private final Strand strand;
    private final Course course;
    private final Swings.Off off;
    private final Swings swings;
    private final List<MaskFrame.Part> parts = new ArrayList<>();
    private final List<MaskFrame.Gap> gaps = new ArrayList<>();
    private final List<List<Point>> patches = new ArrayList<>();
    private int stretches;

    /// A strand in the instants of one exposure.
    ///
    /// @param scenes one where nothing moves; else it opens, its middle, it closes, and what a slip leaves
    /// @param ends where the strand runs then
    /// @param size the clip's size
    /// @param tank the tank, where there is one
    record Course(List<Scene> scenes, List<Strand.Ends> ends, ClipSize size, Optional<TankWalls> tank) {
        Course {
            scenes = List.copyOf(scenes);
            ends = List.copyOf(ends);
        }

        Tracing seen(int instant) {
            Scene scene = scenes.get(instant);
            return new Tracing(scene, size, ends.get(instant), place -> PlaceSight.of(scene, place));
        }

        Tracing mirrored(int instant) {
            Scene scene = scenes.get(instant);
            return new Tracing(scene, size, ends.get(instant), place -> PlaceSight.mirrored(scene, place));
        }
    }

    StrandMask(Strand strand, Course course, Swings.Off off, Swings swings) {
        this.strand = strand;
        this.course = course;
        this.off = off;
        this.swings = swings;
    }

    List<MaskFrame.Part> parts() {
        return parts;
    }

    List<MaskFrame.Gap> gaps() {
        return gaps;
    }

    MaskFrame.Patches patches() {
        return new MaskFrame.Patches(strand.name(), patches);
    }

    void work() {
        List<Tracing> seen = new ArrayList<>();
        List<Tracing> mirrored = new ArrayList<>();
        for (int i = 0; i < course.scenes().size(); i++) {
            seen.add(course.seen(i));
            mirrored.add(course.mirrored(i));
        }
        List<Tracing.Trace> traces = traces(seen);
        add(seen, traces);
        for (Tracing.Gap gap : traces.get(OPENS).gaps()) {
            Strand.Ends ends = course.ends().get(OPENS);
            List<Vec> both = List.of(ends.at(gap.from()), ends.at(gap.to()));
            gaps.add(new MaskFrame.Gap(strand.name(), both.getFirst(), both.getLast(), gap.trouble(), about(both)));
        }
        if (mayBeMirrored()) {
            add(mirrored, traces(mirrored));
        }
    }

    /// Whether some of it is under water, and the lens too low to see through the surface from above.
    private boolean mayBeMirrored() {
        double line = course.tank().map(TankWalls::waterLineMetres).orElse(Double.NEGATIVE_INFINITY);
        return course.ends().stream()
                        .anyMatch(ends -> Math.min(ends.foot().z(), ends.far().z()) < line)
                && course.scenes().stream().anyMatch(scene -> scene.aim().eye().z() < line);
    }

    /// The strand at all instants but the middle one, which lies between.
    private List<Tracing.Trace> traces(List<Tracing> tracings) {
        List<Tracing.Trace> all = new ArrayList<>();
        for (int i = 0; i < tracings.size(); i++) {
            if (i != MIDDLE) {
                all.add(tracings.get(i).trace(course.tank()));
            }
        }
        return all;
    }

    /// Where places would show with nothing in the way.
    private List<Point> about(List<Vec> places) {
        Scene scene = course.scenes().get(OPENS);
        Pinhole view = new Pinhole(scene.aim());
        return places.stream()
                .filter(place -> view.depth(place) > PlaceSight.NEAREST_METRES)
                .map(place -> course.size().pixel(scene, view.project(place)))
                .toList();
    }

    private void add(List<Tracing> tracings, List<Tracing.Trace> traces) {
        for (Tracing.Stretch stretch : traces.get(OPENS).stretches()) {
            stretches++;
            List<MaskFrame.End> ends = stretch.vertices().stream()
                    .map(vertex -> end(tracings, stretch.way(), vertex))
                    .toList();
            for (int i = 1; i < ends.size(); i++) {
                parts.add(new MaskFrame.Part(strand.name(), stretches, stretch.way(), ends.get(i - 1), ends.get(i)));
            }
        }
        for (PlaceSight.Way way : PlaceSight.Way.values()) {
            patch(tracings, traces, way);
        }
    }

    private MaskFrame.End end(List<Tracing> tracings, PlaceSight.Way way, Tracing.Vertex vertex) {
        Optional<Point> closes =
                tracings.size() > CLOSES ? tracings.get(CLOSES).find(vertex.share(), way) : Optional.of(vertex.at());
        double slips = tracings.size() > SLIPS
                ? tracings.get(SLIPS)
                        .find(vertex.share(), way)
                        .map(point -> Math.hypot(
                                point.x() - vertex.at().x(),
                                point.y() - vertex.at().y()))
                        .orElse(0.0)
                : 0;
        return new MaskFrame.End(
                course.ends().get(OPENS).at(vertex.share()),
                vertex.at(),
                closes,
                slips,
                margins(tracings.get(OPENS), OPENS, way, vertex));
    }

    private Margins margins(Tracing tracing, int instant, PlaceSight.Way way, Tracing.Vertex vertex) {
        Strand.Ends ends = course.ends().get(instant);
        Scene scene = course.scenes().get(instant);
        Vec place = ends.at(vertex.share());
        Grain grain = Grain.at(other -> tracing.find(other, way), scene, place, vertex.at());
        Vec along = ends.lengthMetres() > 0 ? ends.far().minus(ends.foot()).unit() : Vec.UP;
        return new Margins(
                strand.diameterMetres() / 2 * grain.acrossPixels(along),
                Margins.EDGE_PIXELS,
                off.swingMetres() * (1 - vertex.share()) * grain.levelPixels(),
                swings.swayPixels(strand, scene, place, grain),
                off.placingMetres() * (1 - vertex.share()) * grain.levelPixels());
    }

    /// Covers what is seen in one way: between two places of the strand, the hull of both at all instants.
    private void patch(List<Tracing> tracings, List<Tracing.Trace> traces, PlaceSight.Way way) {
        TreeSet<Double> shares = new TreeSet<>();
        for (Tracing.Trace trace : traces) {
            for (Tracing.Stretch stretch : trace.stretches()) {
                if (stretch.way() == way) {
                    stretch.vertices().forEach(vertex -> shares.add(vertex.share()));
                }
            }
        }
        List<Double> all = List.copyOf(shares);
        List<Optional<Hull.Foot>> feet =
                tracings.stream().map(tracing -> foot(tracing, way)).toList();
        List<List<Hull.Spot>> before = List.of();
        for (int i = 0; i < all.size(); i++) {
            List<List<Hull.Spot>> now = spots(tracings, feet, way, all.get(i));
            if (i > 0 && isTraced(traces, way, all.get(i - 1), all.get(i))) {
                List<Hull.Spot> both = new ArrayList<>();
                for (int j = 0; j < tracings.size(); j++) {
                    if (!before.get(j).isEmpty() && !now.get(j).isEmpty()) {
                        both.addAll(before.get(j));
                        both.addAll(now.get(j));
                    }
                }
                if (!both.isEmpty()) {
                    patches.add(Hull.of(both).corners());
                }
            }
            before = now;
        }
    }

    /// Where the mask ends at the thing, flat: past the strand's foot by the edge's margin and no more, so that it
    /// leaves the thing itself in the picture. None where the foot isn't seen so, or the strand runs along the
    /// sight.
    private static Optional<Hull.Foot> foot(Tracing tracing, PlaceSight.Way way) {
        Optional<Point> foot = tracing.find(0, way);
        Optional<Point> next = tracing.find(NEXT_SHARE, way);
        if (foot.isEmpty() || next.isEmpty()) {
            return Optional.empty();
        }
        double x = next.get().x() - foot.get().x();
        double y = next.get().y() - foot.get().y();
        double length = Math.hypot(x, y);
        if (!(length > LEAST_PIXELS)) {
            return Optional.empty();
        }
        Point end = new Point(
                foot.get().x() - Margins.EDGE_PIXELS * x / length, foot.get().y() - Margins.EDGE_PIXELS * y / length);
        return Optional.of(new Hull.Foot(end, x / length, y / length));
    }

    /// Where a place of the strand shows at each instant, one or none.
    private List<List<Hull.Spot>> spots(
            List<Tracing> tracings, List<Optional<Hull.Foot>> feet, PlaceSight.Way way, double share) {
        List<List<Hull.Spot>> all = new ArrayList<>();
        double room = 0;
        for (int i = 0; i < tracings.size(); i++) {
            Optional<Point> at = tracings.get(i).find(share, way);
            if (at.isPresent() && room == 0) {
                room = margins(tracings.get(i), i, way, new Tracing.Vertex(share, at.get()))
                        .sumPixels();
            }
            double about = room;
            Optional<Hull.Foot> foot = feet.get(i);
            all.add(at.stream().map(point -> new Hull.Spot(point, about, foot)).toList());
        }
        return all;
    }

    /// Whether all between two places is seen so at some instant.
    private static boolean isTraced(List<Tracing.Trace> traces, PlaceSight.Way way, double from, double to) {
        return traces.stream()
                .flatMap(trace -> trace.stretches().stream())
                .anyMatch(stretch -> stretch.way() == way && stretch.from() <= from && stretch.to() >= to);
    }
}
