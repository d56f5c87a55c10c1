/// How an axis gets from one end of its move to the other, what that asks of its device, and how nearly it comes again.
///
/// Pure functions of real seconds and of distances in metres or radians. Front class: [Travel], a move by a profile;
/// [FreeKeys] and [SevenSegments] make runs of cubic pieces. [Usage] and [RunUp] say what a device is asked, [Swing]
/// what is left when it stops, [Registration] how far passes lie apart. What is *not* here: how px follow from lens and
/// distance (`optics`), what a screen shows of it (`time`), which device a plan names.
@NullMarked
package plumeline.motion;

import org.jspecify.annotations.NullMarked;
