package plumeline.pace;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.motion.Limits;
import plumeline.motion.Run;
import plumeline.plan.Kit;
import plumeline.plan.Move;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;
import plumeline.stage.MachineLimits;

/// A machine makes a move: its way, its speed, its acceleration and jerk.
///
/// Margin in % of the limit that is used most: what is left of it. One part each for speed, acceleration, jerk and way;
/// a limit that isn't known, or doesn't bear on the profile, is left whole. A trapezoid and an S-curve use the
/// acceleration that they are given; theirs counts by the least with which the way can be made in the time.
///
/// @param move the move
/// @param index its index in the shot
/// @param machine what makes it
/// @param papers the papers' unit of length
record Reachable(Move move, int index, Kit.Machine machine, PaperUnit papers) implements Gauge<Paced> {
    private static final double PERCENT = 100;

    /// What was computed may miss a limit that is used wholly by its last bits.
    private static final double ROUNDING = 1e-9;

    private static final List<String> KEYS = List.of("speed", "acceleration", "jerk", "travel");

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public boolean restsOnMarks() {
        return true;
    }

    @Override
    public boolean isOfWhole() {
        return true;
    }

    private Limits limits() {
        return MachineLimits.of(Optional.of(machine));
    }

    private Optional<Asked> findAsked(Paced at) {
        if (!move.kept().isEmpty()) {
            return Optional.of(Asked.ofPan(at, limits()));
        }
        Optional<Run> run = at.stage().findRun(index, at.si());
        return run.map(found -> Asked.of(found, limits()));
    }

    @Override
    public double[] parts(Paced at) {
        return findAsked(at)
                .map(asked -> new double[] {
                    left(asked.usage().speed()),
                    left(asked.usage().acceleration()),
                    left(asked.usage().jerk()),
                    left(asked.usage().travel())
                })
                .orElse(new double[] {PERCENT, PERCENT, PERCENT, PERCENT});
    }

    private static double left(double share) {
        double left = 1 - share;
        return Math.abs(left) < ROUNDING ? 0 : PERCENT * left;
    }

    @Override
    public Optional<String> findUnknown(Paced at) {
        if (KEYS.stream().noneMatch(machine.written()::has)) {
            return Optional.of("Not known: what " + machine.name() + " does at most. Write its travel, speed and"
                    + " acceleration.");
        }
        return move.kept().isEmpty() && at.stage().findRun(index, at.si()).isEmpty()
                ? Optional.of(
                        move.findTime().isEmpty()
                                ? "Not known: in which time " + move.name() + " goes. Write `in`, or `keys`."
                                : "Not known: how far " + move.name() + " goes.")
                : Optional.empty();
    }

    private Figures figures() {
        return new Figures(move.axis(), papers);
    }

    @Override
    public String standing(Paced at) {
        Asked asked = findAsked(at).orElseThrow();
        Figures figures = figures();
        List<String> words = new ArrayList<>();
        add(words, "speed", figures.speed(asked.speed()));
        if ((!move.isEven() || !move.kept().isEmpty()) && Double.isFinite(limits().acceleration())) {
            double least = asked.usage().acceleration() * limits().acceleration();
            boolean usesItAll = asked.acceleration() > least * (1 + ROUNDING);
            add(words, "acceleration", (usesItAll ? "at least " : "") + figures.acceleration(least));
        }
        if (asked.usage().jerk() > 0) {
            words.add("jerk " + Print.share(asked.usage().jerk(), 0) + " of what it does");
        }
        add(words, "travel", figures.way(asked.way()));
        return words.isEmpty()
                ? "Nothing that " + machine.name() + " is known to be limited in bears on " + move.name() + "."
                : move.name() + " asks of " + machine.name() + ": " + String.join(", ", words) + ".";
    }

    private void add(List<String> words, String key, String asked) {
        machine.written()
                .findQuantity(key)
                .ifPresent(most ->
                        words.add((key.equals("travel") ? "way" : key) + " " + asked + " of " + limit(key, most)));
    }

    private String limit(String key, Quantity most) {
        Figures figures = figures();
        String text = switch (key) {
            case "speed" -> figures.speed(most.si());
            case "acceleration" -> figures.acceleration(most.si());
            default -> figures.way(most.si());
        };
        return text + (most.origin() == Origin.TYPICAL ? " (typical: measure yours)" : "");
    }

    /// Within the machine's own ± it may not be made.
    @Override
    public Optional<String> findTight(Paced at) {
        double[] parts = parts(at);
        for (int i = 0; i < KEYS.size(); i++) {
            Optional<Quantity> most = machine.written().findQuantity(KEYS.get(i));
            if (most.isPresent() && most.get().halfWidthSi() > 0) {
                double share = 1 - parts[i] / PERCENT;
                double worst =
                        share * most.get().si() / (most.get().si() - most.get().halfWidthSi());
                if (worst > 1 + ROUNDING) {
                    return Optional.of("Within the ± of its " + KEYS.get(i) + " " + machine.name()
                            + " may not make it: run it with camera and cables on before you trust it.");
                }
            }
        }
        return Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        boolean isRunUpOpen = move.isEven()
                && move.kept().isEmpty()
                && !machine.written().has("acceleration")
                && !machine.written().has("jerk");
        Asked.Jump jump = findAsked(at).map(Asked::jump).orElse(Asked.Jump.NONE);
        if (jump.by() > 0) {
            return Optional.of("Its turn rate jumps by " + figures().speed(jump.by()) + " "
                    + Print.seconds(jump.seconds(), 2) + " after GO, where another edge of what it keeps becomes the"
                    + " outermost: the head lags there. Keep one thing, or fewer.");
        }
        return isRunUpOpen
                ? Optional.of("Its run-up isn't counted: write " + machine.name() + "'s acceleration.")
                : Optional.empty();
    }
}
