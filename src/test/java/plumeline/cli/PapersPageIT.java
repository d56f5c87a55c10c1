package plumeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.deque.html.axecore.playwright.AxeBuilder;
import com.deque.html.axecore.results.CheckedNode;
import com.deque.html.axecore.results.Rule;
import com.microsoft.playwright.Browser;
import com.microsoft.playwright.BrowserContext;
import com.microsoft.playwright.BrowserType;
import com.microsoft.playwright.Page;
import com.microsoft.playwright.Playwright;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import plumeline.tidy.Outside;

/// Opens the page from a folder in a browser, as wide as a phone and as wide as A4, and goes through what is there.
@Outside(source = "Chromium lays the page out; axe-core 4.11 holds it to WCAG 2.2 A and AA", kind = "program")
@TestInstance(TestInstance.Lifecycle.PER_CLASS)
final class PapersPageIT {
    private static final int PHONE = 390;
    private static final int PHONE_HEIGHT = 844;
    private static final int A4 = 794;

    /// 14 pt in pixels, less what rounding may take.
    private static final double LEAST_PIXELS = 14 / 0.75 - 0.01;

    private static final List<String> TAGS =
            List.of("wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa", "best-practice");

    /// Every piece of text that is laid out, with how large it is drawn, its colour and what is behind it.
    private static final String TEXTS = """
        () => {
          const found = [];
          const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
          while (walker.nextNode()) {
            const text = walker.currentNode.textContent.trim();
            const element = walker.currentNode.parentElement;
            if (!text || element.closest('style, title, desc') || !element.getClientRects().length) continue;
            const style = getComputedStyle(element);
            const svg = element.closest('svg');
            const drawn = svg && element.getScreenCTM ? element.getScreenCTM() : {a: 1, b: 0};
            const scale = Math.hypot(drawn.a, drawn.b);
            let behind = 'rgb(255, 255, 255)';
            for (let e = element; e; e = e.parentElement) {
              const background = getComputedStyle(e).backgroundColor;
              if (background !== 'rgba(0, 0, 0, 0)') { behind = background; break; }
            }
            found.push({text: text.slice(0, 60), pixels: parseFloat(style.fontSize) * scale,
              colour: svg ? style.fill : style.color, behind: svg ? 'rgb(255, 255, 255)' : behind});
          }
          return found;
        }""";

    /// What stands outside the page's width although nothing scrolls it.
    private static final String TOO_WIDE = """
        () => [...document.body.querySelectorAll('*')].filter(e => {
          const box = e.getBoundingClientRect();
          if (!box.width || e.closest('svg')) return false;
          for (let p = e.parentElement; p; p = p.parentElement)
            if (/auto|scroll|hidden/.test(getComputedStyle(p).overflowX) && p !== document.body) return false;
          return box.right > innerWidth + 1 || box.left < -1;
        }).map(e => e.tagName + '.' + e.className + ': ' + e.textContent.trim().slice(0, 60))""";

    /// The boxes of what must be on a shot's first screenful, from the section's own top.
    private static final String GLANCE = """
        ([shot, parts]) => {
          const section = document.getElementById('shot.' + shot);
          section.scrollIntoView({block: 'start', behavior: 'instant'});
          const top = section.getBoundingClientRect().top;
          return parts.map(part => {
            const all = section.querySelectorAll('.glance ' + part);
            if (all.length !== 1) return {part, count: all.length};
            const box = all[0].getBoundingClientRect();
            return {part, count: 1, text: all[0].textContent, left: box.left, right: box.right, top: box.top - top,
              bottom: box.bottom - top, width: box.width, pictures: all[0].querySelectorAll('svg, img').length};
          });
        }""";

    private static final List<String> PARTS = List.of(
            ".shot-name",
            ".length",
            ".reference",
            ".limiting",
            ".next-mark",
            ".exposure",
            ".from-sensor",
            ".care",
            ".revision");

    private final List<AutoCloseable> open = new ArrayList<>();
    private final List<BrowserContext> contexts = new ArrayList<>();
    private final List<String> asked = new ArrayList<>();
    private final List<Browser> browsers = new ArrayList<>();

    @BeforeAll
    void startBrowser() {
        var chromium = OutsideTool.find("chromium", "chromium");
        Playwright playwright = Playwright.create(
                new Playwright.CreateOptions().setEnv(Map.of("PLAYWRIGHT_SKIP_BROWSER_DOWNLOAD", "1")));
        open.add(playwright);
        Browser browser = playwright
                .chromium()
                .launch(new BrowserType.LaunchOptions()
                        .setExecutablePath(chromium)
                        .setArgs(List.of(
                                "--no-sandbox",
                                "--disable-gpu",
                                "--disable-quic",
                                "--no-first-run",
                                "--disable-background-networking",
                                "--disable-component-update",
                                "--disable-sync")));
        open.add(browser);
        browsers.add(browser);
    }

    @AfterAll
    void stopBrowser() throws Exception {
        for (AutoCloseable each : open.reversed()) {
            each.close();
        }
    }

    @AfterEach
    void closePages() {
        contexts.forEach(BrowserContext::close);
        contexts.clear();
        asked.clear();
    }

    static Stream<PapersRun> runs() {
        return PapersRun.all();
    }

    static Stream<Arguments> widths() {
        return PapersRun.all().flatMap(run -> Stream.of(PHONE, A4).map(width -> Arguments.of(run, width)));
    }

    private Page page(PapersRun run, int width) {
        BrowserContext context = browsers.getFirst()
                .newContext(new Browser.NewContextOptions()
                        .setViewportSize(width, width == PHONE ? PHONE_HEIGHT : 1123)
                        .setOffline(true));
        contexts.add(context);
        Page page = context.newPage();
        page.onRequest(request -> asked.add(request.url()));
        page.navigate(run.html().toUri().toString());
        return page;
    }

    /// The example at both widths; one thing in a tank and twelve with long names at a phone's.
    static Stream<Arguments> axed() {
        return Stream.of(
                Arguments.of(PapersRun.of(PapersRun.EXAMPLE), PHONE),
                Arguments.of(PapersRun.of(PapersRun.EXAMPLE), A4),
                Arguments.of(PapersRun.of(0L), PHONE),
                Arguments.of(PapersRun.of(5L), PHONE));
    }

    @ParameterizedTest
    @MethodSource("axed")
    void page_hasNoFaultThatAxeFinds(PapersRun run, int width) {
        List<String> found = new ArrayList<>();
        for (Rule rule :
                new AxeBuilder(page(run, width)).withTags(TAGS).analyze().getViolations()) {
            for (CheckedNode node : rule.getNodes()) {
                found.add(rule.getId() + " " + node.getTarget() + ": "
                        + node.getHtml().lines().findFirst().orElse(""));
            }
        }
        assertThat(found).isEmpty();
    }

    @ParameterizedTest
    @MethodSource("widths")
    void page_isNoWiderThanItsWindowAndAsksForNothing(PapersRun run, int width) {
        Page page = page(run, width);
        assertThat(((Number) page.evaluate("document.documentElement.scrollWidth")).intValue())
                .isLessThanOrEqualTo(width);
        assertThat((List<?>) page.evaluate(TOO_WIDE)).isEmpty();
        assertThat(asked).isNotEmpty().allMatch(url -> url.startsWith("file:") || url.startsWith("data:"));
        assertThat(asked.stream().filter(url -> url.startsWith("file:"))).hasSize(1);
    }

    /// On a phone a drawing is shrunk to be seen whole and can be spread with two fingers: its letters count at A4.
    @ParameterizedTest
    @MethodSource("widths")
    void text_isBlackOnWhiteAndNoSmallerThanFourteenPoints(PapersRun run, int width) {
        List<String> wrong = new ArrayList<>();
        List<?> texts = (List<?>) page(run, width)
                .evaluate(width == A4 ? TEXTS : TEXTS.replace("'style, title, desc'", "'style, title, desc, svg'"));
        assertThat(texts).hasSizeGreaterThan(50);
        for (Object each : texts) {
            Map<?, ?> text = (Map<?, ?>) each;
            boolean isFine = number(text, "pixels") >= LEAST_PIXELS
                    && text.get("colour").equals("rgb(0, 0, 0)")
                    && text.get("behind").equals("rgb(255, 255, 255)");
            if (!isFine && wrong.size() < 10) {
                wrong.add(text.toString());
            }
        }
        assertThat(wrong).isEmpty();
    }

    private static double number(Map<?, ?> from, String key) {
        return ((Number) from.get(key)).doubleValue();
    }

    @ParameterizedTest
    @MethodSource("runs")
    void firstScreenful_holdsWhatTheNextMinuteNeeds(PapersRun run) {
        Page page = page(run, PHONE);
        for (String shot : run.shots()) {
            List<?> parts = (List<?>) page.evaluate(GLANCE, List.of(shot, PARTS));
            assertThat(parts).hasSameSizeAs(PARTS);
            for (Object each : parts) {
                Map<?, ?> part = (Map<?, ?>) each;
                String what = run + ", " + shot + ": " + part;
                assertThat(part.get("count")).as(what).isEqualTo(1);
                assertThat(number(part, "top")).as(what).isGreaterThanOrEqualTo(0);
                assertThat(number(part, "bottom")).as(what).isLessThanOrEqualTo(PHONE_HEIGHT);
                assertThat(number(part, "left")).as(what).isGreaterThanOrEqualTo(0);
                assertThat(number(part, "right")).as(what).isLessThanOrEqualTo(PHONE);
                assertThat(number(part, "bottom") - number(part, "top"))
                        .as(what)
                        .isGreaterThan(12);
                says(run, shot, part, what);
            }
        }
    }

    /// Whether a part of the first screenful says what it is there for; a hint only, the words are the sheet's own.
    private static void says(PapersRun run, String shot, Map<?, ?> part, String what) {
        String text = PdfText.plain((String) part.get("text"));
        switch ((String) part.get("part")) {
            case ".shot-name" -> assertThat(text).as(what).contains(shot);
            case ".length" -> assertThat(text).as(what).containsPattern("\\d+ .*frames?\\b.*\\d s\\b");
            case ".reference" -> {
                assertThat(number(part, "pictures")).as(what).isGreaterThanOrEqualTo(1);
                assertThat(number(part, "width")).as(what).isGreaterThan(PHONE / 3.0);
            }
            case ".next-mark" -> assertThat(run.marks(shot)).as(what).anyMatch(mark -> text.contains(mark.path()));
            case ".exposure" ->
                assertThat(text).as(what).containsPattern("f/\\d").contains("fps", "deg");
            case ".from-sensor" ->
                assertThat(text).as(what).containsPattern("\\d (mm|in)\\b.*sensor|sensor.*\\d (mm|in)\\b");
            case ".revision" -> assertThat(text).as(what).contains(run.revision());
            default -> assertThat(text).as(what).hasSizeGreaterThan(10);
        }
    }
}
