package plumeline.cut.cue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.solve.FilmAnswer;
import plumeline.sound.Guide;
import plumeline.sound.Pan;
import plumeline.sound.SampleGrid;
import plumeline.sound.TempoGrid;
import plumeline.sound.Voice;
import plumeline.sound.Wav;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// A guide track for a timeline: a click a beat, a tick a cut, noise that follows the speed over every entry whose
/// speed changes, and a placeholder for each sound of the cue sheet.
///
/// Beats are those of the film's tempo from `first_beat` on, the first of every four higher. Looks that alternate
/// within an entry tick softer than entries do. Of the sheet's sounds, what pours or fizzes by its name bubbles or
/// hisses from in to out, what whooshes follows the speed (where that is steady, it swells to its sync point), and
/// anything else is a short tone at its sync point.
///
/// @param guide the track
public record GuideTrack(Guide guide) {
    private static final int BEATS_PER_BAR = 4;
    private static final double BEAT_DECIBELS = -3;
    private static final double LOOK_DECIBELS = -8;
    private static final double RAMP_DECIBELS = -4;

    /// Makes the track of a timeline.
    ///
    /// @param film the findings on the film
    /// @param timeline its timeline, or a delivery's
    /// @return the track, as long as the timeline
    public static GuideTrack of(FilmAnswer film, Timeline timeline) {
        CueSheet sheet = CueSheet.of(film, timeline);
        SampleGrid grid = Guide.grid(timeline.rate());
        List<Guide.Heard> events = new ArrayList<>();
        addBeats(film.plan(), timeline, grid, events);
        addCuts(timeline, grid, events);
        addRamps(timeline, grid, events);
        for (CueRow row : sheet.rows()) {
            events.add(Placeholder.of(row, timeline, grid));
        }
        return new GuideTrack(Guide.of(grid, timeline.frames(), events));
    }

    private static void addBeats(Plan plan, Timeline timeline, SampleGrid grid, List<Guide.Heard> events) {
        Optional<TempoGrid> tempo = plan.film().findBeats().map(beats -> TempoGrid.of(beats, grid));
        if (tempo.isEmpty()) {
            return;
        }
        TempoGrid beats = tempo.get();
        long past = grid.sample(timeline.frames());
        for (long beat = 0; beats.sample(beat) < past; beat++) {
            Voice voice = new Voice.Click(beat % BEATS_PER_BAR == 0 ? Voice.Beat.FIRST : Voice.Beat.OTHER);
            events.add(new Guide.Heard(beats.sample(beat), voice, Pan.MIDDLE, BEAT_DECIBELS));
        }
    }

    private static void addCuts(Timeline timeline, SampleGrid grid, List<Guide.Heard> events) {
        int entry = 0;
        for (Span span : timeline.spans()) {
            if (span.first() > 0) {
                double gain = span.entry() == entry ? LOOK_DECIBELS : 0;
                events.add(new Guide.Heard(grid.sample(span.first()), new Voice.Tick(), Pan.MIDDLE, gain));
            }
            entry = span.entry();
        }
    }

    private static void addRamps(Timeline timeline, SampleGrid grid, List<Guide.Heard> events) {
        for (Timeline.Entry entry : timeline.entries()) {
            if (isRamped(timeline, entry.first(), entry.past())) {
                Voice voice = new Voice.Whoosh(speeds(timeline, entry.first(), entry.past()));
                events.add(new Guide.Heard(grid.sample(entry.first()), voice, Pan.MIDDLE, RAMP_DECIBELS));
            }
        }
    }

    /// Whether the speed that is seen changes within frames of one entry.
    static boolean isRamped(Timeline timeline, long first, long past) {
        for (long frame = first; frame < past; frame++) {
            Optional<Span> span = timeline.findSpan(frame);
            if (span.isPresent()) {
                long to = Math.min(past, span.get().past());
                if (span.get()
                        .played()
                        .isRamped(span.get().shotFrameAt(frame), span.get().shotFrameAt(to))) {
                    return true;
                }
                frame = to - 1;
            }
        }
        return false;
    }

    /// The speed seen at each frame, at the frame's start; still where the film shows nothing.
    static List<Double> speeds(Timeline timeline, long first, long past) {
        List<Double> speeds = new ArrayList<>();
        for (long frame = first; frame < past; frame++) {
            long at = frame;
            speeds.add(timeline.findSpan(frame)
                    .map(span -> span.played().retime().speedAt((double) span.shotFrameAt(at)))
                    .orElse(0.0));
        }
        return speeds;
    }

    /// Gives the track as a file: two channels of 24 bits at 48 kHz.
    ///
    /// @return a WAV file
    public byte[] wav() {
        return Wav.write24(guide.sound());
    }
}
