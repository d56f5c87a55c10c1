package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/// Images of bodies against images of their places, which are a sum each.
final class MirrorTest {
    private static final Body BOX =
            new Body(new Solid.Box(0.06, 0.02, 0.1), new Pose(new Vec(0.1, 0.2, 0.05), 0.4, 0.3));
    private static final Body FLACON = new Body(
            new Solid.Revolved(List.of(new Station(0, 0.021), new Station(0.09, 0.021), new Station(0.118, 0.01))),
            new Pose(new Vec(-0.05, 0.1, 0.1), 1.1, -0.5));

    @ParameterizedTest
    @EnumSource
    void imageOfABox_hasTheImagesOfItsCorners(Mirror.Axis axis) {
        Mirror mirror = new Mirror(axis, 0.27);
        List<Vec> corners = corners(mirror.image(BOX));
        for (Vec corner : corners(BOX)) {
            Vec wanted = mirror.image(corner);
            assertThat(corners.stream().mapToDouble(wanted::distanceMetres).min())
                    .hasValueCloseTo(0.0, within(1e-12));
        }
    }

    private static List<Vec> corners(Body box) {
        return ((Solid.Box) box.solid()).corners().stream().map(box::place).toList();
    }

    /// Base and top of the axis, and a place beside the shoulder, at any turn about the axis.
    @ParameterizedTest
    @EnumSource
    void imageOfAFlacon_standsOnTheImagesOfItsAxis(Mirror.Axis axis) {
        Mirror mirror = new Mirror(axis, -0.3);
        Body image = mirror.image(FLACON);
        Vec base = mirror.image(FLACON.place(Vec.ZERO));
        Vec top = mirror.image(FLACON.place(new Vec(0, 0, 0.118)));
        boolean isOnItsHead = axis == Mirror.Axis.Z;
        assertThat(image.place(Vec.ZERO).distanceMetres(isOnItsHead ? top : base))
                .isLessThan(1e-12);
        assertThat(image.place(new Vec(0, 0, 0.118)).distanceMetres(isOnItsHead ? base : top))
                .isLessThan(1e-12);
        Vec belowShoulder = mirror.image(FLACON.place(new Vec(0.0205, 0, 0.0895)));
        Vec pastShoulder = mirror.image(FLACON.place(new Vec(0.0205, 0, 0.1)));
        assertThat(Clearance.toMetres(image, belowShoulder)).isNegative();
        assertThat(Clearance.toMetres(image, pastShoulder)).isPositive();
    }

    @ParameterizedTest
    @EnumSource
    void imageOfTheImage_isTheBody(Mirror.Axis axis) {
        Mirror mirror = new Mirror(axis, 0.4);
        Vec own = new Vec(0.01, 0.015, 0.03);
        assertThat(mirror.image(mirror.image(FLACON)).place(own).distanceMetres(FLACON.place(own)))
                .isLessThan(1e-12);
    }
}
