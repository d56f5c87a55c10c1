package plumeline.solve;

/// How a want stands, from the worst to the best; a shot or a film takes the worst of its parts.
public enum Verdict {
    /// It is not true with the marks as they are.
    FAILS("fails"),
    /// A fact is missing.
    UNKNOWN("unknown"),
    /// It would fail once some single mark is off by its placing error.
    TIGHT("tight"),
    /// The best that is said where someone's safety rests on it: it stands where a want else holds.
    NO_OBJECTION_FOUND("no objection found"),
    /// It is true and stays so.
    HOLDS("holds");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /// Gives the word that answers use.
    ///
    /// @return the word
    public String word() {
        return word;
    }

    /// Gives the worse of two.
    ///
    /// @param other the other verdict
    /// @return the worse one
    public Verdict worse(Verdict other) {
        return compareTo(other) <= 0 ? this : other;
    }
}
