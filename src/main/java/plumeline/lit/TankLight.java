package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.stage.TankWalls;

/// Light on places in a tank, by each flat way into it, and on places outside, by each way through it.
final class TankLight {
    private static final double TOUCHING_METRES = 1e-5;

    private final Bounds block;
    private final Bounds room;
    private final double waterLineMetres;
    private final List<TankWindow> wet;
    private final List<TankWindow> dry;
    private final List<TankPassage> passages;
    private final List<TankPassage> overWater;
    private final LightMemory memory;

    TankLight(TankWalls walls, LightMemory memory) {
        block = walls.outside();
        room = walls.inside();
        waterLineMetres = walls.waterLineMetres();
        wet = TankWindow.ofWater(walls);
        dry = TankWindow.ofAir(walls);
        passages = TankPassage.of(walls);
        overWater = TankPassage.overWater(walls);
        this.memory = memory;
    }

    boolean isInside(Vec place) {
        return inside(place, room);
    }

    /// What touches the tank from outside is as far before it as light is followed.
    Patch outside(Patch patch) {
        Vec low = block.low().minus(patch.place());
        Vec high = patch.place().minus(block.high());
        Vec out = new Vec(out(high.x()) - out(low.x()), out(high.y()) - out(low.y()), out(high.z()) - out(low.z()));
        return isWithin(patch.place().minus(out.times(2)))
                ? new Patch(patch.place().plus(out), patch.facing())
                : patch;
    }

    private static double out(double ahead) {
        return Math.abs(ahead) < TOUCHING_METRES ? 2 * TOUCHING_METRES : 0;
    }

    /// Whether any of a lamp is within the tank's outside.
    boolean isWithin(Shine shine) {
        return isWithin(shine.middle())
                || shine instanceof Shine.Face(var emitter, var _, var _, var _)
                        && emitter.outline(emitter.middle().plus(emitter.facing())).stream()
                                .anyMatch(this::isWithin);
    }

    private boolean isWithin(Vec place) {
        return inside(place, block);
    }

    private static boolean inside(Vec place, Bounds box) {
        return place.x() > box.low().x()
                && place.x() < box.high().x()
                && place.y() > box.low().y()
                && place.y() < box.high().y()
                && place.z() > box.low().z()
                && place.z() < box.high().z();
    }

    /// Gives the light of a lamp. What stands in the tank hides straight on; what stands before it hides as light is
    /// bent.
    ///
    /// @param inside what stands in the tank and over the surface
    /// @param outside what stands before the tank and the lamp
    double lux(Shine shine, Patch patch, List<Hider.Part> inside, List<Hider.Part> outside) {
        double sum = 0;
        for (TankWindow window : patch.place().z() < waterLineMetres ? wet : dry) {
            Optional<Shine.Face> face = shine.findFace(patch.place(), lamp -> window.findWay(lamp, patch));
            if (face.isPresent()) {
                sum += shining(face.get(), part -> lux(window, part, patch, inside, outside));
            }
        }
        if (patch.place().z() < waterLineMetres) {
            sum += by(
                    overWater,
                    shine,
                    patch,
                    (passage, sight, face) -> beforeInWater(passage, sight, face, inside, outside));
        }
        return sum;
    }

    /// What stands before a way from the water: in it, over its surface, outside.
    private static List<List<Hider.Part>> beforeInWater(
            TankPassage passage,
            TankWindow.Sight sight,
            Shine.Face face,
            List<Hider.Part> inside,
            List<Hider.Part> outside) {
        return List.of(
                inside.stream()
                        .filter(part -> sight.mayMeet(part.middle(), part.reachMetres()))
                        .toList(),
                inside,
                outside.stream().filter(part -> isBeyond(passage, part, face)).toList());
    }

    private static boolean isBeyond(TankPassage passage, Hider.Part part, Shine.Face face) {
        return passage.far().aheadMetres(part.middle()) > -part.reachMetres()
                && part.isBefore(face)
                && passage.mayCross(part, face.middle(), face.reachMetres());
    }

    /// Finds what stands before a way: before its near face, then behind each crossing.
    private interface Before {
        List<List<Hider.Part>> find(TankPassage passage, TankWindow.Sight sight, Shine.Face face);
    }

    /// A face's light less what its hole would give.
    private static double shining(Shine.Face face, ToDoubleFunction<Shine.Face> lux) {
        return face.hole().isEmpty()
                ? lux.applyAsDouble(face)
                : lux.applyAsDouble(face.whole())
                        - face.findMissing().map(lux::applyAsDouble).orElse(0.0);
    }

    private double lux(
            TankWindow window, Shine.Face face, Patch patch, List<Hider.Part> inside, List<Hider.Part> outside) {
        Optional<TankWindow.Sight> sight =
                memory.sight(window, face.emitter(), patch, () -> window.findSight(face.emitter(), patch));
        if (sight.isEmpty()) {
            return 0;
        }
        List<Hider.Part> straight = inside.stream()
                .filter(part -> sight.get().mayMeet(part.middle(), part.reachMetres()))
                .toList();
        List<Hider.Part> bent = outside.stream()
                .filter(part -> part.isBefore(face) && window.mayHide(part, sight.get(), patch))
                .toList();
        return memory.tank(
                window,
                face,
                patch,
                List.of(named(straight), named(bent)),
                () -> window.lux(face, patch, sight.get(), straight, bent));
    }

    private static List<LightMemory.Part> named(List<Hider.Part> parts) {
        return parts.stream().map(Hider.Part::named).toList();
    }

    /// Gives what of a lamp's light comes to a place outside through the tank.
    ///
    /// @param hiders what may stand in the way
    double behind(Shine shine, Patch patch, List<Hider> hiders) {
        return by(passages, shine, patch, (passage, sight, face) -> before(passage, face, patch, sight, hiders));
    }

    private double by(List<TankPassage> ways, Shine shine, Patch patch, Before before) {
        double sum = 0;
        Bounds bounds = shine.bounds();
        for (TankPassage passage : ways) {
            if (passage.leads(patch, bounds) && passage.far().isBefore(shine)) {
                Optional<Shine.Face> face = shine.findFace(patch.place(), lamp -> passage.findWay(lamp, patch));
                if (face.isPresent()) {
                    sum += shining(face.get(), part -> by(passage, part, patch, before));
                }
            }
        }
        return sum;
    }

    private double by(TankPassage passage, Shine.Face face, Patch patch, Before hiders) {
        Optional<TankWindow.Sight> sight =
                memory.sight(passage, face.emitter(), patch, () -> passage.findSight(face.emitter(), patch));
        if (sight.isEmpty()) {
            return 0;
        }
        List<List<Hider.Part>> before = hiders.find(passage, sight.get(), face);
        return memory.tank(
                passage,
                face,
                patch,
                before.stream().map(TankLight::named).toList(),
                () -> passage.lux(face, patch, sight.get(), before));
    }

    /// What may stand before the near face, then behind each crossing.
    private List<List<Hider.Part>> before(
            TankPassage passage, Shine.Face face, Patch patch, TankWindow.Sight sight, List<Hider> hiders) {
        int last = passage.count();
        List<List<Hider.Part>> before = new ArrayList<>();
        for (int count = 0; count <= last; count++) {
            before.add(new ArrayList<>());
        }
        for (Hider hider : hiders) {
            boolean isInside = isInside(hider.middle());
            for (Hider.Part part : hider.parts()) {
                if (!isInside
                        && passage.near().aheadMetres(part.middle()) > -part.reachMetres()
                        && part.isOver(patch)
                        && sight.mayMeet(part.middle(), part.reachMetres())) {
                    before.getFirst().add(part);
                }
                boolean isBeyond = !isInside && isBeyond(passage, part, face);
                for (int count = 1; count <= last; count++) {
                    if ((count < last ? isInside : isBeyond) && passage.mayHide(part, count, sight, patch)) {
                        before.get(count).add(part);
                    }
                }
            }
        }
        return before;
    }
}
