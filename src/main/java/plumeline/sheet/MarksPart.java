package plumeline.sheet;

import java.util.List;
import plumeline.draw.LeewayText;
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
        section.add(
                Markup.of("h2", "Marks, in the order to set them"),
                Markup.of("table", Rows.head(List.of("Mark", "Set to, from where", "Leeway, others as set")), body)
                        .with("class", "marks"));
        if (!subject.answer().leewayWithout().isEmpty()) {
            section.add(Markup.of(
                    "p",
                    "Leeway leaves out what fails already: "
                            + String.join(", ", subject.answer().leewayWithout()) + "."));
        }
        double together = subject.answer().together();
        if (Double.isFinite(together) && together > 0 && together < 100) {
            section.add(Markup.of(
                    "p",
                    "All marks together may be off by " + Print.number(Math.floor(together * 10) / 10, 1)
                            + " × what a hand places."));
        }
    }

    /// Ticked boxes hide what is set in the line that says what is next; a style sheet does it.
    private Markup row(MarkAnswer mark, int number) {
        String path = mark.mark().path();
        Markup name = Markup.of("div").with("class", "who");
        if (number > 0) {
            name.add(Markup.of("input")
                    .with("type", "checkbox")
                    .with("class", "tick t" + number)
                    .with("aria-label", path + " is set"));
        }
        name.text(path);
        // Beside a long name its value stands at the far end of its line.
        Markup value = Markup.of(Rows.isLong(path) ? "div" : "span").with("class", "far");
        Markup set = Markup.of("td", value).with("class", "set");
        switch (mark.setting()) {
            case MarkAnswer.Setting.Open() ->
                value.add(Markup.of("span", "free").with("class", "value")).text(" no value yet");
            case MarkAnswer.Setting.At at -> {
                value.add(Markup.of("span", Rows.minus(words.value(mark.mark(), at.si())))
                                .with("class", "value"))
                        .text(" ")
                        .add(origin(at.origin()));
                String where = MarkWords.of(mark.mark(), at.si()).from();
                set.add(Rows.isLong(path) ? Markup.of("div", where) : Markup.of("span", " " + where));
            }
        }
        Markup last = Rows.cell("leeway", leeway.of(mark));
        Markup row = Rows.named(path, Markup.of("td", name).with("class", "name"))
                .add(set, Rows.isLong(path) ? last.addFirst(Rows.gap()) : last)
                .with("id", subject.name() + ".mark." + path);
        return changes.tell(row, last, Changes.Of.MARK, subject.name(), path);
    }

    private static Markup origin(Origin origin) {
        return Markup.of("span", origin.word()).with("class", "origin " + origin.word());
    }

    /// The marks that have a value, each in a line, to be shown one after the other.
    Markup next() {
        List<MarkAnswer> set = ordered().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.At)
                .toList();
        Markup list = Markup.of("ol").with("class", "next");
        for (int i = 0; i < set.size(); i++) {
            MarkAnswer mark = set.get(i);
            double si = ((MarkAnswer.Setting.At) mark.setting()).si();
            String text = mark.mark().path() + " " + Rows.minus(words.value(mark.mark(), si)) + " "
                    + MarkWords.of(mark.mark(), si).from();
            Markup item = Markup.of("li").with("class", "n" + (i + 1));
            list.add(Rows.flowing(item, "Set mark " + (i + 1) + " of " + set.size() + ": " + text));
        }
        return list.add(Markup.of("li", set.isEmpty() ? "No mark has a value yet." : "All marks are set."));
    }
}
