package plumeline.light;

import java.nio.charset.StandardCharsets;
import java.util.Locale;

/// What comes of reading a photometric file: what it says of the lamp, or why it can't be used.
///
/// Reading throws nothing, whatever the bytes. A file has at most [#MOST_BYTES], [#MOST_ANGLES] angles to a direction
/// and [#MOST_VALUES] intensities; more is refused before any is read, and reading takes at most 32 MiB beside the
/// file's own bytes. No intensity may be over [#MOST_CANDELAS].
public sealed interface LampFile {
    /// The longest file: 4 MiB.
    int MOST_BYTES = 4 << 20;

    /// The most angles round the axis, or from it.
    int MOST_ANGLES = 10_000;

    /// The most intensities.
    int MOST_VALUES = 1_000_000;

    /// The most intense direction, candelas: a thousand of the largest searchlights.
    double MOST_CANDELAS = 1e12;

    /// The file was read.
    ///
    /// @param photometry what it says
    record Read(Photometry photometry) implements LampFile {}

    /// The file can't be used.
    ///
    /// @param line the line, counted from 1
    /// @param found what stands there
    /// @param accepted what may stand there
    record Refused(int line, String found, String accepted) implements LampFile {}

    /// Reads a file of either form. It is LM-63 where a line begins with `TILT=` or the first line names LM-63,
    /// EULUMDAT otherwise.
    ///
    /// @param bytes the file's bytes
    /// @return what it says, or why it can't be used
    static LampFile read(byte[] bytes) {
        return looksLikeLm63(bytes) ? readLm63(bytes) : readEulumdat(bytes);
    }

    /// Reads an LM-63 file of 1991, 1995, 2002 or 2019, type C. Intensities are the file's values times its multiplier,
    /// ballast factor and (before 2019, where a code of the file's making stands there) future-use factor. Planes
    /// that symmetry stands for are unfolded. A tilt file can't be read and is refused.
    ///
    /// **Source:** ANSI/IES LM-63-02 and its earlier editions; IES LM-63-19 from memory.
    ///
    /// @param bytes the file's bytes
    /// @return what it says, or why it can't be used
    static LampFile readLm63(byte[] bytes) {
        try {
            return new Read(Lm63.read(FileText.of(bytes)));
        } catch (UnusableFile unusable) {
            return unusable.refused();
        }
    }

    /// Reads an EULUMDAT file. Intensities are its values, per 1000 lm of the lamps, times the flux of its first set of
    /// lamps and the conversion factor; further sets are other lamps for the same housing. Planes that symmetry
    /// stands for are unfolded.
    ///
    /// **Source:** EULUMDAT line table (Stockmar 1990, 1998).
    ///
    /// @param bytes the file's bytes
    /// @return what it says, or why it can't be used
    static LampFile readEulumdat(byte[] bytes) {
        try {
            return new Read(Eulumdat.read(FileText.of(bytes)));
        } catch (UnusableFile unusable) {
            return unusable.refused();
        }
    }

    private static boolean looksLikeLm63(byte[] bytes) {
        int length = Math.min(bytes.length, MOST_BYTES);
        String text = new String(bytes, 0, length, StandardCharsets.ISO_8859_1);
        String first = text.substring(0, Math.min(text.length(), 40)).toUpperCase(Locale.ROOT);
        return first.contains("LM-63")
                || first.contains("IESNA")
                || Lm63.TILT_LINE.matcher(text).find();
    }
}
