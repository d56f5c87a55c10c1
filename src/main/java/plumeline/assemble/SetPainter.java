package plumeline.assemble;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.jobs.Work;
import plumeline.render.Develop;
import plumeline.render.Pixels;
import plumeline.render.Props;
import plumeline.render.ShotSet;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.trace.Exposing;
import plumeline.trace.Look;
import plumeline.trace.Plate;

/// Makes pictures of solved shots' cameras. Any number of threads may ask it; each picture is made by one, and rests on
/// what was asked alone.
public final class SetPainter {
    /// An exposure is cut into so many instants at most.
    private static final int MOST_INSTANTS = 64;

    /// So many rows are exposed before anybody is asked whether to go on.
    private static final int ROWS = 32;

    private final int samples;
    private final long seed;
    private final Map<String, Painted> sets = new LinkedHashMap<>();

    /// A shot's pass made ready.
    private record Painted(ShotSet set, double[] values, PictureKey key) {}

    /// What a shot's pictures need beside the plan.
    ///
    /// @param props prints and ink
    /// @param digest what tells them from others
    public record Beside(Props props, String digest) {
        /// Nothing.
        public static final Beside NOTHING = new Beside(Props.NONE, "");
    }

    /// Who has what lies beside a plan.
    @FunctionalInterface
    public interface Shelf {
        /// Gives what a shot's pictures need.
        ///
        /// @param answer the shot
        /// @param run it, or its pass
        /// @return the things
        Beside of(ShotAnswer answer, ShotAnswer.Run run);
    }

    private SetPainter(int samples, long seed) {
        this.samples = samples;
        this.seed = seed;
    }

    /// Makes shots ready.
    ///
    /// @param film the findings on them: they are drawn as solved, whatever the verdict
    /// @param names shots and passes as [Wanted#name] has them; others aren't made ready
    /// @param shelf who has what lies beside the plan
    /// @param samples rays a pixel, > 0
    /// @param seed draws their places
    /// @return the painter
    public static SetPainter of(FilmAnswer film, List<String> names, Shelf shelf, int samples, long seed) {
        SetPainter painter = new SetPainter(samples, seed);
        for (ShotAnswer answer : film.shots()) {
            for (ShotAnswer.Run run : film.listRuns(answer)) {
                String name = run.pass().isEmpty() ? answer.shot() : answer.shot() + "." + run.pass();
                if (names.contains(name)) {
                    Beside beside = shelf.of(answer, run);
                    double[] values = answer.posed().values();
                    painter.sets.put(
                            name,
                            new Painted(
                                    ShotSet.of(film.plan(), run.stage(), values, beside.props()),
                                    values,
                                    PictureKey.of(film.plan(), run.stage(), values, beside.digest())));
                }
            }
        }
        return painter;
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
        List<Look> looks = set.over(wanted.realSeconds(), open, Math.min(samples, MOST_INSTANTS));
        Plate plate = new Plate(wanted.view().width(), wanted.view().height());
        Exposing.Tile kept = wanted.view().kept();
        var rays = new Exposing.Rays(0, samples, samples, seed);
        for (int row = 0; row < kept.height(); row += ROWS) {
            if (!work.goesOn()) {
                return Optional.empty();
            }
            Exposing.expose(
                    looks,
                    plate,
                    new Exposing.Tile(
                            kept.left(), kept.top() + row, kept.width(), Math.min(ROWS, kept.height() - row)),
                    rays);
            work.report((row + ROWS) / (double) kept.height());
        }
        Scene scene = set.stage().laid(painted.values()).sceneAt(wanted.realSeconds());
        return Optional.of(cut(Develop.of(plate, set.stage().shot(), scene), kept));
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
    /// @return sentences, each with its shot before it
    public List<String> assumed() {
        LinkedHashSet<String> all = new LinkedHashSet<>();
        sets.forEach((name, painted) -> painted.set().assumed().forEach(each -> all.add(name + ": " + each)));
        return new ArrayList<>(all);
    }
}
