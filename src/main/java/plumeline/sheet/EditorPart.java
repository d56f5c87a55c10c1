package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalLong;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.quantity.Print;
import plumeline.sketch.Markup;
import plumeline.time.Timecode;
import plumeline.timeline.ScreenBlend;
import plumeline.timeline.Timeline;

/// The page for the editor: what to open, in which order, what is missing, what is delivered.
final class EditorPart {
    private final Plan plan;
    private final String title;
    private final PostPapers.Content content;

    EditorPart(Plan plan, String title, PostPapers.Content content) {
        this.plan = plan;
        this.title = title;
        this.content = content;
    }

    Markup section() {
        Markup section = Markup.of("section").with("class", "cover").with("id", "editor");
        section.add(Markup.of("h1", title).with("dir", "auto"));
        section.add(Rows.flowing(Markup.of("p").with("class", "length"), "For the editor. " + clock()));
        section.add(Markup.of("h2", "Open in this order"), files());
        section.add(Markup.of("h2", "What is missing"));
        section.add(
                content.missing().isEmpty()
                        ? Markup.of("p", "Nothing that the plan knows of.")
                        : Rows.bullets(content.missing()));
        if (!content.lost().isEmpty()) {
            section.add(Markup.of("h2", "What the lists don't hold"), Rows.bullets(content.lost()));
        }
        if (!plan.cutList().overlays().isEmpty()) {
            section.add(Markup.of("h2", "Overlays"), overlays());
        }
        if (!plan.deliveries().isEmpty()) {
            section.add(
                    Markup.of("h2", "To be delivered"),
                    Rows.pairs(deliveries(), Changes.none(), Changes.Of.DELIVERY, Changes.FILM));
        }
        return section;
    }

    private String clock() {
        String rate = plan.film().rate().valueText();
        String labels = plan.film()
                .findTimecode()
                .map(timecode -> ", timecode "
                        + (timecode.counting() == Timecode.Counting.DROP ? "drop-frame" : "non-drop")
                        + " from " + timecode.label(plan.film().startFrame()))
                .orElse(", a rate without timecode");
        return rate + labels + ". A clip's timecode counts its recorded frames at the film's rate; handles of "
                + plan.film().handlesOrDefault() + " recorded frames"
                + (plan.film().written().has("handles") ? "." : ", as none are written.");
    }

    private Markup files() {
        List<Rows.Pair> rows = new ArrayList<>();
        for (PostPapers.Opened file : content.files()) {
            rows.add(new Rows.Pair((rows.size() + 1) + ": " + file.name(), file.words()));
        }
        return Rows.pairs(rows, Changes.none(), Changes.Of.CUT, Changes.FILM);
    }

    private Markup overlays() {
        List<Rows.Pair> rows = new ArrayList<>();
        for (Plan.Overlay overlay : plan.cutList().overlays()) {
            OptionalLong frames = overlay.findFrames();
            String black = overlay.blackOrDefault() > 0
                    ? "its black sits at b = " + Print.share(overlay.blackOrDefault(), 1) + " of "
                            + overlay.rangeOrDefault() + " range on the " + overlay.transferOrDefault()
                            + " scale: first (x − b)/(1 − b), which makes "
                            + Print.share(new ScreenBlend(overlay.blackOrDefault(), 1).lifted(0.5), 1)
                            + " of 50 %, then the screen blend"
                    : "a screen blend on the " + overlay.transferOrDefault() + " scale, " + overlay.rangeOrDefault()
                            + " range, its black at 0";
            rows.add(new Rows.Pair(
                    overlay.name(),
                    overlay.findFile().orElse("no file yet") + ", over "
                            + overlay.over().shot().name()
                            + overlay.over()
                                    .pass()
                                    .map(pass -> ", " + pass.name())
                                    .orElse("")
                            + where(overlay)
                            + (frames.isPresent() ? " for " + frames.getAsLong() + " frames" : " until its entry ends")
                            + "; " + black
                            + (overlay.levelOrDefault() < 1
                                    ? ", laid on at " + Print.share(overlay.levelOrDefault(), 1)
                                    : "")
                            + "."));
        }
        return Rows.pairs(rows, Changes.none(), Changes.Of.CUT, Changes.FILM);
    }

    /// Where the film has it.
    private String where(Plan.Overlay overlay) {
        return content.timelines().stream()
                .map(PostPapers.Laid::timeline)
                .filter(timeline -> timeline.findFrame(overlay.over()).isPresent())
                .findFirst()
                .map(timeline -> {
                    long frame = (long) timeline.findFrame(overlay.over()).orElseThrow();
                    String label = plan.film()
                            .findTimecode()
                            .map(timecode -> " (" + timecode.label(plan.film().startFrame() + frame) + ")")
                            .orElse("");
                    return TimelinePart.of(timeline) + " from frame " + frame + label;
                })
                .orElse("");
    }

    private List<Rows.Pair> deliveries() {
        List<Rows.Pair> rows = new ArrayList<>();
        List<Rows.Pair> told = FilmRows.deliveries(plan);
        for (int i = 0; i < told.size(); i++) {
            Delivery delivery = plan.deliveries().get(i);
            Timeline timeline = Timeline.of(plan, delivery);
            String cut = delivery.listCuts().isEmpty() ? "" : ", a cut of its own of " + timeline.frames() + " frames";
            List<String> keys = new ArrayList<>();
            for (Timeline.Entry entry : timeline.entries()) {
                for (Cut.Reframe key : entry.cut().listReframes(delivery.name())) {
                    keys.add(reframe(entry, key));
                }
            }
            String reframed = keys.isEmpty() ? "" : ". Reframed: " + String.join("; ", keys);
            rows.add(new Rows.Pair(delivery.name(), told.get(i).text() + cut + reframed + "."));
        }
        return rows;
    }

    private static String reframe(Timeline.Entry entry, Cut.Reframe key) {
        return FilmRows.reframe(key)
                .replaceFirst("at frame " + key.frame(), "at frame " + (entry.first() + key.frame()));
    }
}
