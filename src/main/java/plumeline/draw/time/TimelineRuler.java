package plumeline.draw.time;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Plan;
import plumeline.sketch.Drawing;
import plumeline.solve.FilmAnswer;
import plumeline.time.Beats;
import plumeline.timeline.Timeline;

/// A film's timeline as a ruler over as many drawings as it takes.
public final class TimelineRuler {
    /// About so much of the film is on one drawing, s.
    private static final double ROW_SECONDS = 6;

    private static final int BAR = 4;

    private TimelineRuler() {}

    /// Draws a timeline.
    ///
    /// @param film the findings on the film
    /// @param timeline the film's, or a cut-down's
    /// @param heard what lies along it, in the order in which it is drawn
    /// @return the drawings, the film's beginning first
    public static List<Drawing> draw(FilmAnswer film, Timeline timeline, List<Heard> heard) {
        List<Drawing> drawings = new ArrayList<>();
        List<Long> starts = starts(film.plan(), timeline);
        long widest = 1;
        for (int i = 0; i + 1 < starts.size(); i++) {
            widest = Math.max(widest, starts.get(i + 1) - starts.get(i));
        }
        RulerRow.Speeds speeds = RulerRow.Speeds.of(timeline);
        for (int i = 0; i + 1 < starts.size(); i++) {
            drawings.add(new RulerRow(film, timeline, heard, speeds, starts.get(i), starts.get(i + 1), widest).draw());
        }
        return drawings;
    }

    /// Where each drawing begins, and where the last ends: on every fourth beat where there is music, else on seconds.
    private static List<Long> starts(Plan plan, Timeline timeline) {
        List<Long> starts = new ArrayList<>(List.of(0L));
        double framesPerSecond = timeline.rate().framesPerSecond();
        if (plan.film().findBeats().isPresent()) {
            Beats beats = plan.film().findBeats().get();
            long bars = Math.max(1, (long) (ROW_SECONDS * framesPerSecond / (BAR * beats.intervalFrames())));
            for (long beat = bars * BAR; beats.frame(beat) < timeline.frames(); beat += bars * BAR) {
                starts.add(beats.frame(beat));
            }
        } else {
            long row = Math.max(1, Math.round(ROW_SECONDS * framesPerSecond));
            for (long frame = row; frame < timeline.frames(); frame += row) {
                starts.add(frame);
            }
        }
        starts.add(timeline.frames());
        return starts;
    }
}
