package plumeline.scenery;

import plumeline.colour.Rgb;
import plumeline.geom.Bounds;

/// Ink in water as shares in cells: what takes light, and what scatters it once, evenly into all directions.
///
/// Between the cells' middles shares run straight; outside the box there is none.
public final class Cloud {
    private final Bounds box;
    private final int across;
    private final int deep;
    private final int high;
    private final float[] shares;
    private final Rgb extinction;
    private final Rgb albedo;

    /// Takes a field.
    ///
    /// @param box where it lies, m
    /// @param across cells along x
    /// @param deep cells along y
    /// @param high cells along z
    /// @param shares of neat ink, 0 to 1, index `(iz · deep + iy) · across + ix`
    /// @param extinction of neat ink, natural, 1/m a channel
    /// @param albedo what of that is scattered, shares of one a channel
    public Cloud(Bounds box, int across, int deep, int high, float[] shares, Rgb extinction, Rgb albedo) {
        if (across < 1 || deep < 1 || high < 1 || shares.length != across * deep * high) {
            throw new IllegalArgumentException("a cloud needs a share a cell");
        }
        this.box = box;
        this.across = across;
        this.deep = deep;
        this.high = high;
        this.shares = shares;
        this.extinction = extinction;
        this.albedo = albedo;
    }

    /// Gives where it lies.
    ///
    /// @return the box, m
    public Bounds box() {
        return box;
    }

    /// Gives how fast neat ink takes light.
    ///
    /// @return 1/m a channel, natural
    public Rgb extinction() {
        return extinction;
    }

    /// Gives what of the light it takes is scattered.
    ///
    /// @return shares of one a channel
    public Rgb albedo() {
        return albedo;
    }

    /// Gives how many cells along x there are.
    ///
    /// @return cells
    public int across() {
        return across;
    }

    /// Gives how many cells along y there are.
    ///
    /// @return cells
    public int deep() {
        return deep;
    }

    /// Gives how many cells along z there are.
    ///
    /// @return cells
    public int high() {
        return high;
    }

    /// Gives the field; whoever takes it leaves it as it is.
    ///
    /// @return shares of neat ink, index `(iz · deep + iy) · across + ix`
    public float[] shares() {
        return shares;
    }
}
