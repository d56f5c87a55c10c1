package plumeline.draw;

import java.util.List;
import plumeline.geom.Vec;
import plumeline.sketch.Box;
import plumeline.sketch.Spot;

/// From the table to the page, seen from above: x to the right, y (away from the camera) up the page.
///
/// @param sheet the part of the page that shows the table
/// @param left table x at its left edge, metres
/// @param far table y at its upper edge, metres
/// @param pixelsPerMetre the scale
record PlanScale(Box sheet, double left, double far, double pixelsPerMetre) {
    /// Fits places onto a sheet of a width, as tall as needed and no taller than a limit, with a margin for labels.
    static PlanScale fitting(List<Vec> places, double width, double tallest, double margin) {
        double minX = places.stream().mapToDouble(Vec::x).min().orElse(-0.1);
        double maxX = places.stream().mapToDouble(Vec::x).max().orElse(0.1);
        double minY = places.stream().mapToDouble(Vec::y).min().orElse(-0.1);
        double maxY = places.stream().mapToDouble(Vec::y).max().orElse(0.1);
        double across = Math.max(maxX - minX, 0.05);
        double down = Math.max(maxY - minY, 0.05);
        double scale = Math.min((width - 2 * margin) / across, (tallest - 2 * margin) / down);
        double height = Math.max(down * scale + 2 * margin, 300);
        double left = (minX + maxX) / 2 - width / 2 / scale;
        double far = (minY + maxY) / 2 + height / 2 / scale;
        return new PlanScale(new Box(0, 0, width, height), left, far, scale);
    }

    /// Fits places onto a sheet of a width with a margin to each side; what is left over of the least height goes
    /// above.
    ///
    /// @param margins free room for labels round the places, pixels
    static PlanScale within(List<Vec> places, double width, double tallest, double least, Box margins) {
        Box all = Box.about(
                places.stream().map(place -> new Spot(place.x(), place.y())).toList());
        double across = Math.max(all.width(), 0.05);
        double up = Math.max(all.height(), 0.05);
        double scale = Math.min(
                (width - margins.left() - margins.right()) / across, (tallest - margins.top() - margins.bottom()) / up);
        double height = Math.max(up * scale + margins.top() + margins.bottom(), least);
        double spare = (width - margins.left() - margins.right() - across * scale) / 2;
        double left = all.left() - (margins.left() + spare) / scale;
        double far = all.top() + (height - margins.bottom()) / scale;
        return new PlanScale(new Box(0, 0, width, height), left, far, scale);
    }

    /// The same sheet further down the page.
    PlanScale lowered(double pixels) {
        Box moved = new Box(sheet.left(), sheet.top() + pixels, sheet.right(), sheet.bottom() + pixels);
        return new PlanScale(moved, left, far, pixelsPerMetre);
    }

    Spot spot(Vec place) {
        return new Spot(
                sheet.left() + (place.x() - left) * pixelsPerMetre, sheet.top() + (far - place.y()) * pixelsPerMetre);
    }

    List<Spot> spots(List<Vec> places) {
        return places.stream().map(this::spot).toList();
    }
}
