package plumeline.timeline;

import java.util.stream.Stream;
import plumeline.plan.Cut;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Playback;
import plumeline.plan.Shot;
import plumeline.quantity.FrameRate;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// How a shot, or one of its passes, runs in a film.
///
/// @param retime its map, counted from the earliest instant that it shows, its GO
/// @param captured the camera's rate, the film's where the plan doesn't say
/// @param sources which recorded frame is seen at each of its screen frames
public record Played(Retime retime, FrameRate captured, SourceFrames sources) {
    /// Gives how a shot runs in a plan's film.
    ///
    /// @param plan the plan
    /// @param shot the shot, or a pass's effective one
    /// @param frames how many screen frames it has, ≥ 1
    /// @return how it runs
    public static Played of(Plan plan, Shot shot, long frames) {
        FrameRate captured = shot.camera()
                .findRate()
                .map(FrameRate::of)
                .orElseGet(() -> plan.film().exactRate());
        Retime retime = retime(shot.playback(), plan.film().rate().si());
        return new Played(
                retime.fromEarliest((double) frames),
                captured,
                SourceFrames.of(retime, captured.framesPerSecond(), Math.toIntExact(frames)));
    }

    /// Gives the map of a speed, counted from the shot's first frame.
    ///
    /// @param playback the speed as written
    /// @param framesPerSecond the film's rate, 1/s, > 0
    /// @return the map
    public static Retime retime(Playback playback, double framesPerSecond) {
        return switch (playback) {
            case Playback.Constant constant -> Retime.constant(constant.speed(), framesPerSecond);
            case Playback.Curve curve ->
                new Retime(
                        curve.keys().stream()
                                .map(key -> new Retime.Key(key.frame(), key.speed()))
                                .toList(),
                        curve.ease() == Playback.Ease.SMOOTH ? Retime.Ease.SMOOTH : Retime.Ease.STRAIGHT,
                        framesPerSecond);
        };
    }

    /// Gives up to which of its frames a shot is used, in the film's cut or in a delivery's own.
    ///
    /// @param plan the plan
    /// @param shot the shot's name
    /// @return screen frames from the shot's first, exclusive; 0 where no cut has it
    public static long usedFrames(Plan plan, String shot) {
        return Stream.concat(
                        plan.cuts().stream(),
                        plan.deliveries().stream().map(Delivery::listCuts).flatMap(cuts -> cuts.stream()))
                .filter(cut -> cut.shot().name().equals(shot))
                .mapToLong(Cut::pastFrame)
                .max()
                .orElse(0);
    }

    /// Gives how many screen frames there are.
    ///
    /// @return frames, ≥ 1
    public long frames() {
        return sources.count();
    }

    /// Tells whether its speed changes within some frames.
    ///
    /// @param fromFrame the first screen frame
    /// @param pastFrame the one after the last
    /// @return true where it does
    public boolean isRamped(long fromFrame, long pastFrame) {
        double last = (double) Math.max(fromFrame, pastFrame - 1);
        double from = (double) fromFrame;
        return retime.fastestSpeed(from, last) != retime.slowestSpeed(from, last)
                || retime.rests(from, last) && retime.fastestSpeed(from, last) > 0;
    }
}
