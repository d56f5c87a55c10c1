package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.sight.Face;
import plumeline.sight.Outline;
import plumeline.sight.Sight;

/// What is seen of bodies from camera right, straight on: places become (y, z), which a [PlanScale] puts on the page
/// with y to the right and z up.
///
/// A body is the union of its frusta, each the hull of its rims; rims have 48 corners, so a leaning body's outline is
/// low by up to 0.2 % of the radius.
final class SideOutline {
    private static final int STEPS = 48;

    private SideOutline() {}

    /// Turns a place of the table into one of the side view.
    static Vec flat(Vec place) {
        return new Vec(place.y(), place.z(), 0);
    }

    /// Gives the outer edges of a body, one ring a connected part, in places of the side view.
    static List<List<Vec>> of(Body body) {
        return of(body, UnaryOperator.identity());
    }

    /// Gives the outer edges of a body each of whose places is moved first.
    static List<List<Vec>> of(Body body, UnaryOperator<Vec> moved) {
        List<Outline> parts = new ArrayList<>();
        for (List<Vec> part : parts(body)) {
            List<Vec> hull = Footprint.hull(
                    part.stream().map(moved).map(SideOutline::flat).toList());
            if (hull.size() > 2) {
                parts.add(new Outline(hull.stream()
                        .map(corner -> new Point(corner.x(), corner.y()))
                        .toList()));
            }
        }
        return Sight.united(parts).stream()
                .map(Face::shell)
                .map(shell -> shell.stream()
                        .map(corner -> new Vec(corner.x(), corner.y(), 0))
                        .toList())
                .toList();
    }

    /// Gives places all round a body's rims, or its corners, table frame.
    static List<Vec> places(Body body) {
        return parts(body).stream().flatMap(List::stream).toList();
    }

    private static List<List<Vec>> parts(Body body) {
        List<List<Vec>> parts = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Revolved(List<Station> stations) -> {
                for (int i = 1; i < stations.size(); i++) {
                    List<Vec> part = new ArrayList<>(rim(body, stations.get(i - 1)));
                    part.addAll(rim(body, stations.get(i)));
                    parts.add(part);
                }
            }
            case Solid.Box box ->
                parts.add(box.corners().stream().map(body::place).toList());
        }
        return parts;
    }

    private static List<Vec> rim(Body body, Station station) {
        List<Vec> rim = new ArrayList<>(STEPS);
        for (int i = 0; i < STEPS; i++) {
            double angle = 2 * Math.PI * i / STEPS;
            rim.add(body.place(new Vec(
                    station.radiusMetres() * Math.cos(angle),
                    station.radiusMetres() * Math.sin(angle),
                    station.heightMetres())));
        }
        return rim;
    }
}
