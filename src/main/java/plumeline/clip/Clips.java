package plumeline.clip;

import java.nio.file.Path;
import plumeline.sound.Sound;

/// Reads the sound and the pictures of clips.
public final class Clips {
    private Clips() {}

    /// What came of a clip.
    public sealed interface Reading {
        /// Its sound, at its own rate, with the channels that it has.
        ///
        /// @param sound the samples
        record Read(Sound sound) implements Reading {}

        /// None.
        ///
        /// @param given what is there instead, as it follows the clip's name
        /// @param attempt what to try, a sentence
        record Refused(String given, String attempt) implements Reading {}
    }

    /// Decodes the sound of a clip.
    ///
    /// @param file a plain file
    /// @param mostSamples how many samples of all channels together are taken at most
    /// @return its sound, or why there is none
    public static Reading sound(Path file, long mostSamples) {
        try (SoundTrack track = new SoundTrack(file)) {
            return track.decode(mostSamples);
        } catch (UnreadableClip e) {
            return new Reading.Refused(e.given(), e.attempt());
        } catch (LinkageError e) {
            return new Reading.Refused(
                    "which only a decoder can read, and there is none for this system here",
                    "Have its sound written into a WAV file, and name that.");
        }
    }

    /// What came of a clip's pictures.
    public sealed interface Opening {
        /// They are there.
        ///
        /// @param track the pictures, to be closed
        record Open(PictureTrack track) implements Opening {}

        /// None.
        ///
        /// @param given what is there instead, as it follows the clip's name
        /// @param attempt what to try, a sentence
        record Refused(String given, String attempt) implements Opening {}
    }

    /// Opens the pictures of a clip, or a single picture.
    ///
    /// @param file a plain file
    /// @return its pictures, or why there are none
    public static Opening pictures(Path file) {
        try {
            return new Opening.Open(new PictureTrack(file));
        } catch (UnreadableClip e) {
            return new Opening.Refused(e.given(), e.attempt());
        } catch (LinkageError e) {
            return new Opening.Refused(
                    "which only a decoder can read, and there is none for this system here", "Leave it out.");
        }
    }
}
