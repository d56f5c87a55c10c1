package plumeline.render;

import plumeline.stage.Frame;
import plumeline.trace.Eye;

/// What of a camera's picture is drawn, and by how many pixels. Its plate lies about the optical axis, so that it is
/// larger where the window lies aside; what shows there is cut off once it is developed.
///
/// @param frame the part of the camera's picture
/// @param width pixels across it, > 0
/// @param height pixels down, > 0
public record Window(Frame frame, int width, int height) {
    /// Checks the ranges.
    public Window {
        if (width < 1 || height < 1) {
            throw new IllegalArgumentException("a window needs pixels");
        }
    }

    /// Pixels by which its middle lies to the right of the axis, to the nearest half; its edges stay on the grid.
    private int asideTwice() {
        return (int) Math.round((frame.left() + frame.right()) / (frame.right() - frame.left()) * width);
    }

    /// Pixels by which it lies above the axis, twice.
    private int aboveTwice() {
        return (int) Math.round((frame.bottom() + frame.top()) / (frame.top() - frame.bottom()) * height);
    }

    /// Gives how wide its plate is.
    ///
    /// @return pixels
    public int plateWidth() {
        return width + Math.abs(asideTwice());
    }

    /// Gives how high its plate is.
    ///
    /// @return pixels
    public int plateHeight() {
        return height + Math.abs(aboveTwice());
    }

    /// Gives where its first column lies.
    ///
    /// @return pixels from the plate's left
    public int leftPixels() {
        return Math.max(0, asideTwice());
    }

    /// Gives where its first row lies.
    ///
    /// @return pixels from the plate's top
    public int topPixels() {
        return Math.max(0, -aboveTwice());
    }

    /// Gives a camera that sees just the plate.
    ///
    /// @param eye the camera, its tangents those of its whole picture
    /// @return the same, its tangents the plate's
    public Eye of(Eye eye) {
        return new Eye(
                eye.aim(),
                eye.widthTangent() * (frame.right() - frame.left()) * plateWidth() / width,
                eye.heightTangent() * (frame.top() - frame.bottom()) * plateHeight() / height,
                eye.pupilMetres(),
                eye.focusMetres());
    }

    /// Gives where its plate's upper edge lies in the camera's whole picture.
    ///
    /// @return share of the picture's height, from its upper edge down; below 0 above it
    public double topShare() {
        return share(1);
    }

    /// Gives where its plate's lower edge lies in the camera's whole picture.
    ///
    /// @return share of the picture's height, from its upper edge down; over 1 under it
    public double bottomShare() {
        return share(-1);
    }

    private double share(int side) {
        double tall = (frame.top() - frame.bottom()) * plateHeight() / height;
        return (1 - side * tall) / 2;
    }

    /// Gives what of a picture of the plate is in the window.
    ///
    /// @param plate a picture as large as the plate
    /// @return the window's
    public Pixels cut(Pixels plate) {
        if (plate.width() == width && plate.height() == height) {
            return plate;
        }
        int[] packed = new int[width * height];
        for (int y = 0; y < height; y++) {
            System.arraycopy(
                    plate.packed(), (topPixels() + y) * plate.width() + leftPixels(), packed, y * width, width);
        }
        return new Pixels(width, height, packed);
    }
}
