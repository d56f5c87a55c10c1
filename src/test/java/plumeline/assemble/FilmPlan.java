package plumeline.assemble;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.Map;
import java.util.Optional;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.render.Pixels;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;
import plumeline.timeline.Timeline;

/// A film for tests: a shot that is held and comes back, one in looks, one that is reframed; and a picture of any
/// camera in which each pixel tells where it is and which recorded frame it belongs to.
final class FilmPlan {
    private static final String HEAD = """
            plumeline: 1
            film: {rate: %s, title: Held and turned}
            deliver:
              wide: {ratio: "16:9"}
              phone: {ratio: "9:16", keep_out: {bottom: 20 %%}}
              plain: {ratio: "16:9", textless: yes}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              machines: {slider: {travel: 900 mm, speed: 900 mm/s, acceleration: 9000 mm/s2}}
            shots:
              held:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 48 fps, focus: 600 mm}
                moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s}}
                speed: [[0 frames, 100 %%], [10 frames, 0 %%], [16 frames, 0 %%], [20 frames, -100 %%]]
              looks:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 120 fps, focus: 600 mm}
                moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s}}
                speed: 20 %%
                passes: {a: {}, b: {camera.f_number: 4}}
              still:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 59 mm], rate: 24 fps, focus: 600 mm}
                crop: {phone: [10 %%, 0 %%]}
            titles: {still: {en: Held and turned, de: Gehalten}}
            cut:
              - {shot: held, frames: 26}
              - {shot: looks, frames: 14, alternate: [a, b], each: 6, from: 3}
              - shot: still
                frames: 10
                reframe: {wide: [{at: 0 frames}, {at: 9 frames, scale: 150 %%, turn: 10 deg}]}
            """;

    private FilmPlan() {}

    static Plan plan(String rate) {
        return read(HEAD.formatted(rate));
    }

    static String text() {
        return HEAD.formatted("24 fps");
    }

    static Plan read(String text) {
        Plans.Reading reading = Plans.read(text.getBytes(UTF_8), "p.yaml");
        assertThat(reading.problems()).isEmpty();
        return reading.plan().orElseThrow();
    }

    static FilmAnswer film(Plan plan) {
        return Solve.film(plan);
    }

    static Animatic.Additions none() {
        return new Animatic.Additions(Map.of(), Optional.empty(), FilmPlan::block, Animatic.Counters.NONE);
    }

    /// A letter is a block, half as wide as high.
    static Lettering.Line block(String text, double sizePixels) {
        int width = (int) Math.ceil(text.length() * sizePixels / 2);
        byte[] cover = new byte[width * (int) sizePixels];
        java.util.Arrays.fill(cover, (byte) 255);
        return new Lettering.Line(width, (int) sizePixels, cover);
    }

    static Animatic animatic(Plan plan, String delivery, int width, int height, Animatic.Additions additions) {
        Optional<Delivery> found = plan.findDelivery(delivery);
        Timeline timeline = found.map(one -> Timeline.of(plan, one)).orElseGet(() -> Timeline.of(plan));
        double aspect = Animatic.aspect(plan, timeline, found);
        return Animatic.of(film(plan), timeline, found, Screen.of(width, height, aspect), additions);
    }

    /// Red tells how far to the right, green how far down, of the whole picture; blue the recorded frame.
    static Pixels picture(Wanted wanted) {
        View view = wanted.view();
        int width = view.kept().width();
        int height = view.kept().height();
        int[] packed = new int[width * height];
        for (int i = 0; i < packed.length; i++) {
            double across = (view.kept().left() + i % width + 0.5) / view.width();
            double down = (view.kept().top() + Math.floorDiv(i, width) + 0.5) / view.height();
            packed[i] = (int) Math.round(across * 255) << 16
                    | (int) Math.round(down * 255) << 8
                    | (int) (wanted.recorded() + (wanted.pass().equals("b") ? 128 : 0));
        }
        return new Pixels(width, height, packed);
    }
}
