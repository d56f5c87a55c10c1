package plumeline.cut.mask;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.fall.Medium;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.motion.Run;
import plumeline.motion.Swing;
import plumeline.motion.Travel;
import plumeline.pace.Sway;
import plumeline.plan.Mark;
import plumeline.plan.Move;
import plumeline.plan.Placed;
import plumeline.plan.Written;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.Immersed;
import plumeline.stage.MachineLimits;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.Strand;
import plumeline.stage.TankFill;
import plumeline.water.Line;
import plumeline.water.Water;

/// How far a strand may be from where the plan has it: as it hangs and swings, and as machines sway.
///
/// Where a machine carries along what hangs, it swings as a pendulum, by no more than twice the lean at the highest
/// acceleration: `2a/ω²`, all of it at the thing and none at the upper end. A rod doesn't swing. A placing error is no
/// swing: it stays as it is through the take. A machine sways as `pace` has it where that was measured.
///
/// **Source:** the undamped pendulum pushed for a while, any textbook of mechanics: at most twice the steady lean.
final class Swings {
    /// Added mass over displaced mass of what hangs upright and swings across itself (see [Line.Hung]).
    private static final double DRAGGED = 1;

    /// The pendulum's law holds for small swings: no more of its length than this counts.
    private static final double MOST_LEAN = 0.3;

    private final Stage stage;
    private final double[] values;
    private final List<String> notes = new ArrayList<>();

    Swings(Stage stage, double[] values) {
        this.stage = stage;
        this.values = values.clone();
    }

    /// What was taken for what isn't known, each as a sentence.
    List<String> notes() {
        return List.copyOf(notes);
    }

    /// How far a strand's end at the thing may be off to each side.
    ///
    /// @param swingMetres as it swings, metres
    /// @param placingMetres as it may have been placed beside the plan, for the whole take, metres
    record Off(double swingMetres, double placingMetres) {}

    /// Finds how far a strand's end at the thing may be off.
    Off off(Strand strand, Strand.Ends ends) {
        Placed placed = stage.shot().placed().get(strand.thing());
        double placing = 0;
        for (Mark mark : List.of(placed.at().x(), placed.at().y())) {
            placing = Math.max(placing, mark.error().at(0));
        }
        return new Off(strand.sort() == Strand.Sort.RIG ? 0 : swingMetres(strand, ends, placed), placing);
    }

    private double swingMetres(Strand strand, Strand.Ends ends, Placed placed) {
        double swings = 0;
        List<Move> moves = stage.shot().moves();
        for (int i = 0; i < moves.size(); i++) {
            if (carries(moves.get(i), placed.name())
                    && stage.wayOf(i, values).lengthMetres() > 0
                    && stage.findRun(i, values).isPresent()) {
                swings +=
                        pendulumMetres(strand, ends, i, stage.findRun(i, values).get());
            }
        }
        if (swings > 0) {
            notes.add(placed.name() + " may swing up to " + Print.number(swings * 1000, 1)
                    + " mm to each side as it is carried along: the masks are wider by it (swing columns).");
        }
        return swings;
    }

    private double pendulumMetres(Strand strand, Strand.Ends ends, int move, Run run) {
        Move moved = stage.shot().moves().get(move);
        double acceleration = run.peakAcceleration();
        if (!(acceleration > 0)) {
            acceleration = MachineLimits.of(moved.machine()).acceleration();
        }
        Placed placed = stage.shot().placed().get(strand.thing());
        if (!Double.isFinite(acceleration)) {
            notes.add("How " + placed.name() + " swings once " + moved.name()
                    + " runs isn't known: write its machine's acceleration.");
            return 0;
        }
        double length = Math.max(
                ends.far().distanceMetres(stage.standing(strand.thing(), values).middle()), ends.lengthMetres());
        if (!strand.isEnded()) {
            notes.add("Where " + placed.name() + "'s line is held isn't written (line: to): "
                    + Print.number(Strand.REACH_METRES, 0) + " m over it, for its swing.");
        }
        double period = Line.swingSeconds(hung(strand.thing()), length, Water.GRAVITY_METRES_PER_SECOND2);
        double omega = 2 * Math.PI / period;
        return Math.min(2 * acceleration / (omega * omega), MOST_LEAN * length);
    }

    /// What swings, by its mass and what it displaces; as in air where these aren't known.
    private Line.Hung hung(int thing) {
        boolean isWet = stage.findTank()
                .filter(walls -> walls.isWet(stage.standing(thing, values)))
                .isPresent();
        double density = isWet
                ? TankFill.findDensity(stage.shot().findTank().orElseThrow()).orElse(0)
                : Medium.AIR.densityKilogramsPerMetre3();
        Placed placed = stage.shot().placed().get(thing);
        if (density > 0
                && Immersed.of(placed.thing(), density) instanceof Immersed.Reading.Known(Immersed immersed)
                && immersed.net().value() > 0) {
            double mass = immersed.mass().value();
            return new Line.Hung(mass, Math.max(0, mass - immersed.net().value()), isWet ? DRAGGED : 0);
        }
        if (isWet) {
            notes.add(
                    "What " + placed.name() + " weighs in the water isn't known: it swings as in air, which is less.");
        }
        return Line.Hung.inAir(1);
    }

    /// How far machines may sway a place in the picture at an instant, px.
    double swayPixels(Strand strand, Scene scene, Vec place, Grain grain) {
        double pixels = 0;
        List<Move> moves = stage.shot().moves();
        String name = stage.shot().placed().get(strand.thing()).name();
        for (int i = 0; i < moves.size(); i++) {
            boolean isOfThing = carries(moves.get(i), name);
            boolean isOfCamera = moves.get(i).listCarried().isEmpty() || carries(moves.get(i), "camera");
            double size = isOfThing == isOfCamera ? 0 : sway(i, scene.realSeconds());
            if (size > 0) {
                pixels += size * perUnit(strand, scene, place, grain, i);
            }
        }
        return pixels;
    }

    private double perUnit(Strand strand, Scene scene, Vec place, Grain grain, int move) {
        double scale = ClipSize.scalePixels(scene);
        Vec axis = scene.aim().forward();
        Vec sight = place.minus(scene.aim().eye());
        double aside = sight.cross(axis).lengthMetres() / Math.max(Math.abs(sight.dot(axis)), 1e-3);
        return switch (stage.shot().moves().get(move).axis()) {
            case SLIDE, LIFT -> {
                Point moved = grain.of(stage.wayOf(move, values).unit());
                yield Math.hypot(moved.x(), moved.y());
            }
            case PAN, TILT -> scale * (1 + aside * aside);
            case ROLL -> scale * aside;
            case TURNTABLE -> {
                Vec base = scene.things().get(strand.thing()).pose().base();
                yield grain.levelPixels() * Math.hypot(place.x() - base.x(), place.y() - base.y());
            }
            case FOCUS, ZOOM -> 0;
        };
    }

    /// How far a machine may sway at an instant, metres or radians; 0 where that isn't known.
    private double sway(int index, double realSeconds) {
        Optional<Run> run = stage.findRun(index, values);
        Optional<Written> machine = stage.shot().moves().get(index).machine().map(one -> one.written());
        OptionalDouble hertz = si(machine, "sways.rate");
        OptionalDouble damping = si(machine, "sways.damping");
        if (run.isEmpty() || hertz.isEmpty() || damping.isEmpty()) {
            return 0;
        }
        Swing swing = new Swing(hertz.getAsDouble(), damping.getAsDouble());
        double at = realSeconds - stage.startSeconds(index);
        return at < 0 && !(run.get() instanceof Travel)
                ? 0
                : Sway.of(run.get(), swing, si(machine, "sways.by")).at(at);
    }

    private static OptionalDouble si(Optional<Written> written, String key) {
        return written.flatMap(one -> one.findQuantity(key)).stream()
                .mapToDouble(Quantity::si)
                .findFirst();
    }

    static boolean carries(Move move, String name) {
        return move.listCarried().stream().anyMatch(named -> named.name().equals(name));
    }
}
