package plumeline.ink;

import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Predicate;
import plumeline.ranges.Ranges;
import plumeline.roots.Roots;

/// What is known of one release before its take: when its front is how deep, and how wide it is there. Read from takes,
/// or by the laws. Depths count from the still surface, times from the first ink that leaves the nozzle.
public sealed interface Plume {
    /// What a plume's half-width is, as crews measure it.
    ///
    /// **Source:** a fifth of its way, 0.15 to 0.25: common practice.
    Width.Share USUAL_WIDTH = new Width.Share(0.2, 1.3);

    /// How deep the initial front is: the mouth, or the surface below it.
    ///
    /// @return m, ≥ 0
    double startMetres();

    /// Gives when the front is at a depth.
    ///
    /// @param depthMetres m below the surface, > the start's
    /// @return when
    Arrival arrival(double depthMetres);

    /// Gives how many takes come to a depth at all.
    ///
    /// @param depthMetres m below the surface, > the start's
    /// @return share of takes, 0 to 1; 1 for ink that doesn't turn
    double comingShare(double depthMetres);

    /// Gives the front's half-width at a depth; about as wide the plume stays there behind it.
    ///
    /// @param depthMetres m below the surface, ≥ the start's
    /// @return m
    Estimate radiusMetres(double depthMetres);

    /// Half-width.
    sealed interface Width {
        /// A share of the way from the initial front.
        ///
        /// @param share half-width over way, > 0
        /// @param ratio how many times more or less it is at most, four times in five
        record Share(double share, double ratio) implements Width {
            /// Checks the ranges.
            ///
            /// @throws IllegalArgumentException outside them
            public Share {
                Ranges.checkPositive(share, "half-width over way");
            }

            private Estimate metres(double way) {
                double metres = share * way;
                return new Estimate(metres, metres / ratio, metres * ratio);
            }
        }

        /// As the laws have it.
        record ByLaw() implements Width {}
    }

    /// A front that two readings or more fix as `z = k tⁿ`, z being the way from the initial front.
    ///
    /// @param fit the line through the readings, by their ways
    /// @param startMetres the next take's initial front, m below the surface, ≥ 0
    /// @param width its half-width
    record Read(FrontFit fit, double startMetres, Width.Share width) implements Plume {
        @Override
        public Arrival arrival(double depthMetres) {
            return Arrival.of(fit, depthMetres - startMetres, Regime.PUFF);
        }

        @Override
        public double comingShare(double depthMetres) {
            return 1;
        }

        @Override
        public Estimate radiusMetres(double depthMetres) {
            return width.metres(depthMetres - startMetres);
        }
    }

    /// A front by the laws, one reading or none.
    ///
    /// @param descent what is let go, and from where
    /// @param off the same with one input moved by what it may be off, either way, four times in five
    /// @param readings one reading or none
    /// @param width its half-width
    record ByLaw(Descent descent, List<Descent> off, List<FrontFit.Reading> readings, Width width) implements Plume {
        /// Copies the lists.
        public ByLaw {
            off = List.copyOf(off);
            readings = List.copyOf(readings);
        }

        @Override
        public double startMetres() {
            return descent.startMetres();
        }

        @Override
        public Arrival arrival(double depthMetres) {
            Prediction law = Ink.predict(descent, depthMetres);
            Arrival known = Arrival.of(law, descent, readings, depthMetres);
            return known instanceof Arrival.At(Estimate seconds)
                    ? new Arrival.At(withInputs(seconds, depthMetres))
                    : known;
        }

        @Override
        public double comingShare(double depthMetres) {
            return Ink.comingShare(descent, depthMetres);
        }

        /// Widens an interval by what the inputs may be off. A reading knows the ink better than its recipe does.
        private Estimate withInputs(Estimate seconds, double depth) {
            boolean isRead = !readings.isEmpty()
                    && Ink.findCorrected(descent, readings.getFirst(), depth).isPresent();
            if (off.isEmpty() || isRead) {
                return seconds;
            }
            var sum = new Estimate.Sum();
            sum.add(seconds.low() / seconds.value());
            sum.add(seconds.high() / seconds.value());
            Regime regime = descent.regime(depth);
            OptionalDouble own = descent.findSeconds(depth, regime, Coefficients.USUAL);
            for (Descent other : off) {
                OptionalDouble there = other.findSeconds(depth, regime, Coefficients.USUAL);
                sum.add(there.orElse(2 * own.orElseThrow()) / own.orElseThrow());
            }
            return sum.of(seconds.value());
        }

        @Override
        public Estimate radiusMetres(double depthMetres) {
            return switch (width) {
                case Width.Share share -> share.metres(depthMetres - startMetres());
                case Width.ByLaw() ->
                    Ink.predict(descent, depthMetres) instanceof Prediction.Reached reached
                            ? reached.radiusMetres()
                            : USUAL_WIDTH.metres(depthMetres - startMetres());
            };
        }
    }

    /// A front by the laws as takes of the same ink have taught them, of this release or another.
    ///
    /// @param descent what is let go, and from where
    /// @param learnt what its takes have taught
    record Taught(Descent descent, Learnt learnt) implements Plume {
        @Override
        public double startMetres() {
            return descent.startMetres();
        }

        @Override
        public Arrival arrival(double depthMetres) {
            return Arrival.of(learnt.predict(descent, depthMetres), descent, List.of(), depthMetres);
        }

        @Override
        public double comingShare(double depthMetres) {
            return Ink.comingShare(descent, depthMetres);
        }

        @Override
        public Estimate radiusMetres(double depthMetres) {
            return learnt.predict(descent, depthMetres) instanceof Prediction.Reached reached
                    ? reached.radiusMetres()
                    : USUAL_WIDTH.metres(depthMetres - startMetres());
        }
    }

    /// Gives how deep the front is at a time: the depths at which it is then by its time, and by that time's interval.
    ///
    /// @param seconds s, > 0
    /// @param floorMetres where it ends, m below the surface, > the start's
    /// @return m below the surface, from the start's to the floor's
    default Estimate frontMetres(double seconds, double floorMetres) {
        return new Estimate(
                deepest(floorMetres, arrived -> arrived.value() <= seconds),
                deepest(floorMetres, arrived -> arrived.high() <= seconds),
                deepest(floorMetres, arrived -> arrived.low() <= seconds));
    }

    private double deepest(double floor, Predicate<Estimate> isThere) {
        return Roots.end(
                depth -> arrival(depth) instanceof Arrival.At(Estimate at) && isThere.test(at), startMetres(), floor);
    }
}
