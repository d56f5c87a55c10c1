package plumeline.ask.effect;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.ink.Arrival;
import plumeline.ink.Descent;
import plumeline.ink.Estimate;
import plumeline.ink.FrontFit;
import plumeline.ink.FrontFit.Reading;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.ink.Regime;

/// What `ink` finds, in plain SI numbers: a take as the laws have it, or as readings of earlier takes do.
final class InkTake {
    private InkTake() {}

    /// What is asked.
    ///
    /// @param descent what is let go, and from where
    /// @param floorMetres depth of the water
    /// @param topMetres depth of the thing's top
    /// @param aheadMetres horizontal gap from nozzle to thing, where it was given
    /// @param wantedSeconds the time wanted, where it was given
    /// @param readings readings of earlier takes
    record Inputs(
            Descent descent,
            double floorMetres,
            double topMetres,
            OptionalDouble aheadMetres,
            OptionalDouble wantedSeconds,
            List<Reading> readings) {
        Inputs {
            readings = List.copyOf(readings);
        }

        Inputs with(Descent other) {
            return new Inputs(other, floorMetres, topMetres, aheadMetres, wantedSeconds, readings);
        }
    }

    /// How far ahead of the thing's face the nozzle stands so that the front touches it at a time.
    sealed interface Touch {
        /// So far.
        record At(Estimate metres, double depthMetres) implements Touch {}

        /// The front is above the thing then.
        record TooEarly() implements Touch {}

        /// The front is on the floor by then.
        record TooLate() implements Touch {}

        /// It isn't known.
        record Unknown() implements Touch {}
    }

    /// What was found.
    ///
    /// @param inputs what was asked
    /// @param regime how it comes down to the thing's top
    /// @param top when it is at the thing's top
    /// @param floor when it is on the floor
    /// @param law what the law alone says of the thing's top
    /// @param touch where the nozzle stands
    record Found(Inputs inputs, Regime regime, Arrival top, Arrival floor, Prediction law, Touch touch) {
        /// The time for which the nozzle's place is told: the one wanted, else when the front is at the thing's top.
        OptionalDouble findTouchSeconds() {
            if (inputs.wantedSeconds().isPresent()) {
                return inputs.wantedSeconds();
            }
            return top instanceof Arrival.At(Estimate seconds)
                    ? OptionalDouble.of(seconds.value())
                    : OptionalDouble.empty();
        }

        /// How far aside of the nozzle the front is at the thing's top, where a law knows it.
        Optional<Estimate> findAside() {
            return law instanceof Prediction.Reached
                    ? Optional.of(Ink.asideMetres(inputs.descent, inputs.topMetres))
                    : Optional.empty();
        }

        /// How many takes come to the thing's top at all; readings say that they do.
        double comingShare() {
            return inputs.readings.isEmpty() ? Ink.comingShare(inputs.descent, inputs.topMetres) : 1;
        }

        /// How many times the law's time the answer's is.
        double scale() {
            return top instanceof Arrival.At(Estimate seconds) && law instanceof Prediction.Reached reached
                    ? seconds.value() / reached.seconds().value()
                    : 1;
        }
    }

    static Found answer(Inputs inputs) {
        Regime regime = inputs.descent.regime(inputs.topMetres);
        Prediction law = Ink.predict(inputs.descent, inputs.topMetres);
        Arrival top = arrival(inputs, inputs.topMetres, law);
        Arrival floor = arrival(inputs, inputs.floorMetres, Ink.predict(inputs.descent, inputs.floorMetres));
        if (top instanceof Arrival.At(Estimate first) && floor instanceof Arrival.At(Estimate last)) {
            floor = new Arrival.At(new Estimate(
                    Math.max(first.value(), last.value()),
                    Math.max(first.low(), last.low()),
                    Math.max(first.high(), last.high())));
        }
        Found found = new Found(inputs, regime, top, floor, law, new Touch.Unknown());
        return new Found(inputs, regime, top, floor, law, touch(found));
    }

    private static Arrival arrival(Inputs inputs, double depth, Prediction law) {
        return Arrival.of(law, inputs.descent, inputs.readings, depth);
    }

    private static Touch touch(Found found) {
        OptionalDouble time = found.findTouchSeconds();
        if (time.isEmpty() || !(found.law instanceof Prediction.Reached)) {
            return new Touch.Unknown();
        }
        Inputs inputs = found.inputs;
        double seconds = time.getAsDouble();
        if (found.top instanceof Arrival.At(Estimate first) && seconds < first.value() * (1 - 1e-9)) {
            return new Touch.TooEarly();
        }
        if (found.floor instanceof Arrival.At(Estimate last) && seconds > last.value()) {
            return new Touch.TooLate();
        }
        if (found.top instanceof Arrival.Unknown) {
            return new Touch.Unknown();
        }
        if (FrontFit.isPossible(inputs.readings)) {
            double depth = FrontFit.of(inputs.readings).frontMetres(seconds).value();
            double lawsTime = inputs.descent.findSeconds(depth).orElse(0);
            return lawsTime > 0 ? new Touch.At(Ink.aheadMetres(inputs.descent, lawsTime), depth) : new Touch.Unknown();
        }
        double lawSeconds = seconds / found.scale();
        double depth = inputs.descent.frontMetres(lawSeconds);
        return new Touch.At(Ink.aheadMetres(inputs.descent, lawSeconds), depth);
    }

    /// When the front would be at the thing's top after a change, as many times the law's time as now.
    static OptionalDouble findSecondsWith(Found found, Descent descent) {
        double top = found.inputs.topMetres;
        if (descent.startMetres() >= top) {
            return OptionalDouble.empty();
        }
        return Ink.predict(descent, top) instanceof Prediction.Reached reached
                ? OptionalDouble.of(reached.seconds().value() * found.scale())
                : OptionalDouble.empty();
    }
}
