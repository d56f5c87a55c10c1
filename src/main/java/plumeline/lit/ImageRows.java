package plumeline.lit;

import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import plumeline.geom.Body;
import plumeline.light.Emitter;
import plumeline.stage.Scene;

/// A lamp's mirror image in a thing, row by row.
///
/// @param mirrors the thing
/// @param scene the instant
/// @param emitter what shines
record ImageRows(Mirrors mirrors, Scene scene, Emitter emitter) {
    /// Heights looked at between the lowest and the highest.
    private static final int HEIGHTS = 33;

    /// So closely the height is found at which an image begins or ends, m.
    private static final double CLOSE_METRES = 1e-5;

    /// The rows between two heights, and those right below and above where the number of stretches changes.
    List<Reflections.Row> list(double lowMetres, double highMetres) {
        TreeMap<Double, Reflections.Row> rows = new TreeMap<>();
        for (int i = 0; i < HEIGHTS; i++) {
            double height = lowMetres + (highMetres - lowMetres) * i / (HEIGHTS - 1);
            rows.put(height, row(height));
        }
        for (Reflections.Row below : List.copyOf(rows.values())) {
            Optional.ofNullable(rows.higherEntry(below.heightMetres()))
                    .ifPresent(above -> addChange(rows, below, above.getValue()));
        }
        return List.copyOf(rows.values());
    }

    private void addChange(TreeMap<Double, Reflections.Row> rows, Reflections.Row below, Reflections.Row above) {
        Reflections.Row under = below;
        Reflections.Row over = above;
        if (under.stretches().size() == over.stretches().size()) {
            return;
        }
        while (over.heightMetres() - under.heightMetres() > CLOSE_METRES) {
            Reflections.Row middle = row((under.heightMetres() + over.heightMetres()) / 2);
            if (middle.stretches().size() == under.stretches().size()) {
                under = middle;
            } else {
                over = middle;
            }
        }
        rows.put(under.heightMetres(), under);
        rows.put(over.heightMetres(), over);
    }

    private Reflections.Row row(double height) {
        Body body = mirrors.body(scene);
        return new Reflections.Row(
                height,
                mirrors.seen(scene, emitter).stripes(height, emitter).stream()
                        .map(stripe -> new Reflections.Stretch(
                                body.own(stripe.left().place()),
                                body.own(stripe.right().place())))
                        .toList());
    }
}
