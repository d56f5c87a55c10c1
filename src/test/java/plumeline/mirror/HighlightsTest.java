package plumeline.mirror;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Station;
import plumeline.geom.Vec;
import plumeline.light.Disc;
import plumeline.light.Panel;
import plumeline.tidy.Outside;

/// Highlights as outlines on the surface.
final class HighlightsTest {
    private static Panel panel(double width, double height) {
        return StripesOutsideTest.panel(StripesOutsideTest.at(500, 60, 800), new Vec(0, 0, 0.8), width, height);
    }

    private static GlossyBody can(Vec camera) {
        Body body = new Body(Solid.cylinder(0.066, 2), Pose.at(0, 0));
        return GlossyBody.alone(body, Aim.toward(camera, new Vec(0, 0, camera.z())));
    }

    private static double height(List<Vec> outline) {
        return outline.stream().mapToDouble(Vec::z).max().orElseThrow()
                - outline.stream().mapToDouble(Vec::z).min().orElseThrow();
    }

    /// Case D22: a light 600 mm tall shows 328.768 mm tall on a can (plane mirror's ratio along the unfolded way); a
    /// narrow one, its middle at 60 deg.
    @Test
    @Outside(source = "plane mirror's ratio along the unfolded way", kind = "closed form", printedDigits = 6)
    void onACan_asTallAsAPlaneMirrorSays() {
        List<List<Vec>> outlines = can(StripesOutsideTest.at(600, 0, 300)).listHighlights(panel(0.001, 0.6), 24);
        assertThat(outlines).hasSize(1);
        assertThat(1e3 * height(outlines.getFirst())).isCloseTo(328.768, within(0.4));
    }

    /// The rim of a panel, place by place, is mirrored as high and as low as the outline goes.
    @Test
    @Outside(source = "Fermat's principle, by the room's own least ways", kind = "closed form")
    void panelsRim_isTheOutline() {
        GlossyBody can = can(StripesOutsideTest.at(600, 0, 300));
        Panel panel = panel(0.2, 0.3);
        List<Vec> outline = can.listHighlights(panel, 24).getFirst();
        List<Vec> corners = panel.outline(Vec.ZERO);
        List<Double> heights = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            Vec one = corners.get(i / 100);
            Vec way = corners.get((i / 100 + 1) % 4).minus(one);
            Vec rim = one.plus(way.times(i % 100 / 100.0));
            heights.add(can.listSpots(rim).getFirst().place().z());
        }
        assertThat(outline.stream().mapToDouble(Vec::z).max().orElseThrow())
                .isCloseTo(Collections.max(heights), within(2e-6));
        assertThat(outline.stream().mapToDouble(Vec::z).min().orElseThrow())
                .isCloseTo(Collections.min(heights), within(2e-6));
    }

    /// A disc's highlight on a lid's slope is cut where the piece ends; a small one between two rows is found.
    @Test
    void piecesEnds_cut() {
        Solid bottle = new Solid.Revolved(List.of(
                new Station(0, 0.03), new Station(0.08, 0.03), new Station(0.1, 0.01), new Station(0.11, 0.01)));
        Vec camera = new Vec(0, -0.6, 0.1);
        GlossyBody body = GlossyBody.alone(new Body(bottle, Pose.at(0, 0)), new Aim(camera, 0, 0));
        Spot there = body.findSpot(0.091, 0.6).orElseThrow();
        Vec lamp = there.place().plus(there.onward(camera).times(0.6));
        Vec facing = new Vec(0, 0, 0.09).minus(lamp).unit();
        List<Vec> all = body.listHighlights(new Disc(lamp, facing, 0.8, 1), 10).stream()
                .filter(one -> one.stream().allMatch(at -> at.z() > 0.08 - 1e-9 && at.z() < 0.1 + 1e-9))
                .max(Comparator.comparingDouble(HighlightsTest::height))
                .orElseThrow();
        assertThat(height(all)).isCloseTo(0.02, within(1e-9));
        Disc small = new Disc(lamp, facing, 0.002, 1);
        Spot spot = body.listSpots(lamp).stream()
                .filter(one -> one.piece() == 2)
                .findFirst()
                .orElseThrow();
        List<Vec> found = body.listHighlights(small, 4).getFirst();
        assertThat(spot.place().distanceMetres(there.place())).isLessThan(1e-9);
        assertThat(found).allMatch(at -> at.distanceMetres(spot.place()) < 2e-3);
        assertThat(height(found)).isPositive();
    }
}
