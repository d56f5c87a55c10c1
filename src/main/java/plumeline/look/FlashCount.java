package plumeline.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.flicker.CutFlashes;
import plumeline.flicker.FlashLimits;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Print;

/// Looks that are cut one after the other, counted against the limits on flashes: every change of look counts,
/// whatever it changes.
///
/// **Source:** limits as in [FlashLimits].
///
/// @param rate the film's rate
/// @param looks the looks, at least two
public record FlashCount(FrameRate rate, List<CutLooks> looks) {
    /// Changes of which more than these in a second are more than three pairs.
    private static final int CHANGES = (int) (2 * FlashLimits.PAIRS);

    private static final double NEAR = 1e-9;

    /// Copies the list.
    public FlashCount {
        looks = List.copyOf(looks);
    }

    private CutFlashes flashes() {
        return new CutFlashes(
                rate, looks.stream().map(look -> Math.toIntExact(look.frames())).toList());
    }

    /// Gives half the most changes of look in any half-open second.
    ///
    /// @return pairs, a multiple of ½
    public double pairs() {
        return flashes().pairs();
    }

    /// Gives the fewest frames a look with which even looks stay at or under three pairs.
    ///
    /// @return frames
    public long leastFrames() {
        return CutFlashes.leastFrames(rate);
    }

    /// Gives by how many frames each look of the fastest stretch could be shorter, or must be longer, for three pairs;
    /// of too few looks for three pairs, how much longer the shortest is than looks that alternate for ever may be.
    ///
    /// @return frames a look, below 0 where there are more than three pairs
    public long margin() {
        List<Long> at = new ArrayList<>();
        long frame = 0;
        for (CutLooks look : looks.subList(0, looks.size() - 1)) {
            frame += look.frames();
            at.add(frame);
        }
        long shortest = Long.MAX_VALUE;
        for (int i = 0; i + CHANGES < at.size(); i++) {
            shortest = Math.min(shortest, at.get(i + CHANGES) - at.get(i));
        }
        if (shortest < Long.MAX_VALUE) {
            long second = Math.ceilDiv(rate.numerator(), rate.denominator());
            return Math.floorDiv(shortest - second, (long) CHANGES);
        }
        long least = looks.stream().mapToLong(CutLooks::frames).min().orElseThrow();
        return Math.max(0, least - leastFrames());
    }

    /// Tells whether just three pairs are in the worst second.
    ///
    /// @return true where no more is left
    public boolean isJust() {
        return pairs() == FlashLimits.PAIRS;
    }

    /// Tells whether changes follow each other for longer than five seconds.
    ///
    /// @return true where that may be a risk within all other limits
    public boolean isLong() {
        return flashes().sequenceSeconds() > FlashLimits.SEQUENCE_SECONDS + NEAR;
    }

    /// Says what was counted.
    ///
    /// @return sentences
    public String standing() {
        double pairs = pairs();
        String most = "The worst second has " + changes(2 * pairs) + " of look, " + pairs(pairs)
                + "; three are the most" + (isJust() ? ", and no more is left." : ".");
        return most + " Looks that alternate need " + leastFrames() + " frames each at " + rate.toText() + "."
                + (isLong()
                        ? " Changes follow each other for "
                                + Print.seconds(flashes().sequenceSeconds(), 1)
                                + ": more than 5 s may be a risk within all other limits."
                        : "");
    }

    private static String changes(double count) {
        return Print.number(count, 0) + (count == 1 ? " change" : " changes");
    }

    private static String pairs(double count) {
        return Print.number(count, 1) + (count == 1 ? " pair" : " pairs");
    }

    /// Finds why it may be too much all the same.
    ///
    /// @return a sentence
    public Optional<String> findTight() {
        if (isJust()) {
            return Optional.of("Just three pairs a second: one frame less anywhere is over the limit.");
        }
        return isLong()
                ? Optional.of("It goes on for more than 5 s: rest on one look for a second before that.")
                : Optional.empty();
    }

    /// Lists how long looks would have to be, counted anew.
    ///
    /// @return sentences
    public List<String> listAttempts() {
        if (pairs() < FlashLimits.PAIRS) {
            return List.of();
        }
        long advised = leastFrames() + 1;
        FlashCount longer = new FlashCount(
                rate,
                looks.stream()
                        .map(look -> new CutLooks(look.shot(), look.pass(), Math.max(advised, look.frames())))
                        .toList());
        return List.of("No look shorter than " + advised + " frames: then the worst second has " + pairs(longer.pairs())
                + ". " + leastFrames() + " are the least, just at the limit or under it.");
    }

    /// What is always said of flashes.
    public static final String CAUTION =
            "Every change of look is counted, whatever it changes. WCAG 2.2 (2.3.1) and ITU-R BT.1702 are no"
                    + " permission: the flash test on the finished film decides. Warn whoever watches the cut.";
}
