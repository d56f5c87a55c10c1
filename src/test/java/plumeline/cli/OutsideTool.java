package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/// Programs that are not ours, by which papers and films are read back. One that is missing fails a test, in a
/// sentence; only where the environment says so (`PLUMELINE_WITHOUT="pdftotext chromium"`, which `./check` sets when it
/// can't install them and has said so) is the test left out, and counted as such.
public final class OutsideTool {
    private OutsideTool() {}

    /// Finds a program on the path.
    public static Path find(String name, String debianPackage) {
        for (String folder : System.getenv().getOrDefault("PATH", "").split(File.pathSeparator)) {
            Path program = Path.of(folder).resolve(name);
            if (Files.isExecutable(program)) {
                return program;
            }
        }
        List<String> without =
                List.of(System.getenv().getOrDefault("PLUMELINE_WITHOUT", "").split(" "));
        Assumptions.assumeFalse(without.contains(name), name + " is said to be missing (PLUMELINE_WITHOUT)");
        throw new AssertionError("There is no " + name + " on the path: install the package " + debianPackage
                + ", or set PLUMELINE_WITHOUT=" + name + " to go without this check.");
    }

    /// Runs a program of poppler and gives what it writes.
    static String poppler(String name, String... words) {
        return new String(run(find(name, "poppler-utils"), words), UTF_8);
    }

    public static byte[] run(Path program, String... words) {
        List<String> command = new ArrayList<>(List.of(program.toString()));
        command.addAll(List.of(words));
        try {
            Process process = new ProcessBuilder(command)
                    .redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
            process.getOutputStream().close();
            byte[] out = process.getInputStream().readAllBytes();
            int status = process.waitFor();
            if (status != 0) {
                throw new AssertionError(command + " ended with " + status);
            }
            return out;
        } catch (IOException broken) {
            throw new AssertionError(command + ": " + broken.getMessage(), broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError(command + " was stopped", stopped);
        }
    }
}
