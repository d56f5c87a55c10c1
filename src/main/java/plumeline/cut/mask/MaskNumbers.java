package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// Which frames of a clip get masks, and how their files are numbered.
///
/// @param goFrame number of the captured frame at GO: its timecode as a count of frames, so that a row of pictures
///     brings its own timecode along
/// @param firstCaptured the first captured frame that gets a mask, below 0 where handles begin before GO
/// @param pastCaptured the one after the last; the same where the take has none of them
/// @param take the frames that the take has, counted from GO, where that is known
/// @param screens screen frames that show the pass, in their order; each gets a copy
public record MaskNumbers(
        long goFrame, long firstCaptured, long pastCaptured, Optional<Take> take, List<Screen> screens) {
    /// Copies the list.
    public MaskNumbers {
        screens = List.copyOf(screens);
    }

    /// What a take has.
    ///
    /// @param first its first frame, 0 at GO; below 0 where it begins before
    /// @param past the one after its last
    /// @param wantedPast the one after the last that is shown, with its handle
    /// @param lastShown the last that is shown
    public record Take(long first, long past, long wantedPast, long lastShown) {}

    /// A screen frame that shows the pass.
    ///
    /// @param delivery the delivery whose own cut it is in; empty for the film
    /// @param frame the screen frame of that cut, from 0
    /// @param captured the captured frame that is shown, 0 at GO
    public record Screen(String delivery, long frame, long captured) {}

    /// Numbers a pass by its film: from GO to the last captured frame that is shown anywhere, with the film's handles
    /// before and after, as far as the clip has frames.
    ///
    /// @param plan the plan
    /// @param masked the pass
    /// @return its frames
    public static MaskNumbers of(Plan plan, Masked masked) {
        List<Screen> screens = new ArrayList<>();
        for (Timeline timeline : Timeline.listAll(plan)) {
            for (Span span : timeline.spans()) {
                if (span.shot().equals(masked.shot()) && span.pass().equals(masked.pass())) {
                    for (long frame = span.first(); frame < span.past(); frame++) {
                        screens.add(new Screen(timeline.delivery(), frame, span.sourceFrame(frame)));
                    }
                }
            }
        }
        Clip clip = Clip.of(plan, masked.shot(), masked.pass());
        long handles = plan.film().handlesOrDefault();
        long last = screens.stream().mapToLong(Screen::captured).max().orElseGet(masked::lastShown);
        long first = Math.max(-handles, clip.startFrame() - clip.goFrame());
        long past = last + 1 + handles;
        Optional<Take> take = Optional.empty();
        if (clip.frames().isPresent()) {
            long begins = clip.startFrame() - clip.goFrame();
            long ends = begins + clip.frames().getAsLong();
            take = Optional.of(new Take(begins, ends, past, last));
            past = Math.min(past, ends);
        }
        return new MaskNumbers(clip.goFrame(), first, Math.max(first, past), take, screens);
    }

    /// What the film shows of the pass and its take hasn't, so that no captured frame's mask is there.
    ///
    /// @return a sentence, where that is so
    Optional<String> findLack() {
        return take.filter(one -> one.past() <= one.lastShown()).map(one -> {
            String has = "The take ends before what is shown of it does: it has " + (one.past() - one.first())
                    + " frames, its GO is at " + -one.first() + ", and frames up to GO + " + one.lastShown()
                    + " are shown. ";
            return has + "So source/ has no masks from GO + " + pastCaptured + " on: see clip.go and clip.frames.";
        });
    }

    /// The one after the last frame that a plate has: as many as masks, or as are shown where the take has none.
    long pastPlated() {
        return pastCaptured > firstCaptured
                ? pastCaptured
                : take.map(Take::wantedPast).orElse(pastCaptured);
    }
}
