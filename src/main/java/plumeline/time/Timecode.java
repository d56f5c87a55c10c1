package plumeline.time;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.FrameRate;

/// Timecode by SMPTE ST 12-1: labels `HH:MM:SS:FF` of a clock of 24 hours, for the frames of one rate.
///
/// Labels count whole frames, FF from 0 to the nominal rate less one; at 1000/1001 of a whole rate an hour of labels is
/// longer than an hour. Drop-frame keeps it near: the first labels of each minute (two at 29.97, four at 59.94) don't
/// exist, but for every tenth minute's. Frames are never dropped. It is defined for 29.97 and 59.94 only. With N labels
/// a second, d dropped a minute and m minutes `frame = N · (3600 H + 60 M + S) + F − d · (m − floor(m / 10))`.
///
/// **Source:** SMPTE ST 12-1:2014, from memory; the rates are those which an open library for timeline interchange
/// lists from it.
///
/// @param rate one of [#rates]
/// @param counting drop-frame for 30000/1001 and 60000/1001 only
public record Timecode(FrameRate rate, Counting counting) {
    private static final int LENGTH = "00:00:00:00".length();
    private static final int DAY_SECONDS = 24 * 3600;
    private static final int DAY_MINUTES = 24 * 60;
    private static final FrameRate NTSC = new FrameRate(30_000, 1001);
    private static final FrameRate TWICE_NTSC = new FrameRate(60_000, 1001);
    private static final List<FrameRate> RATES = List.of(
            new FrameRate(24_000, 1001),
            new FrameRate(24, 1),
            new FrameRate(25, 1),
            NTSC,
            new FrameRate(30, 1),
            new FrameRate(48_000, 1001),
            new FrameRate(48, 1),
            new FrameRate(50, 1),
            TWICE_NTSC,
            new FrameRate(60, 1));

    /// Which labels there are.
    public enum Counting {
        /// All.
        NON_DROP,
        /// All but the first of each minute that is no tenth.
        DROP
    }

    /// What a label means.
    public sealed interface Meaning {
        /// A frame.
        ///
        /// @param frame its number from 00:00:00:00, 0
        record Frame(long frame) implements Meaning {}

        /// Nothing: no such label exists.
        ///
        /// @param why why not, as it follows the label
        record Nothing(String why) implements Meaning {}
    }

    /// Checks that there is such a timecode.
    public Timecode {
        if (!RATES.contains(rate) || counting == Counting.DROP && !canDrop(rate)) {
            throw new IllegalArgumentException("no timecode: " + rate.toText() + ", " + counting);
        }
    }

    /// Lists the rates that have timecode.
    ///
    /// @return the rates, rising
    public static List<FrameRate> rates() {
        return RATES;
    }

    /// Tells whether drop-frame is defined for a rate.
    ///
    /// @param rate any rate
    /// @return true for 30000/1001 and 60000/1001
    public static boolean canDrop(FrameRate rate) {
        return rate.equals(NTSC) || rate.equals(TWICE_NTSC);
    }

    /// Finds a rate's timecode.
    ///
    /// @param rate any rate
    /// @param counting which labels there are
    /// @return the timecode; nothing where the rate has none, or none that drops
    public static Optional<Timecode> find(FrameRate rate, Counting counting) {
        boolean exists = RATES.contains(rate) && (counting == Counting.NON_DROP || canDrop(rate));
        return exists ? Optional.of(new Timecode(rate, counting)) : Optional.empty();
    }

    /// Gives how many labels a full second has.
    ///
    /// @return the rate, rounded up to a whole number
    public int labelsPerSecond() {
        return (int) ((rate.numerator() + rate.denominator() - 1) / rate.denominator());
    }

    /// Labels left out at the start of a minute.
    private int dropped() {
        return counting == Counting.DROP ? labelsPerSecond() / 15 : 0;
    }

    /// Gives how many labels a clock has.
    ///
    /// @return frames from 00:00:00:00 until it comes again
    public long framesPerDay() {
        return (long) DAY_SECONDS * labelsPerSecond() - (long) dropped() * (DAY_MINUTES - DAY_MINUTES / 10);
    }

    /// Gives the label of a frame. To add frames to a label, add them to its frame and take the label of that.
    ///
    /// @param frame from 00:00:00:00, 0; the clock goes round after a day, both ways
    /// @return `01:00:00:00`, with `;` before the frames where labels are dropped
    public String label(long frame) {
        long count = withDropped(Math.floorMod(frame, framesPerDay()));
        int labels = labelsPerSecond();
        long seconds = count / labels;
        char[] label = new char[LENGTH];
        write(label, 0, seconds / 3600, ':');
        write(label, 3, seconds / 60 % 60, ':');
        write(label, 6, seconds % 60, counting == Counting.DROP ? ';' : ':');
        write(label, 9, count % labels, ' ');
        return new String(label);
    }

    private static void write(char[] label, int at, long number, char then) {
        label[at] = (char) ('0' + number / 10);
        label[at + 1] = (char) ('0' + number % 10);
        if (at + 2 < LENGTH) {
            label[at + 2] = then;
        }
    }

    /// The count of all labels, dropped ones too, before a frame's.
    private long withDropped(long frame) {
        if (dropped() == 0) {
            return frame;
        }
        long minute = 60L * labelsPerSecond() - dropped();
        long ten = 10 * minute + dropped();
        long tens = frame / ten;
        long within = frame % ten;
        long minutes = Math.max(0, (within - dropped()) / minute);
        return frame + dropped() * (9 * tens + minutes);
    }

    /// Reads a label. `:` may stand for `;`, as it often does; a `;` says that labels are dropped.
    ///
    /// @param label such as `01:00:00:00`
    /// @return its frame, or why there is no such label
    public Meaning read(String label) {
        if (!isWritten(label)) {
            return new Meaning.Nothing("isn't two digits each of hours, minutes, seconds and frames: 01:00:00:00");
        }
        if (counting == Counting.NON_DROP && label.indexOf(';') >= 0) {
            return new Meaning.Nothing("has a ; as drop-frame labels have, and here none are dropped");
        }
        int hours = number(label, 0);
        int minutes = number(label, 3);
        int seconds = number(label, 6);
        int frames = number(label, 9);
        if (hours > 23 || minutes > 59 || seconds > 59) {
            return new Meaning.Nothing("is no time of a clock, which ends at 23:59:59");
        }
        if (frames >= labelsPerSecond()) {
            return new Meaning.Nothing("has frame " + frames + ", and a second's last is " + (labelsPerSecond() - 1));
        }
        if (seconds == 0 && minutes % 10 != 0 && frames < dropped()) {
            return new Meaning.Nothing(
                    "is one of the labels that drop-frame leaves out: this minute begins with ;0" + dropped());
        }
        long all = 60L * hours + minutes;
        return new Meaning.Frame(labelsPerSecond() * (60 * all + seconds) + frames - dropped() * (all - all / 10));
    }

    private static boolean isWritten(String label) {
        for (int i = 0; i < label.length() && i < LENGTH; i++) {
            char c = label.charAt(i);
            if (i % 3 == 2 ? c != ':' && c != ';' : c < '0' || c > '9') {
                return false;
            }
        }
        return label.length() == LENGTH;
    }

    private static int number(String label, int from) {
        return 10 * (label.charAt(from) - '0') + label.charAt(from + 1) - '0';
    }
}
