package plumeline.sheet;

/// What is told on papers beside the findings: when they were printed, what changed since an earlier revision, what
/// shots would look like.
///
/// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
/// @param changes what changed; none where papers are compared with nothing
/// @param pictures computed pictures of shots
public record Printed(String time, Changes changes, Pictures pictures) {
    /// Papers without pictures.
    ///
    /// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
    /// @param changes what changed
    public Printed(String time, Changes changes) {
        this(time, changes, Pictures.NONE);
    }

    /// Papers that are compared with no earlier revision.
    ///
    /// @param time the time as it shall stand on each page, such as `2026-11-25 10:40`
    public Printed(String time) {
        this(time, Changes.none());
    }
}
