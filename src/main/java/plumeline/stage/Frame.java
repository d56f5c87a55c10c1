package plumeline.stage;

import plumeline.plan.Delivery;
import plumeline.plan.Shot;

/// A rectangle of the picture, in shares of the picture's width and height from its middle, x right, y up.
///
/// @param left left edge, share of the width
/// @param right right edge, share of the width
/// @param bottom lower edge, share of the height
/// @param top upper edge, share of the height
public record Frame(double left, double right, double bottom, double top) {
    /// The whole picture.
    public static final Frame WHOLE = new Frame(-0.5, 0.5, -0.5, 0.5);

    /// Gives the largest rectangle of a delivery's ratio that the picture holds, placed as the shot's crop says.
    ///
    /// @param picture the camera's picture
    /// @param delivery the delivery
    /// @param crop where the crop's middle lies
    /// @return the delivery's whole frame
    public static Frame of(Picture picture, Delivery delivery, Shot.Crop crop) {
        return of(picture, delivery.aspect(), crop);
    }

    /// Gives the largest rectangle of a ratio that the picture holds.
    ///
    /// @param picture the camera's picture
    /// @param aspect width over height, dimensionless, > 0
    /// @param crop where the rectangle's middle lies
    /// @return the frame
    public static Frame of(Picture picture, double aspect, Shot.Crop crop) {
        double held = picture.widthMetres() / picture.heightMetres();
        double width = Math.min(1, aspect / held);
        double height = Math.min(1, held / aspect);
        return new Frame(crop.x() - width / 2, crop.x() + width / 2, crop.y() - height / 2, crop.y() + height / 2);
    }

    /// Gives what is left of a delivery's frame inside its keep-outs.
    ///
    /// @param keepOut shares of the delivery's own width and height that must stay free
    /// @return the free part
    public Frame within(Delivery.KeepOut keepOut) {
        double width = right - left;
        double height = top - bottom;
        return new Frame(
                left + keepOut.left() * width,
                right - keepOut.right() * width,
                bottom + keepOut.bottom() * height,
                top - keepOut.top() * height);
    }

    /// Gives what of this frame lies in another.
    ///
    /// @param other the other frame
    /// @return what both hold; sides cross where they hold nothing together
    public Frame in(Frame other) {
        return new Frame(
                Math.max(left, other.left),
                Math.min(right, other.right),
                Math.max(bottom, other.bottom),
                Math.min(top, other.top));
    }
}
