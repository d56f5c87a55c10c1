package plumeline.cut;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Assumptions;

/// Programs from npm's registry that read what we write. `./check` installs them, by version and sum, into
/// `target/outside`; without them a test fails in a sentence, and only where the environment says so
/// (`PLUMELINE_WITHOUT=node`, which `./check` sets when it can't install them and has said so) is it left out.
public final class NodeProgram {
    private static final Path HOME = Path.of("target", "outside").toAbsolutePath();

    private NodeProgram() {}

    /// Runs a script that may require the packages of `scripts/outside/package.json`; gives what it prints.
    ///
    /// @param input what it reads on standard input
    public static String run(String script, byte[] input) {
        List<String> without =
                List.of(System.getenv().getOrDefault("PLUMELINE_WITHOUT", "").split(" "));
        Assumptions.assumeFalse(without.contains("node"), "node is said to be missing (PLUMELINE_WITHOUT)");
        if (!Files.isDirectory(HOME.resolve("node_modules"))) {
            throw new AssertionError("There is no target/outside/node_modules: run ./check once, which installs it,"
                    + " or set PLUMELINE_WITHOUT=node to go without this check.");
        }
        try {
            Process process = new ProcessBuilder("node", "-e", script)
                    .directory(HOME.toFile())
                    .redirectErrorStream(true)
                    .start();
            try (var out = process.getOutputStream()) {
                out.write(input);
            }
            String said = new String(process.getInputStream().readAllBytes(), UTF_8);
            if (process.waitFor() != 0) {
                throw new AssertionError("node: " + said);
            }
            return said;
        } catch (IOException broken) {
            throw new AssertionError("node: " + broken.getMessage(), broken);
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new AssertionError("node was stopped", stopped);
        }
    }
}
