package plumeline.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/// Which of many opaque parts a ray may meet: a tree of upright boxes; few are tried one by one.
final class Crowd {
    private static final int FEW = 12;
    private static final int MOST_IN_A_LEAF = 3;
    private static final int DEEPEST = 48;

    private final Meets shapes;
    private final int[] parts;
    private final double[] balls;
    private final int[] sheets;
    private final double[] planes;
    private final double[] boxes;
    private final int[] firsts;
    private final int[] ends;
    private final int[] seconds;

    /// How many are tried apart: each solid, or the whole tree.
    private final int units;

    /// Of boxes round sheets, then round what is tried apart.
    private final double[] corners;

    private Crowd(Meets shapes, int[] sheets, Tree tree) {
        this.shapes = shapes;
        this.sheets = sheets;
        parts = tree.order.stream().mapToInt(Integer::intValue).toArray();
        balls = new double[4 * parts.length];
        for (int i = 0; i < parts.length; i++) {
            System.arraycopy(shapes.balls(), 4 * parts[i], balls, 4 * i, 4);
        }
        planes = new double[4 * sheets.length];
        for (int i = 0; i < sheets.length; i++) {
            for (int j = 0; j < 3; j++) {
                double normal = shapes.frames()[Shapes.FRAME * sheets[i] + 9 + j];
                planes[4 * i + j] = normal;
                planes[4 * i + 3] += normal * shapes.frames()[Shapes.FRAME * sheets[i] + j];
            }
        }
        boxes = new double[6 * tree.boxes.size()];
        for (int i = 0; i < tree.boxes.size(); i++) {
            System.arraycopy(tree.boxes.get(i), 0, boxes, 6 * i, 6);
        }
        units = boxes.length == 0 ? parts.length : 1;
        corners = new double[Shapes.CORNERS * (sheets.length + units)];
        for (int i = 0; i < sheets.length; i++) {
            System.arraycopy(shapes.corners(sheets[i]), 0, corners, Shapes.CORNERS * i, Shapes.CORNERS);
        }
        for (int i = 0; i < units; i++) {
            double[] unit = boxes.length == 0 ? shapes.corners(parts[i]) : Shapes.corners(boxes);
            System.arraycopy(unit, 0, corners, Shapes.CORNERS * (sheets.length + i), Shapes.CORNERS);
        }
        firsts = tree.nodes.stream().mapToInt(node -> node[0]).toArray();
        ends = tree.nodes.stream().mapToInt(node -> node[1]).toArray();
        seconds = tree.nodes.stream().mapToInt(node -> node[2]).toArray();
    }

    static Crowd of(int[] parts, Meets shapes) {
        int[] sheets = IntStream.of(parts)
                .filter(part -> shapes.kind(part) == Shapes.SHEET)
                .toArray();
        int[] solids = IntStream.of(parts)
                .filter(part -> shapes.kind(part) != Shapes.SHEET)
                .toArray();
        Tree tree = new Tree(solids, shapes.balls());
        if (solids.length > FEW) {
            tree.grow(0, solids.length, 0);
        }
        return new Crowd(shapes, sheets, tree);
    }

    /// A tree while it grows.
    private static final class Tree {
        private final List<Integer> order = new ArrayList<>();
        private final List<double[]> boxes = new ArrayList<>();
        private final List<int[]> nodes = new ArrayList<>();
        private final double[] balls;

        Tree(int[] parts, double[] balls) {
            this.balls = balls;
            for (int part : parts) {
                order.add(part);
            }
        }

        void grow(int from, int to, int depth) {
            int node = nodes.size();
            double[] box = box(from, to);
            boxes.add(box);
            nodes.add(new int[] {from, to, 0});
            if (to - from <= MOST_IN_A_LEAF || depth >= DEEPEST) {
                return;
            }
            int axis = 0;
            for (int i = 1; i < 3; i++) {
                if (box[i + 3] - box[i] > box[axis + 3] - box[axis]) {
                    axis = i;
                }
            }
            int across = axis;
            order.subList(from, to).sort(Comparator.comparingDouble(part -> balls[4 * part + across]));
            int middle = (from + to) / 2;
            grow(from, middle, depth + 1);
            nodes.get(node)[2] = nodes.size();
            grow(middle, to, depth + 1);
        }

        private double[] box(int from, int to) {
            double[] box = {
                Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
                Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY
            };
            for (int part : order.subList(from, to)) {
                for (int i = 0; i < 3; i++) {
                    box[i] = Math.min(box[i], balls[4 * part + i] - balls[4 * part + 3]);
                    box[i + 3] = Math.max(box[i + 3], balls[4 * part + i] + balls[4 * part + 3]);
                }
            }
            return box;
        }
    }

    int sheets() {
        return sheets.length;
    }

    int units() {
        return units;
    }

    /// Notes all that there is.
    void take(Scope scope) {
        for (int i = 0; i < sheets.length; i++) {
            scope.sheets[scope.sheetCount++] = i;
        }
        for (int i = 0; i < units; i++) {
            scope.solids[scope.solidCount++] = i;
        }
    }

    /// Notes what may be met by a camera's rays.
    void take(Scope scope, Frustum rays) {
        for (int i = 0; i < sheets.length; i++) {
            if (!rays.misses(corners, Shapes.CORNERS * i)) {
                scope.sheets[scope.sheetCount++] = i;
            }
        }
        for (int i = 0; i < units; i++) {
            if (!rays.misses(corners, Shapes.CORNERS * (sheets.length + i))) {
                scope.solids[scope.solidCount++] = i;
            }
        }
    }

    /// Notes what may be met within a box.
    void take(Scope scope, double[] box) {
        for (int i = 0; i < sheets.length; i++) {
            if (overlaps(Shapes.CORNERS * i, box)) {
                scope.sheets[scope.sheetCount++] = i;
            }
        }
        for (int i = 0; i < units; i++) {
            if (overlaps(Shapes.CORNERS * (sheets.length + i), box)) {
                scope.solids[scope.solidCount++] = i;
            }
        }
    }

    private boolean overlaps(int from, double[] box) {
        double[] own = Shapes.box(corners, from);
        boolean is = true;
        for (int i = 0; i < 3; i++) {
            is &= own[i] <= box[i + 3] && own[i + 3] >= box[i];
        }
        return is;
    }

    /// Finds the nearest part before `hit.t`.
    void meets(Scope scope, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int k = 0; k < scope.sheetCount; k++) {
            if (meetsSheet(scope.sheets[k], ox, oy, oz, dx, dy, dz, hit)) {
                hit.what = Hit.PART;
                hit.index = sheets[scope.sheets[k]];
                hit.piece = 0;
            }
        }
        if (boxes.length > 0) {
            if (scope.solidCount > 0) {
                walk(0, ox, oy, oz, dx, dy, dz, hit);
            }
            return;
        }
        for (int k = 0; k < scope.solidCount; k++) {
            meets(scope.solids[k], ox, oy, oz, dx, dy, dz, hit);
        }
    }

    private void meets(int i, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (isNearBall(i, ox, oy, oz, dx, dy, dz, hit.t) && shapes.meetsInBall(parts[i], ox, oy, oz, dx, dy, dz, hit)) {
            hit.what = Hit.PART;
            hit.index = parts[i];
        }
    }

    /// Notes what may stop ways to a light.
    void take(Scope scope, Beam ways) {
        for (int i = 0; i < sheets.length; i++) {
            if (!ways.missesPlane(planes[4 * i], planes[4 * i + 1], planes[4 * i + 2], planes[4 * i + 3])) {
                scope.sheets[scope.sheetCount++] = i;
            }
        }
        for (int i = 0; i < units; i++) {
            if (!(boxes.length == 0 ? isBeside(i, ways) : isBeside(ways))) {
                scope.solids[scope.solidCount++] = i;
            }
        }
    }

    private boolean isBeside(int i, Beam ways) {
        return ways.missesBall(balls[4 * i], balls[4 * i + 1], balls[4 * i + 2], balls[4 * i + 3])
                || shapes.isBeside(parts[i], ways);
    }

    /// Whether ways don't come near the tree.
    private boolean isBeside(Beam ways) {
        double x = boxes[3] - boxes[0];
        double y = boxes[4] - boxes[1];
        double z = boxes[5] - boxes[2];
        return ways.missesBall(
                boxes[0] + x / 2, boxes[1] + y / 2, boxes[2] + z / 2, Math.sqrt(x * x + y * y + z * z) / 2);
    }

    /// Notes on which of many ways none of some parts can lie.
    void mayStop(Scope scope, Rows rows, int count) {
        Arrays.fill(rows.near, 0, count, boxes.length > 0 && scope.solidCount > 0 ? -1 : 1);
        if (!(rows.near[0] > 0)) {
            return;
        }
        for (int k = 0; k < scope.sheetCount; k++) {
            shapes.mayMeetSheet(sheets[scope.sheets[k]], rows, count);
        }
        for (int k = 0; k < scope.solidCount; k++) {
            int part = parts[scope.solids[k]];
            if (shapes.kind(part) == Shapes.BEND) {
                shapes.mayMeetBend(part, rows, count);
            } else {
                shapes.mayMeetBall(part, rows, count, rows.near);
            }
        }
    }

    private boolean meetsSheet(int i, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        double nx = planes[4 * i];
        double ny = planes[4 * i + 1];
        double nz = planes[4 * i + 2];
        double before = planes[4 * i + 3] - nx * ox - ny * oy - nz * oz;
        double toward = nx * dx + ny * dy + nz * dz;
        if (!(before * toward > 0 && Math.abs(before) < hit.t * Math.abs(toward))) {
            return false;
        }
        double t = before / toward;
        boolean isMet = t > Meets.NEAR_METRES
                && t < hit.t
                && shapes.isOnSheet(sheets[i], ox + t * dx, oy + t * dy, oz + t * dz);
        if (isMet) {
            hit.t = t;
        }
        return isMet;
    }

    /// Whether a ray comes into the ball round a part before a distance.
    private boolean isNearBall(int i, double ox, double oy, double oz, double dx, double dy, double dz, double far) {
        double bx = balls[4 * i] - ox;
        double by = balls[4 * i + 1] - oy;
        double bz = balls[4 * i + 2] - oz;
        double radius = balls[4 * i + 3];
        double on = bx * dx + by * dy + bz * dz;
        return bx * bx + by * by + bz * bz - on * on <= radius * radius && on + radius >= 0 && on - radius <= far;
    }

    private void each(int from, int to, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int i = from; i < to; i++) {
            meets(i, ox, oy, oz, dx, dy, dz, hit);
        }
    }

    private void walk(int node, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (!isNear(node, ox, oy, oz, dx, dy, dz, hit.t)) {
            return;
        }
        if (seconds[node] == 0) {
            each(firsts[node], ends[node], ox, oy, oz, dx, dy, dz, hit);
            return;
        }
        walk(node + 1, ox, oy, oz, dx, dy, dz, hit);
        walk(seconds[node], ox, oy, oz, dx, dy, dz, hit);
    }

    private boolean isNear(int node, double ox, double oy, double oz, double dx, double dy, double dz, double far) {
        int at = 6 * node;
        double one = (boxes[at] - ox) / dx;
        double other = (boxes[at + 3] - ox) / dx;
        double from = Math.min(one, other);
        double to = Math.max(one, other);
        one = (boxes[at + 1] - oy) / dy;
        other = (boxes[at + 4] - oy) / dy;
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
        one = (boxes[at + 2] - oz) / dz;
        other = (boxes[at + 5] - oz) / dz;
        from = Math.max(from, Math.min(one, other));
        to = Math.min(to, Math.max(one, other));
        return from <= to && to >= 0 && from <= far;
    }

    /// Whether any of some parts lies before `hit.t`.
    boolean stops(Scope scope, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int k = 0; k < scope.sheetCount; k++) {
            if (meetsSheet(scope.sheets[k], ox, oy, oz, dx, dy, dz, hit)) {
                return true;
            }
        }
        if (boxes.length > 0) {
            return scope.solidCount > 0 && stops(0, ox, oy, oz, dx, dy, dz, hit);
        }
        for (int k = 0; k < scope.solidCount; k++) {
            if (stopsAt(scope.solids[k], ox, oy, oz, dx, dy, dz, hit)) {
                return true;
            }
        }
        return false;
    }

    private boolean stopsAt(int i, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        return isNearBall(i, ox, oy, oz, dx, dy, dz, hit.t)
                && shapes.meetsInBall(parts[i], ox, oy, oz, dx, dy, dz, hit);
    }

    private boolean anyStops(
            int from, int to, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int i = from; i < to; i++) {
            if (stopsAt(i, ox, oy, oz, dx, dy, dz, hit)) {
                return true;
            }
        }
        return false;
    }

    private boolean stops(int node, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (!isNear(node, ox, oy, oz, dx, dy, dz, hit.t)) {
            return false;
        }
        if (seconds[node] == 0) {
            return anyStops(firsts[node], ends[node], ox, oy, oz, dx, dy, dz, hit);
        }
        return stops(node + 1, ox, oy, oz, dx, dy, dz, hit) || stops(seconds[node], ox, oy, oz, dx, dy, dz, hit);
    }
}
