package plumeline.lit;

/// How bright a panel is in a place of it, −1 to 1 across and up, by the tangent of the angle to its front at which
/// light leaves; for tests.
@FunctionalInterface
interface Uneven {
    double share(double across, double up, double tangent);

    /// By the lamp's further keys: a centre 1.5 stops brighter than the corners; a window half as wide and high; a grid
    /// of round cells that leaves half at 20 degrees, where tan 20 is 0.40397 of a cell's width over its depth.
    static Uneven of(String keys) {
        return switch (keys) {
            case "" -> (across, up, tangent) -> 1;
            case "hot_centre: 1.5 stops" ->
                (across, up, tangent) -> Math.pow(2, -1.5 * (across * across + up * up) / 2);
            case "window: [200 mm, 100 mm], field: bright" ->
                (across, up, tangent) -> Math.abs(across) < 0.5 && Math.abs(up) < 0.5 ? 0 : 1;
            case "grid: 40 deg" ->
                (across, up, tangent) -> {
                    double moved = tangent * 0.4039727533 / Math.tan(Math.toRadians(20));
                    return moved >= 1 ? 0 : 2 / Math.PI * (Math.acos(moved) - moved * Math.sqrt(1 - moved * moved));
                };
            default -> throw new IllegalArgumentException(keys);
        };
    }

    /// Its mean over the face, straight ahead.
    default double mean() {
        int each = 400;
        double sum = 0;
        for (int i = 0; i < each; i++) {
            for (int j = 0; j < each; j++) {
                sum += share(2 * (i + 0.5) / each - 1, 2 * (j + 0.5) / each - 1, 0);
            }
        }
        return sum / each / each;
    }
}
