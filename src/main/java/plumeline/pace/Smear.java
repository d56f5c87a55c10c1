package plumeline.pace;

import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Point;
import plumeline.stage.Scene;

/// A thing smears less than a limit while a frame is exposed: by the camera's move, its own, or its turn.
///
/// Margin in captured px at its middle plane, at an instant.
///
/// @param subject the thing
/// @param capture how the shot is captured
/// @param mostPixels the limit, px
record Smear(Subject subject, Capture capture, double mostPixels) implements PictureGauge {
    @Override
    public String unit() {
        return "px";
    }

    private double pixels(Paced at) {
        return Shift.ofThing(at.now(), at.later(capture.exposureSeconds()), subject.index());
    }

    @Override
    public double[] parts(Paced at) {
        return new double[] {
            Shift.isBefore(at.now(), subject.index()) ? mostPixels - pixels(at) : Subject.BEHIND,
        };
    }

    @Override
    public String standing(Paced at) {
        Scene to = at.later(capture.exposureSeconds());
        String how = Shift.ofMiddle(at.now(), to, subject.index()) < pixels(at) / 2 ? ", most of it by its turn" : "";
        return subject.name() + " smears over " + Pixels.text(pixels(at)) + " while a frame is exposed for "
                + Pixels.exposure(capture) + how + "; " + Pixels.text(mostPixels) + " is allowed.";
    }

    @Override
    public Optional<String> findCaution(Paced at) {
        if (at.stage().shot().moves().isEmpty()) {
            return Optional.of("Nothing moves in this shot, so nothing smears: how the set sways isn't counted.");
        }
        if (Shift.isBefore(at.now(), subject.index()) && !isInPicture(at.now())) {
            return Optional.of(subject.name() + " is outside the picture then: say with when which instant counts.");
        }
        boolean sways = at.stage().shot().moves().stream()
                .anyMatch(move -> move.machine()
                        .filter(machine -> machine.written().has("sways"))
                        .isPresent());
        return sways ? Optional.of("What sways after a ramp isn't in this figure.") : Optional.empty();
    }

    /// Whether any of it may be in the picture.
    private boolean isInPicture(Scene scene) {
        Body body = scene.things().get(subject.index());
        Point seen = scene.view(body).project(body.middle());
        double reach = body.ballMetres() / scene.view(body).depth(body.middle());
        return Math.abs(seen.x()) < scene.picture().widthTangent() / 2 + reach
                && Math.abs(seen.y()) < scene.picture().heightTangent() / 2 + reach;
    }
}
