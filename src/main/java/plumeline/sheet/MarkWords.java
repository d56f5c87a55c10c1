package plumeline.sheet;

import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Placed;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;

/// What a mark is called on paper, and from where and which way it is measured.
///
/// @param minus the way to smaller values, as in `3 mm to the left`
/// @param plus the way to larger values
/// @param both both ways, as in `±7 mm sideways`
/// @param from from where it is measured
record MarkWords(String minus, String plus, String both, String from) {
    private static final double UPRIGHT_DEGREES = 1;

    /// @param shot the mark's shot
    /// @param si its value, SI; decides which side of the zero mark is named
    static MarkWords of(Shot shot, Mark mark, double si) {
        String path = mark.path();
        String axis = path.substring(path.lastIndexOf('.') + 1);
        return switch (axis) {
            case "x", "y", "z" -> place(shot, mark, axis, si);
            case "turn" ->
                new MarkWords(
                        "anticlockwise",
                        "clockwise",
                        "of turn",
                        sided(Print.degrees(si), si, "clockwise, ", "anticlockwise, ") + "seen from above");
            case "tilt" -> tilt(mark, si);
            case "focus" ->
                new MarkWords("nearer", "farther", "of focus distance", "from the lens point, along the axis");
            case "f_number" -> new MarkWords("open to", "stopped down to", "of aperture", "on the lens's ring");
            case "level" -> new MarkWords("dimmer", "brighter", "of level", "of what the lamp gives");
            case "by", "by_x", "by_y", "by_z" -> travel(shot, mark, axis, si);
            default ->
                axis.startsWith("tied_")
                        ? new MarkWords("lower", "higher", "up and down", "up from the thing's base")
                        : new MarkWords("less", "more", "either way", "as written in the plan");
        };
    }

    private static MarkWords place(Shot shot, Mark mark, String axis, double si) {
        return switch (axis) {
            case "x" ->
                new MarkWords(
                        "to camera left",
                        "to camera right",
                        "sideways",
                        isNothing(si)
                                ? "on the centreline"
                                : (si < 0 ? "to camera left of" : "to camera right of") + " the zero mark");
            case "y" ->
                new MarkWords(
                        "toward the camera",
                        "away from the camera",
                        "forward and back",
                        isNothing(si)
                                ? "level with the zero mark"
                                : (si < 0 ? "toward the camera from" : "away from the camera, from")
                                        + " the zero mark");
            default ->
                new MarkWords("lower", "higher", "up and down", "up from the table top to " + measuredEnd(shot, mark));
        };
    }

    /// Where on what is set the tape ends.
    private static String measuredEnd(Shot shot, Mark mark) {
        if (mark.path().startsWith("camera.")) {
            return "the lens point";
        }
        if (mark.path().startsWith("release.")) {
            return "where it is let go";
        }
        if (mark.kind() == Mark.Kind.LAMP_PLACE) {
            return "the lamp's middle";
        }
        String owner = mark.path().substring(0, mark.path().lastIndexOf('.'));
        return shot.findPlaced(owner).map(MarkWords::lowEnd).orElse("its base");
    }

    /// A thing turns about its middle, so what is turned over has its top where its base was.
    private static String lowEnd(Placed placed) {
        double lean = placed.tilt()
                .filter(Mark.Fixed.class::isInstance)
                .map(tilt -> ((Mark.Fixed) tilt).quantity().si())
                .map(tilt -> Math.abs(Math.IEEEremainder(Math.toDegrees(tilt), 360)))
                .orElse(0.0);
        if (lean < UPRIGHT_DEGREES) {
            return "its base";
        }
        return lean > 180 - UPRIGHT_DEGREES
                ? "its top end, which hangs down"
                : "its base while it is upright; lean it about its middle then";
    }

    /// Names the side that a figure is to, by its value's sign; a figure of nothing has none.
    static String sided(String figure, double si, String more, String less) {
        return isNothing(figure) ? "" : si < 0 ? less : more;
    }

    /// A turn with its side.
    static String turned(String size, double radians, String more, String less) {
        return isNothing(size) ? "0 deg" : size + " " + sided(size, radians, more, less);
    }

    private static boolean isNothing(String figure) {
        return figure.matches("-?0(\\.0+)? .*");
    }

    private static String motor(double metres) {
        return new Print(PaperUnit.MILLIMETRES).length(metres, Print.Hand.MOTOR);
    }

    /// Whether a tape shows nothing.
    private static boolean isNothing(double metres) {
        return Math.abs(metres) < 0.0005;
    }

    /// Cameras and lamps tilt from level; a thing leans while its label still faces the crew, and is turned then.
    private static MarkWords tilt(Mark mark, double si) {
        if (mark.path().equals("camera.tilt") || mark.kind() == Mark.Kind.LAMP_TURN) {
            return new MarkWords("down", "up", "of tilt", sided(Print.degrees(si), si, "up ", "down ") + "from level");
        }
        if (isNothing(Print.degrees(si))) {
            return new MarkWords("to camera left", "to camera right", "of lean", "upright");
        }
        String side = si < 0 ? "left" : "right";
        return new MarkWords(
                "to camera left",
                "to camera right",
                "of lean",
                "its top leaning to camera " + side + " while unturned; turn it after that");
    }

    private static MarkWords travel(Shot shot, Mark mark, String axis, double si) {
        boolean round = mark.kind() == Mark.Kind.MOTOR_TURN || mark.kind() == Mark.Kind.TURN;
        String way = switch (axis) {
            case "by_x" -> sided(motor(si), si, ", to camera right", ", to camera left");
            case "by_y" -> sided(motor(si), si, ", away from the camera", ", toward the camera");
            case "by_z" -> sided(motor(si), si, ", up", ", down");
            default ->
                round ? sided(Print.fineDegrees(si), si, ", clockwise", ", anticlockwise") : along(shot, mark, si);
        };
        String from = "end to end" + way;
        return si < 0
                ? new MarkWords("further", "less far", "of travel", from)
                : new MarkWords("less far", "further", "of travel", from);
    }

    /// Where a move along a line goes, by the move's own direction.
    private static String along(Shot shot, Mark mark, double si) {
        return shot.moves().stream()
                .filter(move -> move.marks().stream().anyMatch(own -> own.path().equals(mark.path())))
                .flatMap(move -> move.travel().stream())
                .map(travel -> travel.vectorMetres(_ -> si))
                .map(by -> "," + MoveRows.toward(new Vec(by[0], by[1], by[2])))
                .findFirst()
                .orElse("");
    }

    /// What is loose, as in `Sideways is loose`, `Travel is loose`.
    String subject() {
        return both.startsWith("of ") ? both.substring(3) : both;
    }
}
