package plumeline.colour;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/// What colours a lamp reaches: in u'v' all within the smallest convex outline round its emitters, as lights mix along
/// straight lines there.
final class Gamut {
    /// Corners counter-clockwise, each once; two of a lamp whose emitters lie in a line, one of a single colour.
    private final List<Chromaticity> corners;

    Gamut(List<Primary> primaries) {
        List<Chromaticity> sorted = new ArrayList<>(
                primaries.stream().map(Primary::colour).distinct().toList());
        sorted.sort(Comparator.comparingDouble(Chromaticity::u).thenComparingDouble(Chromaticity::v));
        corners = half(sorted);
        List<Chromaticity> back = half(sorted.reversed());
        for (Chromaticity each : back.subList(1, Math.max(1, back.size() - 1))) {
            corners.add(each);
        }
    }

    /// One side of the outline, from the first to the last place.
    private static List<Chromaticity> half(List<Chromaticity> sorted) {
        List<Chromaticity> chain = new ArrayList<>();
        for (Chromaticity each : sorted) {
            while (chain.size() > 1 && left(chain.get(chain.size() - 2), chain.getLast(), each) <= 0) {
                chain.removeLast();
            }
            chain.add(each);
        }
        return chain;
    }

    /// How far a place lies to the left of a line, times its length.
    private static double left(Chromaticity from, Chromaticity to, Chromaticity place) {
        return (to.u() - from.u()) * (place.v() - from.v()) - (to.v() - from.v()) * (place.u() - from.u());
    }

    /// The place of the outline nearest to a colour.
    ///
    /// @param place the place
    /// @param along a step along the outline there
    /// @param room how far inside the colour is, in u'v'; < 0 outside
    record Border(Chromaticity place, Step along, double room) {}

    /// A direction in u'v'.
    ///
    /// @param u of length 1 together with v; 1 where there is no direction
    /// @param v of length 1 together with u
    record Step(double u, double v) {}

    Border nearest(Chromaticity colour) {
        Border best = onSide(colour, corners.getFirst(), corners.getFirst());
        boolean inside = corners.size() > 2;
        for (int i = 0; i < corners.size(); i++) {
            Chromaticity from = corners.get(i);
            Chromaticity to = corners.get((i + 1) % corners.size());
            Border here = onSide(colour, from, to);
            best = here.room() < best.room() ? here : best;
            inside &= left(from, to, colour) > 0;
        }
        return new Border(best.place(), best.along(), inside ? best.room() : -best.room());
    }

    private static Border onSide(Chromaticity colour, Chromaticity from, Chromaticity to) {
        double length = from.distance(to);
        if (length == 0) {
            return new Border(from, new Step(1, 0), from.distance(colour));
        }
        Step along = new Step((to.u() - from.u()) / length, (to.v() - from.v()) / length);
        double way = Math.clamp((colour.u() - from.u()) * along.u() + (colour.v() - from.v()) * along.v(), 0, length);
        Chromaticity place =
                way == length ? to : new Chromaticity(from.u() + way * along.u(), from.v() + way * along.v());
        return new Border(place, along, place.distance(colour));
    }
}
