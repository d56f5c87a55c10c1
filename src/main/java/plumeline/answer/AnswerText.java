package plumeline.answer;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.quantity.PaperUnit;

/// Writes an answer as text for people. Many values go several to a line, so that the whole stays at about 30 lines.
final class AnswerText {
    private static final int ROOM = 100;
    private static final int MOST_SINGLE = 14;
    private static final int MOST_SHORT = 45;

    /// Questions where someone can be hurt: what to mind stands before any figure.
    private static final Set<String> CAUTIONS_FIRST = Set.of("cut-flash", "line", "tank");

    private final Words words;

    AnswerText(PaperUnit unit) {
        words = new Words(unit);
    }

    String write(Answer answer) {
        StringBuilder out = new StringBuilder(2048);
        out.append(answer.question())
                .append(": ")
                .append(answer.verdict().word())
                .append('\n');
        boolean cautionsFirst = CAUTIONS_FIRST.contains(answer.question());
        if (cautionsFirst) {
            section(out, "Caution", answer.notes().cautions());
        }
        values(out, answer.answers());
        List<String> assumed = new ArrayList<>();
        for (Assumed each : answer.assumed()) {
            assumed.add(each.name() + " " + Words.plain(each.value()) + ": " + each.why());
        }
        Notes notes = answer.notes();
        section(out, "Because", notes.because());
        section(out, "Try", notes.attempts());
        if (!cautionsFirst) {
            section(out, "Caution", notes.cautions());
        }
        section(out, "Assumed", assumed);
        section(out, "Source", notes.sources());
        return out.toString();
    }

    private void values(StringBuilder out, List<Item> items) {
        int nameWidth = 0;
        int width = 0;
        List<String> values = new ArrayList<>();
        for (Item item : items) {
            values.add(words.value(item));
            nameWidth = Math.max(nameWidth, item.name().length());
            width = Math.max(width, values.getLast().length());
        }
        int columns = items.size() <= MOST_SINGLE ? 1 : items.size() <= MOST_SHORT ? 3 : 4;
        columns = Math.clamp((ROOM - 2) / (nameWidth + width + 4), 1, columns);
        for (int i = 0; i < items.size(); i++) {
            boolean last = (i + 1) % columns == 0 || i + 1 == items.size();
            out.append(i % columns == 0 ? "  " : "");
            pad(out, items.get(i).name(), nameWidth + 2);
            pad(out, values.get(i), last ? 0 : width + 2);
            out.append(last ? "\n" : "");
        }
    }

    private static void pad(StringBuilder out, String text, int width) {
        out.append(text);
        for (int i = text.length(); i < width; i++) {
            out.append(' ');
        }
    }

    private static void section(StringBuilder out, String head, List<String> lines) {
        for (int i = 0; i < lines.size(); i++) {
            pad(out, i == 0 ? head : "", 9);
            out.append(lines.get(i)).append('\n');
        }
    }
}
