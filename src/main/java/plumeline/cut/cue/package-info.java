/// What is heard along a timeline: the cue sheet for whoever makes the sound, and a guide track to cut to until then.
///
/// Front classes: [CueSheet], [GuideTrack]. Frames are the film's, counted from 0, as samples of 48 kHz are. What is
/// *not* here: how loud a mix is (`sound`), lists of pictures (`cut.list`), files.
@NullMarked
package plumeline.cut.cue;

import org.jspecify.annotations.NullMarked;
