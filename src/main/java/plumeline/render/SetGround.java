package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.geom.Vec;
import plumeline.mirror.Finish;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.plan.Written;
import plumeline.quantity.Quantity;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.text.Node;

/// What things stand on: the table's top, and a sweep that lies on it and bends up behind.
///
/// The crew's own names have no spaces in them, so that these don't meet any.
///
/// @param topMetres how high what they stand on is drawn, m: a hair lower where clear things or a tank stand on it
/// @param told who hears what was taken for what isn't written
record SetGround(double topMetres, Told told) {
    static final String TABLE = "the table";
    static final String SWEEP = "the sweep";

    /// How much lower what clear things or a tank stand on is drawn, so that no two faces are one; m.
    static final double HAIR_METRES = 2e-5;

    /// A table of which nobody says how large it is, m.
    private static final double TABLE_METRES = 3;

    /// A table under a sweep is so much lower, m.
    private static final double UNDER_METRES = 2e-4;

    private static final double SWEEP_WIDTH_METRES = 3;
    private static final double SWEEP_HEIGHT_METRES = 2;

    /// A sweep's bend where nobody measured it; common practice.
    private static final double SWEEP_RADIUS_METRES = 0.3;

    /// How far to the front of the zero mark a sweep lies, m: to a usual table's edge.
    private static final double SWEEP_FRONT_METRES = 1.5;

    private static final Vec RIGHT = new Vec(1, 0, 0);
    private static final Vec BEHIND = new Vec(0, 1, 0);

    List<Part> parts(Plan plan, Shot shot) {
        List<Part> parts = new ArrayList<>();
        Optional<Written> sweep = shot.written()
                .findNode("sweep")
                .flatMap(node -> node instanceof Node.Mapping keys
                        ? Optional.of(new Written(keys, keys.place()))
                        : Optional.empty());
        sweep.ifPresent(keys -> parts.addAll(sweep(keys)));
        parts.add(table(plan, sweep.isPresent() ? topMetres - UNDER_METRES : topMetres));
        return parts;
    }

    /// How large the table's top is, x and y, m; its middle is the zero mark.
    static double[] tableMetres(Plan plan) {
        List<Quantity> size = plan.kit()
                .table()
                .map(table -> table.written().listQuantities("size"))
                .orElse(List.of());
        return size.size() < 2
                ? new double[] {TABLE_METRES, TABLE_METRES}
                : new double[] {size.get(0).si(), size.get(1).si()};
    }

    private Part table(Plan plan, double heightMetres) {
        Optional<Written> keys = plan.kit().table().map(table -> table.written());
        List<Quantity> size = keys.map(table -> table.listQuantities("size")).orElse(List.of());
        if (size.size() < 2) {
            told.add("The table's size isn't written: drawn 3 m by 3 m.");
        }
        boolean isDescribed = keys.filter(table -> table.has("reflects") || table.has("colour"))
                .isPresent();
        if (!isDescribed) {
            told.add("What the table's top looks like isn't written: drawn grey, throwing back 50 %.");
        }
        Rgb colour = keys.map(table -> Paints.of(table, Paints.GREY)).orElse(Paints.grey(Paints.GREY));
        Finish finish =
                keys.filter(table -> table.has("finish")).map(SetThings::finish).orElse(new Finish.Matte());
        Rgb paint = finish instanceof Finish.Metal ? Paints.grey(0) : colour;
        double[] top = tableMetres(plan);
        return new Part(
                TABLE,
                new Form.Sheet(Vec.UP.times(heightMetres), RIGHT, BEHIND, top[0], top[1]),
                new Coat.Opaque(Paint.even(paint), finish));
    }

    /// Flat on the table to its bend, up behind; its gradient goes along it from the bend's foot to the upper edge.
    private List<Part> sweep(Written keys) {
        double behind = keys.findQuantity("behind").orElseThrow().si();
        double radius = length(keys, "radius", SWEEP_RADIUS_METRES, "0.3 m");
        double width = length(keys, "width", SWEEP_WIDTH_METRES, "3 m");
        double height = Math.max(length(keys, "height", SWEEP_HEIGHT_METRES, "2 m"), radius + HAIR_METRES);
        List<Quantity> gradient = keys.listQuantities("gradient");
        double foot = gradient.isEmpty() ? 1 : gradient.getFirst().si();
        double top = gradient.isEmpty() ? 1 : gradient.getLast().si();
        double bend = radius * Math.PI / 2;
        double between = foot + (top - foot) * bend / (bend + height - radius);
        if (!keys.has("reflects") && !keys.has("colour")) {
            told.add("What the sweep looks like isn't written: drawn white, throwing back 80 %.");
        }
        Rgb colour = Paints.of(keys, Paints.PAPER);
        double from = Math.min(-SWEEP_FRONT_METRES, behind - 2 * radius);
        double to = behind - radius;
        return List.of(
                new Part(
                        SWEEP,
                        new Form.Sheet(new Vec(0, (from + to) / 2, topMetres), RIGHT, BEHIND, width, to - from),
                        coat(colour, foot, foot)),
                new Part(
                        SWEEP,
                        new Form.Bend(
                                new Vec(0, to, topMetres + radius), RIGHT, Vec.UP.times(-1), BEHIND, width, radius),
                        coat(colour, foot, between)),
                new Part(
                        SWEEP,
                        new Form.Sheet(
                                new Vec(0, behind, topMetres + (radius + height) / 2),
                                RIGHT,
                                Vec.UP,
                                width,
                                height - radius),
                        coat(colour, between, top)));
    }

    private double length(Written keys, String key, double usualMetres, String usual) {
        Optional<Double> written = keys.findQuantity(key).map(Quantity::si);
        if (written.isEmpty()) {
            told.add("The sweep's " + key + " isn't written: taken as " + usual + ".");
        }
        return written.orElse(usualMetres);
    }

    private static Coat coat(Rgb colour, double foot, double top) {
        return new Coat.Opaque(
                new Paint(colour, Optional.empty(), Optional.of(new Paint.Fade(foot, top)), Optional.empty()),
                new Finish.Matte());
    }
}
