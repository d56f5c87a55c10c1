package plumeline.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

/// A run of cubic pieces, each with a jerk of its own; place and speed go over from piece to piece.
public final class CubicRun implements Run {
    /// Places are as exact as this share of the longest piece's way.
    private static final double ROUNDING = 1e-12;

    private final List<Piece> pieces;
    private final double[] starts;
    private final double lastSeconds;

    /// One piece, by its time from its own start.
    ///
    /// @param seconds how long, > 0
    /// @param place at its start
    /// @param speed at its start
    /// @param acceleration at its start
    /// @param jerk throughout
    record Piece(double seconds, double place, double speed, double acceleration, double jerk) {
        double placeAt(double t) {
            return place + t * (speed + t * (acceleration / 2 + t * jerk / 6));
        }

        double speedAt(double t) {
            return speed + t * (acceleration + t * jerk / 2);
        }

        double accelerationAt(double t) {
            return acceleration + t * jerk;
        }

        /// A speed turns where the acceleration goes through nothing.
        double peakSpeed() {
            double peak = Math.max(Math.abs(speed), Math.abs(speedAt(seconds)));
            double turn = -acceleration / jerk;
            return turn > 0 && turn < seconds ? Math.max(peak, Math.abs(speedAt(turn))) : peak;
        }

        /// Times inside at which the speed goes through nothing to the other sign.
        List<Double> listTurns() {
            double root = acceleration * acceleration - 2 * jerk * speed;
            if (root <= 0) {
                return List.of();
            }
            double q = -(acceleration + Math.copySign(Math.sqrt(root), acceleration));
            List<Double> found = new ArrayList<>();
            for (double t : new double[] {q / jerk, 2 * speed / q}) {
                if (t > 0 && t < seconds) {
                    found.add(t);
                }
            }
            found.sort(null);
            return found;
        }
    }

    CubicRun(double firstSeconds, List<Piece> pieces) {
        this.pieces = List.copyOf(pieces);
        starts = new double[pieces.size()];
        double at = firstSeconds;
        for (int i = 0; i < starts.length; i++) {
            starts[i] = at;
            at += pieces.get(i).seconds();
        }
        lastSeconds = at;
    }

    @Override
    public double firstSeconds() {
        return starts[0];
    }

    @Override
    public double lastSeconds() {
        return lastSeconds;
    }

    @Override
    public double at(double seconds) {
        double within = Math.clamp(seconds, firstSeconds(), lastSeconds);
        int index = indexAt(within);
        return pieces.get(index).placeAt(within - starts[index]);
    }

    @Override
    public double speedAt(double seconds) {
        int index = indexAt(seconds);
        return isOutside(seconds) ? 0 : pieces.get(index).speedAt(seconds - starts[index]);
    }

    @Override
    public double accelerationAt(double seconds) {
        int index = indexAt(seconds);
        return isOutside(seconds) ? 0 : pieces.get(index).accelerationAt(seconds - starts[index]);
    }

    private boolean isOutside(double seconds) {
        return seconds < firstSeconds() || seconds > lastSeconds;
    }

    private int indexAt(double seconds) {
        int found = Arrays.binarySearch(starts, seconds);
        return Math.clamp(found >= 0 ? found : -found - 2, 0, starts.length - 1);
    }

    @Override
    public double peakSpeed() {
        return most(Piece::peakSpeed);
    }

    @Override
    public double peakAcceleration() {
        return most(piece -> Math.max(Math.abs(piece.acceleration()), Math.abs(piece.accelerationAt(piece.seconds()))));
    }

    /// Gives the highest jerk within its pieces; the acceleration may jump between them.
    @Override
    public double peakJerk() {
        return most(piece -> Math.abs(piece.jerk()));
    }

    private double most(ToDoubleFunction<Piece> size) {
        return pieces.stream().mapToDouble(size).max().orElse(0);
    }

    /// A piece that stands still is no turn, nor is one that moves by less than rounding; the way that comes next
    /// against the one that was there before is.
    @Override
    public List<Double> listTurns() {
        List<Double> turns = new ArrayList<>();
        double least = ROUNDING * most(piece -> Math.abs(piece.placeAt(piece.seconds()) - piece.place()));
        double way = 0;
        for (int i = 0; i < starts.length; i++) {
            Piece piece = pieces.get(i);
            double from = 0;
            List<Double> ends = new ArrayList<>(piece.listTurns());
            ends.add(piece.seconds());
            for (double to : ends) {
                double moved = piece.placeAt(to) - piece.placeAt(from);
                double here = Math.abs(moved) <= least ? 0 : Math.signum(moved);
                if (here != 0 && way != 0 && here != way) {
                    turns.add(starts[i] + from);
                }
                way = here == 0 ? way : here;
                from = to;
            }
        }
        return turns;
    }
}
