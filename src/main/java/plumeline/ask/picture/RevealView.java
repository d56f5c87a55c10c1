package plumeline.ask.picture;

import java.util.List;

/// What a level camera sees of upright cylinders on the table, by tangents and rims; all lengths in millimetres.
///
/// Picture coordinates are tangents, x to the right and y up, from the middle of the picture.
final class RevealView {
    private static final double LEAST_DEPTH = 1;

    private final double[] lefts;
    private final double[] rights;
    private final double[] tops;
    private final double[] bottoms;
    private final double[] axis;
    private final boolean seen;

    /// Looks.
    ///
    /// @param things what is looked at, whose places are in the values
    /// @param values as in [RevealSet]
    /// @param cameraX where the camera stands
    /// @param keeps what the pan does; heading for the start
    RevealView(List<Reveal.Thing> things, double[] values, double cameraX, Reveal.Keeps keeps) {
        int n = things.size();
        lefts = new double[n];
        rights = new double[n];
        tops = new double[n];
        bottoms = new double[n];
        double[] aside = new double[n];
        double[] ahead = new double[n];
        boolean all = true;
        for (int i = 0; i < n; i++) {
            aside[i] = RevealSet.x(values, i) - cameraX;
            ahead[i] = RevealSet.y(values, i) + values[RevealSet.DISTANCE];
            all &= edges(i, aside[i], ahead[i], radius(things, i));
        }
        axis = all ? axis(keeps, aside[0], ahead[0]) : new double[] {0, 1};
        double height = values[RevealSet.HEIGHT];
        for (int i = 0; i < n; i++) {
            double radius = radius(things, i);
            double depth = aside[i] * axis[0] + ahead[i] * axis[1];
            all &= edges(i, aside[i] * axis[1] - ahead[i] * axis[0], depth, radius);
            double above = things.get(i).heightMetres() * RevealSet.MILLIMETRES - height;
            tops[i] = above / (depth + (above > 0 ? -radius : radius));
            bottoms[i] = -height / (depth + (height > 0 ? -radius : radius));
        }
        seen = all;
    }

    private static double radius(List<Reveal.Thing> things, int i) {
        return things.get(i).diameterMetres() / 2 * RevealSet.MILLIMETRES;
    }

    /// Both tangents to a circle; whether it is wholly in front.
    private boolean edges(int i, double across, double depth, double radius) {
        if (depth - radius <= LEAST_DEPTH) {
            return false;
        }
        double beyond = depth * depth - radius * radius;
        double half = radius * Math.sqrt(across * across + beyond);
        lefts[i] = (across * depth - half) / beyond;
        rights[i] = (across * depth + half) / beyond;
        return true;
    }

    /// The optical axis, aside and ahead, of length one: what is kept is in its middle.
    private double[] axis(Reveal.Keeps keeps, double firstAside, double firstAhead) {
        return switch (keeps) {
            case HEADING -> new double[] {0, 1};
            case FRONT -> unit(firstAside, firstAhead);
            case ALL -> {
                double left = Double.POSITIVE_INFINITY;
                double right = Double.NEGATIVE_INFINITY;
                for (int i = 0; i < lefts.length; i++) {
                    left = Math.min(left, lefts[i]);
                    right = Math.max(right, rights[i]);
                }
                yield middle(left, right);
            }
        };
    }

    /// The direction halfway between two tangents.
    static double[] middle(double left, double right) {
        double[] leftward = unit(left, 1);
        double[] rightward = unit(right, 1);
        return unit(leftward[0] + rightward[0], leftward[1] + rightward[1]);
    }

    static double[] unit(double aside, double ahead) {
        double length = Math.sqrt(aside * aside + ahead * ahead);
        return new double[] {aside / length, ahead / length};
    }

    double turnRadians() {
        return Math.atan2(axis[0], axis[1]);
    }

    /// Whether all is wholly in front of the lens point.
    boolean isSeen() {
        return seen;
    }

    int count() {
        return lefts.length;
    }

    double left(int i) {
        return lefts[i];
    }

    double right(int i) {
        return rights[i];
    }

    double top(int i) {
        return tops[i];
    }

    double bottom(int i) {
        return bottoms[i];
    }

    /// The things from left to right by the middles of their outlines.
    int[] leftToRight() {
        int[] order = new int[lefts.length];
        for (int i = 0; i < order.length; i++) {
            int at = i;
            while (at > 0 && lefts[order[at - 1]] + rights[order[at - 1]] > lefts[i] + rights[i]) {
                order[at] = order[at - 1];
                at--;
            }
            order[at] = i;
        }
        return order;
    }
}
