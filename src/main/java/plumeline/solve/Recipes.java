package plumeline.solve;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.DoubleStream;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.want.Wants;

/// What else could be let go so that a failing want about ink holds: more or less of it, a softer or harder squeeze;
/// one change at a time, the nearest first, each judged anew with all wants that hold.
final class Recipes {
    /// How many times more or less is tried.
    private static final List<Double> RATIOS =
            List.of(0.9, 1.1, 0.8, 1.25, 0.7, 1.4, 0.6, 1.6, 0.5, 2.0, 0.4, 2.5, 0.33, 3.0, 0.25, 4.0);

    private static final double MILLILITRES = 1e6;

    private final Plan plan;
    private final Shot shot;
    private final List<WantLine> filmWants;
    private final Wants.Elsewhere elsewhere;

    Recipes(Plan plan, Shot shot, List<WantLine> filmWants, Wants.Elsewhere elsewhere) {
        this.plan = plan;
        this.shot = shot;
        this.filmWants = filmWants;
        this.elsewhere = elsewhere;
    }

    private static boolean isAboutInk(String word) {
        return switch (word) {
            case "ink_reaches", "clear_until", "veiled_by", "see_through" -> true;
            default -> false;
        };
    }

    /// What to try for a failing want, in sentences.
    ///
    /// @param failing the want
    /// @param judged the shot as it is
    /// @param si where its marks stand
    List<String> attempts(Judged.Line failing, Judged judged, double[] si) {
        if (!isAboutInk(failing.line().word()) || !(shot.findRelease().orElse(null) instanceof Release.OfInk release)) {
            return List.of();
        }
        double[] parts = judged.parts(si);
        List<String> held = judged.lines().stream()
                .filter(line -> line.isComputed() && line.parts().allMatch(part -> parts[part] >= 0))
                .map(Judged.Line::id)
                .toList();
        List<String> attempts = new ArrayList<>();
        for (Change change : changes(release)) {
            change.steps()
                    .filter(value -> holds(release, change, value, failing.id(), held, si))
                    .findFirst()
                    .ifPresent(value -> attempts.add(change.sentence(value)));
        }
        return attempts;
    }

    /// One thing of a release that may be otherwise.
    ///
    /// @param key its key
    /// @param now what it is, in its unit
    /// @param step what a hand sets, in its unit
    /// @param unit the unit
    private record Change(String key, double now, double step, String unit) {
        DoubleStream steps() {
            return RATIOS.stream()
                    .mapToDouble(ratio -> Math.max(step, Math.rint(now * ratio / step) * step))
                    .filter(value -> Math.abs(value - now) > step / 2)
                    .distinct();
        }

        String text(double value) {
            return String.format(Locale.ROOT, "%.3f %s", value, unit);
        }

        String sentence(double value) {
            String values = said(value) + " instead of " + said(now);
            return switch (key) {
                case "volume" -> "Let go " + values + ".";
                case "squeeze_time" -> "Squeeze over " + values + (value > now ? " (softer)." : " (harder).");
                default -> "Push it at " + values + (value < now ? " (softer)." : " (harder).");
            };
        }

        private String said(double value) {
            return Print.number(value, 1) + " " + unit;
        }
    }

    /// Readings of takes know nothing of another squeeze; of the amount only how murky the water gets.
    private List<Change> changes(Release.OfInk release) {
        List<Change> changes = new ArrayList<>();
        boolean isLaw = InkRelease.of(shot) instanceof InkRelease.Known known
                && !(known.basis() instanceof InkRelease.Basis.Read);
        release.written()
                .findQuantity("volume")
                .ifPresent(volume -> changes.add(new Change("volume", volume.si() * MILLILITRES, 0.5, "ml")));
        Optional<Quantity> speed = release.written().findQuantity("speed");
        if (isLaw && speed.isPresent()) {
            changes.add(new Change("speed", speed.get().si() * 1000, 10, "mm/s"));
        } else if (isLaw) {
            double squeeze = release.written()
                    .findQuantity("squeeze_time")
                    .map(Quantity::si)
                    .orElse(InkRelease.USUAL_SQUEEZE_SECONDS);
            changes.add(new Change("squeeze_time", squeeze, 0.1, "s"));
        }
        return changes;
    }

    private boolean holds(
            Release.OfInk release, Change change, double value, String failing, List<String> held, double[] si) {
        var other = new Release.OfInk(
                release.ink(), release.at(), release.written().with(change.key(), change.text(value)));
        Judged there = Judged.of(plan, shot.withRelease(other), filmWants, elsewhere);
        double[] parts = there.parts(si);
        return there.lines().stream()
                .filter(line -> line.id().equals(failing) || held.contains(line.id()))
                .allMatch(line -> line.isComputed() && line.parts().allMatch(part -> parts[part] >= 0));
    }
}
