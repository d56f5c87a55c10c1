package plumeline.ask.water;

import plumeline.answer.Question;

/// The questions on water and what it does to a product.
public final class WaterQuestions {
    private WaterQuestions() {}

    /// Gives `float`.
    ///
    /// @return the question
    public static Question floats() {
        return new Question(new FloatInquiry());
    }

    /// Gives `hang`.
    ///
    /// @return the question
    public static Question hang() {
        return new Question(new HangInquiry());
    }

    /// Gives `tank`.
    ///
    /// @return the question
    public static Question tank() {
        return new Question(new TankInquiry());
    }

    /// Gives `line`.
    ///
    /// @return the question
    public static Question line() {
        return new Question(new LineInquiry());
    }

    /// Gives `sweat`.
    ///
    /// @return the question
    public static Question sweat() {
        return new Question(new Sweat.Asked());
    }

    /// Gives `beads`.
    ///
    /// @return the question
    public static Question beads() {
        return new Question(new Beads.Asked());
    }
}
