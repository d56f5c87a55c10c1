package plumeline.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.draw.time.TimelineRuler;
import plumeline.plan.Cut;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.sketch.Drawing;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;
import plumeline.time.Timecode;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// The timeline as a ruler, and its entries in a table.
final class TimelinePart {
    /// Speeds a frame that differ by less are one.
    private static final double KNEE = 1e-9;

    private final FilmAnswer film;
    private final Plan plan;
    private final Timeline timeline;

    private TimelinePart(FilmAnswer film, Timeline timeline) {
        this.film = film;
        plan = film.plan();
        this.timeline = timeline;
    }

    static String of(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "" : " of " + timeline.delivery();
    }

    static Markup section(FilmAnswer film, PostPapers.Laid laid) {
        return new TimelinePart(film, laid.timeline()).section(laid);
    }

    private Markup section(PostPapers.Laid laid) {
        Markup section = Markup.of(
                        "section",
                        Markup.of("h1", "Timeline" + of(timeline)),
                        Rows.flowing(Markup.of("p").with("class", "length"), length()),
                        Markup.of(
                                "p",
                                "Under each other: entries of the cut, short strokes where looks change, and what is"
                                        + " seen where they begin; the speed over"
                                        + " a thin line for a hold; frames; beats, where the film has a tempo; seconds"
                                        + " on the table from each shot's GO; sounds, titles and overlays, a stroke"
                                        + " where they meet the picture."))
                .with("class", "shot")
                .with("id", "timeline." + timeline.name());
        for (Drawing drawing : TimelineRuler.draw(film, timeline, laid.heard())) {
            section.add(DrawingsPart.figure(drawing, ""));
        }
        return section.add(
                Markup.of("h2", "Entries"), Rows.pairs(entries(), Changes.none(), Changes.Of.CUT, Changes.FILM));
    }

    private String length() {
        double seconds = timeline.rate().secondsOf((double) timeline.frames());
        return timeline.frames() + " frames at " + plan.film().rate().valueText() + ", " + Print.number(seconds, 2)
                + " s"
                + plan.film()
                        .tempo()
                        .map(tempo -> ", " + tempo.valueText()
                                + plan.film()
                                        .written()
                                        .findQuantity("first_beat")
                                        .map(first -> " from " + first.valueText())
                                        .orElse(""))
                        .orElse("")
                + ".";
    }

    private List<Rows.Pair> entries() {
        List<Rows.Pair> rows = new ArrayList<>();
        Map<Integer, List<Span>> byEntry = timeline.spans().stream().collect(Collectors.groupingBy(Span::entry));
        for (int i = 0; i < timeline.entries().size(); i++) {
            Timeline.Entry entry = timeline.entries().get(i);
            List<Span> spans = byEntry.getOrDefault(i, List.of());
            rows.add(new Rows.Pair(
                    (i + 1) + ": " + entry.cut().shot().name()
                            + entry.cut().pass().map(pass -> ", " + pass.name()).orElse(""),
                    words(entry, spans)));
        }
        return rows;
    }

    private String words(Timeline.Entry entry, List<Span> spans) {
        Cut cut = entry.cut();
        List<String> words = new ArrayList<>();
        words.add(
                (cut.frames() == 1 ? "frame " + entry.first() : "frames " + entry.first() + " to " + (entry.past() - 1))
                        + label(entry.first()));
        cut.findBeat().ifPresent(beat -> words.add("from beat " + beat));
        if (cut.fromOrDefault() > 0) {
            words.add("from the shot's frame " + cut.fromOrDefault());
        }
        words.add(speed(spans));
        cut.each().ifPresent(each -> words.add("looks of " + each + " frames each"));
        List<String> sources = new ArrayList<>();
        spans.stream()
                .collect(Collectors.groupingBy(Span::pass, LinkedHashMap::new, Collectors.toList()))
                .values()
                .stream()
                .map(this::source)
                .forEach(sources::add);
        return String.join(", ", words) + ". " + String.join("; ", sources) + ".";
    }

    private String label(long frame) {
        return plan.film()
                .findTimecode()
                .map(timecode -> " from " + timecode.label(plan.film().startFrame() + frame))
                .orElse("");
    }

    private static String speed(List<Span> spans) {
        Span span = spans.getFirst();
        double from = (double) span.shotFrame();
        double last = (double) (spans.getLast().shotFrame() + spans.getLast().frames() - 1);
        if (!span.played().isRamped(span.shotFrame(), (long) last + 1)) {
            return "at " + percent(span, from);
        }
        List<String> knees = new ArrayList<>();
        double rise = 0;
        for (double frame = from; frame < last; frame++) {
            double next = span.played().retime().speedAt(frame + 1)
                    - span.played().retime().speedAt(frame);
            boolean isKnee = frame == from || Math.abs(next - rise) > KNEE && next * rise <= 0;
            if (isKnee && (knees.isEmpty() || !knees.getLast().equals(percent(span, frame)))) {
                knees.add(percent(span, frame));
            }
            rise = next;
        }
        if (!knees.getLast().equals(percent(span, last))) {
            knees.add(percent(span, last));
        }
        return "a ramp: " + String.join(", ", knees);
    }

    private static String percent(Span span, double frame) {
        return Print.number(100 * span.played().retime().speedAt(frame), 1) + " %";
    }

    /// Which recorded frames the spans of one pass in an entry go through.
    private String source(List<Span> spans) {
        Clip clip = Clip.of(plan, spans.getFirst().shot(), spans.getFirst().pass());
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (Span one : spans) {
            for (long frame = one.first(); frame < one.past(); frame++) {
                least = Math.min(least, one.sourceFrame(frame));
                most = Math.max(most, one.sourceFrame(frame));
            }
        }
        Optional<Timecode> timecode = plan.film().findTimecode();
        long go = clip.goFrame();
        String range = timecode.isPresent()
                ? timecode.get().label(go + least) + " through "
                        + timecode.get().label(go + most)
                : "recorded frames " + least + " to " + most + " from GO";
        return clip.name() + (clip.isMissing() ? " (missing)" : "") + " " + range;
    }
}
