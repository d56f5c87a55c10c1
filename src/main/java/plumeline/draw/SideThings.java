package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.sketch.Box;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.Scene;

/// The things of a side elevation: outlines, where they end dashed, names and figures. Names of what stands on the
/// table hang under it; names of what is up in the air stand above.
final class SideThings {
    /// With more things than this, figures of leeway stay in the table and names stand alone.
    static final int MOST_WITH_FIGURES = 6;

    /// Things whose bases are nearer on the page than this share a label, pixels.
    private static final double TOGETHER = 12;

    private static final int MOST_LINES = 5;

    /// The widest line of a label, pixels.
    private static final double WIDEST = 310;

    private final SideSheet sheet;
    private final Shot shot;
    private final MarkBook marks;
    private final Scene first;
    private final Scene last;

    SideThings(SideSheet sheet, Shot shot, MarkBook marks, Scene first, Scene last) {
        this.sheet = sheet;
        this.shot = shot;
        this.marks = marks;
        this.first = first;
        this.last = last;
    }

    private void drawBody(Markup group, Body body, Pen pen) {
        for (List<Vec> ring : SideOutline.of(body)) {
            Markup closed = Shapes.closed(pen, sheet.scale().spots(ring));
            group.add(pen == Pen.HIDDEN ? closed : closed.with("fill", "#fff"));
        }
    }

    /// From the farthest to camera left to the nearest to the eye, so that what stands before covers what is behind.
    private List<Integer> fromFar() {
        return IntStream.range(0, shot.placed().size())
                .boxed()
                .filter(i -> marks.isPlaced(shot.placed().get(i).name()))
                .sorted((a, b) -> Double.compare(
                        first.things().get(a).middle().x(),
                        first.things().get(b).middle().x()))
                .toList();
    }

    void draw() {
        for (int i : fromFar()) {
            Markup group = sheet.page().group("thing." + shot.placed().get(i).name());
            Body there = last.things().get(i);
            if (SideElevation.isElsewhere(first.things().get(i).middle(), there.middle())) {
                drawBody(group, there, Pen.HIDDEN);
            }
            drawBody(group, first.things().get(i), Pen.OUTLINE);
        }
        letterThings();
        for (Placed placed : shot.placed()) {
            if (!marks.isPlaced(placed.name())) {
                sheet.lettering()
                        .note(
                                "thing." + placed.name(),
                                placed.name() + ": its place is still open, so it isn't drawn.");
            }
        }
    }

    /// Things by where they stand on the page: one label for those that stand, or are up, behind one another, so many
    /// lines a label at most.
    private List<List<Integer>> groups() {
        List<List<Integer>> groups = new ArrayList<>();
        List<Integer> order = new ArrayList<>(fromFar().reversed());
        while (!order.isEmpty()) {
            Vec base = first.things().get(order.getFirst()).pose().base();
            boolean stands = stands(order.getFirst());
            List<Integer> group = order.stream()
                    .filter(i -> stands(i) == stands)
                    .filter(i -> sheet.spot(first.things().get(i).pose().base()).distance(sheet.spot(base)) < TOGETHER)
                    .limit(MOST_LINES)
                    .toList();
            groups.add(group);
            order.removeAll(group);
        }
        groups.sort(Comparator.comparingDouble(
                group -> first.things().get(group.getFirst()).pose().base().y()));
        return groups;
    }

    /// Whether a thing's lowest place is on the table, as far as can be seen.
    private boolean stands(int index) {
        return Math.abs(Box.about(sheet.spots(first.things().get(index))).bottom() - sheet.tablePixels()) < 2;
    }

    private void letterThings() {
        for (List<Integer> group : groups()) {
            boolean isAlone = group.size() == 1;
            List<String> lines = new ArrayList<>();
            Box room = new Box(Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE);
            for (int i : group) {
                Body body = first.things().get(i);
                String name = shot.placed().get(i).name();
                room = room.with(Box.about(sheet.spots(body)));
                List<String> said = sayThing(name, body, isAlone);
                lines.addAll(row(name, String.join(", ", said)));
            }
            Vec base = first.things().get(group.getFirst()).pose().base();
            String id = "thing." + shot.placed().get(group.getFirst()).name();
            if (stands(group.getFirst())) {
                Spot foot = new Spot(sheet.spot(base).x(), sheet.tablePixels() + SideSheet.TABLE);
                sheet.lettering().stacked(id, lines, foot, 6, PlanLettering.Way.DOWN);
            } else {
                sheet.lettering().stacked(id, lines, new Spot(room.middle().x(), room.top()), 7, PlanLettering.Way.UP);
            }
        }
    }

    /// A name and its figures on one line, or on two where they are too long for one.
    private static List<String> row(String name, String said) {
        String whole = said.isEmpty() ? name : name + ", " + said;
        return Lettering.width(whole) <= WIDEST ? List.of(whole) : List.of(name, said);
    }

    private List<String> sayThing(String name, Body body, boolean isAlone) {
        Box room = Box.about(sheet.spots(body));
        sheet.labels().keepFree(room);
        Vec base = body.pose().base();
        if (shot.placed().size() <= MOST_WITH_FIGURES) {
            sheet.figures()
                    .drawLeeway(
                            sheet.page(), name, sheet.spot(base), sheet.scale().pixelsPerMetre());
        }
        List<String> said = new ArrayList<>();
        double top = body.bounds().high().z();
        if (!isAlone || !sheet.heights().drawBeside("thing." + name, name + " top", room, top)) {
            said.add("top " + sheet.figures().signed(top));
        }
        if (shot.placed().size() <= MOST_WITH_FIGURES) {
            said.add(sheet.figures().say("y", base.y(), name + ".y"));
            if (Math.abs(base.z()) > 1e-6) {
                said.add(sheet.figures().say("up", base.z(), name + ".z"));
            }
        }
        return said;
    }
}
