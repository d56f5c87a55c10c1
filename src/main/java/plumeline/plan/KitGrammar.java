package plumeline.plan;

import static plumeline.plan.Forms.any;
import static plumeline.plan.Forms.atLeastOne;
import static plumeline.plan.Forms.atMostOne;
import static plumeline.plan.Forms.either;
import static plumeline.plan.Forms.from0;
import static plumeline.plan.Forms.may;
import static plumeline.plan.Forms.must;
import static plumeline.plan.Forms.name;
import static plumeline.plan.Forms.over;
import static plumeline.plan.Forms.pair;
import static plumeline.plan.Forms.share;
import static plumeline.plan.Forms.text;
import static plumeline.plan.Forms.word;
import static plumeline.plan.Forms.yesNo;

import java.util.ArrayList;
import java.util.List;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Keys;
import plumeline.text.Shape.Need;

/// What a plan may say of things and kit.
final class KitGrammar {
    /// Takes of an ink: more than a day has.
    private static final int TAKES = 200;
    /// What a wall may be of: the materials that the room of water knows, and another spelling of two.
    static final List<String> MATERIALS = List.of(
            "aluminium",
            "can aluminium",
            "tinplate",
            "steel",
            "stainless steel",
            "iron",
            "brass",
            "lead",
            "tungsten",
            "glass",
            "PET",
            "polypropylene",
            "polyethylene",
            "acrylic",
            "nylon",
            "PVDF",
            "paper",
            "wax",
            "soap",
            "aluminum",
            "can aluminum");

    private static final String SALT =
            "what was weighed in over the whole; or weigh a litre of the water, and write its density";

    private KitGrammar() {}

    static Shape things() {
        var keys = new ArrayList<>(thingKeys(Need.REQUIRED));
        keys.add(may(
                "variants",
                "its variants, each the keys in which it differs",
                new Shape.Named("a variant", new Keys(thingKeys(Need.OPTIONAL), List.of()))));
        return new Shape.Named("a thing", new Keys(keys, List.of(formRule())));
    }

    /// A thing with a variant's keys on top.
    static Shape variantMerged() {
        return new Keys(thingKeys(Need.REQUIRED), List.of(formRule()));
    }

    private static Shape.Rule formRule() {
        return new Shape.Rule.ExactlyOne(
                List.of(List.of("profile"), List.of("diameter", "height"), List.of("width", "height", "depth")));
    }

    /// @param label whether a label must have its size; a variant may write a part of it
    private static List<Shape.Key> thingKeys(Need label) {
        var contents = Keys.of(
                may("volume", "volume of the contents", from0(Kind.VOLUME))
                        .hint("what its label says, or pour it into a weighed jug", ""),
                may("density", "density of the contents", over(Kind.DENSITY))
                        .hint("the grams that 100 ml of it weigh, over 100: 1.04 g/ml", ""),
                may("index", "refractive index of the contents", index())
                        .hint("water 1.333, spirits 1.36, oil 1.47", ""));
        return List.of(
                may(
                        "profile",
                        "heights from the base with the radius there",
                        new Shape.Curve(from0(Kind.LENGTH), from0(Kind.LENGTH), 2)),
                may("width", "width of a box, facing -y", over(Kind.LENGTH)),
                may("height", "height", over(Kind.LENGTH)),
                may("depth", "depth of a box", over(Kind.LENGTH)),
                may("diameter", "diameter of a cylinder", over(Kind.LENGTH)),
                may("body", "whether light goes through", word("opaque", "clear")),
                may("reflects", "the share of light that its surface throws back", reflectance()),
                may("finish", "how it shines", finish()),
                may("material", "what its wall is of", Shape.Choice.inAnyCase(MATERIALS)),
                may("mass", "its whole mass, contents included", over(Kind.MASS))
                        .hint("what a kitchen scale says of it, full", ""),
                may("empty_mass", "its mass without contents", over(Kind.MASS))
                        .hint("what a kitchen scale says of it, empty", ""),
                may("displaces", "the volume of water it displaces, no air under its base", over(Kind.VOLUME))
                        .hint("what a kitchen scale gains when it is held just under in a jug: 1 g is 1 ml", ""),
                may("base", "the hollow under its base", base()),
                may(
                        "ballast",
                        "weight beside what its mass counts",
                        Keys.of(
                                must("mass", "its mass", over(Kind.MASS)),
                                may(
                                        "material",
                                        "what it is of; steel where it isn't written",
                                        Shape.Choice.inAnyCase(MATERIALS)),
                                must("place", "inside on its floor, or under its base", word("inside", "under")))),
                may(
                        "label",
                        "its label, facing -y",
                        Keys.of(
                                new Shape.Key("width", label, "width round the body", over(Kind.LENGTH), "", ""),
                                new Shape.Key("height", label, "height", over(Kind.LENGTH), "", ""),
                                may("bottom", "its lower edge above the base", from0(Kind.LENGTH)),
                                may("reflects", "the share of light that it throws back", reflectance()),
                                may("art", "its print: a PNG, JPEG or SVG file", text()))),
                may("hue", "CIE LCh(ab) hue angle", any(Kind.ANGLE)),
                may("colour", "its colour under daylight", Forms.colourCode()),
                may("centre_of_mass", "height of the centre of mass above the base", any(Kind.LENGTH)),
                may("centre_of_volume", "height of the outer volume's centre above the base", any(Kind.LENGTH)),
                may("contents", "what is inside", contents),
                may("air", "the air inside", from0(Kind.VOLUME))
                        .hint("the water that fills its headspace up, from a weighed jug: 1 g is 1 ml", ""),
                may("closed", "whether it is sealed", yesNo()),
                may("wall", "the wall", wall()),
                may("temperature", "how cold or warm it is", any(Kind.TEMPERATURE)),
                may(
                        "surface",
                        "how water stands on it",
                        either(
                                name("a surface"),
                                Keys.of(
                                        must("advancing", "advancing contact angle", over(Kind.ANGLE)),
                                        must("receding", "receding contact angle", from0(Kind.ANGLE))))));
    }

    private static Shape index() {
        return new Shape.Amount(Kind.NUMBER, Range.between("1", "3"), Shape.Mark.FIXED);
    }

    private static Shape wall() {
        return Keys.of(
                may("density", "its substance's density", over(Kind.DENSITY)),
                may("thickness", "how thick it is", over(Kind.LENGTH)).hint("what a calliper reads at its mouth", ""),
                may("index", "its refractive index", index()).hint("glass 1.52, crystal 1.55, acrylic 1.49", ""));
    }

    private static Shape finish() {
        return word("mirror", "gloss", "satin", "matte");
    }

    static Shape reflectance() {
        return share("0.1 %", "100 %");
    }

    private static Shape base() {
        return Keys.of(
                must("diameter", "the hollow's diameter at its rim", over(Kind.LENGTH)),
                must("depth", "how deep it is in the middle", over(Kind.LENGTH)),
                may("volume", "what it holds", over(Kind.VOLUME))
                        .hint("what water it takes, upside down on a scale: 1 g is 1 ml", ""),
                may("air", "the air that is caught under it", from0(Kind.VOLUME))
                        .hint("0 ml once it was tilted clear, or what its hollow holds", ""));
    }

    static Shape kit() {
        return Keys.of(
                may("cameras", "camera bodies", new Shape.Named("a camera body", body())),
                may("lenses", "lenses", new Shape.Named("a lens", lens())),
                may("lights", "lamps", new Shape.Named("a light", light())),
                may("machines", "sliders, heads, turntables", new Shape.Named("a machine", machine())),
                may("tanks", "tanks", new Shape.Named("a tank", tank())),
                may("inks", "inks", new Shape.Named("an ink", ink())),
                may("pieces", "pieces that fall or are poured", new Shape.Named("a piece", piece())),
                may(
                        "table",
                        "the table",
                        Keys.of(
                                may("size", "width and depth", pair("width", "depth", over(Kind.LENGTH))),
                                may("carries", "the load it may carry", either(over(Kind.MASS), over(Kind.FORCE))),
                                may("reflects", "the share of light that its top throws back", reflectance()),
                                may("colour", "its top's colour under daylight", Forms.colourCode()),
                                may("finish", "how its top shines", finish()))));
    }

    private static Shape body() {
        var pixels = new Shape.Amount(Kind.PIXELS, Range.between("1 px", "100000 px"), Shape.Mark.FIXED);
        var mode = Keys.of(
                must("rate", "its rate", over(Kind.RATE)),
                may("across", "pixels across in this mode", pixels),
                may("width", "width of the part of the sensor that is used, where it is less", over(Kind.LENGTH)),
                may("bit_rate", "what it records", over(Kind.BIT_RATE)),
                may("readout", "time from the first row to the last", from0(Kind.TIME)));
        return Keys.of(
                        must(
                                "sensor",
                                "the part of the sensor that is used",
                                Keys.of(
                                        must("width", "its width", over(Kind.LENGTH)),
                                        must("height", "its height", over(Kind.LENGTH)),
                                        must("across", "pixels across", pixels))),
                        may("modes", "capture modes", new Shape.Items(mode, 1, 100)),
                        may(
                                "iso",
                                "sensitivities",
                                Keys.of(
                                        must("base", "the base sensitivity", over(Kind.NUMBER)),
                                        may("highest", "the highest that is used", over(Kind.NUMBER)))),
                        may(
                                "latitude",
                                "what it holds from mid grey at its base sensitivity",
                                Keys.of(
                                        must("over", "stops over it to where it clips", from0(Kind.STOPS)),
                                        must("under", "stops under it to where noise hides", from0(Kind.STOPS)))),
                        may("pivot", "the pan axis from the lens point", Forms.vector(any(Kind.LENGTH), 2)),
                        may("sensor_behind", "the sensor mark behind the lens point", over(Kind.LENGTH)))
                .with(new Shape.Rule.Needs("latitude", "iso"));
    }

    private static Shape lens() {
        return Keys.of(
                must("focal_length", "its focal length", over(Kind.LENGTH))
                        .hint("the value engraved on the lens, such as 50 mm", "P-LENS-01"),
                may("nearest", "nearest focus from the sensor mark", over(Kind.LENGTH)),
                may("f_numbers", "least and greatest f-number", pair("least", "greatest", over(Kind.NUMBER))),
                may("pupil_ratio", "exit over entrance pupil", over(Kind.NUMBER)),
                may(
                        "barrel",
                        "its barrel",
                        Keys.of(
                                must("diameter", "its diameter", over(Kind.LENGTH)),
                                must("length", "its length", over(Kind.LENGTH)))),
                may("sensor_behind", "the sensor mark behind the lens point", over(Kind.LENGTH)),
                may("loss", "light lost in it", from0(Kind.STOPS)));
    }

    private static Shape light() {
        var emitter = Keys.of(
                must("name", "its name", name("an emitter")),
                must("x", "CIE 1931 x", over(Kind.NUMBER)),
                must("y", "CIE 1931 y", over(Kind.NUMBER)),
                must("lumens", "its full output", either(over(Kind.FLUX), over(Kind.NUMBER))));
        return Keys.of(
                        may("panel", "an even rectangle", pair("width", "height", over(Kind.LENGTH))),
                        may("tube", "a tube", pair("length", "diameter", over(Kind.LENGTH))),
                        may("disc", "an even disc's diameter", over(Kind.LENGTH)),
                        may("point", "a point", yesNo()),
                        may("card", "a card or a ceiling", pair("width", "height", over(Kind.LENGTH))),
                        may("flag", "what keeps light off", pair("width", "height", over(Kind.LENGTH))),
                        may("reflects", "what a card throws back", share()),
                        may("window", "what alone shines of a panel", pair("width", "height", over(Kind.LENGTH))),
                        may("field", "what is round a panel's window", word("dark", "bright")),
                        may("hot_centre", "how much darker corners or edge are than the middle", from0(Kind.STOPS)),
                        may("grid", "beam that a grid before it leaves", grid()),
                        may("dims", "its dimmer: what it gives by how it is set", new Shape.Curve(share(), share(), 2)),
                        may(
                                "beam",
                                "beam angle",
                                new Shape.Amount(Kind.ANGLE, Range.above("0 deg", "360 deg"), Shape.Mark.FIXED)),
                        may("file", "a photometric file", text()),
                        may(
                                "gives",
                                "what it gives at full level",
                                either(over(Kind.ILLUMINANCE), over(Kind.INTENSITY), over(Kind.FLUX))),
                        may(
                                "white",
                                "its white, or its range",
                                either(Forms.kelvin(), pair("warmest", "coolest", Forms.kelvin()))),
                        may("primaries", "its primaries", either(word("typical"), new Shape.Items(emitter, 2, 16))),
                        may(
                                "gives_with",
                                "what was on when that was read: all its primaries, or the hue or white it is set to",
                                word("all", "set")),
                        may("changes_in", "how long it takes to another colour or level", from0(Kind.TIME)),
                        may("power", "electrical power", over(Kind.POWER)),
                        may(
                                "power_factor",
                                "its power factor",
                                new Shape.Amount(Kind.NUMBER, Range.above("0", "1"), Shape.Mark.FIXED)),
                        may("loss", "light lost in cloth before it, not counted in what it gives", from0(Kind.STOPS)),
                        may("pulse_rate", "pulses a second", over(Kind.FREQUENCY)),
                        may("depth", "modulation of the pulses", share()))
                .with(
                        atMostOne("panel", "tube", "disc", "point", "card", "flag"),
                        new Shape.Rule.Needs("gives_with", "primaries"));
    }

    static Shape grid() {
        return new Shape.Amount(Kind.ANGLE, Range.between("5 deg", "150 deg"), Shape.Mark.FIXED);
    }

    private static Shape machine() {
        return Keys.of(
                may("travel", "how far it goes", either(over(Kind.LENGTH), over(Kind.ANGLE))),
                may("speed", "its top speed", either(over(Kind.SPEED), over(Kind.TURN_RATE))),
                may(
                        "acceleration",
                        "its greatest acceleration",
                        either(over(Kind.ACCELERATION), over(Kind.TURN_ACCELERATION))),
                may("jerk", "its greatest jerk", either(over(Kind.JERK), over(Kind.TURN_JERK))),
                may("repeats", "how well it repeats", either(from0(Kind.LENGTH), from0(Kind.ANGLE))),
                may("resolution", "its smallest step", either(over(Kind.LENGTH), over(Kind.ANGLE))),
                may(
                        "sways",
                        "how it swings on once it has stopped",
                        Keys.of(
                                may("by", "how far at first", either(from0(Kind.LENGTH), from0(Kind.ANGLE))),
                                must("rate", "how often a second", over(Kind.FREQUENCY)),
                                must("damping", "share of critical damping", share("0.1 %", "90 %")))),
                may("triggered", "whether its start is triggered", yesNo()));
    }

    private static Shape tank() {
        return Keys.of(
                        must("inside", "width, depth and height inside", Forms.vector(over(Kind.LENGTH), 3)),
                        must("pane", "the panes' thickness", over(Kind.LENGTH)),
                        may("temperature", "the water's temperature", any(Kind.TEMPERATURE)),
                        may("salt", "table salt in the water, by mass", share("0 %", "26 %"))
                                .hint(SALT, ""),
                        may("sea_salt", "sea salt in the water, by mass", share("0 %", "4.2 %"))
                                .hint(SALT, ""),
                        may(
                                        "density",
                                        "the water's density, where it was measured",
                                        new Shape.Amount(
                                                Kind.DENSITY, Range.between("0.9 g/ml", "1.3 g/ml"), Shape.Mark.FIXED))
                                .hint(
                                        "what a hydrometer says, or the kilograms that a litre of it weighs: 1.02 g/ml",
                                        ""),
                        may("rim", "whether its top has a rim", yesNo()),
                        may("floor_support", "what carries its floor", word("full", "edges")),
                        may("empty_mass", "its mass without water", over(Kind.MASS)))
                .with(atMostOne("salt", "sea_salt", "density"));
    }

    private static Shape ink() {
        return Keys.of(
                may("density", "its density", over(Kind.DENSITY)),
                may("recipe", "how it is mixed", text()),
                may(
                        "front",
                        "readings of the front: time from the release, depth below the surface",
                        new Shape.Curve(from0(Kind.TIME), from0(Kind.LENGTH), 1)),
                may(
                        "tip",
                        "height of the nozzle's mouth over the surface, - below it, when the front was read",
                        any(Kind.LENGTH)),
                may("spread", "half-width over depth", either(over(Kind.NUMBER), over(Kind.SHARE))),
                may("strength", "decadic absorbance in its worst channel", over(Kind.ABSORBANCE)),
                may("hue", "CIE LCh(ab) hue angle", any(Kind.ANGLE)),
                may("colour", "its colour under daylight, thin", Forms.colourCode()),
                may(
                        "takes",
                        "takes of it as they were read",
                        new Shape.Items(new Keys(inkTake(), List.of()), 1, TAKES)));
    }

    /// A take as it was read: what was let go, and its front.
    static List<Shape.Key> inkTake() {
        return List.of(
                may("volume", "the ink's volume", over(Kind.VOLUME)),
                may("density", "the ink's density", over(Kind.DENSITY)),
                may("bore", "the nozzle's bore", over(Kind.LENGTH)),
                may("squeeze_time", "how long it was squeezed", over(Kind.TIME)),
                may("speed", "the ink's speed at the nozzle", over(Kind.SPEED)),
                may("height", "the nozzle's mouth over the still surface, - below it", any(Kind.LENGTH)),
                may("water", "the water's temperature", any(Kind.TEMPERATURE)),
                may("rate", "the footage's rate: a frame is what times are read to", over(Kind.RATE)),
                may(
                        "front",
                        "readings: time from the first ink, depth below the surface",
                        new Shape.Curve(over(Kind.TIME), over(Kind.LENGTH), 1)),
                may(
                        "width",
                        "readings: depth below the surface, width from edge to edge",
                        new Shape.Curve(over(Kind.LENGTH), over(Kind.LENGTH), 1)));
    }

    private static Shape piece() {
        return Keys.of(
                        must("size", "its size", over(Kind.LENGTH)),
                        may("mass", "its mass", over(Kind.MASS)),
                        may("density", "its density", over(Kind.DENSITY)),
                        may("shape", "its shape", word("ball", "cube", "disc")),
                        may("thickness", "a disc's thickness", over(Kind.LENGTH)),
                        may("hue", "CIE LCh(ab) hue angle", any(Kind.ANGLE)),
                        may("colour", "its colour under daylight", Forms.colourCode()))
                .with(atLeastOne("mass", "density"), atMostOne("mass", "density"));
    }
}
