package plumeline.lesson;

import java.util.List;
import plumeline.ink.Descent;
import plumeline.ink.ReadTake;
import plumeline.ink.Release;
import plumeline.quantity.Quantity;
import plumeline.take.Conditions;
import plumeline.take.Take;
import plumeline.water.Water;

/// Makes plain numbers of takes.
final class TakeNumbers {
    /// Counts for nothing where ink is let go at once; a release has one.
    private static final double SOME_BORE_METRES = 0.004;

    private static final double COLDEST_KELVIN = 273.15;
    private static final double WARMEST_KELVIN = 313.15;

    private TakeNumbers() {}

    /// What was let go; water past 0 to 40 degC counts as there.
    static Descent descent(Conditions.Told told) {
        double kelvin = Math.clamp(told.water().si(), COLDEST_KELVIN, WARMEST_KELVIN);
        double water = Water.densityKilogramsPerMetre3(kelvin).find().orElseThrow();
        double viscosity = Water.viscosityPascalSeconds(kelvin).find().orElseThrow() / water;
        double reduced = Water.GRAVITY_METRES_PER_SECOND2 * (told.density().si() - water) / water;
        double volume = told.volume().si();
        Release release = switch (told.outlet()) {
            case Conditions.Outlet.AtOnce() -> new Release(volume, reduced, SOME_BORE_METRES, 0, viscosity);
            case Conditions.Outlet.Squeezed(Quantity bore, Quantity time) ->
                Release.ofSqueeze(volume, reduced, bore.si(), time.si(), viscosity);
            case Conditions.Outlet.AtSpeed(Quantity bore, Quantity speed) ->
                new Release(volume, reduced, bore.si(), speed.si(), viscosity);
        };
        return new Descent(release, told.height().si());
    }

    static ReadTake read(Take take) {
        List<ReadTake.WidthReading> widths = take.widths().stream()
                .map(width -> new ReadTake.WidthReading(
                        width.depth().si(),
                        width.width().si() / 2,
                        deviation(width.width(), Math.sqrt(2) * ReadTake.USUAL_METRES) / 2))
                .toList();
        double start = Math.max(ReadTake.USUAL_SECONDS, 1 / take.rate().si());
        return new ReadTake(descent((Conditions.Told) take.conditions()), start, fronts(take), widths);
    }

    static List<ReadTake.FrontReading> fronts(Take take) {
        double usual = Math.max(
                ReadTake.USUAL_SECONDS, ReadTake.USUAL_FRAMES / take.rate().si());
        return take.fronts().stream().map(front -> read(front, usual)).toList();
    }

    /// @param usualSeconds what its time is read to where no ± says, s
    static ReadTake.FrontReading read(Take.Front front, double usualSeconds) {
        return new ReadTake.FrontReading(
                front.time().si(),
                deviation(front.time(), usualSeconds),
                front.depth().si(),
                deviation(front.depth(), ReadTake.USUAL_METRES));
    }

    private static double deviation(Quantity read, double usual) {
        return read.hasSpread() ? read.deviationSi() : usual;
    }
}
