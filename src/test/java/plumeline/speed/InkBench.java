package plumeline.speed;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import plumeline.ink.Descent;
import plumeline.ink.Release;

/// How long a thousand arrivals by law take, regime and time: releases of 0.1 to 4 s, depths of 50 to 250 mm. Aim:
/// within a millisecond.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class InkBench {
    private static final int ARRIVALS = 1000;

    /// The sum of a thousand arrivals, so that none is left out.
    @Benchmark
    public double arrivals() {
        double sum = 0;
        for (int i = 0; i < ARRIVALS; i++) {
            double seconds = 0.1 + 3.9 * (i % 40) / 39;
            double depth = 0.05 + 0.2 * (i / 40) / 24;
            var descent = new Descent(Release.ofSqueeze(1e-5, 0.5, 0.004, seconds, 1e-6), -0.01);
            sum += descent.findSeconds(depth).orElse(0);
        }
        return sum;
    }
}
