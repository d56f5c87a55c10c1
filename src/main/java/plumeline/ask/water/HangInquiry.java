package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
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
import plumeline.geom.Vec;
import plumeline.quantity.Kind;
import plumeline.quantity.Print;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.water.Hanging;
import plumeline.water.Turned;
import plumeline.water.Vessel;

/// The question `hang` in text: where to tie it so that it hangs as wanted.
final class HangInquiry implements Inquiry<HangInquiry.Inputs> {
    private static final double MOST_OFF_DEGREES = 2;
    private static final double PLACING_METRES = 0.002;

    /// Of a step of the tape.
    private static final double SLACK = 1e-3;

    private static final double LEAST_SPILT_METRES3 = 0.05e-6;
    private static final String BEYOND = ", beyond its end: on a wire or a frame fixed to it.";

    private static final String EXAMPLE = """
        # hang: where to tie it so that it hangs in the water as wanted. Heights are from the base, along the axis.
        whole_mass: 500 g
        outside: 420 ml                # or gained, profile, or diameter, height and shape_factor, as in float
        centre_of_mass: 62 mm          # or a profile with empty_mass and contents, and it is worked out
        centre_of_volume: 66 mm
        points: [25 mm, 95 mm]         # one or two upright lines
        attitude: level                # level, upright (default) or upside down
        water: {temperature: 20 degC}
        """;

    /// What is asked.
    ///
    /// @param vessel the body; a stand-in of its volume and centres where its form wasn't given
    /// @param waterKilogramsPerMetre3 the water's density
    /// @param wanted the attitude
    /// @param pointsMetres heights of the ties
    record Inputs(Vessel vessel, double waterKilogramsPerMetre3, Hanging.Wanted wanted, List<Double> pointsMetres) {}

    @Override
    public String name() {
        return "hang";
    }

    @Override
    public String asks() {
        return "where to tie it so that it hangs in the water as wanted";
    }

    @Override
    public String example() {
        return EXAMPLE;
    }

    @Override
    public Shape shape() {
        Shape height = FloatBody.amount(Kind.LENGTH, Range.between("0 mm", "10 m"));
        List<Key> keys = new ArrayList<>(FloatBody.keys());
        keys.add(Key.optional("centre_of_mass", "height of the centre of mass", height));
        keys.add(Key.optional("centre_of_volume", "height of the outer volume's centre", height));
        keys.add(Key.required("points", "heights where the lines leave the axis", new Shape.Items(height, 1, 2)));
        keys.add(Key.optional(
                "attitude", "how it shall hang", new Shape.Choice(List.of("level", "upright", "upside down"))));
        List<Shape.Rule> rules = new ArrayList<>(FloatBody.rules());
        rules.add(new Shape.Rule.Needs("centre_of_mass", "centre_of_volume"));
        rules.add(new Shape.Rule.Needs("centre_of_volume", "centre_of_mass"));
        return new Shape.Keys(keys, rules);
    }

    @Override
    public Inputs read(Given given) {
        FloatBody body = FloatBody.read(given);
        Hanging.Wanted wanted = switch (given.text("attitude", "upright", "as it is sold")) {
            case "level" -> Hanging.Wanted.LEVEL;
            case "upside down" -> Hanging.Wanted.UPSIDE_DOWN;
            default -> Hanging.Wanted.UPRIGHT;
        };
        List<Double> points = given.list("points");
        if (points.size() == 2 && points.get(0).equals(points.get(1))) {
            given.refuse(
                    "points",
                    "P-ASK-57",
                    "two lines at one height",
                    "two heights, or one line",
                    "Take one line, or tie the second near the other end.");
            points = points.subList(0, 1);
        }
        return new Inputs(readVessel(given, body), body.waterKilogramsPerMetre3(), wanted, points);
    }

    private static Vessel readVessel(Given given, FloatBody body) {
        if (given.has("centre_of_mass")) {
            return standIn(body, given.si("centre_of_mass"), given.si("centre_of_volume"));
        }
        Optional<Vessel> vessel = body.findVessel();
        if (vessel.isEmpty() && given.problems().isEmpty()) {
            String key = given.has("whole_mass") ? "whole_mass" : "empty_mass";
            given.refuse(
                    key,
                    "P-ASK-58",
                    "no centres",
                    "centre_of_mass and centre_of_volume, or a form with contents",
                    "Balance it on a ruler for its centre of mass; the middle of its height is near the other."
                            + " Or give a profile with empty_mass and contents.");
        }
        return vessel.orElseGet(() -> standIn(body, 0, 0));
    }

    /// Wholly under water only volume and centres count, so that any form of that volume will do.
    private static Vessel standIn(FloatBody body, double massMetres, double volumeMetres) {
        double r = Math.cbrt(body.outsideMetres3() / (2 * Math.PI));
        Turned form = new Turned(List.of(new Turned.Ring(volumeMetres - r, r), new Turned.Ring(volumeMetres + r, r)));
        return new Vessel(form, new Vessel.Shell(body.wholeKilograms(), massMetres), new Vessel.Inside.Solid());
    }

    @Override
    public Draft answer(Inputs inputs, double[] settled, Words words) {
        Result result = Result.of(inputs);
        return draft(result, notes(result, words));
    }

    @Override
    public Draft vary(Inputs moved, double[] settled) {
        return draft(Result.of(moved), Notes.NONE);
    }

    /// @param wantedNewtons its weight in water in the wanted attitude
    private record Result(Inputs inputs, Hanging.Found found, double wantedNewtons, double pointMetres) {
        private static Result of(Inputs inputs) {
            double water = inputs.waterKilogramsPerMetre3();
            Hanging.Wanted wanted = inputs.wanted();
            double load = Hanging.loadNewtons(inputs.vessel(), water, wanted.tiltRadians());
            double point = load == 0 ? 0 : Hanging.singlePointMetres(inputs.vessel(), water, wanted);
            Hanging.Found found = Hanging.hang(inputs.vessel(), water, wanted, inputs.pointsMetres());
            return new Result(inputs, found, load, point);
        }

        /// Its weight in water as it hangs, with the air that is left under its base.
        private double loadNewtons() {
            return Hanging.loadNewtons(
                    inputs.vessel().withAirUnder(found.airUnderMetres3()), inputs.waterKilogramsPerMetre3());
        }

        private boolean holds() {
            return offDegrees() <= MOST_OFF_DEGREES
                    && !isOnEdge()
                    && loadNewtons() > 0
                    && found.loadsNewtons().stream().allMatch(load -> load >= 0);
        }

        private double offDegrees() {
            return Math.toDegrees(Math.abs(found.tiltRadians() - inputs.wanted().tiltRadians()));
        }

        /// Whether one tie off by what a tape is off tips it.
        private boolean isOnEdge() {
            if (found.steadiness() == Hanging.Steadiness.INDIFFERENT) {
                return true;
            }
            return inputs.pointsMetres().size() == 1
                    && Math.abs(inputs.pointsMetres().getFirst() - pointMetres) < PLACING_METRES;
        }
    }

    private static Draft draft(Result result, Notes notes) {
        List<Item> items = new ArrayList<>();
        List<Criterion> criteria = new ArrayList<>();
        items.add(Item.of("tilt", Math.toDegrees(result.found().tiltRadians()), "deg")
                .following(new Course.Jumping()));
        List<Double> loads = result.found().loadsNewtons();
        for (int i = 0; i < loads.size(); i++) {
            items.add(Item.of("load_" + (i + 1), loads.get(i), "N"));
            criteria.add(new Criterion("the pull of line " + (i + 1), loads.get(i)));
        }
        items.add(
                result.wantedNewtons() == 0
                        ? Item.word("single_point", "none")
                        : Item.millimetres("single_point", result.pointMetres()));
        items.add(Item.of("load", result.loadNewtons(), "N"));
        criteria.add(new Criterion("its weight in water", result.loadNewtons()));
        criteria.add(new Criterion("the tilt", MOST_OFF_DEGREES - result.offDegrees()));
        return new Draft(items, criteria, result.isOnEdge() ? Verdict.TIGHT : Verdict.HOLDS, notes);
    }

    private static Notes notes(Result result, Words words) {
        List<String> because = new ArrayList<>();
        List<String> attempts = new ArrayList<>();
        because.add(
                "tilt is the axis's from upright: 0 top up, 90 level, 180 upside down; lines are upright and as long as"
                        + " the wanted attitude needs.");
        Hanging.Wanted wanted = result.inputs().wanted();
        String point = words.length(result.pointMetres());
        sayBase(result, because);
        clear(result).ifPresent(attempts::add);
        if (result.loadNewtons() <= 0) {
            because.add("It floats: a line from above would have to push.");
            attempts.add("Ask float what makes it sink, or tie it to the tank's floor"
                    + (wanted == Hanging.Wanted.LEVEL ? " at " + point + "." : "."));
            return finish(because, attempts);
        }
        because.add(
                switch (wanted) {
                    case LEVEL ->
                        "On one line it is level only at " + point
                                + ", on a knife's edge; between two lines it is steady.";
                    case UPRIGHT -> "A line that leaves the axis above " + point + " holds it upright.";
                    case UPSIDE_DOWN -> "A line that leaves the axis below " + point + " holds it upside down.";
                });
        if (result.isOnEdge()) {
            because.add("A tie that is " + words.length(PLACING_METRES) + " off tips it.");
        }
        for (double load : result.found().loadsNewtons()) {
            if (load < 0) {
                because.add("A line would have to push " + Print.number(-load, 3)
                        + " N: both ties are on one side of the" + " balance point.");
            }
        }
        if (!result.holds()) {
            attempt(result, words)
                    .filter(tie -> attempts.isEmpty() || !tie.endsWith(BEYOND))
                    .ifPresent(attempts::add);
        }
        return finish(because, attempts);
    }

    private static void sayBase(Result result, List<String> because) {
        double under = result.inputs().vessel().airUnderMetres3(0);
        if (under <= 0) {
            return;
        }
        double left = result.found().airUnderMetres3();
        String tilt = degrees(result.found().tiltRadians());
        because.add(
                "Under its hollow base " + FloatBody.millilitres(under) + " of air are trapped and lift it there; at "
                        + tilt + " "
                        + (under - left > LEAST_SPILT_METRES3
                                ? FloatBody.millilitres(left) + " of it are left"
                                : "all of it stays")
                        + ". Loads are those with that.");
    }

    /// The air under its base let out, tried on the same ties.
    private static Optional<String> clear(Result result) {
        Inputs inputs = result.inputs();
        if (result.holds() || inputs.vessel().airUnderMetres3(0) <= 0) {
            return Optional.empty();
        }
        Vessel cleared = inputs.vessel().withAirUnder(0);
        Result after = Result.of(
                new Inputs(cleared, inputs.waterKilogramsPerMetre3(), inputs.wanted(), inputs.pointsMetres()));
        return after.holds()
                ? Optional.of("Tilt it under water until no air is left under its base: it then hangs at "
                        + degrees(after.found().tiltRadians()) + " on the same ties, "
                        + Print.number(after.loadNewtons(), 3) + " N in all.")
                : Optional.empty();
    }

    private static String degrees(double radians) {
        return Print.number(Math.toDegrees(radians), 0) + " deg";
    }

    private static Notes finish(List<String> because, List<String> attempts) {
        return new Notes(
                because,
                attempts,
                List.of("In air it weighs more than in water: ask line for the heaviest load it sees, lifted out"
                        + " full."),
                List.of("lever rule on weight and lift; derived in docs/derivations/float.md"));
    }

    /// Ties that do what is wanted, tried: two round the balance point, or one 10 mm beyond it.
    private static Optional<String> attempt(Result result, Words words) {
        Inputs inputs = result.inputs();
        List<Double> points = new ArrayList<>();
        double reach = inputs.wanted() == Hanging.Wanted.LEVEL ? 0.02 : 0.01;
        double step = words.stepMetres();
        double low = Math.floor((result.pointMetres() - reach) / step + SLACK) * step;
        double high = Math.ceil((result.pointMetres() + reach) / step - SLACK) * step;
        if (inputs.wanted() != Hanging.Wanted.UPRIGHT) {
            points.add(low);
        }
        if (inputs.wanted() != Hanging.Wanted.UPSIDE_DOWN) {
            points.add(high);
        }
        Inputs tried = new Inputs(inputs.vessel(), inputs.waterKilogramsPerMetre3(), inputs.wanted(), points);
        if (!Result.of(tried).holds()) {
            return Optional.empty();
        }
        List<String> texts = points.stream().map(words::tape).toList();
        double top = inputs.vessel().outer().highestMetres(Vec.UP);
        boolean beyond = low < 0 || high > top && inputs.vessel().inside() instanceof Vessel.Inside.Filled;
        return Optional.of("Tie it at " + String.join(" and ", texts) + (beyond ? BEYOND : "."));
    }
}
