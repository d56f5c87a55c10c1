package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.Immersed;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.wet.Lacks;
import plumeline.wet.Sinking;

/// A thing sinks in the tank's water.
///
/// Margin in grams: its weight in water less what is wanted. Marks bear on it only where they place it out of the
/// water: a second part, none of the margin, is how far it is from there, in mm, so that leeway ends there. Where the
/// spreads of what was measured reach past what is wanted it is tight.
///
/// **Source:** Archimedes; fresh water by temperature from [plumeline.water.Water].
///
/// @param line as written
/// @param thing index of the thing
/// @param byKilograms net weight wanted, kilograms
/// @param immersed the thing in the tank's water
/// @param waterKilogramsPerMetre3 that water's density, kilograms a cubic metre
record StaysUnder(WantLine line, int thing, double byKilograms, Immersed immersed, double waterKilogramsPerMetre3)
        implements Want {
    /// A net weight below this is lost to bubbles that nobody sees, kilograms.
    private static final double BUBBLES_KILOGRAMS = 0.01;

    private static final double FAR_METRES = 10;

    @Override
    public String unit() {
        return "g";
    }

    @Override
    public double[] parts(Moments moments) {
        double grams = Lacks.GRAMS * (immersed.net().value() - byKilograms);
        return new double[] {grams, Parts.MILLIMETRES * coveredMetres(moments)};
    }

    @Override
    public double margin(double[] parts) {
        return parts[0];
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    /// Where it is placed out of the water nothing is said of the water's part.
    @Override
    public Optional<String> findUnknown(Moments moments) {
        return coveredMetres(moments) < 0
                ? Optional.of(Parts.name(moments, thing)
                        + " isn't wholly under the water where it is placed. Place it within the tank's walls, its top"
                        + " under the surface.")
                : Optional.empty();
    }

    private double coveredMetres(Moments moments) {
        Stage stage = moments.stage();
        boolean isFilled = stage.shot().findTank().flatMap(tank -> tank.water()).isPresent();
        double least = FAR_METRES;
        for (Scene scene : moments.during(line.when())) {
            Body body = scene.things().get(thing);
            double covered = stage.findTank()
                    .filter(_ -> isFilled)
                    .map(walls -> walls.coveredMetres(body))
                    .orElse(FAR_METRES);
            least = Math.min(least, covered);
        }
        return least;
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
            return Optional.of(name + " floats: it lacks " + Lacks.grams(net) + off() + " of weight.");
        }
        String wanted = net < byKilograms ? "; " + Lacks.grams(byKilograms) + " are wanted." : ".";
        return Optional.of(name + " sinks by " + Lacks.grams(net) + off() + wanted);
    }

    @Override
    public List<String> listAttempts(Moments moments) {
        List<String> tried = Sinking.listTried(immersed, waterKilogramsPerMetre3, byKilograms);
        return tried.isEmpty() ? List.of("Open, drain and flood it, or put ballast in: ask float.") : tried;
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
