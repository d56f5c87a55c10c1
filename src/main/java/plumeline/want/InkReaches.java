package plumeline.want;

import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Clearance;
import plumeline.ink.Arrival;
import plumeline.ink.Estimate;
import plumeline.ink.Ink;
import plumeline.lesson.Target;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;

/// The ink's front comes to a part of a thing in time.
///
/// Margin in s: `within` less how far its arrival at that depth is from `after`. Two parts more, in mm, are none of the
/// margin: how far the nozzle is from where nothing is known any more, so that leeway ends there; and how far the plume
/// stays from glass and thing, never less than nothing, so that free marks leave it room.
///
/// @param line as written
/// @param thing index of the thing
/// @param part which part of it
/// @param wished when it is wanted
/// @param ink the ink
/// @param papers the papers' unit of length
record InkReaches(
        WantLine line, int thing, InkWants.ThingPart part, Wished wished, InkRelease.Known ink, PaperUnit papers)
        implements Want {
    /// What passes a thing by less counts as touching it: papers tell no less.
    private static final double TOUCHING_METRES = 0.0005;

    /// A front that would have to rise counts as early by its way at this speed, m/s, so that a search finds its way.
    private static final double UPWARD_METRES_PER_SECOND = 0.1;

    /// When it is wanted.
    ///
    /// @param afterSeconds from the release, s
    /// @param withinSeconds how far off it may be, s
    record Wished(double afterSeconds, double withinSeconds) {}

    static Want of(WantLine line, int thing, InkRelease.Known ink, PaperUnit papers) {
        double after = line.written().findQuantity("after").map(Quantity::si).orElse(0.0);
        double within = line.written().findQuantity("within").map(Quantity::si).orElse(Target.WITHIN_SHARE * after);
        InkWants.ThingPart part = InkWants.ThingPart.of(line, InkWants.ThingPart.TOP);
        return new InkReaches(line, thing, part, new Wished(after, within), ink, papers);
    }

    @Override
    public String unit() {
        return "s";
    }

    private PlumePlace plume(Moments moments) {
        return ink.at(moments.stage().findMouth(moments.values()).orElseThrow());
    }

    private Body body(Moments moments) {
        return moments.at(0).things().get(thing);
    }

    private double depth(Moments moments, PlumePlace plume) {
        return plume.depthMetres(part.heightMetres(body(moments)));
    }

    private Arrival arrival(Moments moments) {
        PlumePlace plume = plume(moments);
        return plume.plume().arrival(depth(moments, plume));
    }

    /// How far under the initial front the part is; not above 0 where no front passes it.
    private double way(Moments moments) {
        PlumePlace plume = plume(moments);
        return depth(moments, plume) - plume.plume().startMetres();
    }

    @Override
    public double[] parts(Moments moments) {
        double way = way(moments);
        double arrives = way > 0 ? seconds(arrival(moments)) : way / UPWARD_METRES_PER_SECOND;
        double late = arrives - wished.afterSeconds;
        return new double[] {
            wished.withinSeconds + late,
            wished.withinSeconds - late,
            Parts.MILLIMETRES * knownMetres(plume(moments)),
            Parts.MILLIMETRES * Math.max(0, freeMetres(moments))
        };
    }

    private static double seconds(Arrival arrival) {
        return switch (arrival) {
            case Arrival.At(Estimate seconds) -> seconds.value();
            case Arrival.Never(Estimate deepest) ->
                Wants.Elsewhere.NEVER_SECONDS - deepest.value() / UPWARD_METRES_PER_SECOND;
            case Arrival.Unknown(var _) -> Wants.Elsewhere.NEVER_SECONDS;
        };
    }

    @Override
    public double margin(double[] parts) {
        return Math.min(parts[0], parts[1]);
    }

    /// How far the nozzle is from where nothing is known any more: inside the glass, low enough over the water.
    private static double knownMetres(PlumePlace plume) {
        return Math.min(
                plume.insideMetres(),
                Ink.MOST_HEIGHT_METRES + plume.depthMetres(plume.mouth().z()));
    }

    /// How far the plume stays from the glass, and beside the thing. Coming to its top it has passed nothing of it.
    private double freeMetres(Moments moments) {
        PlumePlace plume = plume(moments);
        double glass = plume.insideMetres() - radiusMetres(moments, plume);
        return Math.min(glass, besideMetres(moments));
    }

    private double radiusMetres(Moments moments, PlumePlace plume) {
        double start = plume.plume().startMetres();
        return plume.plume()
                .radiusMetres(Math.max(start, depth(moments, plume)))
                .value();
    }

    private double besideMetres(Moments moments) {
        PlumePlace plume = plume(moments);
        Body body = body(moments);
        return plume.besideMetres(body, part.heightMetres(body), radiusMetres(moments, plume));
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        Optional<String> place =
                InkWants.findMisplaced(plume(moments), body(moments), Parts.name(moments, thing), papers);
        if (place.isEmpty() && way(moments) <= 0 && ink.isLight()) {
            return Optional.of(InkWants.RISING);
        }
        return place.isPresent() || way(moments) <= 0 || !(arrival(moments) instanceof Arrival.Unknown(var reason))
                ? place
                : Optional.of(InkWants.unknown(reason, papers));
    }

    /// Where light ink turns before it is there.
    private Optional<String> findTurning(Moments moments, PaperUnit papers) {
        return way(moments) > 0 && arrival(moments) instanceof Arrival.Never(Estimate deepest)
                ? Optional.of(InkWants.turns(ink.ink(), deepest, papers) + name(moments) + " is "
                        + Parts.distance(Parts.MILLIMETRES * depth(moments, plume(moments)), papers) + " under it. "
                        + InkWants.HEAVIER)
                : Optional.empty();
    }

    private double comingShare(Moments moments) {
        PlumePlace plume = plume(moments);
        return plume.plume().comingShare(depth(moments, plume));
    }

    private String name(Moments moments) {
        return Parts.name(moments, thing) + "'s " + part.word();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        double way = way(moments);
        if (way <= 0) {
            return Optional.of("The nozzle's mouth is " + Parts.distance(Parts.MILLIMETRES * way, papers) + " under "
                    + name(moments) + ": no front passes it. Raise the nozzle.");
        }
        if (!(arrival(moments) instanceof Arrival.At(Estimate seconds))) {
            return findTurning(moments, papers);
        }
        String wanted = "; wanted after " + Print.seconds(wished.afterSeconds, 2) + " ± "
                + Print.seconds(wished.withinSeconds, 2);
        double late = seconds.value() - wished.afterSeconds;
        String off = Math.abs(late) <= wished.withinSeconds
                ? "."
                : ": " + InkWants.seconds(Math.abs(late)) + (late > 0 ? " late." : " early.");
        return Optional.of("The front is at " + name(moments) + " after " + InkWants.interval(seconds) + wanted + off);
    }

    @Override
    public boolean isMeasured(Moments moments) {
        return way(moments) <= 0 || arrival(moments) instanceof Arrival.At;
    }

    private double odds(Moments moments, Estimate seconds) {
        return comingShare(moments)
                * seconds.odds(wished.afterSeconds - wished.withinSeconds, wished.afterSeconds + wished.withinSeconds);
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        if (arrival(moments) instanceof Arrival.At(Estimate seconds)
                && (seconds.low() < wished.afterSeconds - wished.withinSeconds
                        || seconds.high() > wished.afterSeconds + wished.withinSeconds)) {
            return Optional.of(InkWants.spreadReaches(ink));
        }
        if (comingShare(moments) < Ink.SURE_SHARE) {
            return Optional.of("Lighter than the water, it turns before it is there in some takes.");
        }
        PlumePlace plume = plume(moments);
        if (plume.insideMetres() < radiusMetres(moments, plume)) {
            return Optional.of("On its way the plume meets the glass, and slows there: laws and readings are of open"
                    + " water. Move the nozzle away from it.");
        }
        return part != InkWants.ThingPart.TOP && besideMetres(moments) < 0
                ? Optional.of("On its way the plume meets " + Parts.name(moments, thing)
                        + ", and slows there: laws and readings are of open water. Move the nozzle away from it.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        String said = way(moments) > 0 && arrival(moments) instanceof Arrival.At(Estimate seconds)
                ? InkWants.odds(odds(moments, seconds), "in time")
                        + passes(moments)
                        + InkWants.findUnseen(moments.stage(), seconds.value())
                                .map(unseen -> " " + unseen)
                                .orElse("")
                : arrival(moments) instanceof Arrival.Never
                        ? InkWants.takes(comingShare(moments)) + " may come so deep."
                        : "";
        return InkWants.findCaution(said, ink, plume(moments));
    }

    /// How far from the thing the plume is when its front is there: what passes clear of it colours no part of it.
    private String passes(Moments moments) {
        PlumePlace plume = plume(moments);
        double depth = depth(moments, plume);
        double beside = Clearance.betweenMetres(plume.cone(depth, 1), body(moments));
        if (beside < TOUCHING_METRES) {
            return "";
        }
        Estimate radius = plume.plume().radiusMetres(depth);
        double wide = Clearance.betweenMetres(plume.cone(depth, radius.high() / radius.value()), body(moments));
        String name = Parts.name(moments, thing);
        return " It passes " + Parts.distance(Parts.MILLIMETRES * beside, papers) + " clear of " + name
                + (wide < TOUCHING_METRES
                        ? "; a take whose plume is wider touches it."
                        : ": no ink touches it by then.");
    }
}
