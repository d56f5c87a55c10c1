package plumeline.assemble;

import plumeline.stage.Stage;
import plumeline.timeline.Played;

/// A picture of a shot's camera that a film shows: one recorded frame. Frames of the film that show the same are one.
///
/// @param shot the shot's name
/// @param pass the pass's name; empty for the shot itself
/// @param recorded the recorded frame, 0 at GO; 0 too where all of them are alike
/// @param realSeconds when its shutter opens, real seconds after GO
/// @param view how finely it is drawn, and what of it
public record Wanted(String shot, String pass, long recorded, double realSeconds, View view) {
    /// Gives the picture that a shot shows at one of its frames.
    ///
    /// @param shot the shot's name
    /// @param stage the shot or pass, staged
    /// @param played how it runs
    /// @param shotFrame its screen frame, from its first
    /// @param view how it is drawn
    /// @return the picture
    public static Wanted of(String shot, Stage stage, Played played, long shotFrame, View view) {
        boolean isStill =
                stage.shot().moves().isEmpty() && stage.shot().findRelease().isEmpty();
        long recorded = isStill ? 0 : played.sources().shown(Math.toIntExact(shotFrame));
        return new Wanted(shot, stage.pass(), recorded, played.captured().secondsOf((double) recorded), view);
    }

    /// Gives the shot as files name it.
    ///
    /// @return `shot`, or `shot.pass`
    public String name() {
        return pass.isEmpty() ? shot : shot + "." + pass;
    }
}
