package plumeline.ask.light;

import plumeline.answer.Question;

/// The questions on light.
public final class LightQuestions {
    private LightQuestions() {}

    /// Gives `highlight`.
    ///
    /// @return the question
    public static Question highlight() {
        return new Question(new HighlightInquiry());
    }

    /// Gives `power`.
    ///
    /// @return the question
    public static Question power() {
        return new Question(new PowerInquiry());
    }

    /// Gives `exposure`.
    ///
    /// @return the question
    public static Question exposure() {
        return new Question(new ExposureInquiry());
    }

    /// Gives `lamp-flicker`.
    ///
    /// @return the question
    public static Question lampFlicker() {
        return new Question(new LampFlickerInquiry());
    }

    /// Gives `cut-flash`.
    ///
    /// @return the question
    public static Question cutFlash() {
        return new Question(new CutFlashInquiry());
    }
}
