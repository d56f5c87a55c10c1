package plumeline.draw;

import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;

/// Leeway in figures that a hand can use: rounded down, so that no paper promises more than there is.
///
/// @param unit the papers' unit
public record LeewayText(PaperUnit unit) {
    /// This part of a step is forgiven before rounding down, so that 6.999 mm is 7 mm; never more, however long the
    /// leeway.
    private static final double FORGIVEN = 0.005;

    /// Below this, tenths count.
    private static final double FINE_METRES = 0.002;

    private static final double FINE_RADIANS = Math.toRadians(2);

    /// Says one side of a leeway.
    ///
    /// @param mark the mark
    /// @param side the side
    /// @return such as `7 mm`, `0.4 mm`, `12 deg`; `endless` where nothing ends it
    public String side(Mark mark, Leeway.Side side) {
        return switch (side) {
            case Leeway.Side.Endless() -> "endless";
            case Leeway.Side.Ends(double distance) -> withUnit(mark, distance);
        };
    }

    /// Says a distance along a mark, rounded down.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure with its unit
    public String withUnit(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR -> figure(mark, si) + " " + new Print(unit).lengthUnit();
            case TURN, LAMP_TURN, MOTOR_TURN -> figure(mark, si) + " deg";
            case DIAL -> mark.path().equals("camera.f_number") ? figure(mark, si) : figure(mark, si) + " %";
        };
    }

    /// Says a distance along a mark without its unit, rounded down.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure
    public String figure(Mark mark, double si) {
        Print print = new Print(unit);
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR -> {
                Print.Hand hand = si < FINE_METRES ? Print.Hand.MOTOR : Print.Hand.TAPE;
                yield print.lengthNumber(down(si, print.stepMetres(hand)), hand);
            }
            case TURN, LAMP_TURN, MOTOR_TURN ->
                Print.number(Math.toDegrees(down(si, Math.toRadians(si < FINE_RADIANS ? 0.1 : 1))), 1);
            case DIAL -> Print.number(down(mark.path().equals("camera.f_number") ? si : si * 100, 0.1), 1);
        };
    }

    private static double down(double value, double step) {
        return Math.floor(value / step + FORGIVEN) * step;
    }

    /// Says both sides without unit, for a drawing: `±7`, `−3 +2`, `−3 + loose`, `loose`.
    ///
    /// @param answer the mark's answer
    /// @return the figures
    public String both(MarkAnswer answer) {
        String minus = shortSide(answer.mark(), answer.leeway().minus());
        String plus = shortSide(answer.mark(), answer.leeway().plus());
        if (minus.equals(plus)) {
            return minus.equals("loose") ? "loose" : "±" + minus;
        }
        return "−" + spaced(minus) + " +" + spaced(plus);
    }

    private static String spaced(String side) {
        return side.equals("loose") ? " loose" : side;
    }

    private String shortSide(Mark mark, Leeway.Side side) {
        return switch (side) {
            case Leeway.Side.Endless() -> "loose";
            case Leeway.Side.Ends(double distance) -> figure(mark, distance);
        };
    }
}
