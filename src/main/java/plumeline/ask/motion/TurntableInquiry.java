package plumeline.ask.motion;

import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `turntable` in text.
final class TurntableInquiry implements Inquiry<Turning.Inputs> {
    private static final String SPEED = "speed";
    private static final String TIME = "time";
    private static final String SEEN = "seen_from_above";
    private static final String CLOCKWISE = "clockwise";
    private static final String FACING = "facing_at_start";
    private static final String SHORT = "facing";
    private static final String FRAMES = "frames";
    private static final String RATE = "rate";
    private static final String DIAMETER = "diameter";
    private static final double TURN = 2 * Math.PI;
    private static final double NEAR = 1e-6;

    private static final String EXAMPLE = """
        # turntable: a turntable pass
        speed: 10 rpm              # or deg/s; or time: 6 s, of one whole turn
        seen_from_above: clockwise # or counter-clockwise; default clockwise
        label:
          arc: 82 deg              # how far it reaches round the thing
          facing_at_start: -30 deg # its middle's turn from the lens, + clockwise; default: it faces the lens half way
        within: 30 deg             # its middle this near the lens reads; default 30 deg
        rate: 24 fps               # capture rate
        frames: 24
        diameter: 42 mm            # with view: for blur
        view:
          distance: 700 mm         # front principal plane to the label as it faces the lens
          focal_length: 100 mm
          sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
          shutter: 180 deg         # or a time; default 180 deg
        """;

    @Override
    public String name() {
        return "turntable";
    }

    @Override
    public String asks() {
        return "how far a turntable turns in a pass, how long the label reads, how it blurs";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape turn = amount(Kind.ANGLE, "-36000 deg", "36000 deg");
        Shape label = Shape.Keys.of(
                        Key.required(
                                "arc", "how far it reaches round the thing", amount(Kind.ANGLE, "0.1 deg", "360 deg")),
                        Key.optional(FACING, "its middle's turn from the lens, + clockwise seen from above", turn),
                        Key.optional(SHORT, "the same as " + FACING, turn))
                .with(new Shape.Rule.AtMostOne(List.of(FACING, SHORT)));
        return Shape.Keys.of(
                        Key.optional(SPEED, "how fast it turns", amount(Kind.TURN_RATE, "0.001 deg/s", "3600 deg/s")),
                        Key.optional(TIME, "how long one whole turn takes", amount(Kind.TIME, "0.1 s", "1000000 s")),
                        Key.optional(
                                SEEN,
                                "which way it turns, seen from above",
                                new Shape.Choice(List.of(CLOCKWISE, "counter-clockwise"))),
                        Key.required("label", "what is to be read", label),
                        Key.optional(
                                "within",
                                "how near the lens the label's middle is to be to read",
                                amount(Kind.ANGLE, "0.1 deg", "180 deg")),
                        Key.required(RATE, "the capture rate", View.rateShape()),
                        Key.required(
                                FRAMES,
                                "frames captured",
                                Shape.AnyOf.of(
                                        amount(Kind.NUMBER, "1", "100000"),
                                        amount(Kind.FRAMES, "1 frames", "100000 frames"))),
                        Key.optional(DIAMETER, "of the thing at the label", amount(Kind.LENGTH, "1 mm", "10 m")),
                        Key.optional("view", "how it is seen", View.shape()))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of(SPEED), List.of(TIME))));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Turning.Inputs read(Given given) {
        double speed = given.findSi(SPEED).orElseGet(() -> TURN / given.si(TIME));
        boolean isClockwise = given.text(SEEN, CLOCKWISE, "the way in which facing is counted")
                .equals(CLOCKWISE);
        Turning.Turn turn = new Turning.Turn(speed, isClockwise ? 1 : -1);
        double rate = given.si(RATE);
        double frames = frames(given);
        double within = Math.min(
                given.si("within", "30 deg", "farther round a logo is too narrow to read (common practice)"), Math.PI);
        Given label = given.map("label");
        double start = label.has(FACING) || label.has(SHORT)
                ? label.si(label.has(FACING) ? FACING : SHORT)
                : assumedStart(label, -turn.sign() * speed * frames / rate / 2);
        return new Turning.Inputs(
                turn, new Turning.Label(label.si("arc"), start, within), rate, frames, front(given, rate));
    }

    private static double assumedStart(Given label, double radians) {
        label.assume(
                FACING, Print.number(Math.toDegrees(radians), 2) + " deg", "so that the label faces the lens half way");
        return radians;
    }

    private static double frames(Given given) {
        double frames = given.si(FRAMES);
        if (Math.abs(frames - Math.rint(frames)) > NEAR) {
            given.refuse(
                    FRAMES,
                    "P-ASK-42",
                    Print.number(frames, 3) + " frames",
                    "a whole number of frames",
                    "Write " + Print.number(Math.max(1, Math.rint(frames)), 0) + ".");
        }
        return frames;
    }

    private static Optional<Turning.Front> front(Given given, double rate) {
        if (!given.has("view")) {
            return Optional.empty();
        }
        Given map = given.map("view");
        View view = View.read(map, rate);
        double own = map.findSi(RATE).orElse(rate);
        if (Math.abs(own - rate) > NEAR * rate) {
            map.refuse(
                    RATE,
                    "P-ASK-43",
                    Print.number(own, 3) + " fps",
                    "the capture rate, " + Print.number(rate, 3) + " fps",
                    "Leave out view.rate.");
        }
        return given.has(DIAMETER) ? Optional.of(new Turning.Front(view, given.si(DIAMETER))) : Optional.empty();
    }

    @Override
    public Draft answer(Turning.Inputs inputs, double[] settled, Words words) {
        return draft(inputs, new TurntableWords(inputs, words).notes());
    }

    @Override
    public Draft vary(Turning.Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Turning.Inputs inputs, Notes notes) {
        double readable = Turning.Inputs.readable(inputs.windows());
        List<Item> items = List.of(
                Item.of("sweep", Math.toDegrees(inputs.sweep()), "deg"),
                Item.of("per_frame", Math.toDegrees(inputs.sweep() / inputs.frames()), "deg")
                        .rounded(Item.Rounding.ROUGH),
                Item.of("readable", readable, "s").following(new Course.Jumping()),
                Item.of("facing_end", Math.toDegrees(inputs.endRadians()), "deg"),
                inputs.front()
                        .map(front -> Item.of("blur", front.blurPixels(inputs.turn()), "px"))
                        .orElse(Item.word("blur", "unknown")));
        return new Draft(items, List.of(), Verdict.HOLDS, notes);
    }
}
