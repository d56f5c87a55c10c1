package plumeline.cut.list;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.plan.Plan;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;

/// The takes that a timeline uses, and which of their frames it needs.
///
/// @param clips the clip of each shot's pass, by `shot/pass`
/// @param needed what is needed of each clip
/// @param handleFrames recorded frames wanted before and after
record Takes(Map<String, Clip> clips, Map<Clip, Needed> needed, long handleFrames) {
    /// Frames of a clip by their labels.
    ///
    /// @param first the first that is shown
    /// @param past the one after the last
    record Needed(long first, long past) {
        Needed with(Needed other) {
            return new Needed(Math.min(first, other.first), Math.max(past, other.past));
        }
    }

    static Takes of(Plan plan, List<Step> steps) {
        Map<String, Clip> clips = new LinkedHashMap<>();
        Map<Clip, Needed> needed = new LinkedHashMap<>();
        for (Step step : steps) {
            Span span = step.span();
            Clip clip = clips.computeIfAbsent(key(span), _ -> Clip.of(plan, span.shot(), span.pass()));
            double speed = step.speedPerSecond();
            Needed now = new Needed(clip.goFrame() + step.lowest(speed), clip.goFrame() + step.pastHighest(speed));
            needed.merge(clip, now, Needed::with);
        }
        return new Takes(clips, needed, plan.film().handlesOrDefault());
    }

    private static String key(Span span) {
        return span.shot() + "/" + span.pass();
    }

    Clip clip(Span span) {
        Clip clip = clips.get(key(span));
        if (clip == null) {
            throw new IllegalArgumentException("no clip of " + span.name());
        }
        return clip;
    }

    /// The frames that a clip has, where known; else those needed, with handles.
    Needed range(Clip clip) {
        return clip.frames().isPresent()
                ? new Needed(
                        clip.startFrame(), clip.startFrame() + clip.frames().getAsLong())
                : withHandles(clip, needed.getOrDefault(clip, new Needed(clip.goFrame(), clip.goFrame() + 1)));
    }

    /// Some frames of a clip with handles, as far as the clip is known to have them.
    Needed withHandles(Clip clip, Needed shown) {
        long first = shown.first() - handleFrames;
        long past = shown.past() + handleFrames;
        if (!clip.isMissing()) {
            first = Math.min(shown.first(), Math.max(first, clip.startFrame()));
        }
        if (clip.frames().isPresent()) {
            past = Math.max(
                    shown.past(),
                    Math.min(past, clip.startFrame() + clip.frames().getAsLong()));
        }
        return new Needed(first, past);
    }

    /// What is missing of the takes, in sentences.
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        needed.forEach((clip, shown) -> {
            String name = clip.file().orElse(clip.name());
            if (clip.isMissing()) {
                notes.add("The take " + clip.name() + " is missing: the film goes through "
                        + (shown.past() - shown.first())
                        + " recorded frames of it, and wants " + handleFrames
                        + " more before and after; its GO is taken to be at 01:00:00:00.");
                return;
            }
            if (shown.first() < clip.startFrame()) {
                notes.add(name + " begins " + (clip.startFrame() - shown.first())
                        + " frames after the first that the film shows of it.");
            }
            long past = clip.startFrame() + clip.frames().orElse(Long.MAX_VALUE / 2);
            if (shown.past() > past) {
                notes.add(
                        name + " ends " + (shown.past() - past) + " frames before the last that the film shows of it.");
            }
            long before = Math.clamp(shown.first() - clip.startFrame(), 0, handleFrames);
            long after = Math.clamp(past - shown.past(), 0, handleFrames);
            if (before < handleFrames || after < handleFrames) {
                notes.add(name + " has handles of " + before + " frames before and " + after + " after, not of "
                        + handleFrames + ".");
            }
        });
        return notes;
    }
}
