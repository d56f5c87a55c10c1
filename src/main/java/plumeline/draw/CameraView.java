package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.plan.Delivery;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Thing;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;
import plumeline.want.Frame;

/// What the camera sees at one instant, as line art: the picture's border, outlines, hidden edges dashed, every
/// delivery's frame with its keep-outs hatched. Names of deliveries stand above the picture, names of things below it.
final class CameraView {
    private static final double WIDTH = 345;
    private static final double TALLEST = 270;
    private static final double EDGE = 2;

    /// Dashes by which deliveries' frames differ; the weight differs with them.
    private static final List<String> DASHES = List.of("", "12 4", "4 3", "12 3 3 3", "1.5 2.5", "18 3 3 3 3 3");

    /// How the frames of deliveries are told apart, in words, in the order of [#DASHES].
    private static final List<String> DASH_WORDS =
            List.of("unbroken line", "long dashes", "short dashes", "dash and dot", "dots", "dash and two dots");

    private final Plan plan;
    private final Stage stage;
    private final Scene scene;
    private final Page page;
    private final double wide;
    private final double tall;
    private Box picture = new Box(0, 0, 0, 0);

    private CameraView(Plan plan, ShotAnswer shot, Moment moment) {
        this.plan = plan;
        stage = shot.posed().stages().getFirst().stage();
        scene = stage.scene(shot.posed().values(), (double) moment.frame(stage.frames()));
        page = new Page(
                shot.shot() + ".view." + moment.word(), "Shot " + shot.shot() + ": camera view at " + moment.word());
        double aspect = scene.picture().widthMetres() / scene.picture().heightMetres();
        wide = Math.min(WIDTH - 2 * EDGE, TALLEST * aspect);
        tall = wide / aspect;
    }

    static Drawing of(Plan plan, ShotAnswer shot, Moment moment) {
        return new CameraView(plan, shot, moment).draw();
    }

    /// Says how a delivery's frame is drawn.
    static String frameWords(Plan plan, Delivery delivery) {
        return DASH_WORDS.get(plan.deliveries().indexOf(delivery) % DASH_WORDS.size());
    }

    private Drawing draw() {
        List<Framed> frames = frames();
        double above = frames.size() * Lettering.ROW + (frames.isEmpty() ? EDGE : 4);
        double left = (WIDTH - wide) / 2;
        picture = new Box(left, above, left + wide, above + tall);
        drawBodies();
        drawTank();
        drawFrames(frames);
        page.group("picture").add(Shapes.box(Pen.BORDER, picture));
        letterFrames(frames);
        double below = letterThings();
        return page.finish(WIDTH, below);
    }

    private Spot spot(Point point) {
        Spot middle = picture.middle();
        return middle.plus(
                point.x() / scene.picture().widthTangent() * wide,
                -point.y() / scene.picture().heightTangent() * tall);
    }

    private List<Silhouettes.Subject> subjects() {
        List<Silhouettes.Subject> subjects = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            Placed placed = stage.shot().placed().get(i);
            boolean clear =
                    placed.thing().body().filter(b -> b == Thing.Body.CLEAR).isPresent();
            subjects.add(new Silhouettes.Subject(placed.name(), scene.things().get(i), !clear));
        }
        for (int i = 0; i < scene.lamps().size(); i++) {
            subjects.add(new Silhouettes.Subject(
                    stage.shot().lights().get(i).name(), scene.lamps().get(i), true));
        }
        return subjects;
    }

    private List<Silhouettes.Drawn> drawn = List.of();

    private void drawBodies() {
        drawn = new Silhouettes(scene.projection(), subjects(), scene.picture().widthTangent() / 300).draw();
        String clip = page.id("clip");
        page.group("frame")
                .add(Markup.of(
                                "clipPath",
                                Markup.of("rect")
                                        .with("x", picture.left())
                                        .with("y", picture.top())
                                        .with("width", picture.width())
                                        .with("height", picture.height()))
                        .with("id", clip));
        for (Silhouettes.Drawn body : drawn) {
            Markup group = page.group("thing." + body.name()).with("clip-path", "url(#" + clip + ")");
            for (Silhouettes.Run run : body.outline()) {
                group.add(Shapes.run(run.isSeen() ? Pen.OUTLINE : Pen.HIDDEN, spots(run)));
            }
            body.rims().forEach(run -> group.add(Shapes.run(Pen.EDGE, spots(run))));
        }
    }

    private List<Spot> spots(Silhouettes.Run run) {
        return run.points().stream().map(this::spot).toList();
    }

    /// The water line as a tape mark on the front glass, and the glass's edges.
    private void drawTank() {
        Optional<TankWalls> tank = stage.findTank();
        if (tank.isEmpty()
                || scene.aim().eye().y() >= tank.get().outside().low().y()) {
            return;
        }
        Vec low = tank.get().outside().low();
        Vec high = tank.get().outside().high();
        Pinhole plain = new Pinhole(scene.aim());
        List<Vec> corners = List.of(
                low,
                new Vec(high.x(), low.y(), low.z()),
                new Vec(high.x(), low.y(), high.z()),
                new Vec(low.x(), low.y(), high.z()));
        if (corners.stream().anyMatch(corner -> plain.depth(corner) <= 0.01)) {
            return;
        }
        Markup group = page.group("tank").with("clip-path", "url(#" + page.id("clip") + ")");
        group.add(Shapes.closed(
                Pen.EDGE, corners.stream().map(c -> spot(plain.project(c))).toList()));
        double water = tank.get().waterLineMetres();
        group.add(Shapes.line(
                Pen.WATER,
                spot(plain.project(new Vec(low.x(), low.y(), water))),
                spot(plain.project(new Vec(high.x(), low.y(), water)))));
    }

    private record Framed(Delivery delivery, Frame frame) {}

    private List<Framed> frames() {
        return plan.deliveries().stream()
                .map(delivery -> new Framed(
                        delivery,
                        Frame.of(scene.picture(), delivery, stage.shot().cropOrDefault(delivery.name()))))
                .toList();
    }

    private Box box(Frame frame) {
        Spot middle = picture.middle();
        return new Box(
                middle.x() + frame.left() * wide,
                middle.y() - frame.top() * tall,
                middle.x() + frame.right() * wide,
                middle.y() - frame.bottom() * tall);
    }

    private void drawFrames(List<Framed> frames) {
        for (int i = 0; i < frames.size(); i++) {
            Framed framed = frames.get(i);
            Markup group = page.group("delivery." + framed.delivery().name());
            Box outer = box(framed.frame());
            Box free = box(framed.frame().within(framed.delivery().keepOut()));
            for (Box strip : List.of(
                    new Box(outer.left(), outer.top(), outer.right(), free.top()),
                    new Box(outer.left(), free.bottom(), outer.right(), outer.bottom()),
                    new Box(outer.left(), free.top(), free.left(), free.bottom()),
                    new Box(free.right(), free.top(), outer.right(), free.bottom()))) {
                if (strip.width() > 0.5 && strip.height() > 0.5) {
                    group.add(Shapes.hatch(strip, 7));
                }
            }
            Markup frame = Shapes.box(Pen.EDGE, outer).with("stroke-width", 1.3);
            String dash = DASHES.get(i % DASHES.size());
            group.add(dash.isEmpty() ? frame : frame.with("stroke-dasharray", dash));
        }
    }

    /// Names above the picture; a frame further right is named further down, so that no leader crosses a name.
    private void letterFrames(List<Framed> frames) {
        List<Framed> order = new ArrayList<>(frames);
        order.sort(Comparator.comparingDouble(framed -> box(framed.frame()).left()));
        Box sheet = new Box(0, 0, WIDTH, picture.top());
        Labels labels = new Labels(sheet);
        Markup leaders = page.group("leaders");
        for (int row = 0; row < order.size(); row++) {
            Delivery delivery = order.get(row).delivery();
            String text = Lettering.fitted(delivery.name() + " " + ratio(delivery), WIDTH - 8);
            double width = Lettering.width(text);
            double left = box(order.get(row).frame()).left();
            double y = Lettering.ROW * (row + 0.5);
            double x = Math.min(left + 5, WIDTH - width) + width / 2;
            Spot anchor = new Spot(left, y);
            labels.place(
                    page.id("name.delivery." + delivery.name()), List.of(text), anchor, List.of(new Spot(x, y)), WIDTH);
            leaders.add(Shapes.line(
                    Pen.THIN,
                    new Spot(left, y - Lettering.LINE / 3),
                    new Spot(left, box(order.get(row).frame()).top())));
        }
        page.letter(labels.draw());
    }

    private static String ratio(Delivery delivery) {
        return delivery.ratio()
                .map(ratio -> ratio.across() + ":" + ratio.down())
                .orElseGet(() -> String.format(Locale.ROOT, "%.2f:1", delivery.aspect()));
    }

    /// Names below the picture, in as many rows as they take.
    ///
    /// @return how far down the drawing reaches
    private double letterThings() {
        double floor = picture.bottom() + 4;
        Labels labels = new Labels(new Box(0, floor, WIDTH, floor + Lettering.ROW * 31));
        List<Silhouettes.Drawn> seen = new ArrayList<>();
        List<String> hidden = new ArrayList<>();
        for (Silhouettes.Drawn body : drawn) {
            if (!picture.grown(-1).meets(boxOf(body))) {
                continue;
            }
            if (body.isSeen()) {
                seen.add(body);
            } else {
                hidden.add(body.name());
            }
        }
        seen.sort(Comparator.comparingDouble(body -> boxOf(body).middle().x()));
        for (Silhouettes.Drawn body : seen) {
            Box box = boxOf(body);
            Spot anchor = new Spot(
                    Math.clamp(box.middle().x(), picture.left(), picture.right()),
                    Math.clamp(box.bottom(), picture.top(), picture.bottom()));
            letter(labels, body.name(), anchor, floor);
        }
        if (!hidden.isEmpty()) {
            String all = "hidden: " + String.join(", ", hidden.reversed());
            String text = Lettering.width(all) <= WIDTH - 4 ? all : hidden.size() + " things are hidden";
            for (int row = 0; row < 29; row++) {
                Spot at = new Spot(WIDTH / 2, floor + Lettering.ROW * (row + 0.5) + 4);
                if (labels.place(page.id("hidden"), List.of(text), at, List.of(at), WIDTH)
                        .isPresent()) {
                    break;
                }
            }
        }
        page.letter(labels.draw());
        return labels.placed().stream()
                        .mapToDouble(label -> label.box().bottom())
                        .max()
                        .orElse(picture.bottom())
                + EDGE;
    }

    private void letter(Labels labels, String name, Spot anchor, double floor) {
        List<String> lines = List.of(Lettering.fitted(name, WIDTH * 0.9));
        List<Spot> candidates = new ArrayList<>();
        for (int row = 0; row < 28; row++) {
            for (int aside = 0; aside <= 10; aside++) {
                double y = floor + Lettering.ROW * (row + 0.5) + 4;
                candidates.add(new Spot(anchor.x() + aside * 12, y));
                candidates.add(new Spot(anchor.x() - aside * 12, y));
            }
        }
        candidates.sort(Comparator.comparingDouble(at -> Math.abs(at.x() - anchor.x()) + 2 * Math.abs(at.y() - floor)));
        labels.place(page.id("name.thing." + name), lines, anchor, candidates, 1);
    }

    private Box boxOf(Silhouettes.Drawn body) {
        return Box.about(body.outline().stream()
                .flatMap(run -> run.points().stream())
                .map(this::spot)
                .toList());
    }
}
