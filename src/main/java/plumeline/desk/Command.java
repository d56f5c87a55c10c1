package plumeline.desk;

import java.io.IOException;
import java.util.List;

/// One command. To add one, write a class with the first three methods and name it in `Commands`.
public interface Command {
    /// What is typed after `plumeline`, what may follow it, and a line for the help page.
    ///
    /// @return what it takes
    Usage usage();

    /// Does the work: answers to `console.answer`, progress and problems to `console.say`.
    ///
    /// @param given what was typed after its name
    /// @param console where it answers and says what it does
    /// @return how it ended
    /// @throws Refusal where the arguments or the input are at fault
    /// @throws IOException where the world fails
    Outcome run(Arguments given, Console console) throws Refusal, IOException;

    /// Runs of this command that the build rehearses, so that the start-up cache knows what they need.
    ///
    /// @return the runs
    List<Rehearsal> rehearsals();

    /// Whether something is done only as the process shuts down; else it ends at once.
    ///
    /// @return whether it needs an orderly shutdown
    default boolean needsShutdown() {
        return false;
    }

    /// Arguments after the command's name, and what standard input holds meanwhile. `FILE` among the arguments stands
    /// for a file that holds the input, `FOLDER` for a folder that may be written.
    ///
    /// @param arguments the arguments
    /// @param input what standard input holds
    record Rehearsal(List<String> arguments, String input) {
        public static final String FILE = "{file}";
        public static final String FOLDER = "{folder}";

        /// Copies its list.
        public Rehearsal {
            arguments = List.copyOf(arguments);
        }
    }
}
