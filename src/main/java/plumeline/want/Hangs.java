package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import plumeline.fall.Medium;
import plumeline.geom.Body;
import plumeline.plan.Placed;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.stage.HangingLine;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.water.Line;
import plumeline.water.Water;
import plumeline.wet.Lacks;

/// A thing hangs at a tilt, wholly under the tank's water or wholly out of it; `upright` of a hung thing is the same at
/// 0.
///
/// Margin in degrees in two parts, see [Poise#parts]; one part more says how far it is from being cut by the water
/// line, in mm, and is none of the margin.
///
/// @param line as written
/// @param thing index of the thing
/// @param wish the tilt
/// @param around how it hangs in water and in air
/// @param loads what it weighs, for its line
/// @param doubt what was measured of it and may be off
record Hangs(WantLine line, int thing, Poise.Wish wish, Around around, Loads loads, Doubt doubt) implements Want {
    private static final String WIRE = "that is beyond its ends, so tie it to a wire or a frame that reaches there.";

    /// How it hangs.
    ///
    /// @param waterKilogramsPerMetre3 the tank's water, or the air where there is no tank
    /// @param inWater how it hangs in that
    /// @param inAir how it hangs in air
    record Around(double waterKilogramsPerMetre3, Poise inWater, Poise inAir) {}

    /// Its weight.
    ///
    /// @param airKilograms all that it weighs lifted out, kilograms
    /// @param netKilograms its weight in water, negative where it floats, kilograms
    /// @param assumed what was assumed, as a sentence
    record Loads(double airKilograms, double netKilograms, String assumed) {}

    @Override
    public String unit() {
        return "deg";
    }

    @Override
    public double[] parts(Moments moments) {
        Scene scene = scene(moments);
        double cover = coverMetres(moments.stage(), scene.things().get(thing));
        double[] own = poise(moments).parts(ties(moments), wish);
        double[] all = Arrays.copyOf(own, own.length + 1);
        all[own.length] = Math.clamp(Parts.MILLIMETRES * cover, -Parts.FAR_MILLIMETRES, Parts.FAR_MILLIMETRES);
        return all;
    }

    @Override
    public double margin(double[] parts) {
        return Math.min(parts[0], parts[1]);
    }

    @Override
    public boolean restsOnMarks() {
        return !around.inWater().floats() || !around.inAir().floats();
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        return coverMetres(moments.stage(), scene(moments).things().get(thing)) < 0
                ? Optional.of("Not computed: the water line cuts " + Parts.name(moments, thing)
                        + ", or it reaches through the tank's wall. Hang it wholly under the water or"
                        + " wholly out of it.")
                : Optional.empty();
    }

    private Scene scene(Moments moments) {
        return moments.at(moments.stage().frameOf(line.when()));
    }

    private Poise.Ties ties(Moments moments) {
        Stage stage = moments.stage();
        Placed placed = stage.shot().placed().get(thing);
        double placedTilt =
                Math.toDegrees(scene(moments).things().get(thing).pose().leanRadians());
        double cut = placed.tilt().isPresent() ? Math.IEEEremainder(placedTilt, 360) : wish.tiltDegrees();
        List<Double> ties = stage.tiesMetres(thing, moments.values());
        return new Poise.Ties(ties.isEmpty() ? atTheTop(placed, moments) : ties, cut);
    }

    /// Where lines leave it that nobody wrote a height of.
    private List<Double> atTheTop(Placed placed, Moments moments) {
        int count = (int) Math.max(1, placed.lines().orElse(1));
        return Collections.nCopies(count, heightMetres(moments));
    }

    private double heightMetres(Moments moments) {
        return scene(moments).things().get(thing).solid().heightMetres();
    }

    private Poise poise(Moments moments) {
        return isWet(moments) ? around.inWater() : around.inAir();
    }

    private boolean isWet(Moments moments) {
        return isWet(moments.stage(), scene(moments).things().get(thing));
    }

    private static boolean isWet(Stage stage, Body body) {
        return stage.findTank().filter(walls -> walls.underMetres(body) >= 0).isPresent();
    }

    /// How far it is from being cut: by the water line, or by a wall.
    private static double coverMetres(Stage stage, Body body) {
        return stage.findTank()
                .map(walls -> Math.max(walls.underMetres(body), walls.outMetres(body)))
                .orElse(Parts.FAR_MILLIMETRES / Parts.MILLIMETRES);
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        String name = Parts.name(moments, thing);
        Poise poise = poise(moments);
        if (poise.floats()) {
            return Optional.of(name + " floats by " + Lacks.grams(loads.netKilograms())
                    + ": a line from above would have to push. Make it sink first: ask float.");
        }
        Poise.Ties ties = ties(moments);
        double tilt = poise.tiltDegrees(ties, wish);
        String wanted = Lacks.degrees(wish.tiltDegrees()) + " ± " + Lacks.degrees(wish.withinDegrees()) + " is wanted";
        double balanceMetres = poise.balanceMetres(Math.abs(wish.tiltDegrees()));
        String balance = new Print(papers).length(balanceMetres, Print.Hand.TAPE) + " from its base: ";
        boolean isOnIt = balanceMetres > 0 && balanceMetres < heightMetres(moments);
        double[] parts = poise.parts(ties, wish);
        if (margin(parts) >= 0) {
            return Optional.of(name + " hangs at " + Lacks.degrees(tilt) + "; " + wanted + ". "
                    + pulls(poise.pullsNewtons(ties, wish), isWet(moments)));
        }
        if (poise.tips(ties, wish)) {
            return Optional.of(name + " tips to " + Lacks.degrees(tilt)
                    + ": a line would have to push. It balances " + balance
                    + (isOnIt ? "tie it on both sides of that." : WIRE));
        }
        if (parts[1] >= 0) {
            return Optional.of(name + " hangs at " + Lacks.degrees(tilt) + "; " + wanted + ".");
        }
        return Optional.of(name + " comes to rest at " + Lacks.degrees(tilt) + "; " + wanted + ". It balances "
                + balance + (isOnIt ? "tie it " + where() + "." : WIRE));
    }

    /// What each line pulls as it hangs now; empty where it doesn't hang on all of them.
    List<Double> pullsNewtons(Moments moments) {
        Poise poise = poise(moments);
        Poise.Ties ties = ties(moments);
        return poise.floats() || poise.tips(ties, wish) ? List.of() : poise.pullsNewtons(ties, wish);
    }

    /// It may not hang so where what was measured is off as far as it may be.
    @Override
    public Optional<String> findTight(Moments moments) {
        Poise.Ties ties = ties(moments);
        double[] parts = poise(moments).parts(ties, wish);
        if (margin(parts) < 0) {
            return Optional.empty();
        }
        double density = isWet(moments) ? around.waterKilogramsPerMetre3() : Medium.AIR.densityKilogramsPerMetre3();
        return doubt.findDeciding(parts, vessel -> new Poise(vessel, density).parts(ties, wish))
                .map(measure -> Doubt.sentence(Parts.name(moments, thing) + " hangs", measure));
    }

    private String where() {
        double wanted = Math.abs(wish.tiltDegrees());
        return wanted < wish.withinDegrees()
                ? "above that"
                : wanted > 180 - wish.withinDegrees() ? "below that" : "on both sides of that";
    }

    private static String pulls(List<Double> pulls, boolean isWet) {
        String where = isWet ? "In water " : "In air ";
        return where
                + (pulls.size() == 1 ? "its line pulls " : "its lines pull ")
                + pulls.stream().map(Lacks::newtons).collect(Collectors.joining(" and ")) + ".";
    }

    /// A line that is too weak makes it fail, however well it would hang.
    @Override
    public Optional<String> findLack(Moments moments) {
        double newtons = loads.airKilograms() * Water.GRAVITY_METRES_PER_SECOND2;
        return HangingLine.find(moments.stage().shot().placed().get(thing))
                .filter(hung -> hung.safetyFactor(newtons) < Line.LEAST_FACTOR)
                .map(hung -> "Its line is too weak: one alone" + bears(hung));
    }

    private String bears(HangingLine hung) {
        double factor = hung.safetyFactor(loads.airKilograms() * Water.GRAVITY_METRES_PER_SECOND2);
        return " bears " + Print.number(Math.floor(factor * 10) / 10, 1)
                + " times its weight in air at the knot; five times is asked for.";
    }

    /// Hanging things hurt people.
    @Override
    public Optional<String> findCaution(Moments moments) {
        List<String> cautions = new ArrayList<>();
        Placed placed = moments.stage().shot().placed().get(thing);
        double newtons = loads.airKilograms() * Water.GRAVITY_METRES_PER_SECOND2;
        Optional<HangingLine> hung = HangingLine.find(placed);
        if (hung.isEmpty()) {
            cautions.add("Its line isn't given: see that one alone bears " + Lacks.newtons(Line.LEAST_FACTOR * newtons)
                    + " at the knot, five times its weight in air.");
        } else if (hung.get().safetyFactor(newtons) >= Line.LEAST_FACTOR) {
            cautions.add("One line alone" + bears(hung.get()));
        }
        cautions.add(
                "Nobody's hand or head under it, a soft mat on glass; lift it out of the water with a hand beneath.");
        cautions.add(assumed(hung));
        cautions.removeIf(String::isEmpty);
        return Optional.of(String.join(" ", cautions));
    }

    private String assumed(Optional<HangingLine> hung) {
        String lines = hung.map(line -> Lacks.assumed(line.assumed())).orElse("");
        return (loads.assumed() + " " + lines).strip();
    }
}
