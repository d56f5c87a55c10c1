package plumeline.ask;

/// Something that must not fall below 0 for the answer to hold.
///
/// @param what what it is, as sentences say it: `the air before the pane`
/// @param margin how far from failing, in its own unit, negative when it fails
record Criterion(String what, double margin) {}
