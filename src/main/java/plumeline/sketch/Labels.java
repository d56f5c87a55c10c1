package plumeline.sketch;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Places labels on a sheet so that none meets another, a thing that stands there, or the sheet's edge.
///
/// Each label tries its candidate spots in order, near ones first; it covers a thin line only where no near spot is
/// clear of lines, and then the line is interrupted under its letters. It never covers an edge. A label that fits
/// nowhere is handed back, to be said below the drawing.
public final class Labels {
    private static final double AIR = 3;

    /// Up to here a label rather covers a thin line than moves further off, pixels.
    private static final double NEAR = 150;

    /// Up to here a label moves off before it covers a thin line, pixels.
    private static final double CLEAN = 220;

    /// A label that stands nearer to another thing than this many times its way to its own has a leader.
    private static final double DOUBTFUL = 2;

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

    /// A line from a label to what it names.
    private record Leader(String label, Stretch line) {}

    private final Box sheet;
    private final List<Box> taken = new ArrayList<>();
    private final List<Stretch> drawn = new ArrayList<>();
    private final List<Stretch> edges = new ArrayList<>();
    private final List<Box> things = new ArrayList<>();
    private final List<List<Spot>> rings = new ArrayList<>();
    private final List<Leader> leaders = new ArrayList<>();
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

    /// Keeps labels off a line wherever they stand.
    ///
    /// @param line the line
    public void keepEdge(Stretch line) {
        edges.add(line);
    }

    /// Keeps labels off a thing; one that stands nearer to it than to its own has a leader.
    ///
    /// @param box the thing's room
    public void keepThing(Box box) {
        taken.add(box);
        things.add(box);
    }

    /// Keeps labels and the leaders of others out of an outline.
    ///
    /// @param ring its corners in order, convex
    public void keepRing(List<Spot> ring) {
        rings.add(List.copyOf(ring));
        for (int i = 0; i < ring.size(); i++) {
            edges.add(new Stretch(ring.get(i), ring.get((i + 1) % ring.size())));
        }
    }

    /// Gives the labels that found their places.
    ///
    /// @return in the order in which they were placed
    public List<Label> placed() {
        return List.copyOf(placed);
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
        List<Spot> near = within(candidates, anchor, NEAR);
        return tryAll(id, lines, anchor, within(candidates, anchor, CLEAN), close, false)
                .or(() -> tryAll(id, lines, anchor, near, close, true))
                .or(() -> tryAll(id, lines, anchor, candidates, close, false))
                .or(() -> tryAll(id, lines, anchor, candidates, close, true));
    }

    /// Places a label within the room of what it names.
    ///
    /// @param id what it names
    /// @param lines its text
    /// @param own the room
    /// @return the label; nothing where it doesn't fit
    public Optional<Label> placeInside(String id, List<String> lines, Box own) {
        List<Spot> spots = new ArrayList<>();
        for (double share : new double[] {0.5, 0.3, 0.7}) {
            for (double aside : new double[] {0.7, 0.3, 0.5}) {
                spots.add(new Spot(own.left() + own.width() * aside, own.top() + own.height() * share));
            }
        }
        for (Spot spot : spots) {
            Box box = room(lines, spot);
            boolean isFree = taken.stream().filter(other -> !other.equals(own)).noneMatch(box::meets)
                    && edges.stream().noneMatch(line -> line.crosses(box))
                    && leaders.stream().noneMatch(leader -> leader.line().crosses(box));
            if (own.holds(box) && isFree) {
                Label label = new Label(id, lines, box);
                placed.add(label);
                taken.add(box);
                return Optional.of(label);
            }
        }
        return Optional.empty();
    }

    private static List<Spot> within(List<Spot> candidates, Spot anchor, double reach) {
        return candidates.stream()
                .filter(spot -> spot.distance(anchor) <= reach)
                .toList();
    }

    private Optional<Label> tryAll(
            String id, List<String> lines, Spot anchor, List<Spot> candidates, double close, boolean overLines) {
        for (Spot candidate : candidates) {
            Box box = room(lines, candidate);
            Stretch leader = new Stretch(box.nearestTo(anchor), anchor);
            boolean led = leader.from().distance(anchor) > close || isDoubtful(box, anchor);
            if (isFree(box, overLines) && (!led || isOpen(leader))) {
                Label label = new Label(id, lines, box);
                placed.add(label);
                taken.add(box);
                if (led) {
                    leaders.add(new Leader(id, leader));
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
                && leaders.stream().noneMatch(leader -> leader.line().crosses(roomy))
                && edges.stream().noneMatch(line -> line.crosses(box.grown(1)))
                && rings.stream().noneMatch(ring -> isInside(ring, box.middle()))
                && (overLines || drawn.stream().noneMatch(line -> line.crosses(box)));
    }

    /// Whether a leader runs through no other label and over no other thing than its own.
    private boolean isOpen(Stretch leader) {
        Spot anchor = leader.to();
        return taken.stream().noneMatch(box -> !box.holds(anchor) && leader.crosses(box))
                && placed.stream().noneMatch(label -> leader.crosses(label.box().grown(1)))
                && rings.stream().filter(ring -> !isInside(ring, anchor)).noneMatch(ring -> cuts(leader, ring));
    }

    /// Whether a label would be read as another thing's: that one is as near to it as its own.
    private boolean isDoubtful(Box box, Spot anchor) {
        double own = things.stream()
                .filter(thing -> thing.holds(anchor))
                .mapToDouble(thing -> apart(thing, box))
                .min()
                .orElse(box.nearestTo(anchor).distance(anchor));
        return things.stream()
                .filter(thing -> !thing.holds(anchor))
                .anyMatch(thing -> apart(thing, box) < DOUBTFUL * Math.max(own, AIR));
    }

    private static double apart(Box one, Box other) {
        double across = Math.max(0, Math.max(one.left() - other.right(), other.left() - one.right()));
        double down = Math.max(0, Math.max(one.top() - other.bottom(), other.top() - one.bottom()));
        return Math.hypot(across, down);
    }

    private static boolean cuts(Stretch line, List<Spot> ring) {
        for (int i = 0; i < ring.size(); i++) {
            if (line.crosses(new Stretch(ring.get(i), ring.get((i + 1) % ring.size())))) {
                return true;
            }
        }
        return false;
    }

    /// Whether a spot lies on the same side of all sides of a convex ring.
    private static boolean isInside(List<Spot> ring, Spot spot) {
        boolean left = false;
        boolean right = false;
        for (int i = 0; i < ring.size(); i++) {
            double side = new Stretch(ring.get(i), ring.get((i + 1) % ring.size())).side(spot);
            left |= side > 0;
            right |= side < 0;
        }
        return !(left && right);
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

    /// Draws the leaders and the labels, each line of letters on a white ground of its own width. A leader's id is its
    /// label's with `.leader`.
    ///
    /// @return the shapes
    public List<Markup> draw() {
        List<Markup> all = new ArrayList<>();
        for (Leader leader : leaders) {
            all.add(Shapes.line(Pen.THIN, leader.line()).with("id", leader.label() + ".leader"));
        }
        for (Label label : placed) {
            Markup group = Markup.of("g").with("id", label.id());
            Box box = label.box();
            for (int i = 0; i < label.lines().size(); i++) {
                group.add(Markup.of("rect")
                        .with("x", box.left() - 1)
                        .with("y", box.top() + Lettering.LINE * i + 1)
                        .with("width", Lettering.width(label.lines().get(i)) + 2)
                        .with("height", Lettering.SIZE)
                        .with("fill", "#fff"));
            }
            all.add(group.add(Lettering.text(label.lines(), box)));
        }
        return all;
    }
}
