package plumeline.stage;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.quantity.Quantity;

/// What holds a placed thing and may show: a line it hangs on, or a rig's rod; straight, from the thing to its end.
///
/// It begins where it leaves the thing, on its way from a place of the thing's axis. What carries the thing carries the
/// other end too, by the same way and the same turn about the thing's own upright: line, gallows and rod stand on
/// the machine with it.
///
/// @param name its name in the shot: `hero-line`, `hero-line-2`, `hero-rig`
/// @param thing index of the thing in [Scene#things]
/// @param sort line or rig
/// @param index which of the thing's lines, from 0
/// @param diameterMetres its diameter, metres, > 0
/// @param to the other end as written: nothing, a height over the table, or x, y, z, metres
/// @param assumed what was taken for what isn't written, each in a few words
public record Strand(
        String name, int thing, Sort sort, int index, double diameterMetres, List<Double> to, List<String> assumed) {
    /// Nobody follows a line farther up than this, metres.
    public static final double REACH_METRES = 2;

    /// Taken where a line's diameter isn't known, metres: no line for such things is thicker (common practice).
    public static final double USUAL_METRES = 0.0005;

    private static final double LEAST = 1e-9;

    /// Copies the lists.
    public Strand {
        to = List.copyOf(to);
        assumed = List.copyOf(assumed);
    }

    /// What kind of holding it is.
    public enum Sort {
        /// A line that it hangs on.
        LINE,
        /// A stiff rod.
        RIG
    }

    /// Where it runs at an instant.
    ///
    /// @param foot where it leaves the thing, metres
    /// @param far its other end, metres; where it is followed to, if that isn't written
    public record Ends(Vec foot, Vec far) {
        /// Gives a place of it.
        ///
        /// @param share of its length, 0 at the thing to 1
        /// @return the place, metres
        public Vec at(double share) {
            return foot.plus(far.minus(foot).times(share));
        }

        /// Gives its length.
        ///
        /// @return metres, ≥ 0
        public double lengthMetres() {
            return far.distanceMetres(foot);
        }
    }

    /// Lists what holds the things of a shot.
    ///
    /// @param stage the shot or pass
    /// @return lines and rigs in the order of its things
    public static List<Strand> listAll(Stage stage) {
        List<Strand> all = new ArrayList<>();
        List<Placed> placed = stage.shot().placed();
        for (int i = 0; i < placed.size(); i++) {
            if (placed.get(i).isHung()) {
                all.addAll(lines(i, placed.get(i)));
            }
            if (placed.get(i).written().has("rig")) {
                all.add(new Strand(
                        placed.get(i).name() + "-rig",
                        i,
                        Sort.RIG,
                        0,
                        placed.get(i)
                                .written()
                                .findQuantity("rig.diameter")
                                .orElseThrow()
                                .si(),
                        lengths(placed.get(i), "rig.to"),
                        List.of()));
            }
        }
        return all;
    }

    /// Lists the lines that a thing hangs on: one a tie, or one from the middle of its top.
    ///
    /// @param thing its index
    /// @param placed the thing, hung
    /// @return at least one
    public static List<Strand> lines(int thing, Placed placed) {
        List<String> assumed = new ArrayList<>();
        double diameter = HangingLine.find(placed)
                .map(HangingLine::diameterMetres)
                .orElseGet(() -> {
                    assumed.add("a line of 0.5 mm, as its diameter isn't written");
                    return USUAL_METRES;
                });
        if (placed.tied().isEmpty() && placed.lines().orElse(1) > 1) {
            assumed.add("all lines from the middle of its top, as tied isn't written");
        }
        List<Strand> lines = new ArrayList<>();
        for (int i = 0; i < Math.max(1, placed.tied().size()); i++) {
            String name = placed.name() + "-line" + (i == 0 ? "" : "-" + (i + 1));
            lines.add(new Strand(name, thing, Sort.LINE, i, diameter, lengths(placed, "line.to"), assumed));
        }
        return lines;
    }

    private static List<Double> lengths(Placed placed, String key) {
        return placed.written().listQuantities(key).stream().map(Quantity::si).toList();
    }

    /// Tells whether its other end is written.
    ///
    /// @return false where it is only followed as far as anybody would
    public boolean isEnded() {
        return !to.isEmpty();
    }

    /// Gives where it runs at an instant.
    ///
    /// @param stage the shot or pass
    /// @param values the marks' values, SI
    /// @param scene the instant
    /// @return its ends
    public Ends at(Stage stage, double[] values, Scene scene) {
        Body body = scene.things().get(thing);
        double from = fromMetres(stage, values, body);
        Vec held = body.place(new Vec(0, 0, from));
        Vec end = switch (to.size()) {
            case 0 -> held.plus(new Vec(0, 0, REACH_METRES));
            case 1 -> new Vec(held.x(), held.y(), to.getFirst());
            default -> carried(stage.standing(thing, values), body.pose());
        };
        Vec way = end.minus(held);
        if (!(way.lengthMetres() > LEAST)) {
            return new Ends(held, end);
        }
        double leaves = leavesMetres(body, from, way.unit());
        Vec foot = held.plus(way.unit().times(to.isEmpty() ? leaves : Math.min(leaves, way.lengthMetres())));
        return new Ends(foot, to.isEmpty() ? foot.plus(new Vec(0, 0, REACH_METRES)) : end);
    }

    /// The height on the thing's axis from which it comes.
    private double fromMetres(Stage stage, double[] values, Body body) {
        double height = body.solid().heightMetres();
        return switch (sort) {
            case LINE -> {
                List<Double> ties = stage.tiesMetres(thing, values);
                yield ties.isEmpty() ? height : ties.get(index);
            }
            case RIG ->
                stage.shot()
                        .placed()
                        .get(thing)
                        .written()
                        .findQuantity("rig.from")
                        .map(Quantity::si)
                        .orElse(height / 2);
        };
    }

    /// The other end, which stood at its place as the thing stood at its own.
    private Vec carried(Body standing, Pose now) {
        Vec there = new Vec(to.get(0), to.get(1), to.get(2));
        Pose before = standing.pose();
        return there.minus(before.base())
                .turned(now.turnRadians() - before.turnRadians())
                .plus(now.base());
    }

    /// How far from a place of a body's axis a straight way first leaves it, through an end or through the side.
    private static double leavesMetres(Body body, double fromMetres, Vec way) {
        Vec own = body.own(body.place(Vec.ZERO).plus(way));
        double left = own.z() > 0 ? body.solid().heightMetres() - fromMetres : fromMetres;
        double through = Math.max(0, left) / Math.max(Math.abs(own.z()), LEAST);
        double side = switch (body.solid()) {
            case Solid.Revolved round -> sideMetres(round, fromMetres, own);
            case Solid.Box box ->
                Math.min(
                        box.widthMetres() / 2 / Math.max(Math.abs(own.x()), LEAST),
                        box.depthMetres() / 2 / Math.max(Math.abs(own.y()), LEAST));
        };
        return Math.min(through, side);
    }

    /// Both the way's distance from the axis and the radius run straight between two stations.
    private static double sideMetres(Solid.Revolved round, double fromMetres, Vec own) {
        double outward = Math.hypot(own.x(), own.y());
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < round.stations().size(); i++) {
            Station low = round.stations().get(i - 1);
            Station high = round.stations().get(i);
            double rise = high.heightMetres() - low.heightMetres();
            double leaves = rise > 0
                    ? slopeMetres(low, high, fromMetres, own.z(), outward)
                    : stepMetres(low, high, fromMetres, own.z(), outward);
            least = Math.min(least, leaves);
        }
        return least;
    }

    private static double slopeMetres(Station low, Station high, double fromMetres, double up, double outward) {
        double flare = (high.radiusMetres() - low.radiusMetres()) / (high.heightMetres() - low.heightMetres());
        double parting = outward - flare * up;
        double at = (low.radiusMetres() + flare * (fromMetres - low.heightMetres())) / parting;
        double height = fromMetres + up * at;
        boolean isThere = parting > LEAST
                && at >= 0
                && height >= low.heightMetres() - LEAST
                && height <= high.heightMetres() + LEAST;
        return isThere ? at : Double.POSITIVE_INFINITY;
    }

    private static double stepMetres(Station low, Station high, double fromMetres, double up, double outward) {
        double at = (low.heightMetres() - fromMetres) / up;
        double radius = up > 0 ? high.radiusMetres() : low.radiusMetres();
        return Math.abs(up) > LEAST && at >= 0 && outward * at > radius ? at : Double.POSITIVE_INFINITY;
    }
}
