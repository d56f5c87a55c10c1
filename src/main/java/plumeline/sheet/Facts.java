package plumeline.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
                case MarkAnswer.Setting.At at -> Rows.minus(words.value(mark.mark(), at.si()));
            };
            facts.put(mark.mark().path(), value);
        }
        return facts;
    }

    /// What neither is a mark nor only follows from marks: rows of camera, moves, light, effect, by their names.
    static Map<String, String> rows(Subject subject) {
        Map<String, String> facts = new LinkedHashMap<>();
        facts.put("Length", subject.length());
        for (List<Rows.Pair> table : tables(subject)) {
            table.forEach(pair -> facts.put(pair.name(), pair.text()));
        }
        return facts;
    }

    private static List<List<Rows.Pair>> tables(Subject subject) {
        return List.of(
                new CameraRows(subject).settings(),
                MoveRows.of(subject),
                LightRows.of(subject),
                EffectRows.of(subject));
    }
}
