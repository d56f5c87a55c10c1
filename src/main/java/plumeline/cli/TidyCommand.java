package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.List;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.text.Document;
import plumeline.text.Problem;
import plumeline.text.Tidy;

/// `tidy PLAN`: rewrites a plan's spacing and nothing else; for `-`, prints the plan. A text with problems of its own
/// is left alone; what the plan means does not matter here.
final class TidyCommand implements Command {
    @Override
    public Usage usage() {
        return new Usage(
                "tidy", "Rewrites spacing only: never a word, a comment or their order.", "PLAN", 1, 1, List.of());
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        PlainFile.refuseUnlessRewritable(name);
        PlainFile.Content content = PlainFile.read(name, console);
        byte[] before = content.bytes().toArray();
        Document document = Document.read(before, content.name());
        if (!document.problems().isEmpty()) {
            return tellProblems(document.problems(), console);
        }
        String tidy = Tidy.rewrite(document.text());
        boolean changed = !tidy.equals(document.text());
        if (name.equals("-")) {
            console.answer(tidy);
        } else {
            PlainFile.rewrite(PlainFile.toPath(name), before, tidy.getBytes(UTF_8));
        }
        console.say(changed ? content.name() + " is tidy now" : content.name() + " has no spacing to change");
        return Outcome.ANSWERED;
    }

    private static Outcome tellProblems(List<Problem> problems, Console console) {
        problems.forEach(problem -> console.say(problem.toText()));
        int count = problems.size();
        console.say((count == 1 ? "1 problem" : count + " problems") + "; the text was left as it is");
        return Outcome.REFUSED;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(
                new Rehearsal(List.of("-"), PlanFile.example()),
                new Rehearsal(List.of(Rehearsal.FILE), PlanFile.example()));
    }
}
