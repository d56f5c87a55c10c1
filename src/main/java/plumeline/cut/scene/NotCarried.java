package plumeline.cut.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import plumeline.keys.MovedAxis;
import plumeline.plan.Placed;
import plumeline.plan.Release;
import plumeline.solve.MarkAnswer;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Picture;
import plumeline.stage.Scene;

/// What a scene doesn't carry of a shot, in sentences.
final class NotCarried {
    private NotCarried() {}

    static List<String> list(ShotAnswer shot, ShotAnswer.Run run, List<Scene> scenes) {
        List<String> notes = new ArrayList<>();
        open(shot, notes);
        for (MovedAxis.Left left : MovedAxis.of(shot).left()) {
            if (left.pass().equals(run.pass())) {
                notes.add("The move " + left.move() + " isn't in it; not known: " + left.why() + ".");
            }
        }
        if (changes(scenes, picture -> picture.lens().focalLengthMetres())) {
            notes.add("The lens zooms: yfov is that of the first frame, as a scene can't move it; the camera's"
                    + " extras have it frame by frame (yfov_radians_by_frame).");
        }
        if (changes(scenes, Picture::focusMetres)) {
            notes.add("The focus is pulled: a scene has no focus; the camera's extras have it frame by frame"
                    + " (focus_metres_by_frame).");
        }
        if (run.stage().findTank().isPresent()) {
            notes.add("Things stand where they are; through the tank's wall and water the camera sees them elsewhere"
                    + " and larger, which a scene doesn't bend.");
        }
        run.stage()
                .shot()
                .findRelease()
                .ifPresent(release -> notes.add(
                        switch (release) {
                            case Release.OfInk _ -> "The ink isn't in it.";
                            case Release.OfPieces _ -> "The pieces that fall aren't in it.";
                            case Release.OfThing thing ->
                                thing.thing().name() + " stands where it is let go; its way from there isn't in it.";
                        }));
        if (run.stage().shot().placed().stream().anyMatch(Placed::isHung)) {
            notes.add("The lines that things hang on aren't in it.");
        }
        String rigged = run.stage().shot().placed().stream()
                .filter(placed -> placed.written().has("rig"))
                .map(Placed::name)
                .collect(Collectors.joining(", "));
        if (!rigged.isEmpty()) {
            notes.add("The rods of rigs aren't in it: " + rigged + ".");
        }
        notes.add("Round things have " + Shell.SIDES + " flat sides; greys only tell parts apart; lamps give no"
                + " light.");
        return notes;
    }

    private static void open(ShotAnswer shot, List<String> notes) {
        String open = shot.marks().stream()
                .filter(mark -> mark.setting() instanceof MarkAnswer.Setting.Open)
                .map(mark -> mark.mark().path())
                .collect(Collectors.joining(", "));
        if (!open.isEmpty()) {
            notes.add("Not set yet, and stands at a middling place: " + open + ".");
        }
    }

    private static boolean changes(List<Scene> scenes, ToDoubleFunction<Picture> figure) {
        double first = figure.applyAsDouble(scenes.getFirst().picture());
        return scenes.stream().anyMatch(scene -> figure.applyAsDouble(scene.picture()) != first);
    }
}
