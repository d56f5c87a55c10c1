package plumeline.look;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.colour.Chromaticity;
import plumeline.colour.Seen;
import plumeline.flicker.FlashLimits;
import plumeline.flicker.SaturatedRed;
import plumeline.lit.Instant;
import plumeline.quantity.Print;
import plumeline.stage.Gauge;

/// Cutting between looks is no flash by the limits.
///
/// Margin in frames a look over the least. How bright and how red the looks are at the product is told and acquits of
/// nothing: what else is in the picture isn't known.
///
/// @param stretches where the film cuts between them, at least one
/// @param looks the looks, where they are told and not all of the film's cuts are meant
record FlashSafe(List<FlashCount> stretches, List<LookAt> looks) implements Gauge<Looks> {
    /// White paper throws back so much: common practice.
    private static final double PAPER_SHARE = 0.9;

    FlashSafe {
        stretches = List.copyOf(stretches);
        looks = List.copyOf(looks);
    }

    private FlashCount worst() {
        return stretches.stream()
                .max(Comparator.comparingDouble(FlashCount::pairs).thenComparingLong(count -> -count.margin()))
                .orElseThrow();
    }

    @Override
    public String unit() {
        return "frames";
    }

    @Override
    public double[] parts(Looks at) {
        return new double[] {
            stretches.stream().mapToLong(FlashCount::margin).min().orElseThrow()
        };
    }

    @Override
    public String standing(Looks at) {
        return worst().standing();
    }

    @Override
    public Optional<String> findTight(Looks at) {
        return stretches.stream().flatMap(count -> count.findTight().stream()).findFirst();
    }

    @Override
    public Optional<String> findCaution(Looks at) {
        String red = isRed(at) ? "A look is a saturated red against the other: red flashes are worse. " : "";
        return Optional.of(red + findBrightness(at).map(words -> words + " ").orElse("") + FlashCount.CAUTION);
    }

    @Override
    public List<String> listAttempts(Looks at) {
        return worst().listAttempts();
    }

    @Override
    public boolean isSafety() {
        return true;
    }

    /// How bright white paper at the product shows in each look, of full.
    private Optional<String> findBrightness(Looks at) {
        List<String> words = new ArrayList<>();
        List<Double> levels = new ArrayList<>();
        for (LookAt look : looks) {
            Instant now = look.instant(at);
            var there = look.there(now);
            if (there.unknown().isPresent() || there.neededLux().isEmpty()) {
                return Optional.empty();
            }
            double level = Math.min(
                    1, PAPER_SHARE * there.light().lux() / there.neededLux().getAsDouble());
            levels.add(level);
            words.add((level < 1 ? Print.number(level, 2) + " of full in " : "full in ") + look.pass());
        }
        if (levels.size() < 2) {
            return Optional.empty();
        }
        double least = levels.stream().mapToDouble(each -> each).min().orElseThrow();
        double most = levels.stream().mapToDouble(each -> each).max().orElseThrow();
        boolean counts = most - least >= FlashLimits.CHANGE && least < FlashLimits.DARKER;
        return Optional.of("White paper at " + looks.getFirst().name() + " shows at " + String.join(", ", words)
                + (counts
                        ? ": each change is half a flash there."
                        : ": by luminance no flash there, if the rest of the picture is alike too."));
    }

    private boolean isRed(Looks at) {
        List<SaturatedRed.Linear> colours = new ArrayList<>();
        for (LookAt look : looks) {
            look.colour(look.instant(at)).findColour().map(FlashSafe::linear).ifPresent(colours::add);
        }
        for (int i = 1; i < colours.size(); i++) {
            if (SaturatedRed.counts(colours.get(i - 1), colours.get(i))) {
                return true;
            }
        }
        return false;
    }

    private static SaturatedRed.Linear linear(Chromaticity colour) {
        List<Double> parts = Seen.linear(Seen.brightest(colour.at(1)));
        return new SaturatedRed.Linear(parts.get(0), parts.get(1), parts.get(2));
    }
}
