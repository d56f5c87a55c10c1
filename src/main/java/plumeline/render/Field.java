package plumeline.render;

import plumeline.geom.Bounds;
import plumeline.scenery.Cloud;

/// Shares of neat ink in the equal cells of a box, each told of its middle.
final class Field {
    private final Bounds box;
    private final int across;
    private final int deep;
    private final int high;
    private final float[] shares;

    /// Takes shares.
    ///
    /// @param box where they lie, table frame, m
    /// @param across cells along x
    /// @param deep cells along y
    /// @param high cells along z
    /// @param shares index `(iz · deep + iy) · across + ix`; the array itself, which nobody changes any more
    Field(Bounds box, int across, int deep, int high, float[] shares) {
        this.box = box;
        this.across = across;
        this.deep = deep;
        this.high = high;
        this.shares = shares;
    }

    Bounds box() {
        return box;
    }

    int across() {
        return across;
    }

    int deep() {
        return deep;
    }

    int high() {
        return high;
    }

    /// Makes it a cloud of an ink.
    Cloud cloud(InkTone tone) {
        return new Cloud(box, across, deep, high, shares, tone.extinction(), tone.albedo());
    }

    /// Gives a cell's share; that of the nearest cell outside.
    float share(int i, int j, int k) {
        int a = Math.clamp(i, 0, across - 1);
        int b = Math.clamp(j, 0, deep - 1);
        int c = Math.clamp(k, 0, high - 1);
        return shares[(c * deep + b) * across + a];
    }

    double xMetres() {
        return (box.high().x() - box.low().x()) / across;
    }

    double yMetres() {
        return (box.high().y() - box.low().y()) / deep;
    }

    double zMetres() {
        return (box.high().z() - box.low().z()) / high;
    }

    /// Gives how much neat ink is in it, m³.
    double inkMetres3() {
        double sum = 0;
        for (float share : shares) {
            sum += share;
        }
        return sum * xMetres() * yMetres() * zMetres();
    }
}
