package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Vec;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sketch.Box;
import plumeline.sketch.Markup;
import plumeline.sketch.Pen;
import plumeline.sketch.Shapes;
import plumeline.sketch.Spot;
import plumeline.stage.PlaceSight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Strand;

/// The way of lines and rods that hold things, as a mask must follow it: dashed along the middle, both edges where they
/// lie apart.
final class StrandLines {
    /// Places of a strand that are looked at.
    private static final int PIECES = 400;

    /// Edges nearer to each other aren't drawn, pixels of the sheet.
    private static final double APART = 2;

    private final Stage stage;
    private final double[] values;
    private final Scene scene;
    private final PictureSheet sheet;
    private final PaperUnit unit;

    StrandLines(Stage stage, double[] values, Scene scene, PictureSheet sheet, PaperUnit unit) {
        this.stage = stage;
        this.values = values;
        this.scene = scene;
        this.sheet = sheet;
        this.unit = unit;
    }

    /// A stretch that is seen in one way, its two edges beside it.
    private record Run(PlaceSight.Way way, List<Spot> middle, List<Spot> one, List<Spot> other) {}

    /// Draws all of a shot's strands.
    ///
    /// @return what isn't computed, sentences
    List<String> draw() {
        List<String> notes = new ArrayList<>();
        for (Strand strand : Strand.listAll(stage)) {
            Strand.Ends ends = strand.at(stage, values, scene);
            List<Run> runs = runs(strand, ends, false);
            List<Run> mirrored = runs(strand, ends, true);
            if (runs.isEmpty()) {
                notes.add("Not seen, or not computed where it shows: " + strand.name() + ".");
                continue;
            }
            Markup group = sheet.page().group("mask." + strand.name());
            runs.forEach(run -> draw(group, run));
            mirrored.forEach(run -> draw(group, run));
            runs.getFirst().middle().stream()
                    .filter(sheet.box()::holds)
                    .skip(runs.getFirst().middle().size() / 4)
                    .findFirst()
                    .ifPresent(anchor -> sheet.name(
                            "name.mask." + strand.name(),
                            List.of(strand.name() + " "
                                    + new Print(unit).length(strand.diameterMetres(), Print.Hand.MOTOR)),
                            anchor,
                            12));
        }
        return notes;
    }

    private void draw(Markup group, Run run) {
        boolean isWide = run.one().getFirst().distance(run.other().getFirst()) >= APART;
        if (isWide) {
            group.add(Shapes.run(Pen.HATCH, run.one()), Shapes.run(Pen.HATCH, run.other()));
        }
        group.add(Shapes.run(Pen.THIN_DASHED, run.middle()));
        sheet.keepOff(List.of(run.middle().getFirst(), run.middle().getLast()));
    }

    private List<Run> runs(Strand strand, Strand.Ends ends, boolean isMirrored) {
        Vec along = ends.far().minus(ends.foot());
        if (!(along.lengthMetres() > 0)) {
            return List.of();
        }
        Box near = sheet.box().grown(sheet.box().width() / 10);
        List<Run> runs = new ArrayList<>();
        Optional<Run> open = Optional.empty();
        for (int i = 0; i <= PIECES; i++) {
            Vec place = ends.at((double) i / PIECES);
            Vec aside = along.cross(place.minus(scene.aim().eye()));
            double half = strand.diameterMetres() / 2 / Math.max(aside.lengthMetres(), 1e-12);
            Optional<PlaceSight.Seen> middle = sight(place, isMirrored);
            Optional<PlaceSight.Seen> one = sight(place.plus(aside.times(half)), isMirrored);
            Optional<PlaceSight.Seen> other = sight(place.plus(aside.times(-half)), isMirrored);
            boolean isSeen = middle.isPresent()
                    && one.isPresent()
                    && other.isPresent()
                    && near.holds(sheet.spot(middle.get().point()));
            if (!isSeen) {
                open = Optional.empty();
                continue;
            }
            PlaceSight.Way way = middle.get().way();
            if (open.isEmpty() || open.get().way() != way) {
                Run begun = new Run(way, new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
                runs.add(begun);
                open = Optional.of(begun);
            }
            open.get().middle().add(sheet.spot(middle.get().point()));
            open.get().one().add(sheet.spot(one.get().point()));
            open.get().other().add(sheet.spot(other.get().point()));
        }
        return runs.stream().filter(run -> run.middle().size() > 1).toList();
    }

    private Optional<PlaceSight.Seen> sight(Vec place, boolean isMirrored) {
        PlaceSight sight = isMirrored ? PlaceSight.mirrored(scene, place) : PlaceSight.of(scene, place);
        return sight instanceof PlaceSight.Seen seen ? Optional.of(seen) : Optional.empty();
    }
}
