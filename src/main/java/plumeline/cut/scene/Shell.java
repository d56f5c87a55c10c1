package plumeline.cut.scene;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;

/// The surface of a solid as triangles in glTF's axes, its origin in the middle of its base, for orientation: round
/// bodies have [#SIDES] sides. Each flat or frustum has corners of its own, so that edges stay sharp.
final class Shell {
    static final int SIDES = 48;

    private final List<Vec> places = new ArrayList<>();
    private final List<Vec> normals = new ArrayList<>();
    private final List<Integer> corners = new ArrayList<>();

    private Shell() {}

    static Shell of(Solid solid) {
        Shell shell = new Shell();
        switch (solid) {
            case Solid.Box box -> shell.box(box, Vec.ZERO);
            case Solid.Revolved revolved -> shell.revolved(revolved.stations());
        }
        return shell;
    }

    /// Boxes that stand upright at places of ours, all in one.
    static Shell ofBoxes(List<Solid.Box> boxes, List<Vec> bases) {
        Shell shell = new Shell();
        for (int i = 0; i < boxes.size(); i++) {
            shell.box(boxes.get(i), bases.get(i));
        }
        return shell;
    }

    /// A level face at a height of 0, seen from above.
    static Shell ofGround(double leftMetres, double rightMetres, double nearMetres, double farMetres) {
        Shell shell = new Shell();
        shell.face(
                new Vec(leftMetres, nearMetres, 0),
                new Vec(rightMetres - leftMetres, 0, 0),
                new Vec(0, farMetres - nearMetres, 0));
        return shell;
    }

    private void box(Solid.Box box, Vec base) {
        Vec wide = new Vec(box.widthMetres(), 0, 0);
        Vec deep = new Vec(0, box.depthMetres(), 0);
        Vec tall = new Vec(0, 0, box.heightMetres());
        Vec low = base.minus(wide.times(0.5)).minus(deep.times(0.5));
        Vec high = low.plus(wide).plus(deep).plus(tall);
        face(low, wide, tall);
        face(low, deep, wide);
        face(low, tall, deep);
        face(high, tall.times(-1), wide.times(-1));
        face(high, wide.times(-1), deep.times(-1));
        face(high, deep.times(-1), tall.times(-1));
    }

    /// A flat face that is seen from where `first` turns to `second` counter-clockwise; places of ours.
    private void face(Vec corner, Vec first, Vec second) {
        Vec normal = first.cross(second).unit();
        int start = places.size();
        for (Vec place : List.of(corner, corner.plus(first), corner.plus(first).plus(second), corner.plus(second))) {
            add(place, normal);
        }
        corners.addAll(List.of(start, start + 1, start + 2, start, start + 2, start + 3));
    }

    private void revolved(List<Station> stations) {
        cap(stations.getFirst(), -1);
        for (int i = 1; i < stations.size(); i++) {
            frustum(stations.get(i - 1), stations.get(i));
        }
        cap(stations.getLast(), 1);
    }

    /// The flat end of a profile, seen from below (−1) or above (1).
    private void cap(Station end, int side) {
        if (!(end.radiusMetres() > 0)) {
            return;
        }
        Vec normal = new Vec(0, 0, side);
        int middle = places.size();
        add(new Vec(0, 0, end.heightMetres()), normal);
        for (int k = 0; k < SIDES; k++) {
            add(round(end, k), normal);
        }
        for (int k = 0; k < SIDES; k++) {
            int here = middle + 1 + k;
            int next = middle + 1 + (k + 1) % SIDES;
            corners.addAll(side > 0 ? List.of(middle, here, next) : List.of(middle, next, here));
        }
    }

    /// What lies between two stations: a frustum's side, or a shoulder where both are as high.
    private void frustum(Station low, Station high) {
        double rise = high.heightMetres() - low.heightMetres();
        double in = low.radiusMetres() - high.radiusMetres();
        if (rise == 0 && in == 0 || !(low.radiusMetres() + high.radiusMetres() > 0)) {
            return;
        }
        double slant = Math.hypot(rise, in);
        int start = places.size();
        for (int k = 0; k < SIDES; k++) {
            Vec out = round(new Station(0, 1), k);
            Vec normal = new Vec(out.x() * rise / slant, out.y() * rise / slant, in / slant);
            add(round(low, k), normal);
            add(round(high, k), normal);
        }
        for (int k = 0; k < SIDES; k++) {
            int here = start + 2 * k;
            int next = start + 2 * ((k + 1) % SIDES);
            if (low.radiusMetres() > 0) {
                corners.addAll(List.of(here, next, high.radiusMetres() > 0 ? next + 1 : here + 1));
            }
            if (high.radiusMetres() > 0) {
                corners.addAll(List.of(here, next + 1, here + 1));
            }
        }
    }

    /// A place of ours on a station's rim, counter-clockwise seen from above.
    private static Vec round(Station station, int side) {
        double radians = 2 * StrictMath.PI * side / SIDES;
        return new Vec(
                station.radiusMetres() * StrictMath.cos(radians),
                station.radiusMetres() * StrictMath.sin(radians),
                station.heightMetres());
    }

    private void add(Vec place, Vec normal) {
        places.add(Turn.place(place));
        normals.add(Turn.place(normal));
    }

    float[] listPlaces() {
        return figures(places);
    }

    float[] listNormals() {
        return figures(normals);
    }

    /// Three corners a triangle, counter-clockwise seen from outside.
    int[] listCorners() {
        return corners.stream().mapToInt(Integer::intValue).toArray();
    }

    private static float[] figures(List<Vec> vectors) {
        float[] figures = new float[3 * vectors.size()];
        for (int i = 0; i < vectors.size(); i++) {
            figures[3 * i] = (float) vectors.get(i).x();
            figures[3 * i + 1] = (float) vectors.get(i).y();
            figures[3 * i + 2] = (float) vectors.get(i).z();
        }
        return figures;
    }
}
