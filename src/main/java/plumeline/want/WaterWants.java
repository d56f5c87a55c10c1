package plumeline.want;

import java.util.OptionalDouble;
import java.util.function.UnaryOperator;
import plumeline.fall.Medium;
import plumeline.geom.Body;
import plumeline.plan.Placed;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.Quantity;
import plumeline.stage.Immersed;
import plumeline.stage.Stage;
import plumeline.stage.TankFill;
import plumeline.water.Attitudes;
import plumeline.water.Hanging;
import plumeline.water.Hold;
import plumeline.water.Vessel;
import plumeline.water.Water;
import plumeline.wet.Lacks;

/// From a want on water as written to one that can be judged, or that says what is missing.
final class WaterWants {
    /// How far off a hung or floating thing's tilt may be, where the want doesn't say.
    private static final double WITHIN_RADIANS = Math.toRadians(3);

    private static final double PIXELS = 1;
    /// A base this near to the floor stands on it, metres.
    private static final double ON_THE_FLOOR_METRES = 0.002;

    private static final double PUSH_RADIANS = Math.toRadians(1);

    private final WantLine line;
    private final Stage stage;
    private final int index;

    private WaterWants(WantLine line, Stage stage) {
        this.line = line;
        this.stage = stage;
        index = stage.thingIndex(line.subjects().getFirst().name());
    }

    static boolean isOne(String word) {
        return switch (word) {
            case "stays_under",
                    "hangs",
                    "upright",
                    "beads_stay",
                    "sweats",
                    "stays_dry",
                    "line_hidden",
                    "tank_carries" -> true;
            default -> false;
        };
    }

    /// Makes a want of one of these words.
    static Want of(WantLine line, Plan plan, Stage stage) {
        if (line.word().equals("tank_carries")) {
            return TankCarries.of(line, plan, stage.shot().findTank());
        }
        WaterWants wants = new WaterWants(line, stage);
        Placed placed = wants.placed();
        return switch (line.word()) {
            case "stays_under" -> wants.staysUnder();
            case "hangs" -> wants.hangs(wants.wanted());
            case "upright" -> placed.isHung() ? wants.hangs(0) : wants.upright();
            case "beads_stay" -> BeadsStay.of(line, wants.index, placed.thing(), placed.name(), plan.film());
            case "line_hidden" -> LineHidden.of(line, wants.index, placed, wants.si("under", PIXELS));
            default -> Sweats.of(line, wants.index, placed.thing(), placed.name(), plan.film());
        };
    }

    private Placed placed() {
        return stage.shot().placed().get(index);
    }

    private double si(String key, double otherwise) {
        return line.written().findQuantity(key).map(Quantity::si).orElse(otherwise);
    }

    private Want unknown(String why) {
        return new Want.NotComputed(line, why);
    }

    private OptionalDouble findWater() {
        return stage.shot().findTank().map(TankFill::findDensity).orElse(OptionalDouble.empty());
    }

    private Want staysUnder() {
        if (stage.shot().findTank().isEmpty()) {
            return unknown(Lacks.NO_TANK);
        }
        if (findWater().isEmpty()) {
            return unknown(Lacks.water(stage.shot().findTank().orElseThrow()));
        }
        return switch (Immersed.of(placed().thing(), findWater().getAsDouble())) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> unknown(Lacks.sentence(lack, placed().name()));
            case Immersed.Reading.Known(Immersed immersed) ->
                new StaysUnder(line, index, si("by", 0), immersed, findWater().getAsDouble());
        };
    }

    /// The tilt that is wanted: as written, as placed, else upright; radians.
    private double wanted() {
        return line.written()
                .findQuantity("tilt")
                .map(Quantity::si)
                .orElseGet(() -> stage.scene(stage.startValues(), 0)
                        .things()
                        .get(index)
                        .pose()
                        .leanRadians());
    }

    private Want hangs(double tiltRadians) {
        String name = placed().name();
        if (!placed().isHung()) {
            return unknown(name + " hangs on no line: write where its lines leave it, tied: [free].");
        }
        boolean hasTank = stage.shot().findTank().isPresent();
        if (hasTank && stage.shot().findTank().flatMap(tank -> tank.water()).isEmpty()) {
            return unknown(Lacks.NO_DEPTH);
        }
        if (hasTank && findWater().isEmpty()) {
            return unknown(Lacks.water(stage.shot().findTank().orElseThrow()));
        }
        double water = findWater().orElse(Medium.AIR.densityKilogramsPerMetre3());
        return switch (Immersed.of(placed().thing(), water)) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> unknown(Lacks.sentence(lack, name));
            case Immersed.Reading.Known(Immersed immersed) -> hangs(immersed, water, tiltRadians);
        };
    }

    private Want hangs(Immersed immersed, double water, double tiltRadians) {
        return switch (immersed.body()) {
            case Immersed.Body.Untold(Immersed.Lack lack) -> unknown(Lacks.sentence(lack, placed().name()));
            case Immersed.Body.Of body -> {
                double tilt = Math.toDegrees(Math.IEEEremainder(tiltRadians, 2 * Math.PI));
                UnaryOperator<Vessel> held = any -> held(any, Math.toRadians(Math.abs(tilt)));
                Vessel vessel = held.apply(body.vessel());
                double net = Hanging.loadNewtons(vessel, water) / Water.GRAVITY_METRES_PER_SECOND2;
                if (Math.abs(net) < immersed.net().half()) {
                    yield unknown(Lacks.tooNear(placed().name(), immersed));
                }
                if (line.word().equals("upright") && findWater().isPresent() && net < 0) {
                    // Its lines are slack: it floats, upright or not.
                    yield turned(immersed, vessel, water, Lacks.assumed(immersed, body));
                }
                Poise inWater = new Poise(vessel, water);
                Poise inAir =
                        findWater().isPresent() ? new Poise(vessel, Medium.AIR.densityKilogramsPerMetre3()) : inWater;
                Poise.Wish wish = new Poise.Wish(tilt, Math.toDegrees(si("within", WITHIN_RADIANS)));
                Hangs.Loads loads =
                        new Hangs.Loads(immersed.mass().value(), net, assumed(vessel, Lacks.assumed(immersed, body)));
                Doubt doubt = Doubt.of(Immersed.listMoved(placed().thing(), water), held);
                yield new Hangs(line, index, wish, new Hangs.Around(water, inWater, inAir), loads, doubt);
            }
        };
    }

    /// Air that has no room under its base at the attitude that is wanted has gone before it is let go.
    private static Vessel held(Vessel vessel, double tiltRadians) {
        return vessel.withAirUnder(vessel.airUnderMetres3(tiltRadians));
    }

    private String assumed(Vessel vessel, String assumed) {
        String atTheTop = placed().tied().isEmpty()
                ? "Assumed: its lines leave it at its top; measure, and write them as tied. "
                : "";
        String under = vessel.airUnderMetres3(0) > 0
                ? "The air under its base lifts it there and may turn it: tilt it under water until none is left, and"
                        + " write the base's air: 0 ml. "
                : "";
        return (atTheTop + under + assumed).strip();
    }

    /// Of a thing on no line, where it stands before any mark is moved.
    private Want upright() {
        String name = placed().name();
        Body body = stage.scene(stage.startValues(), 0).things().get(index);
        boolean isWet = stage.findTank().filter(walls -> walls.isWet(body)).isPresent();
        if (isWet && findWater().isEmpty()) {
            return unknown(Lacks.water(stage.shot().findTank().orElseThrow()));
        }
        double around = isWet ? findWater().getAsDouble() : Medium.AIR.densityKilogramsPerMetre3();
        return switch (Immersed.of(placed().thing(), around)) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> unknown(Lacks.sentence(lack, name));
            case Immersed.Reading.Known(Immersed immersed) ->
                switch (immersed.body()) {
                    case Immersed.Body.Untold(Immersed.Lack lack) -> unknown(Lacks.sentence(lack, name));
                    case Immersed.Body.Of known ->
                        isWet && immersed.net().half() > Math.abs(immersed.net().value())
                                ? unknown(Lacks.tooNear(name, immersed))
                                : upright(body, immersed, known, around);
                };
        };
    }

    private Want upright(Body body, Immersed immersed, Immersed.Body.Of known, double around) {
        String assumed = Lacks.assumed(immersed, known);
        Vessel vessel = known.vessel();
        boolean isWet = around > Medium.AIR.densityKilogramsPerMetre3();
        boolean floats = immersed.net().value() < 0;
        double floor = isWet ? stage.findTank().orElseThrow().inside().low().z() : Double.NEGATIVE_INFINITY;
        boolean stands = !isWet || !floats && body.pose().base().z() <= floor + ON_THE_FLOOR_METRES;
        if (!stands) {
            return turned(immersed, vessel, around, assumed);
        }
        if (isWet && body.bounds().high().z() > stage.findTank().orElseThrow().waterLineMetres()) {
            return unknown("Not computed: the water line cuts " + placed().name() + ", which stands in it.");
        }
        double tip = Upright.tipDegrees(new Poise(vessel, around), body.solid());
        Upright.Rest rest = new Upright.Rest.Standing(tip, body.solid(), around);
        return new Upright(line, index, rest, assumed, doubt(around));
    }

    private Doubt doubt(double around) {
        return Doubt.of(Immersed.listMoved(placed().thing(), around), vessel -> vessel);
    }

    private Want turned(Immersed immersed, Vessel vessel, double water, String assumed) {
        Upright.Way way = immersed.net().value() < 0 ? Upright.Way.AFLOAT : Upright.Way.SINKING;
        double within = Math.toDegrees(si("within", WITHIN_RADIANS));
        return switch (Attitudes.settle(vessel, water, new Hold.Free(), PUSH_RADIANS)) {
            case Attitudes.Rest.Indifferent() ->
                unknown("Nothing turns " + placed().name() + " upright or over: it stays as it is turned. Hang it.");
            case Attitudes.Rest.At(Attitudes.Attitude attitude) ->
                new Upright(
                        line,
                        index,
                        new Upright.Rest.Turned(
                                way, Math.toDegrees(attitude.tiltRadians()), within, new Upright.Afloat(vessel, water)),
                        assumed,
                        doubt(water));
        };
    }
}
