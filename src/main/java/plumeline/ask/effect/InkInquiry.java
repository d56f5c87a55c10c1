package plumeline.ask.effect;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Assumed;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Value;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.ink.Arrival;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.ink.FrontFit;
import plumeline.ink.FrontFit.Reading;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.ink.Release;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.text.Shape.Part;
import plumeline.water.Water;

/// The question `ink` in text.
final class InkInquiry implements Inquiry<InkTake.Inputs> {
    /// The margin of a criterion that wasn't asked for.
    private static final double FREE = 1e9;

    private static final String EXAMPLE = """
        # ink: when and where the ink arrives. Depths count from the still surface, times from the first ink.
        ink: {volume: 10 ml, density: 1.05 g/ml}   # or recipe: {salt: 7 %}, sugar, glycerine, alcohol
        nozzle:
          bore: 6 mm
          height: -10 mm           # of its tip over the surface, - below it; default 0 mm
          squeeze_time: 1 s        # how long it flows; or speed: 350 mm/s; default 1 s
          # tilt: 30 deg          # how far it points from straight down, toward the thing; default 0 deg
          # row: 80 mm            # for a slot along the thing's face: its length; bore is then its width
        water: {depth: 300 mm, temperature: 20 degC}
        thing: {top_depth: 90 mm, ahead: 40 mm}   # ahead: horizontal gap, nozzle to thing
        # wanted: 1.5 s            # when the front is to be at the thing; then nozzle_ahead is for that time
        # front: [[0.4 s, 60 mm], [1.9 s, 188 mm]]   # read from takes: time, depth; narrows everything
        """;

    @Override
    public String name() {
        return "ink";
    }

    @Override
    public String asks() {
        return "when and where the ink arrives, and where the nozzle stands";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape ink = Shape.Keys.of(
                        Key.required("volume", "how much ink a take", amount(Kind.VOLUME, "0.01 ml", "1 l"))
                                .hint("what the syringe shows, such as 10 ml", ""),
                        Key.optional("density", "its density", amount(Kind.DENSITY, "0.7 g/ml", "1.5 g/ml"))
                                .hint("grams of 100 ml over 100, such as 1.05 g/ml", ""),
                        Key.optional("recipe", "what it is mixed with, one of these", InkRecipe.shape()))
                .with(new Shape.Rule.ExactlyOne(List.of(List.of("density"), List.of("recipe"))));
        Shape nozzle = Shape.Keys.of(
                        Key.required("bore", "its inner width", amount(Kind.LENGTH, "0.2 mm", "50 mm"))
                                .hint("the drill that just fits, such as 4 mm", ""),
                        Key.optional(
                                "height", "its tip over the surface, - below it", amount(Kind.LENGTH, "-2 m", "2 m")),
                        Key.optional("squeeze_time", "how long it flows", amount(Kind.TIME, "0.01 s", "600 s")),
                        Key.optional("speed", "of the ink out of it", amount(Kind.SPEED, "0 mm/s", "20 m/s")),
                        Key.optional(
                                "tilt",
                                "how far it points from straight down, toward the thing",
                                amount(Kind.ANGLE, "0 deg", "90 deg")),
                        Key.optional("row", "length of a slot as wide as bore", amount(Kind.LENGTH, "1 mm", "1 m")))
                .with(
                        new Shape.Rule.AtMostOne(List.of("squeeze_time", "speed")),
                        new Shape.Rule.AtMostOne(List.of("tilt", "row")));
        Shape water = Shape.Keys.of(
                Key.required("depth", "from surface to floor", amount(Kind.LENGTH, "10 mm", "3 m")),
                Key.optional("temperature", "its temperature", amount(Kind.TEMPERATURE, "0 degC", "40 degC")));
        Shape thing = Shape.Keys.of(
                Key.required("top_depth", "from surface to its top", amount(Kind.LENGTH, "1 mm", "3 m")),
                Key.optional("ahead", "horizontal gap, nozzle to thing", amount(Kind.LENGTH, "0 mm", "2 m")));
        Shape reading = new Shape.Tuple(
                List.of(
                        new Part("time", amount(Kind.TIME, "1 ms", "600 s")),
                        new Part("depth", amount(Kind.LENGTH, "1 mm", "3 m"))),
                2);
        return Shape.Keys.of(
                Key.required("ink", "the ink", ink),
                Key.required("nozzle", "where it comes from", nozzle),
                Key.required("water", "the water", water),
                Key.required("thing", "what it shall meet", thing),
                Key.optional("wanted", "when the front is to be at the thing", amount(Kind.TIME, "10 ms", "600 s")),
                Key.optional("front", "readings of earlier takes", new Shape.Items(reading, 1, 200)));
    }

    private static Shape amount(Kind kind, String low, String high) {
        return new Shape.Amount(kind, Range.between(low, high), Shape.Mark.FIXED);
    }

    @Override
    public InkTake.Inputs read(Given given) {
        Given water = given.map("water");
        double kelvin =
                Math.clamp(water.si("temperature", "20 degC", "room-temperature tap water"), 273.15, 273.15 + 40);
        double waterDensity = Water.densityKilogramsPerMetre3(kelvin).find().orElseThrow();
        double viscosity = Water.viscosityPascalSeconds(kelvin).find().orElseThrow() / waterDensity;
        Given ink = given.map("ink");
        double density = ink.has("density") ? ink.si("density") : InkRecipe.read(ink.map("recipe"), kelvin);
        double reduced = Water.GRAVITY_METRES_PER_SECOND2 * (density - waterDensity) / waterDensity;
        Given nozzle = given.map("nozzle");
        Release release = release(nozzle, ink.si("volume"), reduced, viscosity);
        double height = nozzle.si("height", "0 mm", "the tip just at the surface");
        double floor = water.si("depth");
        Given thing = given.map("thing");
        double top = thing.si("top_depth");
        checkPlaces(thing, nozzle, top, floor, height);
        return new InkTake.Inputs(
                new Descent(release, Math.max(height, -0.99 * top), tilt(nozzle)),
                Math.max(floor, top),
                top,
                thing.findSi("ahead"),
                given.findSi("wanted"),
                readings(given, height));
    }

    private static double tilt(Given nozzle) {
        return Math.clamp(nozzle.findSi("tilt").orElse(0), 0, Math.PI / 2);
    }

    private static Release release(Given nozzle, double volume, double reduced, double viscosity) {
        double bore = nozzle.si("bore");
        double row = nozzle.findSi("row").orElse(0);
        if (row > 0 && row < bore) {
            nozzle.refuse(
                    "row",
                    "P-ASK-79",
                    Words.MILLIMETRES.length(row),
                    "a slot at least as long as it is wide, " + Words.MILLIMETRES.length(bore),
                    "Leave row out for a round nozzle.");
        }
        Release still = new Release(volume, reduced, bore, 0, viscosity, row == 0 ? 0 : Math.max(row, bore));
        return nozzle.has("speed")
                ? still.withSpeed(Math.max(0, nozzle.si("speed")))
                : still.withSqueeze(nozzle.si("squeeze_time", "1 s", "an easy squeeze by hand; time your own"));
    }

    private static void checkPlaces(Given thing, Given nozzle, double top, double floor, double height) {
        if (top >= floor) {
            thing.refuse(
                    "top_depth",
                    "P-ASK-71",
                    Words.MILLIMETRES.length(top),
                    "less than the water's depth, " + Words.MILLIMETRES.length(floor),
                    "Measure both from the still surface down.");
        }
        if (-height >= 0.99 * top) {
            nozzle.refuse(
                    "height",
                    "P-ASK-72",
                    Words.MILLIMETRES.length(height),
                    "above the thing's top, which is at -" + Words.MILLIMETRES.length(top),
                    "Raise the nozzle, or lower the thing.");
        }
    }

    private static List<Reading> readings(Given given, double height) {
        List<Reading> readings = new ArrayList<>();
        if (given.has("front")) {
            for (List<Double> row : given.rows("front")) {
                readings.add(new Reading(row.get(0), row.get(1)));
            }
            double highest =
                    readings.stream().mapToDouble(Reading::metres).min().orElseThrow();
            if (highest <= -height) {
                given.refuse(
                        "front",
                        "P-ASK-78",
                        "a reading at " + Words.MILLIMETRES.length(highest),
                        "deeper than the nozzle's tip, " + Words.MILLIMETRES.length(-height),
                        "Count depths from the still surface, not from the tip.");
            }
            if (readings.size() > 1 && !FrontFit.isPossible(readings)) {
                given.refuse(
                        "front",
                        "P-ASK-73",
                        readings.size() + " readings that don't go down with time",
                        "depths that grow with time, at two times or more",
                        "Give [time, depth] of one front as it goes down, such as [[0.4 s, 60 mm], [1.9 s, 188 mm]].");
            }
        }
        return readings;
    }

    @Override
    public Draft answer(InkTake.Inputs inputs, double[] settled, Words words) {
        InkTake.Found found = InkTake.answer(inputs);
        Draft draft = draft(found, new InkWords(found, words).notes());
        if (inputs.wantedSeconds().isEmpty() && found.findTouchSeconds().isPresent()) {
            double seconds = Math.rint(found.findTouchSeconds().getAsDouble() * 100) / 100;
            return draft.assuming(
                    new Assumed("wanted", new Value.Number(seconds, "s"), "when the front is at the thing's top"));
        }
        return draft;
    }

    @Override
    public Draft vary(InkTake.Inputs moved, double[] settled) {
        return draft(InkTake.answer(moved), Notes.NONE);
    }

    private static Draft draft(InkTake.Found found, Notes notes) {
        List<Item> items = new ArrayList<>();
        items.add(Item.word("regime", found.regime().word()));
        items.add(Item.of("reynolds", found.inputs().descent().release().reynolds(), "1"));
        items.add(arrival("arrive", found.top()));
        items.add(
                found.law() instanceof Prediction.Reached law
                        ? within("radius", law.radiusMetres().times(1e3), "mm")
                        : Item.word("radius", "unknown"));
        items.add(arrival("arrive_floor", found.floor()));
        items.add(
                found.law() instanceof Prediction.Reached law
                        ? within("dilution", law.dilution(), "1")
                        : Item.word("dilution", "unknown"));
        items.add(
                switch (found.touch()) {
                    case InkTake.Touch.At at ->
                        within("nozzle_ahead", at.metres().times(1e3), "mm");
                    case InkTake.Touch.TooEarly(), InkTake.Touch.TooLate() -> Item.word("nozzle_ahead", "none");
                    case InkTake.Touch.Unknown() -> Item.word("nozzle_ahead", "unknown");
                });
        if (found.inputs().descent().tiltRadians() > 0) {
            items.add(found.findAside()
                    .map(aside -> within("aside", aside.times(1e3), "mm"))
                    .orElse(Item.word("aside", "unknown")));
        }
        boolean known = !(found.top() instanceof Arrival.Unknown);
        return new Draft(items, criteria(found), known ? best(found) : Verdict.UNKNOWN, notes);
    }

    private static Item arrival(String name, Arrival arrival) {
        return switch (arrival) {
            case Arrival.At(Estimate seconds) -> within(name, seconds, "s");
            case Arrival.Never(Estimate _) -> Item.word(name, "never");
            case Arrival.Unknown(Prediction.Unknown _) -> Item.word(name, "unknown");
        };
    }

    private static Item within(String name, Estimate estimate, String unit) {
        return Item.within(name, estimate.value(), unit, estimate.low(), estimate.high());
    }

    private static List<Criterion> criteria(InkTake.Found found) {
        double deep = found.top() instanceof Arrival.Never(Estimate deepest)
                ? deepest.value() - found.inputs().topMetres()
                : FREE;
        double early = FREE;
        double late = FREE;
        if (found.inputs().wantedSeconds().isPresent()) {
            double wanted = found.inputs().wantedSeconds().getAsDouble();
            early = found.top() instanceof Arrival.At(Estimate seconds) ? wanted - seconds.value() : FREE;
            late = found.floor() instanceof Arrival.At(Estimate seconds) ? seconds.value() - wanted : FREE;
        }
        return List.of(
                new Criterion("the depth that the ink comes to", deep),
                new Criterion("the time for the way to the thing's top", early),
                new Criterion("the time until the floor", late));
    }

    /// Tight where the wanted time lies within the interval of an arrival.
    private static Verdict best(InkTake.Found found) {
        if (found.comingShare() < Ink.SURE_SHARE) {
            return Verdict.TIGHT;
        }
        if (found.inputs().wantedSeconds().isEmpty()) {
            return Verdict.HOLDS;
        }
        double wanted = found.inputs().wantedSeconds().getAsDouble();
        boolean maybeLate = found.top() instanceof Arrival.At(Estimate seconds) && wanted < seconds.high();
        boolean maybeDown = found.floor() instanceof Arrival.At(Estimate seconds) && wanted > seconds.low();
        return maybeLate || maybeDown ? Verdict.TIGHT : Verdict.HOLDS;
    }

    /// How sentences say a time: hundredths under ten seconds are more than a take repeats, so tenths.
    static String seconds(double seconds) {
        return Print.seconds(seconds, seconds < 1 ? 2 : 1);
    }
}
