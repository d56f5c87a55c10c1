package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import plumeline.jobs.Jobs;
import plumeline.jobs.Progress;
import plumeline.jobs.Result;
import plumeline.jobs.Stop;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plume.InkCourse;
import plumeline.plume.InkRun;
import plumeline.plume.InkTries;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// `ink` from a plan to its answer and its files, on a tank of a few hundred cells.
final class InkCommandTest {
    static final String PLAN = """
        plumeline: 1
        film: {title: Test, rate: 25 fps}
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
            wants:
              - {ink_reaches: tin, part: top, after: 0.6 s, within: 0.5 s}
              - {clear_until: tin, time: 0.01 s}
              - {veiled_by: tin, part: top, time: 1 s}
        """;

    @TempDir
    private Path folder;

    private Path plan = Path.of("");
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @BeforeEach
    void writePlan() throws IOException {
        plan = folder.resolve("film.yaml");
        Files.writeString(plan, PLAN);
    }

    private Outcome run(String... more) {
        return run(2, "1.2 s", more);
    }

    private Outcome run(int runs, String until, String... more) {
        List<String> words = new ArrayList<>(List.of("ink", plan.toString(), "one", "--cells", "15 mm"));
        words.addAll(List.of("--runs", "" + runs, "--until", until));
        words.addAll(List.of(more));
        return all(words);
    }

    private Outcome all(List<String> words) {
        out.reset();
        err.reset();
        return Main.run(words, console());
    }

    private Console console() {
        return new Console(new ByteArrayInputStream(new byte[0]), out, err);
    }

    private Path inks() throws IOException {
        try (var folders = Files.list(folder.resolve("film.ink"))) {
            return folders.findFirst().orElseThrow();
        }
    }

    private void checkRefused(String start, List<String> words) {
        assertThat(all(words)).isEqualTo(Outcome.REFUSED);
        assertThat(err.toString(UTF_8)).startsWith("plumeline: " + start);
        assertThat(out.size()).isZero();
    }

    @Test
    void run_saysWhenInkIsWhereAndKeepsItsFiles() throws IOException {
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        String said = out.toString(UTF_8);
        assertThat(said)
                .startsWith("one: ink, 2 tries of 1.2 s from the release\n")
                .contains("tin's top", "tin's middle", "tin's base", "the floor", "tin veiled")
                .contains("of 2 tries: ink_reaches tin part top after 0.6 s within 0.5 s\n")
                .contains("met in 2 of 2 tries: clear_until tin time 0.01 s\n")
                .contains("of 2 tries: veiled_by tin part top time 1 s\n")
                .contains("Files    " + inks());
        assertThat(inks().getFileName().toString()).startsWith("one-");
        assertThat(inks().resolve("run-1.dye")).exists();
        assertThat(inks().resolve("run-2.dye")).exists();
        assertThat(inks().resolve("run-1.dye.part")).doesNotExist();
        assertThat(inks().resolve("run-1.stop")).doesNotExist();
        assertThat(InkFolder.records(folder.resolve("film.ink")))
                .singleElement()
                .satisfies(record -> assertThat(record.runs()).hasSize(2));
    }

    /// Tries that nobody gave an end differ in length: the first line says from what to what, and the front is told as
    /// far as all of them go. Of fewer tries a half-width would jump where one ends.
    @Test
    void triesOfTheirOwnLengths_areToldAsFarAsAllGo() throws IOException {
        Files.writeString(plan, PLAN.replace("-20 mm, 150 mm", "-30 mm, 150 mm"));
        List<String> words = List.of("ink", plan.toString(), "one", "--cells", "10 mm", "--runs", "4");
        assertThat(all(words)).isEqualTo(Outcome.ANSWERED);
        plumeline.plume.InkRecord record =
                InkFolder.records(folder.resolve("film.ink")).getFirst();
        double shortest = (record.shortestFrames() - 1) / 50.0;
        double longest = (record.longestFrames() - 1) / 50.0;
        assertThat(longest).isGreaterThan(shortest + 0.01);
        String said = out.toString(UTF_8);
        var title = java.util.regex.Pattern.compile(
                        "one: ink, 4 tries of ([0-9.]+) s to ([0-9.]+) s from the release\n")
                .matcher(said);
        assertThat(title.lookingAt()).isTrue();
        assertThat(Double.parseDouble(title.group(1))).isBetween(shortest - 0.1, shortest + 1e-9);
        assertThat(Double.parseDouble(title.group(2))).isBetween(longest - 0.1, longest + 1e-9);
        String rows = said.substring(said.indexOf("half-width\n") + 11, said.indexOf("  tin veiled"));
        assertThat(rows.lines().toList())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(Double.parseDouble(row.strip().split(" ")[0]))
                        .isLessThanOrEqualTo(shortest + 1e-9));
        List<String> json = new ArrayList<>(words);
        json.add("--json");
        assertThat(all(json)).isEqualTo(Outcome.ANSWERED);
        JsonNode front = new ObjectMapper().readTree(out.toString(UTF_8)).get("front");
        for (String series : List.of("depth", "half_width")) {
            assertThat(front.get(series).get("value")).hasSize(record.shortestFrames());
        }
    }

    /// The tin's top is 68 mm up, the nozzle 40 mm: what lies over it no front comes down to.
    @Test
    void whatTheNozzleIsUnder_hasNoFront() throws IOException {
        Files.writeString(plan, PLAN.replace("[0 mm, -20 mm, 150 mm]", "[0 mm, -25 mm, 40 mm]"));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8))
                .containsPattern("tin's top +- +the nozzle is under it\n")
                .containsPattern("tin's base +[0-9]")
                .doesNotContain("ink_reaches tin part top");
        assertThat(run("--json")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).contains("\"base\":{").doesNotContain("\"top\":{");
    }

    @Test
    void run_again_takesWhatIsThere() throws IOException {
        run();
        String first = out.toString(UTF_8);
        byte[] film = Files.readAllBytes(inks().resolve("run-1.dye"));
        assertThat(run("--threads", "3")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).isEqualTo("plumeline: computed before, with the same inputs\n");
        assertThat(out.toString(UTF_8)).isEqualTo(first);
        assertThat(run("--fresh", "--threads", "1")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("plumeline: 2 tries into ");
        assertThat(out.toString(UTF_8)).isEqualTo(first);
        assertThat(Files.readAllBytes(inks().resolve("run-1.dye"))).isEqualTo(film);
    }

    @Test
    void moreRuns_joinThoseThatAreThere() throws IOException {
        run(1, "1.2 s");
        byte[] film = Files.readAllBytes(inks().resolve("run-1.dye"));
        run();
        assertThat(err.toString(UTF_8)).contains("plumeline: 1 try into ", "; 1 more computed before");
        assertThat(Files.readAllBytes(inks().resolve("run-1.dye"))).isEqualTo(film);
    }

    @Test
    void fewerRuns_areTheFirstOfThoseThatAreThere() throws IOException {
        run();
        run(1, "1.2 s");
        assertThat(out.toString(UTF_8)).startsWith("one: ink, 1 try of ");
        assertThat(err.toString(UTF_8)).isEqualTo("plumeline: computed before, with the same inputs\n");
        assertThat(InkFolder.records(folder.resolve("film.ink")))
                .singleElement()
                .satisfies(record -> assertThat(record.runs()).hasSize(2));
    }

    @Test
    void strengthOrCameraChanged_looksAgainAtTheSameFilms() throws IOException {
        run();
        Files.writeString(plan, PLAN.replace("strength: 100 /cm", "strength: 300 /cm"));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).doesNotContain("tries into", "computed before");
        Files.writeString(plan, PLAN.replace("-600 mm", "-550 mm"));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).doesNotContain("tries into", "computed before");
    }

    @Test
    void nozzleMoved_isAnotherInk() throws IOException {
        run();
        Files.writeString(plan, PLAN.replace("[0 mm, -20 mm, 150 mm]", "[0 mm, -21 mm, 150 mm]"));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("plumeline: 2 tries into ");
        assertThat(InkFolder.records(folder.resolve("film.ink"))).hasSize(2);
    }

    @Test
    void strengthUntold_veilIsAGuessAndItsWantsHaveNoOdds() throws IOException {
        Files.writeString(plan, PLAN.replace(", strength: 100 /cm", ""));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8))
                .contains("tin veiled (a guess)", "Assumed  an ink strength of 100 /cm")
                .contains("ink_reaches")
                .doesNotContain("veiled_by", "clear_until");
    }

    /// What a file manager leaves, or a record that was damaged, is passed over.
    @Test
    void foreignAndDamagedFiles_stopNoCommand() throws IOException {
        run();
        Path ofPlan = folder.resolve("film.ink");
        Files.writeString(ofPlan.resolve("note.txt"), "mind the seal");
        Path record;
        try (var files = Files.walk(ofPlan)) {
            record = files.filter(file -> file.endsWith("record.ink"))
                    .findFirst()
                    .orElseThrow();
        }
        byte[] whole = Files.readAllBytes(record);
        for (int at = 0; at < whole.length; at += Math.max(1, whole.length / 60)) {
            byte[] damaged = whole.clone();
            damaged[at] ^= 0x55;
            assertThat(plumeline.plume.RecordBytes.read(damaged)).isEmpty();
        }
        whole[whole.length / 2] ^= 0x55;
        Files.write(record, whole);
        assertThat(all(List.of("solve", plan.toString()))).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).doesNotContain("In the simulation");
    }

    private static void damage(Path file, double atShare) throws IOException {
        byte[] bytes = Files.readAllBytes(file);
        bytes[(int) (atShare * (bytes.length - 1))] ^= 0x20;
        Files.write(file, bytes);
    }

    /// Damaged in its head, its frames or its end, cut short or emptied: that try is run again, the other one isn't,
    /// and what is said in the end is the same.
    @Test
    void damagedFilm_isNoticedAndThatTryRunAgain() throws IOException {
        run();
        String first = out.toString(UTF_8);
        Path film = inks().resolve("run-2.dye");
        byte[] whole = Files.readAllBytes(film);
        for (double at : new double[] {0.003, 0.4, 0.7, 1}) {
            damage(film, at);
            checkRunAgain(film, first);
            assertThat(Files.readAllBytes(film)).isEqualTo(whole);
        }
        for (int length : new int[] {0, 20, whole.length / 2, whole.length - 1}) {
            Files.write(film, java.util.Arrays.copyOf(whole, length));
            checkRunAgain(film, first);
        }
        Files.writeString(film, "mind the seal");
        checkRunAgain(film, first);
    }

    private void checkRunAgain(Path film, String answer) {
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .startsWith("plumeline: " + film + " is damaged; try 2 is run again\nplumeline: 1 try into ")
                .contains("; 1 more computed before");
        assertThat(out.toString(UTF_8)).isEqualTo(answer);
    }

    @Test
    void damagedRecord_isMadeAgainOfTheFilms() throws IOException {
        run();
        String first = out.toString(UTF_8);
        Path record = inks().resolve("record.ink");
        damage(record, 0.5);
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8))
                .startsWith("plumeline: " + record + " is damaged; the films are looked at again\n")
                .doesNotContain("into");
        assertThat(out.toString(UTF_8)).isEqualTo(first);
    }

    /// A try that was put down and is damaged since, in its film or in its state, begins anew.
    @Test
    void damagedBeginning_beginsAnew() throws IOException, Refusal {
        InkRun.Task task = task();
        try (InkFolder parts = InkFolder.open(folder.resolve("parts"), "one", "", task.key());
                InkFolder whole = InkFolder.open(folder.resolve("whole"), "one", "", task.key())) {
            Jobs.run(List.of(new InkJob(task, whole, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
            for (String name : List.of("run-1.stop", "run-1.dye.part")) {
                var stop = new Stop();
                Progress stopping = share -> {
                    if (share > 0.4) {
                        stop.ask();
                    }
                };
                Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), stopping, stop);
                damage(parts.path().resolve(name), 0.5);
                err.reset();
                Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
                assertThat(err.toString(UTF_8))
                        .as(name)
                        .isEqualTo("plumeline: what was kept of try 1 is damaged; it begins anew\n");
                assertThat(Files.readAllBytes(parts.film(1))).isEqualTo(Files.readAllBytes(whole.film(1)));
                Files.delete(parts.film(1));
            }
        }
    }

    /// Tries that were left before a want's time say nothing of it.
    @Test
    void triesLeftTooEarly_haveNoOdds() {
        assertThat(run(2, "0.3 s")).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).doesNotContain("ink_reaches tin").doesNotContain("veiled_by tin");
    }

    /// A want on what is veiled reads what was simulated of these very marks, and the law where something was moved.
    @Test
    void solve_readsWhatWasRun_andOnlyWhereNothingMoved() throws IOException {
        List<String> solve = List.of("solve", plan.toString());
        all(solve);
        assertThat(out.toString(UTF_8)).doesNotContain("In the simulation");
        run();
        all(solve);
        assertThat(out.toString(UTF_8)).contains("veiled_by tin").contains("In the simulation tin's top isn't veiled");
        Files.writeString(plan, PLAN.replace("[0 mm, -600 mm, 60 mm]", "[0 mm, -610 mm, 60 mm]"));
        all(solve);
        assertThat(out.toString(UTF_8)).doesNotContain("In the simulation");
        Files.writeString(plan, PLAN.replace(", strength: 100 /cm", ""));
        run();
        all(solve);
        assertThat(out.toString(UTF_8)).doesNotContain("In the simulation");
    }

    @Test
    void json_saysTheSame() {
        assertThat(run("--json")).isEqualTo(Outcome.ANSWERED);
        JsonNode answer = new ObjectMapper().readTree(out.toString(UTF_8));
        assertThat(answer.get("shot").asString()).isEqualTo("one");
        assertThat(answer.get("runs").asInt()).isEqualTo(2);
        // 1.2 s at 50 frames a second, and the one at the start, when there is no ink.
        JsonNode depth = answer.get("front").get("depth");
        assertThat(depth.get("value")).hasSize(61);
        assertThat(depth.get("value").get(0).isNull()).isTrue();
        assertThat(depth.get("value").get(60).asDouble())
                .isBetween(
                        depth.get("low").get(60).asDouble(),
                        depth.get("high").get(60).asDouble());
        JsonNode tin = answer.get("things").get(0);
        assertThat(tin.get("thing").asString()).isEqualTo("tin");
        assertThat(tin.get("top").get("unit").asString()).isEqualTo("s");
        assertThat(tin.get("top").get("runs").isEmpty()).isFalse();
        assertThat(tin.get("veiled")).hasSize(7);
        assertThat(answer.get("wants").get(1).get("id").asString()).isEqualTo("one.2");
        assertThat(answer.get("wants").get(1).get("met").asInt()).isEqualTo(2);
    }

    @Test
    void thingTooThinForItsCells_isTold() throws IOException {
        List<String> words =
                List.of("ink", plan.toString(), "one", "--cells", "8 mm", "--runs", "1", "--until", "0.1 s");
        assertThat(all(words)).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).doesNotContain("of its size");
        Files.writeString(plan, PLAN.replace("{diameter: 40 mm,", "{width: 40 mm, depth: 2 mm,"));
        assertThat(all(words)).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8))
                .contains("Assumed  tin as cells of 8.0 mm, which come to ")
                .contains(" % of its size; finer --cells show");
    }

    @Test
    void rows_sayTheTimeTheyAreOf() {
        run(1, "1.8 s");
        assertThat(out.toString(UTF_8)).contains("\n  0.25 s ", "\n  1.25 s ", "\n  1.50 s ", "\n  1.75 s ");
        run(1, "1.2 s");
        assertThat(out.toString(UTF_8)).contains("\n  0.2 s ", "\n  1.2 s ").doesNotContain("0.20 s ");
    }

    /// One try is enough for an interval: takes differ whatever one try does.
    @Test
    void oneTry_hasItsIntervalsToo() {
        run(1, "1.2 s", "--json");
        JsonNode depth =
                new ObjectMapper().readTree(out.toString(UTF_8)).get("front").get("depth");
        double middle = depth.get("value").get(60).asDouble();
        assertThat(depth.get("low").get(60).asDouble()).isLessThan(middle);
        assertThat(depth.get("high").get(60).asDouble()).isGreaterThan(middle);
    }

    @Test
    void json_carriesAnyTitle() throws IOException {
        String title = "\"Grüne\" Fläsch\\chen";
        Files.writeString(plan, PLAN.replace("title: Test", "title: '" + title + "'"));
        run("--json");
        assertThat(new ObjectMapper().readTree(out.toString(UTF_8)).get("film").asString())
                .isEqualTo(title);
    }

    @Test
    void whatIsMissing_isRefusedByItsField() throws IOException {
        List<String> words = List.of("ink", plan.toString(), "one");
        checkRefused("the plan has no shot two; it has one", List.of("ink", plan.toString(), "two"));
        Files.writeString(plan, PLAN.replace("density: 1.06 g/ml, ", ""));
        checkRefused("kit.inks.rose.density is missing\n  Weigh", words);
        Files.writeString(plan, PLAN.replaceAll("(?m)^ *tank: .tank.*$", ""));
        checkRefused("shots.one.tank is missing", words);
        Files.writeString(plan, PLAN.replaceAll("(?m)^ *release: .*$", ""));
        checkRefused("shots.one.release is missing", words);
        assertThat(folder.resolve("film.ink")).doesNotExist();
    }

    @Test
    void options_outOfRange_areRefused() {
        String name = plan.toString();
        checkRefused("--cells is 15; must be 1 mm to 20 mm", List.of("ink", name, "one", "--cells", "15"));
        checkRefused("--cells is 30 mm; must be", List.of("ink", name, "one", "--cells", "30 mm"));
        checkRefused("--runs is 0; must be a whole number from 1 to 50", List.of("ink", name, "one", "--runs", "0"));
        checkRefused("--until is -1 s; must be", List.of("ink", name, "one", "--until", "-1 s"));
        checkRefused("--threads is x; must be", List.of("ink", name, "one", "--threads", "x"));
    }

    /// What is written with a ± is drawn for each try and told; the same seed draws the same.
    @Test
    void spreads_enterTheTries() throws IOException {
        run();
        String asWritten = out.toString(UTF_8);
        assertThat(asWritten).contains("set exactly as written").doesNotContain("own draw");
        Files.writeString(plan, PLAN.replace("volume: 3 ml", "volume: 3 ml ± 0.5 ml"));
        run();
        assertThat(err.toString(UTF_8)).contains("plumeline: 2 tries into ");
        assertThat(out.toString(UTF_8))
                .contains(
                        "set as written, within its ±",
                        "Each try has its own draw within the ± of shots.one.release.volume.");
        run("--json");
        JsonNode drawn = new ObjectMapper().readTree(out.toString(UTF_8)).get("drawn");
        assertThat(drawn).hasSize(1);
        assertThat(drawn.get(0).get("of").asString()).isEqualTo("shots.one.release.volume");
        assertThat(drawn.get(0).get("unit").asString()).isEqualTo("ml");
        assertThat(drawn.get(0).get("spread").asDouble()).isEqualTo(0.5);
        double one = drawn.get(0).get("runs").get(0).asDouble();
        double two = drawn.get(0).get("runs").get(1).asDouble();
        assertThat(one).isBetween(2.5, 3.5).isNotEqualTo(two);
        assertThat(two).isBetween(2.5, 3.5);
        String first = out.toString(UTF_8);
        run("--json", "--fresh", "--threads", "3");
        assertThat(out.toString(UTF_8)).isEqualTo(first);
    }

    /// With these passes; the last want is of the pass faint alone.
    private void writePasses(String passes) throws IOException {
        Files.writeString(
                plan,
                PLAN.replace("    wants:", "    passes: {" + passes + "}\n    wants:")
                        .replace("part: top, time: 1 s}", "part: top, time: 1 s, pass: faint}")
                        .replace("inks: {", "inks: {faint: {density: 1.02 g/ml, strength: 100 /cm}, "));
        assertThat(Files.readString(plan)).contains("passes:", "pass: faint", "faint: {density");
    }

    @Test
    void passesThatDiffer_mustBeChosenFrom() throws IOException {
        writePasses("dark: {}, faint: {release.ink: faint}");
        List<String> words =
                List.of("ink", plan.toString(), "one", "--cells", "15 mm", "--runs", "1", "--until", "1.2 s");
        checkRefused(
                "passes of the shot one differ in their ink or how it is seen: dark, faint\n  Name one of them, such as"
                        + " --pass dark.",
                words);
        assertThat(run("--pass", "dark")).isEqualTo(Outcome.ANSWERED);
        String dark = out.toString(UTF_8);
        assertThat(dark)
                .startsWith("one (dark): ink, ")
                .contains("clear_until tin")
                .doesNotContain("veiled_by tin");
        assertThat(run("--pass", "faint", "--json")).isEqualTo(Outcome.ANSWERED);
        assertThat(err.toString(UTF_8)).contains("2 tries into");
        JsonNode faint = new ObjectMapper().readTree(out.toString(UTF_8));
        assertThat(faint.get("passes").get(0).asString()).isEqualTo("faint");
        assertThat(faint.get("wants")).hasSize(3);
        assertThat(InkFolder.records(folder.resolve("film.ink"))).hasSize(2);
        all(List.of("solve", plan.toString()));
        assertThat(out.toString(UTF_8)).contains("In the simulation");
        checkRefused(
                "the shot one has no pass fain; it has dark, faint\n  Try --pass faint.",
                List.of("ink", plan.toString(), "one", "--pass", "fain"));
    }

    @Test
    void passesThatAreAlike_needNoChoice() throws IOException {
        writePasses("warm: {}, faint: {camera.f_number: 11}");
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).startsWith("one (warm, faint): ink, ").contains("of 2 tries: veiled_by tin");
        assertThat(run("--pass", "faint")).isEqualTo(Outcome.ANSWERED);
        // The same films, looked at for a record of its own.
        assertThat(err.toString(UTF_8)).doesNotContain("into");
        assertThat(out.toString(UTF_8)).startsWith("one (faint): ink, ").contains("record-faint.ink for wants");
    }

    @Test
    void onePassWithInk_isTakenAndNamed() throws IOException {
        writePasses("dry: {release: {thing: tin}}, faint: {}");
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).startsWith("one (faint): ink, ");
        checkRefused(
                "pass dry: shots.one.release lets no ink go", List.of("ink", plan.toString(), "one", "--pass", "dry"));
    }

    /// A pass that moves the nozzle is followed from where it puts it.
    @Test
    void passThatMovesTheNozzle_isFollowedFromThere() throws IOException {
        writePasses("near: {}, faint: {'release.at.z': 120 mm}");
        run("--pass", "near");
        List<String> near = out.toString(UTF_8).lines().toList();
        run("--pass", "faint");
        assertThat(err.toString(UTF_8)).contains("2 tries into");
        List<String> lower = out.toString(UTF_8).lines().toList();
        assertThat(lower.get(1)).isEqualTo(near.get(1));
        // Of the tin's top: let go 82 mm above it, and 52 mm.
        assertThat(lower.get(2)).startsWith("  tin's top  ").isNotEqualTo(near.get(2));
    }

    @Test
    void passWhereThereIsNone_isRefused() {
        checkRefused(
                "the shot one has no passes\n  Leave --pass out.",
                List.of("ink", plan.toString(), "one", "--pass", "dark"));
    }

    private static InkRun.Task task() throws Refusal {
        Plan read = Plans.read(PLAN.getBytes(UTF_8), "p.yaml").plan().orElseThrow();
        InkChoice choice = InkChoice.of(read, read.shots().getFirst(), Optional.empty());
        var course = new InkCourse(0.015, 1, new InkCourse.Until.Time(0.6));
        return new InkTries(choice.stage(), choice.valuesSi(), choice.ink(), course).task(1);
    }

    @Test
    void stopped_goesOnToTheSameBytes() throws IOException, Refusal {
        InkRun.Task task = task();
        try (InkFolder whole = InkFolder.open(folder.resolve("whole"), "one", "", task.key());
                InkFolder parts = InkFolder.open(folder.resolve("parts"), "one", "", task.key())) {
            var unstopped =
                    Jobs.run(List.of(new InkJob(task, whole, 1, console())), Jobs.Threads.each(1), _ -> {}, new Stop());
            assertThat(unstopped).isEqualTo(new Result.Whole<>(List.of(31)));
            int rounds = 0;
            boolean done = false;
            while (!done) {
                var stop = new Stop();
                double from = rounds * 0.3;
                Progress stopping = share -> {
                    if (share > from + 0.3 && share < 1) {
                        stop.ask();
                    }
                };
                done = Jobs.run(List.of(new InkJob(task, parts, 1, console())), Jobs.Threads.each(1), stopping, stop)
                        instanceof Result.Whole<?>;
                assertThat(parts.part(1).toFile().exists()).isEqualTo(!done);
                assertThat(parts.film(1).toFile().exists()).isEqualTo(done);
                rounds++;
            }
            assertThat(rounds).isGreaterThan(2);
            assertThat(Files.readAllBytes(parts.film(1))).isEqualTo(Files.readAllBytes(whole.film(1)));
        }
    }

    @Test
    void folderInUse_isRefused() throws IOException, Refusal {
        run();
        String name = inks().getFileName().toString();
        Path lock = inks().resolve(".lock");
        try (var channel = java.nio.channels.FileChannel.open(lock, java.nio.file.StandardOpenOption.WRITE);
                var held = channel.lock()) {
            assertThat(held.isValid()).as(name).isTrue();
            assertThat(run()).isEqualTo(Outcome.REFUSED);
            assertThat(err.toString(UTF_8)).contains("this ink is being run already");
        }
    }
}
