/// The sound of clips, as samples: whatever container and codec a clip comes in. The codec library is at home here and
/// nowhere else.
///
/// Front class: [plumeline.clip.Clips]. Opens the file that it is given and nothing else: no other file, no address,
/// whatever the clip names. Not here: WAV files (`sound`), pictures, what is made of the samples.
@NullMarked
package plumeline.clip;

import org.jspecify.annotations.NullMarked;
