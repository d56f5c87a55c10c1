package plumeline.lit;

import java.util.List;
import java.util.Optional;
import plumeline.quantity.Spread;

/// Key to fill on a thing: how much brighter the one lamp is there than the other.
///
/// Margin in stops: the tolerance less how far the ratio is from what is wanted.
///
/// @param on the thing
/// @param key index of the key light
/// @param fill index of the fill light
/// @param wanted what is wanted
record Ratio(LitThing on, int key, int fill, Wanted wanted) implements Measure {
    /// What is wanted.
    ///
    /// @param stops how much brighter the key is
    /// @param within how far it may be off, stops
    record Wanted(double stops, double within) {}

    @Override
    public String unit() {
        return "stops";
    }

    private double stops(Instant now) {
        List<Double> lux = on.light(now, Spots.Part.LABEL).lamps();
        return Amounts.stops(lux.get(key), lux.get(fill));
    }

    @Override
    public double[] parts(Instant now) {
        return new double[] {wanted.within() - Math.abs(stops(now) - wanted.stops())};
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        return Unlit.find(now.lighting(), List.of(on.patch(now, Spots.Part.LABEL)));
    }

    @Override
    public Optional<String> findLack(Instant now) {
        List<Double> lux = on.light(now, Spots.Part.LABEL).lamps();
        for (int lamp : List.of(key, fill)) {
            if (lux.get(lamp) <= 0) {
                return Optional.of("No light of " + name(lamp) + " comes to " + on.name() + " there.");
            }
        }
        return Optional.empty();
    }

    private String name(int lamp) {
        return on.shot().lights().get(lamp).name();
    }

    @Override
    public String standing(Instant now) {
        List<Double> lux = on.light(now, Spots.Part.LABEL).lamps();
        double stops = Amounts.stops(lux.get(key), lux.get(fill));
        return "On " + on.name() + " " + name(key) + " gives " + Amounts.lux(lux.get(key)) + " and " + name(fill)
                + " "
                + Amounts.lux(lux.get(fill)) + ": " + Amounts.stops(stops) + (stops < 0 ? " less, " : " more, ")
                + Amounts.stops(wanted.stops()) + (wanted.stops() < 0 ? " less" : " more") + " wanted, within "
                + Amounts.stops(wanted.within()) + ".";
    }

    @Override
    public Optional<String> findTight(Instant now) {
        Lighting lighting = now.lighting();
        double half = 0;
        for (int lamp : List.of(key, fill)) {
            if (lighting.lamps().get(lamp) instanceof Lamp.Known known) {
                half = Math.hypot(half, known.halfShare());
            }
        }
        double off = Math.log1p(Spread.EIGHTY_OVER_NINETY_FIVE * half) / Math.log(2);
        return parts(now)[0] < off
                ? Optional.of("What its lamps give isn't known so closely: meter them there and write it, measured.")
                : Optional.empty();
    }

    @Override
    public Optional<Easier> findEasier(double lack) {
        double easier = Math.ceil((wanted.within() + lack) * 10) / 10;
        return Optional.of(new Easier(
                new Ratio(on, key, fill, new Wanted(wanted.stops(), easier)),
                "within " + Amounts.stops(easier) + " instead of " + Amounts.stops(wanted.within()) + "."));
    }
}
