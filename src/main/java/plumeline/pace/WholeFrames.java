package plumeline.pace;

import java.util.Optional;
import plumeline.stage.Gauge;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// The shot is captured fast enough for its slowest speed: no captured frame is shown twice.
///
/// Margin in frames a second: the capture rate over the least, the timeline's rate over the slowest speed. A held frame
/// is meant, and doesn't count.
///
/// @param coupling what the shot's speed asks for
record WholeFrames(Coupling coupling) implements Gauge<Paced> {
    private static final long MOST_FRAMES = 500_000;

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
                ? Optional.of("Where its speed stays at nothing a frame is held, which is meant.")
                : Optional.empty();
    }

    /// A speed that comes to nothing is slower still for a while, and no rate is enough for it.
    @Override
    public Optional<String> findTight(Paced at) {
        int repeated = repeated(at);
        return parts(at)[0] >= 0 && repeated > 0
                ? Optional.of("Where its speed comes to nothing " + repeated
                        + (repeated == 1 ? " frame shows" : " frames show") + " the same as the one before.")
                : Optional.empty();
    }

    /// Frames that show the same as the one before though the action goes on.
    private int repeated(Paced at) {
        Retime retime = at.stage().retime();
        if (!retime.rests(0, (double) at.stage().frames())) {
            return 0;
        }
        int frames = (int) Math.min(at.stage().frames(), MOST_FRAMES);
        SourceFrames shown = SourceFrames.of(retime, coupling.capture().framesPerSecond(), frames);
        int repeated = 0;
        for (int frame = 1; frame < frames; frame++) {
            boolean goesOn = Math.abs(retime.realSeconds(frame) - retime.realSeconds(frame - 1)) > 1e-9;
            repeated += goesOn && shown.shown(frame) == shown.shown(frame - 1) ? 1 : 0;
        }
        return repeated;
    }
}
