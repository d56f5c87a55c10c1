package plumeline.lesson;

import java.util.List;
import java.util.stream.Collectors;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Measured;
import plumeline.take.Take;

/// Writes lessons as a person would: a line a key.
final class LessonWriter {
    private static final String INDENT = "  ";

    private final StringBuilder text = new StringBuilder();
    private boolean isFirst = true;

    private LessonWriter() {}

    /// A whole text.
    static String whole(String plan, List<Lesson> lessons) {
        StringBuilder text = new StringBuilder("# What was measured on the set, beside ")
                .append(plan)
                .append(": these values take the place of the plan's.\n")
                .append("# ./plumeline lesson list ")
                .append(plan)
                .append(" shows what they teach, forget takes one out.\n")
                .append("lessons: ")
                .append(LessonGrammar.VERSION)
                .append('\n');
        text.append(lessons.isEmpty() ? "measured: []\n" : "measured:\n");
        lessons.forEach(lesson -> text.append(item(lesson, INDENT)));
        return text.toString();
    }

    /// One item of the list.
    static String item(Lesson lesson, String indent) {
        LessonWriter writer = new LessonWriter();
        writer.measured(lesson.measured());
        writer.key("noted", quoted(lesson.noted()));
        writer.key("how", quoted(lesson.how()));
        return writer.text.toString().lines().map(line -> indent + line + "\n").collect(Collectors.joining());
    }

    private void measured(Measured measured) {
        switch (measured) {
            case Measured.OfTake(String shot, int number, String ink, Take take) -> {
                key("take", String.valueOf(number));
                key("shot", shot);
                key("ink", ink);
                take(take);
            }
            case Measured.Lux(String light, Quantity gives) -> {
                key("light", light);
                key("gives", gives.toText());
            }
            case Measured.LuxAt(var at, Quantity reads, var others, Quantity computed, var lamps) -> {
                key("lux", reads.toText());
                key("shot", at.shot());
                key("thing", at.thing());
                key("part", at.part());
                others.ifPresent(lux -> key("others", lux.toText()));
                key("computed", computed.toText());
                key(
                        "lamps",
                        lamps.stream()
                                .map(lamp -> lamp.light() + ": {lamp: " + lamp.lamp() + ", gives: "
                                        + lamp.gives().toText() + "}")
                                .collect(Collectors.joining(", ", "{", "}")));
            }
            case Measured.FocalLength(String lens, Quantity length) -> {
                key("lens", lens);
                key("focal_length", length.toText());
            }
            case Measured.Speed(String machine, Quantity speed) -> {
                key("machine", machine);
                key("speed", speed.toText());
            }
            case Measured.Reset(String shot, Quantity time) -> {
                key("reset", time.toText());
                key("shot", shot);
            }
            case Measured.Strength(String ink, Quantity absorbance) -> {
                key("strength", absorbance.toText());
                key("ink", ink);
            }
        }
    }

    private void take(Take take) {
        if (take.conditions() instanceof Conditions.Told told) {
            key("volume", told.volume().toText());
            key("density", told.density().toText());
            switch (told.outlet()) {
                case Conditions.Outlet.AtOnce() -> {}
                case Conditions.Outlet.Squeezed(Quantity bore, Quantity time) -> {
                    key("bore", bore.toText());
                    key("squeeze_time", time.toText());
                }
                case Conditions.Outlet.AtSpeed(Quantity bore, Quantity speed) -> {
                    key("bore", bore.toText());
                    key("speed", speed.toText());
                }
            }
            key("height", told.height().toText());
            key("water", told.water().toText());
        }
        key("rate", take.rate().toText());
        key(
                "front",
                list(take.fronts().stream()
                        .map(each -> pair(each.time(), each.depth()))
                        .toList()));
        key(
                "width",
                list(take.widths().stream()
                        .map(each -> pair(each.depth(), each.width()))
                        .toList()));
    }

    private static String pair(Quantity first, Quantity second) {
        return "[" + first.toText() + ", " + second.toText() + "]";
    }

    private static String list(List<String> pairs) {
        return pairs.isEmpty() ? "" : "[" + String.join(", ", pairs) + "]";
    }

    private static String quoted(String words) {
        return words.isEmpty() ? "" : "\"" + words.replace("\\", "\\\\").replace("\"", "\\\"") + "\"";
    }

    /// A key with its value; nothing where there is none.
    private void key(String key, String value) {
        if (value.isEmpty()) {
            return;
        }
        text.append(isFirst ? "- " : "  ")
                .append(key)
                .append(": ")
                .append(value)
                .append('\n');
        isFirst = false;
    }
}
