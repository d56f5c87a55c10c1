package plumeline.sheet;

/// When papers were printed.
///
/// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
public record Printed(String time) {}
