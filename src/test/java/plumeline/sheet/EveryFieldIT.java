package plumeline.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import plumeline.draw.Made;
import plumeline.solve.FilmAnswer;

/// Each figure and many words of the example plan are changed, one at a time. A sheet that then reads or is drawn
/// otherwise must say so; what it lists must be marked, what it marks must be listed.
final class EveryFieldIT {
    private static final Pattern FIGURE =
            Pattern.compile("(?<![\\w.#-])-?\\d+(\\.\\d+)?(?= (?!LUFS|dBTP|seconds)[a-z%A-Z]|[,}\\]])");

    private static final Pattern SECTION =
            Pattern.compile("<section class=\"\\w+\" id=\"(?:shot\\.)?([^\"]*)\">(.*?)</section>", Pattern.DOTALL);

    private static final String WAS = "<span class=\"was\">((?:[^<]|<span class=\"f\">[^<]*</span>)*)</span>";

    private static final Pattern TOLD = Pattern.compile(WAS);

    private static final Pattern GONE =
            Pattern.compile("<li class=\"changed\">((?:[^<]|<span class=\"f\">[^<]*</span>)*)</li>");

    /// The plan can't be read then.
    private static final String REFUSED = "refused: ";

    /// Nothing of it is printed.
    private static final String SAME = "same: ";

    private static final Pattern MARKED = Pattern.compile("class=\"([^\"]* )?changed\"");

    /// The example with a value for each mark, so that all of it is printed.
    private static final String PLAN = example()
            // Else a cut of another length would be refused.
            .replace(", frames: 336", "")
            .replace("reveal", "open")
            .replace("plume:", "cloud:")
            .replace("shot: plume", "shot: cloud")
            .replace("free between 40 mm and 110 mm", "52 mm")
            .replace("flacon.rose, at: [free, free]", "flacon.rose, at: [3 mm, 104 mm]")
            .replace("flacon.cedar, at: [free, free]", "flacon.cedar, at: [4 mm, 209 mm]")
            .replace("flacon.lavender, at: [free, free]", "flacon.lavender, at: [-6 mm, 312 mm]")
            .replace(
                    "light: strip, at: [free, free, 300 mm], level: 60 %",
                    "light: strip, at: [500 mm, -300 mm, 400 mm]")
            .replace("at: [0 mm, free, 139 mm", "at: [0 mm, -1122 mm, 139 mm")
            .replace("free between -110 mm and -30 mm", "-70 mm");

    /// What a word is changed to, each by itself, where it first stands.
    private static final List<List<String>> WORDS = List.of(
            List.of("title: Fernhollow bath oils", "title: Fernhollow soaps"),
            List.of("papers: mm", "papers: in"),
            List.of("ratio: \"16:9\", size: [3840 px, 2160 px]", "ratio: \"2:1\", size: [3840 px, 1920 px]"),
            List.of("body: opaque", "body: clear"),
            List.of("197 g measured", "197 g typical"),
            List.of("macro: {focal_length: 100 mm", "macro: {focal_length: 100 mm typical"),
            List.of("white: 5600 K", "white: 5600 K typical"),
            List.of("speed: 80 mm/s", "speed: 80 mm/s measured"),
            List.of("body: main, lens: fifty", "body: main, held: upright, lens: fifty"),
            List.of("lens: fifty", "lens: macro"),
            List.of("aim: first", "aim: second"),
            List.of("aim: first", "aim: ahead"),
            List.of("52 mm]", "52 mm ± 1 mm]"),
            List.of("52 mm]", "52 mm measured]"),
            List.of("139 mm ± 1 mm", "139 mm"),
            List.of("139 mm ± 1 mm", "139 mm ± 2 mm"),
            List.of("thing: flacon.bergamot, at", "thing: flacon.rose, at"),
            List.of("thing: flacon.lavender, at", "thing: flacon.rose, at"),
            List.of("at: [-6 mm, 312 mm]", "at: [-6 mm, 312 mm], turn: 10 deg"),
            List.of("-6 mm, 312 mm]}\n", "-6 mm, 312 mm]}\n      fifth: {thing: flacon.rose, at: [9 mm, 400 mm]}\n"),
            List.of("light: strip, at: [500 mm, -300 mm, 400 mm]", "light: tubes, at: [500 mm, -300 mm, 400 mm]"),
            List.of("-300 mm, 400 mm]}}", "-300 mm, 400 mm], level: 50 %}}"),
            List.of("-300 mm, 400 mm]}}", "-300 mm, 400 mm], aim: third}}"),
            List.of("profile: trapezoid", "profile: even"),
            List.of("keeps: [first, second, third, fourth]", "keeps: [first, second, third]"),
            List.of("machine: head, keeps", "machine: plate, keeps"),
            List.of("    speed: 200 %\n", ""),
            List.of("speed: 400 %", "speed: 100 %"),
            List.of("lines: 2", "tied: [30 mm, 110 mm]"),
            List.of("start: 0.2 s", "start: 5 frames"),
            List.of("carries: hero, by: 60 deg", "carries: hero, start: 0.1 s, by: 60 deg"),
            List.of("place.hero.thing: flacon.rose", "place.hero.thing: flacon.cedar"),
            List.of("bergamot: {}, rose", "bergamot: {}, plain: {}, rose"),
            List.of("lights.key.level: 0 %", "lights.key.level: 10 %"),
            List.of("when: start}\n      - {shown", "when: end}\n      - {shown"),
            List.of("hidden: [second, third, fourth]", "hidden: [second, third]"),
            List.of("      - {shown: [first, second, third, fourth], gap: 2 %, when: end}\n", ""),
            List.of("pass: bergamot, frames", "pass: rose, frames"),
            List.of("[green, white], each", "[white, green], each"),
            List.of("sound: whoosh", "sound: bell"),
            List.of("{shot: open, when: end}", "{shot: open, when: start}"),
            List.of("{shot: cloud, when: 0.6 s}", "{shot: spin, when: 0.6 s}"),
            List.of("{on_beat: cuts}, ", ""),
            List.of("inside: [wide, phone]", "inside: [wide]"),
            List.of("  - {shot: cloud, frames: 120}\n", ""),
            List.of("    speed: [[0 frames, 100 %]", "    reset: 35 min\n    speed: [[0 frames, 100 %]"));

    /// A change of the plan and what became of it.
    private record Edit(String name, String text) {
        /// What isn't as it should be; nothing where the plan can't be read.
        List<String> faults(FilmAnswer before, Map<String, String> old) {
            FilmAnswer film;
            try {
                film = Made.film(text);
            } catch (IllegalArgumentException refused) {
                return List.of(REFUSED + name);
            }
            Changes changes = Changes.between(before, film);
            String html = Papers.of(film, new Printed("now", changes)).html();
            List<String> faults = new ArrayList<>();
            boolean differs = false;
            for (var sheet : sections(html).entrySet()) {
                boolean isSame = sheet.getValue().equals(old.get(sheet.getKey()));
                differs |= !isSame;
                boolean isTold = changes.lines().stream()
                        .anyMatch(line -> line.startsWith(sheet.getKey() + ": ") || line.startsWith("film: "));
                if (!isSame && !isTold && !sheet.getKey().equals("film")) {
                    faults.add(name + ": nothing is told of " + sheet.getKey());
                }
            }
            if (changes.lines().isEmpty()) {
                return differs ? List.of(name + ": nothing is told") : List.of(SAME + name);
            }
            faults.addAll(unmarked(html, changes));
            return faults.stream()
                    .map(fault -> name + ": " + fault + " " + changes.lines())
                    .toList();
        }

        private static List<String> unmarked(String html, Changes changes) {
            List<String> told = Stream.concat(
                            TOLD.matcher(html)
                                    .results()
                                    .map(found -> plain(found.group(1)).replace(" Changed: ", "")),
                            GONE.matcher(html).results().map(found -> plain(found.group(1))))
                    .toList();
            List<String> faults = new ArrayList<>();
            changes.lines().stream()
                    .filter(line -> told.stream().noneMatch(line::endsWith))
                    .forEach(line -> faults.add("not marked: " + line));
            told.stream()
                    .filter(text -> changes.lines().stream().noneMatch(line -> line.endsWith(text)))
                    .forEach(text -> faults.add("not listed: " + text));
            if (MARKED.matcher(html).results().count() > told.size()) {
                faults.add("marked without a word");
            }
            return faults;
        }

        private static String plain(String markup) {
            return markup.replaceAll("<[^>]*>", "").replace("&#39;", "'");
        }
    }

    private static String example() {
        try {
            return Files.readString(
                    Path.of(System.getProperty("basedir", "")).toAbsolutePath().resolve("examples/fernhollow.yaml"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /// The sheets as they would be printed without a word of what changed.
    private static Map<String, String> sections(String html) {
        Map<String, String> sections = new TreeMap<>();
        SECTION.matcher(html)
                .results()
                .forEach(found -> sections.put(
                        found.group(1),
                        found.group(2)
                                .replaceAll("<h2>No longer on this sheet</h2>\n<ul>.*?</ul>", "")
                                .replaceAll(WAS, "")
                                .replace(" class=\"changed\"", "")
                                .replace(" changed\"", "\"")));
        return sections;
    }

    private static Edit figure(MatchResult figure) {
        BigDecimal value = new BigDecimal(figure.group());
        BigDecimal next = value.signum() == 0
                ? BigDecimal.valueOf(15)
                : value.multiply(new BigDecimal("1.25")).setScale(value.scale(), RoundingMode.UP);
        String context = PLAN.substring(Math.max(0, figure.start() - 40), Math.min(PLAN.length(), figure.end() + 12));
        return new Edit(
                context.replace('\n', ' ') + " -> " + next,
                PLAN.substring(0, figure.start()) + next.toPlainString() + PLAN.substring(figure.end()));
    }

    private static Edit word(List<String> change) {
        int at = PLAN.indexOf(change.getFirst());
        assertThat(at).as(change.getFirst()).isNotNegative();
        return new Edit(
                change.toString(),
                PLAN.substring(0, at)
                        + change.getLast()
                        + PLAN.substring(at + change.getFirst().length()));
    }

    /// What isn't as it should be, edit by edit.
    private static List<List<String>> faults(List<Edit> edits) {
        FilmAnswer before = Made.film(PLAN);
        Map<String, String> old = sections(Papers.of(before, new Printed("now", Changes.between(before, before)))
                .html());
        return edits.parallelStream().map(edit -> edit.faults(before, old)).toList();
    }

    @Test
    void everyFigure_isToldAndMarkedWhereItIsPrinted() {
        List<List<String>> all =
                faults(FIGURE.matcher(PLAN).results().map(EveryFieldIT::figure).toList());
        assertThat(all.stream()
                        .flatMap(List::stream)
                        .filter(fault -> !fault.startsWith(REFUSED) && !fault.startsWith(SAME)))
                .isEmpty();
        assertThat(all.stream().filter(List::isEmpty)).hasSizeGreaterThanOrEqualTo(140);
    }

    @Test
    void everyWord_isToldAndMarkedWhereItIsPrinted() {
        assertThat(faults(WORDS.stream().map(EveryFieldIT::word).toList()).stream()
                        .flatMap(List::stream))
                .isEmpty();
    }
}
