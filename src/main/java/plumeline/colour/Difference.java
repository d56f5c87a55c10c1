package plumeline.colour;

/// How different two surfaces look side by side.
public final class Difference {
    private static final double SEVENTH_OF_25 = Math.pow(25, 7);

    private Difference() {}

    /// Gives the CIEDE2000 difference, all three weights 1. About 1 is just seen by a practised eye; made for small
    /// differences, and rough from some 10 on.
    ///
    /// **Source:** Sharma, Wu and Dalal, Color Research and Application 30 (2005) 21, equations 2 to 22.
    ///
    /// @param one a colour
    /// @param other another, under the same white
    /// @return the difference, dimensionless, ≥ 0
    public static double ciede2000(Lab one, Lab other) {
        double g = 0.5 * (1 - ripe((one.chroma() + other.chroma()) / 2));
        double a1 = (1 + g) * one.a();
        double a2 = (1 + g) * other.a();
        double c1 = Math.hypot(a1, one.b());
        double c2 = Math.hypot(a2, other.b());
        double h1 = hue(a1, one.b());
        double h2 = hue(a2, other.b());
        boolean grey = c1 * c2 == 0;
        double turn = h2 - h1;
        double around = grey || Math.abs(turn) <= 180 ? 0 : turn > 180 ? -360 : 360;
        double dh = grey ? 0 : turn + around;
        double h = grey ? h1 + h2 : (h1 + h2 + (around == 0 ? 0 : h1 + h2 < 360 ? 360 : -360)) / 2;
        double l = (one.l() + other.l()) / 2 - 50;
        double c = (c1 + c2) / 2;
        double t = 1 - 0.17 * cos(h - 30) + 0.24 * cos(2 * h) + 0.32 * cos(3 * h + 6) - 0.20 * cos(4 * h - 63);
        double dl = (other.l() - one.l()) / (1 + 0.015 * l * l / Math.sqrt(20 + l * l));
        double dc = (c2 - c1) / (1 + 0.045 * c);
        double dhue = 2 * Math.sqrt(c1 * c2) * Math.sin(Math.toRadians(dh / 2)) / (1 + 0.015 * c * t);
        double blue = 60 * Math.exp(-Math.pow((h - 275) / 25, 2));
        double rotation = -2 * ripe(c) * Math.sin(Math.toRadians(blue));
        return Math.sqrt(dl * dl + dc * dc + dhue * dhue + rotation * dc * dhue);
    }

    private static double ripe(double chroma) {
        double seventh = Math.pow(chroma, 7);
        return Math.sqrt(seventh / (seventh + SEVENTH_OF_25));
    }

    private static double hue(double a, double b) {
        double degrees = a == 0 && b == 0 ? 0 : Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
