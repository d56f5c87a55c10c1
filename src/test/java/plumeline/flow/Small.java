package plumeline.flow;

import java.util.List;

/// A small tank with a can in it, ink let down onto it from a nozzle and from a cloud.
final class Small {
    static final double WIDTH_METRES = 0.12;
    static final double HEIGHT_METRES = 0.16;

    private Small() {}

    static Tank tank() {
        Grid grid = new Grid(24, 20, 32, WIDTH_METRES, 0.10, HEIGHT_METRES);
        return Tank.of(grid, Walls.tank(), Small::isCan);
    }

    static boolean isCan(double x, double y, double z) {
        double dx = x - 0.06;
        double dy = y - 0.05;
        return z < 0.07 && dx * dx + dy * dy < 0.02 * 0.02;
    }

    static Release cloud() {
        return new Release.Cloud(Inside.ball(0.05, 0.05, 0.12, 0.012), 1, 0.1, 1);
    }

    static Release nozzle() {
        return new Release.Nozzle(Release.Mouth.down(0.066, 0.052, 0.13), 0.003, 2e-6, 0.05, 0.4, 1);
    }

    static Flow.Setting setting(long seed) {
        return new Flow.Setting(tank(), new Liquid(1e-6, 0, 0.5), List.of(cloud(), nozzle()), seed);
    }
}
