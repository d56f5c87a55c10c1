package plumeline.solve;

import plumeline.pace.Shift;
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
        return "What moves " + times + (pixels > 0 ? ", a thing over " + Print.number(pixels, 1) + " px" : "") + ".";
    }

    /// The farthest that a placed thing goes in the picture while a frame is exposed, px.
    double pixels() {
        return pixels(seconds);
    }

    private double pixels(double exposed) {
        double last = stage.frames() - 1.0;
        double most = 0;
        Stage.Laid laid = stage.laid(si);
        for (int i = 0; i < INSTANTS; i++) {
            Scene from = laid.scene(last * i / INSTANTS);
            Scene to = laid.sceneAt(from.realSeconds() + exposed);
            for (int thing = 0; thing < from.things().size(); thing++) {
                if (Shift.isBefore(from, thing) && Shift.isBefore(to, thing)) {
                    most = Math.max(most, Shift.ofThing(from, to, thing));
                }
            }
        }
        return most;
    }
}
