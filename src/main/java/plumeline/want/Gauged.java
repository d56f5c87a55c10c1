package plumeline.want;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import plumeline.lit.Instant;
import plumeline.look.LookMeasures;
import plumeline.look.Looks;
import plumeline.pace.PaceMeasures;
import plumeline.pace.Paced;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Gauge;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A want on looks, on how a lamp pulses, or on moves and time: what its gauge reads at each instant that counts, and
/// the worst of it.
///
/// @param <A> what the gauge is read off
/// @param line as written
/// @param gauge what is measured
/// @param posed gives what the gauge is read off at an instant
record Gauged<A>(WantLine line, Gauge<A> gauge, BiFunction<Moments, Scene, A> posed) implements Want {
    static Want ofLooks(WantLine line, Plan plan, Stage stage) {
        return of(line, LookMeasures.of(line, plan, stage), Gauged::looks);
    }

    static Want ofPace(WantLine line, Plan plan, Stage stage) {
        return of(line, PaceMeasures.of(line, plan, stage), Gauged::paced);
    }

    private static <A> Want of(WantLine line, Gauge.Reading<A> reading, BiFunction<Moments, Scene, A> posed) {
        return switch (reading) {
            case Gauge.Reading.Of<A>(Gauge<A> gauge) -> new Gauged<>(line, gauge, posed);
            case Gauge.Reading.Missing<A>(String reason) -> new NotComputed(line, reason);
        };
    }

    private static Looks looks(Moments moments, Scene scene) {
        Map<Stage, Instant> others = new HashMap<>();
        return new Looks(
                moments.stage(),
                moments.lit(scene),
                look -> others.computeIfAbsent(look, one -> moments.lit(one, scene.frame())));
    }

    private static Paced paced(Moments moments, Scene scene) {
        return new Paced(moments.stage(), moments.listValues(), scene, moments.laid());
    }

    private List<A> during(Moments moments) {
        List<Scene> scenes = gauge.isOfWhole() ? List.of(moments.at(0)) : moments.during(line.when());
        return scenes.stream().map(scene -> posed.apply(moments, scene)).toList();
    }

    private A worst(Moments moments) {
        List<A> all = during(moments);
        A worst = all.getFirst();
        double least = Double.POSITIVE_INFINITY;
        for (A at : all) {
            double margin = Arrays.stream(gauge.parts(at)).min().orElse(Double.POSITIVE_INFINITY);
            if (margin < least) {
                least = margin;
                worst = at;
            }
        }
        return worst;
    }

    @Override
    public String unit() {
        return gauge.unit();
    }

    @Override
    public double[] parts(Moments moments) {
        List<A> all = during(moments);
        double[] worst = gauge.parts(all.getFirst());
        for (A at : all.subList(1, all.size())) {
            double[] next = gauge.parts(at);
            for (int p = 0; p < worst.length; p++) {
                worst[p] = Math.min(worst[p], next[p]);
            }
        }
        return worst;
    }

    @Override
    public boolean restsOnMarks() {
        return gauge.restsOnMarks();
    }

    @Override
    public boolean isIdle(Moments moments) {
        return during(moments).stream().allMatch(gauge::isIdle);
    }

    @Override
    public boolean isSafety() {
        return gauge.isSafety();
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        return during(moments).stream()
                .flatMap(at -> gauge.findUnknown(at).stream())
                .findFirst();
    }

    /// Where something lacks its margin is no figure for a crew.
    @Override
    public boolean isMeasured(Moments moments) {
        return findLack(moments).isEmpty();
    }

    /// What isn't known lacks nothing yet.
    @Override
    public Optional<String> findLack(Moments moments) {
        return findUnknown(moments).isPresent() ? Optional.empty() : gauge.findLack(worst(moments));
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Optional.of(gauge.standing(worst(moments)));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return gauge.findTight(worst(moments));
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return gauge.findCaution(worst(moments));
    }

    @Override
    public Optional<Double> findLookChange(Moments moments, String look) {
        return gauge.findChange(worst(moments), look);
    }

    @Override
    public List<String> listAttempts(Moments moments) {
        return gauge.listAttempts(worst(moments));
    }
}
