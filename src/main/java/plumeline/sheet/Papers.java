package plumeline.sheet;

import java.util.Locale;
import plumeline.solve.FilmAnswer;

/// The papers of a film: shot sheets as HTML and PDF, marks as a list.
public final class Papers {
    private Papers() {}

    /// Makes the shot sheets as one page that opens offline, from phone width to A4.
    ///
    /// @param film the findings on the film
    /// @param printed when it is printed
    /// @return HTML that is well-formed XML too, with its styles and drawings in it
    public static String html(FilmAnswer film, Printed printed) {
        return "<!DOCTYPE html>\n" + FilmPage.of(film, printed).toText();
    }

    /// Makes the shot sheets as tagged A4 pages with the lettering embedded.
    ///
    /// @param film the findings on the film
    /// @param printed when it is printed
    /// @return the PDF file's bytes
    public static byte[] pdf(FilmAnswer film, Printed printed) {
        return PdfPrinter.print(html(film, printed), film.planSha256());
    }

    /// Lists the marks that have a value, as RFC 4180 asks: comma, CRLF, quotes where needed.
    ///
    /// @param film the findings on the film
    /// @return the header and a row a mark
    public static String marksCsv(FilmAnswer film) {
        return MarksCsv.of(film);
    }

    /// Gives the plan's revision as papers print it.
    ///
    /// @param film the findings on the film
    /// @return the first twelve figures of the plan's SHA-256
    public static String revision(FilmAnswer film) {
        String sha256 = film.planSha256().toLowerCase(Locale.ROOT);
        return sha256.substring(0, Math.min(12, sha256.length()));
    }
}
