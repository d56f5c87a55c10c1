package plumeline.lesson;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.text.Check;
import plumeline.text.Document;
import plumeline.text.Node;
import plumeline.text.Place;
import plumeline.text.Problem;

/// A text of lessons: what was measured on the set, in the order noted.
///
/// @param file the text's name, as messages say it
/// @param text the whole text
/// @param written each lesson with the keys that it was read from
public record Lessons(String file, String text, List<Written> written) {
    /// A lesson and where it stands.
    ///
    /// @param lesson the lesson
    /// @param node its keys
    public record Written(Lesson lesson, Node.Mapping node) {}

    /// Copies the list.
    public Lessons {
        written = List.copyOf(written);
    }

    /// Reads a text of lessons and finds all its problems in one go.
    ///
    /// @param bytes the text in UTF-8
    /// @param file its name, for the places
    /// @return the lessons, where there are no problems, and the problems
    public static LessonsReading read(byte[] bytes, String file) {
        Document document = Document.read(bytes, file);
        if (document.findRoot().isEmpty()) {
            return new LessonsReading(Optional.empty(), document.problems());
        }
        Node root = document.findRoot().get();
        List<Problem> problems =
                Problem.merge(document.problems(), Check.against(LessonGrammar.shape(), root, "", Place.ofFile(file)));
        if (!problems.isEmpty()) {
            return new LessonsReading(Optional.empty(), problems);
        }
        List<Written> written = new ArrayList<>();
        if (root instanceof Node.Mapping keys && keys.find("measured").orElse(root) instanceof Node.Sequence list) {
            for (Node item : list.items()) {
                Node.Mapping node = (Node.Mapping) item;
                written.add(new Written(LessonReader.read(node), node));
            }
        }
        List<Problem> meaning = LessonMeaning.ofTakes(written);
        return meaning.isEmpty()
                ? new LessonsReading(Optional.of(new Lessons(file, document.text(), written)), List.of())
                : new LessonsReading(Optional.empty(), meaning);
    }

    /// Finds what is wrong with a lesson by itself.
    ///
    /// @param lesson the lesson
    /// @return its problems
    public static List<Problem> listProblems(Lesson lesson) {
        return read(LessonWriter.whole("", List.of(lesson)).getBytes(UTF_8), "").problems();
    }

    /// Begins a text of lessons beside a plan.
    ///
    /// @param file the text's name
    /// @param plan the plan's file name, for its first lines
    /// @return no lessons
    public static Lessons none(String file, String plan) {
        return new Lessons(file, LessonWriter.whole(plan, List.of()), List.of());
    }

    /// Lists the lessons.
    ///
    /// @return the lessons in the order noted
    public List<Lesson> list() {
        return written.stream().map(Written::lesson).toList();
    }

    /// Puts what was measured in the place of the plan's values. The plan's text stays.
    ///
    /// @param plan the plan
    /// @return the plan with the values, of origin `measured`; or the problems: names that the plan doesn't have,
    /// readings that can't be in its tanks, values that a plan may not have
    public Plans.Reading applyTo(Plan plan) {
        List<Problem> problems = LessonMeaning.ofNames(this, plan);
        if (problems.isEmpty()) {
            problems = LessonMeaning.inTanks(this, plan);
        }
        return problems.isEmpty()
                ? Plans.with(plan, Overlaid.values(this, plan))
                : new Plans.Reading(Optional.empty(), problems);
    }

    /// Lists what a crew would want to look at in what was read of lamps in its shots.
    ///
    /// @param plan the plan without the lessons, of which all names are
    /// @return sentences
    public List<String> listLooks(Plan plan) {
        return LampReadings.of(this, plan).looks();
    }

    /// Adds a lesson behind the others; comments and layout stay where they can.
    ///
    /// @param lesson the lesson
    /// @param plan the plan's file name
    /// @return the lessons with it
    public Lessons with(Lesson lesson, String plan) {
        List<Lesson> all = new ArrayList<>(list());
        all.add(lesson);
        return rewritten(LessonEdit.append(this, lesson), all, plan);
    }

    /// Takes a lesson out.
    ///
    /// @param number its number, from 1
    /// @param plan the plan's file name
    /// @return the lessons without it
    public Lessons without(int number, String plan) {
        List<Lesson> rest = new ArrayList<>(list());
        rest.remove(number - 1);
        return rewritten(LessonEdit.remove(this, number - 1), rest, plan);
    }

    /// Takes an edited text where it says exactly these lessons; else writes all anew.
    private Lessons rewritten(String edited, List<Lesson> lessons, String plan) {
        return findSaying(edited, lessons)
                .or(() -> findSaying(LessonWriter.whole(plan, lessons), lessons))
                .orElseThrow(() -> new IllegalStateException("lessons that can't be read back"));
    }

    private Optional<Lessons> findSaying(String candidate, List<Lesson> lessons) {
        return read(candidate.getBytes(UTF_8), file)
                .lessons()
                .filter(read -> read.list().equals(lessons));
    }
}
