package plumeline.mirror;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Vec;
import plumeline.light.Emitter;
import plumeline.light.Patch;
import plumeline.mirror.Spans.Span;
import plumeline.roots.Roots;

/// A glossy body as a camera sees it: what is mirrored in it, and where.
///
/// Heights count along the body's own axis from its base. A height where two pieces of a profile meet counts to the
/// upper one. Shares across are of the picture as a camera has it that looks square to the body's axis with the same
/// heading: for an upright body a level camera. Of a cylinder they are those of any tilted picture too, row by row; for
/// other forms the outline's edges are those of the circle at that height.
///
/// **Source:** the law of reflection, point by point; borders by halving.
///
/// @param body the body, wholly before the camera
/// @param aim the camera
/// @param ways which straight ways are free, from the surface to the camera and on to what is mirrored
/// @param looking how sight goes to the body and on
public record GlossyBody(Body body, Aim aim, Ways ways, Looking looking) {
    private static final int STEPS = 48;
    private static final int FINER = 16;
    private static final double LEVEL = 1e-9;

    /// Makes a body that is looked at straight on.
    ///
    /// @param body the body, wholly before the camera
    /// @param aim the camera
    /// @param ways which ways are free
    public GlossyBody(Body body, Aim aim, Ways ways) {
        this(body, aim, ways, new Looking.Straight(aim.eye()));
    }

    /// Gives a body with nothing about that could stand in a way but itself.
    ///
    /// @param body the body, wholly before the camera
    /// @param aim the camera
    /// @return the body as seen
    public static GlossyBody alone(Body body, Aim aim) {
        return new GlossyBody(body, aim, Ways.past(List.of(body)));
    }

    /// Lists where a place is seen mirrored: at most one spot a piece. Of sight that is straight.
    ///
    /// @param place what is mirrored, m
    /// @return the spots, base first
    public List<Spot> listSpots(Vec place) {
        return Pieces.spots(body, aim.eye(), place).stream()
                .filter(spot -> ways.isFree(spot.place(), aim.eye()) && ways.isFree(spot.place(), place))
                .toList();
    }

    /// Lists what a light shows as at a height: usually one stripe or none; where something stands in the way, or on
    /// two sides of a box, several.
    ///
    /// @param heightMetres along the body's axis from its base, m
    /// @param emitter the light
    /// @return the stripes from left to right
    public List<Stripe> listStripes(double heightMetres, Emitter emitter) {
        List<Track> tracks = tracks(heightMetres);
        Spread edges = edges(tracks);
        List<Stripe> stripes = new ArrayList<>();
        for (Track track : tracks) {
            for (Span span : spans(track, emitter)) {
                stripes.add(stripe(track, span, edges));
            }
        }
        stripes.sort(Comparator.comparingDouble(Stripe::leftShare));
        return stripes;
    }

    /// Lists what a light shows as at a height of a satin body: where it is half as bright as at its brightest there,
    /// or brighter. A wide light's stripe then ends where it does on gloss; a narrow one's is as wide as the lobe.
    /// What stands in the way isn't regarded. Of sight that is straight.
    ///
    /// @param heightMetres along the body's axis from its base, m
    /// @param emitter the light
    /// @param satin the finish
    /// @return the stripes from left to right
    public List<Stripe> listSatinStripes(double heightMetres, Emitter emitter, Finish.Satin satin) {
        List<Track> tracks = Track.at(body, heightMetres, aim.eye());
        Spread edges = edges(tracks);
        List<Stripe> stripes = new ArrayList<>();
        for (Track track : tracks) {
            DoubleUnaryOperator share =
                    at -> satin.share(emitter, new Patch(track.place(at), track.facing(at)), aim.eye());
            double most = Spans.most(share, track.from(), track.to(), STEPS);
            for (Span span : Spans.over(at -> share.applyAsDouble(at) - most / 2, track.from(), track.to(), STEPS)) {
                stripes.add(stripe(track, span, edges));
            }
        }
        stripes.sort(Comparator.comparingDouble(Stripe::leftShare));
        return stripes;
    }

    /// Finds how bright a light's highlight is at a spot, over what the body sends back evenly.
    ///
    /// @param spot a place on the body that faces the camera, as [#listStripes] gives
    /// @param emitter the light
    /// @param finish how the body mirrors
    /// @return luminance, cd/m²; empty for a matte body
    public OptionalDouble findLuminance(Spot spot, Emitter emitter, Finish finish) {
        OptionalDouble mirrored = finish.findReflectance(spot.incidenceRadians());
        double seen = finish instanceof Finish.Satin satin
                ? satin.share(emitter, new Patch(spot.place(), spot.facing()), aim.eye())
                : 1;
        return mirrored.isPresent()
                ? OptionalDouble.of(emitter.luminance() * seen * mirrored.getAsDouble())
                : OptionalDouble.empty();
    }

    /// Lists what a light shows as on the sides of the body, all heights together: the outlines of its highlights on
    /// the surface, as they lie there, without those on level faces. One that parts or joins is cut there. Of sight
    /// that is straight.
    ///
    /// @param emitter the light
    /// @param rows into how many rows each piece and each outline is cut, 2 or more; a highlight lower than a row
    /// of the piece is found if the light's middle is mirrored
    /// @return outlines, each of four places or more in order: down its left edge and up its right, m
    public List<List<Vec>> listHighlights(Emitter emitter, int rows) {
        return new Regions(this, emitter, rows).list();
    }

    /// Finds what is at a place across the outline, at a height.
    ///
    /// @param heightMetres along the body's axis from its base, m
    /// @param share of the outline's visible width, from its left edge, 0 to 1
    /// @return the spot there, from which sight goes on as [#findOnward] says; empty where the outline is none
    /// there
    public Optional<Spot> findSpot(double heightMetres, double share) {
        List<Track> tracks = tracks(heightMetres);
        if (tracks.isEmpty()) {
            return Optional.empty();
        }
        double across = edges(tracks).low + share * edges(tracks).wide();
        return tracks.stream()
                .filter(track -> spread(track, whole(track)).holds(across))
                .findFirst()
                .map(track -> {
                    Span front = front(track);
                    return spot(track, Roots.end(at -> across(track.place(at)) < across, front.from(), front.to()));
                });
    }

    /// Finds by how far sight from a height passes a light, at the place where it comes nearest.
    ///
    /// @param heightMetres along the body's axis from its base, m
    /// @param emitter the light
    /// @param aside by how far a place is aside of what counts, rad, ≥ 0
    /// @return the least of the greater of both, rad, 0 to π; π where something stands in every way
    public double missRadians(double heightMetres, Emitter emitter, ToDoubleFunction<Vec> aside) {
        double most = -Math.PI;
        for (Track track : tracks(heightMetres)) {
            DoubleUnaryOperator near = at -> {
                double within = Math.min(target(track, emitter, at).margin(), -aside.applyAsDouble(track.place(at)));
                return within < -Math.PI || within > 0 && !isFree(track, emitter, at) ? -Math.PI : within;
            };
            most = Math.max(most, Spans.most(near, track.from(), track.to(), STEPS));
        }
        return Math.clamp(-most, 0, Math.PI);
    }

    /// Follows sight on from a spot.
    ///
    /// @param spot a place on the body that faces the camera
    /// @return its last straight stretch; empty where nothing is seen that way
    public Optional<Looking.Onward> findOnward(Spot spot) {
        return onward(spot.place(), spot.facing());
    }

    private Optional<Looking.Onward> onward(Vec place, Vec facing) {
        return looking.findOnward(place, Spot.mirrored(looking.toCamera(place), facing));
    }

    private List<Track> tracks(double heightMetres) {
        return looking.findEye()
                .map(eye -> Track.at(body, heightMetres, eye))
                .orElseGet(() -> new BentTracks(body, looking, this::across).at(heightMetres));
    }

    /// Gives where round the body a place is.
    ///
    /// @param place a place on it, m
    /// @return angle at the body's axis from its label's middle, rad, positive to the right of one who looks at the
    /// label, −π to π
    public double azimuthRadians(Vec place) {
        Vec own = body.own(place);
        return Math.atan2(own.x(), -own.y());
    }

    List<Span> spans(Track track, Emitter emitter) {
        List<Span> met = Spans.over(at -> target(track, emitter, at).margin(), track.from(), track.to(), STEPS);
        return met.stream()
                .flatMap(span ->
                        Spans.over(at -> isFree(track, emitter, at) ? 1 : -1, span.from(), span.to(), FINER).stream())
                .toList();
    }

    private Target target(Track track, Emitter emitter, double at) {
        return onward(track.place(at), track.facing(at))
                .map(onward -> Target.of(emitter, onward.from(), onward.toward()))
                .orElse(Target.MISSED);
    }

    private boolean isFree(Track track, Emitter emitter, double at) {
        Vec place = track.place(at);
        Optional<Looking.Onward> onward = onward(place, track.facing(at));
        if (onward.isEmpty()) {
            return false;
        }
        Vec from = onward.get().from();
        double on = Target.of(emitter, from, onward.get().toward()).onMetres();
        return isFree(looking.way(place))
                && isFree(onward.get().corners())
                && ways.isFree(from, from.plus(onward.get().toward().times(on)));
    }

    private boolean isFree(List<Vec> way) {
        for (int i = 1; i < way.size(); i++) {
            if (!ways.isFree(way.get(i - 1), way.get(i))) {
                return false;
            }
        }
        return true;
    }

    private Stripe stripe(Track track, Span span, Spread edges) {
        Spread spread = spread(track, span);
        double middle = (spread.low + spread.high) / 2;
        double at = Spans.border(x -> middle - across(track.place(x)), true, span.from(), span.to());
        return new Stripe(
                spot(track, span.from()),
                spot(track, at),
                spot(track, span.to()),
                edges.share(spread.low),
                edges.share(spread.high));
    }

    private Spot spot(Track track, double at) {
        Vec place = track.place(at);
        return Spot.toward(place, track.facing(at), looking.toCamera(place), track.piece());
    }

    /// How far something spreads across the picture.
    private record Spread(double low, double high) {
        double wide() {
            return high - low;
        }

        boolean holds(double across) {
            return across >= low && across <= high;
        }

        double share(double across) {
            return Math.clamp((across - low) / wide(), 0, 1);
        }
    }

    private Spread edges(List<Track> tracks) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Track track : tracks) {
            Spread spread = spread(track, whole(track));
            low = Math.min(low, spread.low);
            high = Math.max(high, spread.high);
        }
        return new Spread(low, high);
    }

    private static Span whole(Track track) {
        return new Span(track.from(), track.to());
    }

    /// What of a track runs from left to right without turning back.
    private static Span front(Track track) {
        List<Double> extremes = track.extremes();
        return new Span(extremes.get(extremes.size() - 2), extremes.getLast());
    }

    private Spread spread(Track track, Span span) {
        double one = across(track.place(span.from()));
        double other = across(track.place(span.to()));
        double low = Math.min(one, other);
        double high = Math.max(one, other);
        for (double at : track.extremes()) {
            if (at > span.from() && at < span.to()) {
                low = Math.min(low, across(track.place(at)));
                high = Math.max(high, across(track.place(at)));
            }
        }
        return new Spread(low, high);
    }

    /// Where a place is across the picture of a camera that looks square to the axis.
    private double across(Vec place) {
        Vec square = aim.forward().cross(body.axis());
        Vec right = square.lengthMetres() > LEVEL ? square.unit() : aim.right();
        Vec forward = body.axis().cross(right);
        Vec way = looking.apparent(place).minus(aim.eye());
        double depth = way.dot(forward);
        if (!(depth > 0)) {
            throw new IllegalArgumentException(
                    "a body lies wholly before the camera, given a place " + depth + " m on");
        }
        return way.dot(right) / depth;
    }
}
