package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.answer.Answer.Notes;
import plumeline.answer.Course;
import plumeline.answer.Draft;
import plumeline.answer.Draft.Criterion;
import plumeline.answer.Given;
import plumeline.answer.Inquiry;
import plumeline.answer.Item;
import plumeline.answer.Verdict;
import plumeline.answer.Words;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Attitudes;
import plumeline.water.Buoyancy;
import plumeline.water.Hold;
import plumeline.water.Remedies;
import plumeline.water.Vessel;
import plumeline.water.Water;

/// The question `float` in text: will it stay under, which end up.
final class FloatInquiry implements Inquiry<FloatInquiry.Inputs> {
    /// What a line from above carries, of the net lift: all that it weighs there, or with the ballast what that is
    /// over.
    private static final Course ON_A_LINE = new Course.Bent(0, -1, Remedies.BALLAST_MARGIN - 1);

    /// As near to neutral as grams with a tenth show.
    private static final double NEUTRAL_KILOGRAMS = 0.05e-3;

    private static final double NEUTRAL_SHARE = 1e-3;

    private static final String EXAMPLE = """
        # float: will it stay under, and which end up? Leave out what has a default; add ± to what you measured.
        # heights from the base, with the radius there
        profile: [[0 mm, 23 mm], [12 mm, 33 mm], [95 mm, 33 mm], [112 mm, 26.5 mm], [118 mm, 26.5 mm]]
        # instead of profile:
        #   outside: 372 ml       # or gained: 372 g ± 2 g, what a jug on a scale gains when it is held just under
        #   or diameter: 66 mm, height: 121 mm, shape_factor: 0.9
        #   or box: {width: 72 mm, depth: 52 mm, height: 102 mm}
        # base: {diameter: 44 mm, depth: 10 mm}   # a hollow base; air: 0 ml once it is tilted clear
        empty_mass: 14 g          # or whole_mass: 385 g
        contents: {volume: 355 ml, density: 1.045 g/ml}   # or sugar: 11 %, alcohol: 40 %, glycerine: 50 %
                                  # by volume or glycerine_by_mass, or weighed: {volume: 100 ml, mass: 104.5 g}
        wall: {density: 2.7 g/ml} # or material: steel
        closed: yes
        # air: 12 ml              # default: outside less wall and contents
        water: {temperature: 20 degC}          # and salt: 3 % or sea_salt: 3.5 %, or density, or weighed
        ballast: {density: 7.85 g/ml}          # steel
        """;

    /// What is asked.
    ///
    /// @param body the product
    /// @param ballastKilogramsPerMetre3 the ballast's density
    /// @param closed whether it is sealed
    /// @param netReach how far lift less weight reaches, kilograms; nowhere where no input has a spread
    /// @param guessed whether the contents' density is the default
    record Inputs(
            FloatBody body, double ballastKilogramsPerMetre3, boolean closed, Given.Reach netReach, boolean guessed) {}

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param netNewtons lift less weight
    /// @param ballastKilograms ballast that makes it sink; less than 0 where it sinks of itself
    /// @param vessel the body with what moves in it, where it is known
    /// @param rest how it comes to rest, where that is known
    record Found(
            Inputs inputs,
            double netNewtons,
            double ballastKilograms,
            Optional<Vessel> vessel,
            Optional<Attitudes.Rest> rest) {
        /// Whether nobody can say by a scale that it floats or sinks.
        boolean isNeutral() {
            FloatBody body = inputs.body();
            double lifted = body.outsideMetres3() * body.waterKilogramsPerMetre3();
            return Math.abs(body.netKilograms()) < Math.min(NEUTRAL_KILOGRAMS, NEUTRAL_SHARE * lifted);
        }

        /// The most air it may hold, cubic metres, less than 0 where it floats without any; empty where unknown.
        Optional<Double> findMostAir() {
            FloatBody body = inputs.body();
            double water = body.waterKilogramsPerMetre3();
            return switch (body.parts()) {
                case FloatBody.Parts.Unknown(var air) ->
                    air.isEmpty() ? Optional.empty() : Optional.of(air.getAsDouble() - body.netKilograms() / water);
                case FloatBody.Parts.Known known
                when !inputs.closed() -> {
                    double room = known.airMetres3() + known.floodedMetres3();
                    yield Optional.of(Math.min(room, known.airMetres3() - body.netKilograms() / water));
                }
                case FloatBody.Parts.Known known ->
                    Optional.of(Buoyancy.mostAirMetres3(
                            body.form().bodyMetres3() - known.wallMetres3(),
                            body.outsideMetres3(),
                            known.emptyKilograms(),
                            known.liquidMetres3() > 0 ? known.liquidKilogramsPerMetre3() : water,
                            water));
            };
        }

        /// Net lift of the wall alone, newtons; empty where unknown.
        Optional<Double> findFloodedNewtons() {
            return switch (inputs.body().parts()) {
                case FloatBody.Parts.Unknown _ -> Optional.empty();
                case FloatBody.Parts.Known known ->
                    Optional.of((known.wallMetres3() * inputs.body().waterKilogramsPerMetre3() - known.emptyKilograms())
                            * Water.GRAVITY_METRES_PER_SECOND2);
            };
        }
    }

    @Override
    public String name() {
        return "float";
    }

    @Override
    public String asks() {
        return "whether it stays under water, and which end up";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        List<Key> keys = new ArrayList<>(FloatBody.keys());
        keys.add(Key.optional("ballast", "the ballast", FloatBody.substance()));
        return new Shape.Keys(keys, FloatBody.rules());
    }

    @Override
    public Inputs read(Given given) {
        FloatBody body = FloatBody.read(given);
        double ballast = FloatBody.readSubstance(given, "ballast", "7.85 g/ml", "steel; lead has 11.3, glass 2.5");
        if (ballast <= body.waterKilogramsPerMetre3()) {
            given.refuse(
                    "ballast",
                    "P-ASK-56",
                    "ballast that floats",
                    "a density greater than the water's",
                    "Take steel: {density: 7.85 g/ml}.");
            ballast = 7850;
        }
        boolean closed = !given.has("closed") || given.text("closed").equals("yes");
        return new Inputs(
                body,
                ballast,
                closed,
                given.reach(moved -> FloatBody.read(moved).netKilograms()),
                FloatLiquid.isGuessed(given));
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        Found found = find(inputs);
        Draft draft = draft(found, new FloatWords(found).notes());
        boolean none = found.findMostAir().orElse(0.0) < 0;
        return none ? draft.with(Item.word("most_air", "unknown")) : draft;
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(find(moved), Notes.NONE);
    }

    /// Answers in plain numbers.
    static Found find(Inputs inputs) {
        FloatBody body = inputs.body();
        double water = body.waterKilogramsPerMetre3();
        double net = body.netNewtons();
        double ballast = Math.signum(net)
                * Remedies.BALLAST_MARGIN
                * Buoyancy.ballastKilograms(Math.abs(net), inputs.ballastKilogramsPerMetre3(), water);
        Optional<Vessel> vessel = body.findVessel();
        Optional<Attitudes.Rest> rest = vessel.map(each -> Attitudes.settle(each, water, new Hold.Free(), 0));
        return new Found(inputs, net, ballast, vessel, rest);
    }

    private static Draft draft(Found found, Notes notes) {
        boolean neutral = found.isNeutral();
        double margin = neutral ? Math.abs(found.netNewtons()) : -found.netNewtons();
        return new Draft(
                items(found),
                List.of(new Criterion("its net weight under water", margin)),
                neutral ? Verdict.TIGHT : Verdict.HOLDS,
                notes);
    }

    private static List<Item> items(Found found) {
        FloatBody body = found.inputs().body();
        double lifted = body.outsideMetres3() * body.waterKilogramsPerMetre3();
        List<Item> items = new ArrayList<>();
        items.add(Item.of("net_lift", found.netNewtons(), "N"));
        items.add(
                Item.of("floats_at", 100 * body.wholeKilograms() / lifted, "%").atMost(100));
        items.add(found.findMostAir()
                .map(air -> Item.of("most_air", air * 1e6, "ml").atLeast(0))
                .orElse(Item.word("most_air", "unknown")));
        items.add(Item.of("ballast_mass", found.ballastKilograms() * 1e3, "g").atLeast(0));
        items.add(Item.of("line_tension", found.netNewtons(), "N").following(ON_A_LINE));
        items.addAll(upright(found.rest()));
        items.add(found.findFloodedNewtons()
                .map(newtons -> Item.of("after_flooding", newtons, "N"))
                .orElse(Item.word("after_flooding", "unknown")));
        return items;
    }

    private static List<Item> upright(Optional<Attitudes.Rest> rest) {
        if (rest.isEmpty()) {
            return List.of(Item.word("upright", "unknown"), Item.word("end_up", "unknown"));
        }
        return switch (rest.get()) {
            case Attitudes.Rest.Indifferent() -> List.of(Item.word("upright", "any"), Item.word("end_up", "any"));
            case Attitudes.Rest.At(Attitudes.Attitude attitude) ->
                List.of(
                        Item.of("upright", Math.toDegrees(attitude.tiltRadians()), "deg")
                                .following(new Course.Jumping()),
                        Item.word("end_up", attitude.end().name().toLowerCase(Locale.ROOT)));
        };
    }
}
