package plumeline.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Places labels on a sheet so that none meets another, a thing that stands there, or the sheet's edge.
///
/// Each label tries its candidate spots in order, near ones first; it covers a line only where no near spot is clear of
/// lines, and then the line is interrupted under it. A label that fits nowhere is handed back, to be said below the
/// drawing.
public final class Labels {
    private static final double AIR = 3;

    /// Up to here a label rather covers a line than moves further off, pixels.
    private static final double NEAR = 150;

    /// A placed label.
    ///
    /// @param id what it names
    /// @param lines its text
    /// @param box the room it takes
    public record Label(String id, List<String> lines, Box box) {
        /// Copies the lines.
        public Label {
            lines = List.copyOf(lines);
        }
    }

    private final Box sheet;
    private final List<Box> taken = new ArrayList<>();
    private final List<Stretch> drawn = new ArrayList<>();
    private final List<Stretch> leaders = new ArrayList<>();
    private final List<Label> placed = new ArrayList<>();

    /// Opens a sheet without labels.
    ///
    /// @param sheet where labels may stand
    public Labels(Box sheet) {
        this.sheet = sheet;
    }

    /// Keeps labels off a rectangle.
    ///
    /// @param box the rectangle
    public void keepFree(Box box) {
        taken.add(box);
    }

    /// Keeps labels off a line where they find room elsewhere.
    ///
    /// @param line the line
    public void keepLine(Stretch line) {
        drawn.add(line);
    }

    /// Gives the labels that found their places.
    ///
    /// @return in the order in which they were placed
    public List<Label> placed() {
        return List.copyOf(placed);
    }

    /// Gives the lines that lead from labels to what they name.
    ///
    /// @return each from the label
    public List<Stretch> leaders() {
        return List.copyOf(leaders);
    }

    /// Gives the room that lines of text take.
    ///
    /// @param lines the lines
    /// @param middle the middle of the room
    /// @return the room
    public static Box room(List<String> lines, Spot middle) {
        return Box.round(middle, Lettering.width(lines), lines.size() * Lettering.LINE);
    }

    /// Places a label near an anchor, with a leader where it comes to lie further off than `close`.
    ///
    /// @param id what it names
    /// @param lines its text
    /// @param anchor what it belongs to
    /// @param candidates middles to try, in order
    /// @param close from here on it has a leader, pixels
    /// @return the label; nothing where no candidate is free
    public Optional<Label> place(String id, List<String> lines, Spot anchor, List<Spot> candidates, double close) {
        List<Spot> near = candidates.stream()
                .filter(spot -> spot.distance(anchor) <= NEAR)
                .toList();
        return tryAll(id, lines, anchor, near, close, false)
                .or(() -> tryAll(id, lines, anchor, near, close, true))
                .or(() -> tryAll(id, lines, anchor, candidates, close, false))
                .or(() -> tryAll(id, lines, anchor, candidates, close, true));
    }

    private Optional<Label> tryAll(
            String id, List<String> lines, Spot anchor, List<Spot> candidates, double close, boolean overLines) {
        for (Spot candidate : candidates) {
            Box box = room(lines, candidate);
            Stretch leader = new Stretch(box.nearestTo(anchor), anchor);
            boolean led = leader.from().distance(anchor) > close;
            if (isFree(box, overLines) && (!led || isOpen(leader))) {
                Label label = new Label(id, lines, box);
                placed.add(label);
                taken.add(box);
                if (led) {
                    leaders.add(leader);
                }
                return Optional.of(label);
            }
        }
        return Optional.empty();
    }

    private boolean isFree(Box box, boolean overLines) {
        Box roomy = box.grown(AIR);
        return sheet.holds(box)
                && taken.stream().noneMatch(roomy::meets)
                && leaders.stream().noneMatch(line -> line.crosses(roomy))
                && (overLines || drawn.stream().noneMatch(line -> line.crosses(box)));
    }

    /// Whether a leader runs through no other label and over no other thing than its own.
    private boolean isOpen(Stretch leader) {
        Spot anchor = leader.to();
        return taken.stream().noneMatch(box -> !box.holds(anchor) && leader.crosses(box))
                && placed.stream().noneMatch(label -> leader.crosses(label.box().grown(1)));
    }

    /// Gives spots round an anchor, nearest first.
    ///
    /// @param anchor the anchor
    /// @param lines the label's text
    /// @param clear least distance from the anchor to the label, pixels
    /// @param farthest greatest, pixels
    /// @return middles of labels
    public static List<Spot> around(Spot anchor, List<String> lines, double clear, double farthest) {
        double halfWidth = Lettering.width(lines) / 2;
        double halfHeight = lines.size() * Lettering.LINE / 2;
        double[][] ways = {
            {1, 0},
            {1, -1},
            {1, 1},
            {-1, 0},
            {-1, -1},
            {-1, 1},
            {0, -1},
            {0, 1},
            {1, -0.5},
            {1, 0.5},
            {-1, -0.5},
            {-1, 0.5},
            {0.5, -1},
            {0.5, 1},
            {-0.5, -1},
            {-0.5, 1}
        };
        List<Spot> spots = new ArrayList<>();
        for (double reach = clear; reach <= farthest; reach += 14) {
            for (double[] way : ways) {
                spots.add(anchor.plus(way[0] * (halfWidth + reach), way[1] * (halfHeight + reach)));
            }
        }
        return spots;
    }

    /// Draws the leaders and the labels, each on a white ground.
    ///
    /// @return the shapes
    public List<Markup> draw() {
        List<Markup> all = new ArrayList<>();
        for (Stretch leader : leaders) {
            all.add(Shapes.line(Pen.THIN, leader));
        }
        for (Label label : placed) {
            Box box = label.box();
            all.add(Markup.of(
                            "g",
                            Markup.of("rect")
                                    .with("x", box.left() - 1)
                                    .with("y", box.top())
                                    .with("width", box.width() + 2)
                                    .with("height", box.height())
                                    .with("fill", "#fff"),
                            Lettering.text(label.lines(), box))
                    .with("id", label.id()));
        }
        return all;
    }
}
