package plumeline.stage;

import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.geom.Vec;

/// A shot at one instant.
///
/// @param frame the screen frame, counted from 0; a frame is posed at its start
/// @param realSeconds real time on the table since the shot's earliest instant, its GO, seconds
/// @param aim the lens point and where it looks
/// @param lines how bodies are seen where a tank may stand, and whether that is computed
/// @param projection how points are seen, through the tank's facing wall where there is one
/// @param picture the picture's size and scale
/// @param things the placed things, in the stage's order
/// @param lamps the lamps' bodies, in the stage's order
/// @param beams how each lamp faces and shines, in the same order
/// @param nozzle the mouth that ink comes from, where it does, m
public record Scene(
        double frame,
        double realSeconds,
        Aim aim,
        Sightlines lines,
        Projection projection,
        Picture picture,
        List<Body> things,
        List<Body> lamps,
        List<Beam> beams,
        Optional<Vec> nozzle) {
    /// Copies the lists.
    public Scene {
        things = List.copyOf(things);
        lamps = List.copyOf(lamps);
        beams = List.copyOf(beams);
    }

    /// Gives how one body is seen: straight where a tank isn't in the way, else through its facing wall.
    ///
    /// @param body a body
    /// @return the view of it; see [Sightlines] for where it is computed
    public Projection view(Body body) {
        return lines.at(List.of(body)).projection();
    }

    /// Gives the same view with the picture turned about the optical axis.
    ///
    /// @param body a body
    /// @param turnRadians the turn, clockwise as seen
    /// @return the view of it
    public Projection view(Body body, double turnRadians) {
        if (turnRadians == 0) {
            return view(body);
        }
        Aim turned = new Aim(aim.eye(), aim.turnRadians(), aim.tiltRadians(), aim.rollRadians() - turnRadians);
        Optional<TankWalls> tank =
                lines instanceof Sightlines.WithTank with ? Optional.of(with.walls()) : Optional.empty();
        return TankWalls.lines(tank, turned).at(List.of(body)).projection();
    }
}
