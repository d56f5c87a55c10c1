package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.geom.Body;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Stage;

/// A want about the picture in a shot with a tank: unknown where a sight line that it rests on isn't computed.
///
/// It has one part more than the want itself: how far the sight lines are from leaving what is computed, in mm, so that
/// leeway ends there; that part is none of the margin.
///
/// @param want the want itself
/// @param things indices of the things that it looks at
/// @param lamps indices of the lamps that it looks at
/// @param seen whether it compares them with each other
record Sighted(Want want, List<Integer> things, List<Integer> lamps, Seen seen) implements Want {
    /// Whether a want compares in one picture what it looks at: then all must be seen in one way.
    enum Seen {
        EACH,
        TOGETHER
    }

    Sighted {
        things = List.copyOf(things);
        lamps = List.copyOf(lamps);
    }

    @Override
    public WantLine line() {
        return want.line();
    }

    @Override
    public String unit() {
        return want.unit();
    }

    @Override
    public double[] parts(Moments moments) {
        double[] own = want.parts(moments);
        double[] all = Arrays.copyOf(own, own.length + 1);
        all[own.length] = Parts.FAR_MILLIMETRES;
        for (Look look : looks(moments)) {
            double cover = Parts.MILLIMETRES * look.seeing().coverMetres();
            all[own.length] = Math.min(all[own.length], Math.max(-Parts.FAR_MILLIMETRES, cover));
        }
        return all;
    }

    @Override
    public double margin(double[] parts) {
        return want.margin(Arrays.copyOf(parts, parts.length - 1));
    }

    @Override
    public Optional<String> findUnknown() {
        return want.findUnknown();
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        for (Look look : looks(moments)) {
            Sightlines.Seeing seeing = look.seeing();
            if (!seeing.isCovered()) {
                return Optional.of(reason(seeing.trouble(), names(moments.stage(), look)));
            }
        }
        return want.findUnknown(moments);
    }

    static String reason(Sightlines.Trouble trouble, String names) {
        return switch (trouble) {
            case SURFACE ->
                "Not computed: the camera looks through the water's surface at " + names
                        + ". Only sight through the tank's flat wall is.";
            case WATER_LINE -> "Not computed: the water line cuts " + names + ", and the picture breaks there.";
            case OTHER_WALL, NONE ->
                "Not computed: the camera sees " + names
                        + " over the tank's rim or through another wall than the one that faces it.";
        };
    }

    private static String names(Stage stage, Look look) {
        List<String> names = new ArrayList<>();
        for (Body body : look.bodies()) {
            int thing = look.scene().things().indexOf(body);
            names.add(
                    thing >= 0
                            ? stage.shot().placed().get(thing).name()
                            : stage.shot()
                                    .lights()
                                    .get(look.scene().lamps().indexOf(body))
                                    .name());
        }
        return String.join(", ", names);
    }

    /// Bodies looked at in one picture.
    private record Look(Scene scene, List<Body> bodies) {
        Sightlines.Seeing seeing() {
            return scene.lines().at(bodies);
        }
    }

    /// All that is looked at: first what the lens is focused on at the start, as the picture's scale is that focus's.
    private List<Look> looks(Moments moments) {
        List<Look> looks = new ArrayList<>();
        moments.stage()
                .findFocused(moments.values())
                .ifPresent(body -> looks.add(new Look(moments.at(0), List.of(body))));
        for (Scene scene : moments.during(line().when())) {
            List<Body> bodies = new ArrayList<>();
            things.forEach(index -> bodies.add(scene.things().get(index)));
            lamps.forEach(index -> bodies.add(scene.lamps().get(index)));
            if (seen == Seen.TOGETHER) {
                looks.add(new Look(scene, bodies));
            } else {
                bodies.forEach(body -> looks.add(new Look(scene, List.of(body))));
            }
        }
        return looks;
    }

    @Override
    public boolean isMeasured(Moments moments) {
        return want.isMeasured(moments);
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return want.findLack(moments);
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return want.findCaution(moments);
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return want.findStanding(moments, papers);
    }

    @Override
    public OptionalDouble findOverPupil(Moments moments) {
        return want.findOverPupil(moments);
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return want.findTight(moments);
    }

    @Override
    public boolean restsOnMarks() {
        return want.restsOnMarks();
    }

    @Override
    public double[] slack(Moments moments) {
        return want.slack(moments);
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        return want.listRelaxed(lack, moments).stream()
                .map(easier -> new Relaxed(new Sighted(easier.want(), things, lamps, seen), easier.sentence()))
                .toList();
    }
}
