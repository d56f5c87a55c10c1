package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// The set from straight above, to scale: true footprints with names, the camera with sight lines to the picture's
/// edges at start and end, machines' ways on their rails, distances between marks, leeway boxes, zero mark, centreline,
/// scale bar.
final class PlanFromAbove {
    private static final double WIDTH = 700;
    private static final double TALLEST = 640;
    private static final double MARGIN = 86;

    /// How tall each is at most where things are drawn once more, larger.
    private static final double LOWER = 380;

    private static final double PART_TALLEST = 460;

    private static final double PART_MARGIN = 80;

    /// Things that take less than this of the sheet are drawn once more, larger.
    private static final double SMALL_SHARE = 0.3;

    private final ShotAnswer answer;
    private final Stage stage;
    private final MarkBook marks;
    private final Scene first;
    private final Scene last;
    private final Print print;
    private final List<PlanWay> ways;

    private PlanFromAbove(Plan plan, ShotAnswer answer) {
        this.answer = answer;
        stage = answer.posed().stages().getFirst().stage();
        double[] values = answer.posed().values();
        marks = new MarkBook(answer);
        first = stage.scene(values, 0);
        last = marks.areMovesSet(stage.shot()) ? stage.scene(values, (double) stage.frames()) : first;
        ways = PlanWay.of(stage, values, marks);
        print = new Print(plan.film().papersOrDefault());
    }

    static Drawing of(Plan plan, ShotAnswer answer) {
        return new PlanFromAbove(plan, answer).draw();
    }

    private List<Vec> places() {
        List<Vec> places = new ArrayList<>(List.of(Vec.ZERO));
        if (marks.isCameraSet()) {
            places.addAll(List.of(first.aim().eye(), last.aim().eye()));
        }
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
        ways.forEach(way -> places.addAll(way.rail()));
        stage.findTank()
                .ifPresent(tank -> places.addAll(
                        List.of(tank.outside().low(), tank.outside().high())));
        PlanThings.findNozzle(shot, marks).ifPresent(places::add);
        return places;
    }

    /// What stands near to each other: things at the start and the place of a release, and the zero mark near them.
    private List<Vec> near() {
        List<Vec> near = new ArrayList<>();
        int subjects = 0;
        for (int i = 0; i < first.things().size(); i++) {
            if (marks.isPlaced(stage.shot().placed().get(i).name())) {
                near.addAll(Footprint.of(first.things().get(i)));
                subjects++;
            }
        }
        for (Vec nozzle : PlanThings.findNozzle(stage.shot(), marks).stream().toList()) {
            near.add(nozzle);
            subjects++;
        }
        if (subjects < 2) {
            return List.of();
        }
        Box box = about(near);
        if (box.grown(Math.max(box.width(), box.height()) / 3).holds(new Spot(0, 0))) {
            near.add(Vec.ZERO);
        }
        return near;
    }

    private static Box about(List<Vec> places) {
        return Box.about(
                places.stream().map(place -> new Spot(place.x(), place.y())).toList());
    }

    /// Whether things would be so small beside the way to the lens that they are drawn once more, larger.
    private static boolean isSmall(List<Vec> near, PlanScale scale) {
        if (near.isEmpty()) {
            return false;
        }
        Box box = about(near);
        double share = Math.max(
                box.width() * scale.pixelsPerMetre() / (WIDTH - 2 * MARGIN),
                box.height() * scale.pixelsPerMetre() / (TALLEST - 2 * MARGIN));
        return share < SMALL_SHARE;
    }

    private PlanBoard board(Page page, PlanScale scale, PlanBoard.Detail detail) {
        Labels labels = new Labels(scale.sheet().grown(-1));
        PlanLettering lettering = new PlanLettering(page, labels, scale.sheet(), stage.shot());
        return new PlanBoard(stage, marks, first, last, print, page, scale, labels, lettering, detail);
    }

    private Drawing draw() {
        List<Vec> places = places();
        List<Vec> near = near();
        PlanScale whole = PlanScale.fitting(places, WIDTH, TALLEST, MARGIN);
        Page page = new Page(answer.shot() + ".plan", "Shot " + answer.shot() + ": plan from above, to scale");
        if (!isSmall(near, whole)) {
            return page.finish(WIDTH, draw(board(page, whole, PlanBoard.Detail.WHOLE), near));
        }
        PlanScale low = PlanScale.fitting(places, WIDTH, LOWER, MARGIN);
        double end = draw(board(page, low, PlanBoard.Detail.OVERVIEW), near);
        PlanScale part =
                PlanScale.fitting(near, WIDTH, PART_TALLEST, PART_MARGIN).lowered(end + 6);
        return page.finish(WIDTH, drawPart(board(page.part("near"), part, PlanBoard.Detail.ENLARGED), near));
    }

    private double draw(PlanBoard board, List<Vec> near) {
        ScaleBar.draw(board.page(), board.labels(), board.scale(), board.print());
        PlanGround ground = new PlanGround(board, near.contains(Vec.ZERO));
        ground.draw();
        PlanCamera camera = new PlanCamera(board);
        if (marks.isCameraSet()) {
            camera.drawSight();
        } else {
            board.lettering().note("camera", "camera: its place is still open, so it isn't drawn.");
        }
        PlanThings things = new PlanThings(board);
        things.draw();
        things.noteOpen();
        if (marks.isCameraSet()) {
            camera.drawCamera();
        }
        camera.drawWays(ways);
        ground.drawDistances();
        if (board.detail() == PlanBoard.Detail.OVERVIEW) {
            Box room = Box.about(board.scale().spots(near)).grown(7);
            board.page().group("enlarged").add(Shapes.box(Pen.HIDDEN, room));
            board.labels().keepThing(room);
            board.lettering().near("enlarged", List.of("enlarged below"), edge(room), 4, 40);
        }
        board.lettering().atLowerRight("crew", "crew side");
        return board.lettering().letter();
    }

    private static Spot edge(Box room) {
        return new Spot(room.right() + 0.5, room.middle().y());
    }

    private double drawPart(PlanBoard board, List<Vec> near) {
        board.page()
                .group("edge")
                .add(Shapes.box(Pen.HIDDEN, board.scale().sheet().grown(-1)));
        ScaleBar.draw(board.page(), board.labels(), board.scale(), board.print());
        PlanGround ground = new PlanGround(board, near.contains(Vec.ZERO));
        ground.draw();
        new PlanThings(board).draw();
        ground.drawDistances();
        board.lettering().atLowerRight("part", "enlarged part");
        return board.lettering().letter();
    }
}
