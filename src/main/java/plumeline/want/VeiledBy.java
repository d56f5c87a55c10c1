package plumeline.want;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.geom.Body;
import plumeline.ink.Arrival;
import plumeline.ink.Estimate;
import plumeline.ink.Ink;
import plumeline.plan.Mark;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.stage.InkRelease;
import plumeline.stage.PlumePlace;
import plumeline.stage.Stage;

/// Ink veils a part of a thing by a time: it covers half of its width at that height as the lens sees it.
///
/// A simulation of the shot's ink decides where one was run; else the law: the front has passed the sight line to that
/// height, and the plume is wide enough there. Margin in s: the time less when that is so, and no more than how much
/// earlier the plume is wide enough; where the mouth is under that sight line, how far under, as a time. One part more,
/// in mm, is none of the margin: how far the plume goes down before the thing and clear of it, as what meets it or
/// comes down on it is past the law. With a simulation how much earlier it is wide enough is none of the margin either,
/// but bounds leeway: to where the law, too, has it cover enough, or no less than it has it cover where the simulation
/// was run.
///
/// @param line as written
/// @param at what is to be veiled, and by when
/// @param ink the ink
/// @param simulation what one of the marks as they are written gave
/// @param kept what simulations gave of marks that are free still: told, as a search can't go by it
record VeiledBy(
        WantLine line,
        Veil at,
        InkRelease.Known ink,
        Optional<Simulation> simulation,
        Function<Wants.Elsewhere.Height, Optional<Wants.Elsewhere.Veiled>> kept)
        implements Want {
    /// A front that would have to rise counts by its way at this speed, m/s, so that a search finds its way.
    private static final double UPWARD_METRES_PER_SECOND = 0.1;

    private static final String BY_LAW = " (ink_reaches and clear_until go by the law.)";

    /// What is to be veiled, and by when.
    ///
    /// @param thing index of the thing
    /// @param part which part of it
    /// @param bySeconds from the release, s
    /// @param papers the papers' unit of length
    record Veil(int thing, InkWants.ThingPart part, double bySeconds, PaperUnit papers) {}

    /// What a simulation gave, for the very marks that are written; near them it is carried by the law.
    ///
    /// @param veiled when it is veiled, and how often by then
    /// @param lawSeconds when the law has it veiled there; 0 where it has no time
    /// @param lawLackSeconds how much later than at the sight line the law has it wide enough there, s, ≥ 0
    record Simulation(Wants.Elsewhere.Veiled veiled, double lawSeconds, double lawLackSeconds) {
        Estimate at(double law) {
            Estimate seconds = veiled.seconds();
            return lawSeconds > 0 && law < Wants.Elsewhere.NEVER_SECONDS ? seconds.times(law / lawSeconds) : seconds;
        }
    }

    static Want of(WantLine line, Plan plan, Stage stage, InkRelease.Known ink, Wants.Elsewhere elsewhere) {
        double end = stage.lastSeconds() - stage.releaseSeconds();
        if (!line.written().has("time") && stage.frames() <= 1) {
            return new NotComputed(line, "Say by when, from the release: write the want's time.");
        }
        double by = line.written().findQuantity("time").map(Quantity::si).orElse(end);
        InkWants.ThingPart part = InkWants.ThingPart.of(line, InkWants.ThingPart.MIDDLE);
        int thing = stage.thingIndex(line.subjects().getFirst().name());
        Veil veil = new Veil(thing, part, by, plan.film().papersOrDefault());
        Moments moments = new Moments(stage, stage.startValues(), List.of(0.0), new Recall());
        VeiledBy free = new VeiledBy(line, veil, ink, Optional.empty(), elsewhere::findVeiled);
        if (stage.shot().marks().stream().anyMatch(Mark::isFree)) {
            return free;
        }
        Optional<Simulation> simulation =
                elsewhere.findVeiled(free.height(moments)).map(veiled -> free.carried(moments, veiled));
        return new VeiledBy(line, veil, ink, simulation, _ -> Optional.empty());
    }

    private Simulation carried(Moments moments, Wants.Elsewhere.Veiled veiled) {
        Veiling veiling = veiling(moments, 1);
        double law = veiling.aheadMetres() <= 0
                ? 0
                : seconds(moments, veiling.sightMetres()).value();
        return new Simulation(
                veiled,
                law < Wants.Elsewhere.NEVER_SECONDS ? law : 0,
                Math.max(0, -wideSpareSeconds(moments, veiling)));
    }

    /// How much earlier than it passes the sight line the plume is wide enough; below 0 where it is later.
    private double wideSpareSeconds(Moments moments, Veiling veiling) {
        return seconds(moments, veiling.sightMetres()).value()
                - seconds(moments, veiling.wideMetres()).value();
    }

    @Override
    public String unit() {
        return "s";
    }

    private PlumePlace plume(Moments moments) {
        return ink.at(moments.stage().findMouth(moments.values()).orElseThrow());
    }

    private Body body(Moments moments) {
        return moments.at(0).things().get(at.thing());
    }

    private Wants.Elsewhere.Height height(Moments moments) {
        Body body = body(moments);
        double low = body.bounds().low().z();
        double share =
                (at.part().heightMetres(body) - low) / (body.bounds().high().z() - low);
        List<Double> values = Arrays.stream(moments.values()).boxed().toList();
        return new Wants.Elsewhere.Height(
                moments.stage(), values, Parts.name(moments, at.thing()), share, at.bySeconds());
    }

    private Optional<Estimate> findSimulated(Moments moments) {
        return simulation.map(one -> one.lawSeconds() > 0
                ? one.at(seconds(moments, veiling(moments, 1).sightMetres()).value())
                : one.veiled().seconds());
    }

    private Veiling veiling(Moments moments, double wider) {
        return Veiling.of(plume(moments), moments.at(0), body(moments), at.part(), wider);
    }

    /// How far under the initial front the sight line is; not above 0 where no front passes it.
    private double way(Moments moments, Veiling veiling) {
        return veiling.sightMetres() - plume(moments).plume().startMetres();
    }

    private Estimate seconds(Moments moments, double depth) {
        PlumePlace plume = plume(moments);
        double way = depth - plume.plume().startMetres();
        return way <= 0
                ? new Estimate(0, 0, 0)
                : plume.plume().arrival(depth) instanceof Arrival.At(Estimate seconds)
                        ? seconds
                        : new Estimate(
                                Wants.Elsewhere.NEVER_SECONDS,
                                Wants.Elsewhere.NEVER_SECONDS,
                                Wants.Elsewhere.NEVER_SECONDS);
    }

    @Override
    public double[] parts(Moments moments) {
        Veiling veiling = veiling(moments, 1);
        double way = way(moments, veiling);
        boolean isCarried = simulation.map(one -> one.lawSeconds() > 0).orElse(true);
        double seconds = findSimulated(moments)
                .orElseGet(() -> seconds(moments, veiling.sightMetres()))
                .value();
        double lack = simulation.map(Simulation::lawLackSeconds).orElse(0.0);
        return new double[] {
            isCarried && way <= 0 ? way / UPWARD_METRES_PER_SECOND : at.bySeconds() - seconds,
            wideSpareSeconds(moments, veiling) + lack,
            Parts.MILLIMETRES * (simulation.isPresent() ? veiling.aheadMetres() : veiling.clearMetres())
        };
    }

    @Override
    public double margin(double[] parts) {
        return simulation.isPresent() ? parts[0] : Math.min(parts[0], parts[1]);
    }

    @Override
    public boolean isMeasured(Moments moments) {
        Optional<Estimate> simulated = findSimulated(moments);
        if (simulated.isPresent()) {
            return simulated.get().value() < Wants.Elsewhere.NEVER_SECONDS;
        }
        Veiling veiling = veiling(moments, 1);
        return way(moments, veiling) <= 0
                || Math.max(
                                seconds(moments, veiling.sightMetres()).value(),
                                seconds(moments, veiling.wideMetres()).value())
                        < Wants.Elsewhere.NEVER_SECONDS;
    }

    /// Light ink that turns over the thing's top meets nothing of it.
    private boolean turnsAbove(Moments moments) {
        PlumePlace plume = plume(moments);
        double top = plume.depthMetres(body(moments).bounds().high().z());
        return plume.plume().arrival(veiling(moments, 1).sightMetres()) instanceof Arrival.Never(Estimate deepest)
                && deepest.value() < top;
    }

    private Veiling.Side side(Moments moments) {
        return Veiling.side(plume(moments), moments.at(0), body(moments), at.part());
    }

    private Optional<String> findMisplaced(Moments moments) {
        return InkWants.findMisplaced(plume(moments), body(moments), Parts.name(moments, at.thing()), at.papers());
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        if (findSimulated(moments).isPresent()) {
            return Optional.empty();
        }
        Optional<String> place = findMisplaced(moments);
        if (place.isPresent()) {
            return place;
        }
        Veiling veiling = veiling(moments, 1);
        if (way(moments, veiling) <= 0) {
            return ink.isLight() ? Optional.of(InkWants.RISING) : Optional.empty();
        }
        if (plume(moments).plume().arrival(veiling.sightMetres()) instanceof Arrival.Unknown(var reason)) {
            return Optional.of(InkWants.unknown(reason, at.papers()));
        }
        String name = Parts.name(moments, at.thing());
        return side(moments) == Veiling.Side.MEETING && !turnsAbove(moments)
                ? Optional.of("Not computed: the plume meets " + name + " or comes down on it, and its law is of open"
                        + " water. Simulate it, ./plumeline ink, or move the nozzle ahead of " + name
                        + " by more than the plume's half-width there, "
                        + Parts.distance(
                                Parts.MILLIMETRES
                                        * Veiling.radiusMetres(
                                                plume(moments), at.part().heightMetres(body(moments))),
                                at.papers())
                        + ".")
                : Optional.empty();
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return findSimulated(moments).isEmpty()
                        && findMisplaced(moments).isEmpty()
                        && side(moments) == Veiling.Side.BEHIND
                ? Optional.of("The ink doesn't go down before " + Parts.name(moments, at.thing())
                        + " as the camera sees it: bring the nozzle farther forward.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        String part = Parts.name(moments, at.thing()) + "'s " + at.part().word();
        String wanted = "; wanted by " + Print.seconds(at.bySeconds(), 2) + ".";
        Optional<Estimate> simulated = findSimulated(moments);
        if (simulated.isPresent()) {
            String veiled = simulated.get().value() >= Wants.Elsewhere.NEVER_SECONDS
                    ? " isn't veiled"
                    : " is veiled after " + InkWants.interval(simulated.get());
            return Optional.of("In the simulation " + part + veiled + wanted + BY_LAW);
        }
        Veiling veiling = veiling(moments, 1);
        double way = way(moments, veiling);
        if (way <= 0) {
            return Optional.of("The nozzle's mouth is " + Parts.distance(Parts.MILLIMETRES * way, papers)
                    + " under the camera's sight line to " + part + ": no front passes it. Raise the nozzle.");
        }
        if (plume(moments).plume().arrival(veiling.sightMetres()) instanceof Arrival.Never(Estimate deepest)) {
            return Optional.of(InkWants.turns(ink.ink(), deepest, papers) + "the camera's sight line to " + part
                    + " passes " + Parts.distance(Parts.MILLIMETRES * veiling.sightMetres(), papers)
                    + " under it: it never veils it. " + InkWants.HEAVIER);
        }
        Estimate passes = seconds(moments, veiling.sightMetres());
        if (veiling.coveredShare() < Veiling.SHARE) {
            return Optional.of("The plume is too narrow before " + part + ": it covers "
                    + Print.share(Math.max(0, veiling.coveredShare()), 0)
                    + " of its width there, half is asked for. Move the nozzle toward the camera, or to its middle;"
                    + " more way or more ink makes it wider.");
        }
        return Optional.of("By its law the plume veils " + part + " after " + InkWants.interval(passes) + wanted);
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        Optional<Estimate> simulated = findSimulated(moments);
        if (simulated.isPresent()) {
            return simulated.get().high() > at.bySeconds()
                    ? Optional.of("Takes differ by more than there is to spare: allow more time, or plan takes for it.")
                    : Optional.empty();
        }
        Veiling veiling = veiling(moments, 1);
        PlumePlace plume = plume(moments);
        Estimate radius = plume.plume()
                .radiusMetres(Math.max(veiling.sightMetres(), plume.plume().startMetres() + Veiling.LEAST_METRES));
        if (plume.plume().comingShare(veiling.sightMetres()) < Ink.SURE_SHARE) {
            return Optional.of("Lighter than the water, it turns before it is there in some takes.");
        }
        boolean isMaybeNarrow = veiling(moments, radius.low() / radius.value()).coveredShare() < Veiling.SHARE;
        return isMaybeNarrow || seconds(moments, veiling.sightMetres()).high() > at.bySeconds()
                ? Optional.of(InkWants.spreadReaches(ink))
                : Optional.empty();
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        List<String> all = new ArrayList<>();
        findOdds(moments).ifPresent(all::add);
        findWhen(moments)
                .flatMap(seconds -> InkWants.findUnseen(moments.stage(), seconds))
                .ifPresent(all::add);
        kept.apply(height(moments))
                .map(Wants.Elsewhere.Veiled::seconds)
                .map(seconds -> "The simulation of these marks, which are free, has it "
                        + (seconds.value() >= Wants.Elsewhere.NEVER_SECONDS
                                ? "not veiled"
                                : "veiled after " + InkWants.interval(seconds))
                        + "; it decides once they are kept, ./plumeline keep.")
                .ifPresent(all::add);
        return all.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", all));
    }

    /// When it is veiled, where it ever is.
    private Optional<Double> findWhen(Moments moments) {
        double seconds = findSimulated(moments)
                .orElseGet(() -> seconds(moments, veiling(moments, 1).sightMetres()))
                .value();
        boolean isVeiled = simulation.isPresent() || side(moments) == Veiling.Side.BEFORE;
        return isVeiled && seconds < Wants.Elsewhere.NEVER_SECONDS ? Optional.of(seconds) : Optional.empty();
    }

    private Optional<String> findOdds(Moments moments) {
        if (simulation.isPresent()) {
            return Optional.of(InkWants.odds(simulation.get().veiled().byShare(), "veiled by then"));
        }
        Veiling veiling = veiling(moments, 1);
        PlumePlace plume = plume(moments);
        if (way(moments, veiling) <= 0
                || veiling.coveredShare() < Veiling.SHARE
                || side(moments) != Veiling.Side.BEFORE) {
            return InkWants.findCaution("", ink, plume);
        }
        double coming = plume.plume().comingShare(veiling.sightMetres());
        Estimate seconds = seconds(moments, veiling.sightMetres());
        String odds = seconds.value() >= Wants.Elsewhere.NEVER_SECONDS
                ? InkWants.takes(coming) + " may come so deep."
                : InkWants.odds(coming * seconds.oddsUnder(at.bySeconds()), "veiled by then");
        return InkWants.findCaution(odds, ink, plume);
    }
}
