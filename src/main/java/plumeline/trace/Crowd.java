package plumeline.trace;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// Which of many opaque parts a ray may meet: a tree of upright boxes; few are tried one by one.
final class Crowd {
    private static final int FEW = 12;
    private static final int MOST_IN_A_LEAF = 3;
    private static final int DEEPEST = 48;

    private final int[] parts;
    private final double[] boxes;
    private final int[] firsts;
    private final int[] ends;
    private final int[] seconds;

    private Crowd(int[] parts, double[] boxes, int[] firsts, int[] ends, int[] seconds) {
        this.parts = parts;
        this.boxes = boxes;
        this.firsts = firsts;
        this.ends = ends;
        this.seconds = seconds;
    }

    static Crowd of(int[] parts, Meets shapes) {
        if (parts.length <= FEW) {
            return new Crowd(parts.clone(), new double[0], new int[0], new int[0], new int[0]);
        }
        Growing growing = new Growing(parts, shapes.balls());
        growing.grow(0, parts.length, 0);
        return growing.grown();
    }

    /// A tree while it grows.
    private static final class Growing {
        private final List<Integer> order = new ArrayList<>();
        private final List<double[]> boxes = new ArrayList<>();
        private final List<int[]> nodes = new ArrayList<>();
        private final double[] balls;

        Growing(int[] parts, double[] balls) {
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
            nodes.get(node)[1] = from;
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

        Crowd grown() {
            double[] flat = new double[6 * boxes.size()];
            for (int i = 0; i < boxes.size(); i++) {
                System.arraycopy(boxes.get(i), 0, flat, 6 * i, 6);
            }
            return new Crowd(
                    order.stream().mapToInt(Integer::intValue).toArray(),
                    flat,
                    nodes.stream().mapToInt(node -> node[0]).toArray(),
                    nodes.stream().mapToInt(node -> node[1]).toArray(),
                    nodes.stream().mapToInt(node -> node[2]).toArray());
        }
    }

    /// Finds the nearest part before `hit.t`.
    void meets(Meets shapes, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (boxes.length == 0) {
            each(shapes, 0, parts.length, ox, oy, oz, dx, dy, dz, hit);
            return;
        }
        walk(shapes, 0, ox, oy, oz, dx, dy, dz, hit);
    }

    private void each(
            Meets shapes, int from, int to, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        for (int i = from; i < to; i++) {
            if (shapes.meets(parts[i], ox, oy, oz, dx, dy, dz, hit)) {
                hit.what = Hit.What.PART;
                hit.index = parts[i];
            }
        }
    }

    private void walk(
            Meets shapes, int node, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (!isNear(node, ox, oy, oz, dx, dy, dz, hit.t)) {
            return;
        }
        if (seconds[node] == 0) {
            each(shapes, firsts[node], ends[node], ox, oy, oz, dx, dy, dz, hit);
            return;
        }
        walk(shapes, node + 1, ox, oy, oz, dx, dy, dz, hit);
        walk(shapes, seconds[node], ox, oy, oz, dx, dy, dz, hit);
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

    /// Whether any part lies before `hit.t`.
    boolean stops(Meets shapes, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (boxes.length == 0) {
            for (int part : parts) {
                if (shapes.meets(part, ox, oy, oz, dx, dy, dz, hit)) {
                    return true;
                }
            }
            return false;
        }
        return stops(shapes, 0, ox, oy, oz, dx, dy, dz, hit);
    }

    private boolean stops(
            Meets shapes, int node, double ox, double oy, double oz, double dx, double dy, double dz, Hit hit) {
        if (!isNear(node, ox, oy, oz, dx, dy, dz, hit.t)) {
            return false;
        }
        if (seconds[node] == 0) {
            for (int i = firsts[node]; i < ends[node]; i++) {
                if (shapes.meets(parts[i], ox, oy, oz, dx, dy, dz, hit)) {
                    return true;
                }
            }
            return false;
        }
        return stops(shapes, node + 1, ox, oy, oz, dx, dy, dz, hit)
                || stops(shapes, seconds[node], ox, oy, oz, dx, dy, dz, hit);
    }
}
