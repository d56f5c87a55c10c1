package plumeline.sheet;

import java.util.List;
import java.util.Optional;
import plumeline.draw.LeewayText;
import plumeline.plan.Mark;
import plumeline.quantity.Origin;
import plumeline.quantity.Print;
import plumeline.sketch.Markup;
import plumeline.solve.MarkAnswer;
import plumeline.solve.Words;

/// The marks in the order in which they are set: a box to tick, where to set each and from where, how far off it may
/// be.
final class MarksPart {
    private final Subject subject;
    private final Changes changes;
    private final Words words;
    private final LeewaySentence leeway;

    MarksPart(Subject subject, Changes changes) {
        this.subject = subject;
        this.changes = changes;
        words = new Words(subject.unit());
        leeway = new LeewaySentence(
                new LeewayText(subject.unit()), subject.answer(), Standing.lines(subject.plan(), subject.answer()));
    }

    List<MarkAnswer> ordered() {
        return new SettingOrder(subject.shot()).of(subject.answer().marks());
    }

    void addTo(Markup section) {
        Markup body = Markup.of("tbody");
        int number = 1;
        for (MarkAnswer mark : ordered()) {
            body.add(row(mark, mark.setting() instanceof MarkAnswer.Setting.At ? number++ : 0));
        }
        section.add(Markup.of("h2", "Marks, in the order to set them"));
        TankFirst.of(subject)
                .ifPresent(text -> section.add(
                        Rows.flowing(Markup.of("div", box(0, "tank")).with("class", "first"), text)));
        section.add(Markup.of("table", Rows.head(List.of("Mark", "Set to, from where", "Leeway, others as set")), body)
                .with("class", "marks"));
        if (!subject.answer().leewayWithout().isEmpty()) {
            section.add(Markup.of(
                    "p",
                    "Leeway leaves out what fails already: "
                            + String.join(", ", subject.answer().leewayWithout()) + "."));
        }
        together().ifPresent(text -> section.add(Markup.of("p", text)));
    }

    /// How far all marks may be off at once, where that is worth knowing: a hand that places to less than it needs a
    /// jig.
    Optional<String> together() {
        double together = Math.floor(subject.answer().together() * 10) / 10;
        return together < MUCH && subject.answer().together() > 0
                ? Optional.of("All marks together may be off by " + Print.number(together, 1) + " × what a hand places"
                        + (together < 1 ? ": use jigs, then look through the lens." : "."))
                : Optional.empty();
    }

    /// The same in a line, where a hand alone doesn't do.
    Optional<String> findJigs() {
        double together = Math.floor(subject.answer().together() * 10) / 10;
        return together < 1 && subject.answer().together() > 0
                ? Optional.of("All marks at once: " + Print.number(together, 1) + " × what a hand places. Use jigs.")
                : Optional.empty();
    }

    /// From so many times on nobody need know.
    private static final double MUCH = 10;

    /// Ticked boxes hide what is set in the line that says what is next; a style sheet does it.
    private Markup row(MarkAnswer mark, int number) {
        String path = mark.mark().path();
        Markup name = Markup.of("div").with("class", "who");
        if (number > 0) {
            name.add(box(number, path));
        }
        name.text(path);
        // Beside a long name its value stands at the far end of its line.
        boolean isFar = Rows.isLong(path) && !Rows.fillsLine(path);
        Markup value = Markup.of(isFar ? "div" : "span").with("class", isFar ? "far" : "near");
        Markup set = Markup.of("td", value).with("class", "set");
        if (Rows.fillsLine(path)) {
            Rows.below(path, set);
        }
        switch (mark.setting()) {
            case MarkAnswer.Setting.Open() ->
                value.add(Markup.of("span", "free").with("class", "value")).text(" no value yet");
            case MarkAnswer.Setting.At at -> {
                value.add(Markup.of("span", Rows.minus(words.value(mark.mark(), at.si())))
                                .with("class", "value"))
                        .text(" ")
                        .add(origin(at.origin()))
                        .text(spread(mark));
                String where =
                        MarkWords.of(subject.shot(), mark.mark(), at.si()).from();
                set.add(isFar ? Markup.of("div", where) : Markup.of("span", ", " + where));
            }
        }
        Markup last = Rows.cell("leeway", leeway.of(mark));
        Markup row = Rows.named(path, Markup.of("td", name).with("class", "name"))
                .add(set, Rows.isLong(path) ? Rows.below(path, last) : last)
                .with("id", subject.name() + ".mark." + path);
        return changes.tell(row, last, Changes.Of.MARK, subject.name(), path);
    }

    private static Markup box(int number, String what) {
        return Markup.of("input")
                .with("type", "checkbox")
                .with("class", "tick t" + number)
                .with("aria-label", what + " is set");
    }

    private static Markup origin(Origin origin) {
        return Markup.of("span", origin.word()).with("class", "origin " + origin.word());
    }

    /// A spread that is written is what the hand placed it to.
    private String spread(MarkAnswer answer) {
        return answer.mark() instanceof Mark.Fixed(var _, var _, var quantity, var _, var _) && quantity.hasSpread()
                ? " ± " + words.difference(answer.mark(), answer.placingErrorSi())
                : "";
    }

    /// The marks that have a value, each in a line, to be shown one after the other.
    Markup next() {
        List<MarkAnswer> set = ordered().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.At)
                .toList();
        Markup list = Markup.of("ol").with("class", "next");
        TankFirst.of(subject)
                .ifPresent(text -> list.add(Rows.flowing(Markup.of("li").with("class", "n0"), text)));
        for (int i = 0; i < set.size(); i++) {
            MarkAnswer mark = set.get(i);
            double si = ((MarkAnswer.Setting.At) mark.setting()).si();
            String text = mark.mark().path() + " " + Rows.minus(words.value(mark.mark(), si)) + " "
                    + MarkWords.of(subject.shot(), mark.mark(), si).from();
            Markup item = Markup.of("li").with("class", "n" + (i + 1));
            list.add(Rows.flowing(item, "Set mark " + (i + 1) + " of " + set.size() + ": " + text));
        }
        return list.add(Markup.of("li", set.isEmpty() ? "No mark has a value yet." : "All marks are set."));
    }
}
