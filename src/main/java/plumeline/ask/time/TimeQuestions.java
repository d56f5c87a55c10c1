package plumeline.ask.time;

import plumeline.answer.Question;

/// The questions on time.
public final class TimeQuestions {
    private TimeQuestions() {}

    /// Gives `ramp`.
    ///
    /// @return the question
    public static Question ramp() {
        return new Question(new RampInquiry());
    }

    /// Gives `beat`.
    ///
    /// @return the question
    public static Question beat() {
        return new Question(new BeatInquiry());
    }

    /// Gives `media`.
    ///
    /// @return the question
    public static Question media() {
        return new Question(new MediaInquiry());
    }
}
