package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;

/// The labels of a plan from above: they wait until all lines are drawn, then find their places.
final class PlanLettering {
    /// How far from its anchor a label may lie, pixels.
    private static final double FARTHEST = 330;

    /// How much of the sheet's width a label takes at most; longer lines are broken.
    private static final double WIDEST = 0.45;

    /// How far aside a leader of a stacked label may go for each pixel up or down.
    private static final double FLATTEST = 1.6;

    /// How far a hanging label reaches past its leader, pixels.
    private static final double LEDGE = 8;

    /// Between spots of a sheet that is searched for free room, pixels.
    private static final double GRID = 18;

    /// A label in waiting; `below` says it in words where it finds no room at its candidates nor `otherwise`. Where it
    /// has an own room, a number stands there then, and before the words.
    private record Pending(
            String id,
            List<String> lines,
            String below,
            Spot anchor,
            List<Spot> candidates,
            double close,
            List<Spot> otherwise,
            List<Box> own) {
        Pending(
                String id,
                List<String> lines,
                String below,
                Spot anchor,
                List<Spot> candidates,
                double close,
                List<Spot> otherwise) {
            this(id, lines, below, anchor, candidates, close, otherwise, List.of());
        }

        Pending(String id, List<String> lines, String below, Spot anchor, List<Spot> candidates, double close) {
            this(id, lines, below, anchor, candidates, close, List.of());
        }
    }

    private final Page page;
    private final Labels labels;
    private final Box sheet;
    private final List<String> names;
    private final List<Pending> pending = new ArrayList<>();
    private final List<Note> notes = new ArrayList<>();
    private int numbers;

    /// Words in rows below the sheet.
    private record Note(String id, String words) {}

    /// @param shot whose things and lamps are named: where a name is cut it is still told from the others
    PlanLettering(Page page, Labels labels, Box sheet, Shot shot) {
        this.page = page;
        this.labels = labels;
        this.sheet = sheet;
        names = Stream.concat(
                        shot.placed().stream().map(Placed::name),
                        shot.lights().stream().map(PlacedLight::name))
                .toList();
    }

    /// Lines as a label has them: no wider than its share of the sheet.
    private List<String> fitted(List<String> lines) {
        return lines.stream()
                .flatMap(line -> Lettering.wrapped(line, sheet.width() * WIDEST, names).stream())
                .toList();
    }

    /// Asks for a label near its anchor, after those that were asked for before.
    void near(String id, List<String> lines, Spot anchor, double clear, double close) {
        List<String> fitted = fitted(lines);
        List<Spot> candidates = Labels.around(anchor, fitted, clear, FARTHEST);
        pending.add(new Pending(
                page.id("name." + id),
                fitted,
                String.join(", ", lines),
                anchor,
                candidates,
                close,
                anywhere(anchor, fitted)));
    }

    /// Asks for the name of a thing; where it finds no room a number stands at the thing and its row below the sheet.
    void thing(String id, List<String> lines, Box own, Spot anchor, String listed) {
        List<String> fitted = fitted(lines);
        double clear = Math.max(own.width(), own.height()) / 2 + 6;
        pending.add(new Pending(
                page.id("name." + id),
                fitted,
                listed,
                anchor,
                Labels.around(anchor, fitted, clear, FARTHEST),
                clear + 10,
                anywhere(anchor, fitted),
                List.of(own)));
    }

    /// Spots all over the sheet, the nearest first.
    private List<Spot> anywhere(Spot anchor, List<String> lines) {
        double halfWidth = Lettering.width(lines) / 2;
        double halfHeight = lines.size() * Lettering.LINE / 2;
        List<Spot> spots = new ArrayList<>();
        for (double x = sheet.left() + halfWidth + 2; x < sheet.right() - halfWidth; x += GRID) {
            for (double y = sheet.top() + halfHeight + 2; y < sheet.bottom() - halfHeight; y += GRID) {
                spots.add(new Spot(x, y));
            }
        }
        spots.sort(Comparator.comparingDouble(spot -> spot.distance(anchor)));
        return spots;
    }

    /// Asks for a figure beside a dimension line, before all names.
    void beside(String id, String figure, String below, Stretch line) {
        List<String> text = List.of(figure);
        Spot middle = line.from().toward(line.to(), 0.5);
        pending.addFirst(new Pending(page.id(id), text, below, middle, along(line, text), 30));
    }

    /// Which way a label goes from its anchor.
    enum Way {
        /// Up the page.
        UP,
        /// Down the page.
        DOWN
    }

    /// Asks for a label above or below its anchor, or aside of that; for things that stand in a row.
    void stacked(String id, List<String> lines, Spot anchor, double clear, Way way) {
        List<String> fitted = fitted(lines);
        double half = fitted.size() * Lettering.LINE / 2;
        List<Spot> candidates = new ArrayList<>();
        int sign = way == Way.UP ? -1 : 1;
        for (double off = clear; off < FARTHEST; off += 13) {
            for (int aside = 0; aside <= 20; aside++) {
                candidates.add(anchor.plus(aside * 14, sign * (off + half)));
                candidates.add(anchor.plus(-aside * 14, sign * (off + half)));
            }
        }
        double wide = Lettering.width(fitted) / 2;
        candidates.removeIf(
                at -> Math.abs(at.x() - anchor.x()) - wide > FLATTEST * (Math.abs(at.y() - anchor.y()) - half));
        candidates.sort(
                Comparator.comparingDouble(at -> Math.abs(at.x() - anchor.x()) + 1.3 * Math.abs(at.y() - anchor.y())));
        candidates.addAll(anywhere(anchor, fitted));
        String below = String.join(", ", lines);
        List<Spot> hanging = hanging(anchor, wide, sign * (half + clear), sign);
        pending.add(new Pending(page.id("name." + id), fitted, below, anchor, hanging, clear - 1, candidates));
    }

    /// Spots to the left under or over an anchor, each a step further off, with the leader at the label's right end:
    /// when those of a row are placed from left to right, no leader meets a label.
    private static List<Spot> hanging(Spot anchor, double halfWidth, double down, int sign) {
        List<Spot> spots = new ArrayList<>();
        for (double more = 0; more < FARTHEST; more += 7) {
            spots.add(anchor.plus(LEDGE - halfWidth, down + sign * more));
        }
        return spots;
    }

    /// Asks for words to the left under an anchor, without a leader.
    void under(String id, String words, Spot anchor, double down) {
        Spot spot = anchor.plus(-6 - Lettering.width(words) / 2, down + Lettering.LINE / 2);
        List<Spot> other = Labels.around(anchor, List.of(words), down, FARTHEST);
        pending.add(new Pending(page.id("name." + id), List.of(words), words, anchor, List.of(spot), 40, other));
    }

    /// Asks for a figure of a dimension line, before all names, at a spot or else beside the line.
    void figure(String id, String figure, String below, Stretch line, Spot first) {
        List<String> text = List.of(figure);
        Spot middle = line.from().toward(line.to(), 0.5);
        pending.addFirst(new Pending(page.id(id), text, below, middle, List.of(first), 1e4, along(line, text)));
    }

    /// Says something in rows below the sheet.
    ///
    /// @param id what it is about
    void note(String id, String words) {
        notes.add(new Note(page.id("note." + id), words));
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
            if (place(label, label.candidates())
                            .or(() -> place(label, label.otherwise()))
                            .isEmpty()
                    && !isNumbered(label)) {
                unplaced.add(label.below());
            }
        }
        page.letter(labels.draw());
        return letterBelow(unplaced);
    }

    private boolean isNumbered(Pending label) {
        for (Box own : label.own()) {
            List<String> number = List.of(Integer.toString(numbers + 1));
            List<Spot> spots = Labels.around(label.anchor(), number, own.width() / 2 + 3, FARTHEST);
            if (labels.placeInside(label.id(), number, own)
                    .or(() -> labels.place(label.id(), number, label.anchor(), spots, own.width() / 2 + 13))
                    .isPresent()) {
                numbers++;
                notes.add(new Note(label.id() + ".note", numbers + ": " + label.below()));
                return true;
            }
        }
        return false;
    }

    private Optional<Labels.Label> place(Pending label, List<Spot> candidates) {
        return labels.place(label.id(), label.lines(), label.anchor(), candidates, label.close());
    }

    /// What found no room on the sheet is said in rows below it, then the notes.
    private double letterBelow(List<String> unplaced) {
        double y = sheet.bottom();
        if (!unplaced.isEmpty()) {
            y = letterRows(page.id("unplaced"), rows(unplaced), y);
        }
        for (Note note : notes) {
            y = letterRows(note.id(), List.of(note.words()), y);
        }
        return y;
    }

    /// As many in a row as it holds.
    private List<String> rows(List<String> unplaced) {
        List<String> rows = new ArrayList<>();
        String row = "no room above: " + unplaced.getFirst();
        for (String text : unplaced.subList(1, unplaced.size())) {
            String longer = row + "; " + text;
            if (Lettering.width(longer) > sheet.width() - 8) {
                rows.add(row);
                longer = text;
            }
            row = longer;
        }
        rows.add(row);
        return rows;
    }

    private double letterRows(String id, List<String> words, double top) {
        List<String> rows = words.stream()
                .flatMap(row -> Lettering.wrapped(row, sheet.width() - 8).stream())
                .toList();
        Box box = new Box(4, top, sheet.right(), top + rows.size() * Lettering.LINE);
        page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", id)));
        return box.bottom();
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
