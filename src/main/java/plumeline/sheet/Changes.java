package plumeline.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import plumeline.plan.Shot;
import plumeline.sketch.Markup;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.WantAnswer;

/// What changed between two revisions of a plan, as papers print it: marks moved, wants changed, findings changed,
/// other rows of the sheets. What rounds to the same figure didn't change.
public final class Changes {
    private static final Changes NONE = new Changes("", Map.of(), List.of());

    /// What a change is of.
    enum Of {
        MARK,
        WANT,
        ROW
    }

    private record Key(Of of, String shot, String name) {}

    private final String since;
    private final Map<Key, String> words;
    private final List<String> lines;

    private Changes(String since, Map<Key, String> words, List<String> lines) {
        this.since = since;
        this.words = Map.copyOf(words);
        this.lines = List.copyOf(lines);
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

    /// Marks a row in the margin and says in its last cell what it was.
    Markup tell(Markup row, Markup last, Of of, String shot, String name) {
        Optional<String> was = Optional.ofNullable(words.get(new Key(of, shot, name)));
        was.ifPresent(text -> {
            row.with("class", row.findAttribute("class").map(own -> own + " ").orElse("") + "changed");
            last.add(
                    Rows.flowing(Markup.of("span").with("class", "was"), " Changed: " + LeewaySentence.sentence(text)));
        });
        return row;
    }

    /// What of a row reads otherwise: its clauses without those that it begins and ends with both times.
    private record Difference(String was, String now) {
        private static final Pattern CLAUSE = Pattern.compile("(?<=[,;.:]) ");

        static Difference between(String was, String now) {
            List<String> old = List.of(CLAUSE.split(was));
            List<String> present = List.of(CLAUSE.split(now));
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
            // A clause that only one of them has is told with the one before it.
            int from = head == old.size() - tail || head == present.size() - tail ? Math.max(0, head - 1) : head;
            return new Difference(clauses(old, from, tail), clauses(present, from, tail));
        }

        private static String unlike(List<String> all, List<String> others) {
            return text(IntStream.range(0, all.size())
                    .filter(i -> !all.get(i).equals(others.get(i)))
                    .mapToObj(all::get)
                    .toList());
        }

        private static String clauses(List<String> all, int from, int tail) {
            return text(all.subList(from, all.size() - tail));
        }

        private static String text(List<String> clauses) {
            String text = String.join(" ", clauses);
            return text.matches(".*[,;.:]") ? text.substring(0, text.length() - 1) : text;
        }
    }

    /// The comparing itself.
    private static final class Comparison {
        private final FilmAnswer before;
        private final FilmAnswer now;
        private final Map<Key, String> words = new LinkedHashMap<>();
        private final List<String> lines = new ArrayList<>();

        Comparison(FilmAnswer before, FilmAnswer now) {
            this.before = before;
            this.now = now;
        }

        Changes changes() {
            compare(Of.ROW, "film", Facts.film(before.plan()), Facts.film(now.plan()));
            compareWants("film", before.wants(), now.wants());
            for (ShotAnswer shot : now.shots()) {
                before.shots().stream()
                        .filter(old -> old.shot().equals(shot.shot()))
                        .findFirst()
                        .ifPresentOrElse(old -> compare(old, shot), () -> lines.add(shot.shot() + ": a new shot."));
            }
            for (Shot old : before.plan().shots()) {
                if (now.plan().findShot(old.name()).isEmpty()) {
                    lines.add(old.name() + ": no longer in the plan.");
                }
            }
            return new Changes(Papers.revision(before), words, lines);
        }

        private void compare(ShotAnswer old, ShotAnswer shot) {
            Subject is = new Subject(now.plan(), shot);
            // The earlier figures in the present papers' unit: a sheet has one.
            Subject was = new Subject(before.plan(), old, is.unit());
            compare(Of.MARK, shot.shot(), Facts.marks(was), Facts.marks(is));
            compare(Of.ROW, shot.shot(), Facts.rows(was), Facts.rows(is));
            compareWants(shot.shot(), old.wants(), shot.wants());
        }

        private void compare(Of of, String shot, Map<String, String> old, Map<String, String> present) {
            present.forEach((name, value) -> {
                String was = old.get(name);
                if (was == null) {
                    note(of, shot, name, name + " " + value, "new");
                } else if (!was.equals(value)) {
                    Difference difference = Difference.between(was, value);
                    note(of, shot, name, name + " " + difference.now(), "was " + difference.was());
                }
            });
            old.forEach((name, value) -> {
                if (!present.containsKey(name)) {
                    lines.add(LeewaySentence.sentence(shot + ": " + name + " is gone: " + value));
                }
            });
        }

        /// A want that only took another place in the list didn't change.
        private void compareWants(String shot, List<WantAnswer> old, List<WantAnswer> present) {
            List<WantAnswer> left = new ArrayList<>(old);
            List<WantAnswer> other = new ArrayList<>();
            for (WantAnswer want : present) {
                Optional<WantAnswer> same = left.stream()
                        .filter(one -> one.want().equals(want.want()))
                        .findFirst();
                same.ifPresentOrElse(one -> compareFinding(shot, one, want), () -> other.add(want));
                same.ifPresent(left::remove);
            }
            for (WantAnswer want : other) {
                Optional<WantAnswer> was =
                        left.stream().filter(one -> one.id().equals(want.id())).findFirst();
                was.ifPresent(left::remove);
                note(
                        Of.WANT,
                        shot,
                        want.id(),
                        want.id() + " " + want.want(),
                        was.map(one -> "was " + one.want()).orElse("new"));
            }
            left.forEach(gone -> lines.add(shot + ": want " + gone.want() + " is gone."));
        }

        private void compareFinding(String shot, WantAnswer old, WantAnswer want) {
            if (old.verdict() != want.verdict()) {
                String subject = want.id() + " " + want.verdict().word();
                note(
                        Of.WANT,
                        shot,
                        want.id(),
                        subject,
                        "it was " + old.verdict().word());
            }
        }

        private void note(Of of, String shot, String name, String subject, String was) {
            words.put(new Key(of, shot, name), was);
            lines.add(LeewaySentence.sentence(shot + ": " + subject + ", " + was));
        }
    }
}
