package plumeline.lesson;

import plumeline.take.Measured;

/// One thing that was measured, with where it comes from.
///
/// @param measured what was measured
/// @param noted the day as written; empty where none is
/// @param how how it was measured, or by whom; empty where nothing is said
public record Lesson(Measured measured, String noted, String how) {}
