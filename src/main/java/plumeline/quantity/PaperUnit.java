package plumeline.quantity;

/// The unit of length a film's papers speak. One paper never mixes them.
public enum PaperUnit {
    /// Whole millimetres, tenths for motor axes.
    MILLIMETRES,
    /// Inches with sixteenths, hundredths for motor axes.
    INCHES
}
