package plumeline.mirror;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.mirror.Spans.Span;
import plumeline.ranges.Ranges;

/// The highlights of a light on a body's sides, put together from stripes.
///
/// @param glossy the body as seen
/// @param emitter the light
/// @param rows heights of each piece
record Regions(GlossyBody glossy, Emitter emitter, int rows) {
    /// The last rows lie so little within the ends, share of the height.
    private static final double WITHIN = 1e-9;

    Regions {
        Ranges.check(rows >= 2, "rows", rows, "2 or more");
    }

    /// One piece, and what of it the camera faces at a height.
    private interface Piece {
        List<Track> at(double height);
    }

    /// A stretch at a height.
    private record Row(Track track, Span span) {
        Vec left() {
            return track.place(span.from());
        }

        Vec right() {
            return track.place(span.to());
        }
    }

    List<List<Vec>> list() {
        Body body = glossy.body();
        Vec eye = glossy.aim().eye();
        List<List<Vec>> outlines = new ArrayList<>();
        switch (body.solid()) {
            case Solid.Box box -> {
                for (int i = 0; i < 4; i++) {
                    int side = i;
                    Piece piece = height -> Track.at(body, height, eye).stream()
                            .filter(track -> track.piece() == side)
                            .toList();
                    collect(piece, side, 0, box.heightMetres(), outlines);
                }
            }
            case Solid.Revolved revolved -> {
                for (ConeMirror cone : Track.cones(revolved)) {
                    Piece piece = height -> Track.arcs(body, cone, height, eye);
                    collect(
                            piece,
                            cone.index(),
                            cone.low().heightMetres(),
                            cone.high().heightMetres(),
                            outlines);
                }
            }
        }
        return outlines;
    }

    private void collect(Piece piece, int index, double low, double high, List<List<Vec>> outlines) {
        for (Span lit : Spans.where(height -> !rowsAt(piece, height).isEmpty(), heights(index, low, high))) {
            List<Row> open = List.of();
            List<List<Row>> regions = new ArrayList<>();
            double inside = (lit.to() - lit.from()) * (1 - WITHIN);
            for (int i = 0; i <= rows; i++) {
                List<Row> now = rowsAt(piece, lit.middle() + inside * (0.5 - (double) i / rows));
                add(now, open, regions);
                open = now;
            }
            regions.stream().filter(region -> region.size() > 1).forEach(region -> outlines.add(outline(region)));
        }
    }

    /// Puts rows to the regions that they go on with: those whose last row alone they touch.
    private static void add(List<Row> now, List<Row> open, List<List<Row>> regions) {
        for (Row row : now) {
            List<Row> above =
                    open.stream().filter(one -> one.span.touches(row.span)).toList();
            boolean goesOn = above.size() == 1
                    && now.stream()
                                    .filter(one -> one.span.touches(above.getFirst().span))
                                    .count()
                            == 1;
            List<Row> region = goesOn
                    ? regions.stream()
                            .filter(one -> one.getLast().equals(above.getFirst()))
                            .findFirst()
                            .orElseThrow()
                    : new ArrayList<>();
            if (!goesOn) {
                regions.add(region);
            }
            region.add(row);
        }
    }

    private TreeSet<Double> heights(int index, double low, double high) {
        TreeSet<Double> heights = new TreeSet<>();
        for (int i = 0; i <= rows; i++) {
            heights.add(i == rows ? high : low + (high - low) * i / rows);
        }
        for (Spot spot : glossy.listSpots(emitter.middle())) {
            if (spot.piece() == index) {
                heights.add(Math.clamp(glossy.body().own(spot.place()).z(), low, high));
            }
        }
        return heights;
    }

    private List<Row> rowsAt(Piece piece, double height) {
        List<Row> found = new ArrayList<>();
        for (Track track : piece.at(height)) {
            for (Span span : glossy.spans(track, emitter)) {
                found.add(new Row(track, span));
            }
        }
        return found;
    }

    private static List<Vec> outline(List<Row> region) {
        List<Vec> outline = new ArrayList<>();
        region.forEach(row -> outline.add(row.left()));
        region.reversed().forEach(row -> outline.add(row.right()));
        return outline;
    }
}
