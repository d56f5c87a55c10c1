/// Which shot, pass and recorded frame a film shows at each of its frames.
///
/// Frames are whole and counted from 0: those of the film ("record" frames), those of a shot on the screen, and those
/// that a camera records, from GO on. The plan's check has seen to it that every frame of a timeline has exactly one
/// picture. Front class: [Timeline]. What is *not* here: where things stand in the picture, files, how lists look.
@NullMarked
package plumeline.timeline;

import org.jspecify.annotations.NullMarked;
