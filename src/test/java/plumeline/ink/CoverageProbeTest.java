package plumeline.ink;

import java.util.*;
import org.junit.jupiter.api.Test;

final class CoverageProbeTest {
    @Test
    void probe() {
        for (var kind : SyntheticTakes.Kind.values())
        for (int takes = 0; takes <= 3; takes++)
        for (int readings = 1; readings <= 3; readings++)
        for (int width = 0; width <= 1; width++)
        for (int other = 0; other < 2; other++) {
            if (takes == 0 && (readings > 1 || width > 0 || other > 0)) continue;
            Random random = new Random(7);
            int n = 800, in = 0, inMean = 0, none = 0;
            List<Double> err = new ArrayList<>(), err0 = new ArrayList<>(), e2 = new ArrayList<>(), e20 = new ArrayList<>(), bias = new ArrayList<>();
            for (int i = 0; i < n; i++) {
                var crew = new SyntheticTakes(random, kind);
                Descent d = crew.descent();
                List<ReadTake> list = new ArrayList<>();
                for (int t = 0; t < takes; t++) list.add(crew.take(d, readings, width));
                Descent next = other == 1 ? crew.other(d) : d;
                double depth = -next.heightMetres() + 0.05 + 0.12 * random.nextDouble();
                double t = crew.nextTake(next, depth);
                double mean = crew.seconds(next, depth);
                var p = Learnt.of(list).predict(next, depth);
                var p0 = Ink.predict(next, depth);
                if (!(p instanceof Prediction.Reached r) || !(p0 instanceof Prediction.Reached r0)) { none++; continue; }
                if (r.seconds().low() <= t && t <= r.seconds().high()) in++;
                err.add(Math.abs(Math.log(r.seconds().value() / t)));
                err0.add(Math.abs(Math.log(r0.seconds().value() / t)));
                e2.add(Math.abs(Math.log(r.seconds().value() / mean)));
                e20.add(Math.abs(Math.log(r0.seconds().value() / mean)));
                bias.add(Math.log(r.seconds().value() / mean));
            }
            for (var l : List.of(err, err0, e2, e20, bias)) Collections.sort(l);
            int m = err.size() / 2;
            System.out.printf(Locale.ROOT, "PROBE %s takes %d read %d width %d other %d: in %.1f %%  err %.3f/%.3f=%.2f  mean %.3f/%.3f=%.2f bias %.3f none %d%n",
                kind, takes, readings, width, other, 100.0 * in / err.size(), err.get(m), err0.get(m), err.get(m) / err0.get(m),
                e2.get(m), e20.get(m), e2.get(m) / e20.get(m), bias.get(m), none);
        }
    }
}
