package plumeline.draw;

import java.util.List;
import java.util.Map;
import plumeline.draw.over.DeliveryFrames;
import plumeline.plan.Delivery;
import plumeline.plan.Plan;
import plumeline.sketch.Drawing;
import plumeline.solve.ShotAnswer;

/// The drawings of a solved shot. A shot with passes is drawn as its first one.
public final class Drawings {
    private Drawings() {}

    /// Draws what the camera sees.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @param moment the instant
    /// @return line art with every delivery's frame, of what has its place; where a move's end is still open, as at
    ///     the start
    public static Drawing cameraView(Plan plan, ShotAnswer shot, Moment moment) {
        return CameraView.of(plan, shot, moment);
    }

    /// Says by which line a delivery's frame is told in camera views.
    ///
    /// @param plan the plan
    /// @param delivery one of its deliveries
    /// @return such as `long dashes`
    public static String frameWords(Plan plan, Delivery delivery) {
        return DeliveryFrames.words(plan, delivery);
    }

    /// Draws the set from straight above, to scale.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return the plan from above, with level distances between marks and leeway boxes
    public static Drawing planFromAbove(Plan plan, ShotAnswer shot) {
        return PlanFromAbove.of(plan, shot);
    }

    /// Draws the set at the shot's start from camera right, to scale.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return the side elevation, with heights over the table
    public static Drawing sideElevation(Plan plan, ShotAnswer shot) {
        return SideElevation.of(plan, shot);
    }

    /// Draws a shot's tank at the shot's start from camera right, to scale, with what hangs in it where it is and where
    /// it looks to be.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return one drawing, or none where the shot has no tank
    public static List<Drawing> tankSide(Plan plan, ShotAnswer shot) {
        return TankSide.of(plan, shot);
    }

    /// Draws rulers along the camera's axis: how deep things reach and what is sharp.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return the ruler at the shot's start, and one at its end where that differs; none where the camera's place
    /// is
    ///     still open
    public static List<Drawing> sharpRuler(Plan plan, ShotAnswer shot) {
        return SharpRuler.of(plan, shot);
    }

    /// Draws the labels of placed things unrolled to scale, one of each kind and turn, 6 at most; what is more is said
    /// in the last one.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return the drawings; none where no placed thing has a label
    public static List<Drawing> unrolledLabel(Plan plan, ShotAnswer shot) {
        return unrolledLabel(plan, shot, Map.of());
    }

    /// Draws the labels of placed things unrolled, with bands that show or catch something hatched.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @param bands by the names of placed things
    /// @return the drawings
    public static List<Drawing> unrolledLabel(Plan plan, ShotAnswer shot, Map<String, List<Band>> bands) {
        return UnrolledLabel.of(plan, shot, bands);
    }

    /// Draws where things stand across the picture over the shot.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return one drawing, or none where nothing moves in the picture
    public static List<Drawing> travel(Plan plan, ShotAnswer shot) {
        return TravelAcross.of(plan, shot);
    }

    /// Draws the leeway of tape marks at full size.
    ///
    /// @param plan the shot's plan
    /// @param shot the shot, its marks set
    /// @return one drawing, or none where every tape mark has more room than a box shows
    public static List<Drawing> leewayBoxes(Plan plan, ShotAnswer shot) {
        return LeewayBoxes.of(plan.film().papersOrDefault(), shot);
    }
}
