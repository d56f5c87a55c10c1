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

    private final int[] kinds;
    private final double[] index;
    private final double[] slopes;
    private final double[] rests;

    /// Where a part's shares begin; parts of one finish have the same.
    private final int[] firsts;

    private final float[] tables;
    private final double[] bodies;
    private final List<Optional<Paint>> paints;
    private final boolean[] isPlain;
    private final List<Optional<Drops>> drops;
    private final Meets shapes;
    private final double dropRest = 1 / (1 - Splits.mean(c -> Splits.mirrored(c, 1, DROP_INDEX)));

    Coats(List<Part> parts, Meets shapes) {
        this.shapes = shapes;
        int count = parts.size();
        kinds = new int[count];
        index = new double[count];
        slopes = new double[count];
        rests = new double[count];
        firsts = new int[count];
        bodies = new double[3 * count];
        isPlain = new boolean[count];
        paints = parts.stream()
                .map(part -> part.coat() instanceof Coat.Opaque opaque
                        ? Optional.of(opaque.paint())
                        : Optional.<Paint>empty())
                .toList();
        drops = paints.stream()
                .map(paint -> paint.flatMap(Paint::beads)
                        .filter(beads -> beads.cover() > 0)
                        .map(Drops::new))
                .toList();
        Map<Finish, Integer> kept = new LinkedHashMap<>();
        parts.forEach(part -> {
            if (part.coat() instanceof Coat.Opaque opaque) {
                kept.putIfAbsent(opaque.finish(), kept.size());
            }
        });
        tables = new float[(STEPS + 2) * kept.size()];
        Map<Finish, Integer> first = new LinkedHashMap<>();
        for (int i = 0; i < count; i++) {
            if (parts.get(i).coat() instanceof Coat.Opaque opaque) {
                put(i, opaque);
                firsts[i] = (STEPS + 2) * kept.getOrDefault(opaque.finish(), 0);
                int alike = first.getOrDefault(opaque.finish(), i);
                if (alike == i) {
                    first.put(opaque.finish(), i);
                    tabulate(i);
                }
                rests[i] = rests[alike];
            }
        }
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
            tables[firsts[part] + i] = (float) mirroredBy(part, (double) i / STEPS);
        }
        double mean = Splits.mean(cosine -> mirrored(part, cosine));
        rests[part] = mean < 1 ? 1 / (1 - mean) : 0;
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
        int from = firsts[part] + step;
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

    /// What a place of an opaque part sends back evenly.
    ///
    /// @param hit the place, its face noted
    /// @param into takes three shares; a fourth number is used
    void colour(int part, Hit hit, double[] into) {
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
        if (paint.label().isPresent()) {
            label(part, paint.label().get(), hit, into);
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

    private void label(int part, Paint.Label label, Hit hit, double[] into) {
        double down = (label.bottomMetres() + label.heightMetres() - hit.ownZ) / label.heightMetres();
        if (!(down >= 0 && down <= 1)) {
            return;
        }
        double across;
        if (shapes.kind(part) == Shapes.BOX) {
            if (hit.piece != 2) {
                return;
            }
            across = hit.ownX / label.widthMetres() + 0.5;
        } else if (shapes.kind(part) == Shapes.TURNED && shapes.faces(hit.piece) == 0) {
            double radius = Math.sqrt(hit.ownX * hit.ownX + hit.ownY * hit.ownY);
            across = Math.atan2(hit.ownX, -hit.ownY) * radius / label.widthMetres() + 0.5;
        } else {
            return;
        }
        if (!(across >= 0 && across <= 1)) {
            return;
        }
        Rgb paper = label.paper();
        if (label.art().isEmpty()) {
            into[0] = paper.red();
            into[1] = paper.green();
            into[2] = paper.blue();
            return;
        }
        label.art().get().at(across, down, into);
        double bare = 1 - into[3];
        into[0] = into[0] * into[3] + bare * paper.red();
        into[1] = into[1] * into[3] + bare * paper.green();
        into[2] = into[2] * into[3] + bare * paper.blue();
    }
}
