package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Spot;

/// Names of things below or above a picture, in as many rows as they take.
final class ViewNames {
    private static final int MOST_ROWS = 30;
    private static final int NAME_ROWS = 12;

    /// Names that take no more rows than this are placed well enough.
    private static final int FEW_ROWS = 2;

    private static final double STEP = 28;

    /// How far leaders of neighbours stand apart, pixels.
    private static final double APART = 7;

    /// More names than this stand in steps anyway.
    private static final int FEW_NAMES = 8;

    /// A name.
    ///
    /// @param id of its label
    /// @param lines its text
    /// @param anchor where its leader ends
    record Name(String id, List<String> lines, Spot anchor) {
        Name {
            lines = List.copyOf(lines);
        }
    }

    /// To which side of a picture names stand.
    enum Side {
        /// Below its lower edge.
        BELOW(1),
        /// Above its upper edge.
        ABOVE(-1);

        private final int down;

        Side(int down) {
            this.down = down;
        }
    }

    /// Names in their places.
    ///
    /// @param labels the labels: names, or numbers where not all names find room
    /// @param key the numbers' names, such as `1: second`; none where names stand
    /// @param unplaced what found no room
    /// @param reach how far from the picture's edge they reach, pixels
    record Placing(Labels labels, List<String> key, List<String> unplaced, double reach) {
        Placing {
            key = List.copyOf(key);
            unplaced = List.copyOf(unplaced);
        }
    }

    private final Side side;
    private final double edge;
    private final Box sheet;

    /// @param width the page's
    /// @param edge the height on the page from which on names stand
    ViewNames(double width, double edge, Side side) {
        this.side = side;
        this.edge = edge;
        double far = edge + side.down * Lettering.ROW * MOST_ROWS;
        sheet = new Box(0, Math.min(edge, far), width, Math.max(edge, far));
    }

    /// Finds places for names; where there isn't room for all, for numbers from left to right instead.
    Placing place(List<Name> names) {
        Labels best = names.size() > FEW_NAMES ? new Labels(sheet) : placed(names, orders(names));
        if (!isGood(best, names)) {
            Labels steps = inSteps(names);
            best = steps.placed().size() >= best.placed().size() ? steps : best;
        }
        return best.placed().size() == names.size()
                ? new Placing(best, List.of(), List.of(), reach(best))
                : numbered(names);
    }

    private Placing numbered(List<Name> names) {
        List<Name> order = orders(names).getFirst();
        List<Name> numbers = new ArrayList<>();
        for (Name name : order) {
            numbers.add(new Name(name.id(), List.of(Integer.toString(numbers.size() + 1)), name.anchor()));
        }
        Labels rows = placed(numbers, orders(numbers));
        Labels steps = inSteps(numbers);
        Labels best = isBetter(steps, rows) ? steps : rows;
        Set<String> placed = best.placed().stream().map(Labels.Label::id).collect(Collectors.toSet());
        List<String> key = new ArrayList<>();
        List<String> unplaced = new ArrayList<>();
        for (int i = 0; i < order.size(); i++) {
            String words = String.join(" ", order.get(i).lines());
            if (placed.contains(order.get(i).id())) {
                key.add((i + 1) + ": " + words);
            } else {
                unplaced.add(words);
            }
        }
        return new Placing(best, key, unplaced, reach(best));
    }

    /// Breaks a list of names into rows; a name that is too long for one is broken too.
    void addRows(List<String> rows, String head, List<String> names) {
        String row = "";
        for (int i = 0; i < names.size(); i++) {
            String name = names.get(i) + (i + 1 < names.size() ? "," : "");
            String longer = i == 0 ? head + name : row + " " + name;
            if (i > 0 && Lettering.width(longer) > sheet.width() - 6) {
                rows.add(row);
                longer = name;
            }
            List<String> pieces = Lettering.wrapped(longer, sheet.width() - 6);
            rows.addAll(pieces.subList(0, pieces.size() - 1));
            row = pieces.getLast();
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

    private boolean isBetter(Labels labels, Labels other) {
        int more = labels.placed().size() - other.placed().size();
        return more > 0 || more == 0 && reach(labels) < reach(other);
    }

    private boolean isGood(Labels labels, List<Name> names) {
        return labels.placed().size() == names.size() && reach(labels) <= FEW_ROWS * Lettering.ROW;
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

    private boolean step(Labels labels, Name name, int row, double x, int aside) {
        double width = Lettering.width(name.lines());
        double left = aside < 0 ? x - 3 - width : x + 3;
        double y = y(Lettering.LINE * (name.lines().size() - 1) / 2 + STEP * (row + 0.5));
        double fitting = Math.clamp(left, 1, Math.max(1, sheet.right() - width - 1));
        return labels.place(name.id(), name.lines(), name.anchor(), List.of(new Spot(fitting + width / 2, y)), 1)
                .isPresent();
    }

    private double reach(Labels labels) {
        return labels.placed().stream()
                .map(Labels.Label::box)
                .mapToDouble(box -> side == Side.BELOW ? box.bottom() - edge : edge - box.top())
                .max()
                .orElse(0);
    }

    private double y(double away) {
        return edge + side.down * away;
    }

    private void place(Labels labels, Name name) {
        Spot anchor = name.anchor();
        List<Spot> candidates = new ArrayList<>();
        double half = Lettering.LINE * (name.lines().size() - 1) / 2;
        for (int row = 0; row < NAME_ROWS; row++) {
            double y = y(Lettering.ROW * (row + 0.5) + half);
            for (int aside = 0; aside <= 15; aside++) {
                candidates.add(new Spot(anchor.x() + aside * 12, y));
                candidates.add(new Spot(anchor.x() - aside * 12, y));
            }
        }
        candidates.sort(Comparator.comparingDouble(at -> Math.abs(at.x() - anchor.x()) + 2 * Math.abs(at.y() - edge)));
        labels.place(name.id(), name.lines(), anchor, candidates, 1);
    }
}
