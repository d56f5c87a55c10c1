package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import plumeline.fall.Medium;
import plumeline.fall.Rise;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.plan.Release;
import plumeline.plan.TankPlace;
import plumeline.stage.Immersed;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.stage.TankFill;
import plumeline.stage.TankWalls;
import plumeline.wet.Lacks;

/// A placed thing that is let go under water and rises end on, by the law of the want `rises`; where no law is known of
/// it, it stays.
final class Rising {
    private final int thing;
    private final Optional<Rise> rise;
    private final double mostMetres;
    private final double goSeconds;
    private final List<String> assumed;

    private Rising(int thing, Optional<Rise> rise, double mostMetres, double goSeconds, List<String> assumed) {
        this.thing = thing;
        this.rise = rise;
        this.mostMetres = mostMetres;
        this.goSeconds = goSeconds;
        this.assumed = List.copyOf(assumed);
    }

    private static Rising stays(String... why) {
        return new Rising(-1, Optional.empty(), 0, 0, List.of(why));
    }

    /// Reads what a shot lets go.
    static Rising of(Stage stage, double[] values) {
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfThing release)) {
            return stays();
        }
        String name = release.thing().name();
        String stays = name + " is drawn where it is placed, though it is let go: ";
        int thing = stage.thingIndex(name);
        Optional<TankWalls> walls = stage.findTank();
        double room = walls.isEmpty()
                ? 0
                : walls.get().waterLineMetres()
                        - stage.standing(thing, values).bounds().high().z();
        if (walls.isEmpty() || !walls.get().isWithin(stage.standing(thing, values)) || !(room > 0)) {
            return stays(stays + "it isn't under a tank's water, and how a thing falls in air isn't known here.");
        }
        TankPlace tank = stage.shot().findTank().orElseThrow();
        OptionalDouble density = TankFill.density(tank).find();
        OptionalDouble viscosity = TankFill.viscosity(tank).find();
        if (density.isEmpty() || viscosity.isEmpty()) {
            return stays(stays + "water so warm or cold isn't known.");
        }
        var water = new Medium(density.getAsDouble(), viscosity.getAsDouble());
        return switch (Immersed.of(stage.shot().placed().get(thing).thing(), density.getAsDouble())) {
            case Immersed.Reading.Missing(Immersed.Lack lack) -> stays(stays + Lacks.sentence(lack, name));
            case Immersed.Reading.Known(Immersed immersed) -> {
                var rise = new Rise(
                        immersed.mass().value(),
                        immersed.displaced().value(),
                        face(stage.standing(thing, values).solid()),
                        water,
                        1);
                if (-immersed.net().value() <= immersed.net().half() || !rise.isKnown()) {
                    yield stays(stays + "it doesn't float by so much that it is known how it rises.");
                }
                String told =
                        name + " rises end on to the water's surface and stays there: how it goes on isn't known.";
                yield new Rising(thing, Optional.of(rise), room, stage.releaseSeconds(), List.of(told));
            }
        };
    }

    private static double face(Solid solid) {
        return switch (solid) {
            case Solid.Box box -> box.widthMetres() * box.depthMetres();
            case Solid.Revolved round -> Math.PI * round.reachMetres() * round.reachMetres();
        };
    }

    /// Gives a shot at an instant with what rises where it is.
    Scene at(Scene scene) {
        double after = scene.realSeconds() - goSeconds;
        if (rise.isEmpty() || after <= 0) {
            return scene;
        }
        double up = Math.min(mostMetres, rise.get().metres(after));
        List<Body> things = new ArrayList<>(scene.things());
        Body body = things.get(thing);
        things.set(thing, body.at(body.pose().movedBy(new Vec(0, 0, up))));
        return new Scene(
                scene.frame(),
                scene.realSeconds(),
                scene.aim(),
                scene.lines(),
                scene.projection(),
                scene.picture(),
                things,
                scene.lamps(),
                scene.beams(),
                scene.nozzle());
    }

    /// Tells what was taken for what isn't known.
    List<String> assumed() {
        return assumed;
    }
}
