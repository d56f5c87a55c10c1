package plumeline.want;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.sight.Sides;
import plumeline.sight.Sight;

/// Remembers how far bodies are hidden and how far apart they stand, for a search that moves one mark at a time: most
/// of what it asks for it has asked for just before. Answers are those of [Sight#hidden] and of [Air], bit for bit. For
/// one thread.
public final class Recall {
    private static final int MOST = 4096;

    private record Asked(Projection projection, Body hidden, List<Body> hiders) {}

    private record Two(Record one, Record other) {}

    private final Map<Asked, Sides> known = new HashMap<>();
    private final Map<Two, Double> apart = new HashMap<>();

    /// Makes an empty memory.
    public Recall() {}

    Sides hidden(Projection projection, Body hidden, List<Body> hiders) {
        if (known.size() > MOST) {
            known.clear();
        }
        return known.computeIfAbsent(
                new Asked(projection, hidden, hiders), asked -> Sight.hidden(projection, hidden, hiders));
    }

    /// Gives the clearance of two that stand in a shot, metres.
    double apartMetres(Air air, Air.Standing one, Air.Standing other) {
        if (apart.size() > MOST) {
            apart.clear();
        }
        return apart.computeIfAbsent(new Two(air.posed(one), air.posed(other)), two -> air.betweenMetres(one, other));
    }
}
