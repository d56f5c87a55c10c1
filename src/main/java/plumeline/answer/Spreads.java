package plumeline.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft.Criterion;

/// Adds up what each spread input does to an answer, to first order: root sum of squares of the changes at the ends of
/// its middle 80 %, to the law's own interval where the answer has one.
final class Spreads {
    private final Draft draft;
    private final double[] lowSquares;
    private final double[] highSquares;
    private final double[] lows;
    private final double[] highs;
    private final boolean[] open;
    private final List<List<Change>> changes = new ArrayList<>();
    private int inputs;
    private boolean guessed;

    Spreads(Draft draft) {
        this.draft = draft;
        int count = draft.items().size();
        lowSquares = new double[count];
        highSquares = new double[count];
        lows = new double[count];
        highs = new double[count];
        open = new boolean[count];
        for (int i = 0; i < count; i++) {
            double value = number(draft, i).orElse(0);
            lows[i] = value;
            highs[i] = value;
            if (draft.items().get(i).value() instanceof Value.Spread own) {
                lowSquares[i] = square(own.value() - own.low());
                highSquares[i] = square(own.high() - own.value());
                lows[i] = own.low();
                highs[i] = own.high();
            }
        }
        for (int c = 0; c < draft.criteria().size(); c++) {
            changes.add(new ArrayList<>());
        }
    }

    /// An input moved one way.
    ///
    /// @param draft the answer there; empty where it can't be
    /// @param scale the input's 80 % half-width that way over what it was moved by
    record Side(Optional<Draft> draft, double scale) {}

    /// What an input does to a value at the ends of its middle 80 %.
    ///
    /// @param below at its low end
    /// @param above at its high end
    record Change(double below, double above) {
        /// The most that it changes one way; 0 where it doesn't change that way.
        double most(int sign) {
            return sign * Math.max(0, Math.max(sign * below, sign * above));
        }
    }

    /// Adds what one input does.
    void add(Side below, Side above, Given.Ends ends) {
        inputs++;
        guessed |= !ends.even();
        if (below.draft().isEmpty() && above.draft().isEmpty()) {
            Arrays.fill(open, true);
            changes.forEach(each -> each.add(new Change(0, 0)));
            return;
        }
        Draft low = below.draft().orElse(draft);
        Draft high = above.draft().orElse(draft);
        for (int i = 0; i < lowSquares.length; i++) {
            OptionalDouble value = number(draft, i);
            OptionalDouble least = number(low, i);
            OptionalDouble most = number(high, i);
            if (value.isEmpty()) {
                continue;
            }
            if (least.isEmpty() || most.isEmpty()) {
                open[i] = true;
                continue;
            }
            Change change =
                    change(value.getAsDouble(), least.getAsDouble(), most.getAsDouble(), below, above, ends.even());
            lowSquares[i] += square(change.most(-1));
            highSquares[i] += square(change.most(1));
        }
        for (int c = 0; c < changes.size(); c++) {
            changes.get(c)
                    .add(change(
                            draft.criteria().get(c).margin(),
                            low.criteria().get(c).margin(),
                            high.criteria().get(c).margin(),
                            below,
                            above,
                            ends.even()));
        }
    }

    /// A ± changes by the slope across it, both ways alike.
    private static Change change(double value, double low, double high, Side below, Side above, boolean even) {
        if (!even) {
            return new Change((low - value) * below.scale(), (high - value) * above.scale());
        }
        boolean both = below.draft().isPresent() && above.draft().isPresent();
        double scale = below.draft().isPresent() ? below.scale() : above.scale();
        double half = (high - low) * scale / (both ? 2 : 1);
        return new Change(-half, half);
    }

    private static OptionalDouble number(Draft draft, int item) {
        return switch (draft.items().get(item).value()) {
            case Value.Number(double number, String _) -> OptionalDouble.of(number);
            case Value.Spread(double number, String _, double _, double _) -> OptionalDouble.of(number);
            case Value.Numbers _, Value.Word _ -> OptionalDouble.empty();
        };
    }

    private static double square(double value) {
        return value * value;
    }

    /// Whether some value may jump.
    boolean mayJump() {
        return draft.items().stream().anyMatch(Spreads::jumps);
    }

    private static boolean jumps(Item item) {
        return item.course() instanceof Course.Jumping;
    }

    /// For each criterion what each input does to it, in the order in which they were added.
    List<List<Change>> changes() {
        return changes;
    }

    /// Adds what comes of it where inputs are within their intervals.
    void addOutcome(Optional<Draft> there) {
        for (int i = 0; i < lows.length && there.isPresent(); i++) {
            switch (there.get().items().get(i).value()) {
                case Value.Number(double number, String _) -> addOutcome(i, number, number);
                case Value.Spread own -> addOutcome(i, own.low(), own.high());
                case Value.Numbers _, Value.Word _ ->
                    open[i] |= jumps(draft.items().get(i));
            }
        }
    }

    private void addOutcome(int item, double low, double high) {
        lows[item] = Math.min(lows[item], low);
        highs[item] = Math.max(highs[item], high);
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < lowSquares.length; i++) {
            Item item = draft.items().get(i);
            items.add(
                    switch (item.value()) {
                        case Value.Number(double number, String unit) -> item.with(value(i, number, unit));
                        case Value.Spread(double number, String unit, double _, double _)
                        when !(item.course() instanceof Course.Whole) -> item.with(value(i, number, unit));
                        case Value.Spread _, Value.Numbers _, Value.Word _ -> item;
                    });
        }
        return items;
    }

    private Value value(int item, double number, String unit) {
        double low = number - Math.sqrt(lowSquares[item]);
        double high = number + Math.sqrt(highSquares[item]);
        return switch (draft.items().get(item).course()) {
            case Course.Straight(), Course.Whole() -> value(item, number, low, high, unit);
            case Course.Jumping() -> value(item, number, lows[item], highs[item], unit);
            case Course.OfLaw law -> {
                double down = law.down(number, Math.sqrt(lowSquares[item]));
                yield value(item, number, down, law.up(number, Math.sqrt(highSquares[item])), unit);
            }
            case Course.Bent bent -> {
                double one = bent.applyAsDouble(low);
                double other = bent.applyAsDouble(high);
                double turn = low < bent.at() && high > bent.at() ? bent.at() : one;
                double least = Math.min(turn, Math.min(one, other));
                double most = Math.max(turn, Math.max(one, other));
                yield value(item, bent.applyAsDouble(number), least, most, unit);
            }
        };
    }

    private Value value(int item, double number, double low, double high, String unit) {
        boolean matters = high - low > 2e-9 * Math.abs(number);
        return open[item] || !matters ? new Value.Number(number, unit) : new Value.Spread(number, unit, low, high);
    }

    private double half(int criterion) {
        double squares = 0;
        for (Change each : changes.get(criterion)) {
            squares += square(each.most(-1));
        }
        return Math.sqrt(squares);
    }

    Verdict verdict() {
        Verdict verdict = draft.best();
        for (int c = 0; c < changes.size(); c++) {
            double margin = draft.criteria().get(c).margin();
            if (margin < 0) {
                return Verdict.FAILS;
            }
            if (margin < half(c) && verdict.compareTo(Verdict.TIGHT) > 0) {
                verdict = Verdict.TIGHT;
            }
        }
        return verdict;
    }

    Notes notes() {
        Notes notes = draft.notes();
        for (int c = 0; c < changes.size(); c++) {
            Criterion criterion = draft.criteria().get(c);
            if (criterion.margin() >= 0 && criterion.margin() < half(c)) {
                notes = notes.withBecause("Tight: " + criterion.what()
                        + " is enough with the values as given, but not over all of its 80 % interval.");
            }
        }
        if (inputs > 0) {
            notes = notes.withBecause("low and high bound 80 %: each ± (95 %)"
                    + (guessed ? " and each range that is assumed" : "")
                    + " moved by itself, the changes added as a root sum of squares.");
        }
        List<Item> items = items();
        for (int i = 0; i < open.length; i++) {
            String name = items.get(i).name();
            if (open[i]) {
                notes = notes.withBecause(
                        name + " has no interval: within the spread given it may be endless or none.");
            } else if (inputs > 0 && jumps(items.get(i)) && items.get(i).value() instanceof Value.Spread) {
                notes = notes.withBecause(name + "'s low and high are what it comes to at those ends, one input or all"
                        + " of them moved.");
            }
        }
        return notes;
    }
}
