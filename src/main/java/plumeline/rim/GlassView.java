package plumeline.rim;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.mirror.Spans;
import plumeline.mirror.Spans.Span;
import plumeline.mirror.Target;
import plumeline.mirror.Ways;
import plumeline.roots.Roots;

/// What a camera sees through round clear glass at one height, across its outline.
///
/// Shares across are of the outline's width there, from its left edge, 0 to 1, in the picture of a camera that looks
/// square to the body's axis with the same heading.
///
/// @param body where the glass stands; its solid is the glass's outside
/// @param glass the glass
/// @param aim the camera, in the same medium as the glass
/// @param heightMetres along the body's axis from its base, m
/// @param ways which ways are free from the glass on to a light
public record GlassView(Body body, ClearRound glass, Aim aim, double heightMetres, Ways ways) {
    private static final int STEPS = 64;
    private static final int FINER = 12;
    private static final int LEAST_STEPS = 16;

    /// So many ways may follow each other within a step.
    private static final int MOST_BORDERS = 8;

    /// So near beside a border between two ways sight is looked at, half turns of the glass.
    private static final double BORDER = 1e-9;

    /// Nodes and weights of Gauss's rule with three on −1 to 1.
    private static final double[] NODES = {-Math.sqrt(0.6), 0, Math.sqrt(0.6)};

    private static final double[] WEIGHTS = {5 / 9.0, 8 / 9.0, 5 / 9.0};

    private static final Passage.Out NOTHING = new Passage.Out(Vec.ZERO, Vec.UP, 0, Passage.Way.WALL, 0);

    /// Gives the same view with other ways.
    ///
    /// @param other which ways are free from the glass on to a light
    /// @return the view
    public GlassView past(Ways other) {
        return new GlassView(body, glass, aim, heightMetres, other);
    }

    private Outline outline() {
        Vec eye = body.own(aim.eye());
        Vec forward = body.own(aim.eye().plus(aim.forward())).minus(eye);
        return new Outline(eye, forward, heightMetres, glass.outer().radiusAtMetres(heightMetres));
    }

    /// Tells whether the lens is where the law holds: before the glass, not in it, nor over its cylinder.
    ///
    /// @return false where nothing is known of what it sees
    public boolean isBefore() {
        return heightMetres > 0
                && heightMetres < glass.outer().heightMetres()
                && outline().radiusMetres() > 0
                && outline().isOutside();
    }

    /// Follows sight across the outline.
    ///
    /// @param share where it meets the outline, 0 to 1
    /// @return where it comes out, in the table's frame
    public Passage follow(double share) {
        Outline outline = outline();
        Vec place = outline.place(share);
        Vec way = place.minus(outline.eye()).unit();
        boolean isSeen = glass.findCone(heightMetres)
                .filter(cone -> cone.facing(place).dot(way) < GRAZES)
                .isPresent();
        return isSeen && glass.follow(place, way) instanceof Passage.Out out
                ? new Passage.Out(
                        body.place(out.place()),
                        body.place(out.place().plus(out.direction())).minus(body.place(out.place())),
                        out.transmittance(),
                        out.way(),
                        out.faces())
                : new Passage.Lost();
    }

    /// At the outline's very edge sight grazes, to rounding.
    private static final double GRAZES = 1e-9;

    private Passage.Out out(double share) {
        return follow(share) instanceof Passage.Out out ? out : NOTHING;
    }

    /// Lists where a light is seen through the glass.
    ///
    /// @param emitter the light
    /// @param least least transmittance that counts, 0 to 1
    /// @param from where to look from, share across
    /// @param to where to look to, not below
    /// @return stretches across in order
    public List<Span> listStretches(Emitter emitter, double least, double from, double to) {
        List<Span> stretches = new ArrayList<>();
        for (Span alike : alike(turn(from), turn(to))) {
            int steps = Math.max(LEAST_STEPS, (int) (STEPS * (alike.to() - alike.from()) / (turn(to) - turn(from))));
            for (Span met : Spans.over(turn -> margin(emitter, least, share(turn)), alike.from(), alike.to(), steps)) {
                Spans.over(turn -> isFree(emitter, share(turn)) ? 1 : -1, met.from(), met.to(), FINER)
                        .forEach(free -> add(stretches, new Span(share(free.from()), share(free.to()))));
            }
        }
        return stretches;
    }

    /// Adds a stretch that is more than rounding, as one with the last where only a border between ways is between.
    private static void add(List<Span> stretches, Span next) {
        if (next.to() - next.from() < BORDER) {
            return;
        }
        if (!stretches.isEmpty() && next.from() - stretches.getLast().to() < 3 * BORDER) {
            stretches.add(new Span(stretches.removeLast().from(), next.to()));
        } else {
            stretches.add(next);
        }
    }

    /// Turns between which sight takes the same way through the glass. From one way to another it swings aside at once,
    /// or faster than any step tells.
    private List<Span> alike(double from, double to) {
        List<Span> alike = new ArrayList<>();
        double begins = from;
        double last = from;
        for (int i = 1; i <= STEPS; i++) {
            double next = i == STEPS ? to : from + (to - from) * i / STEPS;
            for (int border = 0; border < MOST_BORDERS && kind(last) != kind(next); border++) {
                int was = kind(last);
                double ends = Roots.end(turn -> kind(turn) == was, last, next);
                if (ends - BORDER > begins) {
                    alike.add(new Span(begins, ends - BORDER));
                }
                begins = Math.min(next, ends + BORDER);
                last = begins;
            }
            last = next;
        }
        if (to > begins) {
            alike.add(new Span(begins, to));
        }
        return alike;
    }

    /// Tells ways apart.
    private int kind(double turn) {
        return follow(share(turn)) instanceof Passage.Out out
                ? 2 * out.faces() + (out.way() == Passage.Way.BORE ? 1 : 0)
                : 0;
    }

    /// Sight is looked at more closely toward the rims: in even steps of half a turn round the glass.
    private static double share(double turn) {
        return (1 - Math.cos(turn)) / 2;
    }

    private static double turn(double share) {
        return Math.acos(1 - 2 * share);
    }

    private double margin(Emitter emitter, double least, double share) {
        Passage.Out out = out(share);
        if (!(out.transmittance() > 0)) {
            return -1;
        }
        return Math.min(inside(out, emitter), out.transmittance() - least);
    }

    /// Where it shines the other way, by how far sight goes past its middle.
    private static double inside(Passage.Out out, Emitter emitter) {
        double target = Target.of(emitter, out.place(), out.direction()).margin();
        if (target > -Math.PI / 2) {
            return target;
        }
        Vec to = emitter.middle().minus(out.place());
        double length = to.lengthMetres();
        double cosine = length > 0 ? to.dot(out.direction()) / length : 1;
        return -Math.PI / 2 - Math.acos(Math.clamp(cosine, -1, 1)) / 2;
    }

    /// Gives how far within a light's outline sight meets it, whatever stands between.
    ///
    /// @param emitter the light
    /// @param share where sight meets the glass's outline, 0 to 1
    /// @return about the angle to the light's nearest edge, rad; below 0 beside it, under −π/2 far from it or where
    /// it shines the other way, −π where sight is lost
    public double insideRadians(Emitter emitter, double share) {
        return follow(share) instanceof Passage.Out out ? inside(out, emitter) : -Math.PI;
    }

    private boolean isFree(Emitter emitter, double share) {
        Passage.Out out = out(share);
        double on = Target.of(emitter, out.place(), out.direction()).onMetres();
        return ways.isFree(out.place(), out.place().plus(out.direction().times(on)));
    }

    /// Sums what is seen of a light over a part of the outline: `∫ T L ds`.
    ///
    /// @param emitter the light
    /// @param from where the part begins, share across
    /// @param to where it ends
    /// @return cd/m² times share of the width
    public double brightness(Emitter emitter, double from, double to) {
        double sum = 0;
        for (Span span : listStretches(emitter, 0, from, to)) {
            double half = (span.to() - span.from()) / 2;
            for (int i = 0; i < NODES.length; i++) {
                sum += half * WEIGHTS[i] * out(span.middle() + half * NODES[i]).transmittance();
            }
        }
        return emitter.luminance() * sum;
    }
}
