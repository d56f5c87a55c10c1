package plumeline.ink;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/// Takes that nobody filmed. The laws are written down here once more, as the reference has them, so that nothing rests
/// on the room's.
final class SyntheticTakes {
    private static final double NU = 1e-6;
    private static final double STRENGTH_SPREAD = 0.35;
    private static final double START_SPREAD_SECONDS = 0.05;
    private static final double POWER_METRES = 0.1;

    private final Random random;
    private final Kind kind;
    private final double puffGrowth;
    private final double addedMass;
    private final double streamGrowth;
    private final double frontShare;
    private final double slowness;
    private final double exponent;
    private final Truth truth;
    private final double scatter;
    private final double rate;
    private final double timeDeviation;
    private final double depthDeviation;
    private final double startSeconds;

    /// What sort of release.
    enum Kind {
        PUFF,
        /// A puff with so much push that it counts.
        SQUIRT,
        STREAM
    }

    /// What one crew's ink has to itself.
    enum Truth {
        /// The laws' coefficients, drawn from the published ranges; takes off by 12 to 18 %, read off by half a frame
        /// to a frame and 2 to 5 mm, counted from a frame that may be the wrong one.
        COEFFICIENTS,
        /// The strength, off the law's by a factor of e to ± 0.35; takes off by 15 %, read off by 0.05 to 0.10 s and
        /// 5 mm, counted from an instant off by 0.05 s.
        STRENGTH,
        /// The same, but with fronts that go by a power of time (common practice: n 0.5 for a puff to 0.75 for a
        /// stream) and so deep in 0.1 m as the law has it.
        POWER
    }

    SyntheticTakes(Random random, Kind kind, Truth truth) {
        this.random = random;
        this.kind = kind;
        this.truth = truth;
        rate = new double[] {24, 25, 50, 60, 120}[random.nextInt(5)];
        if (truth == Truth.COEFFICIENTS) {
            puffGrowth = between(0.13, 0.34);
            addedMass = random.nextBoolean() ? 0.5 * random.nextDouble() : random.nextInt(2) * 0.5;
            streamGrowth = between(0.10, 0.16);
            frontShare = between(0.5, 0.9);
            slowness = 1;
            scatter = between(0.12, 0.18);
            timeDeviation = between(0.5, 1) / rate;
            depthDeviation = between(0.002, 0.005);
            startSeconds = (random.nextInt(3) - 1) / rate;
        } else {
            puffGrowth = 0.25;
            addedMass = 0;
            streamGrowth = 0.13;
            frontShare = 0.6;
            slowness = Math.exp(STRENGTH_SPREAD * random.nextGaussian());
            scatter = 0.15;
            timeDeviation = between(0.05, 0.10);
            depthDeviation = 0.005;
            startSeconds = START_SPREAD_SECONDS * random.nextGaussian();
        }
        exponent = truth != Truth.POWER ? 0 : kind == Kind.STREAM ? between(0.60, 0.80) : between(0.45, 0.65);
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    /// A release of the kind, with room to spare to the others.
    Descent descent() {
        double volume = between(2e-6, 12e-6);
        double reduced = between(0.1, 0.8);
        double depth = -between(0, 0.02);
        if (kind == Kind.PUFF) {
            return new Descent(new Release(volume, reduced, between(0.004, 0.010), 0, NU), depth);
        }
        if (kind == Kind.SQUIRT) {
            // Out within 50 ms, far sooner than the front has gone 4 cm.
            double speed = between(0.1, 0.5);
            double bore = Math.sqrt(4 * volume / (Math.PI * speed * 0.05));
            return new Descent(new Release(volume, reduced, bore, speed, NU), depth);
        }
        // Long enough that it still flows when the front has gone 20 cm.
        double bore = random.nextBoolean() ? between(0.003, 0.008) : between(0.015, 0.025);
        var stream = new Descent(Release.ofSqueeze(20 * volume, reduced, bore, between(8, 20), NU), depth);
        return isStream(stream, 0.04) && isStream(stream, 0.20) ? stream : descent();
    }

    private static boolean isStream(Descent descent, double way) {
        return Borders.of(descent, descent.startMetres() + way).weight(Regime.STREAM) == 1;
    }

    /// The same with one or all of volume, weight and nozzle changed by up to a factor of two.
    Descent other(Descent from) {
        Release one = from.release();
        double volume = one.volumeMetres3() * Math.exp(between(-0.7, 0.7));
        double reduced = one.reducedGravityMetresPerSecond2() * Math.exp(between(-0.7, 0.7));
        double bore = one.boreMetres() * Math.exp(between(-0.4, 0.4));
        double speed = one.speedMetresPerSecond() * Math.exp(between(-0.4, 0.4));
        return new Descent(new Release(volume, reduced, bore, speed, NU), from.heightMetres());
    }

    /// When the front of this crew's ink is at a depth, take after take on the average.
    double seconds(Descent descent, double depth) {
        double way = depth + descent.heightMetres();
        return truth == Truth.POWER
                ? law(descent.release(), POWER_METRES) * Math.pow(way / POWER_METRES, 1 / exponent)
                : law(descent.release(), way);
    }

    private double law(Release r, double way) {
        if (kind != Kind.STREAM) {
            double a = 3 / (Math.PI * (1 + addedMass) * Math.pow(puffGrowth, 3));
            double z0 = Math.cbrt(3 * r.volumeMetres3() / (4 * Math.PI)) / puffGrowth;
            double x = (Math.pow(way + z0, 4) - Math.pow(z0, 4)) / a;
            double push = r.volumeMetres3() * r.speedMetresPerSecond();
            double weight = r.reducedGravityMetresPerSecond2() * r.volumeMetres3();
            return slowness * 2 * x / (push + Math.sqrt(push * push + 2 * weight * x));
        }
        double flux = r.reducedGravityMetresPerSecond2() * r.volumeFluxMetres3PerSecond();
        double plume = 5 / (6 * streamGrowth) * Math.cbrt(0.9 * streamGrowth * flux / Math.PI);
        double push = r.volumeFluxMetres3PerSecond() * r.speedMetresPerSecond();
        double jet = Math.sqrt(push / Math.PI) / (1.2 * streamGrowth);
        double seconds = 0;
        int steps = 100;
        for (int i = 0; i < steps; i++) {
            double z = (i + 0.5) / steps * way;
            double w = Math.cbrt(Math.pow(plume / Math.cbrt(z), 3) + Math.pow(jet / z, 3));
            seconds += way / steps / (frontShare * w);
        }
        return slowness * seconds;
    }

    double nextTake(Descent descent, double depth) {
        return seconds(descent, depth) * Math.exp(scatter * random.nextGaussian());
    }

    /// A take with a few readings, as a crew that knows its rate and writes an honest ± would hand it in.
    ReadTake take(Descent descent, int readings, int widths) {
        double off = Math.exp(scatter * random.nextGaussian());
        double first = -descent.heightMetres() + between(0.04, 0.07);
        double step = between(0.04, 0.12) / Math.max(1, readings - 1);
        List<ReadTake.FrontReading> fronts = new ArrayList<>();
        List<ReadTake.WidthReading> wide = new ArrayList<>();
        for (int i = 0; i < readings; i++) {
            double depth = first + i * step;
            double seconds = seconds(descent, depth) * off + startSeconds + timeDeviation * random.nextGaussian();
            double read = Math.max(depth + depthDeviation * random.nextGaussian(), -descent.heightMetres() + 0.01);
            fronts.add(new ReadTake.FrontReading(Math.max(seconds, 0.5 / rate), timeDeviation, read, depthDeviation));
        }
        for (int i = 0; i < widths; i++) {
            double depth = first + i * step;
            double way = depth + descent.heightMetres();
            double radius = kind != Kind.STREAM
                    ? Math.cbrt(3 * descent.release().volumeMetres3() / (4 * Math.PI)) + puffGrowth * way
                    : descent.release().boreMetres() / 2 + 1.2 * streamGrowth * way;
            double half = radius * Math.exp(0.1 * random.nextGaussian());
            wide.add(new ReadTake.WidthReading(depth, half, depthDeviation));
        }
        return new ReadTake(descent, 1 / rate, fronts, wide);
    }

    /// When the front is at a depth on the average, as someone guesses it best from one take who knows from what all is
    /// drawn but not what was: the mean of ln S after the readings, on a grid. For [Truth#STRENGTH].
    double bestSeconds(ReadTake take, double depth) {
        List<Known> readings =
                take.fronts().stream().map(front -> known(take, front)).toList();
        double both = STRENGTH_SPREAD * STRENGTH_SPREAD + scatter * scatter;
        double sum = 0;
        double mean = 0;
        for (int i = -300; i <= 300; i++) {
            double slower = 0.006 * i;
            double likely = Math.exp(logLikelihood(readings, slower) - slower * slower / both / 2);
            sum += likely;
            mean += likely * slower;
        }
        double share = STRENGTH_SPREAD * STRENGTH_SPREAD / both;
        return seconds(take.descent(), depth) / slowness * Math.exp(share * mean / sum);
    }

    /// A reading, what the law has in its place, and how that grows with depth.
    private record Known(double seconds, double lawSeconds, double secondsPerMetre) {}

    private Known known(ReadTake take, ReadTake.FrontReading front) {
        double law = seconds(take.descent(), front.depthMetres()) / slowness;
        double further = seconds(take.descent(), front.depthMetres() + 0.001) / slowness;
        return new Known(front.seconds(), law, (further - law) / 0.001);
    }

    /// Readings' errors are independent and normal, and so is the start's, which all share: its own mean taken out.
    private double logLikelihood(List<Known> readings, double slower) {
        double logs = 0;
        double weights = 1 / (START_SPREAD_SECONDS * START_SPREAD_SECONDS);
        double pulls = 0;
        double squares = 0;
        for (Known reading : readings) {
            double depth = reading.secondsPerMetre * Math.exp(slower) * depthDeviation;
            double variance = timeDeviation * timeDeviation + depth * depth;
            double off = reading.seconds - reading.lawSeconds * Math.exp(slower);
            logs -= Math.log(variance) / 2;
            weights += 1 / variance;
            pulls += off / variance;
            squares += off * off / variance;
        }
        return logs - (squares - pulls * pulls / weights + Math.log(weights)) / 2;
    }
}
