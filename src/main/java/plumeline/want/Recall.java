package plumeline.want;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import plumeline.geom.Body;
import plumeline.geom.Projection;
import plumeline.lit.LightMemory;
import plumeline.lit.Lighting;
import plumeline.sight.Sides;
import plumeline.sight.Sight;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Remembers how far bodies are hidden, how far apart they stand and how they are lit, for a search that moves one mark
/// at a time: most of what it asks for it has asked for just before. Answers are those of [Sight#hidden] and of [Air],
/// bit for bit. For one thread.
public final class Recall {
    private static final int MOST = 4096;
    private static final int MOST_LIT = 64;

    private record Asked(Projection projection, Body hidden, List<Body> hiders) {}

    private record Lit(Stage stage, Lighting.Set set) {}

    private record Two(Record one, Record other) {}

    private final Map<Asked, Sides> known = new HashMap<>();
    private final Map<Lit, Lighting> lit = new HashMap<>();
    private final LightMemory light = new LightMemory();
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

    /// Gives the light of a shot at an instant.
    Lighting lighting(Stage stage, Scene scene) {
        if (lit.size() > MOST_LIT) {
            lit.clear();
        }
        return lit.computeIfAbsent(
                new Lit(stage, Lighting.Set.of(stage.shot(), scene)),
                asked -> new Lighting(stage.shot(), scene, stage.findTank(), light));
    }

    LightMemory light() {
        return light;
    }

    /// Gives the clearance of two that stand in a shot, metres.
    double apartMetres(Air air, Air.Standing one, Air.Standing other) {
        if (apart.size() > MOST) {
            apart.clear();
        }
        return apart.computeIfAbsent(new Two(air.posed(one), air.posed(other)), two -> air.betweenMetres(one, other));
    }
}
