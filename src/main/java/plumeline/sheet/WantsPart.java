package plumeline.sheet;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumeline.sketch.Markup;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

/// The list of wants: each with its finding, why, what to try.
final class WantsPart {
    private final Subject subject;
    private final Changes changes;

    WantsPart(Subject subject, Changes changes) {
        this.subject = subject;
        this.changes = changes;
    }

    void addTo(Markup section) {
        List<Markup> wants = Stream.concat(subject.answer().wants().stream(), subject.answer().filmWants().stream())
                .map(want -> want(changes, subject.name(), want))
                .toList();
        if (!wants.isEmpty()) {
            section.add(Markup.of("div", Markup.of("h2", "What must be true on the screen"), wants.getFirst())
                    .with("class", "together"));
            section.add(wants.subList(1, wants.size()));
        }
    }

    /// One want.
    ///
    /// @param of the shot's name, or `film`
    static Markup want(Changes changes, String of, WantAnswer want) {
        Markup part = Markup.of("div").with("class", "want").with("id", of + ".want." + want.id());
        String pass = want.namesPass() ? "" : " (pass " + want.pass() + ")";
        Markup said = Rows.verdict(want.verdict().word(), want.id() + ": " + want.want() + pass + ".");
        part.add(said);
        if (!want.because().isEmpty()) {
            part.add(Rows.flowing(Markup.of("p"), "Why: " + sentences(because(want))));
        }
        if (!want.attempts().isEmpty()) {
            part.add(Rows.flowing(Markup.of("p"), "Try: " + tries(want.attempts())));
        }
        return changes.tell(part, said, Changes.Of.WANT, of, want.id());
    }

    /// Why a want stands as it does; what to mind beside is told once, on its card where it has one.
    static List<String> because(WantAnswer want) {
        String word = want.want().split(" ", 2)[0];
        boolean hasCard = word.equals("tank_carries") || word.equals("hangs");
        if (!hasCard || want.verdict() == Verdict.UNKNOWN || want.because().size() < 2) {
            return want.because();
        }
        return want.verdict() == Verdict.TIGHT
                ? List.of(want.because().getFirst(), want.because().getLast())
                : want.because().subList(0, 1);
    }

    /// Why a want stands as it does, and what to try.
    static String reasons(WantAnswer want) {
        return sentences(because(want)) + (want.attempts().isEmpty() ? "" : " Try: " + tries(want.attempts()));
    }

    /// What is tried begins with what a want asks for, or with a move's name.
    static String tries(List<String> all) {
        return sentences(
                all.stream().map(text -> LeewaySentence.capital(spoken(text))).toList());
    }

    /// A key of a want as the want itself is told.
    private static String spoken(String text) {
        return text.startsWith("sharp_to ") ? text.replaceFirst("_", " ") : text;
    }

    private static String sentences(List<String> all) {
        return all.stream().map(LeewaySentence::sentence).collect(Collectors.joining(" "));
    }
}
