package plumeline.pace;

import java.util.Optional;
import plumeline.stage.Gauge;

/// The shot is captured fast enough for its slowest speed: no captured frame is shown twice.
///
/// Margin in frames a second: the capture rate over the least, the timeline's rate over the slowest speed. A held frame
/// is meant, and doesn't count.
///
/// @param coupling what the shot's speed asks for
record WholeFrames(Coupling coupling) implements Gauge<Paced> {
    @Override
    public String unit() {
        return "fps";
    }

    @Override
    public double[] parts(Paced at) {
        double margin = coupling.capture().framesPerSecond() - coupling.leastRate();
        return new double[] {Math.abs(margin) < 1e-9 * coupling.leastRate() ? 0 : margin};
    }

    @Override
    public String standing(Paced at) {
        return "Its slowest speed is " + Coupling.speed(coupling.slowest()) + ", which needs "
                + Coupling.rate(coupling.leastRate()) + "; it is captured at "
                + Coupling.rate(coupling.capture().framesPerSecond()) + ".";
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        double rate = coupling.capture().framesPerSecond();
        if (!coupling.isInList()) {
            return Optional.of("The body has no mode of " + Coupling.rate(rate) + ": it has " + coupling.modes() + ".");
        }
        return at.stage().retime().rests(0, (double) at.stage().frames())
                ? Optional.of("Where its speed comes to nothing a frame is held, which is meant.")
                : Optional.empty();
    }
}
