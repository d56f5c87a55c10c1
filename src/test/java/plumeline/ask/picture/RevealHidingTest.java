package plumeline.ask.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import plumeline.geom.Aim;
import plumeline.geom.Body;
import plumeline.geom.Pinhole;
import plumeline.geom.Pose;
import plumeline.geom.Solid;
import plumeline.geom.Vec;
import plumeline.sight.Sides;
import plumeline.sight.Sight;

/// Closed forms of what hides what, against outlines drawn from rim points and against the general sight of bodies.
final class RevealHidingTest {
    private static final int RIM = 1440;

    private record Case(double distance, double eye, double[] front, double[] back, double x, double y) {
        Sides closed() {
            return RevealHiding.sides(
                    new RevealHiding.Upright(0, distance, front[0], front[1] - eye, -eye),
                    new RevealHiding.Upright(x, distance + y, back[0], back[1] - eye, -eye));
        }

        Sides general() {
            return Sight.hidden(
                    new Pinhole(new Aim(new Vec(0, -distance, eye), 0, 0)),
                    new Body(Solid.cylinder(2 * back[0], back[1]), Pose.at(x, y)),
                    List.of(new Body(Solid.cylinder(2 * front[0], front[1]), Pose.at(0, 0))));
        }

        /// The least over directions of how much farther the front one's rim points reach.
        double drawn(double angle) {
            return reach(0, distance, front, angle) - reach(x, distance + y, back, angle);
        }

        private double reach(double aside, double depth, double[] size, double angle) {
            double most = Double.NEGATIVE_INFINITY;
            for (int k = 0; k < RIM; k++) {
                double turn = 2 * Math.PI * k / RIM;
                double there = depth + size[0] * Math.sin(turn);
                double across = (aside + size[0] * Math.cos(turn)) / there;
                most = Math.max(most, across * Math.cos(angle) + (size[1] - eye) / there * Math.sin(angle));
                most = Math.max(most, across * Math.cos(angle) - eye / there * Math.sin(angle));
            }
            return most;
        }
    }

    private static Case random(Random random, double slack) {
        double radius = 0.015 + 0.04 * random.nextDouble();
        double height = 0.05 + 0.2 * random.nextDouble();
        double share = 0.5 + slack * random.nextDouble();
        return new Case(
                0.3 + random.nextDouble(),
                random.nextInt(5) == 0 ? height : 1.1 * height * random.nextDouble(),
                new double[] {radius, height},
                new double[] {radius * share, height * share},
                0.3 * radius * (random.nextDouble() - 0.5),
                0.15 + random.nextDouble());
    }

    @Test
    void margin_isThatOfOutlinesDrawnFromRimPoints() {
        Random random = new Random(41);
        for (int i = 0; i < 40; i++) {
            Case each = random(random, 0.8);
            double least = Double.POSITIVE_INFINITY;
            for (int k = 0; k < 720; k++) {
                least = Math.min(least, each.drawn(2 * Math.PI * k / 720));
            }
            // Rim points lie up to 2.4e-6 of a radius inside; directions are up to a quarter of a degree off.
            assertThat(each.closed().least()).as("case %d", i).isLessThanOrEqualTo(least + 2e-6);
            assertThat(each.closed().least()).as("case %d", i).isCloseTo(least, within(2e-5 + 0.004 * Math.abs(least)));
        }
    }

    @Test
    void hidden_sidesAreThoseOfTheGeneralSight() {
        Random random = new Random(42);
        int compared = 0;
        for (int i = 0; i < 400; i++) {
            Case each = random(random, 0.6);
            Sides closed = each.closed();
            Sides general = each.general();
            assertThat(closed.least() >= 0).as("case %d", i).isEqualTo(general.least() >= 0);
            if (general.least() > 0) {
                compared++;
                assertThat(closed.least()).as("case %d", i).isCloseTo(general.least(), within(1e-8));
            }
        }
        assertThat(compared).isGreaterThan(100);
    }
}
