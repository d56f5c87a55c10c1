package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import plumeline.cut.mask.PlateNeed;
import plumeline.draw.time.Heard;
import plumeline.plan.Plan;
import plumeline.press.Bundled;
import plumeline.press.PdfPrinter;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;
import plumeline.timeline.Timeline;

/// The papers for post: a page for the editor, the timeline as a ruler, the cue sheet, masks and clean plates. They say
/// the plan's revision and no time of printing, so that the same plan gives the same papers.
public final class PostPapers {
    private final FilmAnswer film;
    private final Plan plan;
    private final String title;
    private final List<String> sections = new ArrayList<>();

    /// A file that post opens.
    ///
    /// @param name its name in the folder
    /// @param words what it is for
    public record Opened(String name, String words) {}

    /// A row of the cue sheet.
    ///
    /// @param sound what is heard
    /// @param text when it begins, meets the picture and ends, and what it goes with
    public record CueRow(String sound, String text) {}

    /// One timeline with what is heard along it.
    ///
    /// @param timeline the film's, or a cut-down's
    /// @param heard what lies along it
    /// @param cues its cue sheet
    public record Laid(Timeline timeline, List<Heard> heard, List<CueRow> cues) {
        /// Copies the lists.
        public Laid {
            heard = List.copyOf(heard);
            cues = List.copyOf(cues);
        }
    }

    /// A clean plate with what the masks that ask for it go by.
    ///
    /// @param need what to record
    /// @param masks what the masks take for granted, in sentences
    public record Plate(PlateNeed need, List<String> masks) {
        /// Copies the list.
        public Plate {
            masks = List.copyOf(masks);
        }
    }

    /// What the papers tell beside the plan.
    ///
    /// @param files what to open, in this order
    /// @param missing what is missing, in sentences
    /// @param lost what the lists don't hold, in sentences
    /// @param timelines the timelines, the film's first
    /// @param plates the clean plates that masks ask for
    public record Content(
            List<Opened> files, List<String> missing, List<String> lost, List<Laid> timelines, List<Plate> plates) {
        /// Copies the lists.
        public Content {
            files = List.copyOf(files);
            missing = List.copyOf(missing);
            lost = List.copyOf(lost);
            timelines = List.copyOf(timelines);
            plates = List.copyOf(plates);
        }
    }

    private PostPapers(FilmAnswer film, Content content) {
        this.film = film;
        plan = film.plan();
        title = FilmRows.title(plan);
        sections.add(new EditorPart(plan, title, content).section().toText());
        for (Laid laid : content.timelines()) {
            sections.add(TimelinePart.section(film, laid).toText());
        }
        for (Laid laid : content.timelines()) {
            if (!laid.cues().isEmpty()) {
                sections.add(cues(laid).toText());
            }
        }
        if (!content.plates().isEmpty()) {
            sections.add(PlatesPart.section(content.plates()).toText());
        }
    }

    /// Draws the papers.
    ///
    /// @param film the findings on the film
    /// @param content what they tell
    /// @return the papers, to be had as a page and as a print
    public static PostPapers of(FilmAnswer film, Content content) {
        return new PostPapers(film, content);
    }

    private static Markup cues(Laid laid) {
        List<Rows.Pair> rows = laid.cues().stream()
                .map(cue -> new Rows.Pair(cue.sound(), cue.text()))
                .toList();
        return Markup.of(
                        "section",
                        Markup.of("h1", "Cue sheet" + TimelinePart.of(laid.timeline())),
                        Markup.of(
                                "p",
                                "Where each sound begins, where it meets the picture, and where it ends; pan follows"
                                        + " the product, L and R from the picture's middle."),
                        Rows.pairs(rows, Changes.none(), Changes.Of.CUT, Changes.FILM))
                .with("class", "shot")
                .with("id", "cues." + laid.timeline().name());
    }

    /// Gives the papers as one page that opens offline, from phone width to A4.
    ///
    /// @return HTML that is well-formed XML too, with its styles and drawings in it
    public String html() {
        return "<!DOCTYPE html>\n<html xmlns=\"http://www.w3.org/1999/xhtml\" lang=\"en\">" + head().toText() + "<body>"
                + running().toText() + "<main>" + String.join("", sections) + "</main></body></html>\n";
    }

    /// Gives the papers as tagged A4 pages with the lettering embedded.
    ///
    /// @return the PDF file's bytes
    public byte[] pdf() {
        return PdfPrinter.print(List.of(html()), film.planSha256());
    }

    private Markup head() {
        return Markup.of(
                "head",
                Markup.of("meta").with("charset", "UTF-8"),
                Markup.of("title", title + ": for post"),
                Markup.of("meta").with("name", "viewport").with("content", "width=device-width, initial-scale=1"),
                Markup.of("meta").with("name", "description").with("content", "For post: " + title),
                Markup.of("meta").with("name", "subject").with("content", "For post: " + title),
                Markup.style(Bundled.styleSheet()));
    }

    private Markup running() {
        return Markup.of(
                        "header",
                        Markup.of("p", FilmPage.shortened(title))
                                .with("class", "film")
                                .with("dir", "auto"),
                        Markup.of("p", "plan revision " + Papers.revision(film) + " · for post"))
                .with("class", "running");
    }
}
