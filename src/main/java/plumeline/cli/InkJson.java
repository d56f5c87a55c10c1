package plumeline.cli;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.plume.InkRecord;
import plumeline.plume.Lengths;
import plumeline.plume.Subject;
import plumeline.plume.Times;
import plumeline.quantity.PaperUnit;

/// The answer of `ink` as JSON: lengths in mm, times in s from the release's start; what isn't known or has no end is
/// left out.
final class InkJson {
    private static final MathContext DIGITS = new MathContext(6);

    private final InkAnswer answer;
    private final InkRecord record;

    private InkJson(InkAnswer answer) {
        this.answer = answer;
        this.record = answer.record();
    }

    static String of(InkAnswer answer) {
        return new InkJson(answer).all() + "\n";
    }

    private String all() {
        List<String> members = new ArrayList<>();
        answer.plan().film().title().ifPresent(title -> members.add(member("film", text(title))));
        members.add(member("shot", text(answer.shot().name())));
        members.add(member("key", text(record.head().flow().hex())));
        members.add(member("runs", "" + record.runs().size()));
        members.add(member("seed", "" + record.head().course().seed()));
        members.add(member("cells", answer.cells().toString()));
        members.add(member("rate", number(record.head().framesPerSecond())));
        members.add(member(
                "strength",
                object(List.of(
                        member("value", number(record.head().strength().perMetre() / 100)),
                        member("unit", text("/cm")),
                        member("origin", text(record.head().strength().measured() ? "given" : "guessed"))))));
        members.add(member(
                "assumed", array(answer.assumed().stream().map(InkJson::text).toList())));
        members.add(member("front", front()));
        members.add(member("floor", times(record.reachesFloor())));
        members.add(member(
                "things", array(record.subjects().stream().map(this::thing).toList())));
        members.add(member(
                "wants", array(InkOdds.of(answer).stream().map(this::odds).toList())));
        members.add(member("folder", text(answer.folder().toString())));
        return "{" + String.join(",\n ", members) + "}";
    }

    private String front() {
        int frames = record.longestFrames();
        return object(List.of(
                member("unit", text("mm")),
                member("depth", series(frames, record::depth)),
                member("half_width", series(frames, record::halfWidth))));
    }

    /// One value a frame; null while there is no ink.
    private String series(int frames, IntFunction<Lengths> at) {
        List<Lengths> all = IntStream.range(0, frames).mapToObj(at).toList();
        return object(List.of(
                member(
                        "value",
                        array(all.stream()
                                .map(each -> millimetres(each.middle()))
                                .toList())),
                member(
                        "low",
                        array(all.stream().map(each -> millimetres(each.low())).toList())),
                member(
                        "high",
                        array(all.stream().map(each -> millimetres(each.high())).toList()))));
    }

    private static String millimetres(OptionalDouble metres) {
        return metres.isPresent() ? number(1e3 * metres.getAsDouble()) : "null";
    }

    private String thing(Subject subject) {
        List<String> members = new ArrayList<>();
        members.add(member("thing", text(subject.thing())));
        for (Subject.Part part : Subject.Part.values()) {
            members.add(
                    member(part.word(), times(record.reaches(subject.at(part).zMetres()))));
        }
        if (!subject.isSeen()) {
            members.add(member("veiled", text("unknown")));
            members.add(member("because", text(subject.thing() + " " + subject.unseen())));
            return object(members);
        }
        List<String> heights = new ArrayList<>();
        for (int h = 0; h < subject.heights().size(); h++) {
            heights.add(object(List.of(
                    member("height", number(1e3 * subject.heights().get(h).metres())),
                    member("time", times(record.veiled(subject, h))))));
        }
        members.add(member("veiled", array(heights)));
        members.add(member("veiled_all", times(record.veiledAll(subject))));
        members.add(member("ink_before_it", times(record.inked(subject))));
        return object(members);
    }

    private String odds(InkOdds odds) {
        return object(List.of(
                member("id", text(odds.line().id())),
                member("want", text(odds.line().toText(PaperUnit.MILLIMETRES))),
                member("met", "" + odds.met()),
                member("of", "" + odds.of())));
    }

    private static String times(Times times) {
        List<String> members = new ArrayList<>();
        times.middle().ifPresent(value -> members.add(member("value", number(value))));
        members.add(member("unit", text("s")));
        times.low().ifPresent(value -> members.add(member("low", number(value))));
        times.high().ifPresent(value -> members.add(member("high", number(value))));
        members.add(member(
                "runs", array(times.seconds().stream().map(InkJson::number).toList())));
        return object(members);
    }

    private static String member(String name, String value) {
        return text(name) + ": " + value;
    }

    private static String object(List<String> members) {
        return "{" + String.join(", ", members) + "}";
    }

    private static String array(List<String> values) {
        return values.stream().collect(Collectors.joining(", ", "[", "]"));
    }

    private static String number(double value) {
        BigDecimal rounded = new BigDecimal(value).round(DIGITS).stripTrailingZeros();
        return rounded.signum() == 0 ? "0" : rounded.toPlainString();
    }

    private static String text(String text) {
        var out = new StringBuilder("\"");
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                out.append('\\').append(c);
            } else if (c < ' ') {
                out.append(String.format(java.util.Locale.ROOT, "\\u%04x", (int) c));
            } else {
                out.append(c);
            }
        }
        return out.append('"').toString();
    }
}
