package plumeline.ask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/// The questions that can be asked.
public final class Questions {
    private static final List<String> NAMES =
            List.of("framing", "reveal", "float", "hang", "tank", "line", "sweat", "beads");

    private Questions() {}

    /// Lists every question, in the order of the contract.
    ///
    /// @return the questions
    public static List<Question> listAll() {
        List<Question> all = new ArrayList<>();
        for (String name : NAMES) {
            all.add(find(name).orElseThrow());
        }
        return List.copyOf(all);
    }

    /// Finds a question by its name.
    ///
    /// @param name such as `framing`
    /// @return the question
    public static Optional<Question> find(String name) {
        return switch (name) {
            case "framing" -> Optional.of(new Question(new FramingInquiry()));
            case "reveal" -> Optional.of(new Question(new RevealInquiry()));
            case "beads" -> Optional.of(new Question(new Beads.Asked()));
            case "sweat" -> Optional.of(new Question(new Sweat.Asked()));
            case "float" -> Optional.of(new Question(new FloatInquiry()));
            case "hang" -> Optional.of(new Question(new HangInquiry()));
            case "tank" -> Optional.of(new Question(new TankInquiry()));
            case "line" -> Optional.of(new Question(new LineInquiry()));
            default -> Optional.empty();
        };
    }
}
