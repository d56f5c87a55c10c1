package plumeline.want;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.lit.Instant;
import plumeline.look.LookMeasure;
import plumeline.look.LookMeasures;
import plumeline.look.Looks;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A want on looks, or on how a lamp pulses: what is measured at each instant that counts, and the worst of it.
///
/// @param line as written
/// @param measure what is measured at an instant
record Looked(WantLine line, LookMeasure measure) implements Want {
    static Want of(WantLine line, Plan plan, Stage stage) {
        return switch (LookMeasures.of(line, plan, stage)) {
            case LookMeasures.Reading.Of(LookMeasure measure) -> new Looked(line, measure);
            case LookMeasures.Reading.Missing(String reason) -> new NotComputed(line, reason);
        };
    }

    private static Looks at(Moments moments, Scene scene) {
        Map<Stage, Instant> posed = new HashMap<>();
        return new Looks(
                moments.stage(),
                moments.lit(scene),
                look -> posed.computeIfAbsent(look, one -> moments.lit(one, scene.frame())));
    }

    private List<Looks> during(Moments moments) {
        List<Scene> scenes = measure.restsOnMarks() ? moments.during(line.when()) : List.of(moments.at(0));
        return scenes.stream().map(scene -> at(moments, scene)).toList();
    }

    private Looks worst(Moments moments) {
        Looks worst = null;
        double least = Double.POSITIVE_INFINITY;
        for (Looks looks : during(moments)) {
            double margin = Arrays.stream(measure.parts(looks)).min().orElse(Double.POSITIVE_INFINITY);
            if (worst == null || margin < least) {
                least = margin;
                worst = looks;
            }
        }
        return worst == null ? at(moments, moments.at(0)) : worst;
    }

    @Override
    public String unit() {
        return measure.unit();
    }

    @Override
    public double[] parts(Moments moments) {
        List<Looks> all = during(moments);
        double[] worst = measure.parts(all.getFirst());
        for (Looks looks : all.subList(1, all.size())) {
            double[] next = measure.parts(looks);
            for (int p = 0; p < worst.length; p++) {
                worst[p] = Math.min(worst[p], next[p]);
            }
        }
        return worst;
    }

    @Override
    public boolean restsOnMarks() {
        return measure.restsOnMarks();
    }

    @Override
    public boolean isIdle(Moments moments) {
        return during(moments).stream().allMatch(measure::isIdle);
    }

    @Override
    public boolean isSafety() {
        return measure.isSafety();
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        return during(moments).stream()
                .flatMap(looks -> measure.findUnknown(looks).stream())
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
        return findUnknown(moments).isPresent() ? Optional.empty() : measure.findLack(worst(moments));
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        return Optional.of(measure.standing(worst(moments)));
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        return measure.findTight(worst(moments));
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        return measure.findCaution(worst(moments));
    }

    @Override
    public Optional<Double> findLookChange(Moments moments, String look) {
        return measure.findChange(worst(moments), look);
    }

    @Override
    public List<String> listAttempts(Moments moments) {
        return measure.listAttempts(worst(moments));
    }
}
