package plumeline.trace;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import plumeline.colour.Rgb;
import plumeline.mirror.Finish;
import plumeline.scenery.Coat;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.trace.sums.Splits;

/// What light does at each part, as plain numbers.
final class Coats {
    static final int CLEAR = 0;
    static final int MATTE = 1;
    static final int GLOSS = 2;
    static final int SATIN = 3;
    static final int METAL = 4;

    private static final double DROP_INDEX = 1.333;

    /// Shares by cosine are noted at so many steps and straight between them: off by 1e-5 at most.
    private static final int STEPS = 512;

    /// Light that a coat lets through is spread over its angles in so many steps.
    private static final int SPREADS = 64;

    private final int[] kinds;
    private final double[] index;
    private final double[] slopes;
    private final double[] rests;

    /// Which of all finishes a part has.
    private final int[] finishes;

    private final float[] tables;
    private final float[] spreads;
    private final double[] bodies;
    private final List<Optional<Paint>> paints;
    private final boolean[] isPlain;
    private final List<Optional<Drops>> drops;
    private final List<Optional<Paint.Label>> stuck;
    private final Meets shapes;
    private final double dropRest = 1 / (1 - Splits.mean(c -> Splits.mirrored(c, 1, DROP_INDEX)));

    Coats(List<Part> parts, Meets shapes) {
        this.shapes = shapes;
        int count = parts.size();
        kinds = new int[count];
        index = new double[count];
        slopes = new double[count];
        rests = new double[count];
        finishes = new int[count];
        bodies = new double[3 * count];
        isPlain = new boolean[count];
        paints = parts.stream()
                .map(part -> part.coat() instanceof Coat.Opaque opaque
                        ? Optional.of(opaque.paint())
                        : Optional.<Paint>empty())
                .toList();
        drops = parts.stream()
                .map(part ->
                        beads(part.coat()).filter(beads -> beads.cover() > 0).map(Drops::new))
                .toList();
        stuck = parts.stream()
                .map(part -> part.coat() instanceof Coat.Clear clear ? clear.label() : Optional.<Paint.Label>empty())
                .toList();
        Map<Finish, Integer> kept = new LinkedHashMap<>();
        parts.forEach(part -> {
            if (part.coat() instanceof Coat.Opaque opaque) {
                kept.putIfAbsent(opaque.finish(), kept.size());
            }
        });
        tables = new float[(STEPS + 2) * kept.size()];
        spreads = new float[(SPREADS + 2) * kept.size()];
        Map<Finish, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            if (parts.get(i).coat() instanceof Coat.Opaque opaque) {
                put(i, opaque);
                finishes[i] = kept.getOrDefault(opaque.finish(), 0);
                int alike = first.getOrDefault(opaque.finish(), i);
                if (alike == i) {
                    first.put(opaque.finish(), i);
                    tabulate(i);
                }
                rests[i] = rests[alike];
            } else if (parts.get(i).coat() instanceof Coat.Clear clear) {
                index[i] = clear.wall().index();
            }
        }
    }

    private static Optional<Paint.Beads> beads(Coat coat) {
        return switch (coat) {
            case Coat.Opaque opaque -> opaque.paint().beads();
            case Coat.Clear clear -> clear.beads();
        };
    }

    private void put(int part, Coat.Opaque opaque) {
        Rgb body = opaque.paint().body();
        bodies[3 * part] = body.red();
        bodies[3 * part + 1] = body.green();
        bodies[3 * part + 2] = body.blue();
        isPlain[part] =
                opaque.paint().label().isEmpty() && opaque.paint().fade().isEmpty();
        switch (opaque.finish()) {
            case Finish.Matte matte -> kinds[part] = MATTE;
            case Finish.Gloss gloss -> {
                kinds[part] = gloss.index() == 1 ? MATTE : GLOSS;
                index[part] = gloss.index();
            }
            case Finish.Satin satin -> {
                kinds[part] = satin.index() == 1 ? MATTE : SATIN;
                index[part] = satin.index();
                slopes[part] = satin.slope();
            }
            case Finish.Metal metal -> {
                kinds[part] = METAL;
                index[part] = metal.straightOn();
            }
        }
    }

    private void tabulate(int part) {
        for (int i = 0; i <= STEPS; i++) {
            tables[(STEPS + 2) * finishes[part] + i] = (float) mirroredBy(part, (double) i / STEPS);
        }
        double mean = Splits.mean(cosine -> mirrored(part, cosine));
        rests[part] = mean < 1 ? 1 / (1 - mean) : 0;
        spread(part);
    }

    /// Notes below which squared sine which share of even light from all round comes through.
    private void spread(int part) {
        int at = (SPREADS + 2) * finishes[part];
        double[] sums = new double[STEPS + 1];
        for (int i = 0; i < STEPS; i++) {
            sums[i + 1] = sums[i] + 1 - mirrored(part, Math.sqrt(1 - (i + 0.5) / STEPS));
        }
        int i = 0;
        for (int j = 0; j <= SPREADS + 1; j++) {
            double wanted = Math.min(1, (double) j / SPREADS) * sums[STEPS];
            while (i < STEPS - 1 && sums[i + 1] < wanted) {
                i++;
            }
            double step = sums[i + 1] - sums[i];
            double share = step > 0 ? Math.clamp((wanted - sums[i]) / step, 0, 1) : 1;
            spreads[at + j] = (float) ((i + share) / STEPS);
        }
    }

    /// Draws an angle as likely as its cosine and what the coat lets through there: the square of its sine.
    ///
    /// @param one drawn evenly, 0 to 1
    double spread(int part, double one) {
        if (kinds[part] <= MATTE) {
            return one;
        }
        double at = one * SPREADS;
        int step = (int) at;
        int from = (SPREADS + 2) * finishes[part] + step;
        return spreads[from] + (at - step) * (spreads[from + 1] - spreads[from]);
    }

    int kind(int part) {
        return kinds[part];
    }

    boolean mirrors(int part) {
        return kinds[part] > MATTE;
    }

    double slope(int part) {
        return slopes[part];
    }

    Optional<Drops> drops(int part) {
        return drops.get(part);
    }

    /// What an opaque part mirrors.
    ///
    /// @param cosine 0 to 1
    double mirrored(int part, double cosine) {
        if (kinds[part] <= MATTE) {
            return 0;
        }
        double at = cosine * STEPS;
        int step = (int) at;
        int from = (STEPS + 2) * finishes[part] + step;
        return tables[from] + (at - step) * (tables[from + 1] - tables[from]);
    }

    private double mirroredBy(int part, double cosine) {
        return switch (kinds[part]) {
            case GLOSS, SATIN -> Splits.mirrored(cosine, 1, index[part]);
            case METAL -> Splits.metal(cosine, index[part]);
            default -> 0;
        };
    }

    /// What comes through the coat, against the mean of all round.
    double passed(int part, double cosine) {
        return kinds[part] <= MATTE ? 1 : (1 - mirrored(part, cosine)) * rests[part];
    }

    /// What a drop mirrors.
    double dropMirrors(double cosine) {
        return Splits.mirrored(cosine, 1, DROP_INDEX);
    }

    double dropPasses(double cosine) {
        return (1 - dropMirrors(cosine)) * dropRest;
    }

    /// Whether a clear part has a label.
    boolean isLabelled(int part) {
        return stuck.get(part).isPresent();
    }

    /// Whether a label lies on a place of a clear part.
    ///
    /// @param hit the place, its face noted
    boolean covers(int part, Hit hit) {
        Optional<Paint.Label> label = stuck.get(part);
        return label.isPresent() && Labels.covers(shapes, part, label.get(), hit);
    }

    /// The index of a clear part's wall.
    double wallIndex(int part) {
        return index[part];
    }

    /// What an opaque place sends back evenly.
    ///
    /// @param hit the place, its face noted
    /// @param cosine of the way it is met on against its facing; over 0 where it is met from within
    /// @param into takes three shares; a fourth number is used
    void colour(int part, Hit hit, double cosine, double[] into) {
        if (kinds[part] == CLEAR) {
            Paint.Label label = stuck.get(part).orElseThrow();
            if (cosine > 0) {
                Labels.back(label, index[part], into);
            } else {
                Labels.front(shapes, part, label, hit, into);
            }
            return;
        }
        into[0] = bodies[3 * part];
        into[1] = bodies[3 * part + 1];
        into[2] = bodies[3 * part + 2];
        if (isPlain[part]) {
            return;
        }
        Paint paint = paints.get(part).orElseThrow();
        if (paint.fade().isPresent()) {
            Paint.Fade fade = paint.fade().get();
            double up = Math.clamp(upward(part, hit), 0, 1);
            double share = fade.foot() + up * (fade.top() - fade.foot());
            into[0] *= share;
            into[1] *= share;
            into[2] *= share;
        }
        label(part, paint.label(), hit, into);
    }

    private void label(int part, Optional<Paint.Label> label, Hit hit, double[] into) {
        if (label.isPresent() && Labels.covers(shapes, part, label.get(), hit)) {
            Labels.front(shapes, part, label.get(), hit, into);
        }
    }

    private double upward(int part, Hit hit) {
        return switch (shapes.kind(part)) {
            case Shapes.SHEET -> (hit.ownY / shapes.size(part, 1) + 1) / 2;
            case Shapes.BEND -> Math.atan2(hit.ownY, hit.ownX) / (Math.PI / 2);
            case Shapes.BOX -> hit.ownZ / shapes.size(part, 2);
            default -> hit.ownZ / shapes.size(part, 1);
        };
    }
}
