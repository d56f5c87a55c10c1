package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.draw.time.TimelineRuler;
import plumeline.plan.Cut;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.sketch.Drawing;
import plumeline.sketch.Markup;
import plumeline.time.Timecode;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// The timeline as a ruler, and its entries in a table.
final class TimelinePart {
    /// Speeds a frame that differ by less are one.
    private static final double KNEE = 1e-9;

    private final Plan plan;
    private final Timeline timeline;

    private TimelinePart(Plan plan, Timeline timeline) {
        this.plan = plan;
        this.timeline = timeline;
    }

    static String of(Timeline timeline) {
        return timeline.delivery().isEmpty() ? "" : " of " + timeline.delivery();
    }

    static Markup section(Plan plan, PostPapers.Laid laid) {
        return new TimelinePart(plan, laid.timeline()).section(laid);
    }

    private Markup section(PostPapers.Laid laid) {
        Markup section = Markup.of(
                        "section",
                        Markup.of("h1", "Timeline" + of(timeline)),
                        Rows.flowing(Markup.of("p").with("class", "length"), length()),
                        Markup.of(
                                "p",
                                "Under each other: entries of the cut, short strokes where looks change; the speed over"
                                        + " a thin line for a hold; frames; beats, where the film has a tempo; seconds"
                                        + " on the table from each shot's GO; sounds, titles and overlays, a stroke"
                                        + " where they meet the picture."))
                .with("class", "shot")
                .with("id", "timeline." + timeline.name());
        for (Drawing drawing : TimelineRuler.draw(plan, timeline, laid.heard())) {
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
        for (int i = 0; i < timeline.entries().size(); i++) {
            Timeline.Entry entry = timeline.entries().get(i);
            int index = i;
            List<Span> spans = timeline.spans().stream()
                    .filter(span -> span.entry() == index)
                    .toList();
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
        for (Span span : spans) {
            String source = source(span);
            if (spans.stream()
                    .filter(one -> one.pass().equals(span.pass()))
                    .findFirst()
                    .equals(Optional.of(span))) {
                sources.add(source);
            }
        }
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

    /// Which recorded frames all spans of its pass in the entry go through.
    private String source(Span span) {
        Clip clip = Clip.of(plan, span.shot(), span.pass());
        long least = Long.MAX_VALUE;
        long most = Long.MIN_VALUE;
        for (Span one : timeline.spans()) {
            if (one.entry() == span.entry() && one.pass().equals(span.pass())) {
                for (long frame = one.first(); frame < one.past(); frame++) {
                    least = Math.min(least, one.sourceFrame(frame));
                    most = Math.max(most, one.sourceFrame(frame));
                }
            }
        }
        Optional<Timecode> timecode = plan.film().findTimecode();
        long go = clip.goFrame();
        String range = timecode.isPresent()
                ? timecode.get().label(go + least) + " to and with "
                        + timecode.get().label(go + most)
                : "recorded frames " + least + " to " + most + " from GO";
        return clip.name() + (clip.isMissing() ? " (missing)" : "") + " " + range;
    }
}
