package plumeline.speed;

import java.nio.charset.StandardCharsets;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import plumeline.answer.Outcome;
import plumeline.answer.Question;
import plumeline.ask.Questions;

/// How long a question's own example takes, from its text to the answer.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class AskBench {
    /// Which question.
    @Param({
        "framing",
        "reveal",
        "float",
        "hang",
        "tank",
        "line",
        "sweat",
        "beads",
        "ink",
        "clear-water",
        "fall",
        "ramp",
        "beat",
        "media"
    })
    public String name = "";

    /// The answer to the example.
    @Benchmark
    public Outcome answer() {
        Question question = Questions.find(name).orElseThrow();
        return question.answer(question.example().getBytes(StandardCharsets.UTF_8), "example");
    }
}
