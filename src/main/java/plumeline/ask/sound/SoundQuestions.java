package plumeline.ask.sound;

import plumeline.answer.Question;

/// The questions on sound.
public final class SoundQuestions {
    private SoundQuestions() {}

    /// Gives `loudness`.
    ///
    /// @return the question
    public static Question loudness() {
        return new Question(new LoudnessInquiry());
    }
}
