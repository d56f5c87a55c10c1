package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import plumeline.colour.Rgb;
import plumeline.lit.Lighting;
import plumeline.lit.Setting;
import plumeline.optics.Layer;
import plumeline.pace.Capture;
import plumeline.plan.Kit;
import plumeline.plan.Plan;
import plumeline.plan.Shot;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.scenery.Basin;
import plumeline.scenery.Cloud;
import plumeline.scenery.Coat;
import plumeline.scenery.Medium;
import plumeline.scenery.Part;
import plumeline.scenery.World;
import plumeline.stage.Picture;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;
import plumeline.trace.Eye;
import plumeline.trace.Look;
import plumeline.trace.Tracer;

/// A staged shot, its marks set, as a world for rays at any instant. It may be used by many threads at once.
public final class ShotSet {
    /// What stands on the table stands so near to it, m.
    private static final double ON_METRES = 1e-6;

    /// A search may ask for none.
    private static final double LEAST_F_NUMBER = 0.1;

    /// An exposure has so many states of the ink at most.
    private static final int MOST_INK_STEPS = 16;

    private final Stage stage;
    private final double[] values;
    private final Stage.Laid laid;
    private final Quantity film;
    private final List<SetThings> things;
    private final List<Coat> coats;
    private final List<Part> ground;
    private final Rgb white;
    private final Rgb surround;
    private final Optional<Basin> basin;
    private final Loose loose;
    private final double readoutSeconds;
    private final List<String> assumed;
    private final AtomicReference<Optional<Lit>> lit = new AtomicReference<>(Optional.empty());
    private final AtomicReference<Optional<Made>> made = new AtomicReference<>(Optional.empty());

    /// Lamps as they shine while nothing on which their light rests changes.
    private record Lit(Lighting.Set key, SetLamps lamps) {}

    /// A world that was made ready, and whether another is the same.
    private record Made(World world, Tracer tracer) {}

    private ShotSet(Plan plan, Stage stage, double[] values, Props props) {
        this.stage = stage;
        this.film = plan.film().rate();
        this.values = values.clone();
        this.laid = stage.laid(values);
        Shot shot = stage.shot();
        Told told = new Told();
        Scene start = laid.scene(0);
        this.things = shot.placed().stream()
                .map(placed -> new SetThings(
                        placed,
                        Optional.ofNullable(props.art().get(placed.thing().reference())),
                        told))
                .toList();
        List<Coat> made = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            made.add(things.get(i).coat(start.things().get(i).solid()));
        }
        this.coats = List.copyOf(made);
        boolean isHair = stage.findTank()
                        .filter(walls -> Math.abs(walls.outside().low().z()) < ON_METRES)
                        .isPresent()
                || things.stream().anyMatch(SetThings::isClear);
        this.ground = new SetGround(isHair ? -SetGround.HAIR_METRES : 0, told).parts(plan, shot);
        this.basin = stage.findTank().map(ShotSet::basin);
        this.white = Paints.tint(Developing.white(shot.camera()));
        this.surround = surround(start);
        SetLamps.tell(stage, start, told);
        shot.camera()
                .lens()
                .barrel()
                .ifPresent(_ -> told.add("The lens's own barrel isn't drawn: it shades and mirrors nothing."));
        this.loose = Loose.of(stage, values, props);
        Optional<Quantity> readout = Capture.findMode(shot, film).flatMap(Kit.Mode::readout);
        this.readoutSeconds = readout.map(Quantity::si).orElse(0.0);
        if (isMoving()) {
            told.add(
                    readout.isEmpty()
                            ? "The camera's readout isn't written: all rows are exposed at once."
                            : "The sensor reads its rows within " + Print.number(readoutSeconds * 1000, 1)
                                    + " ms, the upper ones first: what moves leans so, but where a pixel is one ray.");
        }
        List<String> assumed = new ArrayList<>(told.sentences());
        assumed.addAll(loose.assumed());
        this.assumed = List.copyOf(assumed);
    }

    /// Sets a shot up.
    ///
    /// @param plan its plan
    /// @param stage the shot or one of its passes, staged
    /// @param values its marks' values, SI, in the stage's order
    /// @param props prints and ink
    /// @return the set
    public static ShotSet of(Plan plan, Stage stage, double[] values, Props props) {
        return new ShotSet(plan, stage, values, props);
    }

    private static Basin basin(TankWalls walls) {
        return new Basin(
                walls.outside(),
                walls.inside(),
                walls.waterLineMetres(),
                Medium.clear(Layer.GLASS_INDEX),
                Medium.clear(Layer.WATER_INDEX));
    }

    /// Where no lamp is known to shine, light from all round in which mid grey is rightly exposed: `π L` on a surface
    /// is what the setting needs.
    private Rgb surround(Scene start) {
        if (SetLamps.isLit(stage, start)) {
            return Paints.grey(0);
        }
        Developing developing = Developing.of(stage.shot().camera(), start.picture(), film);
        return Paints.times(white, 1 / developing.sharePerLuminance());
    }

    /// Gives the shot as staged.
    ///
    /// @return the stage
    public Stage stage() {
        return stage;
    }

    /// Gives what its marks are set to.
    ///
    /// @return SI values, in the stage's order
    public double[] values() {
        return values.clone();
    }

    /// Gives the shot at an instant on the table.
    ///
    /// @param realSeconds real seconds after the shot's GO
    /// @return the shot then
    public Scene sceneAt(double realSeconds) {
        return loose.at(laid.sceneAt(realSeconds));
    }

    /// Gives how the shot's camera develops.
    ///
    /// @param realSeconds when, real seconds after GO: focusing close loses light
    /// @return how it develops
    public Developing developing(double realSeconds) {
        return Developing.of(stage.shot().camera(), sceneAt(realSeconds).picture(), film);
    }

    /// Gives how long the shutter is open for a recorded frame.
    ///
    /// @return real seconds
    public double shutterSeconds() {
        return Setting.seconds(stage.shot().camera(), film);
    }

    /// Gives how much later the sensor's last row is exposed than its first.
    ///
    /// @return real seconds; 0 where nobody says
    public double readoutSeconds() {
        return readoutSeconds;
    }

    /// Gives into how many instants an exposure may be cut for their memory.
    int mostInstants() {
        return loose.mostInstants();
    }

    /// Gives the world at an instant on the table.
    ///
    /// @param realSeconds real seconds after the shot's GO
    /// @return the look
    public Look at(double realSeconds) {
        Scene scene = sceneAt(realSeconds);
        World world = world(scene, loose.clouds(realSeconds));
        Optional<Made> before = made.get().filter(known -> known.world().equals(world));
        if (before.isEmpty()) {
            before = Optional.of(new Made(world, Tracer.of(world)));
            made.set(before);
        }
        return new Look(before.get().tracer(), eye(scene));
    }

    /// Gives what there is at an instant; its parts and lights are in the same order at every instant.
    ///
    /// @param realSeconds real seconds after the shot's GO
    /// @return the world
    public World worldAt(double realSeconds) {
        return world(sceneAt(realSeconds), loose.clouds(realSeconds));
    }

    private World world(Scene scene, List<Cloud> clouds) {
        List<Part> parts = new ArrayList<>(ground);
        for (int i = 0; i < things.size(); i++) {
            parts.add(things.get(i).part(scene.things().get(i), coats.get(i)));
        }
        SetLamps lamps = lamps(scene);
        parts.addAll(lamps.parts());
        parts.addAll(loose.parts(scene));
        return new World(parts, lamps.lights(), basin, clouds, surround);
    }

    private SetLamps lamps(Scene scene) {
        Lighting.Set key = Lighting.Set.of(stage.shot(), scene);
        Optional<Lit> before = lit.get();
        if (before.filter(known -> known.key().equals(key)).isPresent()) {
            return before.get().lamps();
        }
        SetLamps lamps = SetLamps.of(stage, scene, white);
        lit.set(Optional.of(new Lit(key, lamps)));
        return lamps;
    }

    /// Its entrance pupil is as wide as `f/N`, as that of a lens of pupil ratio 1. One of another ratio stands
    /// elsewhere than the lens point, from which all is seen: here it is made as wide as gives the same cone at the
    /// focus, `f/N · s/L`, s and L being the ways from lens point and from pupil to it. Blur is then that of the
    /// lens sums near the focus, and off by `s/L` at most, far behind it.
    ///
    /// **Source:** own derivation, `docs/derivations/lens.md`.
    private Eye eye(Scene scene) {
        Picture picture = scene.picture();
        double focal = picture.lens().focalLengthMetres();
        double focus = picture.focusMetres();
        double fromPupil = focus - focal + focal / picture.lens().pupilRatio();
        double pupil = focal / (2 * Math.max(picture.fNumber(), LEAST_F_NUMBER)) * focus / fromPupil;
        return new Eye(scene.aim(), picture.widthTangent(), picture.heightTangent(), pupil, focus);
    }

    /// Gives the world over an exposure at so many instants, each in the middle of its part of it. Ink goes on in
    /// coarser steps than what is solid: making it ready takes longer than all else. Light in it is that of the
    /// first instant with the same ink.
    ///
    /// @param realSeconds when the exposure begins, real seconds after GO
    /// @param eachSeconds how long each part is, ≥ 0
    /// @param instants how many, > 0
    /// @param samples how many rays a pixel there will be: ink takes no more steps than half of these, > 0
    /// @return the looks in order
    public List<Look> over(double realSeconds, double eachSeconds, int instants, int samples) {
        int steps = Math.clamp(samples / 2, 1, Math.min(MOST_INK_STEPS, instants));
        List<Look> looks = new ArrayList<>();
        Optional<Made> before = Optional.empty();
        for (int step = 0; step < steps; step++) {
            int from = step * instants / steps;
            int end = (step + 1) * instants / steps;
            List<Cloud> clouds = loose.clouds(realSeconds + eachSeconds * (from + end) / 2);
            for (int i = from; i < end; i++) {
                Scene scene = sceneAt(realSeconds + eachSeconds * (i + 0.5));
                World world = world(scene, clouds);
                if (before.filter(known -> known.world().equals(world)).isEmpty()) {
                    boolean isFirst = i == from;
                    before = Optional.of(new Made(
                            world,
                            before.filter(known -> !isFirst)
                                    .map(known -> known.tracer().later(world))
                                    .orElseGet(() -> Tracer.of(world))));
                }
                looks.add(new Look(before.orElseThrow().tracer(), eye(scene)));
            }
        }
        return looks;
    }

    /// Tells whether anything may change while the shutter is open.
    ///
    /// @return false where all instants look alike
    public boolean isMoving() {
        return !stage.shot().moves().isEmpty() || stage.shot().findRelease().isPresent();
    }

    /// Tells what was taken for what the plan doesn't say.
    ///
    /// @return sentences
    public List<String> assumed() {
        return assumed;
    }
}
