/// The questions on time: speed ramps, beats, media.
@NullMarked
package plumeline.ask.time;

import org.jspecify.annotations.NullMarked;
