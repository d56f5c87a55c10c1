package plumeline.cut.mask;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.StreamSupport;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// Which frames get masks, under which names, and that the screen's copies are those of the frames shown.
final class MaskFilesTest {
    private static final String[] RAMPED = {
        "camera: {body: main, lens: macro, at: [0 mm, -1100 mm, 139 mm], aim: ahead, focus: 1100 mm, rate: 120 fps}",
        "place: {hero: {thing: flacon, at: [0 mm, 0 mm, 40 mm], lines: 1, line: {diameter: 0.25 mm}}}",
        "moves: {slide: {machine: slider, by: [100 mm, 0 mm], in: 2 s, profile: smooth}}",
        "speed: [[0 frames, 100 %], [12 frames, 100 %], [24 frames, 20 %], [48 frames, 20 %]]"
    };

    private static List<MaskFiles.MaskFile> files(Plan plan) {
        Masked masked = Held.masked(plan);
        MaskFiles files = MaskFiles.of(masked, MaskNumbers.of(plan, masked));
        List<MaskFiles.MaskFile> all =
                StreamSupport.stream(files.files().spliterator(), false).toList();
        assertThat(all).hasSize((int) files.count());
        return all;
    }

    private static MaskFiles.MaskFile find(List<MaskFiles.MaskFile> all, String name) {
        return all.stream().filter(file -> file.name().equals(name)).findFirst().orElseThrow();
    }

    /// 120 on 24: 5 captured frames a screen frame in real time; straight from 100 % to 20 % over 12 frames, then one
    /// each. Frame n of the ramp is at 60 + 5 (n − 0.8 n²/24) of the captured frames.
    @Test
    void screenFrames_haveTheMasksOfWhatTheyShow() {
        Plan plan = Held.plan(RAMPED);
        MaskNumbers numbers = MaskNumbers.of(plan, Held.masked(plan));
        assertThat(numbers.screens()).hasSize(48);
        assertThat(numbers.screens().get(10)).isEqualTo(new MaskNumbers.Screen("", 10, 50));
        long shown = (long) Math.floor(60 + 5 * (6 - 0.8 * 36 / 24) + 0.5);
        assertThat(numbers.screens().get(18)).isEqualTo(new MaskNumbers.Screen("", 18, shown));
        assertThat(numbers.screens().get(47)).isEqualTo(new MaskNumbers.Screen("", 47, 96 + 23));
        List<MaskFiles.MaskFile> all = files(plan);
        assertThat(find(all, "one/screen/0000018.png").bytes().get())
                .isEqualTo(
                        find(all, "one/source/00864" + shown + ".png").bytes().get())
                .isNotEqualTo(find(all, "one/source/0086400.png").bytes().get());
    }

    /// From GO, at 01:00:00:00 = frame 86400, 24 frames of handle before, and after the last shown, 119.
    @Test
    void capturedFrames_areNumberedByTimecode_withHandles() {
        Plan plan = Held.plan(RAMPED);
        MaskNumbers numbers = MaskNumbers.of(plan, Held.masked(plan));
        assertThat(numbers.firstCaptured()).isEqualTo(-24);
        assertThat(numbers.pastCaptured()).isEqualTo(119 + 1 + 24);
        List<MaskFiles.MaskFile> all = files(plan);
        assertThat(all.getFirst().name()).isEqualTo("one/lines.csv");
        assertThat(all.get(1).name()).isEqualTo("one/source/0086376.png");
        assertThat(all.get(2).name()).isEqualTo("one/source/0086376.svg");
        assertThat(all.get(2 * 168).name()).isEqualTo("one/source/0086543.svg");
        assertThat(all.get(2 * 168 + 1).name()).isEqualTo("one/screen/0000000.png");
    }

    /// A clip that has ten frames before GO and 100 in all has no masks beyond.
    @Test
    void aClipsOwnFrames_areAllThatIsMasked() {
        List<String> lines = new ArrayList<>(List.of(RAMPED));
        lines.add("clip: {file: a/take.mov, starts: \"02:00:00:00\", go: 10 frames, frames: 100 frames}");
        Plan plan = Held.plan(lines.toArray(String[]::new));
        MaskNumbers numbers = MaskNumbers.of(plan, Held.masked(plan));
        assertThat(numbers.goFrame()).isEqualTo(2 * 86400 + 10);
        assertThat(numbers.firstCaptured()).isEqualTo(-10);
        assertThat(numbers.pastCaptured()).isEqualTo(90);
    }

    /// Cut to without a pass, to one, and not to the other: all three may be recorded.
    @Test
    void passes_haveMasksOfTheirOwn_andTheShotWhereItIsCut() {
        List<String> lines = new ArrayList<>(List.of(RAMPED));
        lines.add("passes: {low: {place.hero.at.z: 30 mm}, high: {place.hero.at.z: 50 mm}}");
        FilmAnswer film = Solve.film(Held.plan(lines.toArray(String[]::new)));
        List<Masked> all = Masked.listAll(film);
        assertThat(all.stream().map(Masked::pass)).containsExactly("", "low", "high");
        assertThat(all.stream()
                        .map(each -> MaskFiles.of(each, MaskNumbers.of(film.plan(), each))
                                .folder()))
                .containsExactly("one", "one.low", "one.high");
        assertThat(MaskNumbers.of(film.plan(), all.get(1)).screens()).isEmpty();
        double higher = all.get(1).frame(0).parts().getFirst().from().opens().y()
                - all.get(2).frame(0).parts().getFirst().from().opens().y();
        assertThat(higher).isEqualTo(20 * 0.1 * 3840 / 36, within(1e-6));
    }

    @Test
    void allBytes_areTheSameAgain() {
        List<MaskFiles.MaskFile> one = files(Held.plan(RAMPED));
        List<MaskFiles.MaskFile> other = files(Held.plan(RAMPED));
        for (int i = 0; i < one.size(); i += 17) {
            assertThat(one.get(i).bytes().get())
                    .isEqualTo(other.get(i).bytes().get())
                    .isEqualTo(one.get(i).bytes().get());
        }
    }

    /// The drawing has a path a strand, and the table says the picture's middle for a line straight ahead.
    @Test
    void drawingAndTable_areOfTheClipsSize() {
        List<MaskFiles.MaskFile> all = files(Held.plan(RAMPED));
        String svg = new String(find(all, "one/source/0086400.svg").bytes().get(), StandardCharsets.UTF_8);
        assertThat(svg)
                .startsWith("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"3840\" height=\"2160\""
                        + " viewBox=\"0 0 3840 2160\">\n<path id=\"hero-line\"");
        String csv = new String(all.getFirst().bytes().get(), StandardCharsets.UTF_8);
        List<String> rows =
                csv.lines().filter(line -> line.startsWith("one,,source,,0,")).toList();
        assertThat(rows).hasSize(1);
        assertThat(rows.getFirst()).startsWith("one,,source,,0,0,0,86400,hero-line,1,air,1920,877.3333,1920,-384,");
        assertThat(csv).contains("one,,screen,,18,");
        assertThat(csv).endsWith("\r\n").doesNotContain("NaN");
    }

    /// Nothing moves: every frame is the same picture.
    @Test
    void aStillShot_hasOnePicture() {
        Plan plan = Held.plan(RAMPED[0], RAMPED[1]);
        List<MaskFiles.MaskFile> all = files(plan);
        assertThat(find(all, "one/source/0086390.png").bytes().get())
                .isEqualTo(find(all, "one/screen/0000020.png").bytes().get());
        String csv = new String(all.getFirst().bytes().get(), StandardCharsets.UTF_8);
        assertThat(csv.lines().filter(line -> line.contains(",source,")).count())
                .isEqualTo(24 + 48 * 5 - 4 + 24);
    }
}
