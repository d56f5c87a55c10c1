package plumeline.ask.motion;

import plumeline.answer.Question;

/// The questions on moves.
public final class MotionQuestions {
    private MotionQuestions() {}

    /// Gives `move`.
    ///
    /// @return the question
    public static Question move() {
        return new Question(new MoveInquiry());
    }

    /// Gives `turntable`.
    ///
    /// @return the question
    public static Question turntable() {
        return new Question(new TurntableInquiry());
    }
}
