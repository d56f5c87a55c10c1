package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.flicker.CleanSettings;
import plumeline.flicker.LampPulse;
import plumeline.flicker.PulsedFrames;
import plumeline.flicker.Waveform;
import plumeline.quantity.Print;

/// The sentences of `lamp-flicker`.
final class LampFlickerWords {
    private static final double LOW_LEVEL = 0.1;

    private final LampFlicker.Inputs inputs;
    private final PulsedFrames frames;

    LampFlickerWords(LampFlicker.Inputs inputs) {
        this.inputs = inputs;
        frames = inputs.frames();
    }

    Notes notes() {
        List<String> because = new ArrayList<>();
        because.add(frameToFrame());
        because.add(bars());
        because.add(dimming());
        return new Notes(
                because,
                attempts(),
                List.of("A pulse rate is one of a colour at a level: others may differ, and lamps straight on the mains"
                        + " follow its drift of some tenths of a per cent."),
                List.of(
                        "Ripple depth · |sin πn/πn|, n pulses an exposure: a sine over a box (Fourier)",
                        "Whole pulses an exposure or a frame: common practice of cinematography",
                        "To 1 % holds, to 3 % tight: common practice"));
    }

    private String frameToFrame() {
        String taken = "An exposure takes in " + Print.number(frames.pulsesPerExposure(), 2) + " pulses";
        if (frames.isInStep()) {
            return "Every frame begins at the same place of a pulse ("
                    + Print.number(Math.rint(frames.pulsesPerFrame()), 0)
                    + " a frame): frames are alike as long as lamp and camera keep their rates.";
        }
        if (frames.isClean()) {
            return taken
                    + (isWhole() ? ", whole ones: the same light whenever it begins." : ": nothing is left to see.");
        }
        return taken + ": frames differ by " + upTo(frames.ripple()) + " of (max - min)/(max + min), "
                + times(frames.beatHertz()) + ".";
    }

    private boolean isWhole() {
        double pulses = frames.pulsesPerExposure();
        return Math.rint(pulses) >= 1 && Math.abs(pulses - Math.rint(pulses)) < 0.005;
    }

    private static String times(double hertz) {
        return hertz >= 1
                ? "light and dark " + Print.number(hertz, 1) + " times a second"
                : "light and dark once in " + Print.number(1 / hertz, 1) + " s";
    }

    private String bars() {
        double rows = frames.rows();
        if (rows < 0.0005) {
            return "A rolling shutter shows no bars: every row takes in the same light.";
        }
        String what =
                "A rolling shutter shows bars that " + (frames.barsStand() ? "stand" : "roll") + ", " + upTo(rows);
        if (inputs.readoutSeconds().isEmpty()) {
            return what + " of (max - min)/(max + min); they don't count here without readout, the time from its first"
                    + " row to its last.";
        }
        double readout = inputs.readoutSeconds().getAsDouble();
        double roll = frames.roll(readout);
        return what + ": " + Print.number(frames.bars(readout), 1) + " on the picture's height"
                + (frames.isInStep()
                        ? ""
                        : ", moving by " + Print.share(Math.abs(roll), 1) + " of it a frame "
                                + (roll > 0 ? "against" : "with") + " the order of rows")
                + "; rows of a frame differ by " + upTo(inputs.bars()) + ".";
    }

    private String dimming() {
        double level = frames.lamp().form() instanceof Waveform.Square(double duty) ? duty / 2 : LOW_LEVEL;
        LampPulse low = new LampPulse(frames.lamp().hertz(), 1, new Waveform.Square(level));
        return "Dimmers that switch keep the rate and shorten each pulse: on for " + Print.share(level, 1)
                + " of it, exposures that begin at any time differ by "
                + upTo(low.ripple(frames.pulsesPerExposure())) + ".";
    }

    private List<String> attempts() {
        List<String> attempts = new ArrayList<>();
        boolean maybeBars = inputs.readoutSeconds().isEmpty() && frames.rows() > LampFlicker.HOLDS;
        if (inputs.worst() > LampFlicker.HOLDS || maybeBars) {
            addSettings(attempts);
        }
        attempts.add(
                "Shoot the test: five seconds of a white card at every rate, shutter and dimmer level of the day, then"
                        + " step through it frame by frame.");
        return attempts;
    }

    private void addSettings(List<String> attempts) {
        long pulses = CleanSettings.nearestPulses(frames);
        if (pulses > 0) {
            double seconds = pulses / frames.lamp().hertz();
            attempts.add("A shutter of " + Print.number(seconds * frames.framesPerSecond() * 360, 1) + " deg, 1/"
                    + Print.number(1 / seconds, 2) + " s: "
                    + (pulses == 1 ? "one whole pulse" : pulses + " whole pulses")
                    + ", nothing is left.");
        }
        LampFlicker.cleanRates(inputs).stream()
                .filter(rate -> inputs.at(rate).worst() <= LampFlicker.HOLDS)
                .min((a, b) ->
                        Double.compare(Math.abs(a - frames.framesPerSecond()), Math.abs(b - frames.framesPerSecond())))
                .filter(rate -> Math.abs(rate - frames.framesPerSecond()) > 1e-6)
                .ifPresent(rate -> attempts.add(
                        "A rate of " + Print.number(rate, 3) + " fps with the shutter as it is: frames are alike."));
        if (attempts.isEmpty()) {
            attempts.add(
                    "A pulse is longer than a frame and no rate of the camera's is in step: a lamp that pulses faster,"
                            + " or not at all.");
        }
    }

    private static String upTo(double share) {
        return share < 0.0005 ? "under 0.1 %" : "up to " + Print.share(share, 1);
    }
}
