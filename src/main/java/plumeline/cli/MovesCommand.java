package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.BufferedWriter;
import java.io.IOException;
import java.io.OutputStreamWriter;
import java.io.Writer;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.keys.KeysCsv;
import plumeline.plan.Plan;
import plumeline.plan.Plans;

/// `moves PLAN`: solves the plan and writes the keys of every axis, for machines.
final class MovesCommand implements Command {
    private static final int BUFFERED = 1 << 16;

    @Override
    public Usage usage() {
        return new Usage(
                "moves",
                "Writes where each axis is at every frame and at every step of its machine, as CSV.",
                "PLAN",
                1,
                1,
                List.of(
                        Usage.valued("--shot", "NAME", "Writes this shot's moves only."),
                        Usage.valued("--to", "FILE", "Writes into this file; else to standard output.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        List<String> shots = PlanFile.shots(plan, given);
        Optional<Path> file = file(given);
        KeysCsv keys = KeysCsv.of(PlanFile.solve(plan, shots, name, console));
        keys.notes().forEach(console::say);
        if (file.isPresent()) {
            PlainFile.write(file.get(), (PlainFile.Writing) out -> write(keys, new OutputStreamWriter(out, UTF_8)));
            console.answer(file.get() + "\n");
        } else {
            write(keys, new Printing(console));
        }
        return Outcome.ANSWERED;
    }

    private static Optional<Path> file(Arguments given) throws Refusal {
        Optional<String> named = given.findValue("--to");
        if (named.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(PlainFile.toWrite(named.get()));
    }

    private static void write(KeysCsv keys, Writer to) throws IOException {
        BufferedWriter out = new BufferedWriter(to, BUFFERED);
        keys.writeTo(out);
        out.flush();
    }

    /// Standard output, for what is too long to be in memory at once.
    private static final class Printing extends Writer {
        private final Console console;

        Printing(Console console) {
            this.console = console;
        }

        @Override
        public void write(char[] letters, int from, int count) throws IOException {
            console.answer(new String(letters, from, count));
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(
                new Rehearsal(List.of("-", "--shot", "spin"), PlanFile.example()),
                new Rehearsal(
                        List.of(Rehearsal.FILE, "--shot", "spin", "--to", Rehearsal.FILE + ".csv"),
                        PlanFile.example()));
    }
}
