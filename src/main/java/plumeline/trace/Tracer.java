package plumeline.trace;

import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Aim;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.scenery.World;

/// Follows rays in a world that stands still. It may be used by many threads at once.
///
/// Light to places in a basin, behind and beside it is bent by its panes and water as sight is; pictures of one ray a
/// pixel leave out what water turns by a corner. What is mirrored inside panes and water is left out.
public final class Tracer {
    private static final double OFF_METRES = 1e-6;

    private final Ready ready;

    private Tracer(World world, Optional<Tracer> other) {
        List<Fog> known = other.map(tracer -> tracer.ready.fogs).orElse(List.of());
        ready = new Ready(world, known);
        Falling falling = new Falling(ready);
        ready.fogs.stream().filter(fog -> !known.contains(fog)).forEach(falling::fill);
    }

    /// Makes a world ready.
    ///
    /// @param world the world
    /// @return the tracer
    public static Tracer of(World world) {
        return new Tracer(world, Optional.empty());
    }

    /// Makes the same set ready a moment later. Light in a cloud that is still the same isn't worked out again.
    ///
    /// @param world the world then
    /// @return its tracer
    public Tracer later(World world) {
        return new Tracer(world, Optional.of(this));
    }

    Walker walker(Eye eye, Optional<Walker> before) {
        return new Walker(ready, eye, before);
    }

    /// Tells which parts sight meets from a picture point: the first, and the one that it shows mirrored.
    ///
    /// @param eye the camera; its lens point counts, not its pupil
    /// @param x picture point to the right, tangent
    /// @param y picture point up, tangent
    /// @return what is seen
    public Seen seen(Eye eye, double x, double y) {
        Aim.Frame frame = eye.aim().frame();
        Vec way = frame.forward()
                .plus(frame.right().times(x))
                .plus(frame.up().times(y))
                .unit();
        return new Sighting(ready).seen(eye.aim().eye(), way);
    }

    /// What sight meets; panes and water of a basin don't count.
    ///
    /// @param part index of the part; −1 for nothing, −2 − i for the face of light i
    /// @param mirrored what it shows in its mirror image, likewise; −1 where it mirrors nothing
    /// @param wayMetres how far light goes from the lens point to it, m; endless for nothing
    public record Seen(int part, int mirrored, double wayMetres) {}

    /// Gives the light on a patch, of all lights past what stands between and of the surround.
    ///
    /// @param patch the patch
    /// @param samples how many places of each light are asked, > 0
    /// @param seed draws them
    /// @return lx a channel
    public Rgb lux(Patch patch, int samples, long seed) {
        Vec place = patch.place();
        Vec facing = patch.facing();
        Vec before = place.plus(facing.times(OFF_METRES));
        Falling falling = new Falling(ready);
        falling.fallOnPatch(
                place.x(),
                place.y(),
                place.z(),
                facing.x(),
                facing.y(),
                facing.z(),
                State.at(ready, before.x(), before.y(), before.z()),
                samples,
                seed);
        return new Rgb(falling.lux[0], falling.lux[1], falling.lux[2]);
    }
}
