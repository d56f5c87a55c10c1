package plumeline.mirror;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;

/// What a camera whose sight is bent faces of a body at a height: where the surface looks toward the way of sight,
/// place by place.
///
/// @param body the body
/// @param looking how sight goes
/// @param across where a place is across the picture
record BentTracks(Body body, Looking looking, ToDoubleFunction<Vec> across) {
    private static final int STEPS = 16;

    List<Track> at(double height) {
        return switch (body.solid()) {
            case Solid.Box box -> lines(box, height);
            case Solid.Revolved revolved ->
                Track.coneAt(revolved, height).map(cone -> arcs(cone, height)).orElse(List.of());
        };
    }

    private double faces(Track track, double at) {
        Vec place = track.place(at);
        return looking.toCamera(place).unit().dot(track.facing(at));
    }

    private List<Track> arcs(ConeMirror cone, double height) {
        double radius = cone.radiusMetres(height);
        if (!(radius > 0)) {
            return List.of();
        }
        Vec middle = body.place(new Vec(0, 0, height));
        Vec toward = body.own(middle.plus(looking.toCamera(middle)));
        double front = Math.atan2(toward.y(), toward.x());
        Track.Arc round = Track.arc(body, cone, height, List.of(front - Math.PI, front + Math.PI));
        List<Track> arcs = new ArrayList<>();
        for (Spans.Span span : Spans.over(at -> faces(round, at), round.from(), round.to(), STEPS)) {
            DoubleUnaryOperator right = at -> across.applyAsDouble(round.place(at));
            double left = Spans.highest(at -> -right.applyAsDouble(at), span.from(), span.to(), STEPS);
            arcs.add(Track.arc(
                    body,
                    cone,
                    height,
                    List.of(span.from(), span.to(), left, Spans.highest(right, span.from(), span.to(), STEPS))));
        }
        return arcs;
    }

    private List<Track> lines(Solid.Box box, double height) {
        List<Track> lines = new ArrayList<>();
        if (height >= 0 && height <= box.heightMetres()) {
            List<FlatMirror> sides = Pieces.sides(box);
            for (int i = 0; i < sides.size(); i++) {
                Track.Line side = Track.line(body, sides.get(i), i, height);
                for (Spans.Span span : Spans.over(at -> faces(side, at), 0, side.to(), STEPS)) {
                    lines.add(new Track.Line(
                            span.to() - span.from(), i, side.place(span.from()), side.along(), side.facing()));
                }
            }
        }
        return lines;
    }
}
