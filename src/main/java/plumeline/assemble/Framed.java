package plumeline.assemble;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.LongStream;
import plumeline.plan.Delivery;
import plumeline.plan.Pass;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Picture;
import plumeline.stage.Stage;
import plumeline.stage.Window;
import plumeline.timeline.Framing;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;
import plumeline.trace.Exposing;

/// How cameras' pictures lie in a delivery's finished one, and how finely each has to be drawn for that.
final class Framed {
    /// A picture that is scaled up for a while is drawn so much finer at most.
    private static final double FINEST = 2;

    private static final double COARSEST = 0.25;
    private static final double NEAR = 1e-6;

    private final FilmAnswer film;
    private final Timeline timeline;
    private final Optional<Delivery> delivery;
    private final Screen screen;
    private final Map<String, Run> runs = new HashMap<>();

    /// A shot's pass as the film shows it.
    ///
    /// @param stage it staged
    /// @param picture its camera's picture; a zoom changes its scale and no share of it
    /// @param crop what of that the delivery keeps
    /// @param view how it is drawn
    record Run(Stage stage, Picture picture, Frame crop, View view) {}

    Framed(FilmAnswer film, Timeline timeline, Optional<Delivery> delivery, Screen screen) {
        this.film = film;
        this.timeline = timeline;
        this.delivery = delivery;
        this.screen = screen;
        for (Span span : timeline.spans()) {
            runs.computeIfAbsent(span.name(), _ -> run(span));
        }
    }

    /// The ratio that a film has by itself: the delivery's, else that of its first camera's picture.
    static double aspect(Plan plan, Timeline timeline, Optional<Delivery> delivery) {
        return delivery.map(Delivery::aspect).orElseGet(() -> {
            Span first = timeline.spans().getFirst();
            Stage stage = stage(plan, first);
            Picture picture = stage.scene(stage.startValues(), 0).picture();
            return picture.widthMetres() / picture.heightMetres();
        });
    }

    private static Stage stage(Plan plan, Span span) {
        Shot shot = plan.findShot(span.shot()).orElseThrow();
        Optional<Pass> pass = shot.findPass(span.pass());
        return pass.isPresent() ? Stage.of(plan, shot, span.pass()) : Stage.of(plan, shot);
    }

    Run run(String name) {
        return Optional.ofNullable(runs.get(name)).orElseThrow();
    }

    private Run run(Span span) {
        ShotAnswer answer = film.shots().stream()
                .filter(one -> one.shot().equals(span.shot()))
                .findFirst()
                .orElseThrow();
        Stage stage = stage(film.plan(), span);
        Picture picture = stage.scene(answer.posed().values(), 0).picture();
        double aspect = (double) screen.across() / screen.down();
        Shot.Crop crop = delivery.map(
                        one -> film.plan().findShot(span.shot()).orElseThrow().cropOrDefault(one.name()))
                .orElse(Shot.Crop.MIDDLE);
        Frame frame = Frame.of(picture, delivery.map(Delivery::aspect).orElse(aspect), crop);
        return new Run(stage, picture, frame, view(span.name(), picture, frame));
    }

    /// As many pixels as the finished picture has where the film shows it largest, and what of them it ever shows.
    private View view(String name, Picture picture, Frame crop) {
        List<Framing> framings = timeline.spans().stream()
                .filter(span -> span.name().equals(name))
                .flatMap(span -> LongStream.range(span.first(), span.past()).mapToObj(frame -> framing(span, frame)))
                .distinct()
                .toList();
        double scale =
                Math.clamp(framings.stream().mapToDouble(Framing::scale).max().orElse(1), COARSEST, FINEST);
        View whole = View.whole(
                Math.max(1, (int) Math.round(screen.across() * scale / (crop.right() - crop.left()))),
                Math.max(1, (int) Math.round(screen.down() * scale / (crop.top() - crop.bottom()))));
        double left = whole.width();
        double right = 0;
        double top = whole.height();
        double low = 0;
        for (Framing framing : framings) {
            Lay lay = Lay.of(new Window(picture, crop, framing), screen, whole);
            for (int corner = 0; corner < 4; corner++) {
                double u = screen.left() + corner % 2 * screen.across();
                double v = screen.top() + Math.floorDiv(corner, 2) * screen.down();
                left = Math.min(left, lay.x(u, v));
                right = Math.max(right, lay.x(u, v));
                top = Math.min(top, lay.y(u, v));
                low = Math.max(low, lay.y(u, v));
            }
        }
        int first = floor(left, whole.width() - 1);
        int upper = floor(top, whole.height() - 1);
        return new View(
                whole.width(),
                whole.height(),
                new Exposing.Tile(
                        first,
                        upper,
                        Math.max(1, ceiling(right, whole.width()) - first),
                        Math.max(1, ceiling(low, whole.height()) - upper)));
    }

    /// A pixel more where looks fall between pixels.
    private static int floor(double place, int most) {
        return (int) Math.clamp(Math.floor(place + NEAR - (isWhole(place) ? 0 : 1)), 0, most);
    }

    private static int ceiling(double place, int most) {
        return (int) Math.clamp(Math.ceil(place - NEAR + (isWhole(place) ? 0 : 1)), 1, most);
    }

    private static boolean isWhole(double place) {
        return Math.abs(place - Math.rint(place)) < NEAR;
    }

    private Framing framing(Span span, long frame) {
        Timeline.Entry entry = timeline.entries().get(span.entry());
        return Framing.at(
                entry.cut().listReframes(delivery.map(Delivery::name).orElse("")), (double) (frame - entry.first()));
    }

    /// How a frame's picture lies in the film's.
    Lay lay(Span span, long frame) {
        Run run = run(span.name());
        return Lay.of(new Window(run.picture(), run.crop(), framing(span, frame)), screen, run.view());
    }
}
