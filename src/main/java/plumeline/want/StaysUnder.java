package plumeline.want;

import java.util.Optional;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.Immersed;

/// A thing sinks in the tank's water.
///
/// Margin in grams: its weight in water less what is wanted. No mark bears on it; where the spreads of what was
/// measured reach past what is wanted it is tight.
///
/// **Source:** Archimedes; fresh water by temperature from [plumeline.water.Water].
///
/// @param line as written
/// @param thing index of the thing
/// @param byKilograms net weight wanted, kilograms
/// @param immersed the thing in the tank's water
record StaysUnder(WantLine line, int thing, double byKilograms, Immersed immersed) implements Want {
    /// A net weight below this is lost to bubbles that nobody sees, kilograms.
    private static final double BUBBLES_KILOGRAMS = 0.01;

    @Override
    public String unit() {
        return "g";
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {Lacks.GRAMS * (immersed.net().value() - byKilograms)};
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    /// It would float if what was measured were off as far as it may be.
    @Override
    public Optional<String> findTight(Moments moments) {
        return immersed.net().value() - byKilograms < immersed.net().half()
                ? Optional.of(Lacks.tooNear(Parts.name(moments, thing), immersed))
                : Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        double net = immersed.net().value();
        String name = Parts.name(moments, thing);
        if (net < 0) {
            return Optional.of(name + " floats: it lacks " + Lacks.grams(net) + off()
                    + " of weight. Open, drain and flood it, or put ballast in.");
        }
        String wanted = net < byKilograms ? "; " + Lacks.grams(byKilograms) + " are wanted." : ".";
        return Optional.of(name + " sinks by " + Lacks.grams(net) + off() + wanted);
    }

    private String off() {
        return immersed.net().half() > 0 ? " ± " + Lacks.grams(immersed.net().half()) : "";
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        double net = immersed.net().value();
        String bubbles = net >= 0 && net < BUBBLES_KILOGRAMS
                ? "Bubbles of " + Print.number(net * Lacks.GRAMS, 1) + " ml together float "
                        + Parts.name(moments, thing) + ": wet it, wipe it, tilt air out from under its base."
                : "";
        String all = (bubbles + " " + Lacks.assumed(immersed.assumed())).strip();
        return all.isEmpty() ? Optional.empty() : Optional.of(all);
    }
}
