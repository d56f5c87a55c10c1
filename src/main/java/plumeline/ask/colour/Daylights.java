package plumeline.ask.colour;

import plumeline.colour.Chromaticity;
import plumeline.colour.Daylight;
import plumeline.colour.Spectrum;

/// The two daylights by which colours of labels are written down.
final class Daylights {
    /// D65's spectrum: 6500 K by an older constant.
    static final Spectrum D65 = Daylight.spectrum(6500 * 1.4388 / 1.4380);

    /// D50's spectrum, by which prints are measured.
    static final Spectrum D50 = Daylight.spectrum(5000 * 1.4388 / 1.4380);

    /// D50 to four digits.
    static final Chromaticity D50_COLOUR = Chromaticity.ofXy(0.3457, 0.3585);

    private Daylights() {}
}
