package plumeline.light;

import java.util.List;
import plumeline.geom.Vec;

/// What shines with an area: evenly bright, seen from every side that it shines to alike (Lambert's law), as a lamp
/// behind cloth and a tube nearly are. Whatever its size, the light on a patch is exact, near and far.
public sealed interface Emitter permits Panel, Disc, Tube {
    /// Into so many straight pieces a circle is cut, each a little outside it so that the area is the circle's. The
    /// factor of a disc is then within 1e-5 of the exact one from a hundredth of its radius on.
    int CIRCLE_PIECES = 128;

    /// Gives its luminance.
    ///
    /// @return cd/m²
    double luminance();

    /// Gives the same emitter, brighter or darker.
    ///
    /// @param candelaPerMetre2 its luminance, cd/m², ≥ 0
    /// @return the emitter
    Emitter withLuminance(double candelaPerMetre2);

    /// Gives where it is: its middle.
    ///
    /// @return m
    Vec middle();

    /// Gives where it faces from its middle: along this its lux at a distance are measured.
    ///
    /// @return of length 1
    Vec facing();

    /// Gives the outline of what shines to a place.
    ///
    /// @param from the place, m
    /// @return corners in order, m; empty where it shines the other way
    List<Vec> outline(Vec from);

    /// Gives the configuration factor of a patch: by luminance L it gets `π L F`.
    ///
    /// @param patch the patch
    /// @return 0 to 1
    default double factor(Patch patch) {
        List<Vec> outline = outline(patch.place());
        return outline.isEmpty() ? 0 : Seen.factor(outline, patch);
    }

    /// Gives the illuminance of a patch with nothing between.
    ///
    /// @param patch the patch
    /// @return lx
    default double lux(Patch patch) {
        return Math.PI * luminance() * factor(patch);
    }

    /// Gives the same emitter so bright that a meter at a distance before its middle, facing it, reads so much.
    ///
    /// @param lux what the meter reads, lx, ≥ 0
    /// @param atMetres how far before the middle, m, > 0
    /// @return the emitter
    /// @throws IllegalArgumentException where nothing of it is seen from there
    default Emitter giving(double lux, double atMetres) {
        double factor = factor(new Patch(middle().plus(facing().times(atMetres)), facing().times(-1)));
        if (!(factor > 0)) {
            throw new IllegalArgumentException("from " + atMetres + " m before its middle nothing of it is seen");
        }
        return withLuminance(lux / (Math.PI * factor));
    }
}
