package plumeline.cli.lesson;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.Executors;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.cli.Main;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

final class LessonCommandTest {
    @TempDir
    private Path folder = Path.of("");

    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();
    private Path plan = Path.of("");
    private Path lessons = Path.of("");

    @BeforeEach
    void copyExample() throws IOException {
        plan = folder.resolve("film.v2.yaml");
        lessons = folder.resolve("film.v2.lessons.yaml");
        Files.copy(Path.of("examples/fernhollow.yaml"), plan);
    }

    private Outcome run(String line) {
        out.reset();
        err.reset();
        List<String> words = new ArrayList<>(List.of(line.split(" ")));
        words.replaceAll(word -> word.equals("PLAN") ? plan.toString() : word.replace('~', ' '));
        return Main.run(words, new Console(new ByteArrayInputStream(new byte[0]), out, err));
    }

    private String answered(String line) {
        assertThat(run(line)).as(err.toString(UTF_8)).isEqualTo(Outcome.ANSWERED);
        return out.toString(UTF_8);
    }

    private String refused(String line) throws IOException {
        byte[] before = Files.exists(lessons) ? Files.readAllBytes(lessons) : new byte[0];
        assertThat(run(line)).as(out.toString(UTF_8)).isEqualTo(Outcome.REFUSED);
        assertThat(Files.exists(lessons) ? Files.readAllBytes(lessons) : new byte[0])
                .isEqualTo(before);
        return err.toString(UTF_8);
    }

    @Test
    void add_take_isNotedBesideThePlan_andTeaches() throws IOException {
        byte[] before = Files.readAllBytes(plan);
        String said = answered("lesson add PLAN --shot plume --take 2 --front 0.40~s~±~0.02~s~at~70~mm~±~3~mm"
                + " --front 1.90 s at 188 mm --width 60 mm at 120 mm --how a ruler");
        assertThat(said)
                .startsWith("Noted as 1 in " + lessons + ": take 2 of plume, rose_ink 3 ml: 0.40 s ± 0.02 s at 70 mm"
                        + " ± 3 mm, 1.90 s at 188 mm, 60 mm wide at 120 mm (")
                .containsPattern("(?m)^  strength +[0-9]+ cm²/s \\([0-9]+ to [0-9]+\\)$")
                .containsPattern("(?m)^  growth +[0-9]+ mm \\([0-9]+ to [0-9]+\\) of half-width in 100 mm of way$")
                .containsPattern("(?m)^  pace +[0-9.]+ \\([0-9.]+ to [0-9.]+\\) times the laws'$")
                .containsPattern(
                        "(?m)^Next take of plume, as planned: at bottle's top \\(70 mm deep\\) after 0\\.[0-9]+"
                                + " s, four times in five between 0\\.[0-9]+ s and 0\\.[0-9]+ s$")
                .containsPattern("(?m)^  take to take +up to 1\\.[0-9] times as long or as short$")
                .containsPattern("(?m)^  wanted +0.4 s ± 0.15 s: about [1-9] takes in 10$")
                .containsPattern("(?m)^  change +(nothing: .+|(nozzle's mouth|volume|squeeze|push|bore) .+ instead of"
                        + " .+, nothing else: .+ takes? in 10.*)$")
                .doesNotContain(" %");
        assertThat(Files.readString(lessons))
                .contains("lessons: 1\nmeasured:\n  - take: 2\n    shot: plume\n    ink: rose_ink\n    volume: 3 ml\n")
                .contains("    front: [[0.40 s ± 0.02 s, 70 mm ± 3 mm], [1.90 s, 188 mm]]\n")
                .containsPattern("    noted: \"[0-9]{4}-[0-9]{2}-[0-9]{2}\"\n    how: \"a ruler\"\n$");
        assertThat(Files.readAllBytes(plan)).isEqualTo(before);
    }

    /// Read so slow that it would be let go before the shot, which starts it at 0.2 s: what then is to be done is said.
    @Test
    void lettingGoBeforeTheShot_saysToBeginItLater() throws IOException {
        String said = answered("lesson add PLAN --front 0.9 s at 70 mm --front 4.0 s at 188 mm");
        var earlier = Pattern.compile(
                        "let go ([0-9.]+) s earlier, .*; that is ([0-9.]+) s before the shot begins: let it")
                .matcher(said);
        assertThat(earlier.find()).as(said).isTrue();
        assertThat(Double.parseDouble(earlier.group(1)) - Double.parseDouble(earlier.group(2)))
                .isEqualTo(0.2, within(0.01));
        Files.writeString(plan, Files.readString(plan).replace("start: 0.2 s", "start: 2 s"));
        assertThat(answered("lesson list PLAN")).contains(" earlier, ").doesNotContain("before the shot begins");
    }

    @Test
    void add_manyAtOnce_andListTheirNumbers() {
        answered("lesson add PLAN --lux key 1450 lx at 1 m --focal fifty 48.6 mm --speed slider 74 mm/s"
                + " --reset plume 32 min --strength rose_ink 0.8 /cm");
        answered("lesson add PLAN --front 0.4 s at 70 mm --volume 4 ml --bore 4 mm --squeeze 0.5 s --height -20 mm");
        assertThat(answered("lesson list PLAN"))
                .containsPattern("(?m)^1 +strip gives 1450 lx at 1 m \\(.*\\)$")
                .containsPattern("(?m)^2 +fifty has a focal length of 48.6 mm \\(.*\\)$")
                .containsPattern("(?m)^3 +slider goes 74 mm/s \\(.*\\)$")
                .containsPattern("(?m)^4 +plume is reset in 32 min \\(.*\\)$")
                .containsPattern("(?m)^5 +rose_ink has a strength of 0.8 /cm \\(.*\\)$")
                .containsPattern("(?m)^6 +take 1 of plume, rose_ink 4 ml: 0.4 s at 70 mm \\(.*\\)$")
                .contains("Next take of plume");
        assertThat(answered("lesson forget PLAN 2"))
                .startsWith("Forgot 2: fifty has")
                .contains("move up by one");
        assertThat(answered("lesson list PLAN")).doesNotContain("fifty").containsPattern("(?m)^5 +take 1 of plume");
    }

    @Test
    void add_withoutNumber_isTheNextTake_andNoTakeIsNotedTwice() throws IOException {
        answered("lesson add PLAN --front 0.4 s at 70 mm --take 4");
        assertThat(answered("lesson add PLAN --front 0.4 s at 70 mm")).contains("Noted as 2", "take 5 of plume");
        assertThat(refused("lesson add PLAN --front 0.4 s at 70 mm --take 4"))
                .startsWith("plumeline: take 4 of plume is noted already\n  Give --take 6, ");
    }

    @Test
    void badInput_isRefusedInFull_andLosesNothing() throws IOException {
        answered("lesson add PLAN --focal fifty 48.6 mm");
        assertThat(refused("lesson add PLAN --front 0.4 s at 70"))
                .isEqualTo("plumeline: --front is 0.4 s at 70: there 70 is a bare number (70); must be a length in mm,"
                        + " cm, m, in, ft, µm or nm\n  Try 70 mm.\n");
        assertThat(refused("lesson add PLAN --front 0.4 s"))
                .startsWith("plumeline: --front is 0.4 s; must be two quantities with the word at between them\n");
        assertThat(refused("lesson add PLAN --focal fitfy 48 mm"))
                .isEqualTo("plumeline: fitfy is not the name of a lens; there are fifty, macro\n  Try fifty.\n");
        assertThat(refused("lesson add PLAN --reset plume")).contains("must be a name and a time");
        assertThat(refused("lesson add PLAN --shot plum --front 1 s at 70 mm")).endsWith("  Try plume.\n");
        assertThat(refused("lesson add PLAN --shot reveal --front 1 s at 70 mm"))
                .contains("lets no ink go");
        assertThat(refused("lesson add PLAN --volume 3 ml")).contains("without a reading of a take");
        assertThat(refused("lesson add PLAN")).contains("nothing that was measured");
        assertThat(refused("lesson add PLAN --lux strip 0 lx at 1 m"))
                .contains("gives is 0 lx; must be greater than 0 lx; nothing was noted");
        assertThat(refused("lesson add PLAN --speed slider 20 deg/s")).contains("nothing was noted");
        assertThat(refused("lesson add PLAN --take 0 --front 1 s at 70 mm")).contains("whole number from 1 to 999");
        assertThat(refused("lesson add PLAN --height -80 mm --front 1 s at 70 mm"))
                .contains("--front is a reading at 70 mm; must be deeper than the nozzle's mouth, 80 mm");
        assertThat(refused("lesson forget PLAN 7")).contains("there is no lesson 7; they are numbered 1 to 1");
        assertThat(refused("lesson forget PLAN")).contains("lesson forget needs PLAN N");
        assertThat(refused("lesson list PLAN 3")).contains("given too much: 3");
        assertThat(refused("lesson lst PLAN")).endsWith("  Try lesson list.\n");
        assertThat(refused("lesson list PLAN --take 3")).contains("lesson list has no option --take");
        assertThat(refused("lesson add -")).contains("standard input has none");
    }

    @Test
    void spoiltLessons_areNeverOverwritten() throws IOException {
        Files.writeString(lessons, "lessons: 1\nmeasured:\n  - {lens: fifty, focal_lenght: 48 mm}\n");
        for (String line : List.of("lesson add PLAN --focal fifty 48 mm", "lesson list PLAN", "solve PLAN")) {
            assertThat(refused(line)).contains(lessons + ":3:33 measured[1].focal_lenght is not a known key");
        }
    }

    @Test
    void readOnlyLessons_areLeftAsTheyAre() throws IOException {
        answered("lesson add PLAN --focal fifty 48.6 mm");
        Files.setPosixFilePermissions(lessons, PosixFilePermissions.fromString("r--r--r--"));
        assertThat(run("lesson add PLAN --focal fifty 48 mm")).isEqualTo(Outcome.FAILED);
        assertThat(err.toString(UTF_8)).contains("is read-only; left as it is");
        assertThat(Files.readString(lessons)).contains("48.6 mm").doesNotContain("48 mm");
    }

    @Test
    void manyAtTheSameTime_loseNone() throws Exception {
        try (var threads = Executors.newFixedThreadPool(4)) {
            List<Callable<Outcome>> adds = IntStream.range(0, 12)
                    .<Callable<Outcome>>mapToObj(i -> () -> Main.run(
                            List.of("lesson", "add", plan.toString(), "--reset", "plume " + (20 + i) + " min"),
                            new Console(
                                    new ByteArrayInputStream(new byte[0]),
                                    new ByteArrayOutputStream(),
                                    new ByteArrayOutputStream())))
                    .toList();
            for (var done : threads.invokeAll(adds)) {
                assertThat(done.get()).isEqualTo(Outcome.ANSWERED);
            }
        }
        String text = Files.readString(lessons);
        for (int i = 0; i < 12; i++) {
            assertThat(text).contains("reset: " + (20 + i) + " min");
        }
    }

    @Test
    void everyCommandOfAPlan_takesTheLessons_andSaysSoInALine() {
        String before = answered("solve PLAN --shot plume");
        assertThat(err.size()).isZero();
        answered("lesson add PLAN --focal macro 90 mm");
        assertThat(answered("solve PLAN --shot plume")).isNotEqualTo(before);
        assertThat(err.toString(UTF_8))
                .isEqualTo("plumeline: measured values of " + lessons + ": macro's focal length\n");
        answered("solve PLAN --shot plume --json");
        assertThat(out.toString(UTF_8)).startsWith("{");
        answered("keep PLAN --shot plume");
        assertThat(err.toString(UTF_8)).startsWith("plumeline: measured values of " + lessons);
    }

    /// The example's water is 260 mm deep in a tank 450 mm wide.
    @Test
    void readingsThatCantBe_areRefused_andNothingIsNoted() throws IOException {
        assertThat(refused("lesson add PLAN --front 0.45 s at 130 mm --front 1.3 s at 70 mm"))
                .isEqualTo("plumeline: --front is 70 mm at 1.3 s behind 130 mm at 0.45 s; must be deeper and later than"
                        + " the reading before it; nothing was noted\n  Read one front on its way down; depths count"
                        + " from the still surface.\n");
        assertThat(refused("lesson add PLAN --front 0.45 s at 70 mm --front 1.3 s at 70 mm"))
                .contains("--front is 70 mm at 1.3 s behind 70 mm at 0.45 s");
        assertThat(refused("lesson add PLAN --front 0.45 s at 900 mm"))
                .contains("--front is a reading at 900 mm; must be at most as deep as the water, 260 mm; nothing");
        assertThat(refused("lesson add PLAN --front 0.45 s at 70 mm --width 900 mm at 120 mm"))
                .contains("--width is a width of 900 mm; must be at most the tank's inside, 450 mm; nothing");
        assertThat(refused("lesson add PLAN --front 0.45 s at 70 mm --width 40 mm at 270 mm"))
                .contains("--width is a reading at 270 mm; must be at most as deep as the water, 260 mm; nothing");
    }

    /// Far out of what any ink does, swapped, or half told: said, never noted and never a failure of every command
    /// after.
    @Test
    void slipsOfATiredHand_areRefusedWithWhatWasMeant() throws IOException {
        assertThat(refused("lesson add PLAN --front 0.01 s at 250 mm"))
                .contains("--front is 250 mm at 0.01 s; must be at 250 mm between")
                .contains("right units");
        assertThat(refused("lesson add PLAN --front 60 s at 70 mm")).contains("--front is 70 mm at 60 s; must be");
        assertThat(refused("lesson add PLAN --front 70 mm at 0.4 s"))
                .contains("must be a time first, then the depth there")
                .contains("Swap them: --front \"0.4 s at 70 mm\".");
        assertThat(refused("lesson add PLAN --reset plume 35")).contains("Try 35 min.");
        assertThat(refused("lesson add PLAN --front 0.4 s at 70")).contains("Try 70 mm.");
        Files.writeString(
                plan, Files.readString(plan).replaceAll("(at: \\[0 mm, free between[^,]*, )298 mm", "$1free"));
        assertThat(refused("lesson add PLAN --volume 4 ml --front 0.6 s at 60 mm"))
                .startsWith("plumeline: --volume says what was let go, but it isn't known whole; missing: the nozzle's")
                .contains("plumeline keep PLAN");
    }

    @Test
    void framesAreTaken_emptyFilesCountAsNone_andFarFromThePlanIsSaid() throws IOException {
        Files.writeString(lessons, "\n");
        assertThat(answered("lesson add PLAN --rate 100 fps --front 45 frames at 70 mm"))
                .contains("0.45 s at 70 mm");
        assertThat(answered("lesson add PLAN --focal macro 9.8 mm"))
                .contains("Look: 9.8 mm is far from the plan's 100 mm; is the unit right?")
                .contains("Take it out: plumeline lesson forget " + plan + " 2\n");
        assertThat(answered("lesson add PLAN --focal macro 98 mm")).doesNotContain("Look:");
        assertThat(answered("lesson add PLAN --lux key 4000 lx at 10 m")).contains("Look: 4000 lx at 10 m is far from");
        assertThat(answered("lesson add PLAN --lux key 1000 lx at 2 m --speed slider 74 mm/s"))
                .doesNotContain("Look:");
        assertThat(answered("lesson add PLAN --speed slider 7.4 mm/s")).contains("is far from the plan's");
    }

    /// Every command says where it stands; the text stays as it is, and the lesson can be taken out.
    @Test
    void handWrittenReadingsThatCantBe_areSaidWithTheirPlace_andLoseNothing() throws IOException {
        answered("lesson add PLAN --front 0.45 s at 70 mm --front 1.3 s at 130 mm");
        String noted = Files.readString(lessons);
        Files.writeString(lessons, noted.replace("130 mm", "130 cm"));
        for (String line : List.of("lesson add PLAN --focal fifty 48 mm", "lesson list PLAN", "solve PLAN")) {
            assertThat(refused(line))
                    .containsPattern(
                            lessons + ":[0-9]+:[0-9]+ measured\\[1]\\.front\\[2]\\[2] is a reading at 130 cm; must be");
        }
        Files.writeString(lessons, noted.replace("130 mm", "13 mm"));
        for (String line : List.of("lesson add PLAN --focal fifty 48 mm", "lesson list PLAN", "solve PLAN")) {
            assertThat(refused(line)).containsPattern("measured\\[1]\\.front\\[2] is 13 mm at 1.3 s behind 70 mm");
        }
        Files.writeString(lessons, noted.replace("130 mm", "130 cm"));
        assertThat(answered("lesson forget PLAN 1")).startsWith("Forgot 1: take 1 of plume");
    }

    /// Papers carry it: two prints with different marks must not look like one revision.
    @Test
    void aLesson_isAnotherRevision_andForgettingItTheFirstAgain() {
        String before = sha256();
        answered("lesson add PLAN --focal macro 90 mm");
        assertThat(sha256()).isNotEqualTo(before);
        answered("lesson forget PLAN 1");
        assertThat(sha256()).isEqualTo(before);
    }

    private String sha256() {
        return answered("solve PLAN --shot spin --json").replaceAll("(?s).*\"plan_sha256\": ?\"([0-9a-f]+)\".*", "$1");
    }

    /// An earlier revision has the lessons that lie beside it: here none.
    @Test
    void papersSince_tellsWhatALessonChanged() throws IOException {
        Files.copy(plan, folder.resolve("old.yaml"));
        answered("lesson add PLAN --focal macro 90 mm --reset plume 77 min");
        answered(
                "papers PLAN --shot plume --since " + folder.resolve("old.yaml") + " --to " + folder.resolve("papers"));
        String page = Files.readString(folder.resolve("papers/papers.html"))
                .replaceAll("<[^>]*>|[\\s\u00a0]", " ")
                .replaceAll(" +", " ");
        assertThat(page.contains("77 min (measured), was 28 to 46 min"))
                .as("the reset")
                .isTrue();
        assertThat(page.contains("90 mm (measured), was 100 mm")).as("the lens").isTrue();
    }

    /// A reading on a thing of a shot is noted beside what is computed there; the light card then says it.
    @Test
    void luxAt_isNotedAndPrinted() throws IOException {
        Files.writeString(plan, """
                plumeline: 1
                film: {rate: 24 fps}
                things:
                  tin: {diameter: 60 mm, height: 120 mm, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                  lights: {spot: {point: yes, gives: 2000 cd typical}, dumb: {point: yes}}
                shots:
                  one:
                    camera: {body: main, lens: fifty, at: [0 mm, -3000 mm, 60 mm], aim: hero}
                    place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
                    lights:
                      key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}
                      back: {light: spot, at: [0 mm, 2030 mm, 60 mm]}
                      mute: {light: dumb, at: [0 mm, -2030 mm, 60 mm]}
                """);
        assertThat(answered("lesson add PLAN --lux-at one hero key 400 lx --how lux meter"))
                .contains("400 lx on hero's label in one with key on, where 500 lx were computed");
        assertThat(Files.readString(lessons)).contains("lamps: {key: {lamp: spot, gives: 2000 cd}}");
        assertThat(answered("lesson add PLAN --lux-at one hero top key 4500 lx"))
                .contains("Look: 4500 lx is far from the 399.5 lx that were computed there; is the unit right");
        answered("lesson forget PLAN 2");
        assertThat(refused("lesson add PLAN --lux-at one hero back 400 lx"))
                .contains("no light of back comes to hero's label");
        assertThat(refused("lesson add PLAN --lux-at one hero mute 400 lx"))
                .contains("isn't known: nobody says what it gives");
        assertThat(refused("lesson add PLAN --lux-at one hero all 400 lx")).contains("nobody says what it gives");
        assertThat(refused("lesson add PLAN --lux-at one hero side key 400 lx")).contains("side is not the name of");
        assertThat(refused("lesson add PLAN --lux-at one hero key 400")).contains("must be");
        assertThat(refused("lesson add PLAN --lux-at one hero key 0 lx")).contains("above 0 lx");
        assertThat(refused("lesson add PLAN --lux-at one hero")).contains("must be a shot, a thing, its part");
        assertThat(answered("lesson list PLAN")).contains("1   400 lx on hero's label in one with key on");
    }

    /// Of what all lamps give together, what one was read to give alone is its own: the rest is the others'.
    @Test
    void luxAt_ofAll_isTheRestOfWhatWasReadAlone() throws IOException {
        Files.writeString(plan, """
                plumeline: 1
                film: {rate: 24 fps}
                things: {tin: {diameter: 60 mm, height: 120 mm, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                  lights: {spot: {point: yes, gives: 2000 cd typical}, soft: {point: yes, gives: 2000 cd typical}}
                shots:
                  one:
                    camera: {body: main, lens: fifty, at: [0 mm, -3000 mm, 60 mm], aim: hero, f_number: 8}
                    place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
                    lights:
                      key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}
                      fill: {light: soft, at: [0 mm, -1030 mm, 60 mm]}
                    wants: [{lit: hero}]
                """);
        answered("lesson add PLAN --lux-at one hero key 400 lx");
        assertThat(answered("lesson add PLAN --lux-at one hero all 1400 lx"))
                .contains("with fill on beside others that gave 400 lx, where 2000 lx were computed");
        assertThat(Files.readString(lessons)).contains("others: 400 lx");
        assertThat(answered("solve PLAN")).contains("hero's label gets 1400 lx (key 400 lx, fill 1000 lx)");
        assertThat(refused("lesson add PLAN --lux-at one hero all 420 lx"))
                .contains("key alone gives 400 lx: what is left for the others is less than a meter tells");
    }

    /// What has no light of its own isn't metered; of a lamp whose file alone tells what it gives nothing is corrected.
    @Test
    void luxAt_isOfLampsThatThePlanSaysOfWhatTheyGive() throws IOException {
        Files.writeString(folder.resolve("spot.ies"), """
                IESNA:LM-63-2002
                TILT=NONE
                1 1000 1 2 1 1 2 0 0 0
                1 1 50
                0 90
                0
                900 0
                """);
        Files.writeString(plan, """
                plumeline: 1
                film: {rate: 24 fps}
                things: {tin: {diameter: 60 mm, height: 120 mm, label: {width: 40 mm, height: 40 mm, bottom: 40 mm}}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, iso: {base: 100}}}
                  lenses: {fifty: {focal_length: 50 mm}}
                  lights:
                    spot: {point: yes, gives: 2000 cd typical}
                    filed: {file: spot.ies}
                    paper: {card: [300 mm, 300 mm]}
                shots:
                  one:
                    camera: {body: main, lens: fifty, at: [0 mm, -3000 mm, 60 mm], aim: hero}
                    place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
                    lights:
                      key: {light: spot, at: [0 mm, -2030 mm, 60 mm]}
                      side: {light: spot, at: [0 mm, -1030 mm, 60 mm]}
                      board: {light: paper, at: [0 mm, 900 mm, 60 mm], turn: 0 deg}
                  two:
                    camera: {body: main, lens: fifty, at: [0 mm, -3000 mm, 60 mm], aim: hero}
                    place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
                    lights: {key: {light: filed, at: [0 mm, -2030 mm, 60 mm]}}
                """);
        assertThat(refused("lesson add PLAN --lux-at one hero board 400 lx"))
                .contains("board is a card, which has no light of its own");
        assertThat(refused("lesson add PLAN --lux-at two hero key 400 lx"))
                .contains("what key gives is told by its file alone");
        // 2000 cd from 2 m and from 1 m.
        assertThat(answered("lesson add PLAN --lux-at one hero all 2000 lx"))
                .contains("2000 lx on hero's label in one with key, side on, where 2500 lx were computed");
        // Twice as read again: by as much more than what they give since.
        answered("lesson add PLAN --lux-at one hero key 400 lx");
        assertThat(Files.readString(lessons))
                .contains("lamps: {key: {lamp: spot, gives: 2000 cd}, side: {lamp: spot, gives: 2000 cd}}")
                .contains("lamps: {key: {lamp: spot, gives: 1600 cd}}");
    }
}
