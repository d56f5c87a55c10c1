package plumeline.plume;

import java.util.List;
import plumeline.flow.Flow;
import plumeline.flow.Grid;
import plumeline.flow.Inside;
import plumeline.flow.Liquid;
import plumeline.flow.Release;
import plumeline.flow.Tank;
import plumeline.flow.Walls;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.quantity.Quantity;

/// A shot's ink and water as plain numbers: what a flow is set up from.
///
/// @param shot the shot's name
/// @param waters the water
/// @param pour how the ink comes in
/// @param things what stands or hangs in the water, as at the release's start
/// @param timing how release, shot and rate lie in time
/// @param spreads what is written with a ±, and what of it counts here: as written, or as a try has it
/// @param assumed what was taken for what isn't written, each in a few words
public record InkShot(
        String shot,
        Waters waters,
        Pour pour,
        List<Thing> things,
        Timing timing,
        List<Spread> spreads,
        List<String> assumed) {
    /// How far a stream's speed wanders, as a share of itself: what a hand on a syringe leaves.
    private static final double NOISE = 1;

    /// So many points along a cell's edge tell how much of it a thing fills.
    private static final int POINTS = 5;

    /// Copies the lists.
    public InkShot {
        things = List.copyOf(things);
        spreads = List.copyOf(spreads);
        assumed = List.copyOf(assumed);
    }

    /// The water.
    ///
    /// @param box its bounds, table frame, metres; the top is the water line
    /// @param viscosityMetres2PerSecond its kinematic viscosity, square metres a second
    /// @param sinkingMetresPerSecond2 the neat ink's reduced gravity, metres per second squared; + sinks, − rises
    public record Waters(Bounds box, double viscosityMetres2PerSecond, double sinkingMetresPerSecond2) {
        /// Gives the water's depth.
        ///
        /// @return metres
        public double depthMetres() {
            return box.high().z() - box.low().z();
        }
    }

    /// Something in the water.
    ///
    /// @param name its name in the shot
    /// @param body its form where it is
    public record Thing(String name, Body body) {}

    /// How the ink comes in.
    ///
    /// @param mouth the nozzle's mouth, which points down, table frame, metres; in the water, or on its surface
    /// where the ink falls onto it
    /// @param boreMetres how wide the stream enters, metres
    /// @param metres3PerSecond its rate, cubic metres a second
    /// @param startSeconds when it enters the water, seconds from the release's start
    /// @param endSeconds when it ends, seconds
    public record Pour(Vec mouth, double boreMetres, double metres3PerSecond, double startSeconds, double endSeconds) {}

    /// How release, shot and rate lie in time.
    ///
    /// @param framesPerSecond frames of the flow that are kept, 1/s: the camera's rate, or a whole part of it over
    /// 120
    /// @param startSeconds the release's start, real seconds from the shot's first frame
    /// @param shotSeconds the end of the shot's last frame, seconds from the release's start
    /// @param floorSeconds when the law has the ink on the floor, seconds from the release's start; a guess for
    /// progress
    public record Timing(double framesPerSecond, double startSeconds, double shotSeconds, double floorSeconds) {}

    /// Something that is written with a ±.
    ///
    /// @param name what it is, as the plan's path says
    /// @param value its value here
    /// @param halfWidthSi its ±, a 95 % half-width, SI, > 0
    public record Spread(String name, Quantity value, double halfWidthSi) {}

    /// Cuts the water into cells.
    ///
    /// @param cellMetres the wanted edge, metres, > 0
    /// @return the grid
    public Grid grid(double cellMetres) {
        Vec size = waters.box().high().minus(waters.box().low());
        return Grid.ofCells(size.x(), size.y(), size.z(), cellMetres);
    }

    /// Counts the cells into which the water would be cut.
    ///
    /// @param cellMetres the wanted edge, metres, > 0
    /// @return cells; `Long.MAX_VALUE` for more than a grid may have
    public long cells(double cellMetres) {
        Vec size = waters.box().high().minus(waters.box().low());
        return Grid.countOfCells(size.x(), size.y(), size.z(), cellMetres);
    }

    /// Sets the flow up.
    ///
    /// @param grid the cells
    /// @param seed chooses the noise
    /// @return what a flow starts from
    public Flow.Setting setting(Grid grid, long seed) {
        Vec mouth = mouth(grid);
        var nozzle = new Release.Nozzle(
                Release.Mouth.down(mouth.x(), mouth.y(), mouth.z()),
                pour.boreMetres(),
                pour.metres3PerSecond(),
                pour.startSeconds(),
                pour.endSeconds(),
                NOISE);
        return new Flow.Setting(
                tank(grid),
                new Liquid(waters.viscosityMetres2PerSecond(), 0, waters.sinkingMetresPerSecond2()),
                List.of(nozzle),
                seed);
    }

    /// Whether the cells leave the nozzle in water.
    ///
    /// @param grid the cells
    /// @return false where the one about its mouth is solid
    public boolean isOpenAtMouth(Grid grid) {
        Vec mouth = mouth(grid);
        int i = Math.clamp((int) (mouth.x() / grid.dxMetres()), 0, grid.nx() - 1);
        int j = Math.clamp((int) (mouth.y() / grid.dyMetres()), 0, grid.ny() - 1);
        int k = Math.clamp((int) (mouth.z() / grid.dzMetres()), 0, grid.nz() - 1);
        return !tank(grid).isSolid(i, j, k);
    }

    /// The nozzle's mouth from the grid's origin: in the middle of the top cell at the highest, as nothing flows out
    /// through the surface itself.
    private Vec mouth(Grid grid) {
        Vec mouth = pour.mouth().minus(waters.box().low());
        return new Vec(mouth.x(), mouth.y(), Math.min(mouth.z(), grid.heightMetres() - grid.dzMetres() / 2));
    }

    /// The tank with what is solid in it.
    ///
    /// @param grid the cells
    /// @return the tank
    public Tank tank(Grid grid) {
        Vec corner = waters.box().low();
        Inside solid = (x, y, z) -> isSolid(corner.plus(new Vec(x, y, z)));
        return Tank.of(grid, Walls.tank(), solid);
    }

    /// Whether a place is inside a body.
    ///
    /// @param place a place, table frame, metres
    /// @return whether it is
    public boolean isSolid(Vec place) {
        for (Thing thing : things) {
            if (holds(thing.body(), place)) {
                return true;
            }
        }
        return false;
    }

    /// How large a thing is as cells: the volume of its solid cells over its own in the water.
    ///
    /// @param thing one of the things
    /// @param grid the cells
    /// @return share, near 1 where cells are fine enough for it; 1 where hardly any of it is in the water
    public double sizeInCells(Thing thing, Grid grid) {
        Vec corner = waters.box().low();
        Inside inside = (x, y, z) -> holds(thing.body(), corner.plus(new Vec(x, y, z)));
        Vec low = thing.body().bounds().low().minus(corner);
        Vec high = thing.body().bounds().high().minus(corner);
        double own = 0;
        double cells = 0;
        for (int k = from(low.z(), grid.dzMetres()); k < to(high.z(), grid.dzMetres(), grid.nz()); k++) {
            for (int j = from(low.y(), grid.dyMetres()); j < to(high.y(), grid.dyMetres(), grid.ny()); j++) {
                for (int i = from(low.x(), grid.dxMetres()); i < to(high.x(), grid.dxMetres(), grid.nx()); i++) {
                    own += inside.share(grid, i, j, k, POINTS);
                    cells += inside.fills(grid, i, j, k) ? 1 : 0;
                }
            }
        }
        return own < 1 ? 1 : cells / own;
    }

    private static int from(double metres, double edge) {
        return Math.max(0, (int) Math.floor(metres / edge));
    }

    private static int to(double metres, double edge, int cells) {
        return Math.min(cells, (int) Math.ceil(metres / edge));
    }

    private static boolean holds(Body body, Vec place) {
        if (place.distanceMetres(body.middle()) > body.ballMetres()) {
            return false;
        }
        Vec own = body.own(place);
        if (own.z() < 0 || own.z() > body.solid().heightMetres()) {
            return false;
        }
        return switch (body.solid()) {
            case Solid.Revolved round -> {
                double radius = round.radiusAtMetres(own.z());
                yield own.x() * own.x() + own.y() * own.y() <= radius * radius;
            }
            case Solid.Box box ->
                Math.abs(own.x()) <= box.widthMetres() / 2 && Math.abs(own.y()) <= box.depthMetres() / 2;
        };
    }
}
