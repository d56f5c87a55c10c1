/// Light that pulses before a camera, and cuts that flash on a screen: pure functions of plain numbers.
///
/// Front classes: [plumeline.flicker.LampPulse] for how much of a lamp's pulse an exposure leaves,
/// [plumeline.flicker.PulsedFrames] for what frames and bars show of it, [plumeline.flicker.CleanSettings] for rates
/// and exposures that show none, and [plumeline.flicker.CutFlashes] for what alternating looks come to by the limits on
/// flashes.
///
/// Units are SI: hertz, seconds; pulses are counted; luminance is relative, 1 for full white. Cuts are counted in whole
/// frames at an exact rate.
///
/// Not here: whether a flicker or a flash is allowed to a person (limits are figures of guidance, no permission); eyes
/// on the set; plans and units text.
@NullMarked
package plumeline.flicker;

import org.jspecify.annotations.NullMarked;
