package plumeline.ask.colour;

import java.util.List;
import plumeline.answer.Given;
import plumeline.colour.Spectrum;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;

/// Tables of wavelengths as questions write them: `[[400 nm, 12 %], [410 nm, 13 %], …]`.
final class Wavelengths {
    private static final double LEAST_SEEN = 1e-6;

    private static final Shape WHERE =
            new Shape.Amount(Kind.LENGTH, Range.between("200 nm", "1200 nm"), Shape.Mark.FIXED);

    /// A light's power at each wavelength, in any unit.
    static final Shape LIGHT = new Shape.Curve(
            WHERE, new Shape.Amount(Kind.NUMBER, Range.between("0", "1000000000"), Shape.Mark.FIXED), 2);

    /// A surface's share of each wavelength.
    static final Shape SURFACE =
            new Shape.Curve(WHERE, new Shape.Amount(Kind.SHARE, Range.between("0 %", "100 %"), Shape.Mark.FIXED), 2);

    private static final double FROM_METRES = 420e-9;
    private static final double TO_METRES = 680e-9;

    private Wavelengths() {}

    /// Reads a light; refused where nothing of it is seen.
    static Spectrum light(Given given, String key) {
        Spectrum light = Spectrum.of(rows(given, key), Spectrum.Beyond.NOTHING);
        if (light.xyz().y() > LEAST_SEEN) {
            return light;
        }
        given.refuse(
                key,
                "P-ASK-99",
                "nothing from 380 nm to 780 nm",
                "a light that is seen",
                "Give some power between 400 nm and 700 nm.");
        return Spectrum.of(_ -> 1);
    }

    /// Reads a surface; refused where its table leaves out much of what is seen.
    static Spectrum surface(Given given, String key) {
        List<Spectrum.Row> rows = rows(given, key);
        if (rows.getFirst().metres() > FROM_METRES || rows.getLast().metres() < TO_METRES) {
            given.refuse(
                    key,
                    "P-ASK-27",
                    nanometres(rows.getFirst()) + " to " + nanometres(rows.getLast()),
                    "a table from 420 nm or less to 680 nm or more",
                    "Measure it from 400 nm to 700 nm, or give lab instead.");
        }
        return Spectrum.of(rows, Spectrum.Beyond.THE_SAME);
    }

    private static String nanometres(Spectrum.Row row) {
        return Math.round(row.metres() * 1e9) + " nm";
    }

    private static List<Spectrum.Row> rows(Given given, String key) {
        return given.rows(key).stream()
                .map(row -> new Spectrum.Row(row.get(0), row.get(1)))
                .toList();
    }
}
