package plumeline.motion;

import java.util.ArrayList;
import java.util.List;
import plumeline.roots.Roots;

/// A part of a run in which it doesn't turn back.
///
/// @param run the run
/// @param from real seconds
/// @param to real seconds
record Stretch(Run run, double from, double to) {
    static List<Stretch> listAll(Run run) {
        List<Stretch> all = new ArrayList<>();
        double from = run.firstSeconds();
        for (double turn : run.listTurns()) {
            all.add(new Stretch(run, from, turn));
            from = turn;
        }
        all.add(new Stretch(run, from, run.lastSeconds()));
        return all;
    }

    double first() {
        return run.at(from);
    }

    double last() {
        return run.at(to);
    }

    boolean isRising() {
        return last() >= first();
    }

    /// When it first gets to a place, which lies between its ends.
    double secondsAt(double place, double after) {
        boolean rising = isRising();
        return Roots.end(at -> rising ? run.at(at) < place : run.at(at) > place, after, to);
    }
}
