package plumeline.cut.cue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Named;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.solve.FilmAnswer;
import plumeline.sound.Guide;
import plumeline.sound.SampleGrid;
import plumeline.time.Timecode;
import plumeline.timeline.Laid;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// The sounds of a timeline by where they begin: in, sync point and out as frames, timecode and samples, what each
/// accompanies, its layer, and how it pans with the thing that it follows.
///
/// A sound follows the thing that its `of` names, else the only thing in its shot; where there are several it stays in
/// the middle. Where it begins before its shot is seen, or goes on after it, it is heard from where the thing stands at
/// the nearest frame that is seen. The picture is the first delivery's, of a delivery's own cut that delivery's.
///
/// @param rows the sounds, by where they begin
/// @param timecode the film's timecode; empty where its rate has none
/// @param startFrame the label of the film's first frame, counted from 00:00:00:00
/// @param notes what isn't in it, in sentences
public record CueSheet(List<CueRow> rows, Optional<Timecode> timecode, long startFrame, List<String> notes) {
    /// What is as near to a frame as this is that frame: seconds at a broadcast rate are exact to far less.
    private static final double WHOLE_FRAMES = 1e-9;

    /// Copies the lists.
    public CueSheet {
        rows = List.copyOf(rows);
        notes = List.copyOf(notes);
    }

    /// Lists the sounds of a timeline.
    ///
    /// @param film the findings on the film
    /// @param timeline its timeline, or a delivery's
    /// @return the sheet
    public static CueSheet of(FilmAnswer film, Timeline timeline) {
        Plan plan = film.plan();
        SampleGrid grid = Guide.grid(timeline.rate());
        Panning panning = new Panning(film, timeline);
        List<CueRow> rows = new ArrayList<>();
        List<String> notes = new ArrayList<>();
        for (Laid<Plan.Cue> laid : Laid.listCues(plan, timeline)) {
            Optional<CueRow> row = row(plan, timeline, laid, grid, panning);
            row.ifPresent(rows::add);
            if (row.isPresent() && row.get().in().frame() < 0) {
                long before = -row.get().in().frame();
                notes.add("The sound " + laid.what().sound() + " begins " + before
                        + (before == 1 ? " frame" : " frames") + " before the film, which lacks that part.");
            }
        }
        return new CueSheet(rows, plan.film().findTimecode(), plan.film().startFrame(), notes);
    }

    private static Optional<CueRow> row(
            Plan plan, Timeline timeline, Laid<Plan.Cue> laid, SampleGrid grid, Panning panning) {
        return timeline.findSpan(laid.syncFrame()).map(span -> {
            String thing = followed(plan, laid.what(), span);
            CueRow.Place in = place(laid.begin(), laid.beginFrame(), span, thing, grid, panning);
            CueRow.Place end = place(laid.end(), laid.pastFrame(), span, thing, grid, panning);
            CueRow.Place out = new CueRow.Place(
                    Math.max(in.frame() + 1, end.frame()), Math.max(in.sample() + 1, end.sample()), end.pan());
            CueRow.Place meets = place(laid.sync(), laid.syncFrame(), span, thing, grid, panning);
            CueRow.Ending ending = laid.what().findLength().isPresent() ? CueRow.Ending.WRITTEN : CueRow.Ending.ASSUMED;
            return new CueRow(
                    laid.what().sound(), laid.what().findLayer().orElse(""), span, thing, in, meets, out, ending);
        });
    }

    private static String followed(Plan plan, Plan.Cue cue, Span span) {
        return cue.findFollowed().map(Named::name).orElseGet(() -> {
            List<Placed> placed = plan.findShot(span.shot()).orElseThrow().placed();
            return placed.size() == 1 ? placed.getFirst().name() : "";
        });
    }

    private static CueRow.Place place(
            double at, long frame, Span span, String thing, SampleGrid grid, Panning panning) {
        double pan = thing.isEmpty() ? 0 : panning.at(span, thing, at);
        return new CueRow.Place(frame, sample(at, grid), pan);
    }

    /// The sample of an instant: exact of a whole frame, else the nearest.
    private static long sample(double frame, SampleGrid grid) {
        long near = nearest(frame);
        if (Math.abs(frame - near) < WHOLE_FRAMES) {
            return grid.sample(near);
        }
        return nearest(grid.rate().secondsOf(frame) * grid.samplesPerSecond());
    }

    private static long nearest(double value) {
        return (long) Math.floor(value + 0.5);
    }

    /// Gives the label of a frame.
    ///
    /// @param frame of the film, from 0
    /// @return such as `01:00:04:12`; empty before the film's first frame, and where the film's rate has no
    /// timecode
    public String label(long frame) {
        return timecode.filter(_ -> frame >= 0)
                .map(labels -> labels.label(startFrame + frame))
                .orElse("");
    }

    /// How a sound pans, in per cent at in, sync and out: `-40 %, 0 %, 25 %`, or one figure where it stays.
    String pan(CueRow row) {
        String from = CueCsv.percent(row.in().pan());
        String at = CueCsv.percent(row.sync().pan());
        String to = CueCsv.percent(row.out().pan());
        return from.equals(at) && at.equals(to) ? at + " %" : from + " %, " + at + " %, " + to + " %";
    }

    /// Gives the sheet as comma-separated values, a row a sound below a row of names; lines end with CRLF.
    ///
    /// **Source:** RFC 4180, section 2.
    ///
    /// @return text for UTF-8
    public String csv() {
        return CueCsv.write(this);
    }

    /// Gives the sounds as a track of cues for players: in and out in milliseconds of the film, what is before its
    /// first frame left out.
    ///
    /// **Source:** W3C WebVTT, file structure.
    ///
    /// @return text for UTF-8
    public String webVtt() {
        return CueVtt.write(this);
    }
}
