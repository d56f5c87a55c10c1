/// Clips: their sound as samples and their pictures as numbers, whatever container and codec they come in; and films
/// written. The codec library is at home here and nowhere else.
///
/// Front classes: [plumeline.clip.Clips] reads, [plumeline.clip.Movie] writes. Opens the file that it is given and
/// nothing else: no other file, no address, whatever the clip names. Not here: WAV files (`sound`), what is made of
/// samples and pictures.
@NullMarked
package plumeline.clip;

import org.jspecify.annotations.NullMarked;
