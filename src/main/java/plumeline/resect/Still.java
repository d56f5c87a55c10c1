package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Point;
import plumeline.plan.Delivery;
import plumeline.plan.Shot;
import plumeline.stage.Frame;
import plumeline.stage.Picture;

/// A still of so many pixels that shows the camera's whole picture or a delivery's part of it.
///
/// Pixels are counted from the still's upper left corner, x to the right, y down; the first pixel's middle is at 0.5,
/// 0.5.
///
/// @param acrossPixels pixels across, as the still is looked at
/// @param downPixels pixels down
/// @param shows what it shows: empty for the whole picture, else a delivery's name
/// @param frame that part, in shares of the picture
public record Still(int acrossPixels, int downPixels, String shows, Frame frame) {
    /// A still whose ratio is as near as this share shows what has that ratio.
    private static final double SAME_RATIO = 0.005;

    /// What a still of a size shows.
    public sealed interface Judged {
        /// It shows something of the shot.
        ///
        /// @param still the still
        record Fits(Still still) implements Judged {}

        /// It has no ratio that the shot is seen in.
        ///
        /// @param accepted what would fit, such as `16:9 (the whole picture)`
        record Unfit(List<String> accepted) implements Judged {
            /// Copies the list.
            public Unfit {
                accepted = List.copyOf(accepted);
            }
        }
    }

    /// Judges by its ratio what a still shows: the whole picture where that has the still's ratio to half a percent,
    /// else the first delivery that has.
    ///
    /// @param acrossPixels pixels across, over 0
    /// @param downPixels pixels down, over 0
    /// @param picture the camera's picture
    /// @param shot the shot, which says where crops lie
    /// @param deliveries the film's deliveries
    /// @return what it shows
    public static Judged judge(
            int acrossPixels, int downPixels, Picture picture, Shot shot, List<Delivery> deliveries) {
        double ratio = (double) acrossPixels / downPixels;
        double whole = picture.widthMetres() / picture.heightMetres();
        List<String> accepted = new ArrayList<>();
        accepted.add(words(whole) + " (the whole picture)");
        if (isSame(ratio, whole)) {
            return new Judged.Fits(new Still(acrossPixels, downPixels, "", Frame.WHOLE));
        }
        for (Delivery delivery : deliveries) {
            if (isSame(ratio, delivery.aspect())) {
                return new Judged.Fits(of(acrossPixels, downPixels, picture, shot, delivery));
            }
            accepted.add(words(delivery.aspect()) + " (" + delivery.name() + ")");
        }
        return new Judged.Unfit(accepted);
    }

    /// Judges a still that is said to show a delivery's part.
    ///
    /// @param acrossPixels pixels across, over 0
    /// @param downPixels pixels down, over 0
    /// @param picture the camera's picture
    /// @param shot the shot, which says where the crop lies
    /// @param delivery the delivery
    /// @return what it shows
    public static Judged judge(int acrossPixels, int downPixels, Picture picture, Shot shot, Delivery delivery) {
        return isSame((double) acrossPixels / downPixels, delivery.aspect())
                ? new Judged.Fits(of(acrossPixels, downPixels, picture, shot, delivery))
                : new Judged.Unfit(List.of(words(delivery.aspect()) + " (" + delivery.name() + ")"));
    }

    private static Still of(int across, int down, Picture picture, Shot shot, Delivery delivery) {
        return new Still(
                across, down, delivery.name(), Frame.of(picture, delivery, shot.cropOrDefault(delivery.name())));
    }

    private static boolean isSame(double ratio, double wanted) {
        return Math.abs(ratio / wanted - 1) <= SAME_RATIO;
    }

    /// A ratio in small whole numbers where there are such, else to one.
    private static String words(double ratio) {
        for (int down = 1; down <= 20; down++) {
            double across = ratio * down;
            if (Math.abs(across - Math.rint(across)) < 1e-6 * down) {
                return Math.round(across) + ":" + down;
            }
        }
        return Math.round(ratio * 1000) / 1000.0 + ":1";
    }

    /// Gives where a place of the camera's picture is in the still.
    ///
    /// @param picture the camera's picture
    /// @param place the place, tangents
    /// @return x, y, pixels; may lie beyond its edges
    public Point pixel(Picture picture, Point place) {
        double x = place.x() / picture.widthTangent();
        double y = place.y() / picture.heightTangent();
        return new Point(
                (x - frame.left()) / (frame.right() - frame.left()) * acrossPixels,
                (frame.top() - y) / (frame.top() - frame.bottom()) * downPixels);
    }

    /// Tells whether a pixel is in the still.
    ///
    /// @param pixel x, y, pixels
    /// @return true where it is, the edges among it
    public boolean holds(Point pixel) {
        return pixel.x() >= 0 && pixel.x() <= acrossPixels && pixel.y() >= 0 && pixel.y() <= downPixels;
    }
}
