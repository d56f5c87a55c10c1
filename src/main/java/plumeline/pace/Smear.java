package plumeline.pace;

import java.util.Optional;
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
        return at.stage().isMoving()
                ? Optional.empty()
                : Optional.of("Nothing moves in this shot, so nothing smears: how the set sways isn't counted.");
    }
}
