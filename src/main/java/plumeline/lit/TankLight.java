package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.stage.TankWalls;

/// Light on places in a tank, by each flat way into it, and on places outside, by each way through it.
final class TankLight {
    private static final double TOUCHING_METRES = 1e-6;

    private final Bounds block;
    private final Bounds room;
    private final double waterLineMetres;
    private final List<TankWindow> wet;
    private final List<TankWindow> dry;
    private final List<TankPassage> passages;
    private final LightMemory memory;

    TankLight(TankWalls walls, LightMemory memory) {
        block = walls.outside();
        room = walls.inside();
        waterLineMetres = walls.waterLineMetres();
        wet = TankWindow.ofWater(walls);
        dry = TankWindow.ofAir(walls);
        passages = TankPassage.of(walls);
        this.memory = memory;
    }

    boolean isInside(Vec place) {
        return inside(place, room);
    }

    /// What touches the tank from outside is as far before it as light is followed.
    Patch outside(Patch patch) {
        Vec low = block.low().minus(patch.place());
        Vec high = patch.place().minus(block.high());
        Vec out = new Vec(
                out(high.x()) - out(low.x()), out(high.y()) - out(low.y()), out(high.z()) - out(low.z()));
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
                sum += lux(window, face.get(), patch, inside, outside);
            }
        }
        return sum;
    }

    private double lux(
            TankWindow window, Shine.Face face, Patch patch, List<Hider.Part> inside, List<Hider.Part> outside) {
        Optional<TankWindow.Sight> sight = memory.sight(
                window, face.emitter(), patch, () -> window.findSight(face.emitter(), patch));
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
        double sum = 0;
        for (TankPassage passage : passages) {
            if (passage.leads(patch, shine.middle(), shine.reachMetres())) {
                Optional<Shine.Face> face =
                        shine.findFace(patch.place(), lamp -> passage.findWay(lamp, patch));
                if (face.isPresent()) {
                    sum += behind(passage, face.get(), patch, hiders);
                }
            }
        }
        return sum;
    }

    private double behind(TankPassage passage, Shine.Face face, Patch patch, List<Hider> hiders) {
        Optional<TankWindow.Sight> sight = memory.sight(
                passage, face.emitter(), patch, () -> passage.findSight(face.emitter(), patch));
        if (sight.isEmpty()) {
            return 0;
        }
        List<Hider.Part> near = new ArrayList<>();
        List<Hider.Part> between = new ArrayList<>();
        List<Hider.Part> beyond = new ArrayList<>();
        for (Hider hider : hiders) {
            if (isInside(hider.middle())) {
                hider.parts().stream()
                        .filter(part -> passage.mayHide(part, sight.get(), patch))
                        .forEach(between::add);
                continue;
            }
            if (passage.near().aheadMetres(hider.middle()) > 0) {
                hider.parts().stream()
                        .filter(part -> part.isOver(patch) && sight.get().mayMeet(part.middle(), part.reachMetres()))
                        .forEach(near::add);
            }
            if (passage.far().aheadMetres(hider.middle()) > 0) {
                hider.parts().stream()
                        .filter(part -> part.isBefore(face) && passage.mayHide(part, sight.get(), patch))
                        .forEach(beyond::add);
            }
        }
        return memory.tank(
                passage,
                face,
                patch,
                List.of(named(near), named(between), named(beyond)),
                () -> passage.lux(face, patch, sight.get(), new TankPassage.Before(near, between, beyond)));
    }
}
