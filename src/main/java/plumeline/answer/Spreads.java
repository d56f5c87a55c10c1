package plumeline.answer;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft.Criterion;

/// Adds up what each spread input does to an answer, to first order: root sum of squares of half the change over ± its
/// 95 % half-width, brought to the middle 80 %.
final class Spreads {
    /// 80 % half-width over 95 % half-width of a normal spread: 1.2816/1.9600 (from its quantiles).
    private static final double EIGHTY_OVER_NINETY_FIVE = 1.2815515655446004 / 1.959963984540054;

    private final Draft draft;
    private final double[] squares;
    private final double[] criterionSquares;
    private final boolean[] open;
    private int inputs;

    Spreads(Draft draft) {
        this.draft = draft;
        squares = new double[draft.items().size()];
        criterionSquares = new double[draft.criteria().size()];
        open = new boolean[squares.length];
    }

    /// Adds what one input does.
    ///
    /// @param below the answer with the input moved down; empty where it can't be
    /// @param above the answer with the input moved up; empty where it can't be
    /// @param scale 95 % half-width over what the input was moved by
    void add(List<Draft> below, List<Draft> above, double scale) {
        inputs++;
        if (below.isEmpty() && above.isEmpty()) {
            Arrays.fill(open, true);
            return;
        }
        Draft low = below.isEmpty() ? draft : below.getFirst();
        Draft high = above.isEmpty() ? draft : above.getFirst();
        double each = below.isEmpty() || above.isEmpty() ? 2 * scale : scale;
        for (int i = 0; i < squares.length; i++) {
            Value value = draft.items().get(i).value();
            if (value instanceof Value.Number
                    && low.items().get(i).value() instanceof Value.Number least
                    && high.items().get(i).value() instanceof Value.Number most) {
                squares[i] += square(least.value(), most.value(), each);
            } else if (value instanceof Value.Number) {
                open[i] = true;
            }
        }
        for (int c = 0; c < criterionSquares.length; c++) {
            criterionSquares[c] += square(
                    low.criteria().get(c).margin(), high.criteria().get(c).margin(), each);
        }
    }

    private static double square(double low, double high, double scale) {
        double half = (high - low) / 2 * scale;
        return half * half;
    }

    private static double half(double squares) {
        return EIGHTY_OVER_NINETY_FIVE * Math.sqrt(squares);
    }

    List<Item> items() {
        List<Item> items = new ArrayList<>();
        for (int i = 0; i < squares.length; i++) {
            Item item = draft.items().get(i);
            items.add(
                    item.value() instanceof Value.Number number && !open[i]
                            ? item.with(interval(number, item.law(), half(squares[i])))
                            : item);
        }
        return items;
    }

    private static Value interval(Value.Number number, Item.Law law, double half) {
        double value = number.value();
        return switch (law) {
            case Item.Law.Exact() ->
                half > 1e-9 * Math.abs(value)
                        ? new Value.Spread(value, number.unit(), value - half, value + half)
                        : number;
            case Item.Law.Within(double low, double high) -> {
                double down = Math.exp(Math.hypot(Math.log(value / low), half / value));
                double up = Math.exp(Math.hypot(Math.log(high / value), half / value));
                yield new Value.Spread(value, number.unit(), value / down, value * up);
            }
        };
    }

    Verdict verdict() {
        Verdict verdict = draft.best();
        for (int c = 0; c < criterionSquares.length; c++) {
            double margin = draft.criteria().get(c).margin();
            if (margin < 0) {
                return Verdict.FAILS;
            }
            if (margin < half(criterionSquares[c]) && verdict.compareTo(Verdict.TIGHT) > 0) {
                verdict = Verdict.TIGHT;
            }
        }
        return verdict;
    }

    Notes notes() {
        Notes notes = draft.notes();
        for (int c = 0; c < criterionSquares.length; c++) {
            Criterion criterion = draft.criteria().get(c);
            if (criterion.margin() >= 0 && criterion.margin() < half(criterionSquares[c])) {
                notes = notes.withBecause("Tight: " + criterion.what()
                        + " is enough with the values as given, but not over all of its 80 % interval.");
            }
        }
        if (inputs > 0) {
            notes = notes.withBecause(
                    "low and high bound 80 %: each ± (95 %) moved by itself, the changes added as a root sum"
                            + " of squares.");
        }
        for (int i = 0; i < open.length; i++) {
            if (open[i]) {
                notes = notes.withBecause(draft.items().get(i).name()
                        + " has no interval: within the spread given it may be endless or none.");
            }
        }
        return notes;
    }
}
