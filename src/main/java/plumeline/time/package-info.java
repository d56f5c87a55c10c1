/// Screen time and real time: how far the table has got when a frame is shown, and which captured frame is seen.
///
/// Frames are screen time, counted from 0; seconds are real time on the table, from the shot's first frame. One retime
/// map ([Retime]) couples both; nothing else converts between them. Rates that must stay exact over a day
/// ([Timecode], [Beats]) are fractions, [plumeline.quantity.FrameRate]; what is integrated ([Retime], [SourceFrames])
/// is doubles, positions then rounded to a billionth of a frame. Front class: [Retime]. What is *not* here: which
/// frames a shot has (`plan`), and how things move in real time (`motion`).
@NullMarked
package plumeline.time;

import org.jspecify.annotations.NullMarked;
