package plumeline.solve;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.stage.Stage;

/// The finding on one shot.
///
/// @param shot its name
/// @param verdict the worst of its wants
/// @param wants its wants in order
/// @param filmWants how the film's wants stand in this shot, those that are judged by shot
/// @param marks its marks in order
/// @param together the number of placing errors that every mark may be off at once
/// @param leewayWithout ids of the wants that fail, which leeway leaves out
/// @param notes what else to know, in sentences
/// @param posed the shot with its marks set
public record ShotAnswer(
        String shot,
        Verdict verdict,
        List<WantAnswer> wants,
        List<WantAnswer> filmWants,
        List<MarkAnswer> marks,
        double together,
        List<String> leewayWithout,
        List<String> notes,
        Posed posed) {
    /// A staged shot with a value a mark.
    ///
    /// @param stages the shot's passes by name in order, or the shot itself under an empty name
    /// @param valuesSi the marks' values, SI, in the order of the stage's marks
    public record Posed(List<Run> stages, List<Double> valuesSi) {
        /// Copies the lists.
        public Posed {
            stages = List.copyOf(stages);
            valuesSi = List.copyOf(valuesSi);
        }

        /// Gives the values as an array.
        ///
        /// @return SI values in the order of the stage's marks
        public double[] values() {
            return valuesSi.stream().mapToDouble(Double::doubleValue).toArray();
        }
    }

    /// One run of a shot: a pass, or the shot itself.
    ///
    /// @param pass the pass's name; empty for the shot itself
    /// @param stage it staged
    public record Run(String pass, Stage stage) {}

    /// Copies the lists.
    public ShotAnswer {
        wants = List.copyOf(wants);
        filmWants = List.copyOf(filmWants);
        marks = List.copyOf(marks);
        leewayWithout = List.copyOf(leewayWithout);
        notes = List.copyOf(notes);
    }

    /// Gives the same answer with one of its passes first, to draw that one.
    ///
    /// @param pass the pass's name
    /// @return this where there is no such pass
    public ShotAnswer ledBy(String pass) {
        List<Run> runs = new ArrayList<>(posed.stages());
        runs.sort(Comparator.comparing(run -> !run.pass().equals(pass)));
        Posed led = new Posed(runs, posed.valuesSi());
        return new ShotAnswer(shot, verdict, wants, filmWants, marks, together, leewayWithout, notes, led);
    }
}
