package plumeline.plan;

import plumeline.quantity.Quantity;

/// The instants of a shot at which a want must hold.
public sealed interface When {
    /// The first frame.
    record Start() implements When {}

    /// The last frame.
    record End() implements When {}

    /// Every frame.
    record Whole() implements When {}

    /// A time on the table, from the shot's first frame.
    ///
    /// @param time the time as written
    record AtTime(Quantity time) implements When {}

    /// A screen frame, counted from 0.
    ///
    /// @param frame the frame
    record AtFrame(long frame) implements When {}
}
