/// Line drawings as SVG: spots and boxes on a page, pens, shapes, lettering, labels that find their places.
///
/// Front class: [plumeline.sketch.Page]; what comes of it is a [plumeline.sketch.Drawing]. Lines are black on white and
/// differ by weight and dash; letters are 14 points. Page coordinates are CSS pixels (96 to the inch), x right, y down.
/// Labels are placed so that their boxes meet neither each other nor the sheet's edge. Whatever text goes into
/// [plumeline.sketch.Markup] comes out escaped.
///
/// Not here: what is drawn (`draw`), pages (`sheet`). Nothing here reads a file or a font: widths of letters come from
/// a table.
@NullMarked
package plumeline.sketch;

import org.jspecify.annotations.NullMarked;
