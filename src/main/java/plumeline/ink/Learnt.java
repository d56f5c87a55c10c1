package plumeline.ink;

import java.util.List;

/// What takes have taught of an ink: how fast and how wide it comes down, and how far one take is from the next. What
/// it says of a take to come holds four times in five.
public final class Learnt {
    /// One take against the average, before any is known, share of the time, standard deviation.
    ///
    /// **Source:** 12 to 18 % between seeds of a simulation, 18 % fitted to seven of its takes.
    public static final double TAKE_SCATTER = 0.16;

    /// How many times as long, or as short, as on the average a take is at most, four times in five, before any is
    /// known.
    public static final double TAKE_RATIO = Math.exp(Gauss.EIGHTY * TAKE_SCATTER);

    /// How unsteady a width is at one instant, share, standard deviation (our guess: billows).
    public static final double BILLOWS = 0.12;

    /// What a take with another release is off by, share of the time for each factor of e by which the laws say that
    /// its time differs (our guess).
    private static final double CARRIED = 0.20;

    /// A change of height counts as such a factor for each of these, m.
    private static final double HEIGHT_METRES = 0.10;

    /// Stands for the time of a front that never comes so deep.
    private static final double UNREACHED_SECONDS = 1e3;

    private final List<ReadTake> takes;
    private final Learning learning;

    private Learnt(List<ReadTake> takes) {
        this.takes = takes;
        learning = Learning.of(takes);
    }

    /// Learns from takes of one ink.
    ///
    /// @param takes the takes as read, in any order; none is what is known before any
    /// @return what they have taught
    public static Learnt of(List<ReadTake> takes) {
        return new Learnt(List.copyOf(takes));
    }

    /// Gives how many takes it is learnt from.
    ///
    /// @return how many
    public int takes() {
        return takes.size();
    }

    /// Gives how many times as long, or as short, as on the average a take is at most, four times in five.
    ///
    /// @return ratio of times, > 1
    public double takeRatio() {
        return Math.exp(Gauss.EIGHTY * learning.scatter());
    }

    /// Predicts the front at a depth in the next take, as [Ink#predict(Descent, double)] does without takes.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, > the start's
    /// @return what is known
    public Prediction predict(Descent descent, double depthMetres) {
        Prediction law = Ink.predict(descent, depthMetres);
        Unknowns.Law seconds = Unknowns.seconds(descent, depthMetres);
        if (!(law instanceof Prediction.Reached reached)
                || seconds.find(learning.means()).isEmpty()) {
            return law;
        }
        return new Prediction.Reached(
                reached.regime(),
                estimate(seconds, takeVariance(descent, depthMetres)),
                estimate(Unknowns.halfWidth(descent, depthMetres), BILLOWS * BILLOWS),
                estimate(Unknowns.dilution(descent, depthMetres), 0).atLeast(1));
    }

    /// Gives the odds that the front comes to a depth within a span of time, in the next take.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface, m, > the start's
    /// @param fromSeconds begin of the span, s
    /// @param toSeconds its end, s
    /// @return 0 to 1; 0 where the front never comes so deep, or no law is known
    public double odds(Descent descent, double depthMetres, double fromSeconds, double toSeconds) {
        return predict(descent, depthMetres) instanceof Prediction.Reached reached
                ? reached.seconds().odds(fromSeconds, toSeconds)
                : 0;
    }

    /// Gives the strength of a puff: what √((z + z0)⁴ − z0⁴) grows by in a second once it is let go without push.
    ///
    /// @param release what is let go, denser than the water
    /// @return m²/s; without what one take is off by
    public Estimate strengthMetres2PerSecond(Release release) {
        return estimate(Unknowns.strength(release), 0);
    }

    /// Gives how fast the ink comes down over how fast the laws' usual coefficients have it.
    ///
    /// @param descent what is let go, and from where
    /// @param depthMetres depth below the surface that the front comes to, m, > the start's
    /// @return 1 for as fast, 2 for half the time; without what one take is off by
    public Estimate pace(Descent descent, double depthMetres) {
        Estimate seconds = estimate(Unknowns.seconds(descent, depthMetres), 0);
        double usual = descent.findSeconds(depthMetres).orElseThrow();
        return new Estimate(usual / seconds.value(), usual / seconds.high(), usual / seconds.low());
    }

    /// Gives how much the front's half-width grows by, over the way that it has gone.
    ///
    /// @param regime how it comes down
    /// @return dimensionless
    public Estimate growth(Regime regime) {
        return estimate(Unknowns.growth(regime), 0);
    }

    private double takeVariance(Descent descent, double depthMetres) {
        double carried = CARRIED * distance(descent, depthMetres);
        return learning.scatter() * learning.scatter() + Learning.WANDER * Learning.WANDER + carried * carried;
    }

    /// How much the laws have to make up for between a descent and the nearest that was read, in factors of e.
    private double distance(Descent descent, double depthMetres) {
        return takes.stream()
                .mapToDouble(take -> distance(take.descent(), descent, depthMetres))
                .min()
                .orElse(0);
    }

    private static double distance(Descent read, Descent asked, double depthMetres) {
        double higher = Math.abs(read.heightMetres() - asked.heightMetres()) / HEIGHT_METRES;
        double way = depthMetres - asked.startMetres();
        double before = seconds(read, read.startMetres() + way);
        double after = seconds(asked, depthMetres);
        return higher + Math.abs(Math.log(after / before));
    }

    private static double seconds(Descent descent, double depthMetres) {
        return Math.max(1e-3, descent.findSeconds(depthMetres).orElse(UNREACHED_SECONDS));
    }

    private Estimate estimate(Unknowns.Law law, double more) {
        double[] means = learning.means();
        double middle = law.find(means).orElseThrow();
        double[] slopes = law.slopes(means);
        double variance = more + learning.variance(slopes);
        double ratio = Math.exp(Gauss.EIGHTY * Math.sqrt(variance));
        return new Estimate(Math.exp(middle), Math.exp(middle) / ratio, Math.exp(middle) * ratio);
    }
}
