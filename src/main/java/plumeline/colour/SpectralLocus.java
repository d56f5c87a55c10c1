package plumeline.colour;

import java.util.Optional;

/// The outline of all colours that light can have in the CIE 1931 diagram: single wavelengths from 380 nm to 700 nm, in
/// steps of 1 nm and straight between them, and the straight line of purples from end to end.
public final class SpectralLocus {
    private static final int LAST = 320;
    private static final double STEP_METRES = 1e-9;

    private SpectralLocus() {}

    /// Where a line from white through a colour meets the outline.
    public sealed interface Edge {
        /// Gives where.
        ///
        /// @return x and y of CIE 1931
        Place place();

        /// At a single wavelength.
        ///
        /// @param place where
        /// @param metres the wavelength, metres, 380e-9 to 700e-9
        record Wavelength(Place place, double metres) implements Edge {}

        /// On the line of purples, which no single wavelength has.
        ///
        /// @param place where
        record Purple(Place place) implements Edge {}
    }

    /// A place in the CIE 1931 diagram.
    ///
    /// @param x x
    /// @param y y
    public record Place(double x, double y) {
        private static Place of(Chromaticity colour) {
            return new Place(colour.x(), colour.y());
        }

        private static Place of(Xyz light) {
            double all = light.x() + light.y() + light.z();
            return new Place(light.x() / all, light.y() / all);
        }

        private Place toward(Place other, double share) {
            return new Place(x + share * (other.x - x), y + share * (other.y - y));
        }

        private double distance(Place other) {
            return Math.hypot(x - other.x, y - other.y);
        }
    }

    /// Finds the dominant wavelength's place: where the line from white through a colour leaves what light can have.
    ///
    /// **Source:** CIE 15:2004, 9.1 (dominant and complementary wavelength).
    ///
    /// @param colour the colour
    /// @param white a white inside the outline
    /// @return the place; empty where colour and white are the same
    public static Optional<Edge> find(Chromaticity colour, Chromaticity white) {
        return along(Place.of(white), Place.of(colour));
    }

    /// Finds the complementary wavelength's place: where the line from a colour through white meets the outline.
    ///
    /// @param colour the colour
    /// @param white a white inside the outline
    /// @return the place; empty where colour and white are the same
    public static Optional<Edge> findOpposite(Chromaticity colour, Chromaticity white) {
        return along(Place.of(white), Place.of(colour).toward(Place.of(white), 2));
    }

    /// Gives the excitation purity: how far from white to the outline a colour lies in the CIE 1931 diagram.
    ///
    /// **Source:** CIE 15:2004, 9.2.
    ///
    /// @param colour the colour
    /// @param white a white inside the outline
    /// @return the share, 0 of the white itself; more than 1 beyond what light can have
    public static double purity(Chromaticity colour, Chromaticity white) {
        Place from = Place.of(white);
        return find(colour, white)
                .map(edge -> from.distance(Place.of(colour)) / from.distance(edge.place()))
                .orElse(0.0);
    }

    /// Gives the complement by complementary wavelength: across the white in the CIE 1931 diagram, of the same
    /// excitation purity, 1 at most. Both mix to the white.
    ///
    /// @param colour the colour
    /// @param white a white inside the outline
    /// @return the complement, a colour that light can have; the white's own is the white
    public static Chromaticity complement(Chromaticity colour, Chromaticity white) {
        double purity = Math.min(1, purity(colour, white));
        return findOpposite(colour, white)
                .map(edge -> Place.of(white).toward(edge.place(), purity))
                .map(place -> Chromaticity.ofXy(Math.max(0, place.x()), place.y()))
                .orElse(white);
    }

    private static Optional<Edge> along(Place white, Place through) {
        if (white.distance(through) < 1e-9) {
            return Optional.empty();
        }
        Optional<Edge> farthest = Optional.empty();
        double most = 0;
        for (int i = 0; i <= LAST; i++) {
            Place from = Place.of(Observer.at(i));
            Place to = Place.of(Observer.at(i == LAST ? 0 : i + 1));
            double ahead = cross(white, through, from);
            double behind = cross(white, through, to);
            if (ahead * behind > 0 || ahead == behind) {
                continue;
            }
            double share = ahead / (ahead - behind);
            Place there = from.toward(to, share);
            double way = (there.x - white.x) * (through.x - white.x) + (there.y - white.y) * (through.y - white.y);
            if (way > most) {
                most = way;
                double metres = Spectrum.FIRST_METRES + (i + share) * STEP_METRES;
                farthest = Optional.of(i == LAST ? new Edge.Purple(there) : new Edge.Wavelength(there, metres));
            }
        }
        return farthest;
    }

    private static double cross(Place white, Place through, Place there) {
        return (through.x - white.x) * (there.y - white.y) - (through.y - white.y) * (there.x - white.x);
    }
}
