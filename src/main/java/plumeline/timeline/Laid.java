package plumeline.timeline;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.plan.Plan;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;

/// Something beside the cut's pictures, an overlay, a title or a sound, in the film's time.
///
/// @param <T> what it is
/// @param what the same as the plan has it
/// @param begin where it begins, frames from the film's first; a sound may begin before the film, which then lacks that
///     part
/// @param end where it ends, frames, at most the film's; after `begin`
/// @param sync the instant that it meets, frames; `begin` for what meets none
public record Laid<T>(T what, double begin, double end, double sync) {
    /// What was computed may miss a whole frame by so much.
    private static final double NEAR = 1e-6;

    /// Gives the frame in which it begins.
    ///
    /// @return a frame, below 0 before the film
    public long beginFrame() {
        return frameOf(begin);
    }

    /// Gives the first frame of it that the film has.
    ///
    /// @return the frame in which it begins, 0 at least
    public long firstFrame() {
        return Math.max(0, beginFrame());
    }

    /// Gives the frame after its last.
    ///
    /// @return a frame, one after its first at least
    public long pastFrame() {
        return Math.max(firstFrame() + 1, -frameOf(-end));
    }

    /// Gives the frame in which the instant falls that it meets.
    ///
    /// @return a frame of the film
    public long syncFrame() {
        return frameOf(sync);
    }

    private static long frameOf(double frames) {
        return (long) Math.floor(frames + NEAR);
    }

    /// Lists the overlays that a timeline shows. One whose length isn't written is seen until the entry ends in which
    /// it begins.
    ///
    /// @param plan the plan
    /// @param timeline the timeline
    /// @return the overlays by where they begin, then as the plan has them
    public static List<Laid<Plan.Overlay>> listOverlays(Plan plan, Timeline timeline) {
        List<Laid<Plan.Overlay>> all = new ArrayList<>();
        for (Plan.Overlay overlay : plan.cutList().overlays()) {
            OptionalDouble at = timeline.findFrame(overlay.over());
            if (at.isPresent()) {
                double begin = (double) frameOf(at.getAsDouble());
                double end = overlay.findFrames().isPresent()
                        ? begin + overlay.findFrames().getAsLong()
                        : entryEnd(timeline, overlay.over());
                all.add(new Laid<>(overlay, begin, within(timeline, end), begin));
            }
        }
        return sorted(all);
    }

    /// Lists the titles of a language. A title is seen wherever its shot is, as long as that is.
    ///
    /// @param plan the plan
    /// @param timeline the timeline
    /// @param language the language, as the plan has it
    /// @return the titles by where they begin
    public static List<Laid<Plan.Title>> listTitles(Plan plan, Timeline timeline, String language) {
        List<Laid<Plan.Title>> all = new ArrayList<>();
        for (Plan.Title title : plan.cutList().titles()) {
            for (Timeline.Entry entry : timeline.entries()) {
                if (title.language().equals(language)
                        && entry.cut().shot().name().equals(title.shot())) {
                    double begin = (double) entry.first();
                    all.add(new Laid<>(title, begin, (double) entry.past(), begin));
                }
            }
        }
        return sorted(all);
    }

    /// Lists the sounds that a timeline has. One whose length isn't written is heard until the entry ends in which it
    /// meets its instant. One that is over before the film's first frame isn't in it.
    ///
    /// @param plan the plan
    /// @param timeline the timeline
    /// @return the sounds by where they begin, then as the plan has them
    public static List<Laid<Plan.Cue>> listCues(Plan plan, Timeline timeline) {
        List<Laid<Plan.Cue>> all = new ArrayList<>();
        for (Plan.Cue cue : plan.cutList().cues()) {
            timeline.findFrame(cue.sync()).stream()
                    .mapToObj(sync -> laid(cue, sync, plan, timeline))
                    .filter(Laid::isInFilm)
                    .forEach(all::add);
        }
        return sorted(all);
    }

    private static Laid<Plan.Cue> laid(Plan.Cue cue, double sync, Plan plan, Timeline timeline) {
        double begin = sync - cue.findLead().map(lead -> frames(lead, plan)).orElse(0.0);
        double end = cue.findLength()
                .map(length -> begin + frames(length, plan))
                .orElseGet(() -> entryEnd(timeline, cue.sync()));
        return new Laid<>(cue, begin, Math.max(within(timeline, end), begin), sync);
    }

    /// Whether any of it is heard from the film's first frame on.
    private boolean isInFilm() {
        return end > NEAR;
    }

    /// Lists what a timeline has no place for.
    ///
    /// @param plan the plan
    /// @param timeline the timeline
    /// @return a sentence each, overlays first
    public static List<String> listLost(Plan plan, Timeline timeline) {
        String cut = timeline.delivery().isEmpty() ? "the film" : timeline.delivery() + "'s own cut";
        List<String> lost = new ArrayList<>();
        for (Plan.Overlay overlay : plan.cutList().overlays()) {
            if (timeline.findFrame(overlay.over()).isEmpty()) {
                lost.add("The overlay " + overlay.name() + " isn't in " + cut + ", which doesn't show the instant of "
                        + overlay.over().shot().name() + " at which it begins.");
            }
        }
        for (Plan.Cue cue : plan.cutList().cues()) {
            OptionalDouble sync = timeline.findFrame(cue.sync());
            if (sync.isEmpty()) {
                lost.add("The sound " + cue.sound() + " isn't in " + cut + ", which doesn't show the instant of "
                        + cue.sync().shot().name() + " that it meets.");
            } else if (!laid(cue, sync.getAsDouble(), plan, timeline).isInFilm()) {
                lost.add("The sound " + cue.sound() + " isn't in " + cut + ": it is over before the first frame.");
            }
        }
        return lost;
    }

    private static <T> List<Laid<T>> sorted(List<Laid<T>> all) {
        // Stable: what begins together stays in the plan's order.
        all.sort(Comparator.comparingDouble(Laid::begin));
        return List.copyOf(all);
    }

    private static double entryEnd(Timeline timeline, Plan.Sync sync) {
        return (double) timeline.findEntry(sync).map(Timeline.Entry::past).orElseGet(timeline::frames);
    }

    private static double within(Timeline timeline, double end) {
        return Math.min((double) timeline.frames(), end);
    }

    private static double frames(Quantity length, Plan plan) {
        return length.kind() == Kind.FRAMES
                ? length.si()
                : length.si() * plan.film().exactRate().framesPerSecond();
    }
}
