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
/// picture's lower edge or where it lands.
///
/// Margin in captured px at the piece's own distance.
///
/// @param name the piece's
/// @param pieces what falls
/// @param capture how the shot is captured
/// @param mostPixels the limit, px
record FallSmear(String name, PieceRelease pieces, Capture capture, double mostPixels) implements Gauge<Paced> {
    @Override
    public String unit() {
        return "px";
    }

    @Override
    public boolean restsOnMarks() {
        return true;
    }

    @Override
    public boolean isOfWhole() {
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

    /// How far under the hand it leaves the picture or lands, m.
    private double lowest(Paced at) {
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

    private double metresPerSecond(Paced at) {
        return fall(at).at(lowest(at)).metresPerSecond();
    }

    private double pixels(Paced at) {
        Scene scene = scene(at);
        Vec place = hand(at).minus(new Vec(0, 0, lowest(at)));
        double depth = scene.projection().depth(place);
        return depth > 0
                ? metresPerSecond(at) * capture.exposureSeconds() * Shift.scale(scene) / depth
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
        return fall.isKnownAt(metresPerSecond(at))
                ? Optional.empty()
                : Optional.of("Not computed: it falls faster than its drag is known. Time a drop.");
    }

    @Override
    public String standing(Paced at) {
        return name + " falls at " + Print.number(metresPerSecond(at), 2) + " m/s at its fastest in the picture and"
                + " smears over " + Pixels.text(pixels(at)) + " while a frame is exposed for "
                + Pixels.exposure(capture) + "; " + Pixels.text(mostPixels) + " is allowed.";
    }

    @Override
    public Optional<String> findTight(Paced at) {
        Fall fast = new Fall(
                pieces.piece(),
                PieceRelease.findMedium(at.stage(), hand(at)).orElse(Medium.AIR),
                pieces.piece().drag().lowShare());
        double times = fast.at(lowest(at)).metresPerSecond() / metresPerSecond(at);
        return times * pixels(at) > mostPixels
                ? Optional.of("With the least drag that such pieces have it smears over "
                        + Pixels.text(times * pixels(at)) + ". Drop one and look.")
                : Optional.empty();
    }
}
