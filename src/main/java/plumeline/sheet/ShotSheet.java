package plumeline.sheet;

import java.util.List;
import plumeline.card.Cautions;
import plumeline.draw.Drawings;
import plumeline.draw.Moment;
import plumeline.sketch.Drawing;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;

/// The sheet of one shot, in the order in which a crew needs it: at a glance, marks, camera, moves, light, effect, what
/// kills it, what is done before and between takes, boxes for takes, where to
/// take care; then its cards, the wants, the drawings.
final class ShotSheet {
    private final Subject subject;
    private final Changes changes;
    private final Standing standing;
    private final Markup section;

    private ShotSheet(Subject subject, Changes changes) {
        this.subject = subject;
        this.changes = changes;
        standing = Standing.of(subject.plan(), subject.answer());
        section = Markup.of("section").with("class", "shot").with("id", "shot." + subject.name());
    }

    static Markup of(FilmAnswer film, Subject subject, String title, Printed printed) {
        ShotSheet sheet = new ShotSheet(subject, printed.changes());
        String revision = Papers.revision(film);
        ShotAnswer drawn = subject.answer().ledBy(sheet.standing.limitingPass());
        Drawing start = Drawings.cameraView(subject.plan(), drawn, Moment.START);
        MarksPart marks = new MarksPart(subject, printed.changes());
        sheet.section.add(new Glance(subject, sheet.standing, marks, printed, start).block(revision));
        sheet.notes();
        marks.addTo(sheet.section);
        sheet.table("Camera" + subject.inFirstPass(), new CameraRows(subject).list());
        sheet.table(subject.shot().moves().isEmpty() ? "Playback" : "Moves", MoveRows.of(subject));
        sheet.table("Light" + subject.inFirstPass(), LightRows.of(subject));
        sheet.table("Passes", PassRows.of(subject));
        sheet.table("Effect", EffectRows.of(subject));
        sheet.kills();
        new Preparation(subject).addTo(sheet.section);
        sheet.table("Sizes the marks rest on", ThingRows.of(subject));
        new Resets(subject.shot(), !subject.passes().isEmpty()).addTo(sheet.section);
        TakeBoxes.addTo(sheet.section, subject, title, revision);
        sheet.cautions();
        new CardsPart(subject, printed.changes()).addTo(sheet.section);
        new WantsPart(subject, printed.changes()).addTo(sheet.section);
        new DrawingsPart(subject, drawn, start).addTo(sheet.section);
        return sheet.section;
    }

    private void notes() {
        if (!subject.answer().notes().isEmpty()) {
            section.add(Rows.bullets(subject.answer().notes()));
        }
    }

    private void table(String title, List<Rows.Pair> pairs) {
        if (pairs.isEmpty()) {
            return;
        }
        Markup body = Markup.of("tbody");
        for (Rows.Pair pair : pairs) {
            Markup text = Rows.flowing(Markup.of("td"), pair.text());
            Markup row = Rows.named(pair.name(), Rows.name(pair.name()), text);
            body.add(changes.tell(row, text, Changes.Of.ROW, subject.name(), pair.name()));
        }
        section.add(Markup.of("h2", title), Markup.of("table", body));
    }

    private void kills() {
        List<Standing.Ranked> three = standing.firstThree();
        if (three.isEmpty()) {
            return;
        }
        Markup kills = Markup.of("div").with("class", "kills");
        kills.add(
                Markup.of("h2", three.size() == 1 ? "What kills it" : "The " + count(three.size()) + " that kill it"));
        for (Standing.Ranked one : three) {
            kills.add(Rows.toTick(
                    one.answer().id() + ": " + one.answer().want() + ". " + LeewaySentence.sentence(one.words()) + " "
                            + WantWords.check(one.line(), subject.stage().isMoving())));
        }
        section.add(kills);
    }

    private static String count(int things) {
        return things == 2 ? "two things" : "three things";
    }

    private void cautions() {
        section.add(Markup.of("div", Markup.of("h2", "Take care"))
                .with("class", "caution")
                .add(Rows.bullets(Cautions.of(subject.shot()).stream()
                        .map(caution -> LeewaySentence.capital(caution.about()) + ": " + caution.text())
                        .toList()))
                .add(Markup.of("p", Cautions.DEFERENCE)));
    }
}
