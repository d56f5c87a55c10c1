package plumeline.cli.ink;

import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import plumeline.flow.Grid;
import plumeline.plume.InkOdds;
import plumeline.plume.InkRecord;
import plumeline.plume.InkShot;
import plumeline.plume.Lengths;
import plumeline.plume.Subject;
import plumeline.plume.Times;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Unit;
import tools.jackson.core.JsonGenerator;
import tools.jackson.core.ObjectWriteContext;
import tools.jackson.core.StreamWriteFeature;
import tools.jackson.core.json.JsonFactory;

/// The answer of `ink` as JSON: lengths in mm, times in s from the release's start; what isn't known or has no end is
/// left out.
final class InkJson {
    private static final JsonFactory FACTORY = JsonFactory.builder()
            .enable(StreamWriteFeature.WRITE_BIGDECIMAL_AS_PLAIN)
            .build();

    private static final MathContext DIGITS = new MathContext(6);

    private final InkAnswer answer;
    private final InkRecord record;
    private final JsonGenerator out;

    private InkJson(InkAnswer answer, JsonGenerator out) {
        this.answer = answer;
        this.record = answer.record();
        this.out = out;
    }

    static String of(InkAnswer answer) {
        StringWriter text = new StringWriter();
        try (JsonGenerator out = FACTORY.createGenerator(ObjectWriteContext.empty(), text)) {
            new InkJson(answer, out).all();
        }
        return text + "\n";
    }

    private void all() {
        out.writeStartObject();
        answer.of().plan().film().title().ifPresent(title -> out.writeStringProperty("film", title));
        out.writeStringProperty("shot", answer.of().shot().name());
        if (!answer.of().passes().isEmpty()) {
            strings("passes", answer.of().passes());
        }
        out.writeStringProperty("key", record.head().flow().hex());
        out.writeNumberProperty("runs", record.runs().size());
        out.writeNumberProperty("seed", record.head().course().seed());
        out.writeArrayPropertyStart("cells");
        Grid grid = answer.tries().grid();
        List.of(grid.nx(), grid.ny(), grid.nz()).forEach(out::writeNumber);
        out.writeEndArray();
        number("rate", record.head().framesPerSecond());
        out.writeObjectPropertyStart("strength");
        number("value", record.head().strength().perMetre() / 100);
        out.writeStringProperty("unit", "/cm");
        out.writeStringProperty("origin", record.head().strength().measured() ? "given" : "guessed");
        out.writeEndObject();
        strings("assumed", answer.assumed());
        out.writeArrayPropertyStart("drawn");
        answer.drawn().forEach(this::drawn);
        out.writeEndArray();
        out.writeObjectPropertyStart("front");
        out.writeStringProperty("unit", "mm");
        series("depth", record::depth);
        series("half_width", record::halfWidth);
        out.writeEndObject();
        times("floor", record.reachesFloor());
        out.writeArrayPropertyStart("things");
        record.subjects().forEach(this::thing);
        out.writeEndArray();
        out.writeArrayPropertyStart("wants");
        answer.odds().forEach(this::odds);
        out.writeEndArray();
        out.writeStringProperty("folder", String.valueOf(answer.files().getParent()));
        out.writeEndObject();
    }

    private void strings(String name, List<String> texts) {
        out.writeArrayPropertyStart(name);
        texts.forEach(out::writeString);
        out.writeEndArray();
    }

    /// What the tries had of a value with a ±, in their order.
    private void drawn(List<InkShot.Spread> values) {
        Unit unit = values.getFirst().value().unit();
        out.writeStartObject();
        out.writeStringProperty("of", values.getFirst().name());
        out.writeStringProperty("unit", unit.symbol());
        number("spread", values.getFirst().halfWidthSi() / unit.factor());
        out.writeArrayPropertyStart("runs");
        values.forEach(each -> out.writeNumber(rounded(each.value().value())));
        out.writeEndArray();
        out.writeEndObject();
    }

    /// One value a frame, as far as all tries go; null while there is no ink.
    private void series(String name, IntFunction<Lengths> at) {
        List<Lengths> all =
                IntStream.range(0, record.shortestFrames()).mapToObj(at).toList();
        out.writeObjectPropertyStart(name);
        millimetres("value", all, Lengths::middle);
        millimetres("low", all, Lengths::low);
        millimetres("high", all, Lengths::high);
        out.writeEndObject();
    }

    private void millimetres(String name, List<Lengths> all, Function<Lengths, OptionalDouble> end) {
        out.writeArrayPropertyStart(name);
        for (Lengths each : all) {
            OptionalDouble metres = end.apply(each);
            if (metres.isPresent()) {
                out.writeNumber(rounded(1e3 * metres.getAsDouble()));
            } else {
                out.writeNull();
            }
        }
        out.writeEndArray();
    }

    private void thing(Subject subject) {
        out.writeStartObject();
        out.writeStringProperty("thing", subject.thing());
        for (Subject.Part part : Subject.Part.values()) {
            answer.findReaches(subject, part).ifPresent(times -> times(part.word(), times));
        }
        if (subject.isSeen()) {
            out.writeArrayPropertyStart("veiled");
            for (int h = 0; h < subject.heights().size(); h++) {
                out.writeStartObject();
                number("height", 1e3 * subject.heights().get(h).metres());
                times("time", record.veiled(subject, h));
                out.writeEndObject();
            }
            out.writeEndArray();
            times("veiled_all", record.veiledAll(subject));
            times("ink_before_it", record.inked(subject));
        } else {
            out.writeStringProperty("veiled", "unknown");
            out.writeStringProperty("because", subject.thing() + " " + subject.unseen());
        }
        out.writeEndObject();
    }

    private void odds(InkOdds odds) {
        out.writeStartObject();
        out.writeStringProperty("id", odds.line().id());
        out.writeStringProperty("want", odds.line().toText(PaperUnit.MILLIMETRES));
        out.writeNumberProperty("met", odds.met());
        out.writeNumberProperty("of", odds.of());
        out.writeEndObject();
    }

    private void times(String name, Times times) {
        out.writeObjectPropertyStart(name);
        times.middle().ifPresent(value -> number("value", value));
        out.writeStringProperty("unit", "s");
        times.low().ifPresent(value -> number("low", value));
        times.high().ifPresent(value -> number("high", value));
        out.writeArrayPropertyStart("runs");
        times.seconds().forEach(seconds -> out.writeNumber(rounded(seconds)));
        out.writeEndArray();
        out.writeEndObject();
    }

    private void number(String name, double value) {
        out.writeNumberProperty(name, rounded(value));
    }

    private static BigDecimal rounded(double value) {
        return new BigDecimal(value).round(DIGITS).stripTrailingZeros();
    }
}
