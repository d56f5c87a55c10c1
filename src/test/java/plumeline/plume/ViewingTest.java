package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.flow.Grid;
import plumeline.flow.Workers;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.stage.Stage;

/// What the camera sees of a film, and what a record says.
final class ViewingTest {
    /// Ink over the front half of the tank, between two heights of the thing.
    private static DyeFilm curtain(InkRun.Task task, float share) throws IOException {
        Grid grid = task.head().grid();
        var bytes = new java.io.ByteArrayOutputStream();
        bytes.writeBytes(task.head().toBytes());
        for (int number = 0; number < 4; number++) {
            int lowest = grid.nz() - number * grid.nz() / 4;
            bytes.writeBytes(Poured.frame(number, grid, n -> n / grid.nx() / grid.ny() >= lowest, share)
                    .toBytes());
        }
        bytes.writeBytes(DyeFilm.end(4));
        return Poured.read(bytes.toByteArray());
    }

    @Test
    void beam_evenDye_isShareTimesWay() {
        Grid grid = new Grid(8, 6, 10, 0.08, 0.06, 0.1);
        DyeFrame full = Poured.frame(0, grid, _ -> true, 1);
        Vec from = new Vec(0.001, 0.0, 0.099);
        Vec to = new Vec(0.077, 0.06, 0.013);
        assertThat(Beam.shareMetres(full, grid, from, to)).isEqualTo(from.distanceMetres(to), within(1e-9));
        assertThat(Beam.shareMetres(full, grid, to, from)).isEqualTo(from.distanceMetres(to), within(1e-9));
        Vec along = new Vec(0.001, 0.06, 0.099);
        assertThat(Beam.shareMetres(full, grid, from, along)).isEqualTo(0.06, within(1e-9));
    }

    @Test
    void beam_oneCell_isTheWayInIt() {
        Grid grid = new Grid(8, 6, 10, 0.08, 0.06, 0.1);
        DyeFrame one = Poured.frame(0, grid, n -> n == (4 * 6 + 2) * 8 + 3, 1);
        // Through the middle of cell (3, 2, 4) along y: a centimetre of it.
        assertThat(Beam.shareMetres(one, grid, new Vec(0.035, 0, 0.045), new Vec(0.035, 0.06, 0.045)))
                .isEqualTo(0.01, within(1e-9));
        // And to its middle only.
        assertThat(Beam.shareMetres(one, grid, new Vec(0.035, 0, 0.045), new Vec(0.035, 0.025, 0.045)))
                .isEqualTo(0.005, within(1e-9));
        assertThat(Beam.shareMetres(one, grid, new Vec(0.045, 0, 0.045), new Vec(0.045, 0.06, 0.045)))
                .isZero();
    }

    @Test
    void face_isTheSideTowardsTheCamera() {
        var tin = new Body(Solid.cylinder(0.04, 0.06), new Pose(new Vec(0.1, 0.2, 0), 0.7, 0));
        Vec eye = new Vec(0.1, -0.5, 0.03);
        List<Vec> places = Face.places(tin, 0.03, eye);
        assertThat(places).hasSize(5);
        for (Vec place : places) {
            assertThat(Math.hypot(place.x() - 0.1, place.y() - 0.2)).isEqualTo(0.02, within(1e-12));
            assertThat(place.y()).isLessThan(0.2);
        }
        assertThat(places.get(2).y()).isEqualTo(0.18, within(1e-12));
        assertThat(places.stream().mapToDouble(Vec::x).average().orElseThrow()).isEqualTo(0.1, within(1e-12));
        var box = new Body(new Solid.Box(0.04, 0.02, 0.05), new Pose(new Vec(0, 0.2, 0), Math.PI, 0));
        for (Vec place : Face.places(box, 0.01, new Vec(0, -0.5, 0.03))) {
            assertThat(place.y()).isEqualTo(0.19, within(1e-12));
        }
    }

    @Test
    void heights_areBaseMiddleTopAndEveryCentimetre() {
        assertThat(Face.heightsMetres(Solid.cylinder(0.04, 0.055)))
                .containsExactly(0.0, 0.01, 0.02, 0.0275, 0.03, 0.04, 0.05, 0.055);
        assertThat(Face.heightsMetres(Solid.cylinder(0.04, 0.002))).containsExactly(0.0, 0.001, 0.002);
    }

    /// A film that nobody gave an end goes on until the front that is seen, half of the light, is on the floor: not
    /// only the first thousandth of ink, which comes before it.
    @Test
    void tryUntilTheFloor_hasItsFrontThere() throws IOException {
        Stage stage = Poured.stage(
                Poured.CAMERA, Poured.TANK, Poured.PLACE, Poured.RELEASE.replace("[0 mm, -5 mm", "[0 mm, -30 mm"));
        var course = new InkCourse(0.01, 1, new InkCourse.Until.ShotAndFloor());
        InkTries tries = Poured.tries(stage, course);
        InkShot shot = tries.planned();
        Viewing viewing = Viewing.of(stage, stage.startValues(), shot);
        int longer = 0;
        for (int number = 1; number <= 3; number++) {
            InkRun.Task task = tries.task(number);
            InkRecord.Run run = viewing.look(Poured.read(Poured.film(task, Workers.alone())));
            var record = new InkRecord(InkRecord.Head.of(shot, course, viewing), viewing.subjects(), List.of(run));
            assertThat(record.reachesFloor().seconds()).hasSize(1);
            longer += run.frames() - 1 > course.leastFrame(shot.timing()) ? 1 : 0;
        }
        assertThat(longer).isPositive();
    }

    @Test
    void curtainThatComesDown_veilsFromTheTop() throws IOException {
        Stage stage = Poured.stage();
        InkRun.Task task = Poured.task(1);
        Viewing viewing = Viewing.of(stage, stage.startValues(), task.shot());
        InkRecord.Run run = viewing.look(curtain(task, 0.01f));
        var record =
                new InkRecord(InkRecord.Head.of(task.shot(), task.course(), viewing), viewing.subjects(), List.of(run));
        Subject tin = record.findSubject("tin").orElseThrow();
        assertThat(tin.isSeen()).isTrue();
        // The lowest edge of the water's upper three quarters is 40 mm over the floor, the tin's middle at 30 mm, and
        // its
        // top at 60 mm: that is veiled in the third frame, the middle in none.
        assertThat(record.veiled(tin, tin.heights().size() - 1).seconds()).containsExactly(3 / 50.0);
        assertThat(record.veiled(tin, 0).seconds()).isEmpty();
        assertThat(record.veiledAll(tin).seconds()).isEmpty();
        assertThat(record.inked(tin).seconds()).containsExactly(3 / 50.0);
        // 5 cm or less of a hundredth of ink that takes nine tenths a tenth of a millimetre: nothing is left.
        assertThat(run.clearShare(0, tin.heights().size() - 1, 3)).isLessThan(1e-3);
        assertThat(run.clearShare(0, tin.heights().size() - 1, 2)).isEqualTo(1);
        assertThat(run.lowMetres(0)).isEmpty();
        assertThat(run.lowMetres(3).orElseThrow()).isEqualTo(0.04, within(0.01));
        assertThat(run.halfWidthMetres(3).orElseThrow()).isEqualTo(0.06, within(1e-6));
    }

    @Test
    void cameraOverTheTank_seesNothingThatIsComputed() {
        Stage stage = Poured.stage(
                "camera: {body: main, lens: fifty, at: [0 mm, -100 mm, 900 mm], aim: tin, rate: 50 fps}",
                Poured.TANK,
                Poured.PLACE,
                Poured.RELEASE);
        Viewing viewing = Viewing.of(stage, stage.startValues(), Poured.shot(stage));
        assertThat(viewing.subjects()).singleElement().satisfies(subject -> {
            assertThat(subject.isSeen()).isFalse();
            assertThat(subject.unseen()).contains("isn't computed");
        });
    }

    @Test
    void strengthUntold_isAGuessThatIsSaid() {
        Stage stage = Poured.stage(
                Poured.CAMERA, Poured.TANK, Poured.PLACE, Poured.RELEASE.replace("ink: rose", "ink: unknown"));
        Viewing viewing = Viewing.of(stage, stage.startValues(), Poured.shot(stage));
        assertThat(viewing.strength().measured()).isFalse();
        assertThat(Viewing.of(Poured.stage(), Poured.stage().startValues(), Poured.shot(Poured.stage()))
                        .strength())
                .isEqualTo(new Strength(1e4, true));
    }

    @Test
    void key_followsTheLensPoint() {
        Stage stage = Poured.stage();
        InkShot shot = Poured.shot(stage);
        InkKey key = Viewing.of(stage, stage.startValues(), shot).key();
        Stage nearer =
                Poured.stage(Poured.CAMERA.replace("-600 mm", "-599 mm"), Poured.TANK, Poured.PLACE, Poured.RELEASE);
        assertThat(Viewing.of(nearer, nearer.startValues(), shot).key()).isNotEqualTo(key);
        assertThat(Viewing.of(stage, stage.startValues(), shot).key()).isEqualTo(key);
    }

    @Test
    void record_readsBack() throws IOException {
        Stage stage = Poured.stage();
        InkRecord record = Poured.record(stage, 2);
        byte[] bytes = RecordBytes.write(record);
        InkRecord read = RecordBytes.read(bytes).orElseThrow();
        assertThat(read.head()).isEqualTo(record.head());
        assertThat(read.subjects()).isEqualTo(record.subjects());
        assertThat(RecordBytes.write(read)).isEqualTo(bytes);
        assertThat(read.isOf(Poured.shot(stage))).isTrue();
        assertThat(read.isSeenBy(Viewing.of(stage, stage.startValues(), Poured.shot(stage))))
                .isTrue();
        for (int length : List.of(0, 10, bytes.length / 2, bytes.length - 1)) {
            assertThat(RecordBytes.read(Arrays.copyOf(bytes, length))).isEmpty();
        }
        byte[] changed = bytes.clone();
        changed[bytes.length - 6] ^= 1;
        assertThat(RecordBytes.read(changed)).isEmpty();
    }

    @Test
    void record_movingCamera_isLookedAtFrameByFrame() throws IOException {
        Stage stage = Poured.stage(
                Poured.CAMERA,
                Poured.TANK,
                Poured.PLACE,
                Poured.RELEASE,
                "moves: {slide: {machine: slider, by: [-30 mm, 0 mm], in: 1 s, profile: even}}");
        InkShot shot = Poured.shot(stage);
        Viewing viewing = Viewing.of(stage, stage.startValues(), shot);
        DyeFilm film = Poured.read(Poured.film(Poured.task(1), Workers.alone()));
        assertThat(viewing.look(film).frames()).isEqualTo(film.frames());
        assertThat(viewing.key())
                .isNotEqualTo(Viewing.of(Poured.stage(), Poured.stage().startValues(), shot)
                        .key());
        assertThat(InkKey.ofFlow(shot)).isEqualTo(InkKey.ofFlow(Poured.shot(Poured.stage())));
    }

    @Test
    void front_neverRisesMuchAndReachesHeightsInTurn() throws IOException {
        InkRecord record = Poured.record(Poured.stage(), 1);
        List<Double> arrivals = new ArrayList<>();
        for (double z = 0.14; z > 0.10; z -= 0.01) {
            arrivals.addAll(record.reaches(z).seconds());
        }
        assertThat(arrivals).hasSizeGreaterThan(2).isSorted();
        assertThat(record.reaches(-1).seconds()).isEmpty();
        assertThat(record.reaches(-1).middle()).isEmpty();
    }
}
