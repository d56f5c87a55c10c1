package plumeline.lit;

import java.util.Optional;
import java.util.function.Function;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.mirror.Looking;
import plumeline.mirror.Stripe;
import plumeline.plan.WantLine;
import plumeline.roots.Roots;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Where a lamp goes so that its mirror image stands where a `highlight` wants it: along the way on which sight goes on
/// from there, so far off that it is as wide as wanted.
public final class Placing {
    private static final double NEAREST_METRES = 0.1;
    private static final double FARTHEST_METRES = 3;
    private static final double USUAL_METRES = 0.8;

    private Placing() {}

    /// Finds the place.
    ///
    /// @param line the want, a `highlight`
    /// @param stage the shot
    /// @param there gives the shot, at the want's instant, with the lamp's middle at a place
    /// @return the lamp's middle, m; empty where nothing of the thing is seen
    public static Optional<Vec> find(WantLine line, Stage stage, Function<Vec, Scene> there) {
        HighlightAt want = LightMeasures.highlight(line, stage);
        Scene scene = there.apply(new Vec(0, 0, -FARTHEST_METRES));
        double height = want.on().middleMetres(scene);
        Optional<Looking.Onward> onward = want.on()
                .findSpot(scene, height, want.wished().fromLeft())
                .flatMap(spot -> want.on().findOnward(scene, spot));
        if (onward.isEmpty()) {
            return Optional.empty();
        }
        Function<Double, Vec> at =
                metres -> onward.get().from().plus(onward.get().toward().times(metres));
        if (want.wished().wide().isEmpty()) {
            return Optional.of(at.apply(USUAL_METRES));
        }
        double wanted = want.wished().wide().getAsDouble();
        double far = Roots.end(
                metres -> wide(want, height, there.apply(at.apply(metres))) > wanted, NEAREST_METRES, FARTHEST_METRES);
        return Optional.of(at.apply(far));
    }

    private static double wide(HighlightAt want, double height, Scene scene) {
        Emitter emitter = want.lamp().find(scene).orElseThrow();
        return want.on().seen(scene).stripes(height, emitter).stream()
                .mapToDouble(Stripe::wide)
                .max()
                .orElse(0);
    }
}
