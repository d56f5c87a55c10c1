package plumeline.sheet;

/// What is told on papers beside the findings: when they were printed, what changed since an earlier revision.
///
/// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
/// @param changes what changed; none where papers are compared with nothing
public record Printed(String time, Changes changes) {
    /// Papers that are compared with no earlier revision.
    ///
    /// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
    public Printed(String time) {
        this(time, Changes.none());
    }
}
