/// Drawings of a solved shot as SVG text: camera view, plan from above, side elevation, tank from the side, what is
/// sharp along the axis, leeway at full size.
///
/// Front class: [plumeline.draw.Drawings]. Lines are black on white and differ by weight and dash, never by colour
/// alone; what is hidden is dashed, what must stay free is hatched. Every group has an id of the mark, thing, lamp,
/// want or delivery it shows, unique within a film's papers. Page coordinates are CSS pixels (96 to the inch), x right,
/// y down; table coordinates are those of `geom`. Labels are placed so that their boxes meet neither each other nor the
/// sheet's edge.
///
/// Not here: pages (`sheet`), shaded pictures (`render`). Nothing here reads a file or a font: widths of letters come
/// from a table.
@NullMarked
package plumeline.draw;

import org.jspecify.annotations.NullMarked;
