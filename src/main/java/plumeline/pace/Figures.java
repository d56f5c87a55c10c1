package plumeline.pace;

import plumeline.plan.Move;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// Ways, speeds and accelerations of an axis in words.
///
/// @param axis the axis
/// @param papers the papers' unit of length
public record Figures(Move.Axis axis, PaperUnit papers) {
    private static final double INCH_METRES = 0.0254;

    private boolean isRound() {
        return axis.sort() == Move.Axis.Sort.ANGLE;
    }

    private double own(double si) {
        return isRound() ? Math.toDegrees(si) : papers == PaperUnit.MILLIMETRES ? si * 1000 : si / INCH_METRES;
    }

    private String unit() {
        return isRound() ? "deg" : papers == PaperUnit.MILLIMETRES ? "mm" : "in";
    }

    /// Gives a way.
    ///
    /// @param si metres or radians
    /// @return such as `600 mm`, to what a motor sets
    public String way(double si) {
        return isRound() ? Print.fineDegrees(si) : new Print(papers).length(si, Print.Hand.MOTOR);
    }

    /// Gives a speed.
    ///
    /// @param si metres or radians per second
    /// @return such as `78.9 mm/s`
    public String speed(double si) {
        return number(own(si)) + " " + unit() + "/s";
    }

    /// Gives an acceleration.
    ///
    /// @param si metres or radians per second squared
    /// @return such as `200 mm/s2`
    public String acceleration(double si) {
        return number(own(si)) + " " + unit() + "/s2";
    }

    /// Gives a way that is smaller than a motor sets.
    ///
    /// @param si metres or radians, ≥ 0
    /// @return such as `0.21 mm`, to two decimals
    public String difference(double si) {
        return Print.number(own(si), 2) + " " + unit();
    }

    private static String number(double value) {
        String text = Print.number(value, value < 10 ? 2 : value < 100 ? 1 : 0);
        return text.contains(".") ? text.replaceFirst("0+$", "").replaceFirst("[.]$", "") : text;
    }
}
