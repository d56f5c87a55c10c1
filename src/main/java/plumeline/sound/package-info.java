/// Sound as numbers: samples against frames and beats, WAV files, loudness and peaks, a guide track.
///
/// Front classes: [plumeline.sound.Loudness], [plumeline.sound.SampleGrid], [plumeline.sound.TempoGrid],
/// [plumeline.sound.Wav], [plumeline.sound.Guide].
///
/// Samples are shares of full scale, 1 = 0 dBFS; a sample counts once for all channels, as frames of a film do.
/// Channels stand in the order of a WAV file's mask ([plumeline.sound.Speaker]). Everything that is made is the same
/// on every machine, bit for bit. Not here: what is cut where (`timeline`, `cut`), sound inside clips (`clip`), what a
/// client wants of a mix (`ask`), files.
@NullMarked
package plumeline.sound;

import org.jspecify.annotations.NullMarked;
