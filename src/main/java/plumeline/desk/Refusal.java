package plumeline.desk;

import java.util.List;
import plumeline.text.Nearest;

/// What was asked for cannot be done as it was asked: a wrong argument, a file that is not there. Ends the command with
/// status 2. The message says what is wrong; the attempt says what to do instead.
public final class Refusal extends Exception {
    private static final long serialVersionUID = 1L;

    private final String attempt;

    /// Refuses.
    ///
    /// @param message what is wrong
    /// @param attempt what to do instead
    public Refusal(String message, String attempt) {
        super(message, null, false, false);
        this.attempt = attempt;
    }

    /// Says what to do instead.
    ///
    /// @return a sentence
    public String attempt() {
        return attempt;
    }

    /// What to try where a word was not known: the nearest that is, else what is said otherwise.
    ///
    /// @param before what is typed before the word
    /// @param word the word that was not known
    /// @param words those that are
    /// @param otherwise what to try where none of them is near
    /// @return a sentence
    public static String attempt(String before, String word, List<String> words, String otherwise) {
        return Nearest.find(word, words)
                .map(near -> "Try " + before + near + ".")
                .orElse(otherwise);
    }
}
