package plumeline.cut.mask;

import java.nio.charset.StandardCharsets;
import java.util.List;
import plumeline.geom.Point;

/// A mask as a drawing of the clip's size in px: a path a strand, filled where to paint out.
///
/// **Source:** W3C, Scalable Vector Graphics (SVG) 1.1, paths.
final class MaskSvg {
    private static final int PLACES = 3;

    private MaskSvg() {}

    static byte[] of(ClipSize size, List<MaskFrame.Patches> patches) {
        StringBuilder out = new StringBuilder();
        out.append("<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"")
                .append(size.acrossPixels())
                .append("\" height=\"")
                .append(size.downPixels())
                .append("\" viewBox=\"0 0 ")
                .append(size.acrossPixels())
                .append(' ')
                .append(size.downPixels())
                .append("\">\n");
        for (MaskFrame.Patches strand : patches) {
            if (!strand.corners().isEmpty()) {
                path(out, strand);
            }
        }
        return out.append("</svg>\n").toString().getBytes(StandardCharsets.UTF_8);
    }

    private static void path(StringBuilder out, MaskFrame.Patches strand) {
        out.append("<path id=\"").append(strand.strand()).append("\" fill=\"#ffffff\" fill-rule=\"nonzero\" d=\"");
        for (List<Point> corners : strand.corners()) {
            char command = 'M';
            for (Point corner : corners) {
                out.append(command);
                Figures.add(out, corner.x(), PLACES);
                out.append(' ');
                Figures.add(out, corner.y(), PLACES);
                command = 'L';
            }
            out.append('Z');
        }
        out.append("\"/>\n");
    }
}
