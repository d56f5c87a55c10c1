package plumeline.want;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import plumeline.water.Hanging;
import plumeline.water.Vessel;

/// How a vessel hangs on upright lines that leave its axis: at which height a tie is in balance, tilt by tilt; where it
/// comes to rest on its ties; how far that is from an attitude, as margins that are steady in the ties.
///
/// Tied at a height t it is turned by W sin θ (t − b(θ)), with W its net weight there and b(θ) the height in balance:
/// without moving liquid the one balance point. It rests where that goes through nothing and pushes back on both sides;
/// above b(0) it rests upright, under b(π) upside down. Two lines at a tilt both pull while b(θ) lies between their
/// ties. Derived in `docs/derivations/float.md`. Angles here are in degrees, 0 upright, 180 upside down.
final class Poise {
    /// What a millimetre between a tie and where it tips counts for, degrees: then 3 deg are used up, the usual
    /// `within`. The tilt itself jumps where a body tips over; this keeps margins steady there.
    private static final double DEGREES_PER_METRE = 3000;

    /// A tie this near to the balance point is on it, as far as a hand can set it.
    private static final double ON_IT_METRES = 0.0005;

    /// No rest counts that can't bear a push of this.
    private static final double PUSH_DEGREES = 1;

    private static final double EDGE_DEGREES = 0.02;
    private static final int HALF_ROUND = 180;
    private static final int STEPS = 8;

    private final boolean floats;
    private final double[] loadNewtons = new double[HALF_ROUND + 1];
    private final double[] balanceMetres = new double[HALF_ROUND + 1];

    /// A wish for an attitude.
    ///
    /// @param tiltDegrees the tilt wanted, −180 to 180, positive with the top to camera right
    /// @param withinDegrees how far it may be off, > 0
    record Wish(double tiltDegrees, double withinDegrees) {
        /// How far a tilt is off, whichever way it leans.
        private double off(double restDegrees) {
            return Math.abs(restDegrees - Math.abs(tiltDegrees));
        }
    }

    /// The ties of a thing and the tilt for which its lines are cut.
    ///
    /// @param metres heights over its base, one a line, at least one
    /// @param cutDegrees that tilt, −180 to 180
    record Ties(List<Double> metres, double cutDegrees) {
        Ties {
            metres = List.copyOf(metres);
        }

        private double lowest() {
            return metres.stream().mapToDouble(d -> d).min().orElseThrow();
        }

        private double highest() {
            return metres.stream().mapToDouble(d -> d).max().orElseThrow();
        }

        /// Whether several lines hold it leaning: upright or upside down one of them carries.
        private boolean areSpread(Wish wish) {
            double cut = Math.abs(cutDegrees);
            return metres.size() > 1 && cut > wish.withinDegrees() && cut < HALF_ROUND - wish.withinDegrees();
        }
    }

    /// Reads a vessel as it is held at the attitude from which it is let go: air that has left from under its base
    /// by then has gone.
    Poise(Vessel vessel, double waterKilogramsPerMetre3) {
        floats = !(Hanging.loadNewtons(vessel, waterKilogramsPerMetre3) > 0);
        for (int i = 0; i <= HALF_ROUND && !floats; i++) {
            double tilt = Math.toRadians(Math.clamp(i, EDGE_DEGREES, HALF_ROUND - EDGE_DEGREES));
            balanceMetres[i] = Hanging.balanceMetres(vessel, waterKilogramsPerMetre3, tilt);
            loadNewtons[i] = Hanging.loadNewtons(vessel, waterKilogramsPerMetre3, tilt);
        }
    }

    /// Whether a line from above would have to push.
    boolean floats() {
        return floats;
    }

    /// Its weight in water as it hangs.
    private double loadNewtons(Ties ties, Wish wish) {
        return loadNewtons[Math.clamp(Math.round(tiltDegrees(ties, wish)), 0, HALF_ROUND)];
    }

    /// The height of the tie in balance at a tilt.
    double balanceMetres(double degrees) {
        int low = (int) Math.clamp(Math.floor(degrees), 0, HALF_ROUND - 1);
        double share = degrees - low;
        return balanceMetres[low] + share * (balanceMetres[low + 1] - balanceMetres[low]);
    }

    /// Where it comes to rest on one tie when it is let go at a tilt.
    double restDegrees(double tieMetres, double fromDegrees) {
        double from = Math.clamp(fromDegrees, PUSH_DEGREES, HALF_ROUND - PUSH_DEGREES);
        boolean isDown = tieMetres > balanceMetres(from);
        double here = from;
        while (isDown ? here > 0 : here < HALF_ROUND) {
            double next = isDown ? Math.max(0, Math.ceil(here) - 1) : Math.min(HALF_ROUND, Math.floor(here) + 1);
            double over = tieMetres - balanceMetres(next);
            if (over > 0 != isDown) {
                double before = tieMetres - balanceMetres(here);
                return here + (next - here) * before / (before - over);
            }
            here = next;
        }
        return here;
    }

    /// The tilt at which it hangs.
    double tiltDegrees(Ties ties, Wish wish) {
        if (ties.areSpread(wish)) {
            return isHeld(ties)
                    ? Math.abs(ties.cutDegrees())
                    : restDegrees(carrying(ties), Math.abs(ties.cutDegrees()));
        }
        double tie = carrying(ties, wish);
        return new Window(wish).isOnIt(tie)
                ? Math.abs(wish.tiltDegrees())
                : restDegrees(tie, Math.abs(wish.tiltDegrees()));
    }

    /// What each line pulls, newtons, by the lever; negative where it would have to push. Of more than two, the
    /// outermost.
    List<Double> pullsNewtons(Ties ties, Wish wish) {
        List<Double> pulls = new ArrayList<>();
        boolean isSpread = ties.areSpread(wish) && ties.highest() > ties.lowest();
        double share = isSpread
                ? (balanceMetres(Math.abs(ties.cutDegrees())) - ties.lowest()) / (ties.highest() - ties.lowest())
                : 0;
        double carrying = carrying(ties, wish);
        double load = loadNewtons(ties, wish);
        for (double tie : ties.metres()) {
            double part = isSpread
                    ? tie == ties.highest() ? share : tie == ties.lowest() ? 1 - share : 0
                    : tie == carrying ? 1.0 / Collections.frequency(ties.metres(), carrying) : 0;
            pulls.add(part * load);
        }
        return pulls;
    }

    /// Whether it tips because its ties lie on one side of its balance point.
    boolean tips(Ties ties, Wish wish) {
        return ties.areSpread(wish) && !isHeld(ties);
    }

    private boolean isHeld(Ties ties) {
        double balance = balanceMetres(Math.abs(ties.cutDegrees()));
        return balance >= ties.lowest() && balance <= ties.highest();
    }

    /// The tie that bears all where the others go slack.
    private double carrying(Ties ties) {
        return balanceMetres(Math.abs(ties.cutDegrees())) > ties.highest() ? ties.highest() : ties.lowest();
    }

    private static double carrying(Ties ties, Wish wish) {
        return Math.abs(wish.tiltDegrees()) <= HALF_ROUND / 2.0 ? ties.highest() : ties.lowest();
    }

    /// The margin in two parts, degrees: how far the tilt is from what is allowed, and how far the ties are from where
    /// it tips over, 3 deg a millimetre. Past that, the part is no less than the tilt it tips to is off.
    double[] parts(Ties ties, Wish wish) {
        double within = wish.withinDegrees();
        if (floats()) {
            return new double[] {within - HALF_ROUND, within - HALF_ROUND};
        }
        if (ties.areSpread(wish)) {
            double cut = Math.abs(ties.cutDegrees());
            double balance = balanceMetres(cut);
            double room = Math.min(balance - ties.lowest(), ties.highest() - balance);
            double turned = Math.abs(Math.IEEEremainder(ties.cutDegrees() - wish.tiltDegrees(), 2.0 * HALF_ROUND));
            double tipped = room < 0 ? within - wish.off(restDegrees(carrying(ties), cut)) : 0;
            return new double[] {within - turned, lever(room, tipped)};
        }
        double tie = carrying(ties, wish);
        Window window = new Window(wish);
        double room = window.roomMetres(tie);
        double left = within - (window.isOnIt(tie) ? 0 : wish.off(restDegrees(tie, Math.abs(wish.tiltDegrees()))));
        double tilt = room >= 0 ? left : Math.max(left, within + DEGREES_PER_METRE * room);
        return new double[] {tilt, lever(room, left)};
    }

    private static double lever(double roomMetres, double leftDegrees) {
        double counted = DEGREES_PER_METRE * roomMetres;
        return roomMetres >= 0 ? counted : Math.max(counted, Math.min(leftDegrees, 0));
    }

    /// The ties on one line between which it comes to rest at a tilt that is near enough.
    private final class Window {
        private final double lowMetres;
        private final double highMetres;
        private final double slackMetres;

        /// Let go at the wanted tilt, it goes to where the tie is in balance: that must come before the tilt is too far
        /// off.
        Window(Wish wish) {
            double wanted = Math.abs(wish.tiltDegrees());
            double within = wish.withinDegrees();
            double push = Math.min(PUSH_DEGREES, within);
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i <= STEPS; i++) {
                double share = (double) i / STEPS;
                double more = Math.max(wanted, push) + share * (wanted + within - Math.max(wanted, push));
                double less = Math.min(wanted, HALF_ROUND - push);
                less += share * (wanted - within - less);
                low = more > HALF_ROUND ? Double.NEGATIVE_INFINITY : Math.min(low, balanceMetres(more));
                high = less < 0 ? Double.POSITIVE_INFINITY : Math.max(high, balanceMetres(less));
            }
            lowMetres = low;
            highMetres = high;
            slackMetres = Math.max(0, ON_IT_METRES - (high - low) / 2);
        }

        /// How far a tie is inside; negative outside.
        double roomMetres(double tieMetres) {
            return Math.min(tieMetres - lowMetres, highMetres - tieMetres) + slackMetres;
        }

        /// Whether a tie is on the balance point of a body that no tilt brings to rest.
        boolean isOnIt(double tieMetres) {
            return slackMetres > 0 && roomMetres(tieMetres) >= 0;
        }
    }
}
