package plumeline.lit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import plumeline.geom.Aim;
import plumeline.geom.Barrel;
import plumeline.geom.Body;
import plumeline.geom.Hull;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.plan.Kit;
import plumeline.plan.Placed;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;
import plumeline.plan.Thing;
import plumeline.quantity.Quantity;
import plumeline.sight.Uncovered;
import plumeline.stage.Beam;
import plumeline.stage.Scene;
import plumeline.stage.TankWalls;

/// The light of a shot at an instant.
///
/// Opaque things, lamps' housings, the lens's barrel and the nozzle keep light off; a clear thing lets all of it
/// through. For one thread.
public final class Lighting {
    /// Corners of a circle that hides: the body is at most 0.12 % too slim.
    private static final int STEPS = 64;

    /// How thick a lamp's housing is taken to be where only its shining face is known: common practice.
    private static final double HOUSING_METRES = 0.05;

    /// A card or a flag keeps light off as a sheet does, m.
    private static final double CARD_METRES = 1e-6;

    private static final double BORE_METRES = 0.004;
    private static final double PIPE_METRES = 0.001;
    private static final double NOZZLE_METRES = 0.15;

    /// What lies under a surface by less is on it, m.
    private static final double ON_METRES = 1e-9;

    private final List<Lamp> lamps;
    private final List<Hider> hiders = new ArrayList<>();
    /// The tank, of which nothing goes on straight.
    private final Optional<Hider> block;

    private final Optional<TankLight> tank;
    private final LightMemory memory;

    /// All on which the light of a shot rests: alike where this is.
    ///
    /// @param things the things as they stand
    /// @param beams the lamps as they stand
    /// @param lens where the lens is, where its barrel is known
    /// @param nozzle the mouth that ink comes from, where it does, m
    public record Set(List<Body> things, List<Beam> beams, Optional<Aim> lens, Optional<Vec> nozzle) {
        /// Gives an instant's.
        ///
        /// @param shot the shot
        /// @param scene the instant
        /// @return what its light rests on
        public static Set of(Shot shot, Scene scene) {
            return new Set(
                    scene.things(),
                    scene.beams(),
                    shot.camera().lens().barrel().map(barrel -> scene.aim()),
                    scene.nozzle());
        }
    }

    /// Lights a shot.
    ///
    /// @param shot the shot
    /// @param scene the instant
    /// @param walls the tank's walls, where it has one
    public Lighting(Shot shot, Scene scene, Optional<TankWalls> walls) {
        this(shot, scene, walls, new LightMemory());
    }

    /// Lights a shot that was lit otherwise before.
    ///
    /// @param shot the shot
    /// @param scene the instant
    /// @param walls the tank's walls, where it has one
    /// @param memory what was asked before
    public Lighting(Shot shot, Scene scene, Optional<TankWalls> walls, LightMemory memory) {
        this(shot, scene, walls, memory, lamp -> true);
    }

    /// Lights a shot with some of its lamps on.
    ///
    /// @param isOn which lamps, by their index
    Lighting(Shot shot, Scene scene, Optional<TankWalls> walls, LightMemory memory, IntPredicate isOn) {
        this.memory = memory;
        tank = walls.map(found -> new TankLight(found, memory));
        block = walls.map(TankWalls::block).map(Lighting::block);
        lamps = new ArrayList<>();
        for (int i = 0; i < shot.lights().size(); i++) {
            Beam beam = scene.beams().get(i);
            lamps.add(Lamp.of(shot.lights().get(i), isOn.test(i) ? beam : beam.off()));
        }
        for (int i = 0; i < shot.placed().size(); i++) {
            Placed placed = shot.placed().get(i);
            if (placed.thing().body().orElse(Thing.Body.OPAQUE) == Thing.Body.OPAQUE) {
                Body body = scene.things().get(i);
                hiders.add(Hider.of(i, body.middle(), body.ballMetres(), body, Hull.of(body, STEPS)));
            }
        }
        shot.camera().lens().barrel().ifPresent(barrel -> hiders.add(lens(barrel, scene)));
        scene.nozzle().ifPresent(mouth -> hiders.add(nozzle(nozzle(mouth, shot))));
        for (int i = 0; i < lamps.size(); i++) {
            addHousing(i, shot.lights().get(i), scene.beams().get(i));
        }
        lightCards(shot, scene);
    }

    private static Hider block(Body body) {
        return Hider.of(TANK, body.middle(), body.ballMetres(), body, Hull.of(body, STEPS));
    }

    private void addHousing(int index, PlacedLight light, Beam beam) {
        Lamp.findHousing(light, beam).ifPresent(front -> {
            Hull hull = housing(front, light.light().emitter().isLamp() ? HOUSING_METRES : CARD_METRES);
            hiders.add(Hider.of(
                    ofLamp(index),
                    front.middle(),
                    front.middle().distanceMetres(hull.middle()) + hull.reachMetres(),
                    (Record) front,
                    List.of(hull)));
        });
    }

    /// Cards throw back what comes of all lamps, none of what comes of cards.
    private void lightCards(Shot shot, Scene scene) {
        List<Lamp> cards = new ArrayList<>(lamps);
        for (int i = 0; i < cards.size(); i++) {
            PlacedLight light = shot.lights().get(i);
            if (light.light().emitter() instanceof Kit.Emitter.Card) {
                Beam beam = scene.beams().get(i);
                CardGlow glow = new CardGlow(
                        Lamp.panel(light, beam),
                        patch -> Arrays.stream(ofLamps(patch)).sum());
                cards.set(i, Lamp.ofCard(light, beam, glow));
            }
        }
        lamps.clear();
        lamps.addAll(cards);
    }

    private boolean isCard(int lamp) {
        return lamps.get(lamp) instanceof Lamp.Known known && known.colour() == Lamp.Colour.OF_OTHERS;
    }

    /// The number of the lens's barrel among what hides.
    static final int LENS = -1;

    /// The number of the nozzle among what hides.
    static final int NOZZLE = -2;

    /// The tank's number there, which never tells it apart.
    private static final int TANK = Integer.MIN_VALUE;

    /// The number of a lamp among what hides.
    static int ofLamp(int lamp) {
        return NOZZLE - 1 - lamp;
    }

    /// Gives a nozzle's form: a pipe straight up from its mouth, its wall as thick and its end as far up as one that is
    /// held in a clamp: common practice.
    ///
    /// @param mouth its mouth, m
    /// @param shot whose release it is of
    /// @return its outside
    public static Barrel nozzle(Vec mouth, Shot shot) {
        double bore = shot.findRelease()
                .flatMap(release -> release.written().findQuantity("bore"))
                .map(Quantity::si)
                .orElse(BORE_METRES);
        double radius = bore / 2 + PIPE_METRES;
        return new Barrel(mouth, mouth.plus(Vec.UP.times(NOZZLE_METRES)), radius, radius);
    }

    private static Hider nozzle(Barrel form) {
        return Hider.of(
                NOZZLE,
                form.from().plus(form.to()).times(0.5),
                Math.hypot(NOZZLE_METRES / 2, form.fromRadiusMetres()),
                form,
                List.of(Hull.of(form, STEPS)));
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
        Barrel form = new Barrel(back, front, radius, radius);
        return Hider.of(
                LENS,
                front.plus(back).times(0.5),
                Math.hypot(barrel.length().si() / 2, radius),
                form,
                List.of(Hull.of(form, STEPS)));
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

    /// Gives what comes of each lamp to a card's middle.
    ///
    /// @param card the card's index among the lamps
    /// @return lx a lamp, in the lamps' order
    public double[] onCard(int card) {
        Shine.Face face = (Shine.Face) ((Lamp.Known) lamps.get(card)).shine();
        return ofLamps(new Patch(face.middle(), face.emitter().facing()));
    }

    private double[] ofLamps(Patch patch) {
        return lux(patch, hider -> true, lamp -> !isCard(lamp));
    }

    /// Gives the light on a place of a surface.
    ///
    /// @param patch the place
    /// @return lx a lamp, in the lamps' order; 0 for what isn't known
    public double[] lux(Patch patch) {
        return lux(patch, hider -> true);
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
        Patch on = new Patch(patch.place().plus(patch.facing().times(ON_METRES)), patch.facing());
        Patch over = tank.map(found -> found.outside(on)).orElse(on);
        double[] lux = new double[lamps.size()];
        for (int i = 0; i < lux.length; i++) {
            if (lamps.get(i) instanceof Lamp.Known lamp && shines.test(i)) {
                int own = ofLamp(i);
                IntPredicate others = hider -> hider != own && stands.test(hider);
                lux[i] = isInTank(over.place())
                        ? inTank(lamp.shine(), over, others)
                        : inAir(lamp.shine(), over, others) + behindTank(lamp.shine(), over, others);
            }
        }
        return lux;
    }

    /// Tells whether a place is in the tank.
    boolean isInTank(Vec place) {
        return tank.isPresent() && tank.get().isInside(place);
    }

    /// Straight, past the tank as past anything that stands between.
    private double inAir(Shine shine, Patch patch, IntPredicate stands) {
        if (!isTurnedTo(shine, patch)) {
            return 0;
        }
        List<Hider.Part> between = between(shine, patch, stands);
        return memory.air(
                shine,
                patch,
                between.stream().map(Hider.Part::named).toList(),
                () -> shine.lux(patch, between.stream().map(Hider.Part::hull).toList()));
    }

    private double behindTank(Shine shine, Patch patch, IntPredicate stands) {
        return tank.isEmpty()
                ? 0
                : tank.get()
                        .behind(
                                shine,
                                patch,
                                hiders.stream()
                                        .filter(hider -> stands.test(hider.thing()))
                                        .toList());
    }

    private double inTank(Shine shine, Patch patch, IntPredicate stands) {
        List<Hider.Part> inside = new ArrayList<>();
        List<Hider.Part> outside = new ArrayList<>();
        for (Hider hider : hiders) {
            if (stands.test(hider.thing()) && isInTank(hider.middle())) {
                hider.parts().stream().filter(part -> part.isOver(patch)).forEach(inside::add);
            } else if (stands.test(hider.thing()) && hider.isBefore(shine)) {
                outside.addAll(hider.parts());
            }
        }
        return tank.orElseThrow().lux(shine, patch, inside, outside);
    }

    private static boolean isTurnedTo(Shine shine, Patch patch) {
        return shine.isBefore(patch.place()) && shine.isOver(patch);
    }

    private List<Hider.Part> between(Shine shine, Patch patch, IntPredicate stands) {
        List<Hider.Part> between = new ArrayList<>();
        Vec way = shine.middle().minus(patch.place());
        double length = way.lengthMetres();
        for (Hider hider : hiders) {
            if (stands.test(hider.thing()) && mayHide(hider, shine, patch, way, length)) {
                hider.parts().stream().filter(part -> part.isOver(patch)).forEach(between::add);
            }
        }
        block.filter(found -> mayHide(found, shine, patch, way, length))
                .ifPresent(found -> between.addAll(found.parts()));
        return between;
    }

    /// Whether a ball round it comes before the lamp as seen from the place: over the surface, before the lamp's face,
    /// and within the cone to the ball round that.
    private static boolean mayHide(Hider hider, Shine shine, Patch patch, Vec way, double length) {
        Vec to = hider.middle().minus(patch.place());
        double ball = hider.ballMetres();
        if (to.dot(patch.facing()) <= -ball) {
            return false;
        }
        double along = to.dot(way) / length;
        if (along >= length + shine.reachMetres() + ball || !hider.isBefore(shine)) {
            return false;
        }
        double far = to.lengthMetres();
        if (far <= ball || length <= shine.reachMetres()) {
            return true;
        }
        double angle = Math.acos(Math.clamp(along / far, -1, 1));
        return angle < Math.asin(ball / far) + Math.asin(shine.reachMetres() / length);
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
            if (hider.thing() != ofLamp(lamp)
                    && isNear(hider, from, to)
                    && hider.parts().stream()
                            .map(part -> List.of(part.hull()))
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
        double on = square > 0 ? Math.clamp(hider.middle().minus(from).dot(way) / square, 0, 1) : 0;
        return from.plus(way.times(on)).distanceMetres(hider.middle()) < hider.ballMetres();
    }

    /// Finds a lamp that stands in the tank, cards and flags apart.
    ///
    /// @return its name
    Optional<String> findLampInTank() {
        return IntStream.range(0, lamps.size())
                .filter(lamp -> !isCard(lamp)
                        && lamps.get(lamp) instanceof Lamp.Known known
                        && isInTank(known.shine().middle()))
                .mapToObj(lamp -> lamps.get(lamp).name())
                .findFirst();
    }

    /// Tells whether light of a lamp in the tank's walls may come to a place, which isn't followed.
    ///
    /// @param patch the place
    /// @return true where any may
    public boolean isOfTank(Patch patch) {
        return IntStream.range(0, lamps.size()).anyMatch(lamp -> isOfTank(patch, lamp));
    }

    /// Tells it of one lamp.
    boolean isOfTank(Patch patch, int lamp) {
        return tank.isPresent()
                && lamps.get(lamp) instanceof Lamp.Known known
                && isTurnedTo(known.shine(), patch)
                && tank.get().isWithin(known.shine());
    }
}
