package plumeline.sheet;

import com.openhtmltopdf.bidi.BidiReorderer;
import com.openhtmltopdf.bidi.BidiSplitter;
import com.openhtmltopdf.bidi.BidiTextRun;
import java.text.Bidi;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/// Orders text that runs from right to left for the PDF printer, which sets it from left to right, by the JDK's own
/// bidirectional algorithm. Letters keep their separate forms: Arabic is not joined.
final class RightToLeft implements BidiSplitter {
    private static final Pattern LETTER = Pattern.compile("\\X");
    private static final String OPEN = "()[]{}<>«»";
    private static final String MIRRORED = ")(][}{><»«";

    private List<BidiTextRun> runs = List.of();

    @Override
    public void setParagraph(String paragraph, byte defaultDirection) {
        if (paragraph.isEmpty()) {
            runs = List.of();
            return;
        }
        Bidi bidi = new Bidi(
                paragraph,
                defaultDirection == RTL ? Bidi.DIRECTION_DEFAULT_RIGHT_TO_LEFT : Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
        int count = bidi.getRunCount();
        byte[] levels = new byte[count];
        BidiTextRun[] ordered = new BidiTextRun[count];
        for (int i = 0; i < count; i++) {
            int start = bidi.getRunStart(i);
            levels[i] = (byte) bidi.getRunLevel(i);
            ordered[i] = new BidiTextRun(start, bidi.getRunLimit(i) - start, levels[i] % 2 == 1 ? RTL : LTR);
        }
        Bidi.reorderVisually(levels, 0, ordered, 0, count);
        runs = List.of(ordered);
    }

    @Override
    public int countTextRuns() {
        return runs.size();
    }

    @Override
    public BidiTextRun getVisualRun(int index) {
        return runs.get(index);
    }

    @Override
    public byte getBaseDirection(String paragraph) {
        for (int i = 0; i < paragraph.length(); i += Character.charCount(paragraph.codePointAt(i))) {
            switch (Character.getDirectionality(paragraph.codePointAt(i))) {
                case Character.DIRECTIONALITY_LEFT_TO_RIGHT -> {
                    return LTR;
                }
                case Character.DIRECTIONALITY_RIGHT_TO_LEFT, Character.DIRECTIONALITY_RIGHT_TO_LEFT_ARABIC -> {
                    return RTL;
                }
                default -> {}
            }
        }
        return NEUTRAL;
    }

    /// Turns a run that is read from right to left round, letter by letter; brackets are mirrored.
    static String reversed(String text) {
        List<String> letters = new ArrayList<>(
                LETTER.matcher(text).results().map(MatchResult::group).toList());
        return letters.reversed().stream().map(RightToLeft::mirrored).collect(Collectors.joining());
    }

    private static String mirrored(String letter) {
        int at = letter.length() == 1 ? OPEN.indexOf(letter) : -1;
        return at < 0 ? letter : MIRRORED.substring(at, at + 1);
    }

    /// What turns right-to-left runs round for the printer.
    static final class Turner implements BidiReorderer {
        @Override
        public String reorderRTLTextToLTR(String text) {
            return reversed(text);
        }

        @Override
        public String shapeText(String text) {
            return text;
        }

        @Override
        public String deshapeText(String text) {
            return text;
        }

        @Override
        public boolean isLiveImplementation() {
            return true;
        }
    }
}
