package plumeline.lit;

import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.Function;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.mirror.Looking;
import plumeline.mirror.Stripe;
import plumeline.plan.WantLine;
import plumeline.rim.Passage;
import plumeline.roots.Roots;
import plumeline.stage.Scene;
import plumeline.stage.Stage;

/// Where a lamp goes so that its mirror image stands where a `highlight` wants it: along the way on which sight goes on
/// from there, so far off that it is as wide as wanted. And where one goes for `edges`: behind the glass where its
/// middle sees, so far off that the rims just see past it, or where a rim sees.
public final class Placing {
    private static final double NEAREST_METRES = 0.1;
    private static final double FARTHEST_METRES = 3;
    private static final int DISTANCES = 24;
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

    /// Finds a lamp's place for rims: for dark ones that of a lamp behind the glass, for bright ones that of a lamp
    /// which one rim sees.
    ///
    /// @param line the want, an `edges`
    /// @param stage the shot
    /// @param count how many lamps have their places already: the first has the left rim, the next the right one
    /// @param there gives the shot, at the want's instant, with the lamp's middle at a place
    /// @return the lamp's middle, m; empty where nothing is known, or a lamp more is of no use
    public static Optional<Vec> findForRims(WantLine line, Stage stage, int count, Function<Vec, Scene> there) {
        if (!(LightMeasures.edges(line, stage) instanceof LightMeasures.Reading.Of(Edges want))) {
            return Optional.empty();
        }
        boolean isDark = want.wished().rims() == RimField.Rims.DARK;
        if (count > (isDark ? 0 : 1)) {
            return Optional.empty();
        }
        double inside = RimField.GRAZING_SHARE + want.wished().wide() / 2;
        double share = isDark ? 0.5 : count == 0 ? inside : 1 - inside;
        return want.glass()
                .findView(
                        lit(stage, there.apply(new Vec(0, 0, -FARTHEST_METRES))),
                        want.glass().wall())
                .flatMap(view -> view.follow(share) instanceof Passage.Out out ? Optional.of(out) : Optional.empty())
                .map(out -> {
                    Function<Double, Vec> at =
                            metres -> out.place().plus(out.direction().times(metres));
                    return at.apply(
                            isDark
                                    ? nearest(metres -> rims(want, lit(stage, there.apply(at.apply(metres)))) >= 0)
                                    : USUAL_METRES);
                });
    }

    /// The nearest distance at which something begins to hold, the farthest where it never does; behind what else
    /// stands there it may end again.
    private static double nearest(DoublePredicate holds) {
        double near = NEAREST_METRES;
        for (int i = 0; i <= DISTANCES; i++) {
            double far = NEAREST_METRES * Math.pow(FARTHEST_METRES / NEAREST_METRES, (double) i / DISTANCES);
            if (holds.test(far)) {
                return Roots.end(metres -> !holds.test(metres), near, far);
            }
            near = far;
        }
        return FARTHEST_METRES;
    }

    /// The narrower rim's width over what is wanted, whatever the middle.
    private static double rims(Edges want, Instant now) {
        double[] parts = want.parts(now);
        return Math.min(parts[0], parts[1]);
    }

    private static Instant lit(Stage stage, Scene scene) {
        LightMemory memory = new LightMemory();
        return new Instant(scene, () -> new Lighting(stage.shot(), scene, stage.findTank(), memory), memory);
    }

    private static double wide(HighlightAt want, double height, Scene scene) {
        Emitter emitter = want.lamp().find(scene).orElseThrow();
        return want.on().seen(scene, emitter).stripes(height, emitter).stream()
                .mapToDouble(Stripe::wide)
                .max()
                .orElse(0);
    }
}
