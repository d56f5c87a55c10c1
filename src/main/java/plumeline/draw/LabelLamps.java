package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import plumeline.lit.Reflections;
import plumeline.lit.Unrolled;
import plumeline.plan.PlacedLight;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Labels;
import plumeline.sketch.Lettering;
import plumeline.sketch.Markup;
import plumeline.sketch.Page;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.sketch.Stretch;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// What of a shot's lamps is mirrored in a thing's mantle, and in words.
///
/// @param stage the shot
/// @param marks what is set
/// @param first its start
/// @param last its end; the start where that isn't known
/// @param print the papers' figures
record LabelLamps(Stage stage, MarkBook marks, Scene first, Scene last, Print print) {
    /// Rows at the very ends of a piece belong to the next one.
    private static final double INSET_METRES = 1e-6;

    /// What is seen in a mantle.
    ///
    /// @param images lamp by lamp
    /// @param notes what is said of them all
    record Shown(List<Image> images, List<String> notes) {
        Shown {
            images = List.copyOf(images);
            notes = List.copyOf(notes);
        }
    }

    /// A lamp's mirror image.
    ///
    /// @param lamp its name
    /// @param start at the shot's start
    /// @param end at its end; empty where it is the same there
    /// @param words where at the label's middle height: `window −62..−40 deg`
    record Image(String lamp, Unrolled start, Optional<Unrolled> end, String words) {}

    /// Gives what is seen in a thing of a shot with lamps; the camera's place is known.
    Shown in(int thing, Mantle mantle) {
        List<PlacedLight> lights = stage.shot().lights();
        Optional<String> open = lights.isEmpty() ? Optional.empty() : findOpen();
        if (lights.isEmpty() || open.isPresent()) {
            return new Shown(List.of(), open.stream().toList());
        }
        return switch (seen(first, thing, mantle)) {
            case Reflections.Matte() ->
                new Shown(List.of(), List.of("Matte: no lamp is mirrored in it. Light it by angle."));
            case Reflections.Unknown(String reason) -> new Shown(List.of(), List.of(reason));
            case Reflections.Seen start -> {
                Reflections there = last.equals(first) ? start : seen(last, thing, mantle);
                List<Image> images = IntStream.range(0, lights.size())
                        .mapToObj(lamp ->
                                image(lamp, mantle, start, there instanceof Reflections.Seen end ? end : start))
                        .toList();
                yield new Shown(
                        images,
                        Stream.of(start.assumed()).filter(it -> !it.isEmpty()).toList());
            }
        };
    }

    private Reflections seen(Scene scene, int thing, Mantle mantle) {
        return Reflections.of(
                stage, scene, thing, mantle.lowMetres() + INSET_METRES, mantle.highMetres() - INSET_METRES);
    }

    /// What has no place yet: a lamp; a thing, which may come to stand in a way.
    private Optional<String> findOpen() {
        return Stream.concat(
                        stage.shot().lights().stream().map(PlacedLight::name),
                        stage.shot().placed().stream().map(placed -> placed.name()))
                .filter(name -> !marks.isPlaced(name) || !marks.isTurned(name))
                .map(name -> "Which lamps it mirrors isn't known: the place of " + name + " is still open.")
                .findFirst();
    }

    private Image image(int lamp, Mantle mantle, Reflections.Seen start, Reflections.Seen there) {
        Unrolled now = unrolled(mantle, start.lamps().get(lamp));
        Unrolled then = unrolled(mantle, there.lamps().get(lamp));
        boolean isSame = now.isLike(then);
        String name = stage.shot().lights().get(lamp).name();
        boolean isOff = first.beams().get(lamp).level() == 0;
        String words = isOff
                ? name + " is off"
                : name + " " + where(now, mantle) + (isSame ? "" : ", at the end " + where(then, mantle));
        return new Image(name, now, isSame ? Optional.empty() : Optional.of(then), words);
    }

    private static Unrolled unrolled(Mantle mantle, List<Reflections.Row> rows) {
        return Unrolled.of(rows, mantle.solid(), mantle.radiusMetres());
    }

    private String where(Unrolled image, Mantle mantle) {
        List<Unrolled.Span> spans = image.at(mantle.label().middleMetres());
        if (spans.isEmpty()) {
            return image.isEmpty() ? "isn't seen in it" : "not at the label's middle height";
        }
        return spans.stream().map(span -> range(span, mantle)).collect(Collectors.joining(" and "));
    }

    private String range(Unrolled.Span span, Mantle mantle) {
        if (mantle.isRound()) {
            return UnrolledLabel.range(
                    span.fromMetres() / mantle.radiusMetres(), span.toMetres() / mantle.radiusMetres());
        }
        return side(span.fromMetres()) + ".." + side(span.toMetres()) + " " + print.lengthUnit();
    }

    private String side(double metres) {
        return print.lengthNumber(metres, Print.Hand.TAPE).replace('-', '−');
    }

    /// Mirror images of lamps on an unrolled mantle on a page: hatched as at the shot's start, each lamp with its own
    /// spacing; dashed as at its end, where that differs.
    ///
    /// @param mantle the mantle
    /// @param box its rectangle on the page
    /// @param images lamp by lamp
    record Bands(Mantle mantle, Box box, List<Image> images) {
        private static final double[] HATCHES = {6, 10, 14, 18};

        /// From here on a name has a leader, pixels.
        private static final double LED = 30;

        private static final double FARTHEST = 150;

        /// How far up a mirror image its name may point to, the first that has room.
        private static final double[] HEIGHTS = {0.5, 0.25, 0.75, 0.1, 0.9};

        Bands {
            images = List.copyOf(images);
        }

        void draw(Page page, Labels labels) {
            for (int i = 0; i < images.size(); i++) {
                Image image = images.get(i);
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
        /// @param beside spots beside the mantle for a name, by its text and the height on the page it belongs
        /// to
        void letter(Page page, Labels labels, Beside beside, double width) {
            for (Image image : images) {
                List<Unrolled.Patch> patches = image.start().listPatches();
                boolean isAtEnd = patches.isEmpty() && image.end().isPresent();
                List<Unrolled.Patch> named = isAtEnd ? image.end().get().listPatches() : patches;
                if (named.isEmpty()) {
                    continue;
                }
                List<String> words = List.of(Lettering.fitted(image.lamp(), width / 4) + (isAtEnd ? ", end" : ""));
                String id = page.id("name.mirrored." + image.lamp());
                for (double share : HEIGHTS) {
                    Spot anchor = middle(named.getFirst(), share);
                    List<Spot> spots = new ArrayList<>(List.of(anchor));
                    spots.addAll(Labels.around(anchor, words, 8, FARTHEST));
                    spots.addAll(beside.spots(words, anchor.y()));
                    if (labels.place(id, words, anchor, spots, LED).isPresent()) {
                        break;
                    }
                }
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
                ring.add(spot(
                        patch.spans().get(i).toMetres(), patch.heightsMetres().get(i)));
            }
            return ring;
        }

        /// The middle of one of its rows.
        ///
        /// @param share how far up its rows
        private Spot middle(Unrolled.Patch patch, double share) {
            int row = Math.min(patch.spans().size() - 1, (int) (patch.spans().size() * share));
            Unrolled.Span span = patch.spans().get(row);
            return spot(
                    (span.fromMetres() + span.toMetres()) / 2,
                    patch.heightsMetres().get(row));
        }
    }
}
