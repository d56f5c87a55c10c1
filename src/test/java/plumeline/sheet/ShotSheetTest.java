package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.Made;
import plumeline.draw.SvgReader;

/// What stands on a sheet, and in which order.
final class ShotSheetTest {
    private static Document page(String text) {
        return SvgReader.parse(
                Papers.of(Made.film(text), new Printed("2026-11-25 10:42")).html());
    }

    private static List<Element> all(Element in, String tag) {
        List<Element> found = new ArrayList<>();
        var nodes = in.getElementsByTagName(tag);
        for (int i = 0; i < nodes.getLength(); i++) {
            found.add((Element) nodes.item(i));
        }
        return found;
    }

    private static Element sheet(String text, String shot) {
        return all(page(text).getDocumentElement(), "section").stream()
                .filter(section -> section.getAttribute("id").equals("shot." + shot))
                .findFirst()
                .orElseThrow();
    }

    private static List<String> heads(String shot) {
        return all(sheet(Made.text(), shot), "h2").stream()
                .map(Element::getTextContent)
                .toList();
    }

    /// The text of the table's row that begins with a name.
    private static String row(Element sheet, String name) {
        return all(sheet, "tr").stream()
                .map(tr -> tr.getTextContent().replace("\n", ""))
                .filter(text -> text.startsWith(name))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no row " + name));
    }

    @Test
    void sheet_followsTheOrderOfWork() {
        assertThat(heads("plume"))
                .containsExactly(
                        "Marks, in the order to set them",
                        "Camera",
                        "Playback",
                        "Light",
                        "Effect",
                        "The three things that kill it",
                        "Before the first take",
                        "Heroes and how their labels are turned",
                        "Sizes the marks rest on",
                        "Reset between takes",
                        "Takes",
                        "Take care",
                        "Tank card: glass",
                        "Recipe card: rose_ink",
                        "Float card: flacon",
                        "Hang card: bottle (flacon)",
                        "Light card",
                        "Ramp page",
                        "What must be true on the screen",
                        "The picture",
                        "Leeway at full size",
                        "Plan from above",
                        "From the side",
                        "The tank from the side",
                        "What is sharp");
        assertThat(heads("looks"))
                .containsSubsequence(
                        "Camera, in pass green",
                        "Moves",
                        "Light, in pass green",
                        "Passes",
                        "The three things that kill it")
                .containsSubsequence("Light card", "Look card", "Move card: slide", "Ramp page", "Registration card")
                .containsSubsequence("The picture", "Across the picture");
        assertThat(heads("looks")).doesNotContain("Effect", "The tank from the side");
    }

    @Test
    void glance_isFirstAndInItsOrder() {
        Element glance = (Element) sheet(Made.text(), "reveal").getFirstChild();
        assertThat(glance.getAttribute("class")).isEqualTo("glance");
        List<String> parts = all(glance, "*").stream()
                .map(part -> part.getAttribute("class"))
                .filter(List.of(
                        "shot-name",
                        "length",
                        "reference",
                        "limiting",
                        "next-mark",
                        "exposure",
                        "from-sensor",
                        "care",
                        "revision")::contains)
                .toList();
        assertThat(parts)
                .containsExactly(
                        "shot-name",
                        "length",
                        "reference",
                        "limiting",
                        "next-mark",
                        "exposure",
                        "from-sensor",
                        "care",
                        "revision");
    }

    /// Things first, then the camera, machines, lamps: the same order in the table and in the line that says which is
    /// next, with a rule of the style sheet for each.
    @Test
    void nextMark_followsTheTablesBoxes() {
        Element sheet = sheet(Made.text(), "reveal");
        List<String> boxes = all(sheet, "input").stream()
                .map(box -> box.getAttribute("aria-label").replace(" is set", ""))
                .toList();
        assertThat(boxes)
                .hasSize(13)
                .startsWith("first.x", "first.y", "second.x")
                .endsWith("slide.by");
        assertThat(boxes.indexOf("camera.x")).isGreaterThan(boxes.indexOf("fourth.y"));
        List<Element> next = all(sheet, "li").stream()
                .filter(li ->
                        ((Element) li.getParentNode()).getAttribute("class").equals("next"))
                .toList();
        assertThat(next).hasSize(boxes.size() + 1);
        for (int i = 0; i < boxes.size(); i++) {
            assertThat(next.get(i).getTextContent())
                    .startsWith("Set mark " + (i + 1) + " of " + boxes.size() + ": " + boxes.get(i) + " ");
        }
        assertThat(page(Made.text()).getDocumentElement().getTextContent())
                .contains(".shot:has(.t13:checked) .n13{display:none}");
    }

    @Test
    void lamps_sayLevelColourAndLux() {
        String dimmed = Made.text()
                .replace("[500 mm, -300 mm, 400 mm]}, back", "[500 mm, -300 mm, 400 mm], level: 70 %}, back")
                .replace("passes: {green: {lights.key.level: 0 %}", "passes: {green: {}");
        assertThat(row(sheet(dimmed, "looks"), "keystrip"))
                .contains(
                        "panel 300 mm wide, 1200 mm tall",
                        "level 70 % of what it gives",
                        "white 5600 K",
                        "gives 4000 lx at 1 m (typical: measure yours)",
                        "300 W");
        assertThat(row(sheet(Made.text(), "looks"), "green")).contains("key off");
        // Straight between what is written: 70 % is two thirds of the way from 10 to 100, so from 40 to 100.
        String dimmer = dimmed.replace("300 W}", "300 W, dims: [[40 %, 10 %], [100 %, 100 %]]}");
        assertThat(row(sheet(dimmer, "looks"), "keystrip")).contains("level 70 % of what it gives, its dimmer at 80 %");
    }

    @Test
    void effect_saysWaterReleaseAndCall() {
        Element sheet = sheet(
                Made.text() + "cues: [{sound: pour, sync: {shot: plume, when: 0.6 s}, lead: 2 frames}]\n", "plume");
        assertThat(row(sheet, "Tank")).endsWith("water 260 mm above its floor: see its card.");
        assertThat(row(sheet, "Release")).contains("ink rose_ink, 3 ml; 0.2 s after the shot's first frame");
        assertThat(row(sheet, "Call")).contains("Roll first");
        assertThat(row(sheet, "bottle hangs")).contains("on 2 lines");
        assertThat(row(sheet, "Sound")).contains("pour meets 0.6 s of real time, begins 2 frames earlier");
    }

    /// What can hurt is read before anything is filled in; the shorter list only says where.
    @Test
    void tankCard_beginsWithItsCautions() {
        Element card = card("plume.card.tank");
        List<String> parts = all(card, "*").stream()
                .map(part -> part.getTagName() + "." + part.getAttribute("class"))
                .filter(List.of("h2.", "div.caution", "table.")::contains)
                .toList();
        assertThat(parts).containsExactly("h2.", "div.caution", "table.");
        assertThat(all(card, "li")).hasSize(6);
        assertThat(row(card, "Water")).contains("35.1 l, 35 kg");
        assertThat(row(card, "Reset")).contains("25 to 40 min, typical");
        assertThat(sheet(Made.text(), "plume").getTextContent())
                .contains("The tank card begins with them")
                .containsOnlyOnce("residual-current");
    }

    /// Three figures a hero: its weight, what the scales gain, the difference. Weight, rating, tap and reset are asked
    /// for where the plan has none.
    @Test
    void cards_haveBoxesToWriteIn() {
        assertThat(boxes("plume.card.float.flacon", "td", "blank")).isEqualTo(3);
        assertThat(boxes("plume.card.float.flacon", "span", "tick")).isEqualTo(3);
        assertThat(boxes("plume.card.float.flacon", "span", "box")).isEqualTo(2);
        assertThat(boxes("plume.card.tank", "span", "box")).isEqualTo(3);
        // Two lines: where each is tied, and that it is.
        assertThat(boxes("plume.card.hang.1", "td", "blank")).isEqualTo(4);
    }

    private static Element card(String id) {
        return all(sheet(Made.text(), "plume"), "div").stream()
                .filter(div -> div.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static int boxes(String id, String tag, String type) {
        return (int) all(card(id), tag).stream()
                .filter(element -> element.getAttribute("class").equals(type))
                .count();
    }

    /// The carton is turned 30 deg anticlockwise; the lens stands 60 mm to camera left at 877 mm: atan(60/877) is 3.9
    /// deg, which from the carton is clockwise of the crew's side, so that the front faces 34 deg anticlockwise of
    /// it.
    @Test
    void heroes_sayHowTheyAreTurnedFromTheLens() {
        assertThat(row(sheet(Made.text(), "looks"), "herocarton"))
                .contains("30 deg anticlockwise; from the lens 34 deg anticlockwise");
        Element turned = sheet(Made.text().replace("turn: -30 deg", "turn: 12 deg"), "looks");
        assertThat(row(turned, "herocarton")).contains("12 deg clockwise; from the lens 8 deg clockwise");
    }

    @Test
    void resets_areSummedOrThePlansOwn() {
        // Ink 25 to 40, nozzle 1 to 2, hanging still 1 to 2, the hero 1 to 2.
        assertThat(sheet(Made.text(), "plume").getTextContent()).contains("Together 28 to 46 min, typical");
        String own = Made.text().replace("    frames: 120\n", "    frames: 120\n    reset: 35 min measured\n");
        assertThat(sheet(own, "plume").getTextContent()).contains("Reset: 35 min (measured)");
        assertThat(sheet(Made.text(), "reveal").getTextContent())
                .contains("Bring slide back to its start mark")
                .doesNotContain("nozzle");
    }

    @Test
    void takesAndReminders_haveTheirBoxes() {
        Element sheet = sheet(Made.text(), "plume");
        assertThat(sheet.getTextContent())
                .contains("Colour chart and grey card", "Clean plate:", "Photograph the taped marks");
        Element takes = all(sheet, "table").stream()
                .filter(table -> table.getAttribute("class").equals("takes"))
                .findFirst()
                .orElseThrow();
        assertThat(all(takes, "th").stream().map(Element::getTextContent))
                .containsExactly("Take", "What showed", "Measured", "Change one thing");
        assertThat(all(takes, "tr")).hasSize(7);
        assertThat(all(sheet, "svg").stream().map(svg -> svg.getAttribute("id")))
                .contains("plume.code");
    }

    @Test
    void papersOfOneShot_openWithIt() {
        var film = Made.film(Made.text());
        var one = new plumeline.solve.FilmAnswer(
                film.plan(), film.planSha256(), film.verdict(), film.shots().subList(1, 2), film.wants());
        Document page =
                SvgReader.parse(Papers.of(one, new Printed("2026-11-25 10:42")).html());
        assertThat(all(page.getDocumentElement(), "section").stream().map(part -> part.getAttribute("id")))
                .containsExactly("shot.plume", "film");
    }

    /// 30 mm behind the zero mark, 300 mm deep inside two panes of 8 mm: its front stands 128 mm before the zero mark.
    @Test
    void tank_isSetFirst() {
        Element sheet = sheet(Made.text(), "plume");
        Element next = all(sheet, "li").stream()
                .filter(li ->
                        ((Element) li.getParentNode()).getAttribute("class").equals("next"))
                .findFirst()
                .orElseThrow();
        assertThat(next.getTextContent())
                .isEqualTo("Tank first (glass): front face 128 mm toward the camera from the zero"
                        + " mark, middle on the centreline. Level it, fill it where it stands.");
        assertThat(all(sheet, "input").getFirst().getAttribute("aria-label")).isEqualTo("tank is set");
    }

    /// A plate: 60 deg in 6 s are 10 deg/s, 5/3 rpm; a slide's 120 mm in 12 s.
    @Test
    void moves_sayWhatIsDialled() {
        Element sheet = sheet(Made.text(), "looks");
        assertThat(row(sheet, "turnhero turns")).contains("at 10 deg/s (1.7 rpm)");
        assertThat(row(sheet, "slideThe camera")).contains("at 10 mm/s");
        assertThat(row(sheet, "Playback")).isEqualTo("Playback400 % of real speed throughout.");
        String ramp = Made.text().replace("speed: 20 %", "speed: [[0 frames, 100 %], [24 frames, 20 %]]");
        assertThat(row(sheet(ramp, "plume"), "Playback"))
                .isEqualTo("Playback100 % at frame 1, 20 % at frame 25, straight between.");
    }

    /// A second pass has its own hero to number and turn, and is changed to between takes.
    @Test
    void passes_areSaidInWordsAndHaveTheirOwnHeroes() {
        String other = Made.text()
                .replace(
                        "white: {lights.back.level: 0 %}",
                        "white: {lights.back.level: 0 %, place.hero.thing: flacon, camera.f_number: 16}");
        Element sheet = sheet(other, "looks");
        assertThat(row(sheet, "white")).isEqualTo("whiteback off; hero is flacon; camera f/16.");
        assertThat(row(sheet, "herocarton")).contains("30 deg anticlockwise");
        assertThat(row(sheet, "heroflacon")).contains("30 deg anticlockwise");
        assertThat(sheet.getTextContent()).contains("Next pass: set what it changes, touch nothing else.");
    }

    /// The drawn pass is one of those that the plan has.
    @Test
    void drawnPass_isNamedAmongAll() {
        assertThat(sheet(Made.text(), "looks").getTextContent()).contains("Drawn is pass green of green, white.");
    }

    /// 0 deg has no side: neither in the marks, nor for a label, nor for a plate that stands still.
    @Test
    void nothingTurned_hasNoSide() {
        Element sheet = sheet(Made.text().replace("turn: -30 deg", "turn: 0 deg"), "looks");
        assertThat(row(sheet, "hero.turn")).contains("0 deg given, seen from above");
        assertThat(sheet.getTextContent()).doesNotContainPattern("(?<![\\d.])0(\\.0)? deg (anti)?clockwise");
        Element still = sheet(Made.text().replace("by: 60 deg", "by: 0 deg"), "looks");
        assertThat(row(still, "turnhero turns")).startsWith("turnhero turns 0 deg seen from above");
    }

    /// Minus signs as printers set them, also where a sentence comes from the findings; each try is a sentence.
    @Test
    void tries_areSentencesWithTrueMinusSigns() {
        assertThat(sheet(Made.text(), "reveal").getTextContent())
                .contains("Try: Slide 41 mm further: slide.by −641 mm instead of −600 mm.");
        assertThat(WantsPart.tries(List.of("sharp_to 3.1 px instead of 3 px", "Set hero.y 6 mm")))
                .isEqualTo("Sharp to 3.1 px instead of 3 px. Set hero.y 6 mm.");
        assertThat(WantsPart.tries(List.of("By then. (The rest goes by the law.)", "Wait.")))
                .isEqualTo("By then. (The rest goes by the law.) Wait.");
        assertThat(Rows.flowing(plumeline.sketch.Markup.of("p"), "a-2, 2026-11-25, -3 to (-5 mm)")
                        .toText())
                .contains("a-2, 2026-11-25, ", "−3", "(−5 mm");
    }

    /// A thing that lies on another can't go lower.
    @Test
    void rest_isSaidOfTheWay() {
        String stacked = Made.text()
                .replace(
                        "place: {hero: {thing: carton, at: [0 mm, 0 mm], turn: -30 deg}}",
                        "place: {base: {thing: carton, at: [0 mm, 0 mm, 0 mm]}, hero: {thing: carton, at: [0 mm, 0 mm,"
                                + " 90 mm]}}");
        assertThat(row(sheet(stacked, "looks"), "hero.z")).contains("Lower: it rests on base.");
    }

    /// Nobody can hold a tape to a mark inside a barrel of 380 mm.
    @Test
    void probe_isMeasuredFromItsFront() {
        String probe =
                Made.text().replace("sensor_behind: 71 mm measured", "barrel: {diameter: 30 mm, length: 380 mm}");
        Element sheet = sheet(probe, "reveal");
        assertThat(row(sheet, "Sensor mark")).contains("measure from the front of the barrel");
        assertThat(sheet.getTextContent()).contains("first's middle: 600 mm from the front of the barrel");
    }

    /// A pan that keeps things in the middle is told at the quarters of 96 frames, always the same way round.
    @Test
    void pan_isToldAtQuarters() {
        String pan = row(sheet(Made.text(), "reveal"), "panThe camera");
        assertThat(pan).contains("at frame 25", "at frame 49", "at frame 72", "at frame 96");
        assertThat(pan.split("deg clockwise", -1)).hasSize(5);
    }

    /// What fails comes before what isn't known, and what isn't known before what nothing ends soon.
    @Test
    void kills_areOrderedByDanger() {
        String kills = all(sheet(Made.text(), "plume"), "div").stream()
                .filter(div -> div.getAttribute("class").equals("kills"))
                .findFirst()
                .orElseThrow()
                .getTextContent();
        assertThat(kills.indexOf("film.1")).isNotNegative().isLessThan(kills.indexOf("plume.1"));
        assertThat(kills.indexOf("plume.1")).isLessThan(kills.indexOf("plume.2"));
    }

    @Test
    void cover_listsTheCut() {
        String cut = Made.text() + "cut: [{shot: plume, frames: 48}, {shot: reveal, frames: 96}]\n";
        String cover =
                page(cut).getElementsByTagName("main").item(0).getTextContent().replace("\n", "");
        assertThat(cover).contains("In the cut", "1: plume48 frames", "2: reveal96 frames");
    }

    /// Each want on water stands on its shot's sheet once, with how it is checked.
    @Test
    void wantsOnWater_standOnTheSheetOnce() {
        String now = "{stays_under: bottle}, {hangs: bottle}, {line_hidden: bottle}, {tank_carries: glass}, {upright:"
                + " bottle}, {beads_stay: bottle}, {sweats: bottle}, {stays_dry: bottle}";
        Element sheet = sheet(Made.text().replace("{stays_under: bottle}", now), "plume");
        for (int i = 2; i <= 9; i++) {
            String id = ".want.plume." + i;
            assertThat(all(sheet, "div").stream()
                            .filter(div -> div.getAttribute("id").endsWith(id))
                            .toList())
                    .as(id)
                    .hasSize(1);
        }
    }
}
