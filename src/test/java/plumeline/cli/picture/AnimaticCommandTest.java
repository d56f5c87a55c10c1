package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import plumeline.assemble.ReadCounter;
import plumeline.clip.Clips;
import plumeline.clip.PictureTrack;
import plumeline.desk.Outcome;

/// `animatic` and `frames` from a plan to their files; what was drawn before isn't drawn again.
final class AnimaticCommandTest extends AnimaticTyped {
    private static final Pattern TO_DRAW = Pattern.compile("plumeline: ([0-9]+) pictures? to draw");

    private static PictureTrack open(Path file) {
        return ((Clips.Opening.Open) Clips.pictures(file)).track();
    }

    private int toDraw() {
        Matcher found = TO_DRAW.matcher(said());
        assertThat(found.find()).as(said()).isTrue();
        return Integer.parseInt(found.group(1));
    }

    @Test
    void film_isAsItsCut_andEveryCounterIsRight() throws IOException {
        assertThat(run("--size", "320x180", "--burn-in")).as(said()).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).isEqualTo(folder.resolve("film.mp4") + "\n");
        try (PictureTrack track = open(folder.resolve("film.mp4"))) {
            assertThat(track.countFrames()).isEqualTo(50);
            for (int frame = 0; frame < 50; frame++) {
                int[] packed = track.find(frame).orElseThrow();
                assertThat(ReadCounter.lines((x, y) -> packed[y * 320 + x] >> 8 & 255, 320, 180))
                        .containsExactly("%06d".formatted(frame), "01:00:%02d:%02d".formatted(frame / 24, frame % 24));
            }
        }
    }

    @Test
    void secondRun_drawsNothing_andWritesTheSame() throws IOException {
        assertThat(run("--size", "96x54", "--threads", "2")).isEqualTo(Outcome.ANSWERED);
        int all = toDraw();
        byte[] first = Files.readAllBytes(folder.resolve("film.mp4"));
        assertThat(files(folder.resolve("film.pictures"), ".png")).hasSize(all);
        assertThat(run("--size", "96x54", "--threads", "1")).isEqualTo(Outcome.ANSWERED);
        assertThat(toDraw()).isZero();
        assertThat(said()).contains(all + " more drawn before");
        assertThat(Files.readAllBytes(folder.resolve("film.mp4"))).isEqualTo(first);
        for (String threads : List.of("1", "3")) {
            for (Path picture : files(folder.resolve("film.pictures"), ".png")) {
                Files.delete(picture);
            }
            assertThat(run("--size", "96x54", "--threads", threads)).isEqualTo(Outcome.ANSWERED);
            assertThat(toDraw()).isEqualTo(all);
            assertThat(Files.readAllBytes(folder.resolve("film.mp4")))
                    .as("any threads")
                    .isEqualTo(first);
        }
    }

    /// Cut short, a byte turned, another file's bytes: each is seen, and no other is drawn.
    @Test
    void damagedPictures_areDrawnAgain_andOnlyThose() throws IOException {
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        List<Path> pictures = files(folder.resolve("film.pictures"), ".png");
        List<byte[]> before = new ArrayList<>();
        for (Path picture : pictures) {
            before.add(Files.readAllBytes(picture));
        }
        byte[] cut = java.util.Arrays.copyOf(before.get(0), before.get(0).length - 5);
        byte[] turned = before.get(1).clone();
        turned[turned.length / 2] ^= 4;
        Files.write(pictures.get(0), cut);
        Files.write(pictures.get(1), turned);
        Files.write(pictures.get(2), before.get(3));
        Files.write(pictures.get(4), new byte[0]);
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        assertThat(toDraw()).isEqualTo(4);
        assertThat(said()).contains("4 of another state of the plan, or damaged");
        for (int i = 0; i < pictures.size(); i++) {
            assertThat(Files.readAllBytes(pictures.get(i))).isEqualTo(before.get(i));
        }
    }

    /// What a shot looks like decides its pictures; titles, other shots and the cut's order don't.
    @Test
    void changedPlan_drawsWhatChanged() throws IOException {
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        int all = toDraw();
        Files.writeString(plan, PLAN.replace("Gehalten", "Gedreht").replace("title: Held", "title: Kept"));
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        assertThat(toDraw()).isZero();
        Files.writeString(plan, PLAN.replace("f_number: 4", "f_number: 5.6"));
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        assertThat(toDraw()).isEqualTo(14);
        Files.writeString(plan, PLAN.replace("reflects: 40 %", "reflects: 50 %"));
        assertThat(run("--size", "96x54")).isEqualTo(Outcome.ANSWERED);
        assertThat(toDraw()).isEqualTo(all);
    }

    /// Ended by force in the middle, in a process of its own: the next run draws the rest and leaves nothing half
    /// there.
    @Test
    void killedRun_isGoneOnWith() throws IOException, InterruptedException {
        Process process = begin();
        process.destroyForcibly().waitFor();
        goesOn();
    }

    /// Asked to stop: it puts down what it has, says so, and leaves nothing half there.
    @Test
    void stoppedRun_leavesNothingHalf() throws IOException, InterruptedException {
        Process process = begin();
        process.destroy();
        process.waitFor();
        assertThat(files(folder, ".new")).isEmpty();
        assertThat(Files.readString(folder.resolve("said")))
                .endsWith("plumeline: stopped; the same command goes on from here\n");
        goesOn();
    }

    private List<String> slow() {
        List<String> words = words(plan, "--size", "640x360", "--samples=16");
        words.removeAll(List.of("--samples", "1"));
        return words;
    }

    /// Begins a run in a process of its own, and comes back once it has drawn some pictures.
    private Process begin() throws IOException, InterruptedException {
        List<String> command = new ArrayList<>(List.of(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "--enable-native-access=ALL-UNNAMED",
                "-cp",
                System.getProperty("java.class.path"),
                "plumeline.cli.Main"));
        command.addAll(slow());
        Process process = new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("said").toFile())
                .start();
        Path pictures = folder.resolve("film.pictures");
        while (process.isAlive()
                && (!Files.isDirectory(pictures) || files(pictures, ".png").size() < 4)) {
            Thread.sleep(20);
        }
        return process;
    }

    private void goesOn() throws IOException {
        Path pictures = folder.resolve("film.pictures");
        assertThat(folder.resolve("film.mp4")).doesNotExist();
        int kept = files(pictures, ".png").size();
        assertThat(all(slow())).isEqualTo(Outcome.ANSWERED);
        assertThat(said()).contains("; " + kept + " more drawn before");
        int all = files(pictures, ".png").size();
        assertThat(toDraw()).isEqualTo(all - kept).isPositive();
        assertThat(files(folder, ".new")).isEmpty();
    }

    @Test
    void whatIsMissing_isSaid() throws IOException {
        Files.writeString(plan, PLAN.substring(0, PLAN.indexOf("cut:\n")));
        assertThat(run()).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("the plan has no cut of the film; there is one of short");
        Files.writeString(plan, PLAN);
        assertThat(run("--delivery", "wode")).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("has no delivery wode; it has wide, phone, plain, short", "Try --delivery wide.");
        assertThat(run("--size", "641x360")).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("--size is 641x360; must be two even numbers");
        assertThat(run("--language", "fr")).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("no titles in fr; it has en, de");
        Path made = Files.createDirectory(folder.resolve("made.mp4"));
        assertThat(run("--size", "96x54", "--out", made.toString())).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("is a folder; a file is wanted");
        assertThat(run("--size", "96x54", "--out", plan + "/film.mp4")).isEqualTo(Outcome.REFUSED);
        assertThat(said()).contains("plumeline: " + plan + " is a file; a folder is wanted there");
    }

    @Test
    void deliveries_haveTheirOwnCutAndSize() throws IOException {
        assertThat(run("--delivery", "short")).isEqualTo(Outcome.ANSWERED);
        try (PictureTrack track = open(folder.resolve("film.short.mp4"))) {
            assertThat(track.countFrames()).isEqualTo(7);
            assertThat(track.facts().width()).isEqualTo(360);
            assertThat(track.facts().height()).isEqualTo(360);
        }
        assertThat(toDraw()).as("a shot in which nothing moves").isEqualTo(1);
    }

    @Test
    void overlays_areLaid_orSaidToBeMissing() throws IOException {
        var image = new java.awt.image.BufferedImage(96, 54, java.awt.image.BufferedImage.TYPE_INT_RGB);
        for (int i = 0; i < 96 * 54; i++) {
            image.setRGB(i % 96, i / 96, i % 96 < 48 ? 0x000000 : 0xFF0000);
        }
        javax.imageio.ImageIO.write(image, "png", folder.resolve("glow.png").toFile());
        String overlays = "overlays: [{overlay: glow, over: {shot: turned, when: start}, file: glow.png},"
                + " {overlay: steam, over: {shot: held, when: start}, file: steam.mov},"
                + " {overlay: dust, over: {shot: held, when: start}}]\n";
        Files.writeString(plan, PLAN + overlays);
        assertThat(run("--size", "96x54", "--no-titles")).isEqualTo(Outcome.ANSWERED);
        assertThat(said())
                .contains("The overlay steam isn't laid on: its file is steam.mov, which is not there.")
                .contains("The overlay dust isn't laid on: it has no file yet.");
        try (PictureTrack track = open(folder.resolve("film.mp4"))) {
            int[] before = track.find(40).orElseThrow();
            int[] plain = plainFrame();
            int lit = 45 * 96 + 80;
            int dark = 45 * 96 + 20;
            assertThat(before[lit] >> 16 & 255).isGreaterThan(245);
            assertThat(plain[lit] >> 16 & 255).isLessThan(220);
            assertThat(before[lit] >> 8 & 255).isCloseTo(plain[lit] >> 8 & 255, within(12));
            assertThat(before[dark] >> 16 & 255).isCloseTo(plain[dark] >> 16 & 255, within(12));
        }
    }

    private int[] plainFrame() throws IOException {
        Files.writeString(plan, PLAN);
        assertThat(run("--size", "96x54", "--no-titles")).isEqualTo(Outcome.ANSWERED);
        try (PictureTrack track = open(folder.resolve("film.mp4"))) {
            return track.find(40).orElseThrow();
        }
    }

    @Test
    void frames_areNumberedPictures() throws IOException {
        assertThat(all(List.of(
                        "frames",
                        plan.toString(),
                        "--shot",
                        "held",
                        "--size",
                        "96x54",
                        "--samples",
                        "1",
                        "--out",
                        folder.resolve("held").toString())))
                .as(said())
                .isEqualTo(Outcome.ANSWERED);
        List<Path> pictures = files(folder.resolve("held"), ".png");
        assertThat(pictures).hasSize(26);
        assertThat(pictures.getFirst().getFileName().toString()).isEqualTo("held.000000.png");
        assertThat(Files.mismatch(pictures.get(11), pictures.get(15)))
                .as("held")
                .isEqualTo(-1);
        assertThat(Files.mismatch(pictures.get(0), pictures.get(15))).isNotNegative();
        assertThat(javax.imageio.ImageIO.read(pictures.get(3).toFile()).getWidth())
                .isEqualTo(96);
        assertThat(toDraw()).isLessThan(26);
    }
}
