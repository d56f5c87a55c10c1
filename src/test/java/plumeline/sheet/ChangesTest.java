package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.Made;
import plumeline.draw.SvgReader;
import plumeline.solve.FilmAnswer;

final class ChangesTest {
    private static Document page(String before, String now) {
        FilmAnswer earlier = Made.film(before);
        FilmAnswer film = Made.film(now);
        Printed printed = new Printed("2026-11-25 10:42", Changes.between(earlier, film));
        return SvgReader.parse(Papers.of(film, printed).html());
    }

    private static List<String> told(String before, String now) {
        return Changes.between(Made.film(before), Made.film(now)).lines();
    }

    private static List<String> marked(Document page) {
        var all = page.getElementsByTagName("*");
        return java.util.stream.IntStream.range(0, all.getLength())
                .mapToObj(i -> (Element) all.item(i))
                .filter(element -> element.getAttribute("class").matches(".*\\bchanged\\b.*"))
                .map(element -> element.getAttribute("id").isEmpty()
                        ? element.getFirstChild().getTextContent()
                        : element.getAttribute("id"))
                .toList();
    }

    @Test
    void samePlan_hasNoChanges() {
        assertThat(told(Made.text(), Made.text())).isEmpty();
        assertThat(marked(page(Made.text(), Made.text()))).isEmpty();
        assertThat(page(Made.text(), Made.text()).getDocumentElement().getTextContent())
                .contains("Changed since plan revision 0123456789ab", "Nothing that is printed here.");
    }

    @Test
    void movedMark_isMarkedInTheMarginAndListedOnTheCover() {
        String now = Made.text().replace("at: [-60 mm, -877 mm, 59 mm]", "at: [-60 mm, -877 mm, 64 mm]");
        assertThat(told(Made.text(), now)).contains("looks: camera.z 64 mm, was 59 mm.");
        Document page = page(Made.text(), now);
        assertThat(marked(page)).contains("looks.mark.camera.z").doesNotContain("looks.mark.camera.x");
        assertThat(page.getDocumentElement().getTextContent()).contains("Changed: was 59 mm.");
    }

    /// 0.2 mm can't be set by hand: the printed figure stays.
    @Test
    void changeBelowAHand_isNone() {
        String now = Made.text().replace("at: [-60 mm, -877 mm, 59 mm]", "at: [-60 mm, -877 mm, 59.2 mm]");
        assertThat(told(Made.text(), now)).noneMatch(line -> line.contains("camera.z"));
    }

    @Test
    void changedWant_isToldAsItWasWritten() {
        String now = Made.text().replace("{fills: bottle, height: 60 %}", "{fills: bottle, height: 55 %}");
        assertThat(told(Made.text(), now))
                .containsExactly("plume: plume.1 fills bottle height 55 %, was fills bottle height 60 %.");
        assertThat(marked(page(Made.text(), now))).containsExactly("plume.want.plume.1");
    }

    @Test
    void wantThatTookAnotherPlace_didNotChange() {
        String before = "wants: [{fills: bottle, height: 60 %}, {stays_under: bottle}]";
        String now = Made.text().replace(before, "wants: [{stays_under: bottle}, {fills: bottle, height: 60 %}]");
        // Only the hand-made findings, which go by the place, differ.
        assertThat(told(Made.text(), now)).noneMatch(line -> line.contains(" was fills") || line.contains("gone"));
    }

    @Test
    void newAndDroppedThings_areTold() {
        String first = "wants: [{fills: bottle, height: 60 %}, {stays_under: bottle}]";
        String fewer = Made.text().replace(first, "wants: [{fills: bottle, height: 60 %}]");
        assertThat(told(Made.text(), fewer)).containsExactly("plume: want stays_under bottle is gone.");
        assertThat(told(fewer, Made.text())).containsExactly("plume: plume.2 stays_under bottle, new.");
        String faster = Made.text().replace("f_number: 8, rate: 120 fps", "f_number: 8, rate: 60 fps");
        assertThat(told(Made.text(), faster))
                .contains("plume: Set to 60 fps, shutter 180 deg (1/120 s), was 120 fps, shutter 180 deg (1/240 s).");
    }

    /// What a crew acts on beside marks: a tank that can't be moved once filled, sizes, deliveries, the cut, resets.
    @Test
    void whatNoMarkSays_isToldToo() {
        checkTold("tank: glass, at: [0 mm, 30 mm]", "tank: glass, at: [0 mm, 45 mm]", "plume: Tank stands");
        checkTold("water: 260 mm", "water: 250 mm", "plume: Tank card: glass, Water fill to 250 mm over its floor");
        checkTold("width: 60 mm, depth", "width: 61 mm measured, depth", "looks: carton 61 mm (measured) wide, was 60");
        checkTold("keep_out: {top: 14 %", "keep_out: {top: 10 %", "film: delivery phone");
        checkTold("speed: 20 %", "speed: 25 %", "plume: Playback 25 %");
        checkTold("frames: 120", "reset: 12 min\n    frames: 120", "plume: Reset Reset: 12 min as planned");
        checkTold("lights.back.level: 0 %", "lights.back.level: 5 %", "looks: white back level 5 %, was back off.");
        checkTold(
                "at: [0 mm, 0 mm], turn: -30 deg",
                "at: [0 mm measured, 0 mm], turn: -30 deg",
                "looks: hero.x 0 mm measured, was 0 mm.");
        String renamed = Made.text().replace("  looks:\n", "  colours:\n");
        assertThat(told(Made.text(), renamed)).contains("colours: a new shot.", "looks: no longer in the plan.");
    }

    private static void checkTold(String was, String is, String line) {
        assertThat(Made.text()).contains(was);
        assertThat(told(Made.text(), Made.text().replace(was, is)))
                .as(is)
                .anyMatch(one -> one.startsWith(line))
                .noneMatch(one -> one.endsWith(".."));
    }

    @Test
    void earlierInchPlan_isComparedInThePresentUnit() {
        String inches = Made.text().replace("papers: mm", "papers: in");
        assertThat(told(inches, Made.text())).noneMatch(line -> line.contains(" in,") || line.contains(" in."));
    }
}
