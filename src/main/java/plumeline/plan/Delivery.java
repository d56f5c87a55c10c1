package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantity;
import plumeline.quantity.Ratio;

/// One file to be delivered. At least one of `ratio` and `size` is written, and where both are, they agree.
///
/// @param name the delivery's name
/// @param ratio the ratio as written
/// @param size the size in pixels
/// @param length the length of a cut-down, in seconds or frames
/// @param keepOut the sides that must stay free
/// @param written all keys as written, with `textless`, `loudness` and `true_peak`
public record Delivery(
        String name,
        Optional<Ratio> ratio,
        Optional<Size> size,
        Optional<Quantity> length,
        KeepOut keepOut,
        Written written) {

    /// A picture's size in pixels.
    ///
    /// @param acrossPixels pixels across
    /// @param downPixels pixels down
    public record Size(int acrossPixels, int downPixels) {}

    /// Shares of the picture, from each side, that must stay free; each 0 where it isn't written.
    ///
    /// @param top share of the height from the top, dimensionless
    /// @param bottom share of the height from the bottom, dimensionless
    /// @param left share of the width from the left, dimensionless
    /// @param right share of the width from the right, dimensionless
    public record KeepOut(double top, double bottom, double left, double right) {}

    /// Gives the delivery's width over its height: the written size's, else the ratio's.
    ///
    /// @return width over height, dimensionless, > 0
    public double aspect() {
        return size.map(s -> (double) s.acrossPixels() / s.downPixels())
                .or(() -> ratio.map(r -> (double) r.across() / r.down()))
                .orElseThrow();
    }

    /// Lists the entries of its own cut.
    ///
    /// @return the entries; empty where it shows the film's
    public List<Cut> listCuts() {
        return Cut.list(Tree.items(written.node(), "cut"));
    }

    /// Tells whether a copy without titles is wanted.
    ///
    /// @return true where `textless: yes` is written
    public boolean isTextless() {
        return written.says("textless");
    }
}
