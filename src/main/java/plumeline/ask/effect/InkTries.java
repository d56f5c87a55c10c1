package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.DoubleFunction;
import plumeline.answer.Words;
import plumeline.ink.Arrival;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.ink.Prediction;
import plumeline.ink.Release;
import plumeline.quantity.Print;
import plumeline.roots.Roots;
import plumeline.water.Water;

/// What `ink` tells to try, each tried here first: one change at a time that brings the front when it is wanted, or
/// down at all.
final class InkTries {
    /// A change is told where the front then comes this near to the time wanted, share of it.
    static final double NEAR_SHARE = 0.05;

    /// Into so many parts bounds are divided to look between.
    private static final int PARTS = 64;

    private final InkTake.Found found;
    private final InkTake.Inputs inputs;
    private final Descent descent;
    private final Release release;
    private final Words words;
    private final List<String> attempts = new ArrayList<>();

    InkTries(InkTake.Found found, Words words) {
        this.found = found;
        this.inputs = found.inputs();
        this.descent = inputs.descent();
        this.release = descent.release();
        this.words = words;
    }

    List<String> list() {
        tryTime();
        tryRow();
        tryReach();
        tryReadings();
        return attempts;
    }

    /// What brings the front to the thing's top at the time wanted, one change at a time.
    private void tryTime() {
        if (inputs.wantedSeconds().isEmpty()
                || !(found.top() instanceof Arrival.At(Estimate seconds))
                || !(found.law() instanceof Prediction.Reached)) {
            return;
        }
        double wanted = inputs.wantedSeconds().getAsDouble();
        if (Math.abs(seconds.value() / wanted - 1) < NEAR_SHARE) {
            return;
        }
        int before = attempts.size();
        tryHeight(wanted);
        tryPush(wanted);
        tryVolume(wanted);
        tryDensity(wanted);
        if (attempts.size() == before) {
            attempts.add(
                    seconds.value() > wanted
                            ? "No single change of nozzle, squeeze, volume or density brings it so soon: want it at "
                                    + InkInquiry.seconds(seconds.high()) + " or later."
                            : "No single change of nozzle, squeeze, volume or density brings it so late: let it go "
                                    + InkInquiry.seconds(wanted - seconds.value()) + " later.");
        }
    }

    private void tryHeight(double wanted) {
        double deepest = 0.9 * inputs.topMetres();
        find(wanted, new Steps(-deepest, 0, 1e-3), descent.heightMetres(), descent::withHeight)
                .ifPresent(height -> attempts.add("Set the tip " + words.length(-height) + " under the surface"
                        + then(descent.withHeight(height))));
    }

    private void tryPush(double wanted) {
        DoubleFunction<Descent> change = time -> descent.with(release.withSqueeze(time));
        double now = release.seconds() == 0 ? 1 : release.seconds();
        find(wanted, new Steps(Math.max(0.1, now / 4), Math.max(1, now * 10), 0.1), now, change)
                .ifPresent(time -> attempts.add("Squeeze over " + Print.seconds(time, 1) + then(change.apply(time))));
    }

    private void tryVolume(double wanted) {
        double volume = release.volumeMetres3();
        DoubleFunction<Descent> change = v -> descent.with(release.withVolume(v));
        find(wanted, new Steps(Math.max(5e-7, volume / 4), volume * 4, 5e-7), volume, change)
                .ifPresent(v -> attempts.add(
                        "Take " + Print.number(v * 1e6, 1) + " ml at the same speed" + then(change.apply(v))));
    }

    private void tryDensity(double wanted) {
        DoubleFunction<Descent> change = reduced -> descent.with(release.withReducedGravity(reduced));
        double percent = Water.GRAVITY_METRES_PER_SECOND2 / 100;
        find(
                        wanted,
                        new Steps(0.5 * percent, 20 * percent, 0.1 * percent),
                        release.reducedGravityMetresPerSecond2(),
                        change)
                .ifPresent(reduced -> attempts.add("Make the ink "
                        + Print.share(reduced / Water.GRAVITY_METRES_PER_SECOND2, 1)
                        + " denser than the water, by salt or sugar" + then(change.apply(reduced))));
    }

    private String then(Descent changed) {
        OptionalDouble seconds = InkTake.findSecondsWith(found, changed);
        return ": then it is there after " + InkInquiry.seconds(seconds.orElseThrow()) + ".";
    }

    /// What a hand can set.
    ///
    /// @param low the least
    /// @param high the most
    /// @param step from one setting to the next, as all the values SI
    private record Steps(double low, double high, double step) {
        double at(int part) {
            return low + (high - low) * part / PARTS;
        }

        double rounded(double value) {
            return Math.clamp(Math.rint(value / step), Math.ceil(low / step), Math.floor(high / step)) * step;
        }
    }

    /// Finds the setting, nearest to the present one, for which the front comes at the time wanted; empty where none
    /// does. Looks where the time passes the one wanted, at the settings to either side.
    private OptionalDouble find(double wanted, Steps steps, double now, DoubleFunction<Descent> change) {
        OptionalDouble best = OptionalDouble.empty();
        for (int part = 0; part < PARTS; part++) {
            double from = steps.at(part);
            double to = steps.at(part + 1);
            double there = to;
            if (early(change.apply(from), wanted) * early(change.apply(to), wanted) <= 0) {
                boolean isEarly = early(change.apply(from), wanted) > 0;
                there = Roots.end(at -> early(change.apply(at), wanted) > 0 == isEarly, from, to);
            }
            for (double beside : new double[] {-0.5, 0.5}) {
                double set = steps.rounded(there + beside * steps.step);
                boolean isNear = Math.abs(early(change.apply(set), wanted)) < NEAR_SHARE * wanted;
                if (isNear && (best.isEmpty() || Math.abs(set - now) < Math.abs(best.getAsDouble() - now))) {
                    best = OptionalDouble.of(set);
                }
            }
        }
        return best;
    }

    /// How long before the time wanted the front would be there; endless where it never is.
    private double early(Descent changed, double wanted) {
        OptionalDouble seconds = InkTake.findSecondsWith(found, changed);
        return seconds.isPresent() ? wanted - seconds.getAsDouble() : Double.NEGATIVE_INFINITY;
    }

    /// What a slot needs for a law: a squeeze in half of the way's time.
    private void tryRow() {
        if (!(found.law() instanceof Prediction.Unknown unknown) || unknown.limit() != Prediction.Limit.ROW_SECONDS) {
            return;
        }
        for (double seconds = Math.floor(release.seconds() * 10 - 1) / 10; seconds > 0.05; seconds -= 0.1) {
            Descent changed = descent.with(release.withSqueeze(seconds));
            OptionalDouble there = InkTake.findSecondsWith(found, changed);
            if (there.isPresent()) {
                attempts.add("Squeeze over " + Print.seconds(seconds, 1) + then(changed));
                return;
            }
        }
    }

    /// What makes light ink come down at all.
    private void tryReach() {
        if (!(found.top() instanceof Arrival.Never)) {
            return;
        }
        double speed = Math.max(0.05, release.speedMetresPerSecond());
        for (int i = 0; i < 40 && speed < 5; i++) {
            speed *= 1.1;
            double rounded = Math.ceil(speed * 100) / 100;
            OptionalDouble seconds = InkTake.findSecondsWith(found, descent.with(release.withSpeed(rounded)));
            if (seconds.isPresent()) {
                attempts.add("Push it at " + words.length(rounded) + "/s or faster: then it is there after "
                        + InkInquiry.seconds(seconds.getAsDouble()) + ", if only just.");
                break;
            }
        }
        attempts.add("Make the ink denser than the water, by salt or sugar.");
    }

    private void tryReadings() {
        if (inputs.readings().size() < 2) {
            attempts.add("Film one take with a ruler beside it and count frames: two readings (front: [[time, depth],"
                    + " …]) are worth more than any law.");
        }
    }
}
