package plumeline.ask.colour;

import plumeline.answer.Question;

/// The questions on colour.
public final class ColourQuestions {
    private ColourQuestions() {}

    /// Gives `colour`.
    ///
    /// @return the question
    public static Question colour() {
        return new Question(new ColourInquiry());
    }

    /// Gives `gel`.
    ///
    /// @return the question
    public static Question gel() {
        return new Question(new GelInquiry());
    }

    /// Gives `label`.
    ///
    /// @return the question
    public static Question label() {
        return new Question(new LabelInquiry());
    }

    /// Gives `white-balance`.
    ///
    /// @return the question
    public static Question whiteBalance() {
        return new Question(new BalanceInquiry());
    }
}
