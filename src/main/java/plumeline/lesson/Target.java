package plumeline.lesson;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.take.Take;

/// Where a shot's ink is wanted, and when.
///
/// @param place the place in a few words, such as `bottle's top`
/// @param depthMetres its depth below the still surface, m
/// @param time when it is wanted there
public record Target(String place, double depthMetres, Time time) {
    /// How far off a time may be where no want says, share of it: about what takes differ by, four times in five.
    public static final double WITHIN_SHARE = 0.2;

    /// When a front is wanted.
    public sealed interface Time {
        /// No want says.
        record Any() implements Time {}

        /// At a time.
        ///
        /// @param seconds from the first ink, s
        /// @param withinSeconds how far off it may be, s
        record At(double seconds, double withinSeconds) implements Time {}
    }

    /// Finds a shot's target: what its first want `ink_reaches` says; else the deepest reading of takes.
    ///
    /// @param shot the shot
    /// @param takes takes of it
    /// @return the target; empty where neither tells
    public static Optional<Target> find(Shot shot, List<Take> takes) {
        return shot.wants().stream()
                .filter(want -> want.word().equals("ink_reaches"))
                .findFirst()
                .flatMap(want -> wanted(shot, want))
                .or(() -> deepest(takes));
    }

    private static Optional<Target> deepest(List<Take> takes) {
        return takes.stream()
                .flatMap(take -> take.fronts().stream())
                .map(Take.Front::depth)
                .max(Comparator.comparingDouble(Quantity::si))
                .map(depth -> new Target("the deepest reading", depth.si(), new Time.Any()));
    }

    private static Optional<Target> wanted(Shot shot, WantLine want) {
        Optional<Double> surface = ShotRelease.findSurfaceMetres(shot);
        Optional<Placed> placed = want.subjects().stream().findFirst().flatMap(name -> shot.findPlaced(name.name()));
        if (surface.isEmpty() || placed.isEmpty()) {
            return Optional.empty();
        }
        String part = want.written().findWord("part").orElse("top");
        double share = switch (part) {
            case "base" -> 0;
            case "middle" -> 0.5;
            default -> 1;
        };
        double after = want.written().findQuantity("after").orElseThrow().si();
        double within = want.written().findQuantity("within").map(Quantity::si).orElse(WITHIN_SHARE * after);
        return findBase(placed.get())
                .map(base -> surface.get()
                        - base
                        - share * height(placed.get().thing().form()))
                .filter(depth -> depth > 0 && after > 0)
                .map(depth -> new Target(placed.get().name() + "'s " + part, depth, new Time.At(after, within)));
    }

    /// The height of its base over the table; of a free mark nothing is known.
    private static Optional<Double> findBase(Placed placed) {
        if (placed.at().z().isEmpty()) {
            return Optional.of(0.0);
        }
        return placed.at()
                .z()
                .filter(Mark.Fixed.class::isInstance)
                .map(mark -> ((Mark.Fixed) mark).quantity().si());
    }

    private static double height(Thing.Form form) {
        return switch (form) {
            case Thing.Form.Profile profile ->
                profile.stations().getLast().height().si();
            case Thing.Form.Box box -> box.height().si();
            case Thing.Form.Cylinder cylinder -> cylinder.height().si();
        };
    }
}
