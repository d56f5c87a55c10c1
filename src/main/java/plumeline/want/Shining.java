package plumeline.want;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import plumeline.lit.Instant;
import plumeline.lit.LightMeasures;
import plumeline.lit.Measure;
import plumeline.plan.Plan;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A want on light: what is measured at each instant that counts, and the worst of it.
///
/// @param line as written
/// @param measure what is measured at an instant
record Shining(WantLine line, Measure measure) implements Want {
    static Want of(WantLine line, Plan plan, Stage stage) {
        return switch (LightMeasures.of(line, stage, plan.film().rate())) {
            case LightMeasures.Reading.Of(Measure measure) -> new Shining(line, measure);
            case LightMeasures.Reading.Missing(String reason) -> new NotComputed(line, reason);
        };
    }

    @Override
    public String unit() {
        return measure.unit();
    }

    @Override
    public double[] parts(Moments moments) {
        return Parts.worst(moments.during(line.when()), scene -> measure.parts(moments.lit(scene)));
    }

    private Instant worst(Moments moments) {
        Instant worst = moments.lit(moments.during(line.when()).getFirst());
        double least = Double.POSITIVE_INFINITY;
        for (Scene scene : moments.during(line.when())) {
            Instant now = moments.lit(scene);
            double margin = Arrays.stream(measure.parts(now)).min().orElse(Double.POSITIVE_INFINITY);
            if (margin < least) {
                least = margin;
                worst = now;
            }
        }
        return worst;
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        return moments.during(line.when()).stream()
                .flatMap(scene -> measure.findUnknown(moments.lit(scene)).stream())
                .findFirst();
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        return measure.findLack(worst(moments));
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
    public List<String> listAttempts(Moments moments) {
        return measure.listAttempts(worst(moments));
    }

    @Override
    public List<Relaxed> listRelaxed(double lack, Moments moments) {
        return measure
                .findEasier(lack)
                .map(easier -> new Relaxed(new Shining(line, easier.measure()), easier.sentence()))
                .stream()
                .toList();
    }
}
