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
import plumeline.stage.Picture;

/// A sheet with a picture, upon which line art is drawn. The picture's longer side is always as long, whatever its
/// pixels are, so that lines and letters are as in all drawings.
final class PictureSheet {
    /// The picture's longer side, pixels of the sheet.
    static final double LONGER = 960;

    private static final double EDGE = 2;

    /// The last bits of a ratio don't make a sheet a pixel larger.
    private static final double HAIR = 1e-6;

    private final Page page;
    private final Picture picture;
    private final Box box;
    private final Labels labels;
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

    /// How many pixels of the sheet a tangent takes.
    double pixelsPerTangent() {
        return box.width() / picture.widthTangent();
    }

    /// Names something within the picture, near its anchor.
    ///
    /// @return whether it found room
    boolean name(String id, List<String> lines, Spot anchor, double clear) {
        Spot held = box.grown(-EDGE).nearestTo(anchor);
        return labels.place(page.id(id), lines, held, Labels.around(held, lines, clear, 240), clear + 4)
                .isPresent();
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
                below.addAll(sample.draw(new Spot(4, room.middle().y()), new Spot(60, room.middle().y())));
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
