package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Plan;
import plumeline.timeline.Clip;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// Which frames of a clip get masks, and how their files are numbered.
///
/// @param goFrame number of the captured frame at GO: its timecode as a count of frames, so that a row of pictures
///     brings its own timecode along
/// @param firstCaptured the first captured frame that gets a mask, below 0 where handles begin before GO
/// @param pastCaptured the one after the last
/// @param screens screen frames that show the pass, in their order; each gets a copy
public record MaskNumbers(long goFrame, long firstCaptured, long pastCaptured, List<Screen> screens) {
    /// Copies the list.
    public MaskNumbers {
        screens = List.copyOf(screens);
    }

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
        if (clip.frames().isPresent()) {
            past = Math.min(
                    past, clip.startFrame() - clip.goFrame() + clip.frames().getAsLong());
        }
        return new MaskNumbers(clip.goFrame(), first, Math.max(first, past), screens);
    }
}
