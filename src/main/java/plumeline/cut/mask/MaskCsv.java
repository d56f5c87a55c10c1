package plumeline.cut.mask;

import java.util.Locale;
import java.util.Optional;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.stage.Sightlines;

/// The lines and rigs of a pass as comma-separated values: a row a straight part of each in each frame.
///
/// Columns: shot, pass, kind (`source`: a captured frame; `screen`: a screen frame), delivery (empty for the film),
/// frame (captured frame from GO, or screen frame, from 0), captured (the captured frame that is shown), seconds (real,
/// from GO, as its exposure begins), file (number of its mask's file); line, stretch, seen (`air`, `pane`, `water`,
/// `mirrored`, `unknown`); x1, y1 and x2, y2: its ends as the exposure begins, px from the upper left corner of the
/// picture, x right, y down, the first pixel's middle at 0.5; x1_close … the same places of the line as the exposure
/// ends, empty where not seen so then; half1, half2: how far the mask reaches to each side there, the sum of the next
/// columns, the way of its blur not counted: width (half the line's own), edge, swing, sway, px; smear1, smear2: how
/// far each end goes while the shutter is open, px; slip1, slip2: how far each goes in half a captured frame, by which
/// camera and moves may be apart where they don't start together, px; X1 … Z2 its ends on the table as the exposure
/// begins, mm; placing1, placing2: how far the line may lie beside the plan there by its thing's placing error, px,
/// which the mask doesn't hold; why: what is in the way of a stretch that isn't computed.
///
/// **Source:** RFC 4180, section 2.
final class MaskCsv {
    static final String HEAD = "shot,pass,kind,delivery,frame,captured,seconds,file,line,stretch,seen,x1,y1,x2,y2,"
            + "x1_close,y1_close,x2_close,y2_close,half1,half2,width1,width2,edge,swing1,swing2,sway1,sway2,smear1,"
            + "smear2,slip1,slip2,X1,Y1,Z1,X2,Y2,Z2,placing1,placing2,why\r\n";

    private static final double MILLIMETRES = 1000;
    private static final int PIXEL_PLACES = 4;
    private static final int MILLIMETRE_PLACES = 4;
    private static final int TIME_PLACES = 8;

    private final StringBuilder out = new StringBuilder(HEAD);
    private final Masked masked;

    MaskCsv(Masked masked) {
        this.masked = masked;
    }

    /// What a row is of.
    ///
    /// @param kind `source` or `screen`
    /// @param delivery the delivery whose cut it is in; empty for the film
    /// @param frame its number
    /// @param captured the captured frame
    /// @param file its file's number
    record Row(String kind, String delivery, long frame, long captured, long file) {}

    void add(Row row, MaskFrame frame) {
        for (MaskFrame.Part part : frame.parts()) {
            head(row);
            out.append(part.strand()).append(',').append(part.stretch()).append(',');
            out.append(part.way().name().toLowerCase(Locale.ROOT)).append(',');
            point(part.from().opens());
            point(part.to().opens());
            closes(part.from().closes());
            closes(part.to().closes());
            margins(part.from().margins(), part.to().margins());
            smear(part.from());
            smear(part.to());
            figure(part.from().slipPixels());
            figure(part.to().slipPixels());
            place(part.from().place());
            place(part.to().place());
            figure(part.from().margins().placingPixels());
            figure(part.to().margins().placingPixels());
            out.append("\r\n");
        }
        for (MaskFrame.Gap gap : frame.gaps()) {
            head(row);
            out.append(gap.strand()).append(",,unknown,").append(",".repeat(21));
            place(gap.from());
            place(gap.to());
            out.append(",,").append(why(gap.trouble())).append("\r\n");
        }
    }

    String text() {
        return out.toString();
    }

    private void head(Row row) {
        out.append(masked.shot())
                .append(',')
                .append(masked.pass())
                .append(',')
                .append(row.kind())
                .append(',');
        out.append(row.delivery())
                .append(',')
                .append(row.frame())
                .append(',')
                .append(row.captured())
                .append(',');
        Figures.add(out, masked.shutter().opensSeconds(row.captured()), TIME_PLACES);
        out.append(',').append(row.file()).append(',');
    }

    private void point(Point point) {
        figure(point.x());
        figure(point.y());
    }

    private void figure(double pixels) {
        Figures.add(out, pixels, PIXEL_PLACES);
        out.append(',');
    }

    private void closes(Optional<Point> point) {
        if (point.isPresent()) {
            point(point.get());
        } else {
            out.append(",,");
        }
    }

    private void margins(Margins one, Margins other) {
        figure(one.sumPixels());
        figure(other.sumPixels());
        figure(one.widthPixels());
        figure(other.widthPixels());
        figure(one.edgePixels());
        figure(one.swingPixels());
        figure(other.swingPixels());
        figure(one.swayPixels());
        figure(other.swayPixels());
    }

    private void smear(MaskFrame.End end) {
        end.smearPixels().ifPresent(pixels -> Figures.add(out, pixels, PIXEL_PLACES));
        out.append(',');
    }

    private void place(Vec place) {
        for (double metres : new double[] {place.x(), place.y(), place.z()}) {
            Figures.add(out, metres * MILLIMETRES, MILLIMETRE_PLACES);
            out.append(',');
        }
    }

    static String why(Sightlines.Trouble trouble) {
        return switch (trouble) {
            case NONE -> "";
            case SURFACE -> "seen through the water's surface";
            case WATER_LINE -> "cut by the water line";
            case OTHER_WALL -> "seen over the rim or through another wall";
        };
    }
}
