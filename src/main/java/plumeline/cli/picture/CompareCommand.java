package plumeline.cli.picture;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.desk.Arguments;
import plumeline.desk.Command;
import plumeline.desk.Console;
import plumeline.desk.Interruption;
import plumeline.desk.Outcome;
import plumeline.desk.PlainFile;
import plumeline.desk.PlanFile;
import plumeline.desk.Refusal;
import plumeline.desk.Usage;
import plumeline.geom.Point;
import plumeline.jobs.Jobs;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.render.Develop;
import plumeline.render.PngFile;
import plumeline.render.Render;
import plumeline.render.Window;
import plumeline.resect.Allowance;
import plumeline.resect.ComparePage;
import plumeline.resect.Findings;
import plumeline.resect.Landmark;
import plumeline.resect.Resection;
import plumeline.resect.Said;
import plumeline.resect.Spotted;
import plumeline.resect.Still;
import plumeline.resect.StillFile;
import plumeline.resect.StillView;
import plumeline.stage.Picture;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;
import plumeline.trace.Exposing;
import plumeline.trace.Plate;

/// `compare PLAN STILL`: a still beside the picture; with places clicked in it, how far camera and things seem off.
public final class CompareCommand implements Command {
    private static final String PAGE = "compare.html";
    private static final int ACROSS = 960;

    /// Rays a pixel: with one, what light from all round is kept from would be black.
    private static final int SAMPLES = 4;

    /// A new one, which has done nothing yet.
    public CompareCommand() {}

    @Override
    public Usage usage() {
        return new Usage(
                "compare",
                "Lays a still from the set beside the picture, and says how far off camera and things seem.",
                "PLAN STILL",
                2,
                2,
                List.of(
                        Usage.valued("--shot", "NAME", "The shot that the still is of; else the plan's first."),
                        Usage.valued("--pass", "NAME", "The pass of it; else the shot without any."),
                        Usage.valued("--at", "WHEN", "When: start, end, a screen frame or a time; else the start."),
                        Usage.valued("--delivery", "NAME", "What the still shows, where its ratio leaves that open."),
                        Usage.worded(
                                "--point",
                                "NAME=X,Y ...",
                                "Where places are in the still, in pixels from its upper left corner; three at"
                                        + " least."),
                        Usage.valued("--points", "FILE", "The same from a file, one a line."),
                        Usage.valued("--click-error", "PX", "How far a point may be off, 95 of 100; else 2 px."),
                        Usage.flag("--json", "Prints the answer as JSON; a page is written only with --out."),
                        Usage.valued("--out", "FILE", "Writes the page into this file; else into " + PAGE + "."),
                        PictureChoice.threads()),
                List.of(
                        "compare film.yaml still.jpg --shot reveal",
                        "compare film.yaml still.jpg --shot reveal --point first.top.left=812,344"
                                + " first.base.right=990,1204 second.top.left=1301,398"));
    }

    @Override
    public Outcome run(Arguments given, Console console) throws Refusal, IOException {
        String name = given.plain().getFirst();
        List<Resection.Click> clicks = CompareClicks.of(given, console);
        double clickPixels = CompareClicks.errorPixels(given, Allowance.USUAL.clickPixels());
        byte[] bytes = bytes(given.plain().get(1));
        StillFile.Read file = file(given.plain().get(1), bytes);
        Plans.Reading reading = PlanFile.readMeasured(PlainFile.read(name, console), console);
        if (reading.plan().isEmpty()) {
            return PlanFile.tellProblems(reading, console);
        }
        Plan plan = reading.plan().get();
        PictureChoice choice = PictureChoice.of(plan, given, console);
        StillView view = view(plan, choice, file, given);
        Optional<Findings> findings = clicks.isEmpty()
                ? Optional.empty()
                : Optional.of(find(view, clicks, Allowance.USUAL.withClickPixels(clickPixels)));
        Said said = new Said(plan.film().papersOrDefault());
        List<CompareWants> wants = findings.map(found -> CompareWants.of(
                        plan, view.stage(), view.values(), choice.set().stage().pass(), found))
                .orElse(List.of());
        Optional<Path> page = page(given);
        if (page.isPresent()) {
            var still = ComparePage.Image.of(file.kind(), bytes);
            var subject = new ComparePage.Subject(
                    choice.title() + " at " + choice.when(),
                    given.plain().get(1),
                    still,
                    ComparePage.Image.of("image/png", picture(choice, view, PictureChoice.threads(given))),
                    command(given),
                    choice.open());
            PlainFile.lay(
                    page.get(), ComparePage.of(subject, view, findings, said).getBytes(UTF_8));
        }
        var answer =
                new CompareJson.Answer(choice.title(), choice.when(), view, findings, wants, page.map(Path::toString));
        console.answer(given.has("--json") ? CompareJson.of(answer, said) : text(answer, plan, said));
        return Outcome.ANSWERED;
    }

    private static Optional<Path> page(Arguments given) throws Refusal {
        Optional<String> out = given.findValue("--out");
        if (out.isEmpty() && given.has("--json")) {
            return Optional.empty();
        }
        return Optional.of(PlainFile.toWrite(out.orElse(PAGE)));
    }

    private static byte[] bytes(String name) throws Refusal, IOException {
        Path path = PlainFile.toPath(name);
        if (!Files.isRegularFile(path)) {
            throw new Refusal(
                    name + (Files.exists(path) ? " is no plain file" : " is not there")
                            + "; a JPEG or PNG file is wanted",
                    "Name the still's file after the plan's.");
        }
        try (InputStream in = Files.newInputStream(path)) {
            byte[] bytes = in.readNBytes(StillFile.MOST_BYTES + 1);
            if (bytes.length > StillFile.MOST_BYTES) {
                throw new Refusal(name + " is larger than 64 MiB", "Save it as a JPEG.");
            }
            return bytes;
        }
    }

    private static StillFile.Read file(String name, byte[] bytes) throws Refusal {
        return switch (StillFile.of(bytes)) {
            case StillFile.Read read -> read;
            case StillFile.Refused(String what) ->
                throw new Refusal(
                        name + " is " + what + "; a JPEG or PNG file is wanted", "Save the still as a JPEG or PNG.");
        };
    }

    /// The still laid over the shot; a pass is staged as a shot of its own, so that its own marks may be off too.
    private static StillView view(Plan plan, PictureChoice choice, StillFile.Read file, Arguments given)
            throws Refusal {
        Stage stage = choice.set().stage();
        Picture picture = choice.set().sceneAt(choice.realSeconds()).picture();
        var delivery = PictureChoice.delivery(plan, given);
        Still.Judged judged = delivery.isPresent()
                ? Still.judge(file.acrossPixels(), file.downPixels(), picture, stage.shot(), delivery.get())
                : Still.judge(file.acrossPixels(), file.downPixels(), picture, stage.shot(), plan.deliveries());
        return switch (judged) {
            case Still.Judged.Fits(Still still) -> {
                Stage own = stage.pass().isEmpty() ? stage : Stage.of(plan, stage.shot());
                yield StillView.of(own, values(choice, own), choice.realSeconds(), still);
            }
            case Still.Judged.Unfit(List<String> accepted) ->
                throw new Refusal(
                        given.plain().get(1) + " has " + file.acrossPixels() + " by " + file.downPixels()
                                + " px, which is the shape of nothing that this shot is seen in; accepted are "
                                + String.join(", ", accepted),
                        "Take a frame of the take itself, uncropped.");
        };
    }

    private static double[] values(PictureChoice choice, Stage own) {
        Map<String, Integer> known = new HashMap<>();
        List<StagedMark> marks = choice.set().stage().marks();
        for (int i = 0; i < marks.size(); i++) {
            known.put(marks.get(i).mark().path(), i);
        }
        double[] values = own.startValues();
        for (int i = 0; i < values.length; i++) {
            StagedMark mark = own.marks().get(i);
            Integer index = known.get(mark.mark().path());
            if (index != null
                    && (mark.mark().isFree() || marks.get(index).mark().equals(mark.mark()))) {
                values[i] = choice.set().values()[index];
            }
        }
        return values;
    }

    private static Findings find(StillView view, List<Resection.Click> clicks, Allowance allowance) throws Refusal {
        return switch (Resection.of(view, clicks, allowance)) {
            case Resection.Outcome.Found(Findings findings) -> findings;
            case Resection.Outcome.Refused(String why, String attempt) -> throw new Refusal(why, attempt);
        };
    }

    /// The picture of what the still shows.
    private static byte[] picture(PictureChoice choice, StillView view, int threads) throws IOException {
        Still still = view.still();
        int down = Math.max(1, Math.round((float) ACROSS * still.downPixels() / still.acrossPixels()));
        Window window = new Window(still.frame(), ACROSS, down);
        Plate plate = new Plate(window.plateWidth(), window.plateHeight());
        try (Interruption interruption = new Interruption()) {
            Render.expose(
                    Render.instants(choice.set(), choice.realSeconds(), 0, SAMPLES, window),
                    plate,
                    new Exposing.Rays(0, SAMPLES, SAMPLES, 1),
                    Jobs.Threads.each(threads),
                    _ -> {},
                    interruption.stop());
        }
        return PngFile.of(window.cut(Develop.of(plate, choice.set().developing(choice.realSeconds()))));
    }

    /// What is to be typed again with points.
    private static String command(Arguments given) {
        List<String> words = new ArrayList<>(List.of("./plumeline", "compare"));
        given.plain().forEach(word -> words.add(quoted(word)));
        for (String option : List.of("--shot", "--pass", "--at", "--delivery", "--click-error")) {
            given.findValue(option).ifPresent(value -> words.addAll(List.of(option, quoted(value))));
        }
        return String.join(" ", words);
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9_./=,:-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }

    private static String text(CompareJson.Answer answer, Plan plan, Said said) {
        StringBuilder text = new StringBuilder();
        text.append(answer.title()).append(" at ").append(answer.when()).append('\n');
        if (answer.findings().isPresent()) {
            Findings findings = answer.findings().get();
            said.of(findings).forEach(line -> text.append(line).append('\n'));
            answer.wants().stream()
                    .filter(CompareWants::isLost)
                    .forEach(want -> text.append("So ")
                            .append(want.toText(plan.film().papersOrDefault()))
                            .append('\n'));
            marks(text, findings, said);
            clicked(text, findings);
        } else {
            places(text, answer.view());
        }
        answer.page().ifPresent(page -> text.append(page).append('\n'));
        return text.toString();
    }

    private static void marks(StringBuilder text, Findings findings, Said said) {
        text.append("Each mark, everything weighed by its placing error (± 95 %):\n");
        for (Findings.Off off : findings.offs()) {
            text.append("  ").append(Usage.column(off.sought().name(), 22));
            String figure = switch (off.told()) {
                case NOT -> "";
                case EITHER -> said.signed(off.sought(), off.offSi());
                case WITHIN, APART ->
                    said.signed(off.sought(), off.offSi()) + " ± " + said.size(off.sought(), off.halfSi());
            };
            text.append(Usage.column(figure, 22));
            text.append(
                    switch (off.told()) {
                        case NOT -> "not told by these points";
                        case EITHER -> "it or something else, see above";
                        case WITHIN, APART ->
                            off.isOff() ? said.stands(off.sought(), off.offSi()) : "as far as told, at its mark";
                    });
            text.append('\n');
        }
    }

    private static void clicked(StringBuilder text, Findings findings) {
        text.append("Each point, px off as planned, and left with everything as it seems:\n");
        for (Findings.Place place : findings.places()) {
            text.append("  ").append(Usage.column(place.name(), 28));
            text.append(Usage.column(CompareJson.figure(place.offPixels()), 10));
            text.append(place.isMisclick() ? "misclick" : CompareJson.figure(place.leftPixels()));
            text.append('\n');
        }
    }

    private static void places(StringBuilder text, StillView view) {
        text.append("Places to click, and where they should show (px from the left, from the top):\n");
        for (Landmark landmark : view.landmarks()) {
            text.append("  ").append(Usage.column(landmark.name(), 28));
            text.append(
                    switch (view.spot(landmark)) {
                        case Spotted.Seen(Point pixel) -> at(pixel);
                        case Spotted.Covered(Point pixel, String why) -> at(pixel) + "  " + why;
                        case Spotted.Unknown(String why) -> why;
                    });
            text.append('\n');
        }
    }

    private static String at(Point pixel) {
        return CompareJson.figure(pixel.x()) + ", " + CompareJson.figure(pixel.y());
    }

    /// The still is what `draft` drew in its own rehearsal.
    @Override
    public List<Rehearsal> rehearsals() {
        return List.of(new Rehearsal(
                List.of(Rehearsal.FILE, Rehearsal.FOLDER + "/draft.png", "--shot", "spin", "--json"),
                PlanFile.example()));
    }
}
