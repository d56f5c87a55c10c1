package plumeline.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.lit.ClearThing;

/// The room in a clear thing: everywhere a wall's thickness further in than its outside.
///
/// @param outer its form
/// @param filled its wall and contents
/// @param topMetres how thick it is above the room
record Room(Solid outer, ClearThing.Filled filled, double topMetres) {
    /// A room that is narrower or lower is none, m.
    private static final double LEAST_METRES = 1e-5;

    /// A frustum of the room by its ends' heights and radii.
    private record Piece(double low, double high, double lowRadius, double highRadius) {
        double slope() {
            return (highRadius - lowRadius) / (high - low);
        }

        double radius(double height) {
            return lowRadius + slope() * (height - low);
        }

        Piece between(double from, double to) {
            return new Piece(from, to, radius(from), radius(to));
        }
    }

    /// A room as a form in its own frame, and how high its floor is over its thing's base.
    record Inside(Solid solid, double bottomMetres) {}

    /// Finds it.
    Optional<Inside> find() {
        return switch (outer) {
            case Solid.Box box -> box(box);
            case Solid.Revolved round -> revolved(round);
        };
    }

    /// How wide it is at half its thing's height.
    double acrossMetres() {
        double width = switch (outer) {
            case Solid.Box box -> box.depthMetres();
            case Solid.Revolved round -> 2 * round.radiusAtMetres(round.heightMetres() / 2);
        };
        return Math.max(width - 2 * filled.wallMetres(), LEAST_METRES);
    }

    private Optional<Inside> box(Solid.Box box) {
        double width = box.widthMetres() - 2 * filled.wallMetres();
        double depth = box.depthMetres() - 2 * filled.wallMetres();
        double height = box.heightMetres() - filled.wallMetres() - topMetres;
        return Math.min(width, Math.min(depth, height)) > LEAST_METRES
                ? Optional.of(new Inside(new Solid.Box(width, depth, height), filled.wallMetres()))
                : Optional.empty();
    }

    private Optional<Inside> revolved(Solid.Revolved round) {
        List<Piece> pieces = inward(pieces(round), round.heightMetres());
        List<Station> stations = new ArrayList<>();
        double floor = pieces.isEmpty() ? 0 : pieces.getFirst().low();
        for (Piece piece : pieces) {
            add(stations, piece.low() - floor, piece.lowRadius());
            add(stations, piece.high() - floor, piece.highRadius());
        }
        boolean isRoom = stations.size() > 1
                && stations.getLast().heightMetres() > LEAST_METRES
                && stations.stream().anyMatch(station -> station.radiusMetres() > LEAST_METRES);
        return isRoom ? Optional.of(new Inside(new Solid.Revolved(stations), floor)) : Optional.empty();
    }

    private static void add(List<Station> stations, double height, double radius) {
        Station station = new Station(height, Math.max(0, radius));
        if (stations.isEmpty() || !stations.getLast().equals(station)) {
            stations.add(station);
        }
    }

    private static List<Piece> pieces(Solid.Revolved round) {
        List<Piece> pieces = new ArrayList<>();
        for (int i = 1; i < round.stations().size(); i++) {
            Station low = round.stations().get(i - 1);
            Station high = round.stations().get(i);
            if (high.heightMetres() > low.heightMetres()) {
                pieces.add(new Piece(
                        low.heightMetres(), high.heightMetres(), low.radiusMetres(), high.radiusMetres()));
            }
        }
        return pieces;
    }

    /// Each a wall further in, along its side and from shoulders; from floor to top.
    private List<Piece> inward(List<Piece> outside, double height) {
        double wall = filled.wallMetres();
        List<Piece> inside = new ArrayList<>();
        for (int i = 0; i < outside.size(); i++) {
            Piece piece = outside.get(i);
            double less = wall * Math.hypot(1, piece.slope());
            Piece in = new Piece(piece.low(), piece.high(), piece.lowRadius() - less, piece.highRadius() - less);
            double from = i == 0 ? wall : in.low() + step(outside.get(i - 1).highRadius(), piece.lowRadius());
            double to = i == outside.size() - 1
                    ? height - topMetres
                    : in.high() - step(outside.get(i + 1).lowRadius(), piece.highRadius());
            from = Math.max(from, wall);
            to = Math.min(to, height - topMetres);
            if (!inside.isEmpty()) {
                from = Math.max(from, inside.getLast().high());
            }
            if (to > from) {
                inside.add(in.between(from, to));
            }
        }
        return inside;
    }

    /// By how much further in a piece ends at a shoulder: up by a wall where its neighbour is slimmer, down by one into
    /// a wider one.
    private double step(double neighbour, double own) {
        double apart = own - neighbour;
        return Math.abs(apart) < LEAST_METRES ? 0 : Math.signum(apart) * filled.wallMetres();
    }
}
