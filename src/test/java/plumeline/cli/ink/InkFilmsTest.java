package plumeline.cli.ink;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.desk.InkFilms;
import plumeline.desk.Outcome;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plume.DyeFilm;
import plumeline.stage.Stage;

/// Which kept film is a shot's.
final class InkFilmsTest extends InkTyped {
    private static Stage stage(String text) {
        Plan plan = Plans.read(text.getBytes(StandardCharsets.UTF_8), "film.yaml")
                .plan()
                .orElseThrow();
        return Stage.of(plan, plan.shots().getFirst());
    }

    /// Its run's number and cells across; empty where there is none.
    private Optional<String> find(String text) throws IOException {
        Stage stage = stage(text);
        Optional<DyeFilm> film = InkFilms.find(folder.resolve("film.ink"), stage, stage.startValues());
        if (film.isPresent()) {
            assertThat(film.get().frame(film.get().frames() - 1).box().cells()).isPositive();
        }
        return film.map(
                found -> found.head().run() + " of " + found.head().grid().nx() + " across");
    }

    @Test
    void keptFilm_isFoundForThePlanItIsOf() throws IOException {
        assertThat(find(PLAN)).isEmpty();
        run();
        assertThat(find(PLAN)).contains("1 of 8 across");
        // The look is none of the flow: another camera or strength keeps the film.
        assertThat(find(PLAN.replace("-600 mm, 60 mm", "-700 mm, 80 mm").replace("100 /cm", "50 /cm")))
                .isPresent();
        assertThat(find(PLAN.replace("volume: 3 ml", "volume: 4 ml"))).isEmpty();
        assertThat(find(PLAN.replace("[0 mm, 20 mm, 8 mm]", "[0 mm, 24 mm, 8 mm]")))
                .isEmpty();
        // A film counts from its release, whenever that is.
        assertThat(find(PLAN.replace("release: {ink: rose", "release: {ink: rose, start: 0.1 s")))
                .isPresent();
    }

    @Test
    void damagedFilm_isPassedOver() throws IOException {
        run();
        Path first = inks().resolve("run-1.dye");
        byte[] bytes = Files.readAllBytes(first);
        bytes[bytes.length / 2] ^= 0x20;
        Files.write(first, bytes);
        assertThat(find(PLAN)).contains("2 of 8 across");
    }

    @Test
    void filmThatLastsAsLongAsTheShot_comesBeforeAFinerOneThatDoesnt() throws IOException {
        run();
        assertThat(all(java.util.List.of(
                        "ink", plan.toString(), "one", "--cells", "12 mm", "--runs", "1", "--until", "0.2 s")))
                .isEqualTo(Outcome.ANSWERED);
        assertThat(find(PLAN)).contains("1 of 8 across");
        assertThat(all(java.util.List.of(
                        "ink", plan.toString(), "one", "--cells", "10 mm", "--runs", "1", "--until", "1.2 s")))
                .isEqualTo(Outcome.ANSWERED);
        assertThat(find(PLAN)).contains("1 of 12 across");
    }
}
