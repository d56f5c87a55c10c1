package plumeline.ask.motion;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.motion.Limits;
import plumeline.motion.Measure;
import plumeline.motion.Profile;
import plumeline.motion.Registration;
import plumeline.motion.Travel;
import plumeline.motion.Usage;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `move` in text.
final class MoveInquiry implements Inquiry<Moving.Inputs> {
    private static final String SPEED = "speed";
    private static final String ACCELERATION = "acceleration";
    private static final String JERK = "jerk";
    private static final String TRAVEL = "travel";
    private static final String REPEATS = "repeats";
    private static final String RADIUS = "radius";
    private static final double UNKNOWN = Double.POSITIVE_INFINITY;

    private static final String EXAMPLE = """
        # move: a move that can be made and repeated
        by: 600 mm                 # how far; or an angle, with radius: 21 mm from its axis to what is looked at
        in: 8 s                    # real time
        profile: trapezoid         # or even (default), s-curve, smooth
        limits: {speed: 80 mm/s, acceleration: 200 mm/s2, travel: 600 mm}   # what the device does; jerk: 900 mm/s3 too
        repeats: 0.1 mm            # how near it comes back to the same place
        triggered: no              # yes: the move starts the camera; default no
        view:                      # for blur_peak and pass_error
          distance: 877 mm         # front principal plane to what is looked at
          focal_length: 100 mm
          sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
          rate: 24 fps             # capture rate; default 24 fps
          shutter: 180 deg         # or a time; default 180 deg
        # within: 40 px            # how far passes may lie apart
        """;

    @Override
    public String name() {
        return "move";
    }

    @Override
    public String asks() {
        return "whether a move can be made and repeated, and how it blurs";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape length = amount(Kind.LENGTH, "0.001 mm", "100 m");
        Shape angle = amount(Kind.ANGLE, "0.001 deg", "36000 deg");
        Shape way = Shape.AnyOf.of(length, angle);
        Shape limits = Shape.Keys.of(
                Key.optional(
                        SPEED,
                        "its top speed",
                        Shape.AnyOf.of(
                                amount(Kind.SPEED, "0.001 mm/s", "100000 mm/s"),
                                amount(Kind.TURN_RATE, "0.001 deg/s", "36000 deg/s"))),
                Key.optional(
                        ACCELERATION,
                        "its highest acceleration",
                        Shape.AnyOf.of(
                                amount(Kind.ACCELERATION, "0.001 mm/s2", "1000000 mm/s2"),
                                amount(Kind.TURN_ACCELERATION, "0.001 deg/s2", "1000000 deg/s2"))),
                Key.optional(
                        JERK,
                        "its highest jerk",
                        Shape.AnyOf.of(
                                amount(Kind.JERK, "0.001 mm/s3", "100000000 mm/s3"),
                                amount(Kind.TURN_JERK, "0.001 deg/s3", "100000000 deg/s3"))),
                Key.optional(TRAVEL, "from end stop to end stop", way));
        Shape.Keys keys = Shape.Keys.of(
                Key.required("by", "how far, end to end", way),
                Key.required("in", "how long, real time", amount(Kind.TIME, "1 ms", "100000 s")),
                Key.optional(
                        "profile",
                        "how its speed runs",
                        new Shape.Choice(List.of("even", "trapezoid", "s-curve", "smooth"))),
                Key.optional("limits", "what the device does at most", limits),
                Key.optional(
                        REPEATS,
                        "how far off it comes back",
                        Shape.AnyOf.of(amount(Kind.LENGTH, "0 mm", "1 m"), amount(Kind.ANGLE, "0 deg", "360 deg"))),
                Key.optional("triggered", "whether the move starts the camera", new Shape.Choice(List.of("yes", "no"))),
                Key.optional("view", "how it is seen", View.shape()),
                Key.optional(RADIUS, "from a turn's axis to what is looked at", amount(Kind.LENGTH, "0.1 mm", "100 m")),
                Key.optional("within", "how far passes may lie apart", amount(Kind.PIXELS, "0.01 px", "10000 px")));
        return keys.with(new Shape.Rule.Needs("within", "view"), new Shape.Rule.Needs(RADIUS, "view"));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Moving.Inputs read(Given given) {
        boolean isAngle = given.quantity("by").kind() == Kind.ANGLE;
        Profile profile = profile(given.text("profile", "even", "passes and loops are shot at one speed"));
        Limits limits = limits(given, isAngle);
        boolean isTriggered = given.text("triggered", "no", "most cameras run free of the move")
                .equals("yes");
        return new Moving.Inputs(
                isAngle ? Measure.ANGLE : Measure.LENGTH,
                given.si("by"),
                given.si("in"),
                profile,
                limits,
                isTriggered ? Registration.Start.TRIGGERED : Registration.Start.FREE,
                seen(given, isAngle),
                given.findSi("within"));
    }

    private static Profile profile(String word) {
        return switch (word) {
            case "trapezoid" -> Profile.TRAPEZOID;
            case "s-curve" -> Profile.S_CURVE;
            case "smooth" -> Profile.SMOOTH;
            default -> Profile.EVEN;
        };
    }

    private static Limits limits(Given given, boolean isAngle) {
        double repeats = given.has(REPEATS)
                ? like(given, REPEATS, isAngle ? Kind.ANGLE : Kind.LENGTH)
                : given.si(
                        REPEATS, isAngle ? "0 deg" : "0 mm", "not known, so not counted: measure it, there and back");
        Optional<Given> written = given.findMap("limits");
        if (written.isEmpty()) {
            return new Limits(UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, UNKNOWN, repeats);
        }
        Given device = written.get();
        return new Limits(
                find(device, SPEED, isAngle ? Kind.TURN_RATE : Kind.SPEED),
                find(device, ACCELERATION, isAngle ? Kind.TURN_ACCELERATION : Kind.ACCELERATION),
                find(device, JERK, isAngle ? Kind.TURN_JERK : Kind.JERK),
                find(device, TRAVEL, isAngle ? Kind.ANGLE : Kind.LENGTH),
                UNKNOWN,
                repeats);
    }

    private static double find(Given given, String key, Kind kind) {
        return given.has(key) ? like(given, key, kind) : UNKNOWN;
    }

    /// A limit of the kind that the way asks for.
    private static double like(Given given, String key, Kind kind) {
        if (given.quantity(key).kind() != kind) {
            given.refuse(
                    key,
                    "P-ASK-41",
                    given.quantity(key).toText(),
                    kind.allowed() + ", as by has it",
                    "Write it as " + kind.example() + ".");
        }
        return given.si(key);
    }

    private static Optional<Moving.Seen> seen(Given given, boolean isAngle) {
        if (!given.has("view")) {
            return Optional.empty();
        }
        Given map = given.map("view");
        View view = View.read(map, map.si("rate", "24 fps", "the usual rate of films"));
        if (!isAngle) {
            if (given.has(RADIUS)) {
                given.refuse(
                        RADIUS,
                        "P-ASK-44",
                        "given beside a length",
                        "left out, or beside an angle",
                        "Leave out radius, or write by as an angle, such as 30 deg.");
            }
            return Optional.of(new Moving.Seen(view, 1));
        }
        if (given.has(RADIUS)) {
            return Optional.of(new Moving.Seen(view, given.si(RADIUS)));
        }
        given.assume(
                RADIUS,
                Print.number(view.distanceMetres() * 1e3, 4) + " mm",
                "a pan about the lens point: as far from the axis as from the lens; a turntable's is the thing's");
        return Optional.of(new Moving.Seen(view, view.distanceMetres()));
    }

    @Override
    public Draft answer(Moving.Inputs inputs, double[] settled, Words words) {
        return draft(inputs, new MoveWords(inputs, words).notes());
    }

    @Override
    public Draft vary(Moving.Inputs moved, double[] settled) {
        return draft(moved, Notes.NONE);
    }

    private static Draft draft(Moving.Inputs inputs, Notes notes) {
        boolean isAngle = inputs.measure() == Measure.ANGLE;
        double scale = isAngle ? 180 / Math.PI : 1e3;
        String unit = isAngle ? "deg" : "mm";
        Travel travel = inputs.travel();
        List<Item> items = new ArrayList<>();
        items.add(Item.of("peak_speed", travel.peakSpeed() * scale, unit + "/s"));
        items.add(Item.of("peak_acceleration", travel.peakAcceleration() * scale, unit + "/s2"));
        items.add(
                inputs.leastSeconds().isPresent()
                        ? Item.of("shortest_time", inputs.leastSeconds().getAsDouble(), "s")
                        : Item.word("shortest_time", "unknown"));
        Usage usage = inputs.usage();
        List<Criterion> criteria = new ArrayList<>(List.of(
                criterion("the speed", usage.speed()),
                criterion("the acceleration", usage.acceleration()),
                criterion("the jerk", usage.jerk()),
                criterion("the travel", usage.travel())));
        if (inputs.seen().isPresent()) {
            Moving.Seen seen = inputs.seen().get();
            double error = inputs.passes(seen).sumPixels();
            items.add(Item.of("blur_peak", inputs.blurPixels(seen), "px"));
            items.add(Item.of("pass_error", error, "px"));
            if (inputs.mostPixels().isPresent()) {
                criteria.add(criterion("the passes", error / inputs.mostPixels().getAsDouble()));
            }
        } else {
            items.add(Item.word("blur_peak", "unknown"));
            items.add(Item.word("pass_error", "unknown"));
        }
        return new Draft(items, criteria, Verdict.HOLDS, notes);
    }

    private static Criterion criterion(String what, double share) {
        return new Criterion(what, 1 + Moving.NEAR - share);
    }
}
