package plumeline.pace;

import plumeline.time.Retime;

/// Which captured instant is shown at a frame: that of the captured frame nearest to where the retime map is, halves
/// up.
///
/// @param retime the shot's map
/// @param framesPerSecond captured frames a second, 1/s
public record Shown(Retime retime, double framesPerSecond) {
    private static final double SAME = 1e-9;

    /// Gives the captured frame that is shown.
    ///
    /// @param frame the screen frame
    /// @return the captured frame, counted from the shot's first
    public double source(double frame) {
        return Math.floor(retime.realSeconds(frame) * framesPerSecond + 0.5 + SAME);
    }

    /// Gives when it was captured.
    ///
    /// @param frame the screen frame
    /// @return real seconds from the shot's first frame
    public double seconds(double frame) {
        return source(frame) / framesPerSecond;
    }

    /// Tells whether from one frame to the next the map goes on by whole captured frames.
    ///
    /// @param frame the screen frame
    /// @return true for real speed at 120 on 24, and for half speed at 48
    public boolean isEvenAt(double frame) {
        double step = (retime.realSeconds(frame + 1) - retime.realSeconds(frame)) * framesPerSecond;
        return Math.abs(step - Math.rint(step)) < 1e-6;
    }
}
