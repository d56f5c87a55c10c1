package plumeline.draw;

/// A stretch round a thing that shows or catches something: a highlight, a flag's edge, the crew's reflection.
///
/// @param id its name in ids, such as the lamp's
/// @param name what is lettered
/// @param fromRadians bearing where it begins, at the thing's axis from the direction to the lens at the shot's start,
///     positive to camera right
/// @param toRadians bearing where it ends, not below `fromRadians`
public record Band(String id, String name, double fromRadians, double toRadians) {
    /// Checks the bearings.
    ///
    /// @throws IllegalArgumentException where they aren't finite or fall
    public Band {
        if (!(toRadians >= fromRadians) || !Double.isFinite(toRadians - fromRadians)) {
            throw new IllegalArgumentException("a band runs from " + fromRadians + " to " + toRadians);
        }
    }
}
