package plumeline.speed;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// How long reading and solving the example take, shot by shot and whole.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class SolveBench {
    /// Which shots.
    @Param({"reveal", "plume", "spin", "reveal,plume,spin,looks"})
    public String shots = "";

    private byte[] text = {};
    private List<Plan> plan = List.of();

    /// Reads the example from the project's folder.
    ///
    /// @throws IOException where it is not there
    @Setup
    public void readExample() throws IOException {
        text = Files.readAllBytes(Path.of("examples/fernhollow.yaml"));
        plan = List.of(Plans.read(text, "fernhollow.yaml").plan().orElseThrow());
    }

    /// Reads the plan.
    ///
    /// @return the reading
    @Benchmark
    public Plans.Reading read() {
        return Plans.read(text, "fernhollow.yaml");
    }

    /// Solves shots of the plan.
    ///
    /// @return the findings
    @Benchmark
    public FilmAnswer solve() {
        return Solve.film(plan.getFirst(), List.of(shots.split(",")), List.of());
    }
}
