package plumeline.draw;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.search.Leeway;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;

/// Leeway of tape marks at full size: lay the sheet on the table. One box a thing that has a mark sideways and one
/// forward and back where one of their sides is short enough to be drawn; figures stand at the sides; a side that goes
/// on further stays open.
final class LeewayBoxes {
    /// CSS pixels in a metre: 96 to the inch.
    private static final double PIXELS = 96 / 0.0254;

    private static final double CELL = 232;
    private static final double TALL = 190;
    private static final int ACROSS = 3;
    private static final double MOST = 46;

    private final Page page;
    private final LeewayText text;
    private final Labels labels;
    private final List<Pair> pairs = new ArrayList<>();

    /// The two marks of one place on the table.
    private record Pair(String name, MarkAnswer x, MarkAnswer y) {}

    private LeewayBoxes(PaperUnit unit, ShotAnswer shot) {
        page = new Page(shot.shot() + ".leeway", "Shot " + shot.shot() + ": leeway of tape marks at full size");
        text = new LeewayText(unit);
        labels = new Labels(new Box(0, 0, CELL * ACROSS, 10_000));
        Map<String, MarkAnswer> sideways = new LinkedHashMap<>();
        for (MarkAnswer answer : shot.marks()) {
            String path = answer.mark().path();
            String owner = path.substring(0, Math.max(0, path.length() - 2));
            if (isTape(answer) && path.endsWith(".x")) {
                sideways.put(owner, answer);
            } else if (isTape(answer) && path.endsWith(".y")) {
                MarkAnswer aside = sideways.get(owner);
                if (aside != null && !(isRoomy(aside) && isRoomy(answer))) {
                    pairs.add(new Pair(owner, aside, answer));
                }
            }
        }
    }

    private static boolean isTape(MarkAnswer answer) {
        Mark.Kind kind = answer.mark().kind();
        return answer.setting() instanceof MarkAnswer.Setting.At
                && (kind == Mark.Kind.TAPE || kind == Mark.Kind.HUNG || kind == Mark.Kind.LAMP_PLACE);
    }

    /// Whether both sides go on further than is drawn.
    private static boolean isRoomy(MarkAnswer answer) {
        return answer.leeway().least() * PIXELS > MOST;
    }

    /// Draws them; no drawing where every tape mark has more room than a box shows.
    static List<Drawing> of(PaperUnit unit, ShotAnswer shot) {
        LeewayBoxes boxes = new LeewayBoxes(unit, shot);
        return boxes.pairs.isEmpty() ? List.of() : List.of(boxes.draw());
    }

    private Drawing draw() {
        int cell = 0;
        for (Pair pair : pairs) {
            double left = (cell % ACROSS) * CELL;
            double top = Math.floorDiv(cell, ACROSS) * TALL;
            draw(pair, new Box(left, top, left + CELL, top + TALL));
            cell++;
        }
        page.letter(labels.draw());
        int rows = (cell + ACROSS - 1) / ACROSS;
        return page.finish(CELL * Math.min(ACROSS, cell), rows * TALL);
    }

    private void draw(Pair pair, Box cell) {
        String name = pair.name();
        MarkAnswer x = pair.x();
        MarkAnswer y = pair.y();
        Spot mark = new Spot(cell.middle().x(), cell.top() + Lettering.LINE + (TALL - Lettering.LINE) / 2);
        Spot least = mark.plus(-length(x.leeway().minus()), -length(y.leeway().plus()));
        Spot most = mark.plus(length(x.leeway().plus()), length(y.leeway().minus()));
        Markup group = page.group("mark." + name);
        group.add(
                Shapes.line(Pen.THIN, mark.plus(-8, 0), mark.plus(8, 0)),
                Shapes.line(Pen.THIN, mark.plus(0, -8), mark.plus(0, 8)),
                Shapes.line(pen(x.leeway().minus()), least, new Spot(least.x(), most.y())),
                Shapes.line(pen(x.leeway().plus()), new Spot(most.x(), least.y()), most),
                Shapes.line(pen(y.leeway().plus()), least, new Spot(most.x(), least.y())),
                Shapes.line(pen(y.leeway().minus()), new Spot(least.x(), most.y()), most));
        List<String> rows =
                Lettering.rows(name, CELL - 8, pairs.stream().map(Pair::name).toList());
        String title = rows.size() == 1 ? rows.getFirst() : Lettering.fitted(name, CELL - 8);
        place(name, "name", title, new Spot(cell.middle().x(), cell.top() + Lettering.LINE / 2 + 1));
        side(name, "left", x, x.leeway().minus(), new Spot(least.x(), mark.y()), -1, 0);
        side(name, "right", x, x.leeway().plus(), new Spot(most.x(), mark.y()), 1, 0);
        side(name, "away", y, y.leeway().plus(), new Spot(mark.x(), least.y()), 0, -1);
        side(name, "near", y, y.leeway().minus(), new Spot(mark.x(), most.y()), 0, 1);
    }

    private void side(String name, String part, MarkAnswer answer, Leeway.Side side, Spot at, int dx, int dy) {
        String words =
                side instanceof Leeway.Side.Ends(double distance) ? text.figure(answer.mark(), distance) : "loose";
        double width = Lettering.width(words);
        place(name, part, words, at.plus(dx * (width / 2 + 5), dy * (Lettering.LINE / 2 + 3)));
    }

    private void place(String name, String part, String words, Spot middle) {
        labels.place(page.id("mark." + name + "." + part), List.of(words), middle, spots(middle), 500);
    }

    private static List<Spot> spots(Spot middle) {
        List<Spot> spots = new ArrayList<>(List.of(middle));
        for (int i = 1; i < 4; i++) {
            spots.add(middle.plus(0, -6 * i));
            spots.add(middle.plus(0, 6 * i));
        }
        return spots;
    }

    private static double length(Leeway.Side side) {
        return Math.min(MOST, side.distance() * PIXELS);
    }

    private static Pen pen(Leeway.Side side) {
        return side.distance() * PIXELS > MOST ? Pen.LEEWAY_OPEN : Pen.LEEWAY;
    }
}
