package plumeline.cli;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Question;
import plumeline.ask.Questions;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.FilesBeside;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.text.Problem;

/// `ask`: lists the questions; `ask NAME FILE` answers one; `ask NAME --example` prints an input that runs as it is.
final class AskCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "ask",
                "Answers one question; alone, lists the questions.",
                "[NAME [FILE]]",
                0,
                2,
                List.of(
                        Usage.flag("--example", "Prints a filled example that runs as it is."),
                        Usage.flag("--json", "Prints the answer as JSON."),
                        Usage.flag("--table", "Lists the answer row by row, where a question has rows: ramp.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        List<String> plain = given.plain();
        if (plain.isEmpty()) {
            for (String option : List.of("--example", "--table")) {
                if (given.has(option)) {
                    throw new Refusal(option + " needs the name of a question", "Type: plumeline ask NAME " + option);
                }
            }
            console.answer(list());
            return Outcome.ANSWERED;
        }
        Question question = find(plain.getFirst());
        if (given.has("--example")) {
            if (plain.size() > 1 || given.has("--json") || given.has("--table")) {
                throw new Refusal("--example prints the example and takes nothing else", "Leave the rest out.");
            }
            console.answer(question.example());
            return Outcome.ANSWERED;
        }
        if (given.has("--table")) {
            checkTable(question, given);
        }
        if (plain.size() < 2) {
            throw new Refusal(
                    "ask " + question.name() + " needs a FILE, or - for standard input",
                    "Start from: plumeline ask " + question.name() + " --example");
        }
        PlainFile.Content content = PlainFile.read(plain.get(1), console);
        var beside = FilesBeside.of(plain.get(1));
        byte[] bytes = content.bytes().toArray();
        var outcome = given.has("--table")
                ? question.list(bytes, content.name(), beside)
                : question.answer(bytes, content.name(), beside);
        return tell(outcome, given.has("--json"), console);
    }

    private static void checkTable(Question question, Arguments given) throws Refusal {
        if (!question.hasTable()) {
            var names = Questions.listAll().stream()
                    .filter(Question::hasTable)
                    .map(Question::name)
                    .toList();
            throw new Refusal(
                    question.name() + " has no rows to list; --table is for " + String.join(", ", names),
                    "Leave --table out.");
        }
        if (given.has("--json")) {
            throw new Refusal("--table is plain text and takes no --json", "Leave one of them out.");
        }
    }

    private static Outcome tell(plumeline.answer.Outcome outcome, boolean asJson, Console console) throws IOException {
        return switch (outcome) {
            case plumeline.answer.Outcome.Answered answered -> {
                console.answer(asJson ? answered.answer().toJson() : answered.toText());
                yield Outcome.ANSWERED;
            }
            case plumeline.answer.Outcome.Listed(String text) -> {
                console.answer(text);
                yield Outcome.ANSWERED;
            }
            case plumeline.answer.Outcome.Refused(List<Problem> problems) -> {
                problems.forEach(problem -> console.say(problem.toText()));
                yield Outcome.REFUSED;
            }
        };
    }

    private static Question find(String name) throws Refusal {
        var found = Questions.find(name);
        if (found.isEmpty()) {
            var names = Questions.listAll().stream().map(Question::name).toList();
            throw new Refusal(
                    "there is no question " + name + "; there are " + String.join(", ", names),
                    Refusal.attempt("plumeline ask ", name, names, "Type: plumeline ask"));
        }
        return found.get();
    }

    private static String list() {
        var text = new StringBuilder();
        for (Question question : Questions.listAll()) {
            text.append(Usage.column(question.name(), 14))
                    .append(question.asks())
                    .append('\n');
        }
        return text.toString();
    }

    @Override
    public List<Rehearsal> rehearsals() {
        var rehearsals = new ArrayList<Rehearsal>();
        rehearsals.add(new Rehearsal(List.of(), ""));
        for (Question question : Questions.listAll()) {
            String name = question.name();
            rehearsals.add(new Rehearsal(List.of(name, "--example"), ""));
            rehearsals.add(new Rehearsal(List.of(name, "-"), question.example()));
            rehearsals.add(new Rehearsal(List.of(name, Rehearsal.FILE, "--json"), question.example()));
            if (question.hasTable()) {
                rehearsals.add(new Rehearsal(List.of(name, "-", "--table"), question.example()));
            }
        }
        return rehearsals;
    }
}
