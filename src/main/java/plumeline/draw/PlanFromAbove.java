package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
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
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// The set from straight above, to scale: true footprints with names, the camera with sight lines to the picture's
/// edges at start and end, machines' ways on their rails, distances between marks, leeway boxes, zero mark, centreline,
/// scale bar.
final class PlanFromAbove {
    private static final double WIDTH = 700;
    private static final double TALLEST = 640;
    private static final double MARGIN = 86;

    private final PlanBoard board;
    private final List<PlanWay> ways;

    private PlanFromAbove(Plan plan, ShotAnswer answer) {
        Stage stage = answer.posed().stages().getFirst().stage();
        double[] values = answer.posed().values();
        Scene first = stage.scene(values, 0);
        Scene last = stage.scene(values, (double) (stage.frames() - 1));
        MarkBook marks = new MarkBook(answer);
        ways = PlanWay.of(stage, values);
        Page page = new Page(answer.shot() + ".plan", "Shot " + answer.shot() + ": plan from above, to scale");
        PlanScale scale = PlanScale.fitting(places(stage, marks, first, last), WIDTH, TALLEST, MARGIN);
        Labels labels = new Labels(scale.sheet().grown(-1));
        PlanLettering lettering = new PlanLettering(page, labels, scale.sheet());
        Print print = new Print(plan.film().papersOrDefault());
        board = new PlanBoard(stage, marks, first, last, print, page, scale, labels, lettering);
    }

    static Drawing of(Plan plan, ShotAnswer answer) {
        return new PlanFromAbove(plan, answer).draw();
    }

    private List<Vec> places(Stage stage, MarkBook marks, Scene first, Scene last) {
        List<Vec> places =
                new ArrayList<>(List.of(Vec.ZERO, first.aim().eye(), last.aim().eye()));
        Shot shot = stage.shot();
        for (int i = 0; i < first.things().size(); i++) {
            if (marks.isPlaced(shot.placed().get(i).name())) {
                places.addAll(Footprint.of(first.things().get(i)));
                places.addAll(Footprint.of(last.things().get(i)));
            }
        }
        for (int i = 0; i < first.lamps().size(); i++) {
            if (marks.isPlaced(shot.lights().get(i).name())) {
                places.addAll(Footprint.of(first.lamps().get(i)));
            }
        }
        ways.forEach(way -> places.add(way.to()));
        ways.forEach(way -> way.stop().ifPresent(places::add));
        stage.findTank()
                .ifPresent(tank -> places.addAll(
                        List.of(tank.outside().low(), tank.outside().high())));
        PlanThings.findNozzle(shot, marks).ifPresent(places::add);
        return places;
    }

    private Drawing draw() {
        drawScaleBar();
        drawDatum();
        board.stage().findTank().ifPresent(this::drawTank);
        PlanCamera camera = new PlanCamera(board);
        camera.drawSight();
        new PlanThings(board).draw();
        camera.drawCamera();
        camera.drawWays(ways);
        drawDistances();
        board.lettering().atLowerRight("crew", "crew side");
        return board.page().finish(WIDTH, board.lettering().letter());
    }

    private void drawDatum() {
        Spot zero = board.scale().spot(Vec.ZERO);
        Markup group = board.page().group("zero");
        Stretch centre = new Stretch(
                new Spot(zero.x(), 4), new Spot(zero.x(), board.scale().sheet().bottom() - 4));
        group.add(Shapes.line(Pen.CENTRE, centre));
        Box cross = cross(zero);
        Stretch across = new Stretch(new Spot(cross.left(), zero.y()), new Spot(cross.right(), zero.y()));
        Stretch along = new Stretch(new Spot(zero.x(), cross.top()), new Spot(zero.x(), cross.bottom()));
        group.add(Shapes.line(Pen.OUTLINE, across), Shapes.line(Pen.OUTLINE, along));
        board.labels().keepEdge(across);
        board.labels().keepEdge(along);
        board.labels().keepLine(centre);
        nameZero(across);
        board.lettering().near("centreline", List.of("centreline"), new Spot(zero.x(), 12), 4, 60);
    }

    /// The zero mark's cross: its arms reach out from under what stands on it.
    private Box cross(Spot zero) {
        Box cross = Box.round(zero, 22, 22);
        for (int i = 0; i < board.first().things().size(); i++) {
            Box foot = Box.about(
                    board.scale().spots(Footprint.of(board.first().things().get(i))));
            if (board.marks().isPlaced(board.shot().placed().get(i).name()) && foot.holds(zero)) {
                cross = cross.with(foot.grown(11));
            }
        }
        return cross;
    }

    /// The zero mark's name leads to the end of an arm, so that its leader runs over nothing that stands on the mark.
    private void nameZero(Stretch across) {
        List<String> words = List.of("zero mark");
        board.lettering().near("zero", words, across.from(), 5, 24);
    }

    private void drawTank(TankWalls tank) {
        Markup group = board.page().group("tank");
        group.add(Shapes.box(Pen.OUTLINE, box(tank.outside())));
        group.add(Shapes.box(Pen.EDGE, box(tank.inside())));
        Box outer = box(tank.outside());
        outer.sides().forEach(board.labels()::keepEdge);
        box(tank.inside()).sides().forEach(board.labels()::keepEdge);
        Vec front = tank.outside().low();
        Vec size = tank.outside().high().minus(front);
        board.lettering()
                .near(
                        "tank",
                        List.of(
                                "tank " + board.print().lengthNumber(size.x(), Print.Hand.TAPE) + " × "
                                        + board.print().lengthNumber(size.y(), Print.Hand.TAPE),
                                "front glass y " + board.signed(front.y())),
                        new Spot(outer.middle().x(), outer.top()),
                        4,
                        60);
    }

    private Box box(Bounds bounds) {
        Spot low = board.scale().spot(bounds.low());
        Spot high = board.scale().spot(bounds.high());
        return new Box(low.x(), high.y(), high.x(), low.y());
    }

    private void drawDistances() {
        List<Distances.Between> all = Distances.of(board.first(), board.shot(), board.marks());
        Markup group = board.page().group("distances");
        for (int i = 0; i < all.size(); i++) {
            Distances.Between between = all.get(i);
            Spot from = board.scale().spot(between.from());
            Spot to = board.scale().spot(between.to());
            Stretch line = new Stretch(from, to);
            group.add(Shapes.line(Pen.THIN, line), Shapes.tick(from, to), Shapes.tick(to, from));
            board.labels().keepLine(line);
            String figure = board.print().lengthNumber(between.metres(), Print.Hand.TAPE);
            String below = between.id().replace(".", " to ") + " " + figure;
            board.lettering().beside("distance." + between.id(), figure, below, line);
        }
    }

    private void drawScaleBar() {
        double metres = board.print().unit() == PaperUnit.MILLIMETRES ? 0.1 : 0.1016;
        while (metres * board.scale().pixelsPerMetre() < 60) {
            metres *= 2;
        }
        double length = metres * board.scale().pixelsPerMetre();
        double y = board.scale().sheet().bottom() - 8;
        Box bar = new Box(6, y - 8, 6 + length, y);
        Markup group = board.page().group("scale");
        group.add(
                Shapes.line(Pen.OUTLINE, new Spot(bar.left(), y), new Spot(bar.right(), y)),
                Shapes.line(Pen.OUTLINE, new Spot(bar.left(), bar.top()), new Spot(bar.left(), y)),
                Shapes.line(
                        Pen.EDGE,
                        new Spot(bar.middle().x(), bar.top() + 3),
                        new Spot(bar.middle().x(), y)),
                Shapes.line(Pen.OUTLINE, new Spot(bar.right(), bar.top()), new Spot(bar.right(), y)));
        board.labels().keepFree(bar);
        List<String> text = List.of(board.print().length(metres));
        Spot at = new Spot(bar.right() + 8 + Lettering.width(text) / 2, y - 9);
        board.labels().place(board.page().id("name.scale"), text, at, List.of(at), WIDTH);
    }
}
