package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import plumeline.draw.LeewayText;
import plumeline.plan.Mark;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Words;

/// A mark's leeway as a consequence: `±7 mm sideways, else a sliver shows.`
final class LeewaySentence {
    /// From so many placing errors on nobody need watch a side: it is loose.
    static final double LOOSE = 15;

    private final LeewayText text;
    private final Words words;
    private final ShotAnswer shot;
    private final Shot staged;
    private final Map<String, WantLine> wants;

    LeewaySentence(LeewayText text, ShotAnswer shot, Map<String, WantLine> wants) {
        this.text = text;
        words = new Words(text.unit());
        this.shot = shot;
        staged = shot.posed().stages().getFirst().stage().shot();
        this.wants = Map.copyOf(wants);
    }

    String of(MarkAnswer answer) {
        return switch (answer.setting()) {
            case MarkAnswer.Setting.Open() -> "Not found yet: no want that is computed bears on it.";
            case MarkAnswer.Setting.At at ->
                sides(answer, MarkWords.of(staged, answer.mark(), at.si())) + tight(answer);
        };
    }

    private String sides(MarkAnswer answer, MarkWords words) {
        boolean minusLoose = isLoose(answer, LeewayText.Way.MINUS);
        boolean plusLoose = isLoose(answer, LeewayText.Way.PLUS);
        if (minusLoose && plusLoose && isMet(answer)) {
            return (loose(answer, LeewayText.Way.MINUS, words.minus())
                            + loose(answer, LeewayText.Way.PLUS, words.plus()))
                    .strip();
        }
        if (minusLoose && plusLoose) {
            return capital(words.subject()) + " is loose" + figures(answer, words) + ".";
        }
        if (minusLoose) {
            return one(answer, LeewayText.Way.PLUS, answer.ends().plus())
                    + loose(answer, LeewayText.Way.MINUS, words.minus());
        }
        if (plusLoose) {
            return one(answer, LeewayText.Way.MINUS, answer.ends().minus())
                    + loose(answer, LeewayText.Way.PLUS, words.plus());
        }
        return bothEnd(answer, words);
    }

    private String bothEnd(MarkAnswer answer, MarkWords words) {
        String minus = text.side(answer.mark(), answer.leeway().minus());
        String plus = text.side(answer.mark(), answer.leeway().plus());
        String less = phrase(answer, LeewayText.Way.MINUS);
        String more = phrase(answer, LeewayText.Way.PLUS);
        String elseMinus = consequence(answer.ends().minus());
        String elsePlus = consequence(answer.ends().plus());
        if (!elseMinus.equals(elsePlus)) {
            return less + ", else " + elseMinus + "; " + more + ", else " + elsePlus + ".";
        }
        return minus.equals(plus) && !isFNumber(answer.mark())
                ? "±" + minus + " " + words.both() + ", else " + elseMinus + "."
                : less + ", " + more + ", else " + elseMinus + ".";
    }

    private String one(MarkAnswer answer, LeewayText.Way way, String want) {
        return phrase(answer, way) + ", else " + consequence(want) + ".";
    }

    private String phrase(MarkAnswer answer, LeewayText.Way way) {
        double si = ((MarkAnswer.Setting.At) answer.setting()).si();
        return phrase(text, staged, answer, si, way);
    }

    /// How far a mark may be off to one side: `3 mm to camera left`; of a stop, to which: `open to f/6.4`.
    static String phrase(LeewayText text, Shot shot, MarkAnswer answer, double si, LeewayText.Way way) {
        boolean isPlus = way == LeewayText.Way.PLUS;
        Leeway.Side side = way.of(answer.leeway());
        MarkWords words = MarkWords.of(shot, answer.mark(), si);
        String where = isPlus ? words.plus() : words.minus();
        return isFNumber(answer.mark())
                ? where + " " + stop(si, side, isPlus)
                : text.side(answer.mark(), side) + " " + where;
    }

    /// The farthest stop that still does, to a tenth on the near side.
    private static String stop(double si, Leeway.Side side, boolean isPlus) {
        double tenths = 10 * (si + (isPlus ? side.distance() : -side.distance()));
        return "f/" + Print.number((isPlus ? Math.floor(tenths + 1e-9) : Math.ceil(tenths - 1e-9)) / 10, 1);
    }

    private static boolean isFNumber(Mark mark) {
        return mark.path().equals("camera.f_number");
    }

    private boolean isMet(MarkAnswer answer) {
        return text.findMet(answer, LeewayText.Way.MINUS, shot).isPresent()
                || text.findMet(answer, LeewayText.Way.PLUS, shot).isPresent();
    }

    private String loose(MarkAnswer answer, LeewayText.Way side, String way) {
        Optional<String> met = text.findMet(answer, side, shot);
        if (met.isPresent()) {
            return " " + capital(way) + (met.get().startsWith("it ") ? ": " : " ") + met.get() + ".";
        }
        String figure = side.of(answer.leeway()) instanceof Leeway.Side.Ends ends
                ? " (" + text.findStop(answer, side, shot).orElseGet(() -> farSide(answer, side, ends)) + ")"
                : "";
        return " " + capital(isFNumber(answer.mark()) ? stopping(side) : way) + " is loose" + figure + ".";
    }

    private static String stopping(LeewayText.Way way) {
        return way == LeewayText.Way.PLUS ? "stopping down" : "opening";
    }

    private String farSide(MarkAnswer answer, LeewayText.Way way, Leeway.Side.Ends ends) {
        return isFNumber(answer.mark()) ? phrase(answer, way) : text.side(answer.mark(), ends);
    }

    private String consequence(String id) {
        WantLine line = wants.get(id);
        return line == null ? "a want fails" : WantWords.consequence(line.word()) + " (" + id + ")";
    }

    private String figures(MarkAnswer answer, MarkWords words) {
        List<String> figures = new ArrayList<>();
        for (LeewayText.Way way : LeewayText.Way.values()) {
            boolean isMinus = way == LeewayText.Way.MINUS;
            if (way.of(answer.leeway()) instanceof Leeway.Side.Ends ends) {
                figures.add(text.findStop(answer, way, shot)
                        .map(stop -> (isMinus ? words.minus() : words.plus()) + " " + stop)
                        .orElseGet(() -> isFNumber(answer.mark())
                                ? phrase(answer, way)
                                : (isMinus ? "−" : "+") + text.side(answer.mark(), ends)));
            }
        }
        return figures.isEmpty() ? "" : " (" + String.join(", ", figures) + ")";
    }

    private boolean isLoose(MarkAnswer answer, LeewayText.Way way) {
        Leeway.Side side = way.of(answer.leeway());
        return side.distance() >= LOOSE * answer.placingErrorSi() && answer.placingErrorSi() > 0
                || side instanceof Leeway.Side.Endless
                || text.findStop(answer, way, shot).isPresent();
    }

    private String tight(MarkAnswer answer) {
        boolean isShort = false;
        for (LeewayText.Way way : LeewayText.Way.values()) {
            isShort |= way.of(answer.leeway()).distance() < answer.placingErrorSi()
                    && text.findStop(answer, way, shot).isEmpty();
        }
        if (!isShort) {
            return "";
        }
        return " " + capital(words.tooCoarse(answer.mark(), answer.placingErrorSi()));
    }

    static String capital(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }

    /// A text as a sentence: a full stop last. It keeps its first letter, which may be a name's.
    static String sentence(String words) {
        return words.endsWith(".") || words.endsWith(".)") ? words : words + ".";
    }
}
