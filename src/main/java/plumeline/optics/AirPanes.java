package plumeline.optics;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;

/// The way of light from a place in air through panes with air behind each, whatever their turn to each other.
///
/// Between them it goes on in one direction, moved a little by each pane. The direction is from the place to the end
/// moved back by all of that, found by doing so again and again: each time what is missing shrinks about as the panes
/// are thin against the way. Panes that the straight way would cross in another order are crossed so too: the caller
/// sees that they don't lie there.
///
/// **Source:** Snell's law (any optics text).
///
/// @param faces in the order they are crossed; the way may end in the last one's glass
record AirPanes(List<FlatPath.Face> faces) {
    private static final int MOST_STEPS = 60;
    private static final double STILL = 1e-13;
    private static final double PARALLEL = 1 - 1e-14;

    static boolean is(List<FlatPath.Face> faces) {
        for (int i = 0; i < faces.size(); i++) {
            boolean isGlass = faces.get(i).behindIndex() > 1;
            if (isGlass && i + 1 < faces.size() && !closes(faces.get(i), faces.get(i + 1))) {
                return false;
            }
        }
        return true;
    }

    private static boolean closes(FlatPath.Face face, FlatPath.Face next) {
        return next.behindIndex() == 1
                && Math.abs(face.plane().normal().dot(next.plane().normal())) > PARALLEL;
    }

    /// A pane as light crosses it; of no thickness where a face has air on both sides.
    private record Pane(Vec through, Vec across, double thickMetres, double index) {
        /// How a way of length 1 in air goes on within it.
        Vec within(Vec way) {
            Vec aside = way.minus(across.times(way.dot(across)));
            return across.plus(aside.times(1 / Math.sqrt(index * index - aside.dot(aside))))
                    .times(thickMetres);
        }
    }

    /// Finds where it crosses the faces; empty where it runs along one, or is too short against the panes.
    Optional<List<Vec>> find(Vec from, Vec to) {
        List<Pane> panes = panes(from, to);
        Vec straight = to.minus(from);
        Vec way = straight.unit();
        for (int step = 0; step < MOST_STEPS; step++) {
            Vec rest = straight;
            for (Pane pane : panes) {
                if (!(way.dot(pane.across()) > 0)) {
                    return Optional.empty();
                }
                rest = pane.thickMetres() > 0 ? rest.minus(pane.within(way)) : rest;
            }
            if (!(rest.dot(straight) > 0)) {
                return Optional.empty();
            }
            Vec next = rest.unit();
            Vec moved = next.minus(way);
            way = next;
            if (moved.dot(moved) < STILL * STILL) {
                return Optional.of(crossed(from, way, panes));
            }
        }
        return Optional.empty();
    }

    private List<Pane> panes(Vec from, Vec to) {
        List<Pane> panes = new ArrayList<>();
        for (int i = 0; i < faces.size(); i++) {
            Vec through = faces.get(i).plane().through();
            Vec normal = faces.get(i).plane().normal();
            Vec across = through.minus(from).dot(normal) < 0 ? normal.times(-1) : normal;
            double index = faces.get(i).behindIndex();
            if (index > 1) {
                i++;
                Vec end = i < faces.size() ? faces.get(i).plane().through() : to;
                panes.add(new Pane(through, across, end.minus(through).dot(across), index));
            } else {
                panes.add(new Pane(through, across, 0, 1));
            }
        }
        return panes;
    }

    private List<Vec> crossed(Vec from, Vec way, List<Pane> panes) {
        List<Vec> places = new ArrayList<>();
        Vec at = from;
        for (Pane pane : panes) {
            double far = pane.through().minus(at).dot(pane.across()) / way.dot(pane.across());
            at = at.plus(way.times(far));
            places.add(at);
            if (pane.thickMetres() > 0 && places.size() < faces.size()) {
                at = at.plus(pane.within(way));
                places.add(at);
            }
        }
        return places;
    }
}
