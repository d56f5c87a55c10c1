package plumeline.sheet;

import java.util.Locale;
import plumeline.press.PdfPrinter;
import plumeline.solve.FilmAnswer;

/// The papers of a film: shot sheets as HTML and PDF, marks as a list. Both forms of the sheets are made from one set
/// of drawn sections.
public final class Papers {
    private final FilmAnswer film;
    private final FilmPage page;

    private Papers(FilmAnswer film, Printed printed) {
        this.film = film;
        page = new FilmPage(film, printed);
    }

    /// Draws the sheets of a film.
    ///
    /// @param film the findings on the film
    /// @param printed when they are printed, and what changed
    /// @return the sheets, to be had as a page and as a print
    public static Papers of(FilmAnswer film, Printed printed) {
        return new Papers(film, printed);
    }

    /// Gives the shot sheets as one page that opens offline, from phone width to A4.
    ///
    /// @return HTML that is well-formed XML too, with its styles and drawings in it
    public String html() {
        return page.html();
    }

    /// Gives the shot sheets as tagged A4 pages with the lettering embedded.
    ///
    /// @return the PDF file's bytes
    public byte[] pdf() {
        return PdfPrinter.print(page.parts(), film.planSha256());
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
