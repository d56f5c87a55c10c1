package plumeline.speed;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import plumeline.quantity.FrameRate;
import plumeline.time.Retime;
import plumeline.time.SourceFrames;
import plumeline.time.Timecode;

/// A film's maps and tables: its cost grows as its frames.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class TimeBench {
    private static final int RATE = 24;

    /// The film's length, s.
    @Param({"60", "600"})
    public int seconds;

    private Retime ramp() {
        List<Retime.Key> keys = new ArrayList<>();
        for (int second = 0; second <= seconds; second++) {
            keys.add(new Retime.Key((double) second * RATE, second % 2 == 0 ? 1 : 0.1));
        }
        return new Retime(keys, Retime.Ease.SMOOTH, RATE);
    }

    /// A map with a key a second, and which captured frame each screen frame shows.
    @Benchmark
    public int table() {
        return SourceFrames.of(ramp(), 240, seconds * RATE).repeated();
    }

    /// The screen frame of each 240th of a second of the table.
    @Benchmark
    public double inverse() {
        Retime ramp = ramp();
        double most = (double) seconds * RATE;
        double sum = 0;
        for (int n = 0; n < ramp.realSeconds(most) * 240; n++) {
            sum += ramp.frameAt(n / 240.0, most);
        }
        return sum;
    }

    /// Each frame's label.
    @Benchmark
    public int labels() {
        Timecode timecode = new Timecode(new FrameRate(30_000, 1001), Timecode.Counting.DROP);
        int length = 0;
        for (int n = 0; n < seconds * 30; n++) {
            length += timecode.label(n).length();
        }
        return length;
    }
}
