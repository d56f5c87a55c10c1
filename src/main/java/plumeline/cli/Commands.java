package plumeline.cli;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import plumeline.cli.ink.InkCommand;
import plumeline.cli.lesson.LessonCommand;
import plumeline.cli.picture.AnimaticCommand;
import plumeline.cli.picture.CompareCommand;
import plumeline.cli.picture.DraftCommand;
import plumeline.cli.picture.FramesCommand;
import plumeline.cli.picture.StillCommand;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;

/// Every command there is, and the pages that list them.
final class Commands {
    private Commands() {}

    /// All commands, in the order in which the help page lists them.
    static List<Command> listAll() {
        return List.of(
                new AskCommand(),
                new SolveCommand(),
                new PapersCommand(),
                new MovesCommand(),
                new PostCommand(),
                new DraftCommand(),
                new StillCommand(),
                new CompareCommand(),
                new InkCommand(),
                new FramesCommand(),
                new AnimaticCommand(),
                new LessonCommand(),
                new KeepCommand(),
                new TidyCommand(),
                new SchemaCommand(),
                new DemoCommand(),
                new HelpCommand());
    }

    static Optional<Command> find(String name) {
        for (Command command : listAll()) {
            if (command.usage().name().equals(name)) {
                return Optional.of(command);
            }
        }
        return Optional.empty();
    }

    static Refusal unknown(String name) {
        var names = listAll().stream().map(command -> command.usage().name()).toList();
        return new Refusal(
                "there is no command " + name + "; there are " + String.join(", ", names),
                Refusal.attempt("plumeline ", name, names, "Type: plumeline help"));
    }

    /// The help page.
    static String overview() {
        var text = new StringBuilder("plumeline: plans tabletop and product shots\n\n");
        for (Command command : listAll()) {
            Usage usage = command.usage();
            text.append("  ").append(usage.toLine()).append("\n      ").append(usage.summary());
            text.append('\n');
        }
        return text.append("  --version\n      Says which version this is.\n\n")
                .append("PLAN and FILE may be - for standard input.\n")
                .toString();
    }

    /// `help [COMMAND]`: lists the commands, or tells what one of them takes.
    private static final class HelpCommand implements Command {
        @Override
        public Usage usage() {
            return new Usage(
                    "help", "Lists the commands, or tells what one of them takes.", "[COMMAND]", 0, 1, List.of());
        }

        @Override
        public Outcome run(Arguments given, Console console) throws Refusal, IOException {
            if (given.plain().isEmpty()) {
                console.answer(overview());
                return Outcome.ANSWERED;
            }
            String name = given.plain().getFirst();
            var command = find(name);
            if (command.isEmpty()) {
                throw unknown(name);
            }
            console.answer(command.get().usage().toText());
            return Outcome.ANSWERED;
        }

        @Override
        public List<Rehearsal> rehearsals() {
            return List.of(new Rehearsal(List.of(), ""), new Rehearsal(List.of("help"), ""));
        }
    }
}
