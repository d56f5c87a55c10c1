package plumeline.ask.light;

import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Shutter;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.flicker.LampPulse;
import plumeline.flicker.PulsedFrames;
import plumeline.flicker.ShutterSetting;
import plumeline.flicker.Waveform;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `lamp-flicker` in text.
final class LampFlickerInquiry implements Inquiry<LampFlicker.Inputs> {
    private static final String SQUARE = "square";
    private static final double LEAST_DUTY = 0.001;

    /// Pulses a frame count as whole within this.
    private static final double NEAR_STEP = 1e-5;

    /// Rates that cameras mostly have, 1/s.
    private static final List<Double> USUAL = List.of(
            24000 / 1001.0,
            24.0,
            25.0,
            30000 / 1001.0,
            30.0,
            48.0,
            50.0,
            60000 / 1001.0,
            60.0,
            100.0,
            120000 / 1001.0,
            120.0,
            240.0);

    private static final String EXAMPLE = """
        # lamp-flicker: does the lamp's pulse show
        pulse_rate: 100 Hz           # lamps straight on the mains: twice its 50 Hz or 60 Hz; a dimmer's: ask its maker
        rate: 24 fps
        shutter: 172.8 deg           # or a time
        # depth: 100 %               # (max - min)/(max + min) of its light; default 100 %, the worst there is
        # modes: [24 fps, 25 fps, 50 fps]   # rates the camera has; default the usual ones
        # readout: 16 ms             # a rolling shutter's, first row to last: then its bars count too
        # waveform: rectified        # or sine (default), square
        # duty: 30 %                 # square: the part of a pulse in which it is on
        """;

    @Override
    public String name() {
        return "lamp-flicker";
    }

    @Override
    public String asks() {
        return "whether a lamp's pulse shows, and which rates and shutters are clean";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape rate = new Shape.Amount(Kind.RATE, Range.between("1 fps", "100000 fps"), Shape.Mark.FIXED);
        return Shape.Keys.of(
                Key.required("pulse_rate", "pulses a second", amount(Kind.FREQUENCY, "1 Hz", "1000000 Hz")),
                Key.required("rate", "the camera's frame rate", rate),
                Key.required("shutter", "angle or time", Shutter.shape()),
                Key.optional(
                        "depth",
                        "modulation, (max - min)/(max + min) of its light",
                        amount(Kind.SHARE, "0 %", "100 %")),
                Key.optional("modes", "rates that the camera has", new Shape.Items(rate, 1, 100)),
                Key.optional(
                        "readout",
                        "a rolling shutter's, from the first row's start to the last one's",
                        amount(Kind.TIME, "0.001 ms", "1 s")),
                Key.optional(
                        "waveform",
                        "how the light runs through a pulse",
                        new Shape.Choice(List.of("sine", "rectified", SQUARE))),
                Key.optional(
                        "duty", "the part of a square pulse in which it is on", amount(Kind.SHARE, "0.1 %", "100 %")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public LampFlicker.Inputs read(Given given) {
        double rate = given.si("rate");
        double exposure = Shutter.readSeconds(given, rate);
        boolean isAngle = given.quantity("shutter").kind() == Kind.ANGLE;
        double depth = Math.clamp(given.si("depth", "100 %", "nothing is known of it: the worst there is"), 0, 1);
        LampPulse lamp = new LampPulse(given.si("pulse_rate"), depth, waveform(given));
        return new LampFlicker.Inputs(
                new PulsedFrames(lamp, rate, exposure),
                isAngle ? new ShutterSetting.Angle(exposure * rate) : new ShutterSetting.Time(exposure),
                modes(given),
                given.findSi("readout"));
    }

    private static Waveform waveform(Given given) {
        String word = given.has("duty") && !given.has("waveform")
                ? SQUARE
                : given.text("waveform", "sine", "a lamp's ripple is mostly near one");
        if (given.has("duty") && !word.equals(SQUARE)) {
            given.refuse(
                    "duty",
                    "P-ASK-24",
                    "given beside waveform " + word,
                    "left out, or beside waveform: square",
                    "Leave out duty, or write waveform: square.");
        }
        return switch (word) {
            case "rectified" -> new Waveform.RectifiedSine();
            case SQUARE ->
                new Waveform.Square(Math.clamp(given.si("duty", "50 %", "a dimmer half way down"), LEAST_DUTY, 1));
            default -> new Waveform.Sine();
        };
    }

    private static List<Double> modes(Given given) {
        String usual = given.has("modes")
                ? ""
                : given.text("modes", "23.976 to 240 fps", "the rates that cameras mostly have");
        return usual.isEmpty() ? given.list("modes") : USUAL;
    }

    /// Whether frames are in step with the lamp; the nearest whole number of pulses an exposure, and 1 or -1 for more
    /// or less than that: so that what ± does is counted through it.
    @Override
    public double[] settle(LampFlicker.Inputs inputs, PaperUnit unit) {
        double pulses = inputs.frames().pulsesPerExposure();
        double whole = Math.rint(pulses);
        return new double[] {inputs.frames().isInStep() ? 1 : 0, whole, pulses < whole ? -1 : 1};
    }

    @Override
    public Draft answer(LampFlicker.Inputs inputs, double[] settled, Words words) {
        return draft(inputs, settled, new LampFlickerWords(inputs).notes());
    }

    @Override
    public Draft vary(LampFlicker.Inputs moved, double[] settled) {
        return draft(moved, settled, Notes.NONE);
    }

    private static Draft draft(LampFlicker.Inputs inputs, double[] settled, Notes notes) {
        PulsedFrames frames = inputs.frames();
        List<Item> items = List.of(
                Item.of("pulses_per_frame", frames.pulsesPerFrame(), "1"),
                Item.of("pulses_per_exposure", frames.pulsesPerExposure(), "1"),
                Item.of("ripple", 100 * frames.ripple(), "%").following(new Course.Jumping()),
                Item.word("standing_bars", frames.barsStand() ? "yes" : "no"),
                new Item("clean_rates", new Value.Numbers(LampFlicker.cleanRates(inputs), "fps")),
                new Item("clean_shutters", new Value.Numbers(LampFlicker.cleanDegrees(inputs), "deg")),
                Item.of("beat", frames.beatHertz(), "Hz").following(new Course.Jumping()));
        List<Criterion> criteria = List.of(
                new Criterion("what is left of the pulse", LampFlicker.PASSES - signedRipple(frames, settled)),
                new Criterion("the lamp's step with the frames", stepMargin(frames, settled)),
                new Criterion("what bars show", LampFlicker.PASSES - inputs.bars()));
        return new Draft(items, criteria, inputs.worst() <= LampFlicker.HOLDS ? Verdict.HOLDS : Verdict.TIGHT, notes);
    }

    /// What is left, less than nothing on the other side of whole pulses than the input.
    private static double signedRipple(PulsedFrames frames, double[] settled) {
        double past = settled[2] * Math.sin(Math.PI * (frames.pulsesPerExposure() - settled[1]));
        return past < 0 ? -frames.ripple() : frames.ripple();
    }

    /// Frames in step stay so only as exactly as lamp and camera keep their rates.
    private static double stepMargin(PulsedFrames frames, double[] settled) {
        boolean matters = settled[0] > 0 && frames.rows() > LampFlicker.PASSES;
        return matters ? NEAR_STEP - (frames.pulsesPerFrame() - Math.rint(frames.pulsesPerFrame())) : 1;
    }
}
