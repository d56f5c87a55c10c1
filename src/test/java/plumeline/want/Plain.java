package plumeline.want;

/// Textbook sums written a second time, in millimetres, for the tests to compare with. Nothing of the project is used.
final class Plain {
    private Plain() {}

    /// Image distance of a thin lens: 1/f = 1/object + 1/image.
    static double image(double focalLength, double object) {
        return 1 / (1 / focalLength - 1 / object);
    }

    /// Tangent half-width of an upright cylinder straight ahead, seen level.
    static double halfWidth(double radius, double distance) {
        return Math.tan(Math.asin(radius / distance));
    }

    /// Blur disc on the sensor of a place at a depth, for a lens of aperture f/N focused elsewhere, by similar
    /// triangles.
    static double blur(double focalLength, double fNumber, double focus, double depth) {
        double sharpAt = image(focalLength, depth);
        return focalLength / fNumber * Math.abs(image(focalLength, focus) - sharpAt) / sharpAt;
    }

    /// The depth on one side of the focus at which the blur disc has a size, by halving.
    static double depthOfBlur(double focalLength, double fNumber, double focus, double disc, double end) {
        double in = focus;
        double out = end;
        for (int i = 0; i < 200; i++) {
            double middle = (in + out) / 2;
            if (blur(focalLength, fNumber, focus, middle) < disc) {
                in = middle;
            } else {
                out = middle;
            }
        }
        return in;
    }
}
