package plumeline.want;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import plumeline.fall.Medium;
import plumeline.fall.Rise;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.quantity.Spread;
import plumeline.stage.Immersed;
import plumeline.stage.Stage;
import plumeline.stage.TankFill;
import plumeline.stage.TankWalls;
import plumeline.wet.Lacks;

/// A thing that is let go under water rises so far in a time.
///
/// Margin in s: that time less what it takes by its lift, its drag end on and the water that it drags along.
///
/// @param line as written
/// @param thing index of the thing
/// @param wished how far, in which time
/// @param floating the thing in the tank's water
/// @param papers the papers' unit of length
record Rises(WantLine line, int thing, Wished wished, Floating floating, PaperUnit papers) implements Want {
    /// How far, in which time.
    ///
    /// @param byMetres how far, m
    /// @param withinSeconds the time, s
    record Wished(double byMetres, double withinSeconds) {}

    /// However far off a mass may be, this of it is left.
    private static final double LEAST_SHARE = 1e-3;

    /// The thing in the tank's water.
    ///
    /// @param immersed what it weighs and displaces
    /// @param faceMetres2 its largest level section, m²
    /// @param water the water
    record Floating(Immersed immersed, double faceMetres2, Medium water) {
        /// Its rise with its net weight and its drag moved.
        Rise rise(double lessKilograms, double dragShare) {
            return new Rise(
                    Math.max(
                            LEAST_SHARE * immersed.mass().value(),
                            immersed.mass().value() - lessKilograms),
                    immersed.displaced().value(),
                    faceMetres2,
                    water,
                    dragShare);
        }
    }

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Stage stage, int thing, PaperUnit papers) {
        String name = line.subjects().getFirst().name();
        boolean isLetGo = stage.shot().findRelease().orElse(null) instanceof Release.OfThing release
                && release.thing().name().equals(name);
        if (!isLetGo) {
            return new NotComputed(line, "Nothing lets " + name + " go: write release: {thing: " + name + "}.");
        }
        Optional<TankPlace> tank = stage.shot().findTank();
        if (tank.isEmpty()) {
            return new NotComputed(line, Lacks.NO_TANK);
        }
        if (tank.get().water().isEmpty()) {
            return new NotComputed(line, Lacks.NO_DEPTH);
        }
        OptionalDouble density = TankFill.findDensity(tank.get());
        OptionalDouble viscosity = TankFill.viscosity(tank.get()).find();
        if (density.isEmpty() || viscosity.isEmpty()) {
            return new NotComputed(line, Lacks.water(tank.get()));
        }
        Medium water = new Medium(density.getAsDouble(), viscosity.getAsDouble());
        Body body = stage.scene(stage.startValues(), 0).things().get(thing);
        return switch (Immersed.of(stage.shot().placed().get(thing).thing(), density.getAsDouble())) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> new NotComputed(line, Lacks.sentence(lack, name));
            case Immersed.Reading.Known(Immersed immersed) ->
                of(line, thing, new Floating(immersed, face(body.solid()), water), name, papers);
        };
    }

    private static Want of(WantLine line, int thing, Floating floating, String name, PaperUnit papers) {
        Immersed immersed = floating.immersed();
        if (Math.abs(immersed.net().value()) < immersed.net().half()) {
            return new NotComputed(line, Lacks.tooNear(name, immersed));
        }
        Rise rise = floating.rise(0, 1);
        if (immersed.net().value() < 0 && !rise.isKnown()) {
            return new NotComputed(line, "Not computed: " + name + " floats by so little that it creeps up.");
        }
        double by = line.written().findQuantity("by").map(Quantity::si).orElse(0.0);
        double within = line.written().findQuantity("within").map(Quantity::si).orElse(0.0);
        return new Rises(line, thing, new Wished(by, within), floating, papers);
    }

    private static double face(Solid solid) {
        return switch (solid) {
            case Solid.Box box -> box.widthMetres() * box.depthMetres();
            case Solid.Revolved round -> Math.PI * round.reachMetres() * round.reachMetres();
        };
    }

    @Override
    public String unit() {
        return "s";
    }

    private boolean sinks() {
        return floating.immersed().net().value() >= 0;
    }

    private double seconds() {
        return seconds(0, 1);
    }

    private double seconds(double lessKilograms, double dragShare) {
        double seconds = floating.rise(lessKilograms, dragShare).seconds(wished.byMetres());
        return Math.min(seconds, Wants.Elsewhere.NEVER_SECONDS);
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {wished.withinSeconds() - seconds()};
    }

    @Override
    public boolean isMeasured(Moments moments) {
        return seconds() < Wants.Elsewhere.NEVER_SECONDS;
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    /// The times in which it is up four times in five: drag and net weight moved by themselves, as a root sum of
    /// squares.
    private double[] interval() {
        double moved =
                Spread.EIGHTY_OVER_NINETY_FIVE * floating.immersed().net().half();
        double usual = seconds();
        double early = Math.hypot(usual - seconds(0, Rise.LEAST_DRAG), usual - seconds(moved, 1));
        double late = Math.hypot(seconds(0, Rise.MOST_DRAG) - usual, seconds(-moved, 1) - usual);
        return new double[] {Math.max(0, usual - early), usual + late};
    }

    /// How far its top is under the surface.
    private double roomMetres(Moments moments) {
        TankWalls walls = moments.stage().findTank().orElseThrow();
        return walls.waterLineMetres()
                - moments.at(0).things().get(thing).bounds().high().z();
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        Body body = moments.at(0).things().get(thing);
        if (!moments.stage().findTank().orElseThrow().isWithin(body)) {
            return Optional.of(Parts.name(moments, thing) + " stands outside the tank.");
        }
        double room = roomMetres(moments);
        return !sinks() && room < wished.byMetres()
                ? Optional.of("Not computed: " + Parts.name(moments, thing) + " breaks the surface after "
                        + new Print(papers).length(Math.max(0, room), Print.Hand.TAPE)
                        + ". Ask for less, let it go deeper, or fill higher.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return sinks()
                ? Optional.of(Parts.name(moments, thing) + " sinks by "
                        + Lacks.grams(floating.immersed().net().value())
                        + ": it won't rise. Take weight out, or leave air in.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        double[] interval = interval();
        double off = seconds() - wished.withinSeconds();
        return Optional.of(Parts.name(moments, thing) + " floats by "
                + Lacks.grams(floating.immersed().net().value()) + " and is "
                + new Print(papers).length(wished.byMetres()) + " up after " + InkWants.seconds(seconds())
                + " (four takes in five: " + InkWants.seconds(interval[0]) + " to " + InkWants.seconds(interval[1])
                + "), at up to "
                + new Print(papers).length(floating.rise(0, 1).steadyMetresPerSecond()) + "/s; wanted within "
                + Print.seconds(wished.withinSeconds(), 2)
                + (off > 0 ? ": " + InkWants.seconds(off) + " late. Make it lighter." : "."));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return interval()[1] > wished.withinSeconds()
                ? Optional.of("Its drag isn't known so closely: let one go in a bucket and count frames.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        String turns = "Rising end on is assumed: what turns over on its way is slower.";
        String unseen = InkWants.findUnseen(moments.stage(), seconds()).orElse("");
        return Optional.of(
                Stream.of(turns, unseen, Lacks.assumed(floating.immersed().assumed()))
                        .filter(sentence -> !sentence.isEmpty())
                        .collect(Collectors.joining(" ")));
    }
}
