package plumeline.sketch;

import java.util.List;

/// Small builders of shapes.
public final class Shapes {
    private Shapes() {}

    /// Draws a straight line.
    ///
    /// @param pen how
    /// @param line from where to where
    /// @return the shape
    public static Markup line(Pen pen, Stretch line) {
        return pen.on(Markup.of("line")
                .with("x1", line.from().x())
                .with("y1", line.from().y())
                .with("x2", line.to().x())
                .with("y2", line.to().y()));
    }

    /// Draws a straight line.
    ///
    /// @param pen how
    /// @param from one end
    /// @param to the other
    /// @return the shape
    public static Markup line(Pen pen, Spot from, Spot to) {
        return line(pen, new Stretch(from, to));
    }

    /// Draws a rectangle.
    ///
    /// @param pen how
    /// @param box the rectangle
    /// @return the shape
    public static Markup box(Pen pen, Box box) {
        return pen.on(Markup.of("rect")
                .with("x", box.left())
                .with("y", box.top())
                .with("width", box.width())
                .with("height", box.height()));
    }

    /// Draws an open run of lines.
    ///
    /// @param pen how
    /// @param spots its corners, in order
    /// @return the shape
    public static Markup run(Pen pen, List<Spot> spots) {
        return pen.on(Markup.of("path").with("d", way(spots).toString()))
                .with("stroke-linejoin", "round")
                .with("stroke-linecap", "round");
    }

    /// Draws a closed outline.
    ///
    /// @param pen how
    /// @param spots its corners, in order
    /// @return the shape
    public static Markup closed(Pen pen, List<Spot> spots) {
        return pen.on(Markup.of("path").with("d", way(spots).append('Z').toString()))
                .with("stroke-linejoin", "round");
    }

    private static StringBuilder way(List<Spot> spots) {
        StringBuilder way = new StringBuilder();
        for (int i = 0; i < spots.size(); i++) {
            way.append(i == 0 ? 'M' : 'L')
                    .append(Markup.number(spots.get(i).x()))
                    .append(' ')
                    .append(Markup.number(spots.get(i).y()));
        }
        return way;
    }

    /// Draws a filled dot.
    ///
    /// @param spot its middle
    /// @param radius pixels
    /// @return the shape
    public static Markup dot(Spot spot, double radius) {
        return Markup.of("circle")
                .with("cx", spot.x())
                .with("cy", spot.y())
                .with("r", radius)
                .with("fill", "#000");
    }

    /// Draws a short stroke across the end of a dimension line.
    ///
    /// @param at that end
    /// @param other the other end
    /// @return the shape
    public static Markup tick(Spot at, Spot other) {
        double length = Math.max(at.distance(other), 1e-9);
        double ux = (other.x() - at.x()) / length;
        double uy = (other.y() - at.y()) / length;
        double a = 4.5;
        return line(Pen.EDGE, at.plus((ux - uy) * a, (uy + ux) * a), at.plus((uy - ux) * a, (-uy - ux) * a));
    }

    /// Draws an arrow head at the second spot.
    ///
    /// @param from whence it comes
    /// @param to its point
    /// @return the shape
    public static Markup arrow(Spot from, Spot to) {
        double length = Math.max(from.distance(to), 1e-9);
        double ux = (to.x() - from.x()) / length;
        double uy = (to.y() - from.y()) / length;
        return run(
                Pen.OUTLINE,
                List.of(to.plus(-9 * ux - 5 * uy, -9 * uy + 5 * ux), to, to.plus(-9 * ux + 5 * uy, -9 * uy - 5 * ux)));
    }

    /// Draws a few level dashes across a rectangle: water.
    ///
    /// @param box the rectangle
    /// @return the shape
    public static Markup water(Box box) {
        StringBuilder way = new StringBuilder();
        double row = 0;
        for (double y = box.top() + 15; y < box.bottom() - 4; y += 26) {
            for (double x = box.left() + 6 + 30 * (row % 2); x + 16 < box.right(); x += 60) {
                way.append('M')
                        .append(Markup.number(x))
                        .append(' ')
                        .append(Markup.number(y))
                        .append('h')
                        .append(16);
            }
            row++;
        }
        return Markup.of("path")
                .with("d", way.isEmpty() ? "M0 0" : way.toString())
                .with("fill", "none")
                .with("stroke", "#000")
                .with("stroke-width", 0.4);
    }

    /// Draws a dimension line with a stroke at each end.
    ///
    /// @param line from where to where
    /// @return the shapes
    public static List<Markup> dimension(Stretch line) {
        return List.of(line(Pen.THIN, line), tick(line.from(), line.to()), tick(line.to(), line.from()));
    }

    /// Draws many lines as one shape.
    ///
    /// @param pen how
    /// @param lines from where to where each
    /// @return the shape
    public static Markup lines(Pen pen, List<Stretch> lines) {
        StringBuilder way = new StringBuilder();
        lines.forEach(line -> way.append(way(List.of(line.from(), line.to()))));
        return pen.on(Markup.of("path").with("d", way.isEmpty() ? "M0 0" : way.toString()));
    }

    /// Draws slanting lines across a rectangle.
    ///
    /// @param box the rectangle
    /// @param step from one line to the next along the edge, pixels
    /// @return the shape
    public static Markup hatch(Box box, double step) {
        StringBuilder way = new StringBuilder();
        for (double c = Math.ceil((box.left() + box.top()) / step) * step; c < box.right() + box.bottom(); c += step) {
            double x1 = Math.max(box.left(), c - box.bottom());
            double x2 = Math.min(box.right(), c - box.top());
            if (x2 > x1) {
                way.append('M')
                        .append(Markup.number(x1))
                        .append(' ')
                        .append(Markup.number(c - x1))
                        .append('L')
                        .append(Markup.number(x2))
                        .append(' ')
                        .append(Markup.number(c - x2));
            }
        }
        return Markup.of("path")
                .with("d", way.isEmpty() ? "M0 0" : way.toString())
                .with("fill", "none")
                .with("stroke", "#000")
                .with("stroke-width", 0.4);
    }
}
