package plumeline.speed;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import plumeline.plan.Plans;
import plumeline.post.Post;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// Everything that post opens of a film of a minute in 40 shots, one sort of file at a time; every fourth shot has a
/// thing that hangs on a line, each a ramp and a move, captured at 96 on 24.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 2, time = 3)
@Measurement(iterations = 3, time = 3)
@Fork(1)
public class PostBench {
    /// Files whose names hold this are made.
    @Param({".edl", ".otio", "cues", "guide", "moves.csv", ".glb", "masks/", "post.html", "post.pdf"})
    public String file;

    private FilmAnswer film;

    @Setup
    public void solve() {
        StringBuilder plan = new StringBuilder("""
                plumeline: 1
                film: {title: A minute, rate: 24 fps, frames: 1440, tempo: 120 bpm}
                deliver: {wide: {ratio: "16:9", size: [3840 px, 2160 px]}}
                things: {tin: {diameter: 76 mm, height: 96 mm, body: opaque}}
                kit:
                  cameras: {main: {sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}, modes: [{rate: 96 fps}]}}
                  lenses: {fifty: {focal_length: 50 mm}}
                  machines: {slider: {travel: 600 mm, speed: 80 mm/s, resolution: 0.01 mm}}
                shots:
                """);
        StringBuilder cut = new StringBuilder("cut:\n");
        StringBuilder cues = new StringBuilder("cues:\n");
        for (int i = 0; i < 40; i++) {
            String hung = i % 4 == 0 ? "10 mm], lines: 1, line: {diameter: 0.4 mm}" : "0 mm]";
            plan.append("""
                      s%d:
                        camera: {body: main, lens: fifty, at: [0 mm, -900 mm, 59 mm], aim: ahead, rate: 96 fps}
                        place: {hero: {thing: tin, at: [0 mm, 0 mm, %s}}
                        moves: {slide: {machine: slider, carries: camera, by: [20 mm, 0 mm], in: 1 s, profile: smooth}}
                        speed: [[0 frames, 100 %%], [12 frames, 100 %%], [30 frames, 25 %%]]
                    """.formatted(i, hung).indent(0));
            cut.append("  - {shot: s%d, frames: 36}\n".formatted(i));
            cues.append(
                    "  - {sound: whoosh, sync: {shot: s%d, when: 12 frames}, lead: 6 frames, of: hero}\n".formatted(i));
        }
        film = Solve.film(Plans.read((plan.toString() + cut + cues).getBytes(UTF_8), "minute.yaml")
                .plan()
                .orElseThrow());
    }

    @Benchmark
    public long made() {
        long[] bytes = {0};
        OutputStream counting = new OutputStream() {
            @Override
            public void write(int one) {
                bytes[0]++;
            }

            @Override
            public void write(byte[] some, int from, int count) {
                bytes[0] += count;
            }
        };
        Post.of(film, Optional.empty(), "").forEach(one -> {
            if (one.name().contains(file)) {
                try {
                    one.content().writeTo(counting);
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            }
        });
        return bytes[0];
    }
}
