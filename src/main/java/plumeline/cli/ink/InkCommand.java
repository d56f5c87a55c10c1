package plumeline.cli.ink;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.InkFolder;
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plume.InkCourse;
import plumeline.plume.InkMemory;
import plumeline.plume.InkRecord;
import plumeline.plume.InkTries;
import plumeline.quantity.Kind;
import plumeline.quantity.Quantities;
import plumeline.quantity.Quantity;
import plumeline.quantity.Reading;

/// `ink PLAN SHOT`: follows a shot's ink through its tank several times and says when it is where.
public final class InkCommand implements Command {
    private final InkMemory memory;

    /// Runs ink in the memory that this machine has.
    public InkCommand() {
        this(new InkMemory(Runtime.getRuntime().maxMemory()));
    }

    InkCommand(InkMemory memory) {
        this.memory = memory;
    }

    /// The largest cells there may be, in tenths of a millimetre.
    private static final long MOST_TENTHS = 200;

    @Override
    public Usage usage() {
        return new Usage(
                "ink",
                "Follows a shot's ink through its tank several times: when it is where, and what it veils.",
                "PLAN SHOT",
                2,
                2,
                List.of(
                        Usage.valued(
                                "--pass", "NAME", "Follows the ink of this pass; needed where passes differ in it."),
                        Usage.valued("--runs", "N", "Computes so many tries; else 5."),
                        Usage.valued(
                                "--until",
                                "TIME",
                                "Follows the ink so long from its release; else to the shot's last frame, and"
                                        + " for as long again at most where it isn't on the floor by then."),
                        Usage.valued("--cells", "LENGTH", "Cuts the water this finely; else 5 mm."),
                        Usage.valued("--seed", "N", "Takes other chance; else 1."),
                        Usage.valued("--threads", "N", "Works with so many threads; else with all. Changes no result."),
                        Usage.flag("--fresh", "Computes anew what was computed before."),
                        Usage.valued("--to", "DIR", "Keeps it in this folder; else in PLAN.ink, beside the plan."),
                        Usage.flag("--json", "Prints the answer as JSON.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        Options options = Options.read(given);
        Plans.Reading reading = PlanFile.read(PlainFile.read(name, console));
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Shot shot = PlanFile.shot(plan, given.plain().get(1));
        InkChoice choice = InkChoice.of(plan, shot, given.findValue("--pass"));
        var tries = new InkTries(choice.stage(), choice.valuesSi(), choice.ink(), options.course());
        check(tries, memory);
        Path ofPlan = given.findValue("--to").isPresent()
                ? PlainFile.toPath(given.findValue("--to").get())
                : InkFolder.ofPlan(name);
        String pass = choice.passes().isEmpty() ? "" : choice.passes().getFirst();
        try (InkFolder folder = InkFolder.open(ofPlan, shot.name(), pass, tries.key());
                Interruption interruption = new Interruption()) {
            if (given.has("--fresh")) {
                folder.clear();
            }
            Optional<InkRecord> record = new InkWork(
                            tries, options, memory, choice.viewing(), folder, console, interruption.stop())
                    .record();
            if (record.isEmpty()) {
                console.say("plumeline: stopped; the same command" + (given.has("--fresh") ? " without --fresh" : "")
                        + " goes on from here");
                return Outcome.STOPPED;
            }
            var answer = new InkAnswer(choice, tries, record.get(), folder.record());
            console.answer(given.has("--json") ? InkJson.of(answer) : InkText.of(answer));
            return Outcome.ANSWERED;
        }
    }

    private static void check(InkTries tries, InkMemory memory) throws Refusal {
        double asked = tries.course().cellMetres();
        long cells = tries.planned().cells(asked);
        if (cells > memory.mostCells()) {
            throw tooMany(tries, memory, cells);
        }
        if (!tries.planned().isOpenAtMouth(tries.grid())) {
            throw new Refusal(
                    "shots." + tries.planned().shot()
                            + ".release.at is so near a placed thing that the flow there isn't computed",
                    "Move the nozzle clear of it, or cut the water more finely with --cells.");
        }
    }

    /// Says what would be accepted: the finest cells by tenths of a millimetre.
    private static Refusal tooMany(InkTries tries, InkMemory memory, long cells) {
        long tenths = (long) Math.ceil(tries.course().cellMetres() * 1e4 - 1e-6);
        while (tenths < MOST_TENTHS && tries.planned().cells(tenths / 1e4) > memory.mostCells()) {
            tenths++;
        }
        boolean isFound = tries.planned().cells(tenths / 1e4) <= memory.mostCells();
        String more = "more memory, such as JAVA_TOOL_OPTIONS=-Xmx4g.";
        return new Refusal(
                String.format(
                        Locale.ROOT,
                        "the water would be cut into %s cells; at most %.2f million fit into the %.1f GB of memory that"
                                + " may be used",
                        cells == Long.MAX_VALUE
                                ? "more than 100 million"
                                : String.format(Locale.ROOT, "%.2f million", Math.ceil(cells / 1e4) / 100),
                        Math.floor(memory.mostCells() / 1e4) / 100,
                        memory.bytes() / 1e9),
                isFound
                        ? String.format(Locale.ROOT, "Give --cells %s mm or larger ones, or ", tenths / 10.0) + more
                        : "Give it " + more);
    }

    @Override
    public List<Rehearsal> rehearsals() {
        List<String> small = List.of(
                Rehearsal.FILE,
                "plume",
                "--runs",
                "1",
                "--cells",
                "20 mm",
                "--until",
                "0.1 s",
                "--to",
                Rehearsal.FOLDER);
        List<String> again = new ArrayList<>(small);
        again.add("--json");
        return List.of(new Rehearsal(small, PlanFile.example()), new Rehearsal(again, PlanFile.example()));
    }

    /// What `ink` was asked for.
    record Options(InkCourse course, int runs, int threads) {
        private static final int RUNS = 5;
        private static final int MOST_RUNS = 50;
        private static final int MOST_THREADS = 256;

        static Options read(Arguments given) throws Refusal {
            double cells = quantity(given, "--cells", Kind.LENGTH, 0.001, 0.02, "1 mm to 20 mm, such as 4 mm")
                    .map(Quantity::si)
                    .orElse(InkCourse.CELL_METRES);
            Optional<Quantity> until =
                    quantity(given, "--until", Kind.TIME, 1e-3, 600, "a time from the release to 600 s, such as 2.5 s");
            long seed = whole(given, "--seed", 1, Integer.MAX_VALUE).orElse(1L);
            int runs = whole(given, "--runs", 1, MOST_RUNS).orElse((long) RUNS).intValue();
            int threads = whole(given, "--threads", 1, MOST_THREADS)
                    .orElse((long) Runtime.getRuntime().availableProcessors())
                    .intValue();
            InkCourse.Until end =
                    until.isPresent() ? new InkCourse.Until.Time(until.get().si()) : new InkCourse.Until.ShotAndFloor();
            return new Options(new InkCourse(cells, seed, end), runs, Math.min(threads, MOST_THREADS));
        }

        private static Optional<Quantity> quantity(
                Arguments given, String option, Kind kind, double least, double most, String allowed) throws Refusal {
            Optional<String> text = given.findValue(option);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            if (Quantities.read(text.get()) instanceof Reading.Read read
                    && read.quantity().kind() == kind
                    && read.quantity().si() >= least * (1 - 1e-9)
                    && read.quantity().si() <= most * (1 + 1e-9)) {
                return Optional.of(read.quantity());
            }
            throw new Refusal(option + " is " + text.get() + "; must be " + allowed, "Mind the unit.");
        }

        private static Optional<Long> whole(Arguments given, String option, long least, long most) throws Refusal {
            Optional<String> text = given.findValue(option);
            if (text.isEmpty()) {
                return Optional.empty();
            }
            if (text.get().matches("[0-9]{1,10}")) {
                long number = Long.parseLong(text.get());
                if (number >= least && number <= most) {
                    return Optional.of(number);
                }
            }
            throw new Refusal(
                    option + " is " + text.get() + "; must be a whole number from " + least + " to " + most,
                    "Leave it out for the usual.");
        }
    }
}
