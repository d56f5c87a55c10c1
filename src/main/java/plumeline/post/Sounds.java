package plumeline.post;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import java.util.stream.Collectors;
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
    private static final double LONGEST_SECONDS = 1200;

    private final FilmAnswer film;
    private final Timeline timeline;
    private final CueSheet sheet;

    Sounds(FilmAnswer film, Timeline timeline) {
        this.film = film;
        this.timeline = timeline;
        sheet = CueSheet.of(film, timeline);
    }

    /// A file.
    record Made(String name, String words, Supplier<byte[]> bytes) {}

    /// The guide's file; empty for a cut so long that a track of it would be larger than memory.
    static String guideName(Timeline timeline) {
        return hasGuide(timeline) ? before(timeline) + "guide.wav" : "";
    }

    private static boolean hasGuide(Timeline timeline) {
        return timeline.rate().secondsOf((double) timeline.frames()) <= LONGEST_SECONDS;
    }

    private static String before(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "" : timeline.name() + ".";
    }

    List<String> notes() {
        List<String> notes = new ArrayList<>(sheet.notes());
        if (!hasGuide(timeline)) {
            notes.add("There is no guide track: the cut is longer than 20 minutes.");
        }
        return notes;
    }

    List<Made> list() {
        String of = timeline.delivery().isEmpty() ? "" : " of " + timeline.delivery() + "'s own cut";
        List<Made> all = new ArrayList<>();
        if (hasGuide(timeline)) {
            all.add(new Made(
                    guideName(timeline),
                    "sound to cut by" + (of.isEmpty() ? "" : "," + of)
                            + ", 48 kHz, 24 bit, as long as that cut: beats, cuts, noise that follows the"
                            + " speed of ramps, a placeholder for each sound; softer as a whole where they would clip.",
                    () -> GuideTrack.of(film, timeline).wav()));
        }
        if (!sheet.rows().isEmpty()) {
            all.add(new Made(
                    before(timeline) + "cues.csv",
                    "the cue sheet" + of + ": in, sync point and out as frames, timecode and samples, layer and pan.",
                    () -> sheet.csv().getBytes(UTF_8)));
            all.add(new Made(
                    before(timeline) + "cues.vtt",
                    "the same as cues for a player.",
                    () -> sheet.webVtt().getBytes(UTF_8)));
        }
        return all;
    }

    /// What the papers say of it.
    PostPapers.Laid laid() {
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
        return new PostPapers.Laid(
                timeline, heard, sheet.rows().stream().map(this::row).collect(Collectors.toList()));
    }

    private PostPapers.CueRow row(CueRow row) {
        List<String> words = new ArrayList<>();
        words.add("in " + instant(row.in()) + ", meets " + row.shows().name() + " at " + instant(row.sync()) + ", out "
                + instant(row.out()));
        if (!row.layer().isEmpty()) {
            words.add("layer " + row.layer());
        }
        words.add(
                row.thing().isEmpty()
                        ? "pan in the middle"
                        : "pan " + pan(row.in()) + ", " + pan(row.sync()) + ", " + pan(row.out()) + " with "
                                + row.thing());
        return new PostPapers.CueRow(row.sound(), String.join("; ", words) + ".");
    }

    private String instant(CueRow.Place place) {
        String label = place.frame() < 0 ? "" : sheet.label(place.frame());
        return "frame " + place.frame() + (label.isEmpty() ? "" : " (" + label + ")");
    }

    private static String pan(CueRow.Place place) {
        long percent = Math.round(100 * Math.abs(place.pan()));
        return percent == 0 ? "C" : String.format(Locale.ROOT, "%s %d %%", place.pan() < 0 ? "L" : "R", percent);
    }
}
