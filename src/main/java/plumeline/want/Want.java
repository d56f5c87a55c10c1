package plumeline.want;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.lit.Measure;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;

/// One thing that must be true on the screen or on the table.
public sealed interface Want
        permits Fills,
                Sharp,
                Hidden,
                Shown,
                Inside,
                Clear,
                OffPicture,
                Reaches,
                SameSize,
                StaysUnder,
                Hangs,
                Upright,
                BeadsStay,
                Sweats,
                LineHidden,
                TankCarries,
                InkReaches,
                ClearUntil,
                VeiledBy,
                SeeThrough,
                Rises,
                FallsThrough,
                Shining,
                Sighted,
                Gauged,
                Want.NotComputed {
    /// Gives the want as the crew wrote it.
    ///
    /// @return its line in the plan
    WantLine line();

    /// Gives the unit of the margin.
    ///
    /// @return `%`, `mm` …, as `questions.md` fixes it
    String unit();

    /// Gives the margin in parts, each in the want's unit; always as many.
    ///
    /// @param moments the shot for some values of its marks
    /// @return the parts' margins, negative where they fail, never NaN
    double[] parts(Moments moments);

    /// Gives the margin out of its parts: the least of them.
    ///
    /// @param parts the want's own parts
    /// @return the margin in the want's unit
    default double margin(double[] parts) {
        double least = Double.POSITIVE_INFINITY;
        for (double part : parts) {
            least = Math.min(least, part);
        }
        return least;
    }

    /// Finds why the want can't be judged, whatever the marks.
    ///
    /// @return the reason, with the fact that is missing; empty where the want can be judged
    default Optional<String> findUnknown() {
        return Optional.empty();
    }

    /// Finds why the want can't be judged for these values of the marks, though it can for others.
    ///
    /// @param moments the shot for some values of its marks
    /// @return the reason, with the fact that is missing; empty where the want can be judged
    default Optional<String> findUnknown(Moments moments) {
        return Optional.empty();
    }

    /// Finds how the want stands, where that takes more than its margin to say: what is measured, how it is now, what
    /// is wanted.
    ///
    /// @param moments the shot for some values of its marks
    /// @param papers the unit of length that the papers speak
    /// @return a sentence; empty where the margin says it all
    default Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Optional.empty();
    }

    /// Tells whether its margin measures anything: not where what it counts never comes.
    ///
    /// @param moments the shot for some values of its marks
    /// @return true where the margin is a figure for a crew
    default boolean isMeasured(Moments moments) {
        return true;
    }

    /// Finds what lacks in the kit, so that the want fails whatever its margin.
    ///
    /// @param moments the shot for some values of its marks
    /// @return the lack in a sentence; empty where there is none
    default Optional<String> findLack(Moments moments) {
        return Optional.empty();
    }

    /// Lists what helps where it fails and no mark does: what is done to the thing, each tried.
    ///
    /// @param moments the shot for some values of its marks
    /// @return sentences, the best first
    default List<String> listAttempts(Moments moments) {
        return List.of();
    }

    /// Finds by how many stops all light, or the camera's setting, would have to change so that it holds.
    ///
    /// @param moments the shot for some values of its marks
    /// @return the stops that would do at all instants; empty where light decides nothing
    default Optional<Measure.Change> findChange(Moments moments) {
        return Optional.empty();
    }

    /// Finds by how many stops one look's light would have to change so that looks compare as wanted.
    ///
    /// @param moments the shot for some values of its marks
    /// @param look the look's name
    /// @return stops, + for more light; empty where looks aren't compared by their light
    default Optional<Double> findLookChange(Moments moments, String look) {
        return Optional.empty();
    }

    /// Finds what the margin doesn't count, but a crew would want to know.
    ///
    /// @param moments the shot for some values of its marks
    /// @return a sentence; empty where there is nothing to say
    default Optional<String> findCaution(Moments moments) {
        return Optional.empty();
    }

    /// Finds why a want that holds with the figures as given may fail all the same, whatever the marks.
    ///
    /// @param moments the shot for some values of its marks
    /// @return a sentence; empty where the marks' placing errors alone make it tight
    default Optional<String> findTight(Moments moments) {
        return Optional.empty();
    }

    /// Tells whether it has nothing to measure in this pass, so that another pass tells more.
    ///
    /// @param moments the shot for some values of its marks
    /// @return false where its margin says how the pass stands
    default boolean isIdle(Moments moments) {
        return false;
    }

    /// Tells whether someone's safety rests on it: then it never holds, but no objection is found.
    ///
    /// @return true for what glass and tables carry
    default boolean isSafety() {
        return false;
    }

    /// Finds the margin seen from the whole entrance pupil instead of from the lens point alone, in the want's unit.
    ///
    /// @param moments the shot for some values of its marks
    /// @return the worst margin over the pupil; empty for wants to which the pupil's width is nothing
    default OptionalDouble findOverPupil(Moments moments) {
        return OptionalDouble.empty();
    }

    /// A want that asks for less, and how to say so.
    ///
    /// @param want the easier want
    /// @param sentence what to ask for instead of what
    record Relaxed(Want want, String sentence) {}

    /// Gives how much more could be asked for, in parts, in the unit in which the want asks.
    ///
    /// @param moments the shot for some values of its marks
    /// @return a slack a part, negative by how much less must be asked for; the margins where the want asks in
    /// their unit
    default double[] slack(Moments moments) {
        return parts(moments);
    }

    /// Lists the wants that ask for less by at least a stated lack, rounded to figures that can be written.
    ///
    /// @param lack by how much the slack falls short, > 0
    /// @param moments the shot for the values of its marks with which it does
    /// @return the easier wants, the plainest first; empty where the want has nothing that could be relaxed so far
    default List<Relaxed> listRelaxed(double lack, Moments moments) {
        return List.of();
    }

    /// Tells whether moving marks can change the margin at all.
    ///
    /// @return false for what only a thing's own figures decide
    default boolean restsOnMarks() {
        return true;
    }

    /// A want that this version reads and keeps, but can't judge.
    ///
    /// @param line as written
    /// @param reason what is missing
    record NotComputed(WantLine line, String reason) implements Want {
        @Override
        public String unit() {
            return "1";
        }

        @Override
        public Optional<String> findUnknown() {
            return Optional.of(reason);
        }

        @Override
        public double[] parts(Moments moments) {
            return new double[0];
        }
    }
}
