package plumeline.ask.picture;

import java.util.List;

/// Places by closed forms, one thing after the other: each stands as near as it can, at the edge of the first one's
/// shadow on the side to which farther things move in the picture; where that takes too much of the frame, farther back
/// along the line of sight past its neighbour, where it looks smaller.
///
/// Good enough to tell quickly whether something can work and to start a search from; what it gives is never said
/// before the margins were asked. Lengths are in millimetres, picture lengths are tangents.
final class RevealChain {
    /// Each place looked at is this much farther from the lens than the last.
    private static final double FARTHER = 0.025;

    private static final int CUTS = 14;
    private static final int TURNS = 5;

    /// How far back things are shifted, as a share of the way that there is; the last one takes all of it or nothing.
    private static final double[] LEANS = {0, 0.3, 0.65, 1};

    private final Reveal.Inputs inputs;
    private final List<Reveal.Thing> things;
    private final double room;
    private final double distance;
    private final double travel;
    private final double height;
    private final double halfWidth;
    /// 1 where farther things move to the right in the picture, else −1.
    private final int way;

    RevealChain(Reveal.Inputs inputs, double room) {
        this.inputs = inputs;
        this.room = room;
        things = inputs.things();
        distance = inputs.camera().distanceMetres() * RevealSet.MILLIMETRES;
        travel = inputs.slide().travelMetres() * RevealSet.MILLIMETRES;
        height = inputs.camera().heightMetres() * RevealSet.MILLIMETRES;
        halfWidth = new RevealSet(inputs).halfWidth();
        way = travel < 0 ? -1 : 1;
    }

    /// A chain.
    static final class Chain {
        private final double[] others;
        private final boolean fits;

        private Chain(double[] others, boolean fits) {
            this.others = others;
            this.fits = fits;
        }

        /// x and y of the later things.
        double[] others() {
            return others;
        }

        /// Whether each is hidden, each gap wide enough and all in the frame from side to side.
        boolean fits() {
            return fits;
        }
    }

    /// The chain that bears the most errors at once.
    Chain best() {
        Chain best = bearing(0);
        if (!best.fits()) {
            return best;
        }
        double low = 0;
        double high = 1;
        for (Chain tried = bearing(high); tried.fits() && high < 64; tried = bearing(high)) {
            best = tried;
            low = high;
            high *= 2;
        }
        while (high - low > 0.04 * high + 0.01) {
            double middle = (low + high) / 2;
            Chain tried = bearing(middle);
            if (tried.fits()) {
                best = tried;
                low = middle;
            } else {
                high = middle;
            }
        }
        return best;
    }

    /// The chain in which everything may be off by so many placing errors at once, to first order.
    Chain bearing(double errors) {
        Chain first = bearing(errors, LEANS[0]);
        for (int i = 1; i < LEANS.length && !first.fits(); i++) {
            Chain leaning = bearing(errors, LEANS[i]);
            if (leaning.fits()) {
                return leaning;
            }
        }
        return first;
    }

    private Chain bearing(double errors, double lean) {
        double size = errors * RevealSolver.PLACING_MILLIMETRES;
        double[] axis = axis(new double[2 * things.size()]);
        Chain chain = built(axis, size, lean);
        if (inputs.slide().keeps() == Reveal.Keeps.ALL) {
            for (int turn = 0; turn < TURNS; turn++) {
                double[] next = axis(places(chain.others()));
                boolean same = Math.hypot(next[0] - axis[0], next[1] - axis[1]) < 1e-4;
                axis = next;
                chain = built(axis, size, lean);
                if (same) {
                    break;
                }
            }
        }
        return chain;
    }

    private double[] places(double[] others) {
        double[] places = new double[2 * things.size()];
        System.arraycopy(others, 0, places, 2, others.length);
        return places;
    }

    /// The optical axis at the end with things at these places.
    private double[] axis(double[] places) {
        return switch (inputs.slide().keeps()) {
            case HEADING -> new double[] {0, 1};
            case FRONT -> RevealView.unit(-travel, distance);
            case ALL -> {
                double least = Double.POSITIVE_INFINITY;
                double most = Double.NEGATIVE_INFINITY;
                for (int i = 0; i < things.size(); i++) {
                    double aside = places[2 * i] - travel;
                    double ahead = places[2 * i + 1] + distance;
                    least = Math.min(least, edge(aside, ahead, radius(i), -1));
                    most = Math.max(most, edge(aside, ahead, radius(i), 1));
                }
                yield RevealView.middle(least, most);
            }
        };
    }

    private double radius(int i) {
        return things.get(i).diameterMetres() / 2 * RevealSet.MILLIMETRES;
    }

    private double tall(int i) {
        return things.get(i).heightMetres() * RevealSet.MILLIMETRES;
    }

    private static double edge(double across, double depth, double radius, int side) {
        double beyond = Math.max(depth * depth - radius * radius, 1e-9);
        return (across * depth + side * radius * Math.sqrt(across * across + beyond)) / beyond;
    }

    /// One thing's place, its edges along the way of the chain, and how much both feel one millimetre everywhere.
    private record Stand(double x, double y, double near, double far, double feel, double depth) {}

    private Chain built(double[] axis, double size, double lean) {
        double[] others = new double[2 * (things.size() - 1)];
        Stand before = stand(0, 0, 0, axis);
        double widest = before.far();
        double least = -before.near();
        boolean fits = true;
        double from = 0;
        for (int i = 1; i < things.size(); i++) {
            Spot spot = new Spot(i, before, axis, size);
            double touch = radius(0) + radius(i) + size;
            double y = spot.nearest(Math.max(touch, from));
            boolean stands = spot.spare(y) >= -1e-9;
            fits &= stands;
            boolean last = i + 1 == things.size();
            Stand stand = stands && lean > 0 ? spot.leaning(y, last ? 1 : lean) : spot.at(y);
            y = stand.y();
            others[2 * i - 2] = stand.x();
            others[2 * i - 1] = stand.y();
            widest = Math.max(widest, stand.far());
            least = Math.max(least, -stand.near());
            before = stand;
            from = y + apart(size);
        }
        double frame = halfWidth - size * before.feel();
        return new Chain(others, fits && widest <= frame + 1e-9 && least <= frame + 1e-9);
    }

    /// How far the next one's axis stands behind at least, for the order from front to back.
    private static double apart(double size) {
        return Math.max(1, 2 * size) + 1;
    }

    private Stand stand(int i, double x, double y, double[] axis) {
        double aside = x - travel;
        double ahead = y + distance;
        double across = aside * axis[1] - ahead * axis[0];
        double depth = aside * axis[0] + ahead * axis[1];
        double far = way * edge(across, depth, radius(i), way);
        double near = way * edge(across, depth, radius(i), -way);
        double middle = way * (far + near) / 2;
        double feel = (Math.abs(axis[1] - middle * axis[0]) + Math.abs(axis[0] + middle * axis[1])) / depth;
        return new Stand(x, y, near, far, feel, depth);
    }

    /// Where one thing may stand behind the one before it in the chain.
    private final class Spot {
        private final int thing;
        private final Stand before;
        private final double[] axis;
        private final double size;
        /// Its share of the room: those behind it need some too.
        private final double to;

        Spot(int thing, Stand before, double[] axis, double size) {
            this.thing = thing;
            this.before = before;
            this.axis = axis;
            this.size = size;
            to = room - (things.size() - 1 - thing) * apart(size);
        }

        /// The nearest place at which there is something to spare, else the one at which least is lacking.
        double nearest(double from) {
            double best = from;
            double most = spare(from);
            double last = from;
            for (double y = from; most < 0 && y < to; ) {
                y = Math.min(to, y + (distance + y) * FARTHER);
                double there = spare(y);
                if (there >= 0) {
                    return first(last, y);
                }
                if (there > most) {
                    most = there;
                    best = y;
                }
                last = y;
            }
            return best;
        }

        private double first(double bad, double good) {
            double low = bad;
            double high = good;
            for (int cut = 0; cut < CUTS; cut++) {
                double middle = (low + high) / 2;
                if (spare(middle) >= 0) {
                    high = middle;
                } else {
                    low = middle;
                }
            }
            return high;
        }

        /// What is left of the shadow or of the gap, whichever is less, as a picture length.
        double spare(double y) {
            double shadow = Math.min(aside(y), upright(y)) / (distance + y);
            return shadow < 0 ? shadow - 1 : gap(at(y));
        }

        Stand at(double y) {
            return stand(thing, way * Math.max(0, aside(y)), y, axis);
        }

        /// Back along the line of sight past the neighbour, for this share of the way to the shadow's other edge.
        Stand leaning(double from, double lean) {
            double near = at(from).near();
            double most = from;
            double y = from;
            while (y < to && isShaded(y, near)) {
                most = y;
                y += (distance + y) * FARTHER;
            }
            most = y >= to && isShaded(to, near) ? to : most;
            double leaning = from + lean * (most - from);
            return most > from ? stand(thing, along(leaning, near), leaning, axis) : at(from);
        }

        private boolean isShaded(double y, double near) {
            return Math.abs(along(y, near)) <= aside(y) + 1e-6 && upright(y) >= 0;
        }

        /// The x at a y from which its nearer edge is seen there.
        private double along(double y, double near) {
            double ahead = y + distance;
            double turned = way * near;
            double radius = way * radius(thing) * Math.sqrt(1 + near * near);
            double across = ahead * (axis[0] + turned * axis[1]) + radius;
            return across / (axis[1] - turned * axis[0]) + travel;
        }

        private double gap(Stand stand) {
            double wanted = 2 * halfWidth * inputs.wanted().gapShare();
            double camera = Math.abs(before.feel() - stand.feel());
            return stand.near() - before.far() - wanted - size * (before.feel() + stand.feel() + camera);
        }

        /// How far aside it may stand.
        private double aside(double y) {
            double depth = distance + y;
            double edge = edge(0, distance, radius(0), 1);
            double spared = hideBy() + 2 * size * (1 + y / distance);
            return (edge - spared / depth) * depth - radius(thing) * Math.sqrt(1 + edge * edge);
        }

        private double hideBy() {
            return inputs.wanted().hideByMetres() * RevealSet.MILLIMETRES;
        }

        /// How much is left above and below, where it stands behind the first one's middle.
        private double upright(double y) {
            double depth = distance + y;
            double above = rim(tall(0) - height, distance, radius(0)) - rim(tall(thing) - height, depth, radius(thing));
            double below = rim(-height, depth, -radius(thing)) - rim(-height, distance, -radius(0));
            double slant = Math.abs(tall(0) - height) / distance;
            double felt = size * (y / distance + 2 * slant * (1 + y / distance));
            return Math.min(above * depth - felt, below * depth) - hideBy();
        }

        /// The highest point of a rim, or the lowest one with a negative radius.
        private static double rim(double above, double depth, double radius) {
            return above / (depth + (above > 0 ? -radius : radius));
        }
    }
}
