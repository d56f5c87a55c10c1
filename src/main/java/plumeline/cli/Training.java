package plumeline.cli;

import java.io.ByteArrayInputStream;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;

/// Rehearses the commands for the start-up cache that a build makes; what they print is thrown away.
final class Training {
    private Training() {}

    /// Runs every rehearsal; ends with status 1 if one of them failed, so that no cache is made of a broken program.
    ///
    /// @param words none
    public static void main(String[] words) {
        boolean allAnswered = rehearse("--version", new Command.Rehearsal(List.of(), ""));
        for (Command command : Commands.listAll()) {
            for (Command.Rehearsal rehearsal : command.rehearsals()) {
                allAnswered &= rehearse(command.usage().name(), rehearsal);
            }
        }
        System.exit(allAnswered ? 0 : 1);
    }

    private static boolean rehearse(String name, Command.Rehearsal rehearsal) {
        var words = new ArrayList<String>();
        words.add(name);
        words.addAll(rehearsal.arguments());
        var input = new ByteArrayInputStream(rehearsal.input().getBytes(StandardCharsets.UTF_8));
        var console = new Console(input, OutputStream.nullOutputStream(), OutputStream.nullOutputStream());
        return Main.run(words, console) == Outcome.ANSWERED;
    }
}
