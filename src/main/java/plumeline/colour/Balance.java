package plumeline.colour;

import java.util.ArrayList;
import java.util.List;

/// The linear programme of a mixture: most lumens `Σ dₖ Yₖ` with drives from 0 to 1 whose pulls balance, `Σ dₖ aₖ = 0`.
///
/// By duality the most is the least of `g(p) = Σ max(0, Yₖ − p·aₖ)` over prices p in the plane. g is convex and made of
/// flat pieces, so its least lies at a corner, where two emitters (one, where all pull along a line) are worth just
/// what they cost: all corners are looked at. There each other emitter is fully on where it is worth more than it costs
/// and off where less, and those two balance the rest. Emitters that are worth the same are told apart by a billionth,
/// the first one most.
final class Balance {
    private static final double APART = 1e-9;

    private final List<Pull> pulls;

    /// An emitter at full drive.
    ///
    /// @param u how it pulls the mixture off the wanted colour along one axis
    /// @param v along the other
    /// @param lumens what it gives, lm, > 0
    record Pull(double u, double v, double lumens) {
        double worth(Price price) {
            return lumens - price.u * u - price.v * v;
        }
    }

    /// What a pull costs, in lumens a unit of it.
    record Price(double u, double v) {}

    private record Corner(Price price, List<Integer> free) {}

    Balance(List<Pull> pulls) {
        this.pulls = new ArrayList<>();
        for (int i = 0; i < pulls.size(); i++) {
            Pull each = pulls.get(i);
            this.pulls.add(new Pull(each.u, each.v, each.lumens * (1 + APART / (i + 2))));
        }
    }

    List<Double> brightest() {
        Corner best = new Corner(new Price(0, 0), List.of());
        double least = Double.POSITIVE_INFINITY;
        for (Corner corner : corners()) {
            double cost = 0;
            for (int i = 0; i < pulls.size(); i++) {
                cost += corner.free.contains(i) ? 0 : Math.max(0, pulls.get(i).worth(corner.price));
            }
            if (cost < least) {
                best = corner;
                least = cost;
            }
        }
        return drives(best);
    }

    private List<Corner> corners() {
        List<Corner> corners = new ArrayList<>();
        boolean plane = pulls.stream().anyMatch(each -> each.v != 0);
        for (int i = 0; i < pulls.size(); i++) {
            Pull one = pulls.get(i);
            if (!plane && one.u != 0) {
                corners.add(new Corner(new Price(one.lumens / one.u, 0), List.of(i)));
            }
            for (int j = i + 1; plane && j < pulls.size(); j++) {
                Pull other = pulls.get(j);
                double across = one.u * other.v - one.v * other.u;
                if (across != 0) {
                    Price price = new Price(
                            (one.lumens * other.v - other.lumens * one.v) / across,
                            (other.lumens * one.u - one.lumens * other.u) / across);
                    corners.add(new Corner(price, List.of(i, j)));
                }
            }
        }
        return corners.isEmpty() ? List.of(new Corner(new Price(0, 0), List.of())) : corners;
    }

    private List<Double> drives(Corner corner) {
        List<Double> drives = new ArrayList<>();
        double u = 0;
        double v = 0;
        for (int i = 0; i < pulls.size(); i++) {
            boolean on = !corner.free.contains(i) && pulls.get(i).worth(corner.price) > 0;
            drives.add(on ? 1.0 : 0.0);
            u -= on ? pulls.get(i).u : 0;
            v -= on ? pulls.get(i).v : 0;
        }
        if (corner.free.size() == 1) {
            int i = corner.free.getFirst();
            drives.set(i, Math.clamp(u / pulls.get(i).u, 0, 1));
        } else if (corner.free.size() == 2) {
            Pull one = pulls.get(corner.free.getFirst());
            Pull other = pulls.get(corner.free.getLast());
            double across = one.u * other.v - one.v * other.u;
            drives.set(corner.free.getFirst(), Math.clamp((u * other.v - v * other.u) / across, 0, 1));
            drives.set(corner.free.getLast(), Math.clamp((one.u * v - one.v * u) / across, 0, 1));
        }
        return drives;
    }
}
