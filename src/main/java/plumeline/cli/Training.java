package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.FileInputStream;
import java.io.FileOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;

/// Rehearses the commands for the start-up cache that a build makes, through real files and streams as the commands use
/// them; what they print is thrown away.
final class Training {
    private Training() {}

    /// Runs every rehearsal of every command but those named; ends with status 1 if one of them failed, so that no
    /// cache is made of a broken program.
    public static void main(String[] words) throws IOException {
        Path folder = Files.createTempDirectory("plumeline-training");
        boolean allAnswered;
        try {
            allAnswered = rehearseAll(folder, List.of(words));
        } finally {
            remove(folder);
        }
        System.exit(allAnswered ? 0 : 1);
    }

    private static boolean rehearseAll(Path folder, List<String> leftOut) throws IOException {
        boolean allAnswered = rehearse(folder, List.of("--version"), "");
        for (Command command : Commands.listAll()) {
            String name = command.usage().name();
            if (leftOut.contains(name)) {
                continue;
            }
            for (Command.Rehearsal rehearsal : command.rehearsals()) {
                allAnswered &= rehearse(folder, words(folder, name, rehearsal), rehearsal.input());
            }
        }
        return allAnswered;
    }

    /// The words that would be typed, with the file and the folder of the rehearsal in them.
    static List<String> words(Path folder, String name, Command.Rehearsal rehearsal) {
        var words = new ArrayList<String>();
        words.add(name);
        for (String argument : rehearsal.arguments()) {
            words.add(argument.replace(
                            Command.Rehearsal.FILE, folder.resolve("input").toString())
                    .replace(Command.Rehearsal.FOLDER, folder.resolve("output").toString()));
        }
        return words;
    }

    private static boolean rehearse(Path folder, List<String> words, String input) throws IOException {
        Path file = folder.resolve("input");
        Files.write(file, input.getBytes(UTF_8));
        Path printed = folder.resolve("printed");
        try (var in = new FileInputStream(file.toFile());
                var out = new FileOutputStream(printed.toFile());
                var err = new FileOutputStream(folder.resolve("said").toFile())) {
            Outcome outcome = Main.run(words, new Console(in, out, err));
            if (outcome != Outcome.ANSWERED) {
                Console.ofProcess().say(String.join(" ", words) + ": " + outcome);
                Console.ofProcess().say(Files.readString(folder.resolve("said")));
            }
            return outcome == Outcome.ANSWERED;
        }
    }

    private static void remove(Path folder) throws IOException {
        try (var paths = Files.walk(folder)) {
            for (Path path : paths.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        }
    }
}
