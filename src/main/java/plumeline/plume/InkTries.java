package plumeline.plume;

import java.util.List;
import plumeline.flow.Grid;
import plumeline.stage.Stage;

/// The tries of a shot's ink: each with other noise, and with its own draw of whatever the plan gives with a ±
/// (density, volume, bore, squeeze or speed, the nozzle's place), so that what they differ by is what takes differ by.
///
/// @param stage the shot, staged
/// @param valuesSi its marks' values, SI, in the order of the stage's marks
/// @param planned the shot's ink as written
/// @param course how finely and how long it is followed
public record InkTries(Stage stage, List<Double> valuesSi, InkShot planned, InkCourse course) {
    /// A draw that puts the nozzle where no ink flows is drawn again; after so many the plan's own values count.
    private static final int MOST_DRAWS = 200;

    /// Copies the list.
    public InkTries {
        valuesSi = List.copyOf(valuesSi);
    }

    /// The key of all of them.
    ///
    /// @return as [InkKey#ofRuns] has it
    public InkKey key() {
        return InkKey.ofRuns(planned, course);
    }

    /// The cells.
    ///
    /// @return the same for all tries
    public Grid grid() {
        return planned.grid(course.cellMetres());
    }

    /// One try. The same number is always the same try.
    ///
    /// @param number its number, from 1
    /// @return what its run is set up from
    public InkRun.Task task(int number) {
        return new InkRun.Task(key(), shot(course.seed(number)), course, number);
    }

    private InkShot shot(long seed) {
        double[] values = valuesSi.stream().mapToDouble(Double::doubleValue).toArray();
        for (int draw = 0; !planned.spreads().isEmpty() && draw < MOST_DRAWS; draw++) {
            InkReading read = InkShots.read(stage, values, Chance.of(seed + ((long) draw << 48)));
            if (read instanceof InkReading.Ready(InkShot drawn) && drawn.isOpenAtMouth(grid())) {
                return drawn;
            }
        }
        return planned;
    }
}
