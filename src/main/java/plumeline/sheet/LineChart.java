package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import plumeline.card.Card;
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

/// A line over two rulers, words beside it.
final class LineChart {
    private static final double WIDTH = 690;
    private static final double HEIGHT = 240;
    private static final double RIGHT = 22;
    private static final double TOP = 40;

    /// Between two figures of a ruler, pixels.
    private static final double LEAST_ACROSS = 64;

    private static final double LEAST_UP = 40;
    private static final double TICK = 6;
    private static final double NEAR = 10;
    private static final double FAR = 90;

    private final Card.Part.Chart chart;
    private final Page page;
    private final Labels labels = new Labels(new Box(0, 0, WIDTH, 10_000));
    private final double left;
    private final double floor = TOP + HEIGHT;

    private LineChart(String id, Card.Part.Chart chart) {
        this.chart = chart;
        page = new Page(
                id,
                chart.name() + ": " + chart.across().words() + " to the right, "
                        + chart.up().words() + " upward");
        left = 12
                + TICK
                + 4
                + figures(chart.up(), LEAST_UP / HEIGHT).stream()
                        .mapToDouble(figure -> Lettering.width(text(figure)))
                        .max()
                        .orElse(0);
    }

    static Drawing of(String id, Card.Part.Chart chart) {
        return new LineChart(id, chart).draw();
    }

    private double x(double across) {
        return left + across / chart.across().last() * (WIDTH - RIGHT - left);
    }

    private double y(double up) {
        return floor - up / chart.up().last() * HEIGHT;
    }

    private Spot spot(Card.Corner corner) {
        return new Spot(x(corner.across()), y(corner.up()));
    }

    /// Round figures of a ruler, no closer than a share of it.
    private static List<Double> figures(Card.Axis axis, double leastShare) {
        double least = axis.last() * leastShare;
        double decade = Math.pow(10, Math.floor(Math.log10(least)));
        double step = decade * 10;
        for (double lead : new double[] {5, 2, 1}) {
            step = decade * lead >= least * (1 - 1e-9) ? decade * lead : step;
        }
        List<Double> figures = new ArrayList<>();
        for (int i = 0; i * step <= axis.last() * (1 + 1e-9); i++) {
            figures.add(i * step);
        }
        return figures;
    }

    private static String text(double figure) {
        return Print.number(figure, 3);
    }

    private Drawing draw() {
        rulers();
        List<Spot> line = chart.line().stream().map(this::spot).toList();
        page.group("line").add(Shapes.run(Pen.OUTLINE, line));
        for (int i = 1; i < line.size(); i++) {
            labels.keepEdge(new Stretch(line.get(i - 1), line.get(i)));
        }
        Markup marks = page.group("marks");
        for (int i = 0; i < chart.notes().size(); i++) {
            Card.Note note = chart.notes().get(i);
            Spot at = spot(note.at());
            marks.add(Shapes.dot(at, 3.5));
            List<String> words = List.of(note.words());
            labels.place(page.id("note." + i), words, at, Labels.around(at, words, NEAR, FAR), 3 * NEAR);
        }
        page.letter(labels.draw());
        return page.finish(WIDTH, floor + TICK + 2 * Lettering.ROW + 4);
    }

    private void rulers() {
        Markup rulers = page.group("rulers");
        rulers.add(Shapes.line(Pen.EDGE, new Spot(left, floor), new Spot(WIDTH - RIGHT, floor)));
        rulers.add(Shapes.line(Pen.EDGE, new Spot(left, floor), new Spot(left, TOP)));
        labels.keepEdge(new Stretch(new Spot(left, floor), new Spot(left, TOP)));
        labels.keepEdge(new Stretch(new Spot(left, floor), new Spot(WIDTH - RIGHT, floor)));
        for (double figure : figures(chart.across(), LEAST_ACROSS / (WIDTH - RIGHT - left))) {
            double x = x(figure);
            rulers.add(Shapes.line(Pen.EDGE, new Spot(x, floor), new Spot(x, floor + TICK)));
            letter("across." + text(figure), text(figure), x, floor + TICK + Lettering.LINE / 2);
        }
        for (double figure : figures(chart.up(), LEAST_UP / HEIGHT)) {
            double y = y(figure);
            rulers.add(Shapes.line(Pen.EDGE, new Spot(left - TICK, y), new Spot(left, y)));
            letter("up." + text(figure), text(figure), left - TICK - 4 - Lettering.width(text(figure)) / 2, y);
        }
        String up = chart.up().words();
        letter("up", up, 4 + Lettering.width(up) / 2, Lettering.LINE / 2);
        String across = chart.across().words();
        letter(
                "across",
                across,
                WIDTH - RIGHT - Lettering.width(across) / 2,
                floor + TICK + Lettering.ROW + Lettering.LINE / 2);
    }

    private void letter(String id, String words, double x, double y) {
        Spot middle = new Spot(x, y);
        labels.place(page.id(id), List.of(words), middle, List.of(middle), 1e4);
    }
}
