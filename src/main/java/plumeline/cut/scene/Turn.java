package plumeline.cut.scene;

import plumeline.geom.Aim;
import plumeline.geom.Pose;
import plumeline.geom.Vec;

/// A rotation in glTF's axes as a unit quaternion; positive is counter-clockwise seen against the axis.
///
/// **Source:** products of half-angle quaternions, textbook; which way is positive: glTF 2.0, Khronos, section 3.2.
record Turn(double x, double y, double z, double w) {
    static Turn aboutX(double radians) {
        return new Turn(StrictMath.sin(radians / 2), 0, 0, StrictMath.cos(radians / 2));
    }

    static Turn aboutY(double radians) {
        return new Turn(0, StrictMath.sin(radians / 2), 0, StrictMath.cos(radians / 2));
    }

    static Turn aboutZ(double radians) {
        return new Turn(0, 0, StrictMath.sin(radians / 2), StrictMath.cos(radians / 2));
    }

    /// How a camera stands that looks along its own −z: first rolled, then tilted, then panned.
    static Turn of(Aim aim) {
        return aboutY(-aim.turnRadians()).times(aboutX(aim.tiltRadians())).times(aboutZ(-aim.rollRadians()));
    }

    /// How a body stands: first leaned to camera right, then turned.
    static Turn of(Pose pose) {
        return aboutY(-pose.turnRadians()).times(aboutZ(-pose.leanRadians()));
    }

    /// A place of ours, or a direction, in glTF's axes.
    static Vec place(Vec ours) {
        return new Vec(ours.x(), ours.z(), 0 - ours.y());
    }

    /// The other first, then this.
    Turn times(Turn b) {
        return new Turn(
                w * b.x + x * b.w + y * b.z - z * b.y,
                w * b.y - x * b.z + y * b.w + z * b.x,
                w * b.z + x * b.y - y * b.x + z * b.w,
                w * b.w - x * b.x - y * b.y - z * b.z);
    }

    /// The same rotation, its sign chosen so that a reader goes from the one before by the shorter way, and of unit
    /// length.
    Turn after(Turn before) {
        double along = x * before.x + y * before.y + z * before.z + w * before.w;
        double scale = (along < 0 ? -1 : 1) / Math.sqrt(x * x + y * y + z * z + w * w);
        return new Turn(x * scale, y * scale, z * scale, w * scale);
    }
}
