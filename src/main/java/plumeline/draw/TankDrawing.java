package plumeline.draw;

import java.util.List;
import plumeline.geom.Vec;
import plumeline.ink.Estimate;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.PlumePlace;
import plumeline.stage.TankWalls;

/// A tank seen from camera right, cut open: panes at their thickness, water with a few level dashes, ink coming down.
final class TankDrawing {
    /// How far apart the fronts' bars are, pixels.
    private static final double BARS_APART = 6;

    /// How far before the glass their times stand, pixels.
    private static final double LEADS = 8;

    /// How far apart their times are up and down, pixels.
    private static final double LETTERS_APART = 25;

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

    /// What labels lie on.
    ///
    /// @param labels placed labels
    /// @param lettering labels in waiting
    record Letters(Labels labels, PlanLettering lettering) {}

    /// Where a plume's front is at some times: the front with its width and the way in which it lies four times in
    /// five, the plume's edges dashed; the figures below.
    static void drawPlume(Page page, PlanScale scale, Letters letters, PlumePlace plume, Print print) {
        PlanLettering lettering = letters.lettering();
        List<PlumePlace.Front> fronts = plume.fronts();
        if (fronts.isEmpty()) {
            lettering.note("plume", "Where the ink's front is when isn't known.");
            return;
        }
        Markup group = page.group("plume");
        double start = plume.plume().startMetres();
        double deepest = fronts.getLast().depthMetres().value();
        for (int side = -1; side <= 1; side += 2) {
            group.add(Shapes.line(
                    Pen.THIN_DASHED,
                    spot(scale, plume, start, side * plume.radiusMetres(start)),
                    spot(scale, plume, deepest, side * plume.radiusMetres(deepest))));
        }
        double above = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < fronts.size(); i++) {
            PlumePlace.Front front = fronts.get(i);
            Estimate depth = front.depthMetres();
            double radius = plume.radiusMetres(depth.value());
            Spot right = spot(scale, plume, depth.value(), radius);
            double aside = BARS_APART * (i - (fronts.size() - 1) / 2.0);
            Spot high = spot(scale, plume, depth.low(), 0).plus(aside, 0);
            Spot low = spot(scale, plume, depth.high(), 0).plus(aside, 0);
            group.add(
                    Shapes.line(Pen.OUTLINE, spot(scale, plume, depth.value(), -radius), right),
                    Shapes.line(Pen.EDGE, high, low),
                    Shapes.line(Pen.EDGE, high.plus(-2, 0), high.plus(2, 0)),
                    Shapes.line(Pen.EDGE, low.plus(-2, 0), low.plus(2, 0)));
            letters.labels().keepFree(Box.about(List.of(high.plus(-3, 0), low.plus(3, 0))));
            letters.labels()
                    .keepFree(Box.about(List.of(spot(scale, plume, depth.value(), -radius), right))
                            .grown(3));
            above = name(page, scale, letters, plume, front, above + LETTERS_APART);
        }
        lettering.note("plume", words(fronts, plume, print));
    }

    /// Writes a front's time before the front glass, with a line to the front; no higher on the page than told.
    ///
    /// @return where it stands
    private static double name(
            Page page, PlanScale scale, Letters letters, PlumePlace plume, PlumePlace.Front front, double highest) {
        Spot left = spot(
                scale,
                plume,
                front.depthMetres().value(),
                -plume.radiusMetres(front.depthMetres().value()));
        double glass =
                scale.spot(SideOutline.flat(plume.walls().outside().low())).x();
        Spot end = new Spot(glass - LEADS, Math.max(left.y(), highest));
        Stretch leader = new Stretch(left, end);
        page.group("time." + front.seconds()).add(Shapes.line(Pen.THIN, leader));
        letters.labels().keepLine(leader);
        List<String> text = List.of(Print.number(front.seconds(), 2) + " s");
        Spot at = end.plus(-4 - Lettering.width(text) / 2, 0);
        letters.labels()
                .place(
                        page.id("name.time." + front.seconds()),
                        text,
                        at,
                        List.of(at),
                        scale.sheet().width());
        return end.y();
    }

    private static String words(List<PlumePlace.Front> fronts, PlumePlace plume, Print print) {
        StringBuilder words = new StringBuilder(
                        "Ink's front under the surface, in brackets where it lies four takes in")
                .append(" five (bars): ");
        for (PlumePlace.Front front : fronts) {
            Estimate depth = front.depthMetres();
            words.append(Print.number(front.seconds(), 2))
                    .append(" s ")
                    .append(print.length(depth.value()))
                    .append(" (")
                    .append(print.lengthNumber(depth.low(), Print.Hand.TAPE))
                    .append(" to ")
                    .append(print.lengthNumber(depth.high(), Print.Hand.TAPE))
                    .append("), ");
        }
        PlumePlace.Front last = fronts.getLast();
        return words.append("there ")
                .append(print.length(2 * plume.radiusMetres(last.depthMetres().value())))
                .append(" wide")
                .append(last.isOnFloor() ? ", on the floor." : ".")
                .toString();
    }

    private static Spot spot(PlanScale scale, PlumePlace plume, double depth, double aside) {
        double height = plume.walls().waterLineMetres() - depth;
        return scale.spot(SideOutline.flat(new Vec(0, plume.mouth().y() + aside, height)));
    }

    static Box box(PlanScale scale, Vec low, Vec high) {
        Spot near = scale.spot(SideOutline.flat(low));
        Spot far = scale.spot(SideOutline.flat(high));
        return new Box(near.x(), far.y(), far.x(), near.y());
    }
}
