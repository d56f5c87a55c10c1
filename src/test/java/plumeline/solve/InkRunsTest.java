package plumeline.solve;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.flow.Dye;
import plumeline.flow.Grid;
import plumeline.ink.Estimate;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plume.DyeFilm;
import plumeline.plume.DyeFrame;
import plumeline.plume.InkCourse;
import plumeline.plume.InkReading;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.InkShots;
import plumeline.plume.InkTries;
import plumeline.plume.Viewing;
import plumeline.stage.Stage;
import plumeline.want.Wants;

/// Which record answers a want, and with what. The films are made by hand: from a known frame on a curtain of ink hangs
/// before the thing.
final class InkRunsTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 25 fps}
        things: {tin: {diameter: 40 mm, height: 60 mm, body: opaque}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          tanks: {glass: {inside: [120 mm, 100 mm, 200 mm], pane: 8 mm, temperature: 20 degC}}
          inks: {rose: {density: 1.06 g/ml, strength: 100 /cm}}
        shots:
          one:
            frames: 30
            camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 60 mm], aim: tin, rate: 50 fps}
            tank: {tank: glass, at: [0 mm, 0 mm], water: 160 mm}
            place: {tin: {thing: tin, at: [0 mm, 20 mm, 8 mm]}}
            release: {ink: rose, volume: 3 ml, bore: 4 mm, squeeze_time: 0.2 s, at: [0 mm, -20 mm, 150 mm]}
        """;

    private static final double RATE = 50;

    private static Stage stage(String plan) {
        Plan read = Plans.read(plan.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        return Stage.of(read, read.shots().getFirst());
    }

    private static Optional<Estimate> ask(String plan, double bySeconds, InkRecord... records) {
        return veiled(plan, bySeconds, records).map(Wants.Elsewhere.Veiled::seconds);
    }

    private static Optional<Wants.Elsewhere.Veiled> veiled(String plan, double bySeconds, InkRecord... records) {
        Stage stage = stage(plan);
        List<Double> values = Arrays.stream(stage.startValues()).boxed().toList();
        return new InkRuns(List.of(records))
                .findVeiled(new Wants.Elsewhere.Height(stage, values, "tin", 0.5, bySeconds));
    }

    /// A record of a plan's shot whose tries are veiled from these frames on, left after one second.
    private static InkRecord record(String plan, double cellMetres, Integer... frames) throws IOException {
        Stage stage = stage(plan);
        InkShot ink = ((InkReading.Ready) InkShots.read(stage, stage.startValues())).shot();
        Viewing viewing = Viewing.of(stage, stage.startValues(), ink);
        var course = new InkCourse(cellMetres, 1, new InkCourse.Until.Time(1));
        List<Double> values = Arrays.stream(stage.startValues()).boxed().toList();
        var tries = new InkTries(stage, values, ink, course);
        List<InkRecord.Run> runs = new ArrayList<>();
        for (int frame : frames) {
            runs.add(viewing.look(film(tries.task(runs.size() + 1).head(), frame)));
        }
        return new InkRecord(InkRecord.Head.of(ink, course, viewing), viewing.subjects(), runs);
    }

    private static DyeFilm film(DyeFilm.Head head, int from) throws IOException {
        Grid grid = head.grid();
        float[] curtain = new float[grid.nx() * grid.ny() * grid.nz()];
        for (int n = 0; n < curtain.length; n++) {
            curtain[n] = n / grid.nx() % grid.ny() < grid.ny() / 3 ? 0.02f : 0;
        }
        var bytes = new ByteArrayOutputStream();
        bytes.writeBytes(head.toBytes());
        int frames = 51;
        for (int number = 0; number < frames; number++) {
            float[] shares = number < from ? new float[curtain.length] : curtain;
            bytes.writeBytes(DyeFrame.of(number, Dye.of(grid, shares)).toBytes());
        }
        bytes.writeBytes(DyeFilm.end(frames));
        return DyeFilm.read(new Bytes(ByteBuffer.wrap(bytes.toByteArray()))).orElseThrow();
    }

    private record Bytes(ByteBuffer all) implements DyeFilm.Source {
        @Override
        public long size() {
            return all.limit();
        }

        @Override
        public ByteBuffer read(long at, int length) {
            return all.slice((int) at, length);
        }
    }

    @Test
    void recordOfTheVeryShot_answersWithItsMiddle() throws IOException {
        Estimate seconds = ask(PLAN, 0.8, record(PLAN, 0.02, 20, 25, 40)).orElseThrow();
        assertThat(seconds.value()).isEqualTo(25 / RATE, within(1e-9));
        // A further take differs by a fifth at least.
        assertThat(seconds.low()).isLessThan(0.5 / 1.2);
        assertThat(seconds.high()).isGreaterThan(0.5 * 1.2);
    }

    @Test
    void nothingRun_isEmpty() {
        assertThat(ask(PLAN, 0.8)).isEmpty();
    }

    @Test
    void whatChangedSince_isNotAnswered() throws IOException {
        InkRecord record = record(PLAN, 0.02, 20, 25);
        String[] changes = {
            "[0 mm, -600 mm, 60 mm]", "[0 mm, -590 mm, 60 mm]",
            "[0 mm, -20 mm, 150 mm]", "[0 mm, -20 mm, 149 mm]",
            "volume: 3 ml", "volume: 3 ml ± 10 %",
            "strength: 100 /cm", "strength: 90 /cm",
            "[0 mm, 20 mm, 8 mm]", "[1 mm, 20 mm, 8 mm]",
            "  one:", "  two:"
        };
        for (int n = 0; n < changes.length; n += 2) {
            String changed = PLAN.replace(changes[n], changes[n + 1]);
            assertThat(changed).isNotEqualTo(PLAN);
            assertThat(ask(changed, 0.8, record)).as(changes[n + 1]).isEmpty();
        }
        assertThat(ask(PLAN.replace("rate: 25 fps", "rate: 25 fps, title: Other"), 0.8, record))
                .isPresent();
    }

    @Test
    void guessedStrength_isNotAnswered() throws IOException {
        String guessed = PLAN.replace(", strength: 100 /cm", "");
        assertThat(ask(guessed, 0.8, record(guessed, 0.02, 20, 25))).isEmpty();
    }

    @Test
    void finestCells_thenMostTries_areBelieved() throws IOException {
        InkRecord coarse = record(PLAN, 0.02, 10, 10, 10);
        InkRecord fine = record(PLAN, 0.015, 30);
        InkRecord fineOften = record(PLAN, 0.015, 35, 35);
        assertThat(ask(PLAN, 0.8, coarse, fine).orElseThrow().value()).isEqualTo(0.6, within(1e-9));
        assertThat(ask(PLAN, 0.8, coarse, fine, fineOften).orElseThrow().value())
                .isEqualTo(0.7, within(1e-9));
    }

    /// Of five tries as many are veiled as in `ink`'s count, however far off those are in which it never comes.
    @Test
    void oddsAreThoseOfTheTries() throws IOException {
        int never = 60;
        Integer[][] tries = {
            {20, 20, 20, 20, never}, {20, 20, 20, never, never}, {20, 20, never, never, never}, {never, never}
        };
        for (Integer[] frames : tries) {
            long came = Arrays.stream(frames).filter(frame -> frame < never).count();
            assertThat(veiled(PLAN, 0.9, record(PLAN, 0.02, frames))
                            .orElseThrow()
                            .byShare())
                    .isEqualTo((double) came / frames.length, within(0.03));
        }
        // Half of the takes are later than the middle.
        assertThat(veiled(PLAN, 0.4, record(PLAN, 0.02, 20, 20, 20))
                        .orElseThrow()
                        .byShare())
                .isEqualTo(0.5, within(0.01));
    }

    /// What had not come when a try was left: late where it was followed as long as is asked, unknown where not.
    @Test
    void whatNeverCame_isLateOrUnknown() throws IOException {
        InkRecord record = record(PLAN, 0.02, 60, 60, 60);
        Estimate never = ask(PLAN, 1.0, record).orElseThrow();
        assertThat(never.value()).isEqualTo(600);
        assertThat(never.high()).isEqualTo(600);
        assertThat(ask(PLAN, 1.1, record)).isEmpty();
        // A coarser record that knows steps in.
        assertThat(ask(PLAN, 1.1, record(PLAN, 0.015, 60), record(PLAN, 0.02, 20))
                        .orElseThrow()
                        .value())
                .isEqualTo(0.4, within(1e-9));
    }
}
