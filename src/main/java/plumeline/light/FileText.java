package plumeline.light;

import java.nio.charset.StandardCharsets;
import java.util.regex.Pattern;

/// The text of a photometric file, read from its start to its end, by lines or by numbers that may stand anywhere.
final class FileText {
    private static final int LONGEST_LINE = 4096;
    private static final int LONGEST_NUMBER = 40;
    private static final int LONGEST_QUOTE = 40;
    private static final int END_MARK = 0x1A;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,4})?");

    private final byte[] bytes;
    private final int end;
    private int at;
    private int line = 1;
    private int lineRead = 1;

    private FileText(byte[] bytes, int start, int end) {
        this.bytes = bytes;
        this.at = start;
        this.end = end;
    }

    /// Takes a file's bytes, which must be a text of a size that can be one; a mark of its encoding before it and an
    /// old mark of its end after it are passed over.
    static FileText of(byte[] bytes) throws UnusableFile {
        if (bytes.length > LampFile.MOST_BYTES) {
            throw new UnusableFile(1, bytes.length + " bytes", "a file of at most " + LampFile.MOST_BYTES + " bytes");
        }
        boolean marked = bytes.length >= 3
                && (bytes[0] & 0xFF) == 0xEF
                && (bytes[1] & 0xFF) == 0xBB
                && (bytes[2] & 0xFF) == 0xBF;
        int start = marked ? 3 : 0;
        int end = bytes.length;
        while (end > start && isPadding(bytes[end - 1])) {
            end--;
        }
        if (end == start) {
            throw new UnusableFile(1, "nothing", "an LM-63 or EULUMDAT file");
        }
        FileText text = new FileText(bytes, start, end);
        text.checkCharacters();
        return text;
    }

    private static boolean isPadding(byte each) {
        return each == END_MARK || isBlank(each);
    }

    private void checkCharacters() throws UnusableFile {
        int lines = 1;
        for (int i = at; i < end; i++) {
            int each = bytes[i] & 0xFF;
            if (each < ' ' && !isBlank(bytes[i])) {
                throw new UnusableFile(lines, "a byte of value " + each + ", which is no text", "text");
            }
            lines += endsLine(i) ? 1 : 0;
        }
    }

    /// The line of what was read last, from 1.
    int line() {
        return lineRead;
    }

    /// Refuses what was read last.
    UnusableFile refuse(String found, String accepted) {
        return new UnusableFile(lineRead, found, accepted);
    }

    /// Reads the rest of this line, without blanks round it. `what` names it where there is none.
    String readLine(String what) throws UnusableFile {
        if (at >= end) {
            throw ended(what);
        }
        int from = at;
        lineRead = line;
        while (at < end && bytes[at] != '\n' && bytes[at] != '\r') {
            at++;
        }
        if (at - from > LONGEST_LINE) {
            throw refuse("a line of " + (at - from) + " characters", what + " of at most " + LONGEST_LINE);
        }
        String read = text(from, at).strip();
        passLineEnd();
        return read;
    }

    /// Reads a line that holds one number; a decimal comma counts as a point.
    double readLineNumber(String what) throws UnusableFile {
        return parse(readLine(what).replace(',', '.'), what);
    }

    /// Reads a line that holds one number or none; none is 0.
    double readLineNumberOrNone(String what) throws UnusableFile {
        String read = readLine(what).replace(',', '.');
        return read.isEmpty() ? 0 : parse(read, what);
    }

    /// Reads the next number, whatever lines, blanks and commas stand between.
    double readNumber(String what) throws UnusableFile {
        passBlanks();
        if (at >= end) {
            throw ended(what);
        }
        lineRead = line;
        int from = at;
        while (at < end && !isDelimiter(bytes[at])) {
            at++;
        }
        int shown = Math.min(at, from + LONGEST_NUMBER + 1);
        return parse(text(from, shown), what);
    }

    /// Checks that a number that was just read is whole and within bounds.
    int whole(double value, String what, int least, int most) throws UnusableFile {
        if (value != Math.rint(value) || value < least || value > most) {
            throw refuse(what + " is " + show(value), "a whole number from " + least + " to " + most);
        }
        return (int) value;
    }

    /// Checks that a number that was just read is within bounds.
    double within(double value, String what, double least, double most) throws UnusableFile {
        if (value < least || value > most) {
            throw refuse(what + " is " + show(value), show(least) + " to " + show(most));
        }
        return value;
    }

    /// Checks that angles grow, each by at least a step, within bounds, where the next was just read.
    void checkGrows(double[] degrees, int place, String what, AngleRange range) throws UnusableFile {
        within(degrees[place], what + " " + (place + 1) + " in degrees", range.leastDegrees, range.mostDegrees);
        if (place > 0 && degrees[place] - degrees[place - 1] < range.stepDegrees) {
            throw refuse(
                    what + " " + (place + 1) + " is " + show(degrees[place]) + " deg after " + show(degrees[place - 1]),
                    "angles that grow, by at least " + range.stepDegrees + " deg");
        }
    }

    /// In which range angles may be, and by how much each must be over the one before, degrees.
    record AngleRange(double leastDegrees, double mostDegrees, double stepDegrees) {
        static final AngleRange PLANES = new AngleRange(0, 360, 0.02);
        static final AngleRange GAMMAS = new AngleRange(0, 180, 1e-6);
        static final AngleRange TILTS = new AngleRange(-180, 180, 1e-6);
    }

    /// Whether only blanks are left.
    boolean isAtEnd() {
        passBlanks();
        lineRead = line;
        return at >= end;
    }

    /// Refuses what is left where it can't hold so many more numbers.
    void checkRoom(long numbers, String what) throws UnusableFile {
        long room = (end - at + 1L) / 2;
        if (numbers > room) {
            throw refuse(
                    numbers + " " + what + " announced, where " + (end - at) + " bytes are left",
                    "a file that holds them");
        }
    }

    /// A piece of the file as it may be shown: short, and printable.
    static String quote(String text) {
        String shown = text.length() > LONGEST_QUOTE ? text.substring(0, LONGEST_QUOTE) + "…" : text;
        return '"' + shown.replaceAll("[\\x00-\\x1F\\x7F-\\x9F]", "?") + '"';
    }

    /// A number as it is shown.
    static String show(double value) {
        boolean whole = value == Math.rint(value) && Math.abs(value) < 1e9;
        return whole ? Long.toString((long) value) : Double.toString(value);
    }

    private double parse(String word, String what) throws UnusableFile {
        if (word.length() > LONGEST_NUMBER || !NUMBER.matcher(word).matches()) {
            throw refuse(what + " is " + quote(word), "a number of at most " + LONGEST_NUMBER + " characters");
        }
        double value = Double.parseDouble(word);
        if (Double.isInfinite(value)) {
            throw refuse(what + " is " + quote(word), "a number that isn't endless");
        }
        return value;
    }

    private UnusableFile ended(String what) {
        return new UnusableFile(line, "the file's end", what);
    }

    private String text(int from, int to) {
        return new String(bytes, from, to - from, StandardCharsets.ISO_8859_1);
    }

    private void passBlanks() {
        while (at < end && isDelimiter(bytes[at])) {
            line += endsLine(at) ? 1 : 0;
            at++;
        }
    }

    private void passLineEnd() {
        if (at < end && bytes[at] == '\r' && at + 1 < end && bytes[at + 1] == '\n') {
            at++;
        }
        if (at < end) {
            at++;
            line++;
        }
    }

    /// Whether a line ends with this byte: a line feed, or a carriage return that none follows.
    private boolean endsLine(int place) {
        byte each = bytes[place];
        return each == '\n' || (each == '\r' && (place + 1 >= end || bytes[place + 1] != '\n'));
    }

    private static boolean isDelimiter(byte each) {
        return each == ',' || isBlank(each);
    }

    private static boolean isBlank(byte each) {
        return each == ' ' || (each >= '\t' && each <= '\r');
    }
}
