package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.text.Problem;

/// What a plan may say of lamps, cards and flags, and how it is refused.
final class LampPlanTest {
    private static List<Problem> problems(String lamp, String placed) {
        String text = Texts.SMALL.replace("strip: {panel: [300 mm, 1200 mm]}", "strip: {" + lamp + "}")
                + "    lights: {key: {light: strip, at: [0 mm, -900 mm, 500 mm]" + placed + "}}\n";
        return Texts.read(text).problems();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "panel: [300 mm, 1200 mm], hot_centre: 1 stop, grid: 40 deg, window: [100 mm, 1200 mm], field: bright|",
                "disc: 300 mm, hot_centre: 1.5 stops, dims: [[0 %, 0 %], [40 %, 10 %], [100 %, 100 %]]|",
                "card: [600 mm, 400 mm], reflects: 80 % measured|, tilt: -90 deg",
                "flag: [300 mm, 450 mm]|, turn: 40 deg",
                "panel: [300 mm, 1200 mm], file: lamp.ies, gives: 900 lx at 1 m|, grid: 30 deg, level: 40 %",
                "beam: 40 deg, gives: 900 cd|, loss: 1 stop",
                "tube: [600 mm, 30 mm], primaries: typical, gives_with: set, changes_in: 1.5 s|, hue: -20 deg",
            })
    void lamps_mayBe(String lamp, String placed) {
        assertThat(problems(lamp, placed == null ? "" : placed)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "flag: [300 mm, 450 mm], gives: 900 cd||kit.lights.strip.gives|P-LIGHT-03|900 cd on a flag",
                "card: [300 mm, 450 mm], power: 40 W||kit.lights.strip.power|P-LIGHT-03|40 W on a card",
                "card: [300 mm, 450 mm]|, level: 50 %|shots.one.lights.key.level|P-LIGHT-03|50 % on a card",
                "flag: [300 mm, 450 mm]|, hue: 40 deg|shots.one.lights.key.hue|P-LIGHT-03|40 deg on a flag",
                "tube: [600 mm, 30 mm]|, grid: 40 deg|shots.one.lights.key.grid|P-LIGHT-03|40 deg on a tube",
                "tube: [600 mm, 30 mm], hot_centre: 2 stops||kit.lights.strip.hot_centre|P-LIGHT-03|2 stops on a tube",
                "panel: [300 mm, 1200 mm], reflects: 50 %||kit.lights.strip.reflects|P-LIGHT-03|50 % on a panel",
                "panel: [300 mm, 1200 mm], window: [400 mm, 100 mm]||kit.lights.strip.window[1]|P-LIGHT-04|400 mm",
                "panel: [300 mm, 1200 mm], field: bright||kit.lights.strip.field|P-LIGHT-04|a field without a window",
                "disc: 300 mm, dims: [[0 %, 0 %], [50 %, 60 %], [100 %, 40 %]]||kit.lights.strip.dims[3]|P-LIGHT-02"
                        + "|40 %",
                "disc: 300 mm, dims: [[50 %, 0 %], [40 %, 60 %]]||kit.lights.strip.dims[2]|P-CURVE-01"
                        + "|at 40 %, before the pair above it",
                "primaries: [{name: a, x: 0.7, y: 0.4, lumens: 9 lm}, {name: b, x: 0.2, y: 0.1, lumens: 9 lm}]||"
                        + "kit.lights.strip.primaries[1]|P-LIGHT-05|x 0.7 and y 0.4",
                "primaries: [{name: a, x: 0.7, y: 1e-7, lumens: 9 lm}, {name: b, x: 0.2, y: 0.1, lumens: 9 lm}]||"
                        + "kit.lights.strip.primaries[1]|P-LIGHT-05|x 0.7 and y 1e-7",
                "primaries: [{name: a, x: 0.7, y: 0.2, lumens: 20000000 lm}, {name: b, x: 0.2, y: 0.1, lumens: 9 lm}]||"
                        + "kit.lights.strip.primaries[1].lumens|P-LIGHT-05|20000000 lm",
                "primaries: typical|, hue: complement|shots.one.lights.key.hue|P-LIGHT-06"
                        + "|the complement of tin, which has no hue",
                "primaries: typical|, hue: complementary|shots.one.lights.key.hue|P-FORM-01|complementary",
                "point: yes, gives_with: set||kit.lights.strip|P-KEY-03|given gives_with without primaries",
                "card: [300 mm, 450 mm], changes_in: 2 s||kit.lights.strip.changes_in|P-LIGHT-03|2 s on a card",
                "panel: [300 mm, 1200 mm], white: 500 K||kit.lights.strip.white|P-RANGE-01|500 K",
                "panel: [300 mm, 1200 mm], grid: 170 deg||kit.lights.strip.grid|P-RANGE-01|170 deg",
            })
    void slips_areSaid(String lamp, String placed, String field, String code, String given) {
        List<Problem> problems = problems(lamp, placed == null ? "" : placed);
        assertThat(problems).hasSize(1);
        assertThat(problems.getFirst().field()).isEqualTo(field);
        assertThat(problems.getFirst().code()).isEqualTo(code);
        assertThat(problems.getFirst().given()).isEqualTo(given);
    }

    /// What a lamp's file holds changes what the plan is, and nothing of its text.
    @Test
    void files_arePartOfThePlan() {
        Plan plan = Texts.plan(Texts.SMALL);
        Plan with = Plans.withFiles(plan, Map.of("strip", "one"));
        assertThat(with.source().text()).isEqualTo(plan.source().text());
        assertThat(with.source().measured()).isNotEqualTo(plan.source().measured());
        assertThat(with.kit().lights().getFirst().file()).contains("one");
        assertThat(Plans.withFiles(plan, Map.of())).isSameAs(plan);
    }
}
