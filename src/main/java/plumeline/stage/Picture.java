package plumeline.stage;

import plumeline.optics.LensModel;
import plumeline.optics.Optics;

/// The camera's picture: sensor as held, lens, and the scale that its focus gives.
///
/// The scale is that of the shot's focus for the whole shot: `share of the width = X · f(1 + m) / width`, X being the
/// tangent in the picture.
///
/// @param lens the lens
/// @param widthMetres width of the used sensor as held, metres
/// @param heightMetres height of it as held, metres
/// @param pixelMetres pitch of the captured pixels, metres
/// @param fNumber f-number set, dimensionless
/// @param scaleMetres focus distance at the shot's start, which gives the scale, metres
/// @param focusMetres focus distance now, along the axis from the lens point, as seen (through a tank's wall:
/// apparent), metres
public record Picture(
        LensModel lens,
        double widthMetres,
        double heightMetres,
        double pixelMetres,
        double fNumber,
        double scaleMetres,
        double focusMetres) {
    /// Gives the magnification at the focus distance of the shot's start.
    ///
    /// @return picture size over object size, dimensionless
    public double magnification() {
        return Optics.magnificationAt(lens, scaleMetres);
    }

    /// Gives the distance from the lens point to the picture.
    ///
    /// @return metres
    public double imageMetres() {
        return lens.focalLengthMetres() * (1 + magnification());
    }

    /// Gives the tangent that spans the whole picture's width.
    ///
    /// @return dimensionless
    public double widthTangent() {
        return widthMetres / imageMetres();
    }

    /// Gives the tangent that spans the whole picture's height.
    ///
    /// @return dimensionless
    public double heightTangent() {
        return heightMetres / imageMetres();
    }
}
