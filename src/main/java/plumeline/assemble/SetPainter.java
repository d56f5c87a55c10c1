package plumeline.assemble;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.jobs.Work;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.render.Develop;
import plumeline.render.Pixels;
import plumeline.render.Props;
import plumeline.render.Render;
import plumeline.render.ShotSet;
import plumeline.render.Window;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Stage;
import plumeline.trace.Exposing;
import plumeline.trace.Instants;
import plumeline.trace.Plate;

/// Makes pictures of solved shots' cameras. Any number of threads may ask it; each picture is made by one, and rests on
/// what was asked alone.
public final class SetPainter {
    /// So many rows are exposed before anybody is asked whether to go on.
    private static final int ROWS = 32;

    private final int samples;
    private final long seed;
    private final Map<String, Painted> sets = new LinkedHashMap<>();

    /// A shot's pass made ready.
    private record Painted(ShotSet set, PictureKey key) {}

    /// What a shot's pictures need beside the plan.
    ///
    /// @param props prints and ink
    /// @param digest what tells them from others
    public record Beside(Props props, String digest) {}

    private SetPainter(int samples, long seed) {
        this.samples = samples;
        this.seed = seed;
    }

    /// Makes shots ready.
    ///
    /// @param film the findings on them: they are drawn as solved, whatever the verdict
    /// @param shots what lies beside the plan by shot and pass as [Wanted#name] has them; others aren't made ready
    /// @param samples rays a pixel, > 0
    /// @param seed draws their places
    /// @return the painter
    public static SetPainter of(FilmAnswer film, Map<String, Beside> shots, int samples, long seed) {
        SetPainter painter = new SetPainter(samples, seed);
        for (ShotAnswer answer : film.shots()) {
            double[] values = answer.posed().values();
            for (Stage stage : stages(film.plan(), answer.shot())) {
                String name = name(stage);
                Optional.ofNullable(shots.get(name))
                        .ifPresent(beside -> painter.sets.put(
                                name,
                                new Painted(
                                        ShotSet.of(film.plan(), stage, values, beside.props()),
                                        PictureKey.of(film.plan(), stage, values, beside.digest()))));
            }
        }
        return painter;
    }

    /// Lists all that may be drawn of a shot.
    ///
    /// @param plan the plan
    /// @param name the shot's name
    /// @return the shot itself, then its passes
    public static List<Stage> stages(Plan plan, String name) {
        Shot shot = plan.findShot(name).orElseThrow();
        List<Stage> stages = new ArrayList<>(List.of(Stage.of(plan, shot)));
        shot.passes().forEach(pass -> stages.add(Stage.of(plan, shot, pass.name())));
        return stages;
    }

    /// Gives a shot or pass its name.
    ///
    /// @param stage it staged
    /// @return as [Wanted#name] has it
    public static String name(Stage stage) {
        return stage.pass().isEmpty() ? stage.shot().name() : stage.shot().name() + "." + stage.pass();
    }

    private Painted painted(Wanted wanted) {
        return Optional.ofNullable(sets.get(wanted.name())).orElseThrow();
    }

    /// Tells whether a picture that was kept is still right.
    ///
    /// @param wanted the picture
    /// @return what decides it
    public PictureKey key(Wanted wanted) {
        Painted painted = painted(wanted);
        return painted.key().of(wanted, painted.set().shutterSeconds(), samples, seed);
    }

    /// Makes a picture.
    ///
    /// @param wanted which
    /// @param work who is asked whether to go on
    /// @return the part of it that its view keeps; empty where it was stopped
    public Optional<Pixels> paint(Wanted wanted, Work work) {
        Painted painted = painted(wanted);
        ShotSet set = painted.set();
        double open = set.shutterSeconds();
        View view = wanted.view();
        Instants instants = Render.instants(
                set, wanted.realSeconds(), open, samples, new Window(Frame.WHOLE, view.width(), view.height()));
        Plate plate = new Plate(view.width(), view.height());
        Exposing.Tile kept = view.kept();
        var rays = new Exposing.Rays(0, samples, samples, seed);
        for (int row = 0; row < kept.height(); row += ROWS) {
            if (!work.goesOn()) {
                return Optional.empty();
            }
            Exposing.expose(
                    instants,
                    plate,
                    new Exposing.Tile(kept.left(), kept.top() + row, kept.width(), Math.min(ROWS, kept.height() - row)),
                    rays);
            work.report((row + ROWS) / (double) kept.height());
        }
        return Optional.of(cut(Develop.of(plate, set.developing(wanted.realSeconds())), kept));
    }

    private static Pixels cut(Pixels whole, Exposing.Tile kept) {
        if (whole.width() == kept.width() && whole.height() == kept.height()) {
            return whole;
        }
        int[] packed = new int[kept.width() * kept.height()];
        for (int y = 0; y < kept.height(); y++) {
            System.arraycopy(
                    whole.packed(),
                    (kept.top() + y) * whole.width() + kept.left(),
                    packed,
                    y * kept.width(),
                    kept.width());
        }
        return new Pixels(kept.width(), kept.height(), packed);
    }

    /// Tells what was taken for what the plan doesn't say.
    ///
    /// @return sentences, each once, with the shots before it
    public List<String> assumed() {
        Map<String, List<String>> shots = new LinkedHashMap<>();
        sets.forEach((name, painted) -> {
            LinkedHashSet<String> own = new LinkedHashSet<>(painted.set().assumed());
            own.addAll(painted.set().developing(0).assumed());
            own.forEach(
                    each -> shots.computeIfAbsent(each, _ -> new ArrayList<>()).add(name));
        });
        return shots.entrySet().stream()
                .map(each -> String.join(", ", each.getValue()) + ": " + each.getKey())
                .toList();
    }
}
