package plumeline.lit;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.mirror.Stripe;

/// Remembers what lamps give to places, and what things mirror of them, for a search that moves one mark at a time:
/// most lamps, places and things then stand as they did. What is asked for names all on which the answer rests, so that
/// an answer is the same bit for bit whether it was remembered or not. For one thread.
public final class LightMemory {
    private static final int MOST = 50_000;

    /// Part of something that keeps light off.
    ///
    /// @param of a thing's body, a lens's barrel or a lamp's face
    /// @param index which of its convex parts
    record Part(Record of, int index) {}

    private record ThroughAir(Shine shine, Patch patch, List<Part> before) {}

    private record Looking(Object way, Emitter face, Patch patch) {}

    private record ThroughTank(Object way, Shine.Face face, Patch patch, List<List<Part>> before) {}

    private record Row(Mirrors.Seen seen, double heightMetres, Emitter emitter) {}

    private final Map<ThroughAir, Double> air = new HashMap<>();
    private final Map<Looking, Optional<TankWindow.Sight>> sights = new HashMap<>();
    private final Map<ThroughTank, Double> tank = new HashMap<>();
    private final Map<Row, List<Stripe>> rows = new HashMap<>();

    /// Makes an empty memory.
    public LightMemory() {}

    /// Gives the light of a lamp through air, lx.
    double air(Shine shine, Patch patch, List<Part> before, Supplier<Double> lux) {
        return find(air, new ThroughAir(shine, patch, before), lux);
    }

    /// Gives what of a lamp's face is seen by a way into a tank or through it.
    Optional<TankWindow.Sight> sight(
            Object way, Emitter face, Patch patch, Supplier<Optional<TankWindow.Sight>> sight) {
        return find(sights, new Looking(way, face, patch), sight);
    }

    /// Gives the light of a lamp's face by a way into a tank or through it, lx.
    double tank(Object way, Shine.Face face, Patch patch, List<List<Part>> before, Supplier<Double> lux) {
        return find(tank, new ThroughTank(way, face, patch, before), lux);
    }

    /// Gives what a light shows as on a thing at a height.
    List<Stripe> stripes(Mirrors.Seen seen, double heightMetres, Emitter emitter) {
        return find(rows, new Row(seen, heightMetres, emitter), () -> seen.stripes(heightMetres, emitter));
    }

    private static <K, V> V find(Map<K, V> known, K asked, Supplier<V> answer) {
        V found = known.get(asked);
        if (found == null) {
            found = answer.get();
            if (known.size() >= MOST) {
                known.clear();
            }
            known.put(asked, found);
        }
        return found;
    }
}
