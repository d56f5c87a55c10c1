package plumeline.cli.picture;

import java.io.StringWriter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Point;
import plumeline.resect.Findings;
import plumeline.resect.Landmark;
import plumeline.resect.Said;
import plumeline.resect.Sought;
import plumeline.resect.Spotted;
import plumeline.resect.StillView;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/// The answer of `compare` as JSON: lengths in mm, angles in deg, shares in %, places in px; `low` and `high` bound 80
/// %, `plus_minus` 95 %; what clicks don't tell has no figure, what is off or something else instead no ±.
final class CompareJson {
    private static final JsonFactory FACTORY = new JsonFactory();
    private static final double FINEST = 1e4;

    private final JsonGenerator out;
    private final Said said;

    private CompareJson(JsonGenerator out, Said said) {
        this.out = out;
        this.said = said;
    }

    /// What is answered.
    ///
    /// @param title the shot's name, and its pass's
    /// @param when the instant in words
    /// @param view the shot and its still
    /// @param findings what the clicks came to, where there are any
    /// @param wants how the wants stand then
    /// @param page where the page was written, where it was
    record Answer(
            String title,
            String when,
            StillView view,
            Optional<Findings> findings,
            List<CompareWants> wants,
            Optional<String> page) {
        Answer {
            wants = List.copyOf(wants);
        }
    }

    static String of(Answer answer, Said said) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            new CompareJson(out, said).all(answer);
        }
        return text + "\n";
    }

    private void all(Answer answer) {
        out.writeStartObject();
        out.writeStringProperty("shot", answer.title());
        out.writeStringProperty("at", answer.when());
        out.writeName("still");
        out.writeStartObject();
        out.writeNumberProperty("width", answer.view().still().acrossPixels());
        out.writeNumberProperty("height", answer.view().still().downPixels());
        String shows = answer.view().still().shows();
        out.writeStringProperty("shows", shows.isEmpty() ? "whole picture" : shows);
        out.writeEndObject();
        answer.page().ifPresent(page -> out.writeStringProperty("page", page));
        if (answer.findings().isPresent()) {
            findings(answer.findings().get());
            wants(answer.wants());
        }
        places(answer.view());
        out.writeEndObject();
    }

    private void findings(Findings findings) {
        out.writeArrayPropertyStart("says");
        said.of(findings).forEach(out::writeString);
        out.writeEndArray();
        out.writeArrayPropertyStart("marks");
        findings.offs().forEach(this::mark);
        out.writeEndArray();
        out.writeArrayPropertyStart("alone");
        for (Findings.Single single : findings.singles()) {
            out.writeStartObject();
            out.writeStringProperty("only", single.owner());
            out.writeStringProperty(
                    "what",
                    switch (single.what()) {
                        case ALL -> "all its marks";
                        case AIM -> "aim";
                        case PLACE -> "place";
                    });
            out.writeArrayPropertyStart("marks");
            single.offs().forEach(this::mark);
            out.writeEndArray();
            out.writeEndObject();
        }
        out.writeEndArray();
        out.writeArrayPropertyStart("points");
        findings.places().forEach(this::point);
        out.writeEndArray();
        out.writeNumberProperty("widened", rounded(findings.widened()));
    }

    private void mark(Findings.Off off) {
        out.writeStartObject();
        out.writeStringProperty("mark", off.sought().name());
        if (off.told() != Findings.Told.NOT) {
            out.writeName("off");
            out.writeStartObject();
            number("value", off.sought(), off.offSi());
            out.writeStringProperty("unit", unit(off.sought().kind()));
            if (off.isTold()) {
                number("low", off.sought(), off.lowSi());
                number("high", off.sought(), off.highSi());
            }
            out.writeEndObject();
        }
        if (off.isTold()) {
            sized("plus_minus", off.sought(), off.halfSi());
        }
        sized("placing_error", off.sought(), off.sought().errorSi());
        out.writeStringProperty(
                "told",
                switch (off.told()) {
                    case NOT -> "no";
                    case EITHER -> "it or another";
                    case WITHIN, APART -> "yes";
                });
        out.writeStringProperty("beyond_placing_error", off.told() == Findings.Told.APART ? "yes" : "no");
        if (off.isOff()) {
            out.writeStringProperty("words", said.stands(off.sought(), off.offSi()));
        }
        out.writeEndObject();
    }

    private void sized(String name, Sought sought, double si) {
        out.writeName(name);
        out.writeStartObject();
        number("value", sought, si);
        out.writeStringProperty("unit", unit(sought.kind()));
        out.writeEndObject();
    }

    private void number(String name, Sought sought, double si) {
        double figure = switch (sought.kind()) {
            case LENGTH -> si * 1e3;
            case ANGLE -> Math.toDegrees(si);
            case SHARE -> si * 100;
        };
        out.writeNumberProperty(name, rounded(figure));
    }

    private static String unit(Sought.Kind kind) {
        return switch (kind) {
            case LENGTH -> "mm";
            case ANGLE -> "deg";
            case SHARE -> "%";
        };
    }

    private void point(Findings.Place place) {
        out.writeStartObject();
        out.writeStringProperty("place", place.name());
        at("clicked", place.clicked());
        at("planned", place.planned());
        at("fitted", place.fitted());
        pixels("off", place.offPixels());
        pixels("residual", place.leftPixels());
        out.writeStringProperty("misclick", place.isMisclick() ? "yes" : "no");
        out.writeEndObject();
    }

    private void at(String name, Point at) {
        out.writeName(name);
        out.writeStartObject();
        pixels("x", at.x());
        pixels("y", at.y());
        out.writeEndObject();
    }

    private void pixels(String name, double pixels) {
        out.writeName(name);
        out.writeStartObject();
        out.writeNumberProperty("value", rounded(pixels));
        out.writeStringProperty("unit", "px");
        out.writeEndObject();
    }

    private void wants(List<CompareWants> wants) {
        out.writeArrayPropertyStart("wants");
        for (CompareWants want : wants) {
            out.writeStartObject();
            out.writeStringProperty("id", want.id());
            out.writeStringProperty("want", want.words());
            margin("planned", want.planned(), want.unit());
            margin("seeming", want.seeming(), want.unit());
            out.writeStringProperty("lost", want.isLost() ? "yes" : "no");
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void margin(String name, double value, String unit) {
        if (Double.isFinite(value)) {
            out.writeName(name);
            out.writeStartObject();
            out.writeNumberProperty("value", rounded(value));
            out.writeStringProperty("unit", unit);
            out.writeEndObject();
        }
    }

    private void places(StillView view) {
        out.writeArrayPropertyStart("places");
        for (Landmark landmark : view.landmarks()) {
            out.writeStartObject();
            out.writeStringProperty("place", landmark.name());
            switch (view.spot(landmark)) {
                case Spotted.Seen(Point pixel) -> {
                    at("planned", pixel);
                    out.writeStringProperty("seen", "yes");
                }
                case Spotted.Covered(Point pixel, String why) -> {
                    at("planned", pixel);
                    out.writeStringProperty("seen", "no");
                    out.writeStringProperty("why", why);
                }
                case Spotted.Unknown(String why) -> {
                    out.writeStringProperty("seen", "unknown");
                    out.writeStringProperty("why", why);
                }
            }
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private static double rounded(double value) {
        double rounded = Math.rint(value * FINEST) / FINEST;
        return rounded == 0 ? 0 : rounded;
    }

    static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
