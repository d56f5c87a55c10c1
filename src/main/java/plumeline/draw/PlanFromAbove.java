package plumeline.draw;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// The set from straight above, to scale: true footprints with names, the camera with sight lines to the picture's
/// edges at start and end, machines' ways, distances between marks, leeway boxes, zero mark, centreline, scale bar.
final class PlanFromAbove {
    static final double WIDTH = 700;
    private static final double TALLEST = 640;
    private static final double MARGIN = 86;

    /// With more things than this, figures of leeway stay in the table and names stand alone.
    private static final int MOST_WITH_FIGURES = 6;

    private final Stage stage;
    private final Shot shot;
    private final MarkBook marks;
    private final Print print;
    private final LeewayText leeway;
    private final Scene first;
    private final Scene last;
    private final List<Vec> way;
    private final Page page;
    private final PlanScale scale;
    private final Labels labels;
    private final PlanLettering lettering;

    private PlanFromAbove(Plan plan, ShotAnswer answer) {
        PaperUnit unit = plan.film().papersOrDefault();
        stage = answer.posed().stages().getFirst().stage();
        shot = stage.shot();
        marks = new MarkBook(answer);
        print = new Print(unit);
        leeway = new LeewayText(unit);
        double[] values = answer.posed().values();
        first = stage.scene(values, 0);
        last = stage.scene(values, (double) (stage.frames() - 1));
        way = stage.cameraWay(values);
        page = new Page(answer.shot() + ".plan", "Shot " + answer.shot() + ": plan from above, to scale");
        scale = PlanScale.fitting(places(), WIDTH, TALLEST, MARGIN);
        labels = new Labels(scale.sheet().grown(-1));
        lettering = new PlanLettering(page, labels, scale.sheet());
    }

    static Drawing of(Plan plan, ShotAnswer answer) {
        return new PlanFromAbove(plan, answer).draw();
    }

    private List<Vec> places() {
        List<Vec> places =
                new ArrayList<>(List.of(Vec.ZERO, first.aim().eye(), last.aim().eye(), way.getLast()));
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
        stage.findTank()
                .ifPresent(tank -> places.addAll(
                        List.of(tank.outside().low(), tank.outside().high())));
        nozzle().ifPresent(places::add);
        return places;
    }

    private Drawing draw() {
        drawScaleBar();
        drawDatum();
        stage.findTank().ifPresent(this::drawTank);
        drawSight();
        drawWay();
        drawThings();
        drawLamps();
        drawNozzle();
        drawCamera();
        drawDistances();
        lettering.atLowerRight("crew", "crew side");
        return page.finish(WIDTH, lettering.letter());
    }

    private void drawDatum() {
        Spot zero = scale.spot(Vec.ZERO);
        Markup group = page.group("zero");
        Stretch centre = new Stretch(
                new Spot(zero.x(), 4), new Spot(zero.x(), scale.sheet().bottom() - 4));
        group.add(Shapes.line(Pen.CENTRE, centre));
        group.add(Shapes.line(Pen.OUTLINE, zero.plus(-11, 0), zero.plus(11, 0)));
        group.add(Shapes.line(Pen.OUTLINE, zero.plus(0, -11), zero.plus(0, 11)));
        labels.keepFree(Box.round(zero, 24, 24));
        labels.keepLine(centre);
        lettering.near("zero", List.of("zero mark"), zero, 16, 40);
        lettering.near("centreline", List.of("centreline"), new Spot(zero.x(), 12), 4, 60);
    }

    private void drawTank(TankWalls tank) {
        Markup group = page.group("tank");
        group.add(Shapes.box(Pen.OUTLINE, box(tank.outside())));
        group.add(Shapes.box(Pen.EDGE, box(tank.inside())));
        Box outer = box(tank.outside());
        Vec front = tank.outside().low();
        Vec size = tank.outside().high().minus(front);
        lettering.near(
                "tank",
                List.of("tank " + print.lengthNumber(size.x(), Print.Hand.TAPE) + " × "
                        + print.lengthNumber(size.y(), Print.Hand.TAPE) + ", front glass y "
                        + signed(front.y())),
                new Spot(outer.middle().x(), outer.top()),
                4,
                60);
    }

    private Box box(Bounds bounds) {
        Spot low = scale.spot(bounds.low());
        Spot high = scale.spot(bounds.high());
        return new Box(low.x(), high.y(), high.x(), low.y());
    }

    private void drawSight() {
        double reach = reachMetres();
        drawSight("start", first, reach, Pen.THIN);
        if (!last.aim().equals(first.aim())) {
            drawSight("end", last, reach, Pen.THIN_DASHED);
        }
    }

    private double reachMetres() {
        double farthest = 0.3;
        for (Body body : first.things()) {
            farthest =
                    Math.max(farthest, body.middle().distanceMetres(first.aim().eye()));
            farthest =
                    Math.max(farthest, body.middle().distanceMetres(last.aim().eye()));
        }
        return farthest * 1.15;
    }

    private void drawSight(String when, Scene scene, double reach, Pen pen) {
        Markup group = page.group("sight." + when);
        for (List<Vec> line : SightLines.of(scene, stage.findTank(), reach)) {
            for (int i = 1; i < line.size(); i++) {
                new Stretch(scale.spot(line.get(i - 1)), scale.spot(line.get(i)))
                        .clipped(scale.sheet())
                        .ifPresent(stretch -> {
                            group.add(Shapes.line(pen, stretch));
                            labels.keepLine(stretch);
                        });
            }
        }
    }

    private void drawWay() {
        for (int i = 1; i < way.size(); i++) {
            Spot from = scale.spot(way.get(i - 1));
            Spot to = scale.spot(way.get(i));
            if (from.distance(to) < 1) {
                continue;
            }
            Vec by = way.get(i).minus(way.get(i - 1));
            Markup group = page.group("way." + i);
            group.add(Shapes.line(Pen.WAY, from, to), Shapes.arrow(from, to));
            labels.keepLine(new Stretch(from, to));
            String toward = Math.abs(by.x()) >= Math.abs(by.y())
                    ? by.x() < 0 ? " to camera left" : " to camera right"
                    : by.y() < 0 ? " toward the crew" : " away";
            lettering.near(
                    "way." + i,
                    List.of("slide " + print.length(by.lengthMetres(), Print.Hand.MOTOR) + toward),
                    from.toward(to, 0.5),
                    10,
                    34);
        }
    }

    private void drawThings() {
        for (int i = 0; i < first.things().size(); i++) {
            String name = shot.placed().get(i).name();
            if (!marks.isPlaced(name)) {
                continue;
            }
            Body at = first.things().get(i);
            List<Spot> foot = scale.spots(Footprint.of(at));
            Markup group = page.group("thing." + name)
                    .add(Shapes.closed(Pen.OUTLINE, foot).with("fill", "#fff"));
            Spot middle = scale.spot(at.pose().base());
            group.add(Shapes.dot(middle, 2));
            Body there = last.things().get(i);
            Spot end = scale.spot(there.pose().base());
            if (middle.distance(end) > 1) {
                group.add(Shapes.closed(Pen.HIDDEN, scale.spots(Footprint.of(there))));
                group.add(Shapes.line(Pen.THIN, middle, end), Shapes.arrow(middle, end));
                labels.keepLine(new Stretch(middle, end));
            }
            Box room = Box.about(foot);
            labels.keepFree(room);
            drawLeeway(name, middle);
            double clear = Math.max(room.width(), room.height()) / 2 + 6;
            lettering.near(name, lines(name, at.pose().base()), middle, clear, clear + 10);
        }
    }

    private List<String> lines(String name, Vec at) {
        List<String> lines = new ArrayList<>(List.of(name));
        boolean figures = shot.placed().size() <= MOST_WITH_FIGURES;
        if (figures) {
            lines.add("x " + signed(at.x()) + leewayWords(name + ".x"));
            lines.add("y " + signed(at.y()) + leewayWords(name + ".y"));
            if (Math.abs(at.z()) > 1e-6) {
                lines.add("up " + signed(at.z()) + leewayWords(name + ".z"));
            }
        }
        return lines;
    }

    private String leewayWords(String path) {
        return marks.find(path).map(answer -> " (" + leeway.both(answer) + ")").orElse("");
    }

    private String signed(double metres) {
        return print.lengthNumber(metres, Print.Hand.TAPE).replace('-', '−');
    }

    /// The room in which one mark of a pair may be off, to scale; no smaller than can be seen. An endless side stays
    /// open.
    private void drawLeeway(String name, Spot middle) {
        Optional<MarkAnswer> x = marks.find(name + ".x");
        Optional<MarkAnswer> y = marks.find(name + ".y");
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
        Markup group = page.group("leeway." + name);
        Spot a = new Spot(box.left(), box.top());
        Spot b = new Spot(box.right(), box.top());
        Spot c = new Spot(box.right(), box.bottom());
        Spot d = new Spot(box.left(), box.bottom());
        group.add(
                Shapes.line(pen(sides[0]), a, d),
                Shapes.line(pen(sides[1]), b, c),
                Shapes.line(pen(sides[2]), a, b),
                Shapes.line(pen(sides[3]), d, c));
    }

    private static Pen pen(double side) {
        return side < 0 ? Pen.LEEWAY_OPEN : Pen.LEEWAY;
    }

    /// A side's length on the page; negative where it goes on further than is drawn.
    private double pixels(Leeway.Side side) {
        double most = 34;
        double length = side.distance() * scale.pixelsPerMetre();
        return length > most ? -most : Math.max(2.5, length);
    }

    private void drawLamps() {
        for (int i = 0; i < first.lamps().size(); i++) {
            String name = shot.lights().get(i).name();
            if (!marks.isPlaced(name)) {
                continue;
            }
            Body lamp = first.lamps().get(i);
            List<Spot> foot = scale.spots(Footprint.of(lamp));
            Spot middle = scale.spot(lamp.middle());
            double turn = lamp.pose().turnRadians();
            Spot ahead = middle.plus(Math.sin(turn) * 30, -Math.cos(turn) * 30);
            page.group("lamp." + name)
                    .add(
                            Shapes.closed(Pen.OUTLINE, foot).with("fill", "#fff"),
                            Shapes.line(Pen.EDGE, middle, ahead),
                            Shapes.arrow(middle, ahead));
            Box room = Box.about(foot);
            labels.keepFree(Box.round(middle, Math.min(room.width(), 40), Math.min(room.height(), 40)));
            for (int k = 0; k < foot.size(); k++) {
                labels.keepLine(new Stretch(foot.get(k), foot.get((k + 1) % foot.size())));
            }
            List<String> lines = new ArrayList<>(List.of(name + " (lamp)"));
            lines.add("x " + signed(lamp.middle().x()) + ", y "
                    + signed(lamp.middle().y()) + ", up " + signed(lamp.middle().z()));
            lettering.near(name, lines, middle, 22, 60);
        }
    }

    private Optional<Vec> nozzle() {
        Optional<Mark.Spot> at = shot.findRelease().flatMap(release -> switch (release) {
            case Release.OfInk ink -> Optional.of(ink.at());
            case Release.OfPieces pieces -> Optional.of(pieces.at());
            case Release.OfThing _ -> Optional.empty();
        });
        return at.flatMap(spot -> value(spot.x()).flatMap(x -> value(spot.y()).map(y -> new Vec(x, y, 0))));
    }

    private Optional<Double> value(Mark mark) {
        return marks.find(mark.path())
                .flatMap(answer -> answer.setting() instanceof MarkAnswer.Setting.At(double si, var _)
                        ? Optional.of(si)
                        : Optional.empty());
    }

    private void drawNozzle() {
        nozzle().ifPresent(place -> {
            Spot spot = scale.spot(place);
            page.group("release").add(Shapes.dot(spot, 3.5), Shapes.line(Pen.EDGE, spot.plus(-9, 0), spot.plus(9, 0)));
            labels.keepFree(Box.round(spot, 18, 10));
            lettering.near(
                    "release",
                    List.of(
                            "release",
                            "x " + signed(place.x()) + leewayWords("release.x"),
                            "y " + signed(place.y()) + leewayWords("release.y")),
                    spot,
                    14,
                    40);
        });
    }

    private void drawCamera() {
        drawCamera("start", first);
        if (first.aim().eye().distanceMetres(last.aim().eye()) > 1e-4) {
            drawCamera("end", last);
        }
    }

    private void drawCamera(String when, Scene scene) {
        Vec eye = scene.aim().eye();
        Spot lens = scale.spot(eye);
        Vec back = eye.minus(scene.aim().forward().times(sensorBehindMetres(scene)));
        Spot sensor = scale.spot(back);
        Vec half = scene.aim().right().times(scene.picture().widthMetres() / 2);
        Markup group = page.group("camera." + when);
        group.add(
                Shapes.dot(lens, 3.5),
                Shapes.line(Pen.EDGE, lens, sensor),
                Shapes.line(Pen.BORDER, scale.spot(back.minus(half)), scale.spot(back.plus(half))));
        labels.keepFree(Box.about(List.of(lens, sensor)).grown(6));
        List<String> lines = new ArrayList<>(List.of("lens at " + when));
        lines.add("x " + signed(eye.x()) + (when.equals("start") ? leewayWords("camera.x") : ""));
        lines.add("y " + signed(eye.y()) + (when.equals("start") ? leewayWords("camera.y") : ""));
        lines.add("up " + signed(eye.z()) + (when.equals("start") ? leewayWords("camera.z") : ""));
        lettering.near("camera." + when, lines, lens, 14, 60);
    }

    private double sensorBehindMetres(Scene scene) {
        return shot.camera()
                .findSensorBehind()
                .map(behind -> behind.si())
                .orElse(scene.picture().imageMetres());
    }

    private void drawDistances() {
        List<Distances.Between> all = Distances.of(first, shot, marks);
        Markup group = page.group("distances");
        for (int i = 0; i < all.size(); i++) {
            Distances.Between between = all.get(i);
            Spot from = scale.spot(between.from());
            Spot to = scale.spot(between.to());
            Stretch line = new Stretch(from, to);
            group.add(Shapes.line(Pen.THIN, line), Shapes.tick(from, to), Shapes.tick(to, from));
            labels.keepLine(line);
            String figure = print.lengthNumber(between.metres(), Print.Hand.TAPE);
            String below = between.id().replace(".", " to ") + " " + figure;
            lettering.beside("distance." + between.id(), figure, below, line);
        }
    }

    private void drawScaleBar() {
        double metres = print.unit() == PaperUnit.MILLIMETRES ? 0.1 : 0.1016;
        while (metres * scale.pixelsPerMetre() < 60) {
            metres *= 2;
        }
        double length = metres * scale.pixelsPerMetre();
        double y = scale.sheet().bottom() - 8;
        Box bar = new Box(6, y - 8, 6 + length, y);
        Markup group = page.group("scale");
        group.add(
                Shapes.line(Pen.OUTLINE, new Spot(bar.left(), y), new Spot(bar.right(), y)),
                Shapes.line(Pen.OUTLINE, new Spot(bar.left(), bar.top()), new Spot(bar.left(), y)),
                Shapes.line(
                        Pen.EDGE,
                        new Spot(bar.middle().x(), bar.top() + 3),
                        new Spot(bar.middle().x(), y)),
                Shapes.line(Pen.OUTLINE, new Spot(bar.right(), bar.top()), new Spot(bar.right(), y)));
        labels.keepFree(bar);
        List<String> text = List.of(print.length(metres));
        Spot at = new Spot(bar.right() + 8 + Lettering.width(text) / 2, y - 9);
        labels.place(page.id("name.scale"), text, at, List.of(at), WIDTH);
    }
}
