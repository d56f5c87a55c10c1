package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.solve.ShotAnswer;
import plumeline.stage.InkRelease;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// A tank from camera right at the shot's start: panes, water line, what hangs in it where it is (solid) and where it
/// looks to be from the lens (dashed), lines, nozzle, and the figures by which they are set.
///
/// Apparent places are those of [TankView], exact by Snell's law for each place of the outline; where the sight isn't
/// computed ([Sightlines]), words say so and nothing is dashed.
final class TankSide {
    private static final double WIDTH = 700;
    private static final double TALLEST = 440;
    private static final double LEAST = 320;
    private static final Box MARGINS = new Box(176, 110, 160, 76);

    /// With more things than this, figures stand in their names' labels.
    private static final int MOST_WITH_LINES = 2;

    /// How far apart the outer lines of a hanging thing are, as a share of its width.
    private static final double LINES_SHARE = 0.6;

    /// Shorter dimension lines aren't drawn, pixels.
    private static final double LEAST_DIMENSION = 8;

    /// What sticks out of the water's surface by less is level with it.
    private static final double LEVEL_METRES = 0.0005;

    private final Shot shot;
    private final MarkBook marks;
    private final MarkFigures figures;
    private final Print print;
    private final TankWalls tank;
    private final Scene scene;
    private final List<Integer> things;
    private final Page page;
    private final PlanScale scale;
    private final Labels labels;
    private final PlanLettering lettering;
    private final Box outer;
    private final Box inner;

    private TankSide(PaperUnit unit, ShotAnswer answer, TankWalls tank) {
        this.tank = tank;
        Stage stage = answer.posed().stages().getFirst().stage();
        shot = stage.shot();
        marks = new MarkBook(answer);
        figures = new MarkFigures(marks, unit);
        print = new Print(unit);
        scene = stage.scene(answer.posed().values(), 0);
        things = IntStream.range(0, shot.placed().size())
                .filter(i -> marks.isPlaced(shot.placed().get(i).name())
                        && isInTank(scene.things().get(i)))
                .boxed()
                .sorted(Comparator.comparingDouble(
                        i -> scene.things().get(i).middle().x()))
                .toList();
        page = new Page(answer.shot() + ".tank", "Shot " + answer.shot() + ": the tank from camera right, to scale");
        scale = PlanScale.within(places(), WIDTH, TALLEST, LEAST, MARGINS);
        labels = new Labels(scale.sheet().grown(-1));
        lettering = new PlanLettering(page, labels, scale.sheet(), shot);
        outer = TankDrawing.box(scale, tank.outside().low(), tank.outside().high());
        inner = TankDrawing.box(scale, tank.inside().low(), tank.inside().high());
    }

    static List<Drawing> of(Plan plan, ShotAnswer answer) {
        return answer.posed().stages().getFirst().stage().findTank().stream()
                .map(tank -> new TankSide(plan.film().papersOrDefault(), answer, tank).draw())
                .toList();
    }

    private boolean isInTank(Body body) {
        Vec middle = body.middle();
        return middle.x() > tank.outside().low().x()
                && middle.x() < tank.outside().high().x()
                && middle.y() > tank.outside().low().y()
                && middle.y() < tank.outside().high().y();
    }

    private List<Vec> places() {
        List<Vec> places = new ArrayList<>(List.of(
                SideOutline.flat(tank.outside().low()),
                SideOutline.flat(tank.outside().high())));
        things.forEach(i -> SideOutline.of(scene.things().get(i)).forEach(places::addAll));
        figures.findRelease(shot).map(SideOutline::flat).ifPresent(places::add);
        return places;
    }

    private Drawing draw() {
        TankDrawing.draw(page, scale, tank);
        outer.sides().subList(0, 2).forEach(labels::keepEdge);
        inner.sides().subList(0, 2).forEach(labels::keepEdge);
        labels.keepEdge(outer.sides().get(3));
        labels.keepEdge(inner.sides().get(3));
        ScaleBar.draw(page, labels, scale, print);
        drawWaterLine();
        things.forEach(this::drawThing);
        things.forEach(this::drawSeen);
        drawRelease();
        drawPlume();
        nameGlass();
        for (Placed placed : shot.placed()) {
            if (!marks.isPlaced(placed.name())) {
                lettering.note(
                        "thing." + placed.name(), placed.name() + ": its place is still open, so it isn't drawn.");
            }
        }
        sayPlace();
        lettering.atLowerRight("from", "from camera right, at the start");
        return page.finish(WIDTH, lettering.letter());
    }

    /// What a view from the side can't show: where the tank stands sideways; and what its boxes mean.
    private void sayPlace() {
        double left = tank.outside().low().x();
        double right = tank.outside().high().x();
        lettering.note(
                "tank",
                "Tank sideways: outside from x " + figures.signed(left) + " to x " + figures.signed(right)
                        + ", its middle at x " + figures.signed((left + right) / 2) + ".");
        if (!figures.leewayWords().isEmpty()) {
            lettering.note("leeway", figures.leewayWords());
        }
    }

    private Spot spot(Vec place) {
        return scale.spot(SideOutline.flat(place));
    }

    private boolean isWet() {
        return tank.waterLineMetres() > tank.inside().low().z() + LEVEL_METRES;
    }

    private void nameGlass() {
        String words = "front glass " + print.length(tank.paneMetres());
        lettering.under("glass", words, new Spot(outer.left(), outer.top()), 6);
        if (!isWet()) {
            lettering.note("water", "The tank is drawn without water: the plan gives none.");
        }
    }

    private void drawWaterLine() {
        if (!isWet()) {
            return;
        }
        double x = outer.right() + 16;
        double water = scale.spot(new Vec(0, tank.waterLineMetres(), 0)).y();
        Stretch line = new Stretch(new Spot(x, inner.bottom()), new Spot(x, water));
        page.group("height.water")
                .add(Shapes.dimension(line))
                .add(
                        Shapes.line(
                                Pen.THIN,
                                new Spot(inner.right(), inner.bottom()),
                                line.from().plus(5, 0)),
                        Shapes.line(
                                Pen.THIN,
                                new Spot(inner.right(), water),
                                line.to().plus(5, 0)));
        labels.keepLine(line);
        String figure =
                figures.signed(tank.waterLineMetres() - tank.inside().low().z());
        List<String> lines = List.of("water " + figure, "over the floor");
        Spot middle = line.from().toward(line.to(), 0.5);
        lettering.near("water", lines, middle, 6, 20);
    }

    private void drawThing(int i) {
        Body body = scene.things().get(i);
        Placed placed = shot.placed().get(i);
        Markup group = page.group("thing." + placed.name());
        List<List<Vec>> rings = SideOutline.of(body);
        Box room = Box.about(
                rings.stream().flatMap(ring -> ring.stream().map(scale::spot)).toList());
        if (placed.isHung()) {
            drawLines(group, placed, spot(body.middle()).x(), room);
        }
        rings.forEach(
                ring -> group.add(Shapes.closed(Pen.OUTLINE, scale.spots(ring)).with("fill", "#fff")));
        labels.keepFree(room);
        figures.drawLeeway(page, placed.name(), spot(body.pose().base()), scale.pixelsPerMetre());
        List<String> lines = new ArrayList<>(List.of(placed.name()));
        if (things.size() <= MOST_WITH_LINES) {
            placed.lines().ifPresent(count -> lines.add("on " + count + (count == 1 ? " line" : " lines")));
            drawFigures(placed.name(), body, room);
            Vec base = body.pose().base();
            lines.add(figures.say("y", base.y(), placed.name() + ".y"));
            lines.add(figures.say("up", base.z(), placed.name() + ".z"));
            saySeen(placed.name(), body, lines);
        } else {
            List<String> said =
                    new ArrayList<>(List.of(figures.signed(behindGlass(body)) + " behind the glass", depthWords(body)));
            said.addAll(seenWords(body));
            said.remove("(dashed)");
            lettering.note("thing." + placed.name(), placed.name() + ": " + String.join(", ", said));
        }
        lettering.near(
                "thing." + placed.name(),
                lines,
                new Spot(room.right(), room.middle().y()),
                10,
                40);
    }

    /// The lines on which a thing hangs, side by side, one where the plan doesn't say how many.
    private void drawLines(Markup group, Placed placed, double x, Box room) {
        long count = placed.lines().isPresent() ? placed.lines().getAsLong() : 1;
        for (int i = 0; i < count; i++) {
            double aside = count > 1 ? room.width() * LINES_SHARE * (i / (count - 1.0) - 0.5) : 0;
            Spot top = new Spot(x + aside, room.top());
            Stretch line = new Stretch(top, new Spot(top.x(), Math.min(outer.top() - 26, room.top() - 26)));
            group.add(Shapes.line(Pen.THIN, line));
            labels.keepEdge(line);
        }
    }

    /// How high a thing's lowest place is over the tank's floor.
    private void drawBase(String name, Body body, Box room) {
        if (inner.bottom() - room.bottom() < LEAST_DIMENSION) {
            return;
        }
        double x = room.right() + 12;
        Stretch base = new Stretch(new Spot(x, inner.bottom()), new Spot(x, room.bottom()));
        page.group("base." + name)
                .add(Shapes.dimension(base))
                .add(Shapes.line(
                        Pen.THIN,
                        new Spot(room.middle().x() + 4, room.bottom()),
                        base.to().plus(5, 0)));
        labels.keepLine(base);
        String figure =
                figures.signed(body.bounds().low().z() - tank.inside().low().z());
        lettering.beside("figure.base." + name, figure, name + " over the tank's floor " + figure, base);
    }

    private double behindGlass(Body body) {
        return body.bounds().low().y() - tank.inside().low().y();
    }

    private String depthWords(Body body) {
        if (!isWet()) {
            return "in air";
        }
        double deep = tank.waterLineMetres() - body.bounds().high().z();
        return "top " + figures.signed(Math.abs(deep)) + (deep >= 0 ? " under water" : " over water");
    }

    /// The thing's way from the front glass, under it where there is room, and the depth of its top.
    private void drawFigures(String name, Body body, Box room) {
        double y = room.bottom() + 20 < inner.bottom() - 4 ? room.bottom() + 14 : room.top() - 14;
        Stretch glass = new Stretch(new Spot(inner.left(), y), new Spot(room.left(), y));
        Markup group = page.group("distance." + name);
        group.add(Shapes.dimension(glass))
                .add(Shapes.line(
                        Pen.THIN,
                        new Spot(room.left(), y + (y > room.bottom() ? 5 : -5)),
                        new Spot(room.left(), y > room.bottom() ? room.bottom() : room.top())));
        labels.keepLine(glass);
        String figure = figures.signed(behindGlass(body));
        lettering.beside("figure.distance." + name, figure, name + " behind the glass " + figure, glass);
        drawBase(name, body, room);
        if (!isWet()) {
            return;
        }
        double deep = tank.waterLineMetres() - body.bounds().high().z();
        double x = room.right() + 12;
        Stretch depth = new Stretch(
                new Spot(x, room.top()),
                new Spot(x, scale.spot(new Vec(0, tank.waterLineMetres(), 0)).y()));
        page.group("depth." + name)
                .add(Shapes.dimension(depth))
                .add(Shapes.line(
                        Pen.THIN,
                        new Spot(room.middle().x() + 4, room.top()),
                        depth.from().plus(5, 0)));
        labels.keepLine(depth);
        String words = figures.signed(Math.abs(deep));
        lettering.beside(
                "figure.depth." + name, words, name + " top " + depthWords(body).substring(4), depth);
    }

    private Sightlines.Seeing seeing(Body body) {
        return scene.lines().at(List.of(body));
    }

    /// The view through the wall where it is computed and moves things along this page.
    private Optional<TankView> findView(Body body) {
        Sightlines.Seeing seeing = seeing(body);
        return seeing.isCovered() && seeing.projection() instanceof TankView view
                ? Optional.of(view)
                : Optional.empty();
    }

    private List<String> seenWords(Body body) {
        if (!marks.isCameraSet()) {
            return List.of("where it looks to be: unknown", "(the camera's place is still open)");
        }
        Sightlines.Seeing seeing = seeing(body);
        if (!seeing.isCovered()) {
            return List.of("where it looks to be: unknown", reason(seeing.trouble()));
        }
        return findView(body)
                .map(view -> List.of(
                        "looks " + print.length(nearerMetres(view, body)) + " nearer",
                        isAcross(view) ? "(dashed)" : "(through a side wall)"))
                .orElse(List.of("seen past the tank"));
    }

    /// How it is seen, with its name; why that isn't known, below the drawing.
    private void saySeen(String name, Body body, List<String> lines) {
        if (marks.isCameraSet() && seeing(body).isCovered()) {
            lines.addAll(seenWords(body));
        } else {
            lettering.note("seen." + name, name + ": " + String.join(" ", seenWords(body)) + ".");
        }
    }

    private static String reason(Sightlines.Trouble trouble) {
        return switch (trouble) {
            case SURFACE -> "(sight through the water's surface)";
            case WATER_LINE -> "(the water line cuts it)";
            case OTHER_WALL -> "(sight over the rim or another wall)";
            case NONE -> "(sight not computed)";
        };
    }

    /// By how much the middle of a body looks nearer along the wall's normal.
    private static double nearerMetres(TankView view, Body body) {
        return view.apparent(body.middle()).distanceMetres(body.middle());
    }

    /// Whether the wall that is looked through moves things across this page, not toward its reader.
    private static boolean isAcross(TankView view) {
        return Math.abs(view.wall().normal().y()) > 0.5;
    }

    /// The body's outline where it looks to be, and the sight line to its middle with its straight way on.
    private void drawSeen(int i) {
        if (!marks.isCameraSet()) {
            return;
        }
        Body body = scene.things().get(i);
        Optional<TankView> through = findView(body).filter(TankSide::isAcross);
        if (through.isEmpty()) {
            return;
        }
        TankView view = through.get();
        String name = shot.placed().get(i).name();
        Markup group = page.group("seen." + name);
        for (List<Vec> ring : SideOutline.of(body, view::apparent)) {
            group.add(Shapes.closed(Pen.HIDDEN, scale.spots(ring)));
        }
        if (things.size() > MOST_WITH_LINES) {
            return;
        }
        List<Vec> path = view.path(body.middle());
        for (int k = 1; k < path.size(); k++) {
            new Stretch(spot(path.get(k - 1)), spot(path.get(k)))
                    .clipped(scale.sheet())
                    .ifPresent(piece -> {
                        group.add(Shapes.line(Pen.THIN, piece));
                        labels.keepLine(piece);
                    });
        }
        Spot seen = spot(view.apparent(body.middle()));
        group.add(
                Shapes.line(Pen.THIN_DASHED, spot(path.get(1)), seen),
                Shapes.dot(spot(body.middle()), 2.5),
                Shapes.dot(seen, 1.8).with("fill", "#fff").with("stroke", "#000"));
        lettering.near("sight", List.of("from the lens"), new Spot(outer.left() / 2, seen.y()), 6, 60);
    }

    private void drawRelease() {
        figures.findRelease(shot).ifPresentOrElse(this::drawRelease, () -> {
            if (shot.findRelease().filter(release -> !release.marks().isEmpty()).isPresent()) {
                lettering.note("release", "release: its place is still open, so it isn't drawn.");
            }
        });
    }

    private void drawPlume() {
        figures.findRelease(shot)
                .filter(_ -> isWet() && InkRelease.of(shot) instanceof InkRelease.Known)
                .ifPresent(mouth -> TankDrawing.drawPlume(
                        page,
                        scale,
                        new TankDrawing.Letters(labels, lettering),
                        ((InkRelease.Known) InkRelease.of(shot)).at(mouth),
                        print));
    }

    private void drawRelease(Vec place) {
        Spot mouth = spot(place);
        page.group("release")
                .add(
                        Shapes.dot(mouth, 3.5),
                        Shapes.line(Pen.EDGE, mouth.plus(-3, 0), mouth.plus(-3, -40)),
                        Shapes.line(Pen.EDGE, mouth.plus(3, 0), mouth.plus(3, -40)));
        figures.drawLeeway(page, "release", mouth, scale.pixelsPerMetre());
        labels.keepFree(new Box(mouth.x() - 6, mouth.y() - 40, mouth.x() + 6, mouth.y() + 5));
        List<String> lines = new ArrayList<>(List.of("release"));
        if (isWet()) {
            double over = place.z() - tank.waterLineMetres();
            drawOver(mouth, over);
            lines.add(figures.signed(Math.abs(over)) + (over >= 0 ? " over the water" : " under the surface"));
        }
        double behind = place.y() - tank.inside().low().y();
        lines.add(figures.signed(Math.abs(behind)) + (behind >= 0 ? " behind the glass" : " before the glass"));
        lettering.stacked("release", lines, mouth.plus(0, -40), 6, PlanLettering.Way.UP);
    }

    /// How high the mouth is over the water.
    private void drawOver(Spot mouth, double overMetres) {
        double water = scale.spot(new Vec(0, tank.waterLineMetres(), 0)).y();
        if (Math.abs(mouth.y() - water) < LEAST_DIMENSION) {
            return;
        }
        Stretch over = new Stretch(new Spot(mouth.x() + 16, water), new Spot(mouth.x() + 16, mouth.y()));
        page.group("over.release")
                .add(Shapes.dimension(over))
                .add(Shapes.line(Pen.THIN, mouth.plus(4, 0), over.to().plus(5, 0)));
        labels.keepLine(over);
        String figure = figures.signed(Math.abs(overMetres));
        String side = overMetres >= 0 ? "release over the water " : "release under the surface ";
        lettering.beside("figure.over.release", figure, side + figure, over);
    }
}
