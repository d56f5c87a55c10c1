package plumeline.draw;

import java.util.List;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;

/// A bar of a round length at a drawing's lower left.
final class ScaleBar {
    private ScaleBar() {}

    /// Draws it and keeps its room.
    static void draw(Page page, Labels labels, PlanScale scale, Print print) {
        double metres = print.unit() == PaperUnit.MILLIMETRES ? 0.05 : 0.0508;
        while (metres * scale.pixelsPerMetre() < 60) {
            metres *= 2;
        }
        double length = metres * scale.pixelsPerMetre();
        double y = scale.sheet().bottom() - 8;
        Box bar = new Box(6, y - 8, 6 + length, y);
        double middle = bar.middle().x();
        page.group("scale")
                .add(
                        Shapes.line(Pen.OUTLINE, new Spot(bar.left(), y), new Spot(bar.right(), y)),
                        Shapes.line(Pen.OUTLINE, new Spot(bar.left(), bar.top()), new Spot(bar.left(), y)),
                        Shapes.line(Pen.EDGE, new Spot(middle, bar.top() + 3), new Spot(middle, y)),
                        Shapes.line(Pen.OUTLINE, new Spot(bar.right(), bar.top()), new Spot(bar.right(), y)));
        labels.keepFree(bar);
        List<String> text = List.of(print.length(metres));
        Spot at = new Spot(bar.right() + 8 + Lettering.width(text) / 2, y - 9);
        labels.place(page.id("name.scale"), text, at, List.of(at), scale.sheet().width());
    }
}
