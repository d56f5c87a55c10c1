package plumeline.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import plumeline.draw.LeewayText;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.sheet.Changes.Difference;
import plumeline.sheet.Changes.Key;
import plumeline.sheet.Changes.Of;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.WantAnswer;

/// Compares two revisions as papers print them, both in the present papers' unit: a sheet has one.
final class Comparison {
    private final FilmAnswer before;
    private final FilmAnswer now;
    private final PaperUnit unit;
    private final Map<Key, String> words = new LinkedHashMap<>();
    private final List<String> lines = new ArrayList<>();
    private final Map<String, List<String>> gone = new LinkedHashMap<>();

    Comparison(FilmAnswer before, FilmAnswer now) {
        this.before = before;
        this.now = now;
        unit = now.plan().film().papersOrDefault();
    }

    Changes changes() {
        compareUnits();
        compare(Facts.film(before.plan()), Facts.film(now.plan()), _ -> Optional.empty(), _ -> Optional.empty());
        compareFilmWants();
        for (ShotAnswer shot : now.shots()) {
            Optional<ShotAnswer> old = before.shots().stream()
                    .filter(one -> one.shot().equals(shot.shot()))
                    .findFirst();
            old.ifPresentOrElse(one -> compare(one, shot), () -> {
                words.put(new Key(Of.HEAD, shot.shot(), Facts.SHOT), "a new shot");
                lines.add(shot.shot() + ": a new shot.");
            });
        }
        for (Shot old : before.plan().shots()) {
            if (now.plan().findShot(old.name()).isEmpty()) {
                drop(Changes.FILM, old.name() + ": no longer in the plan.");
            }
        }
        if (lines.isEmpty() && isOnEqualTerms()) {
            compareReasons(Changes.FILM, before.wants(), now.wants());
        }
        return new Changes(Papers.revision(before), words, lines, gone);
    }

    private void compareUnits() {
        PaperUnit old = before.plan().film().papersOrDefault();
        if (old != unit) {
            note(
                    new Key(Of.UNIT, Changes.FILM, ""),
                    "Lengths are now in " + Facts.word(unit),
                    "were in " + Facts.word(old));
        }
    }

    private void compare(ShotAnswer old, ShotAnswer shot) {
        int told = lines.size();
        Subject is = new Subject(now.plan(), shot);
        Subject was = new Subject(before.plan(), old, unit);
        Map<Key, Facts.Setting> marksBefore = Facts.marks(was);
        Map<Key, Facts.Setting> marksNow = Facts.marks(is);
        compare(
                Facts.told(marksBefore, marksNow),
                Facts.told(marksNow, marksBefore),
                key -> Facts.findUnwritten(was, key),
                key -> Facts.findUnwritten(is, key));
        compare(
                Facts.rows(was),
                Facts.rows(is),
                key -> Facts.findUnwritten(was, key),
                key -> Facts.findUnwritten(is, key));
        compareWants(old, shot);
        if (lines.size() == told && unit == before.plan().film().papersOrDefault()) {
            compareWhatFollows(was, is);
        }
    }

    private void compare(
            Map<Key, Rows.Pair> old,
            Map<Key, Rows.Pair> present,
            Function<Key, Optional<String>> unwrittenBefore,
            Function<Key, Optional<String>> unwrittenNow) {
        present.forEach((key, value) -> {
            Optional<String> was =
                    Optional.ofNullable(old.get(key)).map(Comparison::whole).or(() -> unwrittenBefore.apply(key));
            was.ifPresentOrElse(
                    text -> compareText(key, Facts.name(key), text, whole(value)),
                    () -> note(key, Facts.name(key) + " " + value.text(), "new"));
        });
        old.forEach((key, value) -> {
            if (!present.containsKey(key)) {
                dropped(key, value.text(), unwrittenNow.apply(key));
            }
        });
    }

    private void dropped(Key key, String was, Optional<String> is) {
        if (is.isEmpty()) {
            drop(key.shot(), key.shot() + ": " + Facts.subject(key) + " is gone: " + was);
        } else if (!is.get().equals(was)) {
            drop(key.shot(), key.shot() + ": " + Facts.name(key) + " " + Difference.bare(is.get()) + ", was " + was);
        }
    }

    private static String whole(Rows.Pair pair) {
        return pair.text() + pair.drawn();
    }

    /// Told where nothing else of a sheet is: leeway, reasons and notes follow from what is changed elsewhere, and
    /// would bury it.
    private void compareWhatFollows(Subject was, Subject is) {
        LeewaySentence old = leeway(was);
        LeewaySentence present = leeway(is);
        Map<String, MarkAnswer> marks = was.answer().marks().stream()
                .collect(Collectors.toMap(answer -> answer.mark().path(), answer -> answer));
        for (MarkAnswer mark : is.answer().marks()) {
            String path = mark.mark().path();
            Optional.ofNullable(marks.get(path))
                    .map(old::of)
                    .ifPresent(text ->
                            compareText(new Key(Of.MARK, is.name(), path), path + " leeway:", text, present.of(mark)));
        }
        compareReasons(is.name(), was.answer().wants(), is.answer().wants());
        compareReasons(is.name(), was.answer().filmWants(), is.answer().filmWants());
        List<String> notes = is.answer().notes();
        notes.stream()
                .filter(text -> !was.answer().notes().contains(text))
                .forEach(text -> note(new Key(Of.NOTE, is.name(), text), text, "new"));
        was.answer().notes().stream()
                .filter(text -> !notes.contains(text))
                .forEach(text -> drop(is.name(), is.name() + ": no longer so: " + text));
    }

    private static LeewaySentence leeway(Subject subject) {
        return new LeewaySentence(
                new LeewayText(subject.unit()), subject.answer(), Standing.lines(subject.plan(), subject.answer()));
    }

    private void compareReasons(String shot, List<WantAnswer> old, List<WantAnswer> present) {
        for (WantAnswer want : present) {
            old.stream()
                    .filter(one -> one.id().equals(want.id()) && one.want().equals(want.want()))
                    .findFirst()
                    .ifPresent(one -> compareText(
                            new Key(Of.WANT, shot, want.id()),
                            want.id() + ":",
                            WantsPart.reasons(one),
                            WantsPart.reasons(want)));
        }
    }

    private void compareText(Key key, String name, String was, String is) {
        if (!was.equals(is)) {
            Difference difference = Difference.between(was, is);
            note(key, name + " " + inside(difference.now()), "was " + inside(difference.was()));
        }
    }

    /// A text within a sentence.
    private static String inside(String text) {
        return text.startsWith("The ") ? "t" + text.substring(1) : text;
    }

    /// Film wants are judged over the shots that were solved: over others they say something else.
    private boolean isOnEqualTerms() {
        return shots(before).equals(shots(now)) || isWhole(before) && isWhole(now);
    }

    private static Set<String> shots(FilmAnswer film) {
        return film.shots().stream().map(ShotAnswer::shot).collect(Collectors.toSet());
    }

    private static boolean isWhole(FilmAnswer film) {
        return film.shots().size() == film.plan().shots().size();
    }

    private void compareFilmWants() {
        Matched wants = Matched.of(asked(before.plan(), before.wants()), asked(now.plan(), now.wants()));
        if (isOnEqualTerms()) {
            wants.same().forEach((is, was) -> compareFinding(Changes.FILM, was.answer(), is.answer()));
        }
        tell(Changes.FILM, wants);
    }

    private void compareWants(ShotAnswer old, ShotAnswer shot) {
        Matched wants = Matched.of(asked(before.plan(), old, old.wants()), asked(now.plan(), shot, shot.wants()));
        wants.same().forEach((is, was) -> compareFinding(shot.shot(), was.answer(), is.answer()));
        tell(shot.shot(), wants);
        Matched ofFilm = Matched.of(asked(before.plan(), old.filmWants()), asked(now.plan(), shot.filmWants()));
        ofFilm.same().forEach((is, was) -> compareFinding(shot.shot(), was.answer(), is.answer()));
        // Listed once, with the film's; marked on each sheet.
        ofFilm.other()
                .forEach((is, was) ->
                        words.put(new Key(Of.WANT, shot.shot(), is.answer().id()), was(was)));
    }

    private void tell(String shot, Matched wants) {
        wants.other().forEach((is, was) -> {
            String id = is.answer().id();
            note(new Key(Of.WANT, shot, id), id + " " + is.text(), was(was));
        });
        wants.gone().forEach(old -> drop(shot, shot + ": want " + old.text() + " is gone."));
    }

    private static String was(Optional<Asked> was) {
        return was.map(one -> "was " + one.text()).orElse("new");
    }

    private void compareFinding(String shot, WantAnswer old, WantAnswer want) {
        if (old.verdict() != want.verdict()) {
            note(
                    new Key(Of.WANT, shot, want.id()),
                    want.id() + " " + want.verdict().word(),
                    "it was " + old.verdict().word());
        }
    }

    private List<Asked> asked(Plan plan, List<WantAnswer> answers) {
        return asked(plan.wants().stream().collect(Collectors.toMap(WantLine::id, line -> line)), answers);
    }

    private List<Asked> asked(Plan plan, ShotAnswer shot, List<WantAnswer> answers) {
        return asked(Standing.lines(plan, shot), answers);
    }

    private List<Asked> asked(Map<String, WantLine> written, List<WantAnswer> answers) {
        return answers.stream()
                .map(answer -> new Asked(
                        answer,
                        Optional.ofNullable(written.get(answer.id()))
                                .map(line -> line.toText(unit))
                                .orElse(answer.want())))
                .toList();
    }

    private void note(Key key, String subject, String was) {
        words.put(key, Difference.bare(was));
        lines.add(LeewaySentence.sentence(key.shot() + ": " + Difference.bare(subject) + ", " + Difference.bare(was)));
    }

    private void drop(String shot, String line) {
        gone.computeIfAbsent(shot, _ -> new ArrayList<>()).add(LeewaySentence.sentence(line));
        lines.add(LeewaySentence.sentence(line));
    }

    /// A want and how it is told.
    private record Asked(WantAnswer answer, String text) {}

    /// The wants of two revisions side by side. One that only took another place in the list is the same.
    ///
    /// @param same present ones, and as what they stood there before
    /// @param other present ones that are told otherwise, and what stood in their place
    /// @param gone earlier ones that have no match
    private record Matched(Map<Asked, Asked> same, Map<Asked, Optional<Asked>> other, List<Asked> gone) {
        static Matched of(List<Asked> old, List<Asked> present) {
            List<Asked> left = new ArrayList<>(old);
            Map<Asked, Asked> same = new LinkedHashMap<>();
            List<Asked> unmatched = new ArrayList<>();
            for (Asked want : present) {
                Optional<Asked> match = left.stream()
                        .filter(one -> one.text().equals(want.text()))
                        .findFirst();
                match.ifPresentOrElse(one -> same.put(want, one), () -> unmatched.add(want));
                match.ifPresent(left::remove);
            }
            Map<Asked, Optional<Asked>> other = new LinkedHashMap<>();
            for (Asked want : unmatched) {
                Optional<Asked> was = left.stream()
                        .filter(one -> one.answer().id().equals(want.answer().id()))
                        .findFirst();
                was.ifPresent(left::remove);
                other.put(want, was);
            }
            return new Matched(same, other, left);
        }
    }
}
