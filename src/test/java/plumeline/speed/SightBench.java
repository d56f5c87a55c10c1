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
import plumeline.geom.Pinhole;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.sight.Extent;
import plumeline.sight.Outline;
import plumeline.sight.Sides;
import plumeline.sight.Sight;

/// How long outlines and margins of hiding take, for a plain cylinder and for a flacon of two parts.
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class SightBench {
    /// Which body.
    @Param({"cylinder", "flacon"})
    public String body = "";

    private final Pinhole lens = new Pinhole(new Aim(new Vec(0.003, -0.6, 0.06), 0, 0));

    private Solid solid() {
        return body.equals("cylinder")
                ? Solid.cylinder(0.042, 0.118)
                : new Solid.Revolved(List.of(
                        new Station(0, 0.021),
                        new Station(0.09, 0.021),
                        new Station(0.09, 0.010),
                        new Station(0.118, 0.010)));
    }

    /// The four edges of an outline.
    ///
    /// @return the edges
    @Benchmark
    public Extent extent() {
        return Sight.extent(lens, new Body(solid(), Pose.at(0, 0)));
    }

    /// An outline as corners.
    ///
    /// @return the parts
    @Benchmark
    public List<Outline> outline() {
        return Sight.outline(lens, new Body(solid(), Pose.at(0, 0)), 64);
    }

    /// The margin of one behind another.
    ///
    /// @return the margin to each side
    @Benchmark
    public Sides hidden() {
        return Sight.hidden(lens, new Body(solid(), Pose.at(0.001, 0.1)), List.of(new Body(solid(), Pose.at(0, 0))));
    }
}
