/// Vectors, poses, bodies in space and how far they are apart; lens points and how they project places.
///
/// Axes, stated here once for the whole house. The table frame is right-handed with its origin at the zero mark:
/// x to camera right, y away from the camera, z up from the table top; metres. At turn 0 cameras and lights face +y
/// and a label's middle faces −y. A positive turn is clockwise seen from above, a positive tilt points up, so a camera
/// at turn t and tilt p looks along (sin t cos p, cos t cos p, sin p). A body's own frame has its origin in the middle
/// of its base, its width along x, its depth along y and its axis along z; a lean tips its top to camera right (+x)
/// about its middle (half its height), then the turn is made about the vertical through that middle. A camera's roll,
/// last of all, is about where it looks, positive clockwise seen from behind it.
///
/// The picture is the plane at unit depth before the lens point: x to the right, y up, both tangents of angles, without
/// unit. A length across the line of sight is a picture length times its depth along the optical axis.
///
/// Front class: [plumeline.geom.Clearance] for distances in space. Everything is a pure function of its arguments;
/// nothing returns `NaN`. How bodies look in the picture (`sight`), what they are made of, lenses and tank walls are
/// not here.
@NullMarked
package plumeline.geom;

import org.jspecify.annotations.NullMarked;
