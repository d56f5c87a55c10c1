package plumeline.draw;

import java.util.List;
import plumeline.geom.Vec;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.TankWalls;

/// A tank seen from camera right, cut open: panes at their thickness, water with a few level dashes.
final class TankDrawing {
    private TankDrawing() {}

    static void draw(Page page, PlanScale scale, TankWalls tank) {
        Box outer = box(scale, tank.outside().low(), tank.outside().high());
        Box inner = box(scale, tank.inside().low(), tank.inside().high());
        Vec low = tank.inside().low();
        Vec high = tank.inside().high();
        if (tank.waterLineMetres() > low.z()) {
            Box water = box(scale, low, new Vec(high.x(), high.y(), tank.waterLineMetres()));
            page.group("water")
                    .add(
                            Shapes.water(water),
                            Shapes.line(
                                    Pen.OUTLINE,
                                    new Spot(water.left(), water.top()),
                                    new Spot(water.right(), water.top())));
        }
        Markup glass = page.group("tank");
        for (Box pane : List.of(
                new Box(outer.left(), outer.top(), inner.left(), outer.bottom()),
                new Box(inner.right(), outer.top(), outer.right(), outer.bottom()),
                new Box(inner.left(), inner.bottom(), inner.right(), outer.bottom()))) {
            if (Math.min(pane.width(), pane.height()) > 6) {
                glass.add(Shapes.hatch(pane, 6));
            }
            glass.add(Shapes.box(Pen.EDGE, pane));
        }
    }

    static Box box(PlanScale scale, Vec low, Vec high) {
        Spot near = scale.spot(SideOutline.flat(low));
        Spot far = scale.spot(SideOutline.flat(high));
        return new Box(near.x(), far.y(), far.x(), near.y());
    }
}
