package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.mirror.GlossyBody;
import plumeline.mirror.Stripe;
import plumeline.mirror.Target;
import plumeline.mirror.Ways;
import plumeline.plan.Thing;
import plumeline.quantity.Print;
import plumeline.stage.TankWalls;

/// Nothing of a lamp, the camera or the crew is seen mirrored in a thing's label, or anywhere in it where it has none.
///
/// Margin in % of the outline's width, the worst of seven heights: minus what of the mirror image is on the label;
/// where none is, how far round it is from the label's edge, or by how far sight passes what shines where that is
/// mirrored nowhere, 100 % for half a turn.
///
/// @param on the things as mirrors
/// @param what what may not be seen
/// @param walls the tank's walls, where the shot has one
record NoHighlight(List<Mirrors> on, Reflected what, Optional<TankWalls> walls) implements Measure {
    private static final double LEAST_TOLD = 0.0005;
    private static final int HEIGHTS = 7;
    private static final int TOP_EACH_WAY = 15;
    private static final double PERCENT = 100;

    NoHighlight {
        on = List.copyOf(on);
    }

    @Override
    public String unit() {
        return "%";
    }

    private Emitter emitter(Instant now) {
        return what.find(now.scene()).orElseThrow();
    }

    @Override
    public double[] parts(Instant now) {
        return on.stream().mapToDouble(mirror -> margin(now, mirror)).toArray();
    }

    private double margin(Instant now, Mirrors mirror) {
        if (mirror.isMatte()) {
            return PERCENT;
        }
        Mirrors.Seen seen = mirror.seen(now.scene(), emitter(now));
        GlossyBody glossy = seen.glossy();
        double worst = lid(now, mirror);
        for (double height : mirror.heightsMetres(now.scene(), HEIGHTS)) {
            double half = halfLabel(mirror, mirror.body(now.scene()).solid(), height);
            List<Stripe> stripes = now.memory().stripes(seen, height, emitter(now));
            if (stripes.isEmpty() && seen.isBefore()) {
                double miss = glossy.missRadians(
                        height, emitter(now), place -> Math.max(0, Math.abs(glossy.azimuthRadians(place)) - half));
                worst = Math.min(worst, PERCENT * miss / Math.PI);
            }
            for (Stripe stripe : stripes) {
                double one = glossy.azimuthRadians(stripe.left().place());
                double other = glossy.azimuthRadians(stripe.right().place());
                worst = Math.min(worst, PERCENT * margin(stripe, Math.min(one, other), Math.max(one, other), half));
            }
        }
        return worst;
    }

    /// By how far sight from a flat top passes what shines, at the place where it comes nearest, in % of half a turn;
    /// below 0 where it meets it. A top counts where no label does, and where the camera looks down on it.
    private double lid(Instant now, Mirrors mirror) {
        Body body = mirror.body(now.scene());
        Vec eye = now.scene().aim().eye();
        double height = body.solid().heightMetres();
        Mirrors.Seen seen = mirror.seen(now.scene(), emitter(now));
        if (mirror.placed().thing().label().isPresent()
                || seen.tank().isPresent()
                || body.own(eye).z() <= height) {
            return PERCENT;
        }
        Ways ways = seen.glossy().ways();
        Vec up = body.axis();
        double nearest = -Math.PI;
        for (Vec own : top(body.solid())) {
            Vec place = body.place(own);
            Vec to = eye.minus(place).unit();
            Target target =
                    Target.of(emitter(now), place, up.times(2 * to.dot(up)).minus(to));
            boolean isMet = target.margin() > 0;
            boolean isFree = ways.isFree(place, eye)
                    && (!isMet
                            || ways.isFree(
                                    place,
                                    place.plus(
                                            up.times(2 * to.dot(up)).minus(to).times(target.onMetres()))));
            if (isFree) {
                nearest = Math.max(nearest, target.margin());
            }
        }
        return Math.clamp(-PERCENT * nearest / Math.PI, -PERCENT, PERCENT);
    }

    /// Places all over a flat top, in the body's own frame.
    private static List<Vec> top(Solid solid) {
        List<Vec> top = new ArrayList<>();
        for (int i = 0; i < TOP_EACH_WAY; i++) {
            for (int j = 0; j < TOP_EACH_WAY; j++) {
                double x = 2.0 * i / (TOP_EACH_WAY - 1) - 1;
                double y = 2.0 * j / (TOP_EACH_WAY - 1) - 1;
                switch (solid) {
                    case Solid.Box box ->
                        top.add(new Vec(x * box.widthMetres() / 2, y * box.depthMetres() / 2, solid.heightMetres()));
                    case Solid.Revolved round -> {
                        double radius = round.stations().getLast().radiusMetres();
                        if (x * x + y * y <= 1 && radius > 0) {
                            top.add(new Vec(x * radius, y * radius, solid.heightMetres()));
                        }
                    }
                }
            }
        }
        return top;
    }

    /// A stripe that runs over the seam behind the label is none that the camera sees on it.
    private static double margin(Stripe stripe, double from, double to, double half) {
        double apart = Math.max(from - half, -half - to);
        if (apart > 0 && half < Math.PI) {
            return apart / Math.PI;
        }
        double on = Math.min(to, half) - Math.max(from, -half);
        double all = to - from;
        return -stripe.wide() * (all > 0 ? Math.clamp(on / all, 0, 1) : 1);
    }

    /// How far round from its middle the label goes; all round where there is none.
    private static double halfLabel(Mirrors mirror, Solid solid, double heightMetres) {
        Optional<Thing.Label> label = mirror.placed().thing().label();
        if (label.isEmpty()) {
            return Math.PI;
        }
        double half = label.get().width().si() / 2;
        return switch (solid) {
            case Solid.Revolved round -> Math.min(Math.PI, half / Math.max(round.radiusAtMetres(heightMetres), 1e-6));
            case Solid.Box box -> Math.atan2(half, box.depthMetres() / 2);
        };
    }

    @Override
    public Optional<String> findUnknown(Instant now) {
        return on.stream()
                .filter(mirror -> !mirror.isMatte())
                .flatMap(mirror ->
                        mirror.findUnknown(now.scene(), walls, emitter(now).middle()).stream())
                .findFirst();
    }

    @Override
    public String standing(Instant now) {
        Mirrors worst = on.getFirst();
        double least = margin(now, worst);
        for (Mirrors mirror : on.subList(1, on.size())) {
            double margin = margin(now, mirror);
            if (margin < least) {
                least = margin;
                worst = mirror;
            }
        }
        if (least < 0 && lid(now, worst) <= least) {
            return what.name() + " is seen in " + worst.name() + "'s top." + worst.assumed();
        }
        String where = worst.name() + (worst.placed().thing().label().isPresent() ? "'s label" : "");
        return least < 0
                ? what.name() + " is seen in " + where + ", " + share(-least / PERCENT) + " of its width."
                        + worst.finishWords(now.scene(), worst.middleMetres(now.scene()), emitter(now))
                : what.name() + " isn't seen in " + where + ".";
    }

    private static String share(double share) {
        return share < LEAST_TOLD ? "under 0.1 %" : Print.share(share, 1);
    }

    @Override
    public Optional<String> findTight(Instant now) {
        return Optional.empty();
    }
}
