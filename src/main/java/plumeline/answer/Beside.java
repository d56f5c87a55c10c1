package plumeline.answer;

import java.util.HashMap;
import java.util.Map;

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

    /// What was found under a name.
    sealed interface File {
        /// A file's first bytes.
        final class There implements File {
            private final byte[] bytes;

            /// Takes the bytes.
            ///
            /// @param bytes the bytes, copied
            public There(byte[] bytes) {
                this.bytes = bytes.clone();
            }

            /// Gives the bytes.
            ///
            /// @return a copy
            public byte[] toArray() {
                return bytes.clone();
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
        Map<String, File> found = new HashMap<>();
        return (name, mostBytes) -> found.computeIfAbsent(mostBytes + " " + name, _ -> find(name, mostBytes));
    }
}
