package plumeline.draw;

import java.util.List;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.TankWalls;

/// What a plan from above measures by: zero mark, centreline, tank, distances between marks.
final class PlanGround {
    /// Room of the scale bar and the words beside it, pixels.
    private static final double FOOT = 34;

    private final PlanBoard board;
    private final boolean isZeroNear;

    /// @param isZeroNear whether the zero mark is on the enlarged part, if there is one
    PlanGround(PlanBoard board, boolean isZeroNear) {
        this.board = board;
        this.isZeroNear = isZeroNear;
    }

    void draw() {
        drawDatum();
        board.stage().findTank().ifPresent(this::drawTank);
    }

    private void drawDatum() {
        Spot zero = board.scale().spot(Vec.ZERO);
        if (!board.scale().sheet().grown(-12).holds(zero)) {
            return;
        }
        Markup group = board.page().group("zero");
        Stretch centre = new Stretch(
                new Spot(zero.x(), board.scale().sheet().top() + 4),
                new Spot(zero.x(), board.scale().sheet().bottom() - 4));
        group.add(Shapes.line(Pen.CENTRE, centre));
        Box cross = cross(zero);
        Stretch across = new Stretch(new Spot(cross.left(), zero.y()), new Spot(cross.right(), zero.y()));
        Stretch along = new Stretch(new Spot(zero.x(), cross.top()), new Spot(zero.x(), cross.bottom()));
        group.add(Shapes.line(Pen.OUTLINE, across), Shapes.line(Pen.OUTLINE, along));
        board.labels().keepEdge(across);
        board.labels().keepEdge(along);
        board.labels().keepLine(centre);
        nameZero(across);
        board.lettering()
                .near(
                        "centreline",
                        List.of("centreline"),
                        new Spot(zero.x(), board.scale().sheet().top() + 12),
                        4,
                        60);
    }

    /// The zero mark's cross: its arms reach out from under what stands on it.
    private Box cross(Spot zero) {
        Box cross = Box.round(zero, 22, 22);
        for (int i = 0; i < board.first().things().size(); i++) {
            Box foot = Box.about(
                    board.scale().spots(Footprint.of(board.first().things().get(i))));
            if (board.marks().isPlaced(board.shot().placed().get(i).name()) && foot.holds(zero)) {
                cross = cross.with(foot.grown(11));
            }
        }
        return cross;
    }

    /// The zero mark's name leads to the end of an arm, so that its leader runs over nothing that stands on the mark.
    private void nameZero(Stretch across) {
        List<String> words = List.of("zero mark");
        board.lettering().near("zero", words, across.from(), 5, 24);
    }

    private void drawTank(TankWalls tank) {
        Markup group = board.page().group("tank");
        Box outer = box(tank.outside());
        draw(group, Pen.OUTLINE, outer);
        draw(group, Pen.EDGE, box(tank.inside()));
        if (board.detail() == PlanBoard.Detail.ENLARGED) {
            return;
        }
        Vec front = tank.outside().low();
        Vec size = tank.outside().high().minus(front);
        board.lettering()
                .near(
                        "tank",
                        List.of(
                                "tank " + board.print().lengthNumber(size.x(), Print.Hand.TAPE) + " × "
                                        + board.print().lengthNumber(size.y(), Print.Hand.TAPE),
                                "front glass y " + board.signed(front.y())),
                        new Spot(outer.middle().x(), outer.top()),
                        4,
                        60);
    }

    /// A rectangle, or what of it is on the sheet.
    private void draw(Markup group, Pen pen, Box box) {
        if (board.scale().sheet().holds(box)) {
            group.add(Shapes.box(pen, box));
            box.sides().forEach(board.labels()::keepEdge);
            return;
        }
        Box sheet = board.scale().sheet();
        Box seenFrom = new Box(sheet.left(), sheet.top(), sheet.right(), sheet.bottom() - FOOT);
        for (Stretch side : box.sides()) {
            side.clipped(seenFrom).ifPresent(seen -> {
                group.add(Shapes.line(pen, seen));
                board.labels().keepEdge(seen);
            });
        }
    }

    private Box box(Bounds bounds) {
        Spot low = board.scale().spot(bounds.low());
        Spot high = board.scale().spot(bounds.high());
        return new Box(low.x(), high.y(), high.x(), low.y());
    }

    void drawDistances() {
        List<Distances.Between> all = Distances.of(board.first(), board.shot(), board.marks());
        Markup group = board.page().group("distances");
        for (int i = 0; i < all.size(); i++) {
            Distances.Between between = all.get(i);
            if (!isDrawn(between)) {
                continue;
            }
            Spot from = board.scale().spot(between.from());
            Spot to = board.scale().spot(between.to());
            Stretch line = new Stretch(from, to);
            group.add(Shapes.line(Pen.THIN, line), Shapes.tick(from, to), Shapes.tick(to, from));
            board.labels().keepLine(line);
            String figure = board.print().lengthNumber(between.metres(), Print.Hand.TAPE);
            String below = between.words() + " " + figure;
            board.lettering().beside("distance." + between.id(), figure, below, line);
        }
    }

    /// The whole set shows how far the lens is; what stands near to each other is measured where it is enlarged.
    private boolean isDrawn(Distances.Between between) {
        boolean isFar = between.id().startsWith("from.lens.") || between.id().startsWith("from.zero.") && !isZeroNear;
        return switch (board.detail()) {
            case WHOLE -> true;
            case OVERVIEW -> isFar;
            case ENLARGED -> !isFar;
        };
    }
}
