package plumeline.answer;

/// How a question came out, worst first.
public enum Verdict {
    /// A criterion is not met.
    FAILS("fails"),
    /// It can't be said.
    UNKNOWN("unknown"),
    /// Every criterion is met by the values given, but not all over their spread, or not with a single placing error.
    TIGHT("tight"),
    /// Every criterion is met, or there is none.
    HOLDS("holds"),
    /// The best that is ever said on safety.
    NO_OBJECTION_FOUND("no objection found");

    private final String word;

    Verdict(String word) {
        this.word = word;
    }

    /// Gives the verdict as answers say it.
    ///
    /// @return the word
    public String word() {
        return word;
    }
}
