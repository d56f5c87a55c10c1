package plumeline.card;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.TankPlace;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Immersed;
import plumeline.stage.TankFill;
import plumeline.wet.Lacks;
import plumeline.wet.Sinking;

/// Whether a thing stays under: two weighings on kitchen scales, what the plan says they come to, what helps.
///
/// **Source:** Archimedes; 20 to 50 g down and the bucket on the evening before: common practice.
///
/// @param id the card's id
/// @param thing the thing
/// @param names the names it stands under in the shot
/// @param tank the tank that it goes into
/// @param by the net weight that the shot wants, kilograms; 0 where it names none
/// @param isToFloat whether the shot wants it afloat: upright, on no line, not under
record FloatCard(String id, Thing thing, List<String> names, TankPlace tank, double by, boolean isToFloat) {
    private static final double ENOUGH_KILOGRAMS = 0.020;

    Card card() {
        List<Card.Part> parts = new ArrayList<>();
        weighing(parts);
        parts.add(new Card.Part.Say(
                isToFloat
                        ? "It is to float: more gain than weight is wanted. Weight over gain is its share under water."
                        : "More weight than gain: it sinks by the difference; " + wanted()
                                + " Less: it floats, and lacks the difference."));
        plan(parts);
        parts.add(new Card.Part.Tick("The evening before, in a bucket, as it will "
                + (isToFloat ? "float, for an hour: still as high" : "hang or stand, for an hour: still under")
                + ", still as it was turned, no bubbles rising? Nudge it."));
        return new Card(id, "Float card: " + thing.reference(), List.of(), parts);
    }

    private OptionalDouble water() {
        return TankFill.findDensity(tank);
    }

    private String name() {
        return names.size() == 1 ? names.getFirst() : thing.reference();
    }

    private boolean isOpen() {
        return thing.written().findWord("closed").filter("no"::equals).isPresent();
    }

    private void weighing(List<Card.Part> parts) {
        parts.add(new Card.Part.Tick("Weigh it dry, with all that will be in it but the tank's water."));
        parts.add(new Card.Part.Tick("Stand a jug of the tank's water on kitchen scales, set them to zero. Push it just"
                + " under with a thin wire, off the jug's walls, "
                + (isOpen() ? "filled to the last bubble. " : "no bubbles on it. ")
                + "The grams gained are the millilitres it displaces."));
        List<List<String>> rows =
                names.stream().map(name -> List.of(name, "", "", "")).toList();
        parts.add(new Card.Part.Grid(List.of("Which", "Weight g", "Gain g = ml", "Difference g"), rows));
    }

    private String wanted() {
        return by > 0
                ? Lacks.grams(by) + " or more are wanted."
                : "20 to 50 g are wanted, lest bubbles or a nudge lift it.";
    }

    private void plan(List<Card.Part> parts) {
        weight(parts);
        OptionalDouble water = water();
        if (water.isEmpty()) {
            parts.add(new Card.Part.Ask("Water", Lacks.water(tank) + " Its density, weighed"));
            remedies(parts, Optional.empty());
            return;
        }
        switch (Immersed.of(thing, water.getAsDouble())) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> {
                volume(parts, Optional.empty());
                parts.add(new Card.Part.Fact("Comes to", "not known. " + Lacks.sentence(lack, name())));
                remedies(parts, Optional.empty());
            }
            case Immersed.Reading.Known(Immersed immersed) -> {
                volume(parts, Optional.of(immersed));
                parts.add(new Card.Part.Fact("Comes to", comesTo(immersed)));
                List<String> assumed = assumed(immersed);
                if (!assumed.isEmpty()) {
                    parts.add(new Card.Part.Fact("Assumed", String.join("; ", assumed) + "."));
                }
                remedies(parts, Optional.of(immersed));
            }
        }
    }

    /// How its weight lies bears on the remedies only.
    private static List<String> assumed(Immersed immersed) {
        List<String> all = new ArrayList<>(immersed.assumed());
        if (immersed.net().value() < 0 && immersed.body() instanceof Immersed.Body.Of(var _, var assumed)) {
            all.addAll(assumed);
        }
        return all;
    }

    private void weight(List<Card.Part> parts) {
        Optional<Quantity> mass = thing.written().findQuantity("mass");
        Optional<Quantity> empty = thing.written().findQuantity("empty_mass");
        if (mass.isPresent()) {
            parts.add(new Card.Part.Fact("Weight", Figures.written(mass.get())));
        } else if (empty.isPresent()) {
            String contents = thing.written()
                    .findQuantity("contents.volume")
                    .map(volume -> ", and contents, " + Figures.written(volume))
                    .orElse("");
            parts.add(new Card.Part.Fact("Weight", "empty " + Figures.written(empty.get()) + contents));
        } else {
            parts.add(new Card.Part.Ask("Weight", "not known: weigh it"));
        }
    }

    /// What is pushed under and weighed is the whole form of a closed thing only.
    private void volume(List<Card.Part> parts, Optional<Immersed> immersed) {
        Optional<Quantity> written = thing.written().findQuantity("displaces");
        if (written.isPresent()) {
            parts.add(new Card.Part.Fact("Displaces", Figures.written(written.get())));
        } else if (immersed.isPresent() && !isOpen()) {
            parts.add(new Card.Part.Fact(
                    "Displaces",
                    Figures.millilitres(immersed.get().displaced()) + ", from its form (typical: measure yours)"));
        } else {
            parts.add(new Card.Part.Ask("Displaces", "not known: push it under"));
        }
    }

    private String comesTo(Immersed immersed) {
        double net = immersed.net().value();
        if (Math.abs(net) < immersed.net().half()) {
            return Lacks.tooNear(name(), immersed);
        }
        String figure = Figures.grams(immersed.net());
        if (net < 0) {
            double share = immersed.mass().value() / (immersed.mass().value() - net);
            return isToFloat
                    ? "Floats by " + figure + ", " + Print.share(share, 0) + " of it under water."
                    : "Floats: it lacks " + figure + " of weight.";
        }
        if (isToFloat) {
            return "Sinks by " + figure + ": it is to float.";
        }
        if (net >= wantedKilograms()) {
            return "Sinks by " + figure + ".";
        }
        return "Sinks by " + figure + "; " + Lacks.grams(wantedKilograms() - net)
                + (by > 0 ? " more are wanted." : " more would keep it from bubbles and nudges.");
    }

    private void remedies(List<Card.Part> parts, Optional<Immersed> immersed) {
        List<String> tried = immersed.map(this::tried).orElse(List.of());
        boolean isDown =
                immersed.filter(it -> it.net().value() - it.net().half() >= by).isPresent();
        if (isDown || isToFloat) {
            return;
        }
        if (tried.isEmpty()) {
            parts.add(new Card.Part.Fact(
                    "If it floats",
                    "Open, drain and flood it, no bubble left. Or steel on its floor inside, what it lacks and 20 g"
                            + " more; under its base outside 1.15 times that. Or tie its base to the tank's"
                            + " floor. Then the bucket again: ballast may turn it over."));
        } else {
            parts.add(new Card.Part.Fact(
                    "What helps", "First: " + String.join(" Or: ", tried) + " Try it in the bucket."));
        }
        if (!isOpen()) {
            parts.add(new Card.Part.Say(
                    "A sealed fizzy drink is under pressure: chill it, open it by its own lid," + " never pierce it."));
        }
    }

    private List<String> tried(Immersed immersed) {
        return Sinking.listTried(immersed, water().orElseThrow(), by);
    }

    private double wantedKilograms() {
        return by > 0 ? by : ENOUGH_KILOGRAMS;
    }
}
