/// How bodies look from a lens point: edges, outlines, what hides what and by how much, clear space between neighbours,
/// depths.
///
/// Axes and the picture plane are those of `geom`: every length in the picture is a tangent of an angle, without unit.
/// Outlines and margins are worked out on exact ellipses, straight sides and hulls; polygons only draw and check, in
/// one class, which alone knows the polygon library. Through something that bends rays, such as a tank's wall, a body
/// is taken by rings of its points.
///
/// Front class: [plumeline.sight.Sight]. Everything is a pure function of its arguments; nothing returns `NaN`.
/// Distances in space and how places are projected are in `geom`, what bends rays in `optics`; what a body is made of
/// is not known here.
@NullMarked
package plumeline.sight;

import org.jspecify.annotations.NullMarked;
