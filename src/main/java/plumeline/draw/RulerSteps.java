package plumeline.draw;

import plumeline.quantity.PaperUnit;

/// Round steps of a ruler.
final class RulerSteps {
    private static final double INCH_METRES = 0.0254;
    private static final double FINEST_METRES = 0.001;
    private static final int[] SPLITS = {10, 5, 2};
    private static final int[] INCH_SPLITS = {8, 4, 2};
    private static final double[] INCHES = {0.0625, 0.125, 0.25, 0.5, 1, 2, 4, 6, 12, 24, 48, 96, 240, 480, 1200};

    private RulerSteps() {}

    /// Gives the least round step that is no shorter than a length: 1, 2 or 5 of a decimal place, or inches by their
    /// usual parts.
    static double step(PaperUnit unit, double leastMetres) {
        if (unit == PaperUnit.INCHES) {
            for (double inches : INCHES) {
                if (inches * INCH_METRES >= leastMetres) {
                    return inches * INCH_METRES;
                }
            }
            return INCHES[INCHES.length - 1] * INCH_METRES;
        }
        double decade = FINEST_METRES;
        while (decade * 10 < leastMetres) {
            decade *= 10;
        }
        for (int lead : new int[] {1, 2, 5}) {
            if (decade * lead >= leastMetres) {
                return decade * lead;
            }
        }
        return decade * 10;
    }

    /// Gives the finest even part of a step that is no shorter than a length and that a tape shows; else the step.
    static double minor(PaperUnit unit, double stepMetres, double leastMetres) {
        boolean isInches = unit == PaperUnit.INCHES;
        double finest = isInches ? INCH_METRES / 16 : FINEST_METRES;
        for (int split : isInches ? INCH_SPLITS : SPLITS) {
            double part = stepMetres / split;
            double steps = part / finest;
            if (part >= leastMetres && Math.abs(steps - Math.rint(steps)) < 1e-6 && steps > 0.5) {
                return part;
            }
        }
        return stepMetres;
    }
}
