package plumeline.ask.light;

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
import plumeline.ask.light.Highlight.Light;
import plumeline.ask.light.Highlight.Task;
import plumeline.geom.Vec;
import plumeline.light.RoundMirror;
import plumeline.light.RoundMirror.Stripe;
import plumeline.quantity.Kind;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `highlight` in text.
final class HighlightInquiry implements Inquiry<Highlight.Inputs> {
    /// A place must be this much farther from the axis than the surface, share of the radius.
    private static final double OUTSIDE = 1.001;

    private static final String EXAMPLE = """
        # highlight: where a light shows on a glossy cylinder. Seen from above; the thing's axis at x 0, y 0.
        thing: {diameter: 66 mm}
        camera: {x: 0 mm, y: -961 mm}
        light: {x: 500 mm, y: 100 mm, width: 300 mm}   # its middle; yaw: 0 deg faces +y, default faces the thing
        # The other way round: want {from_left: 80 %, wide: 10 %}, a stripe's middle and width on the outline, and light
        # {distance: 500 mm} or {width: 300 mm} alone.
        """;

    @Override
    public String name() {
        return "highlight";
    }

    @Override
    public String asks() {
        return "where a light shows on a cylinder, or stands to show there";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape place = amount(Kind.LENGTH, "-100 m", "100 m");
        Shape size = amount(Kind.LENGTH, "0.1 mm", "100 m");
        Shape camera = Shape.Keys.of(
                Key.required("x", "to the right of the thing's axis", place),
                Key.required("y", "away from a camera at - y", place));
        Shape light = Shape.Keys.of(
                Key.optional("x", "its middle, to the right of the thing's axis", place),
                Key.optional("y", "its middle, away from a camera at - y", place),
                Key.optional("width", "its width on the plan", size),
                Key.optional(
                        "yaw",
                        "where it faces, clockwise from above, 0 deg is +y",
                        amount(Kind.ANGLE, "-360 deg", "360 deg")),
                Key.optional("distance", "from the thing's axis to its middle", size));
        Shape share = new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED);
        Shape wide = new Shape.Amount(Kind.SHARE, Range.above("0 %", "100 %"), Shape.Mark.FIXED);
        Shape want = Shape.Keys.of(
                Key.required("from_left", "middle of the stripe, share of the outline's width", share),
                Key.required("wide", "width of the stripe, share of the outline's width", wide));
        return Shape.Keys.of(
                Key.required(
                        "thing",
                        "an upright glossy cylinder",
                        Shape.Keys.of(Key.required("diameter", "its diameter", amount(Kind.LENGTH, "1 mm", "10 m")))),
                Key.required("camera", "the lens, seen from above", camera),
                Key.required("light", "a flat light", light),
                Key.optional("want", "the stripe wanted", want));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Highlight.Inputs read(Given given) {
        double radius = given.map("thing").si("diameter") / 2;
        Vec camera = outside(given, "camera", radius);
        return new Highlight.Inputs(
                new RoundMirror(radius), camera, given.has("want") ? wanted(given, radius) : standing(given, radius));
    }

    private static Vec outside(Given given, String key, double radius) {
        Given map = given.map(key);
        Vec place = new Vec(map.si("x"), map.si("y"), 0);
        double away = Math.hypot(place.x(), place.y());
        if (away > OUTSIDE * radius) {
            return place;
        }
        given.refuse(
                key,
                "P-ASK-81",
                Words.MILLIMETRES.length(away) + " from the thing's axis",
                "outside the thing, farther than " + Words.MILLIMETRES.length(radius),
                "Count x and y from the thing's axis.");
        return new Vec(0, -2 * radius, 0);
    }

    private static Task standing(Given given, double radius) {
        Given light = given.map("light");
        Light nowhere = new Light(new Vec(0, -2 * radius, 0), new Vec(0, 1, 0), radius);
        for (String key : List.of("x", "y", "width")) {
            if (!light.has(key)) {
                given.refuse(
                        "light",
                        "P-ASK-82",
                        "a light without " + key,
                        "x, y and width of a light that stands; or a want beside it, and its distance or width",
                        "Measure the light's middle from the thing's axis, or write want: {from_left: 80 %, wide:"
                                + " 10 %}.");
                return new Task.Standing(nowhere);
            }
        }
        if (light.has("distance")) {
            light.refuse(
                    "distance",
                    "P-ASK-83",
                    "a distance beside x and y",
                    "left out where x and y are there",
                    "Take it out, or x and y with a want.");
        }
        Vec middle = outside(given, "light", radius);
        double away = Math.hypot(middle.x(), middle.y());
        Vec facing = light.findSi("yaw").stream()
                .mapToObj(yaw -> new Vec(Math.sin(yaw), Math.cos(yaw), 0))
                .findFirst()
                .orElse(middle.times(-1 / away));
        Light stands = new Light(middle, facing, light.si("width"));
        if (stands.nearestMetres() <= OUTSIDE * radius) {
            light.refuse(
                    "width",
                    "P-ASK-84",
                    Words.MILLIMETRES.length(light.si("width")),
                    "a light that doesn't reach into the thing",
                    "Move the light away, or turn it.");
            return new Task.Standing(nowhere);
        }
        return new Task.Standing(stands);
    }

    private static Task wanted(Given given, double radius) {
        Given light = given.map("light");
        Given want = given.map("want");
        double middle = want.si("from_left");
        double wide = want.si("wide");
        if (middle - wide / 2 < -1e-9 || middle + wide / 2 > 1 + 1e-9) {
            want.refuse(
                    "wide",
                    "P-ASK-85",
                    "a stripe from " + Print.share(middle - wide / 2, 0) + " to " + Print.share(middle + wide / 2, 0),
                    "within 0 % to 100 % of the outline",
                    "Make it narrower, or move its middle from the outline's edge.");
        }
        boolean isOne = light.has("distance") != light.has("width");
        if (!isOne || light.has("x") || light.has("y") || light.has("yaw")) {
            given.refuse(
                    "light",
                    "P-ASK-86",
                    light.has("x") || light.has("y") || light.has("yaw")
                            ? "a place or turn beside a want"
                            : light.has("distance") ? "both distance and width" : "neither distance nor width",
                    "distance or width alone, where a stripe is wanted",
                    "Write light: {distance: 500 mm} for the width that gives the stripe, or light: {width: 300 mm} for"
                            + " the distance.");
        }
        if (light.has("distance") && light.si("distance") <= OUTSIDE * radius) {
            light.refuse(
                    "distance",
                    "P-ASK-87",
                    Words.MILLIMETRES.length(light.si("distance")),
                    "outside the thing, farther than " + Words.MILLIMETRES.length(radius),
                    "Count from the thing's axis to the light's middle.");
        }
        return new Task.Wanted(
                new Stripe(
                        Math.clamp(2 * (middle - wide / 2) - 1, -1, 1), Math.clamp(2 * (middle + wide / 2) - 1, -1, 1)),
                light.findSi("distance"),
                light.findSi("width"));
    }

    /// The side whose stripe is told: −1 for the left, 1 for the right.
    @Override
    public double[] settle(Highlight.Inputs inputs, PaperUnit unit) {
        return new double[] {Highlight.widerSide(inputs) == Highlight.Side.LEFT ? -1 : 1};
    }

    private static Highlight.Found found(Highlight.Inputs inputs, double[] settled) {
        return Highlight.answer(inputs, settled[0] < 0 ? Highlight.Side.LEFT : Highlight.Side.RIGHT);
    }

    @Override
    public Draft answer(Highlight.Inputs inputs, double[] settled, Words words) {
        Highlight.Found found = found(inputs, settled);
        return draft(found, new HighlightWords(found, words).notes());
    }

    @Override
    public Draft vary(Highlight.Inputs moved, double[] settled) {
        return draft(found(moved, settled), Notes.NONE);
    }

    private static Draft draft(Highlight.Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        Optional<Stripe> stripe = found.stripe();
        addShare(items, "from_left", stripe.map(Stripe::middle));
        addShare(items, "left_edge", stripe.map(Stripe::left));
        addShare(items, "right_edge", stripe.map(Stripe::right));
        items.add(stripe.map(one ->
                        Item.of("wide", 50 * (one.right() - one.left()), "%").atLeast(0))
                .orElse(Item.word("wide", "unknown")));
        Optional<Light> light = found.light();
        items.add(light.map(one -> Item.of("bearing", Math.toDegrees(found.bearingRadians(one)), "deg"))
                .orElse(Item.word("bearing", "unknown")));
        items.add(light.map(one -> Item.millimetres(
                                "distance",
                                Math.hypot(one.middle().x(), one.middle().y()))
                        .atLeast(0))
                .orElse(Item.word("distance", "unknown")));
        items.add(light.map(one -> Item.millimetres("width", one.widthMetres()).atLeast(0))
                .orElse(Item.word("width", "unknown")));
        return new Draft(
                items,
                List.of(new Criterion("the reflection", stripe.isPresent() ? 1 : 0)),
                stripe.isPresent() ? Verdict.HOLDS : Verdict.UNKNOWN,
                notes);
    }

    private static void addShare(List<Item> items, String name, Optional<Double> across) {
        items.add(across.map(one -> Item.of(name, 50 * (1 + one), "%"))
                .map(item -> across.get() < 0 ? item.atLeast(0) : item.atMost(100))
                .orElse(Item.word(name, "unknown")));
    }
}
