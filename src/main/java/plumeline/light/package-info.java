/// Light: what shines and how much of it arrives, where it is mirrored, what it exposes. Lengths in m, luminance in
/// cd/m², illuminance in lx. Pure functions.
@NullMarked
package plumeline.light;

import org.jspecify.annotations.NullMarked;
