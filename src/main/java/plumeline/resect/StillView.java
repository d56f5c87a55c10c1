package plumeline.resect;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Order;
import plumeline.geom.Point;
import plumeline.geom.Vec;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.sight.Outline;
import plumeline.sight.Sight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// A staged shot at the instant of a still, and what the still shows of it.
public final class StillView {
    private static final int ROUND = 96;

    /// Sight that grazes a surface flatter than this doesn't find a corner on it, sine of the angle.
    private static final double GRAZING = 0.05;

    private final Stage stage;
    private final double[] values;
    private final double realSeconds;
    private final Still still;
    private final Scene scene;
    private final List<Landmark> landmarks;

    private StillView(Stage stage, double[] values, double realSeconds, Still still) {
        this.stage = stage;
        this.values = values.clone();
        this.realSeconds = realSeconds;
        this.still = still;
        scene = stage.laid(this.values).sceneAt(realSeconds);
        landmarks = Landmarks.of(stage, scene);
    }

    /// Lays a still over a shot.
    ///
    /// @param stage the shot, or one of its passes as a shot of its own
    /// @param valuesSi its marks' values, in the stage's order
    /// @param realSeconds the still's instant, real seconds after GO
    /// @param still what the still shows
    /// @return the view
    public static StillView of(Stage stage, double[] valuesSi, double realSeconds, Still still) {
        return new StillView(stage, valuesSi, realSeconds, still);
    }

    /// Gives the shot at the still's instant, everything at its mark.
    ///
    /// @return the scene
    public Scene scene() {
        return scene;
    }

    /// Gives the still.
    ///
    /// @return what it shows
    public Still still() {
        return still;
    }

    /// Gives the shot.
    ///
    /// @return the stage
    public Stage stage() {
        return stage;
    }

    /// Lists the places that can be named, seen or not.
    ///
    /// @return the places
    public List<Landmark> landmarks() {
        return landmarks;
    }

    /// Gives the marks' values.
    ///
    /// @return SI, in the order of the stage's marks
    public double[] values() {
        return values.clone();
    }

    double realSeconds() {
        return realSeconds;
    }

    /// Finds a place by its name.
    ///
    /// @param name the name
    /// @return the place
    public Optional<Landmark> find(String name) {
        return landmarks.stream()
                .filter(landmark -> landmark.name().equals(name))
                .findFirst();
    }

    /// By which way a place is seen with everything at its mark.
    Optional<Sighting.By> way(Landmark landmark) {
        if (landmark instanceof Landmark.OnTank on) {
            return Optional.of(on.corner() == Landmark.Corner.WATER ? Sighting.By.WALL : Sighting.By.AIR);
        }
        for (Sighting.By by : Sighting.By.values()) {
            Optional<Vec> place = Sighting.place(scene, by, landmark);
            if (place.isPresent() && Sighting.way(scene, place.get()).equals(Optional.of(by))) {
                return Optional.of(by);
            }
        }
        return Optional.empty();
    }

    /// Says where a place should show, everything at its mark.
    ///
    /// @param landmark one of [#landmarks]
    /// @return where, and whether it can be seen there
    public Spotted spot(Landmark landmark) {
        Optional<Sighting.By> by = way(landmark);
        Optional<Vec> place = by.flatMap(way -> Sighting.place(scene, way, landmark));
        Optional<Point> point = place.flatMap(at -> Sighting.point(scene, by.orElseThrow(), at));
        if (point.isEmpty()) {
            return new Spotted.Unknown(
                    by.isEmpty() && stage.findTank().isPresent()
                            ? "seen over the rim, through the water's surface or another wall: not computed"
                            : "the outline has no such place from here");
        }
        Point pixel = still.pixel(scene.picture(), point.get());
        if (!still.holds(pixel)) {
            return new Spotted.Covered(pixel, "outside the still");
        }
        if (isTurnedAway(landmark, place.get())) {
            return new Spotted.Covered(pixel, "turned away");
        }
        return hider(landmark, point.get(), place.get())
                .<Spotted>map(name -> new Spotted.Covered(pixel, "behind " + name))
                .orElseGet(() -> new Spotted.Seen(pixel));
    }

    /// Whether every face that meets in a place is turned away from sight.
    private boolean isTurnedAway(Landmark landmark, Vec place) {
        if (!(landmark instanceof Landmark.OnThing on) || on.outward().isEmpty()) {
            return false;
        }
        Body body = scene.things().get(on.thing());
        boolean isClear = isClear(on.thing());
        Vec sight = body.own(Sighting.corner(scene, place)).minus(on.own()).unit();
        return !isClear && on.outward().stream().allMatch(normal -> normal.dot(sight) < GRAZING);
    }

    private boolean isClear(int thing) {
        Placed placed = stage.shot().placed().get(thing);
        return placed.thing().body().filter(body -> body == Thing.Body.CLEAR).isPresent();
    }

    /// The first opaque thing before a place that covers it.
    private Optional<String> hider(Landmark landmark, Point point, Vec place) {
        int own = switch (landmark) {
            case Landmark.Rim rim -> rim.thing();
            case Landmark.OnThing on -> on.thing();
            case Landmark.OnTank _ -> -1;
            case Landmark.Mouth _ -> -1;
        };
        for (int i = 0; i < scene.things().size(); i++) {
            Body other = scene.things().get(i);
            if (i == own || isClear(i) || !(Sight.leastDepthMetres(scene.view(other), other) > 0)) {
                continue;
            }
            boolean isBefore = own < 0
                    ? scene.aim().depthMetres(other.middle()) < scene.aim().depthMetres(place)
                    : Order.isBefore(scene.aim().eye(), other, scene.things().get(own));
            if (isBefore && covers(Sight.outline(scene.view(other), other, ROUND), point)) {
                return Optional.of(stage.shot().placed().get(i).name());
            }
        }
        return Optional.empty();
    }

    private static boolean covers(List<Outline> parts, Point point) {
        return parts.stream().anyMatch(part -> {
            List<Point> corners = part.corners();
            for (int i = 0; i < corners.size(); i++) {
                Point from = corners.get(i);
                Point to = corners.get((i + 1) % corners.size());
                if ((to.x() - from.x()) * (point.y() - from.y()) < (to.y() - from.y()) * (point.x() - from.x())) {
                    return false;
                }
            }
            return true;
        });
    }

    /// Lists where the outlines of things that are in front show in the still, the farthest first.
    ///
    /// @return parts by the thing's name in the shot, corners in pixels
    public List<Drawn> outlines() {
        List<Drawn> drawn = new ArrayList<>();
        Aim aim = scene.aim();
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < scene.things().size(); i++) {
            order.add(i);
        }
        order.sort(java.util.Comparator.comparingDouble(
                i -> -aim.depthMetres(scene.things().get(i).middle())));
        for (int i : order) {
            Body body = scene.things().get(i);
            if (Sight.leastDepthMetres(scene.view(body), body) > 0) {
                List<List<Point>> shells = Sight.united(Sight.outline(scene.view(body), body, ROUND)).stream()
                        .map(face -> face.shell().stream()
                                .map(point -> still.pixel(scene.picture(), point))
                                .toList())
                        .toList();
                drawn.add(new Drawn(stage.shot().placed().get(i).name(), shells));
            }
        }
        return drawn;
    }

    /// A thing's outline in the still.
    ///
    /// @param name the thing's name in the shot
    /// @param shells its parts' corners, pixels
    public record Drawn(String name, List<List<Point>> shells) {
        /// Copies the lists.
        public Drawn {
            shells = shells.stream().map(List::copyOf).toList();
        }
    }
}
