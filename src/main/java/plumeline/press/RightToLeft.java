package plumeline.press;

import com.ibm.icu.text.ArabicShaping;
import com.ibm.icu.text.ArabicShapingException;
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
/// bidirectional algorithm, and joins Arabic letters.
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
        /// Forms of lam with alef, isolated and final by turns: alef with madda, hamza above, hamza below, plain.
        private static final int FIRST_LAM_ALEF = 0xFEF5;

        private static final int LAST_LAM_ALEF = 0xFEFC;
        private static final char LAM_INITIAL = '\uFEDF';
        private static final char LAM_MEDIAL = '\uFEE0';
        private static final String FINAL_ALEFS = "\uFE82\uFE84\uFE88\uFE8E";

        private static final ArabicShaping JOINING =
                new ArabicShaping(ArabicShaping.LETTERS_SHAPE | ArabicShaping.LENGTH_GROW_SHRINK);

        @Override
        public String reorderRTLTextToLTR(String text) {
            return reversed(text);
        }

        /// Joins Arabic letters by their joined forms, which the lettering holds and which readers of a print take
        /// for the letters themselves.
        @Override
        public String shapeText(String text) {
            if (!joins(text)) {
                return text;
            }
            try {
                return parted(JOINING.shape(text));
            } catch (ArabicShapingException e) {
                return text;
            }
        }

        /// Lam with alef in one form reads as one letter that nobody wrote: the two are set side by side, joined.
        private static String parted(String joined) {
            StringBuilder text = new StringBuilder();
            joined.chars().forEach(c -> {
                if (c >= FIRST_LAM_ALEF && c <= LAST_LAM_ALEF) {
                    boolean isFinal = (c - FIRST_LAM_ALEF) % 2 == 1;
                    text.append(isFinal ? LAM_MEDIAL : LAM_INITIAL);
                    text.append(FINAL_ALEFS.charAt((c - FIRST_LAM_ALEF) / 2));
                } else {
                    text.append((char) c);
                }
            });
            return text.toString();
        }

        /// Whether a text has letters that are joined.
        static boolean joins(String text) {
            return text.chars().anyMatch(c -> c >= FIRST_ARABIC && c <= LAST_ARABIC);
        }

        private static final int FIRST_ARABIC = 0x0600;
        private static final int LAST_ARABIC = 0x06FF;

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
