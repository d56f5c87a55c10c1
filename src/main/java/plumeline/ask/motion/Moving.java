package plumeline.ask.motion;

import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.motion.Limits;
import plumeline.motion.Measure;
import plumeline.motion.Profile;
import plumeline.motion.Registration;
import plumeline.motion.Travel;
import plumeline.motion.Usage;

/// What `move` finds.
final class Moving {
    /// A limit that is met to the last digits is met.
    static final double NEAR = 1e-9;

    /// Playback is typed in by tens of per cent.
    static final double PLAYBACK_STEP = 0.1;

    private static final int MOST_PLAYBACK_STEPS = 1000;

    private Moving() {}

    /// What is asked.
    ///
    /// @param measure whether it goes along or round
    /// @param by how far, metres or radians
    /// @param seconds in which real time
    /// @param profile how its speed runs
    /// @param limits the device's; what it repeats to is 0 where that isn't known
    /// @param start how the camera is started
    /// @param seen how it is seen
    /// @param mostPixels how far passes may lie apart
    record Inputs(
            Measure measure,
            double by,
            double seconds,
            Profile profile,
            Limits limits,
            Registration.Start start,
            Optional<Seen> seen,
            OptionalDouble mostPixels) {
        Travel travel() {
            return Travel.within(by, seconds, profile, limits);
        }

        Usage usage() {
            return Usage.of(travel(), limits);
        }

        /// Infinite limits aren't known: then nothing is ruled out.
        OptionalDouble leastSeconds() {
            double least = Travel.leastSeconds(by, profile, limits);
            return least > 0 ? OptionalDouble.of(least) : OptionalDouble.empty();
        }

        Inputs in(double otherSeconds, Profile other) {
            return new Inputs(measure, by, otherSeconds, other, limits, start, seen, mostPixels);
        }

        Inputs started(Registration.Start other) {
            return new Inputs(measure, by, seconds, profile, limits, other, seen, mostPixels);
        }

        /// How far what is looked at goes on the picture in an exposure at peak speed, px.
        double blurPixels(Seen view) {
            return travel().peakSpeed() * view.pixels() * view.view().exposureSeconds();
        }

        Registration passes(Seen view) {
            return new Registration(
                    new Registration.Move(
                            travel().peakSpeed() * view.pixels(), view.view().rate(), start),
                    limits.repeats() * view.pixels(),
                    0,
                    0);
        }
    }

    /// A view of what moves.
    ///
    /// @param view the view
    /// @param radiusMetres from the axis of a turn to what is looked at; 1 of no meaning along a line
    record Seen(View view, double radiusMetres) {
        /// px a metre, or a radian.
        double pixels() {
            return view.pixelsPerMetre() * radiusMetres;
        }
    }

    /// A move that the device can make, slower, and the playback that shows the same on the screen.
    ///
    /// @param inputs the move
    /// @param playback share of real speed
    record Nearest(Inputs inputs, double playback) {}

    /// Finds the fastest move by the same profile, or the one given, whose playback an editor types in.
    static Optional<Nearest> findNearest(Inputs inputs, Profile profile) {
        double least = Travel.leastSeconds(inputs.by(), profile, inputs.limits());
        double first = Math.max(1, Math.ceil(least / inputs.seconds() / PLAYBACK_STEP - NEAR) * PLAYBACK_STEP);
        for (int i = 0; i < MOST_PLAYBACK_STEPS; i++) {
            double playback = first + i * PLAYBACK_STEP;
            Inputs slower = inputs.in(inputs.seconds() * playback, profile);
            if (slower.usage().worst() <= 1 + NEAR) {
                return Optional.of(new Nearest(slower, playback));
            }
        }
        return Optional.empty();
    }
}
