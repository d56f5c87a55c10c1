package plumeline.cli;

import java.util.List;
import plumeline.desk.Usage;
import plumeline.draw.LeewayText;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.search.Search;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;
import plumeline.solve.Words;

/// The findings on a film as plain text: a block a shot, its wants first, then its marks.
final class FilmText {
    private final StringBuilder text = new StringBuilder();
    private final Words words;
    private final LeewayText leeways;

    private FilmText(PaperUnit unit) {
        words = new Words(unit);
        leeways = new LeewayText(unit);
    }

    static String of(FilmAnswer answer) {
        var film = answer.plan().film();
        var written = new FilmText(film.papersOrDefault());
        String title = film.title().orElse("film");
        written.text.append(title).append(": ").append(answer.verdict().word()).append('\n');
        answer.shots().forEach(written::shot);
        if (!answer.wants().isEmpty()) {
            written.text.append("\nthe film\n");
            written.wants(answer.wants());
        }
        return written.text.toString();
    }

    private void shot(ShotAnswer shot) {
        text.append('\n').append(shot.shot()).append(": ").append(shot.verdict().word());
        text.append('\n');
        wants(shot.wants());
        shot.marks().forEach(mark -> mark(mark, shot));
        if (!shot.leewayWithout().isEmpty()) {
            text.append("  Leeway leaves out what fails already: ")
                    .append(String.join(", ", shot.leewayWithout()))
                    .append(".\n");
        }
        text.append("  All marks together may be off by ")
                .append(together(shot))
                .append(".\n");
        shot.notes().forEach(note -> text.append("  ").append(note).append('\n'));
    }

    private static String together(ShotAnswer shot) {
        return shot.together() >= Search.LOOSE
                ? "any amount as far as is computed"
                : Print.number(Math.floor(shot.together() * 10) / 10, 1) + " times their placing errors";
    }

    private void wants(List<WantAnswer> wants) {
        for (WantAnswer want : wants) {
            text.append("  ").append(Usage.column(want.verdict().word(), 9)).append(want.want());
            if (!want.namesPass()) {
                text.append(" (worst pass ").append(want.pass()).append(')');
            }
            if (want.margin() instanceof WantAnswer.Margin.Of(double value, String unit)) {
                text.append(": ").append(value < 0 ? "short by " : "").append(words.margin(value, unit));
            }
            text.append('\n');
            // What holds says so in its margin; whatever else there is to know follows.
            int said = want.verdict() == Verdict.HOLDS ? 1 : 0;
            List<String> why = want.because().stream().skip(said).toList();
            if (!why.isEmpty()) {
                text.append("             ").append(String.join(" ", why)).append('\n');
            }
            want.attempts()
                    .forEach(attempt ->
                            text.append("             Try: ").append(attempt).append('\n'));
        }
    }

    private void mark(MarkAnswer answer, ShotAnswer shot) {
        switch (answer.setting()) {
            case MarkAnswer.Setting.At at -> {
                String value = words.value(answer.mark(), at.si());
                text.append("  ").append(Usage.column(answer.mark().path(), 20));
                text.append(Usage.column(value, 12))
                        .append(Usage.column(at.origin().word(), 9));
                text.append(leeway(answer, shot)).append('\n');
            }
            case MarkAnswer.Setting.Open() -> {
                text.append("  ").append(Usage.column(answer.mark().path(), 20));
                text.append("free: nothing that is computed bears on it\n");
            }
        }
    }

    private String leeway(MarkAnswer answer, ShotAnswer shot) {
        String minus = side(answer, LeewayText.Way.MINUS, shot);
        String plus = side(answer, LeewayText.Way.PLUS, shot);
        if (minus.equals(plus)) {
            return minus.equals("any") ? "loose" : "± " + minus;
        }
        return "- " + minus + " / + " + plus;
    }

    private String side(MarkAnswer answer, LeewayText.Way way, ShotAnswer shot) {
        return leeways.findStop(answer, way, shot).orElseGet(() -> switch (way.of(answer.leeway())) {
            case Leeway.Side.Ends(double distance) -> leeways.withUnit(answer.mark(), distance);
            case Leeway.Side.Endless() -> "any";
        });
    }
}
