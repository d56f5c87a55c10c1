package plumeline.ask.time;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.time.CaptureMode;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;

/// The question `ramp` in text.
final class RampInquiry implements Inquiry<Ramp.Inputs> {
    private static final String SPEEDS = "speeds";
    private static final int MOST_KEYS = 500;

    private static final String EXAMPLE = """
        # ramp: a speed ramp before it is shot. Add --table for each screen frame's captured frame.
        timeline_rate: 24 fps
        speeds:                    # on the screen: time or frames from the shot's first; the last one ends the shot
        - {at: 0 s, speed: 100 %}  # of real time; 0 % holds a frame, -100 % runs backward
        - {at: 1 s, speed: 20 %}   # two keys at one time make a jump
        - {at: 3 s, speed: 20 %}
        - {at: 4 s, speed: 100 %}
        ease: straight             # or smooth; how the speed runs between keys; default straight
        # capture_rate: 120 fps    # default: the least that shows no frame twice
        modes: [24 fps, 60 fps, 120 fps, {rate: 240 fps, across: 1920 px, readout: 6 ms}]   # rates the camera has
        """;

    @Override
    public String name() {
        return "ramp";
    }

    @Override
    public String asks() {
        return "which capture rate a speed ramp needs, and which real time it shows";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape rate = amount(Kind.RATE, "1 fps", "100000 fps");
        Shape key = Shape.Keys.of(
                Key.required(
                        "at",
                        "time or frames on the screen from the shot's first",
                        Shape.AnyOf.of(
                                amount(Kind.TIME, "0 s", "3600 s"), amount(Kind.FRAMES, "0 frames", "432000 frames"))),
                Key.required("speed", "playback speed, of real time", amount(Kind.SHARE, "-100000 %", "100000 %"))
                        .hint("real time as 100 %, a fifth of it as 20 %", ""));
        Shape mode = Shape.Keys.of(
                Key.required("rate", "the mode's rate", rate),
                Key.optional("across", "its pixels across", amount(Kind.PIXELS, "1 px", "100000 px")),
                Key.optional("readout", "its rolling shutter's readout", amount(Kind.TIME, "0.001 ms", "1 s")));
        return Shape.Keys.of(
                Key.required("timeline_rate", "the film's frame rate", amount(Kind.RATE, "1 fps", "1000 fps")),
                Key.required(
                        SPEEDS,
                        "playback speeds at times on the screen, the last of them the shot's end",
                        new Shape.Items(key, 1, MOST_KEYS)),
                Key.optional(
                        "ease", "how the speed runs between keys", new Shape.Choice(List.of("straight", "smooth"))),
                Key.optional("capture_rate", "the camera's frame rate", rate),
                Key.optional(
                        "modes", "rates that the camera has", new Shape.Items(Shape.AnyOf.of(rate, mode), 1, 100)));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Ramp.Inputs read(Given given) {
        double timeline = given.si("timeline_rate");
        Retime.Ease ease =
                given.text("ease", "straight", "speeds run in straight lines").equals("smooth")
                        ? Retime.Ease.SMOOTH
                        : Retime.Ease.STRAIGHT;
        List<Retime.Key> keys = keys(given, timeline);
        List<Ramp.Mode> modes = given.maps("modes", "rate").stream()
                .map(mode -> new Ramp.Mode(mode.si("rate"), mode.findSi("across")))
                .toList();
        double frames = keys.getLast().frame();
        if (frames <= 0) {
            given.refuse(
                    SPEEDS,
                    "P-ASK-46",
                    "a ramp that ends when it begins",
                    "a ramp that lasts",
                    "Say how long it is by a last speed, such as {at: 4 s, speed: 20 %}.");
        }
        return new Ramp.Inputs(
                new Retime(keys, ease, timeline), frames > 0 ? frames : 1, given.findSi("capture_rate"), modes);
    }

    private static List<Retime.Key> keys(Given given, double timeline) {
        List<Retime.Key> keys = new ArrayList<>();
        double last = 0;
        for (Given each : given.maps(SPEEDS)) {
            boolean isFrames = each.quantity("at").kind() == Kind.FRAMES;
            double frame = Math.max(0, each.si("at") * (isFrames ? 1 : timeline));
            if (frame < last) {
                each.refuse(
                        "at",
                        "P-ASK-45",
                        each.quantity("at").toText() + " behind a later one",
                        "no earlier than the one before it, " + before(last, isFrames, timeline),
                        "Put the speeds in the order in which they come.");
                frame = last;
            }
            keys.add(new Retime.Key(frame, each.si("speed")));
            last = frame;
        }
        return keys;
    }

    private static String before(double frame, boolean isFrames, double timeline) {
        return isFrames ? Print.number(frame, 3) + " frames" : Print.number(frame / timeline, 4) + " s";
    }

    /// The rate that is chosen, so that it stays when an input is moved for intervals.
    @Override
    public double[] settle(Ramp.Inputs inputs, PaperUnit unit) {
        return new double[] {Ramp.choose(inputs)};
    }

    @Override
    public boolean hasTable() {
        return true;
    }

    @Override
    public String table(Ramp.Inputs inputs, double[] settled) {
        return RampTable.write(inputs, settled[0]);
    }

    @Override
    public Draft answer(Ramp.Inputs inputs, double[] settled, Words words) {
        Draft draft = draft(inputs, settled[0], new RampWords(inputs, settled[0]).notes());
        return inputs.capturePerSecond().isEmpty() && inputs.modes().isEmpty()
                ? draft.assuming(new Assumed(
                        "capture_rate", new Value.Number(settled[0], "fps"), "the least that shows no frame twice"))
                : draft;
    }

    @Override
    public Draft vary(Ramp.Inputs moved, double[] settled) {
        return draft(moved, settled[0], Notes.NONE);
    }

    private static Draft draft(Ramp.Inputs inputs, double chosen, Notes notes) {
        double real = inputs.realSeconds();
        double least = inputs.leastPerSecond();
        SourceFrames seen = inputs.framesAt(chosen);
        List<Item> items = List.of(
                Item.of("screen_time", inputs.screenSeconds(), "s"),
                Item.of("real_time", real, "s"),
                Item.of("source_frames", real * chosen, "1"),
                Item.of("least_capture_rate", least, "fps"),
                Item.of("chosen_rate", chosen, "fps"),
                Item.of("repeated_frames", seen.repeated(), "1").following(new Course.Jumping()),
                Item.of("light_change", CaptureMode.lightStops(chosen, inputs.timelinePerSecond()), "stops"));
        List<Criterion> criteria = List.of(
                new Criterion("the capture rate", rateMargin(chosen, least)),
                new Criterion("the camera's rates", inputs.hasMode(chosen) ? 1 : -1));
        return new Draft(items, criteria, inputs.stuck(seen) > 0 ? Verdict.TIGHT : Verdict.HOLDS, notes);
    }

    /// Rounding doesn't make a rate too slow.
    private static double rateMargin(double chosen, double least) {
        return CaptureMode.isEnough(chosen, least) ? Math.max(0, chosen - least) : chosen - least;
    }
}
