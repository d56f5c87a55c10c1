package plumeline.plume;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.flow.Front;
import plumeline.flow.Workers;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.ink.Descent;
import plumeline.ink.Ink;
import plumeline.ink.Prediction;
import plumeline.tidy.Outside;

/// Runs of ink against what others found.
final class PlumeOutsideTest {
    /// Ten millilitres squeezed out in a tenth of a second into a tank without things.
    private static InkShot puff() {
        var box = new Bounds(new Vec(-0.12, -0.09, 0), new Vec(0.12, 0.09, 0.36));
        return new InkShot(
                "puff",
                new InkShot.Waters(box, 1e-6, 0.5),
                new InkShot.Pour(new Vec(0, 0, 0.34), 0.02, 10e-6 / 0.1, 0, 0.1),
                List.of(),
                new InkShot.Timing(25, 0, 2, 2),
                List.of(),
                List.of());
    }

    @Test
    @Outside(
            source = "front of a puff with push: integral of Morton, Taylor and Turner 1956 with the published range of"
                    + " entrainment (Lecoanet and Jeevanjee, after McKim 2020)",
            place = "0.13 to 0.34, 80 % with one take against the next",
            kind = "measurement",
            printedDigits = 2)
    void puffsArrival_liesWithinTheLawsInterval() {
        InkShot shot = puff();
        var course = new InkCourse(0.01, 3, new InkCourse.Until.Time(2));
        var task = new InkRun.Task(InkKey.ofRuns(shot, course), shot, course, 1);
        InkRun run = InkRun.start(task, Workers.alone());
        var release = plumeline.ink.Release.ofSqueeze(10e-6, 0.5, 0.02, 0.1, 1e-6);
        var descent = new Descent(release, -0.02);
        int compared = 0;
        while (!run.isOver()) {
            DyeFrame frame = run.next();
            double seconds = frame.number() / 25.0;
            if (frame.number() < 15
                    || !(Front.ofSight(frame.dye(task.head().grid()), 3e-5) instanceof Front.Seen seen)) {
                continue;
            }
            double depth = 0.36 - seen.lowMetres();
            if (depth < 0.30 && Ink.predict(descent, depth) instanceof Prediction.Reached reached) {
                assertThat(seconds)
                        .as("depth %s", depth)
                        .isBetween(reached.seconds().low(), reached.seconds().high());
                compared++;
            }
        }
        assertThat(compared).as("fronts compared").isGreaterThan(5);
    }

    @Test
    @Outside(source = "Beer and Lambert's law: ten to minus strength times path", kind = "closed form")
    void clearShare_isBeerAndLamberts() {
        // 6.5 ml in 65 l over 15 cm at 1e4 /m has absorbance 0.15.
        var strength = new Strength(1e4, true);
        assertThat(strength.clearShare(6.5e-3 / 65 * 0.15)).isEqualTo(Math.pow(10, -0.15), within(1e-12));
        assertThat(strength.clearShare(strength.halvingShareMetres())).isEqualTo(0.5, within(1e-12));
    }

    @Test
    @Outside(source = "table of Student's t at 0.90, from memory", kind = "standard", printedDigits = 3)
    void student_hasTheTablesValues() {
        assertThat(NextTake.student(4)).isEqualTo(1.533, within(0.0005));
        assertThat(NextTake.student(15)).isEqualTo(1.341, within(0.003));
        assertThat(NextTake.student(30)).isEqualTo(1.310, within(0.002));
        assertThat(NextTake.student(60)).isEqualTo(1.296, within(0.002));
    }
}
