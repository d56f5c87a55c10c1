package plumeline.press;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.BitSet;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/// Breaks lines for the PDF printer where the JDK would, but parts no figure from its fraction or its unit
/// and no name or time of day at a dot or colon within it.
final class FigureBreaker implements FSTextBreaker {
    private static final Pattern NAME = Pattern.compile("[.:](?<=[A-Za-z0-9_-][.:])(?=[A-Za-z0-9_])");

    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private final BitSet parting = new BitSet();

    @Override
    public void setText(String text) {
        breaks.setText(text);
        parting.clear();
        for (Figures.Figure figure : Figures.in(text)) {
            parting.set(figure.from() + 1, figure.to());
        }
        Matcher names = NAME.matcher(text);
        while (names.find()) {
            parting.set(names.end());
        }
    }

    @Override
    public int next() {
        int at = breaks.next();
        while (at != BreakIterator.DONE && parting.get(at)) {
            at = breaks.next();
        }
        return at == BreakIterator.DONE ? -1 : at;
    }
}
