package plumeline.plume;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import plumeline.flow.Front;
import plumeline.flow.Grid;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.Placed;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Sightlines;
import plumeline.stage.Stage;

/// Looks at films from a shot's camera: how far the ink is, and how much of each thing is still seen through it.
///
/// Sight lines run from the lens point through the tank's wall by Snell's law to the side of a thing that is turned to
/// the camera; light that ink takes away on its way to the thing isn't counted.
public final class Viewing {
    /// The instants that stand for a shot in which something moves.
    private static final int INSTANTS = 33;

    private final Stage stage;
    private final double[] values;
    private final InkShot shot;
    private final Strength strength;
    private final List<Integer> things = new ArrayList<>();
    private final List<Subject> subjects = new ArrayList<>();

    /// From the lens point to a place: where the way through the water begins and ends, table frame.
    private record Sight(Vec from, Vec to) {}

    private Viewing(Stage stage, double[] values, InkShot shot) {
        this.stage = stage;
        this.values = values.clone();
        this.shot = shot;
        this.strength = strength(stage);
        Scene scene = scene(0);
        for (int n = 0; n < scene.things().size(); n++) {
            Body body = scene.things().get(n);
            if (stage.findTank().orElseThrow().isWet(body)) {
                things.add(n);
                subjects.add(subject(stage.shot().placed().get(n), body));
            }
        }
    }

    /// Makes ready to look.
    ///
    /// @param stage the shot, staged
    /// @param values its marks' values, SI
    /// @param shot its ink and water, as read from both
    /// @return the viewing
    public static Viewing of(Stage stage, double[] values, InkShot shot) {
        return new Viewing(stage, values, shot);
    }

    private static Strength strength(Stage stage) {
        return stage.shot().findRelease().stream()
                .filter(release -> release instanceof plumeline.plan.Release.OfInk)
                .flatMap(release ->
                        ((plumeline.plan.Release.OfInk) release).ink().written().findQuantity("strength").stream())
                .mapToDouble(Quantity::si)
                .mapToObj(perMetre -> new Strength(perMetre, true))
                .findFirst()
                .orElse(Strength.GUESS);
    }

    private Scene scene(double seconds) {
        double real = shot.timing().startSeconds() + seconds;
        return stage.scene(values, stage.retime().frameAt(real, (double) stage.frames()));
    }

    private Subject subject(Placed placed, Body body) {
        List<Subject.Height> heights = Face.heightsMetres(body.solid()).stream()
                .map(metres -> new Subject.Height(
                        metres, body.place(new Vec(0, 0, metres)).z()))
                .toList();
        String unseen = "";
        for (double seconds : instants()) {
            Scene scene = scene(seconds);
            Body now = scene.things().get(stage.thingIndex(placed.name()));
            Sightlines.Seeing seeing = scene.lines().at(List.of(now));
            unseen = unseen.isEmpty() ? trouble(seeing) : unseen;
        }
        return new Subject(placed.name(), heights, unseen);
    }

    private static String trouble(Sightlines.Seeing seeing) {
        if (seeing.isCovered()) {
            return seeing.projection() instanceof TankView ? "" : "isn't seen through the tank's wall";
        }
        return switch (seeing.trouble()) {
            case NONE, OTHER_WALL -> "is seen through another wall or over the rim, which isn't computed";
            case SURFACE -> "is seen through the water's surface, which isn't computed";
            case WATER_LINE -> "is cut by the water line, which isn't computed";
        };
    }

    private List<Double> instants() {
        if (!stage.isMoving()) {
            return List.of(0.0);
        }
        List<Double> instants = new ArrayList<>();
        for (int n = 0; n < INSTANTS; n++) {
            instants.add(shot.timing().shotSeconds() * n / (INSTANTS - 1));
        }
        return instants;
    }

    /// The key of what decides the look: lens point, things, ink's strength.
    ///
    /// @return the key
    public InkKey key() {
        var text = new InkKey.Text();
        text.word("seen").number(strength.perMetre()).word("" + strength.measured());
        for (double seconds : instants()) {
            Scene scene = scene(seconds);
            text.place(scene.aim().eye());
            for (int n : things) {
                text.word(stage.shot().placed().get(n).name())
                        .body(scene.things().get(n));
            }
        }
        for (Subject subject : subjects) {
            text.word(subject.unseen());
        }
        return text.key();
    }

    /// How dark the ink is.
    ///
    /// @return as the plan says, else a guess
    public Strength strength() {
        return strength;
    }

    /// The things that are looked at.
    ///
    /// @return those in the water
    public List<Subject> subjects() {
        return List.copyOf(subjects);
    }

    /// Looks at a film.
    ///
    /// @param film the film of one of the shot's runs
    /// @return what is seen, frame by frame
    /// @throws IOException where the film can't be read any more
    public InkRecord.Run look(DyeFilm film) throws IOException {
        Grid grid = film.head().grid();
        float[] low = new float[film.frames()];
        float[] halfWidth = new float[film.frames()];
        List<float[]> clear = subjects.stream()
                .map(subject -> new float[film.frames() * subject.heights().size()])
                .toList();
        List<List<List<Sight>>> sights = sights(0);
        for (int n = 0; n < film.frames(); n++) {
            DyeFrame frame = film.frame(n);
            switch (Front.ofSight(frame.dye(grid), strength.halvingShareMetres())) {
                case Front.Nowhere() -> {
                    low[n] = Float.NaN;
                    halfWidth[n] = Float.NaN;
                }
                case Front.Seen seen -> {
                    low[n] = (float) seen.lowMetres();
                    halfWidth[n] = (float) (seen.widthMetres() / 2);
                }
            }
            if (stage.isMoving()) {
                sights = sights(n / film.head().framesPerSecond());
            }
            for (int s = 0; s < subjects.size(); s++) {
                fill(clear.get(s), n, sights.get(s), frame, film.head());
            }
        }
        return new InkRecord.Run(film.head().run(), low, halfWidth, clear);
    }

    private void fill(float[] clear, int n, List<List<Sight>> sights, DyeFrame frame, DyeFilm.Head head) {
        for (int h = 0; h < sights.size(); h++) {
            double sum = 0;
            for (Sight sight : sights.get(h)) {
                Vec from = sight.from().minus(head.corner());
                Vec to = sight.to().minus(head.corner());
                sum += strength.clearShare(Beam.shareMetres(frame, head.grid(), from, to));
            }
            clear[n * sights.size() + h] =
                    sights.get(h).isEmpty() ? 1 : (float) (sum / sights.get(h).size());
        }
    }

    /// For each thing, at each height, the ways through the water to its side; none where the look isn't computed.
    private List<List<List<Sight>>> sights(double seconds) {
        Scene scene = scene(seconds);
        List<List<List<Sight>>> all = new ArrayList<>();
        for (int s = 0; s < subjects.size(); s++) {
            Body body = scene.things().get(things.get(s));
            Sightlines.Seeing seeing = scene.lines().at(List.of(body));
            List<List<Sight>> ofThing = new ArrayList<>();
            for (Subject.Height height : subjects.get(s).heights()) {
                ofThing.add(
                        subjects.get(s).isSeen() && seeing.projection() instanceof TankView view
                                ? Face.places(body, height.metres(), scene.aim().eye()).stream()
                                        .map(place -> sight(view, place))
                                        .toList()
                                : List.of());
            }
            all.add(ofThing);
        }
        return all;
    }

    private static Sight sight(TankView view, Vec place) {
        List<Vec> path = view.path(place);
        return new Sight(path.get(path.size() - 2), place);
    }
}
