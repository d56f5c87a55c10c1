package plumeline.art;

import plumeline.scenery.Art;

/// A label's print as a file: PNG, JPEG or SVG.
public sealed interface ArtFile {
    /// The largest file that is read, bytes.
    int MOST_BYTES = 64 << 20;

    /// It was read.
    ///
    /// @param art the print
    record Read(Art art) implements ArtFile {}

    /// It can't be.
    ///
    /// @param found what it is instead, as it follows "is FILE, "
    /// @param attempt what to try, a sentence
    record Refused(String found, String attempt) implements ArtFile {}

    /// Reads one. What is coded as sRGB becomes linear; a picture finer than 2048 texels either way is read as
    /// coarse as that.
    ///
    /// @param bytes the whole file
    /// @return the print, or what is wrong with it
    static ArtFile read(byte[] bytes) {
        if (bytes.length > MOST_BYTES) {
            return new Refused("larger than 64 MiB", "Save it smaller: 2048 pixels across do.");
        }
        if (RasterFile.isOne(bytes)) {
            return RasterFile.read(bytes);
        }
        return SvgFile.isOne(bytes)
                ? SvgFile.read(bytes)
                : new Refused("neither a PNG, a JPEG nor an SVG", "Save it as a PNG.");
    }
}
