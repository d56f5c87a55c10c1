package plumeline.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plumeline.flow.Flow;

/// How long a step of ink in a tank takes, from half a second on.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class FlowBench {
    /// Cells up; width and depth go with it.
    @Param({"48", "96"})
    public int up = 96;

    /// Whether a can stands in the tank.
    @Param({"false", "true"})
    public boolean can = true;

    private List<Flow> flow = List.of();

    /// Lets the ink fall for half a second.
    @Setup(Level.Iteration)
    public void begin() {
        flow = List.of(FlowRuns.ink(up, can, 1));
        FlowRuns.run(flow.getFirst(), 0.5);
    }

    /// One step.
    ///
    /// @return steps taken
    @Benchmark
    public long step() {
        flow.getFirst().step(1000);
        return flow.getFirst().steps();
    }
}
