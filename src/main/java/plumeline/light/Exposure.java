package plumeline.light;

import plumeline.ranges.Ranges;

/// What light a camera's setting needs at the subject: `E = C N²/(t S)`, more by what is lost on the way to the sensor.
///
/// **Source:** the incident-light form of ISO 2720, from memory; C about 240 to 400 for a flat receptor, 320 to 540 for
/// a dome; close-focus loss `(1 + m/P)²`, thin lens.
///
/// @param constant C, lx·s by sensitivity, > 0
/// @param number the f-number, or the T-number, > 0
/// @param seconds how long a frame is exposed, s, > 0
/// @param sensitivity ISO, > 0
/// @param magnification image over subject, ≥ 0; 0 for a far one, and for a T-number whose lens is marked for it
/// @param pupilRatio P: exit pupil over entrance pupil, > 0
/// @param lostStops what filters, cloth and the like take, stops, ≥ 0
public record Exposure(
        double constant,
        double number,
        double seconds,
        double sensitivity,
        double magnification,
        double pupilRatio,
        double lostStops) {
    /// A flat receptor's constant, as a lux meter has.
    public static final double FLAT = 250;

    /// A dome's constant.
    public static final double DOME = 340;

    /// Checks the ranges.
    ///
    /// @throws IllegalArgumentException outside them
    public Exposure {
        Ranges.checkPositive(constant, "constant");
        Ranges.checkPositive(number, "f-number");
        Ranges.checkPositive(seconds, "time");
        Ranges.checkPositive(sensitivity, "sensitivity");
        Ranges.checkNotNegative(magnification, "magnification");
        Ranges.checkPositive(pupilRatio, "pupil ratio");
        Ranges.checkNotNegative(lostStops, "loss");
    }

    /// Gives the same exposure of what is darker on the way to the camera.
    ///
    /// @param share how bright it is against its own luminance, > 0, ≤ 1
    /// @return the exposure, with as many more stops lost
    public Exposure through(double share) {
        return new Exposure(
                constant,
                number,
                seconds,
                sensitivity,
                magnification,
                pupilRatio,
                lostStops - Math.log(share) / Math.log(2));
    }

    /// Gives the illuminance that exposes rightly.
    ///
    /// @return lx
    public double neededLux() {
        double close = 1 + magnification / pupilRatio;
        return constant * number * number / (seconds * sensitivity) * close * close * Math.pow(2, lostStops);
    }

    /// Gives how much more light there is than needed.
    ///
    /// @param lux the illuminance, lx, ≥ 0
    /// @return stops, − for too little; endless (−infinite) for none
    public double marginStops(double lux) {
        return Math.log(lux / neededLux()) / Math.log(2);
    }
}
