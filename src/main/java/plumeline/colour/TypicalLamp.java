package plumeline.colour;

import java.util.List;

/// A lamp of red, green, blue and white emitters of which nobody knows more.
///
/// **Source:** coordinates and shares usual of such emitters: common practice.
public final class TypicalLamp {
    /// Its emitters' names, in their order.
    public static final List<String> NAMES = List.of("red", "green", "blue", "white");

    /// Its emitters.
    public static final List<Primary> PRIMARIES =
            List.of(of(0.700, 0.299, 300), of(0.170, 0.700, 600), of(0.140, 0.050, 90), of(0.330, 0.340, 1000));

    private TypicalLamp() {}

    private static Primary of(double x, double y, double lumens) {
        return new Primary(Chromaticity.ofXy(x, y), lumens);
    }
}
