package plumeline.flicker;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.quantity.FrameRate;

/// Looks that alternate by cuts, counted in frames.
///
/// A look is on for whole frames; a change is the first frame of the next. Changes into the first look and out of the
/// last aren't counted. A second is half open: of two changes just a second apart one is in it.
public final class CutFlashes {
    private static final int CHANGES_A_PAIR = 2;

    private final FrameRate rate;
    private final List<Integer> frames;

    /// Takes looks in the order in which they are cut.
    ///
    /// @param rate the timeline's exact rate
    /// @param frames each look's frames, each ≥ 1, at least one look
    public CutFlashes(FrameRate rate, List<Integer> frames) {
        if (frames.isEmpty() || frames.stream().anyMatch(each -> each < 1)) {
            throw new IllegalArgumentException("looks have a frame or more each, are " + frames);
        }
        this.rate = rate;
        this.frames = List.copyOf(frames);
    }

    /// Makes looks of equal length that go on for long enough to count any second of an endless alternation.
    ///
    /// @param rate the timeline's exact rate
    /// @param framesALook each look's frames, ≥ 1
    /// @param kinds how many looks differ before they come round again, ≥ 1
    /// @return the looks
    public static CutFlashes endless(FrameRate rate, int framesALook, int kinds) {
        long changes = Math.ceilDiv(secondFrames(rate), (long) framesALook);
        int looks = Math.toIntExact(changes + 2L * kinds + 2);
        return new CutFlashes(
                rate, IntStream.range(0, looks).mapToObj(_ -> framesALook).toList());
    }

    /// Gives the fewest frames a look with which equal looks that alternate stay at or under three pairs in any second.
    ///
    /// @param rate the timeline's exact rate
    /// @return frames, ≥ 1
    public static long leastFrames(FrameRate rate) {
        return Math.ceilDiv(secondFrames(rate), (long) (CHANGES_A_PAIR * FlashLimits.PAIRS));
    }

    /// Two changes are within a half-open second where fewer frames than this lie between them: a second's frames,
    /// rounded up.
    private static long secondFrames(FrameRate rate) {
        return Math.ceilDiv(rate.numerator(), rate.denominator());
    }

    /// Gives half the largest number of changes in any half-open second.
    ///
    /// @return pairs of changes, a multiple of ½
    public double pairs() {
        return most(changes());
    }

    /// Every change of look, whatever it changes.
    private List<Integer> changes() {
        return IntStream.range(1, frames.size()).boxed().toList();
    }

    /// Gives half the largest number of changes of luminance in any half-open second that count by [FlashLimits]: rises
    /// and falls of 0.10 or more, the darker side below 0.80.
    ///
    /// @param luminances relative luminances of the looks, 0 to 1, taken round and round; at least one
    /// @return pairs of changes, a multiple of ½
    public double flashes(List<Double> luminances) {
        return most(LuminanceSwings.looks(levels(luminances)));
    }

    /// Gives how long the longest sequence of changes of look lasts in which none is a second or more after the last,
    /// with the looks before and behind it where they are shorter than that.
    ///
    /// @return s; 0 without changes
    public double sequenceSeconds() {
        return longest(changes());
    }

    /// Gives how long the longest sequence of changes of luminance that count lasts.
    ///
    /// @param luminances as for [#flashes]
    /// @return s; 0 without such changes
    public double sequenceSeconds(List<Double> luminances) {
        return longest(LuminanceSwings.looks(levels(luminances)));
    }

    private List<Double> levels(List<Double> luminances) {
        return IntStream.range(0, frames.size())
                .mapToObj(look -> luminances.get(look % luminances.size()))
                .toList();
    }

    private double most(List<Integer> looks) {
        List<Long> at = starts(looks);
        long second = secondFrames(rate);
        int most = 0;
        int first = 0;
        for (int last = 0; last < at.size(); last++) {
            while (at.get(last) - at.get(first) >= second) {
                first++;
            }
            most = Math.max(most, last - first + 1);
        }
        return (double) most / CHANGES_A_PAIR;
    }

    /// The looks on both sides of the changes count too, where they are shorter than a second.
    private double longest(List<Integer> looks) {
        List<Long> at = starts(looks);
        long second = secondFrames(rate);
        long longest = 0;
        long from = 0;
        for (int i = 0; i < at.size(); i++) {
            if (i == 0 || at.get(i) - at.get(i - 1) >= second) {
                from = at.get(i) - restless(looks.get(i) - 1);
            }
            longest = Math.max(longest, at.get(i) + restless(looks.get(i)) - from);
        }
        return rate.secondsOf((double) longest);
    }

    /// A look's frames; none where it is a rest of a second or more.
    private long restless(int look) {
        return frames.get(look) < secondFrames(rate) ? frames.get(look) : 0;
    }

    /// The frames at which looks begin.
    private List<Long> starts(List<Integer> looks) {
        long[] sums = new long[frames.size() + 1];
        for (int i = 0; i < frames.size(); i++) {
            sums[i + 1] = sums[i] + frames.get(i);
        }
        List<Long> at = new ArrayList<>();
        looks.forEach(look -> at.add(sums[look]));
        return at;
    }
}
