package plumeline.want;

import java.util.Optional;
import plumeline.fall.Fall;
import plumeline.fall.Handful;
import plumeline.fall.Medium;
import plumeline.geom.Vec;
import plumeline.plan.Release;
import plumeline.plan.WantLine;
import plumeline.quantity.PaperUnit;
import plumeline.quantity.Print;
import plumeline.quantity.Quantity;
import plumeline.roots.Roots;
import plumeline.stage.InkRelease;
import plumeline.stage.PieceRelease;
import plumeline.stage.Scene;
import plumeline.stage.Stage;
import plumeline.time.Retime;
import plumeline.wet.Lacks;

/// A falling piece is seen in the picture for so many frames of the screen.
///
/// Margin in frames: those from when its middle comes in at the top of the picture until it goes out below, or the shot
/// ends, less those wanted. What it lands on isn't counted, but told. One part more, in mm, is none of the margin: how
/// far it falls inside the picture's sides.
///
/// @param line as written
/// @param wantedFrames the frames wanted
/// @param pieces what falls
/// @param papers the papers' unit of length
record FallsThrough(WantLine line, double wantedFrames, PieceRelease pieces, PaperUnit papers) implements Want {

    /// So far under the table's top a fall is followed: past a table's edge.
    private static final double UNDER_TABLE_METRES = 1;

    private static final double MOST_FRAMES = 1e6;

    /// Fewer of a handful may be seen for less than is wanted before it counts.
    private static final double FEW = 0.1;

    /// Makes the want, or one that says what is missing.
    static Want of(WantLine line, Stage stage, PaperUnit papers) {
        String name = line.subjects().getFirst().name();
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfPieces release)
                || !release.piece().name().equals(name)) {
            return new NotComputed(line, "Nothing lets " + name + " go: write release: {piece: " + name + ", at: …}.");
        }
        PieceRelease pieces = PieceRelease.of(release);
        Fall dry = pieces.fall(Medium.AIR);
        if (dry.netNewtons() <= 0 || !dry.moves()) {
            return new NotComputed(line, name + " is no heavier than air. Weigh it again.");
        }
        double wanted = line.written().findQuantity("frames").map(Quantity::si).orElse(0.0);
        return new FallsThrough(line, wanted, pieces, papers);
    }

    @Override
    public String unit() {
        return "frames";
    }

    /// What of its way is in the picture.
    ///
    /// @param fromMetres where it comes in, m under the hand
    /// @param toMetres where it goes out or lands
    /// @param sideMetres how far inside the nearer side
    private record Way(double fromMetres, double toMetres, double sideMetres) {}

    private Scene scene(Moments moments) {
        Stage stage = moments.stage();
        return moments.at(stage.retime().frameAt(stage.releaseSeconds(), (double) stage.frames()));
    }

    private Way way(Moments moments, Vec aside) {
        Scene scene = scene(moments);
        Vec hand = hand(moments).plus(aside);
        double half = scene.picture().heightTangent() / 2;
        double from = crossing(scene, hand, half);
        double to = crossing(scene, hand, -half);
        Vec middle = hand.minus(new Vec(0, 0, (from + to) / 2));
        double x = scene.projection().project(middle).x();
        double side = (scene.picture().widthTangent() / 2 - Math.abs(x))
                * scene.projection().depth(middle);
        return new Way(from, to, side);
    }

    private static Vec hand(Moments moments) {
        return moments.stage().findMouth(moments.values()).orElseThrow();
    }

    /// How far under the hand it is where it shows at a height of the picture; at either end where it never does.
    private static double crossing(Scene scene, Vec hand, double tangent) {
        return Roots.end(
                under -> {
                    Vec there = hand.minus(new Vec(0, 0, under));
                    return scene.projection().depth(there) > 0
                            && scene.projection().project(there).y() > tangent;
                },
                0,
                Math.max(0, hand.z()) + UNDER_TABLE_METRES);
    }

    private boolean isBefore(Moments moments) {
        return scene(moments).projection().depth(hand(moments)) > 0;
    }

    /// How one falls from the hand, through air or under water.
    private Fall fall(Moments moments) {
        return pieces.fall(medium(moments));
    }

    /// Water past the temperatures that are known counts as air until findUnknown says so.
    private static Medium medium(Moments moments) {
        return PieceRelease.findMedium(moments.stage(), hand(moments)).orElse(Medium.AIR);
    }

    private boolean sinks(Moments moments) {
        return fall(moments).netNewtons() > 0 && fall(moments).moves();
    }

    /// The screen frames for which a piece is seen that starts so much after the release.
    private double frames(Moments moments, Way way, Fall fall, double laterSeconds) {
        Stage stage = moments.stage();
        Retime retime = stage.retime();
        // A shot of which no length is told ends nowhere.
        double most = stage.frames() > 1 ? (double) stage.frames() : MOST_FRAMES;
        double start = stage.releaseSeconds() + laterSeconds;
        double in = retime.frameAt(start + fall.at(way.fromMetres()).seconds(), most);
        double out = retime.frameAt(start + fall.at(way.toMetres()).seconds(), most);
        return Math.max(0, out - in);
    }

    @Override
    public double[] parts(Moments moments) {
        if (!isBefore(moments) || !sinks(moments)) {
            return new double[] {-wantedFrames, -1};
        }
        Way way = way(moments, Vec.ZERO);
        return new double[] {frames(moments, way, fall(moments), 0) - wantedFrames, Parts.MILLIMETRES * way.sideMetres()
        };
    }

    @Override
    public double margin(double[] parts) {
        return parts[0];
    }

    @Override
    public Optional<String> findUnknown(Moments moments) {
        Vec hand = hand(moments);
        if (PieceRelease.findMedium(moments.stage(), hand).isEmpty()) {
            return Optional.of(
                    Lacks.sentence(InkRelease.Lack.TEMPERATURE, moments.stage().shot()));
        }
        if (!sinks(moments)) {
            return Optional.empty();
        }
        boolean splashes = isBefore(moments)
                && !PieceRelease.isUnder(moments.stage(), hand)
                && moments.stage()
                        .findTank()
                        .filter(walls -> walls.isOver(hand)
                                && hand.z() - way(moments, Vec.ZERO).toMetres() < walls.waterLineMetres())
                        .isPresent();
        if (splashes) {
            return Optional.of(
                    "Not computed: it falls into the water within the picture. Time a drop, or let it go under"
                            + " the surface.");
        }
        Fall fall = fall(moments);
        return isBefore(moments)
                        && !fall.isKnownAt(
                                fall.at(way(moments, Vec.ZERO).toMetres()).metresPerSecond())
                ? Optional.of("Not computed: it falls faster than its drag is known. Time a drop.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findLack(Moments moments) {
        String name = line.subjects().getFirst().name();
        if (!isBefore(moments)) {
            return Optional.of(name + " falls behind the lens.");
        }
        if (!sinks(moments)) {
            return Optional.of(name + " doesn't sink in the water. Weigh it again, or load it.");
        }
        double side = way(moments, Vec.ZERO).sideMetres();
        return side < 0
                ? Optional.of(name + " falls " + Parts.distance(side * Parts.MILLIMETRES, papers)
                        + " beside the picture: let it go nearer to the picture's middle.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findStanding(Moments moments, PaperUnit papers) {
        Way way = way(moments, Vec.ZERO);
        Fall fall = fall(moments);
        double frames = frames(moments, way, fall, 0);
        String name = line.subjects().getFirst().name();
        String wanted = "; " + Print.number(wantedFrames, 0) + " are wanted.";
        if (way.toMetres() <= way.fromMetres()) {
            return Optional.of(name + " is never in the picture" + wanted);
        }
        double in = fall.at(way.fromMetres()).seconds();
        double out = fall.at(way.toMetres()).seconds();
        String few = frames < wantedFrames ? help(moments, in, out) : "";
        return Optional.of(name + " is seen for " + Print.number(frames < 10 ? frames : Math.floor(frames), 1)
                + " frames of the screen, from " + Print.seconds(in, 2) + " to " + Print.seconds(out, 2)
                + " after its release" + wanted + few);
    }

    /// What gives more frames: a shot that isn't over before, else slower play.
    private String help(Moments moments, double inSeconds, double outSeconds) {
        Stage stage = moments.stage();
        double end = stage.frames() > 1 ? stage.lastSeconds() - stage.releaseSeconds() : Double.POSITIVE_INFINITY;
        if (end < outSeconds) {
            return " The shot ends " + Print.seconds(end, 2) + " after the release, "
                    + (end < inSeconds ? "before it comes in" : "before it is out")
                    + ": make it longer, let go sooner, or play less slowly.";
        }
        return " Play slower and capture faster, show more height, or let it go lower: it is slower then.";
    }

    @Override
    public Optional<String> findCaution(Moments moments) {
        if (!sinks(moments)) {
            return Optional.empty();
        }
        double down = PieceRelease.wayMetres(moments.stage(), hand(moments));
        return down < way(moments, Vec.ZERO).toMetres() - pieces.piece().sizeMetres()
                ? Optional.of("It lands " + Print.seconds(fall(moments).at(down).seconds(), 2)
                        + " after its release, still in the picture; lying there it counts as seen.")
                : Optional.empty();
    }

    @Override
    public Optional<String> findTight(Moments moments) {
        if (!sinks(moments)) {
            return Optional.empty();
        }
        Way way = way(moments, Vec.ZERO);
        Fall fast =
                new Fall(pieces.piece(), medium(moments), pieces.piece().drag().lowShare());
        if (frames(moments, way, fast, 0) < wantedFrames) {
            return Optional.of("With the least drag that such pieces have it is seen for fewer. Drop one and count.");
        }
        double share = fewerShare(moments);
        return share > FEW
                ? Optional.of("Of the handful " + Print.share(share, 0)
                        + " is seen for fewer: what falls nearer to the lens, or after the shot's end.")
                : Optional.empty();
    }

    /// The share of a handful that is seen for fewer frames than wanted.
    private double fewerShare(Moments moments) {
        if (pieces.count() == 1) {
            return 0;
        }
        Handful handful = pieces.handful(medium(moments));
        long fewer = handful.pieces().stream()
                .filter(piece ->
                        frames(moments, way(moments, piece.from()), piece.fall(), piece.startSeconds()) < wantedFrames)
                .count();
        return (double) fewer / handful.count();
    }
}
