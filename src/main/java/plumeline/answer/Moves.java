package plumeline.answer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.answer.Given.Ends;

/// Moves the inputs that have a spread and answers again, to see what it does.
///
/// @param <I> the question's inputs
final class Moves<I> {
    /// The largest share of itself that an input is moved by to see its slope.
    private static final double MOST_MOVED = 0.05;

    private final Inquiry<I> inquiry;
    private final Given given;
    private final double[] settled;

    Moves(Inquiry<I> inquiry, Given given, double[] settled) {
        this.inquiry = inquiry;
        this.given = given;
        this.settled = settled;
    }

    /// Moves each input by itself, both ways; one way where the other is out of what is possible. For what may jump
    /// also to the very ends, and all at once, to where each criterion is likeliest to be least and most.
    void addTo(Spreads spreads, Map<String, Ends> inputs) {
        for (var entry : inputs.entrySet()) {
            Ends ends = entry.getValue();
            Spreads.Side below = below(entry.getKey(), ends);
            Spreads.Side above = above(entry.getKey(), ends);
            spreads.add(below, above, ends);
            if (spreads.mayJump()) {
                spreads.addOutcome(below.scale() == 1 ? below.draft() : moved(Map.of(entry.getKey(), ends.lowSi())));
                spreads.addOutcome(above.scale() == 1 ? above.draft() : moved(Map.of(entry.getKey(), ends.highSi())));
            }
        }
        if (!spreads.mayJump()) {
            return;
        }
        for (List<Spreads.Change> changes : spreads.changes()) {
            spreads.addOutcome(moved(together(changes, inputs, -1)));
            spreads.addOutcome(moved(together(changes, inputs, 1)));
        }
    }

    /// A half-width that is large against the value would leave the range of what is possible: then the slope is taken
    /// nearer. Nothing that can be 0 can be less.
    private Spreads.Side below(String path, Ends ends) {
        double half = ends.si() - ends.lowSi();
        double step = Math.min(half, MOST_MOVED * Math.abs(ends.si()));
        return step > 0
                ? new Spreads.Side(moved(Map.of(path, ends.si() - step)), half / step)
                : new Spreads.Side(Optional.empty(), 1);
    }

    private Spreads.Side above(String path, Ends ends) {
        double half = ends.highSi() - ends.si();
        double step = ends.si() == 0 ? half : Math.min(half, MOST_MOVED * Math.abs(ends.si()));
        return step > 0
                ? new Spreads.Side(moved(Map.of(path, ends.si() + step)), half / step)
                : new Spreads.Side(Optional.empty(), 1);
    }

    /// The answer with inputs moved; empty where that is refused.
    private Optional<Draft> moved(Map<String, Double> si) {
        Given there = given.moving(si);
        I inputs = inquiry.read(there);
        return there.problems().isEmpty() ? Optional.of(inquiry.vary(inputs, settled)) : Optional.empty();
    }

    /// Every input moved by its share in a criterion's half-width, which moves that by all of it.
    private static Map<String, Double> together(List<Spreads.Change> changes, Map<String, Ends> inputs, int sign) {
        double squares = 0;
        for (Spreads.Change each : changes) {
            squares += each.most(sign) * each.most(sign);
        }
        Map<String, Double> si = new HashMap<>();
        List<Ends> ends = new ArrayList<>(inputs.values());
        List<String> paths = new ArrayList<>(inputs.keySet());
        for (int i = 0; i < changes.size() && squares > 0; i++) {
            Spreads.Change change = changes.get(i);
            double share = Math.abs(change.most(sign)) / Math.sqrt(squares);
            double end = sign * change.below() > sign * change.above()
                    ? ends.get(i).lowSi()
                    : ends.get(i).highSi();
            si.put(paths.get(i), ends.get(i).si() + share * (end - ends.get(i).si()));
        }
        return si;
    }
}
