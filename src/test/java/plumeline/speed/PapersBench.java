package plumeline.speed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.sheet.Papers;
import plumeline.sheet.Printed;
import plumeline.sheet.SixtyShots;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// How long the papers of a film of sixty shots take, told for one shot: all three together times sixty is what a crew
/// waits for, starting the program apart.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class PapersBench {
    private static final int SHOTS = 60;
    private static final Printed PRINTED = new Printed("2026-11-25 10:42");

    private List<Plan> plan = List.of();
    private List<FilmAnswer> film = List.of();

    /// Reads and solves the film.
    @Setup
    public void solveFilm() {
        byte[] text = SixtyShots.of(SHOTS).getBytes(UTF_8);
        plan = List.of(Plans.read(text, "long.yaml").plan().orElseThrow());
        film = List.of(Solve.film(plan.getFirst()));
    }

    /// Solves it.
    ///
    /// @return the findings
    @Benchmark
    @OperationsPerInvocation(SHOTS)
    public FilmAnswer solve() {
        return Solve.film(plan.getFirst());
    }

    /// Makes the page.
    ///
    /// @return the page
    @Benchmark
    @OperationsPerInvocation(SHOTS)
    public String html() {
        return Papers.html(film.getFirst(), PRINTED);
    }

    /// Makes the page and prints it.
    ///
    /// @return the print
    @Benchmark
    @OperationsPerInvocation(SHOTS)
    public byte[] pdf() {
        return Papers.pdf(film.getFirst(), PRINTED);
    }
}
