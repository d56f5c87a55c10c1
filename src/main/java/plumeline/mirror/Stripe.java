package plumeline.mirror;

/// What a light shows as on a glossy body at one height: a stretch across.
///
/// @param left where it begins at the camera's left
/// @param middle where its middle is in the picture
/// @param right where it ends
/// @param leftShare where it begins, share of the outline's visible width at that height, from its left edge, 0 to 1
/// @param rightShare where it ends, likewise, not below
public record Stripe(Spot left, Spot middle, Spot right, double leftShare, double rightShare) {
    /// Gives where its middle is.
    ///
    /// @return share of the outline's width, from its left edge, 0 to 1
    public double fromLeft() {
        return (leftShare + rightShare) / 2;
    }

    /// Gives how wide it is.
    ///
    /// @return share of the outline's width, 0 to 1
    public double wide() {
        return rightShare - leftShare;
    }
}
