package plumeline.geom;

import java.util.function.DoubleUnaryOperator;

/// The least value of a function with one valley between two places, by golden section.
final class Golden {
    private static final double SHARE = 0.6180339887498949;
    private static final int STEPS = 24;

    private Golden() {}

    static double least(DoubleUnaryOperator of, double from, double to) {
        return of.applyAsDouble(place(of, from, to));
    }

    /// Where the function is least.
    static double place(DoubleUnaryOperator of, double from, double to) {
        double low = from;
        double high = to;
        double a = high - SHARE * (high - low);
        double b = low + SHARE * (high - low);
        double atA = of.applyAsDouble(a);
        double atB = of.applyAsDouble(b);
        for (int i = 0; i < STEPS; i++) {
            if (atA < atB) {
                high = b;
                b = a;
                atB = atA;
                a = high - SHARE * (high - low);
                atA = of.applyAsDouble(a);
            } else {
                low = a;
                a = b;
                atA = atB;
                b = low + SHARE * (high - low);
                atB = of.applyAsDouble(b);
            }
        }
        return atA < atB ? a : b;
    }
}
