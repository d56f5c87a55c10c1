package plumeline.want;

import java.util.Optional;
import plumeline.geom.Body;
import plumeline.ink.Arrival;
import plumeline.ink.Estimate;
import plumeline.ink.Ink;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Scene;

/// No ink touches a thing, or comes before it in the picture, until a time.
///
/// Margin in s: when the plume, grown to its half-width, first touches the thing or covers some of its picture, less
/// that time. What never does counts from when the front is on the floor, where it spreads.
///
/// @param line as written
/// @param thing index of the thing
/// @param untilSeconds the time from the release, s
/// @param ink the ink
/// @param papers the papers' unit of length
record ClearUntil(WantLine line, int thing, double untilSeconds, InkRelease.Known ink, PaperUnit papers)
        implements Want {
    static Want of(WantLine line, int thing, InkRelease.Known ink, PaperUnit papers) {
        double until = line.written().findQuantity("time").map(Quantity::si).orElse(0.0);
        return new ClearUntil(line, thing, until, ink, papers);
    }

    @Override
    public String unit() {
        return "s";
    }

    private PlumePlace plume(Moments moments) {
        return ink.at(moments.stage().findMouth(moments.values()).orElseThrow());
    }

    /// What comes first.
    ///
    /// @param depthMetres how deep the front is then, m below the surface
    /// @param how what it does then
    private record First(double depthMetres, How how) {}

    private enum How {
        TOUCHES,
        COVERS,
        SPREADS
    }

    private First first(Moments moments, double wider) {
        double touch = touchMetres(moments, wider);
        double cover = coverMetres(moments, wider);
        double least = Math.min(touch, cover);
        return new First(
                least, least >= plume(moments).floorMetres() ? How.SPREADS : cover < touch ? How.COVERS : How.TOUCHES);
    }

    private double touchMetres(Moments moments, double wider) {
        return plume(moments).touchMetres(moments.at(0).things().get(thing), wider);
    }

    private double coverMetres(Moments moments, double wider) {
        Scene scene = moments.at(0);
        Body body = scene.things().get(thing);
        PlumePlace plume = plume(moments);
        return Parts.inFrontMetres(scene, body) > 0
                ? plume.coverMetres(scene.view(body), body, wider)
                : plume.floorMetres();
    }

    /// When, with how far one take is from the next and how much wider or narrower it may be.
    private Estimate seconds(Moments moments, First first) {
        Estimate middle = at(moments, first.depthMetres());
        PlumePlace plume = plume(moments);
        Estimate radius = plume.plume().radiusMetres(first.depthMetres());
        if (!(radius.value() > 0) || first.how() == How.SPREADS) {
            return middle;
        }
        double early = at(
                        moments, first(moments, radius.high() / radius.value()).depthMetres())
                .value();
        double late = at(moments, first(moments, radius.low() / radius.value()).depthMetres())
                .value();
        double value = middle.value();
        return middle.with(new Estimate(value, Math.min(value, early), Math.max(value, late)));
    }

    private Estimate at(Moments moments, double depth) {
        return plume(moments).plume().arrival(depth) instanceof Arrival.At(Estimate seconds)
                ? seconds
                : new Estimate(
                        Wants.Elsewhere.NEVER_SECONDS, Wants.Elsewhere.NEVER_SECONDS, Wants.Elsewhere.NEVER_SECONDS);
    }

    @Override
    public double[] parts(Moments moments) {
        return new double[] {
            at(moments, touchMetres(moments, 1)).value() - untilSeconds,
            at(moments, coverMetres(moments, 1)).value() - untilSeconds
        };
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        Body body = moments.at(0).things().get(thing);
        PlumePlace plume = plume(moments);
        Optional<String> place = InkWants.findMisplaced(plume, body, Parts.name(moments, thing), papers);
        if (place.isEmpty()
                && ink.isLight()
                && body.bounds().high().z() > plume.mouth().z()) {
            return Optional.of(InkWants.RISING);
        }
        return place.isEmpty()
                        && plume.plume().arrival(first(moments, 1).depthMetres()) instanceof Arrival.Unknown(var reason)
                ? Optional.of(InkWants.unknown(reason, papers))
                : place;
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        First first = first(moments, 1);
        Estimate seconds = seconds(moments, first);
        String name = Parts.name(moments, thing);
        String does = switch (first.how()) {
            case TOUCHES -> "The plume touches " + name;
            case COVERS -> "Ink comes before " + name + " in the picture";
            case SPREADS -> "No ink before " + name + " until the front is on the floor";
        };
        if (seconds.value() >= Wants.Elsewhere.NEVER_SECONDS) {
            return Optional.of("Lighter than the water, the ink turns before it comes to " + name + ".");
        }
        double spare = seconds.value() - untilSeconds;
        return Optional.of(does + " after " + InkWants.interval(seconds) + "; wanted clear until "
                + Print.seconds(untilSeconds, 2)
                + (spare < 0 ? ": " + InkWants.seconds(-spare) + " early." : "."));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        Estimate seconds = seconds(moments, first(moments, 1));
        return seconds.low() < untilSeconds
                ? Optional.of(InkWants.spreadReaches(ink))
                : seconds.value() >= Wants.Elsewhere.NEVER_SECONDS && comingShare(moments) > 1 - Ink.SURE_SHARE
                        ? Optional.of("In some takes it comes so deep all the same.")
                        : Optional.empty();
    }

    @Override
    public boolean isMeasured(Moments moments) {
        return at(moments, first(moments, 1).depthMetres()).value() < Wants.Elsewhere.NEVER_SECONDS;
    }

    private double comingShare(Moments moments) {
        return plume(moments).plume().comingShare(first(moments, 1).depthMetres());
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        Estimate seconds = seconds(moments, first(moments, 1));
        double early = seconds.value() >= Wants.Elsewhere.NEVER_SECONDS ? 1 : seconds.oddsUnder(untilSeconds);
        String odds = InkWants.odds(1 - comingShare(moments) * early, "clear until then");
        return InkWants.findCaution(odds, ink, plume(moments));
    }
}
