/// The questions on light.
@NullMarked
package plumeline.ask.light;

import org.jspecify.annotations.NullMarked;
