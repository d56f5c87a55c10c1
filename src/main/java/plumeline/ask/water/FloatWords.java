package plumeline.ask.water;

import java.util.ArrayList;
import java.util.List;
import plumeline.answer.Answer.Notes;
import plumeline.geom.Vec;
import plumeline.quantity.Print;
import plumeline.quantity.Spread;
import plumeline.water.Attitudes;
import plumeline.water.Buoyancy;
import plumeline.water.Hold;
import plumeline.water.Remedies;
import plumeline.water.Vessel;
import plumeline.water.Water;

/// What `float` says beside its numbers; whatever it tells to try, it has tried.
final class FloatWords {
    /// Common practice: 20 to 50 g down, so that bubbles and a nudge do nothing.
    private static final double ENOUGH_KILOGRAMS = 0.020;

    private static final double LEAST_SPILT_METRES3 = 0.05e-6;

    private final FloatInquiry.Found found;
    private final FloatBody body;
    private final List<String> because = new ArrayList<>();
    private final List<String> attempts = new ArrayList<>();
    private final List<String> cautions = new ArrayList<>();

    FloatWords(FloatInquiry.Found found) {
        this.found = found;
        this.body = found.inputs().body();
    }

    Notes notes() {
        sayNet();
        sayBase();
        sayAir();
        sayAttitude();
        if (body.netKilograms() > 0 && !found.isNeutral()) {
            sayRemedies();
        } else if (body.netKilograms() > -ENOUGH_KILOGRAMS) {
            sayHeavier();
        }
        sayContents();
        cautions.add("Water near mains: residual-current protection tested that day, drip loops, low voltage within"
                + " reach of the water, unplug before hands go in.");
        if (found.inputs().closed()
                && body.parts() instanceof FloatBody.Parts.Known known
                && known.liquidMetres3() > 0) {
            cautions.add(
                    "A sealed fizzy drink is under pressure: chill it and open it by its own lid, never pierce it.");
        }
        return new Notes(
                because,
                attempts,
                cautions,
                List.of(
                        "Archimedes; derived in docs/derivations/float.md",
                        "water: M. Tanaka et al., Metrologia 38 (2001) 301; 20 to 50 g down: common practice"));
    }

    private void sayNet() {
        double net = body.netKilograms();
        String side = net > 0 ? "Floats by " : "Sinks by ";
        double lifted = body.outsideMetres3() * body.waterKilogramsPerMetre3();
        because.add((found.isNeutral() ? "Neutral, within 0.05 g" : side + FloatBody.grams(Math.abs(net))) + spread(net)
                + ": it displaces "
                + FloatBody.grams(lifted) + " of water and weighs " + FloatBody.grams(body.wholeKilograms())
                + ". The verdict is on staying under only.");
        if (found.isNeutral()) {
            because.add("It neither floats nor sinks for sure: the least bubble lifts it, a wet label takes it down.");
        } else if (net <= 0) {
            because.add("A bubble of " + FloatBody.millilitres(-net / body.waterKilogramsPerMetre3())
                    + " on its skin or under its base floats it: wet it, wipe it, tilt its base clear of air.");
        }
    }

    /// How far the net lift reaches, and the odds by what it reaches toward nothing; half of them on each side.
    private String spread(double net) {
        double down = found.inputs().netReach().down();
        double up = found.inputs().netReach().up();
        if (down + up == 0) {
            return "";
        }
        boolean even = Math.abs(up - down) < 1e-3 * (up + down);
        double half = (net > 0 ? down : up) / Spread.EIGHTY_OVER_NINETY_FIVE;
        double sinks = Buoyancy.oddsOfSinking(net, half);
        return (even
                        ? " ± " + FloatBody.grams(half) + " (95 %)"
                        : " (80 %: from " + sided(net - down) + " to " + sided(net + up) + ")")
                + "; odds that it sinks " + Print.number(100 * Math.clamp(sinks, 0.001, 0.999), 1) + " %";
    }

    private static String sided(double net) {
        return FloatBody.grams(Math.abs(net)) + (net > 0 ? " up" : " down");
    }

    /// What the air under its base does, and what it does to it on a line from its top.
    private void sayBase() {
        double under = body.form().underMetres3();
        if (under <= 0) {
            return;
        }
        double cleared = body.netKilograms() - under * body.waterKilogramsPerMetre3();
        StringBuilder said = new StringBuilder("Its hollow base holds " + FloatBody.millilitres(under)
                + " of air; tilted clear of it, it " + goes(cleared) + ".");
        if (found.vessel().isPresent() && found.rest().isPresent()) {
            Vessel vessel = found.vessel().get();
            if (found.rest().get() instanceof Attitudes.Rest.At(Attitudes.Attitude attitude)) {
                double left = attitude.airUnderMetres3();
                if (under - left > LEAST_SPILT_METRES3) {
                    said.append(" Let go upright it leans to " + degrees(attitude.tiltRadians()) + ", where all but "
                            + FloatBody.millilitres(left) + " has spilled; it then "
                            + goes(body.netKilograms() - (under - left) * body.waterKilogramsPerMetre3()) + ".");
                }
            }
            if (body.netKilograms() < 0) {
                said.append(" Hung by its top it rests at " + hung(vessel) + ", at " + hung(vessel.withAirUnder(0))
                        + " without that air.");
            }
        }
        because.add(said.toString());
    }

    private static String goes(double net) {
        return (net > 0 ? "still floats by " : "sinks by ") + FloatBody.grams(Math.abs(net));
    }

    private String hung(Vessel vessel) {
        Hold top = new Hold.Tied(vessel.outer().highestMetres(Vec.UP));
        return switch (Attitudes.settle(vessel, body.waterKilogramsPerMetre3(), top, Math.toRadians(1))) {
            case Attitudes.Rest.At(Attitudes.Attitude attitude) -> {
                double left = attitude.airUnderMetres3();
                yield degrees(attitude.tiltRadians())
                        + (left > 0 ? " with " + FloatBody.millilitres(left) + " of it left" : "");
            }
            case Attitudes.Rest.Indifferent() -> "any tilt";
        };
    }

    private static String degrees(double radians) {
        return Print.number(Math.toDegrees(radians), 0) + " deg";
    }

    /// A liquid whose density is a guess: what it would change, and how to weigh it.
    private void sayContents() {
        if (!found.inputs().guessed() || !(body.parts() instanceof FloatBody.Parts.Known known)) {
            return;
        }
        double hundredth = known.liquidMetres3() * 10;
        double net = body.netKilograms();
        boolean rests = net > 0
                ? found.inputs().netReach().down() > net
                : found.inputs().netReach().up() > -net;
        because.add("Its contents' density is a guess: each 0.01 g/ml of it is " + FloatBody.grams(hundredth)
                + (rests ? ", so that the verdict rests on it." : "."));
        attempts.add(
                "Weigh 100 ml of its contents and give contents: {volume: ..., weighed: {volume: 100 ml, mass: ...}}.");
    }

    private void sayAir() {
        if (!(body.parts() instanceof FloatBody.Parts.Known known)) {
            because.add(
                    "What is inside isn't known: give contents, and empty_mass instead of whole_mass, for the air it"
                            + " may hold and what flooding does.");
            return;
        }
        double most = found.findMostAir().orElseThrow();
        String holds = "It holds " + FloatBody.millilitres(known.airMetres3()) + " of air; ";
        because.add(holds
                + (most < 0
                        ? "it floats even without any."
                        : "it sinks with up to " + FloatBody.millilitres(most) + ", the rest filled with "
                                + (known.liquidMetres3() > 0 && found.inputs().closed() ? "its contents." : "water.")));
    }

    private void sayAttitude() {
        if (found.rest().isEmpty()) {
            because.add(
                    "Which end is up isn't known: give a profile or diameter, height and shape_factor, with empty_mass"
                            + " and contents.");
            return;
        }
        List<String> rests = new ArrayList<>();
        double water = body.waterKilogramsPerMetre3();
        for (Attitudes.Attitude each : Attitudes.list(found.vessel().orElseThrow(), water, new Hold.Free())) {
            rests.add(degrees(each.tiltRadians()) + side(each));
        }
        String how = body.netKilograms() > 0 ? "Afloat" : "Free under water";
        because.add(
                rests.isEmpty()
                        ? how + " no way up is preferred: it stays as it is turned; on a line it hangs below its tie."
                        : how
                                + ", let go upright, it comes to rest as told; all its rests"
                                + " (0 is upright, 180 upside down): "
                                + String.join(", ", rests) + ". Its wall is taken as evenly thick.");
    }

    /// Which side of a box is up.
    private String side(Attitudes.Attitude attitude) {
        boolean leans = Math.sin(attitude.tiltRadians()) > 0.05;
        if (!leans || found.vessel().orElseThrow().isRound()) {
            return "";
        }
        double toward = Math.toDegrees(attitude.towardRadians());
        return toward < 5 ? " along its width" : toward > 85 ? " along its depth" : " over a corner";
    }

    private void sayHeavier() {
        double lacking = (ENOUGH_KILOGRAMS + body.netKilograms()) * Water.GRAVITY_METRES_PER_SECOND2;
        double mass = Buoyancy.ballastKilograms(
                lacking, found.inputs().ballastKilogramsPerMetre3(), body.waterKilogramsPerMetre3());
        attempts.add("Add " + FloatBody.grams(mass) + " of ballast at its base: 20 g down then.");
    }

    private void sayRemedies() {
        if (found.vessel().isEmpty()) {
            sayPlainRemedies();
            return;
        }
        double water = body.waterKilogramsPerMetre3();
        for (Remedies.Remedy each :
                Remedies.list(found.vessel().get(), water, found.inputs().ballastKilogramsPerMetre3(), 0, 0)) {
            if (each.works()) {
                attempts.add(said(each));
            } else {
                because.add("No remedy: " + what(each) + ", as " + why(each) + ".");
            }
        }
    }

    private void sayPlainRemedies() {
        found.findFloodedNewtons()
                .filter(newtons -> newtons < 0)
                .ifPresent(newtons -> attempts.add("Open, drain and flood it, no air left: "
                        + FloatBody.grams(-newtons / Water.GRAVITY_METRES_PER_SECOND2) + " down."));
        attempts.add("Tie it to the tank's floor: the line pulls " + newtons(body.netNewtons()) + ".");
        double mass = Buoyancy.ballastKilograms(
                body.netNewtons() + ENOUGH_KILOGRAMS * Water.GRAVITY_METRES_PER_SECOND2,
                found.inputs().ballastKilogramsPerMetre3(),
                body.waterKilogramsPerMetre3());
        attempts.add("Ballast outside, under its base: " + FloatBody.grams(found.ballastKilograms())
                + " just sinks it, " + FloatBody.grams(mass) + " gives 20 g down.");
    }

    private static String newtons(double newtons) {
        return Print.number(newtons, newtons < 0.1 ? 4 : 2) + " N";
    }

    private static String said(Remedies.Remedy remedy) {
        String down = "; " + FloatBody.grams(-remedy.netLiftNewtons() / Water.GRAVITY_METRES_PER_SECOND2)
                + " down, upright on a line from its top.";
        return switch (remedy.way()) {
            case CLEAR_BASE -> "Tilt it under water until no air is left under its base" + down;
            case OPEN_DRAIN_FLOOD -> "Open it, drain it and fill it with tank water until no bubble is left" + down;
            case BALLAST_INSIDE, BALLAST_OUTSIDE -> what(remedy) + down;
            case TIE_DOWN -> what(remedy) + "; it stands upright, all under.";
            case OTHER_LIQUID -> what(remedy) + down;
        };
    }

    private static String what(Remedies.Remedy remedy) {
        return switch (remedy.way()) {
            case CLEAR_BASE -> "Let the air out from under its base";
            case OPEN_DRAIN_FLOOD -> "Open, drain and flood it";
            case BALLAST_INSIDE -> "Put " + FloatBody.grams(remedy.amount()) + " of ballast inside, on its floor";
            case BALLAST_OUTSIDE -> "Fix " + FloatBody.grams(remedy.amount()) + " of ballast under its base";
            case TIE_DOWN -> "Tie its base to the tank's floor: the line pulls " + newtons(remedy.amount());
            case OTHER_LIQUID ->
                "Fill it with a liquid of " + Print.number(remedy.amount() / 1e3, 3) + " g/ml, syrup or brine";
        };
    }

    private static String why(Remedies.Remedy remedy) {
        return switch (remedy.result()) {
            case WORKS -> "it works";
            case FLOATS -> "it still floats";
            case TOO_LITTLE -> "it sinks by too little";
            case TURNS -> "it turns to " + degrees(remedy.tiltRadians());
            case NO_ROOM -> "there is no room for it";
            case NO_SUCH_LIQUID -> "no clear liquid is so heavy";
        };
    }
}
