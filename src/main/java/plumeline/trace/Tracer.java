package plumeline.trace;

import plumeline.colour.Rgb;
import plumeline.light.Patch;

/// Follows rays in a world that stands still. It may be used by many threads at once.
public final class Tracer {
    private Tracer(World world) {}

    /// Makes a world ready.
    ///
    /// @param world the world
    /// @return the tracer
    public static Tracer of(World world) {
        return new Tracer(world);
    }

    /// Tells which parts sight meets from a picture point: the first, and the one that it shows mirrored.
    ///
    /// @param eye the camera; its lens point counts, not its pupil
    /// @param x picture point to the right, tangent
    /// @param y picture point up, tangent
    /// @return what is seen
    public Seen seen(Eye eye, double x, double y) {
        throw new UnsupportedOperationException("to come");
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
        throw new UnsupportedOperationException("to come");
    }
}
