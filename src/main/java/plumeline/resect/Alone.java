package plumeline.resect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// The plainest explanation of a still: that one owner of marks alone, the camera or one thing, is off, all else stands
/// at its mark to the hair, and the camera merely looks a little aside.
///
/// It is one where the clicks then are off no more than clicks are, and where it explains them better than nothing
/// being off does by more than chance would.
///
/// @param owner whose marks are off
/// @param which its numbers, by their index among all
/// @param fit all numbers with only those off
/// @param sum squares that are left, of clicks and aim
record Alone(String owner, List<Integer> which, Fit fit, double sum) {
    /// How many placing errors away the owner may stand.
    static final double WIDER = 25;

    /// By how much the sum of squares must fall against nothing being off, and by how much more for each number.
    private static final double LEAST_FALL = 8;

    private static final double EACH = 2;

    /// Clicks that check each other less than this are held to what so many checks leave.
    private static final double LEAST_CHECKS = 0.5;

    private static final List<String> LOOKS =
            List.of("camera.turn", "camera.tilt", "camera.roll", "camera.focal_length", "camera.focus");

    /// Copies the list.
    Alone {
        which = List.copyOf(which);
    }

    /// The explanations there are, the best first; none where nothing being off explains the clicks, or no single owner
    /// does.
    static List<Alone> listAll(Fit.Task task, List<Sought> sought) {
        Optional<Fit> still = Fit.of(task, belief(sought, ""));
        if (still.isEmpty()) {
            return List.of();
        }
        double before = sum(task, sought, "", still.get());
        List<Alone> all = new ArrayList<>();
        for (String owner : sought.stream().map(Sought::owner).distinct().toList()) {
            List<Integer> which = which(sought, owner);
            Optional<Fit> fit = which.isEmpty() ? Optional.empty() : Fit.of(task, belief(sought, owner));
            if (fit.isPresent() && explains(task, fit.get())) {
                double sum = sum(task, sought, owner, fit.get());
                if (before - sum > LEAST_FALL + EACH * which.size()) {
                    all.add(new Alone(owner, which, fit.get(), sum));
                }
            }
        }
        all.sort(Comparator.comparingDouble(alone -> alone.strain(sought)));
        return all;
    }

    /// How much it asks to be believed: squares that are left, numbers that are off, and how far off they are.
    double strain(List<Sought> sought) {
        double strain = sum;
        for (int index : which) {
            double by = fit.off()[index] / sought.get(index).sigmaSi();
            strain += EACH + Math.log1p(by * by);
        }
        return strain;
    }

    private static List<Integer> which(List<Sought> sought, String owner) {
        List<Integer> which = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            if (sought.get(i).owner().equals(owner) && !isLook(sought.get(i))) {
                which.add(i);
            }
        }
        return which;
    }

    private static boolean isLook(Sought one) {
        return LOOKS.contains(one.name());
    }

    /// What is believed: how the camera looks as always, the owner's marks far off, all else not at all.
    private static double[][] belief(List<Sought> sought, String owner) {
        double[][] belief = new double[sought.size()][sought.size()];
        for (int i = 0; i < sought.size(); i++) {
            belief[i][i] = sigma(sought.get(i), owner);
        }
        return belief;
    }

    private static double sigma(Sought one, String owner) {
        return isLook(one) ? one.sigmaSi() : one.owner().equals(owner) ? WIDER * one.sigmaSi() : 0;
    }

    private static double sum(Fit.Task task, List<Sought> sought, String owner, Fit fit) {
        double sum = clicks(task, fit);
        for (int i = 0; i < fit.off().length; i++) {
            double sigma = sigma(sought.get(i), owner);
            sum += sigma > 0 ? fit.off()[i] * fit.off()[i] / (sigma * sigma) : 0;
        }
        return sum;
    }

    private static double clicks(Fit.Task task, Fit fit) {
        double sum = 0;
        for (int i = 0; i < task.sigmas().length; i++) {
            double by = fit.residual()[i] / task.sigmas()[i];
            sum += by * by;
        }
        return sum;
    }

    /// Whether what is left of the clicks is no more than their error, as far as they check each other.
    private static boolean explains(Fit.Task task, Fit fit) {
        double checks = 0;
        for (int i = 0; i < task.sigmas().length; i++) {
            double[] row = fit.slopes()[i];
            double told = Matrix.dot(row, Matrix.times(fit.covariance(), row));
            checks += 1 - told / (task.sigmas()[i] * task.sigmas()[i]);
        }
        return clicks(task, fit) <= Normal.sumOfSquares999(Math.max(checks, LEAST_CHECKS));
    }

    /// It as a doubt, for a fit in which all else has its placing error again.
    Doubt doubt(int count) {
        return new Doubt.Misplaced(
                owner,
                WIDER,
                which.stream()
                        .map(index -> {
                            double[] way = new double[count];
                            way[index] = 1;
                            return way;
                        })
                        .toList());
    }
}
