package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import plumeline.sketch.Box;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;

/// Slanting lines over the visible part of a shape: falling to the right, so that they differ from those of keep-outs.
final class Hatching {
    /// Pieces of a line are judged at both ends, and halved where these differ, down to the finest.
    private static final double COARSE = 8;

    private static final double FINE = 0.5;

    /// A part of a hatching line, by x.
    private record Span(double from, double to) {}

    private Hatching() {}

    /// Hatches what is inside some rings (even-odd), inside a box, in none of the hiders and where a place counts.
    ///
    /// @param rings the shape's rings
    /// @param hiders shapes that stand before it, each with its rings
    /// @param box the picture
    /// @param step from line to line along the page, pixels
    /// @param counts which spots are hatched
    static List<Stretch> over(
            List<List<Spot>> rings, List<List<List<Spot>>> hiders, Box box, double step, Predicate<Spot> counts) {
        List<Stretch> lines = new ArrayList<>();
        Box room = Box.about(rings.stream().flatMap(List::stream).toList());
        double first = Math.ceil((room.top() - room.right()) / step) * step;
        for (double c = first; c <= room.bottom() - room.left(); c += step) {
            List<Span> spans = clipped(inside(rings, c), box, c);
            for (List<List<Spot>> hider : hiders) {
                spans = less(spans, inside(hider, c));
            }
            for (Span span : spans) {
                add(lines, span, c, counts);
            }
        }
        return lines;
    }

    private static Spot at(double x, double c) {
        return new Spot(x, x + c);
    }

    /// Where the line y = x + c is inside rings.
    private static List<Span> inside(List<List<Spot>> rings, double c) {
        List<Double> crossings = new ArrayList<>();
        for (List<Spot> ring : rings) {
            for (int i = 0; i < ring.size(); i++) {
                Spot a = ring.get(i);
                Spot b = ring.get((i + 1) % ring.size());
                double before = a.y() - a.x() - c;
                double after = b.y() - b.x() - c;
                if (before > 0 != after > 0) {
                    crossings.add(a.x() + (b.x() - a.x()) * before / (before - after));
                }
            }
        }
        crossings.sort(Double::compare);
        List<Span> spans = new ArrayList<>();
        for (int i = 0; i + 1 < crossings.size(); i += 2) {
            spans.add(new Span(crossings.get(i), crossings.get(i + 1)));
        }
        return spans;
    }

    private static List<Span> clipped(List<Span> spans, Box box, double c) {
        double from = Math.max(box.left(), box.top() - c);
        double to = Math.min(box.right(), box.bottom() - c);
        return spans.stream()
                .map(span -> new Span(Math.max(span.from(), from), Math.min(span.to(), to)))
                .filter(span -> span.to() > span.from())
                .toList();
    }

    private static List<Span> less(List<Span> spans, List<Span> taken) {
        List<Span> left = spans;
        for (Span gap : taken) {
            List<Span> next = new ArrayList<>();
            for (Span span : left) {
                if (gap.to() <= span.from() || gap.from() >= span.to()) {
                    next.add(span);
                    continue;
                }
                if (gap.from() > span.from()) {
                    next.add(new Span(span.from(), gap.from()));
                }
                if (gap.to() < span.to()) {
                    next.add(new Span(gap.to(), span.to()));
                }
            }
            left = next;
        }
        return left;
    }

    private static void add(List<Stretch> lines, Span span, double c, Predicate<Spot> counts) {
        int pieces = (int) Math.max(1, Math.ceil((span.to() - span.from()) / COARSE));
        double step = (span.to() - span.from()) / pieces;
        double begun = span.from();
        boolean on = counts.test(at(begun, c));
        for (int i = 1; i <= pieces; i++) {
            double x = span.from() + step * i;
            boolean here = counts.test(at(x, c));
            if (here != on) {
                double turn = turn(x - step, x, c, on, counts);
                if (on) {
                    lines.add(new Stretch(at(begun, c), at(turn, c)));
                }
                begun = turn;
                on = here;
            }
        }
        if (on) {
            lines.add(new Stretch(at(begun, c), at(span.to(), c)));
        }
    }

    private static double turn(double from, double to, double c, boolean first, Predicate<Spot> counts) {
        double low = from;
        double high = to;
        while (high - low > FINE) {
            double middle = (low + high) / 2;
            if (counts.test(at(middle, c)) == first) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return (low + high) / 2;
    }
}
