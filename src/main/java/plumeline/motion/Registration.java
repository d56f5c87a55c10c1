package plumeline.motion;

import java.util.OptionalDouble;
import plumeline.ranges.Ranges;

/// How far a pass may lie beside another of the same move, in px at the subject: the parts add up at worst.
///
/// A camera that isn't started by the move takes its first frame anywhere within a frame's time; after the best slip by
/// whole frames up to half a frame's travel is left.
///
/// @param move what the passes repeat
/// @param repeatsPixels how far off the device comes back, px, ≥ 0
/// @param residuePixels how far it still swings in the first frame, px, ≥ 0
/// @param breathingPixels by how much the picture's edge moves with the focus, px, ≥ 0
public record Registration(Move move, double repeatsPixels, double residuePixels, double breathingPixels) {
    /// Checks the ranges.
    public Registration {
        Ranges.checkNotNegative(repeatsPixels, "repeats");
        Ranges.checkNotNegative(residuePixels, "residue");
        Ranges.checkNotNegative(breathingPixels, "breathing");
    }

    /// What a pass repeats.
    ///
    /// @param pixelsPerSecond highest speed of the picture, px per real second, ≥ 0
    /// @param framesPerSecond the capture rate, > 0
    /// @param start how its camera is started
    public record Move(double pixelsPerSecond, double framesPerSecond, Start start) {
        /// Checks the ranges.
        public Move {
            Ranges.checkNotNegative(pixelsPerSecond, "speed");
            Ranges.checkPositive(framesPerSecond, "rate");
        }

        double halfFramePixels() {
            return pixelsPerSecond / framesPerSecond / 2;
        }
    }

    /// How a camera is started.
    public enum Start {
        /// By hand, its frames free of the move.
        FREE,
        /// By the move, its frames at the same places in every pass.
        TRIGGERED
    }

    /// Gives half a frame's travel.
    ///
    /// @return px, ≥ 0; 0 for a triggered start
    public double phasePixels() {
        return move.start() == Start.TRIGGERED ? 0 : move.halfFramePixels();
    }

    /// Gives what neither a slower move nor another start takes away.
    ///
    /// @return px, ≥ 0
    public double restPixels() {
        return repeatsPixels + residuePixels + breathingPixels;
    }

    /// Gives how far a pass may lie beside another.
    ///
    /// @return px, ≥ 0
    public double sumPixels() {
        return phasePixels() + restPixels();
    }

    /// Finds how many times slower the move has to be for a limit, everything else being as it is.
    ///
    /// @param mostPixels the limit, px, > 0
    /// @return 1 or more; empty where no move is slow enough
    public OptionalDouble findSlower(double mostPixels) {
        double left = mostPixels - restPixels();
        return sumPixels() <= mostPixels
                ? OptionalDouble.of(1)
                : left > 0 ? OptionalDouble.of(phasePixels() / left) : OptionalDouble.empty();
    }

    /// Finds the capture rate from which on a limit is met with the move as fast as it is.
    ///
    /// @param mostPixels the limit, px, > 0
    /// @return frames per second, no less than there are; empty where none is enough
    public OptionalDouble findRate(double mostPixels) {
        OptionalDouble slower = findSlower(mostPixels);
        return slower.isPresent()
                ? OptionalDouble.of(slower.getAsDouble() * move.framesPerSecond())
                : OptionalDouble.empty();
    }

    /// Tells whether a limit is met once the move starts the camera.
    ///
    /// @param mostPixels the limit, px, > 0
    /// @return true where it is
    public boolean isMetTriggered(double mostPixels) {
        return restPixels() <= mostPixels;
    }
}
