package plumeline.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import plumeline.flicker.CleanSettings;
import plumeline.flicker.LampPulse;
import plumeline.flicker.PulsedFrames;
import plumeline.flicker.ShutterSetting;
import plumeline.flicker.Waveform;
import plumeline.plan.Camera;
import plumeline.plan.Kit;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Gauge;

/// A lamp's pulse doesn't show at the camera's rate and shutter.
///
/// Margin in % of ripple under 3, from frame to frame and, where the mode's readout is written, between the rows of a
/// frame.
///
/// @param shot the look
/// @param lamp index of the lamp
/// @param film the film's rate, where the camera has none of its own
public record SteadyLight(Shot shot, int lamp, Quantity film) implements Gauge<Looks> {
    /// What may be left of a pulse, %: common practice.
    private static final double MOST_PERCENT = 3;

    /// What is left to this shows to nobody, %: common practice.
    private static final double HOLDS_PERCENT = 1;

    private static final double PERCENT = 100;
    private static final double HALF_TURN = 0.5;
    private static final double SAME_RATE = 1e-6;

    /// Steps in which a pulse rate with a ± is tried from end to end.
    private static final int TRIED = 41;

    private Written kit() {
        return shot.lights().get(lamp).light().written();
    }

    private String name() {
        return shot.lights().get(lamp).name();
    }

    private Optional<Quantity> findPulse() {
        return kit().findQuantity("pulse_rate");
    }

    private double depth() {
        return kit().findQuantity("depth").map(Quantity::si).orElse(1.0);
    }

    private double rate() {
        return shot.camera().findRate().orElse(film).si();
    }

    /// How frames are exposed: half their time where nobody says.
    private ShutterSetting shutter() {
        Optional<Quantity> shutter = shot.camera().findShutter();
        return shutter.isPresent() && shutter.get().kind() == Kind.TIME
                ? new ShutterSetting.Time(shutter.get().si())
                : new ShutterSetting.Angle(
                        shutter.map(angle -> angle.si() / (2 * Math.PI)).orElse(HALF_TURN));
    }

    private PulsedFrames frames(double hertz) {
        return new PulsedFrames(
                new LampPulse(hertz, depth(), new Waveform.Sine()),
                rate(),
                shutter().exposureSeconds(rate()));
    }

    /// The readout of the mode that has this rate.
    private OptionalDouble readoutSeconds() {
        return shot.camera().body().modes().stream()
                .filter(mode -> Math.abs(mode.rate().si() - rate()) < SAME_RATE * rate())
                .map(Kit.Mode::readout)
                .flatMap(Optional::stream)
                .mapToDouble(Quantity::si)
                .filter(seconds -> seconds > 0)
                .findFirst();
    }

    private double worstPercent(double hertz) {
        PulsedFrames frames = frames(hertz);
        OptionalDouble readout = readoutSeconds();
        double bars = readout.isPresent() ? frames.barsDepth(readout.getAsDouble()) : 0;
        return PERCENT * Math.max(frames.ripple(), bars);
    }

    private boolean isOff(Looks at) {
        return at.now().scene().beams().get(lamp).level() <= 0;
    }

    @Override
    public boolean isIdle(Looks at) {
        return isOff(at);
    }

    @Override
    public String unit() {
        return "%";
    }

    @Override
    public double[] parts(Looks at) {
        boolean isSteady = isOff(at) || findPulse().isEmpty();
        return new double[] {
            MOST_PERCENT - (isSteady ? 0 : worstPercent(findPulse().get().si()))
        };
    }

    @Override
    public String standing(Looks at) {
        if (findPulse().isEmpty()) {
            return "No pulse_rate is written of "
                    + shot.lights().get(lamp).light().name()
                    + ": it counts as steady. Shoot the test before you trust that.";
        }
        if (isOff(at)) {
            return name() + " is off.";
        }
        PulsedFrames frames = frames(findPulse().get().si());
        List<String> words = new ArrayList<>();
        words.add(name() + " pulses " + findPulse().get().toText() + " and an exposure takes in "
                + Print.number(frames.pulsesPerExposure(), 2) + " pulses: "
                + (frames.isInStep()
                        ? "every frame begins at the same place of a pulse, frames are alike"
                        : frames.isClean()
                                ? "nothing is left to see from frame to frame"
                                : "frames differ by " + percent(PERCENT * frames.ripple()) + ", light and dark "
                                        + Print.number(frames.beatHertz(), 1) + " times a second")
                + "; " + Print.number(MOST_PERCENT, 0) + " % is allowed.");
        bars(frames).ifPresent(words::add);
        return String.join(" ", words);
    }

    private Optional<String> bars(PulsedFrames frames) {
        double rows = PERCENT * frames.rows();
        if (rows < 0.05) {
            return Optional.empty();
        }
        String what = "A rolling shutter shows bars that " + (frames.isInStep() ? "stand" : "roll") + ", ";
        OptionalDouble readout = readoutSeconds();
        return Optional.of(
                readout.isPresent()
                        ? what + Print.number(frames.bars(readout.getAsDouble()), 1)
                                + " on the picture's height; rows differ by "
                                + percent(PERCENT * frames.barsDepth(readout.getAsDouble())) + "."
                        : what + "up to " + percent(rows) + ": not counted without the mode's readout.");
    }

    private static String percent(double percent) {
        return percent < 0.05 ? "under 0.1 %" : Print.number(percent, 1) + " %";
    }

    @Override
    public Optional<String> findTight(Looks at) {
        if (findPulse().isEmpty() || isOff(at)) {
            return Optional.empty();
        }
        Quantity pulse = findPulse().get();
        double half = pulse.halfWidthSi();
        double most = IntStream.range(0, TRIED)
                .mapToDouble(i -> pulse.si() + half * (2.0 * i / (TRIED - 1) - 1))
                .filter(hertz -> hertz > 0)
                .flatMap(hertz -> DoubleStream.of(worstPercent(hertz)))
                .max()
                .orElse(0);
        if (half > 0 && most > MOST_PERCENT) {
            return Optional.of("Within its ± the pulse may leave " + percent(most) + ".");
        }
        return worstPercent(pulse.si()) > HOLDS_PERCENT
                ? Optional.of("Over 1 % a smooth backdrop shows it: shoot the test.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Looks at) {
        double level = at.now().scene().beams().get(lamp).level();
        if (findPulse().isEmpty() || level <= 0 || level >= 1) {
            return findPulse().isEmpty()
                    ? Optional.empty()
                    : Optional.of("A pulse rate is one of a colour at a level: others may differ. Shoot five seconds of"
                            + " a white card at this rate, shutter and level, and step through it.");
        }
        double hertz = findPulse().get().si();
        PulsedFrames switched = new PulsedFrames(
                new LampPulse(hertz, 1, new Waveform.Square(level)),
                rate(),
                shutter().exposureSeconds(rate()));
        return Optional.of("It is dimmed to " + Print.share(level, 0)
                + ": a dimmer that switches leaves up to " + percent(PERCENT * switched.rows())
                + " between exposures that begin at any time. Shoot five seconds of a white card at this rate, shutter"
                + " and level, and step through it.");
    }

    /// Another setting of the camera with which nothing, or next to nothing, is left.
    ///
    /// @param key the camera's key: `shutter` or `rate`
    /// @param value what it says then
    /// @param why in a few words
    public record Cleaner(String key, String value, String why) {}

    /// Lists settings of the camera with which the pulse doesn't show: a shutter of whole pulses, then the body's rates
    /// by how near they are; where bars count here none of which they aren't known.
    ///
    /// @return the settings
    public List<Cleaner> listCleaner() {
        List<Cleaner> all = new ArrayList<>();
        if (findPulse().isEmpty()) {
            return all;
        }
        double hertz = findPulse().get().si();
        long pulses = CleanSettings.nearestPulses(frames(hertz));
        if (pulses > 0) {
            double degrees = pulses / hertz * rate() * 360;
            String whole = pulses == 1 ? "one whole pulse" : pulses + " whole pulses";
            all.add(new Cleaner("shutter", Print.number(Math.min(360, degrees), 1) + " deg", whole + " an exposure"));
        }
        Camera camera = shot.camera();
        camera.body().modes().stream()
                .filter(mode -> readoutSeconds().isEmpty() || mode.readout().isPresent())
                .map(Kit.Mode::rate)
                .filter(other -> Math.abs(other.si() - rate()) > SAME_RATE * rate())
                .filter(other -> CleanSettings.rates(frames(hertz).lamp(), List.of(other.si()), shutter())
                        .contains(other.si()))
                .sorted((a, b) -> Double.compare(Math.abs(a.si() - rate()), Math.abs(b.si() - rate())))
                .forEach(other -> all.add(new Cleaner("rate", other.toText(), "frames are then alike")));
        return all;
    }
}
