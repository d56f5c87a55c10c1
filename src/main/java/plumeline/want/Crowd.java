package plumeline.want;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Kit;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// All that stands in a shot, at the instants that count: what each comes nearest to.
final class Crowd {
    /// What one comes nearest to.
    ///
    /// @param other the other
    /// @param metres their clearance, metres, without end where nothing else stands
    record Near(Air.Standing other, double metres) {}

    /// An instant, and which of all stand elsewhere than an instant before; at first all do.
    private record Instant(Air now, BitSet moved) {}

    /// Two at an instant, in the order of all.
    private record Pair(Air now, int first, int second) {
        int other(int own) {
            return own == first ? second : first;
        }
    }

    private final Recall recall;
    private final List<Air.Standing> all;
    private final List<Instant> instants = new ArrayList<>();

    /// Gathers what stands.
    ///
    /// @param scenes the instants in order, at least one
    /// @param tank the tank's walls
    /// @param barrel the lens's barrel
    /// @param recall what was asked before
    Crowd(List<Scene> scenes, Optional<TankWalls> tank, Optional<Kit.Barrel> barrel, Recall recall) {
        this.recall = recall;
        all = new Air(scenes.getFirst(), tank, barrel).all();
        for (Scene scene : scenes) {
            Air now = new Air(scene, tank, barrel);
            instants.add(new Instant(now, moved(now)));
        }
    }

    private BitSet moved(Air now) {
        BitSet moved = new BitSet(all.size());
        for (int i = 0; i < all.size(); i++) {
            moved.set(i, instants.isEmpty() || !now.isAsAt(instants.getLast().now(), all.get(i)));
        }
        return moved;
    }

    /// Finds what one comes nearest to in all the instants: the pair that can be nearest is measured first, then those
    /// that can still be nearer.
    Near nearest(Air.Standing standing) {
        int own = all.indexOf(standing);
        List<Pair> pairs = changing(own);
        if (pairs.isEmpty()) {
            return new Near(standing, Double.POSITIVE_INFINITY);
        }
        double[] atLeast = pairs.stream().mapToDouble(this::atLeastMetres).toArray();
        int first = Parts.worstOf(atLeast);
        Near nearest = measured(pairs.get(first), own);
        for (int i = 0; i < atLeast.length; i++) {
            if (i != first && atLeast[i] < nearest.metres()) {
                Near near = measured(pairs.get(i), own);
                nearest = near.metres() < nearest.metres() ? near : nearest;
            }
        }
        return nearest;
    }

    /// One and each other, once and again whenever one of the two has moved.
    private List<Pair> changing(int own) {
        List<Pair> pairs = new ArrayList<>();
        for (Instant instant : instants) {
            boolean hasMoved = instant.moved().get(own);
            for (int i = 0; i < all.size(); i++) {
                if (i != own && (hasMoved || instant.moved().get(i))) {
                    pairs.add(new Pair(instant.now(), Math.min(own, i), Math.max(own, i)));
                }
            }
        }
        return pairs;
    }

    private double atLeastMetres(Pair pair) {
        return pair.now().atLeastMetres(all.get(pair.first()), all.get(pair.second()));
    }

    private Near measured(Pair pair, int own) {
        double metres = recall.apartMetres(pair.now(), all.get(pair.first()), all.get(pair.second()));
        return new Near(all.get(pair.other(own)), metres);
    }
}
