package plumeline.trace;

/// Plates of light that a test knows.
public final class MadePlate {
    private MadePlate() {}

    /// Gives light at a place.
    public interface Field {
        /// @param x pixels from the left, a pixel's middle at its half
        /// @param y pixels from the top
        /// @return cd/m² in each of three channels
        double[] at(double x, double y);
    }

    /// A plate of this light, one ray a pixel.
    public static Plate of(int width, int height, Field field) {
        Plate plate = new Plate(width, height);
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                plate.add(x, y, field.at(x + 0.5, y + 0.5), 0);
            }
        }
        return plate;
    }
}
