package plumeline.lit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.light.Patch;
import plumeline.stage.TankWalls;

/// Light on places in a tank, by each flat way into it.
final class TankLight {
    private final Bounds room;
    private final double waterLineMetres;
    private final List<TankWindow> wet;
    private final List<TankWindow> dry;
    private final LightMemory memory;

    TankLight(TankWalls walls, LightMemory memory) {
        room = walls.inside();
        waterLineMetres = walls.waterLineMetres();
        wet = TankWindow.ofWater(walls);
        dry = TankWindow.ofAir(walls);
        this.memory = memory;
    }

    boolean isInside(Vec place) {
        return place.x() > room.low().x()
                && place.x() < room.high().x()
                && place.y() > room.low().y()
                && place.y() < room.high().y()
                && place.z() > room.low().z()
                && place.z() < room.high().z();
    }

    /// Gives the light of a lamp. What stands in the tank hides straight on; what stands before it hides as light is
    /// bent.
    ///
    /// @param inside what stands in the tank and over the surface
    /// @param outside what stands before the tank and the lamp
    double lux(Shine shine, Patch patch, List<Hider.Part> inside, List<Hider.Part> outside) {
        double sum = 0;
        for (TankWindow window : patch.place().z() < waterLineMetres ? wet : dry) {
            Optional<Shine.Face> face = shine.findFace(window, patch);
            if (face.isPresent()) {
                sum += lux(window, face.get(), patch, inside, outside);
            }
        }
        return sum;
    }

    private double lux(
            TankWindow window, Shine.Face face, Patch patch, List<Hider.Part> inside, List<Hider.Part> outside) {
        Optional<TankWindow.Sight> sight = memory.sight(window, face.emitter(), patch);
        if (sight.isEmpty()) {
            return 0;
        }
        List<Hider.Part> straight = inside.stream()
                .filter(part -> sight.get().mayMeet(part.middle(), part.reachMetres()))
                .toList();
        List<Hider.Part> bent = outside.stream()
                .filter(part -> window.mayHide(part, sight.get(), patch))
                .toList();
        List<LightMemory.Part> before = new ArrayList<>();
        straight.forEach(part -> before.add(part.named()));
        bent.forEach(part -> before.add(part.named()));
        return memory.window(window, face, patch, before, () -> window.lux(face, patch, sight.get(), straight, bent));
    }
}
