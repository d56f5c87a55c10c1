package plumeline.cli;

import java.io.IOException;
import java.util.List;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.Refusal;

/// The program: finds the command, runs it, and ends the process with its status. Nothing else ends it.
public final class Main {
    private Main() {}

    /// Runs the command that the arguments name.
    ///
    /// @param words the command and what follows it
    public static void main(String[] words) {
        List<String> all = List.of(words);
        int status = run(all, Console.ofProcess()).status();
        if (needsShutdown(all)) {
            System.exit(status);
        }
        // A console writes at once and whoever opens a file closes it: an orderly shutdown would only take its time.
        System.out.flush();
        System.err.flush();
        Runtime.getRuntime().halt(status);
    }

    private static boolean needsShutdown(List<String> words) {
        return !words.isEmpty()
                && Commands.find(words.getFirst()).map(Command::needsShutdown).orElse(false);
    }

    /// Runs a command; says in one plain line why it could not.
    ///
    /// @param words the command and what follows it
    /// @param console where it answers and says what it does
    /// @return how it ended
    // Whatever goes wrong in any room ends up here and nowhere else, hence the one catch of everything.
    public static Outcome run(List<String> words, Console console) {
        try {
            return dispatch(words, console);
        } catch (Refusal e) {
            console.say("plumeline: " + e.getMessage() + "\n  " + e.attempt());
            return Outcome.REFUSED;
        } catch (Console.ReaderGone e) {
            return Outcome.ANSWERED;
        } catch (IOException e) {
            console.say("plumeline: " + reason(e));
            return Outcome.FAILED;
        } catch (Throwable e) {
            console.say("plumeline: the program failed: " + reason(e) + " (PLUMELINE_TRACE=1 shows where)");
            if (System.getenv("PLUMELINE_TRACE") != null) {
                console.say(trace(e));
            }
            return Outcome.FAILED;
        }
    }

    private static Outcome dispatch(List<String> words, Console console) throws Refusal, IOException {
        String first = words.isEmpty() ? "help" : words.getFirst();
        if (first.equals("--version") || first.equals("-V")) {
            console.answer("plumeline " + version() + "\n");
            return Outcome.ANSWERED;
        }
        if (first.equals("--help") || first.equals("-h")) {
            first = "help";
        }
        var command = Commands.find(first);
        if (command.isEmpty()) {
            throw Commands.unknown(first);
        }
        List<String> rest = words.isEmpty() ? words : words.subList(1, words.size());
        if (rest.contains("--help") || rest.contains("-h")) {
            console.answer(command.get().usage().toText());
            return Outcome.ANSWERED;
        }
        return command.get().run(Arguments.read(command.get().usage(), rest), console);
    }

    private static String reason(Throwable e) {
        String message = e.getMessage();
        String kind = e.getClass().getSimpleName();
        String line = message == null || message.isBlank() ? kind : message;
        if (e instanceof java.nio.file.FileSystemException && message != null) {
            line = message + " (" + kind.replace("Exception", "") + ")";
        }
        return line.lines().findFirst().orElse(kind);
    }

    private static String trace(Throwable e) {
        var text = new java.io.StringWriter();
        e.printStackTrace(new java.io.PrintWriter(text));
        return text.toString();
    }

    /// The version that the jar says it is; a folder of classes has none.
    private static String version() {
        String version = Main.class.getPackage().getImplementationVersion();
        return version == null ? "(unpacked)" : version;
    }
}
