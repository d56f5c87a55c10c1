package plumeline.ask.time;

import java.util.Locale;
import plumeline.time.SourceFrames;

/// The frames of `ramp`, a line each.
final class RampTable {
    private RampTable() {}

    /// Screen frame, captured frame that is seen, speed, position between captured frames to a thousandth, and by how
    /// much that is past the one seen.
    static String write(Ramp.Inputs inputs, double capturePerSecond) {
        SourceFrames frames = inputs.framesAt(capturePerSecond);
        StringBuilder out = new StringBuilder(frames.count() * 48 + 64);
        out.append("screen   source   speed[%]       position    phase\n");
        for (int n = 0; n < frames.count(); n++) {
            out.append(String.format(
                    Locale.ROOT,
                    "%6d %8d %10.3f %14.3f %8.3f\n",
                    n,
                    frames.shown(n),
                    thousandths(100 * inputs.retime().speedAt(n)),
                    thousandths(frames.position(n)),
                    thousandths(frames.phase(n))));
        }
        return out.toString();
    }

    /// Rounded, so that there is never a negative zero.
    private static double thousandths(double value) {
        return Math.rint(value * 1e3) / 1e3 + 0.0;
    }
}
