package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.geom.Vec;
import plumeline.lit.Reflections;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Outlines of lamps as they are mirrored in things, as wants on highlights have them.
record Highlights(Stage stage, Scene scene, PictureSheet sheet) {
    /// Rows at the very ends of a piece belong to the next one, share of the height.
    private static final double INSET = 1e-4;

    /// One connected part: at each height, from below, its left and its right end on the sheet.
    record Part(List<Spot> left, List<Spot> right) {
        private boolean touches(Spot from, Spot to) {
            return left.getLast().x() <= Math.max(from.x(), to.x())
                    && Math.min(from.x(), to.x()) <= right.getLast().x();
        }

        private void add(Spot from, Spot to) {
            boolean isOrdered = from.x() <= to.x();
            left.add(isOrdered ? from : to);
            right.add(isOrdered ? to : from);
        }

        /// Its outline: up its left, down its right.
        List<Spot> ring() {
            List<Spot> ring = new ArrayList<>(left);
            ring.addAll(right.reversed());
            return ring;
        }

        private Spot middle() {
            int half = left.size() / 2;
            return left.get(half).toward(right.get(half), 0.5);
        }
    }

    /// Draws what is seen of each lamp in each thing.
    ///
    /// @return what isn't computed, or was taken for granted, sentences
    List<String> draw() {
        List<String> notes = new ArrayList<>();
        for (int thing = 0; thing < scene.things().size(); thing++) {
            String name = stage.shot().placed().get(thing).name();
            double height = scene.things().get(thing).solid().heightMetres();
            switch (Reflections.of(stage, scene, thing, INSET * height, (1 - INSET) * height)) {
                case Reflections.Matte() -> {}
                case Reflections.Unknown(String reason) -> notes.add(reason);
                case Reflections.Seen seen -> {
                    for (int lamp = 0; lamp < seen.lamps().size(); lamp++) {
                        draw(name, thing, lamp, seen.lamps().get(lamp));
                    }
                    if (!seen.assumed().isEmpty() && !seen.lamps().isEmpty()) {
                        notes.add(name + ": " + seen.assumed());
                    }
                }
            }
        }
        return notes;
    }

    private void draw(String name, int thing, int lamp, List<Reflections.Row> rows) {
        List<Part> parts = parts(thing, rows);
        if (parts.isEmpty()) {
            return;
        }
        String light = stage.shot().lights().get(lamp).name();
        String id = "highlight." + name + "." + light;
        Markup group = sheet.page().group(id);
        for (Part part : parts) {
            group.add(Shapes.closed(Pen.EDGE, part.ring()));
            sheet.keepOff(part.ring());
        }
        Part largest = parts.stream()
                .max((one, other) ->
                        Integer.compare(one.left().size(), other.left().size()))
                .orElseThrow();
        if (sheet.box().holds(largest.middle())) {
            sheet.name("name." + id, List.of(light + " in " + name), largest.middle(), 16);
        }
    }

    /// The connected parts of what is seen of a lamp.
    List<Part> parts(int thing, List<Reflections.Row> rows) {
        Body body = scene.things().get(thing);
        Projection view = scene.view(body);
        List<Part> parts = new ArrayList<>();
        List<Part> open = List.of();
        for (Reflections.Row row : rows) {
            List<Part> next = new ArrayList<>();
            for (Reflections.Stretch stretch : row.stretches()) {
                Spot from = spot(view, body.place(stretch.from()));
                Spot to = spot(view, body.place(stretch.to()));
                Part part = goesOn(open, next, from, to).orElseGet(() -> {
                    Part begun = new Part(new ArrayList<>(), new ArrayList<>());
                    parts.add(begun);
                    return begun;
                });
                part.add(from, to);
                next.add(part);
            }
            open = next;
        }
        return parts.stream().filter(part -> part.left().size() > 1).toList();
    }

    /// The part of the row below that a stretch goes on with, where it is one that no other goes on with.
    private static Optional<Part> goesOn(List<Part> open, List<Part> taken, Spot from, Spot to) {
        List<Part> below = open.stream().filter(part -> part.touches(from, to)).toList();
        return below.size() == 1 && !taken.contains(below.getFirst())
                ? Optional.of(below.getFirst())
                : Optional.empty();
    }

    private Spot spot(Projection view, Vec place) {
        return sheet.spot(view.project(place));
    }
}
