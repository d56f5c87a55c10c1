package plumeline.lit;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.light.Exposure;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.quantity.Spread;

/// The light on a part of a thing is right for the camera's setting, or so much less.
///
/// Margin in stops: the tolerance less how far the light is from what the setting needs; for a dark thing how much
/// less light there is, less how much less is wanted. Where it is written what the body holds and how the part
/// reflects, what is left to clipping and to noise are parts too.
///
/// @param on the thing
/// @param part which part of it
/// @param wanted what is wanted
/// @param film the film's rate
record Lit(LitThing on, Spots.Part part, Wanted wanted, Quantity film) implements Measure {
    /// What is wanted.
    sealed interface Wanted {
        /// The light that exposes rightly, within so many stops.
        ///
        /// @param stops either way
        record Within(double stops) implements Wanted {}

        /// At least so many stops less.
        ///
        /// @param stops how many
        record Under(double stops) implements Wanted {}
    }

    @Override
    public String unit() {
        return "stops";
    }

    private Optional<Exposure> findSetting(Instant now) {
        return Setting.find(on.shot().camera(), now.scene(), seenShare(now), film);
    }

    private double seenShare(Instant now) {
        return Setting.seenShare(
                now.scene(), now.lighting(), on.patch(now, part).place());
    }

    private double over(Instant now, double lux) {
        return findSetting(now)
                .map(setting -> Amounts.stops(lux, setting.neededLux()))
                .orElse(0.0);
    }

    private double margin(double over) {
        return switch (wanted) {
            case Wanted.Within(double stops) -> stops - Math.abs(over);
            case Wanted.Under(double stops) -> -over - stops;
        };
    }

    @Override
    public double[] parts(Instant now) {
        return parts(over(now, on.light(now, part).lux()));
    }

    private double[] parts(double over) {
        double[] own = {margin(over)};
        double[] room = findTones().map(tones -> tones.roomStops(over)).orElse(new double[0]);
        double[] all = Arrays.copyOf(own, own.length + room.length);
        System.arraycopy(room, 0, all, own.length, room.length);
        return all;
    }

    /// What is dark on purpose may drown.
    private Optional<Tones> findTones() {
        return wanted instanceof Wanted.Within ? Tones.find(on, part) : Optional.empty();
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        if (findSetting(now).isEmpty()) {
            return Optional.of(
                    "Not known: the sensitivity set. Write the camera's iso, or the body's iso: {base: 800}.");
        }
        return Unlit.find(now.lighting(), List.of(on.patch(now, part)));
    }

    @Override
    public String standing(Instant now) {
        Lighting lighting = now.lighting();
        Lighting.Light light = on.light(now, part);
        double needed = findSetting(now).orElseThrow().neededLux();
        String lamps = lighting.lamps().size() > 1 ? " (" + Amounts.byLamp(lighting.lamps(), light.lamps()) + ")" : "";
        String asked = switch (wanted) {
            case Wanted.Within(double stops) -> either(stops) + " allowed.";
            case Wanted.Under(double stops) -> "at least " + Amounts.stops(stops) + " too little wanted.";
        };
        return on.name() + "'s " + part.word() + " gets " + Amounts.lux(light.lux()) + lamps
                + "; the setting needs " + Amounts.lux(needed) + Amounts.through(seenShare(now)) + ": "
                + Amounts.over(light.lux(), needed) + ", "
                + asked;
    }

    @Override
    public Optional<String> findCaution(Instant now) {
        double lux = on.light(now, part).lux();
        return findTones()
                .filter(_ -> lux > 0)
                .flatMap(tones -> tones.findSentence(on.name() + "'s " + part.word(), over(now, lux)));
    }

    private static String either(double stops) {
        return Amounts.stops(stops) + " either way";
    }

    @Override
    public Optional<String> findTight(Instant now) {
        Lighting.Light light = on.light(now, part);
        double half = Spread.EIGHTY_OVER_NINETY_FIVE * light.halfShare();
        if (mayFail(over(now, light.lux() * (1 + half))) || mayFail(over(now, light.lux() * Math.max(0, 1 - half)))) {
            return Optional.of("What its lamps give isn't known so closely: meter them there and write it, measured.");
        }
        double over = over(now, light.lux());
        double spread = Spread.EIGHTY_OVER_NINETY_FIVE
                * findTones().map(Tones::spreadStops).orElse(0.0);
        return isEdge(over + spread) || isEdge(over - spread)
                ? Optional.of("How it reflects isn't known so closely: try it before the camera.")
                : Optional.empty();
    }

    private boolean mayFail(double over) {
        return Arrays.stream(parts(over)).min().orElse(0) < 0;
    }

    /// Whether it would clip or drown, were it to land so.
    private boolean isEdge(double over) {
        return findTones()
                .map(tones -> Arrays.stream(tones.roomStops(over)).min().orElse(0) < 0)
                .orElse(false);
    }

    @Override
    public Optional<Change> findChange(Instant now) {
        double over = over(now, on.light(now, part).lux());
        return Optional.of(
                switch (wanted) {
                    case Wanted.Within(double stops) -> {
                        double[] room = findTones()
                                .map(tones -> tones.roomStops(over))
                                .filter(rooms -> rooms.length > 0)
                                .orElse(new double[] {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY});
                        yield new Change(Math.max(-stops - over, -room[1]), Math.min(stops - over, room[0]));
                    }
                    case Wanted.Under(double stops) -> new Change(Double.NEGATIVE_INFINITY, -stops - over);
                });
    }

    /// What lamps would have to do.
    @Override
    public List<String> listAttempts(Instant now) {
        double over = over(now, on.light(now, part).lux());
        return wanted instanceof Wanted.Within && over < 0 && over > -Amounts.MOST_STOPS
                ? List.of("Lamps " + Amounts.stops(over) + " brighter together: nearer by a factor of "
                        + Print.number(Math.pow(2, over / 2), 2) + ", or more of them.")
                : List.of();
    }

    @Override
    public Optional<Easier> findEasier(double lack) {
        return switch (wanted) {
            case Wanted.Within(double stops) -> {
                double easier = Math.ceil((stops + lack) * 10) / 10;
                yield easier >= Amounts.MOST_STOPS
                        ? Optional.empty()
                        : Optional.of(new Easier(
                                new Lit(on, part, new Wanted.Within(easier), film),
                                "within " + Amounts.stops(easier) + " instead of " + Amounts.stops(stops) + "."));
            }
            case Wanted.Under(double stops) -> {
                double easier = Math.floor((stops - lack) * 10) / 10;
                yield easier <= 0
                        ? Optional.empty()
                        : Optional.of(new Easier(
                                new Lit(on, part, new Wanted.Under(easier), film),
                                "by " + Amounts.stops(easier) + " instead of " + Amounts.stops(stops) + "."));
            }
        };
    }
}
