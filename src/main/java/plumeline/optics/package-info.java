/// How a lens and a flat tank wall make the picture: pure functions of plain numbers.
///
/// Front class: [plumeline.optics.Optics]. Walls: [plumeline.optics.FlatWall], and [plumeline.optics.TankView] for a
/// camera that looks through one; [plumeline.optics.FlatPath] for ways across several faces.
///
/// Units are SI: metres, radians, dimensionless f-numbers and magnifications. A magnification is a positive number:
/// image size over object size. Distances of a thing count from the front principal plane along the optical axis, away
/// from the camera. The lens is Gaussian: one focal length, no gap between its principal planes, a pupil ratio
/// (exit pupil over entrance pupil) that moves the entrance pupil off the principal plane for working f-number, light
/// loss and sharp depth only. Good for well-corrected lenses; aberrations, focus breathing and vignetting are not here.
///
/// Axes are those of `geom`. Not here: light levels and colour (`light`), outlines (`sight`), plans and units text.
@NullMarked
package plumeline.optics;

import org.jspecify.annotations.NullMarked;
