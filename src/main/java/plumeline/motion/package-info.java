/// How an axis gets from one end of its move to the other.
///
/// Pure functions of real seconds and a distance in any unit (metres, radians). Front class: [Travel]. What is *not*
/// here yet: whether a device can make a move, run-up, registration of passes.
@NullMarked
package plumeline.motion;

import org.jspecify.annotations.NullMarked;
