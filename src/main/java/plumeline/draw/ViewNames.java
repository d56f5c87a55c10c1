package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Spot;

/// Names of things below a camera view, in as many rows as they take; what finds no room is said in rows of words.
final class ViewNames {
    private static final int MOST_ROWS = 30;
    private static final int NAME_ROWS = 12;

    /// Names that take no more rows than this are placed well enough.
    private static final int FEW_ROWS = 2;

    private static final double STEP = 28;

    /// How far leaders of neighbours stand apart, pixels.
    private static final double APART = 7;

    /// A name.
    ///
    /// @param id of its label
    /// @param lines its text
    /// @param anchor where its thing ends below
    record Name(String id, List<String> lines, Spot anchor) {
        Name {
            lines = List.copyOf(lines);
        }
    }

    private final Box sheet;

    /// @param width the sheet's width, pixels
    /// @param floor the upper edge of the rows, below the picture
    ViewNames(double width, double floor) {
        sheet = new Box(0, floor, width, floor + Lettering.ROW * MOST_ROWS);
    }

    /// Places names and letters them, then the rows of words below them.
    ///
    /// @param page the drawing
    /// @param names the names
    /// @param words an id, and words below the names; empty for none
    /// @return how far down they reach
    double letter(Page page, List<Name> names, List<String> words, String id) {
        Labels greedy = placed(names, orders(names));
        Labels best = greedy;
        if (!isGood(greedy, names)) {
            Labels steps = inSteps(names);
            best = steps.placed().size() >= greedy.placed().size() ? steps : greedy;
        }
        Labels chosen = best;
        page.letter(chosen.draw());
        List<String> rows = new ArrayList<>();
        List<String> unplaced = names.stream()
                .filter(name ->
                        chosen.placed().stream().noneMatch(label -> label.id().equals(name.id())))
                .map(name -> String.join(" ", name.lines()))
                .toList();
        addRows(rows, "no room for: ", unplaced);
        rows.addAll(words);
        double floor = Math.max(bottom(chosen), sheet.top());
        if (!rows.isEmpty()) {
            Box box = new Box(2, floor + 2, sheet.right(), floor + 2 + Lettering.LINE * rows.size());
            page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", id)));
            floor = box.bottom();
        }
        return floor;
    }

    /// Breaks a list of names into rows; a name that is too long for one is cut.
    void addRows(List<String> rows, String head, List<String> names) {
        String row = "";
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i) + (i + 1 < names.size() ? "," : "");
            String longer = i == 0 ? head + name : row + " " + name;
            if (i > 0 && Lettering.width(longer) > sheet.width() - 6) {
                rows.add(row);
                longer = name;
            }
            row = Lettering.fitted(longer, sheet.width() - 6);
        }
        if (!row.isEmpty()) {
            rows.add(row);
        }
    }

    private static List<List<Name>> orders(List<Name> names) {
        List<Name> leftFirst = new ArrayList<>(names);
        leftFirst.sort(Comparator.comparingDouble(name -> name.anchor().x()));
        double middle = names.isEmpty()
                ? 0
                : (leftFirst.getFirst().anchor().x()
                                + leftFirst.getLast().anchor().x())
                        / 2;
        List<Name> middleFirst = new ArrayList<>(leftFirst);
        middleFirst.sort(
                Comparator.comparingDouble(name -> Math.abs(name.anchor().x() - middle)));
        return List.of(leftFirst, leftFirst.reversed(), middleFirst, middleFirst.reversed());
    }

    /// The placing that leaves fewest names out and takes fewest rows.
    private Labels placed(List<Name> names, List<List<Name>> orders) {
        Labels best = new Labels(sheet);
        for (List<Name> order : orders) {
            Labels labels = new Labels(sheet);
            order.forEach(name -> place(labels, name));
            if (isBetter(labels, best)) {
                best = labels;
            }
            if (isGood(best, names)) {
                break;
            }
        }
        return best;
    }

    private static boolean isBetter(Labels labels, Labels other) {
        int more = labels.placed().size() - other.placed().size();
        return more > 0 || more == 0 && bottom(labels) < bottom(other);
    }

    private boolean isGood(Labels labels, List<Name> names) {
        return labels.placed().size() == names.size() && bottom(labels) <= sheet.top() + FEW_ROWS * Lettering.ROW;
    }

    /// Two flights of steps that meet: names left of there end at their leader, those right of it begin there, outer
    /// ones higher, so that no leader crosses a name or another.
    private Labels inSteps(List<Name> names) {
        List<Name> order = orders(names).getFirst();
        Labels best = inSteps(order, (order.size() + 1) / 2);
        for (int left = 0; left <= order.size(); left++) {
            Labels labels = inSteps(order, left);
            if (isBetter(labels, best)) {
                best = labels;
            }
        }
        return best;
    }

    private Labels inSteps(List<Name> order, int half) {
        Labels labels = new Labels(sheet);
        double x = 0;
        int row = 0;
        for (int i = 0; i < half; i++) {
            x = Math.max(x + APART, order.get(i).anchor().x());
            row += step(labels, order.get(i), row, x, -1) ? 1 : 0;
        }
        x = sheet.right();
        row = 0;
        for (int i = order.size() - 1; i >= half; i--) {
            x = Math.min(x - APART, order.get(i).anchor().x());
            row += step(labels, order.get(i), row, x, 1) ? 1 : 0;
        }
        return labels;
    }

    private boolean step(Labels labels, Name name, int row, double x, int side) {
        double width = Lettering.width(name.lines());
        double left = side < 0 ? x - 3 - width : x + 3;
        double y = sheet.top() + Lettering.LINE * (name.lines().size() - 1) / 2 + STEP * (row + 0.5);
        double fitting = Math.clamp(left, 1, Math.max(1, sheet.right() - width - 1));
        return labels.place(name.id(), name.lines(), name.anchor(), List.of(new Spot(fitting + width / 2, y)), 1)
                .isPresent();
    }

    private static double bottom(Labels labels) {
        return labels.placed().stream()
                .mapToDouble(label -> label.box().bottom())
                .max()
                .orElse(0);
    }

    private void place(Labels labels, Name name) {
        Spot anchor = name.anchor();
        List<Spot> candidates = new ArrayList<>();
        double half = Lettering.LINE * (name.lines().size() - 1) / 2;
        for (int row = 0; row < NAME_ROWS; row++) {
            double y = sheet.top() + Lettering.ROW * (row + 0.5) + half;
            for (int aside = 0; aside <= 15; aside++) {
                candidates.add(new Spot(anchor.x() + aside * 12, y));
                candidates.add(new Spot(anchor.x() - aside * 12, y));
            }
        }
        candidates.sort(
                Comparator.comparingDouble(at -> Math.abs(at.x() - anchor.x()) + 2 * Math.abs(at.y() - sheet.top())));
        labels.place(name.id(), name.lines(), anchor, candidates, 1);
    }
}
