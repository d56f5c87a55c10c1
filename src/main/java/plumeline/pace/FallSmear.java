package plumeline.pace;

import java.util.Optional;
import plumeline.fall.Fall;
import plumeline.fall.Medium;
import plumeline.geom.Vec;
import plumeline.quantity.Print;
import plumeline.roots.Roots;
import plumeline.stage.Gauge;
import plumeline.stage.PieceRelease;
import plumeline.stage.Scene;

/// A falling piece smears less than a limit while a frame is exposed: where it is fastest in the picture, at the
/// picture's lower edge, where it lands or where the shot ends; or where it is at an instant.
///
/// Margin in captured px at the piece's own distance.
///
/// @param name the piece's
/// @param pieces what falls
/// @param capture how the shot is captured
/// @param mostPixels the limit, px
/// @param isOfWhole whether the whole shot counts
record FallSmear(String name, PieceRelease pieces, Capture capture, double mostPixels, boolean isOfWhole)
        implements Gauge<Paced> {
    @Override
    public String unit() {
        return "px";
    }

    @Override
    public boolean restsOnMarks() {
        return true;
    }

    private static Vec hand(Paced at) {
        return at.stage().findMouth(at.si()).orElseThrow();
    }

    /// The shot when the piece is let go.
    private static Scene scene(Paced at) {
        return at.laid().sceneAt(at.stage().releaseSeconds());
    }

    private Fall fall(Paced at) {
        return pieces.fall(PieceRelease.findMedium(at.stage(), hand(at)).orElse(Medium.AIR));
    }

    /// Where it is fastest in the picture; at the hand where it isn't in the picture then.
    private Fall.At fastest(Paced at, Fall fall) {
        Fall.At gone = fall.at(leaves(at));
        double end = at.stage().frames() > 1 ? at.stage().lastSeconds() : Double.POSITIVE_INFINITY;
        double seconds = (isOfWhole ? end : at.now().realSeconds()) - at.stage().releaseSeconds();
        if (seconds >= gone.seconds()) {
            return isOfWhole || seconds == gone.seconds() ? gone : fall.at(0);
        }
        double fallen = seconds <= 0 ? 0 : Roots.end(under -> fall.at(under).seconds() < seconds, 0, gone.metres());
        return fall.at(fallen);
    }

    /// How far under the hand it leaves the picture or lands, m.
    private double leaves(Paced at) {
        Scene scene = scene(at);
        double half = scene.picture().heightTangent() / 2;
        Vec hand = hand(at);
        return Roots.end(
                under -> {
                    Vec there = hand.minus(new Vec(0, 0, under));
                    return scene.projection().depth(there) > 0
                            && scene.projection().project(there).y() > -half;
                },
                0,
                PieceRelease.wayMetres(at.stage(), hand));
    }

    private double pixels(Paced at) {
        return pixels(at, fastest(at, fall(at)));
    }

    private double pixels(Paced at, Fall.At there) {
        Scene scene = scene(at);
        Vec place = hand(at).minus(new Vec(0, 0, there.metres()));
        double depth = scene.projection().depth(place);
        return depth > 0
                ? there.metresPerSecond() * capture.exposureSeconds() * Shift.scale(scene) / depth
                : -Subject.BEHIND;
    }

    @Override
    public double[] parts(Paced at) {
        return new double[] {mostPixels - pixels(at)};
    }

    @Override
    public Optional<String> findUnknown(Paced at) {
        if (PieceRelease.findMedium(at.stage(), hand(at)).isEmpty()) {
            return Optional.of("Not known: how " + name + " falls in water this warm or cold. Time a drop.");
        }
        Fall fall = fall(at);
        if (fall.netNewtons() <= 0 || !fall.moves()) {
            return Optional.of(name + " doesn't fall there. Weigh it again.");
        }
        return fall.isKnownAt(fastest(at, fall).metresPerSecond())
                ? Optional.empty()
                : Optional.of("Not computed: it falls faster than its drag is known. Time a drop.");
    }

    @Override
    public String standing(Paced at) {
        return name + " falls at " + Print.number(fastest(at, fall(at)).metresPerSecond(), 2) + " m/s"
                + (isOfWhole ? " at its fastest in the picture" : " then") + " and"
                + " smears over " + Pixels.text(pixels(at)) + " while a frame is exposed for "
                + Pixels.exposure(capture) + "; " + Pixels.text(mostPixels) + " is allowed.";
    }

    @Override
    public Optional<String> findTight(Paced at) {
        Fall fast = new Fall(
                pieces.piece(),
                PieceRelease.findMedium(at.stage(), hand(at)).orElse(Medium.AIR),
                pieces.piece().drag().lowShare());
        double times = fastest(at, fast).metresPerSecond()
                / Math.max(fastest(at, fall(at)).metresPerSecond(), Double.MIN_NORMAL);
        return times * pixels(at) > mostPixels
                ? Optional.of("With the least drag that such pieces have it smears over "
                        + Pixels.text(times * pixels(at)) + ". Drop one and look.")
                : Optional.empty();
    }
}
