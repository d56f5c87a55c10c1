package plumeline.take;

import java.util.List;
import plumeline.quantity.Quantity;

/// A take of ink as it was read.
///
/// @param conditions what was let go, and from where
/// @param rate the footage's rate: times are read to about a frame
/// @param fronts readings of the front
/// @param widths readings of its width
public record Take(Conditions conditions, Quantity rate, List<Front> fronts, List<Width> widths) {
    /// Copies the lists.
    public Take {
        fronts = List.copyOf(fronts);
        widths = List.copyOf(widths);
    }

    /// The front at an instant.
    ///
    /// @param time from the first ink that leaves the nozzle
    /// @param depth below the still surface
    public record Front(Quantity time, Quantity depth) {}

    /// The width where the front was.
    ///
    /// @param depth below the still surface
    /// @param width from edge to edge
    public record Width(Quantity depth, Quantity width) {}
}
