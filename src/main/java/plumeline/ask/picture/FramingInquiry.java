package plumeline.ask.picture;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Sensor;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.optics.FarLimit;
import plumeline.optics.Layer;
import plumeline.optics.LensModel;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantity;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `framing` in text.
final class FramingInquiry implements Inquiry<Framing.Inputs> {
    private static final String EXAMPLE = """
        # framing: how far, how sharp. Leave out what has a default; add ± to what you measured.
        sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}   # what makes the picture, as held
        focal_length: 100 mm
        f_number: 8                       # default 8
        thing: {width: 66.2 mm, height: 122.2 mm, depth: 66.2 mm}
        fills: {height: 70 %}             # or width; of the frame, at the thing's middle plane
        # sharp_to: 2 px                  # largest blur disc
        # pupil_ratio: 1                  # exit over entrance pupil; about 1 for most macros
        # sensor_to_front: 180 mm         # sensor mark to the lens's front, for the free space
        # through: {air_gap: 50 mm, glass: 8 mm, water: 120 mm}   # a flat tank wall between
        """;

    @Override
    public String name() {
        return "framing";
    }

    @Override
    public String asks() {
        return "how far the camera stands, and how much is sharp";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape share = amount(Kind.SHARE, Range.between("0.01 %", "10000 %"));
        Shape thing = Shape.Keys.of(
                Key.required("width", "width across the picture", size()),
                Key.required("height", "height in the picture", size()),
                Key.optional("depth", "depth along the optical axis", size()));
        Shape fills = Shape.Keys.of(
                        Key.optional("height", "share of the frame's height", share),
                        Key.optional("width", "share of the frame's width", share))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of("height"), List.of("width"))));
        return Shape.Keys.of(
                Key.required("sensor", "the part of the sensor that makes the picture", Sensor.shape()),
                Key.required(
                                "focal_length",
                                "the lens's focal length",
                                amount(Kind.LENGTH, Range.between("1 mm", "5 m")))
                        .hint("the value engraved on the lens, such as 50 mm", ""),
                Key.optional("f_number", "the f-number set", amount(Kind.NUMBER, Range.between("0.5", "128"))),
                Key.required("thing", "outer measures of the thing", thing),
                Key.required("fills", "how much of the frame the thing fills", fills),
                Key.optional("sharp_to", "largest blur disc that counts as sharp", blur()),
                Key.optional(
                        "pupil_ratio", "exit over entrance pupil", amount(Kind.NUMBER, Range.between("0.1", "10"))),
                Key.optional("sensor_to_front", "sensor mark to the lens's front", upTo("0 mm", "10 m")),
                Key.optional("through", "the flat tank wall between", wall()));
    }

    private static Shape wall() {
        return Shape.Keys.of(
                        Key.optional("air_gap", "least air wanted before the pane", upTo("0 mm", "100 m")),
                        Key.optional("glass", "thickness of the pane", upTo("0 mm", "1 m")),
                        Key.optional(
                                "water", "from the pane's wet face to the thing's middle plane", upTo("0 mm", "100 m")))
                .with(new Shape.Rule.AtLeastOne(List.of("glass", "water")));
    }

    private static Shape size() {
        return upTo("0.01 mm", "1000 m");
    }

    private static Shape blur() {
        return Shape.AnyOf.of(
                amount(Kind.PIXELS, Range.between("0.01 px", "1000 px")),
                amount(Kind.LENGTH, Range.between("0.0001 mm", "10 mm")));
    }

    private static Shape upTo(String low, String high) {
        return amount(Kind.LENGTH, Range.between(low, high));
    }

    private static Shape amount(Kind kind, Range range) {
        return new Shape.Amount(kind, range, Shape.Mark.FIXED);
    }

    @Override
    public Framing.Inputs read(Given given) {
        Sensor sensor = Sensor.read(given.map("sensor"));
        double fNumber = given.si("f_number", "8", "usual for a product: deep enough, not yet soft by diffraction");
        double blurMetres = readBlur(given, sensor);
        double pupilRatio = given.si("pupil_ratio", "1", "a symmetric lens; measure it by looking into both ends");
        double focalLengthMetres = given.si("focal_length");
        checkBlur(given, pupilRatio, focalLengthMetres / fNumber, blurMetres);
        return new Framing.Inputs(
                sensor,
                new LensModel(focalLengthMetres, pupilRatio),
                new Framing.Stop(fNumber, blurMetres),
                readThing(given.map("thing")),
                readFill(given.map("fills")),
                given.has("sensor_to_front")
                        ? new Framing.Front.At(given.si("sensor_to_front"))
                        : new Framing.Front.Unknown(),
                given.has("through") ? readWall(given.map("through")) : new Framing.Wall.None());
    }

    private static double readBlur(Given given, Sensor sensor) {
        if (!given.has("sharp_to")) {
            return sensor.pitchMetres() * given.assume("sharp_to", "2 px", "a blur of two pixels just doesn't show");
        }
        Quantity blur = given.quantity("sharp_to");
        return blur.kind() == Kind.PIXELS ? blur.si() * sensor.pitchMetres() : blur.si();
    }

    /// With a pupil ratio below 1 and such a blur even the lens itself would count as sharp.
    private static void checkBlur(Given given, double pupilRatio, double pupilMetres, double blurMetres) {
        if (pupilRatio < 1 && blurMetres / pupilMetres > 0.9 * pupilRatio / (1 - pupilRatio)) {
            double most = 0.9 * pupilRatio / (1 - pupilRatio) * pupilMetres;
            String key = given.has("sharp_to") ? "sharp_to" : "f_number";
            given.refuse(
                    key,
                    "P-ASK-02",
                    "a blur disc of " + Words.fineMillimetres(blurMetres),
                    "less than " + Words.fineMillimetres(most) + " with this f-number and pupil ratio",
                    "Open up, or take a smaller blur disc: this one is wider than the lens's pupil can tell apart.");
        }
    }

    private static Framing.Thing readThing(Given given) {
        return new Framing.Thing(
                given.si("width"),
                given.si("height"),
                given.si(
                        "depth",
                        "0 mm",
                        "taken as flat; give it to see whether the thing is sharp from front to edge"));
    }

    private static Framing.Fill readFill(Given given) {
        return given.has("height")
                ? new Framing.Fill.Height(given.si("height"))
                : new Framing.Fill.Width(given.si("width"));
    }

    private static Framing.Wall readWall(Given given) {
        double airGap = given.si("air_gap", "0 mm", "no least distance to the pane was given");
        double glass = given.si("glass", "0 mm", "no pane was given; 8 mm would add 2.7 mm to the distance");
        double water = given.si("water", "0 mm", "no water was given: air behind the pane");
        given.assume("glass_index", Double.toString(Layer.GLASS_INDEX), "window glass in green light");
        given.assume("water_index", Double.toString(Layer.WATER_INDEX), "fresh water at 20 degC");
        return new Framing.Wall.Tank(airGap, glass, water);
    }

    @Override
    public Draft answer(Framing.Inputs inputs, double[] settled, Words words) {
        Framing.Found found = Framing.answer(inputs);
        return draft(found, new FramingWords(found, words).notes());
    }

    @Override
    public Draft vary(Framing.Inputs moved, double[] settled) {
        return draft(Framing.answer(moved), Notes.NONE);
    }

    private static Draft draft(Framing.Found found, Notes notes) {
        return new Draft(items(found), criteria(found), Verdict.HOLDS, notes);
    }

    private static List<Item> items(Framing.Found found) {
        Sensor sensor = found.inputs().sensor();
        List<Item> items = new ArrayList<>();
        items.add(Item.millimetres("distance", found.distanceMetres()));
        items.add(Item.millimetres("from_sensor", found.fromSensorMetres()));
        found.findFreeSpaceMetres().ifPresent(metres -> items.add(Item.millimetres("free_space", metres)));
        items.add(Item.of("magnification", found.magnification(), "1"));
        items.add(Item.millimetres("field_width", sensor.widthMetres() / found.magnification()));
        items.add(Item.millimetres("field_height", sensor.heightMetres() / found.magnification()));
        items.add(Item.millimetres("near_limit", found.zone().nearMetres()));
        switch (found.zone().far()) {
            case FarLimit.At(double metres) -> {
                items.add(Item.millimetres("far_limit", metres));
                items.add(
                        Item.millimetres("depth_of_field", metres - found.zone().nearMetres()));
            }
            case FarLimit.Endless() -> {
                items.add(Item.word("far_limit", "endless"));
                items.add(Item.word("depth_of_field", "endless"));
            }
        }
        items.add(Item.of("working_f_number", found.workingFNumber(), "1"));
        items.add(Item.of("light_loss", found.lightLossStops(), "stops"));
        items.add(Item.of("airy_diameter", found.airyPixels(), "px"));
        items.add(Item.millimetres("hyperfocal", found.hyperfocalMetres()));
        return items;
    }

    /// What must not be negative: room before the thing, the air before the pane, water before the thing.
    static List<Criterion> criteria(Framing.Found found) {
        List<Criterion> criteria = new ArrayList<>();
        double halfDepth = found.inputs().thing().depthMetres() / 2;
        double space = found.findFreeSpaceMetres().orElse(found.distanceMetres() - halfDepth);
        criteria.add(new Criterion("the space before the thing", space));
        if (found.inputs().wall() instanceof Framing.Wall.Tank tank) {
            double air = found.findAirMetres().orElseThrow();
            criteria.add(new Criterion("the air before the pane", air - tank.airGapMetres()));
            if (tank.waterMetres() > 0) {
                criteria.add(new Criterion("the water before the thing", tank.waterMetres() - halfDepth));
            }
        }
        return criteria;
    }
}
