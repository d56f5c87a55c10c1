package plumeline.draw;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.optics.TankView;
import plumeline.plan.Placed;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;
import plumeline.solve.ShotAnswer;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// The surface that carries a label: round a body of revolution at the height of the label's middle, or a box's front
/// face.
///
/// Angles round it count from the label's middle, positive to the right of one who looks at the label: a turn of the
/// thing by an angle, clockwise seen from above, brings the place at that angle to where the label's middle was.
///
/// @param solid the body's own form
/// @param radiusMetres the radius at the label's middle; 0 for a box
/// @param acrossMetres the whole width unrolled
/// @param lowMetres where the drawn part begins, above the base
/// @param highMetres where it ends
/// @param label the label's rectangle
record Mantle(Solid solid, double radiusMetres, double acrossMetres, double lowMetres, double highMetres, OnIt label) {
    /// As far as this share the radius may differ and still counts as the same.
    private static final double SAME_RADIUS = 0.02;

    private static final int HALVINGS = 40;

    /// The label's rectangle.
    ///
    /// @param widthMetres round the body
    /// @param heightMetres upwards
    /// @param bottomMetres above the base
    /// @param isBottomWritten whether the plan says where it begins; else it stands at half height
    record OnIt(double widthMetres, double heightMetres, double bottomMetres, boolean isBottomWritten) {
        double middleMetres() {
            return bottomMetres + heightMetres / 2;
        }

        double topMetres() {
            return bottomMetres + heightMetres;
        }
    }

    /// What of a mantle is turned to the lens.
    ///
    /// @param middleRadians the place that faces it
    /// @param fromRadians where it begins, not above the middle
    /// @param toRadians where it ends, not below the middle
    record Facing(double middleRadians, double fromRadians, double toRadians) {}

    /// Finds the mantle of a thing with a label.
    static Optional<Mantle> find(Thing thing, Solid solid) {
        return thing.label().flatMap(label -> {
            double height = label.height().si();
            double bottom = label.bottom().map(Quantity::si).orElse((solid.heightMetres() - height) / 2);
            OnIt on =
                    new OnIt(label.width().si(), height, bottom, label.bottom().isPresent());
            return switch (solid) {
                case Solid.Box box -> Optional.of(new Mantle(box, 0, box.widthMetres(), 0, box.heightMetres(), on));
                case Solid.Revolved round -> findRound(round, on);
            };
        });
    }

    private static Optional<Mantle> findRound(Solid.Revolved round, OnIt label) {
        double radius = round.radiusAtMetres(label.middleMetres());
        if (!(radius > 0)) {
            return Optional.empty();
        }
        double low = Math.clamp(label.bottomMetres(), 0, round.heightMetres());
        double high = Math.clamp(label.topMetres(), 0, round.heightMetres());
        List<Station> below = round.stations().reversed().stream()
                .filter(station -> station.heightMetres() <= label.middleMetres())
                .takeWhile(station -> isSame(station.radiusMetres(), radius))
                .toList();
        List<Station> above = round.stations().stream()
                .filter(station -> station.heightMetres() >= label.middleMetres())
                .takeWhile(station -> isSame(station.radiusMetres(), radius))
                .toList();
        low = below.isEmpty() ? low : Math.min(low, below.getLast().heightMetres());
        high = above.isEmpty() ? high : Math.max(high, above.getLast().heightMetres());
        return Optional.of(new Mantle(round, radius, 2 * Math.PI * radius, low, high, label));
    }

    private static boolean isSame(double radius, double other) {
        return Math.abs(radius - other) <= SAME_RADIUS * other;
    }

    boolean isRound() {
        return radiusMetres > 0;
    }

    /// The radii at the label's lower and upper edge, where they aren't that of its middle.
    List<Double> otherRadii() {
        if (!(solid instanceof Solid.Revolved round)) {
            return List.of();
        }
        double lower = round.radiusAtMetres(label.bottomMetres());
        double upper = round.radiusAtMetres(label.topMetres());
        return isSame(lower, radiusMetres) && isSame(upper, radiusMetres) ? List.of() : List.of(lower, upper);
    }

    /// What is turned to the lens, as a cylinder of the mantle's radius would be: up to where lines of sight touch it.
    /// Whether something else stands before it isn't asked.
    Optional<Facing> findFacing(Scene scene, Body body) {
        Projection view = scene.view(body);
        Vec seenFrom = own(body, seenFrom(view, body.place(new Vec(0, 0, label.middleMetres()))));
        double middle = Math.atan2(seenFrom.x(), -seenFrom.y());
        if (!isTurned(view, body, middle)) {
            return Optional.empty();
        }
        if (!isRound()) {
            return Optional.of(new Facing(middle, middle, middle));
        }
        return Optional.of(new Facing(middle, edge(view, body, middle, -Math.PI), edge(view, body, middle, Math.PI)));
    }

    private double edge(Projection view, Body body, double middle, double away) {
        double seen = middle;
        double unseen = middle + away;
        for (int i = 0; i < HALVINGS; i++) {
            double half = (seen + unseen) / 2;
            if (isTurned(view, body, half)) {
                seen = half;
            } else {
                unseen = half;
            }
        }
        return seen;
    }

    /// Whether a place round the body is turned to where it is seen from; of a box, its front face.
    private boolean isTurned(Projection view, Body body, double angle) {
        Vec normal = isRound() ? new Vec(Math.sin(angle), -Math.cos(angle), 0) : new Vec(0, -1, 0);
        double out = solid instanceof Solid.Box box ? box.depthMetres() / 2 : radiusMetres;
        Vec place = normal.times(out).plus(new Vec(0, 0, label.middleMetres()));
        return normal.dot(own(body, seenFrom(view, body.place(place))).minus(place)) > 0;
    }

    /// The last corner of the line of sight to a place: the lens point, or where it leaves a tank's pane.
    private static Vec seenFrom(Projection view, Vec place) {
        if (view instanceof TankView tank) {
            List<Vec> path = tank.path(place);
            return path.get(path.size() - 2);
        }
        return view.aim().eye();
    }

    /// A place in a body's own frame: the inverse of [Body#place].
    private static Vec own(Body body, Vec place) {
        Vec leaned = place.minus(body.pose().base()).turned(-body.pose().turnRadians());
        double half = body.solid().heightMetres() / 2;
        double c = Math.cos(body.pose().leanRadians());
        double s = Math.sin(body.pose().leanRadians());
        double up = leaned.z() - half;
        return new Vec(c * leaned.x() - s * up, leaned.y(), s * leaned.x() + c * up + half);
    }

    /// A thing whose label is drawn, with those that are the same and turned alike.
    ///
    /// @param index the thing's place in the scene
    /// @param mantle what carries its label
    /// @param alike the others
    record Labelled(int index, Mantle mantle, List<Integer> alike) {
        /// Labelled things, those of one kind and turn together.
        static List<Labelled> list(ShotAnswer answer) {
            Stage stage = answer.posed().stages().getFirst().stage();
            Scene scene = stage.scene(answer.posed().values(), 0);
            List<Labelled> all = new ArrayList<>();
            for (int i = 0; i < scene.things().size(); i++) {
                Placed placed = stage.shot().placed().get(i);
                double turn = scene.things().get(i).pose().turnRadians();
                Optional<Labelled> same = all.stream()
                        .filter(other -> stage.shot()
                                        .placed()
                                        .get(other.index())
                                        .thing()
                                        .reference()
                                        .equals(placed.thing().reference())
                                && Math.abs(scene.things()
                                                        .get(other.index())
                                                        .pose()
                                                        .turnRadians()
                                                - turn)
                                        < 1e-9)
                        .findFirst();
                if (same.isPresent()) {
                    same.get().alike().add(i);
                    continue;
                }
                int index = i;
                find(placed.thing(), scene.things().get(i).solid())
                        .ifPresent(mantle -> all.add(new Labelled(index, mantle, new ArrayList<>())));
            }
            return all;
        }
    }
}
