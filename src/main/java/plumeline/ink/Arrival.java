package plumeline.ink;

import java.util.List;
import java.util.Optional;

/// When a front is at a depth.
public sealed interface Arrival {
    /// It comes.
    ///
    /// @param seconds when, from the first ink that leaves the nozzle, s
    record At(Estimate seconds) implements Arrival {}

    /// It turns before.
    ///
    /// @param deepestMetres the deepest it goes, m below the surface
    record Never(Estimate deepestMetres) implements Arrival {}

    /// No law is known here.
    ///
    /// @param reason what is out of range
    record Unknown(Prediction.Unknown reason) implements Arrival {}

    /// Takes a law's word, unless readings of takes know better: two or more decide, one corrects the law.
    ///
    /// @param law what the law says of the depth
    /// @param descent what is let go, and from where
    /// @param readings readings of earlier takes
    /// @param depthMetres the depth, m below the surface, > the start's
    /// @return when it is there
    static Arrival of(Prediction law, Descent descent, List<FrontFit.Reading> readings, double depthMetres) {
        if (FrontFit.isPossible(readings)) {
            return new At(FrontFit.of(readings).seconds(depthMetres));
        }
        if (readings.size() == 1) {
            Optional<Estimate> corrected = Ink.findCorrected(descent, readings.getFirst(), depthMetres);
            if (corrected.isPresent()) {
                return new At(corrected.get());
            }
        }
        return switch (law) {
            case Prediction.Reached reached -> new At(reached.seconds());
            case Prediction.Never never -> new Never(never.deepestMetres());
            case Prediction.Unknown unknown -> new Unknown(unknown);
        };
    }
}
