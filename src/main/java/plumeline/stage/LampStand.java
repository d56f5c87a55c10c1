package plumeline.stage;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.light.LampFile;
import plumeline.light.Photometry;
import plumeline.plan.Camera;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;

/// A lamp of a shot as numbers: the middle of what shines, what it faces, and its housing there.
///
/// @param solid its housing, its front to camera right
/// @param behindMetres how far behind the middle of what shines the housing's middle is, m
record LampStand(
        Solid solid,
        double behindMetres,
        Slots.Slot x,
        Slots.Slot y,
        Slots.Slot z,
        Slots.Slot turn,
        Slots.Slot tilt,
        Slots.Slot level,
        boolean turnIsSet,
        int facing,
        Optional<Photometry> file,
        Tint tint) {
    static LampStand of(PlacedLight light, Shot shot, Slots slots) {
        int facing = switch (light.aim()) {
            case Camera.Aim.At at -> Motions.indexOf(shot, at.thing());
            default -> shot.camera().aim() instanceof Camera.Aim.At at ? Motions.indexOf(shot, at.thing()) : -1;
        };
        Slots.Slot turn = light.aim() instanceof Camera.Aim.By by ? slots.of(by.turn(), 0) : Slots.ZERO;
        Slots.Slot tilt = light.aim() instanceof Camera.Aim.By by ? slots.of(by.tilt(), 0) : Slots.ZERO;
        return new LampStand(
                Forms.lamp(light.light().emitter()),
                Forms.behindMetres(light.light().emitter()),
                slots.of(light.at().x()),
                slots.of(light.at().y()),
                slots.of(light.at().z(), 0),
                turn,
                tilt,
                slots.of(light.level(), 1),
                light.aim() instanceof Camera.Aim.By || light.aim() instanceof Camera.Aim.Ahead,
                facing,
                light.light().file().flatMap(LampStand::findPhotometry),
                Tint.of(light));
    }

    private static Optional<Photometry> findPhotometry(String file) {
        return LampFile.read(file.getBytes(StandardCharsets.ISO_8859_1)) instanceof LampFile.Read(var photometry)
                ? Optional.of(photometry)
                : Optional.empty();
    }

    Beam beam(double[] values, List<Body> things, Vec lensPoint) {
        return new Beam(aim(values, things, lensPoint), Math.max(0, level.in(values)), file, tint);
    }

    private Aim aim(double[] values, List<Body> things, Vec lensPoint) {
        Vec middle = new Vec(x.in(values), y.in(values), z.in(values));
        if (turnIsSet) {
            return new Aim(middle, turn.in(values), Math.clamp(tilt.in(values), -Math.PI / 2, Math.PI / 2));
        }
        Vec target = target(things, lensPoint);
        return target.distanceMetres(middle) > 0 ? Aim.toward(middle, target) : new Aim(middle, 0, 0);
    }

    /// Its housing, turned and tilted as it is, behind what shines.
    Body body(Beam beam) {
        Aim aim = beam.aim();
        Vec middle = aim.eye().minus(aim.forward().times(behindMetres));
        Vec base = middle.minus(new Vec(0, 0, solid.heightMetres() / 2));
        return new Body(solid, new Pose(base, aim.turnRadians() - Math.PI / 2, -aim.tiltRadians()));
    }

    private Vec target(List<Body> things, Vec lensPoint) {
        if (facing >= 0) {
            return things.get(facing).middle();
        }
        return things.stream()
                .map(Body::middle)
                .min((a, b) -> Double.compare(a.distanceMetres(lensPoint), b.distanceMetres(lensPoint)))
                .orElse(Vec.ZERO);
    }
}
