package plumeline.sight;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Point;
import plumeline.geom.Pose;
import plumeline.geom.Projection;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.tidy.Outside;

final class SightOutsideTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);
    private static final Solid RC = Solid.cylinder(0.066, 0.122);

    private static Pinhole level(double x, double y, double z) {
        return new Pinhole(new Aim(new Vec(x, y, z), 0, 0));
    }

    @Test
    @Outside(
            source = "tangents from an external point to a circle, school geometry: sin a = r / d (from memory"
                    + " of Euclid III.17)",
            place = "half-width seen of a 66 mm can at 961 mm",
            kind = "textbook formula",
            printedDigits = 4)
    void extent_ofACan_isTheTangentToItsCircle() {
        Extent extent = Sight.extent(level(0, -0.961, 0.061), new Body(RC, Pose.at(0, 0)));
        assertThat(extent.right()).isEqualTo(0.033 / Math.sqrt(0.961 * 0.961 - 0.033 * 0.033), within(1e-12));
    }

    @Test
    @Outside(
            source = "brief of a four-flacon reveal, worked on paper before the program existed",
            place = "flacons of 42 mm in file, 100 mm apart, the front one 600 mm from the lens: 3.5 / 7.0 / 10.5 mm",
            kind = "worked example",
            printedDigits = 2)
    void hidden_flaconsInFile_haveTheLeewayWorkedOnPaper() {
        double[] paper = {0.0035, 0.0070, 0.0105};
        for (int i = 0; i < paper.length; i++) {
            double depth = 0.7 + 0.1 * i;
            Sides sides = Sight.hidden(
                    level(0, -0.6, 0.059),
                    new Body(CAN, Pose.at(0, depth - 0.6)),
                    List.of(new Body(CAN, Pose.at(0, 0))));
            assertThat(sides.least() * depth).isEqualTo(paper[i], within(0.02 * paper[i]));
        }
    }

    @Test
    @Outside(
            source = "fact of the trade: equal products in file all peek once the lens has moved aside by half a width",
            place = "four 66 mm cans 200 mm apart, the front one at 960 mm: 33 mm",
            kind = "common practice",
            printedDigits = 2)
    void hidden_cansInFile_allPeekAtHalfAWidth() {
        for (int i = 1; i <= 3; i++) {
            Body hidden = new Body(RC, Pose.at(0, 0.2 * i));
            List<Body> front = List.of(new Body(RC, Pose.at(0, 0)));
            assertThat(Sight.hidden(level(0.0329, -0.96, 0.061), hidden, front).least())
                    .isPositive();
            assertThat(Sight.hidden(level(0.0331, -0.96, 0.061), hidden, front).least())
                    .isNegative();
        }
    }

    @Test
    @Outside(
            source = "JTS Topology Suite 1.20.0, convex hull and distance",
            place = "two tilted views of a can behind a can, rims as 2880 points each",
            kind = "reference library",
            printedDigits = 6)
    void hidden_seenFromAbove_isTheLibrarysDistance() {
        for (double height : new double[] {0.03, 0.1}) {
            Pinhole lens = new Pinhole(Aim.toward(new Vec(0.01, -0.6, height), new Vec(0, 0, 0.05)));
            Body front = new Body(Solid.cylinder(0.06, 0.14), Pose.at(0, 0));
            Body hidden = new Body(CAN, new Pose(new Vec(0.004, 0.1, 0.005), 0, 0));
            Geometry edge = hull(lens, front).getBoundary();
            assertThat(Sight.hidden(lens, hidden, List.of(front)).least())
                    .isEqualTo(hull(lens, hidden).getBoundary().distance(edge), within(1e-6));
        }
    }

    private static Geometry hull(Projection lens, Body body) {
        Coordinate[] rims = new Coordinate[2 * 2880];
        for (int i = 0; i < rims.length; i++) {
            double angle = 2 * Math.PI * (i / 2) / 2880.0;
            double radius = body.solid().reachMetres();
            Point seen = lens.project(body.place(new Vec(
                    radius * Math.cos(angle),
                    radius * Math.sin(angle),
                    i % 2 == 0 ? 0 : body.solid().heightMetres())));
            rims[i] = new Coordinate(seen.x(), seen.y());
        }
        return new GeometryFactory().createMultiPointFromCoords(rims).convexHull();
    }
}
