package plumeline.render;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.sketch.Spot;

/// Lines along which a field of numbers, one a pixel, passes a level; straight between the middles of pixels.
///
/// **Source:** marching squares: common practice. Where a square is ambiguous the mean of its corners decides.
final class Contours {
    private final int width;
    private final int height;
    private final double[] field;

    /// @param width numbers across, > 0
    /// @param height numbers down, > 0
    /// @param field row by row from the top
    Contours(int width, int height, double[] field) {
        this.width = width;
        this.height = height;
        this.field = field;
    }

    int width() {
        return width;
    }

    int height() {
        return height;
    }

    double[] field() {
        return field;
    }

    /// A line; where it is closed its last place is its first.
    record Line(List<Spot> spots) {
        boolean isClosed() {
            return spots.getFirst().equals(spots.getLast());
        }

        double lengthPixels() {
            double length = 0;
            for (int i = 1; i < spots.size(); i++) {
                length += spots.get(i).distance(spots.get(i - 1));
            }
            return length;
        }
    }

    /// A side of a square: from the pixel to its right one, or to the one below.
    private record Side(int x, int y, boolean isAcross) {}

    private record Piece(Side from, Side to) {}

    /// The same field with each number the mean of it and those about it, 1 2 1 across and down.
    Contours smoothed() {
        double[] across = new double[field.length];
        double[] down = new double[field.length];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                across[y * width + x] = (field[y * width + Math.max(0, x - 1)]
                                + 2 * field[y * width + x]
                                + field[y * width + Math.min(width - 1, x + 1)])
                        / 4;
            }
        }
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                down[y * width + x] = (across[Math.max(0, y - 1) * width + x]
                                + 2 * across[y * width + x]
                                + across[Math.min(height - 1, y + 1) * width + x])
                        / 4;
            }
        }
        return new Contours(width, height, down);
    }

    /// Finds the lines of a level, in pixels from the picture's upper left corner: a pixel's middle is at its half.
    List<Line> at(double level) {
        Map<Side, List<Piece>> ends = new HashMap<>();
        List<Piece> pieces = new ArrayList<>();
        for (int y = 0; y + 1 < height; y++) {
            for (int x = 0; x + 1 < width; x++) {
                for (Piece piece : pieces(x, y, level)) {
                    pieces.add(piece);
                    ends.computeIfAbsent(piece.from(), side -> new ArrayList<>(2))
                            .add(piece);
                    ends.computeIfAbsent(piece.to(), side -> new ArrayList<>(2)).add(piece);
                }
            }
        }
        List<Line> lines = new ArrayList<>();
        Map<Piece, Boolean> used = new HashMap<>();
        // Open lines first, each from one of its two ends.
        for (Piece piece : pieces) {
            if (count(ends, piece.from()) == 1) {
                follow(piece, piece.from(), ends, used, level, lines);
            } else if (count(ends, piece.to()) == 1) {
                follow(piece, piece.to(), ends, used, level, lines);
            }
        }
        pieces.forEach(piece -> follow(piece, piece.from(), ends, used, level, lines));
        return lines;
    }

    private static int count(Map<Side, List<Piece>> ends, Side side) {
        return ends.getOrDefault(side, List.of()).size();
    }

    private void follow(
            Piece first,
            Side start,
            Map<Side, List<Piece>> ends,
            Map<Piece, Boolean> used,
            double level,
            List<Line> lines) {
        if (used.containsKey(first)) {
            return;
        }
        List<Spot> spots = new ArrayList<>(List.of(place(start, level)));
        List<Piece> next = List.of(first);
        Side at = start;
        while (!next.isEmpty()) {
            Piece piece = next.getFirst();
            used.put(piece, true);
            at = piece.from().equals(at) ? piece.to() : piece.from();
            spots.add(place(at, level));
            next = ends.getOrDefault(at, List.of()).stream()
                    .filter(other -> !used.containsKey(other))
                    .toList();
        }
        lines.add(new Line(spots));
    }

    private double value(int x, int y) {
        return field[y * width + x];
    }

    /// Where the level lies on a side.
    private Spot place(Side side, double level) {
        double one = value(side.x(), side.y());
        double other = side.isAcross() ? value(side.x() + 1, side.y()) : value(side.x(), side.y() + 1);
        double share = Math.clamp((level - one) / (other - one), 0, 1);
        return new Spot(side.x() + 0.5 + (side.isAcross() ? share : 0), side.y() + 0.5 + (side.isAcross() ? 0 : share));
    }

    private List<Piece> pieces(int x, int y, double level) {
        boolean isA = value(x, y) >= level;
        boolean isB = value(x + 1, y) >= level;
        boolean isC = value(x + 1, y + 1) >= level;
        boolean isD = value(x, y + 1) >= level;
        List<Side> sides = new ArrayList<>(4);
        if (isA != isB) {
            sides.add(new Side(x, y, true));
        }
        if (isB != isC) {
            sides.add(new Side(x + 1, y, false));
        }
        if (isC != isD) {
            sides.add(new Side(x, y + 1, true));
        }
        if (isD != isA) {
            sides.add(new Side(x, y, false));
        }
        if (sides.size() == 2) {
            return List.of(new Piece(sides.get(0), sides.get(1)));
        }
        if (sides.isEmpty()) {
            return List.of();
        }
        double mean = (value(x, y) + value(x + 1, y) + value(x + 1, y + 1) + value(x, y + 1)) / 4;
        // Where the middle is as the first corner, the second and the fourth are cut off.
        return mean >= level == isA
                ? List.of(new Piece(sides.get(0), sides.get(1)), new Piece(sides.get(2), sides.get(3)))
                : List.of(new Piece(sides.get(3), sides.get(0)), new Piece(sides.get(1), sides.get(2)));
    }
}
