package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.concurrent.Executors;
import org.junit.jupiter.api.Test;
import plumeline.flow.Dye;
import plumeline.flow.Grid;
import plumeline.flow.Workers;

/// Runs, their films, and going on from where one was put down.
final class DyeFilmTest {
    private static final Grid GRID = new Grid(8, 6, 10, 0.08, 0.06, 0.1);

    @Test
    void frame_readsBackToTheStatedShare() throws IOException {
        long seed = 11;
        var random = new Random(seed);
        float[] shares = new float[8 * 6 * 10];
        for (int n = 0; n < shares.length; n++) {
            int i = n % 8;
            int k = n / 48;
            boolean inside = i >= 2 && i < 5 && k >= 4;
            shares[n] = inside ? (float) Math.pow(10, -7 * random.nextDouble()) : 0;
        }
        Dye dye = Dye.of(GRID, shares);
        DyeFrame kept = DyeFrame.of(3, dye);
        DyeFrame read = read(kept);
        assertThat(read.number()).isEqualTo(3);
        assertThat(read.box()).isEqualTo(kept.box());
        assertThat(read.box().i()).isEqualTo(2);
        assertThat(read.box().ni()).isEqualTo(3);
        float[] all = read.dye(GRID).shares();
        for (int n = 0; n < shares.length; n++) {
            if (shares[n] < DyeFrame.LEAST) {
                assertThat(all[n]).as("seed " + seed + ", cell " + n).isZero();
            } else {
                assertThat((double) all[n]).isEqualTo(shares[n], within(0.028 * shares[n]));
            }
            assertThat(read.share(n % 8, n / 8 % 6, n / 48)).isEqualTo(all[n]);
        }
    }

    private static DyeFrame read(DyeFrame kept) throws IOException {
        byte[] bytes = kept.toBytes();
        return DyeFrame.Kept.read(Poured.source(bytes), 0, bytes.length)
                .flatMap(DyeFrame.Kept::frame)
                .orElseThrow();
    }

    @Test
    void code_endsAreExact() {
        assertThat(DyeFrame.code(0)).isZero();
        assertThat(DyeFrame.code((float) 0.9e-6)).isZero();
        assertThat(DyeFrame.code((float) 1.001e-6)).isEqualTo((byte) 1);
        assertThat(DyeFrame.code(1)).isEqualTo((byte) 255);
        assertThat(DyeFrame.code(1.2f)).isEqualTo((byte) 255);
    }

    @Test
    void film_readsBackAndHoldsNoDyeInTheThing() throws IOException {
        InkRun.Task task = Poured.task(1);
        DyeFilm film = Poured.read(Poured.film(task, Workers.alone()));
        assertThat(film.head()).isEqualTo(task.head());
        assertThat(film.frames()).isEqualTo(31);
        assertThat(film.frame(0).box()).isEqualTo(DyeFrame.Box.EMPTY);
        Grid grid = film.head().grid();
        var tank = task.shot().tank(grid);
        float[] last = film.frame(30).dye(grid).shares();
        double total = 0;
        for (int n = 0; n < last.length; n++) {
            boolean solid = tank.isSolid(n % grid.nx(), n / grid.nx() % grid.ny(), n / grid.nx() / grid.ny());
            assertThat(solid && last[n] > 0).isFalse();
            total += last[n] * grid.cellMetres3();
        }
        // 3 ml were let go; each share is kept to within 2.8 %.
        assertThat(total).isEqualTo(3e-6, within(0.028 * 3e-6));
    }

    @Test
    void film_thatIsNotWhole_isNotTaken() throws IOException {
        byte[] whole = Poured.film(Poured.task(1), Workers.alone());
        for (int length : List.of(0, 50, whole.length / 2, whole.length - 12, whole.length - 1)) {
            assertThat(DyeFilm.read(Poured.source(Arrays.copyOf(whole, length))))
                    .isEmpty();
        }
    }

    /// Whichever byte of whichever part: head, a frame's number, box, length, sum or dye, the end.
    @Test
    void film_withAnyByteChanged_isNotTaken() throws IOException {
        byte[] whole = Poured.film(Poured.task(1), Workers.alone());
        long seed = 17;
        var random = new Random(seed);
        for (int at = 0; at < whole.length; at += at < 1000 || at > whole.length - 200 ? 1 : 1 + random.nextInt(40)) {
            byte[] changed = whole.clone();
            changed[at] ^= (byte) (1 << random.nextInt(8));
            assertThat(DyeFilm.read(Poured.source(changed))).as("byte " + at).isEmpty();
        }
    }

    @Test
    void film_damagedAfterItWasOpened_saysWhichFrame() throws IOException {
        byte[] bytes = Poured.film(Poured.task(1), Workers.alone());
        DyeFilm film = DyeFilm.read(new DyeFilm.Source() {
                    @Override
                    public long size() {
                        return bytes.length;
                    }

                    @Override
                    public ByteBuffer read(long at, int length) {
                        return ByteBuffer.wrap(Arrays.copyOfRange(bytes, (int) at, (int) at + length));
                    }
                })
                .orElseThrow();
        bytes[bytes.length - 20] ^= 1;
        assertThatThrownBy(() -> film.frame(30))
                .isInstanceOf(IOException.class)
                .hasMessage("frame 30 of try 1 is damaged");
        assertThat(film.frame(29).number()).isEqualTo(29);
    }

    @Test
    void film_begun_isTakenUpToAFramesEndOnly() throws IOException {
        InkRun.Task task = Poured.task(1);
        var bytes = new ByteArrayOutputStream();
        bytes.writeBytes(task.head().toBytes());
        int head = bytes.size();
        InkRun run = InkRun.start(task, Workers.alone());
        for (int n = 0; n < 5; n++) {
            bytes.writeBytes(run.next().toBytes());
        }
        DyeFilm.Source source = Poured.source(bytes.toByteArray());
        assertThat(DyeFilm.readBegun(source, bytes.size()).orElseThrow().frames())
                .isEqualTo(5);
        assertThat(DyeFilm.readBegun(source, head).orElseThrow().frames()).isZero();
        assertThat(DyeFilm.readBegun(source, bytes.size() - 1)).isEmpty();
        assertThat(DyeFilm.readBegun(source, bytes.size() + 1)).isEmpty();
        assertThat(DyeFilm.readBegun(source, head - 1)).isEmpty();
    }

    /// More bytes than an array or a map can hold.
    @Test
    void film_ofMoreThanTwoGigabytes_isReadByFrames() throws IOException {
        DyeFilm.Head head = Poured.task(1).head();
        int frames = 33;
        var last = new ByteArrayOutputStream();
        last.writeBytes(
                Poured.frame(frames, head.grid(), cell -> cell % 3 == 0, 0.5f).toBytes());
        last.writeBytes(DyeFilm.end(frames + 1));
        var source = new LongFilm(head.toBytes(), frames, last.toByteArray());
        assertThat(source.size()).isGreaterThan(1L << 31);
        DyeFilm film = DyeFilm.read(source).orElseThrow();
        assertThat(film.frames()).isEqualTo(frames + 1);
        assertThat((double) film.frame(frames).share(0, 0, 0)).isEqualTo(0.5, within(0.014));
    }

    @Test
    void run_sameSeed_givesTheSameBytesForAnyThreads() {
        byte[] alone = Poured.film(Poured.task(1), Workers.alone());
        try (var pool = Executors.newFixedThreadPool(3)) {
            assertThat(Poured.film(Poured.task(1), Workers.of(pool, 3))).isEqualTo(alone);
        }
        assertThat(Poured.film(Poured.task(2), Workers.alone())).isNotEqualTo(alone);
    }

    @Test
    void run_putDownAndTakenUp_givesTheSameBytes() throws IOException {
        InkRun.Task task = Poured.task(1);
        var bytes = new ByteArrayOutputStream();
        bytes.writeBytes(task.head().toBytes());
        InkRun run = InkRun.start(task, Workers.alone());
        while (!run.isOver()) {
            bytes.writeBytes(run.next().toBytes());
            if (run.frames() % 7 == 3) {
                var kept = InkRun.resume(task, Workers.alone(), new ByteArrayInputStream(checkpoint(run, bytes.size())))
                        .orElseThrow();
                assertThat(kept.filmBytes()).isEqualTo(bytes.size());
                assertThat(kept.run().frames()).isEqualTo(run.frames());
                run = kept.run();
            }
        }
        bytes.writeBytes(DyeFilm.end(run.frames()));
        assertThat(bytes.toByteArray()).isEqualTo(Poured.film(task, Workers.alone()));
    }

    @Test
    void run_keptAtItsLastFrame_isOver() throws IOException {
        InkRun.Task task = Poured.task(1);
        InkRun run = InkRun.start(task, Workers.alone());
        while (!run.isOver()) {
            run.next();
        }
        assertThat(run.share()).isEqualTo(1);
        assertThat(InkRun.resume(task, Workers.alone(), new ByteArrayInputStream(checkpoint(run, 0)))
                        .orElseThrow()
                        .run()
                        .isOver())
                .isTrue();
    }

    @Test
    void checkpoint_damagedOrOfAnotherRun_isNotTaken() throws IOException {
        InkRun run = InkRun.start(Poured.task(1), Workers.alone());
        run.next();
        byte[] kept = checkpoint(run, 0);
        assertThat(isTaken(2, kept)).isFalse();
        assertThat(isTaken(1, kept)).isTrue();
        for (int length : List.of(0, 40, kept.length / 2, kept.length - 1, kept.length + 1)) {
            assertThat(isTaken(1, Arrays.copyOf(kept, length)))
                    .as("length " + length)
                    .isFalse();
        }
        for (int at = 0; at < kept.length; at += at < 110 ? 1 : 1999) {
            byte[] changed = kept.clone();
            changed[at] ^= 1;
            assertThat(isTaken(1, changed)).as("byte " + at).isFalse();
        }
    }

    private static byte[] checkpoint(InkRun run, long filmBytes) throws IOException {
        var kept = new ByteArrayOutputStream();
        run.checkpoint(filmBytes, kept);
        return kept.toByteArray();
    }

    private static boolean isTaken(int run, byte[] kept) throws IOException {
        return InkRun.resume(Poured.task(run), Workers.alone(), new ByteArrayInputStream(kept))
                .isPresent();
    }

    @Test
    void run_untilTheFloor_endsThereButNotBeforeTheShot() {
        var course = new InkCourse(0.02, 1, new InkCourse.Until.ShotAndFloor());
        InkRun run = InkRun.start(Poured.tries(Poured.stage(), course).task(1), Workers.alone());
        while (!run.isOver()) {
            run.next();
        }
        // The shot ends 1.1 s after the release, 55 frames; what is patient waits for as long again.
        assertThat(run.frames()).isBetween(56, 111);
    }
}
