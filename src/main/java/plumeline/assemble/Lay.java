package plumeline.assemble;

import plumeline.geom.Point;
import plumeline.render.Pixels;
import plumeline.stage.Picture;
import plumeline.stage.Window;

/// How a picture lies in a film's: for a place of the film, in pixels from its left and top, the place of the picture.
/// Straight in both: `x = x0 + xAcross · u + xDown · v`, likewise y.
///
/// @param x0 at the film's upper left corner, picture's pixels from its left
/// @param xAcross for each pixel to the right in the film
/// @param xDown for each pixel down
/// @param y0 at the film's upper left corner, picture's pixels from its top
/// @param yAcross for each pixel to the right in the film
/// @param yDown for each pixel down
record Lay(double x0, double xAcross, double xDown, double y0, double yAcross, double yDown) {
    /// What was computed may miss a pixel's middle by so much.
    private static final double NEAR = 1e-7;

    /// Most looks at a pixel each way where a picture is made smaller.
    private static final int MOST_LOOKS = 8;

    /// Lays a camera's picture as a delivery has it.
    static Lay of(Window window, Screen screen, View view) {
        Point corner = at(window, screen, view, 0, 0);
        Point right = at(window, screen, view, 1, 0);
        Point low = at(window, screen, view, 0, 1);
        return new Lay(
                corner.x(),
                right.x() - corner.x(),
                low.x() - corner.x(),
                corner.y(),
                right.y() - corner.y(),
                low.y() - corner.y());
    }

    private static Point at(Window window, Screen screen, View view, int u, int v) {
        Picture picture = window.picture();
        Point taken = window.taken(new Point(
                (u - screen.left()) / (double) screen.across() - 0.5,
                0.5 - (v - screen.top()) / (double) screen.down()));
        return new Point(
                (taken.x() / picture.widthTangent() + 0.5) * view.width(),
                (0.5 - taken.y() / picture.heightTangent()) * view.height());
    }

    /// Lays a picture so that it covers the delivery's, the middle of one on that of the other.
    static Lay covering(Screen screen, int width, int height) {
        double step = Math.min((double) width / screen.across(), (double) height / screen.down());
        return new Lay(
                width / 2.0 - (screen.left() + screen.across() / 2.0) * step,
                step,
                0,
                height / 2.0 - (screen.top() + screen.down() / 2.0) * step,
                0,
                step);
    }

    double x(double u, double v) {
        return x0 + xAcross * u + xDown * v;
    }

    double y(double u, double v) {
        return y0 + yAcross * u + yDown * v;
    }

    /// How many pixels of the picture one of the film's spans, along the longer way.
    double step() {
        return Math.max(Math.hypot(xAcross, yAcross), Math.hypot(xDown, yDown));
    }

    /// Writes a picture into a film's where the delivery's lies. Display values are mixed of the four pixels about a
    /// place; where the picture is made smaller, of several places a pixel. What is past its edges stays.
    ///
    /// @param part the part of the picture that is there
    /// @param left pixels of the whole picture to the left of that part
    /// @param top pixels above it
    /// @param view the whole picture's size
    void write(Pixels part, int left, int top, View view, Screen screen, int[] film) {
        int looks = (int) Math.clamp(Math.ceil(step() - NEAR), 1, MOST_LOOKS);
        Reader reader = new Reader(part, left, top, view);
        for (int v = screen.top(); v < screen.top() + screen.down(); v++) {
            for (int u = screen.left(); u < screen.left() + screen.across(); u++) {
                reader.begin();
                for (int i = 0; i < looks * looks; i++) {
                    double across = u + (i % looks + 0.5) / looks;
                    double down = v + (Math.floorDiv(i, looks) + 0.5) / looks;
                    reader.look(x(across, down), y(across, down));
                }
                film[v * screen.width() + u] = reader.end(looks * looks);
            }
        }
    }

    /// Sums looks at a picture.
    private static final class Reader {
        private final int[] packed;
        private final int width;
        private final int height;
        private final int left;
        private final int top;
        private final View view;
        private double red;
        private double green;
        private double blue;

        Reader(Pixels part, int left, int top, View view) {
            packed = part.packed();
            width = part.width();
            height = part.height();
            this.left = left;
            this.top = top;
            this.view = view;
        }

        void begin() {
            red = 0;
            green = 0;
            blue = 0;
        }

        void look(double x, double y) {
            if (x < -NEAR || y < -NEAR || x > view.width() + NEAR || y > view.height() + NEAR) {
                return;
            }
            double fromLeft = Math.clamp(x - left - 0.5, 0, width - 1.0);
            double fromTop = Math.clamp(y - top - 0.5, 0, height - 1.0);
            int column = (int) (fromLeft + NEAR);
            int row = (int) (fromTop + NEAR);
            double across = Math.max(0, fromLeft - column);
            double down = Math.max(0, fromTop - row);
            int next = Math.min(column + 1, width - 1);
            int below = Math.min(row + 1, height - 1);
            add(packed[row * width + column], (1 - across) * (1 - down));
            add(packed[row * width + next], across * (1 - down));
            add(packed[below * width + column], (1 - across) * down);
            add(packed[below * width + next], across * down);
        }

        private void add(int pixel, double weight) {
            red += weight * (pixel >> 16 & 255);
            green += weight * (pixel >> 8 & 255);
            blue += weight * (pixel & 255);
        }

        int end(int looks) {
            return (int) (red / looks + 0.5) << 16 | (int) (green / looks + 0.5) << 8 | (int) (blue / looks + 0.5);
        }
    }
}
