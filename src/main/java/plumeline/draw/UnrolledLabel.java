package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.geom.Body;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// The mantle of a labelled thing, unrolled to scale from seam to seam: label, logo middle, degrees from the label's
/// middle, heights, and the stretch that is turned to the lens at start and end.
final class UnrolledLabel {
    private static final double WIDTH = 700;
    private static final double TALLEST = 170;

    /// Where lamps are mirrored in it.
    private static final double TALLEST_LIT = 220;

    private static final double LEFT = 100;
    private static final double RIGHT = 30;
    /// Room for two rows of figures below the mantle.
    private static final double BELOW = 64;

    /// From here on a name beside the mantle, or beside a logo's middle, has a leader, pixels.
    private static final double LED = 2;

    private static final double LEADERLESS = 60;

    private static final int MOST = 6;

    /// Stretches at start and end that differ by less are the same on paper.
    private static final double SAME_RADIANS = Math.toRadians(0.5);

    private static final double TICK_RADIANS = Math.toRadians(30);
    private static final List<Integer> FIGURED = List.of(0, -3, 3, -6, 6, -2, 2, -4, 4, -1, 1, -5, 5);
    private static final double[] HATCHES = {7, 11, 15, 19};

    /// A stretch that is bracketed.
    private record Bracket(String when, Mantle.Facing facing, Pen pen) {}

    private final Stage stage;
    private final Scene first;
    private final Scene last;
    private final Print print;
    private final Mantle.Labelled shown;
    private final List<Band> bands;
    private final MarkBook marks;
    private final LabelLamps lamps;
    private final Page page;
    private final List<String> notes = new ArrayList<>();
    private double pixelsPerMetre;
    private Box mantle = new Box(0, 0, 0, 0);

    private UnrolledLabel(Plan plan, ShotAnswer answer, Mantle.Labelled shown, List<Band> bands) {
        stage = answer.posed().stages().getFirst().stage();
        double[] values = answer.posed().values();
        marks = new MarkBook(answer);
        first = stage.scene(values, 0);
        last = marks.areMovesSet(stage.shot()) ? stage.scene(values, (double) (stage.frames() - 1)) : first;
        print = new Print(plan.film().papersOrDefault());
        lamps = new LabelLamps(stage, marks, first, last, print);
        this.shown = shown;
        this.bands = bands;
        String name = stage.shot().placed().get(shown.index()).name();
        page = new Page(
                answer.shot() + ".label." + name,
                "Shot " + answer.shot() + ": label of " + name + ", unrolled, to scale");
    }

    static List<Drawing> of(Plan plan, ShotAnswer answer, Map<String, List<Band>> bands) {
        List<Mantle.Labelled> all = Mantle.Labelled.list(answer);
        List<Drawing> drawings = new ArrayList<>();
        for (int i = 0; i < Math.min(MOST, all.size()); i++) {
            Mantle.Labelled shown = all.get(i);
            Stage stage = answer.posed().stages().getFirst().stage();
            String name = stage.shot().placed().get(shown.index()).name();
            UnrolledLabel label = new UnrolledLabel(plan, answer, shown, bands.getOrDefault(name, List.of()));
            if (i == MOST - 1 && all.size() > MOST) {
                List<String> more = all.subList(MOST, all.size()).stream()
                        .map(other -> stage.shot().placed().get(other.index()).name())
                        .toList();
                label.notes.add("Labels not drawn: " + String.join(", ", more) + ".");
            }
            drawings.add(label.draw());
        }
        return drawings;
    }

    private Drawing draw() {
        List<Bracket> brackets = brackets(shown.index());
        Mantle of = shown.mantle();
        double tall = of.highMetres() - of.lowMetres();
        LabelLamps.Shown seen = seen(shown.index());
        double tallest = seen.images().isEmpty() ? TALLEST : TALLEST_LIT;
        pixelsPerMetre = Math.min((WIDTH - LEFT - RIGHT) / of.acrossMetres(), tallest / tall);
        double top = 30 + 36.0 * Math.max(1, brackets.size());
        double wide = of.acrossMetres() * pixelsPerMetre;
        mantle = new Box(LEFT, top, LEFT + wide, top + tall * pixelsPerMetre);
        drawHeading();
        drawBands(brackets);
        Labels labels = new Labels(new Box(0, Lettering.LINE, WIDTH, mantle.bottom() + BELOW));
        LabelLamps.Bands mirrored = new LabelLamps.Bands(of, mantle, seen.images());
        mirrored.draw(page, labels);
        drawMantle();
        for (int i = 0; i < brackets.size(); i++) {
            drawBracket(brackets.get(i), 30 + 36.0 * i, labels);
        }
        drawTicks(labels);
        drawHeights(labels);
        drawLabel(labels);
        mirrored.letter(page, labels, this::besideMantle, WIDTH);
        page.letter(labels.draw());
        writeNotes();
        writeMirrored(seen);
        return page.finish(WIDTH, letterNotes(mantle.bottom() + BELOW));
    }

    private LabelLamps.Shown seen(int index) {
        return isSet(index) ? lamps.in(index, shown.mantle()) : new LabelLamps.Shown(List.of(), List.of());
    }

    private void writeMirrored(LabelLamps.Shown seen) {
        boolean isHatched =
                seen.images().stream().anyMatch(image -> !image.start().isEmpty());
        boolean isDashed = seen.images().stream().anyMatch(image -> image.end().isPresent());
        if (!seen.images().isEmpty()) {
            notes.add("Mirrored, at the label's middle height: " + mirroredWords(seen) + "."
                    + (isHatched ? " Hatched: at the start." : "") + (isDashed ? " Dashed: at the end." : ""));
        }
        notes.addAll(seen.notes());
    }

    private static String mirroredWords(LabelLamps.Shown seen) {
        return seen.images().stream().map(LabelLamps.Image::words).collect(Collectors.joining("; "));
    }

    private String name(int index) {
        return stage.shot().placed().get(index).name();
    }

    private void drawHeading() {
        Placed placed = stage.shot().placed().get(shown.index());
        double turn = first.things().get(shown.index()).pose().turnRadians();
        String text = placed.name() + ": " + placed.thing().reference()
                + (Math.abs(turn) < 1e-9 || !marks.isTurned(placed.name()) ? "" : ", turn " + degrees(turn) + " deg");
        page.letter(List.of(Markup.of(
                        "g",
                        Lettering.text(
                                List.of(Lettering.fitted(text, WIDTH - 8)), new Box(4, 2, WIDTH, 2 + Lettering.LINE)))
                .with("id", page.id("name.thing." + placed.name()))));
    }

    /// Whether it is known where and how a thing stands, and the camera.
    private boolean isSet(int index) {
        return marks.isCameraSet() && marks.isPlaced(name(index)) && marks.isTurned(name(index));
    }

    private String openWords(int index) {
        return marks.isCameraSet()
                ? "its " + (marks.isPlaced(name(index)) ? "turn" : "place") + " is still open"
                : "the camera's place is still open";
    }

    private List<Bracket> brackets(int index) {
        List<Bracket> brackets = new ArrayList<>();
        if (!isSet(index)) {
            return brackets;
        }
        Body at = first.things().get(index);
        Body there = last.things().get(index);
        Optional<Mantle.Facing> start = shown.mantle().findFacing(first, at);
        Optional<Mantle.Facing> end = shown.mantle().findFacing(last, there);
        start.ifPresent(facing -> brackets.add(new Bracket("start", facing, Pen.EDGE)));
        boolean differs = end.isPresent()
                && (start.isEmpty()
                        || Math.abs(start.get().fromRadians() - end.get().fromRadians()) > SAME_RADIANS
                        || Math.abs(start.get().toRadians() - end.get().toRadians()) > SAME_RADIANS);
        if (differs) {
            brackets.add(new Bracket("end", end.get(), Pen.HIDDEN));
        }
        return brackets;
    }

    private double x(double radians) {
        return mantle.middle().x() + radians * shown.mantle().radiusMetres() * pixelsPerMetre;
    }

    private double y(double heightMetres) {
        return mantle.bottom() - (heightMetres - shown.mantle().lowMetres()) * pixelsPerMetre;
    }

    /// The parts of a stretch on the unrolled mantle: one, or two where it runs over the seam. All of a box's face.
    private List<Box> parts(double from, double to) {
        if (!shown.mantle().isRound()) {
            return List.of(mantle);
        }
        double whole = 2 * Math.PI;
        double begin = from - whole * Math.floor((from + Math.PI) / whole);
        double end = begin + Math.min(to - from, whole);
        List<Box> parts = new ArrayList<>();
        parts.add(new Box(x(begin), mantle.top(), x(Math.min(end, Math.PI)), mantle.bottom()));
        if (end > Math.PI + 1e-9) {
            parts.add(new Box(mantle.left(), mantle.top(), x(end - whole), mantle.bottom()));
        }
        return parts;
    }

    /// Hatches bands, each with its own spacing, and names them below.
    private void drawBands(List<Bracket> brackets) {
        if (bands.isEmpty() || !shown.mantle().isRound() || brackets.isEmpty()) {
            return;
        }
        double middle = brackets.getFirst().facing().middleRadians();
        for (int i = 0; i < bands.size(); i++) {
            Band band = bands.get(i);
            Markup group = page.group("band." + band.id());
            for (Box part : parts(middle + band.fromRadians(), middle + band.toRadians())) {
                group.add(Shapes.hatch(part, HATCHES[i % HATCHES.length]));
                part.sides().subList(0, 2).forEach(side -> group.add(Shapes.line(Pen.THIN, side)));
            }
            notes.add(band.name() + ": " + range(middle + band.fromRadians(), middle + band.toRadians()) + ", hatched "
                    + (i == 0 ? "closest" : "wider") + ".");
        }
    }

    private void drawMantle() {
        page.group("mantle").add(Shapes.box(Pen.OUTLINE, mantle));
    }

    private void drawBracket(Bracket bracket, double y, Labels labels) {
        Markup group = page.group("lens." + bracket.when());
        double line = y + 28;
        List<Box> parts = parts(bracket.facing().fromRadians(), bracket.facing().toRadians());
        for (Box part : parts) {
            group.add(
                    Shapes.line(bracket.pen(), new Spot(part.left(), line), new Spot(part.right(), line)),
                    Shapes.line(Pen.EDGE, new Spot(part.left(), line), new Spot(part.left(), line + 6)),
                    Shapes.line(Pen.EDGE, new Spot(part.right(), line), new Spot(part.right(), line + 6)));
            for (Stretch side : part.sides().subList(0, 2)) {
                group.add(Shapes.line(bracket.pen() == Pen.EDGE ? Pen.THIN : Pen.THIN_DASHED, side));
                labels.keepEdge(side);
            }
        }
        Box widest = parts.size() > 1 && parts.get(1).width() > parts.get(0).width() ? parts.get(1) : parts.getFirst();
        List<String> text = List.of(towardWords(bracket));
        double half = Lettering.width(text) / 2;
        double x = Math.clamp(widest.middle().x(), half + 2, WIDTH - half - 2);
        Spot spot = new Spot(x, y + 14);
        labels.place(page.id("name.lens." + bracket.when()), text, spot, List.of(spot), WIDTH);
    }

    private String towardWords(Bracket bracket) {
        return shown.mantle().isRound()
                ? "toward lens at " + bracket.when() + " "
                        + range(bracket.facing().fromRadians(), bracket.facing().toRadians())
                : "front face toward lens at " + bracket.when() + ", "
                        + degrees(bracket.facing().middleRadians()) + " deg off square";
    }

    static String range(double from, double to) {
        return degrees(from) + ".." + degrees(to) + " deg"
                + (Math.floor((from + Math.PI) / (2 * Math.PI)) < Math.floor((to + Math.PI) / (2 * Math.PI))
                        ? " over the seam"
                        : "");
    }

    /// Whole degrees within half a turn, without the unit.
    private static String degrees(double radians) {
        double within = radians - 2 * Math.PI * Math.floor((radians + Math.PI) / (2 * Math.PI));
        return Print.degrees(within).replace(" deg", "").replace('-', '−');
    }

    private void drawLabel(Labels labels) {
        Mantle.OnIt label = shown.mantle().label();
        double half = label.widthMetres() / 2 * pixelsPerMetre;
        double middle = mantle.middle().x();
        Box box = new Box(middle - half, y(label.topMetres()), middle + half, y(label.bottomMetres()));
        Spot logo = box.middle();
        page.group("label")
                .add(
                        Shapes.box(Pen.OUTLINE, box),
                        Shapes.line(Pen.EDGE, logo.plus(-8, 0), logo.plus(8, 0)),
                        Shapes.line(Pen.EDGE, logo.plus(0, -8), logo.plus(0, 8)));
        labels.keepFree(Box.round(logo, 18, 18));
        box.sides().forEach(labels::keepEdge);
        mantle.sides().forEach(labels::keepEdge);
        letterLogo(labels, box);
        letterLabel(labels, box);
    }

    private void letterLabel(Labels labels, Box box) {
        Mantle.OnIt label = shown.mantle().label();
        Spot logo = box.middle();
        List<String> lines = new ArrayList<>();
        lines.add("label");
        lines.add(print.lengthNumber(label.widthMetres(), Print.Hand.TAPE) + " × "
                + print.length(label.heightMetres(), Print.Hand.TAPE));
        if (shown.mantle().isRound()) {
            lines.add(Print.degrees(label.widthMetres() / shown.mantle().radiusMetres()) + " round");
        }
        lines.add(print.length(label.bottomMetres(), Print.Hand.TAPE) + " up");
        Spot below = new Spot(logo.x(), (logo.y() + box.bottom()) / 2);
        List<Spot> near = new ArrayList<>(List.of(below, new Spot(logo.x(), (logo.y() + box.top()) / 2)));
        double aside = box.width() / 2 + Lettering.width(lines) / 2 + 8;
        for (double up : new double[] {0, -30, 30, -60, 60}) {
            near.add(logo.plus(aside, up));
            near.add(logo.plus(-aside, up));
        }
        double off = box.height() / 2 + lines.size() * Lettering.LINE / 2 + 6;
        near.add(logo.plus(0, off));
        near.add(logo.plus(0, -off));
        Spot edge = new Spot(box.right(), (logo.y() + box.top()) / 2);
        String id = page.id("name.label");
        if (labels.place(id, lines, logo, near, WIDTH)
                .or(() -> labels.place(id, lines, edge, besideMantle(lines, edge.y()), LED))
                .isEmpty()) {
            notes.add(String.join(", ", lines) + ".");
        }
    }

    /// On the label, else beside it.
    private void letterLogo(Labels labels, Box box) {
        Spot logo = box.middle();
        List<String> words = List.of("logo middle");
        double half = Lettering.width(words) / 2;
        List<Spot> near = new ArrayList<>(List.of(logo.plus(14 + half, -15), logo.plus(0, -24), logo.plus(0, -40)));
        double aside = box.width() / 2 + 14 + half;
        for (double up : new double[] {0, -26, 26, -52, 52}) {
            near.add(logo.plus(-aside, up));
            near.add(logo.plus(aside, up));
        }
        String id = page.id("name.logo");
        if (labels.place(id, words, logo, near, LEADERLESS)
                .or(() -> labels.place(id, words, logo, besideMantle(words, logo.y()), LED))
                .isEmpty()) {
            notes.add("The cross is the logo's middle.");
        }
    }

    /// To the right of the mantle, nearest to a height on the page first.
    private List<Spot> besideMantle(List<String> lines, double level) {
        List<Spot> spots = new ArrayList<>();
        double half = Lettering.width(lines) / 2;
        for (double away : new double[] {14, 44, 74}) {
            for (double off = 0; off < 150; off += 6) {
                spots.add(new Spot(mantle.right() + away + half, level - off));
                spots.add(new Spot(mantle.right() + away + half, level + off));
            }
        }
        return spots;
    }

    /// Degrees below the mantle, the middle and the quarters first.
    private void drawTicks(Labels labels) {
        if (!shown.mantle().isRound()) {
            return;
        }
        Markup group = page.group("degrees");
        List<Integer> figured = new ArrayList<>();
        for (int step : FIGURED) {
            double at = x(step * TICK_RADIANS);
            group.add(Shapes.line(Pen.EDGE, new Spot(at, mantle.bottom()), new Spot(at, mantle.bottom() + 8)));
            List<String> text = List.of(Integer.toString(step * 30).replace('-', '−'));
            Spot spot = new Spot(at, mantle.bottom() + 22);
            if (step <= 0 || figured.contains(-step)) {
                labels.place(page.id("degree" + step), text, spot, List.of(spot), WIDTH)
                        .ifPresent(label -> figured.add(step));
            }
        }
        double low = mantle.bottom() + 50;
        double half = Lettering.width("seam") / 2;
        for (double at : new double[] {mantle.left(), mantle.right()}) {
            Spot spot = new Spot(Math.min(at, WIDTH - half - 2), low);
            labels.place(
                    page.id(at == mantle.left() ? "seam.left" : "seam.right"),
                    List.of("seam"),
                    spot,
                    List.of(spot),
                    WIDTH);
        }
        Spot deg = new Spot(mantle.middle().x(), low);
        labels.place(page.id("unit.degrees"), List.of("deg"), deg, List.of(deg), WIDTH);
    }

    /// Heights above the base, at the left.
    private void drawHeights(Labels labels) {
        boolean metric = print.unit() == PaperUnit.MILLIMETRES;
        double step = metric ? 0.001 : 0.0254 / 16;
        double[] factors = metric ? new double[] {2, 2.5, 2} : new double[] {2, 2, 2};
        for (int i = 0; step * pixelsPerMetre < 30; i++) {
            step *= factors[i % 3];
        }
        Markup group = page.group("heights");
        double x = mantle.left() - 10;
        Stretch axis = new Stretch(new Spot(x, mantle.top()), new Spot(x, mantle.bottom()));
        group.add(Shapes.line(Pen.THIN, axis));
        labels.keepEdge(axis);
        for (double at = Math.ceil(shown.mantle().lowMetres() / step - 1e-9) * step;
                at <= shown.mantle().highMetres() + 1e-9;
                at += step) {
            group.add(Shapes.line(Pen.EDGE, new Spot(x - 6, y(at)), new Spot(x, y(at))));
            List<String> text = List.of(print.lengthNumber(at, Print.Hand.TAPE));
            Spot spot = new Spot(x - 10 - Lettering.width(text) / 2, y(at));
            labels.place(page.id("height." + Math.round(at * 1e5)), text, spot, List.of(spot), WIDTH);
        }
        List<String> unit = List.of("up, " + print.lengthUnit());
        Spot under = new Spot(x - 10 - Lettering.width(unit) / 2, mantle.bottom() + 50);
        labels.place(
                page.id("unit.heights"), unit, under, List.of(under, under.plus(0, -24), under.plus(-12, 0)), WIDTH);
    }

    private void writeNotes() {
        Mantle of = shown.mantle();
        List<String> said = new ArrayList<>();
        if (of.isRound()) {
            said.add("Unrolled at " + print.length(of.radiusMetres(), Print.Hand.TAPE) + " radius.");
            List<Double> others = of.otherRadii();
            if (!others.isEmpty()) {
                said.add("Over the label the radius runs from "
                        + print.length(others.getFirst(), Print.Hand.TAPE) + " below to "
                        + print.length(others.getLast(), Print.Hand.TAPE) + " above.");
            }
            said.add("Degrees from the label's middle, + to its right as you look at it: a turn clockwise by as much"
                    + " brings that place to where the middle was.");
        }
        if (!of.label().isBottomWritten()) {
            said.add("Where the label begins isn't written: drawn at half height.");
        }
        if (!isSet(shown.index())) {
            String words = openWords(shown.index());
            said.add(words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1)
                    + ": what is toward the lens isn't known.");
        } else if (brackets(shown.index()).isEmpty()) {
            said.add("Nothing of it is toward the lens.");
        }
        for (int alike : shown.alike()) {
            List<String> ranges =
                    brackets(alike).stream().map(this::towardWords).toList();
            String where = isSet(alike) ? String.join(", ", ranges) : openWords(alike);
            String mirrored = mirroredWords(seen(alike));
            said.add(name(alike) + " is the same" + (where.isEmpty() ? "" : ": " + where) + "."
                    + (mirrored.isEmpty() ? "" : " Mirrored in it: " + mirrored + "."));
        }
        notes.addAll(0, said);
    }

    private double letterNotes(double from) {
        List<String> rows = notes.stream()
                .flatMap(note -> Lettering.wrapped(note, WIDTH - 8).stream())
                .toList();
        Box box = new Box(4, from, WIDTH, from + rows.size() * Lettering.LINE);
        page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", page.id("notes"))));
        return box.bottom() + 4;
    }
}
