package plumeline.want;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// What the thing, lamp or camera that a mark places meets when the mark goes one way, all others as set, at the shot's
/// first frame. The table isn't met; what stands on it is told of [#findRest].
///
/// Nothing that is nearer than its clearance is stepped over: each step is as long as the air there is. What grazes by
/// at less than a step is followed for some steps only.
public final class Course {
    /// Something met.
    ///
    /// @param metres how far the mark goes until then, metres
    /// @param name what is met, such as `second`, `the camera`, `the tank's wall`
    public record Met(double metres, String name) {}

    private static final int STEPS = 20;
    private static final int HALVINGS = 9;
    private static final double LEAST_STEP_METRES = 0.002;

    /// The last bits of what was computed: bounds that overlap by less only touch.
    private static final double TOUCH_METRES = 1e-6;

    /// Half a step of a tape: what lies this near lies on it.
    private static final double REST_METRES = 0.0005;

    private final Stage stage;
    private final List<Double> si;
    private final Set<String> unplaced;
    private final int mark;
    private final int axis;
    private final Optional<Air.Standing> own;

    /// Lays a course.
    ///
    /// @param stage the shot
    /// @param si its marks' values, SI
    /// @param path the mark's name, such as `second.x`
    /// @param unplaced names of what has no place yet: nothing meets it
    public Course(Stage stage, List<Double> si, String path, Set<String> unplaced) {
        this.stage = stage;
        this.si = List.copyOf(si);
        this.unplaced = Set.copyOf(unplaced);
        mark = stage.marks().stream()
                .map(staged -> staged.mark().path())
                .toList()
                .indexOf(path);
        int dot = path.lastIndexOf('.');
        axis = List.of("x", "y", "z").indexOf(path.substring(dot + 1));
        own = mark < 0 || axis < 0 ? Optional.empty() : standing(path.substring(0, Math.max(0, dot)));
    }

    private Optional<Air.Standing> standing(String name) {
        if (name.equals("camera")) {
            return Optional.of(new Air.Standing.Camera());
        }
        if (stage.thingIndex(name) >= 0) {
            return Optional.of(new Air.Standing.Thing(stage.thingIndex(name)));
        }
        return stage.lampIndex(name) >= 0
                ? Optional.of(new Air.Standing.Lamp(stage.lampIndex(name)))
                : Optional.empty();
    }

    /// Finds what a thing rests on, so that it can't go lower.
    ///
    /// @return `the table`, `the tank's floor` or another thing's name; empty for marks that are no thing's height,
    /// and
    ///     for what stands on nothing
    public Optional<String> findRest() {
        if (axis != 2 || !(own.orElse(null) instanceof Air.Standing.Thing thing)) {
            return Optional.empty();
        }
        Air air = air(0);
        Bounds bounds = air.bounds(thing);
        if (Math.abs(bounds.low().z()) <= REST_METRES) {
            return Optional.of("the table");
        }
        return obstacles(air).stream()
                .filter(other -> isLevel(other.bounds(), bounds) && Math.abs(other.between(air, thing)) <= REST_METRES)
                .map(Obstacle::name)
                .findFirst();
    }

    /// Whether bounds end where others begin, and are under them.
    private static boolean isLevel(Bounds under, Bounds over) {
        return Math.abs(under.high().z() - over.low().z()) <= REST_METRES
                && overlaps(under, over, 0)
                && overlaps(under, over, 1);
    }

    /// Finds what is met first and isn't met already.
    ///
    /// @param way towards larger values where above 0, else towards smaller ones
    /// @param farMetres how far to look, metres
    /// @return what is met; empty where nothing is, and for marks that are no place
    public Optional<Met> findMet(int way, double farMetres) {
        if (own.isEmpty()) {
            return Optional.empty();
        }
        Air here = air(0);
        Bounds bounds = here.bounds(own.get());
        List<Obstacle> ahead = obstacles(here).stream()
                .filter(other -> isAhead(bounds, other.bounds(), way, farMetres))
                .filter(other -> other.between(here, own.get()) > TOUCH_METRES)
                .toList();
        return ahead.isEmpty() ? Optional.empty() : findMet(ahead, here, way, farMetres);
    }

    private Optional<Met> findMet(List<Obstacle> ahead, Air from, int way, double farMetres) {
        double apart = 0;
        double reached = 0;
        Air air = from;
        for (int i = 0; i < STEPS && reached < farMetres; i++) {
            double near = Double.POSITIVE_INFINITY;
            for (Obstacle other : ahead) {
                near = Math.min(near, other.between(air, own.get()));
            }
            if (near <= 0) {
                return Optional.of(edge(ahead, apart, reached, way));
            }
            apart = reached;
            reached += Math.max(near, LEAST_STEP_METRES);
            air = air(way * reached);
        }
        Air last = air;
        return reached <= farMetres && ahead.stream().anyMatch(meets(last))
                ? Optional.of(edge(ahead, apart, reached, way))
                : Optional.empty();
    }

    private Predicate<Obstacle> meets(Air air) {
        return other -> other.between(air, own.orElseThrow()) <= 0;
    }

    /// Where it is met between a place where nothing is and one where something is.
    private Met edge(List<Obstacle> ahead, double apart, double met, int way) {
        // The air there was is no way to be halved, unless something turned into it.
        double near = Math.max(apart, met - LEAST_STEP_METRES);
        double low = ahead.stream().anyMatch(meets(air(way * near))) ? apart : near;
        double high = met;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = low + (high - low) / 2;
            if (ahead.stream().anyMatch(meets(air(way * middle)))) {
                high = middle;
            } else {
                low = middle;
            }
        }
        Air there = air(way * high);
        String name = ahead.stream()
                .min(Comparator.comparingDouble(other -> other.between(there, own.orElseThrow())))
                .map(Obstacle::name)
                .orElseThrow();
        return new Met(high, name);
    }

    private Air air(double off) {
        double[] values = si.stream().mapToDouble(Double::doubleValue).toArray();
        values[mark] += off;
        return new Air(
                stage.scene(values, 0),
                stage.findTank(),
                stage.shot().camera().lens().barrel());
    }

    private boolean isAhead(Bounds body, Bounds other, int way, double far) {
        for (int across = 0; across < 3; across++) {
            if (across != axis && !overlaps(body, other, across)) {
                return false;
            }
        }
        return way > 0
                ? along(other.high(), axis) > along(body.low(), axis)
                        && along(other.low(), axis) < along(body.high(), axis) + far
                : along(other.low(), axis) < along(body.high(), axis)
                        && along(other.high(), axis) > along(body.low(), axis) - far;
    }

    private static boolean overlaps(Bounds one, Bounds other, int axis) {
        return along(one.low(), axis) < along(other.high(), axis) - TOUCH_METRES
                && along(other.low(), axis) < along(one.high(), axis) - TOUCH_METRES;
    }

    private static double along(Vec place, int axis) {
        return axis == 0 ? place.x() : axis == 1 ? place.y() : place.z();
    }

    /// Something that may be met, and the bounds that it keeps to.
    private sealed interface Obstacle {
        String name();

        Bounds bounds();

        double between(Air air, Air.Standing own);

        record Whole(String name, Bounds bounds, Air.Standing standing) implements Obstacle {
            @Override
            public double between(Air air, Air.Standing own) {
                return air.betweenMetres(own, standing);
            }
        }

        record Pane(String name, Bounds bounds, Body pane) implements Obstacle {
            @Override
            public double between(Air air, Air.Standing own) {
                return air.toPaneMetres(own, pane);
            }
        }
    }

    private List<Obstacle> obstacles(Air air) {
        List<Obstacle> obstacles = new ArrayList<>();
        for (Air.Standing standing : air.all()) {
            String name = name(standing);
            if (!(standing instanceof Air.Standing.Tank)
                    && !own.orElseThrow().equals(standing)
                    && !unplaced.contains(name)) {
                obstacles.add(new Obstacle.Whole(name, air.bounds(standing), standing));
            }
        }
        List<Body> panes = stage.findTank().map(TankWalls::panes).orElse(List.of());
        for (int i = 0; i < panes.size(); i++) {
            String name = i == 0 ? "the tank's floor" : "the tank's wall";
            obstacles.add(new Obstacle.Pane(name, panes.get(i).bounds(), panes.get(i)));
        }
        return obstacles;
    }

    private String name(Air.Standing standing) {
        return switch (standing) {
            case Air.Standing.Thing(int index) ->
                stage.shot().placed().get(index).name();
            case Air.Standing.Lamp(int index) ->
                stage.shot().lights().get(index).name();
            case Air.Standing.Camera() -> unplaced.contains("camera") ? "camera" : "the camera";
            case Air.Standing.Tank() -> "the tank";
        };
    }
}
