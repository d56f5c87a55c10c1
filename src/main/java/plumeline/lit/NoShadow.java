package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import plumeline.light.Patch;
import plumeline.plan.Shot;

/// What stands there takes no light off a thing's label, or off its side toward the camera.
///
/// Margin in %: what may be missing less the most that is missing at any of 5 by 5 places, of the light that were there
/// without it.
///
/// @param shot the shot
/// @param of what may throw it: indices of things, the lens by −1
/// @param upon the things on which it may not fall
record NoShadow(Shot shot, Set<Integer> of, List<LitThing> upon) implements Measure {
    /// Less isn't seen on a surface of one tone: common practice.
    private static final double SEEN_PERCENT = 3;

    private static final double PERCENT = 100;

    NoShadow {
        of = Set.copyOf(of);
        upon = List.copyOf(upon);
    }

    @Override
    public String unit() {
        return "%";
    }

    /// The most that is missing on a thing, of which lamp.
    private record Worst(double percent, int lamp) {}

    private Worst worst(Instant now, LitThing thing) {
        Lighting lighting = now.lighting();
        double worst = 0;
        int lamp = 0;
        for (Patch patch : thing.spots(now)) {
            double[] with = lighting.lux(patch);
            double[] without = lighting.lux(patch, hider -> !of.contains(hider));
            double all = 0;
            double missing = 0;
            int most = 0;
            for (int i = 0; i < with.length; i++) {
                all += without[i];
                missing += without[i] - with[i];
                most = without[i] - with[i] > without[most] - with[most] ? i : most;
            }
            if (all > 0 && PERCENT * missing / all > worst) {
                worst = PERCENT * missing / all;
                lamp = most;
            }
        }
        return new Worst(worst, lamp);
    }

    @Override
    public double[] parts(Instant now) {
        return upon.stream()
                .mapToDouble(thing -> SEEN_PERCENT - worst(now, thing).percent())
                .toArray();
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        List<Patch> all = new ArrayList<>();
        upon.forEach(thing -> all.addAll(thing.spots(now)));
        return Unlit.find(now.lighting(), all);
    }

    @Override
    public String standing(Instant now) {
        LitThing thing = upon.getFirst();
        Worst worst = worst(now, thing);
        for (LitThing other : upon.subList(1, upon.size())) {
            Worst there = worst(now, other);
            if (there.percent() > worst.percent()) {
                worst = there;
                thing = other;
            }
        }
        String name = thing.name();
        if (worst.percent() < 0.5) {
            return "No shadow of it falls on " + name + ".";
        }
        return "It takes up to " + Math.round(worst.percent()) + " % of the light off " + name + ", mostly "
                + shot.lights().get(worst.lamp()).name() + "'s; "
                + (worst.percent() > SEEN_PERCENT ? "that is seen." : "that isn't seen.");
    }

    @Override
    public Optional<String> findTight(Instant now) {
        return Optional.empty();
    }
}
