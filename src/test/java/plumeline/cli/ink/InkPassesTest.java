package plumeline.cli.ink;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.desk.InkFolder;
import plumeline.desk.Outcome;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.ObjectMapper;

/// `ink` of a shot with passes.
final class InkPassesTest extends InkTyped {
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
}
