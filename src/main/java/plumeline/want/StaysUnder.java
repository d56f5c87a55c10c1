package plumeline.want;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Stage;
import plumeline.water.Water;

/// Things sink in the tank's water, closed as they are.
///
/// Margin in grams: whole mass less the mass of the water displaced, less what is wanted. No mark bears on it; where
/// the spreads of what was measured reach past 0 it is unknown. One part a thing.
///
/// **Source:** Archimedes; fresh water by temperature from [plumeline.water.Water].
///
/// @param line as written
/// @param things indices of things
/// @param byKilograms net weight wanted, kilograms
record StaysUnder(WantLine line, List<Integer> things, double byKilograms) implements Want {
    private static final double GRAMS = 1000;
    private static final double ROOM_KELVIN = 293.15;

    /// A net weight below this is lost to bubbles that nobody sees, kilograms.
    private static final double BUBBLES_KILOGRAMS = 0.01;

    /// What a thing weighs in water, and how far that may be off.
    private record Net(double kilograms, double offKilograms) {}

    StaysUnder {
        things = List.copyOf(things);
    }

    @Override
    public String unit() {
        return "g";
    }

    @Override
    public double[] parts(Moments moments) {
        return things.stream()
                .mapToDouble(index -> GRAMS * (net(index, moments.stage()).kilograms() - byKilograms))
                .toArray();
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    /// Why it can't be told, whatever the marks.
    Optional<String> findNever(Stage stage) {
        if (stage.shot().findTank().isEmpty()) {
            return Optional.of("The shot has no tank.");
        }
        if (findWater(stage).isEmpty()) {
            return Optional.of("The water's temperature is past 0 to 40 degC.");
        }
        for (int index : things) {
            Thing thing = thing(index, stage);
            String name = stage.shot().placed().get(index).name();
            if (thing.written().findQuantity("mass").isEmpty()) {
                return Optional.of("Weigh " + name + ", whole and filled: write its mass.");
            }
            if (thing.written().findQuantity("displaces").isEmpty()) {
                return Optional.of("Push " + name + " just under in a jug on a kitchen scale: the grams gained are the"
                        + " millilitres it displaces.");
            }
            if (thing.written().findWord("closed").filter("no"::equals).isPresent()) {
                return Optional.of(name + " is open: how much water runs in decides. Ask float.");
            }
            Net net = net(index, stage);
            if (Math.abs(net.kilograms() - byKilograms) < net.offKilograms()) {
                return Optional.of(name + (net.kilograms() < 0 ? " floats by " : " sinks by ") + grams(net.kilograms())
                        + ", but that may be off by " + grams(net.offKilograms()) + ": weigh it more closely.");
            }
        }
        return Optional.empty();
    }

    private static Thing thing(int index, Stage stage) {
        return stage.shot().placed().get(index).thing();
    }

    private static OptionalDouble findWater(Stage stage) {
        double kelvin = stage.shot()
                .findTank()
                .flatMap(tank -> tank.tank().written().findQuantity("temperature"))
                .map(Quantity::si)
                .orElse(ROOM_KELVIN);
        return Water.densityKilogramsPerMetre3(kelvin).find();
    }

    private static Net net(int index, Stage stage) {
        Quantity mass = thing(index, stage).written().findQuantity("mass").orElseThrow();
        Quantity displaces =
                thing(index, stage).written().findQuantity("displaces").orElseThrow();
        double density = findWater(stage).orElseThrow();
        return new Net(mass.si() - density * displaces.si(), off(mass) + density * off(displaces));
    }

    private static double off(Quantity quantity) {
        return quantity.halfWidthSi();
    }

    private static String grams(double kilograms) {
        double grams = Math.abs(kilograms * GRAMS);
        return Print.number(grams, grams < 10 ? 1 : 0) + " g";
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        int worst = Parts.worstOf(parts(moments));
        Net net = net(things.get(worst), moments.stage());
        String name = Parts.name(moments, things.get(worst));
        if (net.kilograms() < 0) {
            return Optional.of(name + " floats: it lacks " + grams(net.kilograms())
                    + " of weight. Open, drain and flood it, or put ballast in.");
        }
        String wanted = net.kilograms() < byKilograms ? "; " + grams(byKilograms) + " are wanted." : ".";
        return Optional.of(name + " sinks by " + grams(net.kilograms()) + wanted);
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        int worst = Parts.worstOf(parts(moments));
        double net = net(things.get(worst), moments.stage()).kilograms();
        return net >= 0 && net < BUBBLES_KILOGRAMS
                ? Optional.of("Bubbles of " + Print.number(net * GRAMS, 1) + " ml together float "
                        + Parts.name(moments, things.get(worst))
                        + ": wet it, wipe it, tilt air out from under its base.")
                : Optional.empty();
    }
}
