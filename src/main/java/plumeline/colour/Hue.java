package plumeline.colour;

import java.util.List;
import java.util.Optional;

/// Hues by their angle in CIE LCh(ab) under D65.
public final class Hue {
    private static final int HALVINGS = 50;

    /// Steps outward from white in which the end of what a lamp reaches is looked for, C*ab.
    private static final double STEP = 5;

    /// More than any light's chroma at L* 100.
    private static final double MOST_CHROMA = 2000;

    /// A colour with less chroma has no hue to speak of, C*ab: common practice.
    private static final double GREY_CHROMA = 5;

    private static final double BLACK_L = 15;
    private static final double WHITE_L = 90;

    /// Where each name begins, deg, and the name.
    private record Named(double fromDegrees, String name) {}

    private static final List<Named> NAMES = List.of(
            new Named(0, "rose"),
            new Named(20, "red"),
            new Named(50, "orange"),
            new Named(80, "yellow"),
            new Named(107, "yellow-green"),
            new Named(128, "green"),
            new Named(170, "blue-green"),
            new Named(195, "cyan"),
            new Named(230, "sky blue"),
            new Named(265, "blue"),
            new Named(308, "violet"),
            new Named(322, "magenta"),
            new Named(345, "rose"));

    private Hue() {}

    /// Finds the most saturated colour of a hue that a lamp reaches: on the way out from D65 at L* 100 along one hue
    /// angle, as far as its emitters mix it.
    ///
    /// **Source:** CIE 15:2004, 8.2.1 for the angle; own search outward, in which the first end counts.
    ///
    /// @param primaries the lamp's emitters, at least one
    /// @param radians the hue angle hab, radians
    /// @return the colour; empty where the lamp doesn't even mix D65
    public static Optional<Chromaticity> findSaturated(List<Primary> primaries, double radians) {
        Gamut gamut = new Gamut(primaries);
        if (gamut.nearest(Chromaticity.D65).room() <= 0) {
            return Optional.empty();
        }
        double inside = 0;
        while (inside < MOST_CHROMA && isIn(gamut, inside + STEP, radians)) {
            inside += STEP;
        }
        double outside = inside + STEP;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (inside + outside) / 2;
            if (isIn(gamut, middle, radians)) {
                inside = middle;
            } else {
                outside = middle;
            }
        }
        return at(inside, radians);
    }

    private static boolean isIn(Gamut gamut, double chroma, double radians) {
        return at(chroma, radians)
                .filter(there -> gamut.nearest(there).room() >= 0)
                .isPresent();
    }

    private static Optional<Chromaticity> at(double chroma, double radians) {
        Xyz there = new Lab(100, chroma * Math.cos(radians), chroma * Math.sin(radians)).toXyz(Chromaticity.D65);
        return there.x() >= 0 && there.z() >= 0 ? there.findChromaticity() : Optional.empty();
    }

    /// Names a colour by its hue, as one says it across a room; what has next to none by its lightness.
    ///
    /// **Source:** common practice; borders between names are nowhere sharp.
    ///
    /// @param colour the colour
    /// @return such as `blue-green`, `white`
    public static String name(Lab colour) {
        if (colour.chroma() < GREY_CHROMA) {
            return colour.l() < BLACK_L ? "black" : colour.l() > WHITE_L ? "white" : "grey";
        }
        double degrees = (Math.toDegrees(colour.hueRadians()) + 360) % 360;
        return NAMES.reversed().stream()
                .filter(named -> degrees >= named.fromDegrees)
                .findFirst()
                .orElseThrow()
                .name();
    }
}
