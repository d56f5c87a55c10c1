package plumeline.press;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Set;

/// What is bundled for papers: the lettering and the style sheet. The only class of this room that loads anything.
public final class Bundled {
    /// The family name that the style sheet uses for the bundled lettering.
    public static final String FAMILY = "Plumeline Lettering";

    /// The family name for [#eastern].
    static final String EASTERN_FAMILY = "Plumeline Eastern Lettering";

    /// Scripts that the lettering holds; signs common to all are taken to be held.
    private static final Set<Character.UnicodeScript> LETTERED = Set.of(
            Character.UnicodeScript.LATIN,
            Character.UnicodeScript.GREEK,
            Character.UnicodeScript.CYRILLIC,
            Character.UnicodeScript.ARMENIAN,
            Character.UnicodeScript.GEORGIAN,
            Character.UnicodeScript.HEBREW,
            Character.UnicodeScript.ARABIC,
            Character.UnicodeScript.HAN,
            Character.UnicodeScript.HIRAGANA,
            Character.UnicodeScript.KATAKANA,
            Character.UnicodeScript.COMMON,
            Character.UnicodeScript.INHERITED);

    private Bundled() {}

    /// Says whether a character can be printed; pictures such as emoji can't.
    ///
    /// @param character its code point
    /// @return whether the lettering holds it
    public static boolean isLettered(int character) {
        return LETTERED.contains(Character.UnicodeScript.of(character)) && character < FIRST_PICTURE;
    }

    private static final int FIRST_PICTURE = 0x1F000;

    static InputStream regular() {
        return new ByteArrayInputStream(bytes("DejaVuSansCondensed.ttf"));
    }

    static InputStream bold() {
        return new ByteArrayInputStream(bytes("DejaVuSansCondensed-Bold.ttf"));
    }

    /// Lettering for what the other lacks: Chinese and Japanese.
    static InputStream eastern() {
        return new ByteArrayInputStream(bytes("DroidSansFallbackFull.ttf"));
    }

    /// Gives the papers' style sheet.
    ///
    /// @return its text
    public static String styleSheet() {
        return new String(bytes("papers.css"), StandardCharsets.UTF_8);
    }

    private static byte[] bytes(String name) {
        try (InputStream in = Bundled.class.getResourceAsStream(name)) {
            if (in == null) {
                throw new IllegalStateException(name + " isn't bundled");
            }
            return in.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
