package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import plumeline.draw.Made;
import plumeline.draw.SvgReader;
import plumeline.plan.Mark;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.WantAnswer;

final class PapersTest {
    private static final Printed PRINTED = new Printed("2026-11-25 10:42");

    private static String html(String text) {
        return Papers.of(Made.film(text), PRINTED).html();
    }

    private static List<Element> elements(Document page, String name) {
        List<Element> all = new ArrayList<>();
        var nodes = page.getElementsByTagName(name);
        for (int i = 0; i < nodes.getLength(); i++) {
            all.add((Element) nodes.item(i));
        }
        return all;
    }

    private static Element byId(Document page, String id) {
        return elements(page, "*").stream()
                .filter(element -> element.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no " + id));
    }

    @Test
    void page_isWellFormedWithUniqueIdsAndOwnTargets() {
        Document page = SvgReader.parse(html(Made.text()));
        List<String> ids = SvgReader.ids(page);
        assertThat(ids).doesNotHaveDuplicates().hasSizeGreaterThan(100);
        List<Element> links = elements(page, "a");
        assertThat(links).hasSize(3);
        links.forEach(link -> assertThat(ids).contains(link.getAttribute("href").substring(1)));
    }

    @Test
    void page_asksNoOtherHostAndHasNoScript() {
        String html = html(Made.text());
        assertThat(html.replace("http://www.w3.org/1999/xhtml", "").replace("http://www.w3.org/2000/svg", ""))
                .doesNotContain("http:", "https:", "//", "@import");
        Document page = SvgReader.parse(html);
        assertThat(elements(page, "script")).isEmpty();
        assertThat(elements(page, "link")).isEmpty();
        assertThat(elements(page, "img")).isEmpty();
    }

    @Test
    void title_cannotBecomeMarkup() {
        String title = "</title><script>alert('x')</script> שלום & 商品";
        String html = html(Made.text().replace("title: Papers film", "title: \"" + title + "\""));
        Document page = SvgReader.parse(html);
        assertThat(elements(page, "script")).isEmpty();
        assertThat(elements(page, "h1").getFirst().getTextContent()).isEqualTo(title);
        assertThat(elements(page, "title").getFirst().getTextContent()).startsWith(title);
    }

    @Test
    void everyMarkAndEveryWant_standsOnItsSheetOnce() {
        FilmAnswer film = Made.film(Made.text());
        Document page = SvgReader.parse(Papers.of(film, PRINTED).html());
        List<String> ids = SvgReader.ids(page);
        int marks = 0;
        for (ShotAnswer shot : film.shots()) {
            for (MarkAnswer mark : shot.marks()) {
                assertThat(ids)
                        .containsOnlyOnce(shot.shot() + ".mark." + mark.mark().path());
                marks++;
            }
            for (WantAnswer want : shot.wants()) {
                assertThat(ids).containsOnlyOnce(shot.shot() + ".want." + want.id());
            }
        }
        assertThat(marks).isEqualTo(44);
        assertThat(ids).containsOnlyOnce("film.want.film.1");
    }

    @Test
    void marksTable_givesTheAnswersValues() {
        FilmAnswer film = Made.film(Made.text());
        Document page = SvgReader.parse(Papers.of(film, PRINTED).html());
        int compared = 0;
        for (ShotAnswer shot : film.shots()) {
            for (MarkAnswer mark : shot.marks()) {
                String row = byId(page, shot.shot() + ".mark." + mark.mark().path())
                        .getTextContent()
                        .replace("\n", "");
                if (mark.setting() instanceof MarkAnswer.Setting.At at && isTape(mark.mark())) {
                    // Independent of Print: whole millimetres, halves away from zero, a printer's minus sign.
                    long mm = Math.round(Math.abs(at.si()) * 1000 + 1e-9);
                    String value = (at.si() < 0 && mm > 0 ? "−" : "") + mm + " mm ";
                    assertThat(row)
                            .contains(mark.mark().path() + value + at.origin().word());
                    compared++;
                }
                if (mark.setting() instanceof MarkAnswer.Setting.Open) {
                    assertThat(row).contains("free", "no value yet");
                }
            }
        }
        assertThat(compared).isGreaterThan(20);
    }

    private static boolean isTape(Mark mark) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE -> true;
            default -> false;
        };
    }

    @Test
    void leeway_isSaidAsAConsequence() {
        Document page = SvgReader.parse(html(Made.text()));
        assertThat(byId(page, "reveal.mark.second.x").getTextContent())
                .endsWith("±3 mm sideways, else a sliver shows (reveal.1).");
        assertThat(byId(page, "reveal.mark.second.y").getTextContent())
                .endsWith("9 mm toward the camera, else a gap closes (reveal.2). Away from the camera 63 mm until it"
                        + " meets third.");
        assertThat(byId(page, "reveal.mark.third.x").getTextContent())
                .endsWith("6 mm to camera left, else a sliver shows (reveal.1); 1.2 mm to camera right, else a gap"
                        + " closes (reveal.2). You place to 2 mm. Use a jig.");
        assertThat(byId(page, "reveal.mark.first.y").getTextContent())
                .endsWith("Toward the camera 579 mm until it meets the camera. Away from the camera 62 mm until it"
                        + " meets second.");
        assertThat(byId(page, "reveal.mark.slide.by").getTextContent())
                .endsWith("Travel is loose (further to the end of the travel, +131 mm).");
        assertThat(byId(page, "plume.mark.camera.z").getTextContent()).contains("139 mm measured");
        assertThat(byId(page, "plume.mark.key.z").getTextContent()).contains("400 mm typical");
    }

    @Test
    void shot_saysFramesSecondsAndDistancesFromBothPoints() {
        Document page = SvgReader.parse(html(Made.text()));
        String reveal = byId(page, "shot.reveal").getTextContent();
        // 96 frames at 24 fps and 200 % are 8 s on the table.
        assertThat(reveal).contains("Shot 1: reveal", "96 frames / 8 s real", "360 deg (1/24 s)");
        // The lens stands 600 mm before the flacon and 7 mm under its middle; the plan puts the sensor 71 mm behind.
        long focus = Math.round(Math.hypot(600, 59 - 52));
        assertThat(reveal)
                .contains((focus + 71) + " mm from the sensor mark, on the lens's scale; " + focus
                        + " mm from the lens point, along the axis")
                .contains("71 mm behind the lens point (measured)");
        // Thin lens: f(1+m) = f + f²/(d − f) behind the lens point where the plan says nothing.
        long thin = Math.round(100 + 100.0 * 100 / (877 - 100));
        assertThat(byId(page, "shot.looks").getTextContent())
                .contains(
                        thin + " mm behind the lens point, by the focal length alone",
                        (877 + thin) + " mm from the sensor mark");
    }

    @Test
    void shot_namesCautionsAndThreeChecks() {
        Document page = SvgReader.parse(html(Made.text()));
        assertThat(byId(page, "shot.plume").getTextContent())
                .contains("Glass, water, mains, a heavy tank:", "Hot lamps:", "Hung things:");
        assertThat(byId(page, "shot.reveal").getTextContent())
                .contains(
                        "Moving machines:",
                        "Look through the lens at the start mark: no sliver beside the front thing.");
        assertThat(byId(page, "shot.reveal").getTextContent()).doesNotContain("Glass, water, mains");
        List<Element> kills = elements(page, "div").stream()
                .filter(div -> div.getAttribute("class").equals("kills"))
                .toList();
        assertThat(kills).hasSize(3);
        assertThat(kills)
                .allSatisfy(
                        three -> assertThat(three.getElementsByTagName("div").getLength())
                                .isEqualTo(3));
        assertThat(page.getDocumentElement().getTextContent().toLowerCase(Locale.ROOT))
                .doesNotContain("safe");
    }

    @Test
    void inches_areNeverMixedWithMillimetres() {
        String html = html(Made.text().replace("papers: mm", "papers: in"));
        String text = SvgReader.parse(html).getDocumentElement().getTextContent();
        // The only millimetres left are in the texts of answers that are made by hand here.
        String without = text.replaceAll("Try: [^.]*\\.[^.]*\\.", "");
        assertThat(Pattern.compile(".{0,40}\\d mm").matcher(without).results().map(found -> found.group()))
                .isEmpty();
        assertThat(text).contains("−23 5/8 in", "−23.62 in", "3.15 in/s");
        assertThat(Pattern.compile("\\d in\\b")
                        .matcher(SvgReader.parse(html(Made.text()))
                                .getDocumentElement()
                                .getTextContent())
                        .find())
                .isFalse();
    }

    /// 1.73 mm are 1.1 sixteenths of an inch, 2 mm 1.26 of them.
    @Test
    void smallInches_areWhatATapeShows() {
        Document page = SvgReader.parse(html(Made.text().replace("papers: mm", "papers: in")));
        assertThat(byId(page, "plume.mark.camera.y").getTextContent())
                .contains("1/16 in toward the camera")
                .endsWith("You place to a little over 1/16 in. Use a jig.");
        assertThat(page.getDocumentElement().getTextContent()).doesNotContain("0.07 in");
    }

    @Test
    void samePlan_givesTheSamePage() {
        assertThat(html(Made.text())).isEqualTo(html(Made.text()));
    }
}
