package plumeline.sheet;

import com.openhtmltopdf.extend.FSTextBreaker;
import java.text.BreakIterator;
import java.util.Locale;
import java.util.regex.Matcher;

/// Breaks lines for the PDF printer where the JDK would, but parts no figure from its fraction or its unit.
final class FigureBreaker implements FSTextBreaker {
    private final BreakIterator breaks = BreakIterator.getLineInstance(Locale.ROOT);
    private String text = "";

    @Override
    public void setText(String next) {
        text = next;
        breaks.setText(next);
    }

    @Override
    public int next() {
        int at = breaks.next();
        while (at != BreakIterator.DONE && at < text.length() && isInFigure(at)) {
            at = breaks.next();
        }
        return at == BreakIterator.DONE ? -1 : at;
    }

    private boolean isInFigure(int at) {
        Matcher figures = Rows.FIGURE.matcher(text);
        while (figures.find()) {
            if (at > figures.start() && at < figures.end()) {
                return true;
            }
        }
        return false;
    }
}
