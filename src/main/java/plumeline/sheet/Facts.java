package plumeline.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import plumeline.plan.Plan;
import plumeline.quantity.Origin;
import plumeline.solve.MarkAnswer;
import plumeline.solve.Words;

/// What a sheet's tables say, by name, as text: what two revisions are compared by.
final class Facts {
    private Facts() {}

    /// Marks by path.
    static Map<String, String> marks(Subject subject) {
        Words words = new Words(subject.unit());
        Map<String, String> facts = new LinkedHashMap<>();
        for (MarkAnswer mark : subject.answer().marks()) {
            String value = switch (mark.setting()) {
                case MarkAnswer.Setting.Open() -> "free";
                case MarkAnswer.Setting.At at -> Rows.minus(words.value(mark.mark(), at.si())) + believed(at.origin());
            };
            facts.put(mark.mark().path(), value);
        }
        return facts;
    }

    /// What changes how far a figure is trusted.
    private static String believed(Origin origin) {
        return origin == Origin.MEASURED || origin == Origin.TYPICAL ? " " + origin.word() : "";
    }

    /// What the cover says of the film.
    static Map<String, String> film(Plan plan) {
        Map<String, String> facts = new LinkedHashMap<>();
        FilmRows.deliveries(plan).forEach(pair -> facts.put("delivery " + pair.name(), pair.text()));
        FilmRows.cut(plan).forEach(pair -> facts.put("in the cut " + pair.name(), pair.text()));
        return facts;
    }

    /// What neither is a mark nor only follows from marks: rows of camera, moves, light,
    /// passes, effect, sizes, cards, by their names; and what is taped or dialled after them.
    static Map<String, String> rows(Subject subject) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Length", subject.length());
        TankFirst.of(subject).ifPresent(text -> facts.put("Tank stands", text));
        facts.put("Reset", new Resets(subject.shot(), !subject.passes().isEmpty()).total());
        for (List<Rows.Pair> table : tables(subject)) {
            table.forEach(pair -> facts.put(pair.name(), pair.text()));
        }
        facts.putAll(CardsPart.facts(subject));
        return facts;
    }

    private static List<List<Rows.Pair>> tables(Subject subject) {
        return List.of(
                new CameraRows(subject).settings(),
                new CameraRows(subject).set(),
                MoveRows.of(subject),
                LightRows.of(subject),
                PassRows.of(subject),
                EffectRows.of(subject),
                ThingRows.of(subject));
    }
}
