package plumeline.plume;

import java.util.ArrayList;
import java.util.List;
import plumeline.geom.Body;
import plumeline.geom.Solid;
import plumeline.geom.Vec;

/// A thing's side that is turned to a lens point, as places at heights over its base.
final class Face {
    /// Heights lie so far apart.
    private static final double APART_METRES = 0.01;

    /// Where across a side it is looked at, as shares of its half-width: the middles of five equal strips.
    private static final double[] ACROSS = {-0.8, -0.4, 0, 0.4, 0.8};

    private Face() {}

    /// The heights that are looked at: every centimetre from the base, the middle and the top.
    ///
    /// @param solid the thing's form
    /// @return metres over the base, rising
    static List<Double> heightsMetres(Solid solid) {
        double top = solid.heightMetres();
        List<Double> heights = new ArrayList<>();
        heights.add(0.0);
        for (int n = 1; n * APART_METRES < top - APART_METRES / 4; n++) {
            heights.add(n * APART_METRES);
        }
        if (heights.stream().noneMatch(height -> Math.abs(height - top / 2) < 1e-9)) {
            heights.add(top / 2);
        }
        heights.add(top);
        return heights.stream().sorted().toList();
    }

    /// The places at a height that a lens point sees.
    ///
    /// @param body the thing
    /// @param heightMetres over its base, metres
    /// @param eye the lens point
    /// @return places on its surface, from one side to the other, table frame, metres
    static List<Vec> places(Body body, double heightMetres, Vec eye) {
        Vec own = body.own(eye);
        List<Vec> places = new ArrayList<>();
        for (double across : ACROSS) {
            places.add(body.place(
                    switch (body.solid()) {
                        case Solid.Revolved round -> onRound(round, heightMetres, own, across);
                        case Solid.Box box -> onBox(box, heightMetres, own, across);
                    }));
        }
        return places;
    }

    private static Vec onRound(Solid.Revolved round, double height, Vec eye, double across) {
        double radius = round.radiusAtMetres(height);
        double away = Math.hypot(eye.x(), eye.y());
        double towardX = away > 0 ? eye.x() / away : 0;
        double towardY = away > 0 ? eye.y() / away : -1;
        double near = Math.sqrt(1 - across * across);
        return new Vec(
                radius * (near * towardX - across * towardY), radius * (near * towardY + across * towardX), height);
    }

    /// Of a box the one side that is turned to the lens point most.
    private static Vec onBox(Solid.Box box, double height, Vec eye, double across) {
        double halfWidth = box.widthMetres() / 2;
        double halfDepth = box.depthMetres() / 2;
        double beside = Math.abs(eye.x()) - halfWidth;
        double before = Math.abs(eye.y()) - halfDepth;
        return before >= beside
                ? new Vec(across * halfWidth, eye.y() < 0 ? -halfDepth : halfDepth, height)
                : new Vec(eye.x() < 0 ? -halfWidth : halfWidth, across * halfDepth, height);
    }
}
