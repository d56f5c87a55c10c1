package plumeline.draw.time;

/// Something that lies along the film: a sound, a title, an overlay.
///
/// @param words what it is
/// @param from where it begins, frames from the film's first
/// @param sync where it meets the picture, frames; the same as `from` where it meets nothing
/// @param past where it ends, frames
public record Heard(String words, double from, double sync, double past) {
    /// Tells whether a part of the film has any of it.
    boolean isIn(double first, double last) {
        return past > first && from < last;
    }
}
