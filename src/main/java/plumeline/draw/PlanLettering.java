package plumeline.draw;

import java.util.ArrayList;
import java.util.List;

/// The labels of a plan from above: they wait until all lines are drawn, then find their places.
final class PlanLettering {
    /// How far from its anchor a label may lie, pixels.
    private static final double FARTHEST = 330;

    /// How much of the sheet's width a label takes at most; longer lines are broken.
    private static final double WIDEST = 0.45;

    /// A label in waiting; `below` says it in words where it finds no room.
    private record Pending(
            String id, List<String> lines, String below, Spot anchor, List<Spot> candidates, double close) {}

    private final Page page;
    private final Labels labels;
    private final Box sheet;
    private final List<Pending> pending = new ArrayList<>();

    PlanLettering(Page page, Labels labels, Box sheet) {
        this.page = page;
        this.labels = labels;
        this.sheet = sheet;
    }

    /// Asks for a label near its anchor, after those that were asked for before.
    void near(String id, List<String> lines, Spot anchor, double clear, double close) {
        List<String> fitted = lines.stream()
                .flatMap(line -> Lettering.wrapped(line, sheet.width() * WIDEST).stream())
                .toList();
        List<Spot> candidates = Labels.around(anchor, fitted, clear, FARTHEST);
        pending.add(new Pending(page.id("name." + id), fitted, String.join(", ", lines), anchor, candidates, close));
    }

    /// Asks for a figure beside a dimension line, before all names.
    void beside(String id, String figure, String below, Stretch line) {
        List<String> text = List.of(figure);
        Spot middle = line.from().toward(line.to(), 0.5);
        pending.addFirst(new Pending(page.id(id), text, below, middle, along(line, text), 30));
    }

    /// Asks for words at the sheet's lower edge, as far right as they find room.
    void atLowerRight(String id, String words) {
        double y = sheet.bottom() - 14;
        List<Spot> candidates = new ArrayList<>();
        for (double x = sheet.right() - 4 - Lettering.width(words) / 2; x > 60; x -= 20) {
            candidates.add(new Spot(x, y));
        }
        pending.addFirst(
                new Pending(page.id("name." + id), List.of(words), words, candidates.getFirst(), candidates, 1e4));
    }

    /// Places and draws all labels.
    ///
    /// @return how far down the drawing reaches
    double letter() {
        List<String> unplaced = new ArrayList<>();
        for (Pending label : pending) {
            if (labels.place(label.id(), label.lines(), label.anchor(), label.candidates(), label.close())
                    .isEmpty()) {
                unplaced.add(label.below());
            }
        }
        page.letter(labels.draw());
        return letterBelow(unplaced);
    }

    /// What found no room on the sheet is said in rows below it.
    private double letterBelow(List<String> unplaced) {
        double y = sheet.bottom();
        List<Markup> rows = new ArrayList<>();
        String row = "";
        for (String text : unplaced) {
            String longer = row.isEmpty() ? "no room above: " + text : row + "; " + text;
            if (Lettering.width(longer) > sheet.width() - 8 && !row.isEmpty()) {
                rows.add(below(row, y));
                y += Lettering.LINE;
                longer = text;
            }
            row = longer;
        }
        if (!row.isEmpty()) {
            rows.add(below(row, y));
            y += Lettering.LINE;
        }
        page.letter(rows);
        return y;
    }

    private Markup below(String row, double y) {
        Box box = new Box(4, y, sheet.right(), y + Lettering.LINE);
        return Lettering.text(List.of(Lettering.fitted(row, sheet.width() - 8)), box);
    }

    /// Spots beside a dimension line: near its middle first.
    private static List<Spot> along(Stretch line, List<String> text) {
        double length = Math.max(line.from().distance(line.to()), 1e-9);
        double nx = -(line.to().y() - line.from().y()) / length;
        double ny = (line.to().x() - line.from().x()) / length;
        double off = Math.abs(nx) * Lettering.width(text) / 2 + Math.abs(ny) * Lettering.LINE / 2 + 3;
        List<Spot> spots = new ArrayList<>();
        for (double more : new double[] {0, 10, 22, 36, 52, 70, 90}) {
            for (double share : new double[] {0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8}) {
                Spot on = line.from().toward(line.to(), share);
                spots.add(on.plus(nx * (off + more), ny * (off + more)));
                spots.add(on.plus(-nx * (off + more), -ny * (off + more)));
            }
        }
        return spots;
    }
}
