package plumeline.lesson;

import java.util.List;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.take.Measured;
import plumeline.text.Node;

/// Makes the record of a lesson from its checked keys.
final class LessonReader {
    private LessonReader() {}

    static Lesson read(Node.Mapping node) {
        Written written = new Written(node, node.place());
        return new Lesson(
                measured(written),
                written.findWord("noted").orElse(""),
                written.findWord("how").orElse(""));
    }

    private static Measured measured(Written written) {
        if (written.has("take")) {
            int number = Integer.parseInt(word(written, "take"));
            return new Measured.OfTake(word(written, "shot"), number, word(written, "ink"), TakeReader.read(written));
        }
        if (written.has("lux")) {
            return new Measured.LuxAt(
                    new Measured.LuxAt.Spot(word(written, "shot"), word(written, "thing"), word(written, "part")),
                    quantity(written, "lux"),
                    written.findQuantity("others"),
                    quantity(written, "computed"),
                    lamps(written));
        }
        if (written.has("light")) {
            return new Measured.Lux(word(written, "light"), quantity(written, "gives"));
        }
        if (written.has("lens")) {
            return new Measured.FocalLength(word(written, "lens"), quantity(written, "focal_length"));
        }
        if (written.has("machine")) {
            return new Measured.Speed(word(written, "machine"), quantity(written, "speed"));
        }
        return written.has("reset")
                ? new Measured.Reset(word(written, "shot"), quantity(written, "reset"))
                : new Measured.Strength(word(written, "ink"), quantity(written, "strength"));
    }

    private static List<Measured.LuxAt.Gave> lamps(Written written) {
        return written.findNode("lamps").orElse(null) instanceof Node.Mapping lamps
                ? lamps.entries().stream()
                        .map(lamp -> gave(lamp.key(), new Written((Node.Mapping) lamp.value(), lamp.keyPlace())))
                        .toList()
                : List.of();
    }

    private static Measured.LuxAt.Gave gave(String light, Written written) {
        return new Measured.LuxAt.Gave(light, word(written, "lamp"), quantity(written, "gives"));
    }

    private static String word(Written written, String key) {
        return written.findWord(key).orElseThrow();
    }

    private static Quantity quantity(Written written, String key) {
        return written.findQuantity(key).orElseThrow();
    }
}
