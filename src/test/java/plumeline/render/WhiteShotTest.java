package plumeline.render;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.colour.Rgb;
import plumeline.plan.Plan;
import plumeline.stage.Stage;
import plumeline.trace.Plate;

/// Shots without lamps in which all things throw back all light: each pixel is as bright as what is round them.
final class WhiteShotTest {
    private static final String PLAN = """
        plumeline: 1
        film: {rate: 25 fps}
        things:
          bottle: {diameter: 60 mm, height: 140 mm, body: clear, wall: {thickness: 3 mm},
            contents: {index: 1.333, volume: 200 ml},
            label: {width: 50 mm, height: 40 mm, bottom: 30 mm, reflects: 100 %}}
          tin: {profile: [[0 mm, 40 mm], [30 mm, 40 mm], [30 mm, 15 mm],
            [60 mm, 15 mm], [60 mm, 40 mm], [90 mm, 40 mm]], finish: satin, reflects: 100 %,
            label: {width: 40 mm, height: 20 mm, bottom: 5 mm, reflects: 100 %}}
          box: {width: 60 mm, depth: 50 mm, height: 80 mm, finish: gloss, reflects: 100 %}
        kit:
          cameras: {main: {sensor: {width: 36 mm, height: 24 mm, across: 3600 px}, iso: {base: 800}}}
          lenses: {fifty: {focal_length: 50 mm}}
          table: {reflects: 100 %, size: [3 m, 3 m]}
          tanks: {glass: {inside: [160 mm, 140 mm, 200 mm], pane: 8 mm, temperature: 20 degC}}
        shots:
          dry:
            camera: {body: main, lens: fifty, at: [0 mm, -700 mm, 200 mm], aim: tin, f_number: 8}
            place:
              hero: {thing: bottle, at: [-120 mm, 0 mm], beads: {cover: 20 %, size: [1 mm, 3 mm]}}
              tin: {thing: tin, at: [0 mm, 0 mm]}
              box: {thing: box, at: [75 mm, -10 mm], beads: {cover: 20 %, size: [1 mm, 3 mm]}}
            sweep: {behind: 300 mm, radius: 200 mm, width: 2 m, height: 1 m, reflects: 100 %}
            frames: 10
          wet:
            camera: {body: main, lens: fifty, at: [0 mm, -700 mm, 200 mm], aim: tin, f_number: 8}
            tank: {tank: glass, at: [0 mm, 0 mm], water: 160 mm}
            place:
              tin: {thing: tin, at: [-30 mm, 0 mm, 8 mm]}
              box: {thing: box, at: [45 mm, 30 mm, 8 mm]}
            sweep: {behind: 300 mm, radius: 200 mm, width: 2 m, height: 1 m, reflects: 100 %}
            frames: 10
        """;

    @ParameterizedTest
    @CsvSource({"dry, 1", "dry, 8", "wet, 1", "wet, 8"})
    void whiteThings_areAsBrightAsWhatIsRoundThem(String shot, int samples) throws IOException {
        Plan plan = SetShots.plan(PLAN);
        Stage stage = Stage.of(plan, plan.findShot(shot).orElseThrow());
        ShotSet set = ShotSet.of(plan, stage, stage.startValues(), Props.NONE);
        Plate plate = SetShots.exposed(set, 90, 60, samples, 1);
        Rgb round = set.worldAt(0).surround();
        assertThat(round.green()).isPositive();
        double sum = 0;
        int wrong = 0;
        for (int i = 0; i < 90 * 60; i++) {
            double share = plate.light(i % 90, i / 90, 1) / round.green();
            sum += share;
            wrong += Math.abs(share - 1) > 0.01 ? 1 : 0;
            assertThat(share).as("%d %d", i % 90, i / 90).isCloseTo(1, within(0.06));
        }
        assertThat(sum / 90 / 60).isCloseTo(1, within(0.001));
        // Rays that are given up after thirty surfaces along a pane.
        assertThat(wrong).isLessThanOrEqualTo(5);
    }
}
