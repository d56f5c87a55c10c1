package plumeline.ink;

/// How ink comes down.
public enum Regime {
    /// Let go within about half its way's time: one ball.
    PUFF("puff"),
    /// Still flowing, turbulent: a jet or plume behind a head.
    STREAM("stream"),
    /// Trickling so slowly that it stays a smooth thread.
    LAMINAR("laminar");

    private final String word;

    Regime(String word) {
        this.word = word;
    }

    /// Gives it as answers say it.
    ///
    /// @return the word
    public String word() {
        return word;
    }
}
