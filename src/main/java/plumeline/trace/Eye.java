package plumeline.trace;

import plumeline.geom.Aim;

/// A camera as it sees: rays leave its entrance pupil and meet in the plane it is focused on.
///
/// @param aim the lens point and where it looks
/// @param widthTangent the tangent that spans the picture's width
/// @param heightTangent the tangent that spans its height
/// @param pupilMetres radius of the entrance pupil, m, ≥ 0; at 0 all is sharp
/// @param focusMetres the plane that is sharp, along the axis from the lens point, as seen (apparent in a tank), m, > 0
public record Eye(Aim aim, double widthTangent, double heightTangent, double pupilMetres, double focusMetres) {
    /// Gives the same camera with all sharp.
    ///
    /// @return it, with a point for a pupil
    public Eye sharp() {
        return new Eye(aim, widthTangent, heightTangent, 0, focusMetres);
    }
}
