package plumeline.water;

import plumeline.geom.Vec;

/// A form that a dome rises into from below: the room inside something with a hollow base.
///
/// @param full the form without the dome
/// @param dome what rises into it, all within it
public record Dished(Form full, Turned dome) implements Form {
    @Override
    public Portion whole() {
        return without(full.whole(), dome.whole());
    }

    @Override
    public Portion below(Vec up, double levelMetres) {
        return without(full.below(up, levelMetres), dome.below(up, levelMetres));
    }

    private static Portion without(Portion all, Portion part) {
        Vec moment =
                all.centroid().times(all.volumeMetres3()).minus(part.centroid().times(part.volumeMetres3()));
        return Portion.of(
                all.volumeMetres3() - part.volumeMetres3(),
                moment.x(),
                moment.y(),
                moment.z(),
                Math.max(0, all.sectionMetres2() - part.sectionMetres2()));
    }

    @Override
    public double lowestMetres(Vec up) {
        return full.lowestMetres(up);
    }

    @Override
    public double highestMetres(Vec up) {
        return full.highestMetres(up);
    }
}
