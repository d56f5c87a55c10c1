package plumeline.resect;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/// The plainest explanation of a still: that one owner of marks alone, the camera or one thing, is off, all else stands
/// at its mark to the hair, and the camera merely looks a little aside. Of the camera there are plainer ones yet: that
/// it only looks aside, and that it only stands elsewhere and looks the way it should; where one of them does nearly as
/// well, its standing elsewhere and looking aside is none.
///
/// It is one where the clicks then are off no more than clicks are, and where it explains them better than nothing
/// being off does by more than chance would.
///
/// @param owner whose marks are off
/// @param what what of the owner is off
/// @param which its numbers, by their index among all
/// @param fit all numbers with only those off
record Alone(String owner, Findings.What what, List<Integer> which, Fit fit) {
    /// How many placing errors away the owner may stand.
    static final double WIDER = 25;

    /// By how much the sum of squares must fall against nothing being off, and by how much more for each number.
    private static final double LEAST_FALL = 8;

    private static final double EACH = 2;

    /// What asks more than this over the best to be believed isn't as good.
    static final double AS_GOOD = 6;

    private static final String CAMERA = "camera";

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
        List<Alone> all = new ArrayList<>();
        Optional<Double> nothing = fallen(task, sought, "", Findings.What.PLACE);
        Optional<Double> aside = fallen(task, sought, "", Findings.What.ALL);
        if (nothing.isEmpty() || aside.isEmpty()) {
            return all;
        }
        find(task, sought, CAMERA, Findings.What.AIM, nothing.get()).ifPresent(all::add);
        find(task, sought, CAMERA, Findings.What.PLACE, nothing.get()).ifPresent(all::add);
        for (String owner : sought.stream().map(Sought::owner).distinct().toList()) {
            find(task, sought, owner, Findings.What.ALL, aside.get())
                    .filter(one -> all.stream().noneMatch(plainer -> isPlainer(plainer, one, sought)))
                    .ifPresent(all::add);
        }
        all.sort(Comparator.comparingDouble(alone -> alone.strain(sought)));
        return all;
    }

    /// Whether it says of the camera where it is or looks.
    boolean isOfCamera() {
        return owner.equals(CAMERA);
    }

    private static boolean isPlainer(Alone plainer, Alone one, List<Sought> sought) {
        return plainer.owner().equals(one.owner()) && plainer.strain(sought) < one.strain(sought) + AS_GOOD;
    }

    /// Squares that are left if an owner alone is off.
    private static Optional<Double> fallen(Fit.Task task, List<Sought> sought, String owner, Findings.What what) {
        return Fit.of(task, belief(sought, owner, what)).map(Fit::sum);
    }

    private static Optional<Alone> find(
            Fit.Task task, List<Sought> sought, String owner, Findings.What what, double before) {
        List<Integer> which = which(sought, owner, what);
        Optional<Fit> fit = which.isEmpty() ? Optional.empty() : Fit.of(task, belief(sought, owner, what));
        return fit.filter(found -> explains(task, found))
                .map(found -> new Alone(owner, what, which, found))
                .filter(found -> before - found.fit().sum() > LEAST_FALL + EACH * which.size());
    }

    /// How much it asks to be believed: squares that are left, numbers that are off, and how far off they are.
    double strain(List<Sought> sought) {
        double strain = fit.sum();
        for (int index : which) {
            double by = fit.off()[index] / sought.get(index).sigmaSi();
            strain += EACH + Math.log1p(by * by);
        }
        return strain;
    }

    private static List<Integer> which(List<Sought> sought, String owner, Findings.What what) {
        List<Integer> which = new ArrayList<>();
        for (int i = 0; i < sought.size(); i++) {
            boolean isAim = what == Findings.What.AIM;
            if (sought.get(i).owner().equals(owner) && isLook(sought.get(i)) == isAim) {
                which.add(i);
            }
        }
        return which;
    }

    /// Whether a number is of how the camera looks, whatever stands where.
    static boolean isLook(Sought one) {
        return LOOKS.contains(one.name());
    }

    /// What is believed: how the camera looks as always, the owner's marks far off, all else not at all.
    private static double[][] belief(List<Sought> sought, String owner, Findings.What what) {
        double[][] belief = new double[sought.size()][sought.size()];
        for (int i = 0; i < sought.size(); i++) {
            belief[i][i] = sigma(sought.get(i), owner, what);
        }
        return belief;
    }

    private static double sigma(Sought one, String owner, Findings.What what) {
        if (isLook(one)) {
            return what == Findings.What.PLACE ? 0 : one.sigmaSi();
        }
        return what != Findings.What.AIM && one.owner().equals(owner) ? WIDER * one.sigmaSi() : 0;
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

    /// How many errors away its numbers may be.
    double wider() {
        return what == Findings.What.AIM ? 1 : WIDER;
    }

    /// It as a doubt, for a fit in which all else has its placing error again; none where it says no more than that
    /// fit does anyway.
    Optional<Doubt> findDoubt(int count) {
        if (what == Findings.What.AIM) {
            return Optional.empty();
        }
        List<double[]> ways = new ArrayList<>();
        for (int index : which) {
            double[] way = new double[count];
            way[index] = 1;
            ways.add(way);
        }
        return Optional.of(new Doubt.Misplaced(owner, WIDER, ways));
    }
}
