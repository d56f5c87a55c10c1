package plumeline.cli;

import java.io.IOException;
import java.util.List;

/// `help [COMMAND]`: lists the commands, or tells what one of them takes.
final class HelpCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage("help", "Lists the commands, or tells what one of them takes.", "[COMMAND]", 0, 1, List.of());
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        if (given.plain().isEmpty()) {
            console.answer(Commands.overview());
            return Outcome.ANSWERED;
        }
        String name = given.plain().getFirst();
        var command = Commands.find(name);
        if (command.isEmpty()) {
            throw Commands.unknown(name);
        }
        console.answer(command.get().usage().toText());
        return Outcome.ANSWERED;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(List.of(), ""), new Rehearsal(List.of("help"), ""));
    }
}
