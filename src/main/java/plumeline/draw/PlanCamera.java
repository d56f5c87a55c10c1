package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.Scene;

/// The camera and what moves, in a plan from above: sight lines to the picture's edges, ways with their rails, the
/// camera where it starts and ends.
final class PlanCamera {
    /// Half of a rail's width and of its stops' on the page, pixels.
    private static final double RAIL = 5;

    private static final double BAR = 10;

    private final PlanBoard board;

    PlanCamera(PlanBoard board) {
        this.board = board;
    }

    void drawSight() {
        double reach = reachMetres();
        drawSight("start", board.first(), reach, Pen.THIN);
        if (!board.last().aim().equals(board.first().aim())) {
            drawSight("end", board.last(), reach, Pen.THIN_DASHED);
        }
    }

    private double reachMetres() {
        double farthest = 0.3;
        for (int i = 0; i < board.first().things().size(); i++) {
            if (!board.marks().isPlaced(board.shot().placed().get(i).name())) {
                continue;
            }
            Body body = board.first().things().get(i);
            farthest = Math.max(
                    farthest, body.middle().distanceMetres(board.first().aim().eye()));
            farthest = Math.max(
                    farthest, body.middle().distanceMetres(board.last().aim().eye()));
        }
        return farthest * 1.15;
    }

    private void drawSight(String when, Scene scene, double reach, Pen pen) {
        Markup group = board.page().group("sight." + when);
        for (List<Vec> line : SightLines.of(scene, board.stage().findTank(), reach)) {
            for (int i = 1; i < line.size(); i++) {
                new Stretch(board.scale().spot(line.get(i - 1)), board.scale().spot(line.get(i)))
                        .clipped(board.scale().sheet())
                        .ifPresent(stretch -> {
                            group.add(Shapes.line(pen, stretch));
                            board.labels().keepLine(stretch);
                        });
            }
        }
    }

    /// Ways, and rails as two thin lines between end stops. Where on its rail a way lies isn't known: it is drawn from
    /// one stop, or so that the rail ends before a thing.
    void drawWays(List<PlanWay> ways) {
        for (PlanWay way : ways) {
            Spot from = board.scale().spot(way.from());
            Spot to = board.scale().spot(way.to());
            if (from.distance(to) < 1) {
                continue;
            }
            List<String> lines = new ArrayList<>(
                    List.of(way.move() + " " + board.print().length(way.metres(), Print.Hand.MOTOR) + way.toward()));
            List<Spot> rail = board.scale().spots(way.rail());
            if (!rail.isEmpty()) {
                drawRail(way, rail.getFirst(), rail.getLast());
                lines.add("rail " + board.print().length(way.travelMetres(), Print.Hand.TAPE) + way.railWords());
            }
            Markup group = board.page().group("way." + way.move());
            group.add(Shapes.line(Pen.WAY, from, to), Shapes.arrow(from, to));
            keep(from, to);
            board.lettering().near("way." + way.move(), lines, from.toward(to, 0.5), 12, 34);
        }
    }

    /// Keeps labels off a used way and its head; leaders may touch it.
    private void keep(Spot from, Spot to) {
        board.labels().keepEdge(new Stretch(from, to));
        Box.round(to, 2 * BAR, 2 * BAR).sides().forEach(board.labels()::keepEdge);
    }

    private void drawRail(PlanWay way, Spot from, Spot stop) {
        double length = Math.max(from.distance(stop), 1e-9);
        double nx = -(stop.y() - from.y()) / length;
        double ny = (stop.x() - from.x()) / length;
        Markup group = board.page().group("rail." + way.move());
        for (double side : new double[] {-RAIL, RAIL}) {
            Stretch line = new Stretch(from.plus(nx * side, ny * side), stop.plus(nx * side, ny * side));
            group.add(Shapes.line(Pen.THIN, line));
            board.labels().keepEdge(line);
        }
        for (Spot end : List.of(from, stop)) {
            Stretch bar = new Stretch(end.plus(nx * BAR, ny * BAR), end.plus(-nx * BAR, -ny * BAR));
            group.add(Shapes.line(Pen.OUTLINE, bar));
            board.labels().keepEdge(bar);
        }
    }

    void drawCamera() {
        drawCamera("start", board.first());
        if (board.first().aim().eye().distanceMetres(board.last().aim().eye()) > 1e-4) {
            drawCamera("end", board.last());
        }
    }

    private void drawCamera(String when, Scene scene) {
        Vec eye = scene.aim().eye();
        Spot lens = board.scale().spot(eye);
        Vec back = eye.minus(scene.aim().forward().times(sensorBehindMetres(scene)));
        Spot sensor = board.scale().spot(back);
        Vec half = scene.aim().right().times(scene.picture().widthMetres() / 2);
        Markup group = board.page().group("camera." + when);
        group.add(
                Shapes.dot(lens, 3.5),
                Shapes.line(Pen.EDGE, lens, sensor),
                Shapes.line(
                        Pen.BORDER,
                        board.scale().spot(back.minus(half)),
                        board.scale().spot(back.plus(half))));
        board.labels().keepFree(Box.about(List.of(lens, sensor)).grown(6));
        List<String> lines = new ArrayList<>(List.of("lens at " + when));
        if (when.equals("start")) {
            lines.add("x " + board.signed(eye.x()) + board.leewayWords("camera.x"));
            lines.add("y " + board.signed(eye.y()) + board.leewayWords("camera.y"));
            lines.add("up " + board.signed(eye.z()) + board.leewayWords("camera.z"));
        } else {
            lines.add("x " + board.signed(eye.x()) + ", y " + board.signed(eye.y()) + ", up " + board.signed(eye.z()));
        }
        board.lettering().near("camera." + when, lines, lens, 14, 60);
    }

    private double sensorBehindMetres(Scene scene) {
        return board.shot()
                .camera()
                .findSensorBehind()
                .map(behind -> behind.si())
                .orElse(scene.picture().imageMetres());
    }
}
