package plumeline.draw;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.draw.over.DeliveryFrames;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.plan.Delivery;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.Thing;
import plumeline.sight.Extent;
import plumeline.sight.Face;
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
import plumeline.stage.Mirrored;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// What the camera sees at one instant, as line art: the picture's border, outlines, hidden edges dashed, every
/// delivery's frame with its keep-outs hatched. Names of deliveries stand above the picture, names of things below it.
final class CameraView {
    private static final double WIDTH = 345;
    private static final double TALLEST = 270;
    private static final double TALLEST_UPRIGHT = 212;
    private static final double EDGE = 2;
    private static final double SOFT_STEP = 6;

    /// As near as this a leader's end is on an outline, pixels.
    private static final double CLOSE = 6;

    private final Plan plan;
    private final Stage stage;
    private final MarkBook marks;
    private final Scene scene;
    private final Page page;
    private final double wide;
    private final double tall;
    private Box picture = new Box(0, 0, 0, 0);

    private CameraView(Plan plan, ShotAnswer shot, Moment moment) {
        this.plan = plan;
        stage = shot.posed().stages().getFirst().stage();
        marks = new MarkBook(shot);
        boolean isStart = !marks.areMovesSet(stage.shot());
        scene = stage.scene(shot.posed().values(), isStart ? 0 : (double) moment.frame(stage.frames()));
        page = new Page(
                shot.shot() + ".view." + moment.id(), "Shot " + shot.shot() + ": camera view at " + moment.word());
        double aspect = scene.picture().widthMetres() / scene.picture().heightMetres();
        wide = Math.min(WIDTH - 2 * EDGE, (aspect < 1 ? TALLEST_UPRIGHT : TALLEST) * aspect);
        tall = wide / aspect;
    }

    static Drawing of(Plan plan, ShotAnswer shot, Moment moment) {
        return new CameraView(plan, shot, moment).draw();
    }

    private Drawing draw() {
        List<DeliveryFrames.Framed> frames = DeliveryFrames.list(plan, stage.shot(), scene.picture());
        double above = frames.size() * Lettering.ROW + (frames.isEmpty() ? EDGE : 4);
        double left = (WIDTH - wide) / 2;
        picture = new Box(left, above, left + wide, above + tall);
        drawBodies();
        drawTank();
        mirrored = stage.findTank()
                .filter(_ -> marks.isCameraSet())
                .map(walls -> new MirrorImages(stage, scene, walls, this::spot)
                        .draw(page, subjects(), fineness(), picture, page.id("clip")))
                .orElse(List.of());
        DeliveryFrames.draw(frames, room(), page, DeliveryFrames.ON_PAPER);
        page.group("picture").add(Shapes.box(Pen.BORDER, picture));
        letterFrames(frames);
        double below = letterThings();
        return page.finish(WIDTH, below);
    }

    private DeliveryFrames.Room room() {
        return new DeliveryFrames.Room(picture.middle(), wide, tall);
    }

    private Spot spot(Point point) {
        Spot middle = picture.middle();
        return middle.plus(
                point.x() / scene.picture().widthTangent() * wide,
                -point.y() / scene.picture().heightTangent() * tall);
    }

    private Point point(Spot spot) {
        Spot middle = picture.middle();
        return new Point(
                (spot.x() - middle.x()) / wide * scene.picture().widthTangent(),
                (middle.y() - spot.y()) / tall * scene.picture().heightTangent());
    }

    /// What has its place; nothing where the camera hasn't.
    private List<Silhouettes.Subject> subjects() {
        List<Silhouettes.Subject> subjects = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            Placed placed = stage.shot().placed().get(i);
            boolean clear =
                    placed.thing().body().filter(b -> b == Thing.Body.CLEAR).isPresent();
            Body body = scene.things().get(i);
            subjects.add(new Silhouettes.Subject(placed.name(), body, scene.view(body), !clear));
        }
        for (int i = 0; i < scene.lamps().size(); i++) {
            Body lamp = scene.lamps().get(i);
            subjects.add(new Silhouettes.Subject(stage.shot().lights().get(i).name(), lamp, scene.view(lamp), true));
        }
        subjects.removeIf(subject -> !marks.isCameraSet() || !marks.isPlaced(subject.name()));
        return subjects;
    }

    /// What isn't drawn since its place is still to be found.
    private List<String> open() {
        List<String> names = new ArrayList<>();
        if (!marks.isCameraSet()) {
            names.add("camera");
        }
        stage.shot().placed().forEach(placed -> names.add(placed.name()));
        stage.shot().lights().forEach(light -> names.add(light.name()));
        names.removeIf(name -> !name.equals("camera") && marks.isPlaced(name));
        if (!marks.areMovesSet(stage.shot())) {
            names.add("ends of moves");
        }
        return names;
    }

    private List<Silhouettes.Drawn> drawn = List.of();
    private List<Mirrored> mirrored = List.of();
    private final Map<String, Softness.Part> soft = new HashMap<>();

    private void drawBodies() {
        double across = scene.picture().widthTangent();
        double up = scene.picture().heightTangent();
        drawn = new Silhouettes(subjects(), fineness()).draw(new Extent(-across / 2, across / 2, -up / 2, up / 2));
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
            hatchSoft(body, group);
        }
    }

    private double fineness() {
        return scene.picture().widthTangent() / 300;
    }

    /// Hatches what is soft of a placed thing, as far as it is in view.
    private void hatchSoft(Silhouettes.Drawn body, Markup group) {
        int index = stage.thingIndex(body.name());
        if (index < 0 || !body.isSeen()) {
            return;
        }
        Softness softness =
                new Softness(scene, scene.things().get(index), Softness.blurPixels(stage.shot(), body.name()));
        Softness.Part part = softness.part();
        soft.put(body.name(), part);
        if (part == Softness.Part.NONE) {
            return;
        }
        List<List<List<Spot>>> hiders = body.hiders().stream().map(this::rings).toList();
        List<Stretch> lines = Hatching.over(
                rings(body.shape()),
                hiders,
                picture,
                SOFT_STEP,
                at -> part == Softness.Part.ALL || softness.isSoft(point(at)));
        group.add(Shapes.lines(Pen.HATCH, lines));
    }

    private List<List<Spot>> rings(List<Face> faces) {
        List<List<Spot>> rings = new ArrayList<>();
        for (Face face : faces) {
            rings.add(face.shell().stream().map(this::spot).toList());
            face.holes().forEach(hole -> rings.add(hole.stream().map(this::spot).toList()));
        }
        return rings;
    }

    private List<Spot> spots(Silhouettes.Run run) {
        return run.points().stream().map(this::spot).toList();
    }

    /// The water line as a tape mark on the front glass, and the glass's edges.
    private void drawTank() {
        Optional<TankWalls> tank = stage.findTank();
        if (tank.isEmpty()
                || !marks.isCameraSet()
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

    /// Names above the picture; a frame further right is named further down, so that no leader crosses a name.
    private void letterFrames(List<DeliveryFrames.Framed> frames) {
        List<DeliveryFrames.Framed> order = new ArrayList<>(frames);
        order.sort(Comparator.comparingDouble(framed -> framed.box(room()).left()));
        Box sheet = new Box(0, 0, WIDTH, picture.top());
        Labels labels = new Labels(sheet);
        Markup leaders = page.group("leaders");
        for (int row = 0; row < order.size(); row++) {
            Delivery delivery = order.get(row).delivery();
            String text = Lettering.fitted(order.get(row).words(), WIDTH - 8);
            double width = Lettering.width(text);
            double left = order.get(row).box(room()).left();
            double y = Lettering.ROW * (row + 0.5);
            double x = Math.min(left + 5, WIDTH - width) + width / 2;
            Spot anchor = new Spot(left, y);
            labels.place(
                    page.id("name.delivery." + delivery.name()), List.of(text), anchor, List.of(new Spot(x, y)), WIDTH);
            leaders.add(Shapes.line(
                    Pen.THIN,
                    new Spot(left, y - Lettering.LINE / 3),
                    new Spot(left, order.get(row).box(room()).top())));
        }
        page.letter(labels.draw());
    }

    /// Names below the picture, in as many rows as they take.
    ///
    /// @return how far down the drawing reaches
    private double letterThings() {
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
        List<ViewNames.Name> names = new ArrayList<>();
        for (Silhouettes.Drawn body : seen) {
            Spot anchor = anchor(body);
            if (!body.outline().stream().allMatch(Silhouettes.Run::isSeen)) {
                page.group("at." + body.name()).add(Shapes.dot(anchor, 1.8));
            }
            names.add(new ViewNames.Name(page.id("name.thing." + body.name()), nameLines(body.name()), anchor));
        }
        double floor = picture.bottom() + 8;
        ViewNames below = new ViewNames(WIDTH, floor, ViewNames.Side.BELOW);
        ViewNames.Placing placing = below.place(names);
        page.letter(placing.labels().draw());
        List<String> rows = new ArrayList<>();
        below.addRows(rows, "", placing.key());
        below.addRows(rows, "no room for: ", placing.unplaced());
        below.addRows(rows, "place still open: ", open());
        below.addRows(rows, "hidden: ", hidden.reversed());
        below.addRows(rows, "mirrored by the surface: ", mirroredNames(Mirrored.By.SURFACE));
        below.addRows(rows, "mirrored by a side wall: ", mirroredNames(Mirrored.By.WALL));
        Box box = new Box(2, floor + placing.reach() + 2, WIDTH, floor + placing.reach() + 2);
        if (!rows.isEmpty()) {
            box = new Box(2, box.top(), WIDTH, box.top() + Lettering.LINE * rows.size());
            page.letter(List.of(Markup.of("g", Lettering.text(rows, box)).with("id", page.id("note"))));
        }
        return box.bottom() + EDGE;
    }

    private List<String> mirroredNames(Mirrored.By by) {
        return mirrored.stream()
                .filter(image -> image.by() == by)
                .map(image -> stage.shot().placed().get(image.thing()).name())
                .distinct()
                .toList();
    }

    /// Where a body is named: on its outline in view, below its middle where that is in view.
    private Spot anchor(Silhouettes.Drawn body) {
        List<Spot> seen = body.outline().stream()
                .filter(Silhouettes.Run::isSeen)
                .flatMap(run -> run.points().stream())
                .map(this::spot)
                .filter(picture::holds)
                .toList();
        Box box = boxOf(body);
        Spot below = new Spot(
                Math.clamp(box.middle().x(), picture.left(), picture.right()),
                Math.clamp(box.bottom(), picture.top(), picture.bottom()));
        if (seen.isEmpty() || body.outline().stream().allMatch(Silhouettes.Run::isSeen)) {
            return below;
        }
        Box inView = Box.about(seen);
        Spot wanted = inView.holds(below) ? below : new Spot(inView.middle().x(), inView.bottom());
        return seen.stream()
                .min(Comparator.comparingDouble(spot -> spot.distance(wanted)))
                .filter(spot -> spot.distance(below) > CLOSE)
                .orElse(below);
    }

    /// A thing's name, with what of it is soft beside it, and whether its picture isn't computed.
    private List<String> nameLines(String name) {
        Softness.Part part = soft.getOrDefault(name, Softness.Part.NONE);
        List<String> lines = new ArrayList<>();
        String words = part == Softness.Part.NONE ? "" : " (" + part.words() + ")";
        if (Lettering.width(name + words) <= WIDTH * 0.9) {
            lines.add(name + words);
        } else {
            lines.addAll(Lettering.rows(
                    name,
                    WIDTH * 0.9,
                    drawn.stream().map(Silhouettes.Drawn::name).toList()));
            lines.add(words.strip());
        }
        int index = stage.thingIndex(name);
        if (index >= 0 && !seeing(index).isCovered()) {
            lines.add("(" + troubleWords(seeing(index).trouble()) + ")");
        }
        return lines.stream().filter(line -> !line.isEmpty()).toList();
    }

    private Sightlines.Seeing seeing(int thing) {
        return scene.lines().at(List.of(scene.things().get(thing)));
    }

    private static String troubleWords(Sightlines.Trouble trouble) {
        return switch (trouble) {
            case NONE, OTHER_WALL -> "sight through another wall or the rim: not computed";
            case SURFACE -> "sight through the water's surface: not computed";
            case WATER_LINE -> "cut by the water line: not computed";
        };
    }

    private Box boxOf(Silhouettes.Drawn body) {
        return Box.about(body.outline().stream()
                .flatMap(run -> run.points().stream())
                .map(this::spot)
                .toList());
    }
}
