package plumeline.sight;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.Function;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Order;
import plumeline.geom.Pinhole;
import plumeline.geom.Projection;
import plumeline.geom.Vec;

/// What a lens point sees of bodies.
///
/// Every function here needs the bodies it looks at wholly in front of the lens point: ask [#leastDepthMetres] first; a
/// body that isn't is an `IllegalArgumentException`, never a `NaN`. Hiders that aren't wholly in front hide nothing.
public final class Sight {
    private static final int PUPIL_POINTS = 8;

    private Sight() {}

    /// Gives the least depth of any point of a body along the optical axis.
    ///
    /// @param projection the view
    /// @param body the body
    /// @return depth, metres; only a body with this over 0 can be looked at
    public static double leastDepthMetres(Projection projection, Body body) {
        double least = Double.POSITIVE_INFINITY;
        for (Seen part : Seen.of(projection, body)) {
            least = Math.min(least, part.leastDepth());
        }
        return least;
    }

    /// Gives the edges of a body's outline.
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @return the four edges
    public static Extent extent(Projection projection, Body body) {
        List<Seen> parts = inFront(projection, body);
        Extent extent = parts.getFirst().extent();
        for (int i = 1; i < parts.size(); i++) {
            extent = extent.with(parts.get(i).extent());
        }
        return extent;
    }

    /// Gives a body's outline as convex parts, to be united. Corners lie on the exact outline, the ends of straight
    /// sides among them.
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @param steps corners round a whole ellipse, 8 or more
    /// @return one part a frustum, or one for a box
    public static List<Outline> outline(Projection projection, Body body, int steps) {
        List<Outline> outlines = new ArrayList<>();
        for (Seen part : inFront(projection, body)) {
            outlines.add(Drawing.outline(part.shade(), steps));
        }
        return outlines;
    }

    /// Unites convex parts for drawing.
    ///
    /// @param parts the parts, of one body or several
    /// @return the connected parts of the union
    public static List<Face> united(List<Outline> parts) {
        return Drawing.united(parts);
    }

    /// Gives a body's rims, shoulders and box edges, split into seen and hidden runs; what hides is the body itself and
    /// the others. Its outline is [#united] of [#outline].
    ///
    /// @param projection the view
    /// @param body the body, wholly in front
    /// @param others what may stand before it
    /// @param steps points round a whole rim, 8 or more
    /// @return the runs
    public static List<Edge> edges(Projection projection, Body body, List<Body> others, int steps) {
        inFront(projection, body);
        return Drawing.edges(projection, body, others, steps);
    }

    /// Gives by how much a body is hidden behind others: the smallest distance from its outline to the edge of the
    /// union of what hides it; where it sticks out, minus the largest protrusion, the farthest that any of its
    /// points is from that union. [Sides#least] is that margin; the four sides are its parts by direction, each
    /// continuous where the margin is.
    ///
    /// A side to which nothing limits reads up to [Sides#NO_LIMIT]; with nothing before the body every side reads
    /// minus that. Of two bodies parted by a plane only the one on the lens point's side hides the other. In a
    /// pinhole picture the figure is that of the exact outlines to 1e-9; through a tank's wall to 1e-5. The margin
    /// jumps where the definition does: when two hiders just close a slit between them. Gaps enclosed by more than
    /// 64 convex parts aren't told apart.
    ///
    /// @param projection the view
    /// @param hidden the body that shall be hidden, wholly in front
    /// @param hiders what may hide it
    /// @return signed margins in picture lengths; times the depth of the hidden body's axis they are lengths there
    public static Sides hidden(Projection projection, Body hidden, List<Body> hiders) {
        List<Seen> seen = inFront(projection, hidden);
        Vec eye = projection.aim().eye();
        List<Seen> before = new ArrayList<>();
        for (Body hider : hiders) {
            List<Seen> parts = Seen.of(projection, hider);
            if (isInFront(parts) && Order.isBefore(eye, hider, hidden)) {
                before.addAll(parts);
            }
        }
        return Veil.of(seen, before);
    }

    /// Gives the worst of [#hidden] over the entrance pupil.
    ///
    /// @param aim lens point and direction
    /// @param view the view from an aim, such as `Pinhole::new`
    /// @param hidden the body that shall be hidden
    /// @param hiders what may hide it
    /// @param pupilMetres diameter of the entrance pupil, metres, 0 or more
    /// @return side by side the worst margins
    public static Sides hiddenOverPupil(
            Aim aim, Function<Aim, Projection> view, Body hidden, List<Body> hiders, double pupilMetres) {
        Sides worst = hidden(view.apply(aim), hidden, hiders);
        for (int i = 0; i < PUPIL_POINTS && pupilMetres > 0; i++) {
            double angle = 2 * Math.PI * i / PUPIL_POINTS;
            Vec aside = aim.right().times(Math.cos(angle)).plus(aim.up().times(Math.sin(angle)));
            Aim there = aim.from(aim.eye().plus(aside.times(pupilMetres / 2)));
            worst = worst.worst(hidden(view.apply(there), hidden, hiders));
        }
        return worst;
    }

    /// Gives depths of a body along the optical axis, exact in a pinhole picture. The outline is that of the whole
    /// body: of an upright cylinder seen level from distance d it lies at `d − r²/d`, of one seen from above it is
    /// the lid's far rim.
    ///
    /// @param aim lens point and direction
    /// @param body the body, wholly in front
    /// @return nearest surface, deepest point of the outline, and middle
    public static Depths depths(Aim aim, Body body) {
        List<Seen> parts = inFront(new Pinhole(aim), body);
        double near = Double.POSITIVE_INFINITY;
        for (Seen part : parts) {
            near = Math.min(near, part.leastDepth());
        }
        return new Depths(near, Deepest.metres(parts), aim.depthMetres(body.middle()));
    }

    /// Gives the clear space between neighbours, sorted from left to right by the middles of their outlines.
    ///
    /// @param projection the view
    /// @param bodies the bodies, each wholly in front
    /// @return one gap between each two neighbours
    public static List<Gap> gaps(Projection projection, List<Body> bodies) {
        List<Extent> extents = new ArrayList<>(bodies.size());
        List<Integer> order = new ArrayList<>(bodies.size());
        for (Body body : bodies) {
            order.add(extents.size());
            extents.add(extent(projection, body));
        }
        order.sort(Comparator.comparingDouble(
                i -> extents.get(i).left() + extents.get(i).right()));
        List<Gap> gaps = new ArrayList<>();
        for (int i = 1; i < order.size(); i++) {
            int left = order.get(i - 1);
            int right = order.get(i);
            gaps.add(new Gap(
                    left, right, extents.get(right).left() - extents.get(left).right()));
        }
        return gaps;
    }

    private static List<Seen> inFront(Projection projection, Body body) {
        List<Seen> parts = Seen.of(projection, body);
        if (!isInFront(parts)) {
            throw new IllegalArgumentException("a body isn't wholly in front of the lens point");
        }
        return parts;
    }

    private static boolean isInFront(List<Seen> parts) {
        for (Seen part : parts) {
            if (!(part.leastDepth() > 0)) {
                return false;
            }
        }
        return true;
    }
}
