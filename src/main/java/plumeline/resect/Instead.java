package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// Whether the camera may stand elsewhere instead of looking aside: where all that is clicked is about as far away,
/// both shift a picture alike.
final class Instead {
    private Instead() {}

    /// Finds it, with everything else off by its error as always.
    ///
    /// @param settled the fit in which the camera is at its mark but for its placing error
    /// @param offs what that came to
    /// @return both, the likelier first; empty where the camera doesn't look aside, or nothing else would do as
    /// well
    static Optional<Findings.Otherwise> find(
            Fit.Task task, List<Sought> sought, Doubts.Outcome settled, List<Findings.Off> offs) {
        List<Findings.Moved> aside = offs.stream()
                .filter(off -> Alone.isLook(off.sought()) && off.isOff())
                .map(off -> new Findings.Moved(off.sought(), off.offSi()))
                .toList();
        if (aside.isEmpty()) {
            return Optional.empty();
        }
        return Fit.of(task, belief(sought, settled.doubts())).flatMap(fit -> {
            double more = fit.sum() - settled.fit().sum();
            List<Findings.Moved> elsewhere = new ArrayList<>();
            for (int i = 0; i < sought.size(); i++) {
                double half = Normal.HALF_95 * Math.sqrt(fit.covariance()[i][i]);
                if (isPlace(sought.get(i)) && Math.abs(fit.off()[i]) > half) {
                    elsewhere.add(new Findings.Moved(sought.get(i), fit.off()[i]));
                }
            }
            if (elsewhere.isEmpty() || more > Alone.AS_GOOD) {
                return Optional.empty();
            }
            var looks = new Findings.Cause.Misplaced("the camera's aim", aside);
            var stands = new Findings.Cause.Misplaced("the camera's place", elsewhere);
            return Optional.of(
                    more < 0
                            ? new Findings.Otherwise(stands, List.of(looks))
                            : new Findings.Otherwise(looks, List.of(stands)));
        });
    }

    private static boolean isPlace(Sought one) {
        return one.owner().equals("camera") && !Alone.isLook(one);
    }

    /// What is believed: the camera looks as it should and stands far off, all else as it was.
    private static double[][] belief(List<Sought> sought, List<Doubt> doubts) {
        double[][] belief = Doubts.belief(sought, doubts);
        for (int i = 0; i < belief.length; i++) {
            if (Alone.isLook(sought.get(i))) {
                belief[i] = new double[belief[i].length];
            } else if (isPlace(sought.get(i))) {
                belief[i][i] = Alone.WIDER * sought.get(i).sigmaSi();
            }
        }
        return belief;
    }
}
