package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import plumeline.stage.Immersed;
import plumeline.water.Vessel;

/// What was measured of a hung thing and may be off: which of it decides whether it hangs as wanted.
///
/// Each measure is moved to its ends by itself; what that takes from a part of the margin is added as a root of the sum
/// of squares, as far as they are together likely to be off.
///
/// @param offs the measures that may be off
record Doubt(List<Off> offs) {
    /// A measure with the vessels at its ends.
    ///
    /// @param measure the measure
    /// @param vessels the vessel as it would be then
    record Off(Immersed.Measure measure, List<Vessel> vessels) {
        Off {
            vessels = List.copyOf(vessels);
        }
    }

    Doubt {
        offs = List.copyOf(offs);
    }

    /// Reads what may be off.
    ///
    /// @param moved the thing at the ends of each measure
    /// @param held the vessel as it is held before it is let go
    static Doubt of(List<Immersed.Moved> moved, Function<Vessel, Vessel> held) {
        List<Off> offs = new ArrayList<>();
        for (Immersed.Moved each : moved) {
            List<Vessel> vessels = new ArrayList<>();
            for (Immersed end : each.ends()) {
                if (end.body() instanceof Immersed.Body.Of(Vessel vessel, var _)) {
                    vessels.add(held.apply(vessel));
                }
            }
            offs.add(new Off(each.measure(), vessels));
        }
        return new Doubt(offs);
    }

    /// Finds the measure that decides.
    ///
    /// @param parts the margin's parts, each at least 0
    /// @param there the same of another vessel
    /// @return the measure that takes most of a part that may be used up; empty where none may
    Optional<Immersed.Measure> findDeciding(double[] parts, Function<Vessel, double[]> there) {
        List<double[]> taken = new ArrayList<>();
        for (Off off : offs) {
            double[] most = new double[parts.length];
            for (Vessel vessel : off.vessels()) {
                double[] moved = there.apply(vessel);
                for (int i = 0; i < parts.length; i++) {
                    most[i] = Math.max(most[i], parts[i] - moved[i]);
                }
            }
            taken.add(most);
        }
        for (int i = 0; i < parts.length; i++) {
            int part = i;
            ToDoubleFunction<double[]> square = each -> each[part] * each[part];
            if (Math.sqrt(taken.stream().mapToDouble(square).sum()) > parts[part]) {
                return Optional.of(offs.get(mostOf(taken, part)).measure());
            }
        }
        return Optional.empty();
    }

    private static int mostOf(List<double[]> taken, int part) {
        int most = 0;
        for (int i = 1; i < taken.size(); i++) {
            most = taken.get(i)[part] > taken.get(most)[part] ? i : most;
        }
        return most;
    }

    /// Says which measure decides, and how to measure it more closely.
    ///
    /// @param does the thing's name and what it does, such as `hero hangs`
    /// @param measure the measure
    static String sentence(String does, Immersed.Measure measure) {
        return does + " as wanted by what was measured, but that may be off so far that it doesn't; most by "
                + switch (measure) {
                    case MASS -> "its mass: weigh it more closely.";
                    case EMPTY_MASS -> "its empty mass: weigh it more closely.";
                    case DISPLACES ->
                        "what it displaces: push it just under in a jug on a finer scale; the grams gained are the"
                                + " millilitres.";
                    case FORM ->
                        "its volume, which is taken from its form, ± 5 %: push it just under in a jug on a kitchen"
                                + " scale; the grams gained are the millilitres it displaces.";
                    case CENTRE_OF_MASS -> "its centre of mass: balance it on a ruler more closely.";
                    case CENTRE_OF_VOLUME -> "its centre of volume: measure its outline more closely.";
                    case CONTENTS -> "how much is in it: weigh it full and empty.";
                    case CONTENTS_DENSITY -> "its contents' density: weigh 100 ml of them.";
                    case AIR -> "the air in it: fill its headspace up from a weighed jug.";
                    case WALL -> "its wall's density: weigh a piece of it, in air and held under in a jug on a scale.";
                    case BASE_AIR -> "the air under its base: tilt it under water until none is left.";
                };
    }
}
