package plumeline.look;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.lit.Amounts;
import plumeline.lit.Instant;
import plumeline.lit.Lamp;
import plumeline.lit.Lighting;
import plumeline.quantity.Spread;
import plumeline.stage.Gauge;
import plumeline.stage.Tint;

/// Looks are as bright as each other on a thing, or so much brighter: by what falls there, as a grey card shows it.
///
/// Margin in stops: the tolerance less how far each look is from what is wanted of the first over it.
///
/// @param looks the looks, at least two
/// @param stops how much brighter the first is wanted
/// @param within how far that may be off, stops
record Matched(List<LookAt> looks, double stops, double within) implements Gauge<Looks> {
    /// Nobody tells more stops apart from none at all.

    Matched {
        looks = List.copyOf(looks);
    }

    @Override
    public String unit() {
        return "stops";
    }

    @Override
    public boolean restsOnMarks() {
        return true;
    }

    private Lighting.Light light(int look, Looks at) {
        return looks.get(look).there(looks.get(look).instant(at)).light();
    }

    /// How much brighter the first is than another.
    private double over(int look, Looks at) {
        return Amounts.stops(light(0, at).lux(), light(look, at).lux());
    }

    @Override
    public double[] parts(Looks at) {
        double[] parts = new double[looks.size() - 1];
        for (int i = 1; i < looks.size(); i++) {
            parts[i - 1] = within - Math.abs(over(i, at) - stops);
        }
        return parts;
    }

    @Override
    public Optional<String> findUnknown(Looks at) {
        return looks.stream()
                .flatMap(look -> look.there(look.instant(at)).unknown().stream())
                .findFirst();
    }

    @Override
    public Optional<String> findLack(Looks at) {
        return looks.stream()
                .filter(look -> look.there(look.instant(at)).light().lux() <= 0)
                .map(look -> "No light comes to " + look.name() + " in " + look.pass() + ".")
                .findFirst();
    }

    /// The first is put in the middle of what the others ask of it.
    @Override
    public Optional<Double> findChange(Looks at, String look) {
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int i = 1; i < looks.size(); i++) {
            double over = over(i, at) - stops;
            if (looks.get(i).pass().equals(look)) {
                return Optional.of(over);
            }
            least = Math.min(least, -over);
            most = Math.max(most, -over);
        }
        return looks.getFirst().pass().equals(look) ? Optional.of((least + most) / 2) : Optional.empty();
    }

    @Override
    public String standing(Looks at) {
        List<String> words = new ArrayList<>();
        for (int i = 0; i < looks.size(); i++) {
            words.add(Amounts.lux(light(i, at).lux()) + " in " + looks.get(i).pass());
        }
        List<String> apart = new ArrayList<>();
        for (int i = 1; i < looks.size(); i++) {
            double over = over(i, at);
            apart.add(looks.getFirst().pass() + " is " + Amounts.stops(over) + (over < 0 ? " under " : " over ")
                    + looks.get(i).pass());
        }
        return looks.getFirst().name() + "'s " + looks.getFirst().part().word() + " gets " + String.join(", ", words)
                + ": " + String.join(", ", apart) + "; "
                + (stops == 0 ? "as bright as each other" : Amounts.stops(stops) + (stops < 0 ? " under" : " over"))
                + " wanted, within " + Amounts.stops(within) + ".";
    }

    /// A lamp in both looks is off by as much in both, but for what its emitters give where it is of another colour.
    @Override
    public Optional<String> findTight(Looks at) {
        for (int i = 1; i < looks.size(); i++) {
            double off = Math.log1p(Spread.EIGHTY_OVER_NINETY_FIVE * halfShare(i, at)) / Math.log(2);
            if (within - Math.abs(over(i, at) - stops) < off) {
                return Optional.of(
                        "What its lamps give isn't known so closely: meter both looks there, and write it measured.");
            }
        }
        return Optional.empty();
    }

    private double halfShare(int look, Looks at) {
        Instant one = looks.getFirst().instant(at);
        Instant other = looks.get(look).instant(at);
        Lighting.Light first = light(0, at);
        Lighting.Light second = light(look, at);
        double square = 0;
        for (int i = 0; i < first.lamps().size(); i++) {
            double share = first.lamps().get(i) / first.lux() - second.lamps().get(i) / second.lux();
            double half = Math.max(half(one, i), half(other, i));
            double mixed = Math.max(mixedHalf(one, i), mixedHalf(other, i));
            boolean isAlike = tint(one, i).equals(tint(other, i));
            double apart = isAlike
                    ? Math.abs(share)
                    : Math.hypot(
                            first.lamps().get(i) / first.lux(), second.lamps().get(i) / second.lux());
            square += share * share * Math.max(0, half * half - mixed * mixed) + apart * apart * mixed * mixed;
        }
        return Math.sqrt(square);
    }

    private static Tint tint(Instant now, int lamp) {
        return now.scene().beams().get(lamp).tint();
    }

    private static double mixedHalf(Instant now, int lamp) {
        return tint(now, lamp) instanceof Tint.Mixed mixed ? mixed.halfShare() : 0;
    }

    private static double half(Instant now, int lamp) {
        return now.lighting().lamps().get(lamp) instanceof Lamp.Known known ? known.halfShare() : 0;
    }
}
