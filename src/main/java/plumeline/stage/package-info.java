/// A shot at one instant: bodies, camera and lamps, all posed, as plain numbers.
///
/// [Stage] turns a plan's shot (or one of its passes) into numbers once; [Scene] is that shot at one screen frame for
/// given values of its marks. Table frame as in `geom`: metres, z up, y away from the camera. Marks are in SI (m, rad,
/// shares, f-numbers). Invariants: pure, no state after construction. What is *not* here: what must be true (`want`),
/// which values the marks should have (`solve`).
@NullMarked
package plumeline.stage;

import org.jspecify.annotations.NullMarked;
