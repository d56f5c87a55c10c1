package plumeline.want;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import plumeline.geom.Solid;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.water.Vessel;
import plumeline.wet.Lacks;
import plumeline.wet.Sinking;

/// A thing on no line stays upright: standing, afloat, or as it sinks.
///
/// Margin in degrees: of one that stands, how much farther it may lean than it is placed before it falls over its
/// base's edge; of one in the water, how much nearer to upright it comes to rest than `within`. No mark bears on the
/// second.
///
/// @param line as written
/// @param thing index of the thing
/// @param rest how it rests
/// @param assumed what was assumed, as a sentence
/// @param doubt what was measured of it and may be off
record Upright(WantLine line, int thing, Rest rest, String assumed, Doubt doubt) implements Want {
    private static final double STEP_DEGREES = 0.25;
    private static final double LYING_DEGREES = 90;

    /// How it rests.
    sealed interface Rest {
        /// It stands on its base.
        ///
        /// @param tipDegrees the lean from which it falls
        /// @param solid its form
        /// @param around density of what it stands in, kilograms a cubic metre
        record Standing(double tipDegrees, Solid solid, double around) implements Rest {}

        /// The water turns it.
        ///
        /// @param way how it is in the water
        /// @param tiltDegrees where it comes to rest, let go upright
        /// @param withinDegrees how far that may be off
        /// @param afloat the thing itself
        record Turned(Way way, double tiltDegrees, double withinDegrees, Afloat afloat) implements Rest {}
    }

    /// A thing in the water that nothing holds.
    ///
    /// @param vessel the thing
    /// @param waterKilogramsPerMetre3 the water's density, kilograms a cubic metre
    record Afloat(Vessel vessel, double waterKilogramsPerMetre3) {}

    /// How a thing that nothing holds is in the water.
    enum Way {
        AFLOAT("floats"),
        SINKING("sinks");

        private final String verb;

        Way(String verb) {
            this.verb = verb;
        }
    }

    /// The lean from which a body falls over the edge of its base: there its weight's line goes through the edge,
    /// r = b(θ) tan θ.
    ///
    /// @param poise where its weight's line meets its axis
    /// @param solid its form, with its base's radius, of a box half its narrower side
    /// @return degrees, 90 where it never falls
    static double tipDegrees(Poise poise, Solid solid) {
        double radius = switch (solid) {
            case Solid.Revolved round -> round.stations().getFirst().radiusMetres();
            case Solid.Box box -> Math.min(box.widthMetres(), box.depthMetres()) / 2;
        };
        double before = radius;
        for (double tilt = STEP_DEGREES; tilt < LYING_DEGREES; tilt += STEP_DEGREES) {
            double left = radius - poise.balanceMetres(tilt) * Math.tan(Math.toRadians(tilt));
            if (left < 0) {
                return tilt - STEP_DEGREES * left / (left - before);
            }
            before = left;
        }
        return LYING_DEGREES;
    }

    @Override
    public String unit() {
        return "deg";
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {
            switch (rest) {
                case Rest.Standing standing -> standing.tipDegrees() - leanDegrees(moments);
                case Rest.Turned turned -> turned.withinDegrees() - turned.tiltDegrees();
            }
        };
    }

    private double leanDegrees(Moments moments) {
        double lean = moments.at(moments.stage().frameOf(line.when()))
                .things()
                .get(thing)
                .pose()
                .leanRadians();
        return Math.abs(Math.toDegrees(Math.IEEEremainder(lean, 2 * Math.PI)));
    }

    @Override
    public boolean restsOnMarks() {
        return rest instanceof Rest.Standing;
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        String name = Parts.name(moments, thing);
        return Optional.of(
                switch (rest) {
                    case Rest.Standing stands -> standing(name, stands.tipDegrees(), leanDegrees(moments));
                    case Rest.Turned(Way way, double tilt, double within, Afloat _) ->
                        name + " " + way.verb + ", and comes to rest at " + Lacks.degrees(tilt) + "; "
                                + Lacks.degrees(within) + " at most is wanted.";
                });
    }

    @Override
    public List<String> listAttempts(Moments moments) {
        if (!(rest instanceof Rest.Turned(Way way, double _, double within, Afloat afloat))) {
            return List.of();
        }
        String rests = way == Way.AFLOAT ? "it then floats upright." : "it then sinks upright.";
        OptionalInt grams = Sinking.findUprightGrams(afloat.vessel, afloat.waterKilogramsPerMetre3, within);
        List<String> all = new ArrayList<>();
        grams.ifPresent(least -> all.add("Fix " + least + " g of steel under its base"
                + Sinking.written(afloat.vessel, least / 1e3, Vessel.Ballast.Where.OUTSIDE) + ": " + rests));
        if (way == Way.SINKING) {
            all.add("Hang it by its top: ask hang.");
        } else if (grams.isEmpty()) {
            all.add("Make it sink, then hang it by its top: ask float, ask hang.");
        }
        return all;
    }

    private static String standing(String name, double tip, double lean) {
        return lean < tip
                ? name + " stands; leaned " + Lacks.degrees(tip) + " it falls."
                : name + " falls: it is placed at " + Lacks.degrees(lean) + ", and from " + Lacks.degrees(tip)
                        + " on it falls.";
    }

    /// What was measured may be off so far that it leans or falls.
    @Override
    public Optional<String> findTight(Moments moments) {
        double[] parts = parts(moments);
        if (parts[0] < 0) {
            return Optional.empty();
        }
        String name = Parts.name(moments, thing);
        return switch (rest) {
            case Rest.Standing(double _, Solid solid, double around) ->
                doubt.findDeciding(parts, vessel ->
                                new double[] {tipDegrees(new Poise(vessel, around), solid) - leanDegrees(moments)})
                        .map(measure -> Doubt.sentence(name + " stands", measure));
            case Rest.Turned(Way _, double _, double within, Afloat afloat) ->
                doubt.findDeciding(parts, vessel ->
                                new double[] {within - Sinking.restDegrees(vessel, afloat.waterKilogramsPerMetre3())})
                        .map(measure -> Doubt.sentence(name + " rests", measure));
        };
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return assumed.isEmpty() ? Optional.empty() : Optional.of(assumed);
    }
}
