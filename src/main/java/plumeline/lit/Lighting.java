package plumeline.lit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import plumeline.geom.Aim;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Bounds;
import plumeline.geom.Clearance;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.light.Tube;
import plumeline.plan.Kit;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.sight.Uncovered;
import plumeline.stage.Beam;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// The light of a shot at an instant.
///
/// Opaque things, lamps' housings and the lens's barrel keep light off; a clear thing lets all of it through. For one
/// thread: it remembers what it was asked.
public final class Lighting {
    /// Corners of a circle that hides: the body is at most 0.12 % too slim.
    private static final int STEPS = 64;

    /// How thick a lamp's housing is taken to be where only its shining face is known: common practice.
    private static final double HOUSING_METRES = 0.05;

    /// How thick a card or a flag is taken to be: common practice.
    private static final double CARD_METRES = 0.005;

    /// What lies under a surface by less is on it, m.
    private static final double ON_METRES = 1e-9;

    /// Something that keeps light off.
    private record Hider(int thing, Vec middle, double ballMetres, List<Hull> hulls) {}

    private final List<Lamp> lamps;
    private final List<Hider> hiders = new ArrayList<>();
    private final Optional<TankWalls> walls;
    private final Map<Patch, double[]> known = new HashMap<>();

    /// All on which the light of a shot rests: alike where this is.
    ///
    /// @param things the things as they stand
    /// @param beams the lamps as they stand
    /// @param lens where the lens is, where its barrel is known
    public record Set(List<Body> things, List<Beam> beams, Optional<Aim> lens) {
        /// Gives an instant's.
        ///
        /// @param shot the shot
        /// @param scene the instant
        /// @return what its light rests on
        public static Set of(Shot shot, Scene scene) {
            return new Set(
                    scene.things(), scene.beams(), shot.camera().lens().barrel().map(barrel -> scene.aim()));
        }
    }

    /// Lights a shot.
    ///
    /// @param shot the shot
    /// @param scene the instant
    /// @param walls the tank's walls, where it has one
    public Lighting(Shot shot, Scene scene, Optional<TankWalls> walls) {
        this(shot, scene, walls, lamp -> true);
    }

    /// Lights a shot with some of its lamps on.
    ///
    /// @param shot the shot
    /// @param scene the instant
    /// @param walls the tank's walls, where it has one
    /// @param isOn which lamps, by their index
    Lighting(Shot shot, Scene scene, Optional<TankWalls> walls, IntPredicate isOn) {
        lamps = new ArrayList<>();
        for (int i = 0; i < shot.lights().size(); i++) {
            PlacedLight light = shot.lights().get(i);
            Beam stands = scene.beams().get(i);
            Beam beam = isOn.test(i) ? stands : new Beam(stands.aim(), 0, stands.file());
            lamps.add(
                    light.light().emitter() instanceof Kit.Emitter.Card
                            ? Lamp.ofCard(light, beam, new CardLight(Lamp.panel(light, beam), this::fallen))
                            : Lamp.of(light, beam));
        }
        for (int i = 0; i < shot.placed().size(); i++) {
            Placed placed = shot.placed().get(i);
            if (placed.thing().body().orElse(Thing.Body.OPAQUE) == Thing.Body.OPAQUE) {
                Body body = scene.things().get(i);
                hiders.add(new Hider(i, body.middle(), body.ballMetres(), Hull.of(body, STEPS)));
            }
        }
        shot.camera().lens().barrel().ifPresent(barrel -> hiders.add(lens(barrel, scene)));
        for (int i = 0; i < lamps.size(); i++) {
            addHousing(i, shot.lights().get(i), scene.beams().get(i));
        }
        this.walls = walls;
    }

    private void addHousing(int index, PlacedLight light, Beam beam) {
        Lamp.findHousing(light, beam).ifPresent(front -> {
            double deep = light.light().emitter().isLamp() ? HOUSING_METRES : CARD_METRES;
            Hull hull = housing(front, deep);
            hiders.add(new Hider(ofLamp(index), front.middle(), hull.reachMetres(), List.of(hull)));
        });
    }

    /// What comes of all lamps to a place of a card.
    private double fallen(Patch patch) {
        double[] lux = lux(patch, hider -> true, lamp -> !isCard(lamp));
        return Arrays.stream(lux).sum();
    }

    private boolean isCard(int lamp) {
        return lamps.get(lamp) instanceof Lamp.Known known && known.colour() == Lamp.Colour.OF_OTHERS;
    }

    /// The number of the lens's barrel among what hides.
    static final int LENS = -1;

    /// The number of a lamp among what hides.
    static int ofLamp(int lamp) {
        return LENS - 1 - lamp;
    }

    /// What is behind a lamp's face, as wide and high.
    private static Hull housing(Emitter emitter, double deepMetres) {
        List<Vec> face = emitter.outline(emitter.middle().plus(emitter.facing()));
        Vec back = emitter.facing().times(-deepMetres);
        return new Hull(face, face.stream().map(corner -> corner.plus(back)).toList());
    }

    private static Hider lens(Kit.Barrel barrel, Scene scene) {
        double radius = barrel.diameter().si() / 2;
        Vec front = scene.aim().eye();
        Vec back = front.minus(scene.aim().forward().times(barrel.length().si()));
        return new Hider(
                LENS,
                front.plus(back).times(0.5),
                Math.hypot(barrel.length().si() / 2, radius),
                List.of(Hull.of(new Barrel(back, front, radius, radius), STEPS)));
    }

    /// Gives the lamps.
    ///
    /// @return in the shot's order
    public List<Lamp> lamps() {
        return lamps;
    }

    /// Light on a place.
    ///
    /// @param lux of all lamps together, lx
    /// @param halfShare by how much of it it may be off, 95 %: each lamp by itself
    /// @param lamps lx a lamp, in the shot's order
    public record Light(double lux, double halfShare, List<Double> lamps) {
        /// Copies the list.
        public Light {
            lamps = List.copyOf(lamps);
        }
    }

    /// Gives the light on a place of a surface, of all lamps.
    ///
    /// @param patch the place
    /// @return the light; what isn't known of a lamp counts for nothing
    public Light light(Patch patch) {
        double[] lux = lux(patch);
        double sum = Arrays.stream(lux).sum();
        double square = 0;
        double[] off = lux.clone();
        for (int i = 0; i < lux.length; i++) {
            if (lux[i] > 0 && isCard(i)) {
                square += square(i, lux[i], patch);
                off[i] = 0;
                share(off, i, lux[i]);
            }
        }
        for (int i = 0; i < lux.length; i++) {
            square += square(i, off[i], patch);
        }
        return new Light(
                sum,
                sum > 0 ? Math.sqrt(square) / sum : 0,
                Arrays.stream(lux).boxed().toList());
    }

    private double square(int lamp, double lux, Patch patch) {
        if (!(lamps.get(lamp) instanceof Lamp.Known known)) {
            return 0;
        }
        double half = Math.hypot(known.halfShare(), known.shine().nearShare(patch.place()));
        return lux * lux * half * half;
    }

    /// Puts a card's light to the lamps that it is of, as they light its middle.
    private void share(double[] lux, int card, double cardLux) {
        double[] there = onCard(card);
        double all = Arrays.stream(there).sum();
        for (int i = 0; i < lux.length && all > 0; i++) {
            lux[i] += cardLux * there[i] / all;
        }
    }

    /// What comes of each lamp to a card's middle, lx.
    double[] onCard(int card) {
        Shine.Face face = (Shine.Face) ((Lamp.Known) lamps.get(card)).shine();
        return lux(new Patch(face.middle(), face.emitter().facing()), hider -> true, lamp -> !isCard(lamp));
    }

    /// Gives the light on a place of a surface.
    ///
    /// @param patch the place
    /// @return lx a lamp, in the lamps' order; 0 for what isn't known
    public double[] lux(Patch patch) {
        return known.computeIfAbsent(patch, asked -> lux(asked, hider -> true)).clone();
    }

    /// Gives the light on a place of a surface, were only some things there.
    ///
    /// @param patch the place
    /// @param stands which things, by their index in the scene, the lens by [#LENS], keep light off; lamps by less
    /// @return lx a lamp, in the lamps' order; 0 for what isn't known
    double[] lux(Patch patch, IntPredicate stands) {
        return lux(patch, stands, lamp -> true);
    }

    private double[] lux(Patch patch, IntPredicate stands, IntPredicate shines) {
        Patch over = new Patch(patch.place().plus(patch.facing().times(ON_METRES)), patch.facing());
        double[] lux = new double[lamps.size()];
        for (int i = 0; i < lux.length; i++) {
            if (lamps.get(i) instanceof Lamp.Known lamp
                    && shines.test(i)
                    && (isInTank(over.place()) || isTurnedTo(lamp.shine(), over))) {
                int own = ofLamp(i);
                IntPredicate others = hider -> hider != own && stands.test(hider);
                lux[i] = isInTank(over.place())
                        ? inTank(lamp.shine(), over, others)
                        : lamp.shine().lux(over, between(lamp.shine(), over, others));
            }
        }
        return lux;
    }

    private boolean isInTank(Vec place) {
        return walls.isPresent() && isWithin(walls.get().inside(), place);
    }

    private static boolean isWithin(Bounds room, Vec place) {
        return place.x() > room.low().x()
                && place.x() < room.high().x()
                && place.y() > room.low().y()
                && place.y() < room.high().y()
                && place.z() > room.low().z()
                && place.z() < room.high().z();
    }

    /// What stands in the tank hides straight on; what stands before it hides as light is bent.
    private double inTank(Shine shine, Patch patch, IntPredicate stands) {
        List<Hull> inside = new ArrayList<>();
        List<Hull> outside = new ArrayList<>();
        Bounds room = walls.orElseThrow().inside();
        for (Hider hider : hiders) {
            if (stands.test(hider.thing)) {
                boolean isIn = isWithin(room, hider.middle);
                for (Hull hull : hider.hulls) {
                    if (isIn ? isOver(hull, patch) : isBefore(shine, hider)) {
                        (isIn ? inside : outside).add(hull);
                    }
                }
            }
        }
        return shine.lux(patch, TankWindow.of(walls.orElseThrow(), patch.place()), inside, outside);
    }

    private static boolean isTurnedTo(Shine shine, Patch patch) {
        return shine.isBefore(patch.place())
                && shine.middle().minus(patch.place()).dot(patch.facing()) > -shine.reachMetres();
    }

    private List<Hull> between(Shine shine, Patch patch, IntPredicate stands) {
        List<Hull> between = new ArrayList<>();
        Vec way = shine.middle().minus(patch.place());
        double length = way.lengthMetres();
        for (Hider hider : hiders) {
            if (stands.test(hider.thing) && mayHide(hider, shine, patch, way, length)) {
                for (Hull hull : hider.hulls) {
                    if (isOver(hull, patch)) {
                        between.add(hull);
                    }
                }
            }
        }
        return between;
    }

    /// Whether any of it is over the surface; a convex body is under its own.
    private static boolean isOver(Hull hull, Patch patch) {
        double level = patch.facing().dot(patch.place());
        for (int i = 0; i < hull.one().size(); i++) {
            if (hull.one().get(i).dot(patch.facing()) > level
                    || hull.other().get(i).dot(patch.facing()) > level) {
                return true;
            }
        }
        return false;
    }

    /// Whether a ball round it comes before the lamp as seen from the place: over the surface, before the lamp's face,
    /// and within the cone to the ball round that.
    private static boolean mayHide(Hider hider, Shine shine, Patch patch, Vec way, double length) {
        Vec to = hider.middle.minus(patch.place());
        double ball = hider.ballMetres;
        if (to.dot(patch.facing()) <= -ball) {
            return false;
        }
        double along = to.dot(way) / length;
        if (along >= length + shine.reachMetres() + ball || !isBefore(shine, hider)) {
            return false;
        }
        double far = to.lengthMetres();
        if (far <= ball || length <= shine.reachMetres()) {
            return true;
        }
        double angle = Math.acos(Math.clamp(along / far, -1, 1));
        return angle < Math.asin(ball / far) + Math.asin(shine.reachMetres() / length);
    }

    private static boolean isBefore(Shine shine, Hider hider) {
        return !(shine instanceof Shine.Face(var emitter, var _, var _, var _))
                || emitter instanceof Tube
                || hider.middle.minus(emitter.middle()).dot(emitter.facing()) > -hider.ballMetres;
    }

    /// Tells whether nothing opaque stands between two places: no thing, no other lamp's housing, no lens.
    ///
    /// @param from one place, m, in no opaque thing
    /// @param to the other, m, likewise
    /// @param lamp whose face is looked at: its own housing hides nothing of that
    /// @return whether one is seen from the other
    boolean isFree(Vec from, Vec to, int lamp) {
        if (from.distanceMetres(to) <= ON_METRES) {
            return true;
        }
        for (Hider hider : hiders) {
            if (hider.thing != ofLamp(lamp)
                    && isNear(hider, from, to)
                    && hider.hulls.stream()
                            .map(List::of)
                            .anyMatch(hull ->
                                    Uncovered.isCovered(from, to, hull) && Uncovered.isCovered(to, from, hull))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isNear(Hider hider, Vec from, Vec to) {
        Vec way = to.minus(from);
        double square = way.dot(way);
        double on = square > 0 ? Math.clamp(hider.middle.minus(from).dot(way) / square, 0, 1) : 0;
        return from.plus(way.times(on)).distanceMetres(hider.middle) < hider.ballMetres;
    }

    /// Tells whether light of any lamp comes to a place outside a tank through its glass or water, or may do so.
    ///
    /// @param patch the place
    /// @return true where any of it does; false for a place in the tank
    public boolean isThroughTank(Patch patch) {
        return IntStream.range(0, lamps.size()).anyMatch(lamp -> isThroughTank(patch, lamp));
    }

    /// Tells it of one lamp.
    boolean isThroughTank(Patch patch, int lamp) {
        return walls.isPresent()
                && !isInTank(patch.place())
                && lamps.get(lamp) instanceof Lamp.Known known
                && isTurnedTo(known.shine(), patch)
                && isThrough(walls.get().block(), known.shine(), patch.place());
    }

    private static boolean isThrough(Body block, Shine shine, Vec place) {
        if (Clearance.isMet(block, place, shine.middle())) {
            return true;
        }
        return shine instanceof Shine.Face(var emitter, var _, var _, var _)
                && emitter.outline(place).stream().anyMatch(corner -> Clearance.isMet(block, place, corner));
    }
}
