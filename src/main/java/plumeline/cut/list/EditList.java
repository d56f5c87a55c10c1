package plumeline.cut.list;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.time.Timecode;
import plumeline.timeline.Clip;
import plumeline.timeline.Laid;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// A timeline as an edit decision list: text in ASCII, an event a step of one speed.
///
/// `NNN  REEL  V  C  SRC_IN SRC_OUT REC_IN REC_OUT`, out points exclusive. Where a step doesn't run at the film's rate
/// an `M2` line follows with its speed, recorded frames a second of the film in tenths, signed, 0 for a hold. Source
/// labels count recorded frames at the film's rate. A step's source runs from the first frame shown over
/// `record frames · speed / rate` of them, at least one; of one that runs backward it ends with the first frame shown.
/// Comments tell clip, file, handles, steps of a ramp and what is lost. Events past 999 take more digits.
///
/// **Source:** SMPTE ST 258 (scope), line grammar by common practice.
public final class EditList {
    private static final String END = "\r\n";

    private final Plan plan;
    private final Timeline timeline;
    private final Timecode timecode;
    private final long startFrame;
    private final List<Step> steps;
    private final Takes takes;
    private final Reels reels;
    private final List<String> notes = new ArrayList<>();
    private final StringBuilder out = new StringBuilder();

    /// What became of a list.
    public sealed interface Result {
        /// A list.
        ///
        /// @param text the list, ASCII, lines ended by CRLF
        /// @param notes what it doesn't hold or what is missing, in sentences
        record Listed(String text, List<String> notes) implements Result {
            /// Copies the list.
            public Listed {
                notes = List.copyOf(notes);
            }
        }

        /// No list.
        ///
        /// @param why in a sentence
        record None(String why) implements Result {}
    }

    private EditList(Plan plan, Timeline timeline, Timecode timecode) {
        this.plan = plan;
        this.timeline = timeline;
        this.timecode = timecode;
        startFrame = plan.film().startFrame();
        steps = Steps.of(timeline);
        Takes shown = Takes.of(plan, steps);
        Map<Clip, Takes.Needed> asked = new LinkedHashMap<>();
        for (Step step : steps) {
            Clip clip = shown.clip(step.span());
            asked.merge(clip, Asked.of(step, clip, readPerSecond(step)).range(), Takes.Needed::with);
        }
        takes = shown.asking(asked);
        reels = Reels.of(takes.clips().values().stream().map(takes::reel).toList());
    }

    /// Writes a timeline as a list.
    ///
    /// @param plan the plan
    /// @param timeline its film's timeline, or a delivery's
    /// @return the list; none where the film's rate has no timecode, or nothing is cut
    public static Result of(Plan plan, Timeline timeline) {
        if (timeline.spans().isEmpty()) {
            return new Result.None("There is no edit decision list: the plan has no cut.");
        }
        return plan.film()
                .findTimecode()
                .<Result>map(timecode -> new EditList(plan, timeline, timecode).write())
                .orElseGet(() -> new Result.None("There is no edit decision list: "
                        + timeline.rate().toText() + " has no timecode; the open timeline holds the same cut."));
    }

    private Result write() {
        String title =
                plan.film().title().orElse("Film") + (timeline.delivery().isEmpty() ? "" : ", " + timeline.delivery());
        line("TITLE: " + title);
        line("FCM: " + (timecode.counting() == Timecode.Counting.DROP ? "DROP FRAME" : "NON-DROP FRAME"));
        List<Mark> marks = marks();
        Step.Loss worst = new Step.Loss(0, 0);
        int next = 0;
        for (int i = 0; i < steps.size(); i++) {
            Step step = steps.get(i);
            Step.Loss loss = event(i + 1, step);
            worst = loss.frames() > worst.frames() ? loss : worst;
            while (next < marks.size() && (marks.get(next).frame() < step.past() || i == steps.size() - 1)) {
                Mark mark = marks.get(next++);
                line("* MARK: " + record(mark.frame()) + " " + mark.text());
            }
        }
        notes.addAll(takes.notes());
        notes.addAll(takes.listShared());
        tellOutside();
        tellRamps(worst);
        tellRest();
        for (String note : notes) {
            line("* NOTE: " + note);
        }
        return new Result.Listed(out.toString(), notes);
    }

    /// Writes one event; gives what it loses.
    private Step.Loss event(int number, Step step) {
        Clip clip = takes.clip(step.span());
        double read = readPerSecond(step);
        Asked asked = Asked.of(step, clip, read);
        String label = timecode.label(asked.range().first());
        String reel = String.format(Locale.ROOT, "%-8s", reelOf(clip));
        line(String.format(
                Locale.ROOT,
                "%03d  %s V     C        %s %s %s %s",
                number,
                reel,
                label,
                timecode.label(asked.range().past()),
                record(step.first()),
                record(step.past())));
        if (!step.isPlain()) {
            // Readers take colons only here; whether labels are dropped is said above.
            line("M2   " + reel + " " + speed(read) + "                " + label.replace(';', ':'));
        }
        line("* FROM CLIP NAME: " + clip.name());
        clip.file()
                .ifPresentOrElse(
                        file -> line("* FROM FILE: " + file),
                        () -> line("* MISSING: no take is named; GO is taken to be at 01:00:00:00"));
        Step.Loss loss = step.loss(read);
        tell(step, clip, asked, loss);
        return loss;
    }

    private String reelOf(Clip clip) {
        return reels.name(takes.reel(clip));
    }

    private void tell(Step step, Clip clip, Asked asked, Step.Loss loss) {
        Span span = step.span();
        if (!reelOf(clip).equalsIgnoreCase(clip.reel())) {
            line("* REEL: " + clip.reel());
        }
        line("* SHOT: " + span.name() + ", frame " + span.shotFrameAt(step.first()));
        Takes.Needed shown = asked.range();
        Takes.Needed kept = takes.withHandles(clip, shown);
        line("* HANDLES: " + timecode.label(kept.first()) + " to " + timecode.label(kept.past()) + ", "
                + (shown.first() - kept.first()) + " before, " + (kept.past() - shown.past()) + " after");
        if (step.of() > 1) {
            line("* RAMP: step " + step.number() + " of " + step.of());
        }
        if (step.speedPerSecond() < 0) {
            line("* BACKWARD: begins with the last of these source frames");
        }
        if (loss.frames() > 0) {
            line("* LOSS: up to " + Words.recorded(loss.frames()) + ", at " + record(loss.at()));
        }
        if (asked.leftOut() > 0) {
            line("* OUTSIDE: not in the clip and left out, " + asked.before() + " before its first frame, "
                    + asked.after() + " after its last");
        }
        Cut cut = timeline.entries().get(span.entry()).cut();
        List<String> reframed = plan.deliveries().stream()
                .map(Delivery::name)
                .filter(name -> !cut.listReframes(name).isEmpty())
                .toList();
        if (!reframed.isEmpty()) {
            line("* REFRAMED: for " + String.join(", ", reframed) + "; not in this list");
        }
    }

    /// The speed that a reader of the list takes: as written, in tenths.
    private static double readPerSecond(Step step) {
        return step.isPlain() ? step.speedPerSecond() : Math.rint(step.speedPerSecond() * 10) / 10 + 0.0;
    }

    private static String speed(double perSecond) {
        return (perSecond < 0 ? "-" : "") + String.format(Locale.ROOT, "%05.1f", Math.abs(perSecond));
    }

    /// Something said at an instant of the film.
    private record Mark(long frame, String text) {}

    private List<Mark> marks() {
        List<Mark> marks = new ArrayList<>();
        for (Laid<Plan.Cue> cue : Laid.listCues(plan, timeline)) {
            marks.add(new Mark(cue.syncFrame(), "sound: " + cue.what().sound()));
        }
        for (Laid<Plan.Overlay> overlay : Laid.listOverlays(plan, timeline)) {
            marks.add(
                    new Mark(overlay.firstFrame(), "overlay: " + overlay.what().name() + until(overlay)));
        }
        for (String language : languages(plan)) {
            for (Laid<Plan.Title> title : Laid.listTitles(plan, timeline, language)) {
                marks.add(new Mark(
                        title.firstFrame(),
                        "title, " + language + ": " + title.what().text() + until(title)));
            }
        }
        marks.sort(Comparator.comparingLong(Mark::frame));
        return marks;
    }

    static List<String> languages(Plan plan) {
        return plan.cutList().titles().stream()
                .map(Plan.Title::language)
                .distinct()
                .toList();
    }

    private String until(Laid<?> laid) {
        return " (to " + record(laid.pastFrame()) + ")";
    }

    private void tellRamps(Step.Loss worst) {
        long split = steps.stream()
                .filter(step -> step.of() > 1 && step.number() == 1)
                .count();
        if (split > 0) {
            notes.add((split == 1 ? "One ramp is" : split + " ramps are")
                    + " split into steps of one speed each, as a list knows one speed an event.");
        }
        if (worst.frames() > 0) {
            notes.add("The source frames of this list differ from those the film shows by up to "
                    + Words.recorded(worst.frames()) + ", at " + record(worst.at())
                    + "; frame k of an event shows SRC_IN + k x speed / rate, to the nearest.");
        }
    }

    /// What the events leave out, as the clips don't have it.
    private void tellOutside() {
        Map<Clip, Long> leftOut = new LinkedHashMap<>();
        for (Step step : steps) {
            Clip clip = takes.clip(step.span());
            leftOut.merge(clip, Asked.of(step, clip, readPerSecond(step)).leftOut(), Math::max);
        }
        leftOut.forEach((clip, frames) -> {
            if (frames > 0 && !clip.isMissing()) {
                notes.add("By their speeds, events of " + clip.file().orElse(clip.name()) + " go up to "
                        + Words.frames(frames)
                        + " past what the clip has; their source is shorter by those here.");
            }
        });
    }

    private void tellRest() {
        boolean hasOverlays = !Laid.listOverlays(plan, timeline).isEmpty();
        boolean hasTitles = !plan.cutList().titles().isEmpty();
        notes.addAll(Laid.listLost(plan, timeline));
        if (hasOverlays || hasTitles) {
            notes.add("Overlays, titles and sounds stand as markers only: this list holds one layer of picture.");
        }
        boolean isReframed = timeline.entries().stream()
                .anyMatch(entry -> plan.deliveries().stream()
                        .anyMatch(delivery ->
                                !entry.cut().listReframes(delivery.name()).isEmpty()));
        if (isReframed) {
            notes.add("Reframing isn't in this list; the open timeline has it.");
        }
        Optional<String> other = takes.clips().values().stream()
                .flatMap(clip -> Stream.concat(Stream.of(clip.name()), clip.file().stream()))
                .filter(name -> !Plain.of(name).equals(name))
                .findFirst();
        other.ifPresent(name -> notes.add("Names are in plain letters here; the open timeline has them as they are."));
    }

    private String record(long frame) {
        return timecode.label(startFrame + frame);
    }

    private void line(String text) {
        out.append(Plain.of(text)).append(END);
    }
}
