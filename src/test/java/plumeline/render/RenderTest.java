package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.api.Test;
import plumeline.jobs.Jobs;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.stage.Frame;
import plumeline.trace.Exposing;
import plumeline.trace.Instants;
import plumeline.trace.Plate;

/// Pictures exposed in parts and by several threads.
final class RenderTest {
    private static final String TIN = "diameter: 60 mm, height: 90 mm, finish: satin";
    private static final String LAMP =
            "lights: {strip: {panel: [300 mm, 600 mm], gives: 2000 lx at 1 m, white: 5600 K}}\n"
                    + "  machines: {plate: {speed: 60 rpm}, slider: {speed: 1 m/s}}";
    private static final String LIT = "lights: {key: {light: strip, at: [500 mm, -500 mm, 500 mm]}}\n"
            + "    moves: {go: {machine: slider, carries: hero, by: [100 mm, 0 mm], in: 0.4 s}}";

    private static void assertSame(Plate one, Plate other) {
        for (int i = 0; i < one.width() * one.height(); i++) {
            for (int channel = 0; channel < 3; channel++) {
                assertThat(one.light(i % one.width(), i / one.width(), channel))
                        .isEqualTo(other.light(i % one.width(), i / one.width(), channel));
            }
        }
    }

    @Test
    void seed_givesTheSamePictureByAnyNumberOfThreads() throws IOException {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        assertSame(SetShots.exposed(set, 70, 40, 4, 1), SetShots.exposed(set, 70, 40, 4, 3));
    }

    @Test
    void passes_giveWhatOneGoGives() throws IOException {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        Window window = new Window(Frame.WHOLE, 48, 32);
        Instants looks = Render.instants(set, 0, set.shutterSeconds(), 8, window);
        Plate plate = new Plate(48, 32);
        for (int from : new int[] {0, 3}) {
            var rays = new Exposing.Rays(from, from == 0 ? 3 : 5, 8, 7);
            Render.expose(looks, plate, rays, Jobs.Threads.each(2), share -> {}, new Stop());
        }
        assertSame(plate, SetShots.exposed(set, 48, 32, 8, 2));
    }

    @Test
    void fewRays_coverAllOfTheExposure() {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        Window window = new Window(Frame.WHOLE, 48, 32);
        Instants instants = Render.instants(set, 0.1, 0.02, 4, window);
        assertThat(instants.looks().stream().distinct()).hasSize(64);
        assertThat(instants.open()).isEqualTo(64);
        assertThat(Render.instants(set, 0.1, 0.02, 1, window).isOne()).isTrue();
        assertThat(Render.instants(set, 0.1, 0, 16, window).isOne()).isTrue();
        assertThat(Render.instants(set, 3, 0.02, 16, window).isOne()).isTrue();
    }

    @Test
    void rowsOfAReadout_areOpenAsLongAndLaterByIt() {
        for (double readout : new double[] {0, 0.001, 0.016, 0.04}) {
            Shutter shutter = Shutter.of(0.01, readout, 64);
            assertThat(shutter.open() * shutter.eachSeconds()).isEqualTo(0.01, within(1e-12));
            assertThat(shutter.laterAtFoot() * shutter.eachSeconds()).isEqualTo(readout, within(1e-12));
            assertThat(shutter.instants())
                    .isBetween(
                            shutter.open() + (int) shutter.laterAtFoot(),
                            shutter.open() + (int) shutter.laterAtFoot() + 1);
            assertThat(shutter.open()).isEqualTo(64);
        }
        Shutter shortly = Shutter.of(0.0005, 0.016, 64);
        assertThat(shortly.instants()).isBetween(480, 512);
        assertThat(shortly.open()).isEqualTo(15);
        assertThat(Shutter.of(0.01, 0.01, 16).instants()).isEqualTo(16);
    }

    @Test
    void aPartOfThePicture_isReadWhenItIsInTheWhole() {
        Window half = new Window(new Frame(-0.5, 0.5, 0, 0.5), 40, 20);
        assertThat(half.topShare()).isEqualTo(0, within(1e-12));
        assertThat(half.bottomShare()).isEqualTo(1, within(1e-12));
        assertThat(half.plateHeight()).isEqualTo(40);
        Window middle = new Window(new Frame(-0.5, 0.5, -0.25, 0.25), 40, 20);
        assertThat(middle.topShare()).isEqualTo(0.25, within(1e-12));
        assertThat(middle.bottomShare()).isEqualTo(0.75, within(1e-12));
    }

    @Test
    void stopped_saysSo() throws IOException {
        Stop stop = new Stop();
        stop.ask();
        var result = Render.expose(
                SetShots.one(TIN, LAMP, LIT),
                0,
                0,
                new Render.Quality(16, 16, 1, 1),
                Jobs.Threads.each(1),
                share -> {},
                stop);
        assertThat(result).isInstanceOf(Result.Stopped.class);
    }

    @Test
    void windowAside_isTheSamePartOfTheWholePicture() throws IOException {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        PartsView whole = PartsView.of(set, 0, new Window(Frame.WHOLE, 120, 80));
        Window aside = new Window(new Frame(-0.25, 0.5, -0.5, 0.25), 90, 60);
        PartsView part = PartsView.of(set, 0, aside);
        int differ = 0;
        for (int y = 0; y < 60; y++) {
            for (int x = 0; x < 90; x++) {
                differ += whole.seen()
                                .get((y + 20) * 120 + x + 30)
                                .equals(part.seen().get(y * 90 + x))
                        ? 0
                        : 1;
            }
        }
        assertThat(differ).isZero();
        assertThat(aside.plateWidth()).isEqualTo(120);
    }

    @Test
    void partsView_countsEveryPixelOnceAndTellsNamesApart() {
        ShotSet set = SetShots.one(TIN, LAMP, LIT);
        PartsView view = PartsView.of(set, 0, new Window(Frame.WHOLE, 60, 40));
        int nothing = (int) view.seen().stream().filter(index -> index < 0).count();
        assertThat(view.parts().stream().mapToInt(PartsView.Named::pixels).sum() + nothing)
                .isEqualTo(2400);
        assertThat(view.parts()).extracting(PartsView.Named::name).containsExactly("the table", "hero", "key");
        assertThat(view.parts()).extracting(PartsView.Named::colour).doesNotHaveDuplicates();
        int seen = view.seen().get(20 * 60 + 30);
        assertThat(view.parts().get(seen).name()).isEqualTo("hero");
        assertThat(view.picture().at(30, 20)).isEqualTo(view.parts().get(seen).colour());
    }
}
