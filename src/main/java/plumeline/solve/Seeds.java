package plumeline.solve;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.lit.Placing;
import plumeline.optics.Optics;
import plumeline.plan.Mark;
import plumeline.plan.Named;
import plumeline.plan.PlacedLight;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.StagedMark;

/// Closed-form starts for the search: a camera at the distance that fills the picture as wanted, hidden things in file
/// along the sight line, shown things in a row from left to right, a focus on the thing that shall be sharp, a lamp
/// where its mirror image or a glass's rim wants it; all in the order written.
final class Seeds {
    /// Spacings tried for things in file, in widths of the wider of both.
    private static final double[] SPACINGS = {1.2, 2, 3.5, 6, 11};

    private final Stage stage;
    private final Map<String, Integer> free = new HashMap<>();

    private Seeds(Stage stage) {
        this.stage = stage;
        for (int i = 0; i < stage.marks().size(); i++) {
            if (stage.marks().get(i).mark().isFree()) {
                free.put(stage.marks().get(i).mark().path(), i);
            }
        }
    }

    /// Starts for a shot, the likeliest first; SI values.
    static List<double[]> of(Stage stage, List<WantLine> wants) {
        Seeds seeds = new Seeds(stage);
        List<double[]> starts = new ArrayList<>();
        for (double travel : seeds.travels()) {
            starts.addAll(seeds.spaced(wants, travel));
        }
        return starts;
    }

    /// Shares of a free slide's way from which a start is made: both its ends, where there is one.
    private double[] travels() {
        return free.keySet().stream().anyMatch(path -> path.endsWith(".by")) ? new double[] {-1, 1} : new double[] {0};
    }

    private List<double[]> spaced(List<WantLine> wants, double travel) {
        List<double[]> starts = new ArrayList<>();
        for (double spacing : SPACINGS) {
            double[] start = standing();
            slide(start, travel);
            wants.stream().filter(want -> want.word().equals("fills")).forEach(want -> fill(start, want));
            wants.stream().filter(want -> want.word().equals("shown")).forEach(want -> row(start, want, spacing));
            wants.stream().filter(want -> want.word().equals("hidden")).forEach(want -> file(start, want, spacing));
            wants.stream().filter(want -> want.word().equals("sharp")).forEach(want -> focus(start, want));
            wants.stream().filter(want -> want.word().equals("highlight")).forEach(want -> light(start, want));
            wants.stream().filter(want -> want.word().equals("edges")).forEach(want -> rims(start, want, wants));
            starts.add(start);
        }
        return starts;
    }

    private void slide(double[] start, double travel) {
        free.forEach((path, index) -> {
            if (path.endsWith(".by")) {
                StagedMark mark = stage.marks().get(index);
                start[index] = travel < 0 ? mark.lowSi() : mark.highSi();
            }
        });
    }

    private double[] standing() {
        double[] start = stage.startValues();
        set(start, "camera.y", stage.anchor().y() - Stage.standingBackMetres());
        set(start, "camera.x", stage.anchor().x());
        stage.marks().stream()
                .filter(mark ->
                        mark.mark() instanceof Mark.Free && mark.mark().path().equals("camera.z"))
                .findFirst()
                .ifPresent(mark -> set(start, "camera.z", 0.1));
        set(start, "camera.focus", Stage.standingBackMetres());
        return start;
    }

    private void set(double[] start, String path, double si) {
        Integer index = free.get(path);
        if (index != null) {
            start[index] = Math.clamp(
                    si,
                    stage.marks().get(index).lowSi(),
                    stage.marks().get(index).highSi());
        }
    }

    private void fill(double[] start, WantLine want) {
        double share = want.written()
                .findQuantity("height")
                .or(() -> want.written().findQuantity("width"))
                .map(Quantity::si)
                .orElse(0.5);
        boolean height = want.written().has("height");
        for (Named named : want.subjects()) {
            int index = stage.thingIndex(named.name());
            if (index < 0) {
                continue;
            }
            Scene scene = stage.scene(start, 0);
            Body body = scene.things().get(index);
            double size =
                    height ? body.solid().heightMetres() : 2 * body.solid().reachMetres();
            double picture =
                    height ? scene.picture().heightMetres() : scene.picture().widthMetres();
            double distance =
                    Optics.distanceForMagnificationMetres(scene.picture().lens(), share * picture / size);
            set(start, "camera.y", body.middle().y() - distance);
        }
    }

    /// Things side by side, from the left; those that stand already stay, and the row is laid from the first of them.
    private void row(double[] start, WantLine want, double spacing) {
        Scene scene = stage.scene(start, stage.frameOf(want.when()));
        List<Named> row = want.subjects().stream()
                .filter(named -> stage.thingIndex(named.name()) >= 0)
                .toList();
        double pitch = 0;
        double middle = (row.size() - 1) / 2.0;
        double from = stage.anchor().x();
        boolean anyStands = false;
        for (int i = 0; i < row.size(); i++) {
            Body body = scene.things().get(stage.thingIndex(row.get(i).name()));
            pitch = Math.max(pitch, 2 * body.solid().reachMetres() * spacing);
            if (!anyStands && !free.containsKey(row.get(i).name() + ".x")) {
                anyStands = true;
                middle = i;
                from = body.pose().base().x();
            }
        }
        for (int i = 0; i < row.size(); i++) {
            set(start, row.get(i).name() + ".x", from + (i - middle) * pitch);
        }
    }

    private void file(double[] start, WantLine want, double spacing) {
        List<Named> behind = want.written().listNames("behind");
        int hider = behind.isEmpty() ? -1 : stage.thingIndex(behind.getFirst().name());
        if (hider < 0) {
            return;
        }
        Scene scene = stage.scene(start, stage.frameOf(want.when()));
        Body front = scene.things().get(hider);
        Vec way = front.middle().minus(scene.aim().eye());
        Vec flat = new Vec(way.x(), way.y(), 0);
        if (!(flat.lengthMetres() > 0)) {
            return;
        }
        Vec base = front.pose().base();
        double widest = front.solid().reachMetres();
        double distance = 0;
        for (Named named : want.subjects()) {
            int index = stage.thingIndex(named.name());
            if (index < 0) {
                continue;
            }
            widest = Math.max(widest, scene.things().get(index).solid().reachMetres());
            distance += 2 * widest * spacing;
            Vec place = base.plus(flat.unit().times(distance));
            set(start, named.name() + ".x", place.x());
            set(start, named.name() + ".y", place.y());
        }
    }

    /// A lamp where its mirror image is as wanted.
    private void light(double[] start, WantLine want) {
        String lamp = want.subjects().getFirst().name();
        if (!free.containsKey(lamp + ".x") && !free.containsKey(lamp + ".y")) {
            return;
        }
        Placing.find(want, stage, place -> {
                    stand(start, lamp, place);
                    return stage.scene(start, stage.frameOf(want.when()));
                })
                .ifPresent(place -> stand(start, lamp, place));
    }

    /// Lamps that nothing is to be mirrored of, where a clear thing's rims want them.
    private void rims(double[] start, WantLine want, List<WantLine> wants) {
        int count = 0;
        for (PlacedLight light : stage.shot().lights()) {
            String lamp = light.name();
            boolean isMirrored = wants.stream()
                    .anyMatch(other -> other.word().equals("highlight")
                            && other.subjects().getFirst().name().equals(lamp));
            if (!isMirrored && (free.containsKey(lamp + ".x") || free.containsKey(lamp + ".y"))) {
                Placing.findForRims(want, stage, count++, place -> {
                            stand(start, lamp, place);
                            return stage.scene(start, stage.frameOf(want.when()));
                        })
                        .ifPresent(place -> stand(start, lamp, place));
            }
        }
    }

    private void stand(double[] start, String name, Vec place) {
        set(start, name + ".x", place.x());
        set(start, name + ".y", place.y());
        set(start, name + ".z", place.z());
    }

    private void focus(double[] start, WantLine want) {
        Scene scene = stage.scene(start, stage.frameOf(want.when()));
        want.subjects().stream()
                .map(named -> stage.thingIndex(named.name()))
                .filter(index -> index >= 0)
                .findFirst()
                .ifPresent(index -> set(
                        start,
                        "camera.focus",
                        scene.projection().depth(scene.things().get(index).middle())));
    }
}
