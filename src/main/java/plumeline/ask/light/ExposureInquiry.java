package plumeline.ask.light;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Shutter;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;

/// The question `exposure` in text.
final class ExposureInquiry implements Inquiry<Exposing.Inputs> {
    private static final double LEAST_CONSTANT = 200;
    private static final double LEAST_REFLECTANCE = 0.001;

    /// What no light at all counts as.
    private static final double DARK_STOPS = -1000;

    private static final String EXAMPLE = """
        # exposure: enough light? Add ± to what you measured; lamps are off by 15 % and more.
        light: {lux: 4000 lx, at: 1 m}     # or {candela: 900 cd}, or {panel: [300 mm, 1200 mm], lumens: 9000 lm}, or
                                           # {file: lamp.ies} (LM-63 or EULUMDAT; off_axis, plane: where the thing is)
        distance: 1 m                      # from the light to the thing
        # incidence: 30 deg                # how far its surface is turned from the light; default 0 deg
        iso: 800
        f_number: 5.6                      # or t_number
        rate: 120 fps
        # shutter: 180 deg                 # or a time; default 180 deg
        # magnification: 0.116             # ask framing; what close focus costs; default 0
        # loss: 1 stops                    # filters, cloth, probe; default 0 stops
        # constant: 340                    # a dome's; default 250, a flat receptor's, as a lux meter has
        # reflectance: 80 %                # of a surface, such as white paper: where it lands over mid grey
        # latitude: {over: 5 stops, under: 7 stops, base_iso: 800}   # what the camera holds from mid grey, at its base
        """;

    @Override
    public String name() {
        return "exposure";
    }

    @Override
    public String asks() {
        return "whether there is enough light, and what closes the gap";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape number = new Shape.Amount(Kind.NUMBER, Range.between("0.5", "128"), Shape.Mark.FIXED);
        return Shape.Keys.of(
                        Key.required("light", "the light, one of these", ExposureLight.shape()),
                        Key.required(
                                "distance",
                                "from the light's middle to the thing",
                                amount(Kind.LENGTH, "10 mm", "100 m")),
                        Key.optional(
                                "incidence",
                                "how far the thing's surface is turned from the light",
                                amount(Kind.ANGLE, "0 deg", "89 deg")),
                        Key.required("iso", "sensitivity set", amount(Kind.NUMBER, "1", "1000000")),
                        Key.optional("f_number", "the f-number set", number),
                        Key.optional("t_number", "the T-number set", number),
                        Key.required("rate", "frame rate", amount(Kind.RATE, "1 fps", "100000 fps")),
                        Key.optional("shutter", "angle or time", Shutter.shape()),
                        Key.optional(
                                "magnification", "image over thing, for close focus", amount(Kind.NUMBER, "0", "20")),
                        Key.optional(
                                "loss", "what filters, cloth, a probe take", amount(Kind.STOPS, "0 stops", "20 stops")),
                        Key.optional("constant", "the meter's, in lux", amount(Kind.NUMBER, "200", "600")),
                        Key.optional(
                                "reflectance", "of a surface that it lights", amount(Kind.SHARE, "0.1 %", "100 %")),
                        Key.optional("latitude", "what the camera holds, from mid grey", latitude()))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of("f_number"), List.of("t_number"))));
    }

    private static Shape latitude() {
        return Shape.Keys.of(
                Key.required(
                        "over", "stops over mid grey to where it clips", amount(Kind.STOPS, "0 stops", "15 stops")),
                Key.required(
                        "under",
                        "stops under mid grey to where noise hides",
                        amount(Kind.STOPS, "0 stops", "20 stops")),
                Key.optional("base_iso", "the sensitivity for which that is", amount(Kind.NUMBER, "1", "1000000")));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public Exposing.Inputs read(Given given) {
        double rate = given.si("rate");
        double number = given.si(given.has("t_number") ? "t_number" : "f_number");
        return new Exposing.Inputs(
                ExposureLight.read(given.map("light")),
                given.si("distance"),
                Math.max(0, given.si("incidence", "0 deg", "the surface faces the light")),
                new Exposure(
                        Math.max(
                                LEAST_CONSTANT,
                                given.si(
                                        "constant",
                                        "250",
                                        "a flat receptor's, as a lux meter has; a dome's is about 340")),
                        number,
                        Shutter.readSeconds(given, rate),
                        given.si("iso"),
                        Math.max(0, given.si("magnification", "0", "focus far away; ask framing for close focus")),
                        1,
                        Math.max(0, given.si("loss", "0 stops", "nothing before lens or lamp"))),
                new Exposing.Frame(
                        1 / rate,
                        given.has("shutter") && given.quantity("shutter").kind() == Kind.TIME
                                ? Exposing.Frame.Given.TIME
                                : Exposing.Frame.Given.ANGLE,
                        given.has("t_number") ? "T" : "f/"),
                surface(given));
    }

    private static Exposing.Surface surface(Given given) {
        Optional<Latitude> latitude = given.findMap("latitude")
                .map(keys -> new Latitude(keys.si("over"), keys.si("under"))
                        .rated(
                                given.si("iso"),
                                keys.si(
                                        "base_iso",
                                        given.quantity("iso").valueText(),
                                        "the ISO set is the body's base")));
        OptionalDouble reflectance = given.findSi("reflectance");
        return new Exposing.Surface(
                reflectance.isPresent()
                        ? OptionalDouble.of(Math.clamp(reflectance.getAsDouble(), LEAST_REFLECTANCE, 1))
                        : reflectance,
                latitude);
    }

    @Override
    public Draft answer(Exposing.Inputs inputs, double[] settled, Words words) {
        Exposing.Found found = Exposing.answer(inputs);
        return draft(found, new ExposureWords(found, words).notes());
    }

    @Override
    public Draft vary(Exposing.Inputs moved, double[] settled) {
        return draft(Exposing.answer(moved), Notes.NONE);
    }

    private static Draft draft(Exposing.Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        items.add(Item.of("illuminance", found.lux(), "lx").atLeast(0));
        items.add(Item.of("needed", found.inputs().exposure().neededLux(), "lx"));
        items.add(found.lux() > 0 ? Item.of("margin", found.marginStops(), "stops") : Item.word("margin", "none"));
        items.add(
                found.exactMetres().isPresent()
                        ? Item.millimetres(
                                        "distance_for_exact",
                                        found.exactMetres().getAsDouble())
                                .atLeast(0)
                        : Item.word("distance_for_exact", "none"));
        items.add(bare("f_number_for_exact", found.findNumber()));
        items.add(bare("iso_for_exact", found.findSensitivity()));
        items.add(shutter(found));
        List<Criterion> criteria = new ArrayList<>();
        criteria.add(new Criterion("the light", Math.max(DARK_STOPS, found.marginStops())));
        addSurface(found, items, criteria);
        return new Draft(items, criteria, Verdict.HOLDS, notes);
    }

    private static Item bare(String name, OptionalDouble value) {
        return value.isPresent() ? Item.of(name, value.getAsDouble(), "1").atLeast(0) : Item.word(name, "none");
    }

    private static Item shutter(Exposing.Found found) {
        OptionalDouble seconds = found.findShutterSeconds();
        if (seconds.isEmpty()) {
            return Item.word("shutter_for_exact", "none");
        }
        Exposing.Frame frame = found.inputs().frame();
        return switch (frame.shutter()) {
            case ANGLE ->
                Item.of("shutter_for_exact", seconds.getAsDouble() / frame.seconds() * 360, "deg")
                        .atLeast(0);
            case TIME ->
                Item.of("shutter_for_exact", seconds.getAsDouble(), "s").atLeast(0);
        };
    }

    /// Where a surface lands, and what the camera holds, as far as it was said.
    private static void addSurface(Exposing.Found found, List<Item> items, List<Criterion> criteria) {
        OptionalDouble lands = found.findLandsStops();
        if (lands.isPresent()) {
            items.add(Item.of("lands", lands.getAsDouble(), "stops"));
        }
        if (found.inputs().surface().latitude().isEmpty()) {
            return;
        }
        Latitude latitude = found.inputs().surface().latitude().get();
        if (lands.isPresent()) {
            double clipping = latitude.toClippingStops(lands.getAsDouble());
            double noise = latitude.toNoiseStops(lands.getAsDouble());
            items.add(Item.of("to_clipping", clipping, "stops"));
            items.add(Item.of("to_noise", noise, "stops"));
            criteria.add(new Criterion("the room to clipping", clipping));
            criteria.add(new Criterion("the room to noise", noise));
        } else if (found.inputs().surface().reflectance().isPresent()) {
            criteria.add(new Criterion("the room to clipping", -DARK_STOPS));
            criteria.add(new Criterion("the room to noise", DARK_STOPS));
        }
        if (found.lux() > 0) {
            double grey = Latitude.midGrey(found.inputs().exposure().constant());
            double over = found.marginStops();
            items.add(percent("brightest_held", grey * Math.pow(2, latitude.overStops() - over)));
            items.add(percent("darkest_held", grey * Math.pow(2, -latitude.underStops() - over)));
        }
    }

    private static Item percent(String name, double share) {
        return Item.of(name, 100 * share, "%").atLeast(0);
    }
}
