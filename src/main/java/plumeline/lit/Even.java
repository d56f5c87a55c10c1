package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.light.Patch;

/// The light on a thing's label, or on its side toward the camera, is even.
///
/// Margin in stops: the tolerance less the most that any of 5 by 5 places differs from another.
///
/// @param on the thing
/// @param withinStops the most that it may differ
record Even(LitThing on, double withinStops) implements Measure {
    private static final String[] ROWS = {
        "bottom row", "second row from below", "middle row", "second row from above", "top row"
    };
    private static final String[] COLUMNS = {"far left", "left", "middle", "right", "far right"};

    @Override
    public String unit() {
        return "stops";
    }

    private record Ends(int darkest, double least, int brightest, double most) {
        double stops() {
            return Amounts.stops(most, least);
        }
    }

    private Ends ends(Instant now) {
        Lighting lighting = now.lighting();
        List<Double> lux = new ArrayList<>();
        for (Patch patch : on.spots(now)) {
            lux.add(lighting.light(patch).lux());
        }
        int darkest = 0;
        int brightest = 0;
        for (int i = 1; i < lux.size(); i++) {
            darkest = lux.get(i) < lux.get(darkest) ? i : darkest;
            brightest = lux.get(i) > lux.get(brightest) ? i : brightest;
        }
        return new Ends(darkest, lux.get(darkest), brightest, lux.get(brightest));
    }

    @Override
    public double[] parts(Instant now) {
        return new double[] {withinStops - ends(now).stops()};
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        return Unlit.find(now.lighting(), on.spots(now));
    }

    @Override
    public Optional<String> findLack(Instant now) {
        return ends(now).most() > 0 ? Optional.empty() : Optional.of("No light comes to " + on.name() + ".");
    }

    @Override
    public String standing(Instant now) {
        Ends ends = ends(now);
        return on.where() + " gets " + Amounts.lux(ends.least()) + " " + place(ends.darkest()) + " and "
                + Amounts.lux(ends.most()) + " " + place(ends.brightest()) + ": " + Amounts.stops(ends.stops())
                + " apart, " + Amounts.stopsAre(withinStops) + " allowed.";
    }

    private static String place(int index) {
        int across = COLUMNS.length;
        return "in the " + ROWS[index / across] + ", " + COLUMNS[index % across];
    }

    @Override
    public Optional<String> findTight(Instant now) {
        return Optional.empty();
    }

    @Override
    public Optional<Easier> findEasier(double lack) {
        double easier = Math.ceil((withinStops + lack) * 10) / 10;
        return easier >= Amounts.MOST_STOPS
                ? Optional.empty()
                : Optional.of(new Easier(
                        new Even(on, easier),
                        "within " + Amounts.stops(easier) + " instead of " + Amounts.stops(withinStops) + "."));
    }
}
