package plumeline.render;

import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import plumeline.geom.Point;
import plumeline.sketch.Box;
import plumeline.sketch.Drawing;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.Picture;

/// A sheet with a picture, upon which line art is drawn. The picture's longer side is always as long, whatever its
/// pixels are, so that lines and letters are as in all drawings.
final class PictureSheet {
    /// The picture's longer side, pixels of the sheet.
    static final double LONGER = 960;

    private static final double EDGE = 2;

    /// Between a name and what it belongs to.
    private static final double CLEAR = 6;

    /// From here on a name has a leader.
    private static final double LED = 14;

    private static final double FARTHEST = 240;

    /// The last bits of a ratio don't make a sheet a pixel larger.
    private static final double HAIR = 1e-6;

    private final Page page;
    private final Picture picture;
    private final Box box;
    private final Labels labels;
    private final List<Name> names = new ArrayList<>();
    private final List<Markup> below = new ArrayList<>();
    private double reach;

    /// @param id the drawing's id
    /// @param title what it shows, in words
    /// @param picture the camera's picture
    PictureSheet(String id, String title, Picture picture) {
        page = new Page(id, title);
        this.picture = picture;
        double longer = Math.max(picture.widthMetres(), picture.heightMetres());
        box = new Box(0, 0, LONGER * picture.widthMetres() / longer, LONGER * picture.heightMetres() / longer);
        labels = new Labels(box.grown(-EDGE));
        reach = box.bottom();
    }

    Page page() {
        return page;
    }

    Box box() {
        return box;
    }

    Labels labels() {
        return labels;
    }

    /// Where a place of the picture's plane lies on the sheet.
    ///
    /// @param point tangents from the picture's middle
    Spot spot(Point point) {
        return box.middle()
                .plus(
                        point.x() / picture.widthTangent() * box.width(),
                        -point.y() / picture.heightTangent() * box.height());
    }

    /// Something to be named within the picture, once all lines are drawn.
    private record Name(String id, List<String> lines, Spot anchor, List<Spot> candidates) {}

    /// Names something within the picture, anywhere near its anchor, with a leader where it comes to lie farther off.
    void name(String id, List<String> lines, Spot anchor, double clear) {
        Spot held = box.grown(-EDGE).nearestTo(anchor);
        names.add(new Name(id, lines, held, Labels.around(held, lines, clear, FARTHEST)));
    }

    /// Names something within the picture, rather below its anchor than beside it.
    void nameBelow(String id, List<String> lines, Spot anchor) {
        Spot held = box.grown(-EDGE).nearestTo(anchor);
        double half = lines.size() * Lettering.LINE / 2;
        List<Spot> candidates = new ArrayList<>();
        for (double down = half + CLEAR; down < FARTHEST; down += CLEAR) {
            for (double aside : new double[] {0, 30, -30, 60, -60, 90, -90}) {
                candidates.add(held.plus(aside, down));
            }
        }
        candidates.addAll(Labels.around(held, lines, CLEAR, FARTHEST));
        names.add(new Name(id, lines, held, candidates));
    }

    /// Places what is to be named, in the order in which that was asked for.
    ///
    /// @return what found no room
    List<String> placeNames() {
        List<String> unplaced = new ArrayList<>();
        for (Name name : names) {
            if (labels.place(page.id(name.id()), name.lines(), name.anchor(), name.candidates(), LED)
                    .isEmpty()) {
                unplaced.add(name.lines().getFirst());
            }
        }
        names.clear();
        return unplaced;
    }

    /// Keeps names off a run of lines where they find room elsewhere.
    void keepOff(List<Spot> run) {
        for (int i = 1; i < run.size(); i++) {
            labels.keepLine(new Stretch(run.get(i - 1), run.get(i)));
        }
    }

    /// Writes a row below the picture.
    ///
    /// @param sample drawn at its left, within 60 pixels; how far down the middle of the row is, is told
    void row(Sample sample, String text) {
        double left = 70;
        for (String line : Lettering.wrapped(text, box.width() - left - EDGE)) {
            Box room = new Box(left, reach + EDGE, box.right(), reach + EDGE + Lettering.LINE);
            below.add(Lettering.text(List.of(line), room));
            if (line.equals(Lettering.wrapped(text, box.width() - left - EDGE).getFirst())) {
                below.addAll(sample.draw(
                        new Spot(4, room.middle().y()),
                        new Spot(60, room.middle().y())));
            }
            reach += Lettering.LINE;
        }
    }

    /// A sample of a line.
    interface Sample {
        List<Markup> draw(Spot from, Spot to);
    }

    /// Closes the sheet.
    ///
    /// @param png the picture, as a PNG file's bytes
    Drawing finish(byte[] png) {
        page.letter(labels.draw());
        page.letter(below);
        Markup image = Markup.of("image")
                .with("x", box.left())
                .with("y", box.top())
                .with("width", box.width())
                .with("height", box.height())
                .with("preserveAspectRatio", "none")
                .with("href", "data:image/png;base64," + Base64.getEncoder().encodeToString(png));
        double down = reach > box.bottom() ? reach + EDGE : reach;
        return page.finishUpon(image, box.right() - HAIR, down - HAIR);
    }
}
