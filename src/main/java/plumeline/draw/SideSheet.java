package plumeline.draw;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.plan.Shot;
import plumeline.sketch.Labels;
import plumeline.sketch.Page;
import plumeline.sketch.Spot;

/// The sheet of a side elevation under construction and what draws on it.
///
/// @param page groups
/// @param scale from the table to the page
/// @param labels placed labels
/// @param lettering labels in waiting
/// @param figures marks in figures
/// @param heights dimension lines over the table
record SideSheet(
        Page page, PlanScale scale, Labels labels, PlanLettering lettering, MarkFigures figures, SideHeights heights) {
    /// How thick the table top is drawn, pixels.
    static final double TABLE = 9;

    static SideSheet of(Page page, PlanScale scale, MarkFigures figures, Shot shot) {
        Labels labels = new Labels(scale.sheet().grown(-1));
        PlanLettering lettering = new PlanLettering(page, labels, scale.sheet(), shot);
        SideHeights heights = new SideHeights(page, labels, lettering, scale, figures);
        return new SideSheet(page, scale, labels, lettering, figures, heights);
    }

    Spot spot(Vec place) {
        return scale.spot(SideOutline.flat(place));
    }

    List<Spot> spots(Body body) {
        return SideOutline.of(body).stream()
                .flatMap(ring -> ring.stream().map(scale::spot))
                .toList();
    }

    /// Where the table top is on the page.
    double tablePixels() {
        return scale.spot(Vec.ZERO).y();
    }
}
