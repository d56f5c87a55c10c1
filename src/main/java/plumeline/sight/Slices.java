package plumeline.sight;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.Function;
import plumeline.geom.Hull;
import plumeline.geom.Outlines;
import plumeline.geom.Plane;
import plumeline.geom.Vec;

/// Bodies as they seem from a place to which light of them is bent, as by a tank's wall: their straight sides seem
/// bent.
///
/// @param from the place, m
/// @param ahead what is ahead of all of these planes is seen so
/// @param find where places of a body that follow each other are seen, m, such as on the wall's face; those aren't
/// named that aren't seen so, at least ahead of all planes
public record Slices(Vec from, List<Plane> ahead, Function<List<Vec>, List<Vec>> find) {
    /// Into so many parts a side is cut at most.
    private static final int PARTS = 16;

    private static final int MOST_BLOCKS = 8;

    /// By how much of its way a straight side may be off.
    private static final double STRAIGHT = 2e-4;

    /// Gives a convex part of a body in as many slices as leave its sides straight to 0.2 mm a metre of way, sixteen at
    /// most; of a box each is cut so across and along too, eight times at most. Of what isn't wholly seen only what
    /// is.
    ///
    /// @param part the part
    /// @return the slices as they are seen
    public List<Hull> of(Hull part) {
        if (ahead.stream().anyMatch(plane -> isBehind(part, plane))) {
            return List.of();
        }
        return (part.one().size() == 4 ? blocks(part) : List.of(part))
                .stream().flatMap(block -> sliced(block).stream()).toList();
    }

    private static boolean isBehind(Hull part, Plane plane) {
        double level = plane.normal().dot(plane.through());
        return part.one().stream().allMatch(corner -> plane.normal().dot(corner) <= level)
                && part.other().stream().allMatch(corner -> plane.normal().dot(corner) <= level);
    }

    /// A box in blocks side by side, the outer ones of these cut along too: an edge may be seen hollow, which a convex
    /// block would fill. Those between have places along their sides, so that nothing is seen between two.
    private List<Hull> blocks(Hull box) {
        int across = Math.min(MOST_BLOCKS, Math.max(countFor(box, 0, 1), countFor(box, 3, 2)));
        int along = Math.min(MOST_BLOCKS, Math.max(countFor(box, 0, 3), countFor(box, 1, 2)));
        List<Hull> blocks = new ArrayList<>();
        for (int i = 0; i < across; i++) {
            double from = (double) i / across;
            double to = (i + 1.0) / across;
            if (i > 0 && i < across - 1) {
                blocks.add(block(box, from, to, 0, 1, along));
            } else {
                for (int j = 0; j < along; j++) {
                    blocks.add(block(box, from, to, (double) j / along, (j + 1.0) / along, 1));
                }
            }
        }
        return blocks;
    }

    private static Hull block(Hull box, double left, double right, double near, double far, int steps) {
        return new Hull(
                block(box.one(), left, right, near, far, steps), block(box.other(), left, right, near, far, steps));
    }

    private static List<Vec> block(List<Vec> ring, double left, double right, double near, double far, int steps) {
        List<Vec> block = new ArrayList<>(2 * steps + 2);
        for (int step = 0; step <= steps; step++) {
            block.add(within(ring, right, near + (far - near) * step / steps));
        }
        for (int step = steps; step >= 0; step--) {
            block.add(within(ring, left, near + (far - near) * step / steps));
        }
        return block;
    }

    private int countFor(Hull box, int near, int far) {
        return Math.max(
                countFor(bent(box.one().get(near), box.one().get(far))),
                countFor(bent(box.other().get(near), box.other().get(far))));
    }

    private static Vec within(List<Vec> ring, double across, double along) {
        return between(between(ring.get(0), ring.get(1), across), between(ring.get(3), ring.get(2), across), along);
    }

    private static Vec between(Vec from, Vec to, double share) {
        return from.plus(to.minus(from).times(share));
    }

    private List<Hull> sliced(Hull hull) {
        List<Hull> slices = new ArrayList<>();
        List<Vec> before = hull.one();
        List<Vec> last = find.apply(before);
        int parts = countFor(hull);
        for (int part = 1; part <= parts; part++) {
            List<Vec> ring = ring(hull, (double) part / parts);
            List<Vec> next = find.apply(ring);
            if (last.size() == ring.size() && next.size() == ring.size()) {
                slices.add(new Hull(last, next));
            } else {
                List<Vec> some = find.apply(ahead(new Hull(before, ring)));
                if (some.size() > 2) {
                    slices.add(new Hull(some, some));
                }
            }
            last = next;
            before = ring;
        }
        return slices;
    }

    /// Points whose hull is what of a slice is ahead, and some between.
    private List<Vec> ahead(Hull slice) {
        double part = Outlines.roundMetres(slice.one()) / PARTS;
        Set<Vec> points = new LinkedHashSet<>();
        for (List<Vec> face : slice.faces()) {
            List<Vec> left = face;
            for (Plane plane : ahead) {
                left = Outlines.ahead(left, plane.normal(), plane.normal().dot(plane.through()));
            }
            points.addAll(part > 0 ? Outlines.finer(left, part) : left);
        }
        return List.copyOf(points);
    }

    /// How many slices leave its sides straight.
    private int countFor(Hull hull) {
        int corners = hull.one().size();
        double bent = 0;
        for (int quarter = 0; quarter < 4; quarter++) {
            int corner = quarter * corners / 4;
            bent = Math.max(bent, bent(hull.one().get(corner), hull.other().get(corner)));
        }
        return countFor(bent);
    }

    private static int countFor(double bent) {
        int parts = 1;
        while (parts < PARTS && bent > STRAIGHT * parts * parts) {
            parts *= 2;
        }
        return parts;
    }

    /// How far aside a straight side's middle seems, share of its way, as far as the side is seen.
    private double bent(Vec near, Vec far) {
        double[] shares = seen(near, far);
        double part = shares[1] - shares[0];
        if (!(part > 0)) {
            return 0;
        }
        Vec begin = between(near, far, shares[0]);
        Vec end = between(near, far, shares[1]);
        List<Vec> seen = find.apply(List.of(begin, between(begin, end, 0.5), end));
        Vec side = seen.get(2).minus(seen.get(0));
        double aside = seen.get(1).minus(seen.get(0)).cross(side).lengthMetres();
        double away = seen.get(1).distanceMetres(from);
        return aside > 0 ? aside / (side.lengthMetres() * away * part * part) : 0;
    }

    /// From where to where a side is seen, shares of it.
    private double[] seen(Vec near, Vec far) {
        double[] shares = {0, 1};
        for (Plane plane : ahead) {
            double here = near.minus(plane.through()).dot(plane.normal());
            double there = far.minus(plane.through()).dot(plane.normal());
            if (here < 0 && there < 0) {
                return new double[] {0, 0};
            }
            if (here < 0 || there < 0) {
                double share = here / (here - there);
                shares[0] = here < 0 ? Math.max(shares[0], share) : shares[0];
                shares[1] = there < 0 ? Math.min(shares[1], share) : shares[1];
            }
        }
        return shares;
    }

    private static List<Vec> ring(Hull hull, double share) {
        List<Vec> ring = new ArrayList<>(hull.one().size());
        for (int i = 0; i < hull.one().size(); i++) {
            ring.add(between(hull.one().get(i), hull.other().get(i), share));
        }
        return ring;
    }
}
