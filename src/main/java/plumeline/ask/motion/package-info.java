/// The questions on moves.
@NullMarked
package plumeline.ask.motion;

import org.jspecify.annotations.NullMarked;
