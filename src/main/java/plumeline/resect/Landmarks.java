package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// The places of a staged shot that a hand can click: rims' ends and corners of things, corners of labels, the tank's
/// edges and water line, the nozzle's mouth. Lamps have none.
public final class Landmarks {
    /// A profile that bends less than this has no corner that an eye could find, radians.
    private static final double BENDS = Math.toRadians(10);

    private static final double TIP_METRES = 1e-6;

    private Landmarks() {}

    /// Lists the places of a shot, things in the order placed, seen or not.
    ///
    /// @param stage the shot
    /// @param scene it at the still's instant
    /// @return the places
    public static List<Landmark> of(Stage stage, Scene scene) {
        List<Landmark> all = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            Placed placed = stage.shot().placed().get(i);
            Body body = scene.things().get(i);
            switch (body.solid()) {
                case Solid.Revolved round -> all.addAll(rims(placed.name(), i, round.stations()));
                case Solid.Box box -> all.addAll(corners(placed.name(), i, box));
            }
            int thing = i;
            placed.thing().label().ifPresent(label -> all.addAll(label(placed.name(), thing, body.solid(), label)));
        }
        if (stage.findTank().isPresent()) {
            all.addAll(tank(stage.findTank().get().waterLineMetres()
                    > stage.findTank().get().inside().low().z()));
        }
        if (scene.nozzle().isPresent()) {
            all.add(new Landmark.Mouth("release.mouth"));
        }
        return all;
    }

    private static List<Landmark> tank(boolean isFilled) {
        List<Landmark> places = new ArrayList<>();
        for (Landmark.Corner corner : Landmark.Corner.values()) {
            if (isFilled || corner != Landmark.Corner.WATER) {
                for (Landmark.Side side : Landmark.Side.values()) {
                    places.add(new Landmark.OnTank("tank." + word(corner) + "." + word(side), corner, side));
                }
            }
        }
        return places;
    }

    private static String word(Enum<?> which) {
        return which.name().toLowerCase(java.util.Locale.ROOT);
    }

    /// The rims at which a profile bends outwards, from the top down.
    private static List<Landmark> rims(String name, int thing, List<Station> stations) {
        List<Landmark> rims = new ArrayList<>();
        int between = 0;
        for (int i = 0; i < stations.size(); i++) {
            boolean isBase = i == 0;
            boolean isTop = i == stations.size() - 1;
            double into = isBase ? 0 : direction(stations.get(i - 1), stations.get(i));
            double out = isTop ? Math.PI : direction(stations.get(i), stations.get(i + 1));
            if (out - into < BENDS) {
                continue;
            }
            String rim = isBase ? "base" : isTop ? "top" : "rim_" + ++between;
            rims.addAll(0, ends(name + "." + rim, thing, stations.get(i), slope(into, out)));
        }
        return rims;
    }

    private static List<Landmark> ends(String name, int thing, Station at, double slope) {
        if (at.radiusMetres() < TIP_METRES) {
            return List.of(new Landmark.OnThing(name, thing, new Vec(0, 0, at.heightMetres()), List.of()));
        }
        List<Landmark> ends = new ArrayList<>();
        for (Landmark.Side side : Landmark.Side.values()) {
            ends.add(new Landmark.Rim(
                    name + "." + word(side), thing, at.heightMetres(), at.radiusMetres(), slope, side));
        }
        return ends;
    }

    /// The way of a profile from one station to the next: 0 outwards, a quarter turn upwards, half a turn inwards.
    private static double direction(Station from, Station to) {
        return Math.atan2(to.heightMetres() - from.heightMetres(), to.radiusMetres() - from.radiusMetres());
    }

    /// The slope of the mantle that meets a rim: the one below it unless that lies flat.
    private static double slope(double into, double out) {
        double mantle = Math.sin(into) > 1e-9 ? into : out;
        return Math.sin(mantle) > 1e-9 ? Math.cos(mantle) / Math.sin(mantle) : 0;
    }

    private static List<Landmark> corners(String name, int thing, Solid.Box box) {
        List<Landmark> corners = new ArrayList<>();
        for (int i : new int[] {4, 5, 6, 7, 0, 1, 2, 3}) {
            Vec own = box.corners().get(i);
            double right = (i & 1) == 0 ? -1 : 1;
            double behind = (i & 2) == 0 ? -1 : 1;
            double over = (i & 4) == 0 ? -1 : 1;
            corners.add(new Landmark.OnThing(
                    name
                            + (over > 0 ? ".top." : ".base.")
                            + (behind > 0 ? "back_" : "front_")
                            + (right > 0 ? "right" : "left"),
                    thing,
                    own,
                    List.of(new Vec(right, 0, 0), new Vec(0, behind, 0), new Vec(0, 0, over))));
        }
        return corners;
    }

    /// A label's corners: round a turned body by its width at the height of the label's middle, or on a box's front.
    private static List<Landmark> label(String name, int thing, Solid solid, Thing.Label label) {
        double width = label.width().si();
        double height = label.height().si();
        double bottom = label.bottom().map(Quantity::si).orElse((solid.heightMetres() - height) / 2);
        List<Landmark> corners = new ArrayList<>();
        for (String place : List.of("top_left", "top_right", "bottom_left", "bottom_right")) {
            double side = place.endsWith("left") ? -1 : 1;
            double up = place.startsWith("top") ? bottom + height : bottom;
            String full = name + ".label." + place;
            switch (solid) {
                case Solid.Box box ->
                    corners.add(new Landmark.OnThing(
                            full,
                            thing,
                            new Vec(side * width / 2, -box.depthMetres() / 2, up),
                            List.of(new Vec(0, -1, 0))));
                case Solid.Revolved round -> {
                    double middle = round.radiusAtMetres(bottom + height / 2);
                    double radius = round.radiusAtMetres(up);
                    double angle = side * width / 2 / middle;
                    if (radius > 0 && middle > 0 && Math.abs(angle) < Math.PI) {
                        Vec outward = new Vec(Math.sin(angle), -Math.cos(angle), 0);
                        corners.add(new Landmark.OnThing(
                                full, thing, outward.times(radius).plus(new Vec(0, 0, up)), List.of(outward)));
                    }
                }
            }
        }
        return corners;
    }
}
