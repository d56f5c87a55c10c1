package plumeline.geom;

import java.util.ArrayList;
import java.util.List;

/// Outlines as corners in order, m, straight between them and from the last to the first.
public final class Outlines {
    /// An edge that is longer by rounding alone isn't cut once more.
    private static final double ROUNDING = 1e-9;

    private Outlines() {}

    /// Gives what of an outline is ahead of a plane.
    ///
    /// @param outline a convex outline's corners
    /// @param inward the plane's normal, the way ahead; its length sets the unit of the level
    /// @param level where along it the plane is
    /// @return its corners, with those where it passes the plane; none where nothing is ahead
    public static List<Vec> ahead(List<Vec> outline, Vec inward, double level) {
        List<Vec> ahead = new ArrayList<>(outline.size() + 2);
        for (int i = 0; i < outline.size(); i++) {
            Vec from = outline.get(i);
            Vec to = outline.get((i + 1) % outline.size());
            double here = from.dot(inward) - level;
            double there = to.dot(inward) - level;
            if (here >= 0) {
                ahead.add(from);
            }
            if (here >= 0 != there >= 0) {
                ahead.add(from.plus(to.minus(from).times(here / (here - there))));
            }
        }
        return ahead;
    }

    /// Cuts an outline's edges into equal parts that are no longer than wanted.
    ///
    /// @param outline its corners
    /// @param longestMetres how long a part may be, m, > 0
    /// @return its corners, with those between
    public static List<Vec> finer(List<Vec> outline, double longestMetres) {
        List<Vec> finer = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            Vec from = outline.get(i);
            Vec way = outline.get((i + 1) % outline.size()).minus(from);
            int parts = Math.max(1, (int) Math.ceil(way.lengthMetres() / longestMetres - ROUNDING));
            for (int part = 0; part < parts; part++) {
                finer.add(from.plus(way.times((double) part / parts)));
            }
        }
        return finer;
    }

    /// Gives how long an outline is all round.
    ///
    /// @param outline its corners
    /// @return m
    public static double roundMetres(List<Vec> outline) {
        double length = 0;
        for (int i = 0; i < outline.size(); i++) {
            length += outline.get(i).distanceMetres(outline.get((i + 1) % outline.size()));
        }
        return length;
    }
}
