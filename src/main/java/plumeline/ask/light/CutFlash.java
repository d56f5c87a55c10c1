package plumeline.ask.light;

import java.util.List;
import java.util.OptionalDouble;
import plumeline.flicker.CutFlashes;
import plumeline.flicker.FlashLimits;
import plumeline.quantity.FrameRate;

/// What `cut-flash` finds.
final class CutFlash {
    /// A change of luminance counts as met within this.
    private static final double NEAR = 1e-9;

    private CutFlash() {}

    /// What is asked.
    ///
    /// @param rate the timeline's rate
    /// @param looks the looks as they are cut
    /// @param ends whether it is known when they end
    /// @param luminances relative luminances in the order of the looks, round and round; empty where unknown
    /// @param isRed whether a look is a saturated red
    /// @param area what changes, share of the picture
    /// @param mostArea share of the picture up to which flashes don't count
    record Inputs(
            FrameRate rate,
            CutFlashes looks,
            Ends ends,
            List<Double> luminances,
            boolean isRed,
            double area,
            double mostArea) {
        Inputs {
            luminances = List.copyOf(luminances);
        }
    }

    /// Whether it is known when looks end.
    enum Ends {
        /// They do as listed or timed.
        TOLD,
        /// Nobody said.
        UNTOLD
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param pairs half the changes of look in the worst second
    /// @param flashes half the changes that count in the worst second, whatever their area
    /// @param sequenceSeconds how long changes that count follow each other; empty where the end isn't known
    record Found(Inputs inputs, double pairs, double flashes, OptionalDouble sequenceSeconds) {
        boolean isSmall() {
            return inputs.area <= inputs.mostArea * (1 + NEAR);
        }

        boolean isLong() {
            return !isSmall() && flashes > 0 && sequenceSeconds.orElse(0) > FlashLimits.SEQUENCE_SECONDS + NEAR;
        }

        boolean isJust() {
            return !isSmall() && flashes == FlashLimits.PAIRS;
        }

        boolean countsByLuminance() {
            return !inputs.isRed && !inputs.luminances.isEmpty();
        }

        /// How far from failing, by the limit that helps most, each as a share of itself.
        double margin() {
            double byArea = (inputs.mostArea - inputs.area) / inputs.mostArea;
            double byCount = (FlashLimits.PAIRS - pairs) / FlashLimits.PAIRS;
            double best = Math.max(isSmall() ? Math.max(0, byArea) : byArea, byCount);
            if (!countsByLuminance()) {
                return best;
            }
            double byFlashes = flashes > 0 ? (FlashLimits.PAIRS - flashes) / FlashLimits.PAIRS : best;
            return Math.max(Math.max(best, byFlashes), byLuminance());
        }

        private double byLuminance() {
            double least =
                    inputs.luminances.stream().mapToDouble(each -> each).min().orElse(0);
            double most =
                    inputs.luminances.stream().mapToDouble(each -> each).max().orElse(0);
            double alike = FlashLimits.CHANGE - NEAR - (most - least);
            double bright = least - FlashLimits.DARKER + NEAR;
            return Math.max(alike, bright) / FlashLimits.CHANGE;
        }
    }

    static Found answer(Inputs inputs) {
        double pairs = inputs.looks.pairs();
        boolean all = inputs.isRed || inputs.luminances.isEmpty();
        double sequence = all ? inputs.looks.sequenceSeconds() : inputs.looks.sequenceSeconds(inputs.luminances);
        return new Found(
                inputs,
                pairs,
                all ? pairs : inputs.looks.flashes(inputs.luminances),
                inputs.ends == Ends.TOLD ? OptionalDouble.of(sequence) : OptionalDouble.empty());
    }
}
