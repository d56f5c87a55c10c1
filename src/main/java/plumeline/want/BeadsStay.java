package plumeline.want;

import java.util.List;
import java.util.Optional;
import plumeline.plan.Plan;
import plumeline.plan.Thing;
import plumeline.plan.WantLine;
import plumeline.plan.Written;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.water.ContactAngles;
import plumeline.water.Drops;
import plumeline.water.Glycerine;
import plumeline.water.Solution;
import plumeline.water.Surface;
import plumeline.water.Water;

/// Drops of a size stay on a thing's upright side; every round thing has one, however it leans.
///
/// Margin in mm: base diameter of the largest drop that stays, less the drops' own. No mark bears on it. Where the
/// least of the surface's usual angles and of the law's factor holds no such drop, it is tight.
///
/// @param line as written
/// @param thing index of the thing
/// @param sizeMetres base diameter of the drops, metres
/// @param found the largest that stay
record BeadsStay(WantLine line, int thing, double sizeMetres, Found found) implements Want {
    /// Drops that a crew sprays on, where the want gives no size. Common practice; `beads` tells their drying too.
    static final double USUAL_METRES = 0.002;

    private static final double HOLD = (Drops.LEAST_HOLD + Drops.MOST_HOLD) / 2;
    private static final double UPRIGHT_RADIANS = Math.PI / 2;

    /// The largest drops that stay.
    ///
    /// @param metres base diameter, metres
    /// @param leastMetres that of the least sample, metres
    /// @param assumed what was assumed, as a sentence
    record Found(double metres, double leastMetres, String assumed) {}

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, int thing, Thing product, String name, Plan.Film film) {
        Written keys = line.written();
        double glycerine =
                keys.findQuantity("liquid.glycerine").map(Quantity::si).orElse(0.0);
        double kelvin =
                film.written().findQuantity("air.temperature").map(Quantity::si).orElse(Water.ROOM_KELVIN);
        Optional<Drops.Liquid> liquid = findLiquid(glycerine, kelvin);
        if (liquid.isEmpty()) {
            return new NotComputed(
                    line, "Drops are known from 0 to 40 degC, with glycerine from 15 to 30 degC. Measure the air.");
        }
        Optional<List<ContactAngles>> angles = findAngles(product.written());
        if (angles.isEmpty()) {
            return new NotComputed(line, unknownSurface(product.written(), name));
        }
        double metres = diameter(liquid.get(), angles.get().getFirst(), HOLD);
        double least = angles.get().stream()
                .mapToDouble(each -> diameter(liquid.get(), each, Drops.LEAST_HOLD))
                .min()
                .orElseThrow();
        if (metres == 0) {
            return new NotComputed(
                    line,
                    "Not computed: at such contact angles water spreads to a film, or rolls off, on " + name + ".");
        }
        String assumed = product.written().has("surface") ? "" : "Assumed: its surface is a can's lacquer.";
        double size = keys.findQuantity("size").map(Quantity::si).orElse(USUAL_METRES);
        return new BeadsStay(line, thing, size, new Found(metres, Math.min(metres, least), assumed));
    }

    private static Optional<Drops.Liquid> findLiquid(double glycerine, double kelvin) {
        var mix = Solution.ofGlycerineByVolume(glycerine);
        var density = glycerine > 0
                ? mix.densityKilogramsPerMetre3(kelvin).find()
                : Water.densityKilogramsPerMetre3(kelvin).find();
        var tension = glycerine > 0
                ? Glycerine.surfaceTensionNewtonsPerMetre(mix, kelvin).find()
                : Water.surfaceTensionNewtonsPerMetre(kelvin).find();
        return density.isPresent() && tension.isPresent()
                ? Optional.of(new Drops.Liquid(density.getAsDouble(), tension.getAsDouble()))
                : Optional.empty();
    }

    /// The usual angles first, then the least and the most usual.
    private static Optional<List<ContactAngles>> findAngles(Written written) {
        Optional<Quantity> advancing = written.findQuantity("surface.advancing");
        if (advancing.isPresent()) {
            double most = advancing.get().si();
            double least =
                    written.findQuantity("surface.receding").map(Quantity::si).orElse(most);
            return least <= most && most <= Math.PI
                    ? Optional.of(List.of(new ContactAngles(most, least)))
                    : Optional.empty();
        }
        String word = written.findWord("surface").orElse(Surface.LACQUER.word());
        return Surface.find(word.replace('_', ' ').replace('-', ' '))
                .map(surface -> List.of(surface.usual(), surface.low(), surface.high()));
    }

    private static String unknownSurface(Written written, String name) {
        return written.has("surface.advancing")
                ? "Measure the angles inside a drop on " + name
                        + " again: it is larger while the drop grows than while it shrinks."
                : "Not known: how drops stand on " + written.findWord("surface").orElse("it") + ". Name " + name
                        + "'s surface lacquer, paint, glass, metal, wax or pet, or photograph a growing and a"
                        + " shrinking drop"
                        + " from the side: write surface: {advancing: 80 deg, receding: 50 deg}.";
    }

    private static double diameter(Drops.Liquid liquid, ContactAngles angles, double hold) {
        return switch (Drops.largestStaying(liquid, angles, UPRIGHT_RADIANS, hold)) {
            case Drops.Stay.UpTo(double metres) -> metres;
            case Drops.Stay.PastCaps(double metres) -> metres;
            case Drops.Stay.Every(), Drops.Stay.NoBeads(double _) -> 0;
        };
    }

    @Override
    public String unit() {
        return "mm";
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {Parts.MILLIMETRES * (found.metres - sizeMetres)};
    }

    @Override
    public boolean restsOnMarks() {
        return false;
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        String name = Parts.name(moments, thing);
        String sizes = "Drops of up to " + millimetres(found.metres) + " stay on " + name + "; "
                + millimetres(sizeMetres) + " is wanted";
        return Optional.of(
                found.metres >= sizeMetres
                        ? sizes + "."
                        : sizes + ": such drops run. Spray finer, or take a surface that holds them.");
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return found.leastMetres < sizeMetres
                ? Optional.of("On some samples only drops of up to " + millimetres(found.leastMetres)
                        + " stay. Try on a spare first.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        String mist = "Keep the mist off hot lamps, mains plugs and lenses; wipe the floor.";
        return Optional.of((mist + " " + found.assumed).strip());
    }

    private static String millimetres(double metres) {
        return Print.number(metres * Parts.MILLIMETRES, 1) + " mm";
    }
}
