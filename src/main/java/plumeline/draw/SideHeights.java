package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Vec;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Page;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;

/// Heights over the table top as dimension lines of a side view, each where it stands clear of all else.
final class SideHeights {
    private static final double HALF = 5;

    /// Figures that stand nearer to each other are read as one.
    private static final double APART = 5;

    private final Page page;
    private final Labels labels;
    private final PlanLettering lettering;
    private final PlanScale scale;
    private final MarkFigures figures;
    private final List<Box> standing = new ArrayList<>();

    SideHeights(Page page, Labels labels, PlanLettering lettering, PlanScale scale, MarkFigures figures) {
        this.page = page;
        this.labels = labels;
        this.lettering = lettering;
        this.scale = scale;
        this.figures = figures;
    }

    /// Keeps dimension lines off a thing.
    void keep(Box room) {
        standing.add(room);
    }

    /// Draws how high something is beside it.
    ///
    /// @return whether there was room for the line and for its figure
    boolean drawBeside(String id, String words, Box room, double heightMetres) {
        for (double x : new double[] {room.right() + 9, room.left() - 9, room.right() + 18, room.left() - 18}) {
            Stretch line = line(x, heightMetres);
            Box strip = Box.about(List.of(line.from(), line.to())).grown(HALF);
            Box clear = new Box(
                    strip.left(), strip.top(), strip.right(), line.from().y() - 1);
            if (!isFree(clear)) {
                continue;
            }
            for (Spot middle :
                    List.of(beside(line, heightMetres, x >= room.middle().x() ? 1 : -1), onTop(line))) {
                Box figure = Labels.room(List.of(figures.signed(heightMetres)), middle);
                if (isFree(figure.grown(APART))) {
                    standing.add(clear);
                    standing.add(figure);
                    draw(id, words, line, heightMetres, middle);
                    return true;
                }
            }
        }
        return false;
    }

    /// Draws a height where it must stand, under a lens, unless its figure would be taller.
    void drawAt(String id, String words, double x, double heightMetres) {
        Stretch line = line(x, heightMetres);
        if (Math.abs(line.to().y() - line.from().y()) > Lettering.ROW) {
            draw(id, words, line, heightMetres, beside(line, heightMetres, -1));
        }
    }

    private boolean isFree(Box box) {
        return scale.sheet().holds(box) && standing.stream().noneMatch(box::meets);
    }

    private Stretch line(double x, double heightMetres) {
        return new Stretch(
                new Spot(x, scale.spot(Vec.ZERO).y()),
                new Spot(x, scale.spot(new Vec(0, heightMetres, 0)).y()));
    }

    private Spot beside(Stretch line, double heightMetres, int way) {
        double off = Lettering.width(figures.signed(heightMetres)) / 2 + 5;
        Spot middle = line.from().toward(line.to(), 0.5);
        double lowest = line.from().y() - Lettering.LINE / 2 - 4;
        return new Spot(middle.x() + way * off, heightMetres > 0 ? Math.min(middle.y(), lowest) : middle.y());
    }

    private static Spot onTop(Stretch line) {
        return new Spot(line.from().x(), Math.min(line.from().y(), line.to().y()) - HALF - Lettering.LINE / 2);
    }

    private void draw(String id, String words, Stretch line, double heightMetres, Spot first) {
        page.group("height." + id).add(Shapes.dimension(line));
        labels.keepLine(line);
        String figure = figures.signed(heightMetres);
        lettering.figure("figure." + id, figure, words + " " + figure, line, first);
    }
}
