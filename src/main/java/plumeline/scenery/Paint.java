package plumeline.scenery;

import java.util.Optional;
import plumeline.colour.Rgb;

/// What a surface sends back evenly into all directions, shares of one a channel.
///
/// @param body where nothing else is said
/// @param label a label on it, in a posed body's own frame, its middle toward −y
/// @param fade a share that changes from the form's foot to its top: a sheet's along `up`, a bend's from `from` to `to`
/// @param beads drops that sit on it
public record Paint(Rgb body, Optional<Label> label, Optional<Fade> fade, Optional<Beads> beads) {
    /// Paints all of it alike.
    ///
    /// @param body shares of one a channel
    /// @return the paint
    public static Paint even(Rgb body) {
        return new Paint(body, Optional.empty(), Optional.empty(), Optional.empty());
    }

    /// A label: round a turned body along its side by its width, flat on the front of a box.
    ///
    /// @param widthMetres m, > 0
    /// @param heightMetres along the side, upwards along the axis, m, > 0
    /// @param bottomMetres its lower edge over the base, along the axis, m
    /// @param paper what it sends back where its art is clear, or has none
    /// @param art its print
    public record Label(double widthMetres, double heightMetres, double bottomMetres, Rgb paper, Optional<Art> art) {}

    /// A share that changes evenly; multiplies `body`.
    ///
    /// @param foot at the foot, share of one
    /// @param top at the top, share of one
    public record Fade(double foot, double top) {}

    /// Clear drops that sit on a surface, seen as what they do to what is mirrored: places and sizes by a seed.
    ///
    /// @param cover share of the surface under drops, 0 to 0.6
    /// @param leastMetres smallest diameter, m, > 0
    /// @param mostMetres largest diameter, m
    /// @param seed draws their places
    public record Beads(double cover, double leastMetres, double mostMetres, long seed) {}
}
