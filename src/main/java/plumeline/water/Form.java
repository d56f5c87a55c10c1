package plumeline.water;

import plumeline.geom.Vec;

/// A closed form whose part under a plane has a known volume and centroid.
public sealed interface Form permits Turned, Block, Dished {
    /// Gives the part that lies under a plane.
    ///
    /// @param up the plane's upward unit normal in the body's frame
    /// @param levelMetres height of the plane along `up` over the body's origin, metres
    /// @return the part, its centroid and the area of the cut
    Portion below(Vec up, double levelMetres);

    /// Gives the whole form.
    ///
    /// @return its volume and centroid; no cut
    Portion whole();

    /// Gives the level of its lowest point.
    ///
    /// @param up upward unit direction in the body's frame
    /// @return height along `up` over the body's origin, metres
    double lowestMetres(Vec up);

    /// Gives the level of its highest point.
    ///
    /// @param up upward unit direction in the body's frame
    /// @return height along `up` over the body's origin, metres
    double highestMetres(Vec up);
}
