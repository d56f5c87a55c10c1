package plumeline.plan;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Quantity;

/// What is let go in a shot.
public sealed interface Release {
    /// Gives all keys as written.
    ///
    /// @return the keys
    Written written();

    /// Ink from a nozzle.
    ///
    /// @param ink the ink
    /// @param at the nozzle's mouth
    /// @param written all keys as written: `volume`, `bore`, `squeeze_time` or `speed`, `start`
    record OfInk(Kit.Ink ink, Mark.Spot at, Written written) implements Release {}

    /// Pieces that fall.
    ///
    /// @param piece the piece
    /// @param at where they are let go
    /// @param written all keys as written: `count`, `start`, `over`
    record OfPieces(Kit.Piece piece, Mark.Spot at, Written written) implements Release {}

    /// A placed thing that is let go.
    ///
    /// @param thing the placed thing's name
    /// @param written all keys as written: `start`
    record OfThing(Named thing, Written written) implements Release {}

    /// Finds when it starts: seconds on the table or screen frames.
    ///
    /// @return the start where written
    default Optional<Quantity> findStart() {
        return written().findQuantity("start");
    }

    /// Gives its marks.
    ///
    /// @return x, y, z of the nozzle or hand; none for a placed thing
    default List<Mark> marks() {
        return switch (this) {
            case OfInk ink -> ink.at().marks();
            case OfPieces pieces -> pieces.at().marks();
            case OfThing _ -> List.of();
        };
    }
}
