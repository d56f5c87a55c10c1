package plumeline.flicker;

import plumeline.ranges.Ranges;

/// A pulsing lamp as a camera takes it, frame after frame.
///
/// @param lamp the lamp
/// @param framesPerSecond the camera's rate, 1/s, > 0
/// @param exposureSeconds how long a frame is exposed, s, > 0
public record PulsedFrames(LampPulse lamp, double framesPerSecond, double exposureSeconds) {
    /// Pulses a frame count as whole within this: in a minute at 24 fps they drift by a seventieth of a pulse.
    private static final double NEAR_WHOLE = 1e-5;

    /// What is left counts as nothing below this: a tenth of a per cent is the finest that is told.
    private static final double NOTHING = 0.0005;

    /// Checks the ranges.
    public PulsedFrames {
        Ranges.checkPositive(framesPerSecond, "frames per second");
        Ranges.checkPositive(exposureSeconds, "exposure");
    }

    /// Gives how many pulses pass from one frame to the next.
    ///
    /// @return pulses
    public double pulsesPerFrame() {
        return lamp.hertz() / framesPerSecond;
    }

    /// Gives how many pulses an exposure takes in.
    ///
    /// @return pulses
    public double pulsesPerExposure() {
        return lamp.hertz() * exposureSeconds;
    }

    /// Tells whether every frame begins at the same place of a pulse.
    ///
    /// @return true where pulses a frame are whole, one or more
    public boolean isInStep() {
        return pulsesPerFrame() > 0.5 && Math.abs(pastWhole()) <= NEAR_WHOLE;
    }

    /// Pulses a frame over the nearest whole number, −½ to ½.
    private double pastWhole() {
        return pulsesPerFrame() - Math.rint(pulsesPerFrame());
    }

    /// Gives how far frames differ in brightness at most: 0 where they are in step with the lamp.
    ///
    /// @return `(max − min)/(max + min)`, 0 to 1
    public double ripple() {
        return isInStep() ? 0 : rows();
    }

    /// Gives how far exposures differ that begin at any time, as the rows of a rolling shutter do.
    ///
    /// @return `(max − min)/(max + min)`, 0 to 1
    public double rows() {
        return lamp.ripple(pulsesPerExposure());
    }

    /// Tells whether nothing is seen from frame to frame.
    ///
    /// @return true where the ripple is under half a thousandth
    public boolean isClean() {
        return ripple() < NOTHING;
    }

    /// Tells whether a rolling shutter shows bars that stand still.
    ///
    /// @return true where frames are in step with the lamp and exposures don't take in whole pulses
    public boolean barsStand() {
        return isInStep() && rows() >= NOTHING;
    }

    /// Gives how often a second the picture goes through light and dark, by the nearest whole number of pulses a frame;
    /// bars of a rolling shutter move on by one in that time.
    ///
    /// @return Hz, 0 where frames are in step with the lamp
    public double beatHertz() {
        return isInStep() ? 0 : Math.abs(pastWhole()) * framesPerSecond;
    }

    /// Gives how many bars a rolling shutter shows at once.
    ///
    /// @param readoutSeconds from the first row's start to the last one's, s, > 0
    /// @return bars on the picture's height, any part of one too
    public double bars(double readoutSeconds) {
        return lamp.hertz() * Ranges.checkPositive(readoutSeconds, "readout");
    }

    /// Gives how far bars move from a frame to the next.
    ///
    /// @param readoutSeconds from the first row's start to the last one's, s, > 0
    /// @return share of the picture's height, + against the order in which rows are read (mostly up)
    public double roll(double readoutSeconds) {
        return isInStep() ? 0 : pastWhole() / bars(readoutSeconds);
    }

    /// Gives how far rows of one frame differ at most. Where less than half a bar fits in, a sine shows
    /// `sin(π · bars)` of what it could; other forms are then given by all that they could.
    ///
    /// @param readoutSeconds from the first row's start to the last one's, s, > 0
    /// @return `(max − min)/(max + min)`, 0 to 1
    public double barsDepth(double readoutSeconds) {
        double shown = Math.sin(Math.PI * Math.min(0.5, bars(readoutSeconds)));
        return switch (lamp.form()) {
            case Waveform.Sine() -> rows() * shown;
            case Waveform.RectifiedSine(), Waveform.Square(double _) -> rows();
        };
    }
}
