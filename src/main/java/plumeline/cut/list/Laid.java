package plumeline.cut.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.plan.Plan;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.timeline.Timeline;

/// Something beside the cut's pictures: an overlay, a title or a sound, in frames of the film.
///
/// @param what it is
/// @param first the film's frame that it begins with; a sound may begin before the film, which then lacks that part
/// @param past the one after its last, within the film
/// @param sync the frame that it meets; `first` for what meets none
record Laid<T>(T what, long first, long past, long sync) {
    /// The film's first frame of it.
    long shownFirst() {
        return Math.max(0, first);
    }

    static List<Laid<Plan.Overlay>> listOverlays(Plan plan, Timeline timeline) {
        List<Laid<Plan.Overlay>> all = new ArrayList<>();
        for (Plan.Overlay overlay : plan.cutList().overlays()) {
            OptionalDouble at = timeline.findFrame(overlay.over());
            if (at.isPresent()) {
                long first = nearest(at.getAsDouble());
                long past = overlay.findFrames().isPresent()
                        ? first + overlay.findFrames().getAsLong()
                        : entryEnd(timeline, overlay.over());
                all.add(new Laid<>(overlay, first, within(timeline, first, past), first));
            }
        }
        return sorted(all);
    }

    /// A title is seen wherever its shot is, as long as that is.
    static List<Laid<Plan.Title>> listTitles(Plan plan, Timeline timeline, String language) {
        List<Laid<Plan.Title>> all = new ArrayList<>();
        for (Plan.Title title : plan.cutList().titles()) {
            for (Timeline.Entry entry : timeline.entries()) {
                if (title.language().equals(language)
                        && entry.cut().shot().name().equals(title.shot())) {
                    all.add(new Laid<>(title, entry.first(), entry.past(), entry.first()));
                }
            }
        }
        return sorted(all);
    }

    /// A sound whose length isn't written is heard until the entry ends in which it meets its instant.
    static List<Laid<Plan.Cue>> listCues(Plan plan, Timeline timeline) {
        List<Laid<Plan.Cue>> all = new ArrayList<>();
        for (Plan.Cue cue : plan.cutList().cues()) {
            OptionalDouble at = timeline.findFrame(cue.sync());
            if (at.isPresent()) {
                double begins = at.getAsDouble()
                        - cue.findLead().map(lead -> frames(lead, plan)).orElse(0.0);
                long first = nearest(begins);
                long past = cue.findLength()
                        .map(length -> nearest(begins + frames(length, plan)))
                        .orElseGet(() -> entryEnd(timeline, cue.sync()));
                all.add(new Laid<>(cue, first, within(timeline, first, past), nearest(at.getAsDouble())));
            }
        }
        return sorted(all);
    }

    /// What has no place in a cut, in sentences.
    static List<String> listLost(Plan plan, Timeline timeline) {
        List<String> lost = new ArrayList<>();
        for (Plan.Overlay overlay : plan.cutList().overlays()) {
            if (timeline.findFrame(overlay.over()).isEmpty()) {
                lost.add("The overlay " + overlay.name()
                        + " isn't in it: this cut doesn't show the instant that it begins" + " at.");
            }
        }
        for (Plan.Cue cue : plan.cutList().cues()) {
            if (timeline.findFrame(cue.sync()).isEmpty()) {
                lost.add("The sound " + cue.sound() + " isn't in it: this cut doesn't show the instant that it meets.");
            }
        }
        return lost;
    }

    /// Puts what overlaps onto different layers, as few as need be.
    static <T> List<List<Laid<T>>> layered(List<Laid<T>> sorted) {
        List<List<Laid<T>>> layers = new ArrayList<>();
        for (Laid<T> one : sorted) {
            layers.stream()
                    .filter(layer -> layer.getLast().past() <= one.shownFirst())
                    .findFirst()
                    .orElseGet(() -> {
                        layers.add(new ArrayList<>());
                        return layers.getLast();
                    })
                    .add(one);
        }
        return layers;
    }

    private static <T> List<Laid<T>> sorted(List<Laid<T>> all) {
        // Stable: what begins together stays in the plan's order.
        all.sort(Comparator.comparingLong(Laid::shownFirst));
        return List.copyOf(all);
    }

    private static long entryEnd(Timeline timeline, Plan.Sync sync) {
        return timeline.findEntry(sync).map(Timeline.Entry::past).orElseGet(timeline::frames);
    }

    /// At least one frame of it, none behind the film.
    private static long within(Timeline timeline, long first, long past) {
        return Math.min(timeline.frames(), Math.max(past, Math.max(0, first) + 1));
    }

    private static double frames(Quantity length, Plan plan) {
        return length.kind() == Kind.FRAMES
                ? length.si()
                : length.si() * plan.film().exactRate().framesPerSecond();
    }

    private static long nearest(double frame) {
        return (long) Math.floor(frame + 0.5);
    }
}
