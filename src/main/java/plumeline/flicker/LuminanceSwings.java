package plumeline.flicker;

import java.util.ArrayList;
import java.util.List;

/// Swings of luminance up and down, look after look, that count as halves of a flash.
///
/// A swing is a rise or a fall of [FlashLimits#CHANGE] or more between neighbouring peaks and valleys; smaller ones to
/// and fro are part of a larger one. It is counted at the look with which it has come so far.
final class LuminanceSwings {
    /// Luminances count as so far apart within this.
    private static final double NEAR = 1e-9;

    private final List<Swing> swings = new ArrayList<>();
    private double least;
    private double most;

    private LuminanceSwings(double first) {
        least = first;
        most = first;
    }

    /// A rise or a fall.
    ///
    /// @param look the look at which it is counted, from 0
    /// @param from the luminance it starts from
    /// @param to the luminance it has come to in the end
    private record Swing(int look, double from, double to) {
        boolean isRise() {
            return to > from;
        }

        boolean isDarkEnough() {
            return Math.min(from, to) < FlashLimits.DARKER - NEAR;
        }
    }

    /// Finds the looks that bring half a flash.
    ///
    /// @param levels each look's relative luminance, at least one
    /// @return the looks, from 0, rising
    static List<Integer> looks(List<Double> levels) {
        LuminanceSwings found = new LuminanceSwings(levels.getFirst());
        for (int look = 1; look < levels.size(); look++) {
            found.add(look, levels.get(look));
        }
        return found.swings.stream()
                .filter(Swing::isDarkEnough)
                .map(Swing::look)
                .toList();
    }

    private void add(int look, double level) {
        if (swings.isEmpty()) {
            most = Math.max(most, level);
            least = Math.min(least, level);
            if (most - least >= FlashLimits.CHANGE - NEAR) {
                swings.add(level == most ? new Swing(look, least, level) : new Swing(look, most, level));
            }
            return;
        }
        Swing last = swings.getLast();
        boolean goesOn = last.isRise() ? level > last.to : level < last.to;
        if (goesOn) {
            swings.set(swings.size() - 1, new Swing(last.look, last.from, level));
        } else if (Math.abs(level - last.to) >= FlashLimits.CHANGE - NEAR) {
            swings.add(new Swing(look, last.to, level));
        }
    }
}
