package plumeline.solve;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Plan;
import plumeline.plan.Plans;
import plumeline.plan.Shot;
import plumeline.text.Problem;

/// Plans read, solved, and written anew with other values, for the tests of this package.
final class Solved {
    static final String HEAD = """
        plumeline: 1
        film: {rate: 24 fps, papers: mm}
        deliver:
          wide: {ratio: "16:9"}
          phone: {ratio: "9:16", keep_out: {top: 14 %, bottom: 20 %, right: 12 %}}
        things:
          can: {diameter: 66 mm, height: 122 mm}
          tall: {diameter: 42 mm, height: 118 mm, body: opaque}
          glass: {diameter: 42 mm, height: 118 mm, body: clear}
          flacon: {profile: [[0 mm, 21 mm], [90 mm, 21 mm], [90 mm, 10 mm], [118 mm, 10 mm]]}
          box: {width: 60 mm, depth: 30 mm, height: 110 mm}
        kit:
          cameras:
            main:
              sensor: {width: 36 mm, height: 20.25 mm, across: 3840 px}
              modes: [{rate: 24 fps}, {rate: 120 fps}]
          lenses:
            fifty: {focal_length: 50 mm, nearest: 350 mm, f_numbers: [2, 22]}
            macro: {focal_length: 100 mm, nearest: 300 mm, f_numbers: [2.8, 32]}
          lights: {strip: {panel: [300 mm, 1200 mm]}}
          machines:
            slider: {travel: 600 mm, speed: 80 mm/s, acceleration: 200 mm/s2, repeats: 0.1 mm}
            head: {speed: 20 deg/s, repeats: 0.02 deg}
          tanks: {glass: {inside: [450 mm, 300 mm, 300 mm], pane: 8 mm}}
        shots:
          one:
        """;

    private Solved() {}

    static String text(String... lines) {
        return HEAD + "    " + String.join("\n    ", lines) + "\n";
    }

    static String resource(String name) {
        try (InputStream stream = Solved.class.getResourceAsStream("/plans/" + name)) {
            if (stream == null) {
                throw new IllegalStateException("no plan " + name);
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Plan plan(String text) {
        var reading = Plans.read(text.getBytes(StandardCharsets.UTF_8), "p.yaml");
        return reading.plan()
                .orElseThrow(() -> new AssertionError(
                        reading.problems().stream().map(Problem::toText).collect(Collectors.joining("\n")) + "\n"
                                + text));
    }

    static FilmAnswer film(String text) {
        return Solve.film(plan(text));
    }

    static ShotAnswer shot(String text) {
        return film(text).shots().getFirst();
    }

    static Judged judged(Plan plan, double[] si) {
        Shot shot = plan.shots().getFirst();
        return Judged.of(plan, shot, List.of(), (_, _, _) -> Optional.empty()).withWorstFrames(si);
    }

    static MarkAnswer mark(ShotAnswer answer, String path) {
        return answer.marks().stream()
                .filter(mark -> mark.mark().path().equals(path))
                .findFirst()
                .orElseThrow(() -> new AssertionError("no mark " + path));
    }

    static double si(MarkAnswer mark) {
        return switch (mark.setting()) {
            case MarkAnswer.Setting.At at -> at.si();
            case MarkAnswer.Setting.Open() ->
                throw new AssertionError(mark.mark().path() + " is open");
        };
    }

    static double millimetres(ShotAnswer answer, String path) {
        return si(mark(answer, path)) * 1e3;
    }

    static WantAnswer want(ShotAnswer answer, int number) {
        return answer.wants().get(number - 1);
    }

    static double margin(WantAnswer want) {
        return switch (want.margin()) {
            case WantAnswer.Margin.Of of -> of.value();
            case WantAnswer.Margin.None() -> throw new AssertionError(want.id() + " has no margin");
        };
    }

    /// Whether a want is true with the marks as they are, tight or not.
    static boolean isTrue(WantAnswer want) {
        return want.verdict() == Verdict.HOLDS || want.verdict() == Verdict.TIGHT;
    }

    static List<String> trueIds(ShotAnswer answer) {
        return answer.wants().stream()
                .filter(Solved::isTrue)
                .map(WantAnswer::id)
                .toList();
    }

    static List<String> failingIds(ShotAnswer answer) {
        return answer.wants().stream()
                .filter(want -> want.verdict() == Verdict.FAILS)
                .map(WantAnswer::id)
                .toList();
    }

    /// The plan's text with the solved marks kept.
    static String kept(Plan plan, FilmAnswer film) {
        Map<String, Map<String, Double>> solved = new HashMap<>();
        for (ShotAnswer shot : film.shots()) {
            for (MarkAnswer mark : shot.marks()) {
                if (mark.mark().isFree() && mark.setting() instanceof MarkAnswer.Setting.At at) {
                    solved.computeIfAbsent(shot.shot(), _ -> new HashMap<>())
                            .put(mark.mark().path(), at.si());
                }
            }
        }
        return Plans.keep(plan, solved);
    }

    /// The text of a plan whose marks are all fixed, with other values for some of the first shot's marks.
    static String with(String text, Map<String, Double> si) {
        Shot shot = plan(text).shots().getFirst();
        StringBuilder changed = new StringBuilder(text);
        List<Mark> fromTheEnd = shot.marks().stream()
                .sorted(Comparator.comparingInt((Mark mark) -> -mark.place().start()))
                .toList();
        for (Mark mark : fromTheEnd) {
            if (si.containsKey(mark.path())) {
                String old = text.substring(mark.place().start(), mark.place().end());
                String value =
                        old.startsWith("[") ? way(shot, mark, si.get(mark.path())) : written(mark, si.get(mark.path()));
                changed.replace(mark.place().start(), mark.place().end(), value);
            }
        }
        return changed.toString();
    }

    private static String way(Shot shot, Mark mark, double si) {
        for (Move move : shot.moves()) {
            if (move.travel().orElse(null) instanceof Move.Travel.Along along
                    && along.mark().equals(mark)) {
                return along.direction().stream()
                        .map(share -> written(mark, share * si))
                        .collect(Collectors.joining(", ", "[", "]"));
            }
        }
        throw new AssertionError(mark.path());
    }

    private static String written(Mark mark, double si) {
        return switch (mark.kind()) {
            case TAPE, HEIGHT, HUNG, LAMP_PLACE, MOTOR, FOCUS -> String.format(Locale.ROOT, "%.9f mm", si * 1e3);
            case TURN, LAMP_TURN, MOTOR_TURN -> String.format(Locale.ROOT, "%.9f deg", Math.toDegrees(si));
            case DIAL ->
                mark.path().equals("camera.f_number")
                        ? String.format(Locale.ROOT, "%.9f", si)
                        : String.format(Locale.ROOT, "%.9f %%", si * 100);
        };
    }

    static String replaced(String text, String before, String after) {
        if (!text.contains(before)) {
            throw new AssertionError("no " + before + " in\n" + text);
        }
        return text.replace(before, after);
    }

    static List<String> attempts(ShotAnswer answer) {
        return answer.wants().stream().flatMap(want -> want.attempts().stream()).toList();
    }

    static Stream<String> sentences(ShotAnswer answer) {
        return answer.wants().stream()
                .flatMap(want -> Stream.of(
                        Stream.of(want.id() + " " + want.want() + " "
                                + want.verdict().word() + " " + want.margin()),
                        want.because().stream(),
                        want.attempts().stream().map(text -> "try " + text)))
                .flatMap(some -> some);
    }
}
