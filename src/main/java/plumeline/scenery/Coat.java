package plumeline.scenery;

import java.util.Optional;
import plumeline.geom.Solid;
import plumeline.mirror.Finish;

/// What light does at a part.
public sealed interface Coat {
    /// No light goes through: it sends back evenly by its paint, and mirrors by its finish what the paint doesn't get.
    ///
    /// @param paint its paint
    /// @param finish how it mirrors
    record Opaque(Paint paint, Finish finish) implements Coat {}

    /// Clear, with a wall, and a room in it where there is one. For closed forms. Outside it is whatever it stands in:
    /// air, or a basin's water.
    ///
    /// @param wall what the wall is of
    /// @param room the room in it
    /// @param label a label that sticks to its outside: matte, no light goes through it; its back, seen through the
    /// wall, is its bare paper
    /// @param beads drops that sit on its outside where air is; they bend light as bumps of the wall's own
    /// substance would
    record Clear(Medium wall, Optional<Room> room, Optional<Paint.Label> label, Optional<Paint.Beads> beads)
            implements Coat {
        /// Makes one with nothing on it.
        ///
        /// @param wall what the wall is of
        /// @param room the room in it
        public Clear(Medium wall, Optional<Room> room) {
            this(wall, room, Optional.empty(), Optional.empty());
        }
    }

    /// A room inside a clear solid, in that solid's own frame.
    ///
    /// @param solid its form
    /// @param bottomMetres its floor over the outer base, m, > 0
    /// @param levelMetres how high liquid stands in it, over the outer base along the axis, m; below its floor it
    /// is empty, above its top full
    /// @param liquid the liquid; air is over it
    record Room(Solid solid, double bottomMetres, double levelMetres, Medium liquid) {}
}
