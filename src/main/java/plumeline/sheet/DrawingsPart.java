package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import plumeline.draw.Drawings;
import plumeline.draw.Moment;
import plumeline.plan.Delivery;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Drawing;
import plumeline.sketch.Markup;
import plumeline.solve.ShotAnswer;

/// The drawings of a sheet with their captions.
final class DrawingsPart {
    private static final List<Moment> LATER = List.of(Moment.MIDDLE, Moment.END);

    private final Subject subject;
    private final Plan plan;
    private final ShotAnswer answer;
    private final String unit;

    private final Drawing start;
    private final Pictures.OfShot computed;

    /// @param drawn the shot's answer, led by the pass that is drawn
    /// @param start the camera view at start, which stands at the head of the sheet
    /// @param computed pictures that stand beside line art
    DrawingsPart(Subject subject, ShotAnswer drawn, Drawing start, Pictures.OfShot computed) {
        this.subject = subject;
        this.start = start;
        this.computed = computed;
        plan = subject.plan();
        answer = drawn;
        unit = subject.unit() == PaperUnit.MILLIMETRES ? "mm" : "inches";
    }

    void addTo(Markup section) {
        pictures(section);
        leeway(section);
        plan(section);
        add(
                section,
                "From the side",
                List.of(Drawings.sideElevation(plan, answer)),
                "Seen from camera right, to scale, figures in " + unit
                        + ": y away from the camera to the right, heights from the table top. Thin lines: the picture's"
                        + " upper and lower edge.");
        add(
                section,
                "The tank from the side",
                Drawings.tankSide(plan, answer),
                "Solid: where things are. Dashed: where they seem to be, seen from the lens through the flat front"
                        + " glass.");
        add(
                section,
                "What is sharp",
                Drawings.sharpRuler(plan, answer),
                "Along the camera's axis from the lens point, figures in " + unit + ". Hatched: soft.");
        later(section);
    }

    private void later(Markup section) {
        add(
                section,
                "Across the picture",
                Drawings.travel(plan, answer),
                "Where things stand between the picture's left and right edge, screen frames from top to bottom, real"
                        + " seconds beside them.");
        add(
                section,
                "Labels unrolled",
                Drawings.unrolledLabel(plan, answer),
                "To scale, figures in " + unit + " and in deg from the label's middle; the seam stands at both ends.");
    }

    private static void add(Markup section, String title, List<Drawing> drawings, String caption) {
        if (!drawings.isEmpty()) {
            section.add(Markup.of("h2", title));
            for (int i = 0; i < drawings.size(); i++) {
                section.add(figure(drawings.get(i), i == drawings.size() - 1 ? caption : ""));
            }
        }
    }

    private void plan(Markup section) {
        section.add(Markup.of("h2", "Plan from above"));
        section.add(figure(
                Drawings.planFromAbove(plan, answer),
                "Figures in " + unit
                        + ": x to camera right, y away from the camera, from the zero mark; lines with ticks are level"
                        + " distances between marks; leeway in brackets, rounded down. Thin lines: the picture's edges"
                        + " at start; dashed: at the end."));
    }

    /// The camera view at start stands at the head of the sheet; here is what differs from it later.
    private void pictures(Markup section) {
        List<Markup> views = new ArrayList<>();
        List<Markup> pairs = new ArrayList<>();
        pairs.add(pair(computed(Moment.START)));
        for (Moment moment : LATER) {
            List<Markup> drawn = subject.stage().isMoving() ? lineArt(moment) : List.of();
            views.addAll(drawn);
            List<Markup> both = new ArrayList<>(drawn);
            both.addAll(computed(moment));
            pairs.add(pair(both));
        }
        section.add(Markup.of("h2", "The picture"));
        if (!computed.pictures().isEmpty()) {
            section.add(pairs.stream().filter(pair -> pair.findClass("view").isPresent()).toList());
            section.add(Rows.flowing(Markup.of("p"), COMPUTED + " " + String.join(" ", computed.assumed())));
        } else if (!views.isEmpty()) {
            section.add(pair(views));
        }
        String still = views.isEmpty() ? "The outlines stay as at the head of this sheet from start to end. " : "";
        section.add(Rows.flowing(
                Markup.of("p"),
                still
                        + "Heavy line: the whole picture. Dashed outlines: hidden behind something. Hatched things:"
                        + " soft. "
                        + frames() + passes()));
    }

    private static final String COMPUTED = "Computed pictures show framing, blur, light and highlights as the marks are"
            + " set, with a part of the rays that a still takes: their grain is not the camera's.";

    private static Markup pair(List<Markup> views) {
        return Markup.of("div").with("class", "pair").add(views);
    }

    /// The camera view of a moment, where it differs from that at start.
    private List<Markup> lineArt(Moment moment) {
        Drawing drawing = Drawings.cameraView(plan, answer, moment);
        String at =
                LeewaySentence.capital(moment.word()) + ", frame " + (moment.frame(subject.stage().frames()) + 1);
        return isSame(start, drawing)
                ? List.of()
                : List.of(Markup.of("div", Markup.of("p", at), drawing.picture()).with("class", "view"));
    }

    private List<Markup> computed(Moment moment) {
        return computed.at(moment).stream()
                .map(picture -> Markup.of(
                                "div",
                                Markup.of("p", picture.caption()),
                                Markup.of("img").with("src", picture.address()).with("alt", picture.shows()))
                        .with("class", "view"))
                .toList();
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
        return subject.passes().isEmpty()
                ? ""
                : " Drawn is pass " + answer.posed().stages().getFirst().pass() + " of "
                        + subject.passes().stream().map(Pass::name).collect(Collectors.joining(", ")) + ".";
    }

    private void leeway(Markup section) {
        List<Drawing> boxes = Drawings.leewayBoxes(plan, answer);
        if (boxes.isEmpty()) {
            return;
        }
        section.add(Markup.of("h2", "Leeway at full size"));
        boxes.forEach(drawing -> section.add(figure(
                drawing,
                "True size when A4 is printed at 100 %: the cross is the mark, up is away from the camera, figures in "
                        + unit + ". A dotted side goes on further than is drawn. Others as set.")));
    }

    static Markup figure(Drawing drawing, String caption) {
        Markup scrolled = Markup.of("div", drawing.picture())
                .with("class", "drawing")
                .with("role", "group")
                .with("aria-label", drawing.title())
                .with("tabindex", "0");
        Markup figure = Markup.of("div", scrolled).with("class", "figure");
        return caption.isEmpty() ? figure : figure.add(Markup.of("p", caption));
    }
}
