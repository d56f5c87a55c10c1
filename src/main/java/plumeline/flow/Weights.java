package plumeline.flow;

import java.util.Collection;
import java.util.Map;
import java.util.TreeMap;
import plumeline.ranges.Ranges;

/// Shares of one whole at a few places of a field.
final class Weights {
    private final int length;
    private final TreeMap<Integer, Double> at = new TreeMap<>();

    Weights(int length) {
        this.length = length;
    }

    void put(int place, double weight) {
        Ranges.check(place >= 0 && place < length, "place", place, "in the field");
        if (weight > 0) {
            at.merge(place, weight, Double::sum);
        }
    }

    /// Makes them add up to one.
    void even() {
        double sum = 0;
        for (double weight : at.values()) {
            sum += weight;
        }
        Ranges.check(sum > 0, "water about the nozzle's mouth", sum, "more than none: it lies in a body");
        double whole = sum;
        at.replaceAll((_, weight) -> weight / whole);
    }

    /// The places that have a weight.
    Collection<Integer> places() {
        return at.keySet();
    }

    double greatest() {
        double greatest = 0;
        for (double weight : at.values()) {
            greatest = Math.max(greatest, weight);
        }
        return greatest;
    }

    /// Adds an amount to a field, by the weights.
    void add(float[] field, double amount) {
        for (Map.Entry<Integer, Double> each : at.entrySet()) {
            field[each.getKey()] += (float) (amount * each.getValue());
        }
    }
}
