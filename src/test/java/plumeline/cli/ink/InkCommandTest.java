package plumeline.cli.ink;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.desk.Arguments;
import plumeline.desk.Console;
import plumeline.desk.InkFolder;
import plumeline.desk.Outcome;
import plumeline.desk.Refusal;
import plumeline.plume.InkMemory;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// `ink` from a plan to its answer.
final class InkCommandTest extends InkTyped {
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

    /// Coarse cells are told as such; a table in inches stays one, however long its fractions.
    @Test
    void coarseCells_areSaid_andInchesStandInColumns() throws IOException {
        Files.writeString(plan, PLAN.replace("rate: 25 fps}", "rate: 25 fps, papers: in}"));
        assertThat(run()).isEqualTo(Outcome.ANSWERED);
        String said = out.toString(UTF_8);
        assertThat(said).contains("Cells of 9/16 in are for a first look");
        String rows = said.substring(said.indexOf("  front after"), said.indexOf("  tin veiled"));
        int column = rows.indexOf("half-width");
        assertThat(rows.lines().skip(1).filter(row -> !row.endsWith(" -")).toList())
                .isNotEmpty()
                .allSatisfy(row -> assertThat(row.substring(0, column)).endsWith("  "));
        String fine = "ink PLAN one --cells 6~mm --runs 1 --until 0.1~s";
        List<String> words = new ArrayList<>(List.of(fine.split(" ")));
        words.replaceAll(word -> word.equals("PLAN") ? plan.toString() : word.replace('~', ' '));
        assertThat(all(words)).isEqualTo(Outcome.ANSWERED);
        assertThat(out.toString(UTF_8)).doesNotContain("first look");
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

    private void checkTooMany(long megabytes, String cells, String message) {
        List<String> words = List.of(plan.toString(), "one", "--cells", cells);
        var command = new InkCommand(new InkMemory(megabytes << 20));
        assertThatThrownBy(() -> command.run(
                        Arguments.read(command.usage(), words),
                        new Console(new java.io.ByteArrayInputStream(new byte[0]), out, err)))
                .isInstanceOfSatisfying(
                        Refusal.class,
                        refusal -> assertThat(refusal.getMessage() + "\n  " + refusal.attempt())
                                .contains(message));
        assertThat(folder.resolve("film.ink")).doesNotExist();
    }

    /// Water of 120 x 100 x 160 mm: 1.92 million cells of 1 mm.
    @Test
    void moreCellsThanFit_areRefusedWithWhatWouldBeTaken() throws IOException {
        checkTooMany(
                256,
                "1 mm",
                "the water would be cut into 1.92 million cells; at most 0.97 million fit into the 0.3 GB of memory"
                        + " that may be used\n  Give --cells 1.3 mm or larger ones, or more memory");
        checkTooMany(20, "1 mm", "at most 0.00 million fit");
        Files.writeString(
                plan,
                PLAN.replace("[120 mm, 100 mm, 200 mm]", "[3 m, 3 m, 2 m]").replace("160 mm}", "1.5 m}"));
        checkTooMany(1024, "1 mm", "cut into more than 100 million cells");
    }
}
