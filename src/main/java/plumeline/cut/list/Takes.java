package plumeline.cut.list;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;

/// The takes that a timeline uses, and which of their frames it needs.
///
/// @param clips the clip of each shot's pass, by `shot/pass`
/// @param facts what the plan says of each clip
/// @param needed what is needed of each clip
/// @param handleFrames recorded frames wanted before and after
record Takes(Map<String, Clip> clips, Map<Clip, Set<Fact>> facts, Map<Clip, Needed> needed, long handleFrames) {
    /// What a plan may say of a clip; what it doesn't is taken for something.
    enum Fact {
        /// The label of its first frame.
        STARTS("clip.starts"),
        /// Which of its frames GO is.
        GO("clip.go"),
        /// How many there are.
        FRAMES("clip.frames"),
        /// Its reel.
        REEL("clip.reel");

        private final String path;

        Fact(String path) {
            this.path = path;
        }
    }

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
        Map<Clip, Set<Fact>> facts = new LinkedHashMap<>();
        Map<Clip, Needed> needed = new LinkedHashMap<>();
        for (Step step : steps) {
            Span span = step.span();
            Clip clip = clips.computeIfAbsent(key(span), _ -> Clip.of(plan, span.shot(), span.pass()));
            facts.computeIfAbsent(clip, _ -> facts(plan, span));
            double speed = step.speedPerSecond();
            Needed now = new Needed(clip.goFrame() + step.lowest(speed), clip.goFrame() + step.pastHighest(speed));
            needed.merge(clip, now, Needed::with);
        }
        return new Takes(clips, facts, needed, plan.film().handlesOrDefault());
    }

    /// The same where a list asks for more of a take that there is than the film shows.
    Takes asking(Map<Clip, Needed> asked) {
        Map<Clip, Needed> all = new LinkedHashMap<>(needed);
        asked.forEach((clip, range) -> {
            if (!clip.isMissing()) {
                all.merge(clip, range, Needed::with);
            }
        });
        return new Takes(clips, facts, all, handleFrames);
    }

    private static Set<Fact> facts(Plan plan, Span span) {
        Shot shot = plan.findShot(span.shot()).orElseThrow();
        Written written =
                shot.findPass(span.pass()).map(Pass::effective).orElse(shot).written();
        Set<Fact> facts = EnumSet.noneOf(Fact.class);
        for (Fact fact : Fact.values()) {
            if (written.has(fact.path)) {
                facts.add(fact);
            }
        }
        return facts;
    }

    private boolean says(Clip clip, Fact fact) {
        return facts.getOrDefault(clip, Set.of()).contains(fact);
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

    /// The reel of a clip. What a pass has of its shot's reel isn't written for its own take.
    Reels.Reel reel(Clip clip) {
        boolean isWritten =
                says(clip, Fact.REEL) && !(clip.isMissing() && clip.reel().equals(clip.name()));
        return new Reels.Reel(clip.reel(), isWritten ? "" : clip.file().orElse("shot " + clip.name()));
    }

    /// Reels that are written for more takes than one, in sentences.
    List<String> listShared() {
        Map<Reels.Reel, Set<String>> takes = new LinkedHashMap<>();
        for (Clip clip : needed.keySet()) {
            takes.computeIfAbsent(reel(clip), _ -> new LinkedHashSet<>())
                    .add(clip.file().orElse(clip.name()));
        }
        List<String> shared = new ArrayList<>();
        takes.forEach((reel, names) -> {
            if (names.size() > 1) {
                shared.add("The reel " + reel.name() + " is written for " + names.size() + " takes, "
                        + String.join(", ", names) + "; they are one reel here, told apart by their timecode only.");
            }
        });
        return shared;
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
            if (clip.isMissing()) {
                notes.add("The take " + clip.name() + " is missing: the film goes through "
                        + Words.recorded(shown.past() - shown.first()) + " of it, and wants " + handleFrames
                        + " more before and after"
                        + (says(clip, Fact.STARTS) ? "." : "; its GO is taken to be at 01:00:00:00."));
            } else {
                findTaken(clip).ifPresent(notes::add);
                notes.addAll(listShort(clip, shown));
            }
        });
        return notes;
    }

    /// What is taken for what isn't written of a clip.
    private Optional<String> findTaken(Clip clip) {
        List<String> taken = new ArrayList<>();
        if (!says(clip, Fact.STARTS)) {
            taken.add("its timecode is taken to begin at 00:00:00:00");
        }
        if (!says(clip, Fact.GO)) {
            taken.add("GO is taken to be its first frame");
        }
        return taken.isEmpty()
                ? Optional.empty()
                : Optional.of(clip.file().orElse(clip.name()) + ": " + String.join(", and ", taken) + ".");
    }

    private List<String> listShort(Clip clip, Needed shown) {
        String name = clip.file().orElse(clip.name());
        List<String> notes = new ArrayList<>();
        if (shown.first() < clip.startFrame()) {
            notes.add(name + " begins " + Words.frames(clip.startFrame() - shown.first())
                    + " after the first that the film shows of it.");
        }
        long past = clip.startFrame() + clip.frames().orElse(Long.MAX_VALUE / 2);
        if (shown.past() > past) {
            notes.add(name + " ends " + Words.frames(shown.past() - past)
                    + " before the last that the film shows of it.");
        }
        long before = Math.clamp(shown.first() - clip.startFrame(), 0, handleFrames);
        long after = Math.clamp(past - shown.past(), 0, handleFrames);
        boolean isMeasured = says(clip, Fact.GO) || says(clip, Fact.FRAMES);
        if (isMeasured && (before < handleFrames || after < handleFrames)) {
            notes.add(name + " has handles of " + Words.frames(before) + " before and " + after + " after, not of "
                    + handleFrames + ".");
        }
        return notes;
    }
}
