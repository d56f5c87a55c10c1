package plumeline.stage;

import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.plan.Camera;
import plumeline.plan.PlacedLight;
import plumeline.plan.Shot;

/// A lamp of a shot as numbers: its housing about the middle of what shines, turned to what it faces.
///
/// A lamp's tilt is not in its body yet: the housing stands upright.
record LampStand(
        Solid solid, Slots.Slot x, Slots.Slot y, Slots.Slot z, Slots.Slot turn, boolean turnIsSet, int facing) {
    static LampStand of(PlacedLight light, Shot shot, Slots slots) {
        int facing = switch (light.aim()) {
            case Camera.Aim.At at -> Motions.indexOf(shot, at.thing());
            default -> shot.camera().aim() instanceof Camera.Aim.At at ? Motions.indexOf(shot, at.thing()) : -1;
        };
        Slots.Slot turn = light.aim() instanceof Camera.Aim.By by ? slots.of(by.turn(), 0) : Slots.ZERO;
        return new LampStand(
                Forms.lamp(light.light().emitter()),
                slots.of(light.at().x()),
                slots.of(light.at().y()),
                slots.of(light.at().z(), 0),
                turn,
                light.aim() instanceof Camera.Aim.By || light.aim() instanceof Camera.Aim.Ahead,
                facing);
    }

    Body posed(double[] values, List<Body> things, Vec lensPoint) {
        Vec middle = new Vec(x.in(values), y.in(values), z.in(values));
        double turned = turnIsSet ? turn.in(values) : turnTo(middle, target(things, lensPoint));
        return new Body(solid, new Pose(middle.minus(new Vec(0, 0, solid.heightMetres() / 2)), turned, 0));
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

    private static double turnTo(Vec from, Vec to) {
        return Math.atan2(to.x() - from.x(), to.y() - from.y());
    }
}
