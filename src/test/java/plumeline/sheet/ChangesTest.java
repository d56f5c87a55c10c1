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
        checkTold("frames: 120", "reset: 12 min\n    frames: 120", "plume: Reset between takes 12 min as planned, was");
        checkTold("lights.back.level: 0 %", "lights.back.level: 5 %", "looks: white back level 5 %, was back off.");
        checkTold(
                "at: [0 mm, 0 mm], turn: -30 deg",
                "at: [0 mm measured, 0 mm], turn: -30 deg",
                "looks: hero.x 0 mm measured, was 0 mm given.");
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

    @Test
    void productPlacingErrorAndTitle_areToldAndMarked() {
        checkMarked("second: {thing: flacon, ", "second: {thing: carton, ", "reveal: second is carton, was flacon.");
        checkMarked("-877 mm, 59 mm]", "-877 mm, 59 mm ± 1 mm]", "looks: camera.z 59 mm ± 1.0 mm, was 59 mm.");
        checkMarked("title: Papers film", "title: Sheets film", "film: Title Sheets film, was Papers film.");
        checkMarked("at: [0 mm, 30 mm], water", "at: [0 mm, 45 mm], water", "plume: Tank stands front face 113 mm");
        checkMarked("frames: 120", "frames: 121", "plume: Length 121 frames / 1.01 s real at 20 %, was 120 frames");
        checkMarked(
                "frames: 120", "reset: 12 min\n    frames: 120", "plume: Reset between takes 12 min as planned, was");
        checkMarked("width: 36 mm", "width: 35 mm", "reveal: Body, lens sensor 35 mm × 20.25 mm, was sensor 36 mm");
    }

    /// In one place once, as the crew was told before: not mark by mark.
    @Test
    void otherUnit_isToldOnce() {
        String inches = Made.text().replace("papers: mm", "papers: in");
        assertThat(told(Made.text(), inches)).containsExactly("film: Lengths are now in inches, were in mm.");
        assertThat(marked(page(Made.text(), inches)))
                .containsExactly("Lengths are in inches and sixteenths, hundredths on motor axes.");
        String lengthWant = "{clear: all, by: 5 mm}]\nwants";
        String clear = Made.text().replace("{inside: [wide], when: start}]\nwants", lengthWant);
        assertThat(clear).contains(lengthWant);
        assertThat(told(clear, clear.replace("papers: mm", "papers: in"))).hasSize(1);
    }

    /// A clause stays whole with its brackets, and what a plan doesn't write has its usual value.
    @Test
    void changes_areWholePhrases() {
        checkMarked(
                "gives: 4000 lx",
                "gives: 4500 lx",
                "plume: key gives 4500 lx at 1 m (typical: measure yours), was gives 4000 lx at 1 m (typical: measure"
                        + " yours).");
        checkMarked(
                "acceleration: 40 deg/s2",
                "acceleration: 50 deg/s2",
                "reveal: pan acceleration 50 deg/s2 (typical: measure yours), was acceleration 40 deg/s2 (typical:"
                        + " measure yours).");
        String plain = Made.text().replace("    speed: 200 %\n", "");
        assertThat(told(plain, Made.text()))
                .contains("reveal: Playback 200 % of real speed throughout, was 100 % of real speed throughout.");
        assertThat(told(Made.text(), plain))
                .contains("reveal: Playback 100 % of real speed throughout, was 200 % of real speed throughout.");
        String dimmed = Made.text().replace("400 mm typical]}}", "400 mm typical], level: 50 %}}");
        assertThat(told(Made.text(), dimmed)).contains("plume: key.level 50 %, was 100 %.");
        assertThat(told(dimmed, Made.text())).contains("plume: key.level 100 %, was 50 %.");
        String straight = Made.text().replace(", turn: -30 deg", "");
        assertThat(told(straight, Made.text())).contains("looks: hero.turn −30 deg, was 0 deg.");
    }

    /// What has no place of its own any more stands in a list on its sheet.
    @Test
    void whatIsGone_isMarkedToo() {
        String without = Made.text()
                .replace("      fourth: {thing: flacon, at: [free, free]}\n", "")
                .replace(", fourth]", "]");
        Document page = page(Made.text(), without);
        assertThat(marked(page)).contains("reveal: fourth.x is gone: ", "reveal: fourth is gone: flacon.");
        assertThat(page.getDocumentElement().getTextContent()).contains("No longer on this sheet");
    }

    /// Where a change moves no figure but a leeway or a reason, these are told; else they would bury what made them.
    @Test
    void whatOnlyFollows_isToldWhereNothingElseIs() {
        FilmAnswer before = Made.film(Made.text());
        var shots = new java.util.ArrayList<>(before.shots());
        var old = shots.get(1);
        var want = old.wants().getFirst();
        var other = new plumeline.solve.WantAnswer(
                want.id(), want.want(), want.verdict(), want.margin(), List.of("Less to spare."), List.of(), "");
        shots.set(
                1,
                new plumeline.solve.ShotAnswer(
                        old.shot(),
                        old.verdict(),
                        List.of(other, old.wants().getLast()),
                        old.filmWants(),
                        old.marks(),
                        old.together(),
                        old.leewayWithout(),
                        List.of("A note."),
                        old.posed()));
        FilmAnswer now = new FilmAnswer(before.plan(), before.planSha256(), before.verdict(), shots, before.wants());
        Changes changes = Changes.between(before, now);
        assertThat(changes.lines())
                .containsExactly("plume: plume.1: Less to spare, was Room to spare.", "plume: A note, new.");
        assertThat(marked(SvgReader.parse(
                        Papers.of(now, new Printed("now", changes)).html())))
                .containsExactly("A note.", "plume.want.plume.1");
    }

    /// A film's want is judged over the shots that were answered: over others it isn't compared.
    @Test
    void filmWants_areComparedOnEqualTerms() {
        FilmAnswer whole = Made.film(Made.text());
        var want = whole.wants().getFirst();
        var unknown = new plumeline.solve.WantAnswer(
                want.id(),
                want.want(),
                plumeline.solve.Verdict.UNKNOWN,
                want.margin(),
                want.because(),
                want.attempts(),
                want.pass());
        FilmAnswer none =
                new FilmAnswer(whole.plan(), whole.planSha256(), whole.verdict(), List.of(), List.of(unknown));
        FilmAnswer one = new FilmAnswer(
                whole.plan(), whole.planSha256(), whole.verdict(), whole.shots().subList(1, 2), whole.wants());
        assertThat(Changes.between(none, one).lines()).containsExactly("plume: a new shot.");
        FilmAnswer other =
                new FilmAnswer(whole.plan(), whole.planSha256(), whole.verdict(), one.shots(), List.of(unknown));
        assertThat(Changes.between(other, one).lines()).containsExactly("film: film.1 fails, it was unknown.");
    }

    private static void checkMarked(String was, String is, String line) {
        checkTold(was, is, line);
        assertThat(told(Made.text(), Made.text().replace(was, is)).stream()
                        .filter(one -> one.startsWith(line))
                        .map(one -> one.substring(one.lastIndexOf(", was ") + 2)))
                .allSatisfy(words -> assertThat(page(Made.text(), Made.text().replace(was, is))
                                .getDocumentElement()
                                .getTextContent())
                        .contains("Changed: " + words));
    }
}
