package plumeline.motion;

/// How a move comes to its speed by what its device can do; it slows down in the same way.
sealed interface Ramp {
    /// Steady on the whole: as long as the speed is high.
    ///
    /// @param mean mean acceleration, > 0
    /// @param jerked share of the ramp in which its acceleration grows, and shrinks: 0 or a third
    record Steady(double mean, double jerked) implements Ramp {}

    /// Limited by jerk, and by acceleration where that is known.
    ///
    /// @param most highest acceleration, > 0; infinite where it isn't known
    /// @param jerk highest jerk, > 0
    record Jerked(double most, double jerk) implements Ramp {
        /// The speed from which on the highest acceleration is reached.
        private double full() {
            return most * most / jerk;
        }

        private boolean reaches(double speed) {
            return speed >= full();
        }

        /// The least speed that covers a distance in a time, where it can be: `d = v(T − v/a − a/j)`, or
        /// `d = v(T − 2√(v/j))`.
        private double ampleSpeed(double distance, double seconds) {
            double longest = seconds(full());
            if (longest <= seconds / 2 && distance >= full() * (seconds - longest)) {
                double rest = seconds - most / jerk;
                return 2 * distance / (rest + Math.sqrt(Math.max(0, rest * rest - 4 * distance / most)));
            }
            // What is covered grows ever slower with the speed, so that each tangent ends before the place looked for.
            double speed = distance / seconds;
            for (int i = 0; i < MOST_STEPS; i++) {
                double ramp = 2 * Math.sqrt(speed / jerk);
                double step = (distance - speed * (seconds - ramp)) / (seconds - 1.5 * ramp);
                speed += step;
                if (Math.abs(step) <= 1e-14 * speed) {
                    break;
                }
            }
            return speed;
        }
    }

    /// Jerk through a ramp's first and last third makes its peak acceleration 1.5 of the mean.
    double PEAK_OF_THIRDS = 1.5;

    /// Tangents double the digits each time.
    int MOST_STEPS = 60;

    /// The ramps of a profile that has some, within limits of which at least one bears on them.
    static Ramp of(Profile profile, Limits limits) {
        if (profile == Profile.S_CURVE) {
            return Double.isFinite(limits.jerk())
                    ? new Jerked(limits.acceleration(), limits.jerk())
                    : new Steady(limits.acceleration() / PEAK_OF_THIRDS, 1.0 / 3);
        }
        return new Steady(limits.acceleration(), 0);
    }

    /// Whether limits say how long the ramps of a profile take.
    static boolean isLimited(Profile profile, Limits limits) {
        return Double.isFinite(limits.acceleration()) || profile == Profile.S_CURVE && Double.isFinite(limits.jerk());
    }

    /// How long it takes to come to a speed.
    default double seconds(double speed) {
        return switch (this) {
            case Steady(double mean, double _) -> speed / mean;
            case Jerked own ->
                own.reaches(speed) ? speed / own.most + own.most / own.jerk : 2 * Math.sqrt(speed / own.jerk);
        };
    }

    /// How long the acceleration grows in that, and shrinks.
    default double jerkSeconds(double speed) {
        return switch (this) {
            case Steady(double mean, double jerked) -> jerked * speed / mean;
            case Jerked own -> own.reaches(speed) ? own.most / own.jerk : Math.sqrt(speed / own.jerk);
        };
    }

    /// The speed at which speeding up and slowing down fill a distance.
    default double topSpeed(double distance) {
        return switch (this) {
            case Steady(double mean, double _) -> Math.sqrt(distance * mean);
            case Jerked own -> {
                double grow = own.most / own.jerk;
                yield distance >= 2 * own.full() * grow
                        ? 2 * distance / (grow + Math.sqrt(grow * grow + 4 * distance / own.most))
                        : Math.cbrt(distance * distance * own.jerk / 4);
            }
        };
    }

    /// The shortest time for a distance with a highest speed.
    default double leastSeconds(double distance, double most) {
        double speed = Math.min(most, topSpeed(distance));
        return distance == 0 ? 0 : distance / speed + seconds(speed);
    }

    /// The least peak speed that covers a distance in a time; where even ramps of half the time each don't, theirs.
    default double speedFor(double distance, double seconds) {
        if (seconds <= leastSeconds(distance, Double.POSITIVE_INFINITY)) {
            return 2 * distance / seconds;
        }
        return switch (this) {
            case Steady(double mean, double _) ->
                2 * distance / (seconds + Math.sqrt(Math.max(0, seconds * seconds - 4 * distance / mean)));
            case Jerked own -> own.ampleSpeed(distance, seconds);
        };
    }

    /// The least peak acceleration with which a distance can be covered in a time, whatever the speed: 4d/T², with
    /// jerk in thirds 6d/T², with a limited jerk j the a of `2d/(T·a) + a/j = T/2`. A jerk with which it can't be
    /// at any acceleration counts as 32d/T³, the least that would.
    default double leastAcceleration(double distance, double seconds) {
        double even = 4 * distance / (seconds * seconds);
        return switch (this) {
            case Steady(double _, double jerked) -> even / (1 - jerked);
            case Jerked own -> {
                double jerk = Math.max(own.jerk, leastJerk(distance, seconds));
                double root = seconds * seconds - 8 * even / jerk * seconds;
                yield jerk * (seconds - Math.sqrt(Math.max(0, root))) / 4;
            }
        };
    }

    /// The least jerk with which a distance can be covered in a time from rest to rest: 32d/T³, four stretches of
    /// a quarter of the time each.
    static double leastJerk(double distance, double seconds) {
        return 32 * distance / (seconds * seconds * seconds);
    }
}
