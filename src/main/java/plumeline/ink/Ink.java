package plumeline.ink;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.UnaryOperator;

/// What is known of ink before a take: its front at a depth, with an interval that holds four times in five.
public final class Ink {
    /// From above this the ink breaks into drops before it lands (common practice).
    public static final double MOST_HEIGHT_METRES = 0.15;

    /// As many takes as this count as all.
    public static final double SURE_SHARE = 0.9;

    /// One take against the next: the arrival's share, 1.28 times 15 % (seeds of a simulation: 12 to 18 %).
    private static final double NEXT_TAKE = 1.21;

    /// Below this Reynolds number no puff is turbulent at all.
    private static final double LEAST_REYNOLDS = 100;

    /// From this Reynolds number on a puff's entrainment no longer changes by more than a fifth.
    private static final double FULL_REYNOLDS = 630;

    /// What a range costs that a law is stretched into.
    private static final double STRETCHED = 1.5;

    /// So many bores from the nozzle a stream has its full shape.
    private static final double NEAR_BORES = 6;

    /// Ink that leaves its nozzle no farther than so many bores goes into one ring (Gharib, Rambod and Shariff, J.
    /// Fluid Mech. 360 (1998) 121, from memory); turbulent rings entrain 0.01 to 0.05 (from memory of Maxworthy
    /// 1974).
    private static final double RING_BORES = 4;

    private static final double RING_LEAST = 0.05;

    private static final double PUFF_LEAST = 0.13;

    /// How much wider than an even stream its head and its outermost billows are at most: from memory of Turner's
    /// (1962) starting plumes, whose caps spread by 0.18 to 0.25 of their way; our flow solver's reach 0.3.
    private static final double HEAD_WIDTH = 1.7;

    /// Half of what 1/n varies by from a puff (n 0.5) to a stream (0.75).
    private static final double EXPONENT_HALF_RANGE = 1.0 / 3;

    private Ink() {}

    /// Predicts the front at a depth.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return what is known
    public static Prediction predict(Descent descent, double depthMetres) {
        Regime regime = descent.regime(depthMetres);
        if (descent.heightMetres() > MOST_HEIGHT_METRES) {
            return new Prediction.Unknown(regime, Prediction.Limit.HEIGHT, descent.heightMetres(), MOST_HEIGHT_METRES);
        }
        if (regime == Regime.PUFF && reynolds(descent.release()) < LEAST_REYNOLDS) {
            return new Prediction.Unknown(
                    regime, Prediction.Limit.PUFF_REYNOLDS, reynolds(descent.release()), LEAST_REYNOLDS);
        }
        if (regime == Regime.STREAM && descent.release().rowMetres() > 0) {
            double most = descent.findSeconds(depthMetres, Regime.PUFF, Coefficients.USUAL)
                            .orElse(0)
                    / 2;
            return new Prediction.Unknown(
                    regime, Prediction.Limit.ROW_SECONDS, descent.release().seconds(), most);
        }
        OptionalDouble seconds = descent.findSeconds(depthMetres);
        if (seconds.isEmpty()) {
            return new Prediction.Never(regime, deepestMetres(descent, regime));
        }
        return new Prediction.Reached(
                regime,
                spread(descent, depthMetres, regime, (r, c) -> descent.findSecondsOrTurn(depthMetres, r, c))
                        .withValue(seconds.getAsDouble()),
                widthOf(descent, depthMetres, regime, (r, c) -> descent.radiusMetres(depthMetres, r, c))
                        .withValue(descent.radiusMetres(depthMetres)),
                spreadOf(descent, depthMetres, regime, (r, c) -> descent.dilution(depthMetres, r, c))
                        .withValue(descent.dilution(depthMetres))
                        .atLeast(1));
    }

    /// Corrects the time at a depth by one reading of a take: the law's times are all as many times too long or short.
    ///
    /// @param descent what was let go, and from where
    /// @param reading when the front was how deep, deeper than the start
    /// @param depthMetres the depth asked about, m, > the start's
    /// @return s, with its interval; empty where the law doesn't know one of the depths
    public static Optional<Estimate> findCorrected(Descent descent, FrontFit.Reading reading, double depthMetres) {
        if (reading.metres() <= descent.startMetres()) {
            return Optional.empty();
        }
        if (predict(descent, reading.metres()) instanceof Prediction.Reached read
                && predict(descent, depthMetres) instanceof Prediction.Reached asked) {
            var sum = new Estimate.Sum();
            double away = Math.log((depthMetres - descent.startMetres()) / (reading.metres() - descent.startMetres()));
            sum.addBothWays(FrontFit.nextTakeRatio());
            sum.addBothWays(Math.exp(EXPONENT_HALF_RANGE * Math.abs(away)));
            double value =
                    asked.seconds().value() * reading.seconds() / read.seconds().value();
            return Optional.of(sum.of(value));
        }
        return Optional.empty();
    }

    /// Gives how far aside the front has gone at a depth, to where the nozzle points.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, that the front comes to
    /// @return from under the nozzle's tip, m
    public static Estimate asideMetres(Descent descent, double depthMetres) {
        Regime regime = descent.regime(depthMetres);
        return spreadOf(descent, depthMetres, regime, (r, c) -> descent.asideMetres(depthMetres, r, c))
                .withValue(descent.asideMetres(depthMetres));
    }

    /// Gives how far ahead of a face the nozzle stands so that the front touches the face at a time: its half-width
    /// then, and how far it has gone aside where the nozzle points to the face.
    ///
    /// @param descent what is let go, and from where
    /// @param seconds the time from the first ink that leaves the nozzle, s
    /// @return the horizontal gap from nozzle to face, m
    public static Estimate aheadMetres(Descent descent, double seconds) {
        double depth = descent.frontMetres(seconds);
        Estimate ahead = widthOf(descent, depth, descent.regime(depth), (r, c) -> {
            double there = descent.frontMetres(seconds, r, c);
            return descent.radiusMetres(there, r, c) + descent.asideMetres(there, r, c);
        });
        return ahead.withValue(descent.radiusMetres(depth) + descent.asideMetres(depth));
    }

    /// Gives the depth of the front at a time.
    ///
    /// @param descent what is let go, and from where
    /// @param seconds the time from the first ink that leaves the nozzle, s
    /// @return depth below the surface, m
    public static Estimate frontMetres(Descent descent, double seconds) {
        double depth = descent.frontMetres(seconds);
        return spreadOf(descent, depth, descent.regime(depth), (r, c) -> descent.frontMetres(seconds, r, c))
                .withValue(depth);
    }

    /// Gives the deepest that the front goes.
    ///
    /// @param descent what is let go, and from where
    /// @param regime how it comes down
    /// @return depth below the surface, m; endless (infinite) for ink that doesn't turn
    public static Estimate deepestMetres(Descent descent, Regime regime) {
        double start = descent.startMetres();
        double deepest = descent.deepestMetres(regime, Coefficients.USUAL);
        return Double.isInfinite(deepest) || deepest == start
                ? new Estimate(deepest, deepest, deepest)
                : spreadOf(descent, deepest, regime, (r, c) -> descent.deepestMetres(r, c) - start)
                        .plus(start);
    }

    /// Gives how many takes come to a depth at all.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return share of takes, 0 to 1; 1 for ink that doesn't turn
    public static double comingShare(Descent descent, double depthMetres) {
        Estimate deepest = deepestMetres(descent, descent.regime(depthMetres));
        if (Double.isInfinite(deepest.value())) {
            return 1;
        }
        double start = descent.startMetres();
        return deepest.value() == start ? 0 : 1 - deepest.plus(-start).oddsUnder(depthMetres - start);
    }

    private static double reynolds(Release release) {
        double weight = Math.sqrt(Math.abs(release.buoyancyMetres4PerSecond2()));
        return Math.max(weight / release.viscosityMetres2PerSecond(), release.reynolds());
    }

    /// A value that a regime and its coefficients give.
    private interface Law {
        OptionalDouble find(Regime regime, Coefficients coefficients);

        /// How many times more it may be than any coefficient makes it.
        default double more(Regime unused) {
            return 1;
        }
    }

    private interface Sure {
        double of(Regime regime, Coefficients coefficients);
    }

    private static Estimate spreadOf(Descent descent, double depthMetres, Regime regime, Sure law) {
        return spread(descent, depthMetres, regime, (r, c) -> OptionalDouble.of(law.of(r, c)));
    }

    /// A width, as far as it is seen: a stream's law is of the even stream that carries as much.
    private static Estimate widthOf(Descent descent, double depthMetres, Regime regime, Sure law) {
        return spread(descent, depthMetres, regime, new Law() {
            @Override
            public OptionalDouble find(Regime in, Coefficients coefficients) {
                return OptionalDouble.of(law.of(in, coefficients));
            }

            @Override
            public double more(Regime in) {
                return in == Regime.STREAM ? HEAD_WIDTH : 1;
            }
        });
    }

    /// The law's value and interval, which covers what the law of another regime says as far as that is near.
    private static Estimate spread(Descent descent, double depthMetres, Regime regime, Law law) {
        Estimate estimate = spreadAlone(descent, depthMetres, regime, law);
        Borders borders = Borders.of(descent, depthMetres);
        for (Regime other : Regime.values()) {
            double share = other == regime ? 0 : borders.share(other, regime);
            if (share > 0 && law.find(other, Coefficients.USUAL).isPresent()) {
                estimate = estimate.covering(spreadAlone(descent, depthMetres, other, law), share);
            }
        }
        return estimate;
    }

    private static Estimate spreadAlone(Descent descent, double depthMetres, Regime regime, Law law) {
        double value = law.find(regime, Coefficients.USUAL).orElseThrow();
        var sum = new Estimate.Sum();
        Release release = descent.release();
        switch (regime) {
            case PUFF -> {
                vary(sum, value, regime, law, c -> c.withPuffEntrainment(leastEntrainment(release)));
                vary(sum, value, regime, law, c -> c.withPuffEntrainment(0.34));
                vary(sum, value, regime, law, c -> c.withAddedMass(0.5));
            }
            case STREAM -> {
                vary(sum, value, regime, law, c -> c.withStreamEntrainment(0.10));
                vary(sum, value, regime, law, c -> c.withStreamEntrainment(0.16));
                vary(sum, value, regime, law, c -> c.withFrontShare(0.5));
                vary(sum, value, regime, law, c -> c.withFrontShare(1.1));
            }
            case LAMINAR -> sum.addBothWays(2);
        }
        if (descent.heightMetres() > 0) {
            vary(sum, value, regime, law, c -> c.withKeptPush(0.25));
            vary(sum, value, regime, law, c -> c.withKeptPush(1));
        }
        sum.addBothWays(NEXT_TAKE);
        sum.add(law.more(regime));
        if (regime == Regime.PUFF && reynolds(release) < FULL_REYNOLDS) {
            sum.addBothWays(STRETCHED);
        }
        double way = depthMetres - descent.startMetres();
        if (regime == Regime.STREAM && way < NEAR_BORES * release.boreMetres()) {
            sum.addBothWays(STRETCHED);
        }
        return sum.of(value);
    }

    /// The least that a puff entrains: a puff's, or a ring's where all of the ink goes into one, by degrees within a
    /// factor of two of the border.
    private static double leastEntrainment(Release release) {
        if (release.speedMetresPerSecond() == 0) {
            return PUFF_LEAST;
        }
        double bores = release.speedMetresPerSecond() * release.seconds() / release.boreMetres();
        double ring = Math.clamp((1 - Math.log(bores / RING_BORES) / Math.log(2)) / 2, 0, 1);
        return PUFF_LEAST * Math.pow(RING_LEAST / PUFF_LEAST, ring);
    }

    /// Adds what another coefficient does; where the front then never comes, it counts as half as fast.
    private static void vary(
            Estimate.Sum sum, double value, Regime regime, Law law, UnaryOperator<Coefficients> change) {
        double other = law.find(regime, change.apply(Coefficients.USUAL)).orElse(2 * value);
        sum.add(value == 0 ? 1 : other / value);
    }
}
