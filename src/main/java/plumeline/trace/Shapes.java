package plumeline.trace;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.scenery.Form;

/// Forms as plain numbers, each in a frame of its own: all that rays are tried against. Grown while a world is made
/// ready, then read only.
final class Shapes {
    static final int TURNED = 0;
    static final int BOX = 1;
    static final int BALL = 2;
    static final int SHEET = 3;
    static final int BEND = 4;

    /// Numbers a frame: origin, then the directions of its x, y and z.
    static final int FRAME = 12;

    /// Numbers a piece of a profile. A cone: lower and upper height, radius at height 0, slope. A ring: its height
    /// twice, the squares of its inner and outer radius.
    static final int PIECE = 4;

    /// Numbers of the eight corners of a box.
    static final int CORNERS = 24;

    private final List<double[]> frames = new ArrayList<>();
    private final List<double[]> balls = new ArrayList<>();
    private final List<double[]> sizes = new ArrayList<>();
    private final List<Integer> kinds = new ArrayList<>();
    private final List<Integer> firsts = new ArrayList<>();
    private final List<double[]> pieces = new ArrayList<>();
    private final List<Integer> faces = new ArrayList<>();

    /// Takes a form.
    ///
    /// @return its number
    int add(Form form) {
        return switch (form) {
            case Form.Posed posed -> addBody(posed.body());
            case Form.Ball ball -> addBall(ball);
            case Form.Rod rod -> addRod(rod);
            case Form.Sheet sheet -> {
                double half = Math.hypot(sheet.widthMetres(), sheet.heightMetres()) / 2;
                yield add(
                        SHEET,
                        frame(sheet.middle(), sheet.right(), sheet.up()),
                        ball(sheet.middle(), half),
                        new double[] {sheet.widthMetres() / 2, sheet.heightMetres() / 2, 0});
            }
            case Form.Bend bend -> {
                double half = Math.hypot(bend.lengthMetres() / 2, bend.radiusMetres());
                yield add(
                        BEND,
                        frame(bend.middle(), bend.from(), bend.to(), bend.along()),
                        ball(bend.middle(), half),
                        new double[] {bend.radiusMetres(), bend.lengthMetres() / 2, 0});
            }
        };
    }

    /// Takes a room in a shape, which stands upright in that shape's frame.
    ///
    /// @return its number
    int addRoom(int shape, Solid solid, double bottomMetres) {
        double[] outer = frames.get(shape);
        double[] frame = outer.clone();
        for (int i = 0; i < 3; i++) {
            frame[i] += bottomMetres * outer[9 + i];
        }
        double half = solid.heightMetres() / 2;
        Vec middle = new Vec(frame[0] + half * frame[9], frame[1] + half * frame[10], frame[2] + half * frame[11]);
        return addSolid(solid, frame, ball(middle, Math.hypot(half, solid.reachMetres())));
    }

    private int addBody(Body body) {
        Vec origin = body.place(Vec.ZERO);
        double[] frame = frame(
                origin,
                body.place(new Vec(1, 0, 0)).minus(origin),
                body.place(new Vec(0, 1, 0)).minus(origin));
        return addSolid(body.solid(), frame, ball(body.middle(), body.ballMetres()));
    }

    private int addBall(Form.Ball ball) {
        double radius = ball.radiusMetres();
        Vec base = ball.middle().minus(Vec.UP.times(radius));
        return add(BALL, frame(base, new Vec(1, 0, 0), new Vec(0, 1, 0)), ball(ball.middle(), radius), new double[] {
            radius, 2 * radius, 0
        });
    }

    private int addRod(Form.Rod rod) {
        Vec from = rod.barrel().from();
        Vec way = rod.barrel().to().minus(from);
        double length = way.lengthMetres();
        Vec axis = way.times(1 / length);
        Vec x = (Math.abs(axis.z()) < 0.9 ? Vec.UP : new Vec(1, 0, 0))
                .cross(axis)
                .unit();
        double most = Math.max(rod.barrel().fromRadiusMetres(), rod.barrel().toRadiusMetres());
        Solid solid = new Solid.Revolved(List.of(
                new Station(0, rod.barrel().fromRadiusMetres()),
                new Station(length, rod.barrel().toRadiusMetres())));
        return addSolid(
                solid, frame(from, x, axis.cross(x)), ball(from.plus(way.times(0.5)), Math.hypot(length / 2, most)));
    }

    private int addSolid(Solid solid, double[] frame, double[] ball) {
        return switch (solid) {
            case Solid.Box box ->
                add(BOX, frame, ball, new double[] {box.widthMetres() / 2, box.depthMetres() / 2, box.heightMetres()});
            case Solid.Revolved turned -> {
                double reach = turned.reachMetres();
                int shape = add(TURNED, frame, ball, new double[] {reach * reach, turned.heightMetres(), 0});
                addPieces(turned.stations());
                yield shape;
            }
        };
    }

    private void addPieces(List<Station> stations) {
        addRing(0, 0, stations.getFirst().radiusMetres(), -1);
        for (int i = 1; i < stations.size(); i++) {
            Station low = stations.get(i - 1);
            Station high = stations.get(i);
            double rise = high.heightMetres() - low.heightMetres();
            double one = low.radiusMetres();
            double other = high.radiusMetres();
            if (rise > 0) {
                double slope = (other - one) / rise;
                pieces.add(
                        new double[] {low.heightMetres(), high.heightMetres(), one - slope * low.heightMetres(), slope
                        });
                faces.add(0);
            } else {
                addRing(low.heightMetres(), Math.min(one, other), Math.max(one, other), other < one ? 1 : -1);
            }
        }
        Station last = stations.getLast();
        addRing(last.heightMetres(), 0, last.radiusMetres(), 1);
    }

    private void addRing(double height, double inner, double outer, int faces) {
        if (outer > inner) {
            pieces.add(new double[] {height, height, inner * inner, outer * outer});
            this.faces.add(faces);
        }
    }

    private int add(int kind, double[] frame, double[] ball, double[] size) {
        kinds.add(kind);
        frames.add(frame);
        balls.add(ball);
        sizes.add(size);
        firsts.add(pieces.size());
        return kinds.size() - 1;
    }

    private static double[] frame(Vec origin, Vec x, Vec y) {
        return frame(origin, x, y, x.cross(y));
    }

    private static double[] frame(Vec origin, Vec x, Vec y, Vec z) {
        return new double[] {
            origin.x(), origin.y(), origin.z(), x.x(), x.y(), x.z(), y.x(), y.y(), y.z(), z.x(), z.y(), z.z()
        };
    }

    /// Its middle and its radius, a little larger than it needs to be.
    private static double[] ball(Vec middle, double radius) {
        return new double[] {middle.x(), middle.y(), middle.z(), radius * (1 + 1e-9) + 1e-9};
    }

    /// The least and most of eight corners along each axis.
    static double[] box(double[] corners, int from) {
        double[] box = {
            Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
            Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
        };
        for (int i = 0; i < CORNERS; i++) {
            box[i % 3] = Math.min(box[i % 3], corners[from + i]);
            box[i % 3 + 3] = Math.max(box[i % 3 + 3], corners[from + i]);
        }
        return box;
    }

    /// The corners of an upright box by its least and most along each axis.
    static double[] corners(double[] box) {
        double[] corners = new double[CORNERS];
        for (int i = 0; i < 8; i++) {
            for (int axis = 0; axis < 3; axis++) {
                corners[3 * i + axis] = box[(i >> axis & 1) == 0 ? axis : axis + 3];
            }
        }
        return corners;
    }

    int[] kinds() {
        return ints(kinds);
    }

    /// Where each shape's pieces begin, and where the last one's end.
    int[] firsts() {
        List<Integer> all = new ArrayList<>(firsts);
        all.add(pieces.size());
        return ints(all);
    }

    /// Which way each piece faces: 0 for a cone, 1 for a ring that faces up, −1 for one that faces down.
    int[] faces() {
        return ints(faces);
    }

    double[] frames() {
        return flat(frames, FRAME);
    }

    double[] balls() {
        return flat(balls, 4);
    }

    double[] sizes() {
        return flat(sizes, 3);
    }

    double[] pieces() {
        return flat(pieces, PIECE);
    }

    private static int[] ints(List<Integer> list) {
        return list.stream().mapToInt(Integer::intValue).toArray();
    }

    private static double[] flat(List<double[]> list, int each) {
        double[] flat = new double[each * list.size()];
        for (int i = 0; i < list.size(); i++) {
            System.arraycopy(list.get(i), 0, flat, each * i, each);
        }
        return flat;
    }
}
