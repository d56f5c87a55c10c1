package plumeline.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/// One thing that is wrong in a text, said so that it can be put right.
///
/// @param place where: the value's span, or the key's where there is no value
/// @param field the full dotted path; empty for the text as a whole
/// @param code never changes: `P-KEY-01`; each has a heading in `docs/problems.md`
/// @param given what was found, as it follows "is"
/// @param allowed what is accepted, as it follows "must be"
/// @param attempt a whole sentence that says what to try
public record Problem(Place place, String field, String code, String given, String allowed, String attempt) {
    /// Codes of problems that are said at the value's place and are about its key.
    private static final Set<String> OF_KEYS = Set.of("P-KEY-01", "P-TEXT-10");

    /// Writes it in the house form, on two lines:
    /// `teapot.yaml:14:9 kit.lenses.fifty.focal_length is 0 mm; must be greater than 0 mm` and what to try.
    ///
    /// @return the two lines, without a line end behind them
    public String toText() {
        String subject = field.isEmpty() ? "the text" : field;
        return place.toText() + " " + subject + " is " + given + "; must be " + allowed + "\n  " + attempt + "   ("
                + code + ", docs/problems.md)";
    }

    /// Puts lists of problems together in the order of the text. What a later list says of a span that an earlier list
    /// has already objected to is left out, so that one slip is one problem. Two exceptions: an unknown or doubled
    /// key says nothing of its value, and that a value is `true` or a badly written name gives way to what should
    /// stand there.
    ///
    /// @param first of the text itself
    /// @param second of its meaning
    /// @return all, sorted by place
    public static List<Problem> merge(List<Problem> first, List<Problem> second) {
        List<Problem> all = new ArrayList<>();
        for (Problem problem : first) {
            if (second.stream().noneMatch(later -> problem.isSaidBetterBy(later))) {
                all.add(problem);
            }
        }
        List<Problem> kept = List.copyOf(all);
        for (Problem problem : second) {
            if (kept.stream().noneMatch(earlier -> earlier.isAtValueOf(problem))) {
                all.add(problem);
            }
        }
        all.sort((a, b) -> Integer.compare(a.place.start(), b.place.start()));
        return List.copyOf(all);
    }

    private boolean isAtValueOf(Problem other) {
        return place.start() == other.place.start()
                && place.end() == other.place.end()
                && (code.equals(other.code) || !OF_KEYS.contains(code) && !OF_KEYS.contains(other.code));
    }

    private boolean isSaidBetterBy(Problem later) {
        return isAtValueOf(later)
                && (code.equals("P-TEXT-09") && !later.allowed.equals("yes or no")
                        || code.equals("P-NAME-01") && later.code.equals("P-REF-01"));
    }
}
