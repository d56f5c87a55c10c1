package plumeline.text;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CoderResult;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;

/// The decoded text and the way from offsets to places.
final class Source {
    /// The most bytes a text may have.
    static final int MOST_BYTES = 1 << 20;

    private static final int MOST_ODD = 20;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    final String file;
    final String text;

    /// Offset of the first character behind a byte order mark.
    final int first;

    /// Offset of each code point where the text has any beyond U+FFFF; else empty.
    private final int[] offsets;

    private final int[] lineStarts;

    Source(String file, String text) {
        this.file = file;
        this.text = text;
        this.first = !text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? 1 : 0;
        this.offsets = offsets(text, first);
        this.lineStarts = lineStarts(text, first);
    }

    /// Decodes strictly; gives what was decoded before the first byte that is not UTF-8, with a problem.
    static Source decode(byte[] bytes, String file, List<Problem> problems) {
        CharsetDecoder decoder = StandardCharsets.UTF_8
                .newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT);
        CharBuffer chars = CharBuffer.allocate(bytes.length + 1);
        ByteBuffer input = ByteBuffer.wrap(bytes);
        CoderResult result = decoder.decode(input, chars, true);
        String text = chars.flip().toString();
        Source source = new Source(file, text);
        if (result.isError()) {
            String given =
                    "not UTF-8 at byte " + (input.position() + 1) + " (" + hex(bytes[input.position()] & 0xff, 2) + ")";
            problems.add(new Problem(
                    source.place(text.length(), text.length()),
                    "",
                    "P-TEXT-02",
                    given,
                    "UTF-8",
                    "Save the file as UTF-8 and read it again."));
        }
        return source;
    }

    private static int[] offsets(String text, int first) {
        boolean plain = true;
        for (int i = 0; i < text.length() && plain; i++) {
            plain = !Character.isHighSurrogate(text.charAt(i));
        }
        if (plain) {
            return new int[0];
        }
        int[] all = new int[text.codePointCount(first, text.length()) + 1];
        int at = first;
        for (int i = 0; i < all.length; i++) {
            all[i] = at;
            at += at < text.length() ? Character.charCount(text.codePointAt(at)) : 0;
        }
        return all;
    }

    private static int[] lineStarts(String text, int first) {
        int count = 1;
        for (int i = first; i < text.length(); i++) {
            count += endsLine(text, i) ? 1 : 0;
        }
        int[] starts = new int[count];
        starts[0] = first;
        int line = 1;
        for (int i = first; i < text.length(); i++) {
            if (endsLine(text, i)) {
                starts[line++] = i + 1;
            }
        }
        return starts;
    }

    private static boolean endsLine(String text, int at) {
        char c = text.charAt(at);
        return c == '\n' || c == '\r' && (at + 1 == text.length() || text.charAt(at + 1) != '\n');
    }

    /// Gives the offset of the n-th code point behind a byte order mark, as the parser counts.
    int offset(int codePoints) {
        if (offsets.length == 0) {
            return Math.min(codePoints + first, text.length());
        }
        return offsets[Math.min(codePoints, offsets.length - 1)];
    }

    /// Gives the place of a span.
    Place place(int start, int end) {
        int low = 0;
        int high = lineStarts.length - 1;
        while (low < high) {
            int middle = (low + high + 1) >>> 1;
            if (lineStarts[middle] <= start) {
                low = middle;
            } else {
                high = middle - 1;
            }
        }
        int lineStart = Math.min(lineStarts[low], start);
        int column = offsets.length == 0 ? start - lineStart : text.codePointCount(lineStart, start);
        return new Place(file, low + 1, column + 1, start, Math.max(start, end));
    }

    /// Gives how many UTF-16 units stand before an offset on its line.
    int columnOf(int offset) {
        int line = Arrays.binarySearch(lineStarts, offset);
        return offset - lineStarts[line >= 0 ? line : -line - 2];
    }

    /// Objects to characters that no editor shows and to tabs that indent. Gives whether all is well.
    boolean checkCharacters(List<Problem> problems) {
        int before = problems.size();
        boolean flow = isFlow();
        boolean indenting = true;
        for (int i = first; i < text.length() && problems.size() - before < MOST_ODD; i++) {
            char c = text.charAt(i);
            if (isOdd(c)) {
                problems.add(new Problem(
                        place(i, i + 1),
                        "",
                        "P-TEXT-03",
                        "written with the character U+" + hex(c, 4) + " here",
                        "text without control characters",
                        "Delete that character: many editors do not show it."));
            } else if (c == '\t' && indenting && !flow && !isBlank(i)) {
                problems.add(new Problem(
                        place(i, i + 1),
                        "",
                        "P-TEXT-04",
                        "indented with a tab here",
                        "indented with spaces",
                        "Put two spaces for each level."));
                indenting = false;
            }
            indenting = c == '\n' || c == '\r' || indenting && (c == ' ' || c == '\t');
        }
        return problems.size() == before;
    }

    private static boolean isOdd(char c) {
        if (c < 0x20) {
            return c != '\n' && c != '\r' && c != '\t';
        }
        return c >= 0x7f && c <= 0x9f || c == BYTE_ORDER_MARK || c == '\uFFFE' || c == '\uFFFF';
    }

    private boolean isBlank(int from) {
        int at = from;
        while (at < text.length() && (text.charAt(at) == ' ' || text.charAt(at) == '\t')) {
            at++;
        }
        return at == text.length() || text.charAt(at) == '\n' || text.charAt(at) == '\r';
    }

    /// Tells whether the whole text is one list or map in brackets, as JSON is, where a tab may stand for spaces.
    private boolean isFlow() {
        for (int i = first; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '{' || c == '[') {
                return true;
            }
            if (c != ' ' && c != '\t' && c != '\n' && c != '\r') {
                return false;
            }
        }
        return false;
    }

    /// Gives the text for the parser: without byte order mark, and where JSON may have what YAML may not, with spaces
    /// instead: for tabs between tokens, and for line ends between a key and its colon.
    String forParser() {
        boolean flow = isFlow();
        if (!flow && text.indexOf('\t') < 0) {
            return text.substring(first);
        }
        StringBuilder copy = new StringBuilder(text.substring(first));
        boolean indenting = true;
        boolean inString = false;
        for (int i = 0; i < copy.length(); i++) {
            char c = copy.charAt(i);
            if (c == '"' && flow) {
                inString = !inString;
                if (!inString) {
                    joinColon(copy, i + 1);
                }
            } else if (c == '\\' && inString) {
                i++;
            } else if (c == '\t' && !inString && (flow || indenting)) {
                copy.setCharAt(i, ' ');
            }
            indenting = c == '\n' || c == '\r' || indenting && (c == ' ' || c == '\t');
        }
        return copy.toString();
    }

    /// Puts a colon that follows after nothing but white space on this line.
    private static void joinColon(StringBuilder copy, int from) {
        int at = from;
        while (at < copy.length() && " \t\r\n".indexOf(copy.charAt(at)) >= 0) {
            at++;
        }
        if (at < copy.length() && copy.charAt(at) == ':') {
            for (int i = from; i < at; i++) {
                copy.setCharAt(i, ' ');
            }
        }
    }

    static String hex(int value, int digits) {
        StringBuilder text = new StringBuilder(Integer.toHexString(value).toUpperCase(java.util.Locale.ROOT));
        while (text.length() < digits) {
            text.insert(0, '0');
        }
        return text.toString();
    }
}
