package plumeline.solve;

import java.util.Locale;
import plumeline.plan.Mark;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// Values and findings in the crew's words, rounded to what a hand can set, in the papers' unit.
public final class Words {
    private static final double MILLIMETRES = 1000;

    /// Angles below this are told in tenths.
    private static final double FINE_RADIANS = Math.toRadians(2);

    /// A length that is over its figure by more than this part of a step is said to be over it.
    private static final double OVER = 0.1;

    private final Print print;

    /// Makes words in a unit.
    ///
    /// @param unit the papers' unit
    public Words(PaperUnit unit) {
        print = new Print(unit);
    }

    /// Gives a mark's value.
    ///
    /// @param mark the mark
    /// @param si its value, SI
    /// @return such as `-600 mm`, `12 deg`, `f/11`
    public String value(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS -> print.length(si);
            case MOTOR -> print.length(si, Print.Hand.MOTOR);
            case TURN, LAMP_TURN -> Print.degrees(si);
            case MOTOR_TURN -> Print.fineDegrees(si);
            case DIAL -> mark.path().equals("camera.f_number") ? "f/" + Print.number(si, 1) : Print.share(si, 0);
        };
    }

    /// A length as a tape sets it.
    String place(double metres) {
        return print.length(metres);
    }

    /// A difference as a tape shows it.
    String tape(double metres) {
        return print.difference(metres, Print.Hand.TAPE);
    }

    /// Gives how far a mark may be off or is moved.
    ///
    /// @param mark the mark
    /// @param si a difference, SI
    /// @return such as `7 mm`, `3/16 in`, finer where it is small
    public String difference(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS -> print.difference(Math.abs(si), Print.Hand.TAPE);
            case MOTOR -> print.difference(Math.abs(si), Print.Hand.MOTOR);
            case TURN, LAMP_TURN, MOTOR_TURN ->
                Math.abs(si) < Math.toRadians(2) ? Print.fineDegrees(Math.abs(si)) : Print.degrees(Math.abs(si));
            case DIAL -> mark.path().equals("camera.f_number") ? Print.number(Math.abs(si), 1) : Print.share(si, 0);
        };
    }

    /// Gives how far a mark may be off, rounded down: no text promises more than there is.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure with its unit
    public String leeway(Mark mark, double si) {
        String figure = leewayFigure(mark, si);
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR ->
                isUnderAStep(mark, si) ? print.difference(0, hand(mark)) : figure + " " + print.lengthUnit();
            case TURN, LAMP_TURN, MOTOR_TURN -> figure + " deg";
            case DIAL -> isFNumber(mark) ? figure : figure + " %";
        };
    }

    /// Whether less is left than an inch's finest part, of which there is no figure.
    private boolean isUnderAStep(Mark mark, double si) {
        return print.unit() == PaperUnit.INCHES && leewaySi(mark, si) == 0;
    }

    /// Gives how far a mark may be off without its unit, rounded down.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the figure
    public String leewayFigure(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR ->
                print.differenceNumber(si, hand(mark), Print.Rounding.DOWN);
            case TURN, LAMP_TURN, MOTOR_TURN -> Print.number(Math.toDegrees(leewaySi(mark, si)), 1);
            case DIAL -> Print.number(leewaySi(mark, si) * (isFNumber(mark) ? 1 : 100), 1);
        };
    }

    /// Rounds how far a mark may be off down to what [#leewayFigure] prints.
    ///
    /// @param mark the mark
    /// @param si the distance, SI, 0 or more
    /// @return the rounded distance, SI
    public double leewaySi(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR ->
                print.roundDifferenceMetres(si, hand(mark), Print.Rounding.DOWN);
            case TURN, LAMP_TURN, MOTOR_TURN -> down(si, Math.toRadians(si < FINE_RADIANS ? 0.1 : 1));
            case DIAL -> down(si, isFNumber(mark) ? 0.1 : 0.001);
        };
    }

    private static double down(double value, double step) {
        return Print.roundDown(value, step) * step;
    }

    private static Print.Hand hand(Mark mark) {
        return mark.kind() == Mark.Kind.MOTOR ? Print.Hand.MOTOR : Print.Hand.TAPE;
    }

    private static boolean isFNumber(Mark mark) {
        return mark.path().equals("camera.f_number");
    }

    /// Says that a hand isn't fine enough for a mark, and what to use instead.
    ///
    /// @param mark the mark
    /// @param errorSi how far off a hand may leave it, SI
    /// @return such as `you place to 2 mm. Use a jig.`
    public String tooCoarse(Mark mark, double errorSi) {
        String help = switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE -> "Use a jig.";
            case TURN, LAMP_TURN -> "Use a pointer on a scale.";
            case MOTOR, MOTOR_TURN -> "Set it by the motor's own counter.";
            case FOCUS -> "Focus by eye on the magnified picture.";
            case DIAL -> "Set it by the camera's own figure.";
        };
        return "you place to " + placing(mark, errorSi) + ". " + help;
    }

    /// How far off a hand may leave a mark; where inches have no figure for it, what it is over, so that it never reads
    /// like a leeway that is less.
    private String placing(Mark mark, double errorSi) {
        String error = difference(mark, errorSi);
        boolean isOver = print.unit() == PaperUnit.INCHES
                && error.equals(leeway(mark, errorSi))
                && errorSi - leewaySi(mark, errorSi) > OVER * print.stepMetres(hand(mark));
        return isOver && isLength(mark) ? "a little over " + error : error;
    }

    private static boolean isLength(Mark mark) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, FOCUS, MOTOR -> true;
            case TURN, LAMP_TURN, MOTOR_TURN, DIAL -> false;
        };
    }

    /// Says both ways along a mark.
    String bothWays(Mark mark) {
        String path = mark.path();
        return switch (path.substring(path.lastIndexOf('.') + 1)) {
            case "x" -> " sideways";
            case "y" -> " forward and back";
            case "z" -> " up and down";
            case "turn" -> " of turn";
            case "tilt" -> " of tilt";
            case "focus" -> " of focus";
            default -> "";
        };
    }

    /// Says which way a mark is moved.
    ///
    /// @param mark the mark
    /// @param change the move; only its sign counts
    /// @return such as `back`, `to camera right`, `higher`
    String way(Mark mark, double change) {
        String path = mark.path();
        boolean more = change > 0;
        String last = path.substring(path.lastIndexOf('.') + 1);
        return switch (last) {
            case "x" -> more ? "to camera right" : "to camera left";
            case "y" -> path.startsWith("camera.") ? (more ? "forward" : "back") : more ? "farther back" : "forward";
            case "z" -> more ? "higher" : "lower";
            case "focus" -> more ? "farther" : "nearer";
            case "turn" -> more ? "clockwise from above" : "counter-clockwise from above";
            default -> more ? "more" : "less";
        };
    }

    /// Says which way something goes, by its longest part: `to camera left`, `away from the camera`, `up`.
    static String heading(double x, double y, double z) {
        double most = Math.max(Math.abs(x), Math.max(Math.abs(y), Math.abs(z)));
        if (most == Math.abs(x)) {
            return x < 0 ? "to camera left" : "to camera right";
        }
        if (most == Math.abs(y)) {
            return y < 0 ? "toward the camera" : "away from the camera";
        }
        return z < 0 ? "down" : "up";
    }

    /// Gives a margin with its unit, lengths in the papers' unit. It is never nothing: what would round to 0 is `under`
    /// the finest figure.
    ///
    /// @param value the margin's size
    /// @param unit its unit, as answers give it
    /// @return such as `3 mm`, `1.4 %`, `under 0.1 %`
    public String margin(double value, String unit) {
        double size = Math.abs(value);
        return switch (unit) {
            case "mm" -> print.difference(size / MILLIMETRES, Print.Hand.TAPE);
            case "%" -> size < 10 ? tenths(size) + " %" : Print.number(size, 0) + " %";
            case "1" -> size < 0.1 ? small(size) : tenths(size);
            case "frames" -> Print.number(size, 0) + (size == 1 ? " frame" : " frames");
            case "s" -> size < 0.01 ? "under 0.01 s" : Print.seconds(size, size < 1 ? 2 : 1);
            default -> tenths(size) + " " + unit;
        };
    }

    private static String small(double size) {
        String figure = Print.number(size, 4);
        return figure.equals("0") ? "under 0.0001" : figure;
    }

    private static String tenths(double size) {
        String figure = String.format(Locale.ROOT, "%.1f", size);
        return figure.equals("0.0") ? "under 0.1" : figure;
    }

    /// Says how a want stands.
    ///
    /// @param word its want word
    /// @param margin its margin
    /// @param unit the margin's unit
    /// @return a sentence
    String standing(String word, double margin, String unit) {
        String size = margin(margin, unit);
        boolean holds = margin >= 0;
        return switch (word) {
            case "hidden" -> holds ? "Hidden; " + size + " to spare." : "Sticks out by " + size + ".";
            case "shown" ->
                holds ? "The gaps have " + size + " of the width to spare." : "A gap lacks " + size + " of the width.";
            case "fills" ->
                holds
                        ? "The size has " + size + " of the picture to spare."
                        : "Off by " + size + " of the picture beyond what is allowed.";
            case "sharp" ->
                holds ? "Sharp; " + size + " to the nearer limit." : "Soft: " + size + " outside the sharp depth.";
            case "inside" -> holds ? "Inside, " + size + " from the nearest side." : "Goes " + size + " over the side.";
            case "clear" -> holds ? "Clear; " + size + " of air beyond what is asked." : "Too close by " + size + ".";
            case "off_picture" -> holds ? "Out of the picture by " + size + "." : "In the picture by " + size + ".";
            case "reaches" ->
                holds ? "The lens focuses " + size + " nearer still." : "Nearer than the lens focuses by " + size + ".";
            case "same_size" -> holds ? "The same size; " + size + " to spare." : "Differs by " + size + " too much.";
            default -> holds ? size + " to spare." : size + " short.";
        };
    }

    /// Says how a want stands seen from the whole aperture, of which the lens point is the middle.
    ///
    /// @param margin the margin over the entrance pupil
    /// @param unit the margin's unit
    /// @return a sentence
    String overPupil(double margin, String unit) {
        String size = margin(margin, unit);
        return margin >= 0
                ? "From the rim of the aperture " + size + " to spare."
                : "From the rim of the aperture a soft edge of up to " + size + " shows.";
    }
}
