package plumeline.speed;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Emitter;
import plumeline.light.Panel;
import plumeline.light.Patch;
import plumeline.light.Tube;
import plumeline.mirror.Finish;
import plumeline.mirror.GlossyBody;
import plumeline.mirror.Spot;
import plumeline.mirror.Stripe;

/// How long light on one patch takes, and a light's stripe across a flacon. Aims: a patch under 20 us, a stripe under 1
/// ms.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class LightBench {
    private static final Vec MIDDLE = new Vec(0.5, -0.3, 0.4);
    private static final Vec FACING = new Vec(0.01, -0.02, 0.06).minus(MIDDLE).unit();
    private static final Vec RIGHT = Vec.UP.cross(FACING).unit();

    /// Which light.
    @Param({"panel", "disc", "tube"})
    public String light = "";

    private final Patch patch = new Patch(new Vec(0.01, -0.02, 0.06), new Vec(0.6, -0.8, 0));

    private final GlossyBody flacon = GlossyBody.alone(
            new Body(
                    new Solid.Revolved(List.of(
                            new Station(0, 0.021),
                            new Station(0.09, 0.020),
                            new Station(0.09, 0.010),
                            new Station(0.118, 0.010))),
                    Pose.at(0, 0)),
            new Aim(new Vec(0.003, -0.6, 0.08), 0, -0.03));

    private Emitter emitter() {
        return switch (light) {
            case "panel" -> new Panel(MIDDLE, FACING, RIGHT, 0.3, 1.2, 4000);
            case "disc" -> new Disc(MIDDLE, FACING, 0.4, 4000);
            default -> new Tube(MIDDLE, FACING.cross(RIGHT), FACING, 1.2, 0.03, 4000);
        };
    }

    /// Light on one patch.
    ///
    /// @return lx
    @Benchmark
    public double lux() {
        return emitter().lux(patch);
    }

    /// A stripe at half height.
    ///
    /// @return the stripes
    @Benchmark
    public List<Stripe> stripe() {
        return flacon.listStripes(0.045, emitter());
    }

    /// A stripe at half height on satin.
    ///
    /// @return the stripes
    @Benchmark
    public List<Stripe> satinStripe() {
        return flacon.listSatinStripes(0.045, emitter(), new Finish.Satin(1.5, 0.15));
    }

    /// Where the light's middle is mirrored.
    ///
    /// @return the spots
    @Benchmark
    public List<Spot> spots() {
        return flacon.listSpots(MIDDLE);
    }

    /// The outlines of all its highlights.
    ///
    /// @return the outlines
    @Benchmark
    public List<List<Vec>> highlights() {
        return flacon.listHighlights(emitter(), 16);
    }
}
