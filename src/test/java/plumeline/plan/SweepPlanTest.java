package plumeline.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import plumeline.text.Problem;

/// What a plan may say of how things, table and sweep look in pictures, and how it is refused.
final class SweepPlanTest {
    private static List<Problem> problems(String thing, String table, String placed, String shot) {
        String text = Texts.SMALL
                        .replace("height: 96 mm}", "height: 96 mm" + said(thing) + "}")
                        .replace("kit:\n", "kit:\n  table: {carries: 50 kg" + said(table) + "}\n")
                        .replace("at: [0 mm, 0 mm]}}", "at: [0 mm, 0 mm]" + said(placed) + "}}")
                + (shot == null ? "" : "    " + shot + "\n");
        return Texts.read(text).problems();
    }

    private static String said(String keys) {
        return keys == null ? "" : ", " + keys;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "label: {width: 30 mm, height: 50 mm, art: art/rose.png}|||",
                "label: {width: 30 mm, height: 50 mm}, variants: {red: {label: {art: red.svg}}}|||",
                "|reflects: 20 %, colour: '#404040', finish: satin||",
                "||beads: {cover: 20 %, size: [0.5 mm, 3 mm]}|",
                "|||sweep: {behind: 500 mm}",
                "|||sweep: {behind: 500 mm, radius: 200 mm, width: 2 m, height: 1.2 m, reflects: 80 %, "
                        + "colour: '#ffffff', gradient: [100 %, 40 %]}",
            })
    void looks_mayBe(String thing, String table, String placed, String shot) {
        assertThat(problems(thing, table, placed, shot)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "label: {width: 30 mm, height: 50 mm, art: /tmp/a.png}||||things.tin.label.art|P-CLIP-02|/tmp/a.png",
                "label: {width: 30 mm, height: 50 mm}, variants: {red: {label: {art: 'C:/a.png'}}}||||"
                        + "things.tin.variants.red.label.art|P-CLIP-02|C:/a.png",
                "|finish: shiny|||kit.table.finish|P-WORD-01|shiny",
                "||beads: {cover: 80 %, size: [1 mm, 2 mm]}||shots.one.place.hero.beads.cover|P-RANGE-01|80 %",
                "||beads: {cover: 20 %, size: [3 mm, 1 mm]}||shots.one.place.hero.beads.size[2]|P-BEADS-01|1 mm",
                "||beads: {cover: 20 %}||shots.one.place.hero.beads.size|P-KEY-02|missing",
                "|||sweep: {radius: 200 mm}|shots.one.sweep.behind|P-KEY-02|missing",
                "|||sweep: {behind: 500 mm, radius: 300 mm, height: 300 mm}|shots.one.sweep.height|P-SWEEP-01|300 mm",
                "|||sweep: {behind: 500 mm, colour: white}|shots.one.sweep.colour|P-FORM-01|white",
            })
    void slips_areSaid(
            String thing, String table, String placed, String shot, String field, String code, String given) {
        List<Problem> problems = problems(thing, table, placed, shot);
        assertThat(problems).hasSize(1);
        assertThat(problems.getFirst().field()).isEqualTo(field);
        assertThat(problems.getFirst().code()).isEqualTo(code);
        assertThat(problems.getFirst().given()).isEqualTo(given);
    }
}
