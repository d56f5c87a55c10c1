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
            return of(FrontFit.of(readings), depthMetres, descent.regime(depthMetres));
        }
        if (readings.size() == 1) {
            Optional<Estimate> corrected = Ink.findCorrected(descent, readings.getFirst(), depthMetres);
            if (corrected.isPresent()) {
                return new At(corrected.get());
            }
            double read = readings.getFirst().metres();
            if (read > descent.startMetres() && Ink.predict(descent, read) instanceof Prediction.Never never) {
                return new Unknown(new Prediction.Unknown(
                        never.regime(),
                        Prediction.Limit.READING,
                        read,
                        never.deepestMetres().value()));
            }
        }
        return switch (law) {
            case Prediction.Reached reached -> new At(reached.seconds());
            case Prediction.Never never -> new Never(never.deepestMetres());
            case Prediction.Unknown unknown -> new Unknown(unknown);
        };
    }

    /// Takes the word of a line through readings, where it is a front's.
    ///
    /// @param fit the line
    /// @param metres the depth or way that it is asked for, m, > 0
    /// @param regime how the ink comes down
    /// @return when the front is there
    static Arrival of(FrontFit fit, double metres, Regime regime) {
        if (fit.isFront()) {
            return new At(fit.seconds(metres));
        }
        double bound = Math.clamp(fit.exponent(), FrontFit.LEAST_EXPONENT, FrontFit.MOST_EXPONENT);
        return new Unknown(new Prediction.Unknown(regime, Prediction.Limit.EXPONENT, fit.exponent(), bound));
    }
}
