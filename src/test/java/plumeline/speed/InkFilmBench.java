package plumeline.speed;

import java.nio.ByteBuffer;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import plumeline.flow.Dye;
import plumeline.flow.Flow;
import plumeline.plume.DyeFrame;

/// What keeping and reading a frame of dye takes beside the step that made it, on 64 × 48 × 96 cells after a second.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class InkFilmBench {
    private List<Dye> dye = List.of();
    private ByteBuffer kept = ByteBuffer.allocate(0);

    /// Lets the ink fall for a second.
    @Setup
    public void begin() {
        Flow flow = FlowRuns.ink(96, true, 1);
        FlowRuns.run(flow, 1);
        dye = List.of(flow.dye());
        kept = ByteBuffer.wrap(DyeFrame.of(0, dye.getFirst()).toBytes());
    }

    /// Keeps a frame.
    ///
    /// @return its bytes
    @Benchmark
    public byte[] keep() {
        return DyeFrame.of(0, dye.getFirst()).toBytes();
    }

    /// Reads a frame.
    ///
    /// @return its dye
    @Benchmark
    public Dye read() {
        return DyeFrame.read(kept.duplicate()).dye(dye.getFirst().grid());
    }
}
