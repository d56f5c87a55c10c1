package plumeline.cli;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import plumeline.cli.picture.PaperPictures;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.InkFolder;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plume.InkRecord;
import plumeline.sheet.Changes;
import plumeline.sheet.Papers;
import plumeline.sheet.Pictures;
import plumeline.sheet.Printed;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;

/// `papers PLAN`: solves the plan and writes its papers: a page for screens, the same for paper, the marks as a list.
final class PapersCommand implements Command {
    static final String PAGE = "papers.html";
    static final String PRINT = "papers.pdf";
    static final String MARKS = "marks.csv";

    @Override
    public Usage usage() {
        return new Usage(
                "papers",
                "Writes the papers for the day: " + PAGE + ", " + PRINT + " and " + MARKS + ".",
                "PLAN",
                1,
                1,
                List.of(
                        Usage.valued("--shot", "NAME", "Writes this shot's papers only."),
                        Usage.valued(
                                "--since",
                                "FILE",
                                "Marks what changed since this earlier revision of the plan, and lists it on the"
                                        + " cover."),
                        Usage.flag("--no-pictures", "Leaves computed pictures out; line art stays."),
                        Usage.valued("--to", "DIR", "Writes into this folder; else into papers, beside the plan.")));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        Path folder = folder(given, name);
        List<String> shots = PlanFile.shots(plan, given);
        Optional<Plans.Reading> since = Optional.empty();
        if (given.findValue("--since").isPresent()) {
            Plans.Reading earlier = PlanFile.readMeasured(
                    PlainFile.read(given.findValue("--since").get(), console), console);
            if (earlier.plan().isEmpty()) {
                return PlanFile.tellProblems(earlier, console);
            }
            since = Optional.of(earlier);
        }
        PlainFile.makeFolder(folder);
        List<InkRecord> records = InkFolder.records(InkFolder.ofPlan(name));
        FilmAnswer answer = PlanFile.solve(plan, shots, records, console);
        Pictures pictures = given.has("--no-pictures") ? Pictures.NONE : PaperPictures.of(answer, name, console);
        write(
                answer,
                since.map(earlier -> changes(earlier, answer, records, console)).orElse(Changes.none()),
                pictures,
                folder,
                console);
        console.answer(folder.resolve(PAGE) + "\n" + folder.resolve(PRINT) + "\n" + folder.resolve(MARKS) + "\n");
        return Outcome.ANSWERED;
    }

    /// The earlier revision is answered as the present one is: whole, or of the one shot.
    private static Changes changes(Plans.Reading earlier, FilmAnswer answer, List<InkRecord> records, Console console) {
        Plan before = earlier.plan().orElseThrow();
        boolean isWhole = answer.shots().size() == answer.plan().shots().size();
        List<String> shots = isWhole
                ? before.shots().stream().map(Shot::name).toList()
                : answer.shots().stream().map(ShotAnswer::shot).toList();
        return Changes.between(PlanFile.solve(before, shots, records, console), answer);
    }

    private static Path folder(Arguments given, String plan) throws Refusal {
        if (given.findValue("--to").isPresent()) {
            return PlainFile.toPath(given.findValue("--to").get());
        }
        Path beside = plan.equals("-") ? null : PlainFile.toPath(plan).getParent();
        return beside == null ? Path.of("papers") : beside.resolve("papers");
    }

    /// Writes the three papers into a folder, telling each as it is made.
    static void write(FilmAnswer answer, Changes changes, Pictures pictures, Path folder, Console console)
            throws IOException {
        Printed printed = new Printed(
                LocalDateTime.now(ZoneId.systemDefault())
                        .format(DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT)),
                changes,
                pictures);
        console.say("plumeline: drawing the page");
        Papers papers = Papers.of(answer, printed);
        PlainFile.lay(folder.resolve(PAGE), papers.html().getBytes(UTF_8));
        console.say("plumeline: setting the print");
        PlainFile.lay(folder.resolve(PRINT), papers.pdf());
        PlainFile.lay(folder.resolve(MARKS), Papers.marksCsv(answer).getBytes(UTF_8));
    }

    /// The JDK lends a font to the printer by a temporary file, which it deletes when it shuts down.
    @Override
    public boolean needsShutdown() {
        return true;
    }

    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(
                List.of(Rehearsal.FILE, "--shot", "plume", "--to", Rehearsal.FOLDER), PlanFile.example()));
    }
}
