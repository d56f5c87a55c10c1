package plumeline.cut.scene;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.cut.StrictJson;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Scenes read back by their own reader, against the shot posed.
final class MovesGlbTest {
    /// Single precision of a place within a few metres.
    private static final double SINGLE_METRES = 5e-7;

    private static GlbReader read(MovesGlb glb) {
        return new GlbReader(glb.bytes());
    }

    private static MovesGlb only(String shots) {
        List<MovesGlb> all = MovesGlb.listAll(MovedPlans.solved(shots));
        assertThat(all).hasSize(1);
        return all.getFirst();
    }

    private static double[] figures(Vec ours) {
        return new double[] {ours.x(), ours.z(), -ours.y()};
    }

    /// Places of a thing's own frame that no turn leaves where they are.
    private static List<Vec> spots(Solid solid) {
        double reach = solid.reachMetres();
        double high = solid.heightMetres();
        return List.of(new Vec(reach, 0, high), new Vec(-reach, reach / 2, 0), new Vec(0, -reach, high / 3), Vec.ZERO);
    }

    private static Scene scene(FilmAnswer film, double frame) {
        ShotAnswer shot = film.shots().getFirst();
        Stage stage = shot.posed().stages().getFirst().stage();
        return stage.scene(shot.posed().values(), frame);
    }

    private static int compare(String shots) {
        FilmAnswer film = MovedPlans.solved(shots);
        GlbReader glb = read(MovesGlb.listAll(film).getFirst());
        Stage stage = film.shots().getFirst().posed().stages().getFirst().stage();
        int compared = 0;
        long last = stage.frames() - 1;
        for (long frame : new long[] {0, 1, last / 3, last / 2, last - 1, last}) {
            Scene scene = scene(film, frame);
            double seconds = frame * 1001.0 / 24_000;
            for (int i = 0; i < scene.things().size(); i++) {
                Body body = scene.things().get(i);
                int node = glb.nodeNames().indexOf(stage.shot().placed().get(i).name());
                for (Vec spot : spots(body.solid())) {
                    Vec place = body.place(spot);
                    double[] read = glb.inScene(node, figures(spot), seconds);
                    assertThat(read)
                            .as("%s at frame %s", shots, frame)
                            .containsExactly(figures(place), within(SINGLE_METRES));
                    Point point = scene.projection().project(place);
                    double[] seen = glb.seen(read, seconds);
                    assertThat(seen[0]).isCloseTo(point.x() / scene.picture().widthTangent(), within(1e-5));
                    assertThat(seen[1]
                                    * scene.picture().heightMetres()
                                    / scene.picture().widthMetres())
                            .isCloseTo(point.y() / scene.picture().widthTangent(), within(1e-5));
                    compared++;
                }
            }
        }
        return compared;
    }

    @Test
    void cameraAndThings_stand_andAreSeen_asInTheShot() {
        assertThat(compare(MovedPlans.ALL_AXES)).isEqualTo(6 * 3 * 4);
    }

    @Test
    void shotsByChance_stand_andAreSeen_asTheyAre() {
        long seed = 20261130;
        Random chance = new Random(seed);
        int compared = 0;
        for (int i = 0; i < 25; i++) {
            compared += compare(MovedPlans.byChance(chance));
        }
        assertThat(compared).as("seed %s", seed).isEqualTo(25 * 72);
    }

    @Test
    void turns_areOfUnitLength_andGoTheShorterWay() {
        GlbReader glb = read(only(MovedPlans.ALL_AXES));
        int turns = 0;
        for (Object channel : StrictJson.list(glb.json, "animations", 0, "channels")) {
            if (StrictJson.text(channel, "target", "path").equals("rotation")) {
                Object sampler = StrictJson.at(
                        glb.json, "animations", 0, "samplers", (int) StrictJson.number(channel, "sampler"));
                List<double[]> groups = glb.figures((int) StrictJson.number(sampler, "output"));
                for (int i = 0; i < groups.size(); i++) {
                    double[] q = groups.get(i);
                    double[] before = groups.get(Math.max(0, i - 1));
                    assertThat(dot(q, q)).isCloseTo(1, within(1e-6));
                    assertThat(dot(q, before)).isPositive();
                    turns++;
                }
            }
        }
        assertThat(turns).as("of the camera and what turns").isEqualTo(2 * 80);
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    @Test
    void keys_areTheScreenFrames_andWhatStandsHasNone() {
        GlbReader glb = read(only(MovedPlans.ALL_AXES));
        List<String> moved = StrictJson.list(glb.json, "animations", 0, "channels").stream()
                .map(channel -> glb.nodeNames().get((int) StrictJson.number(channel, "target", "node")) + " "
                        + StrictJson.text(channel, "target", "path"))
                .toList();
        // A thing that leans turns about its middle, so that the middle of its base goes round too.
        assertThat(moved).containsExactly("camera translation", "camera rotation", "side translation", "side rotation");
        assertThat(StrictJson.text(glb.json, "animations", 0, "name")).isEqualTo("one");
        int row = (int) StrictJson.number(glb.json, "animations", 0, "samplers", 0, "input");
        List<double[]> times = glb.figures(row);
        assertThat(times).hasSize(80);
        for (int n = 0; n < 80; n++) {
            assertThat(times.get(n)[0]).isEqualTo((double) (float) (n * 1001.0 / 24_000));
        }
        assertThat(StrictJson.number(glb.json, "accessors", row, "min", 0)).isZero();
        assertThat(StrictJson.number(glb.json, "accessors", row, "max", 0)).isEqualTo(times.getLast()[0]);
    }

    @Test
    void bounds_areThoseOfTheFigures() {
        GlbReader glb = read(only(MovedPlans.ALL_AXES));
        List<Object> rows = StrictJson.list(glb.json, "accessors");
        int compared = 0;
        for (int i = 0; i < rows.size(); i++) {
            if (!StrictJson.map(rows.get(i)).containsKey("min")) {
                continue;
            }
            List<double[]> groups = glb.figures(i);
            for (int k = 0; k < groups.getFirst().length; k++) {
                int figure = k;
                assertThat(StrictJson.number(rows.get(i), "min", k))
                        .isEqualTo(groups.stream()
                                .mapToDouble(group -> group[figure])
                                .min()
                                .orElseThrow());
                assertThat(StrictJson.number(rows.get(i), "max", k))
                        .isEqualTo(groups.stream()
                                .mapToDouble(group -> group[figure])
                                .max()
                                .orElseThrow());
                compared++;
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    /// The divergence theorem: a closed surface seen from outside holds its volume. A circle of n sides holds
    /// n/2π · sin(2π/n) of the round one.
    @Test
    void surfaces_areClosed_holdTheirVolumes_andTheirNormalsPointOutward() {
        GlbReader glb = read(only(MovedPlans.ALL_AXES));
        double round = Shell.SIDES / (2 * Math.PI) * Math.sin(2 * Math.PI / Shell.SIDES);
        assertThat(volume(glb, "hero")).isCloseTo(Math.PI * 0.03 * 0.03 * 0.1 * round, within(1e-10));
        assertThat(volume(glb, "side")).isCloseTo(0.08 * 0.05 * 0.03, within(1e-10));
        double cone = 0.028 * 0.01 * 0.01 / 3;
        assertThat(volume(glb, "back")).isCloseTo(Math.PI * (0.021 * 0.021 * 0.09 + cone) * round, within(1e-10));
        assertThat(volume(glb, "key")).isCloseTo(0.3 * 0.6 * 0.05, within(1e-9));
    }

    private static double volume(GlbReader glb, String name) {
        int mesh = (int) StrictJson.number(glb.json, "nodes", glb.nodeNames().indexOf(name), "mesh");
        Object primitive = StrictJson.at(glb.json, "meshes", mesh, "primitives", 0);
        List<double[]> places = glb.figures((int) StrictJson.number(primitive, "attributes", "POSITION"));
        List<double[]> normals = glb.figures((int) StrictJson.number(primitive, "attributes", "NORMAL"));
        List<double[]> corners = glb.figures((int) StrictJson.number(primitive, "indices"));
        double volume = 0;
        for (int i = 0; i < corners.size(); i += 3) {
            int at = (int) corners.get(i)[0];
            double[] a = places.get(at);
            double[] b = places.get((int) corners.get(i + 1)[0]);
            double[] c = places.get((int) corners.get(i + 2)[0]);
            double[] across = cross(minus(b, a), minus(c, a));
            assertThat(dot(across, across))
                    .as("a triangle of %s has a face", name)
                    .isGreaterThan(1e-16);
            assertThat(dot(across, normals.get(at)) / Math.sqrt(dot(across, across)))
                    .as("normal of %s", name)
                    .isGreaterThan(0.99);
            volume += dot(a, across) / 6;
        }
        return volume;
    }

    private static double[] minus(double[] a, double[] b) {
        return new double[] {a[0] - b[0], a[1] - b[1], a[2] - b[2]};
    }

    private static double[] cross(double[] a, double[] b) {
        return new double[] {a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]};
    }

    @Test
    void whatCannotBeCarried_isSaid_andZoomStandsInTheExtras() {
        MovesGlb glb = only("""
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm], aim: hero}
                tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}
                place: {hero: {thing: can, at: [0 mm, 0 mm, 40 mm], lines: 2}}
                moves: {zoom: {axis: zoom, by: 20 mm, in: 1 s, profile: even}}
                frames: 25
            """);
        assertThat(glb.notes())
                .anyMatch(note -> note.startsWith("The lens zooms"))
                .anyMatch(note -> note.startsWith("Things stand where they are; through the tank's wall"))
                .anyMatch(note -> note.equals("The lines that things hang on aren't in it."));
        GlbReader read = read(glb);
        assertThat(StrictJson.list(read.json, "asset", "extras", "notes")).isEqualTo(new ArrayList<>(glb.notes()));
        assertThat(StrictJson.map(read.json)).as("a zoom moves no node").doesNotContainKey("animations");
        List<Object> angles = StrictJson.list(read.json, "cameras", 0, "extras", "yfov_radians_by_frame");
        assertThat(angles).hasSize(25);
        assertThat(angles.getFirst()).isEqualTo(StrictJson.at(read.json, "cameras", 0, "perspective", "yfov"));
        assertThat(StrictJson.number(read.json, "cameras", 0, "extras", "focal_length_metres_by_frame", 24))
                .isCloseTo(0.12, within(1e-9));
        assertThat(read.nodeNames()).containsExactly("camera", "hero", "tank", "table");
    }

    @Test
    void aShotThatStandsStill_hasNoAnimation() {
        GlbReader read = read(only("""
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm], aim: hero}
                place: {hero: {thing: can, at: [0 mm, 0 mm]}}
                frames: 25
            """));
        assertThat(StrictJson.map(read.json)).doesNotContainKey("animations");
        assertThat(StrictJson.number(read.json, "asset", "extras", "frames")).isEqualTo(25);
        assertThat(StrictJson.number(read.json, "asset", "extras", "film_rate", "numerator"))
                .isEqualTo(24_000);
    }

    @Test
    void passes_areScenesOfTheirOwn_andThingsThatAreAlikeShareASurface() {
        FilmAnswer film = MovedPlans.solved("""
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm], aim: camera-side}
                place: {camera-side: {thing: can, at: [0 mm, 0 mm]}, other: {thing: can, at: [90 mm, 0 mm]}}
                moves: {turn: {carries: other, by: 90 deg, in: 1 s}}
                passes: {plain: {}, far: {place.other.at: [120 mm, 50 mm]}}
                frames: 25
            """);
        List<MovesGlb> all = MovesGlb.listAll(film);
        assertThat(all).extracting(MovesGlb::name).containsExactly("one.plain", "one.far");
        assertThat(all).extracting(MovesGlb::pass).containsExactly("plain", "far");
        for (MovesGlb glb : all) {
            GlbReader read = read(glb);
            assertThat(StrictJson.text(read.json, "animations", 0, "name")).isEqualTo(glb.name());
            assertThat(StrictJson.number(read.json, "nodes", 1, "mesh"))
                    .isEqualTo(StrictJson.number(read.json, "nodes", 2, "mesh"));
        }
        assertThat(read(all.get(1)).played(2, "translation", 0))
                .containsExactly(new double[] {0.12, 0, -0.05}, within(1e-9));
    }

    @Test
    void sameShot_sameBytes() {
        assertThat(only(MovedPlans.ALL_AXES).bytes())
                .isEqualTo(only(MovedPlans.ALL_AXES).bytes());
    }

    @Test
    void aRig_isSaidNotToBeInIt() {
        String shot = """
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm]}
                place: {hero: {thing: can, at: [0 mm, 0 mm, 100 mm], rig: {diameter: 8 mm, to: [0 mm, 400 mm, 150 mm]}}}
                frames: 10
            """;
        assertThat(only(shot).notes()).contains("The rods of rigs aren't in it: hero.");
        assertThat(only(MovedPlans.ALL_AXES).notes()).noneMatch(note -> note.contains("rig"));
    }

    /// Nobody names a pass in the first entry.
    @Test
    void aShotThatIsCutToThoughItHasPasses_hasASceneOfItsOwn() {
        String shots = """
              one:
                camera: {body: main, lens: macro, at: [0 mm, -1200 mm, 150 mm]}
                place: {hero: {thing: can, at: [0 mm, 0 mm]}}
                passes: {left: {place.hero.at: [-50 mm, 0 mm]}, right: {place.hero.at: [50 mm, 0 mm]}}
            cut: [%s]
            """;
        List<MovesGlb> all = MovesGlb.listAll(MovedPlans.solved(shots.formatted(
                "{shot: one, frames: 10}, {shot: one, frames: 20, alternate: [left, right], each: 5}")));
        assertThat(all).extracting(MovesGlb::name).containsExactly("one", "one.left", "one.right");
        List<Double> across = all.stream()
                .map(glb -> {
                    GlbReader read = read(glb);
                    return read.inScene(read.nodeNames().indexOf("hero"), new double[] {0, 0, 0}, 0)[0];
                })
                .toList();
        assertThat(across.get(0)).isCloseTo(0, within(SINGLE_METRES));
        assertThat(across.get(1)).isCloseTo(-0.05, within(SINGLE_METRES));
        assertThat(MovesGlb.listAll(MovedPlans.solved(
                        shots.formatted("{shot: one, frames: 20, alternate: [left, right], each: 5}"))))
                .extracting(MovesGlb::name)
                .containsExactly("one.left", "one.right");
    }
}
