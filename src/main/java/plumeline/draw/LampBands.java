package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;

/// Mirror images of lamps on an unrolled mantle on a page: hatched as at the shot's start, each lamp with its own
/// spacing; dashed as at its end, where that differs.
///
/// @param mantle the mantle
/// @param box its rectangle on the page
/// @param images lamp by lamp
record LampBands(Mantle mantle, Box box, List<LabelLamps.Image> images) {
    private static final double[] HATCHES = {6, 10, 14, 18};

    /// From here on a name has a leader, pixels.
    private static final double LED = 30;

    private static final double FARTHEST = 150;

    LampBands {
        images = List.copyOf(images);
    }

    void draw(Page page, Labels labels) {
        for (int i = 0; i < images.size(); i++) {
            LabelLamps.Image image = images.get(i);
            Markup group = page.group("mirrored." + image.lamp());
            double step = HATCHES[i % HATCHES.length];
            for (Unrolled.Patch patch : image.start().listPatches()) {
                List<Spot> ring = ring(patch);
                group.add(
                        Shapes.lines(Pen.HATCH, Hatching.over(List.of(ring), List.of(), box, step, spot -> true)),
                        Shapes.closed(Pen.EDGE, ring));
                keep(ring, labels);
            }
            image.end().stream().flatMap(end -> end.listPatches().stream()).forEach(patch -> {
                List<Spot> ring = ring(patch);
                group.add(Shapes.closed(Pen.HIDDEN, ring));
                keep(ring, labels);
            });
        }
    }

    private static void keep(List<Spot> ring, Labels labels) {
        for (int i = 0; i < ring.size(); i++) {
            labels.keepLine(new Stretch(ring.get(i), ring.get((i + 1) % ring.size())));
        }
    }

    /// Names each on or beside its largest part, with a leader to it.
    ///
    /// @param beside spots beside the mantle for a name, by its text and the height on the page it belongs to
    void letter(Page page, Labels labels, Beside beside, double width) {
        for (LabelLamps.Image image : images) {
            List<Unrolled.Patch> patches = image.start().listPatches();
            boolean isAtEnd = patches.isEmpty() && image.end().isPresent();
            List<Unrolled.Patch> named = isAtEnd ? image.end().get().listPatches() : patches;
            if (named.isEmpty()) {
                continue;
            }
            List<String> words = List.of(Lettering.fitted(image.lamp(), width / 4) + (isAtEnd ? ", end" : ""));
            Spot anchor = middle(named.getFirst());
            List<Spot> spots = new ArrayList<>(List.of(anchor));
            spots.addAll(Labels.around(anchor, words, 8, FARTHEST));
            spots.addAll(beside.spots(words, anchor.y()));
            labels.place(page.id("name.mirrored." + image.lamp()), words, anchor, spots, LED);
        }
    }

    /// Where a name may stand beside the mantle.
    @FunctionalInterface
    interface Beside {
        List<Spot> spots(List<String> words, double level);
    }

    private Spot spot(double acrossMetres, double heightMetres) {
        double pixelsPerMetre = box.width() / mantle.acrossMetres();
        return new Spot(
                box.middle().x() + acrossMetres * pixelsPerMetre,
                box.bottom() - (heightMetres - mantle.lowMetres()) * pixelsPerMetre);
    }

    private List<Spot> ring(Unrolled.Patch patch) {
        List<Spot> ring = new ArrayList<>();
        for (int i = 0; i < patch.spans().size(); i++) {
            ring.add(spot(
                    patch.spans().get(i).fromMetres(), patch.heightsMetres().get(i)));
        }
        for (int i = patch.spans().size() - 1; i >= 0; i--) {
            ring.add(spot(patch.spans().get(i).toMetres(), patch.heightsMetres().get(i)));
        }
        return ring;
    }

    /// The middle of its middle row.
    private Spot middle(Unrolled.Patch patch) {
        int half = patch.spans().size() / 2;
        Unrolled.Span span = patch.spans().get(half);
        return spot(
                (span.fromMetres() + span.toMetres()) / 2, patch.heightsMetres().get(half));
    }
}
