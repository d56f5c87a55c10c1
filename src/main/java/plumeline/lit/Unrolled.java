package plumeline.lit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.geom.Solid;
import plumeline.geom.Vec;

/// A lamp's mirror image on a thing's side, unrolled: round the axis of a round thing, or a box's front face.
///
/// @param rows what of each height it takes, the lowest first
public record Unrolled(List<Row> rows) {
    private static final double ON_METRES = 1e-6;

    /// What is off by less is the same on paper.
    private static final double SAME_METRES = 0.0005;

    /// What it takes of a height.
    ///
    /// @param heightMetres above the base
    /// @param spans from left to right on paper; one that runs over the seam is parted there
    public record Row(double heightMetres, List<Span> spans) {
        /// Copies the list.
        public Row {
            spans = List.copyOf(spans);
        }
    }

    /// A stretch across.
    ///
    /// @param fromMetres where it begins, to the right of the label's middle along the unrolled mantle
    /// @param toMetres where it ends, not below
    public record Span(double fromMetres, double toMetres) {
        private boolean isLike(Span other) {
            return Math.abs(fromMetres - other.fromMetres) < SAME_METRES
                    && Math.abs(toMetres - other.toMetres) < SAME_METRES;
        }

        private boolean touches(Span other) {
            return fromMetres <= other.toMetres && other.fromMetres <= toMetres;
        }
    }

    /// One connected part.
    ///
    /// @param heightsMetres its heights, rising
    /// @param spans its stretch at each
    public record Patch(List<Double> heightsMetres, List<Span> spans) {
        private void add(double heightMetres, Span span) {
            heightsMetres.add(heightMetres);
            spans.add(span);
        }

        private double areaMetres2() {
            double area = 0;
            for (int i = 1; i < spans.size(); i++) {
                area += (spans.get(i).toMetres() - spans.get(i).fromMetres())
                        * (heightsMetres.get(i) - heightsMetres.get(i - 1));
            }
            return area;
        }
    }

    /// Copies the list.
    public Unrolled {
        rows = List.copyOf(rows);
    }

    /// Unrolls what is seen of a lamp.
    ///
    /// @param rows what is seen of it
    /// @param solid the thing's form
    /// @param radiusMetres at which it is unrolled; of no account for a box
    /// @return the image
    public static Unrolled of(List<Reflections.Row> rows, Solid solid, double radiusMetres) {
        return new Unrolled(rows.stream()
                .map(row -> new Row(
                        row.heightMetres(),
                        row.stretches().stream()
                                .flatMap(stretch -> spans(stretch, solid, radiusMetres).stream())
                                .toList()))
                .toList());
    }

    /// On a box what lies on its front face.
    private static List<Span> spans(Reflections.Stretch stretch, Solid solid, double radiusMetres) {
        if (solid instanceof Solid.Box box) {
            double front = -box.depthMetres() / 2 + ON_METRES;
            return stretch.from().y() < front && stretch.to().y() < front
                    ? List.of(new Span(
                            Math.min(stretch.from().x(), stretch.to().x()),
                            Math.max(stretch.from().x(), stretch.to().x())))
                    : List.of();
        }
        double one = angle(stretch.from());
        double other = one + Math.IEEEremainder(angle(stretch.to()) - one, 2 * Math.PI);
        double from = Math.min(one, other);
        double to = Math.max(one, other);
        List<Span> spans = new ArrayList<>();
        for (double turn = -2 * Math.PI; turn < 7; turn += 2 * Math.PI) {
            double left = Math.max(from + turn, -Math.PI);
            double right = Math.min(to + turn, Math.PI);
            if (left < right) {
                spans.add(new Span(left * radiusMetres, right * radiusMetres));
            }
        }
        spans.sort(Comparator.comparingDouble(Span::fromMetres));
        return spans;
    }

    private static double angle(Vec own) {
        return Math.atan2(own.x(), -own.y());
    }

    /// Tells whether nothing is seen of the lamp.
    ///
    /// @return whether no row has a stretch
    public boolean isEmpty() {
        return rows.stream().allMatch(row -> row.spans().isEmpty());
    }

    /// Tells whether another is the same on paper, each row as the nearest one there.
    ///
    /// @param other another image
    /// @return whether no edge differs by half a millimetre
    public boolean isLike(Unrolled other) {
        return rows.stream().allMatch(row -> isLike(row.spans(), other.at(row.heightMetres())));
    }

    private static boolean isLike(List<Span> one, List<Span> other) {
        return one.size() == other.size()
                && IntStream.range(0, one.size()).allMatch(i -> one.get(i).isLike(other.get(i)));
    }

    /// Gives what it takes of the row nearest to a height.
    ///
    /// @param heightMetres above the base
    /// @return from left to right
    public List<Span> at(double heightMetres) {
        return rows.stream()
                .min(Comparator.comparingDouble(row -> Math.abs(row.heightMetres() - heightMetres)))
                .map(Row::spans)
                .orElse(List.of());
    }

    /// Lists its connected parts.
    ///
    /// @return the largest first
    public List<Patch> listPatches() {
        List<Patch> patches = new ArrayList<>();
        List<Patch> open = List.of();
        for (Row row : rows) {
            List<Patch> next = new ArrayList<>();
            for (Span span : row.spans()) {
                Patch patch = goesOn(open, span, row.spans()).orElseGet(() -> {
                    Patch begun = new Patch(new ArrayList<>(), new ArrayList<>());
                    patches.add(begun);
                    return begun;
                });
                patch.add(row.heightMetres(), span);
                next.add(patch);
            }
            open = next;
        }
        return patches.stream()
                .filter(patch -> patch.spans().size() > 1)
                .sorted(Comparator.comparingDouble(Patch::areaMetres2).reversed())
                .toList();
    }

    /// The part below that a stretch alone goes on with.
    private static Optional<Patch> goesOn(List<Patch> open, Span span, List<Span> beside) {
        List<Patch> below = open.stream()
                .filter(patch -> patch.spans().getLast().touches(span))
                .toList();
        return below.size() == 1
                        && beside.stream()
                                        .filter(below.getFirst().spans().getLast()::touches)
                                        .count()
                                == 1
                ? Optional.of(below.getFirst())
                : Optional.empty();
    }
}
