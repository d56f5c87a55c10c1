package plumeline.ask.time;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Words;
import plumeline.quantity.Print;
import plumeline.time.CaptureMode;
import plumeline.time.PlayedShutter;
import plumeline.time.SourceFrames;

/// The sentences of `ramp`.
final class RampWords {
    /// The shutter whose smear looks natural (common practice).
    private static final double USUAL_RADIANS = Math.PI;

    /// Captured frames a screen frame count as more than one, and stops as none, from here on.
    private static final double SOME = 0.005;

    private static final int MOST_MODES = 6;

    private final Ramp.Inputs inputs;
    private final double chosen;
    private final SourceFrames frames;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();

    RampWords(Ramp.Inputs inputs, double chosen) {
        this.inputs = inputs;
        this.chosen = chosen;
        frames = inputs.framesAt(chosen);
    }

    Notes notes() {
        sayNeed();
        sayTime();
        sayRepeats();
        sayModes();
        tryRates();
        sayShutter();
        return new Notes(
                because,
                attempts,
                List.of(
                        "Lamps whose light pulses may show at another rate: ask lamp-flicker at " + Words.rate(chosen)
                                + ".",
                        "Moves, falls and ink go by the table's time: what shall be seen must happen within its "
                                + seconds(inputs.realSeconds()) + "."),
                List.of(
                        "Real time is the integral of speed over screen time, exactly; the captured frame seen is the"
                                + " nearest one, halves up: own",
                        "Least rate, stops and shutter angle by the rule of three: common practice"));
    }

    private boolean isEnough() {
        return CaptureMode.isEnough(chosen, inputs.leastPerSecond());
    }

    private void sayNeed() {
        double least = inputs.leastPerSecond();
        if (inputs.retime().slowestSpeed(0, inputs.frames()) == 0) {
            because.add("The table stands all the time: one frame is held.");
            return;
        }
        String need = percent(inputs.slowestSpeed()) + " needs " + Words.rate(least);
        because.add(
                Math.abs(chosen / least - 1) < 1e-9
                        ? need + ": " + light(chosen) + "."
                        : need + ": " + light(least) + "; it is shot at " + Words.rate(chosen) + ": " + light(chosen)
                                + ".");
    }

    /// `2.3 stops more light than at 24 fps with the same shutter angle`.
    private String light(double rate) {
        double stops = CaptureMode.lightStops(rate, inputs.timelinePerSecond());
        String line = Words.rate(inputs.timelinePerSecond()) + " with the same shutter angle";
        return Math.abs(stops) < SOME
                ? "the light of " + line
                : stops(Math.abs(stops)) + (stops < 0 ? " more" : " less") + " light than at " + line;
    }

    private static String stops(double stops) {
        String number = Print.number(stops, 1);
        return number + (number.equals("1") ? " stop" : " stops");
    }

    private void sayTime() {
        double real = inputs.realSeconds();
        because.add(seconds(inputs.screenSeconds()) + " on the screen (" + Print.number(inputs.frames(), 2)
                + " frames) are " + seconds(real) + " on the table, " + Print.number(real * chosen, 1)
                + " captured frames.");
        if (inputs.retime().earliestSeconds(inputs.frames()) < 0) {
            because.add("It runs backward: captured frames count from the earliest instant shown, as the table is"
                    + " filmed forward; the shot begins "
                    + seconds(-inputs.retime().earliestSeconds(inputs.frames())) + " after it.");
        }
    }

    private void sayRepeats() {
        int repeated = frames.repeated();
        int stuck = inputs.stuck(frames);
        if (repeated > stuck) {
            because.add(count(repeated - stuck) + " in holds, as asked.");
        }
        if (stuck > 0) {
            because.add(count(stuck)
                    + (isEnough()
                            ? " where the speed runs to or through 0 %, slower than any speed written: no rate is quite"
                                    + " enough there."
                            : ": " + Words.rate(chosen) + " is too slow."));
        }
        if (!inputs.hasMode(chosen)) {
            because.add("The camera has no mode of " + Words.rate(chosen) + ".");
        }
    }

    private String count(int repeats) {
        return repeats + " of " + frames.count() + " screen frames " + (repeats == 1 ? "shows" : "show")
                + " the same as the one before";
    }

    /// What each rate that is enough costs.
    private void sayModes() {
        List<String> costs = new ArrayList<>();
        boolean isSmaller = false;
        for (Ramp.Mode mode : inputs.modes()) {
            if (CaptureMode.isEnough(mode.framesPerSecond(), inputs.leastPerSecond()) && costs.size() < MOST_MODES) {
                double stops = CaptureMode.lightStops(mode.framesPerSecond(), inputs.timelinePerSecond());
                costs.add(Words.rate(mode.framesPerSecond()) + " " + stops(Math.max(0, -stops)) + across(mode));
                isSmaller |= isSmaller(mode);
            }
        }
        if (!costs.isEmpty()) {
            because.add("Rates that are enough and what they cost of light: " + String.join("; ", costs) + "."
                    + (isSmaller
                            ? " Fewer pixels across are a smaller picture, or that much less field where the camera"
                                    + " crops for it."
                            : ""));
        }
    }

    private boolean isSmaller(Ramp.Mode mode) {
        OptionalDouble across = mode.acrossPixels();
        return across.isPresent() && across.getAsDouble() < inputs.widestPixels();
    }

    private String across(Ramp.Mode mode) {
        if (mode.acrossPixels().isEmpty()) {
            return "";
        }
        double across = mode.acrossPixels().getAsDouble();
        String said = " and " + Print.number(across, 0) + " px across";
        return isSmaller(mode) ? said + ", " + Print.share(across / inputs.widestPixels(), 0) + " of the widest" : said;
    }

    private void tryRates() {
        double least = inputs.leastPerSecond();
        if (isEnough() && inputs.hasMode(chosen)) {
            double back = CaptureMode.lightStops(least, chosen);
            if (inputs.capturePerSecond().isPresent() && back > 0.05) {
                attempts.add(Words.rate(least) + " is enough and needs " + stops(back) + " less light.");
            }
            tryHold();
            return;
        }
        String slowest = "no slower than " + percent(inputs.timelinePerSecond() / chosen) + " at " + Words.rate(chosen);
        attempts.add(CaptureMode.findLeast(inputs.captureModes(), least)
                .map(mode ->
                        "Shoot at " + Words.rate(mode.framesPerSecond()) + ": " + light(mode.framesPerSecond()) + ".")
                .orElseGet(() -> inputs.modes().isEmpty()
                        ? "Shoot at " + Words.rate(least) + " or faster, or go " + slowest + "."
                        : "The camera has no rate that is enough: go no slower than "
                                + percent(inputs.timelinePerSecond() / Ramp.fastest(inputs)) + " at "
                                + Words.rate(Ramp.fastest(inputs))
                                + ", or blend frames in the edit where the picture bears it."));
    }

    private void tryHold() {
        int stuck = inputs.stuck(frames);
        int faster = inputs.stuck(inputs.framesAt(4 * chosen));
        if (stuck > 0) {
            attempts.add("Jump there, by two speeds at one time, or shoot faster: at " + Words.rate(4 * chosen) + " "
                    + faster + (faster == 1 ? " frame repeats." : " frames repeat."));
        }
    }

    /// What a half-open shutter looks like at the fastest speed, and what brings its smear back.
    private void sayShutter() {
        double fastest = inputs.retime().fastestSpeed(0, inputs.frames());
        double step = fastest * chosen / inputs.timelinePerSecond();
        if (step < 1 + SOME) {
            return;
        }
        String speed = percent(fastest);
        double seen = new PlayedShutter(USUAL_RADIANS, step).seenRadians();
        because.add("At " + speed + " one captured frame in " + Print.number(step, 2) + " is seen: a shutter of 180 deg"
                + " looks like " + degrees(seen) + (seen < USUAL_RADIANS / 2 ? ", and motion may stutter." : "."));
        PlayedShutter open =
                new PlayedShutter(new PlayedShutter(USUAL_RADIANS, step).openedRadians(USUAL_RADIANS), step);
        double average = open.framesToAverage(USUAL_RADIANS);
        String opened = "For natural smear at " + speed + " open to " + degrees(open.openRadians());
        attempts.add(
                average <= 1 + SOME
                        ? opened + "; where it is slower that smears more."
                        : opened + ", which looks like " + degrees(open.seenRadians()) + ", and average "
                                + Print.number(average, 1) + " captured frames for each shown.");
    }

    private static String degrees(double radians) {
        return Print.number(Math.toDegrees(radians), 1) + " deg";
    }

    private static String percent(double speed) {
        return Print.share(speed, 2);
    }

    private static String seconds(double seconds) {
        return Print.seconds(seconds, 3);
    }
}
