package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.geom.Vec;
import plumeline.light.Tube;

/// What of a tube is turned to a place that sees each part of it by another way, as faces of a tank bend them: between
/// the two lines along which such ways graze it, and its ends' arcs there.
final class BentTube {
    /// The lines are found at so many places along it.
    private static final int PLACES = 9;

    private static final int ARC_PIECES = 16;

    /// A line is looked for from the side of the tube, and again from where it was found: its way changes little.
    private static final int ROUNDS = 3;

    private final Tube tube;
    private final Function<Vec, Optional<Vec>> findWay;

    private BentTube(Tube tube, Function<Vec, Optional<Vec>> findWay) {
        this.tube = tube;
        this.findWay = findWay;
    }

    /// Gives its outline.
    ///
    /// @param findWay the way from a place on to the tank; empty where there is none
    /// @return its corners; empty where none of it has a way
    static List<Vec> outline(Tube tube, Function<Vec, Optional<Vec>> findWay) {
        return new BentTube(tube, findWay).outline();
    }

    /// A round of it, and which part of that is seen.
    ///
    /// @param at its middle
    /// @param toward who sees it, of length 1
    /// @param aside square to that
    /// @param from angle from there on, below 0
    /// @param to angle to there
    private record Ring(Vec at, Vec toward, Vec aside, double from, double to) {
        Vec corner(double radius, double angle) {
            return at.plus(toward.times(radius * Math.cos(angle))).plus(aside.times(radius * Math.sin(angle)));
        }
    }

    private List<Vec> outline() {
        List<Optional<Ring>> found = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            found.add(ring(place(i)));
        }
        if (found.stream().allMatch(Optional::isEmpty)) {
            return List.of();
        }
        List<Ring> rings = new ArrayList<>();
        for (int i = 0; i < PLACES; i++) {
            Ring like = nearest(found, i);
            rings.add(new Ring(place(i), like.toward(), like.aside(), like.from(), like.to()));
        }
        double radius = tube.radiusMetres();
        List<Vec> corners = new ArrayList<>();
        addArc(corners, rings.getLast(), 1);
        for (Ring ring : rings.subList(1, rings.size() - 1).reversed()) {
            corners.add(ring.corner(radius, ring.to()));
        }
        addArc(corners, rings.getFirst(), -1);
        for (Ring ring : rings.subList(1, rings.size() - 1)) {
            corners.add(ring.corner(radius, ring.from()));
        }
        return corners;
    }

    private Vec place(int i) {
        return tube.middle().plus(tube.axis().times(tube.lengthMetres() * (i / (PLACES - 1.0) - 0.5)));
    }

    /// What has no way is cut off later: till then it is seen as what has one beside it.
    private static Ring nearest(List<Optional<Ring>> found, int at) {
        for (int away = 0; away < PLACES; away++) {
            for (int i : new int[] {at - away, at + away}) {
                if (i >= 0 && i < PLACES && found.get(i).isPresent()) {
                    return found.get(i).get();
                }
            }
        }
        throw new IllegalArgumentException("none has a way");
    }

    private void addArc(List<Vec> corners, Ring ring, int sign) {
        for (int i = 0; i <= ARC_PIECES; i++) {
            double share = (sign > 0 ? i : ARC_PIECES - i) / (double) ARC_PIECES;
            corners.add(ring.corner(tube.radiusMetres(), ring.from() + share * (ring.to() - ring.from())));
        }
    }

    private Optional<Ring> ring(Vec at) {
        Optional<Vec> toward = findWay.apply(at).flatMap(this::square);
        if (toward.isEmpty()) {
            return Optional.empty();
        }
        Vec aside = tube.axis().cross(toward.get());
        return Optional.of(new Ring(
                at, toward.get(), aside, angle(at, toward.get(), aside, -1), angle(at, toward.get(), aside, 1)));
    }

    /// Where ways graze it on a side.
    private double angle(Vec at, Vec toward, Vec aside, int sign) {
        Vec out = aside.times(sign);
        for (int i = 0; i < ROUNDS; i++) {
            Optional<Vec> way =
                    findWay.apply(at.plus(out.times(tube.radiusMetres()))).flatMap(this::square);
            if (way.isEmpty()) {
                break;
            }
            out = tube.axis().cross(way.get()).times(sign);
        }
        return Math.atan2(out.dot(aside), out.dot(toward));
    }

    /// What of a way is square to the axis.
    private Optional<Vec> square(Vec way) {
        Vec out = way.minus(tube.axis().times(way.dot(tube.axis())));
        return out.dot(out) > 0 ? Optional.of(out.unit()) : Optional.empty();
    }
}
