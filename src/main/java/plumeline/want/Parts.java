package plumeline.want;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import plumeline.geom.Body;
import plumeline.plan.When;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.sight.Sight;
import plumeline.stage.Scene;

/// What the wants' margins have in common.
final class Parts {
    static final double PERCENT = 100;
    static final double MILLIMETRES = 1000;

    /// The margin, in any unit, of a thing that isn't wholly in front of the lens: fails by far, less so the nearer it
    /// is.
    private static final double BEHIND = -1000;

    /// The margin, mm, of what has nothing to come near to; farther off counts no more.
    static final double FAR_MILLIMETRES = 10_000;

    private Parts() {}

    /// Takes the worst of each part over several instants.
    static double[] worst(List<Scene> scenes, Function<Scene, double[]> parts) {
        double[] worst = parts.apply(scenes.getFirst());
        for (int i = 1; i < scenes.size(); i++) {
            double[] next = parts.apply(scenes.get(i));
            for (int p = 0; p < worst.length; p++) {
                worst[p] = Math.min(worst[p], next[p]);
            }
        }
        return worst;
    }

    /// How far a body is in front of the lens: above 0 wholly. A body whose whole sphere is in front needs no closer
    /// look.
    static double inFrontMetres(Scene scene, Body body) {
        double sphere = body.ballMetres();
        double least = scene.aim().depthMetres(body.middle()) - sphere;
        return least > 0 ? least : Sight.leastDepthMetres(scene.view(body), body);
    }

    /// What every part of a want reads where a body isn't wholly in front of the lens.
    static double behind(double inFrontMetres) {
        return BEHIND * (1 - Math.min(inFrontMetres, 0));
    }

    /// Says which thing isn't wholly in front of the lens at some instant, so that nothing is measured of it.
    static Optional<String> findBehind(Moments moments, When when, List<Integer> things) {
        for (Scene scene : moments.during(when)) {
            for (int index : things) {
                if (inFrontMetres(scene, scene.things().get(index)) <= 0) {
                    return Optional.of(name(moments, index) + " isn't wholly in front of the lens.");
                }
            }
        }
        return Optional.empty();
    }

    /// The part that is nearest to failing.
    static int worstOf(double[] parts) {
        int worst = 0;
        for (int i = 1; i < parts.length; i++) {
            if (parts[i] < parts[worst]) {
                worst = i;
            }
        }
        return worst;
    }

    /// A length's size in words, as a hand measures it.
    static String distance(double millimetres, PaperUnit papers) {
        return new Print(papers).difference(Math.abs(millimetres) / MILLIMETRES, Print.Hand.TAPE);
    }

    static String name(Moments moments, int thing) {
        return moments.stage().shot().placed().get(thing).name();
    }

    /// A difference in per cent in words, never rounded to nothing.
    static String points(double percent) {
        double size = Math.abs(percent);
        return Print.number(size, size < 0.05 ? 3 : 1) + " %";
    }

    /// A share in words, to a tenth of a per cent.
    static String percent(double share) {
        return Print.share(share, 1);
    }
}
