package plumeline.ask.picture;

import plumeline.answer.Question;

/// The questions on what the lens sees.
public final class PictureQuestions {
    private PictureQuestions() {}

    /// Gives `framing`.
    ///
    /// @return the question
    public static Question framing() {
        return new Question(new FramingInquiry());
    }

    /// Gives `reveal`.
    ///
    /// @return the question
    public static Question reveal() {
        return new Question(new RevealInquiry());
    }
}
