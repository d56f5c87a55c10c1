package plumeline.resect;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.plan.Mark;

/// Finds which readings, clicks and marks alike, are grossly wrong: one after the other, each time the one whose
/// letting go makes the rest agree best, as long as that is beyond four standard deviations; then those are taken back
/// that aren't needed any more.
///
/// By how much the sum of squares falls where some readings are let go is `bᵀ(Bᵀ C⁻¹ B + W⁻¹)⁻¹b` with `b = Bᵀ C⁻¹ y`:
/// y what is left of the clicks with all marks as set, C how that may scatter, B what the doubt adds to it, W how
/// widely.
///
/// **Source:** W. Baarda, "A testing procedure for use in geodetic networks", Netherlands Geodetic Commission 2/5
/// (1968): readings tested one by one against all others. From memory.
final class Doubts {
    /// A mark in doubt is looked for so many times its placing error away.
    private static final double WIDER = 10;

    /// A click in doubt may be anywhere, pixels.
    private static final double ANYWHERE_PIXELS = 1000;

    /// By how much letting go of one reading must at least lower the sum of squares: four standard deviations; and by
    /// how much more for each further one.
    private static final double ONE = 16;

    private static final double FURTHER = 4;

    /// Doubts that lower it by less than this short of the best are as good.
    private static final double AS_GOOD = 6;

    private static final int MOST = 8;

    /// A click that the others check less than this can't be doubted, share of its variance.
    private static final double CHECKED = 0.02;

    private final Fit.Task task;
    private final List<Sought> sought;
    private final List<Doubt> all;
    private final List<Doubt> held = new ArrayList<>();
    private Fit fit;

    private Doubts(Fit.Task task, List<Sought> sought, Fit start) {
        this.task = task;
        this.sought = sought;
        fit = start;
        all = listAll(sought, task.readings().length / 2);
    }

    /// What was found.
    ///
    /// @param fit the fit without what is in doubt
    /// @param doubts what is let go
    /// @param others by doubt, what would explain as much
    /// @param sumOfSquares how far clicks and marks disagree, in squares of what they may
    record Outcome(Fit fit, List<Doubt> doubts, List<List<Other>> others, double sumOfSquares) {
        Outcome {
            doubts = List.copyOf(doubts);
            others = others.stream().map(List::copyOf).toList();
        }

        /// How many readings were let go.
        int countLetGo() {
            return doubts.stream().mapToInt(Doubt::count).sum();
        }

        boolean isMisclick(int point) {
            return doubts.contains(new Doubt.Misclick(point));
        }
    }

    /// What would explain as much as something else.
    static final class Other {
        private final Doubt doubt;
        private final double[] off;

        /// @param doubt what is in doubt then
        /// @param off by how much each unknown would be off by it, SI; all 0 for a click
        Other(Doubt doubt, double[] off) {
            this.doubt = doubt;
            this.off = off;
        }

        Doubt doubt() {
            return doubt;
        }

        double[] off() {
            return off;
        }
    }

    /// Fits and doubts; empty where the start gives nothing.
    static Optional<Outcome> settle(Fit.Task task, List<Sought> sought) {
        return Fit.of(task, belief(sought, List.of())).map(start -> new Doubts(task, sought, start).settle());
    }

    /// Fits with some doubts held and no others looked for.
    static Optional<Outcome> hold(Fit.Task task, List<Sought> sought, List<Doubt> doubts) {
        return Fit.of(task, belief(sought, List.of())).map(start -> {
            Doubts all = new Doubts(task, sought, start);
            all.held.addAll(doubts);
            all.refit();
            return new Outcome(
                    all.fit, doubts, doubts.stream().map(_ -> List.<Other>of()).toList(), all.new State(doubts).sum());
        });
    }

    private Outcome settle() {
        while (held.size() < MOST) {
            Optional<Doubt> worst = worst();
            if (worst.isEmpty()) {
                break;
            }
            held.add(worst.get());
            refit();
        }
        takeBack();
        List<List<Other>> others = new ArrayList<>();
        for (Doubt doubt : held) {
            others.add(asGood(doubt));
        }
        return new Outcome(fit, held, others, new State(held).sum());
    }

    private void refit() {
        fit = Fit.of(task(held), belief(sought, held)).orElse(fit);
    }

    private Optional<Doubt> worst() {
        State state = new State(held);
        Optional<Doubt> worst = Optional.empty();
        double most = 0;
        for (Doubt doubt : all) {
            double beyond = held.contains(doubt) ? 0 : state.fall(doubt) - least(doubt);
            if (beyond > most + 1e-9) {
                most = beyond;
                worst = Optional.of(doubt);
            }
        }
        return worst;
    }

    private void takeBack() {
        for (Doubt doubt : held.size() > 1 ? List.copyOf(held) : List.<Doubt>of()) {
            List<Doubt> rest = held.stream().filter(one -> !one.equals(doubt)).toList();
            if (new State(rest).fall(doubt) < least(doubt)) {
                held.remove(doubt);
                refit();
            }
        }
    }

    /// What else would explain as much as a doubt that is held.
    private List<Other> asGood(Doubt doubt) {
        State state = new State(held.stream().filter(one -> !one.equals(doubt)).toList());
        double fall = state.fall(doubt);
        List<Doubt> others = new ArrayList<>();
        for (Doubt other : all) {
            if (!held.contains(other)
                    && other.count() <= Math.max(2, doubt.count())
                    && state.fall(other) > fall - AS_GOOD
                    && !isPartOf(doubt, other)) {
                others.add(other);
            }
        }
        // Of two that explain as much, the one that lets go of less says it plainer.
        return others.stream()
                .filter(one -> others.stream().noneMatch(other -> other.count() < one.count() && isPartOf(other, one)))
                .map(one -> new Other(one, state.off(one)))
                .toList();
    }

    private static boolean isPartOf(Doubt one, Doubt other) {
        return one instanceof Doubt.Misplaced(String _, double _, List<double[]> few)
                && other instanceof Doubt.Misplaced(String _, double _, List<double[]> many)
                && many.containsAll(few);
    }

    private static double least(Doubt doubt) {
        return ONE + FURTHER * (doubt.count() - 1);
    }

    private Fit.Task task(List<Doubt> doubts) {
        return without(task, doubts);
    }

    /// Clicks with those in doubt said to be anywhere.
    static Fit.Task without(Fit.Task task, List<Doubt> doubts) {
        double[] sigmas = task.sigmas().clone();
        for (Doubt doubt : doubts) {
            if (doubt instanceof Doubt.Misclick(int point)) {
                sigmas[2 * point] = ANYWHERE_PIXELS;
                sigmas[2 * point + 1] = ANYWHERE_PIXELS;
            }
        }
        return new Fit.Task(task.readings(), sigmas, task.figures(), task.steps());
    }

    /// What is believed of the unknowns, one column a way in which they scatter by themselves.
    static double[][] belief(List<Sought> sought, List<Doubt> doubts) {
        List<double[]> columns = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            double[] column = new double[sought.size()];
            column[i] = sought.get(i).sigmaSi();
            columns.add(column);
        }
        for (Doubt doubt : doubts) {
            if (doubt instanceof Doubt.Misplaced(String _, double wider, List<double[]> ways)) {
                ways.forEach(way -> columns.add(wide(sought, way, wider)));
            }
        }
        return Matrix.transposed(columns.toArray(double[][]::new));
    }

    private static double[] wide(List<Sought> sought, double[] way, double wider) {
        double[] wide = way.clone();
        for (int i = 0; i < wide.length; i++) {
            wide[i] *= wider * sought.get(i).sigmaSi();
        }
        return wide;
    }

    /// All that may be in doubt: each mark, those of one owner that belong together, all things by one amount, each
    /// click.
    private static List<Doubt> listAll(List<Sought> sought, int clicks) {
        List<Doubt> all = new ArrayList<>();
        Map<String, List<double[]>> together = new LinkedHashMap<>();
        Map<String, double[]> allThings = new LinkedHashMap<>();
        for (int i = 0; i < sought.size(); i++) {
            Sought one = sought.get(i);
            double[] way = new double[sought.size()];
            way[i] = 1;
            all.add(new Doubt.Misplaced(one.name(), WIDER, List.of(way)));
            boolean isPlace = List.of("x", "y", "z").contains(one.part());
            if (isPlace) {
                together.computeIfAbsent(one.owner() + "'s place", _ -> new ArrayList<>())
                        .add(way);
                if (!List.of("camera", "tank", "release").contains(one.owner())) {
                    // All by one amount, whatever the placing error of each.
                    allThings.computeIfAbsent(one.part(), _ -> new double[sought.size()])[i] =
                            Mark.Kind.TAPE.usualError().fixedSi() / one.errorSi();
                }
            }
        }
        together.forEach((names, ways) -> {
            if (ways.size() > 1) {
                all.add(new Doubt.Misplaced(names, WIDER, ways));
            }
        });
        allThings.forEach((part, way) -> {
            if (Arrays.stream(way).filter(amount -> amount > 0).count() > 1) {
                all.add(new Doubt.Misplaced("every thing's " + part, WIDER, List.of(way)));
            }
        });
        for (int i = 0; i < clicks; i++) {
            all.add(new Doubt.Misclick(i));
        }
        return all;
    }

    /// How clicks and marks agree while some are let go.
    private final class State {
        private final double[] left;
        private final double[][] sharp;
        private final double[] sigmas;

        State(List<Doubt> doubts) {
            double[] given = task(doubts).sigmas();
            double[][] belief = Matrix.times(fit.slopes(), belief(sought, doubts));
            double[][] scatter = Matrix.times(belief, Matrix.transposed(belief));
            for (int i = 0; i < given.length; i++) {
                scatter[i][i] += given[i] * given[i];
            }
            sharp = Matrix.inverse(scatter);
            left = fit.residual().clone();
            double[] moved = Matrix.times(fit.slopes(), fit.off());
            for (int i = 0; i < left.length; i++) {
                left[i] += moved[i];
            }
            sigmas = given;
        }

        double sum() {
            return Matrix.dot(left, Matrix.times(sharp, left));
        }

        /// By how much the sum of squares would fall.
        double fall(Doubt doubt) {
            double[][] adds = adds(doubt);
            double[][] sure = sure(adds);
            if (doubt instanceof Doubt.Misclick(int point) && !isChecked(sure, sigmas[2 * point])) {
                return 0;
            }
            double[] pull = pull(adds);
            return Matrix.dot(pull, amounts(doubt, sure, pull));
        }

        /// By how much each unknown would be off, SI.
        double[] off(Doubt doubt) {
            double[] off = new double[sought.size()];
            if (doubt instanceof Doubt.Misplaced(String _, double wider, List<double[]> ways)) {
                double[][] adds = adds(doubt);
                double[] amounts = amounts(doubt, sure(adds), pull(adds));
                for (int w = 0; w < amounts.length; w++) {
                    double[] wide = wide(sought, ways.get(w), wider);
                    for (int i = 0; i < off.length; i++) {
                        off[i] += amounts[w] * wide[i];
                    }
                }
            }
            return off;
        }

        private double[] pull(double[][] adds) {
            return Matrix.times(Matrix.transposed(adds), Matrix.times(sharp, left));
        }

        private double[][] sure(double[][] adds) {
            return Matrix.times(Matrix.transposed(adds), Matrix.times(sharp, adds));
        }

        private static double[] amounts(Doubt doubt, double[][] sure, double[] pull) {
            double wide = doubt instanceof Doubt.Misclick ? ANYWHERE_PIXELS : 1;
            double[][] surer = sure.clone();
            for (int i = 0; i < sure.length; i++) {
                surer[i] = sure[i].clone();
                surer[i][i] += 1 / (wide * wide);
            }
            return Matrix.times(Matrix.inverse(surer), pull);
        }

        private static boolean isChecked(double[][] sure, double sigma) {
            double half = (sure[0][0] + sure[1][1]) / 2;
            double least = half - Math.hypot((sure[0][0] - sure[1][1]) / 2, sure[0][1]);
            return least * sigma * sigma > CHECKED;
        }

        private double[][] adds(Doubt doubt) {
            List<double[]> columns = new ArrayList<>();
            switch (doubt) {
                case Doubt.Misclick(int point) -> {
                    for (int i = 2 * point; i <= 2 * point + 1; i++) {
                        double[] column = new double[left.length];
                        column[i] = 1;
                        columns.add(column);
                    }
                }
                case Doubt.Misplaced(String _, double wider, List<double[]> ways) ->
                    ways.forEach(way -> columns.add(Matrix.times(fit.slopes(), wide(sought, way, wider))));
            }
            return Matrix.transposed(columns.toArray(double[][]::new));
        }
    }
}
