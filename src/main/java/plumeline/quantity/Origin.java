package plumeline.quantity;

import java.util.Optional;

/// Where a quantity comes from. Written as the last word of a quantity; absent means [#GIVEN].
public enum Origin {
    /// Somebody decided it.
    GIVEN("given"),
    /// Somebody measured it on the set.
    MEASURED("measured"),
    /// A value typical of the trade, to be replaced by a measured one.
    TYPICAL("typical"),
    /// The solver set it.
    SOLVED("solved");

    private final String word;

    Origin(String word) {
        this.word = word;
    }

    /// Gives the word as written in a plan.
    ///
    /// @return the word, in lower case
    public String word() {
        return word;
    }

    /// Finds the origin that a word names.
    ///
    /// @param word the word as written
    /// @return the origin, or nothing where the word names none
    public static Optional<Origin> findOrigin(String word) {
        return switch (word) {
            case "given" -> Optional.of(GIVEN);
            case "measured" -> Optional.of(MEASURED);
            case "typical" -> Optional.of(TYPICAL);
            case "solved" -> Optional.of(SOLVED);
            default -> Optional.empty();
        };
    }
}
