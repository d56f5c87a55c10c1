package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Point;

/// Convex patches as rows of whole pixels: every pixel that a patch touches is in.
final class SpanRows {
    private static final int[] NOTHING = {};

    private final int acrossPixels;
    private final List<List<int[]>> spans = new ArrayList<>();

    SpanRows(ClipSize size) {
        acrossPixels = size.acrossPixels();
        for (int row = 0; row < size.downPixels(); row++) {
            spans.add(List.of());
        }
    }

    /// Adds a patch.
    void add(List<Point> corners) {
        double top = Double.POSITIVE_INFINITY;
        double bottom = Double.NEGATIVE_INFINITY;
        for (Point corner : corners) {
            top = Math.min(top, corner.y());
            bottom = Math.max(bottom, corner.y());
        }
        int first = (int) Math.max(0, Math.floor(top));
        int past = (int) Math.min(spans.size(), Math.ceil(bottom));
        if (first >= past) {
            return;
        }
        double[] least = new double[past - first];
        double[] most = new double[past - first];
        java.util.Arrays.fill(least, Double.POSITIVE_INFINITY);
        java.util.Arrays.fill(most, Double.NEGATIVE_INFINITY);
        for (int i = 0; i < corners.size(); i++) {
            edge(corners.get(i), corners.get((i + 1) % corners.size()), first, least, most);
        }
        for (int row = first; row < past; row++) {
            int from = (int) Math.max(0, Math.floor(least[row - first]));
            int to = (int) Math.min(acrossPixels, Math.ceil(most[row - first]));
            if (from < to) {
                insert(row, from, to);
            }
        }
    }

    /// Widens rows by what an edge covers in each of them.
    private static void edge(Point one, Point other, int first, double[] least, double[] most) {
        Point upper = one.y() <= other.y() ? one : other;
        Point lower = one.y() <= other.y() ? other : one;
        double slope = lower.y() > upper.y() ? (lower.x() - upper.x()) / (lower.y() - upper.y()) : 0;
        int from = (int) Math.max(first, Math.floor(upper.y()));
        int last = (int) Math.min(first + least.length - 1.0, Math.floor(lower.y()));
        for (int row = from; row <= last; row++) {
            double atTop = row <= upper.y() ? upper.x() : upper.x() + slope * (row - upper.y());
            double atBottom = row + 1 >= lower.y() ? lower.x() : upper.x() + slope * (row + 1 - upper.y());
            least[row - first] = Math.min(least[row - first], Math.min(atTop, atBottom));
            most[row - first] = Math.max(most[row - first], Math.max(atTop, atBottom));
        }
    }

    private void insert(int row, int from, int to) {
        List<int[]> merged = new ArrayList<>();
        int low = from;
        int high = to;
        for (int[] span : spans.get(row)) {
            if (span[1] < low || span[0] > high) {
                merged.add(span);
            } else {
                low = Math.min(low, span[0]);
                high = Math.max(high, span[1]);
            }
        }
        int place = 0;
        while (place < merged.size() && merged.get(place)[0] < low) {
            place++;
        }
        merged.add(place, new int[] {low, high});
        spans.set(row, merged);
    }

    int count() {
        return spans.size();
    }

    /// The places where a row changes between out and in, rising: from, to, from, to …
    int[] turns(int row) {
        List<int[]> own = spans.get(row);
        if (own.isEmpty()) {
            return NOTHING;
        }
        int[] turns = new int[2 * own.size()];
        for (int i = 0; i < own.size(); i++) {
            turns[2 * i] = own.get(i)[0];
            turns[2 * i + 1] = own.get(i)[1];
        }
        return turns;
    }
}
