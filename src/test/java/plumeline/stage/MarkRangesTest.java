package plumeline.stage;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// How far free marks are looked for.
final class MarkRangesTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 24 fps}
        things: {tin: {diameter: 76 mm, height: 96 mm}}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
          lenses: {fifty: {focal_length: 50 mm}}
          table: {size: [1400 mm, 700 mm]}
        shots:
          one:
            frames: 24
            camera: {body: main, lens: fifty, at: [free, free, 48 mm], aim: hero}
            place: {hero: {thing: tin, at: [free, free, free]}}
        """;

    @Test
    void kitsTable_boundsWhatStandsOnIt_notTheCamera() {
        Stage stage = stage(PLAN);
        checkRange(stage, "hero.x", -1.4, 1.4);
        checkRange(stage, "hero.y", -0.7, 0.7);
        checkRange(stage, "hero.z", 0, 1.5);
        checkRange(stage, "camera.x", -1.5, 1.5);
        checkRange(stage, "camera.y", -4, -0.05);
    }

    @Test
    void noTable_isATablesReach() {
        Stage stage = stage(PLAN.replace("  table: {size: [1400 mm, 700 mm]}\n", ""));
        checkRange(stage, "hero.x", -1.5, 1.5);
        checkRange(stage, "hero.y", -1.5, 1.5);
    }

    /// No line holds on an edge: 5 mm from both.
    @Test
    void ties_areOnTheirThing_clearOfItsEnds() {
        Stage stage = stage(PLAN.replace("at: [free, free, free]", "at: [free, free, free], tied: [free, 30 mm]"));
        checkRange(stage, "hero.tied_1", 0.005, 0.091);
        checkRange(stage, "hero.tied_2", 0.005, 0.091);
        assertThat(stage.tiesMetres(0, stage.startValues())).containsExactly(0.048, 0.030);
    }

    /// A tank 450 by 300 mm inside whose middle is at (0, 30), glass 8 mm: front glass at y −120 mm, floor at z 8 mm,
    /// water 260 mm deep. Where 2 cm to either side are more than half of it, a quarter.
    @Test
    void nozzle_isOffTheGlass_andALittleOverTheWaterAtMost() {
        Stage stage = stage(tank("[450 mm, 300 mm, 300 mm]"));
        checkRange(stage, "release.x", -0.205, 0.205);
        checkRange(stage, "release.y", -0.100, 0.160);
        checkRange(stage, "release.z", 0.028, 0.318);
        Stage narrow = stage(tank("[450 mm, 60 mm, 300 mm]"));
        checkRange(narrow, "release.y", 0.015, 0.045);
    }

    private static String tank(String inside) {
        return PLAN.replace(
                        "kit:\n",
                        "kit:\n  tanks: {glass: {inside: " + inside + ", pane: 8 mm}}\n"
                                + "  inks: {rose: {density: 1.05 g/ml}}\n")
                .replace(
                        "    frames: 24\n",
                        "    frames: 24\n    tank: {tank: glass, at: [0 mm, 30 mm], water: 260 mm}\n"
                                + "    release: {ink: rose, volume: 3 ml, bore: 4 mm, at: [free, free, free]}\n");
    }

    private static Stage stage(String text) {
        Plan plan = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml")
                .plan()
                .orElseThrow();
        return Stage.of(plan, plan.shots().getFirst());
    }

    private static void checkRange(Stage stage, String path, double lowMetres, double highMetres) {
        StagedMark mark = stage.marks().stream()
                .filter(candidate -> candidate.mark().path().equals(path))
                .findFirst()
                .orElseThrow();
        assertThat(mark.lowSi()).as(path).isEqualTo(lowMetres, within(1e-12));
        assertThat(mark.highSi()).as(path).isEqualTo(highMetres, within(1e-12));
    }
}
