package plumeline.cut.scene;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.quantity.FrameRate;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// What a scene consists of: nodes with their surfaces, and what of them moves. The camera is the first node.
final class Parts {
    /// How far the table's top goes on past what stands on it.
    private static final double TABLE_EDGE_METRES = 0.3;

    /// What a surface looks like: a grey, to tell parts apart.
    enum Look {
        /// A product.
        THING("thing", 0.75, 1, 0.5),
        /// A lamp, card or flag.
        LAMP("lamp", 0.95, 1, 0.9),
        /// A tank's panes.
        GLASS("glass", 0.9, 0.15, 0.05),
        /// The table's top.
        TABLE("table", 0.35, 1, 0.9);

        private final String word;
        private final double grey;
        private final double covers;
        private final double roughness;

        Look(String word, double grey, double covers, double roughness) {
            this.word = word;
            this.grey = grey;
            this.covers = covers;
            this.roughness = roughness;
        }

        String word() {
            return word;
        }

        /// Red, green, blue, linear, and how much it covers, each 0 to 1.
        List<Double> colour() {
            return List.of(grey, grey, grey, covers);
        }

        double roughness() {
            return roughness;
        }
    }

    /// A surface.
    ///
    /// @param name that of the part that has it first
    /// @param places its row of figures
    /// @param normals the same
    /// @param corners the same
    record Surface(String name, Look look, int places, int normals, int corners) {}

    /// A node.
    ///
    /// @param surface its index; empty for the camera
    /// @param track where it is at each frame
    record Node(String name, OptionalInt surface, Track track) {}

    /// What moves of a node.
    ///
    /// @param path `translation` or `rotation`
    /// @param row its row of figures, one group a frame
    record Channel(int node, String path, int row) {}

    /// What one surface serves.
    private record Form(Look look, Solid solid) {}

    private final List<Scene> scenes;
    private final Figures figures = new Figures();
    private final List<Surface> surfaces = new ArrayList<>();
    private final Map<Form, Integer> byForm = new HashMap<>();
    private final List<Node> nodes = new ArrayList<>();
    private final Set<String> names = new HashSet<>();
    private final List<Channel> channels = new ArrayList<>();
    private final OptionalInt times;

    private Parts(List<Scene> scenes, Stage stage, FrameRate rate) {
        this.scenes = scenes;
        add("camera", OptionalInt.empty(), Track.ofCamera(scenes));
        for (int i = 0; i < scenes.getFirst().things().size(); i++) {
            int index = i;
            add(
                    stage.shot().placed().get(i).name(),
                    Look.THING,
                    Track.ofBody(scenes, scene -> scene.things().get(index)),
                    scenes.getFirst().things().get(i).solid());
        }
        for (int i = 0; i < scenes.getFirst().lamps().size(); i++) {
            int index = i;
            add(
                    stage.shot().lights().get(i).name(),
                    Look.LAMP,
                    Track.ofBody(scenes, scene -> scene.lamps().get(index)),
                    scenes.getFirst().lamps().get(i).solid());
        }
        stage.findTank().ifPresent(this::tank);
        table(stage);
        times = channels(rate);
    }

    /// Puts a scene together.
    ///
    /// @param scenes the shot at each of its screen frames, one at least
    /// @param rate of the screen frames
    static Parts of(List<Scene> scenes, Stage stage, FrameRate rate) {
        return new Parts(scenes, stage, rate);
    }

    private void add(String name, Look look, Track track, Solid solid) {
        int surface =
                byForm.computeIfAbsent(new Form(look, solid), form -> surface(name, look, Shell.of(form.solid())));
        add(name, OptionalInt.of(surface), track);
    }

    private void add(String name, OptionalInt surface, Track track) {
        String free = name;
        for (int i = 2; !names.add(free); i++) {
            free = name + "-" + i;
        }
        nodes.add(new Node(free, surface, track));
    }

    private int surface(String name, Look look, Shell shell) {
        surfaces.add(new Surface(
                name,
                look,
                figures.add(Figures.Use.SURFACE, shell.listPlaces()),
                figures.add(Figures.Use.SURFACE, shell.listNormals()),
                figures.add(shell.listCorners())));
        return surfaces.size() - 1;
    }

    private void tank(TankWalls tank) {
        List<Solid.Box> boxes = new ArrayList<>();
        List<Vec> bases = new ArrayList<>();
        for (Body pane : tank.panes()) {
            if (pane.solid() instanceof Solid.Box box) {
                boxes.add(box);
                bases.add(pane.pose().base());
            }
        }
        add("tank", OptionalInt.of(surface("tank", Look.GLASS, Shell.ofBoxes(boxes, bases))), still());
    }

    /// The table's top under everything that stands on it at the first frame.
    private void table(Stage stage) {
        List<Bounds> standing = new ArrayList<>();
        scenes.getFirst().things().forEach(body -> standing.add(body.bounds()));
        stage.findTank().ifPresent(tank -> standing.add(tank.outside()));
        double left = 0;
        double right = 0;
        double near = 0;
        double far = 0;
        for (Bounds one : standing) {
            left = Math.min(left, one.low().x());
            right = Math.max(right, one.high().x());
            near = Math.min(near, one.low().y());
            far = Math.max(far, one.high().y());
        }
        Shell top = Shell.ofGround(
                left - TABLE_EDGE_METRES, right + TABLE_EDGE_METRES, near - TABLE_EDGE_METRES, far + TABLE_EDGE_METRES);
        add("table", OptionalInt.of(surface("table", Look.TABLE, top)), still());
    }

    private Track still() {
        return new Track(List.of(Vec.ZERO), List.of(new Turn(0, 0, 0, 1)));
    }

    /// Finds what moves; gives the row of times where anything does.
    private OptionalInt channels(FrameRate rate) {
        for (int i = 0; i < nodes.size(); i++) {
            Track track = nodes.get(i).track();
            float[] places = track.listPlaces();
            if (!Track.isConstant(places, 3)) {
                channels.add(new Channel(i, "translation", figures.add(Figures.Use.PLACES, places)));
            }
            float[] turns = track.listTurns();
            if (!Track.isConstant(turns, 4)) {
                channels.add(new Channel(i, "rotation", figures.add(Figures.Use.TURNS, turns)));
            }
        }
        if (channels.isEmpty()) {
            return OptionalInt.empty();
        }
        float[] seconds = new float[scenes.size()];
        for (int n = 0; n < seconds.length; n++) {
            seconds[n] = (float) rate.secondsOf(n);
        }
        return OptionalInt.of(figures.add(Figures.Use.TIMES, seconds));
    }

    List<Scene> scenes() {
        return scenes;
    }

    List<Surface> surfaces() {
        return List.copyOf(surfaces);
    }

    /// The looks that surfaces have.
    List<Look> looks() {
        return surfaces.stream().map(Surface::look).distinct().toList();
    }

    List<Node> nodes() {
        return List.copyOf(nodes);
    }

    List<Channel> channels() {
        return List.copyOf(channels);
    }

    /// The row of times; empty where nothing moves.
    OptionalInt times() {
        return times;
    }

    Figures figures() {
        return figures;
    }
}
