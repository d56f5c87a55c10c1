package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import plumeline.draw.Drawing;
import plumeline.draw.Drawings;
import plumeline.draw.LeewayText;
import plumeline.draw.Markup;
import plumeline.draw.Moment;
import plumeline.plan.Delivery;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.quantity.Origin;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.WantAnswer;
import plumeline.solve.Words;
import plumeline.stage.Stage;

/// The sheet of one shot.
final class ShotPart {
    private final Plan plan;
    private final ShotAnswer answer;
    private final int number;
    private final Stage stage;
    private final PaperUnit unit;
    private final Words words;
    private final Standing standing;
    private final Markup section;

    private ShotPart(Plan plan, ShotAnswer answer, int number) {
        this.plan = plan;
        this.answer = answer;
        this.number = number;
        stage = answer.posed().stages().getFirst().stage();
        unit = plan.film().papersOrDefault();
        words = new Words(unit);
        standing = Standing.of(plan, answer);
        section = Markup.of("section").with("class", "shot").with("id", "shot." + answer.shot());
    }

    static Markup of(Plan plan, ShotAnswer answer, int number) {
        ShotPart part = new ShotPart(plan, answer, number);
        part.head();
        part.pictures();
        part.plan();
        part.marks();
        part.camera();
        part.moves();
        part.wants();
        part.checks();
        part.cautions();
        return part.section;
    }

    static String length(Stage stage) {
        return stage.frames() + (stage.frames() == 1 ? " screen frame / " : " screen frames / ")
                + Print.seconds(stage.retime().realSeconds((double) stage.frames()), 2) + " real";
    }

    private void head() {
        section.add(Markup.of("h2", "Shot " + number + ": " + answer.shot()), Rows.paragraph("length", length(stage)));
        section.add(verdict(answer.verdict().word(), standing.limiting()));
        List<Cautions.Caution> cautions = Cautions.of(stage.shot());
        if (!cautions.isEmpty()) {
            section.add(Markup.of(
                    "p",
                    "Take care: "
                            + cautions.stream().map(Cautions.Caution::about).collect(Collectors.joining(", "))
                            + ". What to do stands at the end of this sheet."));
        }
        if (!answer.notes().isEmpty()) {
            section.add(Rows.bullets(answer.notes()));
        }
    }

    static Markup verdict(String word, String sentence) {
        return Rows.flowing(Markup.of("p", Markup.of("span", word).with("class", "verdict " + word)), " " + sentence);
    }

    private void pictures() {
        section.add(Markup.of("h3", "The picture"));
        List<Drawing> drawn = new ArrayList<>();
        List<Markup> views = new ArrayList<>();
        for (Moment moment : Moment.values()) {
            Drawing drawing = Drawings.cameraView(plan, answer, moment);
            if (drawn.isEmpty() || !isSame(drawn.getFirst(), drawing)) {
                drawn.add(drawing);
                String at = LeewaySentence.capital(moment.word()) + ", frame " + (moment.frame(stage.frames()) + 1);
                views.add(
                        Markup.of("div", Markup.of("p", at), drawing.picture()).with("class", "view"));
            }
        }
        for (int i = 0; i < views.size(); i += 2) {
            section.add(Markup.of("div").with("class", "pair").add(views.subList(i, Math.min(i + 2, views.size()))));
        }
        String still = drawn.size() == 1 ? "The outlines stay the same from start to end. " : "";
        section.add(Markup.of(
                "p",
                still + "Heavy line: the whole picture. Dashed outlines: hidden behind something. " + frames()
                        + passes()));
    }

    /// Whether two views show the same, their ids and titles apart.
    private static boolean isSame(Drawing one, Drawing other) {
        return one.toSvg()
                .replace(one.id(), "")
                .replace(one.title(), "")
                .equals(other.toSvg().replace(other.id(), "").replace(other.title(), ""));
    }

    private String frames() {
        return plan.deliveries().stream()
                .map(delivery -> delivery.name() + ": " + Drawings.frameWords(plan, delivery) + keepOut(delivery) + ".")
                .collect(Collectors.joining(" "));
    }

    static String keepOut(Delivery delivery) {
        List<String> sides = new ArrayList<>();
        addSide(sides, "top", delivery.keepOut().top());
        addSide(sides, "bottom", delivery.keepOut().bottom());
        addSide(sides, "left", delivery.keepOut().left());
        addSide(sides, "right", delivery.keepOut().right());
        return sides.isEmpty() ? "" : ", hatched: keep out " + String.join(", ", sides);
    }

    private static void addSide(List<String> sides, String name, double share) {
        if (share > 0) {
            sides.add(name + " " + Print.share(share, 1));
        }
    }

    private String passes() {
        List<Pass> passes =
                plan.findShot(answer.shot()).map(shot -> shot.passes()).orElse(List.of());
        return passes.isEmpty()
                ? ""
                : " Passes: " + passes.stream().map(Pass::name).collect(Collectors.joining(", ")) + "; drawn is "
                        + answer.posed().stages().getFirst().pass() + ".";
    }

    private void plan() {
        section.add(Markup.of("h3", "Plan from above"));
        String length = unit == PaperUnit.MILLIMETRES ? "mm" : "inches";
        section.add(figure(
                Drawings.planFromAbove(plan, answer),
                "Figures in " + length
                        + ": x to camera right, y away from the camera, from the zero mark; lines with ticks are level"
                        + " distances between marks; leeway in brackets, rounded down. Thin lines: the picture's edges"
                        + " at start; dashed: at the end."));
        List<Drawing> boxes = Drawings.leewayBoxes(plan, answer);
        if (!boxes.isEmpty()) {
            section.add(Markup.of("h3", "Leeway at full size"));
            boxes.forEach(drawing -> section.add(figure(
                    drawing,
                    "True size when A4 is printed at 100 %: the cross is the mark, up is away from the camera, figures"
                            + " in "
                            + length + ". A dotted side goes on further than is drawn. Others as set.")));
        }
    }

    private static Markup figure(Drawing drawing, String caption) {
        Markup scrolled = Markup.of("div", drawing.picture())
                .with("class", "drawing")
                .with("role", "group")
                .with("aria-label", drawing.title())
                .with("tabindex", "0");
        return Markup.of("div", scrolled, Markup.of("p", caption)).with("class", "figure");
    }

    private void marks() {
        section.add(Markup.of("h3", "Marks"));
        LeewaySentence leeway = new LeewaySentence(new LeewayText(unit), stage.shot(), Standing.lines(plan, answer));
        Markup body = Markup.of("tbody");
        for (MarkAnswer mark : answer.marks()) {
            body.add(row(mark, leeway));
        }
        section.add(
                Markup.of("table", Rows.head(List.of("Mark", "Set to", "From where", "Leeway, others as set")), body)
                        .with("class", "marks"));
        if (!answer.leewayWithout().isEmpty()) {
            section.add(Markup.of(
                    "p", "Leeway leaves out what fails already: " + String.join(", ", answer.leewayWithout()) + "."));
        }
        if (Double.isFinite(answer.together()) && answer.together() > 0 && answer.together() < 100) {
            section.add(Markup.of(
                    "p",
                    "All marks together may be off by " + Print.number(Math.floor(answer.together() * 10) / 10, 1)
                            + " × what a hand places."));
        }
    }

    private Markup row(MarkAnswer mark, LeewaySentence leeway) {
        String sentence = leeway.of(mark);
        Markup row = Markup.of("tr")
                .with("id", answer.shot() + ".mark." + mark.mark().path());
        row.add(Rows.cell("name", mark.mark().path()));
        switch (mark.setting()) {
            case MarkAnswer.Setting.Open() -> row.add(Rows.cell("figure", "free"), Rows.cell("where", "no value yet"));
            case MarkAnswer.Setting.At at -> {
                Markup value = Rows.cell("figure", Rows.minus(words.value(mark.mark(), at.si())));
                row.add(value.add(Markup.of("br"), origin(at.origin())));
                row.add(Rows.cell("where", MarkWords.of(mark.mark(), at.si()).from()));
            }
        }
        return row.add(Rows.cell("leeway", sentence));
    }

    private static Markup origin(Origin origin) {
        return Markup.of("span", origin.word()).with("class", "origin " + origin.word());
    }

    private void camera() {
        section.add(Markup.of("h3", "Camera"), Rows.pairs(CameraRows.of(answer, unit)));
    }

    private void moves() {
        List<Rows.Pair> rows = MoveRows.of(answer, unit);
        if (!rows.isEmpty()) {
            section.add(Markup.of("h3", "Moves"), Rows.pairs(rows));
        }
    }

    private void wants() {
        section.add(Markup.of("h3", "What must be true on the screen"));
        answer.wants().forEach(want -> section.add(want(answer.shot() + ".want.", want)));
        for (WantAnswer want : answer.filmWants()) {
            section.add(want(answer.shot() + ".want.", want));
        }
    }

    static Markup want(String prefix, WantAnswer want) {
        Markup part = Markup.of("div").with("class", "want").with("id", prefix + want.id());
        String pass = want.pass().isEmpty() ? "" : " (pass " + want.pass() + ")";
        part.add(verdict(want.verdict().word(), want.id() + ": " + want.want() + pass + "."));
        if (!want.because().isEmpty()) {
            part.add(Rows.flowing(Markup.of("p"), "Why: " + sentences(want.because())));
        }
        if (!want.attempts().isEmpty()) {
            part.add(Rows.flowing(Markup.of("p"), "Try: " + sentences(want.attempts())));
        }
        return part;
    }

    private static String sentences(List<String> all) {
        return all.stream().map(LeewaySentence::sentence).collect(Collectors.joining(" "));
    }

    private void checks() {
        List<Standing.Ranked> three = standing.firstThree();
        if (three.isEmpty()) {
            return;
        }
        section.add(Markup.of("h3", "Check on the set first: the least leeway"));
        for (Standing.Ranked one : three) {
            Markup check =
                    Markup.of("div", Markup.of("span").with("class", "tick")).with("class", "check");
            section.add(Rows.flowing(
                    check,
                    one.answer().id() + ": " + one.answer().want() + ". " + LeewaySentence.sentence(one.words()) + " "
                            + WantWords.check(one.line())));
        }
    }

    private void cautions() {
        List<Cautions.Caution> cautions = Cautions.of(stage.shot());
        if (cautions.isEmpty()) {
            return;
        }
        section.add(Markup.of("div", Markup.of("h3", "Take care"))
                .with("class", "caution")
                .add(Rows.bullets(cautions.stream()
                        .map(caution -> LeewaySentence.capital(caution.about()) + ": " + caution.text())
                        .toList())));
    }

    static Map<String, Integer> numbers(Plan plan) {
        return plan.shots().stream()
                .collect(Collectors.toMap(
                        shot -> shot.name(), shot -> plan.shots().indexOf(shot) + 1));
    }
}
