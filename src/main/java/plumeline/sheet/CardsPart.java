package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import plumeline.card.Card;
import plumeline.card.Cards;
import plumeline.sketch.Markup;

/// The cards of a shot: cautions first, then words, figures and boxes to write in.
final class CardsPart {
    private final Subject subject;
    private final Changes changes;

    CardsPart(Subject subject, Changes changes) {
        this.subject = subject;
        this.changes = changes;
    }

    private static List<Card> cards(Subject subject) {
        return Cards.of(subject.plan(), subject.answer(), subject.unit());
    }

    /// What cards say of the plan, by card and name.
    static List<Rows.Pair> facts(Subject subject) {
        List<Rows.Pair> facts = new ArrayList<>();
        for (Card card : cards(subject)) {
            for (Card.Part part : card.parts()) {
                switch (part) {
                    case Card.Part.Fact(String name, String text) -> facts.add(new Rows.Pair(key(card, name), text));
                    case Card.Part.Chip(String name, String _, String text) ->
                        facts.add(new Rows.Pair(key(card, name), text));
                    case Card.Part.Ask(String name, String text) -> facts.add(new Rows.Pair(key(card, name), text));
                    case Card.Part.Say _, Card.Part.Tick _, Card.Part.Grid _, Card.Part.Chart _ -> {}
                }
            }
        }
        return facts;
    }

    private static String key(Card card, String name) {
        return card.title() + ", " + name;
    }

    void addTo(Markup section) {
        cards(subject).forEach(card -> section.add(markup(card)));
    }

    private Markup markup(Card card) {
        Markup all = Markup.of("div", Markup.of("h2", card.title()))
                .with("class", "card")
                .with("id", card.id());
        if (!card.cautions().isEmpty()) {
            all.add(Markup.of("div", Rows.bullets(card.cautions())).with("class", "caution"));
        }
        Markup rows = Markup.of("tbody");
        boolean isOpen = false;
        for (Card.Part part : card.parts()) {
            boolean isRow = switch (part) {
                case Card.Part.Fact _, Card.Part.Ask _, Card.Part.Chip _ -> true;
                case Card.Part.Say _, Card.Part.Tick _, Card.Part.Grid _, Card.Part.Chart _ -> false;
            };
            if (isRow && !isOpen) {
                rows = Markup.of("tbody");
                all.add(Markup.of("table", rows));
            }
            isOpen = isRow;
            (isRow ? rows : all).add(markup(card, part));
        }
        return all;
    }

    private Markup markup(Card card, Card.Part part) {
        return switch (part) {
            case Card.Part.Say(String text) -> Rows.paragraph("say", text);
            case Card.Part.Tick(String text) -> Rows.toTick(text);
            case Card.Part.Fact(String name, String text) -> row(card, name, Rows.flowing(Markup.of("td"), text));
            case Card.Part.Chip(String name, String code, String text) -> row(card, name, chip(code, text));
            case Card.Part.Ask(String name, String text) -> row(card, name, asked(text));
            case Card.Part.Grid grid -> grid(grid);
            case Card.Part.Chart chart -> DrawingsPart.figure(LineChart.of(card.id() + ".chart", chart), "");
        };
    }

    private Markup row(Card card, String name, Markup text) {
        Markup row = Rows.named(name, Rows.name(name), text);
        return changes.tell(row, text, Changes.Of.CARD, subject.name(), key(card, name));
    }

    private static Markup chip(String code, String text) {
        Markup chip = Markup.of("span", "\u00a0").with("class", "chip").with("style", "background-color:" + code);
        return Rows.flowing(Markup.of("td").add(chip), " " + text);
    }

    private static Markup asked(String text) {
        return Rows.flowing(Markup.of("td"), text + ": ")
                .add(Markup.of("span", "\u00a0").with("class", "box"));
    }

    private static Markup grid(Card.Part.Grid grid) {
        Markup body = Markup.of("tbody");
        for (List<String> row : grid.rows()) {
            Markup line = Markup.of("tr");
            row.forEach(cell -> line.add(cell.isEmpty() ? Rows.cell("blank", "") : Rows.cell("filled", cell)));
            body.add(line);
        }
        boolean isTold = grid.rows().stream().flatMap(List::stream).noneMatch(String::isEmpty);
        return Markup.of("table", Rows.head(grid.heads()), body).with("class", isTold ? "grid told" : "grid");
    }
}
