package plumeline.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;
import plumeline.quantity.FrameRate;
import plumeline.time.Timecode.Counting;

final class TimecodeTest {
    private static final Timecode DROP = new Timecode(new FrameRate(30_000, 1001), Counting.DROP);

    /// Every label of a day, at every rate, counted up by hands that know of no formula.
    @Test
    void everyFrameOfADay_hasTheLabelThatCountingComesTo_andBack() {
        int timecodes = 0;
        for (FrameRate rate : Timecode.rates()) {
            for (Counting counting : Counting.values()) {
                if (Timecode.find(rate, counting).isPresent()) {
                    countADay(Timecode.find(rate, counting).orElseThrow());
                    timecodes++;
                }
            }
        }
        assertThat(timecodes).isEqualTo(12);
    }

    private static void countADay(Timecode timecode) {
        int labels = (int) Math.round(timecode.rate().framesPerSecond());
        int left = timecode.counting() == Counting.NON_DROP ? 0 : labels == 30 ? 2 : 4;
        String tail = timecode.counting() == Counting.DROP ? ";" : ":";
        long frame = 0;
        long wrong = 0;
        for (int minute = 0; minute < 24 * 60; minute++) {
            String head = two(minute / 60) + ":" + two(minute % 60) + ":";
            for (int second = 0; second < 60; second++) {
                String here = head + two(second) + tail;
                int first = second == 0 && minute % 10 != 0 ? left : 0;
                for (int f = first; f < labels; f++) {
                    String label = timecode.label(frame);
                    boolean right = label.startsWith(here)
                            && label.charAt(9) == '0' + f / 10
                            && label.charAt(10) == '0' + f % 10
                            && timecode.read(label) instanceof Timecode.Meaning.Frame(long back)
                            && back == frame;
                    wrong += right ? 0 : 1;
                    frame++;
                }
            }
        }
        assertThat(wrong).as(timecode.toString()).isZero();
        assertThat(timecode.framesPerDay()).isEqualTo(frame);
    }

    private static String two(int number) {
        return number < 10 ? "0" + number : Integer.toString(number);
    }

    @Test
    void theClock_goesRound_bothWays() {
        long day = DROP.framesPerDay();
        assertThat(DROP.label(day)).isEqualTo("00:00:00;00");
        assertThat(DROP.label(day + 1800)).isEqualTo("00:01:00;02");
        assertThat(DROP.label(-1)).isEqualTo("23:59:59;29");
        assertThat(DROP.label(-day)).isEqualTo("00:00:00;00");
    }

    @Test
    void labelsThatDontExist_sayWhy() {
        checkNothing(
                DROP, "01:01:00;01", "is one of the labels that drop-frame leaves out: this minute begins with ;02");
        checkNothing(DROP, "24:00:00;00", "is no time of a clock, which ends at 23:59:59");
        checkNothing(DROP, "01:00:00;30", "has frame 30, and a second's last is 29");
        checkNothing(DROP, "1:00:00;00", "isn't two digits each of hours, minutes, seconds and frames: 01:00:00:00");
        checkNothing(DROP, "", "isn't two digits each of hours, minutes, seconds and frames: 01:00:00:00");
        checkNothing(
                new Timecode(new FrameRate(24, 1), Counting.NON_DROP),
                "01:00:00;00",
                "has a ; as drop-frame labels have, and here none are dropped");
    }

    private static void checkNothing(Timecode timecode, String label, String why) {
        assertThat(timecode.read(label)).isEqualTo(new Timecode.Meaning.Nothing(why));
    }

    @Test
    void colonsStandForSemicolons_whereLabelsAreDropped() {
        assertThat(DROP.read("00:01:00:02")).isEqualTo(new Timecode.Meaning.Frame(1800));
        assertThat(DROP.read("00;01;00;02")).isEqualTo(new Timecode.Meaning.Frame(1800));
        assertThat(DROP.read("00:01:00:00")).isInstanceOf(Timecode.Meaning.Nothing.class);
    }

    @Test
    void otherRates_haveNone() {
        assertThat(Timecode.find(new FrameRate(12, 1), Counting.NON_DROP)).isEmpty();
        assertThat(Timecode.find(new FrameRate(24, 1), Counting.DROP)).isEmpty();
        assertThatIllegalArgumentException()
                .isThrownBy(() -> new Timecode(new FrameRate(30, 1), Counting.DROP))
                .withMessage("no timecode: 30 fps, DROP");
    }
}
