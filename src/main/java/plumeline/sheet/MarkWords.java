package plumeline.sheet;

import plumeline.plan.Mark;

/// What a mark is called on paper, and from where and which way it is measured.
///
/// @param minus the way to smaller values, as in `3 mm to the left`
/// @param plus the way to larger values
/// @param both both ways, as in `±7 mm sideways`
/// @param from from where it is measured
record MarkWords(String minus, String plus, String both, String from) {
    /// @param si its value, SI; decides which side of the zero mark is named
    static MarkWords of(Mark mark, double si) {
        String path = mark.path();
        String axis = path.substring(path.lastIndexOf('.') + 1);
        return switch (axis) {
            case "x", "y", "z" -> place(path, axis, si);
            case "turn" ->
                new MarkWords(
                        "anticlockwise",
                        "clockwise",
                        "of turn",
                        si < 0 ? "anticlockwise, seen from above" : "clockwise, seen from above");
            case "tilt" -> tilt(path, si);
            case "focus" ->
                new MarkWords("nearer", "farther", "of focus distance", "from the lens point, along the axis");
            case "f_number" -> new MarkWords("wider open", "stopped down", "of f-number", "on the lens's ring");
            case "level" -> new MarkWords("dimmer", "brighter", "of level", "of what the lamp gives");
            case "by", "by_x", "by_y", "by_z" -> travel(mark, axis, si);
            default ->
                axis.startsWith("tied_")
                        ? new MarkWords("lower", "higher", "up and down", "up from the thing's base")
                        : new MarkWords("less", "more", "either way", "as written in the plan");
        };
    }

    private static MarkWords place(String path, String axis, double si) {
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
                new MarkWords(
                        "lower",
                        "higher",
                        "up and down",
                        path.equals("camera.z") ? "up from the table top to the lens point" : "up from the table top");
        };
    }

    /// Whether a tape shows nothing.
    private static boolean isNothing(double metres) {
        return Math.abs(metres) < 0.0005;
    }

    private static MarkWords tilt(String path, double si) {
        return path.equals("camera.tilt")
                ? new MarkWords("down", "up", "of tilt", si < 0 ? "down from level" : "up from level")
                : new MarkWords("to camera left", "to camera right", "of lean", "its top leaning to camera right");
    }

    private static MarkWords travel(Mark mark, String axis, double si) {
        boolean round = mark.kind() == Mark.Kind.MOTOR_TURN || mark.kind() == Mark.Kind.TURN;
        String way = switch (axis) {
            case "by_x" -> si < 0 ? ", to camera left" : ", to camera right";
            case "by_y" -> si < 0 ? ", toward the camera" : ", away from the camera";
            case "by_z" -> si < 0 ? ", down" : ", up";
            default -> round ? (si < 0 ? ", anticlockwise" : ", clockwise") : "";
        };
        String from = "end to end" + way;
        return si < 0
                ? new MarkWords("further", "less far", "of travel", from)
                : new MarkWords("less far", "further", "of travel", from);
    }

    /// What is loose, as in `Sideways is loose`, `Travel is loose`.
    String subject() {
        return both.startsWith("of ") ? both.substring(3) : both;
    }
}
