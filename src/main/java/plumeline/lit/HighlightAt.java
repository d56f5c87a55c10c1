package plumeline.lit;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Exposure;
import plumeline.light.Latitude;
import plumeline.mirror.Stripe;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.TankWalls;

/// A lamp's mirror image stands at a place of a thing's outline, as wide as wanted.
///
/// Margin in % of the outline's width: the tolerance less how far the stripe's middle, and its width, are off. Where
/// none is seen, minus 100 and more, by how far the lamp is from where sight goes on from there.
///
/// @param on the thing as a mirror
/// @param lamp the lamp
/// @param wished what is wanted
/// @param walls the tank's walls, where the shot has one
/// @param film the film's rate, where how bright it is is asked for
record HighlightAt(Mirrors on, Reflected lamp, Wished wished, Optional<TankWalls> walls, Optional<Quantity> film)
        implements Measure {
    private static final double PERCENT = 100;

    /// What is wanted, in shares of the outline's width.
    ///
    /// @param fromLeft where its middle is, from the left
    /// @param wide how wide it is, where that counts
    /// @param within how far either may be off
    record Wished(double fromLeft, OptionalDouble wide, double within) {}

    @Override
    public String unit() {
        return "%";
    }

    private Optional<Stripe> findStripe(Instant now) {
        double height = on.middleMetres(now.scene());
        List<Stripe> stripes = now.memory().stripes(on.seen(now.scene(), emitter(now)), height, emitter(now));
        return stripes.stream().max(Comparator.comparingDouble(stripe -> Math.min(place(stripe), wide(stripe))));
    }

    /// What is left of the tolerance in its place, share of the width.
    private double place(Stripe stripe) {
        return wished.within() - Math.abs(stripe.fromLeft() - wished.fromLeft());
    }

    /// What is left of it in its width.
    private double wide(Stripe stripe) {
        return wished.wide().isPresent()
                ? wished.within() - Math.abs(stripe.wide() - wished.wide().getAsDouble())
                : wished.within();
    }

    private Emitter emitter(Instant now) {
        return lamp.find(now.scene()).orElseThrow();
    }

    @Override
    public double[] parts(Instant now) {
        Optional<Stripe> stripe = findStripe(now);
        double place = stripe.map(this::place).orElseGet(() -> -1 - aside(now));
        if (wished.wide().isEmpty()) {
            return new double[] {PERCENT * place};
        }
        double wide = stripe.map(this::wide).orElse(place);
        return new double[] {PERCENT * place, PERCENT * wide};
    }

    /// How far the lamp is from where sight goes on, share of half a turn.
    private double aside(Instant now) {
        return on.findSpot(now.scene(), on.middleMetres(now.scene()), wished.fromLeft())
                .flatMap(spot -> on.findOnward(now.scene(), spot))
                .map(onward -> {
                    Vec to = emitter(now).middle().minus(onward.from());
                    double length = to.lengthMetres();
                    double cosine = length > 0 ? to.dot(onward.toward()) / length : 1;
                    return Math.acos(Math.clamp(cosine, -1, 1)) / Math.PI;
                })
                .orElse(1.0);
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        return on.findUnknown(now.scene(), walls, emitter(now).middle());
    }

    @Override
    public Optional<String> findLack(Instant now) {
        return on.isMatte()
                ? Optional.of(on.name() + " is matte: nothing is mirrored in it. Light it by angle.")
                : Optional.empty();
    }

    @Override
    public String standing(Instant now) {
        Optional<Stripe> stripe = findStripe(now);
        String wanted = percent(wished.fromLeft()) + " from the left"
                + (wished.wide().isPresent() ? " and " + percent(wished.wide().getAsDouble()) + " wide" : "")
                + " wanted, within " + percent(wished.within()) + ".";
        String assumed = on.finishWords(now.scene(), on.middleMetres(now.scene()), emitter(now));
        return stripe.isEmpty()
                ? lamp.name() + " isn't mirrored in " + on.name() + " where the camera sees it; " + wanted
                        + inTheWay(now) + assumed
                : lamp.name() + " shows in " + on.name() + " at "
                        + percent(stripe.get().fromLeft()) + " of its width from the left, "
                        + percent(stripe.get().wide()) + " wide; " + wanted + brightness(now, stripe.get())
                        + assumed;
    }

    /// Which lamp, card or flag alone keeps it from being seen.
    private String inTheWay(Instant now) {
        double height = on.middleMetres(now.scene());
        Emitter light = emitter(now);
        if (on.seen(now.scene()).stripes(height, light).isEmpty()) {
            return "";
        }
        String names = IntStream.range(0, now.scene().lamps().size())
                .filter(other -> now.scene().beams().get(other).aim().eye().distanceMetres(light.middle()) > 0)
                .filter(other -> on.seen(now.scene(), index -> index == other)
                        .stripes(height, light)
                        .isEmpty())
                .mapToObj(other -> on.shot().lights().get(other).name())
                .collect(Collectors.joining(", "));
        return names.isEmpty() ? "" : " In the way: " + names + ".";
    }

    /// How bright it is, against mid grey as the camera is set: 0.0 stops is where a grey card lies in full light.
    private String brightness(Instant now, Stripe stripe) {
        Optional<Emitter> shining = lamp instanceof Reflected.OfLamp(var _, int index)
                        && now.lighting().lamps().get(index) instanceof Lamp.Known(var _, Shine.Face face, var _, var _)
                ? Optional.of(face.asSeen(stripe.middle().place()))
                : Optional.empty();
        Optional<Exposure> setting = film.flatMap(
                rate -> Setting.find(on.shot().camera(), now.scene().picture(), rate));
        if (shining.isEmpty() || shining.get().luminance() <= 0 || setting.isEmpty()) {
            return "";
        }
        OptionalDouble share = on.findBrightness(now.scene(), stripe.middle(), shining.get());
        if (share.isEmpty() || share.getAsDouble() <= 0) {
            return "";
        }
        double grey = Latitude.midGrey(Exposure.FLAT) * setting.get().neededLux() / Math.PI;
        double over = Amounts.stops(share.getAsDouble() * shining.get().luminance(), grey);
        return " It mirrors " + Print.share(share.getAsDouble(), 0) + " of its brightness: " + Amounts.stops(over)
                + (over < 0 ? " under" : " over") + " mid grey as the camera is set.";
    }

    private static String percent(double share) {
        return Print.share(share, 1);
    }

    @Override
    public Optional<String> findTight(Instant now) {
        return Optional.empty();
    }

    @Override
    public Optional<Easier> findEasier(double lack) {
        double easier = Math.ceil((PERCENT * wished.within() + lack) * 2) / 2 / PERCENT;
        return easier > 0.5
                ? Optional.empty()
                : Optional.of(new Easier(
                        new HighlightAt(on, lamp, new Wished(wished.fromLeft(), wished.wide(), easier), walls, film),
                        "within " + percent(easier) + " instead of " + percent(wished.within()) + "."));
    }
}
