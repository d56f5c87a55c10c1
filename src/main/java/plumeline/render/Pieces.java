package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import plumeline.colour.Rgb;
import plumeline.fall.Handful;
import plumeline.fall.Medium;
import plumeline.fall.Piece;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.mirror.Finish;
import plumeline.plan.Release;
import plumeline.scenery.Coat;
import plumeline.scenery.Form;
import plumeline.scenery.Paint;
import plumeline.scenery.Part;
import plumeline.stage.PieceRelease;
import plumeline.stage.Stage;
import plumeline.stage.TankWalls;

/// Pieces that a shot lets go, as parts: where their cloud has them at a time, each turned by a draw of its own. How
/// pieces turn on their way is known of none: each keeps its turn, and lies flat once it has come to rest.
final class Pieces {
    /// A flat piece falls broadside, give or take: own guess.
    private static final double MOST_DISC_LEAN = Math.PI / 4;

    /// What lies on something lies so far over it: two surfaces never lie in one.
    private static final double OVER_METRES = 1e-6;

    /// More than these aren't drawn.
    private static final int MOST = 30_000;

    /// So many pieces of all instants of an exposure are held in memory.
    private static final int MOST_AT_ONCE = 480_000;

    private static final int LEAST_INSTANTS = 16;

    private final List<Flight> flights;
    private final List<String> assumed;

    private Pieces(List<Flight> flights, List<String> assumed) {
        this.flights = List.copyOf(flights);
        this.assumed = List.copyOf(assumed);
    }

    /// What all of a shot's pieces have in common.
    ///
    /// @param name the piece's name
    /// @param piece its form and mass
    /// @param hand where they are let go, m
    /// @param wayMetres how far they go
    /// @param ground how high what they may not pass through is, m; empty where they end at the water's surface
    /// @param coat what light does at them
    private record Sort(String name, Piece piece, Vec hand, double wayMetres, Optional<Double> ground, Coat coat) {}

    /// Reads a shot's pieces and follows each down once.
    static Pieces of(Stage stage, double[] values) {
        if (!(stage.shot().findRelease().orElse(null) instanceof Release.OfPieces release)) {
            return new Pieces(List.of(), List.of());
        }
        PieceRelease pieces = PieceRelease.of(release);
        Vec hand = stage.findMouth(values).orElseThrow();
        Optional<Medium> medium = PieceRelease.findMedium(stage, hand);
        if (medium.isEmpty()) {
            return new Pieces(List.of(), List.of("Pieces aren't drawn: water so warm or cold isn't known."));
        }
        boolean rises = pieces.fall(medium.get()).netNewtons() < 0;
        boolean isOverWater = stage.findTank()
                .filter(walls -> walls.isOver(hand)
                        && walls.waterLineMetres() > walls.inside().low().z())
                .isPresent();
        boolean onWater = isOverWater && rises == PieceRelease.isUnder(stage, hand);
        double way = rises ? upMetres(stage, hand) : PieceRelease.wayMetres(stage, hand);
        if (!(way > 0)) {
            return new Pieces(List.of(), List.of("Pieces aren't drawn: there is no way down from the hand."));
        }
        List<String> assumed = new ArrayList<>();
        Optional<Rgb> colour = Paints.findColour(release.piece().written());
        if (colour.isEmpty()) {
            assumed.add("The colour of " + release.piece().name() + " isn't written: drawn grey, throwing back 50 %.");
        }
        if (onWater) {
            assumed.add("Pieces stay where they come to the water's surface: how they go on isn't known.");
        }
        Coat coat = new Coat.Opaque(Paint.even(colour.orElse(Paints.grey(Paints.GREY))), new Finish.Matte());
        Optional<Double> ground = onWater ? Optional.empty() : Optional.of(hand.z() - way);
        Sort sort = new Sort(release.piece().name(), pieces.piece(), hand, way, ground, coat);
        Handful handful = pieces.handful(medium.get(), MOST);
        if (pieces.count() > MOST) {
            assumed.add(MOST + " of " + pieces.count() + " pieces are drawn: more aren't held in memory.");
        }
        return new Pieces(flights(sort, handful, stage.releaseSeconds()), assumed);
    }

    /// What is lighter than the water comes up to its surface.
    private static double upMetres(Stage stage, Vec hand) {
        return stage.findTank().map(TankWalls::waterLineMetres).orElse(hand.z()) - hand.z();
    }

    private static List<Flight> flights(Sort sort, Handful handful, double goSeconds) {
        List<Flight> flights = new ArrayList<>();
        SplittableRandom random = new SplittableRandom(~handful.seed());
        for (Handful.Dropped dropped : handful.pieces()) {
            double turn = 2 * Math.PI * random.nextDouble();
            double lean = sort.piece().shape() == Piece.Shape.DISC
                    ? MOST_DISC_LEAN * (2 * random.nextDouble() - 1)
                    : Math.acos(1 - 2 * random.nextDouble());
            Track track = Track.of(dropped.fall(), sort.wayMetres());
            String name = sort.name() + "-" + (flights.size() + 1);
            flights.add(new Flight(name, sort, dropped, track, goSeconds + dropped.startSeconds(), turn, lean));
        }
        return flights;
    }

    /// One piece's way.
    ///
    /// @param name its name
    /// @param sort what it is
    /// @param dropped where it is let go, and how it falls
    /// @param track its way
    /// @param startSeconds when it is let go, real seconds after GO
    /// @param turnRadians its turn
    /// @param leanRadians its lean while it moves
    private record Flight(
            String name,
            Sort sort,
            Handful.Dropped dropped,
            Track track,
            double startSeconds,
            double turnRadians,
            double leanRadians) {
        Part at(double realSeconds) {
            double seconds = realSeconds - startSeconds;
            double metres = track.metresAt(seconds);
            double signed = Math.copySign(metres, -dropped.fall().netNewtons());
            Vec middle = sort.hand().plus(dropped.from()).plus(new Vec(0, 0, signed));
            boolean lies = metres >= sort.wayMetres() && sort.ground().isPresent();
            return new Part(name, form(middle, lies ? 0 : leanRadians), sort.coat());
        }

        private Form form(Vec middle, double lean) {
            double size = sort.piece().sizeMetres();
            return switch (sort.piece().shape()) {
                case BALL -> new Form.Ball(over(middle, middle.z() - size / 2), size / 2);
                case CUBE -> new Form.Posed(posed(new Solid.Box(size, size, size), middle, lean));
                case DISC ->
                    new Form.Posed(posed(Solid.cylinder(size, sort.piece().thicknessMetres()), middle, lean));
            };
        }

        private Body posed(Solid solid, Vec middle, double lean) {
            Body body =
                    new Body(solid, new Pose(middle.minus(new Vec(0, 0, solid.heightMetres() / 2)), turnRadians, lean));
            Vec lifted = over(middle, body.bounds().low().z());
            return body.at(body.pose().movedBy(lifted.minus(middle)));
        }

        /// Lifts a middle so that the lowest place is over the ground.
        private Vec over(Vec middle, double lowMetres) {
            double under = sort.ground()
                    .map(ground -> ground + OVER_METRES - lowMetres)
                    .orElse(0.0);
            return middle.plus(new Vec(0, 0, Math.max(0, under)));
        }
    }

    /// Lists those that are let go by an instant.
    List<Part> parts(double realSeconds) {
        return flights.stream()
                .filter(flight -> flight.startSeconds() <= realSeconds)
                .map(flight -> flight.at(realSeconds))
                .toList();
    }

    /// Gives into how many instants an exposure may be cut: each has all the pieces.
    int mostInstants() {
        return Math.clamp(MOST_AT_ONCE / Math.max(1, flights.size()), LEAST_INSTANTS, Integer.MAX_VALUE);
    }

    /// Tells what was taken for what isn't written.
    List<String> assumed() {
        return assumed;
    }
}
