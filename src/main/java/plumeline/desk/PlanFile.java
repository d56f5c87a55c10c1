package plumeline.desk;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.util.List;
import java.util.Optional;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plume.InkRecord;
import plumeline.solve.FilmAnswer;
import plumeline.solve.Solve;

/// What the commands that work on a plan have in common: reading it, telling its problems, finding a shot.
public final class PlanFile {
    private PlanFile() {}

    /// Reads a plan with what its lamps' photometric files hold.
    ///
    /// @param content what was read of its file
    /// @return the plan, or what is wrong with it
    /// @throws Refusal where what was typed or what was read is at fault
    public static Plans.Reading read(PlainFile.Content content) throws Refusal {
        Plans.Reading reading = Plans.read(content.bytes().toArray(), content.name());
        return reading.plan().isEmpty()
                ? reading
                : LampFiles.applyTo(reading.plan().get(), content.name());
    }

    /// Reads a plan with what was measured beside it, which is said in a line.
    ///
    /// @param content what was read of its file
    /// @param console who hears of it
    /// @return the plan, or what is wrong with it
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static Plans.Reading readMeasured(PlainFile.Content content, Console console) throws Refusal, IOException {
        Plans.Reading reading = read(content);
        return reading.plan().isEmpty() ? reading : LessonFile.applyTo(reading, content.name(), console);
    }

    /// Tells every problem of a plan on standard error, and that nothing was done.
    ///
    /// @param reading what was read of it
    /// @param console who hears of it
    /// @return that it was refused
    public static Outcome tellProblems(Plans.Reading reading, Console console) {
        reading.problems().forEach(problem -> console.say(problem.toText()));
        int count = reading.problems().size();
        console.say(count == 1 ? "1 problem; nothing was solved" : count + " problems; nothing was solved");
        return Outcome.REFUSED;
    }

    /// Solves shots of a plan, with what was simulated of its ink and lies beside it.
    ///
    /// @param plan the plan
    /// @param shots the shots' names
    /// @param name the plan's file as it is typed
    /// @param console who hears of it
    /// @return the findings on the film
    /// @throws Refusal where what was typed or what was read is at fault
    /// @throws IOException where the world fails, such as a full disk
    public static FilmAnswer solve(Plan plan, List<String> shots, String name, Console console)
            throws Refusal, IOException {
        return solve(plan, shots, InkFolder.records(InkFolder.ofPlan(name)), console);
    }

    /// Solves shots of a plan and says what it is at where that takes long.
    ///
    /// @param plan the plan
    /// @param shots the shots' names
    /// @param records what was simulated of its ink
    /// @param console who hears of it
    /// @return the findings on the film
    public static FilmAnswer solve(Plan plan, List<String> shots, List<InkRecord> records, Console console) {
        try (Waiting waiting = Waiting.of(console, shots)) {
            return Solve.film(plan, shots, records, waiting::done);
        }
    }

    /// The shots to work on: the one that `--shot` names, else all.
    ///
    /// @param plan the plan
    /// @param given what was typed
    /// @return their names, in the plan's order
    /// @throws Refusal where what was typed or what was read is at fault
    public static List<String> shots(Plan plan, Arguments given) throws Refusal {
        List<String> names = plan.shots().stream().map(Shot::name).toList();
        Optional<String> named = given.findValue("--shot");
        if (named.isEmpty()) {
            return names;
        }
        return List.of(shot(plan, named.get(), "--shot ", "Leave --shot out.").name());
    }

    /// The shot of a name.
    ///
    /// @param plan the plan
    /// @param name the shot's name
    /// @return the shot
    /// @throws Refusal where what was typed or what was read is at fault
    public static Shot shot(Plan plan, String name) throws Refusal {
        return shot(plan, name, "", "Name one of them.");
    }

    private static Shot shot(Plan plan, String name, String before, String otherwise) throws Refusal {
        Optional<Shot> shot = plan.findShot(name);
        if (shot.isEmpty()) {
            List<String> names = plan.shots().stream().map(Shot::name).toList();
            throw new Refusal(
                    "the plan has no shot " + name + "; it has " + String.join(", ", names),
                    Refusal.attempt(before, name, names, otherwise));
        }
        return shot.get();
    }

    /// The name of a shot's pass, where it has one of that name.
    ///
    /// @param shot the shot
    /// @param pass the pass's name as it was typed
    /// @return the name
    /// @throws Refusal where the shot has no such pass
    public static String pass(Shot shot, String pass) throws Refusal {
        List<String> names = shot.passes().stream().map(Pass::name).toList();
        if (names.contains(pass)) {
            return pass;
        }
        throw names.isEmpty()
                ? new Refusal("the shot " + shot.name() + " has no passes", "Leave --pass out.")
                : new Refusal(
                        "the shot " + shot.name() + " has no pass " + pass + "; it has " + String.join(", ", names),
                        Refusal.attempt("--pass ", pass, names, "Name one of them."));
    }

    /// The plan that came with the program, for rehearsals and `demo`.
    ///
    /// @return its text
    public static String example() {
        try (var in = PlanFile.class.getResourceAsStream("/plumeline/examples/fernhollow.yaml")) {
            if (in == null) {
                throw new IllegalStateException("the example was not packed with the program");
            }
            return new String(in.readAllBytes(), UTF_8);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }
}
