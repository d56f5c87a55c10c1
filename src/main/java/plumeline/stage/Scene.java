package plumeline.stage;

import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Projection;

/// A shot at one instant.
///
/// @param frame the screen frame, counted from 0; a frame is posed at its start
/// @param realSeconds real time on the table since the shot's first frame, seconds
/// @param aim the lens point and where it looks
/// @param projection how points are seen, through a tank's wall where there is one
/// @param picture the picture's size and scale
/// @param things the placed things, in the stage's order
/// @param lamps the lamps' bodies, in the stage's order
public record Scene(
        double frame,
        double realSeconds,
        Aim aim,
        Projection projection,
        Picture picture,
        List<Body> things,
        List<Body> lamps) {
    /// Copies the lists.
    public Scene {
        things = List.copyOf(things);
        lamps = List.copyOf(lamps);
    }
}
