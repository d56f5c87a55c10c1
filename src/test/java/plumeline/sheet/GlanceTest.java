package plumeline.sheet;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.SvgReader;
import plumeline.plan.Plans;
import plumeline.solve.Solve;

/// The first screenful of sheets of solved plans: what decides whether a shot can be made is said there.
final class GlanceTest {
    private static final String PLAN = """
            plumeline: 1
            film: {title: Tins, rate: 24 fps, papers: mm}
            deliver: {wide: {ratio: "16:9"}}
            things: {tin: {diameter: 76 mm, height: 96 mm}}
            kit:
              cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}}}
              lenses: {fifty: {focal_length: 50 mm}}
              machines: {slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2}}
            shots:
              one:
                camera: {body: main, lens: fifty, at: [0 mm, -600 mm, 48 mm], aim: hero, f_number: 8}
                place: {hero: {thing: tin, at: [0 mm, 0 mm]}}
                frames: 48
                wants: [{fills: hero, height: 20 %, or: more}]
            """;

    private static Document page(String text) {
        var reading = Plans.read(text.getBytes(UTF_8), "tins.yaml");
        var plan = reading.plan()
                .orElseThrow(() -> new AssertionError(reading.problems().toString()));
        return SvgReader.parse(
                Papers.of(Solve.film(plan), new Printed("2026-11-25 10:42")).html());
    }

    private static List<String> texts(Document page, String tag, String type) {
        List<String> texts = new ArrayList<>();
        var nodes = page.getElementsByTagName(tag);
        for (int i = 0; i < nodes.getLength(); i++) {
            if (((Element) nodes.item(i)).getAttribute("class").equals(type)) {
                texts.add(nodes.item(i).getTextContent());
            }
        }
        return texts;
    }

    /// Fails, unknown, tight, holds, as everywhere; what is known is told all the same.
    @Test
    void limitingFinding_isOfTheWorstVerdict_andTellsTheNearestOfTheRest() {
        Document page = page(PLAN.replace("wants: [{", "wants: [{sharp_enough: wide}, {"));
        assertThat(texts(page, "p", "limiting").getFirst())
                .startsWith("unknown")
                .contains("Not known: one.1 (sharp enough). Of the rest, one.2 (fills): Least leeway: ");
        assertThat(texts(page, "span", "verdict")).doesNotContain("tight");
        Document known = page(PLAN);
        assertThat(texts(known, "p", "limiting").getFirst()).startsWith("holds one.1 (fills): ");
        Document failing = page(PLAN.replace("20 %", "70 %").replace("wants: [{", "wants: [{sharp_enough: wide}, {"));
        assertThat(texts(failing, "p", "limiting").getFirst())
                .startsWith("fails one.2 (fills): ")
                .endsWith("Not known: one.1 (sharp enough).");
    }

    /// 120 mm in 1 s by a slider that does 80 mm/s can't be run: that is said before anything is set.
    @Test
    void whatAMachineCantDo_isSaid_withTheRestFurtherDown() {
        String moving = "moves: {slide: {machine: slider, by: [-120 mm, 0 mm], in: 2 s, profile: even}}\n    wants";
        assertThat(texts(page(PLAN.replace("wants", moving)), "p", "note")).isEmpty();
        Document page = page(PLAN.replace("wants", moving.replace("2 s", "1 s")));
        assertThat(texts(page, "p", "note")).containsExactly("slide needs 120 mm/s, slider does 80 mm/s.");
        assertThat(page.getDocumentElement().getTextContent()).contains("Run it in 1.5 s, play at");
    }

    /// The second pass has a wider lens, so that it is the one that fills too little.
    @Test
    void pictures_areOfThePassThatLimitsTheShot() {
        String passes = "passes: {near: {}, far: {camera.lens: wide}}\n    wants";
        String lenses = "{fifty: {focal_length: 50 mm}, wide: {focal_length: 35 mm}}";
        String text = PLAN.replace("wants", passes).replace("{fifty: {focal_length: 50 mm}}", lenses);
        Document page = page(text);
        assertThat(texts(page, "p", "limiting").getFirst()).contains(" in pass far: ");
        assertThat(page.getDocumentElement().getTextContent()).contains("Drawn is pass far of ");
    }
}
