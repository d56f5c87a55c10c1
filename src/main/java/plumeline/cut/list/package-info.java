/// A film's timeline as lists that programs for cutting open: the edit decision list as text, and open timeline JSON.
///
/// A list knows one speed an event. A stretch that ramps is cut into steps of one speed each, as few as keep every
/// frame within one recorded frame of what the film shows; where that would be too many the loss grows, and is stated.
/// Frame k of a step shows source frame `first + k · speed / rate`, to the nearest, halves up. Source timecode counts
/// recorded frames at the timeline's rate. Front classes: [EditList], [OpenTimeline]. What is *not* here: which frame
/// shows what (`timeline`), sound, scenes, files.
@NullMarked
package plumeline.cut.list;

import org.jspecify.annotations.NullMarked;
