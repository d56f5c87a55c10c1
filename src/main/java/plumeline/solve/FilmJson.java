package plumeline.solve;

import java.io.StringWriter;
import java.util.List;
import plumeline.plan.Mark;
import plumeline.search.Leeway;
import plumeline.text.Problem;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.json.JsonFactory;

/// The plan-level answer as JSON, in the form that `./plumeline solve PLAN --json` prints.
///
/// Lengths in mm, angles in deg, shares in %, f-numbers and counts in 1. A mark without a value yet has no `value`.
public final class FilmJson {
    private static final JsonFactory FACTORY = new JsonFactory();

    /// Figures are given to a millionth of their unit, so that they read the same on every machine.
    private static final double FINEST = 1e6;

    private final JsonGenerator out;

    private FilmJson(JsonGenerator out) {
        this.out = out;
    }

    /// Writes a film's findings.
    ///
    /// @param answer the findings
    /// @return JSON text of one object
    public static String of(FilmAnswer answer) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            new FilmJson(out).film(answer);
        }
        return text.toString();
    }

    /// Writes the problems of a plan that couldn't be solved.
    ///
    /// @param problems the problems
    /// @return JSON text of one object
    public static String ofProblems(List<Problem> problems) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            FilmJson json = new FilmJson(out);
            out.writeStartObject();
            json.problems(problems);
            out.writeEndObject();
        }
        return text.toString();
    }

    private void film(FilmAnswer answer) {
        out.writeStartObject();
        out.writeStringProperty("film", answer.plan().film().title().orElse(""));
        out.writeStringProperty("verdict", answer.verdict().word());
        out.writeStringProperty("plan_sha256", answer.planSha256());
        out.writeArrayPropertyStart("shots");
        answer.shots().forEach(this::shot);
        out.writeEndArray();
        wants(answer.wants());
        problems(List.of());
        out.writeEndObject();
    }

    private void shot(ShotAnswer shot) {
        out.writeStartObject();
        out.writeStringProperty("shot", shot.shot());
        out.writeStringProperty("verdict", shot.verdict().word());
        wants(shot.wants());
        out.writeArrayPropertyStart("marks");
        shot.marks().forEach(this::mark);
        out.writeEndArray();
        out.writeName("together");
        value(shot.together(), "1");
        strings("leeway_without", shot.leewayWithout());
        strings("notes", shot.notes());
        out.writeEndObject();
    }

    private void wants(List<WantAnswer> wants) {
        out.writeArrayPropertyStart("wants");
        for (WantAnswer want : wants) {
            out.writeStartObject();
            out.writeStringProperty("id", want.id());
            out.writeStringProperty("want", want.want());
            if (!want.pass().isEmpty()) {
                out.writeStringProperty("pass", want.pass());
            }
            out.writeStringProperty("verdict", want.verdict().word());
            margin("margin", want.margin());
            margin("margin_over_pupil", want.overPupil());
            strings("because", want.because());
            strings("try", want.attempts());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    private void margin(String name, WantAnswer.Margin margin) {
        switch (margin) {
            case WantAnswer.Margin.Of(double value, String unit) -> {
                out.writeName(name);
                value(value, unit);
            }
            case WantAnswer.Margin.None() -> {}
        }
    }

    private void mark(MarkAnswer mark) {
        MarkUnit unit = MarkUnit.of(mark.mark());
        out.writeStartObject();
        out.writeStringProperty("mark", mark.mark().path());
        switch (mark.setting()) {
            case MarkAnswer.Setting.At at -> {
                out.writeName("value");
                value(at.si() * unit.perSi(), unit.symbol());
                out.writeStringProperty("origin", at.origin().word());
            }
            case MarkAnswer.Setting.Open() -> out.writeStringProperty("origin", "free");
        }
        out.writeObjectPropertyStart("leeway");
        side("minus", mark.leeway().minus(), unit);
        side("plus", mark.leeway().plus(), unit);
        out.writeEndObject();
        out.writeObjectPropertyStart("ends");
        out.writeStringProperty("minus", mark.ends().minus());
        out.writeStringProperty("plus", mark.ends().plus());
        out.writeEndObject();
        out.writeEndObject();
    }

    private void side(String name, Leeway.Side side, MarkUnit unit) {
        switch (side) {
            case Leeway.Side.Ends(double distance) -> {
                out.writeName(name);
                value(distance * unit.perSi(), unit.symbol());
            }
            case Leeway.Side.Endless() -> out.writeStringProperty(name, "endless");
        }
    }

    private void value(double value, String unit) {
        out.writeStartObject();
        out.writeNumberProperty("value", Math.rint(value * FINEST) / FINEST + 0.0);
        out.writeStringProperty("unit", unit);
        out.writeEndObject();
    }

    private void strings(String name, List<String> texts) {
        out.writeArrayPropertyStart(name);
        texts.forEach(out::writeString);
        out.writeEndArray();
    }

    private void problems(List<Problem> problems) {
        out.writeArrayPropertyStart("problems");
        for (Problem problem : problems) {
            out.writeStartObject();
            out.writeStringProperty("file", problem.place().file());
            out.writeNumberProperty("line", problem.place().line());
            out.writeNumberProperty("column", problem.place().column());
            out.writeStringProperty("field", problem.field());
            out.writeStringProperty("code", problem.code());
            out.writeStringProperty("given", problem.given());
            out.writeStringProperty("allowed", problem.allowed());
            out.writeStringProperty("try", problem.attempt());
            out.writeEndObject();
        }
        out.writeEndArray();
    }

    /// The unit in which answers give a mark.
    private enum MarkUnit {
        LENGTH("mm", 1000),
        ANGLE("deg", 180 / Math.PI),
        SHARE("%", 100),
        NUMBER("1", 1);

        private final String symbol;
        private final double perSi;

        MarkUnit(String symbol, double perSi) {
            this.symbol = symbol;
            this.perSi = perSi;
        }

        static MarkUnit of(Mark mark) {
            return switch (mark.kind()) {
                case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS -> LENGTH;
                case TURN, LAMP_TURN, MOTOR_TURN -> ANGLE;
                case DIAL -> mark.path().equals("camera.f_number") ? NUMBER : SHARE;
            };
        }

        String symbol() {
            return symbol;
        }

        double perSi() {
            return perSi;
        }
    }
}
