package plumeline.lesson;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.take.Measured;

/// Looks whether what was measured of the kit is far from what the plan had of it: mostly a slip of a unit.
public final class FarOff {
    /// A lens's true focal length is within a few per cent of what is engraved.
    private static final double FOCAL_RATIO = 1.15;

    private static final double LUX_RATIO = 5;

    /// Three stops from what is computed on a thing: a unit, a lamp that was off, or another's light.
    private static final double LUX_AT_RATIO = 8;

    private static final double SPEED_RATIO = 3;
    private static final double STRENGTH_RATIO = 5;

    private FarOff() {}

    /// Finds whether it is.
    ///
    /// @param measured what was measured
    /// @param plan the plan without it
    /// @return a sentence; empty where it is near, or the plan doesn't say
    public static Optional<String> find(Measured measured, Plan plan) {
        return switch (measured) {
            case Measured.OfTake _, Measured.Reset _ -> Optional.empty();
            case Measured.FocalLength lens ->
                find(
                        lens.length(),
                        written(plan.kit().lenses(), Kit.Lens::name, lens.lens(), Kit.Lens::written, "focal_length"),
                        FOCAL_RATIO);
            case Measured.Speed machine ->
                find(
                        machine.speed(),
                        written(
                                plan.kit().machines(),
                                Kit.Machine::name,
                                machine.machine(),
                                Kit.Machine::written,
                                "speed"),
                        SPEED_RATIO);
            case Measured.Strength ink ->
                find(
                        ink.absorbance(),
                        written(plan.kit().inks(), Kit.Ink::name, ink.ink(), Kit.Ink::written, "strength"),
                        STRENGTH_RATIO);
            case Measured.Lux lamp ->
                find(
                        lamp.gives(),
                        written(plan.kit().lights(), Kit.Light::name, lamp.light(), Kit.Light::written, "gives"),
                        LUX_RATIO);
            case Measured.LuxAt at ->
                Math.abs(Math.log(at.ratio())) > Math.log(LUX_AT_RATIO)
                        ? Optional.of("Look: " + at.reads().toText() + " is far from the "
                                + at.computed().toText()
                                + " that were computed there; is the unit right, and were just these lamps on, at the"
                                + " plan's levels?")
                        : Optional.empty();
        };
    }

    private static <T> Optional<Quantity> written(
            List<T> all, Function<T, String> names, String name, Function<T, Written> written, String key) {
        return all.stream()
                .filter(each -> names.apply(each).equals(name))
                .findFirst()
                .flatMap(each -> written.apply(each).findQuantity(key));
    }

    private static Optional<String> find(Quantity measured, Optional<Quantity> planned, double ratio) {
        return planned.filter(plan -> Math.abs(Math.log(candela(measured) / candela(plan))) > Math.log(ratio))
                .map(plan -> "Look: " + measured.toText() + " is far from the plan's " + plan.toText()
                        + "; is the unit right?");
    }

    /// Lux at a distance count by its square.
    private static double candela(Quantity quantity) {
        return quantity.findAt().map(at -> quantity.si() * at.si() * at.si()).orElse(quantity.si());
    }
}
