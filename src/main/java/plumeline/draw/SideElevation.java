package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plumeline.fall.Handful;
import plumeline.fall.Medium;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.PlacedLight;
import plumeline.plan.Plan;
import plumeline.plan.Release;
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
import plumeline.stage.PieceRelease;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// The set from camera right at the shot's start, to scale: away from the camera to the right on the page, up is up.
/// True outlines, heights over the table as dimension lines, the camera with the sight lines to the picture's upper and
/// lower edge, leeway boxes; what moves away or up stands dashed where it ends.
final class SideElevation {
    private static final double WIDTH = 700;
    private static final double TALLEST = 440;
    private static final double LEAST = 330;

    /// By how much a sheet may grow for rows of names.
    private static final double MOST_TALLER = 200;

    /// Room for labels to the left, above, to the right and below.
    private static final Box MARGINS = new Box(96, 86, 96, 84);

    /// Rows of names for which room is made.
    private static final int MOST_ROWS = 13;

    /// What tilts by less than a degree has no arrow.
    private static final double LEAST_TILT_RADIANS = Math.toRadians(1);

    /// How long the arrow of a tilted lamp is, pixels.
    private static final double TILT_ARROW = 34;

    private static final double MOVED_METRES = 0.0005;
    private final Stage stage;
    private final Shot shot;
    private final MarkBook marks;
    private final MarkFigures figures;
    private final Print print;
    private final Scene first;
    private final Scene last;
    private final Page page;
    private final PlanScale scale;
    private final SideSheet sheet;
    private final Labels labels;
    private final PlanLettering lettering;
    private final SideHeights heights;

    /// No piece is drawn smaller, pixels.
    private static final double LEAST_PIECE = 1;

    private SideElevation(Plan plan, ShotAnswer answer) {
        PaperUnit unit = plan.film().papersOrDefault();
        stage = answer.posed().stages().getFirst().stage();
        shot = stage.shot();
        marks = new MarkBook(answer);
        figures = new MarkFigures(marks, unit);
        print = new Print(unit);
        double[] values = answer.posed().values();
        first = stage.scene(values, 0);
        last = marks.areMovesSet(shot) ? stage.scene(values, (double) stage.frames()) : first;
        page = new Page(
                answer.shot() + ".side", "Shot " + answer.shot() + ": side elevation from camera right, to scale");
        Box margins = margins();
        double tallest =
                TALLEST + Math.min(margins.top() - MARGINS.top() + margins.bottom() - MARGINS.bottom(), MOST_TALLER);
        scale = PlanScale.within(places(), WIDTH, tallest, LEAST, margins);
        sheet = SideSheet.of(page, scale, figures, shot);
        labels = sheet.labels();
        lettering = sheet.lettering();
        heights = sheet.heights();
    }

    static Drawing of(Plan plan, ShotAnswer answer) {
        return new SideElevation(plan, answer).draw();
    }

    private Stream<Body> placedBodies(Scene scene) {
        return Stream.concat(
                indices(shot.placed().size())
                        .filter(i -> marks.isPlaced(shot.placed().get(i).name()))
                        .map(scene.things()::get),
                indices(shot.lights().size())
                        .filter(i -> marks.isPlaced(shot.lights().get(i).name()))
                        .map(scene.lamps()::get));
    }

    private static Stream<Integer> indices(int count) {
        return IntStream.range(0, count).boxed();
    }

    /// More room below the more names of standing things will be there, more above for names of what is up in the air.
    private Box margins() {
        int hung = (int) indices(shot.placed().size())
                .filter(i -> first.things().get(i).bounds().low().z() > MOVED_METRES)
                .count();
        int standing = shot.placed().size() - hung;
        return new Box(
                MARGINS.left(),
                MARGINS.top() + Math.min(hung, MOST_ROWS) * Lettering.ROW,
                MARGINS.right(),
                MARGINS.bottom() + Math.min(standing, MOST_ROWS) * Lettering.ROW);
    }

    private List<Vec> places() {
        List<Vec> places = new ArrayList<>(List.of(Vec.ZERO));
        for (Scene scene : List.of(first, last)) {
            if (marks.isCameraSet()) {
                places.add(SideOutline.flat(scene.aim().eye()));
                places.add(SideOutline.flat(sensor(scene)));
            }
            placedBodies(scene).flatMap(body -> SideOutline.of(body).stream()).forEach(places::addAll);
        }
        stage.findTank().ifPresent(tank -> {
            places.add(SideOutline.flat(tank.outside().low()));
            places.add(SideOutline.flat(tank.outside().high()));
        });
        figures.findRelease(shot).map(SideOutline::flat).ifPresent(places::add);
        return places;
    }

    private Drawing draw() {
        drawTable();
        ScaleBar.draw(page, labels, scale, print);
        stage.findTank().ifPresent(this::drawTank);
        keepThings();
        drawLamps();
        if (marks.isCameraSet()) {
            drawSight();
        }
        lettering.under("zero", "zero mark", scale.spot(Vec.ZERO).plus(0, SideSheet.TABLE), 5);
        new SideThings(sheet, shot, marks, first, last).draw();
        drawRelease();
        stage.findTank()
                .ifPresent(tank -> lettering.near(
                        "tank", List.of("tank"), sheet.spot(tank.outside().high()), 5, 40));
        drawCameras();
        letterLamps();
        lettering.near("table", List.of("table top"), new Spot(20, sheet.tablePixels() + SideSheet.TABLE), 4, 60);
        lettering.atLowerRight("from", "from camera right, at the start");
        if (!figures.leewayWords().isEmpty()) {
            lettering.note("leeway", figures.leewayWords());
        }
        return page.finish(WIDTH, lettering.letter());
    }

    private void drawCameras() {
        if (!marks.isCameraSet()) {
            lettering.note("camera", "camera: its place is still open, so it isn't drawn.");
            return;
        }
        drawCamera("start", first, Pen.EDGE);
        if (isElsewhere(first.aim(), last.aim())) {
            drawCamera("end", last, Pen.HIDDEN);
        }
    }

    private void drawTable() {
        Spot zero = scale.spot(Vec.ZERO);
        Box band = new Box(0, zero.y(), WIDTH, zero.y() + SideSheet.TABLE);
        page.group("table")
                .add(Shapes.hatch(band, 8), Shapes.line(Pen.OUTLINE, new Spot(0, zero.y()), new Spot(WIDTH, zero.y())));
        page.group("zero")
                .add(
                        Shapes.line(Pen.OUTLINE, zero.plus(0, -9), zero.plus(0, SideSheet.TABLE + 5)),
                        Shapes.line(Pen.OUTLINE, zero.plus(-9, 0), zero.plus(9, 0)));
        labels.keepFree(band);
    }

    private void drawTank(TankWalls tank) {
        TankDrawing.draw(page, scale, tank);
        Box outer = TankDrawing.box(scale, tank.outside().low(), tank.outside().high());
        for (double x : new double[] {outer.left(), outer.right()}) {
            labels.keepEdge(new Stretch(new Spot(x, outer.top()), new Spot(x, outer.bottom())));
        }
    }

    private void drawSight() {
        drawSight("start", first, Pen.THIN);
        if (!last.aim().equals(first.aim())
                && (isElsewhere(first.aim(), last.aim())
                        || Math.abs(first.aim().tiltRadians() - last.aim().tiltRadians()) > 1e-4)) {
            drawSight("end", last, Pen.THIN_DASHED);
        }
    }

    private void drawSight(String when, Scene scene, Pen pen) {
        double reach = Stream.concat(
                        Stream.of(0.3),
                        placedBodies(scene)
                                .map(body ->
                                        body.middle().distanceMetres(scene.aim().eye())))
                .max(Double::compare)
                .orElse(0.3);
        Markup group = page.group("sight." + when);
        List<List<Vec>> lines = SightLines.upright(scene, stage.findTank(), reach * 1.3);
        for (int k = 0; k < lines.size(); k++) {
            List<Vec> line = lines.get(k);
            Pen own = k == 0 ? Pen.CENTRE : pen;
            for (int i = 1; i < line.size(); i++) {
                new Stretch(sheet.spot(line.get(i - 1)), sheet.spot(line.get(i)))
                        .clipped(scale.sheet())
                        .ifPresent(stretch -> {
                            group.add(Shapes.line(own, stretch));
                            labels.keepLine(stretch);
                        });
            }
        }
    }

    private void keepThings() {
        placedBodies(first).map(body -> Box.about(sheet.spots(body))).forEach(heights::keep);
        if (marks.isCameraSet()) {
            heights.keep(Box.about(List.of(sheet.spot(first.aim().eye()), sheet.spot(sensor(first))))
                    .grown(5));
        }
    }

    private void drawLamps() {
        for (int i = 0; i < first.lamps().size(); i++) {
            String name = shot.lights().get(i).name();
            if (!marks.isPlaced(name)) {
                lettering.note("lamp." + name, named(i) + ": its place is still open, so it isn't drawn.");
                continue;
            }
            Body lamp = first.lamps().get(i);
            Markup group = page.group("lamp." + name);
            SideOutline.of(lamp).forEach(ring -> group.add(Shapes.closed(Pen.EDGE, scale.spots(ring))));
            Spot middle = sheet.spot(first.beams().get(i).aim().eye());
            group.add(
                    Shapes.line(Pen.EDGE, middle.plus(-7, 0), middle.plus(7, 0)),
                    Shapes.line(Pen.EDGE, middle.plus(0, -7), middle.plus(0, 7)));
            List<Spot> edge = sheet.spots(lamp);
            labels.keepFree(Box.round(middle, 16, 16));
            for (int k = 0; k < edge.size(); k++) {
                labels.keepEdge(new Stretch(edge.get(k), edge.get((k + 1) % edge.size())));
            }
            drawTilt(group, first.beams().get(i).aim(), middle);
            double below = -lamp.bounds().low().z();
            if (below > MOVED_METRES) {
                lettering.note(
                        "lamp." + name,
                        named(i) + " reaches " + print.length(below, Print.Hand.TAPE)
                                + " below the table top as drawn: it must stand clear of the table.");
            }
        }
    }

    /// Where a tilted lamp points, from its middle.
    private void drawTilt(Markup group, Aim aim, Spot middle) {
        if (Math.abs(aim.tiltRadians()) < LEAST_TILT_RADIANS) {
            return;
        }
        Spot ahead = middle.plus(
                TILT_ARROW * aim.forward().y(), -TILT_ARROW * aim.forward().z());
        group.add(Shapes.line(Pen.EDGE, middle, ahead), Shapes.arrow(middle, ahead));
        labels.keepEdge(new Stretch(middle, ahead));
    }

    private String named(int lamp) {
        PlacedLight light = shot.lights().get(lamp);
        return light.name() + " (" + light.light().emitter().word() + ")";
    }

    private void letterLamps() {
        for (int i = 0; i < first.lamps().size(); i++) {
            String name = shot.lights().get(i).name();
            if (!marks.isPlaced(name)) {
                continue;
            }
            Body lamp = first.lamps().get(i);
            List<String> lines = new ArrayList<>(List.of(named(i)));
            Vec middle = first.beams().get(i).aim().eye();
            double up = middle.z();
            boolean isDrawn = heights.drawBeside("lamp." + name, name + " middle", Box.about(sheet.spots(lamp)), up);
            if (!isDrawn || shot.placed().size() <= SideThings.MOST_WITH_FIGURES) {
                lines.add(figures.say("middle up", up, name + ".z"));
            }
            double tilt = first.beams().get(i).aim().tiltRadians();
            if (Math.abs(tilt) >= LEAST_TILT_RADIANS) {
                lines.add("tilt " + Print.degrees(tilt).replace('-', '−') + " (arrow)");
            }
            lettering.near("lamp." + name, lines, sheet.spot(middle), 10, 40);
        }
    }

    /// The handful when the middle of what is let go is half-way down in time.
    private void drawPieces(PieceRelease pieces, Vec hand) {
        double way = PieceRelease.wayMetres(stage, hand);
        Optional<Medium> medium = PieceRelease.findMedium(stage, hand);
        if (!(way > 0) || medium.isEmpty() || pieces.fall(medium.get()).netNewtons() <= 0) {
            return;
        }
        double seconds =
                (pieces.overSeconds() + pieces.fall(medium.get()).at(way).seconds()) / 2;
        double radius = Math.max(LEAST_PIECE, pieces.piece().sizeMetres() / 2 * scale.pixelsPerMetre());
        Markup group = page.group("pieces");
        Handful handful = pieces.handful(medium.get());
        for (Vec piece : handful.at(seconds, way)) {
            group.add(Shapes.dot(sheet.spot(hand.plus(piece)), radius)
                    .with("fill", "#fff")
                    .with("stroke", "#000"));
        }
        String few =
                handful.count() < pieces.count() ? " " + handful.count() + " of " + pieces.count() + " are drawn." : "";
        lettering.note(
                "pieces", "Pieces as they may be " + Print.seconds(seconds, 2) + " after the first is let go." + few);
    }

    private void drawRelease() {
        figures.findRelease(shot)
                .ifPresentOrElse(
                        place -> {
                            Spot mouth = sheet.spot(place);
                            page.group("release")
                                    .add(
                                            Shapes.dot(mouth, 3),
                                            Shapes.line(Pen.EDGE, mouth.plus(-2, 0), mouth.plus(-2, -26)),
                                            Shapes.line(Pen.EDGE, mouth.plus(2, 0), mouth.plus(2, -26)));
                            figures.drawLeeway(page, "release", mouth, scale.pixelsPerMetre());
                            labels.keepFree(new Box(mouth.x() - 4, mouth.y() - 26, mouth.x() + 4, mouth.y() + 3));
                            List<String> lines = List.of("release", figures.say("up", place.z(), "release.z"));
                            lettering.near("release", lines, mouth.plus(0, -24), 8, 30);
                            if (shot.findRelease().orElse(null) instanceof Release.OfPieces pieces) {
                                drawPieces(PieceRelease.of(pieces), place);
                            }
                        },
                        () -> {
                            if (shot.findRelease()
                                    .filter(release -> !release.marks().isEmpty())
                                    .isPresent()) {
                                lettering.note("release", "release: its place is still open, so it isn't drawn.");
                            }
                        });
    }

    private static boolean isElsewhere(Aim one, Aim other) {
        return isElsewhere(one.eye(), other.eye());
    }

    /// Whether something stands elsewhere as seen from the side.
    static boolean isElsewhere(Vec one, Vec other) {
        return Math.hypot(one.y() - other.y(), one.z() - other.z()) > MOVED_METRES;
    }

    private Vec sensor(Scene scene) {
        double behind = shot.camera()
                .findSensorBehind()
                .map(length -> length.si())
                .orElse(scene.picture().imageMetres());
        return scene.aim().eye().minus(scene.aim().forward().times(behind));
    }

    private void drawCamera(String when, Scene scene, Pen pen) {
        Vec eye = scene.aim().eye();
        Vec back = sensor(scene);
        Vec half = scene.aim().up().times(scene.picture().heightMetres() / 2);
        Spot lens = sheet.spot(eye);
        Spot sensor = sheet.spot(back);
        Markup sensorLine = Shapes.line(Pen.BORDER, sheet.spot(back.minus(half)), sheet.spot(back.plus(half)));
        page.group("camera." + when)
                .add(
                        Shapes.dot(lens, 3.5),
                        Shapes.line(pen, lens, sensor),
                        when.equals("end") ? sensorLine.with("stroke-dasharray", "4 2") : sensorLine);
        labels.keepFree(Box.about(List.of(lens, sensor)).grown(5));
        List<String> lines = new ArrayList<>(List.of("lens at " + when));
        if (when.equals("start")) {
            heights.drawAt("camera", "lens", lens.x(), eye.z());
            figures.drawLeeway(page, "camera", lens, scale.pixelsPerMetre());
            lines.add(figures.say("y", eye.y(), "camera.y"));
            lines.add(figures.say("up", eye.z(), "camera.z"));
        } else {
            lines.add("y " + figures.signed(eye.y()));
            lines.add("up " + figures.signed(eye.z()));
        }
        lettering.stacked("camera." + when, lines, lens, 14, PlanLettering.Way.UP);
    }
}
