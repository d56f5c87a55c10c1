package plumeline.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;

/// What changed between two revisions of a plan, as papers print it: marks moved, wants changed, findings changed,
/// other rows of the sheets. What rounds to the same figure didn't change. All that is listed is marked where it
/// stands, and all that is marked is listed.
public final class Changes {
    /// The film among the names of shots.
    static final String FILM = "film";

    private static final Changes NONE = new Changes("", Map.of(), List.of(), Map.of());

    /// What a change is of.
    enum Of {
        TITLE,
        UNIT,
        DELIVERY,
        CUT,
        HEAD,
        NOTE,
        TANK,
        MARK,
        CAMERA,
        MOVE,
        LIGHT,
        PASS,
        EFFECT,
        HERO,
        THING,
        CARD,
        RESET,
        WANT
    }

    /// Where something stands on papers.
    ///
    /// @param of in which part
    /// @param shot on which shot's sheet; [#FILM] for the cover
    /// @param name under which name there
    record Key(Of of, String shot, String name) {}

    private final String since;
    private final Map<Key, String> words;
    private final List<String> lines;
    private final Map<String, List<String>> gone;

    /// @param since the earlier revision, as papers print it
    /// @param words what was there before, by where it stands now
    /// @param lines all changes in sentences
    /// @param gone those of them that are of nothing that stands there now, by shot
    Changes(String since, Map<Key, String> words, List<String> lines, Map<String, List<String>> gone) {
        this.since = since;
        this.words = Map.copyOf(words);
        this.lines = List.copyOf(lines);
        this.gone = Map.copyOf(gone);
    }

    /// Gives papers that are compared with nothing.
    ///
    /// @return no changes
    public static Changes none() {
        return NONE;
    }

    /// Compares two revisions.
    ///
    /// @param before the findings on the earlier plan
    /// @param now the findings on the present one; shots that it leaves out aren't compared
    /// @return what changed
    public static Changes between(FilmAnswer before, FilmAnswer now) {
        return new Comparison(before, now).changes();
    }

    /// Whether papers are compared with an earlier revision at all.
    boolean isCompared() {
        return !since.isEmpty();
    }

    /// The earlier revision, as papers print it.
    String since() {
        return since;
    }

    /// All changes in sentences, in the order of the sheets.
    List<String> lines() {
        return lines;
    }

    /// What stood on a sheet and has no place there now, in sentences that are among the lines.
    List<String> gone(String shot) {
        return gone.getOrDefault(shot, List.of());
    }

    /// Marks a row in the margin and says in its last cell what it was.
    Markup tell(Markup row, Markup last, Of of, String shot, String name) {
        Optional.ofNullable(words.get(new Key(of, shot, name))).ifPresent(text -> {
            String own = row.findAttribute("class").orElse("");
            row.with("class", own.endsWith("changed") ? own : (own + " changed").strip());
            last.add(
                    Rows.flowing(Markup.of("span").with("class", "was"), " Changed: " + LeewaySentence.sentence(text)));
        });
        return row;
    }

    /// Marks a paragraph.
    Markup tell(Markup paragraph, Of of, String shot, String name) {
        return tell(paragraph, paragraph, of, shot, name);
    }

    /// What of a text reads otherwise: its clauses without those that it begins and ends with both times.
    record Difference(String was, String now) {
        static Difference between(String was, String now) {
            List<String> old = clauses(was);
            List<String> present = clauses(now);
            if (old.size() == present.size()) {
                return new Difference(unlike(old, present), unlike(present, old));
            }
            int most = Math.min(old.size(), present.size());
            int head = 0;
            while (head < most && old.get(head).equals(present.get(head))) {
                head++;
            }
            int tail = 0;
            while (tail < most - head
                    && old.get(old.size() - 1 - tail).equals(present.get(present.size() - 1 - tail))) {
                tail++;
            }
            if (head + tail == most) {
                // A clause that only one of them has is told with one beside it.
                tail = head == 0 ? Math.max(0, tail - 1) : tail;
                head = Math.max(0, head - 1);
            }
            return new Difference(text(old, head, tail), text(present, head, tail));
        }

        /// Parts a text behind commas, stops and the like, but not within brackets.
        private static List<String> clauses(String text) {
            List<String> clauses = new ArrayList<>();
            int depth = 0;
            int from = 0;
            for (int i = 0; i + 1 < text.length(); i++) {
                char c = text.charAt(i);
                depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
                if (depth == 0 && ",;.:".indexOf(c) >= 0 && text.charAt(i + 1) == ' ') {
                    clauses.add(text.substring(from, i + 1));
                    from = i + 2;
                }
            }
            clauses.add(text.substring(from));
            return clauses;
        }

        private static String unlike(List<String> all, List<String> others) {
            return bare(IntStream.range(0, all.size())
                    .filter(i -> !all.get(i).equals(others.get(i)))
                    .mapToObj(all::get)
                    .collect(Collectors.joining(" ")));
        }

        private static String text(List<String> all, int head, int tail) {
            return bare(String.join(" ", all.subList(head, all.size() - tail)));
        }

        /// A text without the stop that ends it.
        static String bare(String text) {
            return text.matches("(?s).*[,;.:]") ? text.substring(0, text.length() - 1) : text;
        }
    }
}
