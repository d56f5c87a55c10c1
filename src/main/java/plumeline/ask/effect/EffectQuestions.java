package plumeline.ask.effect;

import plumeline.answer.Question;

/// The questions on what is let go in front of the lens.
public final class EffectQuestions {
    private EffectQuestions() {}

    /// Gives `ink`.
    ///
    /// @return the question
    public static Question ink() {
        return new Question(new InkInquiry());
    }

    /// Gives `clear-water`.
    ///
    /// @return the question
    public static Question clearWater() {
        return new Question(new ClearWater());
    }

    /// Gives `fall`.
    ///
    /// @return the question
    public static Question fall() {
        return new Question(new FallInquiry());
    }
}
