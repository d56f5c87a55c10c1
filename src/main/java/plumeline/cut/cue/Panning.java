package plumeline.cut.cue;

import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.sight.Extent;
import plumeline.sight.Sight;
import plumeline.solve.FilmAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Frame;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Window;
import plumeline.timeline.Framing;
import plumeline.timeline.Span;
import plumeline.timeline.Timeline;

/// Where a thing stands across the finished picture: the middle of its outline, −1 at the left edge, 1 at the right.
/// What is outside the picture is at the edge that it is nearer to; what is behind the lens, or beside it, at the edge
/// of the side on which its middle lies, in the middle where that is straight behind.
final class Panning {
    /// Who is off the axis by less than this is straight behind it, metres.
    private static final double NOTHING_METRES = 1e-3;

    private final FilmAnswer film;
    private final Timeline timeline;
    private final Optional<Delivery> delivery;

    /// @param timeline a delivery's pictures where it is a delivery's, else the first one's; the camera's where the
    /// plan has none
    Panning(FilmAnswer film, Timeline timeline) {
        this.film = film;
        this.timeline = timeline;
        Plan plan = film.plan();
        delivery = timeline.delivery().isEmpty()
                ? plan.deliveries().stream().findFirst()
                : plan.findDelivery(timeline.delivery());
    }

    /// Where a thing stands at a frame; an instant outside the stretch counts as its nearest frame.
    double at(Span span, String thing, double frame) {
        double inside = Math.clamp(frame, (double) span.first(), (double) (span.past() - 1));
        ShotAnswer answer = film.shots().stream()
                .filter(one -> one.shot().equals(span.shot()))
                .findFirst()
                .orElseThrow();
        Stage stage = film.listRuns(answer).stream()
                .filter(run -> run.pass().equals(span.pass()))
                .findFirst()
                .orElseThrow()
                .stage();
        int index = stage.thingIndex(thing);
        if (index < 0) {
            return 0;
        }
        double own = (double) span.shotFrame() + inside - (double) span.first();
        Scene scene = stage.scene(answer.posed().values(), own);
        return Math.clamp(2 * across(scene, scene.things().get(index), span, inside), -1, 1);
    }

    /// How far a thing's middle is to the right of the optical axis, as the camera is held.
    private static double besideMetres(Aim aim, Body body) {
        return body.middle().minus(aim.eye()).dot(aim.right());
    }

    /// Share of the finished picture's width from its middle.
    private double across(Scene scene, Body body, Span span, double frame) {
        if (Sight.leastDepthMetres(scene.view(body), body) <= 0) {
            return besideMetres(scene.aim(), body) / NOTHING_METRES;
        }
        Extent extent = Sight.extent(scene.view(body), body);
        Point middle = new Point((extent.left() + extent.right()) / 2, (extent.bottom() + extent.top()) / 2);
        if (delivery.isEmpty()) {
            return middle.x() / scene.picture().widthTangent();
        }
        Shot shot = film.plan().findShot(span.shot()).orElseThrow();
        Frame crop = Frame.of(
                scene.picture(),
                delivery.get(),
                shot.cropOrDefault(delivery.get().name()));
        Timeline.Entry entry = timeline.entries().get(span.entry());
        Framing framing = Framing.at(entry.cut().listReframes(delivery.get().name()), frame - (double) entry.first());
        return new Window(scene.picture(), crop, framing).finished(middle).x();
    }
}
