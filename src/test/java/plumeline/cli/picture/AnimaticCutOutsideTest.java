package plumeline.cli.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import plumeline.clip.FilmProbe;
import plumeline.desk.Outcome;
import plumeline.tidy.Outside;

/// What a film of a cut shows in each frame, read back from its file by programs that are not ours, against what the
/// cut says worked out here by hand: which look, which recorded frame, how it is cropped, reframed and titled.
@Outside(
        source = "Debian's ffmpeg and ffprobe, another build of the library than ours; similar triangles by hand",
        place = "run on each film",
        kind = "program")
final class AnimaticCutOutsideTest extends AnimaticTyped {
    private static final int WIDTH = 320;
    private static final int HEIGHT = 180;

    /// Pixels that a metre at the can is wide, in the whole picture of a lens of 50 mm focused on 600 mm.
    private static final double PIXELS_PER_METRE = 0.05 / (0.6 - 0.05) / 0.036 * WIDTH;

    /// A red can, in one look a blue one; the slider runs evenly, 200 mm/s to the right.
    private static final String COLOURED = PLAN.replace(
                    "things: {can: {diameter: 60 mm, height: 110 mm, body: opaque, reflects: 40 %}}",
                    "things: {can: {diameter: 60 mm, height: 110 mm, body: opaque, finish: matte,"
                            + " variants: {red: {hue: 30 deg}, blue: {hue: 270 deg}}}}")
            .replace("thing: can,", "thing: can.red,")
            .replace("b: {camera.f_number: 4}", "b: {place.can.thing: can.blue}")
            .replace("by: [100 mm, 0 mm], in: 2 s", "by: [400 mm, 0 mm], in: 2 s, profile: even");

    @BeforeEach
    void colour() throws IOException {
        Files.writeString(plan, COLOURED);
    }

    /// A film's frames, red, green and blue a pixel.
    private record Film(byte[] bytes, int width, int height) {
        int at(int frame, int x, int y, int channel) {
            return bytes[3 * ((frame * height + y) * width + x) + channel] & 255;
        }

        int frames() {
            return bytes.length / (3 * width * height);
        }

        boolean isCan(int frame, int x, int y) {
            return Math.abs(at(frame, x, y, 0) - at(frame, x, y, 2)) > 40;
        }

        /// How many pixels of a frame the can has.
        int area(int frame) {
            int area = 0;
            for (int i = 0; i < width * height; i++) {
                area += isCan(frame, i % width, i / width) ? 1 : 0;
            }
            return area;
        }

        /// Its middle, pixels from the left.
        double middle(int frame) {
            double sum = 0;
            for (int i = 0; i < width * height; i++) {
                sum += isCan(frame, i % width, i / width) ? i % width + 0.5 : 0;
            }
            return sum / area(frame);
        }

        boolean isRed(int frame) {
            double sum = 0;
            for (int i = 0; i < width * height; i++) {
                sum += at(frame, i % width, i / width, 0) - at(frame, i % width, i / width, 2);
            }
            return sum > 0;
        }

        byte[] frame(int frame) {
            int size = 3 * width * height;
            return Arrays.copyOfRange(bytes, frame * size, (frame + 1) * size);
        }

        /// The largest difference of a frame from another film's.
        int difference(Film other, int frame) {
            int most = 0;
            byte[] own = frame(frame);
            byte[] others = other.frame(frame);
            for (int i = 0; i < own.length; i++) {
                most = Math.max(most, Math.abs((own[i] & 255) - (others[i] & 255)));
            }
            return most;
        }
    }

    /// Makes a film and reads it back: so many frames at 24 fps, exactly as long, sound as long within a frame.
    private Film film(String size, int frames, String... more) throws IOException {
        Path file = folder.resolve("made.mp4");
        List<String> words = new ArrayList<>(List.of("--size", size, "--out", file.toString()));
        words.addAll(List.of(more));
        assertThat(run(words.toArray(String[]::new))).as(said()).isEqualTo(Outcome.ANSWERED);
        Map<String, String> shown = FilmProbe.track(file, "v:0");
        assertThat(shown).containsEntry("nb_read_frames", "" + frames).containsEntry("avg_frame_rate", "24/1");
        long ticks = Long.parseLong(shown.get("time_base").substring(2));
        assertThat(Long.parseLong(shown.get("duration_ts")) * 24).isEqualTo(frames * ticks);
        Map<String, String> heard = FilmProbe.track(file, "a:0");
        assertThat(Double.parseDouble(heard.get("duration"))).isCloseTo(frames / 24.0, within(1 / 24.0));
        assertThat(Double.parseDouble(heard.get("start_time"))).isZero();
        int across = size.indexOf('x');
        return new Film(
                FilmProbe.colours(file),
                Integer.parseInt(size.substring(0, across)),
                Integer.parseInt(size.substring(across + 1)));
    }

    /// Six of the first look, six of the other, then the first again; whichever frame the shot is entered with.
    @Test
    void looks_alternateAsTheCutSays() throws IOException {
        Film film = film(WIDTH + "x" + HEIGHT, 50);
        StringBuilder looks = new StringBuilder();
        for (int frame = 26; frame < 40; frame++) {
            looks.append(film.isRed(frame) ? 'a' : 'b');
        }
        assertThat(looks.toString()).isEqualTo("aaaaaabbbbbbaa");
    }

    /// How far the shot has run at one of its frames: the ramp's area. 100 % falls evenly to 0 in ten frames, is held
    /// for six, falls to −100 % in four. In 26 frames that goes back three frames beyond where it began, so it
    /// begins three after GO.
    private static double run(int frame) {
        double first = Math.min(frame, 10);
        double last = Math.clamp(frame - 16, 0, 4);
        return 3 + first - first * first / 20 - last * last / 8 - Math.max(0, frame - 20);
    }

    private static double shiftPixels(int frame) {
        return -0.2 * run(frame) / 24 * PIXELS_PER_METRE;
    }

    /// A recorded frame is a 48th of a second, 4.2 mm of way: what is shown is the one nearest, or the one before.
    @Test
    void ramp_showsWhereTheCameraIsThen_inTheFilmAndAsFrames() throws IOException {
        Film film = film(WIDTH + "x" + HEIGHT, 50);
        double recorded = 0.2 / 48 * PIXELS_PER_METRE;
        double middle = WIDTH / 2.0;
        int compared = 0;
        for (int frame = 0; frame < 26; frame++) {
            assertThat(film.middle(frame))
                    .as("frame %d", frame)
                    .isCloseTo(middle + shiftPixels(frame), within(recorded + 0.5));
            compared++;
        }
        assertThat(all(List.of(
                        "frames",
                        plan.toString(),
                        "--shot",
                        "held",
                        "--size",
                        WIDTH + "x" + HEIGHT,
                        "--samples",
                        "1",
                        "--out",
                        folder.resolve("held").toString())))
                .isEqualTo(Outcome.ANSWERED);
        List<Path> pictures = files(folder.resolve("held"), ".png");
        assertThat(pictures).hasSize(26);
        for (int frame = 0; frame < 26; frame++) {
            Film picture = new Film(FilmProbe.colours(pictures.get(frame)), WIDTH, HEIGHT);
            // Colour is half as fine in the film, and readers don't all know where it stands.
            assertThat(picture.middle(0)).as("frame %d", frame).isCloseTo(film.middle(frame), within(1.0));
            compared++;
        }
        assertThat(compared).isEqualTo(52);
        assertThat(shiftPixels(10)).isLessThan(-50);
    }

    /// At 150 % the can has 2.25 times the area, however it is turned; half way 125 %, as keys run evenly or smoothly.
    @Test
    void reframeKeys_scaleAndTurn_inTheirDeliveryOnly() throws IOException {
        Film wide = film(WIDTH + "x" + HEIGHT, 50, "--delivery", "wide", "--no-titles");
        double first = wide.area(40);
        assertThat(wide.area(49) / first).isCloseTo(2.25, within(0.06));
        double before = wide.area(44) / first;
        double after = wide.area(45) / first;
        assertThat((before + after) / 2).isCloseTo(1.5625, within(0.06));
        Film plain = film(WIDTH + "x" + HEIGHT, 50, "--delivery", "plain");
        assertThat(plain.area(49)).isEqualTo(plain.area(40)).isCloseTo((int) first, within(20));
        assertThat(width(plain, 49, HEIGHT / 3)).isEqualTo(width(plain, 40, HEIGHT / 3));
        // Turned by 10 deg: the can's upper half leans to one side, its lower half to the other.
        double lean = middle(wide, 49, HEIGHT / 3) - middle(wide, 49, 2 * HEIGHT / 3);
        assertThat(Math.abs(lean)).isCloseTo(HEIGHT / 3.0 * Math.tan(Math.toRadians(10)), within(1.5));
    }

    private static int width(Film film, int frame, int row) {
        int width = 0;
        for (int x = 0; x < film.width(); x++) {
            width += film.isCan(frame, x, row) ? 1 : 0;
        }
        return width;
    }

    private static double middle(Film film, int frame, int row) {
        double sum = 0;
        for (int x = 0; x < film.width(); x++) {
            sum += film.isCan(frame, x, row) ? x + 0.5 : 0;
        }
        return sum / width(film, frame, row);
    }

    /// A crop that lies 5 % of the whole picture's width to the right shows the can so much further left; the other
    /// delivery's shows it as ever.
    @Test
    void crops_areTheDeliverysOwn() throws IOException {
        Film middle = film("90x160", 50, "--delivery", "phone", "--no-titles");
        Film wide = film(WIDTH + "x" + HEIGHT, 50, "--delivery", "plain");
        Files.writeString(
                plan,
                COLOURED.replace(
                        "focus: 600 mm, rate: 24 fps}\n",
                        "focus: 600 mm, rate: 24 fps}\n    crop: {phone: [5 %, 0 %]}\n"));
        Film aside = film("90x160", 50, "--delivery", "phone", "--no-titles");
        double whole = 160 * 16 / 9.0;
        assertThat(aside.middle(45) - middle.middle(45)).isCloseTo(-0.05 * whole, within(0.5));
        assertThat(aside.difference(middle, 30)).as("another shot").isZero();
        Film again = film(WIDTH + "x" + HEIGHT, 50, "--delivery", "plain");
        assertThat(again.difference(wide, 45)).isZero();
    }

    /// White letters in the lower part over the last shot: of the first language, of the one that is named, or none.
    @Test
    void titles_areInTheirLanguage_andNotInATextlessDelivery() throws IOException {
        String size = WIDTH + "x" + HEIGHT;
        Film bare = film(size, 50, "--no-titles");
        Film english = film(size, 50);
        Film german = film(size, 50, "--language", "de");
        Film textless = film(size, 50, "--delivery", "plain");
        Film named = film(size, 50, "--delivery", "plain", "--language", "de");
        int compared = 0;
        for (int frame = 0; frame < 50; frame++) {
            boolean isTitled = frame >= 40;
            assertThat(english.difference(bare, frame) > 60)
                    .as("frame %d", frame)
                    .isEqualTo(isTitled);
            assertThat(german.difference(bare, frame) > 60)
                    .as("frame %d", frame)
                    .isEqualTo(isTitled);
            assertThat(german.difference(english, frame) > 60)
                    .as("frame %d", frame)
                    .isEqualTo(isTitled);
            assertThat(named.difference(textless, frame) > 60)
                    .as("frame %d", frame)
                    .isEqualTo(isTitled);
            compared++;
        }
        assertThat(compared).isEqualTo(50);
        assertThat(letters(english, 45))
                .isGreaterThan(letters(german, 45) * 4 / 3)
                .isLessThan(WIDTH);
        assertThat(letters(textless, 45)).isZero();
    }

    /// How far white pixels of the lower third reach from the left to the right.
    private static int letters(Film film, int frame) {
        int first = WIDTH;
        int last = WIDTH - 1;
        for (int i = HEIGHT * 2 / 3 * WIDTH; i < HEIGHT * WIDTH; i++) {
            int x = i % WIDTH;
            int y = i / WIDTH;
            boolean isWhite =
                    film.at(frame, x, y, 0) > 225 && film.at(frame, x, y, 1) > 225 && film.at(frame, x, y, 2) > 225;
            first = isWhite ? Math.min(first, x) : first;
            last = isWhite && (last == WIDTH - 1 || x > last) ? x : last;
        }
        return first == WIDTH ? 0 : last - first;
    }
}
