package plumeline.trace;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import plumeline.colour.Rgb;
import plumeline.geom.Bounds;
import plumeline.geom.Vec;
import plumeline.scenery.Cloud;
import plumeline.scenery.World;

/// What is left of light through a thin upright thread in cells of unlike sides, seen from many sides, level and
/// aslant.
class ThreadOfInkTest {
    private static final Vec LOW = new Vec(-0.03, -0.03, -0.2);
    private static final Vec HIGH = new Vec(0.03, 0.03, 0.2);
    private static final int ACROSS = 48;
    private static final int TALL = 16;
    private static final double CELL = 0.06 / ACROSS;

    private static float[] shares(double radius) {
        float[] shares = new float[ACROSS * ACROSS * TALL];
        for (int i = 0; i < shares.length; i++) {
            double x = (i % ACROSS + 0.5) * CELL - 0.03;
            double y = (i / ACROSS % ACROSS + 0.5) * CELL - 0.03;
            shares[i] = (float) Math.exp(-(x * x + y * y) / (2 * radius * radius));
        }
        return shares;
    }

    /// Straight between the cells' middles, asked very often.
    private static double thickness(float[] shares, Vec from, Vec way) {
        int steps = 200_000;
        double length = 0.8;
        double sum = 0;
        for (int n = 0; n < steps; n++) {
            Vec at = from.plus(way.times((n + 0.5) / steps * length));
            boolean isIn = Math.abs(at.x()) < 0.03 && Math.abs(at.y()) < 0.03 && Math.abs(at.z()) < 0.2;
            sum += isIn ? layer(shares, (at.x() + 0.03) / CELL - 0.5, (at.y() + 0.03) / CELL - 0.5) : 0;
        }
        return sum * length / steps;
    }

    /// All layers are alike.
    private static double layer(float[] shares, double u, double v) {
        int i = Math.clamp((int) Math.floor(u), 0, ACROSS - 2);
        int j = Math.clamp((int) Math.floor(v), 0, ACROSS - 2);
        double s = Math.clamp(u - i, 0, 1);
        double t = Math.clamp(v - j, 0, 1);
        int at = j * ACROSS + i;
        return (1 - t) * ((1 - s) * shares[at] + s * shares[at + 1])
                + t * ((1 - s) * shares[at + ACROSS] + s * shares[at + ACROSS + 1]);
    }

    private static double left(Cloud cloud, Vec from, Vec to, int samples) {
        World world = new World(List.of(), List.of(), Optional.empty(), List.of(cloud), Sets.ONE);
        return Sets.exposed(world, Sets.eye(from, to, 1e-7), 1, samples).light(0, 0, 1);
    }

    @Test
    void thread_takesByBeersAndLambertsLawFromEverySide() {
        float[] shares = shares(0.8 * CELL);
        double takes = 400;
        Cloud cloud =
                new Cloud(new Bounds(LOW, HIGH), ACROSS, ACROSS, TALL, shares, new Rgb(takes, takes, takes), Sets.DARK);
        for (int i = 0; i < 24; i++) {
            double turn = 0.37 * i;
            double tilt = i % 3 == 0 ? 0 : 0.3 * (i % 5 - 2);
            Vec way = new Vec(Math.cos(tilt) * Math.cos(turn), Math.cos(tilt) * Math.sin(turn), Math.sin(tilt));
            Vec through = new Vec(0.0004 * (i % 4), -0.0003 * (i % 3), 0.003 * i - 0.03);
            Vec from = through.minus(way.times(0.4));
            double thick = thickness(shares, from, way);
            assertThat(thick).isBetween(0.0001, 0.1);
            assertThat(-Math.log(left(cloud, from, through, 1)) / takes).isCloseTo(thick, within(0.01 * thick));
            assertThat(-Math.log(left(cloud, from, through, 16)) / takes).isCloseTo(thick, within(0.01 * thick));
        }
    }

    @Test
    void threadsShadow_isOfTheSameLaw() {
        float[] shares = shares(0.8 * CELL);
        Cloud cloud = new Cloud(new Bounds(LOW, HIGH), ACROSS, ACROSS, TALL, shares, new Rgb(1, 1, 1), Sets.DARK);
        Fog fog = new Fog(cloud);
        for (int i = 0; i < 24; i++) {
            double turn = 0.37 * i;
            Vec way = new Vec(Math.cos(turn), Math.sin(turn), 0);
            Vec from = new Vec(0.0004 * (i % 4), -0.0003 * (i % 3), 0.003 * i - 0.03).minus(way.times(0.4));
            double thick = fog.thickness(from.x(), from.y(), from.z(), way.x(), way.y(), 0, 0.8, new double[2]);
            double truth = thickness(shares, from, way);
            assertThat(thick).isCloseTo(truth, within(0.02 * truth));
        }
    }
}
