package plumeline.stage;

import java.util.function.DoubleFunction;
import plumeline.geom.Point;
import plumeline.plan.Delivery;
import plumeline.sight.Extent;
import plumeline.timeline.Framing;

/// A delivery's finished picture laid over the camera's: scaled and turned about its crop's middle, then moved.
///
/// A place x of the camera's picture (tangents) comes to `p = scale · R(x − c) / h + place` of the finished one, in
/// heights of that from its middle, with c the crop's middle and h its height as tangents, and R a clockwise turn.
///
/// @param picture the camera's picture
/// @param crop what of it a delivery keeps, plainly framed
/// @param framing how that lies in the finished picture
public record Window(Picture picture, Frame crop, Framing framing) {
    private static final double NEAR = 1 + 1e-9;

    private double cropHeight() {
        return (crop.top() - crop.bottom()) * picture.heightTangent();
    }

    /// The finished picture's width over its height.
    private double aspect() {
        return (crop.right() - crop.left()) * picture.widthTangent() / cropHeight();
    }

    /// The crop's middle, turned with the picture, tangents.
    private Point middle() {
        double x = (crop.left() + crop.right()) / 2 * picture.widthTangent();
        double y = (crop.bottom() + crop.top()) / 2 * picture.heightTangent();
        double cos = Math.cos(framing.turnRadians());
        double sin = Math.sin(framing.turnRadians());
        return new Point(x * cos + y * sin, y * cos - x * sin);
    }

    /// Gives where a place of the camera's picture lies in the finished one.
    ///
    /// @param place a picture point, tangents
    /// @return shares of the finished picture's width and height from its middle, x right, y up
    public Point finished(Point place) {
        double cos = Math.cos(framing.turnRadians());
        double sin = Math.sin(framing.turnRadians());
        double x = place.x() * cos + place.y() * sin - middle().x();
        double y = place.y() * cos - place.x() * sin - middle().y();
        return new Point(
                framing.scale() * x / (aspect() * cropHeight()) + framing.x(),
                framing.scale() * y / cropHeight() + framing.y());
    }

    /// Gives which place of the camera's picture lies at one of the finished picture.
    ///
    /// @param place shares of the finished picture's width and height from its middle, x right, y up
    /// @return a picture point, tangents; past the camera's picture where a border shows
    public Point taken(Point place) {
        double cos = Math.cos(framing.turnRadians());
        double sin = Math.sin(framing.turnRadians());
        double across = (place.x() - framing.x()) * aspect() * cropHeight() / framing.scale() + middle().x();
        double up = (place.y() - framing.y()) * cropHeight() / framing.scale() + middle().y();
        return new Point(across * cos - up * sin, across * sin + up * cos);
    }

    /// Gives how far something is inside each side of what the finished picture shows, clear of its keep-outs.
    ///
    /// @param extentTurned gives the edges of its outline in the camera's picture turned clockwise by an angle,
    /// radians
    /// @param keepOut shares of the finished picture that must stay free
    /// @return left, right, lower, upper: shares of the camera picture's width, width, height, height; negative
    /// outside
    public double[] sides(DoubleFunction<Extent> extentTurned, Delivery.KeepOut keepOut) {
        double width = picture.widthTangent();
        double height = picture.heightTangent();
        Extent plain = extentTurned.apply(0);
        Extent turned = framing.turnRadians() == 0 ? plain : extentTurned.apply(framing.turnRadians());
        Point middle = middle();
        double up = cropHeight() / framing.scale();
        double across = aspect() * up;
        double left = middle.x() + (keepOut.left() - 0.5 - framing.x()) * across;
        double right = middle.x() + (0.5 - keepOut.right() - framing.x()) * across;
        double low = middle.y() + (keepOut.bottom() - 0.5 - framing.y()) * up;
        double high = middle.y() + (0.5 - keepOut.top() - framing.y()) * up;
        return new double[] {
            Math.min((turned.left() - left) / width, plain.left() / width + 0.5),
            Math.min((right - turned.right()) / width, 0.5 - plain.right() / width),
            Math.min((turned.bottom() - low) / height, plain.bottom() / height + 0.5),
            Math.min((high - turned.top()) / height, 0.5 - plain.top() / height)
        };
    }

    /// Tells whether the camera's picture covers the finished one.
    ///
    /// @return false where a border shows
    public boolean isCovered() {
        for (double x : new double[] {-0.5, 0.5}) {
            for (double y : new double[] {-0.5, 0.5}) {
                Point back = taken(new Point(x, y));
                if (Math.abs(back.x()) > picture.widthTangent() / 2 * NEAR
                        || Math.abs(back.y()) > picture.heightTangent() / 2 * NEAR) {
                    return false;
                }
            }
        }
        return true;
    }
}
