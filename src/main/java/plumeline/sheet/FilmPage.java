package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.plan.Plan;
import plumeline.press.Bundled;
import plumeline.quantity.PaperUnit;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;

/// The whole page: running line, cover, a sheet a shot.
final class FilmPage {
    private final FilmAnswer film;
    private final Plan plan;
    private final String title;
    private final Printed printed;
    private final List<Subject> subjects;

    /// Sections a part: what is printed at once.
    private static final int PART = 4;

    /// Letters of the running line.
    private static final int LINE = 58;

    private final List<String> sections;

    /// Draws the cover and the sheets, side by side, each by itself.
    FilmPage(FilmAnswer film, Printed printed) {
        this.film = film;
        this.printed = printed;
        plan = film.plan();
        title = FilmRows.title(plan);
        subjects = film.shots().stream().map(shot -> new Subject(plan, shot)).toList();
        List<String> sheets = subjects.parallelStream()
                .map(subject -> ShotSheet.of(film, subject, title, printed).toText())
                .toList();
        // Papers of one shot open with it unless they say what changed; else the cover is the way to each.
        sections = new ArrayList<>(sheets);
        sections.add(sheets.size() == 1 && !printed.changes().isCompared() ? 1 : 0, cover().toText());
    }

    /// The whole page.
    String html() {
        return html(sections);
    }

    /// The page in parts of a few sections, each a page of its own.
    List<String> parts() {
        List<String> parts = new ArrayList<>();
        for (int from = 0; from < sections.size(); from += PART) {
            parts.add(html(sections.subList(from, Math.min(from + PART, sections.size()))));
        }
        return parts;
    }

    private String html(List<String> chosen) {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">" + head().toText() + "<body>"
                + running().toText() + "<main>" + String.join("", chosen) + "</main></body></html>\n";
    }

    private Markup head() {
        return Markup.of(
                "head",
                Markup.of("meta").with("charset", "UTF-8"),
                Markup.of("title", title + ": shot sheets"),
                Markup.of("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
                Markup.of("meta").with("name", "description").with("content", "Shot sheets of " + title),
                Markup.of("meta").with("name", "subject").with("content", "Shot sheets of " + title),
                Markup.style(Bundled.styleSheet()),
                Markup.style(ticked()).with("media", "screen"));
    }

    /// What is ticked in the table of marks leaves the line that says what is next; without a style sheet that can look
    /// ahead the line keeps the first.
    private String ticked() {
        int most = subjects.stream()
                .mapToInt(subject -> subject.answer().marks().size())
                .max()
                .orElse(0);
        return IntStream.rangeClosed(0, most)
                .mapToObj(i -> ".shot:has(.t" + i + ":checked) .n" + i + "{display:none}")
                .collect(Collectors.joining("\n"));
    }

    private Markup running() {
        return Markup.of(
                        "header",
                        Markup.of("p", shortened(title)).with("class", "film").with("dir", "auto"),
                        Markup.of("p", "plan revision " + Papers.revision(film) + " · printed " + printed.time()))
                .with("class", "running");
    }

    /// Cuts a title to what fits a running line; a letter as wide as it is high counts twice.
    static String shortened(String title) {
        int room = LINE;
        for (int at = 0; at < title.length(); at = title.offsetByCodePoints(at, 1)) {
            room -= title.codePointAt(at) >= 0x1100 ? 2 : 1;
            if (room < 0) {
                return title.substring(0, at) + "...";
            }
        }
        return title;
    }

    private Markup cover() {
        Markup cover = Markup.of("section").with("class", "cover").with("id", "film");
        Changes changes = printed.changes();
        cover.add(Markup.of("h1", title).with("dir", "auto"));
        Markup renamed = changes.tell(Markup.of("p"), Changes.Of.TITLE, Changes.FILM, Facts.TITLE);
        if (renamed.findAttribute("class").isPresent()) {
            cover.add(renamed);
        }
        cover.add(Rows.verdict(film.verdict().word(), summary()));
        cover.add(Markup.of("h2", "Shots"), shots());
        if (changes.isCompared()) {
            changes(cover);
        }
        if (!plan.cuts().isEmpty()) {
            cover.add(
                    Markup.of("h2", "In the cut"),
                    Rows.pairs(FilmRows.cut(plan), changes, Changes.Of.CUT, Changes.FILM));
        }
        if (!plan.deliveries().isEmpty()) {
            cover.add(
                    Markup.of("h2", "To be delivered"),
                    Rows.pairs(FilmRows.deliveries(plan), changes, Changes.Of.DELIVERY, Changes.FILM));
        }
        if (!film.wants().isEmpty()) {
            cover.add(Markup.of("h2", "What must be true of the whole film"));
            film.wants().forEach(want -> cover.add(WantsPart.want(changes, Changes.FILM, want)));
        }
        cover.add(Markup.of("h2", "How to read these sheets"), howTo());
        return cover;
    }

    private void changes(Markup cover) {
        cover.add(Markup.of(
                "h2", "Changed since plan revision " + printed.changes().since()));
        List<String> lines = printed.changes().lines();
        List<String> gone = printed.changes().gone(Changes.FILM);
        Markup list = Markup.of("ul").with("class", "changes");
        for (String line : lines) {
            Markup item = Rows.flowing(Markup.of("li"), line);
            list.add(gone.contains(line) ? item.with("class", "changed") : item);
        }
        cover.add(lines.isEmpty() ? Markup.of("p", "Nothing that is printed here.") : list);
    }

    private String summary() {
        List<String> counts = new ArrayList<>();
        for (Verdict verdict : Verdict.values()) {
            long count = allWants().stream()
                    .filter(want -> want.verdict() == verdict)
                    .count();
            if (count > 0) {
                counts.add(count + (verdict == Verdict.UNKNOWN ? " unknown" : " " + phrase(verdict, count)));
            }
        }
        return counts.isEmpty() ? "No want is written." : "Of the wants, " + String.join(", ", counts) + ".";
    }

    private static String phrase(Verdict verdict, long count) {
        return switch (verdict) {
            case FAILS -> count == 1 ? "fails" : "fail";
            case UNKNOWN -> "unknown";
            case TIGHT -> "tight";
            case NO_OBJECTION_FOUND -> "no objection found";
            case HOLDS -> count == 1 ? "holds" : "hold";
        };
    }

    private List<WantAnswer> allWants() {
        List<WantAnswer> all = new ArrayList<>(film.wants());
        film.shots().forEach(shot -> all.addAll(shot.wants()));
        return all;
    }

    private Markup shots() {
        Markup body = Markup.of("tbody");
        for (Subject subject : subjects) {
            String verdict =
                    Standing.of(plan, subject.answer()).limiting().verdict().word();
            body.add(Rows.named(
                    subject.number() + ": " + subject.name(),
                    Markup.of(
                                    "td",
                                    Markup.of(
                                                    "div",
                                                    Markup.of("a", subject.number() + ": " + subject.name())
                                                            .with("href", "#shot." + subject.name())
                                                            .with("title", "Sheet of shot " + subject.name()))
                                            .with("class", "who"))
                            .with("class", "name"),
                    Markup.of("td", subject.length()),
                    Markup.of("td", Markup.of("span", verdict).with("class", "verdict " + verdict))));
        }
        return Markup.of("table", Rows.head(List.of("Shot", "Length", "Finding")), body);
    }

    private Markup howTo() {
        boolean metric = plan.film().papersOrDefault() == PaperUnit.MILLIMETRES;
        Markup lengths = Rows.flowing(
                Markup.of("li"),
                metric
                        ? "Lengths are in whole mm, 0.1 mm on motor axes."
                        : "Lengths are in inches and sixteenths, hundredths on motor axes.");
        List<String> all = new ArrayList<>(List.of(
                "From the zero mark: x to camera right, y away from the camera, z up from the table top. Turns count"
                        + " clockwise seen from above.",
                "Frames count on the screen, seconds on the table.",
                "holds: true, and stays so when any one mark is off as a hand may leave it. tight: true, but would"
                        + " then fail. fails: not true as the marks stand. unknown: a fact is missing, or it isn't"
                        + " computed yet. no objection found: the best that is said where glass or weight can"
                        + " hurt someone; it is no permission.",
                "Solved values were found for this plan; typical ones stand for yours until you measure.",
                "Check the revision at the foot of each page against the plan before you build."));
        if (title.codePoints().anyMatch(c -> !Bundled.isLettered(c))) {
            all.add("The print has no letters for some of the film's title: they stand as □ there; the page has them.");
        }
        return Rows.bullets(all).addFirst(printed.changes().tell(lengths, Changes.Of.UNIT, Changes.FILM, ""));
    }
}
