package plumeline.post;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import plumeline.cut.cue.CueRow;
import plumeline.cut.cue.CueSheet;
import plumeline.cut.cue.GuideTrack;
import plumeline.draw.time.Heard;
import plumeline.plan.Plan;
import plumeline.sheet.PostPapers;
import plumeline.solve.FilmAnswer;
import plumeline.timeline.Laid;
import plumeline.timeline.Timeline;

/// What is heard along a timeline: cue sheets, guide track, rows of the papers.
final class Sounds {
    private Sounds() {}

    /// A file.
    record Made(String name, String words, Supplier<byte[]> bytes) {}

    private static String base(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "film" : timeline.delivery();
    }

    static String guideName(Timeline timeline) {
        return base(timeline) + "-guide.wav";
    }

    static List<Made> list(FilmAnswer film, Timeline timeline) {
        List<Made> made = new ArrayList<>();
        if (!film.plan().cutList().cues().isEmpty()) {
            made.add(new Made(
                    base(timeline) + "-cues.csv",
                    "cue sheet: in, sync point and out of each sound as timecode, frames and samples at 48 kHz,"
                            + " with its pan.",
                    () -> CueSheet.of(film, timeline).csv().getBytes(UTF_8)));
            made.add(new Made(
                    base(timeline) + "-cues.vtt",
                    "the same as WebVTT, to be shown over the picture.",
                    () -> CueSheet.of(film, timeline).webVtt().getBytes(UTF_8)));
        }
        made.add(new Made(
                guideName(timeline),
                "guide track, 24 bits at 48 kHz: beats, cuts, noise that follows each ramp, a placeholder for each"
                        + " sound.",
                () -> GuideTrack.of(film, timeline).wav()));
        return made;
    }

    /// The cue sheet as the papers have it.
    private static List<PostPapers.CueRow> rows(CueSheet sheet) {
        return sheet.rows().stream()
                .map(row -> new PostPapers.CueRow(
                        row.sound(),
                        label(sheet, row.in()) + " in, " + label(sheet, row.sync()) + " sync, "
                                + label(sheet, row.out()) + " out; with "
                                + row.shows().name() + (row.thing().isEmpty() ? "" : ": " + row.thing())
                                + (row.layer().isEmpty() ? "" : "; layer " + row.layer()) + "; pan "
                                + sheet.pan(row)))
                .toList();
    }

    private static String label(CueSheet sheet, CueRow.Place place) {
        String label = sheet.label(place.frame());
        return label.isEmpty() ? "frame " + place.frame() : label;
    }

    static PostPapers.Laid laid(FilmAnswer film, Timeline timeline) {
        Plan plan = film.plan();
        List<Heard> heard = new ArrayList<>();
        for (Laid<Plan.Cue> cue : Laid.listCues(plan, timeline)) {
            heard.add(new Heard(cue.what().sound(), cue.begin(), cue.sync(), cue.end()));
        }
        for (Laid<Plan.Overlay> overlay : Laid.listOverlays(plan, timeline)) {
            heard.add(new Heard("overlay " + overlay.what().name(), overlay.begin(), overlay.sync(), overlay.end()));
        }
        plan.cutList().titles().stream()
                .map(Plan.Title::language)
                .distinct()
                .flatMap(language -> Laid.listTitles(plan, timeline, language).stream())
                .forEach(title -> heard.add(new Heard(
                        "title " + title.what().language() + ": “"
                                + title.what().text() + "”",
                        title.begin(),
                        title.sync(),
                        title.end())));
        return new PostPapers.Laid(timeline, heard, rows(CueSheet.of(film, timeline)));
    }
}
