package plumeline.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.desk.Command;

final class TrainingTest {
    /// Nothing that is rehearsed may be written where the build is run.
    @Test
    void files_standInTheRehearsalsFolder_alsoWithinLongerWords() {
        Path folder = Path.of("made");
        for (Command command : Commands.listAll()) {
            for (Command.Rehearsal rehearsal : command.rehearsals()) {
                assertThat(Training.words(folder, command.usage().name(), rehearsal))
                        .noneMatch(word -> word.contains("{file}") || word.contains("{folder}"));
            }
        }
        var longer = new Command.Rehearsal(List.of(Command.Rehearsal.FILE + ".csv"), "");
        assertThat(Training.words(folder, "moves", longer)).containsExactly("moves", folder.resolve("input") + ".csv");
    }
}
