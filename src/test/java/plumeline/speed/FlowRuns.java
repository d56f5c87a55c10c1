package plumeline.speed;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import plumeline.flow.Flow;
import plumeline.flow.Front;
import plumeline.flow.Grid;
import plumeline.flow.Inside;
import plumeline.flow.Liquid;
import plumeline.flow.Release;
import plumeline.flow.Tank;
import plumeline.flow.Walls;
import plumeline.flow.Workers;

/// The longer runs of the flow: cells stepped a core-second by this thread's own time,
/// puffs of several seeds, a stream. About four minutes on one core; prints what `docs/derivations/flow.md` tells.
public final class FlowRuns {
    private static final double GRAVITY = 0.5;
    private static final double MIDDLE_METRES = 0.33;

    /// The radius of 10 ml.
    private static final double RADIUS_METRES = 0.01337;

    /// Share times metres from which ink is taken to be seen.
    private static final double SEEN = 1e-4;

    private FlowRuns() {}

    /// Runs them.
    public static void main(String[] arguments) {
        speed(false);
        speed(true);
        for (long seed = 1; seed <= 4; seed++) {
            puff(seed);
        }
        stream();
    }

    private static void say(String format, Object... values) {
        System.out.println(String.format(Locale.ROOT, format, values));
    }

    /// Ten millilitres of ink let go over a can, or over nothing.
    static Flow ink(int up, boolean can, long seed) {
        var grid = new Grid(up * 2 / 3, up / 2, up, 0.24, 0.18, 0.36);
        Inside body = can ? (x, y, z) -> z < 0.122 && Math.hypot(x - 0.12, y - 0.09) < 0.033 : Inside.nothing();
        return flow(
                Tank.of(grid, Walls.tank(), body),
                new Release.Cloud(Inside.ball(0.12, 0.09, MIDDLE_METRES, RADIUS_METRES), 1, 0, 1),
                seed);
    }

    private static Flow flow(Tank tank, Release release, long seed) {
        var setting = new Flow.Setting(tank, new Liquid(1e-6, 0, GRAVITY), List.of(release), seed);
        return Flow.start(setting, Workers.alone());
    }

    static void run(Flow flow, double seconds) {
        flow.run(seconds);
    }

    private static void speed(boolean can) {
        run(ink(96, can, 1), 0.6);
        Flow flow = ink(96, can, 1);
        long began = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
        run(flow, 3);
        double seconds = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - began) / 1e9;
        double millions = 64.0 * 48 * 96 * flow.steps() / 1e6 / seconds;
        say(
                "3 s at 64x48x96, can %s: %d steps, %.1f core-s, %.1f ms a step, %.1f M cells a core-s, dye off %.0e",
                can,
                flow.steps(),
                seconds,
                seconds * 1e3 / flow.steps(),
                millions,
                flow.dye().totalMetres3() / flow.releasedMetres3() - 1);
    }

    /// Fits the way over time, counted from the virtual origin, and half the width over the way.
    private static void puff(long seed) {
        Flow flow = ink(96, false, seed);
        double origin = RADIUS_METRES / 0.25;
        var rise = new Slope();
        var spread = new Slope();
        for (double seconds = 0.4; seconds < 2.25; seconds += 0.1) {
            run(flow, seconds);
            if (Front.ofSight(flow.dye(), SEEN) instanceof Front.Seen seen) {
                double way = MIDDLE_METRES - RADIUS_METRES - seen.lowMetres();
                rise.add(seconds, Math.sqrt(Math.pow(way + origin, 4) - Math.pow(origin, 4)));
                spread.add(way, seen.widthMetres() / 2);
            }
        }
        double buoyancy = GRAVITY * 4 / 3 * Math.PI * Math.pow(RADIUS_METRES, 3);
        say(
                "puff, seed %d: k %.2f, half-width over way %.3f",
                seed, Math.sqrt(rise.get() / Math.sqrt(buoyancy)), spread.get());
    }

    private static void stream() {
        double mouth = 0.345;
        double rate = 5e-6;
        var tank = Tank.of(new Grid(64, 48, 96, 0.24, 0.18, 0.36), Walls.tank());
        Flow flow = flow(tank, new Release.Nozzle(Release.Mouth.down(0.12, 0.09, mouth), 0.006, rate, 0, 10, 1), 1);
        var rise = new Slope();
        for (double seconds = 0.5; seconds < 4.05; seconds += 0.25) {
            run(flow, seconds);
            if (Front.ofSight(flow.dye(), SEEN) instanceof Front.Seen seen) {
                rise.add(seconds, 0.75 * Math.pow(mouth - seen.lowMetres(), 4 / 3.0));
            }
        }
        say("stream: front speed over F^(1/3) z^(-1/3) %.2f", rise.get() / Math.cbrt(rate * GRAVITY));
    }

    /// The slope of the line that fits points best.
    private static final class Slope {
        private double count;
        private double x;
        private double y;
        private double xx;
        private double xy;

        void add(double atX, double atY) {
            count++;
            x += atX;
            y += atY;
            xx += atX * atX;
            xy += atX * atY;
        }

        double get() {
            return (count * xy - x * y) / (count * xx - x * x);
        }
    }
}
