package plumeline.ask;

import java.util.ArrayList;
import java.util.List;

/// Adds up what each spread input does to an answer, to first order: root sum of squares of half the change over ±
/// its 95 %
/// half-width, brought to the middle 80 %.
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

    void add(Draft below, Draft above, double scale) {
        inputs++;
        for (int i = 0; i < squares.length; i++) {
            Value value = draft.items().get(i).value();
            if (value instanceof Value.Number
                    && below.items().get(i).value() instanceof Value.Number low
                    && above.items().get(i).value() instanceof Value.Number high) {
                squares[i] += square(low.value(), high.value(), scale);
            } else if (value instanceof Value.Number) {
                open[i] = true;
            }
        }
        for (int c = 0; c < criterionSquares.length; c++) {
            criterionSquares[c] +=
                    square(below.criteria().get(c).margin(), above.criteria().get(c).margin(), scale);
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
            if (item.value() instanceof Value.Number number && !open[i] && matters(i, number.value())) {
                double half = half(squares[i]);
                double low = number.value() - half;
                items.add(new Item(
                        item.name(), new Value.Spread(number.value(), number.unit(), low, number.value() + half)));
            } else {
                items.add(item);
            }
        }
        return items;
    }

    private boolean matters(int item, double value) {
        return squares[item] > 0 && half(squares[item]) > 1e-9 * Math.abs(value);
    }

    Verdict verdict() {
        Verdict verdict = draft.best();
        for (int c = 0; c < criterionSquares.length; c++) {
            double margin = draft.criteria().get(c).margin();
            if (margin < 0) {
                return Verdict.FAILS;
            }
            if (margin < half(criterionSquares[c])) {
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
                notes = notes.withBecause("With the values as given " + criterion.what()
                        + " is enough; over the 80 % interval it isn't always.");
            }
        }
        if (inputs > 0) {
            notes = notes.withBecause(
                    "low and high bound 80 %: each ± (95 %) moved by itself, the changes added as a root sum"
                            + " of squares.");
        }
        for (int i = 0; i < open.length; i++) {
            if (open[i]) {
                notes = notes.withBecause(draft.items().get(i).name() + " may be endless within the spread given.");
            }
        }
        return notes;
    }
}
