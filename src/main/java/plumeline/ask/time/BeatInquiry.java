package plumeline.ask.time;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.FrameRate;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.time.Beats;

/// The question `beat` in text.
final class BeatInquiry implements Inquiry<BeatInquiry.Inputs> {
    private static final String FIRST = "first";
    private static final double SOME = 1e-6;

    private static final String EXAMPLE = """
        # beat: which frames are the beats. Frames count from 0.
        tempo: 128 bpm
        rate: 24 fps
        first: 0.5 s               # when the first downbeat falls; default 0 s
        bars: 4                    # default 4
        beats_per_bar: 4           # default 4
        """;

    /// What is asked.
    ///
    /// @param beats where they fall
    /// @param bars how many, > 0
    /// @param beatsPerBar how many, > 0
    /// @param rate the film's
    record Inputs(Beats beats, int bars, int beatsPerBar, FrameRate rate) {
        int count() {
            return bars * beatsPerBar;
        }
    }

    @Override
    public String name() {
        return "beat";
    }

    @Override
    public String asks() {
        return "which frames are the beats of the music";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        return Shape.Keys.of(
                Key.required("tempo", "the music's tempo", amount(Kind.TEMPO, "1 bpm", "1000 bpm")),
                Key.required("rate", "the film's frame rate", amount(Kind.RATE, "1 fps", "1000 fps")),
                Key.optional(FIRST, "when the first downbeat falls", amount(Kind.TIME, "0 s", "86400 s")),
                Key.optional("bars", "bars to count", new Shape.Whole(1, 200)),
                Key.optional("beats_per_bar", "beats in a bar", new Shape.Whole(1, 32)));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Inputs read(Given given) {
        FrameRate rate = FrameRate.of(given.quantity("rate"));
        given.si(FIRST, "0 s", "the music begins with the film");
        Quantity first = given.has(FIRST) ? given.quantity(FIRST) : Quantities.get("0 s");
        Beats beats = new Beats(given.quantity("tempo").exactValue(), first.exactSi(), rate);
        int bars = (int) given.si("bars", "4", "a phrase of four");
        return new Inputs(beats, bars, (int) given.si("beats_per_bar", "4", "four to the bar"), rate);
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        return draft(inputs, notes(inputs));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Inputs inputs, Notes notes) {
        List<Item> items = new ArrayList<>();
        for (int n = 1; n <= inputs.count(); n++) {
            items.add(Item.of("frame_" + n, (double) inputs.beats().frame(n - 1), "1")
                    .following(new Course.Jumping()));
        }
        items.add(Item.of("drift", inputs.beats().driftFrames(inputs.count()), "frames")
                .following(new Course.Jumping()));
        return new Draft(items, List.of(), Verdict.HOLDS, notes);
    }

    private static Notes notes(Inputs inputs) {
        Beats beats = inputs.beats();
        double interval = beats.intervalFrames();
        double drift = beats.driftFrames(inputs.count());
        List<String> because = new ArrayList<>();
        because.add("A beat is " + Print.number(interval, 4) + " frames"
                + (beats.isWhole()
                        ? ": every beat falls on a frame's start."
                        : ", so that cuts are up to half a frame off."));
        if (Math.abs(drift) >= SOME) {
            because.add("Adding up whole frames instead is " + Print.number(Math.abs(drift), 2) + " frames too "
                    + (drift > 0 ? "late" : "early") + " after " + inputs.count()
                    + " beats: each beat is placed by itself.");
        }
        because.add(inputs.bars() + (inputs.bars() == 1 ? " bar" : " bars") + " of " + inputs.beatsPerBar() + " last "
                + Print.seconds(inputs.rate().secondsOf(interval * inputs.count()), 3) + ", "
                + Print.number(interval * inputs.count(), 2) + " frames. Frames count from 0.");
        return new Notes(
                because,
                attempts(inputs, interval),
                List.of(),
                List.of("60 s over the tempo, times the exact rate; nearest frame, halves up: arithmetic"));
    }

    /// The nearest tempo at which beats are whole frames apart.
    private static List<String> attempts(Inputs inputs, double interval) {
        double whole = Math.floor(interval + 0.5);
        if (inputs.beats().isWhole() || whole < 1) {
            return List.of();
        }
        double tempo = 60 * inputs.rate().framesPerSecond() / whole;
        return List.of("Where the music can be made or stretched to it: " + Print.number(tempo, 3) + " bpm has "
                + Print.number(whole, 0) + " frames to the beat.");
    }
}
