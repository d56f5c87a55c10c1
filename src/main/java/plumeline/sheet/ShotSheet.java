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
        sheet.gone();
        sheet.notes();
        marks.addTo(sheet.section);
        sheet.tellAbove();
        sheet.table("Camera" + subject.inFirstPass(), Changes.Of.CAMERA, new CameraRows(subject).list());
        sheet.table(subject.shot().moves().isEmpty() ? "Playback" : "Moves", Changes.Of.MOVE, MoveRows.of(subject));
        sheet.table("Light" + subject.inFirstPass(), Changes.Of.LIGHT, LightRows.of(subject));
        sheet.table("Passes", Changes.Of.PASS, PassRows.of(subject));
        sheet.table("Effect", Changes.Of.EFFECT, EffectRows.of(subject));
        sheet.kills();
        new Preparation(subject).addTo(sheet.section, printed.changes());
        sheet.table("Sizes the marks rest on", Changes.Of.THING, ThingRows.of(subject));
        new Resets(subject.shot(), !subject.passes().isEmpty()).addTo(sheet.section, subject.name(), printed.changes());
        TakeBoxes.addTo(sheet.section, subject, title, revision);
        sheet.cautions();
        new CardsPart(subject, printed.changes()).addTo(sheet.section);
        new WantsPart(subject, printed.changes()).addTo(sheet.section);
        new DrawingsPart(subject, drawn, start, printed.pictures().of(subject.name())).addTo(sheet.section);
        return sheet.section;
    }

    private void gone() {
        List<String> gone = changes.gone(subject.name());
        if (!gone.isEmpty()) {
            Markup list = Markup.of("ul");
            gone.forEach(text -> list.add(Rows.flowing(Markup.of("li").with("class", "changed"), text)));
            section.add(Markup.of("h2", "No longer on this sheet"), list);
        }
    }

    private void notes() {
        if (!subject.answer().notes().isEmpty()) {
            Markup list = Markup.of("ul");
            for (String note : subject.answer().notes()) {
                Markup item = Rows.flowing(Markup.of("li"), note);
                list.add(changes.tell(item, Changes.Of.NOTE, subject.name(), note));
            }
            section.add(list);
        }
    }

    /// Tells changes of what stands above the tables: the shot's length, where its tank stands.
    private void tellAbove() {
        section.findClass("length").ifPresent(line -> {
            for (String name : List.of(Facts.SHOT, Facts.NUMBER, Facts.LENGTH)) {
                changes.tell(line, Changes.Of.HEAD, subject.name(), name);
            }
        });
        section.findClass("first").ifPresent(line -> changes.tell(line, Changes.Of.TANK, subject.name(), Facts.TANK));
    }

    private void table(String title, Changes.Of of, List<Rows.Pair> pairs) {
        if (!pairs.isEmpty()) {
            section.add(Markup.of("h2", title), Rows.pairs(pairs, changes, of, subject.name()));
        }
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
            kills.add(Rows.toTick(one.answer().id() + ": " + one.answer().want() + ". "
                    + LeewaySentence.sentence(one.words()) + " "
                    + WantWords.check(
                            one.line(), one.answer().verdict(), subject.stage().isMoving())));
        }
        section.add(kills);
    }

    private static String count(int things) {
        return things == 2 ? "two things" : "three things";
    }

    private void cautions() {
        section.add(Markup.of("div", Markup.of("h2", "Take care"))
                .with("class", "caution")
                .add(Rows.bullets(Cautions.of(subject.plan(), subject.shot()).stream()
                        .map(caution -> LeewaySentence.capital(caution.about()) + ": " + caution.text())
                        .toList()))
                .add(Markup.of("p", Cautions.DEFERENCE)));
    }
}
