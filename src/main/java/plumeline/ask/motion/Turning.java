package plumeline.ask.motion;

import java.util.List;
import java.util.Optional;
import plumeline.motion.LabelWindow;
import plumeline.motion.Profile;
import plumeline.motion.Travel;

/// What `turntable` finds.
final class Turning {
    private Turning() {}

    /// What is asked.
    ///
    /// @param turn how it turns
    /// @param label what is to be read
    /// @param rate frames captured per real second
    /// @param frames how many
    /// @param front the label's front as it is seen, where view and diameter are known
    record Inputs(Turn turn, Label label, double rate, double frames, Optional<Front> front) {
        double seconds() {
            return frames / rate;
        }

        /// How far it turns, either way.
        double sweep() {
            return turn.radiansPerSecond() * seconds();
        }

        double endRadians() {
            return label.startRadians() + turn.sign() * sweep();
        }

        List<LabelWindow> windows() {
            return windows(label.startRadians());
        }

        List<LabelWindow> windows(double startRadians) {
            return LabelWindow.list(
                    Travel.inThirds(turn.sign() * sweep(), seconds(), Profile.EVEN),
                    startRadians,
                    label.withinRadians());
        }

        static double readable(List<LabelWindow> windows) {
            return windows.stream().mapToDouble(LabelWindow::seconds).sum();
        }

        /// The start that has the label face the lens half way.
        double centredStart() {
            return -turn.sign() * sweep() / 2;
        }
    }

    /// How it turns, steadily.
    ///
    /// @param radiansPerSecond how fast, > 0
    /// @param sign 1 clockwise seen from above, -1 the other way
    record Turn(double radiansPerSecond, int sign) {}

    /// A label.
    ///
    /// @param arcRadians how far it reaches round the thing
    /// @param startRadians its middle's turn from the lens in the first frame, + clockwise
    /// @param withinRadians how far from the lens it reads
    record Label(double arcRadians, double startRadians, double withinRadians) {}

    /// The label's front on the picture.
    ///
    /// @param view the view
    /// @param diameterMetres of the thing
    record Front(View view, double diameterMetres) {
        /// How far the front goes on the picture in an exposure.
        double blurPixels(Turn turn) {
            return turn.radiansPerSecond() * diameterMetres / 2 * view.exposureSeconds() * view.pixelsPerMetre();
        }

        /// How far from the lens a place of the side is still seen, radians: the tangent from the lens.
        double seenRadians() {
            double radius = diameterMetres / 2;
            return Math.acos(radius / (radius + view.distanceMetres()));
        }
    }
}
