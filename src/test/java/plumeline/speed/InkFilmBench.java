package plumeline.speed;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
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
import plumeline.geom.Vec;
import plumeline.plume.DyeFilm;
import plumeline.plume.DyeFrame;
import plumeline.plume.InkKey;

/// What keeping and reading a frame of dye takes beside the step that made it, on 64 × 48 × 96 cells after a second.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
public class InkFilmBench {
    private List<Dye> dye = List.of();
    private List<DyeFilm> film = List.of();

    private record Bytes(ByteBuffer all) implements DyeFilm.Source {
        @Override
        public long size() {
            return all.limit();
        }

        @Override
        public ByteBuffer read(long at, int length) {
            return all.slice((int) at, length);
        }
    }

    /// Lets the ink fall for a second.
    @Setup
    public void begin() throws IOException {
        Flow flow = FlowRuns.ink(96, true, 1);
        FlowRuns.run(flow, 1);
        dye = List.of(flow.dye());
        var head = new DyeFilm.Head(
                new InkKey("0".repeat(64)), 1, 1, dye.getFirst().grid(), new Vec(0, 0, 0), 120);
        var bytes = new ByteArrayOutputStream();
        bytes.writeBytes(head.toBytes());
        bytes.writeBytes(keep());
        bytes.writeBytes(DyeFilm.end(1));
        film = List.of(
                DyeFilm.read(new Bytes(ByteBuffer.wrap(bytes.toByteArray()))).orElseThrow());
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
    public Dye read() throws IOException {
        return film.getFirst().frame(0).dye(dye.getFirst().grid());
    }
}
