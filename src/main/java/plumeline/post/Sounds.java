package plumeline.post;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
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

    static String guideName(Timeline timeline) {
        return "";
    }

    static List<Made> list(FilmAnswer film, Timeline timeline) {
        return List.of();
    }

    static PostPapers.Laid laid(Plan plan, Timeline timeline) {
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
        return new PostPapers.Laid(timeline, heard, List.of());
    }
}
