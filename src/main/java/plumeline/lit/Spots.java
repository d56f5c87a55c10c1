package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;

/// Places on a thing that light is judged at: on its label, or on its side toward the camera.
public final class Spots {
    /// Places of a label that are judged, across and up.
    private static final int EACH_WAY = 5;

    /// So near to an edge of a body a place on its side is taken, share of its height.
    static final double EDGE_SHARE = 0.02;

    private Spots() {}

    /// A part of a thing.
    public enum Part {
        /// Its label's middle.
        LABEL("label"),
        /// The middle of its flat top, facing straight out of it.
        LID("lid"),
        /// Its side toward the camera at its top.
        TOP("top"),
        /// Its side toward the camera at half its height.
        MIDDLE("middle"),
        /// Its side toward the camera at its base.
        BASE("base");

        private final String word;

        Part(String word) {
            this.word = word;
        }

        /// Gives its word in a plan.
        ///
        /// @return the word
        public String word() {
            return word;
        }
    }

    /// Gives the middle of a part.
    ///
    /// @param placed the thing
    /// @param body where it stands
    /// @param part the part; its middle where it has no label
    /// @param eye the lens point, m
    /// @return the place and where the surface faces there
    public static Patch of(Placed placed, Body body, Part part, Vec eye) {
        double height = body.solid().heightMetres();
        return switch (part) {
            case LABEL ->
                placed.thing()
                        .label()
                        .map(label -> at(
                                body, 0, bottom(label, height) + label.height().si() / 2))
                        .orElseGet(() -> of(placed, body, usual(placed, body, eye), eye));
            case LID -> patch(body, new Vec(0, 0, height), Vec.UP);
            case TOP -> toward(body, (1 - EDGE_SHARE) * height, eye);
            case MIDDLE -> toward(body, height / 2, eye);
            case BASE -> toward(body, EDGE_SHARE * height, eye);
        };
    }

    /// Gives the part that counts where nobody names one: its label; without one its lid where the camera looks down on
    /// it by more than 45 degrees, else its middle.
    ///
    /// @param placed the thing
    /// @param body where it stands
    /// @param eye the lens point, m
    /// @return the part
    public static Part usual(Placed placed, Body body, Vec eye) {
        if (placed.thing().label().isPresent()) {
            return Part.LABEL;
        }
        Vec own = body.own(eye);
        return own.z() - body.solid().heightMetres() > Math.hypot(own.x(), own.y()) ? Part.LID : Part.MIDDLE;
    }

    /// Gives places all over its label, or where it has none over its side toward the camera, a tenth in from the
    /// edges: row by row from below, from left to right.
    ///
    /// @param placed the thing
    /// @param body where it stands
    /// @param eye the lens point, m
    /// @return the places
    public static List<Patch> over(Placed placed, Body body, Vec eye) {
        double height = body.solid().heightMetres();
        double bottom =
                placed.thing().label().map(label -> bottom(label, height)).orElse(0.0);
        double tall = placed.thing().label().map(label -> label.height().si()).orElse(height);
        List<Patch> spots = new ArrayList<>();
        for (int row = 0; row < EACH_WAY; row++) {
            double level = bottom + tall * inner(row);
            for (int column = 0; column < EACH_WAY; column++) {
                spots.add(
                        placed.thing().label().isPresent()
                                ? at(body, placed.thing().label().get().width().si() * (inner(column) - 0.5), level)
                                : aside(body, level, inner(column) - 0.5, eye));
            }
        }
        return spots;
    }

    static double inner(int index) {
        return 0.1 + 0.8 * index / (EACH_WAY - 1);
    }

    /// Gives how high a label begins: centred where nobody says.
    ///
    /// @param label the label
    /// @param height its thing's height, m
    /// @return over the base, m
    public static double bottom(Thing.Label label, double height) {
        return label.bottom().map(Quantity::si).orElse((height - label.height().si()) / 2);
    }

    /// A place so far round from the middle of its front, m along the surface, + to the right as seen from before it.
    private static Patch at(Body body, double rightMetres, double heightMetres) {
        return switch (body.solid()) {
            case Solid.Box box ->
                patch(body, new Vec(rightMetres, -box.depthMetres() / 2, heightMetres), new Vec(0, -1, 0));
            case Solid.Revolved round ->
                round(body, round, rightMetres / Math.max(round.radiusAtMetres(heightMetres), 1e-6), heightMetres);
        };
    }

    private static Patch toward(Body body, double heightMetres, Vec eye) {
        return aside(body, heightMetres, 0, eye);
    }

    /// A place of what is seen of it, aside from the middle by a share of its width.
    private static Patch aside(Body body, double heightMetres, double share, Vec eye) {
        Vec own = body.own(eye);
        return switch (body.solid()) {
            case Solid.Box box -> {
                boolean isWide = Math.abs(own.y()) * box.widthMetres() >= Math.abs(own.x()) * box.depthMetres();
                double side = Math.signum(isWide ? own.y() : own.x());
                double half = (isWide ? box.depthMetres() : box.widthMetres()) / 2;
                double aside = share * (isWide ? box.widthMetres() : box.depthMetres());
                yield isWide
                        ? patch(body, new Vec(-side * aside, side * half, heightMetres), new Vec(0, side, 0))
                        : patch(body, new Vec(side * half, side * aside, heightMetres), new Vec(side, 0, 0));
            }
            case Solid.Revolved round ->
                round(body, round, Math.atan2(own.x(), -own.y()) + Math.asin(2 * share), heightMetres);
        };
    }

    /// A place of a round body by its azimuth from −y, + toward +x.
    private static Patch round(Body body, Solid.Revolved round, double azimuth, double heightMetres) {
        double radius = round.radiusAtMetres(heightMetres);
        double rise = slope(round, heightMetres);
        double flat = 1 / Math.hypot(1, rise);
        Vec out = new Vec(Math.sin(azimuth), -Math.cos(azimuth), 0);
        return patch(
                body,
                new Vec(radius * out.x(), radius * out.y(), heightMetres),
                new Vec(out.x() * flat, out.y() * flat, -rise * flat));
    }

    /// How fast the radius grows with height.
    private static double slope(Solid.Revolved round, double heightMetres) {
        List<Station> stations = round.stations();
        for (int i = 1; i < stations.size(); i++) {
            double low = stations.get(i - 1).heightMetres();
            double high = stations.get(i).heightMetres();
            if (high > low && heightMetres <= high) {
                return (stations.get(i).radiusMetres() - stations.get(i - 1).radiusMetres()) / (high - low);
            }
        }
        return 0;
    }

    private static Patch patch(Body body, Vec own, Vec ownFacing) {
        Vec place = body.place(own);
        Vec facing = body.place(own.plus(ownFacing)).minus(place).unit();
        return new Patch(place, facing);
    }
}
