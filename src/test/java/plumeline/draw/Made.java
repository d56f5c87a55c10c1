package plumeline.draw;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.plan.WantLine;
import plumeline.quantity.Origin;
import plumeline.search.Leeway;
import plumeline.solve.FilmAnswer;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.solve.Verdict;
import plumeline.solve.WantAnswer;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;

/// Answers made by hand on a plan, so that papers are tested without solving.
public final class Made {
    private static final double NONE = Double.POSITIVE_INFINITY;
    private static final String SHA = "0123456789abcdef0123456789abcdef0123456789abcdef0123456789abcdef";

    /// Value (SI), leeway to both sides and the wants that end it.
    private record Given(double si, double minus, double plus, String minusEnd, String plusEnd) {}

    private static final Map<String, Given> GIVEN = Map.ofEntries(
            Map.entry("reveal.camera.x", new Given(0, 0.0174, 0.021, "reveal.1", "reveal.1")),
            Map.entry("reveal.camera.y", new Given(-0.6, 0.2446, 0.5677, "reveal.2", "reveal.1")),
            Map.entry("reveal.camera.z", new Given(0.052, 0.052, 0.038, "reveal.1", "reveal.1")),
            Map.entry("reveal.second.x", new Given(0, 0.0035, 0.0035, "reveal.1", "reveal.1")),
            Map.entry("reveal.second.y", new Given(0.104, 0.0091, NONE, "reveal.2", "")),
            Map.entry("reveal.third.x", new Given(0.004, 0.0069999, 0.0012, "reveal.1", "reveal.2")),
            Map.entry("reveal.third.y", new Given(0.209, 0.031, 0.0357, "reveal.2", "reveal.2")),
            Map.entry("reveal.fourth.x", new Given(-0.006, 0.0105, 0.0105, "reveal.1", "reveal.1")),
            Map.entry("reveal.fourth.y", new Given(0.312, 0.04, NONE, "reveal.2", "")),
            Map.entry("reveal.slide.by", new Given(-0.6, 9.7, 0.1311, "reveal.2", "reveal.2")),
            Map.entry("plume.camera.y", new Given(-1.122, 0.00173, 0.00374, "plume.1", "film.1")),
            Map.entry("plume.bottle.y", new Given(0, 0.00499, 0.0023, "film.1", "plume.1")));

    private static final Map<String, Verdict> VERDICTS = Map.of(
            "reveal.1", Verdict.HOLDS, "reveal.2", Verdict.TIGHT, "plume.1", Verdict.TIGHT, "looks.2", Verdict.HOLDS);

    private Made() {}

    /// The papers' test plan as written.
    public static String text() {
        try (var in = Made.class.getResourceAsStream("/plans/papers.yaml")) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /// A film answered on a plan's text; its film wants fail.
    public static FilmAnswer film(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "papers.yaml");
        Plan plan = reading.plan()
                .orElseThrow(
                        () -> new IllegalArgumentException(reading.problems().toString()));
        List<ShotAnswer> shots =
                plan.shots().stream().map(shot -> shot(plan, shot)).toList();
        List<WantAnswer> wants = plan.wants().stream().map(Made::filmWant).toList();
        return new FilmAnswer(plan, SHA, Verdict.FAILS, shots, wants);
    }

    /// The first shot of a film.
    public static ShotAnswer shot(FilmAnswer film, String name) {
        return film.shots().stream()
                .filter(shot -> shot.shot().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private static ShotAnswer shot(Plan plan, Shot shot) {
        List<ShotAnswer.Run> runs = shot.passes().isEmpty()
                ? List.of(new ShotAnswer.Run("", Stage.of(plan, shot)))
                : shot.passes().stream()
                        .map(pass -> new ShotAnswer.Run(pass.name(), Stage.of(plan, shot, pass.name())))
                        .toList();
        Stage stage = runs.getFirst().stage();
        double[] values = stage.startValues();
        List<MarkAnswer> marks = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            StagedMark mark = stage.marks().get(i);
            Given given = GIVEN.get(shot.name() + "." + mark.mark().path());
            if (given != null) {
                values[i] = given.si();
            }
            marks.add(mark(mark, values[i], given));
        }
        return new ShotAnswer(
                shot.name(),
                Verdict.UNKNOWN,
                shot.wants().stream().map(Made::want).toList(),
                plan.wants().stream().map(Made::filmWant).toList(),
                marks,
                1.23,
                List.of(),
                List.of(),
                new ShotAnswer.Posed(runs, Arrays.stream(values).boxed().toList()));
    }

    private static MarkAnswer mark(StagedMark staged, double si, Given given) {
        Mark mark = staged.mark();
        double error = staged.placingErrorSi(si);
        MarkAnswer.Setting at = new MarkAnswer.Setting.At(
                si, mark instanceof Mark.Fixed fixed ? fixed.quantity().origin() : Origin.SOLVED);
        if (given == null) {
            return new MarkAnswer(
                    mark,
                    mark.isFree() ? new MarkAnswer.Setting.Open() : at,
                    new Leeway(side(NONE), side(NONE)),
                    new MarkAnswer.Ends("", ""),
                    error);
        }
        return new MarkAnswer(
                mark,
                at,
                new Leeway(side(given.minus()), side(given.plus())),
                new MarkAnswer.Ends(given.minusEnd(), given.plusEnd()),
                error);
    }

    private static Leeway.Side side(double distance) {
        return Double.isFinite(distance) ? new Leeway.Side.Ends(distance) : new Leeway.Side.Endless();
    }

    private static WantAnswer want(WantLine line) {
        Verdict verdict = VERDICTS.getOrDefault(line.id(), Verdict.UNKNOWN);
        return verdict == Verdict.UNKNOWN
                ? new WantAnswer(
                        line.id(),
                        line.toText(plumeline.quantity.PaperUnit.MILLIMETRES),
                        verdict,
                        new WantAnswer.Margin.None(),
                        List.of("not computed yet"),
                        List.of(),
                        "")
                : new WantAnswer(
                        line.id(),
                        line.toText(plumeline.quantity.PaperUnit.MILLIMETRES),
                        verdict,
                        new WantAnswer.Margin.Of(1.4, "mm"),
                        List.of("Room to spare."),
                        List.of(),
                        "");
    }

    private static WantAnswer filmWant(WantLine line) {
        return new WantAnswer(
                line.id(),
                line.toText(plumeline.quantity.PaperUnit.MILLIMETRES),
                Verdict.FAILS,
                new WantAnswer.Margin.Of(-24.2, "%"),
                List.of("Goes 24 % over the side."),
                List.of("slide 41 mm further: slide.by -641 mm instead of -600 mm."),
                "");
    }
}
