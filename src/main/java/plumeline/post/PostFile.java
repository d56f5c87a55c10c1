package plumeline.post;

import java.io.IOException;
import java.io.OutputStream;

/// A file for post.
///
/// @param name its name in the folder, folders parted by `/`
/// @param content writes what is in it
public record PostFile(String name, Content content) {
    /// What is in a file.
    public interface Content {
        /// Writes it.
        ///
        /// @param out what takes it
        /// @throws IOException where that can't
        void writeTo(OutputStream out) throws IOException;
    }
}
