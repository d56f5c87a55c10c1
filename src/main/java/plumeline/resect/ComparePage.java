package plumeline.resect;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Point;
import plumeline.sketch.Markup;

/// A still and the picture side by side, each place that can be clicked numbered, and a list of them; with an answer,
/// what it says and how far each click is off, drawn.
public final class ComparePage {
    private static final int MAGNIFIED = 20;

    private final Subject subject;
    private final StillView view;
    private final Optional<Findings> findings;
    private final Said said;
    private final double across;

    private ComparePage(Subject subject, StillView view, Optional<Findings> findings, Said said) {
        this.subject = subject;
        this.view = view;
        this.findings = findings;
        this.said = said;
        across = view.still().acrossPixels();
    }

    /// What is compared.
    ///
    /// @param title such as `spin (rose) at its start`
    /// @param stillName the still's file
    /// @param still the still
    /// @param picture the picture of the same part
    /// @param command what is typed before the points
    /// @param notes what else to know, in sentences
    public record Subject(
            String title, String stillName, Image still, Image picture, String command, List<String> notes) {
        /// Copies the list.
        public Subject {
            notes = List.copyOf(notes);
        }
    }

    /// A picture's file.
    public static final class Image {
        private final String url;

        private Image(String url) {
            this.url = url;
        }

        /// Takes a file's bytes.
        ///
        /// @param kind its media type
        /// @param bytes the bytes
        /// @return the image
        public static Image of(String kind, byte[] bytes) {
            return new Image("data:" + kind + ";base64," + Base64.getEncoder().encodeToString(bytes));
        }
    }

    /// Writes the page.
    ///
    /// @param subject what is compared
    /// @param view the shot and what the still shows of it
    /// @param findings what clicks came to, where there are any
    /// @param said puts them into words
    /// @return HTML
    public static String of(Subject subject, StillView view, Optional<Findings> findings, Said said) {
        return "<!DOCTYPE html>\n"
                + new ComparePage(subject, view, findings, said).page().toText() + "\n";
    }

    private Markup page() {
        Markup body = Markup.of("body");
        body.add(
                Markup.of("h1", "Still against plan: " + subject.title()),
                Markup.of(
                        "p",
                        subject.stillName() + ", " + view.still().acrossPixels() + " by "
                                + view.still().downPixels() + " px, taken to show "
                                + (view.still().shows().isEmpty()
                                        ? "the camera's whole picture"
                                        : "what the delivery " + view.still().shows() + " keeps of it")
                                + "."));
        subject.notes().forEach(note -> body.add(Markup.of("p", note).with("class", "faint")));
        findings.ifPresent(found -> body.add(answer(found)));
        body.add(
                Markup.of("h2", "Click places"),
                Markup.of(
                        "p",
                        "Choose a place in the list or in the picture, then click where it is in the still, or"
                                + " go there by arrow keys (Shift: 20 px, Alt: 0.2 px) and press Enter. Three at"
                                + " least; at different depths they tell more."),
                Markup.of("p").with("id", "said").with("role", "status"));
        body.add(Markup.of("div", stillFigure(), pictureFigure()).with("class", "pair"));
        body.add(bench());
        body.add(Markup.script(PageText.SCRIPT));
        return Markup.of(
                        "html",
                        Markup.of(
                                "head",
                                Markup.of("meta").with("charset", "utf-8"),
                                Markup.of("meta")
                                        .with("name", "viewport")
                                        .with("content", "width=device-width, initial-scale=1"),
                                Markup.of("title", "Still against plan: " + subject.title()),
                                Markup.style(PageText.STYLE)),
                        body)
                .with("lang", "en");
    }

    private Markup answer(Findings found) {
        Markup section = Markup.of("section", Markup.of("h2", "What the clicks say"));
        said.of(found).forEach(sentence -> section.add(Markup.of("p", sentence)));
        Markup marks = Markup.of("table", row("th", "mark", "seems off by", "±, 95 %", "placing error"));
        for (Findings.Off off : found.offs()) {
            if (off.told() != Findings.Told.NOT) {
                marks.add(row(
                                "td",
                                off.sought().name(),
                                signed(off),
                                off.isTold() ? said.size(off.sought(), off.halfSi()) : "it or something else",
                                said.size(off.sought(), off.sought().errorSi()))
                        .with("class", off.isOff() ? "off" : ""));
            }
        }
        section.add(Markup.of("h2", "Mark by mark, as far as the clicks tell"), marks);
        return section;
    }

    private String signed(Findings.Off off) {
        return said.signed(off.sought(), off.offSi()).replace('-', '−');
    }

    private static Markup row(String cell, String first, String... figures) {
        Markup row = Markup.of("tr", Markup.of(cell, first));
        for (String figure : figures) {
            row.add(Markup.of(cell, figure).with("class", "n"));
        }
        return row;
    }

    private Markup stillFigure() {
        Markup drawn = layer();
        outlines(drawn, "planned");
        findings.ifPresent(found -> found.places().forEach(place -> residual(drawn, place)));
        Markup noted = Markup.of("g").with("id", "noted");
        Markup hair = Markup.of("g").with("id", "hair");
        Markup sheet = Markup.of(
                        "div",
                        Markup.of("img")
                                .with("src", subject.still().url)
                                .with("alt", "The still " + subject.stillName()),
                        drawn.add(noted, hair))
                .with("class", "sheet")
                .with("id", "still")
                .with("tabindex", "0")
                .with("role", "application")
                .with(
                        "aria-label",
                        "The still: arrow keys move the cross by a pixel, with Shift by 20; Enter notes the chosen"
                                + " place there, Delete takes it back")
                .with("data-across", String.valueOf(view.still().acrossPixels()))
                .with("data-down", String.valueOf(view.still().downPixels()))
                .with("data-command", subject.command());
        String legend = findings.isEmpty()
                ? "The still; dashed: outlines as planned"
                : "The still; dashed: outlines as planned. A ring is a click, the line from it leads to where the plan"
                        + " has its place; the thick line is what is left with everything as it seems, " + MAGNIFIED
                        + " times as long";
        return Markup.of("figure", sheet, Markup.of("figcaption", legend));
    }

    private Markup pictureFigure() {
        Markup drawn = layer();
        outlines(drawn, "over");
        int number = 0;
        for (Place place : places()) {
            number++;
            mark(drawn, place, number);
        }
        return Markup.of(
                "figure",
                Markup.of(
                                "div",
                                Markup.of("img")
                                        .with("src", subject.picture().url)
                                        .with("alt", "The picture as planned"),
                                drawn)
                        .with("class", "sheet")
                        .with("id", "picture"),
                Markup.of("figcaption", "The picture as planned; numbers: places to click. A click here chooses one"));
    }

    private Markup layer() {
        return Markup.of("svg")
                .with(
                        "viewBox",
                        "0 0 " + view.still().acrossPixels() + " "
                                + view.still().downPixels())
                .with("preserveAspectRatio", "none")
                .with("aria-hidden", "true");
    }

    private void outlines(Markup into, String word) {
        for (StillView.Drawn thing : view.outlines()) {
            for (List<Point> shell : thing.shells()) {
                StringBuilder corners = new StringBuilder();
                shell.forEach(point -> corners.append(Markup.number(point.x()))
                        .append(',')
                        .append(Markup.number(point.y()))
                        .append(' '));
                into.add(
                        polygon(corners.toString(), "under", across / 480),
                        polygon(corners.toString(), "over " + word, across / 1600));
            }
        }
    }

    private static Markup polygon(String corners, String word, double wide) {
        return Markup.of("polygon")
                .with("points", corners.strip())
                .with("class", word)
                .with("stroke-width", wide);
    }

    /// A place that should be seen.
    private record Place(Landmark landmark, Point pixel) {}

    private List<Place> places() {
        List<Place> places = new ArrayList<>();
        for (Landmark landmark : view.landmarks()) {
            if (view.spot(landmark) instanceof Spotted.Seen(Point pixel)) {
                places.add(new Place(landmark, pixel));
            }
        }
        return places;
    }

    /// A place's cross and its number, the number away from its thing's middle.
    private void mark(Markup into, Place place, int number) {
        String owner = owner(place.landmark());
        List<Place> kin = places().stream()
                .filter(other -> owner(other.landmark()).equals(owner))
                .toList();
        double x =
                kin.stream().mapToDouble(other -> other.pixel().x()).average().orElse(0);
        double y =
                kin.stream().mapToDouble(other -> other.pixel().y()).average().orElse(0);
        boolean isLeft = place.pixel().x() < x;
        boolean isHigh = place.pixel().y() < y;
        boolean isInner = place.landmark().name().contains(".label.");
        cross(into, place.pixel(), across / 130);
        double aside = across / 110 * (isLeft != isInner ? -1 : 1);
        into.add(Markup.of("text", String.valueOf(number))
                .with("x", place.pixel().x() + aside)
                .with("y", place.pixel().y() + (isHigh ? -across / 240 : across / 62))
                .with("text-anchor", aside < 0 ? "end" : "start")
                .with("font-size", across / 52)
                .with("stroke-width", across / 300));
    }

    private static String owner(Landmark landmark) {
        return landmark.name().substring(0, landmark.name().indexOf('.'));
    }

    private void cross(Markup into, Point at, double size) {
        for (String word : List.of("under", "over")) {
            double wide = word.equals("under") ? across / 320 : across / 960;
            into.add(
                    line(new Point(at.x() - size, at.y()), new Point(at.x() + size, at.y()), word, wide),
                    line(new Point(at.x(), at.y() - size), new Point(at.x(), at.y() + size), word, wide));
        }
    }

    private static Markup line(Point from, Point to, String word, double wide) {
        return Markup.of("line")
                .with("x1", from.x())
                .with("y1", from.y())
                .with("x2", to.x())
                .with("y2", to.y())
                .with("class", word)
                .with("stroke-width", wide);
    }

    private void residual(Markup into, Findings.Place place) {
        Point clicked = place.clicked();
        Point left = new Point(
                clicked.x() + MAGNIFIED * (place.fitted().x() - clicked.x()),
                clicked.y() + MAGNIFIED * (place.fitted().y() - clicked.y()));
        for (String word : List.of("under", "over")) {
            double wide = word.equals("under") ? across / 320 : across / 960;
            into.add(
                    line(clicked, place.planned(), word, wide),
                    Markup.of("circle")
                            .with("cx", clicked.x())
                            .with("cy", clicked.y())
                            .with("r", across / 160)
                            .with("class", word)
                            .with("stroke-width", wide));
            if (!place.isMisclick()) {
                into.add(line(clicked, left, word, 2 * wide));
            }
        }
    }

    private Markup bench() {
        Markup list = Markup.of("table", row("th", "place", "should show at, px", "clicked at, px", "left, px"));
        int number = 0;
        for (Place place : places()) {
            number++;
            list.add(entry(place, number));
        }
        Markup side = Markup.of(
                        "div",
                        Markup.of("p", "Under the cross, four times as large:"),
                        Markup.of("canvas")
                                .with("id", "lens")
                                .with("width", "240")
                                .with("height", "240")
                                .with("role", "img")
                                .with("aria-label", "The still under the cross, four times as large"))
                .with("class", "side");
        return Markup.of(
                "section",
                Markup.of("div", Markup.of("div", list), side).with("class", "bench"),
                Markup.of("h2", Markup.of("label", "What to type then").with("for", "command")),
                Markup.of("textarea", "")
                        .with("id", "command")
                        .with("rows", "5")
                        .with("readonly", "readonly"),
                Markup.of(
                        "p",
                        Markup.of("button", "Copy it").with("id", "copy").with("type", "button"),
                        Markup.of("button", "Take all back").with("id", "back").with("type", "button")));
    }

    private Markup entry(Place place, int number) {
        String name = place.landmark().name();
        Markup choice = Markup.of("input")
                .with("type", "radio")
                .with("name", "place")
                .with("value", name)
                .with("data-number", String.valueOf(number))
                .with("data-x", figure(place.pixel().x()))
                .with("data-y", figure(place.pixel().y()));
        Optional<Findings.Place> found = findings.stream()
                .flatMap(all -> all.places().stream())
                .filter(one -> one.name().equals(name))
                .findFirst();
        found.ifPresent(one -> choice.with(
                "data-clicked",
                figure(one.clicked().x()) + " " + figure(one.clicked().y())));
        if (number == 1) {
            choice.with("checked", "checked");
        }
        return Markup.of(
                "tr",
                Markup.of("td", Markup.of("label", choice).add(Markup.of("span", " " + number + "  " + name))),
                cell(figure(place.pixel().x()) + ", " + figure(place.pixel().y())),
                cell("").with("id", "at-" + number),
                cell(found.map(one -> one.isMisclick() ? "misclick" : figure(one.leftPixels()))
                        .orElse("")));
    }

    private static Markup cell(String text) {
        return Markup.of("td", text).with("class", "n");
    }

    private static String figure(double pixels) {
        return String.format(Locale.ROOT, "%.1f", pixels);
    }
}
