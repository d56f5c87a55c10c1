package plumeline.geom;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

final class OrderTest {
    private static final Solid CAN = Solid.cylinder(0.042, 0.118);

    @Test
    void isBefore_partedByAPlane_isTheOneOnTheEyesSide() {
        Body front = new Body(CAN, Pose.at(0, 0));
        Body back = new Body(CAN, Pose.at(0.3, 0.1));
        assertThat(Order.isBefore(new Vec(0, -0.6, 0.05), front, back)).isTrue();
        assertThat(Order.isBefore(new Vec(0, -0.6, 0.05), back, front)).isFalse();
        // The same two from the other end of the line.
        assertThat(Order.isBefore(new Vec(0.9, 0.3, 0.05), back, front)).isTrue();
        assertThat(Order.isBefore(new Vec(0.9, 0.3, 0.05), front, back)).isFalse();
    }

    @Test
    void isBefore_eyeBetween_isTheNearerMiddle() {
        Body one = new Body(CAN, Pose.at(-0.1, 0));
        Body other = new Body(CAN, Pose.at(0.1, 0));
        assertThat(Order.isBefore(new Vec(-0.01, 0, 0.05), one, other)).isTrue();
        assertThat(Order.isBefore(new Vec(-0.01, 0, 0.05), other, one)).isFalse();
    }

    @Test
    void isBefore_standingOnEachOther_isTheUpperOneFromAbove() {
        Body low = new Body(CAN, Pose.at(0, 0));
        Body high = new Body(CAN, new Pose(new Vec(0, 0, 0.119), 0, 0));
        assertThat(Order.isBefore(new Vec(0, -0.3, 0.5), high, low)).isTrue();
        assertThat(Order.isBefore(new Vec(0, -0.3, 0.5), low, high)).isFalse();
        assertThat(Order.isBefore(new Vec(0, -0.3, 0.02), low, high)).isTrue();
    }
}
