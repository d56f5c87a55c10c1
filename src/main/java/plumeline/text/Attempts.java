package plumeline.text;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import plumeline.quantity.Kind;

/// What messages say to try: something that fits its own field.
final class Attempts {
    /// What is customary under a key. Plans and questions use the same words, so one table serves both; of several
    /// texts the first that fits the key's shape is taken. Sizes are those of a table-top set.
    private static final Map<String, List<String>> CUSTOMARY = Map.ofEntries(
            // The film and its deliveries.
            some("size", "8 mm", "[3840 px, 2160 px]", "[1200 mm, 800 mm]"),
            some("length", "15 s"),
            some("top", "12 %"),
            some("bottom", "20 mm", "12 %"),
            some("left", "12 %"),
            some("right", "12 %"),
            some("frames", "96"),
            some("each", "6"),
            some("lead", "12 frames"),
            // Things.
            some("profile", "[[0 mm, 21 mm], [90 mm, 21 mm]]"),
            some("width", "60 %"),
            some("height", "60 %"),
            some("displaces", "133.5 ml"),
            some("hue", "275 deg"),
            some("air", "5 ml", "{temperature: 20 degC, humidity: 50 %}"),
            some("liquid", "{glycerine: 50 %}"),
            some("advancing", "70 deg"),
            some("receding", "40 deg"),
            // The kit.
            some("sensor", "{width: 36 mm, height: 20.25 mm, across: 3840 px}"),
            some("sensor.width", "36 mm"),
            some("sensor.height", "20.25 mm"),
            some("across", "3840 px"),
            some("modes", "[{rate: 24 fps}]"),
            some("readout", "6 ms"),
            some("iso", "800", "{base: 800}"),
            some("base", "800"),
            some("highest", "3200"),
            some("focal_length", "50 mm"),
            some("nearest", "350 mm"),
            some("f_numbers", "[2.8, 22]", "2.8"),
            some("pupil_ratio", "1"),
            some("barrel", "{diameter: 80 mm, length: 120 mm}"),
            some("loss", "0.2 stops"),
            some("panel", "[300 mm, 1200 mm]", "300 mm"),
            some("tube", "[600 mm, 30 mm]", "600 mm"),
            some("disc", "100 mm"),
            some("beam", "60 deg"),
            some("gives", "4000 lx at 1 m"),
            some("x", "0.31"),
            some("y", "0.33"),
            some("lumens", "800 lm"),
            some("power_factor", "0.9"),
            some("travel", "600 mm"),
            some("repeats", "0.1 mm"),
            some("inside", "[450 mm, 300 mm, 300 mm]", "300 mm"),
            some("pane", "8 mm"),
            some("glass", "8 mm"),
            some("front", "[[0.4 s, 70 mm]]", "0.4 s"),
            some("spread", "0.2"),
            some("carries", "60 kg"),
            // A shot.
            some("at", "[0 mm, 0 mm]", "[0 mm, -600 mm, 59 mm]"),
            some("shutter", "180 deg"),
            some("focus", "600 mm"),
            some("pivot", "[0 mm, -80 mm]"),
            some("tilt", "10 deg"),
            some("lines", "2"),
            some("line", "{diameter: 0.2 mm}"),
            some("line.diameter", "0.2 mm"),
            some("line.to", "900 mm", "[0 mm, 0 mm, 900 mm]"),
            some("rig", "{diameter: 6 mm, to: [0 mm, 200 mm, 400 mm]}"),
            some("rig.to", "[0 mm, 200 mm, 400 mm]"),
            some("strength", "30 N"),
            some("tied", "[30 mm, 110 mm]", "30 mm"),
            some("level", "50 %"),
            some("by", "[600 mm, 0 mm]", "10 mm", "20 g"),
            some("in", "8 s"),
            some("start", "0.2 s"),
            some("water", "260 mm"),
            some("bore", "2 mm"),
            some("squeeze_time", "1 s"),
            some("volume", "3 ml"),
            some("count", "12"),
            some("over", "2 s"),
            some("speed", "80 mm/s", "50 %"),
            // Wants and questions.
            some("within", "2 %", "2 px", "5 deg", "0.2 s", "0.5 stops", "2", "1 frame"),
            some("gap", "2 %"),
            some("wide", "10 %"),
            some("after", "0.4 s"),
            some("time", "0.4 s"),
            some("for", "24"),
            some("under", "2 px"),
            some("least", "60 %"),
            some("wants", "{fills: hero, height: 60 %}", "[{fills: hero, height: 60 %}]"),
            some("fills", "{height: 60 %}"),
            some("distance", "600 mm"),
            some("air_gap", "20 mm"),
            some("hide_by", "5 mm"));

    private Attempts() {}

    private static Map.Entry<String, List<String>> some(String key, String... texts) {
        return Map.entry(key, List.of(texts));
    }

    /// Gives a text that fits a key's shape, what is customary first.
    ///
    /// @param shape the key's shape
    /// @param path its dotted path
    /// @return the text, as one would write it
    static String example(Shape shape, String path) {
        String plain = path.replaceAll("\\[[0-9]+\\]", "");
        int dot = plain.lastIndexOf('.');
        int before = plain.lastIndexOf('.', dot - 1);
        for (String key : List.of(plain.substring(before + 1), plain.substring(dot + 1))) {
            for (String text : CUSTOMARY.getOrDefault(key, List.of())) {
                if (fits(shape, text)) {
                    return text;
                }
            }
        }
        return Phrases.example(shape);
    }

    /// Gives a sentence that says what to try, with another example in it where its own is only the kind's common one
    /// or doesn't fit.
    ///
    /// @param sentence ends with what to try, behind "Try " or "try "
    /// @param shape the key's shape
    /// @param own what to try instead
    /// @return the sentence
    static String fitting(String sentence, Shape shape, String own) {
        int at = Math.max(sentence.lastIndexOf("try "), sentence.lastIndexOf("Try ")) + 4;
        if (at < 4 || !sentence.endsWith(".") || sentence.startsWith("free", at)) {
            return sentence;
        }
        String tried = sentence.substring(at, sentence.length() - 1);
        boolean common = isCommon(tried) && !sentence.startsWith("Add the unit");
        return !common && fits(shape, tried) ? sentence : sentence.substring(0, at) + own + ".";
    }

    private static boolean isCommon(String text) {
        for (Kind kind : Kind.values()) {
            if (kind.example().equals(text)) {
                return true;
            }
        }
        return false;
    }

    private static boolean fits(Shape shape, String text) {
        Document document = Document.read(text.getBytes(StandardCharsets.UTF_8), "");
        return document.findRoot().isPresent()
                && document.problems().isEmpty()
                && Checker.fits(shape, document.findRoot().get());
    }
}
