package plumeline.lesson;

import java.util.ArrayList;
import java.util.List;
import plumeline.plan.Plans;
import plumeline.quantity.Kind;
import plumeline.text.Range;
import plumeline.text.Shape;
import plumeline.text.Shape.Key;
import plumeline.text.Shape.Word;

/// What a text of lessons may say.
final class LessonGrammar {
    /// The form that this program reads.
    static final int VERSION = 1;

    private static final int MOST_LESSONS = 1000;
    private static final int MOST_TAKES = 999;

    private LessonGrammar() {}

    static Shape shape() {
        Shape measured = new Shape.OneWord(
                "what was measured",
                List.of(
                        take(),
                        Word.of(name("light", "a light"), amount("gives", "at full level", Kind.ILLUMINANCE)),
                        Word.of(
                                amount("lux", "what a meter showed there", Kind.ILLUMINANCE),
                                name("shot", "a shot"),
                                name("thing", "a thing of the shot"),
                                Key.required(
                                        "part",
                                        "which part of it",
                                        new Shape.Choice(List.of("label", "lid", "top", "middle", "base"))),
                                Key.optional(
                                        "others",
                                        "what of it lamps gave that were read alone there",
                                        over(Kind.ILLUMINANCE)),
                                amount("computed", "what was computed there of the lamps", Kind.ILLUMINANCE),
                                Key.required(
                                        "lamps",
                                        "the lights of the shot that were on, with what they were taken to give",
                                        new Shape.Named(
                                                "a light of the shot",
                                                Shape.Keys.of(
                                                        name("lamp", "a light of the kit"),
                                                        Key.required(
                                                                "gives",
                                                                "what it was taken to give",
                                                                Shape.AnyOf.of(
                                                                        over(Kind.ILLUMINANCE),
                                                                        over(Kind.INTENSITY),
                                                                        over(Kind.FLUX))))))),
                        Word.of(name("lens", "a lens"), amount("focal_length", "true to a ruler", Kind.LENGTH)),
                        Word.of(
                                name("machine", "a machine"),
                                Key.required(
                                        "speed",
                                        "its top speed",
                                        Shape.AnyOf.of(over(Kind.SPEED), over(Kind.TURN_RATE)))),
                        Word.of(amount("reset", "time between two takes", Kind.TIME), name("shot", "a shot")),
                        Word.of(
                                amount("strength", "decadic absorbance of the ink", Kind.ABSORBANCE),
                                name("ink", "an ink"))),
                List.of(
                        Key.optional("noted", "the day", new Shape.Free(40)),
                        Key.optional("how", "how it was measured, by whom", new Shape.Free(200))));
        return Shape.Keys.of(
                Key.required("lessons", "the form of this text", new Shape.Whole(VERSION, VERSION)),
                Key.required(
                        "measured",
                        "what was measured, one after another",
                        new Shape.Items(measured, 0, MOST_LESSONS)));
    }

    private static Word take() {
        List<Key> further = new ArrayList<>();
        further.add(name("shot", "a shot"));
        further.add(name("ink", "an ink"));
        further.addAll(Plans.inkTake());
        return new Word(Key.required("take", "the take's number", new Shape.Whole(1, MOST_TAKES)), further);
    }

    private static Key name(String key, String what) {
        return Key.required(key, what, new Shape.Reference(what, Shape.Variants.NONE));
    }

    private static Key amount(String key, String doc, Kind kind) {
        return Key.required(key, doc, over(kind));
    }

    private static Shape over(Kind kind) {
        return new Shape.Amount(kind, Range.POSITIVE, Shape.Mark.FIXED);
    }
}
