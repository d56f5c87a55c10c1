package plumeline.lit;

import java.util.List;
import plumeline.geom.Body;
import plumeline.light.Patch;
import plumeline.plan.Placed;
import plumeline.plan.Shot;

/// A thing of a shot as light falls on it.
///
/// @param shot the shot
/// @param index of the thing
record LitThing(Shot shot, int index) {
    Placed placed() {
        return shot.placed().get(index);
    }

    String name() {
        return placed().name();
    }

    private Body body(Instant now) {
        return now.scene().things().get(index);
    }

    /// The middle of a part of it.
    Patch patch(Instant now, Spots.Part part) {
        return Spots.of(placed(), body(now), part, now.scene().aim().eye());
    }

    /// The light on the middle of a part of it, as computed, or as metered there.
    Lighting.Light light(Instant now, Spots.Part part) {
        Lighting lighting = now.lighting();
        return Readings.over(lighting, shot.lights(), placed(), part, lighting.light(patch(now, part)));
    }

    /// Places all over its label or its side.
    List<Patch> spots(Instant now) {
        return Spots.over(placed(), body(now), now.scene().aim().eye());
    }
}
