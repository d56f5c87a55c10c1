package plumeline.solve;

import java.util.stream.IntStream;
import plumeline.geom.Point;
import plumeline.quantity.Print;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// How far things go across the picture while a frame is exposed, for what a longer shutter costs.
final class Smear {
    /// Instants of a move that are looked at.
    private static final int INSTANTS = 17;

    private final Stage stage;
    private final double[] si;

    private final double seconds;

    /// @param stage the shot
    /// @param si where its marks stand
    /// @param seconds how long a frame is exposed
    Smear(Stage stage, double[] si, double seconds) {
        this.stage = stage;
        this.seconds = seconds;
        this.si = si.clone();
    }

    /// What a longer exposure costs; empty for a shorter one.
    ///
    /// @param longer how many times as long a frame would be exposed
    String sentence(double longer) {
        if (longer <= 1) {
            return "";
        }
        String times = "smears " + Print.number(longer, 1) + " times as far";
        boolean isLetGo = stage.shot().findRelease().isPresent();
        if (!stage.isMoving()) {
            return isLetGo ? "What is let go " + times + "." : "Nothing moves in this shot, so nothing smears.";
        }
        double pixels = pixels(longer * seconds);
        return "What moves " + times + (pixels > 0 ? ", a thing's middle over " + Print.number(pixels, 1) + " px" : "")
                + ".";
    }

    /// The farthest that a placed thing's middle goes in the picture, px.
    private double pixels(double exposed) {
        double last = stage.frames() - 1.0;
        double most = 0;
        for (int i = 0; i < INSTANTS; i++) {
            double frame = last * i / INSTANTS;
            double real = stage.retime().realSeconds(frame) + exposed;
            Scene from = stage.scene(si, frame);
            Scene to = stage.scene(si, Math.max(frame, stage.retime().frameAt(real, last)));
            most = Math.max(most, pixels(from, to));
        }
        return most;
    }

    private static double pixels(Scene from, Scene to) {
        double scale = from.picture().imageMetres() / from.picture().pixelMetres();
        return IntStream.range(0, from.things().size())
                .filter(i -> from.projection().depth(from.things().get(i).middle()) > 0
                        && to.projection().depth(to.things().get(i).middle()) > 0)
                .mapToDouble(i -> {
                    Point one = from.projection().project(from.things().get(i).middle());
                    Point other = to.projection().project(to.things().get(i).middle());
                    return scale * Math.hypot(one.x() - other.x(), one.y() - other.y());
                })
                .max()
                .orElse(0);
    }
}
