package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Placed;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.HangingLine;
import plumeline.stage.Immersed;
import plumeline.want.Suspension;
import plumeline.water.Line;
import plumeline.water.Water;
import plumeline.wet.Lacks;

/// On which lines a thing hangs, what they carry, how long it swings.
///
/// **Source:** [Line]'s laws and factors; common practice for the wait and the cautions.
///
/// @param id the card's id
/// @param placed the thing
/// @param place how its lines leave it and what it hangs in
/// @param print the papers' figures
record HangCard(String id, Placed placed, Place place, Print print) {
    private static final List<String> CAUTIONS = List.of(
            "Nobody's hand or head under it, a soft mat on the glass below; out of the water a hand goes beneath it:"
                    + " there one line may have to bear it all.",
            "A bare loop slips off a straight or narrowing side, a wet one sooner: tie it below a bead or shoulder, or"
                    + " take a glued eye, a harness or a net, and pull hard on it over a mat first.",
            "New line for each set-up: nicks, kinks, hot lamps and wetness weaken it unseen.",
            "Anything over a head is for licensed riggers and local codes.");

    /// Added mass over displaced mass of what hangs upright and swings across itself (see [Line.Hung]).
    private static final double DRAGGED = 1;

    /// Half a gram's weight: less keeps no line straight.
    private static final double SLACK_NEWTONS = 0.005;

    private static final double[] MILLIMETRE_LENGTHS = {0.5, 1};
    private static final double[] INCH_LENGTHS = {20 * 0.0254, 40 * 0.0254};

    /// How it hangs.
    ///
    /// @param isWet whether it hangs in the tank's water
    /// @param densityKilogramsPerMetre3 of what it hangs in; 0 where that isn't known
    /// @param ties a line each: the height of its tie over the base as printed, empty where it isn't known
    /// @param suspension how it hangs by them
    record Place(boolean isWet, double densityKilogramsPerMetre3, List<String> ties, Suspension suspension) {
        Place {
            ties = List.copyOf(ties);
        }
    }

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        Optional<Immersed> immersed = find();
        parts.add(new Card.Part.Grid(
                List.of("Line", "Tie over its base", place.isWet() ? "Carries in water" : "Carries", "Tied"),
                lines(immersed)));
        parts.add(new Card.Part.Fact("Hangs", hangs(immersed)));
        loads(parts, immersed);
        line(parts, immersed);
        parts.add(new Card.Part.Fact("Swings", swings(immersed)));
        parts.add(new Card.Part.Fact(
                "Wait",
                "1 to 2 min after the last touch, until it stands still against the frame line; longer on longer"
                        + " lines."));
        parts.add(new Card.Part.Fact(
                "Twist",
                place.ties().size() > 1
                        ? hasSlack()
                                ? "A line bears next to nothing as it hangs: it steadies, but doesn't keep its"
                                        + " face. Two side by side at the top do."
                                : "Its lines keep its face: as far apart as the picture allows, none slack."
                        : "One line lets it turn as it likes: two, as far apart as the picture allows, keep its"
                                + " face."));
        return new Card(
                id, "Hang card: " + placed.name() + " (" + placed.thing().reference() + ")", CAUTIONS, parts);
    }

    private Optional<Immersed> find() {
        return place.densityKilogramsPerMetre3() > 0
                        && Immersed.of(placed.thing(), place.densityKilogramsPerMetre3())
                                instanceof Immersed.Reading.Known(Immersed immersed)
                ? Optional.of(immersed)
                : Optional.empty();
    }

    private List<List<String>> lines(Optional<Immersed> immersed) {
        List<List<String>> rows = new ArrayList<>();
        for (int i = 0; i < place.ties().size(); i++) {
            rows.add(List.of(Integer.toString(i + 1), place.ties().get(i), carries(immersed, i), ""));
        }
        return rows;
    }

    private String carries(Optional<Immersed> immersed, int line) {
        if (isAfloat(immersed)) {
            return "nothing: it floats";
        }
        if (place.suspension() instanceof Suspension.Known(var _, List<Double> pulls, var _)) {
            return pulls.isEmpty() ? "it tips: see below" : Figures.pull(pulls.get(line));
        }
        boolean isAlone = place.ties().size() == 1 && immersed.isPresent();
        return isAlone ? Figures.load(immersed.get().net().value()) : "not known";
    }

    private boolean hasSlack() {
        return place.suspension() instanceof Suspension.Known(var _, List<Double> pulls, var _)
                && pulls.stream().anyMatch(pull -> pull < SLACK_NEWTONS);
    }

    private static boolean isAfloat(Optional<Immersed> immersed) {
        return immersed.filter(it -> it.net().value() <= 0).isPresent();
    }

    private String hangs(Optional<Immersed> immersed) {
        if (isAfloat(immersed)) {
            return "not while it floats: its float card comes first.";
        }
        return switch (place.suspension()) {
            case Suspension.Known(String standing, var _, String assumed) -> (standing + " " + assumed).strip();
            case Suspension.Unknown(String reason) -> "not known. " + reason;
        };
    }

    private void loads(List<Card.Part> parts, Optional<Immersed> immersed) {
        if (immersed.isEmpty()) {
            parts.add(new Card.Part.Ask("Lifted out", "not known: weigh it, with all that is in it"));
            return;
        }
        double net = immersed.get().net().value();
        if (place.isWet()) {
            parts.add(new Card.Part.Fact(
                    "In water",
                    net < 0 ? "floats by " + Lacks.grams(net) + "." : Figures.load(net) + ", all lines together."));
        }
        parts.add(new Card.Part.Fact(
                "Lifted out",
                Figures.load(immersed.get().mass().value()) + ", all of it: the heaviest load; count it on one line."));
    }

    private void line(List<Card.Part> parts, Optional<Immersed> immersed) {
        Optional<HangingLine> line = HangingLine.find(placed);
        if (immersed.isEmpty()) {
            parts.add(new Card.Part.Fact(
                    "Line needed",
                    "labelled ten times what it weighs lifted out, or more: a knot leaves 50 %, and five times the load"
                            + " is asked for."));
        } else {
            double needed = Line.neededNewtons(newtons(immersed.get()), Line.PLANNED_KNOT, Line.LEAST_FACTOR);
            double kilograms = needed / Water.GRAVITY_METRES_PER_SECOND2;
            parts.add(new Card.Part.Fact(
                    "Line needed",
                    "labelled " + Print.number(Math.ceil(needed - 1e-9), 0) + " N ("
                            + Print.number(Math.ceil(kilograms * 10 - 1e-9) / 10, 1)
                            + " kg) or more, of nylon about " + thickness(needed)
                            + " thick (typical): a knot leaves 50 %, and five times the load is asked for."));
        }
        if (line.isEmpty()) {
            parts.add(new Card.Part.Ask("Line taken", "not known: read its label, diameter and strength"));
        } else {
            parts.add(new Card.Part.Fact("Line taken", taken(line.get(), immersed)));
        }
    }

    private static double newtons(Immersed immersed) {
        return immersed.mass().value() * Water.GRAVITY_METRES_PER_SECOND2;
    }

    private String taken(HangingLine line, Optional<Immersed> immersed) {
        String label = placed.written()
                .findQuantity("line.diameter")
                .map(this::diameter)
                .orElse("");
        String strength = Lacks.newtons(line.strengthNewtons()) + " unknotted";
        String assumed = line.assumed().isEmpty() ? "" : " Assumed: " + String.join("; ", line.assumed()) + ".";
        String factor =
                immersed.map(it -> factor(line.safetyFactor(newtons(it)))).orElse("");
        return label + strength + factor + "." + assumed;
    }

    private String diameter(Quantity diameter) {
        return (Figures.isMetric(print)
                        ? Print.number(diameter.si() * 1000, 2) + " mm"
                        : Print.number(diameter.si() / 0.0254, 3) + " in")
                + " thick, ";
    }

    private static String factor(double factor) {
        return ": one alone bears " + Print.number(Math.floor(factor * 10) / 10, 1)
                + " times its weight lifted out at the knot; five times is asked for"
                + (factor < Line.LEAST_FACTOR ? ": too weak" : "");
    }

    /// Up to the next twentieth of a millimetre, or the next thousandth of an inch.
    private String thickness(double newtons) {
        double metres = Line.diameterMetres(newtons, Line.Material.NYLON.plannedPascals());
        double step = Figures.isMetric(print) ? 5e-5 : 2.54e-5;
        return Figures.isMetric(print)
                ? Print.number(Math.ceil(metres / step - 1e-9) / 20, 2) + " mm"
                : Print.number(Math.ceil(metres / step - 1e-9) / 1000, 3) + " in";
    }

    private String swings(Optional<Immersed> immersed) {
        if (immersed.isEmpty()) {
            return "in air " + periods(Line.Hung.inAir(1)) + ", slower in water.";
        }
        double mass = immersed.get().mass().value();
        double net = immersed.get().net().value();
        if (isAfloat(immersed)) {
            return "not while it floats.";
        }
        return place.isWet()
                ? "in water " + periods(new Line.Hung(mass, mass - net, DRAGGED)) + "."
                : "in air " + periods(Line.Hung.inAir(mass)) + ".";
    }

    private String periods(Line.Hung hung) {
        double[] lengths = Figures.isMetric(print) ? MILLIMETRE_LENGTHS : INCH_LENGTHS;
        List<String> all = new ArrayList<>();
        for (double length : lengths) {
            double seconds = Line.swingSeconds(hung, length, Water.GRAVITY_METRES_PER_SECOND2);
            all.add(Print.seconds(seconds, 1) + " on " + print.length(length));
        }
        return String.join(", ", all) + ", there and back, from where the line is held to its middle";
    }

    /// How many lines a thing hangs on by the plan.
    static int count(Placed placed) {
        return placed.tied().isEmpty()
                ? (int) Math.max(1, placed.lines().orElse(1))
                : placed.tied().size();
    }
}
