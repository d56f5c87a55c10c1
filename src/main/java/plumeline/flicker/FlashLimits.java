package plumeline.flicker;

/// What guidance says of flashes on screens. Figures, no permission.
///
/// **Source:** Web Content Accessibility Guidelines (WCAG) 2.2, success criterion 2.3.1 and "general flash and red
/// flash thresholds"; Recommendation ITU-R BT.1702, whose 20 cd/m² of change, darker side under 160 cd/m² and quarter
/// of the picture are these shares on a screen of 200 cd/m²; its five seconds from memory.
public final class FlashLimits {
    /// Flashes, each a pair of opposing changes, in any one second: no more than this.
    public static final double PAIRS = 3;
    /// Change of relative luminance from which it counts, of full.
    public static final double CHANGE = 0.10;
    /// The darker side of a change that counts is below this relative luminance.
    public static final double DARKER = 0.80;
    /// Share of the picture up to which flashes don't count.
    public static final double AREA = 0.25;
    /// A quarter of a field of 10 degrees: what flashes together up to this doesn't count, sr.
    public static final double FIELD_STERADIANS = 0.006;
    /// A sequence of flashes that is longer may be a risk within all other limits, s.
    public static final double SEQUENCE_SECONDS = 5;

    private FlashLimits() {}

    /// Gives the share of the picture up to which flashes don't count on a picture that is seen so large: a quarter of
    /// it, and no more than [#FIELD_STERADIANS] of what the eye sees.
    ///
    /// @param acrossRadians angle that the picture's width takes to the eye, rad, > 0, at most π/2
    /// @param ratio the picture's width over its height, > 0
    /// @return the share, > 0, at most a quarter
    public static double area(double acrossRadians, double ratio) {
        double half = Math.tan(acrossRadians / 2);
        double steradians = 4 * Math.asin(Math.sin(Math.atan(half)) * Math.sin(Math.atan(half / ratio)));
        return Math.min(AREA, FIELD_STERADIANS / steradians);
    }
}
