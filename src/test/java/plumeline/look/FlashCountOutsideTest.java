package plumeline.look;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.quantity.FrameRate;
import plumeline.tidy.Outside;

/// Looks of a plan's cut counted frame by frame.
@Outside(
        source = "WCAG 2.2, success criterion 2.3.1: no more than three flashes, each a pair of changes, in any one"
                + " second; counted over every frame of the cut",
        kind = "standard, brute force")
final class FlashCountOutsideTest {
    private static final FrameRate FILM = new FrameRate(24, 1);

    private static List<CutLooks> even(int each, int looks) {
        return IntStream.range(0, looks)
                .mapToObj(i -> new CutLooks("s", i % 2 == 0 ? "a" : "b", each))
                .toList();
    }

    /// Half the most changes in any half-open second.
    private static double counted(FrameRate rate, List<CutLooks> looks) {
        List<String> frames = new ArrayList<>();
        looks.forEach(look -> IntStream.range(0, (int) look.frames()).forEach(_ -> frames.add(look.pass())));
        int second = (int) Math.ceil(rate.framesPerSecond());
        int most = 0;
        for (int from = 0; from < frames.size(); from++) {
            int changes = 0;
            for (int i = from; i < Math.min(frames.size(), from + second); i++) {
                changes += i > 0 && !frames.get(i).equals(frames.get(i - 1)) ? 1 : 0;
            }
            most = Math.max(most, changes);
        }
        return most / 2.0;
    }

    /// Three frames a look are four pairs at 24 fps; at 25 fps they are over four, and five frames are the least.
    @ParameterizedTest
    @CsvSource({
        "24, 3, 4, -1, 4",
        "24, 4, 3, 0, 4",
        "24, 5, 2.5, 1, 4",
        "24, 6, 2, 2, 4",
        "25, 3, 4.5, -2, 5",
        "25, 5, 2.5, 0, 5",
        "30, 5, 3, 0, 5",
        "60, 9, 3.5, -1, 10"
    })
    void evenLooks(int rate, int each, double pairs, long margin, long least) {
        FrameRate fps = new FrameRate(rate, 1);
        FlashCount count = new FlashCount(fps, even(each, 40));
        assertThat(count.pairs()).isEqualTo(pairs).isEqualTo(counted(fps, even(each, 40)));
        assertThat(count.margin()).isEqualTo(margin).isEqualTo(each - least);
        assertThat(count.leastFrames()).isEqualTo(least);
    }

    /// Whatever is cut: more than three pairs where the margin is below 0 and nowhere else; looks longer by a missing
    /// margin are at or under three.
    @Test
    void anyLooks_failWhereMoreThanThreePairsAre() {
        Random random = new Random(7);
        int failing = 0;
        for (int i = 0; i < 400; i++) {
            List<CutLooks> looks = new ArrayList<>();
            int longest = 2 + random.nextInt(9);
            for (int look = 0; look < 5 + random.nextInt(30); look++) {
                looks.add(new CutLooks("s", look % 2 == 0 ? "a" : "b", 1 + random.nextInt(longest)));
            }
            FlashCount count = new FlashCount(FILM, looks);
            assertThat(count.pairs()).isEqualTo(counted(FILM, looks));
            assertThat(count.margin() < 0).as("%s", looks).isEqualTo(counted(FILM, looks) > 3);
            failing += count.margin() < 0 ? 1 : 0;
            long lack = Math.max(0, -count.margin());
            List<CutLooks> longer = looks.stream()
                    .map(look -> new CutLooks("s", look.pass(), look.frames() + lack))
                    .toList();
            assertThat(counted(FILM, longer)).isLessThanOrEqualTo(3);
        }
        assertThat(failing).isBetween(50, 390);
    }

    @Test
    void justThreePairs_areTight_andSoIsWhatGoesOn() {
        assertThat(new FlashCount(FILM, even(4, 40)).findTight().orElseThrow()).startsWith("Just three pairs a second");
        assertThat(new FlashCount(FILM, even(6, 12)).findTight()).isEmpty();
        assertThat(new FlashCount(FILM, even(6, 30)).findTight().orElseThrow())
                .startsWith("It goes on for more than 5 s");
        assertThat(new FlashCount(FILM, even(24, 30)).findTight()).isEmpty();
    }

    /// Three frames a look, but only five of them: two pairs in all.
    @Test
    void fewLooks_areNoMoreThanTheyAre() {
        FlashCount few = new FlashCount(FILM, even(3, 5));
        assertThat(few.pairs()).isEqualTo(2);
        assertThat(few.margin()).isZero();
        assertThat(new FlashCount(FILM, even(12, 6)).margin()).isEqualTo(8);
        assertThat(few.listAttempts()).isEmpty();
    }

    @Test
    void attempts_areCounted() {
        assertThat(new FlashCount(FILM, even(3, 40)).listAttempts())
                .containsExactly("No look shorter than 5 frames: then the worst second has 2.5 pairs. 4 are the least,"
                        + " just at the limit or under it.");
    }
}
