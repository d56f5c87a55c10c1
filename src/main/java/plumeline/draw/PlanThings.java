package plumeline.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.search.Leeway;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.solve.MarkAnswer;

/// What stands on the table, in a plan from above: things where they start and end with their leeway, lamps, the place
/// of a release.
final class PlanThings {
    /// With more things than this, figures of leeway stay in the table and names stand alone.
    private static final int MOST_WITH_FIGURES = 6;

    private final PlanBoard board;

    PlanThings(PlanBoard board) {
        this.board = board;
    }

    void draw() {
        List<Standing> standing = standing();
        // What stands lowest first: nothing covers what stands on it.
        standing.stream()
                .sorted(Comparator.comparingDouble(Standing::bottomMetres))
                .forEach(each -> each.footprint().run());
        standing.forEach(each -> each.words().run());
        drawNozzle();
    }

    /// Something on the table in the order of the plan.
    ///
    /// @param bottomMetres how high its lowest place is
    /// @param footprint draws it
    /// @param words draws its leeway and asks for its label
    private record Standing(double bottomMetres, Runnable footprint, Runnable words) {}

    private List<Standing> standing() {
        List<Standing> all = new ArrayList<>();
        for (int i = 0; i < board.first().things().size(); i++) {
            int index = i;
            String name = board.shot().placed().get(i).name();
            Body at = board.first().things().get(i);
            if (board.marks().isPlaced(name)) {
                all.add(new Standing(at.bounds().low().z(), () -> drawThing(index), () -> sayThing(name, at)));
            }
        }
        for (int i = 0; i < board.first().lamps().size(); i++) {
            int index = i;
            String name = board.shot().lights().get(i).name();
            Body lamp = board.first().lamps().get(i);
            if (board.detail() != PlanBoard.Detail.ENLARGED && board.marks().isPlaced(name)) {
                all.add(new Standing(lamp.bounds().low().z(), () -> drawLamp(index), () -> sayLamp(index)));
            }
        }
        return all;
    }

    /// Says below the drawing what has no place yet.
    void noteOpen() {
        Stream.concat(
                        board.shot().placed().stream().map(Placed::name),
                        board.shot().lights().stream().map(PlacedLight::name))
                .filter(name -> !board.marks().isPlaced(name))
                .forEach(name -> board.lettering().note(name, name + ": its place is still open, so it isn't drawn."));
    }

    private void drawThing(int index) {
        Body at = board.first().things().get(index);
        List<Spot> foot = board.scale().spots(Footprint.of(at));
        Markup group = board.page()
                .group("thing." + board.shot().placed().get(index).name())
                .add(Shapes.closed(Pen.OUTLINE, foot).with("fill", "#fff"));
        Spot middle = board.scale().spot(at.pose().base());
        group.add(Shapes.dot(middle, 2));
        Body there = board.last().things().get(index);
        Spot end = board.scale().spot(there.pose().base());
        List<Spot> ring = board.scale().spots(Footprint.of(there));
        if (middle.distance(end) > 1 && ring.stream().allMatch(board.scale().sheet()::holds)) {
            group.add(Shapes.closed(Pen.HIDDEN, ring));
            board.labels().keepRing(ring);
            group.add(Shapes.line(Pen.THIN, middle, end), Shapes.arrow(middle, end));
            board.labels().keepEdge(new Stretch(middle, end));
        }
        board.labels().keepRing(foot);
    }

    private void sayThing(String name, Body at) {
        if (board.detail() == PlanBoard.Detail.OVERVIEW) {
            return;
        }
        Box room = Box.about(board.scale().spots(Footprint.of(at)));
        Vec base = at.pose().base();
        Spot middle = board.scale().spot(base);
        board.labels().keepThing(room);
        drawLeeway(name, middle);
        String listed = name + ", x " + board.signed(base.x()) + ", y " + board.signed(base.y());
        board.lettering().thing("thing." + name, lines(name, base), room, middle, listed);
    }

    private List<String> lines(String name, Vec at) {
        List<String> lines = new ArrayList<>(List.of(name));
        boolean figures = board.shot().placed().size() <= MOST_WITH_FIGURES;
        if (figures) {
            lines.add("x " + board.signed(at.x()) + board.leewayWords(name + ".x"));
            lines.add("y " + board.signed(at.y()) + board.leewayWords(name + ".y"));
            if (Math.abs(at.z()) > 1e-6) {
                lines.add("up " + board.signed(at.z()) + board.leewayWords(name + ".z"));
            }
        }
        return lines;
    }

    /// The room in which one mark of a pair may be off, to scale; no smaller than can be seen. An endless side stays
    /// open.
    private void drawLeeway(String name, Spot middle) {
        Optional<MarkAnswer> x = board.marks().find(name + ".x");
        Optional<MarkAnswer> y = board.marks().find(name + ".y");
        if (x.isEmpty() || y.isEmpty()) {
            return;
        }
        double[] sides = {
            pixels(x.get().leeway().minus()),
            pixels(x.get().leeway().plus()),
            pixels(y.get().leeway().plus()),
            pixels(y.get().leeway().minus())
        };
        if (Arrays.stream(sides).allMatch(side -> side < 0)) {
            return;
        }
        Box box = new Box(
                middle.x() - Math.abs(sides[0]),
                middle.y() - Math.abs(sides[2]),
                middle.x() + Math.abs(sides[1]),
                middle.y() + Math.abs(sides[3]));
        Markup group = board.page().group("leeway." + name);
        List<Stretch> lines = box.sides();
        for (int i = 0; i < sides.length; i++) {
            group.add(Shapes.line(pen(sides[i]), lines.get(i)));
            board.labels().keepEdge(lines.get(i));
        }
    }

    private static Pen pen(double side) {
        return side < 0 ? Pen.LEEWAY_OPEN : Pen.LEEWAY;
    }

    /// A side's length on the page; negative where it goes on further than is drawn.
    private double pixels(Leeway.Side side) {
        double most = 34;
        double length = side.distance() * board.scale().pixelsPerMetre();
        return length > most ? -most : Math.max(2.5, length);
    }

    private void drawLamp(int index) {
        List<Spot> foot = board.scale().spots(Footprint.of(board.first().lamps().get(index)));
        Aim aim = board.first().beams().get(index).aim();
        Spot middle = board.scale().spot(aim.eye());
        Vec forward = aim.forward();
        Spot ahead = middle.plus(forward.x() * 30, -forward.y() * 30);
        board.page()
                .group("lamp." + board.shot().lights().get(index).name())
                .add(
                        isOverhead(index)
                                ? Shapes.closed(Pen.HIDDEN, foot)
                                : Shapes.closed(Pen.OUTLINE, foot).with("fill", "#fff"),
                        Shapes.line(Pen.EDGE, middle, ahead),
                        Shapes.arrow(middle, ahead));
        board.labels().keepRing(foot);
        board.labels().keepEdge(new Stretch(middle, ahead));
        board.labels().keepFree(Box.round(ahead, 14, 14));
    }

    /// Whether it hangs over a thing that stands there, so that what is below it is to be seen through it.
    private boolean isOverhead(int index) {
        Bounds lamp = board.first().lamps().get(index).bounds();
        return board.first().things().stream().map(Body::bounds).anyMatch(thing -> {
            Vec middle = thing.low().plus(thing.high()).times(0.5);
            return lamp.low().z() > thing.high().z()
                    && lamp.low().x() < middle.x()
                    && middle.x() < lamp.high().x()
                    && lamp.low().y() < middle.y()
                    && middle.y() < lamp.high().y();
        });
    }

    private void sayLamp(int index) {
        PlacedLight light = board.shot().lights().get(index);
        String name = light.name();
        Vec middle = board.first().beams().get(index).aim().eye();
        List<String> lines = List.of(
                name + " (" + light.light().emitter().word() + (isOverhead(index) ? ", overhead)" : ")"),
                "x " + board.signed(middle.x()) + ", y " + board.signed(middle.y()) + ", up "
                        + board.signed(middle.z()));
        board.lettering().near("lamp." + name, lines, board.scale().spot(middle), 22, 60);
    }

    /// Where something is released, as seen from above.
    static Optional<Vec> findNozzle(Shot shot, MarkBook marks) {
        Optional<Mark.Spot> at = shot.findRelease().flatMap(release -> switch (release) {
            case Release.OfInk ink -> Optional.of(ink.at());
            case Release.OfPieces pieces -> Optional.of(pieces.at());
            case Release.OfThing _ -> Optional.empty();
        });
        return at.flatMap(spot ->
                value(spot.x(), marks).flatMap(x -> value(spot.y(), marks).map(y -> new Vec(x, y, 0))));
    }

    private static Optional<Double> value(Mark mark, MarkBook marks) {
        return marks.find(mark.path())
                .flatMap(answer -> answer.setting() instanceof MarkAnswer.Setting.At(double si, var _)
                        ? Optional.of(si)
                        : Optional.empty());
    }

    private void drawNozzle() {
        findNozzle(board.shot(), board.marks()).ifPresent(place -> {
            Spot spot = board.scale().spot(place);
            board.page()
                    .group("release")
                    .add(Shapes.dot(spot, 3.5), Shapes.line(Pen.EDGE, spot.plus(-9, 0), spot.plus(9, 0)));
            board.labels().keepFree(Box.round(spot, 18, 10));
            if (board.detail() == PlanBoard.Detail.OVERVIEW) {
                return;
            }
            board.lettering()
                    .near(
                            "release",
                            List.of(
                                    "release",
                                    "x " + board.signed(place.x()) + board.leewayWords("release.x"),
                                    "y " + board.signed(place.y()) + board.leewayWords("release.y")),
                            spot,
                            14,
                            40);
        });
    }
}
