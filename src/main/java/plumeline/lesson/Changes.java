package plumeline.lesson;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import plumeline.ink.Descent;
import plumeline.ink.Ink;
import plumeline.ink.Learnt;
import plumeline.ink.Release;
import plumeline.take.Conditions;

/// Tries everything that can be changed alone, in steps that a hand can set, and finds what brings the front best.
final class Changes {
    /// Odds that differ by less are as good, and the lesser change is taken.
    private static final double AS_GOOD = 0.02;

    /// A change is worth a take where it adds so much to the odds.
    private static final double WORTH = 0.05;

    private static final double HEIGHT_STEP_METRES = 0.005;
    private static final int HEIGHT_STEPS = 16;

    /// A front needs some way before it is one.
    private static final double LEAST_WAY_SHARE = 0.25;

    private static final double[] BORES = {0.001, 0.0015, 0.002, 0.003, 0.004, 0.005, 0.006, 0.008, 0.010, 0.012};

    private final Learnt learnt;
    private final Target target;
    private final Target.Time.At wanted;
    private final Conditions.Told told;
    private final Descent now;
    private final List<Change> tried = new ArrayList<>();

    private Changes(Learnt learnt, Target target, Target.Time.At wanted, Conditions.Told told) {
        this.learnt = learnt;
        this.target = target;
        this.wanted = wanted;
        this.told = told;
        now = TakeNumbers.descent(told);
    }

    /// The best change; empty where none is worth it.
    static Optional<Change> findBest(Learnt learnt, Target target, Target.Time.At wanted, Conditions.Told told) {
        Changes changes = new Changes(learnt, target, wanted, told);
        changes.tryHeights();
        changes.tryVolumes();
        changes.tryOutlets();
        double odds = changes.odds(changes.now);
        double best = changes.tried.stream().mapToDouble(Change::odds).max().orElse(0);
        return changes.tried.stream()
                .filter(change -> change.odds() >= odds + WORTH && change.odds() >= best - AS_GOOD)
                .min(Comparator.comparingDouble(Changes::effort));
    }

    /// How much is changed: a height by tenths of a metre, anything else by its logarithm.
    private static double effort(Change change) {
        return change.what() == Change.What.HEIGHT
                ? Math.abs(change.to() - change.from()) / 0.1
                : Math.abs(Math.log(change.to() / change.from()));
    }

    private double odds(Descent descent) {
        double way = target.depthMetres() - descent.startMetres();
        return way < LEAST_WAY_SHARE * target.depthMetres() || descent.heightMetres() > Ink.MOST_HEIGHT_METRES
                ? 0
                : learnt.odds(
                        descent,
                        target.depthMetres(),
                        wanted.seconds() - wanted.withinSeconds(),
                        wanted.seconds() + wanted.withinSeconds());
    }

    private void add(Change.What what, double from, double to, Descent descent) {
        tried.add(new Change(what, from, to, descent, odds(descent)));
    }

    private void tryHeights() {
        for (int i = -HEIGHT_STEPS; i <= HEIGHT_STEPS; i++) {
            double to = now.heightMetres() + i * HEIGHT_STEP_METRES;
            if (i != 0) {
                add(Change.What.HEIGHT, now.heightMetres(), to, new Descent(now.release(), to));
            }
        }
    }

    private void tryVolumes() {
        double volume = now.release().volumeMetres3();
        double step = volume >= 2e-6 ? 0.5e-6 : 0.1e-6;
        for (double to = Math.ceil(volume / 2 / step) * step; to <= 2 * volume; to += step) {
            if (Math.abs(to - volume) > step / 10) {
                add(Change.What.VOLUME, volume, to, now.with(withVolume(to)));
            }
        }
    }

    /// A squeeze that lasts as long brings more ink faster.
    private Release withVolume(double volume) {
        Release release = now.release();
        return told.outlet() instanceof Conditions.Outlet.Squeezed squeezed
                ? squeezed(volume, squeezed.bore().si(), squeezed.time().si())
                : release.withVolume(volume);
    }

    private Release squeezed(double volume, double bore, double seconds) {
        Release release = now.release();
        return Release.ofSqueeze(
                volume, release.reducedGravityMetresPerSecond2(), bore, seconds, release.viscosityMetres2PerSecond());
    }

    private void tryOutlets() {
        Release release = now.release();
        double volume = release.volumeMetres3();
        switch (told.outlet()) {
            case Conditions.Outlet.AtOnce() -> {}
            case Conditions.Outlet.Squeezed squeezed -> {
                double bore = squeezed.bore().si();
                double seconds = squeezed.time().si();
                double step = seconds > 0.5 ? 0.1 : 0.05;
                for (double to = Math.ceil(seconds / 2 / step) * step; to <= 2 * seconds; to += step) {
                    add(Change.What.SQUEEZE, seconds, to, now.with(squeezed(volume, bore, to)));
                }
                for (double to : BORES) {
                    add(Change.What.BORE, bore, to, now.with(squeezed(volume, to, seconds)));
                }
            }
            case Conditions.Outlet.AtSpeed fast -> {
                double speed = fast.speed().si();
                for (int tenths = 5; tenths <= 20; tenths++) {
                    double to = speed * tenths / 10;
                    add(Change.What.SPEED, speed, to, now.with(release.withSpeed(to)));
                }
            }
        }
    }
}
