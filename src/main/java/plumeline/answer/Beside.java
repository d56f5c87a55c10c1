package plumeline.answer;

import java.nio.ByteBuffer;

/// The files that lie beside a question and that it names, as whoever asks hands them in.
public interface Beside {
    /// Nothing lies beside the question.
    Beside NOTHING = (_, _) -> new File.Absent("a file that nobody handed in", "Ask from a question's file.");

    /// Looks a file up.
    ///
    /// @param name as the question names it
    /// @param mostBytes how many bytes are wanted of it at most, ≥ 0
    /// @return its first bytes, or why there are none
    File find(String name, int mostBytes);

    /// Looks a sound up: as [#find], but what isn't a WAV file already is given as one where whoever hands files in can
    /// decode it, as a clip's sound.
    ///
    /// @param name as the question names it
    /// @param mostBytes how many bytes are wanted of it at most, ≥ 0
    /// @return the WAV file's first bytes, or those of what it is instead, or why there are none
    default File findSound(String name, int mostBytes) {
        return find(name, mostBytes);
    }

    /// What was found under a name.
    sealed interface File {
        /// A file's first bytes.
        final class There implements File {
            private final byte[] bytes;

            private There(byte[] bytes, Taken taken) {
                this.bytes = taken == Taken.COPIED ? bytes.clone() : bytes;
            }

            /// Takes the bytes.
            ///
            /// @param bytes the bytes, copied
            public There(byte[] bytes) {
                this(bytes, Taken.COPIED);
            }

            /// Takes the bytes of what may be long.
            ///
            /// @param bytes the bytes, not copied and not to be changed any more
            /// @return the file
            public static There ofOwn(byte[] bytes) {
                return new There(bytes, Taken.OWN);
            }

            private enum Taken {
                COPIED,
                OWN
            }

            /// Gives the bytes.
            ///
            /// @return a copy
            public byte[] toArray() {
                return bytes.clone();
            }

            /// Gives the bytes to read.
            ///
            /// @return a view of them that can't be written
            public ByteBuffer view() {
                return ByteBuffer.wrap(bytes).asReadOnlyBuffer();
            }
        }

        /// No file that can be read.
        ///
        /// @param given what is there instead, as it follows "is"
        /// @param attempt what to try, a sentence
        record Absent(String given, String attempt) implements File {}
    }

    /// Gives the same files, each looked up once however often it is asked for: an answer is worked out of one state
    /// of them.
    ///
    /// @return the same files
    default Beside once() {
        return new Once(this);
    }

    /// Gives these files, and those that come with a question where there is nothing of their name.
    ///
    /// @param others the files that come with the question
    /// @return both
    default Beside or(Beside others) {
        return new Both(this, others);
    }
}
