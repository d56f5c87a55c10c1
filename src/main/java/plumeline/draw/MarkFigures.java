package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.plan.Mark;
import plumeline.plan.Release;
import plumeline.plan.Shot;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.search.Leeway;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.solve.MarkAnswer;

/// Marks of a shot as drawings say them: a figure with its leeway in brackets, and its leeway as a small box.
final class MarkFigures {
    /// A side that is longer on the page goes on: it is drawn open.
    private static final double MOST = 34;

    private static final double LEAST = 2.5;

    private final MarkBook marks;
    private final LeewayText leeway;
    private final Print print;
    private boolean hasLeeway;

    MarkFigures(MarkBook marks, PaperUnit unit) {
        this.marks = marks;
        leeway = new LeewayText(unit);
        print = new Print(unit);
    }

    /// What the boxes of leeway mean, for a row below the drawing; empty where none was drawn.
    String leewayWords() {
        return hasLeeway ? "Box at a mark: its leeway; a dotted side goes on further than is drawn." : "";
    }

    /// Says a length as a tape has it, with a true minus.
    String signed(double metres) {
        return print.lengthNumber(metres, Print.Hand.TAPE).replace('-', '−');
    }

    /// Says a mark's figure: a word, the length, and in brackets how far off it may be.
    String say(String word, double metres, String path) {
        return word + " " + signed(metres)
                + marks.measuredWord(path)
                + marks.find(path)
                        .map(answer -> " (" + leeway.both(answer) + ")")
                        .orElse("");
    }

    /// Finds where a nozzle or hand lets go; empty where a coordinate isn't found yet.
    Optional<Vec> findRelease(Shot shot) {
        return shot.findRelease()
                .flatMap(release -> switch (release) {
                    case Release.OfInk ink -> Optional.of(ink.at());
                    case Release.OfPieces pieces -> Optional.of(pieces.at());
                    case Release.OfThing _ -> Optional.<Mark.Spot>empty();
                })
                .flatMap(spot -> findValue(spot.x())
                        .flatMap(x -> findValue(spot.y())
                                .flatMap(y -> spot.z()
                                        .map(this::findValue)
                                        .orElse(Optional.of(0.0))
                                        .map(z -> new Vec(x, y, z)))));
    }

    private Optional<Double> findValue(Mark mark) {
        return marks.find(mark.path())
                .flatMap(answer -> answer.setting() instanceof MarkAnswer.Setting.At(double si, var _)
                        ? Optional.of(si)
                        : Optional.empty());
    }

    /// Draws the room in which the y and z mark of a place may be off, to scale; no smaller than can be seen. A side
    /// that goes on stays open, a mark that isn't there gives no sides.
    void drawLeeway(Page page, String name, Spot at, double pixelsPerMetre) {
        Optional<MarkAnswer> y = marks.find(name + ".y");
        Optional<MarkAnswer> z = marks.find(name + ".z");
        if (y.isEmpty() && z.isEmpty()) {
            return;
        }
        double left =
                y.map(answer -> pixels(answer.leeway().minus(), pixelsPerMetre)).orElse(LEAST);
        double right =
                y.map(answer -> pixels(answer.leeway().plus(), pixelsPerMetre)).orElse(LEAST);
        double down =
                z.map(answer -> pixels(answer.leeway().minus(), pixelsPerMetre)).orElse(LEAST);
        double up =
                z.map(answer -> pixels(answer.leeway().plus(), pixelsPerMetre)).orElse(LEAST);
        Spot a = at.plus(-Math.abs(left), -Math.abs(up));
        Spot c = at.plus(Math.abs(right), Math.abs(down));
        Spot b = new Spot(c.x(), a.y());
        Spot d = new Spot(a.x(), c.y());
        List<Markup> sides = new ArrayList<>();
        if (y.isPresent() && (left > 0 || right > 0)) {
            sides.add(Shapes.line(pen(left), a, d));
            sides.add(Shapes.line(pen(right), b, c));
        }
        if (z.isPresent() && (up > 0 || down > 0)) {
            sides.add(Shapes.line(pen(up), a, b));
            sides.add(Shapes.line(pen(down), d, c));
        } else if (z.isPresent() && !sides.isEmpty()) {
            sides.add(Shapes.line(Pen.LEEWAY_OPEN, a, b));
            sides.add(Shapes.line(Pen.LEEWAY_OPEN, d, c));
        }
        if (sides.size() == 2 && z.isPresent()) {
            sides.add(Shapes.line(Pen.LEEWAY_OPEN, a, d));
            sides.add(Shapes.line(Pen.LEEWAY_OPEN, b, c));
        }
        if (!sides.isEmpty()) {
            page.group("leeway." + name).add(sides);
            hasLeeway = true;
        }
    }

    private static Pen pen(double side) {
        return side < 0 ? Pen.LEEWAY_OPEN : Pen.LEEWAY;
    }

    /// A side's length on the page; negative where it goes on further than is drawn.
    private static double pixels(Leeway.Side side, double pixelsPerMetre) {
        double length = side.distance() * pixelsPerMetre;
        return length > MOST ? -MOST : Math.max(LEAST, length);
    }
}
