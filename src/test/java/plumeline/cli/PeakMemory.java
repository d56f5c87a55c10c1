package plumeline.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// Runs the program in a process of its own and tells, last, how much memory the process held at most.
public final class PeakMemory {
    /// What the line begins with that tells it, in kibibytes, where the system counts it.
    static final String LINE = "peak resident KiB ";

    private PeakMemory() {}

    /// Runs the program.
    ///
    /// @param words the command and what follows it
    /// @throws IOException where the system's count can't be read
    public static void main(String[] words) throws IOException {
        Outcome outcome = Main.run(List.of(words), Console.ofProcess());
        Path status = Path.of("/proc/self/status");
        if (Files.isReadable(status)) {
            Files.readAllLines(status).stream()
                    .filter(line -> line.startsWith("VmHWM:"))
                    .forEach(line -> System.err.println(LINE + line.replaceAll("\\D", "")));
        }
        System.exit(outcome.status());
    }
}
